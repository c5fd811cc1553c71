"""A capacitor across the tweeter.

What it finds: a capacitor across a tweeter, with no resistor in its row. Side by side with a coil it is counted as
well: a tweeter's coil and a woofer's capacitor at one place are mostly one lead too far.

Why it matters: the capacitor takes away the top, which is what the tweeter is there for. Mostly it is the
woofer's capacitor on the wrong leg.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    capacitor C2 4.7 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter+ -- C1 -- tweeter-
                  ^^
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    capacitor C2 4.7 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

When to ignore it: where it is meant to take a rising top down; say so in the waiver.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for ladder in evidence.structure.of_role("tweeter"):
        if ladder.driver.name in evidence.zobels_side_by_side:
            continue
        for shunt in ladder.across("C"):
            cap = shunt.block.label
            yield RULE.finding(
                evidence.place(cap),
                f"the capacitor `{cap}` lies across `{ladder.driver.name}`",
                label="from one side of the tweeter to the other",
                why="it takes away the top, which is what the tweeter is there for",
                help="move it to the leg that it was meant for",
                subjects=(cap, ladder.driver.name),
            )


RULE = Rule("cap-across-tweeter", Severity.WARNING, "structure", check)
