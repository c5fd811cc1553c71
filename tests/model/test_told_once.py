"""One slip in a name, one message: however often the name is written, and whatever stands for it elsewhere."""

from __future__ import annotations

from pathlib import Path

from shuntwise.api import load_text
from shuntwise.loading import loader
from shuntwise.pipeline import compile_all, read
from shuntwise.source import Source

BOX = """driver woofer 8 ohm
driver tweeter 8 ohm
coil L1 0.47 mH
capacitor C1 6.8 uF
capacitor C2 10 uF
leg woofer {
  input+ -- L1 -- woofer+
  woofer+ -- C2 -- woofer-
  woofer- -- return
}
leg tweeter {
  input+ -- C1 -- tweeter+
  tweeter- -- return
}
"""


def test_an_unknown_name_is_one_finding_with_all_its_places() -> None:
    found = [f for f in load_text(BOX.replace("driver tweeter", "driver tweter")).findings if f.name == "unknown-name"]
    assert [(f.subjects, f.span.line, len(f.places)) for f in found] == [(("tweeter",), 11, 2)]
    assert len(found[0].fixes[0].edits) == 3  # the fix mends every place, or none


def test_a_misspelt_driver_is_asked_after_at_its_declaration() -> None:
    first = load_text(BOX.replace("driver tweeter", "driver tweter")).findings[0]
    assert (first.name, first.span.line, first.subjects) == ("role-missing", 2, ("tweter", "tweeter"))
    assert "is it the `tweeter`?" in first.headline


def test_a_label_declared_twice_is_the_cause_of_the_one_that_is_not_declared() -> None:
    found = load_text(BOX.replace("capacitor C2", "capacitor C1")).findings
    first = found[0]
    assert (first.name, first.fixes[0].edits[0].text) == ("same-label-twice", "C2")
    assert [f.cause for f in found if f.name == "unknown-name"] == ["same-label-twice"]


def test_a_part_walked_twice_is_asked_after_with_the_one_that_stands_nowhere() -> None:
    found = load_text(BOX.replace("-- L1 --", "-- C1 --")).findings
    assert [f.name for f in found if f.severity == "error"] == ["walked-twice"]
    (twice,) = (f for f in found if f.name == "walked-twice")
    assert twice.subjects == ("C1", "L1")
    assert {edit.text for fix in twice.fixes for edit in fix.edits} == {"L1"}


def test_two_parts_that_stand_nowhere_are_not_guessed_between() -> None:
    text = BOX.replace("-- L1 --", "-- C1 --").replace("coil L1", "coil L2 1 mH\ncoil L1")
    (twice,) = (f for f in load_text(text).findings if f.name == "walked-twice")
    assert (twice.subjects, twice.fixes) == (("C1",), ())


def test_the_joint_at_the_wrong_pad_is_the_one_where_its_other_pad_belongs() -> None:
    """`pair -- woofer-` for `pair -- woofer+`: the plus is missing, and it belongs on the side of the signal."""
    text = BOX.replace("input+ -- L1 -- woofer+", "input+ -- L1 -- pair\n  pair -- woofer-").replace(
        "woofer+ -- C2 -- woofer-", "pair -- C2 -- return"
    )
    (finding,) = (f for f in load_text(text).findings if f.name == "driver-one-lead")
    assert finding.span.text == "pair -- woofer-"
    assert finding.fixes[0].edits[0].text == "pair -- woofer+"


def test_a_variant_does_not_tell_again_what_only_has_other_figures() -> None:
    text = "amplifier 100 W into 8 ohm { least 6 ohm }\n" + BOX.replace("8 ohm\n", "4 ohm { re 3.2 ohm }\n")
    text += "variant other {\n  set L1 = 0.5 mH\n}\n"
    source = Source("box.shunt", text)
    collected, said = read(source, loader(Path(__file__), "box.shunt"))
    _, variant = compile_all(collected, said)
    assert "load-too-low" not in {finding.name for finding in variant.findings}
