"""A part, driver or network that stands in no walk.

What it finds: what is declared and fitted but never wired. In a design without any wiring it speaks once.

Why it matters: the parts list and the box would have it, the circuit would not.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
              ^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    omit C1
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never; a part that is only foreseen is left out with `omit`.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.rule import Diagnostic, Evidence, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    unwired = evidence.faults.ends.unwired
    if unwired and all(walk.leg is None for walk in evidence.design.walks):
        yield RULE.finding(
            evidence.declared(unwired[0]),
            "nothing is wired yet",
            label="this and all else stands in no walk",
            why="what is not wired is not in the circuit",
            help="wire each driver's leg: `leg woofer { input+ -- L1 -- woofer+ ... }`",
            subjects=unwired,
        )
        return
    seen = set()
    for label in unwired:
        span = evidence.declared(label)
        if span in seen:
            continue
        seen.add(span)
        where = f" in the variant `{evidence.design.variant}`" if evidence.design.variant else ""
        yield RULE.finding(
            span,
            f"`{label}` is wired to nothing{where}",
            label="stands in no walk",
            why="it would be bought and fitted, but it is not in the circuit",
            help=f"wire it in a leg{'' if label in evidence.design.drivers else f', or write `omit {label}`'}",
            subjects=(label,),
        )


RULE = Rule("part-not-wired", Severity.ERROR, "circuit", check)
