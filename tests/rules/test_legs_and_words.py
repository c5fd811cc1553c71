"""Legs behind one resistor, words that people type first, and voltages that are sold."""

from __future__ import annotations

import pytest

from shuntwise.api import load_text
from shuntwise.checks.rated import next_volts

BEHIND_ONE = """amplifier 100 W into 8 ohm { least 4 ohm }
driver woofer 8 ohm { re 5.8 ohm, le 0.6 mH, fs 58 Hz, qms 5, qes 0.45, 200 W }
driver tweeter 8 ohm { re 6.1 ohm, le 0.05 mH, fs 780 Hz, qms 2.3, qes 1.3, 60 W }
resistor R0 0.47 ohm { 5 %, 50 W, wirewound }
coil L1 0.82 mH { dcr 0.25 ohm, 5 %, air core }
capacitor C1 6.8 uF { 5 %, 250 V, film }
capacitor C3 5.6 uF { 5 %, 250 V, film }
coil L2 0.82 mH { dcr 0.4 ohm, 5 %, air core }
leg woofer and tweeter {
  input+ -- R0 -- hot
  hot -- L1 -- woofer+
  woofer+ -- C1 -- return
  woofer- -- return
  hot -- C3 -- tweeter-
  tweeter- -- L2 -- return
  tweeter+ -- return
}
"""


def test_a_shunt_of_one_leg_is_none_of_the_other_behind_one_resistor() -> None:
    told = {finding.name for finding in load_text(BEHIND_ONE).findings}
    assert not told & {"coil-across-woofer", "cap-across-tweeter", "cap-across-amp", "coil-across-amp", "legs-tied"}


def test_a_coil_across_the_woofer_is_still_seen_there() -> None:
    text = BEHIND_ONE.replace("woofer+ -- C1 -- return", "woofer+ -- C1 -- return\n  woofer+ -- L3 -- return")
    made = load_text(text.replace("coil L2", "coil L3 0.82 mH { 5 %, air core }\ncoil L2"))
    assert ("coil-across-woofer", ("L3", "woofer")) in {(f.name, f.subjects) for f in made.findings}


@pytest.mark.parametrize(("least", "sold"), [(12, 35), (51, 63), (64, 100), (101, 160), (160, 160), (401, 630)])
def test_a_voltage_that_is_sold_is_recommended(least: float, sold: float) -> None:
    """Common practice, no source."""
    assert next_volts(least) == sold


def test_beyond_the_row_of_voltages_the_next_step_is_told() -> None:
    assert next_volts(631) == 1000
    assert next_volts(1700) == 2000


def test_a_walk_in_the_leg_of_another_driver_is_told() -> None:
    """The woofer's Zobel stands in the tweeter's leg: the circuit is right, and whoever solders by legs is misled."""
    text = """driver woofer 8 ohm { re 8 ohm, le 0.4 mH }
driver tweeter 8 ohm { re 8 ohm, le 0.05 mH }
coil L1 0.82 mH
capacitor C1 6.8 uF
resistor R1 8.2 ohm
capacitor C3 6.8 uF
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
leg tweeter {
  input+ -- C1 -- tweeter+
  woofer+ -- R1 -- C3 -- return
  tweeter- -- return
}
"""
    (finding,) = (f for f in load_text(text).findings if f.name == "leg-misnamed")
    assert (finding.span.line, finding.span.text, finding.subjects) == (13, "woofer+", ("woofer", "tweeter"))
    sound = text.replace("leg tweeter", "leg tweeter and woofer").replace("leg woofer {", "leg woofer {")
    assert "leg-misnamed" not in {f.name for f in load_text(sound).findings}
