"""Resonances without loss, floating loads, open ends: where elimination alone would divide by nothing."""

from functools import partial

import numpy as np
import pytest

from property.random_networks import random_network
from response.circuits import network
from shuntwise.response.cases import solve_cases, sweep
from shuntwise.response.sensitivity import group_delay
from shuntwise.response.solve import SingularNetwork, Solver, solve

# omega = 1000 exactly and L C omega^2 = 1 to the last bit (both are powers of two times 1e-3).
RESONANCE_HZ = 1000 / (2 * np.pi)


def test_lossless_trap_blocks_at_its_resonance() -> None:
    """A parallel L-C in series with the load lets nothing through at resonance; that point is pivoted."""
    lines = ["V1 in 0", "L1 in out 1e-3", "C1 in out 1e-3", "R1 out 0 8"]
    response = solve(network(lines), [RESONANCE_HZ / 2, RESONANCE_HZ, RESONANCE_HZ * 2])
    assert response.fallback_points == 1
    assert abs(response.voltage("out")[1]) < 1e-14
    exact = [1 / (1 + 1j * x / (1 - x * x) / 8) for x in (0.5, 2)]
    assert np.abs(response.voltage("out")[[0, 2]] - exact).max() < 1e-13
    assert abs(response.element_voltage("L1")[1] - 1) < 1e-14
    assert np.isfinite(response.current("L1")).all()


def test_lossless_shunt_shorts_at_its_resonance() -> None:
    """A series L-C across the load shorts it at resonance; the node inside stands at the current times omega L."""
    lines = ["V1 in 0", "R1 in out 4", "L1 out m 1e-3", "C1 m 0 1e-3", "R2 out 0 8"]
    response = solve(network(lines), [RESONANCE_HZ])
    assert response.fallback_points == 1
    assert abs(response.voltage("out")[0]) < 1e-14
    assert response.current("L1")[0] == pytest.approx(0.25, abs=1e-14)
    assert abs(response.voltage("m")[0] + 0.25j) < 1e-14


def test_lossless_short_across_the_input_is_named() -> None:
    """A series L-C straight across the amplifier draws a current without bound, and its middle has no voltage."""
    with pytest.raises(SingularNetwork) as caught:
        solve(network(["V1 in 0", "L1 in m 1e-3", "C1 m 0 1e-3", "R1 in 0 8"]), [10.0, RESONANCE_HZ])
    assert caught.value.nodes == ("m",)
    assert caught.value.freq_hz == RESONANCE_HZ


def test_resonance_across_the_elimination_is_pivoted() -> None:
    """A node whose admittances cancel inside a mesh: only its resonance goes the pivoted way."""
    lines = ["V1 in 0", "L1 in m 1e-3", "C1 m a 2e-3", "C2 m b 0.5e-3", "R1 a 0 8", "R2 b 0 6", "R3 a b 5", "R4 in a 3"]
    # At the node m: 1/(s L) + s (C1 + C2) = 0.
    resonance_hz = 1 / (2 * np.pi * np.sqrt(1e-3 * 2.5e-3))
    response = solve(network(lines), [50.0, resonance_hz, 700.0])
    assert response.fallback_points == 1
    assert response.residual < 1e-11


def test_floating_load_between_two_sections() -> None:
    """A load between two dividers sees the difference: superposition by hand."""
    lines = ["V1 in 0", "R1 in a 2", "R2 a 0 3", "R3 in b 4", "R4 b 0 1", "R5 a b 5"]
    response = solve(network(lines, ["load a b"]), [100.0])
    # Thevenin: open-circuit 3/5 and 1/5, source resistances 6/5 and 4/5.
    assert response.driver_voltage("load")[0] == pytest.approx((3 / 5 - 1 / 5) * 5 / (5 + 6 / 5 + 4 / 5), abs=1e-15)


