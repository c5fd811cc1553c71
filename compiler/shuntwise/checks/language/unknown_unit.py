"""A word that is not a unit.

What it finds: a misspelt unit, or one with capitals and small letters exchanged. Where it is plain which is
meant the finding offers it.

Why it matters: small and capital letters count: m is milli, M is mega.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mHn
                 ^^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
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

RULE = Rule("unknown-unit", Severity.ERROR, "text")
