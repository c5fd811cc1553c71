"""A reading at a point that the design does not have.

What it finds: a point in a reading that is no pad, no end of a part and no node of the design in the variant of
the box; or `at` before a name without two pads.

Why it matters: what is read there cannot be compared with anything.

Bad:
    === left.box
    box 1 of "wedge.shunt"
    reading resistance input+ to wofer+, drivers off: 0.5 ohm
                                 ^^^^^^
    === wedge.shunt
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

or:
    === left.box
    box 1 of "wedge.shunt"
    reading resistance at L1, drivers off: 0.5 ohm
                          ^^
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
    reading resistance input+ to woofer+, drivers off: 0.5 ohm
    === wedge.shunt
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

or:
    === left.box
    box 1 of "wedge.shunt"
    reading resistance L1.start to L1.end, drivers off: 0.5 ohm
    === wedge.shunt
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

RULE = Rule("reading-point-unknown", Severity.ERROR, "text")