def test_nodes_that_only_capacitors_touch() -> None:
    """No direct current path is needed: a capacitive divider divides."""
    lines = ["V1 in 0", "C1 in m 1e-6", "C2 m 0 3e-6", "C3 m a 1e-6", "C4 a 0 1e-6", "C5 in a 2e-6"]
    response = solve(network(lines), [20.0, 20e3])
    matrix = np.array([[1 + 3 + 1, -1], [-1, 1 + 1 + 2]], float)
    exact = np.linalg.solve(matrix, [1, 2])
    assert np.abs(response.voltage("m") - exact[0]).max() < 1e-15
    assert np.abs(response.voltage("a") - exact[1]).max() < 1e-15


def test_open_ends_and_shorted_parts() -> None:
    """A stub stands at the voltage of the node that it hangs from; a part with both leads on one node is idle."""
    lines = ["V1 in 0", "R1 in a 1", "R2 a 0 1", "C1 a stub 1e-6", "L1 stub end 1e-3", "R3 a a 5", "C9 stub end 1e-6"]
    response = solve(network(lines), [1000.0])
    for node in ("a", "stub", "end"):
        assert response.voltage(node)[0] == 0.5
    for part in ("C1", "L1", "C9", "R3"):
        assert response.current(part)[0] == 0
        assert response.branch_voltage(part)[0] == 0
    assert response.dissipation("R3")[0] == 0


def test_node_that_nothing_holds_is_named() -> None:
    """An island without any way to ground."""
    with pytest.raises(SingularNetwork) as caught:
        solve(network(["V1 in 0", "R1 in 0 8", "R2 x y 5"]), [50.0])
    assert set(caught.value.nodes) <= {"x", "y"}


def test_input_without_a_load_has_no_impedance() -> None:
    """No current can flow: said as such, instead of an infinite number."""
    response = solve(network(["V1 in 0", "V2 other 0", "R1 other a 1", "R2 a 0 1"]), [50.0])
    with pytest.raises(SingularNetwork) as caught:
        response.impedance("V1")
    assert caught.value.nodes == ("in",)


@pytest.mark.parametrize("freq_hz", [[], [0.0], [-5.0], [np.nan], [np.inf], [[1.0, 2.0]]])
def test_bad_frequencies_are_refused(freq_hz: list[float]) -> None:
    with pytest.raises(ValueError, match="frequencies"):
        solve(network(["V1 in 0", "R1 in 0 8"]), freq_hz)


@pytest.mark.parametrize(
    ("values", "words"),
    [
        ({"R9": 1.0}, "R9"),
        ({"R1": 0.0}, "R1"),
        ({"R1": np.nan}, "R1"),
        ({"K1": 1.2}, "K1"),
        ({"R1": [1.0, 2.0], "L1": [1e-3] * 3}, "builds"),
    ],
)
def test_bad_values_are_refused(values: dict[str, float], words: str) -> None:
    circuit = network(["V1 in 0", "R1 in a 8", "L1 a 0 1e-3", "L2 a 0 1e-3", "K1 L1 L2 0.5"])
    with pytest.raises(ValueError, match=words):
        solve(circuit, [100.0], values=values)


def test_unknown_names_are_refused() -> None:
    response = solve(network(["V1 in 0", "R1 in 0 8"]), [100.0])
    for ask in (
        response.voltage,
        response.driver_voltage,
        response.branch_voltage,
        response.current,
        response.dissipation,
        response.impedance,
        response.element_current,
        partial(group_delay, response),
    ):
        with pytest.raises(KeyError):
            ask("nobody")


def test_points_lost_before_and_among_the_builds() -> None:
    """Some steps lose digits whatever the build, others in one build: both kinds of points are solved again."""
    circuit, freq_hz = random_network(1174), sweep(steps_per_octave=6)
    cases = [{"L11": 1e-12}]
    response = solve_cases(Solver(circuit), cases, freq_hz, parts=False)
    alone = solve(circuit, freq_hz, values=cases[0])
    assert response.fallback_points > 0
    for feed in circuit.feeds:
        assert response.admittance(feed.name)[0] == pytest.approx(alone.admittance(feed.name), rel=1e-6)
