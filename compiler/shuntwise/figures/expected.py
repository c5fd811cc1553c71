"""What a design expects, in terms of figures.

In: `expect` lines. Out: for each its figures, each with the bounds within which it must lie. It refuses to say whether
they are met. Polarity depends on no value: `structure` knows it.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from shuntwise.figures.band import Real
from shuntwise.figures.figure import Corner, Crossing, Figure, Impedance, Level, Slope, louder_db
from shuntwise.figures.nominal import HIGHEST_HZ, LOWEST_HZ
from shuntwise.model.design import Design, Expectation, Quantity

USUAL_CORNER_DB = 3.0
"""How far down a corner is that does not say it."""


@dataclass(frozen=True)
class Wanted:
    """A figure that must lie from `low` to `high`, both included; NaN lies nowhere."""

    figure: Figure
    low: float
    high: float

    def met(self, value: float | Real) -> npt.NDArray[np.bool_]:
        return np.asarray((self.low <= value) & (value <= self.high))


@dataclass(frozen=True)
class Proof:
    """One `expect` line in terms of figures: met where all are."""

    expectation: Expectation
    wanted: tuple[Wanted, ...]

    def met(self, values: Mapping[Figure, Real]) -> npt.NDArray[np.bool_]:
        """Which builds meet it, (builds,)."""
        return np.asarray(np.logical_and.reduce([wanted.met(values[wanted.figure]) for wanted in self.wanted]))


def proofs(design: Design, inputs: Sequence[str]) -> tuple[Proof, ...]:
    """The expectations that depend on values; `inputs` are what an impedance without a name means."""
    found = (Proof(e, tuple(_wanted(design, inputs, e))) for e in design.expectations)
    return tuple(proof for proof in found if proof.wanted)


def _wanted(design: Design, inputs: Sequence[str], expectation: Expectation) -> Iterable[Wanted]:
    clauses, subjects = expectation.clauses, expectation.subjects
    match expectation.quantity:
        case "crossing":
            at, within = clauses["at"].value, clauses["within"].value
            crossing = Crossing(subjects, at, louder_db(design.drivers, *subjects))
            yield Wanted(crossing, at * (1 - within), at * (1 + within))
        case "corner":
            at, within = clauses["at"].value, clauses["within"].value
            below = abs(clauses["is"].value) if "is" in clauses else USUAL_CORNER_DB
            yield Wanted(Corner(subjects, at, below), at * (1 - within), at * (1 + within))
        case "level":
            level = Level(subjects, clauses["at"].value)
            if "is" in clauses:
                yield Wanted(level, *_around(clauses))
            if "above" in clauses:
                yield Wanted(level, clauses["above"].value, np.inf)
            if "below" in clauses:
                yield Wanted(level, -np.inf, clauses["below"].value)
        case "slope":
            yield Wanted(Slope(subjects, clauses["from"].value, clauses["to"].value), *_around(clauses))
        case "impedance":
            low = clauses["from"].value if "from" in clauses else LOWEST_HZ
            high = clauses["to"].value if "to" in clauses else HIGHEST_HZ
            for name in subjects or inputs:
                if "above" in clauses:
                    yield Wanted(Impedance((name,), low, high), clauses["above"].value, np.inf)
                if "below" in clauses:
                    yield Wanted(Impedance((name,), low, high, greatest=True), 0.0, clauses["below"].value)


def _around(clauses: Mapping[str, Quantity]) -> tuple[float, float]:
    middle, within = clauses["is"].value, clauses["within"].value
    return middle - within, middle + within
