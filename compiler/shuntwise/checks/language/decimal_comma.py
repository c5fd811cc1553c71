"""A number with a decimal comma.

What it finds: `6,8 uF` where the language writes `6.8 uF`.

Why it matters: a comma separates attributes, and `1,000` may be a thousand or one.

Bad:
    driver woofer 8 ohm
    coil L1 0,82 mH
            ^^^^
    leg woofer {
      input+ -- L1 -- woofer+
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

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("decimal-comma", Severity.ERROR, "text")
