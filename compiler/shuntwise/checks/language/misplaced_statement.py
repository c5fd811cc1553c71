"""A statement that cannot stand where it stands.

What it finds: a declaration inside a leg, a leg inside a network, an `include` inside a variant and the
like; anything but comments in `shuntwise.workshop`, the file that marks a workshop.

Why it matters: a leg holds walks, a network is joined to the rest through its ports alone, a variant only
changes what the design declares, and the mark of a workshop reaches no design; so the statement is left out.

Bad:
    driver woofer 8 ohm
    leg woofer {
      coil L1 0.82 mH
      ^^^^^^^^^^^^^^^
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

When to ignore it: never; move the statement out.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("misplaced-statement", Severity.ERROR, "text")
