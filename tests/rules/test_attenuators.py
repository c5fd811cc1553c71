"""Attenuators wired the wrong way: each slip once, and what is sound left alone."""

from __future__ import annotations

import pytest

from rules.compiling import OWN_NAME, findings_of
from shuntwise.source import Source

BOX = """
driver tweeter 8 ohm { re 6.2 ohm }
capacitor C1 4.7 uF
attenuator A1 8 ohm { loss 3 dB, most 12 dB }
leg tweeter {
  input+ -- C1 -- A1 -- tweeter+
  A1.common -- return
  tweeter- -- return
}
"""


@pytest.mark.parametrize(
    ("old", "new", "found"),
    [
        ("", "", []),
        ("C1 -- A1 -- tweeter+", "C1 -- A1.out\n  A1.in -- tweeter+", ["attenuator-miswired"]),
        ("  A1.common -- return\n", "", ["attenuator-miswired"]),
        ("A1 8 ohm", "A1 4 ohm", ["attenuator-miswired"]),
        ("A1 8 ohm", "A1 6 ohm", []),
        ("tweeter 8 ohm", "tweeter 16 ohm", ["attenuator-miswired"]),
        ("loss 3 dB", "loss -3 dB", ["value-unclear"]),
        ("loss 3 dB", "loss 15 dB", ["value-unclear"]),
    ],
)
def test_each_slip_is_told_once(old: str, new: str, found: list[str]) -> None:
    text = BOX.replace(old, new) if old else BOX
    told = [finding.name for finding in findings_of(Source(OWN_NAME, text), ("language", "wiring", "intent"))]
    assert told == found


def test_limit_moves_the_bound() -> None:
    text = BOX.replace("A1 8 ohm", "A1 4 ohm") + "limit attenuator-miswired 150 %\n"
    assert [f.name for f in findings_of(Source(OWN_NAME, text), ("language", "wiring", "intent"))] == []
