"""A capacitor in the path to the woofer.

What it finds: a woofer whose whole current passes a capacitor.

Why it matters: the capacitor takes away the bass. A low cut is sometimes wanted, to keep a small woofer from
moving too far; that is worth stating.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    capacitor C2 82 uF
    leg woofer {
      input+ -- L1 -- C2 -- woofer+
                      ^^
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: for a low cut that is meant.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.structure.traps import traps_in_path


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen: set[str] = set()
    for ladder in evidence.structure.of_role("woofer"):
        trapped = {label for trap in traps_in_path(ladder) for label in trap}
        for step in ladder.steps:
            if step.block.passes_dc or seen & {*step.block.labels} or trapped & {*step.block.labels}:
                continue
            cap = step.block.one("C")
            seen.add(cap)
            yield RULE.finding(
                evidence.place(cap),
                f"the capacitor `{cap}` lies in the path to `{ladder.driver.name}`",
                label="all of the woofer's current passes here",
                why="it takes away the bass",
                help="move it to where it was meant to be; if a low cut is meant, waive this finding and say so",
                subjects=(cap, ladder.driver.name),
            )


RULE = Rule("cap-feeds-woofer", Severity.WARNING, "structure", check)
