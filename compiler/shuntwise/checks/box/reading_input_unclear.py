"""A reading that leaves open which input the generator is on.

What it finds: volts, or a sweep, of a design of several inputs without `into`; `into` where no generator is on,
or where an impedance is read at another input.

Why it matters: what is read depends on where the generator is.

Bad:
    === left.box
    box 1 of "wedge.shunt"
    reading volts at tweeter, dummies on, 3 kHz: 0.7 V
                              ^^^^^^^^^^
    === wedge.shunt
    input low
    input high
    driver woofer 8 ohm
    driver tweeter 8 ohm
    capacitor C1 6.8 uF
    leg woofer {
      low+ -- woofer+
      woofer- -- low-
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      tweeter- -- high-
    }

Good:
    === left.box
    box 1 of "wedge.shunt"
    reading volts at tweeter, dummies on, into high, 3 kHz: 0.7 V
    === wedge.shunt
    input low
    input high
    driver woofer 8 ohm
    driver tweeter 8 ohm
    capacitor C1 6.8 uF
    leg woofer {
      low+ -- woofer+
      woofer- -- low-
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      tweeter- -- high-
    }

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("reading-input-unclear", Severity.ERROR, "text")
