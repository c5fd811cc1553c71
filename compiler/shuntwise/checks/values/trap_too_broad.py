"""A trap that is broader than what it is for.

What it finds: a coil, capacitor and resistor side by side in the path to a driver, or in a row across it, whose Q is
below the bound. A row tuned to the resonance of its driver evens out the impedance, is as broad as the driver's own
Q, and is left alone.

Why it matters: a trap takes out one peak. With so low a Q its resistor does most of the work, and takes down octaves
beside it. Mostly one of the three values is wrong.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    coil L2 3.3 mH { dcr 0.6 ohm }
    capacitor C1 2.2 uF
    resistor R1 15 ohm
    capacitor C2 6.8 uF
    leg woofer {
      input+ -- L1 -- (L2 | C1 | R1) -- woofer+
                       ^^
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
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

When to ignore it: where a broad shelf is meant.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.structure.traps import evens_resonance, trap_q, traps


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for block, name in traps(evidence.structure):
        q = trap_q(evidence.design, block)
        if "R" not in block.letters or evidence.slips.keys() & {*block.labels}:
            continue
        if evens_resonance(evidence.design, block, evidence.design.drivers[name]) or evidence.off_tune(block, name):
            continue
        if q is None or q >= RULE.limit(evidence):
            continue
        shown = ", ".join(f"`{label}`" for label in block.labels)
        yield RULE.finding(
            evidence.place(block.one("L")),
            f"the trap of {shown} is too broad to take out one peak",
            label=f"Q {q:.2g}",
            why="its resistor does most of the work, and takes down octaves beside the peak",
            help="look whether one of the three values is wrong",
            subjects=(*block.labels, name),
        )


RULE = Rule("trap-too-broad", Severity.ADVICE, "structure", check, Bound(0.5, units.PLAIN))
