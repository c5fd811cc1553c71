"""A variant that does not say what it is for.

What it finds: a `variant` without a title in quotes.

Why it matters: the title goes on every sheet, and on the label inside the box. `b` tells nobody in two years which
box it was.

Bad:
    driver woofer 8 ohm { re 6.1 ohm }
    driver tweeter 8 ohm { re 6.3 ohm }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }
    variant b {
            ^
      set C1 = 5.6 uF
    }

Good:
    driver woofer 8 ohm { re 6.1 ohm }
    driver tweeter 8 ohm { re 6.3 ohm }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }
    variant b "the box under the balcony, a little less treble" {
      set C1 = 5.6 uF
    }

When to ignore it: while the variant is only being tried.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for variant in evidence.design.variants:
        if variant.title and variant.title.strip():
            continue
        yield RULE.finding(
            variant.span,
            f"the variant `{variant.name}` has no title",
            label="says nothing about what it is for",
            why="the title stands on every sheet and on the label inside the box",
            help=f'write it behind the name: `variant {variant.name} "what it is for"`',
            subjects=(variant.name,),
        )


RULE = Rule("variant-unnamed", Severity.WARNING, "design", check)
