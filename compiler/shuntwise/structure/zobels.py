"""Rows of resistor and capacitor across a driver, and which voice coil they fit.

In: a design and ladders. Out: which driver a row belongs to, and rows of which the parts lie side by side. Refuses to
judge.

R = Re and C = Le / R^2: constant-resistance networks, O. J. Zobel, Bell Syst. Tech. J. 7(3), 1928, from memory; the
windows round them are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.model.design import Design
from shuntwise.structure.attenuators import value_of, voice_coil
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


def zobel_values(design: Design, zobel: tuple[Block, ...]) -> tuple[float, float] | None:
    """Resistance (ohm) and capacitance (F) of like rows side by side; None where one is unknown."""
    found = [row_values(design, row) for row in zobel]
    known = [values for values in found if values is not None]
    if len(known) < len(found):
        return None
    return 1 / sum(1 / ohm for ohm, _ in known), sum(farad for _, farad in known)


def row_values(design: Design, row: Block) -> tuple[float, float] | None:
    """Resistance (ohm) and capacitance (F) of a row, each made up of one part or several; None where one is unknown."""
    ohms = [value_of(design, inner) for inner in row.inner if inner.letter == "R"]
    farads = [value_of(design, inner) for inner in row.inner if inner.letter == "C"]
    known = [value for value in (*ohms, *farads) if value is not None]
    if len(known) < len(row.inner):
        return None
    return sum(known[: len(ohms)]), 1 / sum(1 / farad for farad in known[len(ohms) :])


def with_its_like(ladder: Ladder, row: Shunt) -> tuple[Block, ...]:
    """The rows that are one Zobel with this one: where drivers side by side have a row each, all of them."""
    nets = {row.block.a, row.block.b}
    beside = tuple(shunt.block for shunt in rows(ladder) if {shunt.block.a, shunt.block.b} == nets)
    each = ladder.together.form == "group" and len(beside) == len(ladder.together.inner)
    return beside if each else (row.block,)


def wanted_farad(le: float, resistor_ohm: float) -> float:
    """The capacitor that goes with this resistor, Le / R^2."""
    return le / resistor_ohm**2


def fits(coil: tuple[float, float] | None, values: tuple[float, float] | None, bound: float) -> bool | None:
    """Do a resistor and a capacitor (ohm, F) fit a voice coil (ohm, H)? None where one of them is not known."""
    if coil is None or values is None:
        return None
    (re, le), (ohm, farad) = coil, values
    return LEAST * re <= ohm <= MOST * re and 1 / bound <= farad / wanted_farad(le, ohm) <= bound


def belongs_to(
    design: Design, structure: Structure, ladder: Ladder, row: Shunt, bound: float = FITTING
) -> Ladder | None:
    """The other driver that a row fits, which has no fitting one of its own, while it does not fit where it lies."""
    zobel = with_its_like(ladder, row)
    values = zobel_values(design, zobel)
    if fits(voice_coil(design, ladder), values, bound) is not False:
        return None
    for other in structure.ladders.values():
        coil = voice_coil(design, other)
        own = [shunt.block for shunt in rows(other) if shunt.block not in zobel]
        served = any(fits(coil, row_values(design, block), bound) for block in own)
        if other.driver.name not in ladder.together.labels and fits(coil, values, bound) and not served:
            return other
    return None


def side_by_side(design: Design, ladder: Ladder, bound: float = FITTING) -> tuple[str, str] | None:
    """A resistor and a capacitor that fit the voice coil in a row, but lie side by side across the driver.

    With a resistor in the path the one across the driver is that of a pad.
    """
    for resistor in ladder.across("R") if not ladder.series("R") else ():
        for capacitor in ladder.across("C"):
            ohm, farad = (value_of(design, shunt.block) for shunt in (resistor, capacitor))
            values = (ohm, farad) if ohm is not None and farad is not None else None
            nets = [{shunt.block.a, shunt.block.b} for shunt in (resistor, capacitor)]
            if nets[0] == nets[1] and fits(voice_coil(design, ladder), values, bound):
                return resistor.block.label, capacitor.block.label
    return None
