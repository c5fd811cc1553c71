"""Two neighbours that play the same band.

What it finds: two neighbours in frequency of which the lower's low-pass ends above the beginning of the upper's
high-pass by more than the bound (in octaves), as worked out from coils, capacitors and nominal impedances. A leg
without any filter on this side is left to `leg-unfiltered`. (Voltages would not show it: above the corner of its
first coil a woofer's voltage is held up by its own voice coil.)

Why it matters: where both play, their sound piles up and depends on where one stands.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.1 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.27 mH
    capacitor C1 2.2 uF
    capacitor C2 15 uF
    coil L2 1.8 mH
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

When to ignore it: where the overlap is meant, as for a second woofer that helps out in the bass.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import log2

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Label, Rule, Severity
from shuntwise.diagnostics.wording import octaves
from shuntwise.structure.attenuators import glows
from shuntwise.structure.crossovers import corner_hz


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    if evidence.slips:
        return
    for lower, upper in evidence.neighbours:
        if glows(evidence.design, lower) or glows(evidence.design, upper) or lower.labels & upper.labels:
            continue
        ends, begins = corner_hz(evidence.design, lower, False), corner_hz(evidence.design, upper, True)
        if ends is None or begins is None or log2(ends / begins) <= RULE.limit(evidence):
            continue
        low, high = (units.write(freq, units.HERTZ, 2) for freq in (begins, ends))
        yield RULE.finding(
            evidence.place(upper.hot_pad),
            f"`{lower.driver.name}` and `{upper.driver.name}` both play from {low} to {high}",
            label=f"its filter begins at {low}",
            why=f"their bands overlap by {octaves(log2(ends / begins))}",
            help="move the two filters apart",
            places=(Label(evidence.place(lower.hot_pad), f"the filter of this one ends at {high}"),),
            subjects=(upper.driver.name, lower.driver.name),
        )


RULE = Rule("corner-overlap", Severity.WARNING, "settled", check, Bound(1.0, units.OCTAVE))
