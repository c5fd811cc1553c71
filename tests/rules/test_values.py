"""One wrong value, one finding: the checks on values, and what they must not say.

Windows and factors are common practice, no source, unless said beside a case.
"""

from __future__ import annotations

import csv
from math import pi
from pathlib import Path

import numpy as np
import pytest

from rules import boxes
from rules.boxes import changed, found_in
from shuntwise.api import load_text
from shuntwise.checks.values.coil_facts_disagree import least_resistance
from shuntwise.figures.band import band_places, reference_db
from shuntwise.model.preferred import E6, E12, E24, E96, nearest_in
from shuntwise.stress.copper import BROOKS_H_PER_M, COPPER_OHM_M
from shuntwise.structure.crossovers import BUTTERWORTH

REFERENCE = Path(__file__).parents[1] / "reference"

SLIPS = {
    "a tweeter's coil ten times too large": (
        boxes.SECOND_ORDER, [("L2 0.82 mH", "L2 8.2 mH")], [("decimal-slip", "8.2 mH")]),
    "a woofer's coil ten times too small": (
        boxes.SECOND_ORDER, [("L1 0.82 mH", "L1 0.082 mH")], [("decimal-slip", "0.082 mH")]),
    "a woofer's capacitor ten times too large": (
        boxes.THREE_WAY, [("C1 27 uF", "C1 270 uF")], [("decimal-slip", "270 uF")]),
    "a tweeter's capacitor ten times too small": (
        boxes.THIRD_ORDER, [("C2 5.6 uF", "C2 0.56 uF")], [("decimal-slip", "0.56 uF")]),
    "a coil in microhenry": (boxes.ZOBEL, [("L1 0.56 mH", "L1 0.56 uH")], None),
    "a capacitor a thousand times too small": (
        boxes.HORN, [("C1 10 uF", "C1 10 nF")], [("decimal-slip", "10 nF")]),
    "a pad's resistor a hundred times too large": (
        boxes.HORN, [("R1 3.9 ohm", "R1 390 ohm")], [("decimal-slip", "390 ohm")]),
    "a pad's resistor ten times too large": (
        boxes.HORN, [("R1 3.9 ohm", "R1 39 ohm")], [("pad-load-off", "R1"), ("level-out-of-line", "tweeter+")]),
    "a pad's two values exchanged": (
        boxes.HORN, [("R1 3.9 ohm", "R1 8.2 ohm"), ("R2 8.2 ohm", "R2 3.9 ohm")], [("pad-load-off", "R1")]),
    "a value between two of the series": (
        boxes.HORN, [("C1 10 uF", "C1 9.5 uF")], [("off-series", "9.5 uF")]),
    "a Zobel's capacitor too small": (
        boxes.ZOBEL, [("C1 22 uF", "C1 6.8 uF")], [("zobel-off", "6.8 uF")]),
    "a Zobel's resistor too large": (
        boxes.ZOBEL, [("R1 6.8 ohm", "R1 15 ohm")], [("zobel-off", "15 ohm")]),
    "a notch's coil ten times too large": (
        boxes.NOTCH, [("L2 0.33 mH", "L2 3.3 mH")], [("trap-too-broad", "L2")]),
    "a filter ten times too high": (
        boxes.FIRST_ORDER, [("L1 0.47 mH { dcr 0.2 ohm }", "L1 4.7 mH")], [("corner-gap", "tweeter+")]),
    "a filter far too high for a first order": (
        boxes.FIRST_ORDER, [("L1 0.47 mH { dcr 0.2 ohm }", "L1 0.068 mH")], [("corner-overlap", "tweeter+")]),
    "a tweeter with too high a resonance": (
        boxes.SECOND_ORDER, [("fs 820 Hz", "fs 1.8 kHz")], [("tweeter-too-low", "1.8 kHz")]),
    # A second-order low-pass drawn for 8 ohm, into a plain 5.6 ohm and 0.8 mH: + 8.7 dB (calculated).
    "a filter drawn for a resistor, into a voice coil": (
        boxes.SECOND_ORDER,
        [("re 5.9 ohm, le 0.4 mH, fs 61 Hz, qms 4.5, qes 0.48", "re 5.6 ohm, le 0.8 mH")],
        [("loaded-peak", "woofer+")]),
    "a bypass of 0.1 uF": (
        boxes.THREE_WAY,
        [("coil L2", "capacitor C9 0.1 uF\ncoil L2"), ("woofer+ -- C1 --", "woofer+ -- (C1 | C9) --")],
        [("no-effect-part", "C9")]),
    "a coil of too little resistance for its wire": (
        boxes.FIRST_ORDER,
        [("L1 0.47 mH { dcr 0.2 ohm }", "L1 0.47 mH { dcr 0.1 ohm, wire 1 mm, air core }")],
        [("coil-facts-disagree", "0.47 mH")]),
}  # fmt: skip


