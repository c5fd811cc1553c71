"""A pin that carries two things.

What it finds: a pin that stands twice on one connector and is wired to two pads there; a pin that is called the same on
two connectors of the box and is wired to different pads, so that the same plug fits both and does not do the same; and,
of a box that links through, a pin that carries one thing in and is wired to another.

Why it matters: a plug does not know which socket it is in. A tweeter on the pin that elsewhere carries the woofer's
amplifier is burnt by the first bass note, and two amplifiers that meet on a pin burn each other.

Bad:
    input low
    input high
    connector rear { 1+ low+, 1- low-, 2+ high+, 2- high- }
    connector side { 1+ high+, 1- high- }
                     ^^^^^^^^
    driver woofer 8 ohm
    driver tweeter 8 ohm
    capacitor C1 4.7 uF
    leg woofer {
      low+ -- woofer+
      woofer- -- low-
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      tweeter- -- high-
    }

Good:
    input low
    input high
    connector rear { 1+ low+, 1- low-, 2+ high+, 2- high- }
    connector side through rear
    driver woofer 8 ohm
    driver tweeter 8 ohm
    capacitor C1 4.7 uF
    leg woofer {
      low+ -- woofer+
      woofer- -- low-
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      tweeter- -- high-
    }

When to ignore it: where the two connectors are of kinds that no plug fits both.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity
from shuntwise.diagnostics.wording import listed
from shuntwise.model.design import Pin


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    """The pads of different names that links join are one thing: a box for one amplifier has them so."""
    net_of = evidence.circuit.net_of
    carried: dict[str, tuple[str, Pin]] = {}
    clashes: dict[tuple[str, str], list[tuple[Pin, Pin]]] = {}
    for connector in evidence.design.connectors:
        for pin in connector.pins if connector.through is None else ():
            where, other = carried.setdefault(pin.name, (connector.name, pin))
            if other.pad is not None and pin.pad is not None and net_of[other.pad] != net_of[pin.pad]:
                clashes.setdefault((where, connector.name), []).append((other, pin))
    for (first, second), pairs in clashes.items():
        other, pin = pairs[0]
        apart = f" on `{first}` and `{second}`" * (first != second)
        also = [f"`{pin.name}`" for _, pin in pairs[1:]]
        yield RULE.finding(
            pin.span,
            f"pin `{pin.name}` carries two things{apart}: `{other.pad}` and `{pin.pad}`",
            label=f"`{pin.pad}` here",
            places=(Label(other.span, f"`{other.pad}` here"),),
            why=("a plug does not know which socket it is in" if apart else "the two are joined on this pin")
            + (f"; so it is with {listed(also)}" if also else ""),
            help="wire both alike, or let one link `through` the other" if apart else "give each its own pin",
            subjects=tuple(dict.fromkeys((second, first))),
        )


RULE = Rule("pin-carries-two", Severity.ERROR, "circuit", check)
