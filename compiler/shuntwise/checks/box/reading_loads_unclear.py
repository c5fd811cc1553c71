"""A reading that does not say what hangs on the box.

What it finds: what stands between the place of a reading and its value or frequency is none of `drivers off`,
`drivers on`, `dummies on`, and no driver with `off` behind it.

Why it matters: every reading depends on what hangs on the wires to the drivers.

Bad:
    === left.box
    box 1 of "wedge.shunt"
    reading resistance at woofer, horn off: 6.1 ohm
                                  ^^^^^^^^
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
    reading resistance at woofer, drivers on: 6.1 ohm
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

RULE = Rule("reading-loads-unclear", Severity.ERROR, "text")
