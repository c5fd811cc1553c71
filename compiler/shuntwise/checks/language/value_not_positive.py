"""A value of zero or below.

What it finds: a resistance, capacitance, rating or other attribute that is not above zero.

Why it matters: no part has it. It often stands for a part that is to be left out or bridged, and both have
words of their own.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    resistor R1 0 ohm
                ^^^^^
    leg woofer {
      input+ -- L1 -- R1 -- woofer+
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    link K1
    leg woofer {
      input+ -- L1 -- K1 -- woofer+
      woofer- -- return
    }

When to ignore it: never; to leave a part out use `omit`, to bridge it declare a `link`.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("value-not-positive", Severity.ERROR, "text")
