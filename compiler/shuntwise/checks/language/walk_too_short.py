"""A walk with one station.

What it finds: a line in a leg or network that names a single thing.

Why it matters: a walk joins at least two things; one alone is joined to nothing.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
      woofer+
      ^^^^^^^
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

RULE = Rule("walk-too-short", Severity.ERROR, "text")
