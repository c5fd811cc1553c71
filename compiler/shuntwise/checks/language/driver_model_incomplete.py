"""A driver's model that lacks something.

What it finds: a voice coil or a resonance of which a part is told: `le` without `re`; `fs` without two of
`qms`, `qes`, `qts`. Also three Q's that contradict each other.

Why it matters: half a model is none, and which half was meant cannot be guessed: nothing is solved until the
model is whole. As its nominal resistance alone a driver can be solved, but without its peak and its rise.

Bad:
    driver woofer 8 ohm { re 5.8 ohm, fs 58 Hz }
                                         ^^^^^
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

Good:
    driver woofer 8 ohm { re 5.8 ohm, fs 58 Hz, qms 5.2, qes 0.41 }
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never; until its data are known, take these keys out and leave the driver as its nominal
resistance.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("driver-model-incomplete", Severity.ERROR, "text")
