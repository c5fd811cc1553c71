"""A file included twice.

What it finds: two `include` lines for one file, in one file or in several.

Why it matters: everything in it would be declared twice; once is enough, wherever it stands.

Bad:
    include "parts.shunt"
    include "parts.shunt"
            ^^^^^^^^^^^^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    === parts.shunt
    driver woofer 8 ohm
    coil L1 0.82 mH

Good:
    include "parts.shunt"
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    === parts.shunt
    driver woofer 8 ohm
    coil L1 0.82 mH

When to ignore it: never; remove one of the two lines.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("included-twice", Severity.ERROR, "text")
