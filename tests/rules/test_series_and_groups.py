"""What is said of groups of drivers and of legs that are not the plain two-way: rows, pairs, series types, links.

Impedances in a row add, admittances side by side add (Kirchhoff). What a box should look like is common practice, no
source, unless said beside a case.
"""

from __future__ import annotations

import pytest

from rules import boxes
from rules.boxes import SHAPED, changed, found_in
from rules.compiling import findings_of
from shuntwise.api import load_text
from shuntwise.checks.registry import FAMILIES
from shuntwise.source import Source

TWEETER = """
driver tweeter 8 ohm { re 6.1 ohm, le 0.05 mH, fs 870 Hz, qms 2.4, qes 1.4 }
capacitor C2 5.6 uF
coil L2 0.56 mH { dcr 0.35 ohm }
leg tweeter {
  input+ -- C2 -- tweeter-
  tweeter- -- L2 -- tweeter+
  tweeter+ -- return
}
"""


def woofers(count: int, ohm: float, wiring: str, coil: str, across: str, zobel: tuple[str, str] | None = None) -> str:
    """Equal woofers of a nominal impedance, wired between `pair` and the return, behind one second-order filter."""
    names = [f"woofer{number}" for number in range(1, count + 1)]
    lines = [f"driver {name} {ohm:g} ohm {{ re {0.7375 * ohm:g} ohm, le {0.05625 * ohm:g} mH }}" for name in names]
    lines += [f"coil L1 {coil} {{ dcr 0.15 ohm }}", f"capacitor C1 {across}"]
    walks = ["input+ -- L1 -- pair", "pair -- C1 -- return", *wiring.strip().splitlines()]
    if zobel is not None:
        lines += [f"resistor R1 {zobel[0]}", f"capacitor C3 {zobel[1]}"]
        walks.append("pair -- R1 -- C3 -- return")
    return "\n".join([*lines, f"leg {' and '.join(names)} {{", *walks, "}"]) + TWEETER


ROW = """pair -- woofer1+
woofer1- -- woofer2+
woofer2- -- return"""
TWO_ROWS = f"""{ROW}
pair -- woofer3+
woofer3- -- woofer4+
woofer4- -- return"""
TIED_ROWS = f"""{TWO_ROWS}
woofer1- -- woofer3-"""
PAIR = """pair -- woofer1+
pair -- woofer2+
woofer1- -- return
woofer2- -- return"""
THREE = f"""{PAIR}
pair -- woofer3+
woofer3- -- return"""

GROUPS = {
    "four of 8 in two rows of two are 8 ohm": woofers(4, 8, TWO_ROWS, "1.0 mH", "8.2 uF"),
    "the same with the middles joined": woofers(4, 8, TIED_ROWS, "1.0 mH", "8.2 uF"),
    "four of 8 in two rows, one Zobel over all": woofers(4, 8, TWO_ROWS, "1.0 mH", "8.2 uF", ("6.2 ohm", "12 uF")),
    "two of 4 in a row, a Zobel over both": woofers(2, 4, ROW, "1.0 mH", "8.2 uF", ("6.2 ohm", "12 uF")),
    "two of 8 side by side, a Zobel over both": woofers(2, 8, PAIR, "0.56 mH", "15 uF", ("3.0 ohm", "24 uF")),
    "three of 16 side by side, a Zobel over all": woofers(3, 16, THREE, "0.68 mH", "11 uF", ("3.9 ohm", "18 uF")),
}


@pytest.mark.parametrize("text", GROUPS.values(), ids=GROUPS.keys())
def test_groups_of_woofers_are_one_load(text: str) -> None:
    assert found_in(text) == []


def test_a_zobel_over_a_row_must_fit_the_row() -> None:
    """Two equal voice coils in a row have twice the resistance and twice the inductance: R = Re, C = Le / R^2."""
    text = woofers(2, 4, ROW, "1.0 mH", "8.2 uF", ("6.2 ohm", "3.3 uF"))
    assert found_in(text) == [("zobel-off", "3.3 uF")]


