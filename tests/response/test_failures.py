"""Failures worked out from one solution are those of networks solved one by one.

The solver itself is held against published values and simulators elsewhere; here the quick way is held against it.
"""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import numpy as np
import pytest

from property.random_networks import random_network
from response.circuits import ladder, network
from shuntwise.api import load
from shuntwise.api import network as network_of
from shuntwise.network.network import Network
from shuntwise.response import failures
from shuntwise.response.cases import Case, opened, shorted, solve_cases, sweep
from shuntwise.response.failures import CaseCurves
from shuntwise.response.pivoted import SingularNetwork
from shuntwise.response.solve import Solver
from shuntwise.response.tape import Complex

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.shunt"))
FREQ_HZ = sweep(steps_per_octave=6)

LEAST_V = 1e-3
"""Voltages are compared against this at the least, so within 1e-12 of the input: they are differences of nodes."""


def every_failure(network: Network) -> list[Case]:
    return [make(network, branch) for make in (opened, shorted) for branch in network.branches]


def solvable(solver: Solver, cases: Sequence[Case], freq_hz: Complex) -> list[Case]:
    """The cases that have a single solution."""
    sound = []
    for case in cases:
        try:
            solve_cases(solver, [case], freq_hz, parts=False)
        except SingularNetwork:
            continue
        sound.append(case)
    return sound


def worst(network: Network, freq_hz: Complex = FREQ_HZ) -> tuple[float, int, CaseCurves]:
    """The greatest difference, against the greater of before and after; the number of cases; the curves."""
    solver = Solver(network)
    cases = solvable(solver, every_failure(network), freq_hz)
    curves = CaseCurves(solver, cases, freq_hz)
    before = solve_cases(solver, [{}], freq_hz, parts=False)
    after = solve_cases(solver, cases, freq_hz, parts=False)
    answers = [
        *((curves.driver_voltage(d.name), before.driver_voltage(d.name), after.driver_voltage(d.name), LEAST_V)
          for d in network.drivers),
        *((curves.admittance(f.name), before.admittance(f.name), after.admittance(f.name), 1e-300)
          for f in network.feeds),
    ]  # fmt: skip
    greatest = 0.0
    for found, old, new, least in answers:
        assert found.shape == (len(cases), freq_hz.size)
        scale = np.maximum(np.maximum(np.abs(old), np.abs(new)), least)
        greatest = max(greatest, float((np.abs(found - np.abs(new)) / scale).max()))
    return greatest, len(cases), curves


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_failure_of_an_example(path: Path) -> None:
    """Drivers fail as well here; that and coupled coils are solved one by one, the rest is not."""
    network = network_of(load(str(path)))
    gap, cases, curves = worst(network)
    assert gap < 1e-9
    assert curves.solved_alone < cases / 2


def test_every_failure_of_a_ladder() -> None:
    gap, cases, curves = worst(ladder(60))
    assert gap < 1e-9
    assert (cases, curves.solved_alone) == (2 * 181, 0)


@pytest.mark.parametrize("seed", range(40))
def test_every_failure_of_a_random_network(seed: int) -> None:
    """Meshes, bridges, floating loads, lossless coils and capacitors, couplings, two inputs."""
    assert worst(random_network(seed))[0] < 1e-9


def test_open_branch_that_leaves_a_sharp_resonance() -> None:
    """L into C with 8 ohm across C; without it |V| = 1 / |1 - w^2 L C|, here a millionth from the resonance.

    The formula loses its digits there: the case is solved by itself.
    """
    circuit = network(
        """
        V1 in 0
        L1 in a 1e-3
        C1 a 0 10e-6
        R1 a 0 8
        """,
        ["load a 0"],
    )
    resonance_hz = 1 / (2 * np.pi * np.sqrt(1e-3 * 10e-6))
    freq_hz = resonance_hz * np.array([0.5, 1 + 1e-6, 2])
    curves = CaseCurves(Solver(circuit), [opened(circuit, circuit.branches[2])], freq_hz)
    assert curves.solved_alone == 1
    wanted = 1 / np.abs(1 - (2 * np.pi * freq_hz) ** 2 * 1e-3 * 10e-6)
    assert curves.driver_voltage("load")[0] == pytest.approx(wanted, rel=1e-9)


