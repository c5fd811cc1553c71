"""A brace that is opened and never closed.

What it finds: a `{` whose list has no `}` before the next statement begins, or before the file ends.

Why it matters: everything up to there would count as part of the list. Reading goes on as if the brace had
been closed.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH { dcr 0.28 ohm
                    ^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH { dcr 0.28 ohm }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("unclosed-brace", Severity.ERROR, "text")
