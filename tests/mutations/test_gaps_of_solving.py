"""Facts of solving and fitting that one changed line would break, each against a closed form or a slower way."""

from __future__ import annotations

from itertools import product

import numpy as np
import pytest

from response.circuits import network
from shuntwise.api import load_text
from shuntwise.api import network as network_of
from shuntwise.network import fit
from shuntwise.response.cases import solve_cases
from shuntwise.response.failures import CaseCurves
from shuntwise.response.measures import REFINEMENT, bare_resonances, greatest_level
from shuntwise.response.pivoted import PivotedPoints, SingularNetwork
from shuntwise.response.solve import Response, Solver, pivoted_points
from shuntwise.response.tape import is_finite
from shuntwise.stress.shares import shares

FREQ_HZ = np.geomspace(20, 20e3, 61)


def test_finite_values_may_have_a_sum_of_squares_that_is_not() -> None:
    assert is_finite(np.array([1e200 + 0j]))
    assert not is_finite(np.array([1.0, np.nan + 0j]))


def test_parts_of_very_different_size_are_no_loose_node() -> None:
    """Two halves of 1e-9 and of 1e9 ohm: each divides by two, though their admittances are 1e18 apart."""
    small = network(["V1 in 0", "R1 in a 1e9", "R2 a 0 1e9", "R3 in b 1e-9", "R4 b 0 1e-9"])
    values = [element.value for element in small.elements]
    found = PivotedPoints(small, values, np.array([1000.0]))
    assert [found.node_voltage(node, [1.0])[0] for node in "ab"] == pytest.approx([0.5, 0.5])


@pytest.mark.parametrize("beside", [[], ["L3 in c 1e-3", "R3 c 0 8"]])
def test_perfectly_coupled_equal_coils_in_parallel_are_named_by_their_ends(beside: list[str]) -> None:
    """Any current may go round them and costs nothing: no node voltage is loose, only that current is."""
    lines = ["V1 in 0", "R1 in a 8", "L1 a b 1e-3", "L2 a b 1e-3", "R2 b 0 8", "K1 L1 L2 1", *beside]
    circuit = network(lines)
    values = [*(element.value for element in circuit.elements), 1.0]
    with pytest.raises(SingularNetwork) as caught:
        PivotedPoints(circuit, values, np.array([1000.0]))
    assert set(caught.value.nodes) == {"a", "b"}


def test_a_stream_of_builds_is_pivoted_with_every_input_at_one_volt() -> None:
    inductance, capacitance = 1e-3, 1e-6
    resonance = 1 / (2 * np.pi * np.sqrt(inductance * capacitance))
    lines = ["V1 in 0", f"L1 in m {inductance!r}", f"C1 m 0 {capacitance!r}", "R1 m a 1e6", "R2 in a 5", "R3 a b 9",
             "R4 m b 2e6", "R5 b 0 7", "R6 a 0 11"]  # fmt: skip
    circuit, freq_hz = network(lines, ["d b 0"]), [resonance * (1 + 1e-5)]
    solver = Solver(circuit)
    streamed = [
        complex(voltage)
        for builds in solver.stream(freq_hz, {"R2": np.array([5.0, 6.0])})
        for voltage in builds.driver_voltage["d"][:, 0]
    ]
    plan = solver.plan
    for ohm, voltage in zip((5.0, 6.0), streamed, strict=True):
        careful = pivoted_points(plan, plan.parameters({"R2": ohm}), np.array(freq_hz), np.array([True]))
        assert voltage == pytest.approx(careful.node_voltage("b", [1.0])[0], rel=1e-9)


@pytest.mark.parametrize("skew", [0.1j, -0.1, 0.1])
def test_the_residual_sees_a_current_that_is_wrong_in_any_direction(
    skew: complex, monkeypatch: pytest.MonkeyPatch
) -> None:
    right = Response.element_current
    monkeypatch.setattr(Response, "element_current", lambda self, name: right(self, name) * (1 + skew * (name == "R1")))
    response = Solver(network(["V1 in 0", "R1 in a 4", "R2 a 0 4"])).solve([1000.0])
    assert response.residual == pytest.approx(0.1 / (abs(1 + skew) + 1))


def test_cases_of_several_powers_of_s_are_worked_out_from_one_solution() -> None:
    """A capacitor with its resistance, both changed: against solving every case."""
    made = load_text(
        "driver tweeter 8 ohm { re 6 ohm, le 0.05 mH }\ncapacitor C1 6.8 uF { esr 3 ohm }\n"
        "coil L1 0.4 mH { dcr 2 ohm }\nleg tweeter {\n  input+ -- C1 -- tweeter+\n"
        "  tweeter+ -- L1 -- return\n  tweeter- -- return\n}\n"
    )
    solver = Solver(network_of(made))
    cases = [
        {e.name: e.value * factor for e, factor in zip(of, factors, strict=True)}
        for of in ([e for e in solver.network.elements if e.part == part] for part in ("C1", "L1"))
        for factors in product((0.5, 3.0), repeat=len(of))
    ]
    assert len(cases) == 8
    curves = CaseCurves(solver, cases, FREQ_HZ)
    one_by_one = solve_cases(solver, cases, FREQ_HZ, parts=False)
    assert curves.solved_alone == 0
    assert curves.driver_voltage("tweeter") == pytest.approx(np.abs(one_by_one.driver_voltage("tweeter")), rel=1e-9)


