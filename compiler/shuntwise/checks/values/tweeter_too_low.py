"""A tweeter that is asked to play too low.

What it finds: by solving, a tweeter of known resonance of which the leg begins (3 dB under its band) below the bound
times that resonance; behind a filter of third order and more, below three quarters of the bound. Where the driver
states a `lowest` corner, that counts instead (`below-lowest-corner`).

Why it matters: near its resonance a tweeter moves furthest and cares least for the amplifier. It distorts there, and
burns. (The factors are common practice, no source.)

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH, fs 1.6 kHz, qms 2.2, qes 1.4 }
                                                      ^^^^^^^
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

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH, fs 800 Hz, qms 2.2, qes 1.4 }
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

When to ignore it: where the maker of the driver allows the lower corner at the power used.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, NotChecked, Rule, Severity
from shuntwise.figures.nominal import LOWEST_HZ
from shuntwise.structure.attenuators import glows

CORNER_DB = 3.0
STEEP = 3
"""From this order on a filter protects enough for a lower corner."""


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    if evidence.slips:
        yield RULE.not_checked("values that are not off by a power of ten", *evidence.slips)
        return
    for ladder in evidence.structure.of_role("tweeter"):
        name, resonance = ladder.driver.name, ladder.driver.quantities.get("fs")
        if glows(evidence.design, ladder) or "lowest" in ladder.driver.quantities:
            continue
        if resonance is None:
            yield RULE.not_checked("the resonance `fs`", name)
            continue
        begins = evidence.figures.edges(name, CORNER_DB)[0] or LOWEST_HZ
        bound = RULE.limit(evidence)
        factor = 0.75 * bound if ladder.high_pass_order >= STEEP else bound
        if begins >= factor * resonance.value:
            continue
        corner = units.write(begins, units.HERTZ, 2)
        yield RULE.finding(
            resonance.span,
            f"`{name}` plays from {corner}, and its resonance is at {resonance.text}",
            label=f"{begins / resonance.value:.2g} times its resonance; {factor:.2g} is asked for",
            why="near its resonance a tweeter moves furthest, distorts, and burns",
            help="raise the corner, or make the filter steeper",
            subjects=(name,),
        )


RULE = Rule("tweeter-too-low", Severity.WARNING, "settled", check, Bound(2.0, units.PLAIN))
