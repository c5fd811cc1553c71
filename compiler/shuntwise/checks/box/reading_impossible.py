"""A reading that cannot be.

What it finds: more volts than the generator can make: at the input that it feeds more than 1.2 times its own,
anywhere else more than ten times. Also a reading from a point to itself, an impedance at what is no input, and
`open` or `OL` for what is no resistance.

Why it matters: it comes from a slip of the unit or of the place, and would be taken for a fault of the board.

Bad:
    === left.box
    box 1 of "wedge.shunt"
    reading volts at woofer, dummies on, 1 kHz: 223 V
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
    reading volts at woofer, dummies on, 1 kHz: 223 mV
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

RULE = Rule("reading-impossible", Severity.ERROR, "text")
