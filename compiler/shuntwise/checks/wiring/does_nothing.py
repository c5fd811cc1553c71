"""A part of which both ends are on one net.

What it finds: a part that the wiring takes back to where it began. If a wire elsewhere bridges it, the
wire is to blame: that is `wired-across`; a coil that is coupled with another does something: that is
`winding-shorted`. A link between two points that are joined anyway counts as well.

Why it matters: no voltage stands across such a part, so it does nothing. It often comes of a late change in
which one end moved and the other did not.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
      woofer- -- C1 -- return
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

When to ignore it: never; leave the part out with `omit`.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity
from shuntwise.diagnostics.wording import quoted


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen = set()
    for short in evidence.faults.shorts:
        span = evidence.place(short.owners[0])
        if short.kind != "does-nothing" or span in seen:
            continue
        seen.add(span)
        names = quoted(short.owners)
        many = len(short.owners) > 1
        yield RULE.finding(
            span,
            f"both ends of {names} are on one net, `{short.net}`",
            label="begins and ends on the same metal",
            why=f"no voltage stands across {'them' if many else 'it'}, so {'they do' if many else 'it does'} nothing",
            help="move one end to where it belongs",
            places=[Label(wire.span, "joined here") for wire in short.chain],
            subjects=short.owners,
        )


RULE = Rule("does-nothing", Severity.ERROR, "circuit", check)
