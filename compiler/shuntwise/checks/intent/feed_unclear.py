"""A driver of which nobody can tell by which filter it is fed.

What it finds: a driver through which current flows, but between two points at which the circuit is balanced: with
every part taken for 1 ohm no voltage stands across it, so that it belongs to no leg more than to another. Mostly its
minus lies on another driver's plus instead of on its minus.

Why it matters: what depends on how the driver is fed (its polarity, its order, its band) cannot be judged.

Bad:
    driver woofer1 8 ohm
    driver woofer2 8 ohm
    coil L1 1 mH
    coil L2 1 mH
    capacitor C1 10 uF
    leg woofer1 and woofer2 {
      input+ -- L1 -- woofer1+
                      ^^^^^^^^
      woofer1+ -- C1 -- return
      woofer1- -- woofer2+
      input+ -- L2 -- woofer2+
      woofer2- -- return
    }

Good:
    driver woofer1 8 ohm
    driver woofer2 8 ohm
    coil L1 1 mH
    coil L2 1 mH
    capacitor C1 10 uF
    leg woofer1 {
      input+ -- L1 -- woofer1+
      woofer1+ -- C1 -- return
      woofer1- -- return
    }
    leg woofer2 {
      input+ -- L2 -- woofer2+
      woofer2- -- return
    }

When to ignore it: where a driver is meant to stand in a bridge between two legs.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, NotChecked, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    if not evidence.traceable:
        yield RULE.not_checked("a circuit of fewer parts")
        return
    for name in evidence.structure.unfed:
        if name not in evidence.faults.live:
            continue  # `driver-unfed` has told of it
        yield RULE.finding(
            evidence.place(f"{name}+"),
            f"how `{name}` is fed cannot be told",
            label="hangs between two points that are alike",
            why="it belongs to no leg more than to another, so that neither its polarity nor its band can be judged",
            help=f"look where `{name}+` and `{name}-` lead: one of them is probably on the wrong node",
            places=(Label(evidence.place(f"{name}-"), "its other pad"),),
            subjects=(name,),
        )


RULE = Rule("feed-unclear", Severity.WARNING, "faultless", check)
