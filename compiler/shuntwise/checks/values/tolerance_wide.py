"""A tolerance wider than its kind of part is sold with.

What it finds: a part whose stated tolerance is beyond what parts of its construction usually have: 10 % for
coils, film capacitors and resistors, 20 % for electrolytic capacitors, 30 % for lamps. A limit for this finding is
that of the first group; the other two move with it. From twice as much it is a warning. A capacitor or resistor of
20 % whose value is one of the series E6 is made to that tolerance (IEC 60063): it stays advice, unless others of its
kind in the design state a tolerance and none of them is so wide.

Why it matters: a wide tolerance moves corners and levels from box to box; and a figure that no shop sells is most
often a slip of the finger.

Bad:
    amplifier 60 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 80 W }
    coil L1 0.47 mH { dcr 0.22 ohm, 50 %, air core }
                                    ^^^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

Good:
    amplifier 60 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 80 W }
    coil L1 0.47 mH { dcr 0.22 ohm, 5 %, air core }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: for old stock that will be measured and matched before it is fitted; say so in the waiver.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.model.design import Part
from shuntwise.model.preferred import E6, is_in
from shuntwise.units import PLAIN

USUAL = 0.10
WIDER = {"non-polar electrolytic": 0.20, "polar electrolytic": 0.20}
LAMP = 0.30

COARSEST = 0.20
"""The tolerance that the series E6 is for: IEC 60063."""


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for part in evidence.design.parts.values():
        tolerance = part.quantities.get("tolerance")
        if tolerance is None:
            continue
        usual = _usual(part) * RULE.limit(evidence) / USUAL
        if tolerance.value > usual * (1 + 1e-9):
            yield RULE.finding(
                tolerance.span,
                f"{100 * tolerance.value:.3g} % is a wide tolerance for `{part.label}`",
                severity=Severity.WARNING if _is_odd(evidence, part, tolerance.value, usual) else Severity.ADVICE,
                label=f"such parts usually have {100 * usual:.3g} % or less",
                why="corners and levels stray with it from box to box, and it may be a slip of the finger",
                help="check the figure on the part, or choose one with a closer tolerance",
                subjects=(part.label,),
            )


def _is_odd(evidence: Evidence, part: Part, tolerance: float, usual: float) -> bool:
    """Is it twice the usual, and neither what a part of such a value may be sold with nor out of line with its like?"""
    if tolerance < 2 * usual * (1 - 1e-9):
        return False
    made_so = part.kind in ("capacitor", "resistor") and part.value is not None and is_in(E6, part.value.value)
    return not (made_so and tolerance <= COARSEST * (1 + 1e-9)) or _is_widest(evidence, part, tolerance)


def _is_widest(evidence: Evidence, part: Part, tolerance: float) -> bool:
    """Do others of its kind and construction state a tolerance, and all of them a closer one?"""
    like = [
        other.quantities["tolerance"].value
        for other in evidence.design.parts.values()
        if other is not part and "tolerance" in other.quantities and _usual(other) == _usual(part)
        if other.kind == part.kind
    ]
    return bool(like) and max(like) < tolerance * (1 - 1e-9)


def _usual(part: Part) -> float:
    """The widest tolerance that parts of this construction are usually sold with: common practice, no source."""
    if part.kind == "lamp":
        return LAMP
    return WIDER.get(part.construction or "", USUAL)


RULE = Rule("tolerance-wide", Severity.ADVICE, "design", check, bound=Bound(USUAL, PLAIN))