def test_a_pad_before_two_tweeters_keeps_the_load_of_both() -> None:
    """A 6 dB pad for 4 ohm: 2 ohm in the path, 3.9 ohm across (common practice: R = Z (K - 1) / K, Z / (K - 1))."""
    text = """
driver woofer 4 ohm { re 3 ohm, le 0.2 mH }
driver tweeter1 8 ohm { re 6.2 ohm, le 0.05 mH }
driver tweeter2 8 ohm { re 6.2 ohm, le 0.05 mH }
coil L1 0.27 mH { dcr 0.1 ohm }
capacitor C1 15 uF
resistor R1 2 ohm
resistor R2 3.9 ohm
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
leg tweeter1 and tweeter2 {
  input+ -- C1 -- R1 -- top
  top -- R2 -- return
  top -- tweeter1+
  top -- tweeter2+
  tweeter1- -- return
  tweeter2- -- return
}
"""
    assert found_in(text) == []


RATED = ("language", "wiring", "drivers", "intent", "values", "ratings")

LOW_CUT = """
driver woofer 8 ohm { re 6.1 ohm, le 0.3 mH }
driver tweeter 8 ohm { re 6.3 ohm, le 0.04 mH, fs 850 Hz, qms 2.3, qes 1.5 }
coil L1 0.47 mH { dcr 0.2 ohm }
coil L3 15 mH { dcr 0.9 ohm, iron core }
capacitor C1 6.8 uF
capacitor C3 330 uF
leg woofer {
  input+ -- C3 -- a -- L1 -- woofer+
  a -- L3 -- return
  woofer- -- return
}
leg tweeter {
  input+ -- C1 -- tweeter+
  tweeter- -- return
}
allow cap-feeds-woofer because "a low cut for a small box"
"""

SERIES_THREE_WAY = """
driver woofer 8 ohm { re 6.1 ohm, le 0.3 mH }
driver mid 8 ohm { re 6.1 ohm, le 0.1 mH }
driver tweeter 8 ohm { re 6.3 ohm, le 0.04 mH, fs 850 Hz, qms 2.3, qes 1.5 }
coil L1 0.27 mH { dcr 0.1 ohm }
coil L2 2.7 mH { dcr 0.5 ohm }
capacitor C1 6.8 uF
capacitor C2 68 uF
leg woofer and mid and tweeter {
  input+ -- tweeter+
  tweeter- -- a -- mid+
  mid- -- b -- woofer+
  woofer- -- return
  input+ -- L1 -- a
  a -- (L2 | C1) -- b
  b -- C2 -- return
}
"""


def shares(text: str) -> list[str]:
    findings = findings_of(Source("box.shunt", text), RATED)
    return [finding.headline for finding in findings if finding.name == "coil-dcr-share"]


def test_a_coil_past_the_woofer_takes_no_share_of_it() -> None:
    """The coil of a low cut carries direct current that the woofer never gets."""
    assert shares(LOW_CUT) == []


def test_the_coils_of_a_series_type_are_in_the_woofers_path() -> None:
    """The woofer's current divides between coil and driver: ((6.1 / 6.6)^2 0.5 + (6.3 / 6.4)^2 0.1) / 8 = 6.6 %."""
    (said,) = shares(SERIES_THREE_WAY)
    assert "`L2` and `L1` is 6.6 %" in said


def horn_on_a_tap(hot: str, cold: str) -> str:
    return f"""
driver woofer 8 ohm {{ re 6 ohm, le 0.4 mH }}
driver tweeter 8 ohm {{ re 6.2 ohm, le 0.05 mH }}
coil L1 0.82 mH {{ dcr 0.2 ohm }}
capacitor C1 6.8 uF
capacitor C2 6.8 uF
tapped coil T1 0.82 mH {{ tap 0.4 mH, dcr 0.2 ohm }}
leg woofer {{
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- return
  woofer- -- return
}}
leg tweeter {{
  input+ -- C2 -- T1.end
  T1.tap -- {hot}
  T1.start -- return
  {cold} -- return
}}
"""


def test_a_tapped_coil_is_one_coil_of_the_filter() -> None:
    """Capacitor and coil are of second order, however the coil is tapped: with a woofer's second order, turn one."""
    assert found_in(horn_on_a_tap("tweeter-", "tweeter+")) == []
    assert found_in(horn_on_a_tap("tweeter+", "tweeter-")) == [("polarity-even-order", "tweeter+")]


