"""Capacitors side by side with unequal voltage ratings.

What it finds: capacitors of one construction between the same two nodes whose voltage ratings differ. A film part
beside an electrolytic is another matter and is left alone. Where an amplifier is stated the voltage there is known, and
`cap-volts-low` and `cap-volts-unplugged` say of each capacitor whether its own rating is enough.

Why it matters: they share one voltage, so the group stands what its weakest member stands. The better rating is
money for nothing, or the weaker one is a slip.

Bad:
    driver woofer 8 ohm { re 6.1 ohm }
    driver tweeter 8 ohm { re 6.3 ohm }
    coil L1 0.47 mH
    capacitor C1 4.7 uF { 250 V, film }
    capacitor C2 2.2 uF { 100 V, film }
                          ^^^^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- (C1 | C2) -- tweeter+
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6.1 ohm }
    driver tweeter 8 ohm { re 6.3 ohm }
    coil L1 0.47 mH
    capacitor C1 4.7 uF { 250 V, film }
    capacitor C2 2.2 uF { 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- (C1 | C2) -- tweeter+
      tweeter- -- return
    }

When to ignore it: where the lower rating is enough, and the parts come from the drawer; better still, state the
amplifier.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import named, rated_at, volts
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity
from shuntwise.model.design import Part


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    if evidence.amplifier is not None:
        return  # each is judged by the voltage that it bears
    banks: dict[tuple[frozenset[str], str | None], list[Part]] = defaultdict(list)
    for edge in evidence.circuit.edges.values():
        part = evidence.design.parts.get(edge.owner)
        if part is not None and part.kind == "capacitor" and "voltage" in part.quantities and edge.plus != edge.minus:
            banks[frozenset((edge.plus, edge.minus)), part.construction].append(part)
    for bank in banks.values():
        weakest, best = (choose(bank, key=lambda part: part.get("voltage")) for choose in (min, max))
        if weakest.get("voltage") == best.get("voltage"):
            continue
        rated = volts(weakest.get("voltage"))
        yield RULE.finding(
            rated_at(evidence, weakest, "voltage"),
            f"`{weakest.label}` holds the capacitors beside it down to {rated}",
            label="the lowest rating of the group",
            places=(Label(rated_at(evidence, best, "voltage"), "side by side with this"),),
            why="parts in parallel share one voltage",
            help="give all of them the same rating, or state the `amplifier`, and each is judged by what it bears",
            subjects=named(evidence, *(part.label for part in bank)),
        )


RULE = Rule("parallel-caps-mixed", Severity.WARNING, "circuit", check)
