"""A point that is not on the board.

What it finds: a hole, a corner of an area, an end of a track or a cut, a tie or the centre of a part that lies beyond
the outline of its board, or where a corner of it is cut off. The edge itself belongs to the board.

Why it matters: The point was measured from another corner, or across and up were exchanged.

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
      hole lug of 2 mm at 20:90 mm
                          ^^^^^^^^
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
      hole lug of 2 mm at 90:20 mm
    }

When to ignore it: never; a part may reach beyond the edge, but its centre lies on the board.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("outside-board", Severity.ERROR, "text")