def test_the_greatest_level_of_a_resonance() -> None:
    """Q = X/R over the capacitor of a series L-C-R, R small: 20 lg Q at resonance."""
    circuit = network(["V1 in 0", "L1 in a 1e-3", "R1 a b 1", "C1 b 0 1e-6"], ["d b 0"])
    freq_hz, level_db = greatest_level(Solver(circuit), "d", 20.0, 20e3)
    assert freq_hz == pytest.approx(1 / (2 * np.pi * np.sqrt(1e-9)), rel=1e-3)
    assert level_db == pytest.approx(20 * np.log10(np.sqrt(1e-3 / 1e-6)), abs=0.01)


@pytest.mark.parametrize("place", [0.001, 0.47, 0.999])
def test_a_bare_resonance_is_found_anywhere_between_two_points(place: float) -> None:
    """Also in the first and in the last of the parts into which what lies between is divided."""
    assert 1 / REFINEMENT > 0.001
    resonance = 1 / (2 * np.pi * np.sqrt(1e-3 * 1e-6))
    low = resonance * 1.02**-place
    circuit = network(["V1 in 0", "L1 in a 1e-3", "C1 a 0 1e-6", "R1 in 0 8"], ["d a 0"])
    solver = Solver(circuit)
    grid = low * 1.02 ** np.arange(-1.0, 3.0)
    assert bare_resonances(solver, "V1", grid, {}) == pytest.approx((resonance,), rel=1e-6)


def test_a_share_is_hottest_where_most_current_flows() -> None:
    """A resistor in a series trap: at the resonance, and not where nothing flows."""
    circuit = network(["V1 in 0", "L1 in a 1e-3", "C1 a b 1e-6", "R1 b 0 8"])
    resonance = 1 / (2 * np.pi * np.sqrt(1e-3 * 1e-6))
    freq_hz = np.array([100.0, resonance, 15e3])
    (share,) = (one for one in shares(Solver(circuit).solve(freq_hz)) if one.label == "R1")
    assert share.hottest_hz == resonance
    assert share.watt == pytest.approx(1 / 8)


SHAPES = [(100.0, 8.0, 3.0), (300.0, 7.0, 4.0), (900.0, 6.0, 5.0), (2500.0, 9.0, 6.0), (7000.0, 5.0, 8.0)]
"""Resonances far apart: Hz, ohm, Q."""


def search_of(shapes: list[tuple[float, float, float]], ripple: float = 0.0) -> fit._Search:
    freq_hz = np.geomspace(20, 20e3, 600)
    s = 2j * np.pi * freq_hz
    curve = 6 + sum((fit._resonance(ohm, 2 * np.pi * hz, q, s) for hz, ohm, q in shapes), np.zeros_like(s))
    curve = curve * (1 + ripple * np.sin(40 * np.log(freq_hz)))
    return fit._Search(freq_hz, curve, curve, 6.0, 0.0)


def test_resonances_are_read_off_the_peaks() -> None:
    """The highest first, each with its place and width; a ripple of 0.5 % is none."""
    found = search_of(SHAPES[:3], ripple=0.005).peaks()
    wanted = sorted(SHAPES[:3], key=lambda shape: -shape[1])
    assert [centre for centre, _ in found] == pytest.approx([2 * np.pi * hz for hz, _, _ in wanted], rel=0.02)
    assert [q for _, q in found] == pytest.approx([q for *_, q in wanted], rel=0.15)


def test_of_many_peaks_room_for_one_more_resonance_is_left() -> None:
    six = [*SHAPES, (17e3, 4.0, 9.0)]
    assert len(search_of(six).peaks()) == fit.MOST_RESONANCES - 1 == 5


def test_a_curve_that_falls_at_its_start_has_a_resonance_below_it() -> None:
    """Seen from above a resonance the reactance is negative: it is begun at 0.7 of the lowest frequency."""
    ((centre, _),) = search_of([(12.0, 30.0, 2.0)]).peaks()
    assert centre == pytest.approx(0.7 * 2 * np.pi * 20)


def test_a_long_table_is_thinned_from_its_first_point_to_its_last() -> None:
    freq_hz = np.linspace(20.0, 20_000.0, 5000)
    wanted = np.ones(5000, np.complex128)
    kept, _, _ = fit._thinned(freq_hz, wanted, wanted)
    assert (kept[0], kept[-1]) == (20.0, 20_000.0)
    assert kept.size <= fit._POINTS
