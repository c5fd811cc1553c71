"""What two neighbours' filters make of their crossover, part by part.

In: a design and the ladders of two drivers that follow one another in frequency. Out: for each coil and capacitor
the corner frequency that it would have in a Butterworth filter of its leg's order and load. Parts of one
crossover come out near one another; one that lies far off has slipped. Refuses to know where they should lie.

Element values, low-pass, singly terminated, from the amplifier on: Butterworth prototypes in G. L. Matthaei,
L. Young, E. M. T. Jones, Microwave Filters, Impedance-Matching Networks, and Coupling Structures, 1964,
section 4.06. L = g R / (2 pi f), C = g / (2 pi f R); a high-pass has the other kind and 1/g.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from math import exp, inf, log, pi

from shuntwise.model.design import Design
from shuntwise.model.kinds import ROLES
from shuntwise.structure.attenuators import drivers_ohm, nominal_ohm, value_of
from shuntwise.structure.blocks import Block
from shuntwise.structure.ladders import Ladder, Structure

BUTTERWORTH: dict[int, tuple[float, ...]] = {
    1: (1.0,),
    2: (1.4142, 0.7071),
    3: (1.5, 1.3333, 0.5),
    4: (1.5307, 1.5772, 1.0824, 0.3827),
}


FAR_APART, NEAR_TOGETHER, SAME_CROSSOVER = 4.5, 2.2, 2.5
"""How many times the highest corner of a leg may be the lowest: of one that does not fit its load, of one that does,
and with the neighbour's. A filter of Q 0.5 (Linkwitz-Riley) that fits leaves 2 of these estimates."""


@dataclass(frozen=True)
class Estimate:
    """The corner (Hz) that one part speaks of."""

    label: str
    driver: str
    freq_hz: float


@dataclass(frozen=True)
class Misgrouped:
    """Drivers of one leg that come to `ohm`, while the leg's values fit `fitting_ohm`, as they have `side_by_side`."""

    ladder: Ladder
    ohm: float
    fitting_ohm: float
    side_by_side: bool


def estimates(design: Design, ladder: Ladder, high_pass: bool, load: float | None = None) -> tuple[Estimate, ...]:
    """One for each coil and capacitor of a leg's low-pass or high-pass; none for orders without a prototype.

    `load` (ohm) is that of its drivers if not said: a pad keeps it, and one that does not is another rule's.
    """
    order = ladder.high_pass_order if high_pass else ladder.low_pass_order
    load = drivers_ohm(design, ladder) if load is None else load
    if order not in BUTTERWORTH or load is None:
        return ()
    load *= ladder.transformed
    if ladder.transformed != 1:  # a resistor across the tapped coil is there to bring the load down again
        across = [value_of(design, shunt.block) for shunt in ladder.across("R")]
        load = 1 / (1 / load + sum(1 / ohm for ohm in across if ohm))
    found = []
    for block, g in zip(_parts(ladder, high_pass), BUTTERWORTH[order], strict=False):
        if block.letter == "T":
            continue  # what it does to the load depends on its tap
        value = value_of(design, block)
        if value is None:
            return ()
        size = 1 / g if high_pass else g
        ohms = load if block.letter == "L" else 1 / load
        found.append(Estimate(block.label, ladder.driver.name, size * ohms / (2 * pi * value)))
    return tuple(found)


def _parts(ladder: Ladder, high_pass: bool) -> Iterator[Block]:
    """The filter's parts in the order of the signal: each part in the path, then what lies across behind it."""
    steps = ladder.series("C") if high_pass else ladder.coils_in_path
    shunts = ladder.coils_across if high_pass else ladder.across("C")
    if not ladder.parts:
        yield from (shunt.block for shunt in shunts)
    for index, step in enumerate(steps):
        yield step.block
        following = steps[index + 1] if index + 1 < len(steps) else None
        for shunt in shunts:
            if step in shunt.ahead and (following is None or following not in shunt.ahead):
                yield shunt.block


def corner_hz(design: Design, ladder: Ladder, high_pass: bool) -> float | None:
    """The geometric mean of the estimates of one filter; None where there are none, or a tapped coil has none."""
    found = estimates(design, ladder, high_pass)
    if any(block.letter == "T" for block in _parts(ladder, high_pass)):
        return None
    return exp(sum(log(estimate.freq_hz) for estimate in found) / len(found)) if found else None


def neighbours(design: Design, structure: Structure) -> tuple[tuple[Ladder, Ladder], ...]:
    """Pairs of drivers that follow one another from low to high, one of each role.

    Where drivers of one role have filters of their own (two and a half ways), the one that meets its neighbour is that
    of the highest low-pass, or of the lowest high-pass.
    """
    ranked = [ladders for role in ROLES if (ladders := structure.of_role(role))]
    return tuple(
        (
            max(lower, key=lambda ladder: corner_hz(design, ladder, False) or 0.0),
            min(upper, key=lambda ladder: corner_hz(design, ladder, True) or inf),
        )
        for lower, upper in pairwise(ranked)
    )


def misgrouped(design: Design, lower: Ladder, upper: Ladder) -> Misgrouped | None:
    """Equal drivers of one leg whose filter would fit them side by side where they are in a row, or the reverse.

    Coil and capacitor of a leg show its load, as one speaks of a higher corner at a higher load, the other of a lower.
    A power of ten in one value shows the same way, and is preferred where it explains as much.
    """
    for ladder, other in ((lower, upper), (upper, lower)):
        names, high_pass = ladder.together.labels, ladder is upper
        ohms = {nominal_ohm(design.drivers, name) for name in names}
        present, single = drivers_ohm(design, ladder), ohms.pop()
        own, beside = estimates(design, ladder, high_pass), estimates(design, other, not high_pass)
        if len(names) < 2 or ohms or single is None or present is None or not beside or _spread(own) < FAR_APART:
            continue
        for load, side_by_side in ((single / len(names), True), (single * len(names), False)):
            fitting = estimates(design, ladder, high_pass, load)
            near = _spread(fitting) < NEAR_TOGETHER and _spread((*fitting, *beside)) < SAME_CROSSOVER
            if near and all(_cost(fitting, beside) < _cost(mended, beside) for mended in _tenfold(own)):
                return Misgrouped(ladder, present, load, side_by_side)
    return None


def _tenfold(found: tuple[Estimate, ...]) -> Iterator[tuple[Estimate, ...]]:
    """The estimates with each part's value in turn ten times as large or as small."""
    for index, estimate in enumerate(found):
        for factor in (0.1, 10.0):
            mended = replace(estimate, freq_hz=estimate.freq_hz * factor)
            yield (*found[:index], mended, *found[index + 1 :])


def _cost(own: Sequence[Estimate], beside: Sequence[Estimate]) -> float:
    """How ill the parts of a leg go with one another and with their neighbour's; 1 where all speak of one corner."""
    return _spread(own) * _spread((*own, *beside))


def _spread(found: Sequence[Estimate]) -> float:
    """How many times the highest corner is the lowest; 1 for less than two."""
    corners = [estimate.freq_hz for estimate in found]
    return max(corners) / min(corners) if corners else 1.0


def middle_hz(found: Sequence[Estimate]) -> float:
    """The median of the estimates, on a logarithmic scale."""
    ordered = sorted(log(estimate.freq_hz) for estimate in found)
    half = len(ordered) // 2
    return exp((ordered[half] + ordered[~half]) / 2)
