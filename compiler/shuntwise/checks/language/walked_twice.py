"""Two walks through one part.

What it finds: a part that stands in two walks, or twice in one.

Why it matters: a part has two ends and sits in one place. Mostly the second label is a slip for another
part's.

Bad:
    driver woofer 8 ohm
    driver tweeter 8 ohm
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      woofer+ -- C1 -- return
                 ^^
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm
    driver tweeter 8 ohm
    capacitor C1 6.8 uF
    capacitor C2 6.8 uF
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter+ -- C2 -- return
      tweeter- -- return
    }

When to ignore it: never. To join something to the end of a part, name the node there.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("walked-twice", Severity.ERROR, "text")
