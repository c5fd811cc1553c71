"""A measured table that cannot be read.

What it finds: a `measured` file that is not there, lies outside the folder of the design and its workshop, is
no ordinary text file, or is too large.

Why it matters: the driver has no impedance then, and nothing that depends on it can be checked.

Bad:
    driver woofer 8 ohm {
      measured "no-such-table.txt"
               ^^^^^^^^^^^^^^^^^^^
    }
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }

When to ignore it: never; put the file beside the design, or leave the driver as its nominal resistance.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("measured-not-read", Severity.ERROR, "text")
