"""What the parts of one leg, or of two neighbours, make of their filter: its order, its taper, its two corners.

In: a design and ladders. Out: orders, pairs of parts in the wrong order of size, corners. Refuses to judge them.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator
from itertools import pairwise
from math import sqrt

from shuntwise.model.design import Design
from shuntwise.structure.attenuators import damped_shunts, drivers_ohm, value_of, voice_coil
from shuntwise.structure.crossovers import corner_hz
from shuntwise.structure.ladders import Ladder, Shunt, Step, Structure
from shuntwise.structure.traps import traps_in_path

LIVELY = 1.4
"""The Q from which a second-order low-pass is taken for a mistake: it then peaks by 3.5 dB and more."""

ZOBEL_SIZE = 2.0
"""By how many times a capacitor may differ from a Zobel's and still be taken for one, if a design sets no limit."""

TAPER = 1.2
"""From what ratio two parts of one kind are in the wrong order of size, if a design sets no limit."""


def is_zobel_capacitor(
    design: Design, ladder: Ladder, shunt: Shunt, slipped: Collection[str] = (), size: float = ZOBEL_SIZE
) -> bool:
    """Has a capacitor across this driver the size of a Zobel's, C = Le / Re^2, and makes the filter ring?

    `slipped` are parts whose values look wrong: of them nothing is said.
    """
    if not {*shunt.block.labels, *(step.block.label for step in ladder.series("L"))}.isdisjoint(slipped):
        return False
    coils = [value_of(design, step.block) for step in ladder.series("L")]
    capacitor, load, coil = value_of(design, shunt.block), drivers_ohm(design, ladder), voice_coil(design, ladder)
    if coil is None or len(coils) != 1 or coils[0] is None or capacitor is None or load is None:
        return False
    re, le = coil
    ratio = capacitor / (le / re**2)
    return 1 / size <= ratio <= size and load * sqrt(capacitor / coils[0]) > LIVELY


def reversed_tapers(
    design: Design, ladder: Ladder, ratio: float = TAPER
) -> Iterator[tuple[str, str, tuple[float, float]]]:
    """Pairs in the path, nearer to the amplifier first, in the wrong order of size; with their values (H or F)."""
    for letter in "LC":
        for first, second in pairwise(_branched(ladder, letter)):
            near, far = value_of(design, first.block), value_of(design, second.block)
            if near is not None and far is not None and (far / near if letter == "L" else near / far) > ratio:
                yield first.block.label, second.block.label, (near, far)


def _branched(ladder: Ladder, letter: str) -> list[Step]:
    """The coils (capacitors) in the path, if there is a part of the other kind across it between each two."""
    steps = list(ladder.series(letter))
    other = "C" if letter == "L" else "L"
    for first, second in pairwise(steps):
        if not any(first in s.ahead and second in s.behind for s in ladder.across(other)):
            return []
    return steps


def lacks_shunt(design: Design, ladder: Ladder) -> bool:
    """Has this leg fewer capacitors across it than coils in it?"""
    coils = [part for step in ladder.series("L") for part in step.block.flat("chain")]
    across = len(ladder.across("C")) + len(damped_shunts(design, ladder))
    return ladder.role != "tweeter" and across < len(coils)


def inside_out(design: Design, ladder: Ladder, slipped: Collection[str] = ()) -> tuple[float, float] | None:
    """The corners (Hz) of high-pass and low-pass, if the first lies above the second.

    Where a single value has slipped, that explains it better.
    """
    if not (ladder.series("C") and ladder.series("L")) or traps_in_path(ladder):
        return None
    if len(slipped) == 1:
        return None
    begin, end = corner_hz(design, ladder, True), corner_hz(design, ladder, False)
    return (begin, end) if begin is not None and end is not None and begin > end else None


def orders(
    design: Design, lower: Ladder, upper: Ladder, slipped: Collection[str] = (), size: float = ZOBEL_SIZE
) -> tuple[int, int]:
    """The orders of the two filters at a crossover: the lower's low-pass and the upper's high-pass."""
    zobels = sum(is_zobel_capacitor(design, lower, shunt, slipped, size) for shunt in lower.across("C"))
    damped = len(damped_shunts(design, lower))
    return lower.low_pass_order - zobels + damped, upper.high_pass_order


def opposite_wanted(orders: tuple[int, int]) -> bool | None:
    """Should two neighbours be opposite ways round? None where the orders of their filters leave it open.

    Filters of equal order n are n quarters of a turn apart at the crossover (common practice, no source).
    """
    low, high = orders
    return {2: True, 4: False}.get(high) if low == high else None


def bypass(structure: Structure, ladder: Ladder) -> tuple[str, ...]:
    """The parts that lead direct current round a capacitor of this tweeter; empty if none does."""
    path = structure.dc_paths.get(ladder.driver.name, ())
    through = {label for step in ladder.steps if "C" not in step.block.letters for label in step.block.labels}
    return tuple(label for label in path if label not in through)
