"""A plus pin on a minus pad.

What it finds: a pin whose name ends in `+` wired to a minus, or one whose name ends in `-` wired to a plus; and, as an
error, two pins of one pair that are joined.

Why it matters: the box then stands against all others that are fed by the same kind of cable: their bass cancels.

Bad:
    connector rear { 1+ input-, 1- input+ }
                     ^^^^^^^^^
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

When to ignore it: for a box that is meant to stand against the others, such as one of a pair of subwoofers.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.model.design import Pin


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    net_of = evidence.circuit.net_of
    for connector in evidence.design.connectors:
        pads = {pin.name: pin for pin in connector.pins if pin.pad is not None and connector.through is None}
        joined = [
            (pin, pads[other])
            for name, pin in pads.items()
            if name.endswith("+")
            and (other := name[:-1] + "-") in pads
            and _net(net_of, pin) == _net(net_of, pads[other])
        ]
        for plus, minus in joined:
            yield RULE.finding(
                minus.span,
                f"the pins `{plus.name}` and `{minus.name}` of `{connector.name}` are joined",
                severity=Severity.ERROR,
                label=f"`{minus.pad}`, as the other one",
                why="whatever is plugged in here is shorted",
                help=f"wire one of them to the other pad of `{(plus.pad or '')[:-1]}`",
                subjects=(connector.name,),
            )
        if joined:
            continue
        turned = [pin for pin in connector.pins if _turned(pin)]
        if not turned or connector.through is not None:
            continue
        yield RULE.finding(
            turned[0].span,
            f"pin `{turned[0].name}` of `{connector.name}` is wired to `{turned[0].pad}`",
            label="plus and minus exchanged",
            why="this box would stand against all others on such cables",
            help="exchange the two pads",
            subjects=(connector.name,),
        )


def _net(net_of: Mapping[str, str], pin: Pin) -> str:
    return net_of[pin.pad or ""]


def _turned(pin: Pin) -> bool:
    return pin.pad is not None and pin.name[-1] in "+-" and pin.name[-1] != pin.pad[-1]


RULE = Rule("pin-turned", Severity.WARNING, "circuit", check)
