"""A part that leads direct current past the tweeter's capacitor.

What it finds: a tweeter whose leg has a capacitor, and parts that lead direct current round it: a resistor, a
lamp or a coil.

Why it matters: bass and direct current reach the tweeter as if the capacitor were not there, only weaker.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    resistor R1 10 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- (C1 | R1) -- tweeter+
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

When to ignore it: for a resistor of many kilohm that only discharges the capacitor.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.diagnostics.wording import quoted
from shuntwise.structure.filters import bypass


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for ladder in evidence.structure.of_role("tweeter"):
        parts = bypass(evidence.structure, ladder)
        if parts:
            shown = quoted(parts)
            yield RULE.finding(
                evidence.place(parts[0]),
                f"{shown} lead{'s' * (len(parts) == 1)} direct current past the capacitor of `{ladder.driver.name}`",
                label="bridges the capacitor",
                why="the capacitor no longer keeps bass and direct current away from the tweeter",
                help="move the part to the driver's side of the capacitor",
                subjects=(*parts, ladder.driver.name),
            )


RULE = Rule("dc-into-tweeter", Severity.ERROR, "structure", check)
