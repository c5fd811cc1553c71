"""Two holes that run into each other.

What it finds: holes, tags and holes that are drilled, of which two overlap or lie on the same point.

Why it matters: Only one of them can be there, so one of the two points is wrong, or the same hole has two names.

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
      holes north 3 of 1.3 mm from 20:30 mm to 80:30 mm
    }
    layout on strip {
      drill h1 2 mm at 51:30 mm
      ^^^^^^^^^^^^^^^^^^^^^^^^^
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
      holes north 3 of 1.3 mm from 20:30 mm to 80:30 mm
    }
    layout on strip {
      drill h1 2 mm at 56:30 mm
    }

When to ignore it: never; a slot is told as one hole of the width of the lead.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("holes-collide", Severity.ERROR, "text")
