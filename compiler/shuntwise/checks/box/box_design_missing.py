"""A box of a design that is not read.

What it finds: a box that names a design which is not there, cannot be read, is no text, or lies outside the
folder of the box and its workshop.

Why it matters: what may be read, and what it should be, follows from the design.

Bad:
    === left.box
    box 1 of "wegde.shunt"
             ^^^^^^^^^^^^^

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

RULE = Rule("box-design-missing", Severity.ERROR, "text")