def test_a_capacitor_at_the_tap_of_a_coil_in_the_path_makes_a_second_order() -> None:
    text = """
driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
tapped coil T1 1.2 mH { tap 0.6 mH, dcr 0.2 ohm }
capacitor C2 10 uF
capacitor C1 6.8 uF
coil L2 0.82 mH { dcr 0.4 ohm }
leg woofer {
  input+ -- T1 -- woofer+
  T1.tap -- C2 -- return
  woofer- -- return
}
leg tweeter {
  input+ -- C1 -- tweeter-
  tweeter- -- L2 -- return
  tweeter+ -- return
}
"""
    assert {name for name, _ in found_in(text)} <= {"loaded-peak"}


def loud_horn(feeds: tuple[str, str], declared: str = "") -> str:
    return f"""{declared}
driver woofer 8 ohm {{ re 6 ohm, le 0.4 mH, sensitivity 95 dB }}
driver tweeter 8 ohm {{ re 6.2 ohm, le 0.05 mH, sensitivity 108 dB }}
coil L1 0.47 mH {{ dcr 0.2 ohm }}
capacitor C1 6.8 uF
leg woofer {{
  {feeds[0]}+ -- L1 -- woofer+
  woofer- -- {feeds[0]}-
}}
leg tweeter {{
  {feeds[1]}+ -- C1 -- tweeter+
  tweeter- -- {feeds[1]}-
}}
"""


def test_a_driver_that_nothing_brings_down_is_the_one_out_of_line() -> None:
    """13 dB of sensitivity and no pad: common practice is a pad for the louder one, no source."""
    (finding,) = findings_of(Source("box.shunt", loud_horn(("input", "input"))), SHAPED)
    assert (finding.name, finding.span.text) == ("level-out-of-line", "tweeter+")
    assert "`tweeter` is 14 dB louder than `woofer`" in finding.headline


def test_the_levels_of_two_amplifiers_are_set_on_them() -> None:
    assert found_in(loud_horn(("low", "high"), "input low\ninput high")) == []


def evened_tweeter(coil: str, capacitor: str, resistor: str) -> str:
    """A soft-dome tweeter of Qts 0.4, a row of three across it."""
    return f"""
driver woofer 8 ohm {{ re 6 ohm, le 0.4 mH }}
driver tweeter 8 ohm {{ re 6.2 ohm, le 0.05 mH, fs 900 Hz, qms 2, qes 0.5 }}
coil L1 0.47 mH {{ dcr 0.2 ohm }}
capacitor C1 6.8 uF
coil L5 {coil} {{ dcr 0.3 ohm }}
capacitor C5 {capacitor}
resistor R5 {resistor}
leg woofer {{
  input+ -- L1 -- woofer+
  woofer- -- return
}}
leg tweeter {{
  input+ -- C1 -- tweeter+
  tweeter+ -- R5 -- L5 -- C5 -- tweeter-
  tweeter- -- return
}}
"""


def test_a_row_tuned_to_the_resonance_is_as_broad_as_the_driver() -> None:
    """L = Qes Re / w, C = 1 / (w Qes Re), R = Re (1 + Qes / Qms): the dual of Small's model, Q and all."""
    assert found_in(evened_tweeter("0.56 mH", "56 uF", "7.5 ohm")) == []
    assert found_in(evened_tweeter("0.15 mH", "15 uF", "7.5 ohm")) == [("trap-too-broad", "L5")]


LEVEL_BY_LINK = """
amplifier 60 W into 8 ohm { least 4 ohm }
driver woofer 8 ohm { re 6 ohm, le 0.4 mH, fs 60 Hz, qms 4, qes 0.5, 100 W }
driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH, fs 800 Hz, qms 2.1, qes 1.2, 60 W }
coil L1 0.47 mH { dcr 0.2 ohm, 5 %, air core }
capacitor C1 6.8 uF { 5 %, 250 V, film }
resistor R1 2.2 ohm { 5 %, 25 W, wirewound }
resistor R2 22 ohm { 5 %, 25 W, wirewound }
link K1
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
leg tweeter {
  input+ -- C1 -- (R1 | K1) -- tweeter+
  tweeter+ -- R2 -- tweeter-
  tweeter- -- return
}
expect level of tweeter above -1 dB at 15 kHz
variant soft "link out" {
  omit K1
  expect level of tweeter -3 dB at 15 kHz within 1 dB
}
"""


def test_a_link_across_a_resistor_chooses_the_level() -> None:
    """Fitted it is the full level, left out the resistor works; both are meant."""
    assert [f.headline for f in findings_of(Source("box.shunt", LEVEL_BY_LINK), FAMILIES)] == []


