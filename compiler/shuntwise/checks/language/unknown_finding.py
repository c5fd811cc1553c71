"""A name that no check bears.

What it finds: an `allow` or `limit` line that names no check: misspelt, retired, or of a finding that
cannot be waived or has no limit.

Why it matters: the line would have no effect, and whoever wrote it would not learn of it.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    allow lose-node on woofer because "on trial"
          ^^^^^^^^^

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never; `shuntwise explain` lists all names.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("unknown-finding", Severity.ERROR, "text")
