"""Rows of resistor and capacitor across a driver, and which voice coil they fit.

In: a design and ladders. Out: which driver a row belongs to, and rows of which the parts lie side by side. Refuses to
judge.

R = Re and C = Le / R^2: O. J. Zobel, Bell Syst. Tech. J. 2(1), 1923, constant-resistance networks; the windows round
them are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.model.design import Design
from shuntwise.structure.attenuators import voice_coil
from shuntwise.structure.blocks import Block
from shuntwise.structure.ladders import Ladder, Shunt, Structure

LEAST, MOST = 0.8, 1.5
"""The resistor's window, in Re."""

FITTING = 2.0
"""By what factor the capacitor may be off Le / R^2, if a design sets no limit."""


def is_row(block: Block) -> bool:
    """Is this a row of resistor and capacitor, as in a Zobel?"""
    return block.form == "chain" and set(block.letters) == {"C", "R"}


def rows(ladder: Ladder) -> Iterator[Shunt]:
    """The rows across the driver itself, not on the amplifier's side of a coil."""
    for shunt in ladder.shunts:
        behind_all = not any("L" in step.block.letters for step in shunt.behind)
        if is_row(shunt.block) and behind_all and not (shunt.at_input and ladder.parts):
            yield shunt


def wanted_farad(le: float, resistor_ohm: float) -> float:
    """The capacitor that goes with this resistor, Le / R^2."""
    return le / resistor_ohm**2


def fits(design: Design, ladder: Ladder, parts: tuple[str, str], bound: float = FITTING) -> bool | None:
    """Do a resistor and a capacitor fit the voice coil of this driver? None where a value is not known."""
    coil = voice_coil(design, ladder)
    resistor, capacitor = (design.parts[label].value for label in parts)
    if coil is None or resistor is None or capacitor is None:
        return None
    re, le = coil
    off = capacitor.value / wanted_farad(le, resistor.value)
    return LEAST * re <= resistor.value <= MOST * re and 1 / bound <= off <= bound


def belongs_to(
    design: Design, structure: Structure, ladder: Ladder, row: Block, bound: float = FITTING
) -> Ladder | None:
    """The other driver that a row fits, which has no fitting one of its own, while it does not fit where it lies."""
    parts = row.one("R"), row.one("C")
    if fits(design, ladder, parts, bound) is not False:
        return None
    for other in structure.ladders.values():
        own = [(shunt.block.one("R"), shunt.block.one("C")) for shunt in rows(other)]
        served = any(fits(design, other, one, bound) for one in own if one != parts)
        if other.driver.name not in ladder.together.labels and fits(design, other, parts, bound) and not served:
            return other
    return None


def side_by_side(design: Design, ladder: Ladder, bound: float = FITTING) -> tuple[str, str] | None:
    """A resistor and a capacitor that fit the voice coil in a row, but lie side by side across the driver.

    With a resistor in the path the one across the driver is that of a pad.
    """
    if ladder.series("R"):
        return None
    for resistor in ladder.across("R"):
        for capacitor in ladder.across("C"):
            nets = {resistor.block.a, resistor.block.b}
            parts = resistor.block.label, capacitor.block.label
            single = resistor.block.form == capacitor.block.form == "one"
            if single and nets == {capacitor.block.a, capacitor.block.b} and fits(design, ladder, parts, bound):
                return parts
    return None