AUTOTRANSFORMER = """
driver woofer 8 ohm { re 5.9 ohm, le 0.4 mH, fs 61 Hz, qms 4.5, qes 0.48 }
driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH, fs 820 Hz, qms 2.2, qes 1.4 }
coil L1 0.82 mH { dcr 0.28 ohm }
capacitor C1 6.8 uF
capacitor C2 1.5 uF
tapped coil T1 3.3 mH { tap 0.82 mH, dcr 0.4 ohm }
leg woofer {
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- woofer-
  woofer- -- return
}
leg tweeter {
  input+ -- C2 -- T1.end
  T1.tap -- tweeter-
  T1.start -- return
  tweeter+ -- return
}
"""
SUBWOOFER = """
driver sub 8 ohm { role woofer, re 5.9 ohm, le 0.9 mH, fs 31 Hz, qms 4.5, qes 0.48 }
driver mid 8 ohm { re 6.2 ohm, le 0.2 mH, fs 62 Hz, qms 3.2, qes 0.4 }
coil L1 18 mH { dcr 0.3 ohm }
capacitor C1 150 uF
capacitor C2 150 uF
coil L2 18 mH { dcr 0.3 ohm }
leg sub {
  input+ -- L1 -- sub+
  sub+ -- C1 -- sub-
  sub- -- return
}
leg mid {
  input+ -- C2 -- mid-
  mid- -- L2 -- mid+
  mid+ -- return
}
"""
SUBWOOFER_ALONE = """
driver sub 8 ohm { role woofer, re 5.9 ohm, le 0.9 mH, fs 31 Hz, qms 4.5, qes 0.48 }
coil L1 18 mH { dcr 0.3 ohm }
leg sub {
  input+ -- L1 -- sub+
  sub- -- return
}
"""
BYPASSED = changed(
    boxes.SECOND_ORDER,
    ("coil L2", "capacitor C9 10 nF\ncoil L2"),
    ("input+ -- C2 --", "input+ -- (C2 | C9) --"),
)


@pytest.mark.parametrize("text", [AUTOTRANSFORMER, SUBWOOFER, SUBWOOFER_ALONE, BYPASSED])
def test_unusual_values_that_fit_are_no_slips(text: str) -> None:
    """8 ohm at half the turns are 32 ohm, for which C = 0.707 / (2 pi f R) is a quarter; L = 1.414 R / (2 pi 100 Hz) is
    18 mH for a subwoofer; a small film capacitor beside a large one is common practice, no source.
    """
    assert "decimal-slip" not in [name for name, _ in found_in(text)]


@pytest.mark.parametrize(
    ("text", "old", "new"),
    [
        (AUTOTRANSFORMER, "C2 1.5 uF", "C2 15 uF"),
        (AUTOTRANSFORMER, "C2 1.5 uF", "C2 0.15 uF"),
        (SUBWOOFER, "L1 18 mH", "L1 180 mH"),
        (SUBWOOFER_ALONE, "L1 18 mH", "L1 180 mH"),
        (boxes.SECOND_ORDER, "L1 0.82 mH", "L1 18 mH"),
        (boxes.HORN, "C1 10 uF", "C1 10 nF"),
    ],
)
def test_unusual_values_that_do_not_fit_are_slips(text: str, old: str, new: str) -> None:
    assert found_in(changed(text, (old, new)))[:1] == [("decimal-slip", new.partition(" ")[2])]


@pytest.mark.parametrize("situation", SLIPS)
def test_one_wrong_value_has_one_finding(situation: str) -> None:
    text, changes, expected = SLIPS[situation]
    found = found_in(changed(text, *changes))
    if expected is None:
        assert found and {name for name, _ in found} <= {"value-absurd", "decimal-slip"}
    else:
        assert found == expected


