"""The load that an amplifier sees: at its least, unplugged, with a part failed, linked, and above 20 kHz.

Source of the 80 % rule: IEC 60268-5:2003 + A1:2007, clause 16.1, read in an open text that quotes it. The figures of
a low-pass without its woofer follow from X = w L - 1/(w C).
"""

from __future__ import annotations

import pytest

from rules.test_ratings import box, evidence_of, found_at, found_in
from shuntwise.checks.registry import RULES
from shuntwise.checks.run import run

TWO_WAY = """
amplifier {amplifier}
driver woofer 8 ohm {{ re 5.8 ohm, le 0.5 mH, fs 55 Hz, qms 4.6, qes 0.45, 200 W }}
driver tweeter 8 ohm {{ re 6 ohm, le 0.05 mH, fs 800 Hz, qms 2.1, qes 1.2, 60 W }}
coil L1 1.0 mH {{ dcr {dcr}, 5 %, air core }}
capacitor C1 10 uF {{ 5 %, 250 V, film }}
capacitor C2 5.6 uF {{ 5 %, 250 V, film }}
leg woofer {{
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- return
  {zobel}
  woofer- -- return
}}
leg tweeter {{
  input+ -- C2 -- tweeter+
  tweeter- -- return
}}
resistor R9 6.8 ohm {{ 5 %, 25 W }}
capacitor C9 15 uF {{ 5 %, 250 V, film }}
{more}
"""


def two_way(
    amplifier: str = "100 W into 8 ohm { least 4 ohm }", dcr: str = "0.25 ohm", zobel: str = "", more: str = ""
) -> str:
    text = TWO_WAY.format(amplifier=amplifier, dcr=dcr, zobel=zobel, more=more)
    return text if zobel else text + "omit R9 and C9\n"


def test_marked_impedance_counts_in_the_rated_range_only() -> None:
    """IEC 60268-5 (second-hand): 80 % in the rated frequency range. Some 6.2 ohm stand at 20 Hz, far below the
    resonance, and above it the voice coil keeps the least over 6.4 ohm.
    """
    text = """
amplifier 100 W into 8 ohm {{ least 2 ohm, marked 8 ohm }}
driver woofer 8 ohm {{ re 6.2 ohm, le 1.6 mH{resonance}, 200 W }}
leg woofer {{
  input+ -- woofer+
  woofer- -- return
}}
"""
    known = text.format(resonance=", fs 120 Hz, qms 3, qes 0.3")
    assert found_in(known) == []
    boxed = text.format(resonance=", fs 60 Hz, qms 3, qes 0.3, alpha 3")
    assert found_in(boxed) == []
    unknown = text.format(resonance="")
    assert found_in(unknown) == [("warning", "load-too-low")]
    assert found_in(known.replace("6.2 ohm", "5.2 ohm")) == [("warning", "load-too-low")]


@pytest.mark.parametrize(("marked", "least"), [("8 ohm", 6.4), ("4 ohm", 3.2)])
def test_marked_impedance_allows_80_percent(marked: str, least: float) -> None:
    """A resistor a little above and below 80 % of what the box is marked with."""
    text = """
amplifier 100 W into 8 ohm {{ least 2 ohm, marked {marked} }}
driver woofer 8 ohm {{ re {re} ohm, 100 W }}
leg woofer {{
  input+ -- woofer+
  woofer- -- return
}}
"""
    assert found_in(text.format(marked=marked, re=least * 1.001)) == []
    assert found_in(text.format(marked=marked, re=least * 0.999)) == [("warning", "load-too-low")]
    stricter = text.format(marked=marked, re=least * 1.001) + "limit load-too-low 85 %"
    assert found_in(stricter) == [("warning", "load-too-low")]


def test_least_load_of_the_amplifier() -> None:
    least = evidence_of(box()).stress.least_load("input").ohm
    assert found_in(box(amplifier=f"100 W into 8 ohm {{ least {least * 1.001} ohm }}"))[0] == ("error", "load-too-low")
    below = found_in(box(amplifier=f"100 W into 8 ohm {{ least {least * 0.999} ohm }}"))
    assert ("error", "load-too-low") not in below


def test_least_load_that_is_not_stated_is_lacking() -> None:
    checked = run(RULES.values(), evidence_of(box(amplifier="100 W into 8 ohm")))
    lacking = {entry.name for entry in checked.not_checked if "`least`" in entry.lacks}
    assert lacking == {"load-too-low", "unplugged-collapse", "top-end-load", "hard-angle"}


