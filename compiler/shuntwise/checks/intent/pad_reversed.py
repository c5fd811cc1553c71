"""A pad the wrong way round.

What it finds: in the path to a tweeter or mid, a resistor that has another across the path on the amplifier's side
of it, and none on the driver's side.

Why it matters: the resistor across the path belongs at the driver. The other way round the level comes out wrong
and the filter sees a lower load than it was made for: 3.9 and 8.2 ohm for 8 ohm, meant for 6 dB, give
3.5 dB and a load of 4.8 ohm.

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
      input+ -- C1 -- hp -- R1 -- tweeter+
                            ^^
      hp -- R2 -- return
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

When to ignore it: where the shunt resistor is there for the filter and no pad is meant.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity
from shuntwise.structure.attenuators import series_resistors


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for ladder in evidence.structure.of_role("mid", "full_range", "tweeter"):
        for place in series_resistors(ladder):
            if place.shunt_ahead and not place.shunt_behind:
                shunt = place.shunt_ahead.block.label
                yield RULE.finding(
                    evidence.place(place.label),
                    f"the pad of `{place.label}` and `{shunt}` is the wrong way round",
                    label="the driver's side, where the shunt belongs",
                    why="the level comes out wrong, and the filter sees a lower load than it was made for",
                    help=f"move `{shunt}` to the driver's side of `{place.label}`",
                    places=(Label(evidence.place(shunt), "ahead of it, seen from the amplifier"),),
                    subjects=(place.label, shunt, ladder.driver.name),
                )


RULE = Rule("pad-reversed", Severity.WARNING, "structure", check)
