"""A tweeter with no capacitor in front of it.

What it finds: a tweeter that direct current reaches, in whose path no capacitor stands. In a series-type
network the coil across the tweeter leads direct current round it, and that is healthy.

Why it matters: the tweeter gets the whole bass, and whatever direct current a failing amplifier puts out. It
is the costliest slip of all.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    resistor R1 2.2 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- R1 -- tweeter+
                      ^^^^^^^^
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

When to ignore it: where the amplifier feeds this driver alone behind an active crossover, and even then a
large capacitor is good insurance.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.structure.filters import bypass


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    structure = evidence.structure
    for ladder in structure.of_role("tweeter"):
        name = ladder.driver.name
        if name in structure.dc_paths and not bypass(evidence.structure, ladder):
            yield RULE.finding(
                evidence.place(ladder.hot_pad),
                f"no capacitor stands in front of `{name}`",
                label="bass and direct current arrive here",
                why="bass at full level destroys a tweeter, and so does a failing amplifier",
                help="put a capacitor into its leg, ahead of everything else",
                subjects=(name,),
            )


RULE = Rule("bare-tweeter", Severity.ERROR, "structure", check)
