"""A coil across the woofer.

What it finds: a coil across a woofer, in whose path no capacitor stands. A coil side by side with a capacitor is
a trap the wrong way round, and left to that rule.

Why it matters: the coil is a short for the bass. Mostly it is the tweeter's coil on the wrong leg.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    coil L2 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- L2 -- woofer-
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
    coil L2 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter+ -- L2 -- return
      tweeter- -- return
    }

When to ignore it: never, unless the woofer has a capacitor in its path, and then nothing is said.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.structure.traps import traps_across


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen: set[str] = set()
    for ladder in evidence.structure.of_role("woofer"):
        if not all(step.block.passes_dc for step in ladder.steps) or traps_across(evidence.circuit, ladder):
            continue
        for shunt in ladder.across("LT"):
            coil = shunt.block.label
            if coil not in seen:
                seen.add(coil)
                yield RULE.finding(
                    evidence.place(coil),
                    f"the coil `{coil}` lies across `{ladder.driver.name}`",
                    label="from one side of the woofer to the other",
                    why="it is a short for the bass",
                    help="move it to the leg that it was meant for, or a capacitor belongs here",
                    subjects=(coil, ladder.driver.name),
                )


RULE = Rule("coil-across-woofer", Severity.ERROR, "structure", check)
