"""A line that begins with a word that no statement begins with.

What it finds: a misspelt or foreign first word, outside a leg or inside one. Where a word of the language
is near, or people often say another word for it, the finding offers it.

Why it matters: the line is left out, and with it what it would have declared.

Bad:
    driver woofer 8 ohm
    inductor L1 0.82 mH
    ^^^^^^^^
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

RULE = Rule("unknown-statement", Severity.ERROR, "text")
