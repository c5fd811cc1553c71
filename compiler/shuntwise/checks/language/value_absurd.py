"""A value that no crossover has.

What it finds: a value outside of all that is credible for the attribute: a coil of 820 H, a capacitor of
6.8 F. The bounds are wide, and common practice.

Why it matters: such a value comes from a slip of the prefix, and everything that is worked out from it is
nonsense.

Bad:
    driver woofer 8 ohm
    coil L1 820 H
            ^^^^^
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

When to ignore it: never; if your part is real, the bounds are wrong: tell us.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("value-absurd", Severity.ERROR, "text")