NEAR_MISSES = {
    "steeper than a Butterworth filter": (boxes.SECOND_ORDER, [("L2 0.82 mH", "L2 0.56 mH")]),
    "softer than a Butterworth filter": (boxes.SECOND_ORDER, [("L2 0.82 mH", "L2 1.2 mH")]),
    "a measured value": (boxes.HORN, [("C1 10 uF", "C1 9.873 uF")]),
    "a value worked out": (boxes.HORN, [("C1 10 uF", "C1 20 uF / 2.1")]),
    "a value of E96 in a close part": (boxes.HORN, [("C1 10 uF", "C1 9.76 uF { 1 % }")]),
    "a coil of no series": (boxes.HORN, [("L1 1.0 mH", "L1 0.95 mH")]),
    "a Zobel of a slightly larger resistor": (boxes.ZOBEL, [("R1 6.8 ohm", "R1 8.2 ohm"), ("C1 22 uF", "C1 15 uF")]),
    "a pad of 10 dB": (boxes.HORN, [("R1 3.9 ohm", "R1 5.6 ohm"), ("R2 8.2 ohm", "R2 3.6 ohm")]),
    "a pad of 3 dB": (boxes.HORN, [("R1 3.9 ohm", "R1 2.4 ohm"), ("R2 8.2 ohm", "R2 20 ohm")]),
    "a coil of the least resistance that its wire allows": (
        boxes.FIRST_ORDER,
        [("L1 0.47 mH { dcr 0.2 ohm }", "L1 0.47 mH { dcr 0.29 ohm, wire 1 mm, air core }")],
    ),
    "a cored coil of little resistance": (
        boxes.FIRST_ORDER,
        [("L1 0.47 mH { dcr 0.2 ohm }", "L1 0.47 mH { dcr 0.08 ohm, wire 1 mm, ferrite core }")],
    ),
    "a third order with a lower corner": (boxes.THIRD_ORDER, [("fs 760 Hz", "fs 1.2 kHz")]),
}


@pytest.mark.parametrize("situation", NEAR_MISSES)
def test_near_miss_has_no_finding(situation: str) -> None:
    text, changes = NEAR_MISSES[situation]
    assert found_in(changed(text, *changes)) == []


@pytest.mark.parametrize(
    ("situation", "limit"),
    [
        ("a tweeter with too high a resonance", "limit tweeter-too-low 0.9"),
        ("a filter drawn for a resistor, into a voice coil", "limit loaded-peak 12 dB"),
        ("a filter far too high for a first order", "limit corner-overlap 4 octave"),
        ("a notch's coil ten times too large", "limit trap-too-broad 0.2"),
        ("a pad's two values exchanged", "limit pad-load-off 50 %"),
        ("a bypass of 0.1 uF", "limit no-effect-part 0.01 dB"),
    ],
)
def test_limit_moves_the_bound(situation: str, limit: str) -> None:
    text, changes, _ = SLIPS[situation]
    assert found_in(changed(text, *changes) + limit + "\n") == []


def test_slip_offers_the_shifted_value() -> None:
    from rules.compiling import findings_of
    from shuntwise.source import Source

    text = changed(boxes.SECOND_ORDER, ("L2 0.82 mH", "L2 8.2 mH"))
    (finding,) = findings_of(Source("box.shunt", text), boxes.SHAPED)
    assert finding.fixes[0].edits[0].text == "0.82 mH"


# --- the numbers inside


def series(name: str) -> list[float]:
    """One decade of IEC 60063:2015, tests/reference/01_e_series.csv."""
    rows = csv.reader((REFERENCE / "01_e_series.csv").open(encoding="utf-8"))
    return [float(row[2]) for row in rows if row[0] == name]


def test_series_are_those_of_the_standard() -> None:
    assert sorted(E6) == sorted(series("E6"))
    assert sorted(E12) == sorted(series("E12"))
    assert sorted(E24) == series("E24")
    assert sorted(E96) == series("E96")


