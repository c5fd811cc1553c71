"""A Zobel that does not fit its voice coil.

What it finds: a resistor and capacitor in a row across a driver of known re and le, with a resistor outside 0.8 to
1.5 Re, or a capacitor off Le / R^2 by more than the bound (a factor). It is a warning where the driver's level in its
own band is 1.5 dB or more away from what a fitting row would give, which is more than parts of 5 % do, and where the
resistor is five times off, which no trimming is. Below that it is advice.

Why it matters: the row evens out the voice coil only if both values fit it. (R = Re, C = Le / Re^2:
constant-resistance networks, O. J. Zobel, Bell Syst. Tech. J. 7(3), 1928, from memory; the window round it is common
practice.)

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
from shuntwise.checks.rule import Bound, Diagnostic, NotChecked, Rule, Severity
from shuntwise.diagnostics.wording import quoted
from shuntwise.figures.nominal import PLAIN_DB
from shuntwise.structure.attenuators import voice_coil
from shuntwise.structure.blocks import Block
from shuntwise.structure.ladders import Ladder, Shunt
from shuntwise.structure.zobels import FITTING, LEAST, MOST, rows, wanted_farad, with_its_like, zobel_values

DAMPED = 0.4
"""A resistor below this much of Re damps a filter's capacitor and makes no Zobel, if the filter has no other."""

ASTRAY = 5
"""So many times Re, or so little of it, is a slip and no trimming: common practice, no source."""


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    seen: set[str] = set()
    for ladder in evidence.structure.ladders.values():
        for shunt in rows(ladder):
            if shunt.block.label not in seen:
                zobel = with_its_like(ladder, shunt)
                seen |= {row.label for row in zobel}
                yield from _judge(evidence, ladder, shunt, zobel)


def _judge(
    evidence: Evidence, ladder: Ladder, shunt: Shunt, zobel: tuple[Block, ...]
) -> Iterator[Diagnostic | NotChecked]:
    coil, values = voice_coil(evidence.design, ladder), zobel_values(evidence.design, zobel)
    if coil is None:
        name = ladder.driver.name
        yield RULE.not_checked(f"`re` and `le` of `{name}`", name)
    if coil is None or values is None or any(evidence.slips.keys() & {*row.labels} for row in zobel):
        return
    (re, le), (ohm, farad) = coil, values
    if ohm < DAMPED * re and not ladder.across("C"):
        return
    if any(step.block.is_driver and step.block.label not in ladder.together.labels for step in shunt.behind):
        return  # it spans drivers between which other parts are joined
    bound, wanted = RULE.limit(evidence), wanted_farad(le, ohm)
    if not LEAST * re <= ohm <= MOST * re:
        fitting = f"{units.write(LEAST * re, units.OHM, 2)} to {units.write(MOST * re, units.OHM, 2)}"
        change_db = _change_db(evidence, ladder, zobel, {"R": re / ohm, "C": wanted_farad(le, re) / farad})
        grave = change_db >= PLAIN_DB or not 1 / ASTRAY < ohm / re < ASTRAY
        yield _finding(evidence, ladder, zobel, "R", units.write(ohm, units.OHM), fitting, change_db, grave)
    elif not 1 / bound <= farad / wanted <= bound:
        fitting = f"about {units.write(wanted, units.FARAD, 2)}"
        change_db = _change_db(evidence, ladder, zobel, {"C": wanted / farad})
        grave = change_db >= PLAIN_DB
        yield _finding(evidence, ladder, zobel, "C", units.write(farad, units.FARAD), fitting, change_db, grave)


def _change_db(evidence: Evidence, ladder: Ladder, zobel: tuple[Block, ...], factors: dict[str, float]) -> float:
    """How far the level is off that with so many times the values, by the letter of their kind."""
    element = evidence.network.element
    values = {label: element[label].value * factors[kind] for kind, label in _ones(zobel) if kind in factors}
    return evidence.figures.greatest_change_db(ladder.driver.name, values)


def _ones(zobel: tuple[Block, ...]) -> list[tuple[str, str]]:
    """Letter and label of every part of the rows."""
    return [one for row in zobel for one in row.ones]


def _finding(
    evidence: Evidence,
    ladder: Ladder,
    zobel: tuple[Block, ...],
    kind: str,
    value: str,
    fitting: str,
    change_db: float,
    grave: bool,
) -> Diagnostic:
    """`kind` is the letter of the parts that do not fit, `value` what they come to."""
    labels = [label for letter, label in _ones(zobel) if letter == kind]
    quantity = evidence.design.parts[labels[0]].value
    here = quantity is not None and quantity.span.source is evidence.design.source
    shown, drivers = quoted(labels), ladder.together.labels
    many = len(drivers) > 1
    return RULE.finding(
        quantity.span if quantity is not None and here else evidence.place(labels[0]),
        f"the Zobel's {shown} of {value} {'do' if len(labels) > 1 else 'does'} not fit "
        f"{' and '.join(f'`{name}`' for name in drivers)}",
        severity=Severity.WARNING if grave else Severity.ADVICE,
        label=f"the voice coil{'s ask' if many else ' asks'} for {fitting}",
        why="the row evens out the voice coil only if both values fit it; "
        f"these move the level by up to {change_db:.2g} dB",
        help=f"fit {fitting}",
        subjects=(*labels, *drivers),
    )


RULE = Rule("zobel-off", Severity.ADVICE, "settled", check, Bound(FITTING, units.PLAIN))
