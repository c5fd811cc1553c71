"""A reading with a frequency that does not belong, or without one that does.

What it finds: a resistance with a frequency; volts or an impedance without one.

Why it matters: an ohmmeter measures with direct current. A voltage without its frequency can be anything.

Bad:
    === left.box
    box 1 of "wedge.shunt"
    reading resistance at woofer, drivers on, 1 kHz: 6.1 ohm
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
    reading resistance at woofer, drivers on: 6.1 ohm
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
    reading volts at woofer, dummies on, 1 kHz: 0.7 V
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

RULE = Rule("reading-frequency-wrong", Severity.ERROR, "text")
