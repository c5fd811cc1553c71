"""A sister box that can be no yardstick.

What it finds: a `beside` that names a file which is not read or has errors, this very box, or a box of another
design or variant.

Why it matters: the readings of the other box are to stand for what is right.

Bad:
    === left.box
    box 1 of "wedge.shunt"
    beside "right.box"
           ^^^^^^^^^^^
    === wedge.shunt
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    variant soft {
      set L1 = 1 mH
    }
    === right.box
    box 2 of "wedge.shunt"
    variant soft

Good:
    === left.box
    box 1 of "wedge.shunt"
    beside "right.box"
    === wedge.shunt
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    === right.box
    box 2 of "wedge.shunt"

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("sister-box-unfit", Severity.ERROR, "text")