def test_a_link_across_a_row_or_a_used_pad_chooses_the_level() -> None:
    past = ("  tweeter+ --", "  hp -- K1 -- tweeter+\n  tweeter+ --")
    row = changed(LEVEL_BY_LINK, ("(R1 | K1)", "hp -- R1 -- R3"), past)
    half = "resistor R1 1.1 ohm { 5 %, 25 W, wirewound }"
    row = row.replace("resistor R1 2.2 ohm { 5 %, 25 W, wirewound }", f"{half}\n{half.replace('R1', 'R3')}")
    assert [f.headline for f in findings_of(Source("box.shunt", row), FAMILIES)] == []
    pad = "-- C1 -- hp -- P1 -- tweeter+\n  P1.back -- return\n  hp -- K1 -- tweeter+"
    used = changed(boxes.FIRST_ORDER, ("-- C1 -- tweeter+", pad))
    used += 'include "lpad" from library\nuse lpad as P1 { loss 3 dB, rated 40 W }\nlink K1\n'
    assert found_in(used) == []


def test_a_link_across_a_capacitor_or_a_driver_is_a_short() -> None:
    across_c1 = LEVEL_BY_LINK.replace("C1 -- (R1 | K1)", "(C1 | K1) -- R1")
    assert found_in(across_c1)[0] == ("wired-across", "K1")
    across_r2 = LEVEL_BY_LINK.replace("(R1 | K1)", "R1").replace("-- R2 --", "-- (R2 | K1) --")
    assert found_in(across_r2)[0][0] == "driver-shorted"


def test_a_stated_polarity_is_asked_for_all_the_same() -> None:
    """Equal second-order filters the same way round cancel (Linkwitz 1976): stated or not."""
    same_way = changed(
        boxes.SECOND_ORDER,
        ("-- C2 -- tweeter-", "-- C2 -- tweeter+"),
        ("tweeter- -- L2 -- tweeter+", "tweeter+ -- L2 -- tweeter-"),
        ("tweeter+ -- return", "tweeter- -- return"),
    )
    for stated in ("", "expect polarity of tweeter normal\n"):
        (finding,) = findings_of(Source("box.shunt", same_way + stated), SHAPED)
        assert (finding.name, str(finding.severity)) == ("polarity-even-order", "advice" if stated else "warning")
        assert ("as `expect polarity` has it" in finding.headline) == bool(stated)
    assert found_in(boxes.SECOND_ORDER + "expect polarity of tweeter reversed\n") == []
    missed = found_in(same_way + "expect polarity of tweeter reversed\n")
    assert [name for name, _ in missed] == ["slip-explains", "expectation-unmet"]
    accepted = 'allow polarity-even-order on tweeter because "measured"\n'
    assert found_in(same_way + "expect polarity of tweeter normal\n" + accepted) == []


ZOBEL_OF_TWEETER = "resistor R3 6.2 ohm\ncapacitor C3 1.5 uF\n"
"""Re 6.1 ohm, Le 0.06 mH: C = 0.06 mH / 6.2^2 = 1.6 uF."""


def more_at_tweeter(walk: str) -> str:
    return changed(boxes.ZOBEL, ("tweeter- -- return", f"tweeter- -- return\n  {walk}"))


STRAYED_ZOBELS = {
    "the woofer's across the tweeter": (
        changed(boxes.ZOBEL, ("woofer+ -- R1 -- C1 -- return", "tweeter+ -- R1 -- C1 -- tweeter-")),
        [("zobel-misplaced", "R1")],
    ),
    "the tweeter's across the woofer": (
        ZOBEL_OF_TWEETER + changed(boxes.ZOBEL, ("R1 -- C1", "R3 -- C3")) + "omit R1 and C1\n",
        [("zobel-misplaced", "R3")],
    ),
    "both exchanged": (
        ZOBEL_OF_TWEETER + changed(more_at_tweeter("tweeter+ -- R1 -- C1 -- tweeter-"), ("R1 -- C1", "R3 -- C3")),
        [("zobel-misplaced", "R3"), ("zobel-misplaced", "R1")],
    ),
    "resistor and capacitor side by side": (
        changed(boxes.ZOBEL, ("woofer+ -- R1 -- C1 -- return", "woofer+ -- R1 -- return\n  woofer+ -- C1 -- woofer-")),
        [("zobel-side-by-side", "R1")],
    ),
    "the tweeter's side by side": (
        ZOBEL_OF_TWEETER + more_at_tweeter("tweeter+ -- (R3 | C3) -- tweeter-"),
        [("zobel-side-by-side", "R3")],
    ),
    "a second capacitor beside the Zobel": (
        "capacitor C9 22 uF\n"
        + changed(boxes.ZOBEL, ("woofer- -- return", "woofer- -- return\n  woofer+ -- C9 -- return")),
        [("zobel-without-r", "C9")],
    ),
    "each across its own": (
        ZOBEL_OF_TWEETER + more_at_tweeter("tweeter+ -- R3 -- C3 -- tweeter-"),
        [],
    ),
}


