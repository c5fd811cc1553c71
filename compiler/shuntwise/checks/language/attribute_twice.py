"""One attribute told twice.

What it finds: two tolerances, two ratings or two constructions of one thing.

Why it matters: which of them is right cannot be known; one of the two was mostly meant for another
attribute.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH { 5 %, 10 % }
                           ^^^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH { 5 % }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("attribute-twice", Severity.ERROR, "text")
