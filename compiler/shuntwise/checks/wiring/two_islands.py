"""A piece of the circuit that is joined to no input.

What it finds: parts and drivers that hang together, but from which nothing leads to any input. It speaks
only of pieces without open ends: those are told of by name. Legs on posts that no link feeds are left to
the check of use, and two pieces that each have their own input are healthy.

Why it matters: nothing in such a piece ever sees the signal. A joint between the pieces is missing.

Bad:
    driver woofer 8 ohm
    driver tweeter 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    resistor R1 2.2 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      high -- C1 -- tweeter+
                    ^^^^^^^^
      high -- R1 -- tweeter-
    }

Good:
    driver woofer 8 ohm
    driver tweeter 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    resistor R1 2.2 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      return -- R1 -- tweeter-
    }

When to ignore it: never.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for dead in evidence.faults.dead:
        if dead.kind != "two-islands":
            continue
        first = dead.drivers[0] if dead.drivers else dead.owners[0]
        feed = next((pair.name for pair in evidence.design.feeds), "")
        rest = [edge.owner for edge in evidence.circuit.edges.values() if edge.key in evidence.faults.live]
        places = [Label(evidence.place(f"{feed}+"), f"the other piece: {_list(rest)}")] if rest else []
        yield RULE.finding(
            evidence.place(f"{first}+" if dead.drivers else first),
            f"nothing leads from here to an input: {_list(dead.owners)}",
            label="in a piece of its own",
            why="no signal reaches what is joined to no input",
            help="find the joint that is missing between the two pieces",
            places=places,
            subjects=dead.owners,
        )


def _list(owners: tuple[str, ...] | list[str]) -> str:
    shown = [f"`{owner}`" for owner in dict.fromkeys(owners)]
    return ", ".join(shown[:8]) + (f" and {len(shown) - 8} more" if len(shown) > 8 else "")


RULE = Rule("two-islands", Severity.ERROR, "circuit", check)
