"""A measured part that is far from its stated value.

What it finds: a value behind `measured` that is more than three times the one in the design, or less than a
third of it.

Why it matters: no tolerance explains it. A slip of the prefix in the file would move all that is expected of
the box, and a wrong part would be taken for the right one.

Bad:
    === left.box
    box 1 of "wedge.shunt"
    measured L1 82 uH
                ^^^^^
    === wedge.shunt
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

Good:
    === left.box
    box 1 of "wedge.shunt"
    measured L1 0.81 mH
    === wedge.shunt
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: if such a part was fitted on purpose; then the design should say so, in a variant.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("measured-far-off", Severity.WARNING, "text")
