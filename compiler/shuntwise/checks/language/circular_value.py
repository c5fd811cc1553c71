"""A value that is worked out from itself.

What it finds: `let` lines that lead back to where they began.

Why it matters: none of these values can be known.

Bad:
    let A = B / 2
    let B = A * 2
            ^
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

Good:
    let A = 0.41 mH
    let B = A * 2
    driver woofer 8 ohm
    coil L1 B
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never; give one of them as a number.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("circular-value", Severity.ERROR, "text")
