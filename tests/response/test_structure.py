"""How networks are taken apart: ladders vanish into trees, meshes are eliminated cheaply, nothing recurses."""

import sys

import numpy as np
import pytest

from response.circuits import ladder, network
from shuntwise.response.plan import Plan
from shuntwise.response.solve import solve


def test_ladder_of_two_thousand_elements_compiles_to_steps_in_proportion(monkeypatch: pytest.MonkeyPatch) -> None:
    """No recursion along the ladder, no mesh left, and twice the ladder is twice the steps."""
    monkeypatch.setattr(sys, "setrecursionlimit", None)  # nobody may raise it
    counts = []
    for sections in (333, 667):
        circuit = ladder(sections)
        response = solve(circuit, [100.0, 5000.0])
        for node in circuit.nodes:
            response.voltage(node)
        for element in circuit.elements:
            response.element_current(element.name)
        counts.append(len(response.points.plan.tape.steps))
        assert response.residual < 1e-11
    assert counts[1] == pytest.approx(2 * counts[0], rel=0.02)


def test_long_chains_of_one_kind_do_not_recurse() -> None:
    """A thousand resistors in series between two nodes, and a thousand across them."""
    lines = ["V1 n0 0", "Rend n3000 0 1"]
    lines += [f"R{i} n{i} n{i + 1} 0.001" for i in range(3000)] + [f"Rp{i} n3000 0 1000" for i in range(3000)]
    response = solve(network(lines), [100.0])
    exact = 0.25 / (3 + 0.25)
    assert response.voltage("n3000")[0] == pytest.approx(exact, rel=1e-13)
    assert response.voltage("n1500")[0] == pytest.approx((exact + 1) / 2, rel=1e-12)


def test_ladder_follows_its_chain_matrix() -> None:
    """Two hundred sections multiplied out as voltages and currents from the load to the source."""
    freq_hz = np.array([1e3, 50e3, 120e3])
    s = 2j * np.pi * freq_hz
    volt, ampere = np.ones(3, complex), np.full(3, 1 / 8 + 0j)
    for _ in range(200):
        ampere = ampere + volt * s * 1e-7
        volt = volt + ampere * (s * 1e-5 + 0.01)
    response = solve(ladder(200), freq_hz)
    assert np.allclose(response.driver_voltage("load"), 1 / volt, rtol=1e-11, atol=0)
    assert np.allclose(response.impedance("V1"), volt / ampere, rtol=1e-11, atol=0)


def test_grid_of_resistors_is_eliminated() -> None:
    """A mesh that no series and parallel step opens: opposite corners of a square grid of 1 ohm, by dense algebra."""
    side = 7
    names = [[f"g{i}.{j}" for j in range(side)] for i in range(side)]
    names[-1][-1] = "0"
    lines = ["V1 g0.0 0"]
    for i in range(side):
        for j in range(side):
            for k, m in ((i + 1, j), (i, j + 1)):
                if k < side and m < side:
                    lines.append(f"R{i}.{j}.{k}.{m} {names[i][j]} {names[k][m]} 1")
    circuit = network(lines)
    index = {node: n for n, node in enumerate(circuit.nodes)}
    matrix = np.zeros((len(index), len(index)))
    for e in circuit.elements:
        for one, other in ((e.plus, e.minus), (e.minus, e.plus)):
            if one != "0":
                matrix[index[one], index[one]] += 1
                if other != "0":
                    matrix[index[one], index[other]] -= 1
    inverse = np.linalg.inv(matrix)
    response = solve(circuit, [50.0])
    assert response.impedance("V1")[0] == pytest.approx(inverse[0, 0], rel=1e-13)
    for node, n in index.items():
        assert response.voltage(node)[0] == pytest.approx(inverse[n, 0] / inverse[0, 0], rel=1e-12)
    assert response.residual < 1e-13


def test_equal_questions_share_their_steps() -> None:
    """Asking twice records nothing new."""
    plan = Plan(ladder(5))
    plan.node_voltage("n3")
    before = len(plan.tape.steps)
    plan.node_voltage("n3")
    assert len(plan.tape.steps) == before
