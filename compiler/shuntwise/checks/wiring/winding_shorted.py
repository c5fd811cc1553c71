"""A winding of which both ends are on one net, beside another that its field reaches.

What it finds: a coil that is coupled with another, or a section of a tapped coil, whose ends the wiring takes to
one point. A coil without any coupling does nothing there: that is `does-nothing`. If a wire elsewhere bridges it,
the wire is to blame: that is `wired-across`.

Why it matters: no voltage stands across a shorted winding, but its neighbour drives a current in it, which takes
most of the neighbour's inductance away; in a tapped coil also with the tap joined to an end.

Bad:
    driver woofer 8 ohm
    tapped coil T1 2 mH { tap 0.5 mH }
    leg woofer {
      input+ -- T1 -- woofer+
                ^^
      T1.tap -- T1.end
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    tapped coil T1 2 mH { tap 0.5 mH }
    leg woofer {
      input+ -- T1 -- return
      T1.tap -- woofer+
      woofer- -- return
    }

When to ignore it: where a winding is shorted on purpose, to damp another.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.faults.shorts import partners
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity
from shuntwise.diagnostics.wording import listed, quoted


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen = set()
    for short in evidence.faults.shorts:
        span = evidence.place(short.owners[0])
        if short.kind != "winding-shorted" or span in seen:
            continue
        seen.add(span)
        names = quoted(short.owners)
        felt = [f"`{coil}`" for owner in short.owners for coil in partners(evidence.circuit, owner)]
        inside = [owner for owner in short.owners if f"`{owner}`" in felt]
        what = "a section of" if inside else "the winding of" if len(short.owners) == 1 else "the loop of"
        bears = "the rest of the coil" if inside else listed(list(dict.fromkeys(felt)))
        yield RULE.finding(
            span,
            f"{what} {names} is shorted: its ends are on one net, `{short.net}`",
            label="begins and ends on the same metal",
            why=f"the field drives a current in it that takes inductance from {bears}",
            help="move one end to where it belongs" + (", or leave the tap open" if inside else ""),
            places=[Label(wire.span, "joined here") for wire in short.chain],
            subjects=short.owners,
        )


RULE = Rule("winding-shorted", Severity.ERROR, "circuit", check)
