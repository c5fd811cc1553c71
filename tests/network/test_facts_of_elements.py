"""What an element is, it says itself: names that look as if they told something tell nothing."""

from __future__ import annotations

from tolerance.designs import sound

NAMED = """
driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
network pad (in, out) {
  coil lower 0.1 mH { dcr 0.1 ohm }
  resistor re 1 ohm { 5 % }
  resistor dcr 1 ohm { 5 % }
  in -- re -- dcr -- lower -- out
}
use pad as P1
tapped coil T1 2 mH { tap 0.5 mH, dcr 0.4 ohm, 5 % }
leg woofer {
  input+ -- P1 -- T1 -- return
  T1.tap -- woofer+
  woofer- -- return
}
"""


def test_copper_is_what_is_wound() -> None:
    """Windings and voice coils; not the resistors that somebody calls `re` and `dcr`."""
    network = sound(NAMED)[1]
    copper = {element.name for element in network.elements if element.copper}
    assert copper == {"woofer.re", "P1.lower.dcr", "T1.lower.dcr", "T1.upper.dcr"}


def test_branches_carry_the_terminals_of_their_parts() -> None:
    network = sound(NAMED)[1]
    assert {branch.label: branch.terminals for branch in network.branches} == {
        "woofer": ("+", "-"),
        "P1.lower": ("start", "end"),
        "P1.re": ("start", "end"),
        "P1.dcr": ("start", "end"),
        "T1.lower": ("start", "tap"),
        "T1.upper": ("tap", "end"),
    }


def test_elements_say_what_they_stand_for() -> None:
    network = sound(NAMED)[1]
    said = {element.name: (element.part, element.quantity) for element in network.elements if element.part == "T1"}
    assert said == {
        "T1.lower": ("T1", "inductance"),
        "T1.lower.dcr": ("T1", "dcr"),
        "T1.upper": ("T1", "inductance"),
        "T1.upper.dcr": ("T1", "dcr"),
    }
