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

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Label, Rule, Severity
from shuntwise.diagnostics.wording import quoted
from shuntwise.structure.filters import ZOBEL_SIZE
from shuntwise.structure.ladders import Ladder
from shuntwise.structure.zobels import rows


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen: set[str] = set()
    for ladder in evidence.structure.of_role("woofer", "mid", "full_range"):
        if ladder.driver.name in evidence.zobels_side_by_side:
            continue
        for shunt in ladder.across("C"):
            if shunt.block.label not in seen and evidence.makes_zobel(ladder, shunt):
                seen.add(shunt.block.label)
                yield _finding(evidence, ladder, shunt.block.label)


def _finding(evidence: Evidence, ladder: Ladder, capacitor: str) -> Diagnostic:
    beside = [shunt.block for shunt in rows(ladder)]
    if beside:
        shown = quoted(beside[0].labels)
        headline = f"`{capacitor}` lies beside the Zobel of {shown}, and has the size of a Zobel's capacitor itself"
        help = "take it out, or fit the value of the filter's capacitor"
    else:
        headline = f"`{capacitor}` has the size of a Zobel's capacitor, but no resistor in its row"
        help = "put a resistor of about the voice coil's resistance in a row with it"
    return RULE.finding(
        evidence.place(capacitor),
        headline,
        label=f"straight across `{ladder.driver.name}`",
        why="without the resistor it belongs to the filter, and lifts the level near the crossover",
        help=help,
        places=[Label(evidence.place(row.label), "the Zobel") for row in beside],
        subjects=(capacitor, ladder.driver.name, *(label for row in beside for label in row.labels)),
    )


RULE = Rule("zobel-without-r", Severity.WARNING, "structure", check, Bound(ZOBEL_SIZE, units.PLAIN))
