"""A network that uses itself.

What it finds: a network that contains a use of itself, by way of others too.

Why it matters: it would contain itself without end.

Bad:
    network pad (into, out) {
      resistor R1 3.3 ohm
      use pad as P2
      ^^^^^^^^^^^^^
      into -- R1 -- P2 -- out
    }
    driver woofer 8 ohm
    use pad as P1
    leg woofer {
      input+ -- P1 -- woofer+
      woofer- -- return
    }

Good:
    network pad (into, out) {
      resistor R1 3.3 ohm
      resistor R2 3.3 ohm
      into -- R1 -- R2 -- out
    }
    driver woofer 8 ohm
    use pad as P1
    leg woofer {
      input+ -- P1 -- woofer+
      woofer- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("network-loop", Severity.ERROR, "text")
