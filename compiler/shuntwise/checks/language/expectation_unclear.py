"""An expectation that does not say enough.

What it finds: an `expect` line that lacks a clause, has one that does not belong, or names too few or too
many drivers. The finding shows a whole line of its kind.

Why it matters: what is not understood is not tested, and a test that is not run proves nothing.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    expect impedance
    ^^^^^^^^^^^^^^^^

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    expect impedance above 4 ohm from 20 Hz to 20 kHz

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("expectation-unclear", Severity.ERROR, "text")
