"""A driver that plays lower than its maker allows.

What it finds: by solving, a driver of which the leg begins (3 dB under its band) below the `lowest` corner that its
maker allows, or an octave below that corner gets less than 1 dB short of the `slope` that he asks for.

Why it matters: below its band a driver moves furthest for the least sound; it distorts there, and burns. What a maker
allows holds for the filter that he names.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH, lowest 3.5 kHz, slope 12 dB/octave }
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
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH, lowest 2 kHz, slope 12 dB/octave }
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

When to ignore it: where the box is never driven to the power for which the maker states the corner.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, NotChecked, Rule, Severity
from shuntwise.figures.nominal import LOWEST_HZ
from shuntwise.model.design import Quantity
from shuntwise.model.kinds import ROLES
from shuntwise.structure.attenuators import glows
from shuntwise.structure.ladders import Ladder

CORNER_DB = 3.0
ROUNDING = 0.02
"""A maker's corner is a round figure."""

SLACK_DB = 1.0
"""A filter falls with its full slope only well below its corner."""


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    if evidence.slips:
        yield RULE.not_checked("values that are not off by a power of ten", *evidence.slips)
        return
    for ladder in evidence.structure.of_role(*ROLES):
        lowest = ladder.driver.quantities.get("lowest")
        if lowest is not None and not glows(evidence.design, ladder):
            yield from _judge(evidence, ladder, lowest)


def _judge(evidence: Evidence, ladder: Ladder, lowest: Quantity) -> Iterator[Diagnostic]:
    name, slope, figures = ladder.driver.name, ladder.driver.quantities.get("slope"), evidence.figures
    begins = figures.edges(name, CORNER_DB)[0] or LOWEST_HZ
    if begins < lowest.value * (1 - ROUNDING):
        yield RULE.finding(
            lowest.span,
            f"`{name}` plays from {units.write(begins, units.HERTZ, 2)}",
            label="the lowest that its maker allows",
            why="below its band a driver moves furthest, distorts, and burns",
            help="raise the corner, or fit a driver for it",
            subjects=(name,),
        )
    elif slope is not None:
        falls_db = figures.band(name).reference_db - figures.level_db(name, lowest.value / 2)
        if falls_db < slope.value - SLACK_DB:
            yield RULE.finding(
                slope.span,
                f"an octave below {lowest.text} `{name}` gets only {falls_db:.2g} dB less than in its band",
                label="its maker asks for more",
                why="the corner that he allows holds for a filter as steep as that",
                help="make the filter steeper, or raise the corner",
                subjects=(name,),
            )


RULE = Rule("below-lowest-corner", Severity.WARNING, "settled", check)
