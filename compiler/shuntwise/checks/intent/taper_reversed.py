"""The parts of a steep filter in the wrong order.

What it finds: a low-pass with two coils in the path of which the one nearer to the driver is clearly the larger, and a
high-pass with two capacitors in the path of which the one nearer to the driver is clearly the smaller.

Why it matters: in a filter fed by an amplifier the coils grow smaller towards the driver, and the capacitors larger.
That holds for all usual alignments (a Chebyshev filter of fourth order strays by 6 %): see the singly terminated
low-pass prototypes in G. L. Matthaei, L. Young, E. M. T. Jones, Microwave Filters, Impedance-Matching Networks, and
Coupling Structures, 1964, section 4.06.
Mostly the two have changed places.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.2 mH }
    coil L1 0.27 mH
    capacitor C1 10 uF
    coil L2 0.75 mH
    leg woofer {
      input+ -- L1 -- middle -- L2 -- woofer+
                                ^^
      middle -- C1 -- return
      woofer- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.2 mH }
    coil L1 0.75 mH
    capacitor C1 10 uF
    coil L2 0.27 mH
    leg woofer {
      input+ -- L1 -- middle -- L2 -- woofer+
      middle -- C1 -- return
      woofer- -- return
    }

When to ignore it: where the filter was worked out for the driver's real impedance.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Label, Rule, Severity
from shuntwise.model.kinds import KINDS
from shuntwise.structure.filters import TAPER


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen: set[str] = set()
    for ladder in evidence.structure.ladders.values():
        for near, far, values in evidence.reversed_tapers(ladder):
            if far in seen or evidence.slips.keys() & {near, far}:
                continue
            seen.add(far)
            part = evidence.design.parts[far]
            inductive = KINDS[part.kind].inductive
            size, way = ("larger", "smaller") if inductive else ("smaller", "larger")
            dimension = units.HENRY if inductive else units.FARAD
            yield RULE.finding(
                evidence.place(far),
                f"`{far}` at the driver is {size} than `{near}` ahead of it",
                label=units.write(values[1], dimension),
                why=f"in every usual filter the {part.kind}s grow {way} towards the driver",
                help="look whether the two have changed places",
                places=(Label(evidence.place(near), units.write(values[0], dimension)),),
                subjects=(far, near),
            )


RULE = Rule("taper-reversed", Severity.WARNING, "structure", check, Bound(TAPER, units.PLAIN))
