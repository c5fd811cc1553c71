"""A Zobel of which the parts lie side by side.

What it finds: a resistor and a capacitor side by side across a driver, whose values would fit its voice coil in a row
(`zobel-off` says what fits). With a resistor in the path to the driver the one across it is a pad's.

Why it matters: side by side the resistor draws power at every frequency, and the capacitor is a part of the filter.
Neither evens out the voice coil.

Bad:
    driver woofer 8 ohm { re 5.8 ohm, le 0.72 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.56 mH
    resistor R1 6.8 ohm
    capacitor C1 15 uF
    capacitor C2 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- (R1 | C1) -- woofer-
                  ^^
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 5.8 ohm, le 0.72 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.56 mH
    resistor R1 6.8 ohm
    capacitor C1 15 uF
    capacitor C2 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

When to ignore it: where the resistor is there to load the amplifier, and the capacitor's size a coincidence.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen: set[str] = set()
    for name, (resistor, capacitor) in evidence.zobels_side_by_side.items():
        if resistor not in seen:
            seen.add(resistor)
            yield RULE.finding(
                evidence.place(resistor),
                f"`{resistor}` and `{capacitor}` lie side by side across `{name}`, and make a Zobel only in a row",
                label="straight across the driver",
                why="side by side the one draws power at every frequency, and the other is a part of the filter",
                help=f"put them in a row: `{name}+ -- {resistor} -- {capacitor} -- {name}-`",
                places=(Label(evidence.place(capacitor), "and this beside it"),),
                subjects=(resistor, capacitor, name),
            )


RULE = Rule("zobel-side-by-side", Severity.WARNING, "structure", check)
