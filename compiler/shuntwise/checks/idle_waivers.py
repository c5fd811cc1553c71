"""A waiver that waives nothing.

What it finds: an `allow` line whose finding does not arise, at the place and in the variants that it names. One that
names no variants must be needed by the design itself: for a finding that arises in a variant only, write `allow NAME on
PART in VARIANT because "..."`. A waiver of a check that could not run is left alone.

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

from collections.abc import Collection, Iterator

from shuntwise.checks.rule import Rule, Severity
from shuntwise.checks.run import Checked
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model.design import Design, Waiver

RULE = Rule("idle-allow", Severity.WARNING, "design")


def idle_waivers(design: Design, checked: Checked, needed: Collection[Waiver] = ()) -> Iterator[Diagnostic]:
    """Findings on the waivers of one design; it runs after all rules, since it judges what they found.

    Those that are `needed` elsewhere, and hold here as well, are left alone.
    """
    used = {id(waiver) for _, waiver in checked.waived}
    skipped = {entry.name for entry in checked.not_checked}
    for waiver in design.waivers:
        if id(waiver) in used or waiver.finding in skipped or waiver in needed:
            continue
        where = f" on `{waiver.subject}`" if waiver.subject else ""
        yield RULE.finding(
            waiver.finding_span,
            f"nothing is waived: `{waiver.finding}` does not arise{where}",
            label="waives nothing",
            why="left in place, it would hide the next mistake of this kind",
            help=f"remove {'the name of this variant' if len(waiver.variants) > 1 else 'the line'}",
        )
