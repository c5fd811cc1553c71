"""A hole outside the copper that it is said to be in.

What it finds: a hole of a row that is called as an area of the board, or a hole that is drilled `in` an area, with
its centre outside of that area.

Why it matters: The text says twice where the hole is, and the two do not agree: a lead soldered there would find no
copper.

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
      area north from 10:25 mm to 90:35 mm
      holes north 3 of 1.3 mm from 20:15 mm to 80:15 mm
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
      area north from 10:25 mm to 90:35 mm
      holes north 3 of 1.3 mm from 20:30 mm to 80:30 mm
    }

When to ignore it: never; holes that lie in no area get a name of their own.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("hole-outside-area", Severity.ERROR, "text")
