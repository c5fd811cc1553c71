"""Linked boxes that are too low a load together.

What it finds: an amplifier that says how many such `boxes` are linked to it, and whose least load lies above the
least impedance of one box divided by that number.

Why it matters: a link-through socket invites a second box. Two in parallel have half the impedance of one.

Bad:
    amplifier 60 W into 8 ohm { least 4 ohm, boxes 2 }
                                                   ^
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 80 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.47 mH { dcr 0.22 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

Good:
    amplifier 60 W into 8 ohm { least 2 ohm, boxes 2 }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 80 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.47 mH { dcr 0.22 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: where each box has its own amplifier; then leave `boxes` out.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import ohms
from shuntwise.checks.rule import Diagnostic, NotChecked, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    amplifier = evidence.amplifier
    assert amplifier is not None
    allowed, boxes = amplifier.quantities.get("least"), amplifier.quantities.get("boxes")
    if boxes is None or boxes.value <= 1:
        return
    if allowed is None:
        yield RULE.not_checked("the `least` load that the amplifier may drive")
        return
    for feed in evidence.design.feeds:
        least = evidence.stress.least_load(feed.name)
        if least.ohm >= allowed.value > least.ohm / boxes.value:
            yield RULE.finding(
                boxes.span,
                f"{boxes.value:g} boxes at `{feed.name}` are a load of {ohms(least.ohm / boxes.value)}",
                label=f"one is {ohms(least.ohm)}",
                why=f"the amplifier may drive no less than {ohms(allowed.value)}",
                help="say on the label how many may be linked, or use an amplifier for a lower load",
                subjects=(feed.name,),
            )


RULE = Rule("two-boxes", Severity.WARNING, "stress", check)
