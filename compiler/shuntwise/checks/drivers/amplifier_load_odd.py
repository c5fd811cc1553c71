"""An amplifier whose power is stated into less than the least load that it may drive.

What it finds: an `amplifier` of which the load behind `into` is below its `least`.

Why it matters: one of the two is wrong, and ratings, heat and the load are all judged by them.

Bad:
    amplifier 150 W into 2 ohm { least 4 ohm }
                         ^^^^^
    driver woofer 8 ohm { re 5.8 ohm }
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }

Good:
    amplifier 150 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 5.8 ohm }
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }

When to ignore it: never; state the power into a load that the amplifier may drive.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    amplifier = evidence.amplifier
    if amplifier is None or amplifier.load is None:
        return
    least = amplifier.quantities.get("least")
    if least is not None and amplifier.load.value < least.value:
        yield RULE.finding(
            amplifier.load.span,
            f"the amplifier's power is stated into {amplifier.load.text}, and it may drive no less than {least.text}",
            label="below its least load",
            why="ratings, heat and the load are judged by these two",
            help="state the power that it gives into its nominal load",
            subjects=("amplifier",),
        )


RULE = Rule("amplifier-load-odd", Severity.WARNING, "design", check)
