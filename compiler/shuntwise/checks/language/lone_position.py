"""A choice with a single position.

What it finds: a `choice` in which only one position stands.

Why it matters: a choice says that one of several positions holds. With a single one another was forgotten, or
there is nothing to choose.

Bad:
    driver tweeter 8 ohm
    capacitor C1 4.7 uF
    link K1
    leg tweeter {
      input+ -- C1 -- K1 -- tweeter+
      tweeter- -- return
    }
    choice level {
           ^^^^^
      position flat { fit K1 }
    }

Good:
    driver tweeter 8 ohm
    capacitor C1 4.7 uF
    resistor R1 3.3 ohm
    link K1
    leg tweeter {
      input+ -- C1 -- (K1 | R1) -- tweeter+
      tweeter- -- return
    }
    choice level {
      position flat { fit K1 }
      position soft { omit K1 }
    }

When to ignore it: never; let what the position says hold without a choice.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("lone-position", Severity.ERROR, "text")
