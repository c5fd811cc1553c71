"""A board of which it is not said how large or how thick it is.

What it finds: a `board` without its `outline` or its `thickness`.

Why it matters: Every point on the board is measured within its outline, and how far leads reach through it depends on
its thickness.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    board strip "Strip, 100 by 40 mm" {
          ^^^^^
      outline 100:40 mm
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    board strip "Strip, 100 by 40 mm" {
      outline 100:40 mm
      thickness 1.6 mm
    }

When to ignore it: never; both stand in the data of the board, or can be measured with a ruler.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("board-incomplete", Severity.ERROR, "text")
