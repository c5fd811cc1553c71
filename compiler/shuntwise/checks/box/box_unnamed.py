"""A box's own file that does not say which box it is.

What it finds: a file of a box without the line `box NAME of "DESIGN"`.

Why it matters: what may be read, and what it should be, follows from the design. Without it nothing in the file
can be looked up, and nothing else is said of it.

Bad:
    === left.box
    note "stage left"
    ^^^^^^^^^^^^^^^^^

Good:
    === left.box
    box 1 of "wedge.shunt"
    note "stage left"
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

RULE = Rule("box-unnamed", Severity.ERROR, "text")
