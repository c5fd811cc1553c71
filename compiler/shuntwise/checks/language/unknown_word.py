"""A word that means nothing where it stands.

What it finds: a misspelt attribute, construction, quantity of an expectation, or parameter of a network.
The finding names the nearest known word, or all that are known there.

Why it matters: a misspelt attribute would be an attribute that nobody checks.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH { drc 0.28 ohm }
                      ^^^
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

When to ignore it: never; free words go into a `note "..."`.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("unknown-word", Severity.ERROR, "text")
