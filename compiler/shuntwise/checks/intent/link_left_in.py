"""A link between two amplifiers.

What it finds: two inputs, each fed by an amplifier of its own, of which the plus pads or the minus pads are joined by
a link, and plus pads joined by any wire.

Why it matters: two amplifier outputs joined drive current into one another, which can destroy both.

Bad:
    input low
    input high
    link K1
         ^^
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      low+ -- L1 -- woofer+
      woofer- -- low-
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      tweeter- -- high-
    }
    leg woofer and tweeter {
      low+ -- K1 -- high+
    }

Good:
    input low
    input high
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      low+ -- L1 -- woofer+
      woofer- -- low-
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      tweeter- -- high-
    }

When to ignore it: never.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.diagnostics.wording import quoted


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    circuit = evidence.circuit
    for first, second in combinations([pair.name for pair in evidence.design.feeds], 2):
        joined = [sign for sign in "+-" if circuit.pad(first, sign) == circuit.pad(second, sign)]
        chains = {sign: circuit.wire_path(first + sign, second + sign) for sign in joined}
        links = [wire.link for sign in joined for wire in chains[sign] if wire.link]
        if not links and "+" not in joined:
            continue
        if links:
            place, how = evidence.declared(links[0]), quoted(links)
            label, verb = "this link joins them", f"{how} join{'s' * (len(links) == 1)}"
        else:
            place, label, verb = chains["+"][0].span, "this wire joins them", "a wire joins"
        yield RULE.finding(
            place,
            f"{verb} the inputs `{first}` and `{second}`",
            label=label,
            why="two amplifier outputs that are joined drive current into one another",
            help="take the links out where each leg has its own amplifier: `omit`",
            subjects=(first, second, *links),
        )


RULE = Rule("link-left-in", Severity.ERROR, "circuit", check)