def test_open_coil_beside_a_coupled_one() -> None:
    """A coil's resistance in series with a coupled coil is one branch; k = 0.5 between 1 and 4 mH, M = 1 mH.

    The second coil is closed through 2 and 3 ohm, so the first has z = R + j w L + (w M)^2 / (5 + j w 4 mH): the
    reflected impedance of a transformer (any textbook). With the second open, z = R + j w L.
    """
    circuit = network(
        """
        V1 in 0
        R1 in a 1
        L1 a 0 1e-3
        R2 c 0 2
        L2 c d 4e-3
        R3 d 0 3
        K1 L1 L2 0.5
        """,
        ["load c 0"],
    )
    freq_hz = np.array([20.0, 200.0, 2000.0])
    s = 2j * np.pi * freq_hz
    cases = [opened(circuit, circuit.branches[2]), opened(circuit, circuit.branches[0]), {"R3": 8.0}]
    curves = CaseCurves(Solver(circuit), cases, freq_hz)
    assert curves.solved_alone == 0
    wanted = [1 / (1 + s * 1e-3), 0 * s, 1 / (1 + s * 1e-3 - (s * 1e-3) ** 2 / (10 + s * 4e-3))]
    assert curves.admittance("V1") == pytest.approx(np.abs(wanted), rel=1e-9, abs=1e-11)


def test_parts_where_nothing_flows() -> None:
    """What hangs in the air or lies across the input changes nothing behind it; 1 and 1.5 S by Ohm's law."""
    circuit = network(
        """
        V1 in 0
        R1 in a 0.5
        R2 a 0 0.5
        R3 a air 1
        R4 in 0 2
        """,
        ["load a 0", "straight in 0", "hanging air 0"],
    )
    cases = [opened(circuit, circuit.branches[number]) for number in (2, 3)]
    curves = CaseCurves(Solver(circuit), cases, np.array([100.0]))
    assert curves.admittance("V1")[:, 0] == pytest.approx([1.5, 1.0], rel=1e-11)
    for name, volts in (("load", 0.5), ("straight", 1.0), ("hanging", 0.5)):
        assert curves.driver_voltage(name)[:, 0] == pytest.approx([volts, volts], rel=1e-11)


def test_blocks_change_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    """One frequency at a time, and one case, gives what all at once give."""
    circuit = random_network(7)
    solver = Solver(circuit)
    cases = solvable(solver, every_failure(circuit), FREQ_HZ)
    whole = CaseCurves(solver, cases, FREQ_HZ)
    monkeypatch.setattr(failures, "BLOCK_NUMBERS", 1)
    monkeypatch.setattr(failures, "BLOCK_CASES", 1)
    pieces = CaseCurves(solver, cases, FREQ_HZ)
    assert 0 < pieces.solved_alone < len(cases)
    for driver in circuit.drivers:
        assert pieces.driver_voltage(driver.name) == pytest.approx(whole.driver_voltage(driver.name), rel=1e-12)
    for feed in circuit.feeds:
        assert pieces.admittance(feed.name) == pytest.approx(whole.admittance(feed.name), rel=1e-12)


def test_no_single_solution_is_said() -> None:
    """A node that nothing holds: as the direct solution says it."""
    circuit = network(
        """
        V1 in 0
        R1 in 0 8
        R2 a b 1
        """,
        ["load in 0"],
    )
    with pytest.raises(SingularNetwork):
        CaseCurves(Solver(circuit), every_failure(circuit), FREQ_HZ)


def test_unknown_names_are_refused() -> None:
    circuit = ladder(2)
    curves = CaseCurves(Solver(circuit), every_failure(circuit), FREQ_HZ)
    with pytest.raises(KeyError, match="no driver is called 'tweeter'"):
        curves.driver_voltage("tweeter")
    with pytest.raises(KeyError, match="no input is called 'aux'"):
        curves.admittance("aux")
