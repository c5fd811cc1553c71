"""A measured table whose numbers cannot be told.

What it finds: a row that is not frequency, magnitude and phase; a decimal comma; a unit or a column that is
not known; frequencies that do not rise; too few points or far too many; a Touchstone file of more than one
port or of version 2.

Why it matters: a column or a unit read wrongly gives a driver that looks plausible and is not yours.

Bad:
    driver woofer 8 ohm {
      measured "woofer.txt"
    }
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }
    === woofer.txt
    frequency (Hz)  magnitude (ohm)  phase (degree)
    20    7.0    28
    25    8,4    31
          ^^^
    31.5  11.2   29

Good:
    driver woofer 8 ohm {
      measured "woofer.txt"
    }
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }
    === woofer.txt
    frequency (Hz)  magnitude (ohm)  phase (degree)
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

When to ignore it: never. Without a line of names the columns are hertz, ohm and degrees.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("measured-malformed", Severity.ERROR, "text")
