"""A coil in the path to the tweeter.

What it finds: a tweeter whose whole current passes a coil (a trap of coil and capacitor side by side aside).

Why it matters: the coil takes away the top, which is what the tweeter is there for. Mostly a part was meant
for another leg, or coil and capacitor have changed places.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    coil L2 0.22 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- L2 -- tweeter+
                      ^^
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

When to ignore it: where the coil is meant to take a rising top down; say so in the waiver.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.structure.traps import traps_in_path


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    structure = evidence.structure
    for ladder in structure.of_role("tweeter"):
        if ladder.driver.name in structure.dc_paths or traps_in_path(ladder):
            continue
        for step in ladder.steps:
            if "L" in step.block.letters and "C" not in step.block.letters:
                coil = step.block.one("L")
                yield RULE.finding(
                    evidence.place(coil),
                    f"the coil `{coil}` lies in the path to `{ladder.driver.name}`",
                    label="all of the tweeter's current passes here",
                    why="it takes away the top, which is what the tweeter is there for",
                    help="move it across the tweeter, or into the leg that it was meant for",
                    subjects=(coil, ladder.driver.name),
                )


RULE = Rule("coil-feeds-tweeter", Severity.WARNING, "structure", check)
