"""A part without its value.

What it finds: a coil, capacitor, resistor or lamp with nothing behind its name, and a tapped coil that does
not say where its tap is.

Why it matters: the circuit cannot be solved without it, nor the part be bought.

Bad:
    driver woofer 8 ohm
    coil L1
         ^^
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

When to ignore it: never; in a sketch write a likely value and say so in a `note "..."`.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("value-missing", Severity.ERROR, "text")
