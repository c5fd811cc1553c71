"""A box of a design that has errors.

What it finds: a box whose design has errors in its text or its wiring. Which they are is said where the design
itself is checked.

Why it matters: what a box should read is worked out from its design.

Bad:
    === left.box
    box 1 of "wedge.shunt"
             ^^^^^^^^^^^^^
    === wedge.shunt
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L2 -- woofer+
      woofer- -- return
    }

Good:
    === left.box
    box 1 of "wedge.shunt"
    === wedge.shunt
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

RULE = Rule("box-design-unsound", Severity.ERROR, "text")
