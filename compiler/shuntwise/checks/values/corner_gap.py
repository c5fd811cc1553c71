"""A hole between two neighbours' bands.

What it finds: by solving, two neighbours in frequency of which the lower has fallen by 6 dB more than the bound (in
octaves) below where the upper has risen to 6 dB under its band. Levels are those at the drivers' pads.

Why it matters: between them neither plays, and the box has a dip there.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 2.7 mH
    capacitor C1 22 uF
    capacitor C2 4.7 uF
    coil L2 0.56 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter-
                      ^^^^^^^^
      tweeter- -- L2 -- tweeter+
      tweeter+ -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    capacitor C2 6.8 uF
    coil L2 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter-
      tweeter- -- L2 -- tweeter+
      tweeter+ -- return
    }

When to ignore it: where the drivers' own sound fills the gap, as a horn's rising low end may; say so in the waiver.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import log2

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Label, Rule, Severity
from shuntwise.diagnostics.wording import octaves
from shuntwise.structure.attenuators import glows

HALF_DB = 6.0


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    if evidence.slips:
        return
    for lower, upper in evidence.neighbours:
        if any(glows(evidence.design, ladder) or evidence.inside_out(ladder) for ladder in (lower, upper)):
            continue
        _, ends, _ = evidence.figures.edges(lower.driver.name, HALF_DB)
        begins, _, _ = evidence.figures.edges(upper.driver.name, HALF_DB)
        if ends is None or begins is None or log2(begins / ends) <= RULE.limit(evidence):
            continue
        low, high = (units.write(freq, units.HERTZ, 2) for freq in (ends, begins))
        yield RULE.finding(
            evidence.place(upper.hot_pad),
            f"between {low} and {high} neither `{lower.driver.name}` nor `{upper.driver.name}` plays",
            label=f"6 dB below its band at {high}",
            why=f"the gap is {octaves(log2(begins / ends))} wide",
            help="bring the two filters nearer to one another",
            places=(Label(evidence.place(lower.hot_pad), f"6 dB below its band at {low}"),),
            subjects=(upper.driver.name, lower.driver.name),
        )


RULE = Rule("corner-gap", Severity.WARNING, "settled", check, Bound(1.0, units.OCTAVE))
