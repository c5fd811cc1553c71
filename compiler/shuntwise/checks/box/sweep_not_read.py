"""A sweep whose table is not read.

What it finds: a `sweep` whose file is not there, cannot be read, is no text, or lies outside the folder of the
box and its workshop.

Why it matters: its readings are missing.

Bad:
    === left.box
    box 1 of "wedge.shunt"
    sweep "left.txt", drivers on
          ^^^^^^^^^^
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

RULE = Rule("sweep-not-read", Severity.ERROR, "text")
