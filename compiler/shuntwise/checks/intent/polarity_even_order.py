"""Neighbours of which the polarity does not suit their filters.

What it finds: two neighbours in frequency with equal filters of second order that are the same way round, or of
fourth order that are not. An `expect polarity` line proves that the leads are as they were meant, not that they are
right: where it is met the same is told, as advice, and where it is not that is told alone. Where no line states how
either is meant it is a warning: it looks the same as two leads exchanged.

Why it matters: second-order filters leave the two drivers half a turn of phase apart at the crossover, so with
both the same way round they cancel there; fourth-order filters leave them in phase. How deep the dip is depends
on how far one driver stands behind the other, so it must be measured. (Phase of even-order pairs: S. H.
Linkwitz, Active crossover networks for noncoincident drivers, J. Audio Eng. Soc. 24(1), 1976.)

Bad:
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
      input+ -- C2 -- tweeter+
                      ^^^^^^^^
      tweeter+ -- L2 -- tweeter-
      tweeter- -- return
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

When to ignore it: where it was measured, as with a horn that stands back: `allow polarity-even-order on tweeter because
"measured: the smaller dip"`.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity
from shuntwise.structure.filters import opposite_wanted
from shuntwise.structure.ladders import names


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    stated = evidence.stated_polarities
    for lower, upper in evidence.neighbours:
        wanted = opposite_wanted(evidence.orders(lower, upper))
        if wanted is None or wanted == (lower.turned != upper.turned):
            continue
        if evidence.missed_polarities & {*names(lower, upper)}:
            continue  # they are not as they are meant, and another finding says so
        order, ways = ("second", "the same way") if wanted else ("fourth", "opposite ways")
        first, second = lower.driver.name, upper.driver.name
        stated_so = bool(stated & {*names(lower, upper)})
        meant = ", as `expect polarity` has it" if stated_so else ""
        yield RULE.finding(
            evidence.place(upper.hot_pad),
            f"`{first}` and `{second}` are {ways} round{meant}, and their filters ask for the other way",
            severity=Severity.ADVICE if stated_so else Severity.WARNING,
            label=f"both filters are of {order} order",
            why=f"{order}-order filters leave them {'half a turn apart' if wanted else 'in phase'} at the crossover, "
            "so they cancel there, unless their distance makes up for it",
            help="turn one of them; or measure, and accept it: "
            f'`allow {RULE.name} on {second} because "measured: the smaller dip"`',
            places=(Label(evidence.place(lower.hot_pad), f"the pad of `{first}` that faces the amplifier"),),
            subjects=names(upper, lower),
        )


RULE = Rule("polarity-even-order", Severity.WARNING, "settled", check)
