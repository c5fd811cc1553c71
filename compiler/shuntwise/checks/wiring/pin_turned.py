"""A plus pin on a minus pad.

What it finds: a pin whose name ends in `+` wired to a minus, or one whose name ends in `-` wired to a plus.

Why it matters: the box then stands against all others that are fed by the same kind of cable: their bass cancels.

Bad:
    connector rear { 1+ input-, 1- input+ }
                     ^^^^^^^^^
    driver woofer 8 ohm
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }

Good:
    connector rear { 1+ input+, 1- input- }
    driver woofer 8 ohm
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }

When to ignore it: for a box that is meant to stand against the others, such as one of a pair of subwoofers.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.model.design import Pin


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for connector in evidence.design.connectors:
        turned = [pin for pin in connector.pins if _turned(pin)]
        if not turned or connector.through is not None:
            continue
        yield RULE.finding(
            turned[0].span,
            f"pin `{turned[0].name}` of `{connector.name}` is wired to `{turned[0].pad}`",
            label="plus and minus exchanged",
            why="this box would stand against all others on such cables",
            help="exchange the two pads",
            subjects=(connector.name,),
        )


def _turned(pin: Pin) -> bool:
    return pin.pad is not None and pin.name[-1] in "+-" and pin.name[-1] != pin.pad[-1]


RULE = Rule("pin-turned", Severity.WARNING, "design", check)
