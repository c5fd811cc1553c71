"""A driver, input or pair of posts named in a walk without its pad.

What it finds: `woofer` where `woofer+` or `woofer-` belongs.

Why it matters: polarity is wired on purpose, so each pad is named.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer
                      ^^^^^^
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

RULE = Rule("pad-sign-missing", Severity.ERROR, "text")
