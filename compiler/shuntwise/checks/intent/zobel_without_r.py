"""A Zobel whose resistor is missing.

What it finds: a capacitor across a driver behind a coil, of the size that the driver's voice coil asks for in a
Zobel (Le / Re^2 within the bound), and so large for the coil of the filter that the two would peak by more than
6 dB into the nominal impedance.

Why it matters: without its resistor the capacitor is a part of the filter, and lifts the level near the
crossover instead of evening it out.

Bad:
    driver woofer 8 ohm { re 5.8 ohm, le 0.72 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.27 mH
    capacitor C1 22 uF
    capacitor C2 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
                 ^^
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 5.8 ohm, le 0.72 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.56 mH
    resistor R1 6.8 ohm
    capacitor C1 22 uF
    capacitor C2 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

When to ignore it: where the capacitor is the filter's and its size a coincidence.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import sqrt

from shuntwise import units
from shuntwise.checks.pads import drivers_ohm, value_of
from shuntwise.checks.rule import Bound, Diagnostic, Evidence, Rule, Severity
from shuntwise.checks.structure import Ladder, Shunt
from shuntwise.checks.values.decimal_slip import slipped

LIVELY = 1.4
"""The Q from which a second-order low-pass is taken for a mistake: it then peaks by 3.5 dB and more."""


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen: set[str] = set()
    for ladder in evidence.structure.of_role("woofer", "mid"):
        for shunt in ladder.across("C"):
            if shunt.block.label not in seen and is_zobel_capacitor(evidence, ladder, shunt):
                seen.add(shunt.block.label)
                yield RULE.finding(
                    evidence.place(shunt.block.label),
                    f"`{shunt.block.label}` has the size of a Zobel's capacitor, but no resistor in its row",
                    label=f"straight across `{ladder.driver.name}`",
                    why="without the resistor it belongs to the filter, and lifts the level near the crossover",
                    help="put a resistor of about the voice coil's resistance in a row with it",
                    subjects=(shunt.block.label, ladder.driver.name),
                )


def is_zobel_capacitor(evidence: Evidence, ladder: Ladder, shunt: Shunt) -> bool:
    design, q = evidence.design, ladder.driver.quantities
    if slipped(evidence) & {*shunt.block.labels, *(step.block.label for step in ladder.series("L"))}:
        return False
    coils = [value_of(design, step.block) for step in ladder.series("L")]
    capacitor, load = value_of(design, shunt.block), drivers_ohm(design, ladder)
    if "re" not in q or "le" not in q or len(coils) != 1 or coils[0] is None or capacitor is None or load is None:
        return False
    ratio = capacitor / (q["le"].value / q["re"].value ** 2)
    bound = evidence.bound(RULE)
    return 1 / bound <= ratio <= bound and load * sqrt(capacitor / coils[0]) > LIVELY


RULE = Rule("zobel-without-r", Severity.WARNING, "structure", check, Bound(2.0, units.PLAIN))
