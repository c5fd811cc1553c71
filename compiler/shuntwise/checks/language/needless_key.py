"""A word before a value that tells itself by its unit.

What it finds: `tolerance 5 %`, `voltage 250 V`: attributes that are written without a word.

Why it matters: one way of writing keeps designs alike and differences small.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH { tolerance 5 % }
                      ^^^^^^^^^
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

When to ignore it: never; the fix removes the word.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("needless-key", Severity.ERROR, "text")
