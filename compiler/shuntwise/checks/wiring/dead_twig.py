"""A branch that hangs on one node only.

What it finds: parts without a driver that are wired at both ends, and yet lead from a node to nowhere but that
same node. A branch with an open end is told of as that end.

Why it matters: no current flows through it. The parts cost money and change nothing.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    resistor R1 6.8 ohm
    capacitor C1 22 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- woofer+
                 ^^
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    resistor R1 6.8 ohm
    capacitor C1 22 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- return
      woofer- -- return
    }

When to ignore it: never on a finished board; leave the parts out with `omit`.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen = set()
    for dead in evidence.faults.dead:
        if dead.kind != "dead-twig":
            continue
        span = min((evidence.place(owner) for owner in dead.owners), key=lambda place: (place.source.name, place.start))
        if span in seen:
            continue
        seen.add(span)
        names = ", ".join(f"`{owner}`" for owner in dead.owners[:8])
        yield RULE.finding(
            span,
            f"no current can flow through {names}",
            label=f"hangs on `{dead.contact}` only",
            why="a branch that leads back to the node it came from carries nothing",
            help="wire one of its ends to where it belongs",
            subjects=dead.owners,
        )


RULE = Rule("dead-twig", Severity.WARNING, "circuit", check)
