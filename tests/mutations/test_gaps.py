"""Facts that one changed line in the numerical folders would break, each against a closed form or a loop."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from response.circuits import network
from rules.test_ratings import evidence_of
from shuntwise.api import load_text
from shuntwise.api import network as network_of
from shuntwise.checks.rated import next_rating
from shuntwise.figures.builds import crossings_of_builds
from shuntwise.figures.curves import square_to_db
from shuntwise.figures.figure import Corner
from shuntwise.figures.nominal import Nominal
from shuntwise.response.cases import opened, solve_cases
from shuntwise.response.measures import FLOOR_DB, corners
from shuntwise.response.solve import Solver
from shuntwise.tolerance.draws import element_values, varying
from shuntwise.tolerance.first_order import figure_effects
from shuntwise.tolerance.spread import spread

FREQ_HZ = np.geomspace(20, 20e3, 61)


def test_an_open_coil_no_longer_couples() -> None:
    """A coil whose circuit is open carries no current, so the other has its own inductance and nothing else."""
    lines = ["V1 in 0", "R1 in a 8", "L1 a 0 1e-3", "L2 in b 2e-3", "R2 b 0 4", "K1 L1 L2 0.9"]
    solver = Solver(network(lines, ["d a 0"]))
    branch = next(b for b in solver.network.branches if b.label == "L2")
    found = solve_cases(solver, [opened(solver.network, branch)], FREQ_HZ).driver_voltage("d")[0]
    s = 2j * np.pi * FREQ_HZ
    assert found == pytest.approx(s * 1e-3 / (8 + s * 1e-3), rel=1e-6)


@pytest.mark.parametrize("off", [1e-4, 1e-6, 1e-8])
def test_a_nearly_cancelling_node_is_solved_with_care(off: float) -> None:
    """A node that a coil and a capacitor hold, nearly resonant there: what is left of them is `off` of each.

    The voltage by hand: y of three branches at the node, 1/R from the input, and two branches of a lattice.
    """
    inductance, omega = 1e-3, 2 * np.pi * 1000.0
    capacitance = (1 + off) / (omega**2 * inductance)
    lines = [
        "V1 in 0",
        "R1 in m 1000",
        f"L1 m a {inductance!r}",
        f"C1 m b {capacitance!r}",
        "R2 a 0 1e-3",
        "R3 b 0 2e-3",
        "R4 a b 50",
        "R5 in a 30",
        "R6 in b 70",
    ]
    circuit = network(lines, ["d m 0"])
    found = Solver(circuit).solve([1000.0])
    s = 1j * omega
    nodes = ["m", "a", "b"]
    matrix, right = np.zeros((3, 3), complex), np.zeros(3, complex)
    for element in circuit.elements:
        admittance = {"R": 1 / element.value, "L": 1 / (s * element.value), "C": s * element.value}[element.kind]
        for one, other in ((element.plus, element.minus), (element.minus, element.plus)):
            if one in nodes:
                matrix[nodes.index(one), nodes.index(one)] += admittance
                if other in nodes:
                    matrix[nodes.index(one), nodes.index(other)] -= admittance
                elif other == "in":
                    right[nodes.index(one)] += admittance
    exact = np.linalg.solve(matrix, right)[0]
    assert found.driver_voltage("d")[0] == pytest.approx(exact, rel=1e-15 / off + 1e-12)
    assert found.residual < 1e-12


def test_a_watched_ratio_of_ten_thousand_is_solved_again() -> None:
    """The points at which a mesh node's total nearly vanishes are few, and are flagged."""
    inductance, capacitance = 1e-3, 1e-6
    resonance = 1 / (2 * np.pi * np.sqrt(inductance * capacitance))
    lines = ["V1 in 0", f"L1 in m {inductance!r}", f"C1 m 0 {capacitance!r}", "R1 m a 1e6", "R2 in a 5", "R3 a b 9",
             "R4 m b 2e6", "R5 b 0 7", "R6 a 0 11"]  # fmt: skip
    near = Solver(network(lines, ["d b 0"])).solve([resonance * (1 + 1e-5)])
    far = Solver(network(lines, ["d b 0"])).solve([resonance * 1.5])
    assert near.driver_voltage("d").shape == (1,) and near.fallback_points == 1
    assert far.driver_voltage("d").shape == (1,) and far.fallback_points == 0


def test_a_long_ladder_stays_in_the_range_of_numbers() -> None:
    """100 sections of 1e5 ohm and 1e-3 ohm: their products, never divided, would be 1e800. The input sees the first."""
    lines, here = ["V1 in 0"], "in"
    for k in range(100):
        lines += [f"R{k}a {here} n{k} 1e5", f"R{k}b n{k} 0 1e-3"]
        here = f"n{k}"
    found = Solver(network(lines)).solve([1000.0])
    assert found.admittance("V1")[0] == pytest.approx(1 / (1e5 + 1e-3 * (1 - 1e-8)), rel=1e-12)
    assert found.fallback_points == 0


