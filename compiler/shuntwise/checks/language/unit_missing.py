"""A number without its unit.

What it finds: a value that has a unit and is written without one, or with the prefix alone: `0.82`, `0.82
m`; a share without its `%`, such as `meter 2` of a bench.

Why it matters: a number alone can be a thousand times off, and the board would not show it.

Bad:
    driver woofer 8 ohm
    coil L1 0.82
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

RULE = Rule("unit-missing", Severity.ERROR, "text")
