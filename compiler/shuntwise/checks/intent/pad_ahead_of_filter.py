"""A pad on the amplifier's side of the filter.

What it finds: a resistor in the path to a tweeter or mid with another across the path behind it, while a coil or
capacitor in the path is still to come, or a coil lies across the path behind it.

Why it matters: the pad takes the power of the whole band instead of its leg's, and the filter no longer sees the
amplifier but the pad.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    resistor R1 3.9 ohm
    resistor R2 8.2 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- R1 -- pad -- C1 -- tweeter+
                ^^
      pad -- R2 -- return
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    resistor R1 3.9 ohm
    resistor R2 8.2 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- R1 -- tweeter+
      tweeter+ -- R2 -- tweeter-
      tweeter- -- return
    }

When to ignore it: where the pad's ratings allow it and the filter was worked out so.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.structure.attenuators import series_resistors


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for ladder in evidence.structure.of_role("mid", "full_range", "tweeter"):
        for place in series_resistors(ladder):
            filters = any({"L", "C"} & {*step.block.letters} for step in place.later_steps)
            filters |= any(shunt.block.letter == "L" for shunt in place.later_shunts)
            if place.shunt_behind and filters:
                shunt = place.shunt_behind.block.label
                yield RULE.finding(
                    evidence.place(place.label),
                    f"the pad of `{place.label}` and `{shunt}` is ahead of the filter of `{ladder.driver.name}`",
                    label="the whole band passes here",
                    why="the pad takes full-band power, and the filter is fed from a resistor",
                    help="move the pad to the driver's side of the filter",
                    subjects=(place.label, shunt, ladder.driver.name),
                )


RULE = Rule("pad-ahead-of-filter", Severity.WARNING, "structure", check)
