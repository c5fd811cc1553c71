"""A driver whose impedance is told in two ways.

What it finds: a driver with two models of its voice coil (`le`, a semi-inductance, power laws) or of its resonance
(`fs` and Q's, or `res`, `les` and `ces`), or with parameters beside a measured table. Beside a table only `re`, `fs`
and the ratings may stand.

Why it matters: only one of the two can be solved. The other would be passed over in silence, and changing it
would change nothing.

Bad:
    driver woofer 8 ohm {
      re 5.8 ohm
      le 0.55 mH
      semi_k 0.0155
             ^^^^^^
      semi_n 0.69
    }
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }

Good:
    driver woofer 8 ohm {
      re 5.8 ohm
      semi_k 0.0155
      semi_n 0.69
    }
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }

When to ignore it: never; keep the description that fits your measurement, and the other in a `note`.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("driver-model-twice", Severity.ERROR, "text")
