"""A name that nothing bears.

What it finds: a part, driver, input, node, network or value that is named and nowhere declared. A node
needs no declaration; but a name in the form of a part's label, or one close to a declared name where a part
would stand, is taken for a slip and not for a node.

Why it matters: a part that is nowhere declared cannot be placed in the circuit. What it would have joined
is in doubt, and no check complains of what may be missing there.

Bad:
    driver woofer 8 ohm
    driver tweeter 8 ohm
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- twetter+
                      ^^^^^^^
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm
    driver tweeter 8 ohm
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("unknown-name", Severity.ERROR, "text")
