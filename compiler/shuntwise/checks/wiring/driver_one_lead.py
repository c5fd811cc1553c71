"""A driver of which one pad is wired and the other is not.

What it finds: a driver with a wired and an unwired pad. A driver that is not wired at all is found by
`part-not-wired`.

Why it matters: the driver stays silent, and the filter before it has no load.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
                      ^^^^^^^
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Set

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.faults.account import misplaced_joints, other_pad
from shuntwise.checks.rule import Confidence, Diagnostic, Fix, Label, Rule, Severity
from shuntwise.diagnostics.diagnostic import Edit
from shuntwise.graph.circuit import Wire


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    circuit, ends = evidence.circuit, evidence.faults.ends
    misplaced = misplaced_joints(circuit, ends)
    returns = {f"{feed.name}-" for feed in evidence.design.feeds}
    for end in ends.open:
        only = end.attachment
        if end.kind != "driver-one-lead" or only is None:
            continue
        other = other_pad(only.point)
        wrong = _at_the_wrong_pad(misplaced, other, returns)
        partner = end.partner
        if wrong:
            help_text = f"`{other}` is joined to both sides: write `{only.point}` here"
        elif end.omitted:
            help_text = f"`{end.omitted[0]}` is left out, so nothing leads here: wire `{only.point}` past it"
        elif partner is not None:
            help_text = f"join the two: `{only.point} -- {partner.point}`"
        elif only.terminal == "-":
            help_text = "lead it back: `" + only.point + " -- return`"
        else:
            help_text = "wire both pads, in the order that the polarity asks for"
        yield RULE.finding(
            wrong[0].span if wrong else evidence.place(other),
            f"`{only.point}` is not wired",
            label=f"`{other}` is joined to both sides" if wrong else f"`{other}` is wired, `{only.point}` is not",
            why="no current flows through a driver with one lead",
            help=help_text,
            places=(Label(evidence.place(partner.point), "this end is open too"),) if partner else (),
            fixes=_move(wrong[0], other, only.point) if wrong else (),
            subjects=(only.owner, *([partner.attachment.owner] if partner and partner.attachment else [])),
        )


def _at_the_wrong_pad(joints: Iterable[Wire], pad: str, returns: Set[str]) -> list[Wire]:
    """Of the joints at the pad that is wired, one of which leads to the return, those that belong to the other pad.

    The one at the return belongs to the minus, another to the plus.
    """
    here = sorted((wire for wire in joints if pad in (wire.first, wire.second)), key=lambda wire: wire.span.start)
    back = [wire for wire in here if returns & {wire.first, wire.second}]
    return back if pad.endswith("+") else [wire for wire in here if wire not in back] if back else []


def _move(wire: Wire, wrong: str, right: str) -> tuple[Fix, ...]:
    """Write the other pad in the joint to the return."""
    text = wire.span.text.replace(wrong, right, 1)
    return (Fix(f"write `{right}`", (Edit(wire.span, text),), Confidence.NEEDS_REVIEW),)


RULE = Rule("driver-one-lead", Severity.ERROR, "circuit", check)
