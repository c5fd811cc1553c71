"""A trap that is too sharp.

What it finds: a coil and a capacitor side by side in the path to a driver, or in a row across it, whose Q is above
the bound. A resistor across the one, or in the row of the other, brings it down; so does the resistance of the
coil's wire.

Why it matters: the notch is deeper and narrower than part tolerances can aim. It misses the peak that it was made
for, and rings. Without a resistor the group may also be no trap at all but a lead in the wrong place.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.2 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.82 mH
    coil L2 0.33 mH { dcr 0.18 ohm }
    capacitor C1 2.2 uF
    capacitor C2 6.8 uF
    leg woofer {
      input+ -- L1 -- (L2 | C1) -- woofer+
                       ^^
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.2 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.82 mH
    coil L2 0.33 mH { dcr 0.18 ohm }
    capacitor C1 2.2 uF
    resistor R1 15 ohm
    capacitor C2 6.8 uF
    leg woofer {
      input+ -- L1 -- (L2 | C1 | R1) -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

When to ignore it: for a steep filter with a null that is meant.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.diagnostics.wording import quoted
from shuntwise.structure.traps import trap_q, traps


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for block, name in traps(evidence.structure):
        q = trap_q(evidence.design, block)
        if q is None or q <= RULE.limit(evidence):
            continue
        shown = quoted(block.labels)
        resistor = "" if "R" in block.letters else ", and no resistor damps it"
        place = "across it" if block.form == "group" else "in its row"
        yield RULE.finding(
            evidence.place(block.one("L")),
            f"the trap of {shown} is too sharp{resistor}",
            label=f"Q {q:.3g}" if q < 1000 else "no resistance at all",
            why="part tolerances move so narrow a notch past what it should take out, and it rings",
            help=f"put a resistor {place}, so that Q comes below {RULE.limit(evidence):.3g}",
            subjects=(*block.labels, name),
        )


RULE = Rule("trap-undamped", Severity.ADVICE, "structure", check, Bound(5.0, units.PLAIN))
