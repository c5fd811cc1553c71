"""A value that cannot be worked out.

What it finds: a formula that divides by zero or grows out of range, a part's label where a value belongs, a
letter-and-digit code in a place that does not say what it measures.

Why it matters: what is built on it has no value either.

Bad:
    let L = 6u8
            ^^^
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

Good:
    let L = 0.82 mH
    driver woofer 8 ohm
    coil L1 L
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("value-unclear", Severity.ERROR, "text")
