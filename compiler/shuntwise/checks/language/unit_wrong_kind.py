"""A value with a unit of another kind.

What it finds: millihenry on a capacitor, ohms for a power; also a sum of unlike things in a formula, and a
value that says nothing about a thing of this kind.

Why it matters: one of the two was meant for another place: the part's kind, or the value.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 uF
            ^^^^^^^
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

RULE = Rule("unit-wrong-kind", Severity.ERROR, "text")
