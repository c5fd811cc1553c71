"""A driver turned round for no stated reason.

What it finds: two neighbours in frequency that are opposite ways round, though nothing in their filters asks for it,
and no `expect polarity` line says that it is meant.

Why it matters: with filters of first or third order, or of unequal order, both ways can be right, and the choice
is one of listening and measuring. Unsaid, it looks the same as two leads exchanged.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter-
                      ^^^^^^^^
      tweeter+ -- return
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
      input+ -- C1 -- tweeter-
      tweeter+ -- return
    }
    expect polarity of tweeter reversed

When to ignore it: never; one line states that it is meant.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.structure.filters import opposite_wanted
from shuntwise.structure.ladders import names


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    stated = evidence.stated_polarities
    for lower, upper in evidence.neighbours:
        if lower.turned == upper.turned or opposite_wanted(evidence.orders(lower, upper)) is not None:
            continue
        if stated & {*names(lower, upper)} or not all(evidence.orders(lower, upper)):
            continue
        turned, other = (upper, lower) if upper.turned else (lower, upper)
        yield RULE.finding(
            evidence.place(turned.hot_pad),
            f"`{turned.driver.name}` is turned round, and nothing says why",
            label="its minus faces the amplifier",
            why="these filters leave it open which way is right, so it looks the same as two leads exchanged",
            help=f"if it is meant, state it: `expect polarity of {turned.driver.name} reversed`",
            subjects=names(turned, other),
        )


RULE = Rule("turned-unsaid", Severity.WARNING, "settled", check)
