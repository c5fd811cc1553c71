"""A mistake keeps silent what follows from it, in the legs that it stands in, and nothing beside them.

The woofer's leg peaks: 1 mH and 22 uF on 6 ohm are a low-pass of 1.07 kHz whose Q is R * sqrt(C / L) = 0.89 (common
practice, no source for the design), on a driver of rising impedance more.
"""

from __future__ import annotations

from shuntwise.api import load_text

BOX = """amplifier 100 W into 8 ohm {{ least 2 ohm }}
driver woofer 8 ohm {{ re 12 ohm, le 0.8 mH, 200 W }}
driver tweeter 8 ohm {{ re 6 ohm, le 0.03 mH, fs 800 Hz, qms 3, qes 1.2, 60 W }}
coil L1 1 mH {{ dcr 0.1 ohm, 5 %, air core }}
capacitor C1 22 uF {{ 5 %, 250 V, film }}
resistor R1 3.3 ohm {{ 5 %, 50 W, wirewound }}
resistor R2 10 ohm {{ 5 %, 50 W, wirewound }}
capacitor C2 6.8 uF {{ 5 %, 250 V, film }}
coil L2 0.33 mH {{ dcr 0.3 ohm, 5 %, air core }}
leg woofer {{
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- woofer-
  woofer- -- return
}}
leg tweeter {{
{top}
  top -- C2 -- tweeter+
  tweeter+ -- L2 -- return
{end}
}}
"""
AHEAD = "  input+ -- R1 -- top\n  top -- R2 -- return"


def told(top: str, end: str = "  tweeter- -- return") -> tuple[set[tuple[str, tuple[str, ...]]], set[str]]:
    compilation = load_text(BOX.format(top=top, end=end))
    return {(f.name, f.subjects[:1]) for f in compilation.findings}, {entry.name for entry in compilation.not_checked}


def test_a_usual_practice_in_one_leg_hides_no_peak_in_another() -> None:
    found, unrun = told(AHEAD)
    assert ("pad-ahead-of-filter", ("R1",)) in found
    assert ("loaded-peak", ("woofer",)) in found
    assert "loaded-peak" in unrun  # for the tweeter it is not judged, and that is said


def test_an_error_in_one_leg_leaves_the_wiring_of_the_others_judged() -> None:
    """The tweeter's return is missing; that the woofer's capacitor lies ahead of its coil is told as well."""
    text = BOX.format(top=AHEAD, end="").replace("  woofer+ -- C1 -- woofer-", "  input+ -- C1 -- woofer-")
    found = {(finding.name, finding.subjects[:1]) for finding in load_text(text).findings}
    assert ("driver-one-lead", ("tweeter",)) in found
    assert found & {("shunt-before-coil", ("C1",)), ("cap-across-amp", ("C1",))}


def test_what_follows_from_the_error_itself_stays_silent() -> None:
    """The tweeter without its return gets nothing: no word of its level, its corner or its load."""
    found, _ = told(AHEAD, "")
    assert not {name for name, _ in found} & {"level-out-of-line", "corner-gap", "tweeter-too-low", "load-too-low"}
