"""More parts than any box holds.

What it finds: networks that use networks, and so multiply beyond 20,000 parts. The example is tried with a
bound of 4 parts, to be short.

Why it matters: no board holds them, and a file must not be able to exhaust the compiler.

Bad:
    network two (into, out) {
      resistor R1 1 ohm
      resistor R2 1 ohm
      into -- R1 -- R2 -- out
    }
    network four (into, out) {
      use two as A
      use two as B
      ^^^^^^^^^^^^
      into -- A -- B -- out
    }
    driver woofer 8 ohm
    use four as P1
    use four as P2
    leg woofer {
      input+ -- P1 -- P2 -- woofer+
      woofer- -- return
    }

Good:
    network two (into, out) {
      resistor R1 1 ohm
      resistor R2 1 ohm
      into -- R1 -- R2 -- out
    }
    network four (into, out) {
      use two as A
      use two as B
      into -- A -- B -- out
    }
    driver woofer 8 ohm
    use four as P1
    leg woofer {
      input+ -- P1 -- woofer+
      woofer- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("too-many-parts", Severity.ERROR, "text")
