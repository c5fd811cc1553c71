"""A branch of a group that ends with a node.

What it finds: `(A -- hp | B)`: a branch of parts in parallel that begins or ends with a node or a pad in
place of a part.

Why it matters: the two ends of a group are where the walk enters and leaves it. A node inside at the end
would be one of these under a second name.

Bad:
    driver woofer 8 ohm
    coil L1 0.33 mH
    resistor R1 15 ohm
    leg woofer {
      input+ -- (L1 -- far | R1) -- woofer+
                 ^^^^^^^^^
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    coil L1 0.33 mH
    resistor R1 15 ohm
    leg woofer {
      input+ -- (L1 | R1) -- far -- woofer+
      woofer- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("node-ends-group", Severity.ERROR, "text")
