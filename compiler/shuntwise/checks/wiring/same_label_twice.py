"""One name for two things.

What it finds: a part, driver, input, network, value or variant whose name is taken. Parts, drivers, inputs
and used networks share one set of names, because a walk may name any of them. Two statements of which there
can be only one, such as `amplifier`, count as well.

Why it matters: on the sheets and on the board a label must mean one thing, or the wrong part gets soldered.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    coil L1 0.33 mH
         ^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    coil L2 0.33 mH
    leg woofer {
      input+ -- L1 -- L2 -- woofer+
      woofer- -- return
    }

When to ignore it: never. Give the newer part a new label; do not renumber what is printed on sheets already.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("same-label-twice", Severity.ERROR, "text")
