"""A part of which one end is wired and the other is not.

What it finds: a part that stands at the end of a walk, so that nothing touches its outer end and no node
names it. A link of which one end leads to nothing counts as well.

Why it matters: the part carries no current. Mostly the last station of the walk was forgotten.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
      woofer+ -- C1
                 ^^
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
      woofer+ -- C1 -- return
    }

When to ignore it: never on a finished board; leave the part out with `omit` as long as it waits for its use.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen = set()
    for end in evidence.faults.ends.open:
        only = end.attachment
        if end.kind != "half-fitted" or only is None or evidence.place(only.owner) in seen:
            continue
        span = evidence.place(only.owner)
        seen.add(span)
        partner = end.partner
        if end.omitted:
            help_text = f"`{end.omitted[0]}` is left out: leave `{only.owner}` out as well, or wire it on"
        elif partner is not None:
            help_text = f"join it: `{only.owner} -- {partner.point}`"
        else:
            help_text = "go on with the walk, such as `-- return`"
        yield RULE.finding(
            span,
            f"nothing is wired to the {_side(only.terminal)} of `{only.owner}`",
            label="one end is open",
            why="a part with one end carries no current",
            help=help_text,
            places=(Label(evidence.place(partner.point), "this end is open too"),) if partner else (),
            subjects=(only.owner, *([partner.attachment.owner] if partner and partner.attachment else [])),
        )


def _side(terminal: str) -> str:
    return {"start": "near end", "end": "far end"}.get(terminal, terminal)


RULE = Rule("half-fitted", Severity.ERROR, "circuit", check)
