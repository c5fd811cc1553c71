"""Resonances narrower than the step of a sweep: figures that a small change of a value changes only a little.

Sources: the series circuit of any textbook, |Z| = R at resonance and Q = sqrt(L/C) / R; the power of pink noise in it,
the integral of 1 / (R^2 (1 + Q^2 (x - 1/x)^2)) over ln x, which is pi / (2 Q R^2) for a Q far above 1.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise
from math import log, pi, sqrt

import numpy as np
import pytest

from response.circuits import network
from shuntwise.api import load_text
from shuntwise.checks.page import page_of
from shuntwise.network.network import Network
from shuntwise.response.cases import solve_cases
from shuntwise.response.measures import bare_resonances
from shuntwise.response.peaks import gathered_sweep
from shuntwise.response.solve import Solver
from shuntwise.stress.stress import Stress, work_out

MILLIHENRY = np.arange(1.0, 1.0501, 0.005)


def box(coil_mh: float, coil: str, programme: str = "") -> str:
    return f"""
design "A coil that is wound anew"
amplifier 60 W into 8 ohm {{ least 4 ohm{programme} }}
driver woofer 8 ohm {{ re 6.4 ohm, le 0.2 mH, fs 61 Hz, qms 4.5, qes 0.48, 100 W }}
driver tweeter 8 ohm {{ re 6.9 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }}
coil L1 {coil_mh:.4f} mH {{ {coil}5 %, air core }}
capacitor C1 10 uF {{ 5 %, 250 V, film }}
resistor R1 2.2 ohm {{ 5 %, 20 W, wirewound }}
capacitor C2 4.7 uF {{ 5 %, 250 V, film }}
coil L2 0.3 mH {{ dcr 0.02 ohm, 5 %, air core }}
capacitor C3 4.7 uF {{ 5 %, 250 V, film }}
leg woofer {{
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- woofer-
  woofer- -- return
}}
leg tweeter {{
  input+ -- C2 -- a -- C3 -- R1 -- tweeter+
  a -- L2 -- return
  tweeter- -- return
}}
"""


def stress_of(text: str) -> Stress:
    made = load_text(text)
    assert isinstance(made.lowered, Network)
    found = work_out(made.design, Solver(made.lowered))
    assert isinstance(found, Stress)
    return found


def sweep_of_values(dcr: str, programme: str) -> Iterator[tuple[float, ...]]:
    """For each coil: the least load (ohm) and the current (A) without the woofer, the peaks (V) on its capacitor."""
    for coil_mh in MILLIHENRY:
        stress = stress_of(box(float(coil_mh), f"dcr {dcr} ohm, ", programme))
        least, current_a = stress.unplugged_loads("input")["woofer"]
        bears = stress.bears_unplugged("C1")["woofer"]
        yield least.ohm, current_a, bears.programme_peak_v, bears.peak_v


@pytest.mark.parametrize("programme", ["", ", programme sine"])
@pytest.mark.parametrize("dcr", ["0.25", "0.06", "0.02", "0.002"])
def test_a_small_change_of_a_coil_changes_what_is_left_without_the_woofer_a_little(dcr: str, programme: str) -> None:
    """L in steps of 0.5 %: Q and with it voltages change by 0.25 %, the least load by nothing."""
    for before, after in pairwise(sweep_of_values(dcr, programme)):
        assert after == pytest.approx(before, rel=0.01)


def test_a_small_change_of_a_coil_changes_what_a_failure_leaves_a_little() -> None:
    """C3 open leaves C2 and L2 across the amplifier: the coil's 0.02 ohm, whatever the grid."""
    for coil_mh in np.arange(0.3, 0.3151, 0.0015):
        text = box(1, "dcr 0.25 ohm, ").replace("L2 0.3 mH", f"L2 {coil_mh:.5f} mH")
        (failure,) = (f for f in stress_of(text).failures if f.label == "C3" and not f.shorted)
        assert failure.least_ohm == pytest.approx(0.02, rel=0.01)


