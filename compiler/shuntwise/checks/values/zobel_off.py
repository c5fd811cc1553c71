"""A Zobel that does not fit its voice coil.

What it finds: a resistor and capacitor in a row across a driver of known re and le, with a resistor outside 0.8 to 1.5
Re, or a capacitor off Le / R^2 by more than the bound (a factor).

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
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.model.design import Quantity
from shuntwise.structure.filters import is_row
from shuntwise.structure.ladders import Ladder, Shunt

LEAST, MOST = 0.8, 1.5
"""The resistor's window, in Re: common practice, no source."""

DAMPED = 0.4
"""A resistor below this much of Re damps a filter's capacitor and makes no Zobel, if the filter has no other."""


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen: set[str] = set()
    for ladder in evidence.structure.ladders.values():
        for shunt in ladder.shunts:
            if not is_row(shunt.block) or shunt.block.label in seen:
                continue
            if any("L" in step.block.letters for step in shunt.behind) or (shunt.at_input and ladder.parts):
                continue
            seen.add(shunt.block.label)
            yield from _judge(evidence, ladder, shunt)


def _judge(evidence: Evidence, ladder: Ladder, shunt: Shunt) -> Iterator[Diagnostic]:
    parts, q = evidence.design.parts, ladder.driver.quantities
    resistor, capacitor = parts[shunt.block.one("R")].value, parts[shunt.block.one("C")].value
    if "re" not in q or "le" not in q or resistor is None or capacitor is None:
        return
    drivers = [evidence.design.drivers[name].quantities for name in ladder.twins]
    if any("re" not in other for other in drivers) or any(step.block.is_driver for step in ladder.steps):
        return
    # Equal drivers side by side look like one of a share of the resistance and inductance.
    count = 1 + len(drivers)
    re, le = q["re"].value / count, q["le"].value / count
    if (resistor.value < DAMPED * re and not ladder.across("C")) or evidence.slips.keys() & {*shunt.block.labels}:
        return
    bound, name = RULE.limit(evidence), ladder.driver.name
    wanted = le / resistor.value**2
    if not LEAST * re <= resistor.value <= MOST * re:
        yield _finding(
            evidence,
            shunt.block.one("R"),
            resistor,
            name,
            f"{units.write(LEAST * re, units.OHM, 2)} to {units.write(MOST * re, units.OHM, 2)}",
        )
    elif not 1 / bound <= capacitor.value / wanted <= bound:
        yield _finding(evidence, shunt.block.one("C"), capacitor, name, f"about {units.write(wanted, units.FARAD, 2)}")


def _finding(evidence: Evidence, label: str, value: Quantity, driver: str, wanted: str) -> Diagnostic:
    here = value.span.source is evidence.design.source
    return RULE.finding(
        value.span if here else evidence.place(label),
        f"the Zobel's `{label}` of {value.text} does not fit `{driver}`",
        label=f"its voice coil asks for {wanted}",
        why="the row evens out the voice coil only if both values fit it",
        help=f"fit {wanted}",
        subjects=(label, driver),
    )


RULE = Rule("zobel-off", Severity.ADVICE, "settled", check, Bound(2.0, units.PLAIN))
