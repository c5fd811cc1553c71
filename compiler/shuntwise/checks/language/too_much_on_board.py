"""More on a board than any crossover needs.

What it finds: more than 2,000 holes and tags on a board, more than 1,000 areas and tracks or 5,000 corners of them,
more than 2,000 statements in a layout, more than 20 boards or layouts.

Why it matters: A number was mistyped; and a text must not be able to keep the compiler busy.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    board strip "Strip" {
      outline 100:40 mm
      thickness 1.6 mm
      holes north 20000 of 1.3 mm from 20:30 mm to 80:30 mm
                  ^^^^^
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    board strip "Strip" {
      outline 100:40 mm
      thickness 1.6 mm
      holes north 20 of 1.3 mm from 20:30 mm to 80:30 mm
    }

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("too-much-on-board", Severity.ERROR, "text")