def test_two_boxes_halve_the_load() -> None:
    least = evidence_of(box()).stress.least_load("input").ohm
    assert 4 < least < 5
    assert found_in(box(amplifier="100 W into 8 ohm { least 2 ohm, boxes 2 }")) == []
    assert found_in(box(amplifier="100 W into 8 ohm { least 2.5 ohm, boxes 2 }")) == [("warning", "two-boxes")]
    assert found_in(box(amplifier="100 W into 8 ohm { least 2 ohm, boxes 3 }")) == [("warning", "two-boxes")]


def test_low_pass_without_its_woofer_is_told_by_its_figures() -> None:
    """With a steady sine at the worst frequency: 0.25 ohm at 1.6 kHz, and 40 times the input on the capacitor."""
    (finding,) = found_at("unplugged-collapse", two_way("100 W into 8 ohm { least 4 ohm, programme sine }"))
    assert finding.subjects == ("woofer", "input") and "at 1.6 kHz" in finding.headline
    stress = evidence_of(two_way()).stress
    assert stress.unplugged_loads("input")["woofer"][0].ohm == pytest.approx(0.25, abs=0.003)
    assert stress.bears_unplugged("C1")["woofer"].peak_v == pytest.approx(40 * 40, rel=0.01)


def test_resonance_without_any_resistance_has_no_figures() -> None:
    """1.0 mH without a stated resistance and 10 uF: 1 / (2 pi sqrt(L C)) = 1.59 kHz, and neither volts nor a rating."""
    ideal = two_way().replace("dcr 0.25 ohm, ", "")
    assert "dcr" not in ideal.split("leg")[0].split("coil L1")[1]
    (finding,) = found_at("unplugged-collapse", ideal)
    assert "1.59 kHz" in finding.headline and finding.subjects == ("woofer", "input", "L1")
    assert " A" not in finding.why and "ohm" not in finding.headline
    unrated = ideal.replace("least 4 ohm", "crest 2")
    assert len(found_at("unplugged-collapse", unrated)) == 1, "it needs no `least` load"
    checked = run(RULES.values(), evidence_of(ideal))
    (lacking,) = [entry for entry in checked.not_checked if entry.name == "cap-volts-unplugged"]
    assert lacking.lacks == "the `dcr` of `L1`" and lacking.subjects == ("woofer", "L1")
    assert not [f for f in checked.findings if f.name == "cap-volts-unplugged"]


def test_resistance_anywhere_in_its_way_bounds_a_resonance() -> None:
    ideal = two_way().replace("dcr 0.25 ohm, ", "")
    with_esr = ideal.replace("coil L1", "resistor R1 0.5 ohm { 5 %, 50 W }\ncoil L1").replace(
        "-- L1 --", "-- R1 -- L1 --"
    )
    assert evidence_of(with_esr).stress.bare == {}
    assert evidence_of(two_way()).stress.bare == {}


def test_programme_tells_a_bad_collapse_from_the_usual_one() -> None:
    """The noise in the narrow band of the resonance counts: with less resistance and a weaker amplifier it is too much.

    The current goes as 1/sqrt(R) of the coil, since the resonance gets narrower as it gets deeper.
    """
    assert found_at("unplugged-collapse", two_way()) == []
    assert found_at("unplugged-collapse", two_way("100 W into 8 ohm { least 6 ohm }", dcr="0.1 ohm"))
    amperes = [
        evidence_of(two_way(dcr=f"{ohm} ohm")).stress.unplugged_loads("input")["woofer"][1] for ohm in (0.1, 0.4)
    ]
    assert amperes[0] / amperes[1] == pytest.approx(2, rel=0.1)


def test_zobel_keeps_the_load_up() -> None:
    with_zobel = two_way("100 W into 8 ohm { least 4 ohm, programme sine }", zobel="woofer+ -- R9 -- C9 -- return")
    assert found_at("unplugged-collapse", with_zobel) == []
    least, _ = evidence_of(with_zobel).stress.unplugged_loads("input")["woofer"]
    assert least.ohm > 2


