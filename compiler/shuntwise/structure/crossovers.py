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
from dataclasses import dataclass
from math import exp, log, pi

from shuntwise.model.design import Design
from shuntwise.structure.attenuators import drivers_ohm, value_of
from shuntwise.structure.blocks import Block
from shuntwise.structure.ladders import Ladder

BUTTERWORTH: dict[int, tuple[float, ...]] = {
    1: (1.0,),
    2: (1.4142, 0.7071),
    3: (1.5, 1.3333, 0.5),
    4: (1.5307, 1.5772, 1.0824, 0.3827),
}


@dataclass(frozen=True)
class Estimate:
    """The corner (Hz) that one part speaks of."""

    label: str
    driver: str
    freq_hz: float


def estimates(design: Design, ladder: Ladder, high_pass: bool) -> tuple[Estimate, ...]:
    """One for each coil and capacitor of a leg's low-pass or high-pass; none for orders without a prototype."""
    order = ladder.high_pass_order if high_pass else ladder.low_pass_order
    load = drivers_ohm(design, ladder)  # a pad keeps the load; one that does not is another rule's
    if order not in BUTTERWORTH or load is None:
        return ()
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
    """The geometric mean of the estimates of one filter; None where there are none."""
    found = estimates(design, ladder, high_pass)
    return exp(sum(log(estimate.freq_hz) for estimate in found) / len(found)) if found else None


def middle_hz(found: Sequence[Estimate]) -> float:
    """The median of the estimates, on a logarithmic scale."""
    ordered = sorted(log(estimate.freq_hz) for estimate in found)
    half = len(ordered) // 2
    return exp((ordered[half] + ordered[~half]) / 2)
