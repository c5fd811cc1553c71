"""A reading that takes the place of an earlier, different one.

What it finds: two readings of the same thing with no `rework` between them, whose values are more than 10 %
apart. The later one counts.

Why it matters: either one of them was a slip, or something was changed in between, and then every reading above
is void.

Bad:
    === left.box
    box 1 of "wedge.shunt"
    reading resistance at woofer, drivers on: 61 ohm
    reading resistance at woofer, drivers on: 6.1 ohm
    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    === wedge.shunt
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

Good:
    === left.box
    box 1 of "wedge.shunt"
    reading resistance at woofer, drivers on: 61 ohm
    rework "a joint soldered anew"
    reading resistance at woofer, drivers on: 6.1 ohm
    === wedge.shunt
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: if the later reading is the right one; it is the one that counts.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("reading-taken-again", Severity.ADVICE, "text")
