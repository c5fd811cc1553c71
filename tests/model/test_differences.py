"""What a variant has otherwise than the design itself, and how it is told."""

from __future__ import annotations

from dataclasses import replace

import pytest

from documents.designs import TWO_WAY, compiled, one
from schematic.circuits import example
from shuntwise.documents.differing import differing
from shuntwise.model.differences import differences

MORE = """resistor R1 4 ohm { 5 % }
link K1
posts high
choice level { position full { fit K1 } position soft { fit R1 } }
leg tweeter and woofer {
  tweeter+ -- R1 -- tweeter-
  tweeter+ -- K1 -- high+
  high- -- return
}
coil L8 1 mH
coil L9 1 mH
leg woofer and tweeter { woofer+ -- L8 -- woofer-  woofer+ -- L9 -- woofer- }
coupling L8 and L9 5 %
"""


def told(changes: str, base: str = "") -> list[str]:
    itself, *variants = compiled(f"{TWO_WAY}{MORE}{base}\nvariant other {{\n{changes}\n}}\n")
    (other,) = [v for v in variants if v.design.variant == "other"]
    return [*differing(differences(other.design, itself.design))]


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ("set C1 = 6 uF", ["C1 6 uF (5 uF)"]),
        ("set L1.dcr = 0.1 ohm", ["L1.dcr 0.1 ohm (not stated)"]),
        ("omit C1", ["C1 left out (fitted)"]),
        ("omit C1\nset C1 = 6 uF", ["C1 left out (fitted)"]),
        ("set level = soft", ["choice level soft (full)", "R1 fitted (left out)", "K1 left out (fitted)"]),
        ("set R1 = 5 ohm", []),  # left out in both
        ("capacitor C1 5 uF { film }", ["C1 film (not stated)"]),
        ("resistor C1 5 ohm", ["C1 resistor (capacitor)"]),
        ("driver tweeter 4 ohm { role tweeter }", ["tweeter 4 ohm (8 ohm)"]),
        ("leg tweeter { input+ -- C1 -- tweeter-\n  tweeter+ -- return }", ["tweeter wired otherwise"]),
        ("coupling L8 and L9 -5 %", ["coupling L8 and L9 -5 % (5 %)"]),
        ("posts more", ["posts more not fed (absent)"]),
    ],
)
def test_each_change_is_told_with_what_the_design_itself_has(changes: str, said: list[str]) -> None:
    assert told(changes) == said


def test_several_changes_of_one_thing_are_several_differences() -> None:
    changes = "driver tweeter 8 ohm { role tweeter, re 6 ohm, qms 2 }\nset L1 = 0.6 mH\nset L1.dcr = 0.1 ohm"
    assert told(changes) == [
        "L1 0.6 mH (0.5 mH)",
        "L1.dcr 0.1 ohm (not stated)",
        "tweeter.re 6 ohm (not stated)",
        "tweeter.qms 2 (not stated)",
    ]


def test_posts_that_another_amplifier_feeds_are_a_difference() -> None:
    itself, variant = (circuit.design for circuit in example("10-museum-loop"))
    links = ["K1 left out (fitted)", "K2 left out (fitted)"]
    assert [*differing(differences(variant, itself))] == [*links, "posts high fed (not fed)"]
    assert differing(differences(itself, variant))[-1] == "posts high not fed (fed)"


def test_what_is_only_written_otherwise_is_no_difference() -> None:
    """Another unit, the walks in another order; and what checks alone look at."""
    restated = "capacitor C1 5000 nF\nexpect polarity of tweeter normal"
    assert told(restated) == []
    design = one(TWO_WAY).design
    assert differences(design, replace(design, walks=design.walks[::-1])) == ()


def test_a_share_is_told_in_percent_and_a_plain_number_is_not() -> None:
    assert told("set R1.tolerance = 1 %", "set level = soft") == ["R1.tolerance 1 % (5 %)"]
    assert told("set woofer.qms = 3", "set woofer.qms = 2") == ["woofer.qms 3 (2)"]
