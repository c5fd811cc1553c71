"""A walk that stands in no leg.

What it finds: wiring at the top of a file, outside every `leg NAME { ... }`.

Why it matters: what a leg is for is what makes most checks possible, so every walk says which driver it
serves.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
    }
    woofer- -- return
    ^^^^^^^^^^^^^^^^^

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never; wiring that serves two drivers stands in a leg of both: `leg woofer and tweeter {
... }`.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("walk-outside-leg", Severity.ERROR, "text")
