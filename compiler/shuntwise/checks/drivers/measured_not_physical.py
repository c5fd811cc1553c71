"""A measured impedance that no driver can have.

What it finds: a table with a resistance below zero, or with a phase that goes against the slope of the
magnitude: where the magnitude rises the phase is above zero, where it falls below.

Why it matters: a part with a negative resistance gives power instead of taking it, and a turned phase makes
an inductance of a capacitance. Both come from exchanged leads, a sign that was turned, a delay that was not
taken out, or phases in radians.

Bad:
    driver woofer 8 ohm {
      measured "woofer.txt"
    }
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }
    === woofer.txt
    20      10.70   -48.3
    ^^^^^^^^^^^^^^^^^^^^^
    30      20.61   -55.2
    42      59.10   -0.6
    55      23.72   51.8
    80      11.13   45.0
    150     7.26    18.2
    300     7.21    -5.5
    600     8.54    -21.5
    1200    11.04   -33.2
    2500    15.61   -42.5
    5000    22.86   -49.0
    10000   34.75   -53.6
    20000   54.08   -56.6

Good:
    driver woofer 8 ohm {
      measured "woofer.txt"
    }
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }
    === woofer.txt
    20      10.70   48.3
    30      20.61   55.2
    42      59.10   0.6
    55      23.72   -51.8
    80      11.13   -45.0
    150     7.26    -18.2
    300     7.21    5.5
    600     8.54    21.5
    1200    11.04   33.2
    2500    15.61   42.5
    5000    22.86   49.0
    10000   34.75   53.6
    20000   54.08   56.6

When to ignore it: never; measure again, or turn the sign in the table.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("measured-not-physical", Severity.ERROR, "text")
