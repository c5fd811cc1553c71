"""A pad or terminal that the part does not have.

What it finds: `L1+` or `L1.end`: parts with two ends have no named ends, since a walk goes through them.
Only inputs, posts and drivers have plus and minus pads; only tapped coils and used networks have terminals
with names.

Why it matters: which end is meant would not be clear to a reader either.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1+
                ^^^
      L1 -- woofer+
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never; a walk goes through a part: `input+ -- L1 -- woofer+`.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("pad-on-part", Severity.ERROR, "text")
