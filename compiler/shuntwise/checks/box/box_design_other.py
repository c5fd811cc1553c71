"""A box of another design than the one that is asked for.

What it finds: a command that is given a design and a box, where the box was built from another file.

Why it matters: readings of one design say nothing of another, and would be judged all the same.

Bad:
    === left.box
    box 1 of "wedge.shunt"
             ^^^^^^^^^^^^^
    === stage.shunt
    driver woofer 8 ohm
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

RULE = Rule("box-design-other", Severity.ERROR, "text")
