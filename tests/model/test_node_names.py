"""Nodes that are named as parts are: what is said, and how to name them. The rule is the language reference's."""

from __future__ import annotations

import pytest

from shuntwise.api import load_text

BOX = """
driver tweeter 8 ohm
capacitor C1 6.8 uF
coil L2 0.5 mH
leg tweeter {
  input+ -- C1 -- NODE -- tweeter+
  NODE -- L2 -- return
  tweeter- -- return
}
"""


@pytest.mark.parametrize("name", ["t1", "T1", "c9", "r3"])
def test_a_node_named_as_a_part_is_told_how_nodes_are_named(name: str) -> None:
    """Said once, however often the name stands, with a name that does."""
    (finding,) = (f for f in load_text(BOX.replace("NODE", name)).findings if f.name == "unknown-name")
    assert finding.label == "taken for a part, which is nowhere declared"
    assert "a part's letter and a number" in finding.why
    assert f"if a node is meant, give it a name of another form, such as `node_{name}`" in finding.help
    mended = load_text(BOX.replace("NODE", f"node_{name}"))
    assert not [f for f in mended.findings if f.severity.value == "error"]


@pytest.mark.parametrize("name", ["n1", "hp", "tw1"])
def test_other_names_are_nodes(name: str) -> None:
    assert "unknown-name" not in [f.name for f in load_text(BOX.replace("NODE", name)).findings]


def test_a_part_in_other_letters_is_still_offered() -> None:
    told = [f for f in load_text(BOX.replace("-- C1 --", "-- c1 --")).findings if f.name == "unknown-name"]
    assert [(f.headline, f.fixes[0].edits[0].text) for f in told] == [("nothing is called `c1`", "C1")]
    assert told[0].help.startswith("a similar name exists: `C1`")