@pytest.mark.parametrize("value", [0.95e-6, 9.6e-6, 4.0, 99.0, 1.0e-5])
def test_nearest_value_is_the_nearest_by_ratio(value: float) -> None:
    candidates = [number * 10.0**decade for number in series("E24") for decade in range(-8, 4)]
    expected = min(candidates, key=lambda c: abs(np.log(c / value)))
    assert nearest_in(E24, value) == pytest.approx(expected)


@pytest.mark.parametrize("order", [1, 2, 3, 4])
def test_butterworth_values_are_those_of_the_prototypes(order: int) -> None:
    """Singly terminated, tests/reference/02_prototypes.csv (recomputed; sources there)."""
    rows = csv.DictReader((REFERENCE / "02_prototypes.csv").open(encoding="utf-8"))
    expected = [
        float(row["value"])
        for row in rows
        if (row["family"], row["termination"], row["order"]) == ("Butterworth", "single", str(order))
    ]
    assert BUTTERWORTH[order] == pytest.approx(expected, abs=5e-5)


def test_least_resistance_is_that_of_a_brooks_coil() -> None:
    """A Brooks coil of side 15 mm and 200 turns has 1.529 mH (tests/reference/06_brooks.csv, recomputed)."""
    rows = {row[0]: row[1] for row in csv.reader((REFERENCE / "06_brooks.csv").open(encoding="utf-8"))}
    assert pytest.approx(float(rows["L / (a N^2), a = mean radius"]), rel=1e-4) == BROOKS_H_PER_M
    inductance, side, turns = float(rows["example: c = 15.0 mm, N = 200"]), 15e-3, 200
    # Wire that just fills the square, packed as densely as round wires can be: pi / sqrt(12) of the area is copper.
    wire = (side**2 / turns * (12**0.5 / 2)) ** -0.5
    wire = ((side**2 * pi / 12**0.5) / turns / (pi / 4)) ** 0.5
    length = turns * 2 * pi * 1.5 * side
    assert least_resistance(inductance, wire) == pytest.approx(1e-6 / 58 * length / (pi * wire**2 / 4), rel=1e-3)


def test_copper_is_that_of_the_standard() -> None:
    """IEC 60028:1925: 1/58 ohm mm2/m at 20 C."""
    assert pytest.approx(1e-6 / 58, rel=1e-4) == COPPER_OHM_M


def test_band_ignores_a_peak_and_a_notch() -> None:
    freq = np.geomspace(20, 20e3, 121)
    level = -20 * np.log10(np.hypot(1, 300 / freq))
    level += 5 * np.exp(-(np.log(freq / 6000) ** 2) / 0.02) - 12 * np.exp(-(np.log(freq / 2000) ** 2) / 0.02)
    (first,), (last,) = band_places(level[:, None])
    assert level[first - 1] <= level.max() - 6 < level[first] and last == freq.size - 1
    assert reference_db(level[:, None]) == pytest.approx(0, abs=0.15)


@pytest.mark.parametrize(
    ("part", "severity"),
    [
        ("capacitor C1 6.8 uF { 15 % }", "advice"),
        ("capacitor C1 6.8 uF { 20 % }", "advice"),  # 6.8 is of E6, which is made to 20 %: IEC 60063
        ("capacitor C1 8.2 uF { 20 % }", "warning"),  # 8.2 is of E12, which is made to 10 %
        ("capacitor C1 6.8 uF { 25 % }", "warning"),
        ("capacitor C1 8.2 uF { 20 %, non-polar electrolytic }", None),
        ("capacitor C1 6.8 uF { 20 % }\ncapacitor C9 3.3 uF { 5 % }", "warning"),  # out of line with its like
        ("capacitor C1 6.8 uF { 20 % }\ncapacitor C9 3.3 uF { 20 % }", "advice"),  # a shelf of such parts
        ("capacitor C1 6.8 uF { 20 % }\nresistor R9 3.3 ohm { 5 % }", "advice"),
    ],
)
def test_a_tolerance_that_no_part_of_such_a_value_has_is_a_warning(part: str, severity: str | None) -> None:
    text = f"driver tweeter 8 ohm\n{part}\nleg tweeter {{\n  input+ -- C1 -- tweeter+\n  tweeter- -- return\n}}\n"
    found = [f.severity.value for f in load_text(text).findings if f.name == "tolerance-wide" and "C1" in f.subjects]
    assert found == ([severity] if severity else [])
