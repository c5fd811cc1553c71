"""A Zobel that does not fit its voice coil.

What it finds: a resistor and capacitor in a row across a driver of known re and le, with a resistor outside 0.8 to
1.5 Re, or a capacitor off Le / R^2 by more than the bound (a factor).

Why it matters: the row evens out the voice coil only if both values fit it. (R = Re, C = Le / Re^2: O. J. Zobel, Bell
Syst. Tech. J. 2(1), 1923, constant-resistance networks; the window round it is common practice.)

Bad:
    driver woofer 8 ohm { re 5.8 ohm, le 0.72 mH }
    coil L1 0.56 mH
    resistor R1 6.8 ohm
    capacitor C1 4.7 uF
                 ^^^^^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- woofer-
      woofer- -- return
    }

Good:
    driver woofer 8 ohm { re 5.8 ohm, le 0.72 mH }
    coil L1 0.56 mH
    resistor R1 6.8 ohm
    capacitor C1 22 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- woofer-
      woofer- -- return
    }

When to ignore it: where the row was trimmed on a sweep of the real driver, whose voice coil is no plain inductance.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.model.design import Quantity
from shuntwise.structure.attenuators import voice_coil
from shuntwise.structure.ladders import Ladder, Shunt
from shuntwise.structure.zobels import FITTING, LEAST, MOST, rows, wanted_farad

DAMPED = 0.4
"""A resistor below this much of Re damps a filter's capacitor and makes no Zobel, if the filter has no other."""


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen: set[str] = set()
    for ladder in evidence.structure.ladders.values():
        for shunt in rows(ladder):
            if shunt.block.label not in seen:
                seen.add(shunt.block.label)
                yield from _judge(evidence, ladder, shunt)


def _judge(evidence: Evidence, ladder: Ladder, shunt: Shunt) -> Iterator[Diagnostic]:
    parts, coil = evidence.design.parts, voice_coil(evidence.design, ladder)
    resistor, capacitor = parts[shunt.block.one("R")].value, parts[shunt.block.one("C")].value
    if coil is None or resistor is None or capacitor is None:
        return
    re, le = coil
    if (resistor.value < DAMPED * re and not ladder.across("C")) or evidence.slips.keys() & {*shunt.block.labels}:
        return
    bound, drivers = RULE.limit(evidence), ladder.together.labels
    if any(step.block.is_driver and step.block.label not in drivers for step in shunt.behind):
        return  # it spans drivers between which other parts are joined
    wanted = wanted_farad(le, resistor.value)
    if not LEAST * re <= resistor.value <= MOST * re:
        fitting = f"{units.write(LEAST * re, units.OHM, 2)} to {units.write(MOST * re, units.OHM, 2)}"
        yield _finding(evidence, shunt.block.one("R"), resistor, drivers, fitting)
    elif not 1 / bound <= capacitor.value / wanted <= bound:
        fitting = f"about {units.write(wanted, units.FARAD, 2)}"
        yield _finding(evidence, shunt.block.one("C"), capacitor, drivers, fitting)


def _finding(evidence: Evidence, label: str, value: Quantity, drivers: tuple[str, ...], wanted: str) -> Diagnostic:
    here = value.span.source is evidence.design.source
    return RULE.finding(
        value.span if here else evidence.place(label),
        f"the Zobel's `{label}` of {value.text} does not fit {' and '.join(f'`{name}`' for name in drivers)}",
        label=f"the voice coil{'s ask' if len(drivers) > 1 else ' asks'} for {wanted}",
        why="the row evens out the voice coil only if both values fit it",
        help=f"fit {wanted}",
        subjects=(label, *drivers),
    )


RULE = Rule("zobel-off", Severity.ADVICE, "settled", check, Bound(FITTING, units.PLAIN))
