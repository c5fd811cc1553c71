"""A file that cannot be included.

What it finds: an `include` of a file that is not there, cannot be read, is no text, or lies outside the
folder of the design, its workshop and the shipped library; also more files than any design needs.

Why it matters: what the file would have declared is missing, so nothing is said of what is not there.

Bad:
    include "drivers.shunt"
            ^^^^^^^^^^^^^^^
    driver woofer 8 ohm
    coil L1 0.82 mH
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

RULE = Rule("include-not-read", Severity.ERROR, "text")
