"""A shape that no board can have.

What it finds: an outline without extent, a clipped corner where the board has none, an area whose edge meets itself
or encloses nothing, a track or a cut that stands still, a ring that is no larger than its hole.

Why it matters: No copper, saw or drill makes such a shape: two of its points were exchanged, or one is wrong.

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
      area bow from 10:10 mm to 40:30 mm to 40:10 mm to 10:30 mm
           ^^^
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
      area bow from 10:10 mm to 40:10 mm to 40:30 mm to 10:30 mm
    }

When to ignore it: never; give the corners in turn, clockwise or anticlockwise, each once.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("shape-impossible", Severity.ERROR, "text")