def test_a_tapped_coil_without_more_words() -> None:
    """Resistance goes as turns, turns as the root of inductance; the coupling is the one that the reference states."""
    text = (
        "driver woofer 8 ohm\ntapped coil T1 4 mH { tap 1 mH, dcr 0.8 ohm }\nleg woofer {\n  input+ -- T1.end\n"
        "  T1.tap -- woofer+\n  T1.start -- return\n  woofer- -- return\n}\n"
    )
    circuit = network_of(load_text(text))
    resistances = sorted(e.value for e in circuit.elements if e.kind == "R" and e.part == "T1")
    assert resistances == pytest.approx([0.4, 0.4])
    (coupling,) = circuit.couplings
    assert coupling.k == 0.98
    first, second = (e.value for e in circuit.elements if e.kind == "L" and e.part == "T1")
    assert first + second + 2 * coupling.k * np.sqrt(first * second) == pytest.approx(4e-3)


TILTED = """driver woofer 8 ohm { re 6 ohm, le 0.8 mH }
coil L1 1 mH { dcr 0.3 ohm, 10 % }
capacitor C1 150 uF { 10 % }
resistor R1 6.8 ohm { 10 % }
resistor R2 15 ohm { 10 % }
leg woofer {
  input+ -- (C1 | R1) -- L1 -- woofer+
  woofer+ -- R2 -- woofer-
  woofer- -- return
}
"""


def test_a_corner_moves_with_all_points_of_its_reference() -> None:
    """Where the level that a band mostly has is met at points that move differently: against central differences."""
    made = load_text(TILTED)
    circuit = network_of(made)
    parts = varying(made.design, circuit).parts
    figure = Corner(("woofer",), 1000.0, 3.0)
    nominal = Nominal(Solver(circuit))
    assert len(nominal.band("woofer").common_hz) in (2, 3)
    effects = figure_effects(nominal.solver, parts, figure.terms(nominal))
    step = 1e-4
    for i in range(len(parts)):
        ends = []
        for sign in (1, -1):
            offsets = np.zeros((len(parts), 1))
            offsets[i] = sign * step
            values = element_values(circuit, parts, offsets)
            elements = (replace(e, value=float(values[e.name][0])) if e.name in values else e for e in circuit.elements)
            other = Nominal(Solver(replace(circuit, elements=tuple(elements))))
            # The same points are taken: which of them are the most common may change at a step.
            level = np.mean([other.level_db("woofer", freq) for freq in nominal.band("woofer").common_hz])
            ends.append(figure_at(other, float(level), figure))
        assert (ends[0] - ends[1]) / (2 * step) == pytest.approx(effects[i], rel=1e-4, abs=1e-4)


def figure_at(circuit: Nominal, reference_db: float, figure: Corner) -> float:
    found = corners(circuit.solver, "woofer", figure.below_db, 20.0, 20e3, reference_db)
    return min(found, key=lambda freq: abs(np.log(freq / figure.near_hz)))


def test_the_worst_found_are_the_corners_of_all_tolerances() -> None:
    """Three builds seldom come near the corners: the worst of all 16 cases are solved one by one."""
    made = load_text(TILTED)
    circuit = network_of(made)
    parts = varying(made.design, circuit).parts
    result = spread(made.design, circuit, builds=3, seed=4)
    assert result.all_corners and result.corners == 2 ** len(parts)
    least = next(one for one in result.figures if one.figure.name.startswith("least impedance"))
    ohms = []
    for case in range(2 ** len(parts)):
        signs = np.array([[1.0 if case >> i & 1 else -1.0] for i in range(len(parts))])
        values = element_values(circuit, parts, signs)
        elements = (replace(e, value=float(values[e.name][0])) if e.name in values else e for e in circuit.elements)
        ohms.append(Nominal(Solver(replace(circuit, elements=tuple(elements)))).extreme_impedance("input").ohm)
    assert least.worst == pytest.approx((min(ohms), max(ohms)), rel=1e-4)
    assert least.worst[0] < least.percentiles[0] and least.worst[1] > least.percentiles[-1]


@pytest.mark.parametrize(("fs", "refused"), [("0.9 Hz", True), ("1 Hz", False), ("20 kHz", False), ("21 kHz", True)])
def test_a_resonance_is_within_what_can_be_heard(fs: str, refused: bool) -> None:
    made = load_text(f"driver woofer 8 ohm {{ re 6 ohm, fs {fs}, qms 5, qes 0.5 }}\n")
    assert ("value-absurd" in {finding.name for finding in made.findings}) == refused


AMPLIFIER = "amplifier 100 W into 8 ohm { programme sine }\n"


def test_currents_into_two_terminals_are_added_with_their_signs() -> None:
    """Two equal resistors from one node to the return, one the other way round: both currents flow off the node."""
    evidence = evidence_of(
        AMPLIFIER + "driver woofer 8 ohm\nresistor R1 8 ohm\nresistor R2 8 ohm\nleg woofer {\n  input+ -- woofer+\n"
        "  woofer- -- return\n  input+ -- R1 -- return\n  return -- R2 -- input+\n}\n"
    )
    stress = evidence.stress
    one = stress.programme_current([("R1", "start")])
    assert one == pytest.approx(np.sqrt(100 * 8) / 8, rel=1e-9)
    assert stress.programme_current([("R1", "start"), ("R2", "end")]) == pytest.approx(2 * one, rel=1e-9)
    assert stress.programme_current([("R1", "start"), ("R2", "start")]) == pytest.approx(0, abs=1e-9)


