"""A waiver without a reason.

What it finds: an `allow` line whose reason is empty.

Why it matters: in two years somebody will ask why this was let pass.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    coil L2 0.82 mH
    leg woofer {
      input+ -- (L1 | L2) -- woofer+
      woofer- -- return
    }
    allow double-entry on L2 because ""
                                     ^^

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    coil L2 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      input+ -- L2 -- woofer+
      woofer- -- return
    }
    allow double-entry on L2 because "two of 1.6 mH were never to be had"

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("reason-missing", Severity.ERROR, "text")
