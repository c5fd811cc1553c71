"""A driver of which both pads are one net.

What it finds: a chain of bare joints, or links, from a driver's plus pad to its minus pad. The finding marks
the joint that most likely should go, and shows the others of the chain.

Why it matters: the driver stays silent, and the filter before it works into a short: at some frequency that
is a short for the amplifier too.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- woofer-
      ^^^^^^^^^^^^^^^^^^
      woofer- -- return
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

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.remedies import chain_places, remedy, replaced_parts, replaced_places
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for short in evidence.faults.shorts:
        if short.kind != "driver-shorted" or short.blamed is None:
            continue
        (driver,) = short.owners
        missing = replaced_parts(evidence, short)
        yield RULE.finding(
            short.blamed.span,
            f"`{driver}+` and `{driver}-` are one net",
            label="joins the two pads" if len(short.chain) == 1 else "part of the chain that joins the two pads",
            why=f"`{driver}` is shorted: it stays silent, and its filter works into a short",
            help=remedy(missing, "take out the joint that does not belong"),
            places=[*chain_places(short), *replaced_places(evidence, missing)],
            subjects=(driver, *missing),
        )


RULE = Rule("driver-shorted", Severity.ERROR, "circuit", check)
