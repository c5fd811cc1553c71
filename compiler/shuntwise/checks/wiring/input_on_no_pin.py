"""An input that no connector leads to.

What it finds: in a design that tells its connectors, an input of which the plus or the minus is on no pin.

Why it matters: the amplifier cannot be plugged in, or only one of its two wires arrives.

Bad:
    connector rear { 1+ input+ }
              ^^^^
    driver woofer 8 ohm
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }

Good:
    connector rear { 1+ input+, 1- input- }
    driver woofer 8 ohm
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }

When to ignore it: for an amplifier that is built into the box.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    net_of, connectors = evidence.circuit.net_of, evidence.design.connectors
    reached = {net_of[pin.pad] for connector in connectors for pin in connector.pins if pin.pad is not None}
    if any(connector.refused for connector in connectors):
        return
    for pair in evidence.design.feeds if connectors else ():
        missing = [f"`{pair.name}{sign}`" for sign in "+-" if net_of[f"{pair.name}{sign}"] not in reached]
        if missing:
            yield RULE.finding(
                connectors[0].span,
                f"{' and '.join(missing)} {'are' if len(missing) > 1 else 'is'} on no pin",
                label="of the connectors told here",
                why="the amplifier is plugged in somewhere",
                help=f"write which pin carries it: `1{missing[0][-2]} {missing[0][1:-1]}`",
                subjects=(pair.name,),
            )


RULE = Rule("input-on-no-pin", Severity.WARNING, "circuit", check)
