"""A return that could be one of several.

What it finds: `return` or `ground` in a design with more than one input.

Why it matters: with two amplifiers the returns are not the same wire. Joined, they may short a bridged
amplifier.

Bad:
    input low
    input high
    driver woofer 8 ohm
    driver tweeter 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    leg woofer {
      low+ -- L1 -- woofer+
      woofer- -- return
                 ^^^^^^
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      tweeter- -- high-
    }

Good:
    input low
    input high
    driver woofer 8 ohm
    driver tweeter 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    leg woofer {
      low+ -- L1 -- woofer+
      woofer- -- low-
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      tweeter- -- high-
    }

When to ignore it: never; name the pad: `low-`.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("return-unclear", Severity.ERROR, "text")
