"""A variant that the design of a box does not have.

What it finds: a `variant` line of a box that names no variant of its design, no position of a choice, and no
end of an attenuator, or two of one thing.

Why it matters: the parts of a box follow from its variant. Nothing else of the file is read until it is plain.

Bad:
    === left.box
    box 1 of "wedge.shunt"
    variant mild
            ^^^^
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
    variant soft
    === wedge.shunt
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    variant soft {
      set L1 = 1 mH
    }

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("box-variant-unknown", Severity.ERROR, "text")