def test_failures_are_listed_when_asked_for() -> None:
    """By default nothing; at 1 ohm the shunt capacitor that shorts, which leaves the coil's resistance."""
    assert found_at("one-part-fails", two_way()) == []
    findings = found_at("one-part-fails", two_way(more="limit one-part-fails 1 ohm"))
    assert [f.subjects for f in findings] == [("C1",)]
    assert "with `C1` shorted the load at `input` falls to 0.28 ohm" in findings[0].headline


def test_capacitor_across_the_amplifier_is_a_dead_short_when_it_fails() -> None:
    more = "capacitor C3 0.1 uF { 5 %, 250 V, film }\nleg woofer {\n  input+ -- C3 -- return\n}"
    (finding,) = found_at("one-part-fails", two_way(more=more))
    assert finding.subjects == ("C3",)


def test_open_pad_resistor_that_overdrives_a_small_tweeter() -> None:
    """Without its shunt resistor a 6 dB pad gives the tweeter some 4 dB more."""
    text = two_way(more="resistor R1 3.9 ohm { 5 %, 25 W }\nresistor R2 8.2 ohm { 5 %, 25 W }").replace(
        "input+ -- C2 -- tweeter+", "input+ -- C2 -- hp -- R1 -- tweeter+\n  tweeter+ -- R2 -- return"
    )
    stress = evidence_of(text).stress
    usual_v = stress.bears("tweeter").programme_v
    open_v = next(f.driver_v["tweeter"] for f in stress.failures if f.label == "R2" and not f.shorted)
    assert open_v / usual_v == pytest.approx(10 ** (4.5 / 20), rel=0.1)
    rating = (usual_v * open_v) / 8
    findings = found_at("one-part-fails", text.replace("qes 1.2, 60 W", f"qes 1.2, {rating} W"))
    assert [f.subjects for f in findings] == [("R2",)]


def test_capacitive_load_above_the_band() -> None:
    """1 ohm and 0.47 uF across the input: 17 ohm at 20 kHz, 3.5 ohm at 100 kHz."""
    more = (
        "resistor R3 1 ohm { 5 %, 25 W }\ncapacitor C3 0.47 uF { 5 %, 250 V, film }\n"
        "leg woofer {\n  input+ -- R3 -- C3 -- return\n}"
    )
    assert [f.span.text for f in found_at("top-end-load", two_way(more=more))] == ["4 ohm"]
    assert found_at("top-end-load", two_way(more=more + "\nlimit top-end-load 30 kHz")) == []
    assert found_at("top-end-load", two_way(more=more.replace("1 ohm", "10 ohm"))) == []


def test_resistive_load_above_the_band() -> None:
    """3.3 ohm and 0.47 uF: below 4 ohm with the box in parallel, but the resistor is most of it at 300 kHz."""
    more = (
        "resistor R3 3.3 ohm { 5 %, 25 W }\ncapacitor C3 0.47 uF { 5 %, 250 V, film }\n"
        "leg woofer {\n  input+ -- R3 -- C3 -- return\n}\nlimit top-end-load 300 kHz"
    )
    assert found_at("top-end-load", two_way(more=more)) == []


def test_low_and_reactive_load() -> None:
    """The box is lowest beyond 45 degrees at some 6 ohm, on the flank of a dip that this amplifier may drive."""
    least, angle_deg = evidence_of(box()).stress.least_load_at_angle("input", 45)
    assert abs(angle_deg) > 45
    driven = box(amplifier=f"100 W into 8 ohm {{ least {least.ohm / 1.32} ohm }}")
    assert found_at("load-too-low", driven) == []
    assert found_at("hard-angle", driven) == []
    assert [str(f.severity) for f in found_at("hard-angle", driven + "\nlimit hard-angle 1.33")] == ["advice"]
    assert found_at("hard-angle", driven + "\nlimit hard-angle 1.31") == []


def test_a_load_that_is_too_low_is_told_without_its_angle() -> None:
    """One dip is one cause: below the least load at its bottom, beyond 45 degrees on its flank."""
    least, _ = evidence_of(box()).stress.least_load_at_angle("input", 45)
    bottom = evidence_of(box()).stress.least_load("input")
    assert bottom.ohm < least.ohm
    between = box(amplifier=f"100 W into 8 ohm {{ least {(bottom.ohm + least.ohm) / 2} ohm }}")
    assert found_at("load-too-low", between)
    assert found_at("hard-angle", between) == []
