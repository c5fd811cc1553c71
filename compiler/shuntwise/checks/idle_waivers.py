"""A waiver that waives nothing.

What it finds: an `allow` line whose finding does not arise, at the place that it names, in this design or
this variant of it. A waiver of a check that could not run is left alone.

Why it matters: a waiver outlives the mistake that it was written for, and then hides the next one.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    allow loose-node because "the node was open during the trial"
          ^^^^^^^^^^

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never; remove the line, the version history keeps it.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.rule import Rule, Severity
from shuntwise.checks.run import Checked
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model.design import Design

RULE = Rule("idle-allow", Severity.WARNING, "design")


def idle_waivers(design: Design, checked: Checked) -> Iterator[Diagnostic]:
    """Findings on the waivers of one design; it runs after all rules, since it judges what they found."""
    used = {id(waiver) for _, waiver in checked.waived}
    skipped = {entry.name for entry in checked.not_checked}
    for waiver in design.waivers:
        if id(waiver) in used or waiver.finding in skipped:
            continue
        where = f" on `{waiver.subject}`" if waiver.subject else ""
        yield RULE.finding(
            waiver.finding_span,
            f"nothing is waived: `{waiver.finding}` does not arise{where}",
            label="waives nothing",
            why="left in place, it would hide the next mistake of this kind",
            help="remove the line",
        )
