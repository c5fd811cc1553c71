"""Two versions of a text that version control could not join.

What it finds: the three lines of marks (seven of `<`, of `=` and of `>`) that version control leaves around the two
sides of a conflict. Nothing else is said of such a file.

Why it matters: both versions stand in it, so every part between the marks is there twice or contradicts itself.

Bad:
    driver woofer 8 ohm
    <<<<<<< mine
    ^^^^^^^^^^^^
    coil L1 0.82 mH
    =======
    coil L1 1 mH
    >>>>>>> theirs
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

RULE = Rule("conflict-markers", Severity.ERROR, "text")