@pytest.mark.parametrize("part", ["capacitor C1 20 uF", "coil L1 0.6 mH"])
def test_a_hard_angle_is_hard_either_way(part: str) -> None:
    """A reactance beside 8 ohm: the least modulus beyond 45 degrees is 8/sqrt(2), whichever sign the angle has."""
    label = part.split()[1]
    evidence = evidence_of(
        AMPLIFIER + f"driver woofer 8 ohm\n{part}\nleg woofer {{\n  input+ -- woofer+\n  woofer- -- return\n"
        f"  input+ -- {label} -- return\n}}\n"
    )
    value = {"C": 20e-6, "L": 0.6e-3}[label[0]]
    freq = evidence.stress.working.freq_hz
    reactance = 1j * 2 * np.pi * freq * value if label[0] == "L" else 1 / (1j * 2 * np.pi * freq * value)
    impedance = 8 * reactance / (8 + reactance)
    beyond = np.abs(np.degrees(np.angle(impedance))) > 45
    least, angle_deg = evidence.stress.least_load_at_angle("input", 45.0)
    assert least.ohm == pytest.approx(np.abs(impedance[beyond]).min(), rel=1e-6)
    assert (angle_deg < -45) if label == "C1" else (angle_deg > 45)


ROW = [(0.7, 0.7), (1, 1), (1.01, 1.5), (9.9, 10), (10.1, 15), (12, 15), (31, 40), (63, 63), (64, 70), (101, 150)]


@pytest.mark.parametrize(("least", "step"), ROW)
def test_the_next_rating_is_the_next_in_the_row(least: float, step: float) -> None:
    """Steps in which parts are commonly sold: common practice, no source."""
    assert next_rating(least) == pytest.approx(step)


def test_no_level_is_below_the_floor() -> None:
    assert square_to_db([0.0, 1e-30, 1.0]) == pytest.approx([FLOOR_DB, FLOOR_DB, 0.0])


def test_all_corners_are_solved_up_to_ten_parts() -> None:
    """With eleven only those that the sensitivities point at."""
    for count in (10, 11):
        parts = "".join(f"resistor R{k} 1 ohm {{ 5 % }}\n" for k in range(count))
        walk = " -- ".join(f"R{k}" for k in range(count))
        made = load_text(
            f"driver woofer 8 ohm\n{parts}leg woofer {{\n  input+ -- {walk} -- woofer+\n  woofer- -- return\n}}\n"
        )
        result = spread(made.design, network_of(made), builds=2)
        assert result.all_corners == (count == 10)
        assert result.corners == (1024 if count == 10 else 2)


def test_a_figure_that_no_part_moves_has_no_shares() -> None:
    """The tweeter hangs straight on the amplifier: its level does not depend on the woofer's coil."""
    made = load_text(
        "driver woofer 8 ohm\ndriver tweeter 8 ohm\ncoil L1 1 mH { 5 % }\nleg woofer {\n  input+ -- L1 -- woofer+\n"
        "  woofer- -- return\n}\nleg tweeter {\n  input+ -- tweeter+\n  tweeter- -- return\n}\n"
    )
    result = spread(made.design, network_of(made), builds=5)
    level = next(one for one in result.figures if one.figure.name.startswith("level of tweeter"))
    assert level.deviation == 0 and [one.share for one in level.influences] == [0.0]


def test_the_residual_is_a_share_of_what_flows() -> None:
    """A million amperes leave no more of Kirchhoff's laws undone, in proportion, than a milliampere."""
    for ohm in (1e-6, 1e3):
        sizes = (1.0, 1.7, 2.3, 0.61, 3.37)
        ends = ("in a", "a 0", "a b", "b 0", "in b")
        lines = ["V1 in 0", *(f"R{i} {e} {n * ohm!r}" for i, (e, n) in enumerate(zip(ends, sizes, strict=True)))]
        assert Solver(network(lines, ["d b 0"])).solve([1000.0]).residual < 1e-13


@pytest.mark.parametrize("crossing_hz", [110.0, 150.0, 431.0, 980.0])
def test_a_crossing_is_found_at_both_ends_of_the_grid(crossing_hz: float) -> None:
    """|V|^2 = (f / f_c)^2 crosses 1 at f_c: a straight line of level over log frequency, exact for a cubic."""
    freq_hz = np.geomspace(100.0, 1000.0, 12)
    square = ((freq_hz / crossing_hz) ** 2)[:, None]
    found = crossings_of_builds(freq_hz, square, np.ones_like(square), 300.0)
    assert found == pytest.approx([crossing_hz], rel=1e-9)
