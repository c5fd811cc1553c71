"""A file that includes itself.

What it finds: an `include` that leads back to a file that is being read, by way of others too.

Why it matters: reading would never end.

Bad:
    include "parts.shunt"
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    === parts.shunt
    include "parts.shunt"
            ^^^^^^^^^^^^^
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

When to ignore it: never; move what both files need into a third one.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("include-loop", Severity.ERROR, "text")