@pytest.mark.parametrize("ohm", [0.5, 0.1, 0.02, 0.002])
def test_pink_noise_in_a_bare_resonance(ohm: float) -> None:
    text = f"""
amplifier 50 W into 8 ohm {{ least 4 ohm, programme pink }}
driver woofer 8 ohm
coil L1 1 mH {{ dcr {ohm} ohm }}
capacitor C1 10 uF
leg woofer {{
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- woofer-
  woofer- -- return
}}
"""
    stress = stress_of(text)
    least, current_a = stress.unplugged_loads("input")["woofer"]
    q = sqrt(1e-3 / 10e-6) / ohm
    assert least.ohm == pytest.approx(ohm, rel=2e-3)
    assert least.freq_hz == pytest.approx(1 / (2 * pi * 1e-4), rel=0.01)
    assert current_a == pytest.approx(sqrt(200) * sqrt(pi / (2 * q * ohm**2) / log(1000)), rel=0.01)


def test_a_failure_that_leaves_a_coil_without_resistance_bare_is_not_judged() -> None:
    """Without a `dcr` the load would fall to nothing at all: a fact that is lacking, not a mistake."""
    text = box(1, "dcr 0.25 ohm, ").replace("dcr 0.02 ohm, ", "")
    made = load_text(text)
    told = [finding.subjects for finding in made.findings if finding.name == "one-part-fails"]
    lacks = [(entry.lacks, entry.subjects) for entry in made.not_checked if entry.name == "one-part-fails"]
    assert told == [("C2",)]  # shorted, it puts the coil across the amplifier
    assert lacks == [("the `dcr` of `L2`", ("C3", "L2")), ("the `dcr` of `L2`", ("R1", "L2"))]


def test_a_frequency_on_a_lossless_resonance_is_looked_at_beside_it() -> None:
    """C1 and L1 in series short the input at that very frequency; the rest is found as if it were not there."""
    resonance = 1 / (2 * pi * sqrt(1e-3 * 10e-6))
    lines = ["V1 in 0", "L1 in a 1e-3", "C1 a 0 10e-6", "L2 in b 0.2e-3", "C2 b 0 4.7e-6", "R3 in 0 8"]
    solver = Solver(network(lines))
    grid = np.sort(np.concatenate([np.geomspace(20, 20e3, 480), [resonance]]))
    wanted = [resonance, 1 / (2 * pi * sqrt(0.2e-3 * 4.7e-6))]
    assert bare_resonances(solver, "V1", grid, {}) == pytest.approx(wanted, rel=1e-8)
    # Two lossless traps in a row: at their frequency nothing fixes the voltage between them.
    traps = Solver(network(["V1 in 0", "L1 in a 1e-3", "C1 in a 10e-6", "L2 a 0 1e-3", "C2 a 0 10e-6"]))
    assert bare_resonances(traps, "V1", grid, {}) == ()
    assert solve_cases(traps, [{}], grid).admittance("V1").shape == (1, grid.size)


def test_points_are_gathered_about_what_is_narrow_and_nowhere_else() -> None:
    blunt = Solver(network(["V1 in 0", "R1 in a 2", "L1 a b 1e-3", "C1 b 0 10e-6"]))
    sharp = Solver(network(["V1 in 0", "R1 in a 0.01", "L1 a b 1e-3", "C1 b 0 10e-6"]))
    step = np.diff(np.log(gathered_sweep(blunt, [{}])))
    assert step == pytest.approx(step[0])
    points = gathered_sweep(sharp, [{}])
    assert np.abs(points - 1 / (2 * pi * 1e-4)).min() < 0.01 / (4 * pi * 1e-3)  # half the width between half powers


def test_the_page_tells_the_load_that_the_tool_finds() -> None:
    """The page names a coil, its resistance and a capacitor, and what they are without their woofer."""
    prose = page_of("unplugged-collapse").why
    figure = re.search(r"1\.0 mH of 0\.25 ohm and 10 uF, without their woofer, are (\S+) ohm at (\S+) kHz", prose)
    assert figure is not None
    least, _ = stress_of(box(1, "dcr 0.25 ohm, ")).unplugged_loads("input")["woofer"]
    assert (f"{least.ohm:.2g}", f"{least.freq_hz / 1e3:.2g}") == figure.groups()
