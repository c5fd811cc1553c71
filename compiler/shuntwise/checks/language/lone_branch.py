"""A group with a single branch.

What it finds: brackets in a walk around one part or one chain of parts.

Why it matters: a group says that things are parallel. With one branch a second one was forgotten, or the
brackets are idle.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- (L1) -- woofer+
                ^^^^
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never; leave the brackets out.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("lone-branch", Severity.ERROR, "text")