@pytest.mark.parametrize(("text", "said"), STRAYED_ZOBELS.values(), ids=STRAYED_ZOBELS.keys())
def test_a_strayed_zobel_is_named_by_its_parts(text: str, said: list[tuple[str, str]]) -> None:
    """R = Re and C = Le / R^2 of the driver that it is for (Zobel 1923); the windows are common practice, no source."""
    assert found_in(text) == said


def test_drivers_in_a_row_behind_a_filter_for_a_pair() -> None:
    """Two of 8 ohm are 4 ohm side by side and 16 in a row; 0.56 mH and 15 uF are of second order at 4 ohm."""
    assert found_in(woofers(2, 8, ROW, "0.56 mH", "15 uF")) == [("drivers-misgrouped", "woofer2+")]
    assert found_in(woofers(2, 8, ROW, "0.47 mH", "12 uF")) == [("drivers-misgrouped", "woofer2+")]
    assert found_in(woofers(2, 8, PAIR, "0.56 mH", "15 uF")) == []
    assert found_in(woofers(2, 4, PAIR, "1.0 mH", "8.2 uF")) == [("drivers-misgrouped", "woofer2+")]
    assert found_in(woofers(2, 4, ROW, "1.0 mH", "8.2 uF")) == []


def test_a_pair_in_a_row_behind_a_filter_of_low_q() -> None:
    """Linkwitz-Riley of second order at 2.4 kHz: L = 2 R / w, C = 1 / (2 R w), for 4 ohm and for 8."""
    quiet = (("C2 5.6 uF", "C2 3.9 uF"), ("L2 0.56 mH", "L2 1.0 mH"))
    assert found_in(changed(woofers(2, 8, ROW, "0.56 mH", "8.2 uF"), *quiet)) == [("drivers-misgrouped", "woofer2+")]
    assert found_in(changed(woofers(2, 8, PAIR, "0.56 mH", "8.2 uF"), *quiet)) == []


TENFOLD = [("10 mH", "8.2 uF"), ("0.1 mH", "8.2 uF"), ("1.0 mH", "82 uF"), ("1.0 mH", "0.82 uF")]


@pytest.mark.parametrize(("coil", "across"), TENFOLD)
def test_a_slipped_value_before_a_group_is_no_wrong_grouping(coil: str, across: str) -> None:
    slipped = across if coil == "1.0 mH" else coil
    assert ("decimal-slip", slipped) in found_in(woofers(2, 4, ROW, coil, across))
    assert "drivers-misgrouped" not in [name for name, _ in found_in(woofers(2, 4, ROW, coil, across))]


TRAP_AT_TWEETER = "coil L9 0.33 mH { dcr 0.18 ohm }\ncapacitor C9 2.2 uF\nresistor R9 4.7 ohm\n"


def test_a_trap_of_the_tweeter_the_wrong_way_round() -> None:
    """In a row it belongs across the driver; coil and capacitor side by side belong in the path."""
    in_path = changed(boxes.SECOND_ORDER, ("-- C2 -- tweeter-", "-- C2 -- R9 -- L9 -- C9 -- tweeter-"))
    assert found_in(TRAP_AT_TWEETER + in_path) == [("trap-wrong-way", "R9")]
    tank_across = changed(
        boxes.SECOND_ORDER, ("tweeter+ -- return", "tweeter+ -- return\n  tweeter- -- R9 -- (L9 | C9) -- return")
    )
    assert found_in(TRAP_AT_TWEETER + tank_across)[0] == ("trap-wrong-way", "L9")
    row_across = changed(
        boxes.SECOND_ORDER, ("tweeter+ -- return", "tweeter+ -- return\n  tweeter- -- R9 -- L9 -- C9 -- return")
    )
    assert "trap-wrong-way" not in [name for name, _ in found_in(TRAP_AT_TWEETER + row_across)]


