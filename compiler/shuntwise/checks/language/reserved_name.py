"""A name that the language needs itself.

What it finds: an input, pair of posts or driver called `return` or `ground`: the words for the input's
minus.

Why it matters: a walk could not say which of the two is meant.

Bad:
    driver ground 8 ohm { role woofer }
           ^^^^^^
    coil L1 0.82 mH
    leg ground {
      input+ -- L1 -- ground+
      ground- -- return
    }

Good:
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

RULE = Rule("reserved-name", Severity.ERROR, "text")
