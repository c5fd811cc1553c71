"""A used network that lacks a value.

What it finds: a `use` that does not give a parameter for which the network has no value of its own.

Why it matters: the network's parts have no values then.

Bad:
    network zobel (plus, minus) given r, c {
      resistor R r
      capacitor C c
      plus -- R -- C -- minus
    }
    driver woofer 8 ohm
    coil L1 0.82 mH
    use zobel as Z1 { r 6.8 ohm }
                 ^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- Z1 -- woofer-
      woofer- -- return
    }

Good:
    network zobel (plus, minus) given r, c {
      resistor R r
      capacitor C c
      plus -- R -- C -- minus
    }
    driver woofer 8 ohm
    coil L1 0.82 mH
    use zobel as Z1 { r 6.8 ohm, c 22 uF }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- Z1 -- woofer-
      woofer- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("parameter-missing", Severity.ERROR, "text")