@pytest.mark.parametrize(
    ("row", "said"),
    [
        (("0.56 mH", "56 uF", "7.5 ohm"), []),
        (("0.56 mH", "5.6 uF", "7.5 ohm"), [("trap-off-tune", "5.6 uF")]),
        (("5.6 mH", "56 uF", "7.5 ohm"), [("trap-off-tune", "5.6 mH")]),
        (("0.56 mH", "33 uF", "7.5 ohm"), []),
    ],
)
def test_a_row_off_the_resonance_that_it_is_made_for(row: tuple[str, str, str], said: list[tuple[str, str]]) -> None:
    """Exact for fs 900 Hz, Re 6.2, Qes 0.5, Qms 2 (the dual of Small's model): 0.55 mH, 57 uF, 7.8 ohm."""
    assert found_in(evened_tweeter(*row)) == said


@pytest.mark.parametrize("path", ["C1 -- x -- C6", "C1 -- x -- L6", "C6 -- x -- R6 -- y -- C1"])
def test_a_row_for_the_resonance_belongs_at_its_driver(path: str) -> None:
    """With a part of the filter between the two the row does not even out what the filter sees."""
    spare = {"C6": "capacitor C6 15 uF\n", "L6": "coil L6 0.1 mH\n", "R6": "resistor R6 1 ohm\n"}
    more = "".join(line for label, line in spare.items() if label in path)
    exact = changed(more + evened_tweeter("0.56 mH", "56 uF", "7.5 ohm"), ("C1 -- tweeter+", f"{path} -- tweeter+"))
    moved = changed(exact, ("tweeter+ -- R5 -- L5", "x -- R5 -- L5"))
    assert ("zobel-misplaced", "C5") in found_in(moved)
    headlines = [f.headline for f in findings_of(Source("box.shunt", moved), SHAPED) if f.name == "zobel-misplaced"]
    assert [h.partition(" are ")[0] for h in headlines] == ["`C5`, `L5` and `R5`"]
    assert "zobel-misplaced" not in [name for name, _ in found_in(exact)]


def test_a_row_that_fits_no_resonance_may_stand_anywhere() -> None:
    """A trap for a peak of the response; and a resistor alone between them is that of a pad."""
    other = changed(
        "capacitor C6 15 uF\n" + evened_tweeter("0.1 mH", "10 uF", "7.5 ohm"),
        ("C1 -- tweeter+", "C1 -- x -- C6 -- tweeter+"),
    )
    assert "zobel-misplaced" not in [n for n, _ in found_in(other.replace("tweeter+ -- R5 -- L5", "x -- R5 -- L5"))]
    padded = changed(
        "resistor R6 1 ohm\n" + evened_tweeter("0.56 mH", "56 uF", "7.5 ohm"),
        ("C1 -- tweeter+", "C1 -- x -- R6 -- tweeter+"),
    )
    assert "zobel-misplaced" not in [n for n, _ in found_in(padded.replace("tweeter+ -- R5 -- L5", "x -- R5 -- L5"))]


def test_a_zobel_of_several_parts_is_judged_by_what_they_come_to() -> None:
    made_up = boxes.ZOBEL.replace("resistor R1 6.8 ohm", "resistor R1 3.3 ohm\nresistor R8 3.3 ohm").replace(
        "capacitor C1 22 uF", "capacitor C1 10 uF\ncapacitor C8 10 uF"
    )
    text = made_up.replace("R1 -- C1", "R1 -- R8 -- (C1 | C8)")
    assert found_in(text) == []
    (finding,) = findings_of(Source("box.shunt", text.replace("3.3 ohm", "8.2 ohm")), SHAPED)
    assert finding.headline == "the Zobel's `R1` and `R8` of 16.4 ohm do not fit `woofer`"


SIZES = {
    "a Zobel's capacitor a fifth of its size": (boxes.ZOBEL, ("C1 22 uF", "C1 3.9 uF"), "zobel-off", "warning"),
    "a Zobel's resistor a little out of its window": (boxes.ZOBEL, ("R1 6.8", "R1 10"), "zobel-off", "advice"),
    "a pad exchanged": (
        boxes.HORN,
        ("R1 3.9 ohm\nresistor R2 8.2", "R1 8.2 ohm\nresistor R2 3.9"),
        "pad-load-off",
        "warning",
    ),
}


