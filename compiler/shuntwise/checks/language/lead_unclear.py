"""A lead or a wire of which it is not plain where it ends.

What it finds: a spot that names a row and not which of its holes, a part whose two leads are told in two ways or of
which one is left out, `leads into` on a part with more than two terminals, a jumper to a pad, a bus wire between two
rows, a wire from a spot to itself.

Why it matters: What the board joins follows from where each lead is soldered.

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
      place L1 at 50:15 mm { leads into north 1 and north }
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
      holes north 3 of 1.3 mm from 20:30 mm to 80:30 mm
    }
    layout on strip {
      place L1 at 50:15 mm { leads into north 1 and north 3 }
    }

When to ignore it: never; say which hole.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("lead-unclear", Severity.ERROR, "text")
