"""A tap that lies beyond its coil.

What it finds: a tapped coil whose tap has no less inductance, or no less resistance, than the whole
winding.

Why it matters: the value behind the name is the whole winding, from start to end; the tap is a part of it.

Bad:
    driver tweeter 8 ohm
    capacitor C1 6.8 uF
    tapped coil T1 0.3 mH { tap 1.2 mH }
                                ^^^^^^
    leg tweeter {
      input+ -- C1 -- T1 -- return
      T1.tap -- tweeter+
      tweeter- -- return
    }

Good:
    driver tweeter 8 ohm
    capacitor C1 6.8 uF
    tapped coil T1 1.2 mH { tap 0.3 mH }
    leg tweeter {
      input+ -- C1 -- T1 -- return
      T1.tap -- tweeter+
      tweeter- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("tap-outside-coil", Severity.ERROR, "text")
