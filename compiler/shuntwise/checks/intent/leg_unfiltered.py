"""A driver that plays on into its neighbour's band.

What it finds: a woofer or mid with a neighbour above it and no coil or capacitor that ends its band, and a mid with
a woofer below it and none that begins it. (A tweeter without its capacitor is `bare-tweeter`.)

Why it matters: the two drivers then play the same band, which some boxes want and most do not. Mostly the coil was
forgotten or bridged.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- woofer+
                ^^^^^^^
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
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

When to ignore it: for a driver that is meant to run out by itself; say so in the waiver.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.structure.ladders import Ladder


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for lower, upper in evidence.neighbours:
        if lower.low_pass_order == 0 and not _shapes(lower, "L"):
            yield _finding(evidence, lower, upper, "ends", "a coil into its path")
        if upper.role == "mid" and upper.high_pass_order == 0 and not _shapes(upper, "C"):
            yield _finding(evidence, upper, lower, "begins", "a capacitor into its path")


def _shapes(ladder: Ladder, letter: str) -> bool:
    """Does a part of this kind stand in the path, be it in a group?"""
    return any(letter in step.block.letters for step in ladder.steps)


def _finding(evidence: Evidence, ladder: Ladder, other: Ladder, verb: str, remedy: str) -> Diagnostic:
    name = ladder.driver.name
    return RULE.finding(
        evidence.place(ladder.hot_pad),
        f"nothing {verb} the band of `{name}`",
        label="fed with the whole band" if not ladder.parts else "fed without a filter on this side",
        why=f"it plays on into the band of `{other.driver.name}`",
        help=f"put {remedy}; if it is to run out by itself, waive this finding and say so",
        subjects=(name,),
    )


RULE = Rule("leg-unfiltered", Severity.ADVICE, "settled", check)