@pytest.mark.parametrize(("box", "slip", "name", "severity"), SIZES.values(), ids=SIZES.keys())
def test_what_moves_the_level_plainly_is_a_warning(box: str, slip: tuple[str, str], name: str, severity: str) -> None:
    """From 1.5 dB in the driver's own band on: more than parts of 5 % make (common practice, no source)."""
    findings = findings_of(Source("box.shunt", changed(box, slip)), SHAPED)
    assert [(f.name, str(f.severity)) for f in findings] == [(name, severity)]


def test_drivers_side_by_side_may_have_a_zobel_each() -> None:
    """Two rows of 6.2 ohm and 12 uF side by side are one of 3.1 ohm and 24 uF."""
    more = "resistor R8 6.2 ohm\nresistor R9 6.2 ohm\ncapacitor C8 12 uF\ncapacitor C9 12 uF\n"
    rows = "woofer1+ -- R8 -- C8 -- woofer1-\nwoofer2+ -- R9 -- C9 -- woofer2-"
    assert found_in(more + woofers(2, 8, f"{PAIR}\n{rows}", "0.56 mH", "15 uF")) == []
    off = more.replace("12 uF", "2.2 uF") + woofers(2, 8, f"{PAIR}\n{rows}", "0.56 mH", "15 uF")
    (finding,) = [f for f in findings_of(Source("box.shunt", off), SHAPED) if f.name == "zobel-off"]
    assert finding.headline == "the Zobel's `C8` and `C9` of 4.4 uF do not fit `woofer1` and `woofer2`"


TWO_AND_A_HALF = """driver woofer1 8 ohm {{ re 5.6 ohm, le 0.4 mH, fs 48 Hz, qms 4, qes 0.42 }}
driver woofer2 8 ohm {{ re 5.6 ohm, le 0.4 mH, fs 48 Hz, qms 4, qes 0.42 }}
driver tweeter 8 ohm {{ re 5.4 ohm, le 0.02 mH, fs 1.1 kHz, qms 3, qes 1.6 }}
coil L1 3.3 mH
coil L2 {low} mH
capacitor C2 8.2 uF
capacitor C4 6.8 uF
coil L3 0.39 mH
leg woofer1 {{
  input+ -- L1 -- woofer1+
  woofer1- -- return
}}
leg woofer2 {{
  input+ -- L2 -- woofer2+
  woofer2+ -- C2 -- woofer2-
  woofer2- -- return
}}
leg tweeter {{
  input+ -- C4 -- tweeter+
  tweeter+ -- L3 -- tweeter-
  tweeter- -- return
}}
"""


def test_of_two_woofers_the_one_that_goes_up_meets_the_tweeter() -> None:
    """3.3 mH before 8 ohm is a corner of 390 Hz: the lower woofer's, and no slip; the other one meets the tweeter."""
    found = {f.name for f in load_text(TWO_AND_A_HALF.format(low=0.75)).findings}
    assert not found & {"decimal-slip", "corner-gap", "corner-overlap"}
    slipped = [f.subjects for f in load_text(TWO_AND_A_HALF.format(low=7.5)).findings if f.name == "decimal-slip"]
    assert slipped == [("L2",)]


def test_a_value_with_which_all_that_is_asked_for_comes_out_is_meant() -> None:
    """7.5 mH looks like a slip of 0.75 mH, with which the 16 dB less that are asked for would not come out."""
    text = TWO_AND_A_HALF.format(low=7.5) + "expect level of woofer2 below -12 dB at 800 Hz\n"
    assert "decimal-slip" not in {f.name for f in load_text(text).findings}


def test_a_zobel_of_an_unknown_voice_coil_is_told_as_not_checked() -> None:
    text = boxes.ZOBEL.replace("re 5.8 ohm, le 0.72 mH, fs 58 Hz, qms 5.2, qes 0.41", "")
    assert text != boxes.ZOBEL
    unchecked = {(entry.name, entry.subjects) for entry in load_text(text.replace("{  }", "")).not_checked}
    assert ("zobel-off", ("woofer",)) in unchecked
