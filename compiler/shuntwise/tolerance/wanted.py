"""Which figures of a design are looked at: those that it expects, and those that every builder asks for.

In: a design, its solver. Out: figures, the expectations in their terms, and the grid of frequencies that they need.
It refuses to know how builds differ.

Every design is asked for the crossings of its drivers' levels, each driver's level in the middle of its band, and
the least impedance of each input, unless it expects the same itself. Polarity does not depend on values.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations

import numpy as np
import numpy.typing as npt

from shuntwise.model.design import Design, Expectation, Quantity
from shuntwise.response import measures
from shuntwise.response.solve import Solver
from shuntwise.tolerance.curves import square_to_db
from shuntwise.tolerance.figures import Corner, Crossing, Figure, Impedance, Level, Slope, band_of

Real = npt.NDArray[np.float64]

LOWEST_HZ, HIGHEST_HZ = 20.0, 20e3
POINTS = 200
"""From LOWEST_HZ to HIGHEST_HZ; a wider grid has as many to a decade."""

ALIKE_DB = 0.01
"""Drivers whose levels differ by less than this everywhere are fed alike, and cross nowhere."""


@dataclass(frozen=True)
class Proof:
    """One `expect` line in terms of figures: met where each lies within its bounds (both included)."""

    expectation: Expectation
    bounds: tuple[tuple[Figure, float, float], ...]

    def met(self, values: Mapping[Figure, Real]) -> npt.NDArray[np.bool_]:
        """Which builds meet it, (builds,). A build without such a number does not."""
        each = [(low <= values[figure]) & (values[figure] <= high) for figure, low, high in self.bounds]
        return np.asarray(np.logical_and.reduce(each))


def proofs(design: Design, inputs: Sequence[str]) -> tuple[Proof, ...]:
    """The expectations that depend on values."""
    found = (Proof(e, tuple(_bounds(design, inputs, e))) for e in design.expectations)
    return tuple(proof for proof in found if proof.bounds)


def _bounds(design: Design, inputs: Sequence[str], expectation: Expectation) -> Iterable[tuple[Figure, float, float]]:
    clauses, subjects = expectation.clauses, expectation.subjects
    match expectation.quantity:
        case "crossing":
            at, within = clauses["at"].value, clauses["within"].value
            louder = _sensitivity(design, subjects[0], subjects[1])
            yield Crossing(subjects, at, louder), at * (1 - within), at * (1 + within)
        case "corner":
            at, within = clauses["at"].value, clauses["within"].value
            below = abs(clauses["is"].value) if "is" in clauses else 3.0
            yield Corner(subjects, at, below), at * (1 - within), at * (1 + within)
        case "level":
            level = Level(subjects, clauses["at"].value)
            if "is" in clauses:
                yield level, *_around(clauses)
            if "above" in clauses:
                yield level, clauses["above"].value, np.inf
            if "below" in clauses:
                yield level, -np.inf, clauses["below"].value
        case "slope":
            yield Slope(subjects, clauses["from"].value, clauses["to"].value), *_around(clauses)
        case "impedance":
            low = clauses["from"].value if "from" in clauses else LOWEST_HZ
            high = clauses["to"].value if "to" in clauses else HIGHEST_HZ
            for name in subjects or inputs:
                if "above" in clauses:
                    yield Impedance((name,), low, high), clauses["above"].value, np.inf
                if "below" in clauses:
                    yield Impedance((name,), low, high, greatest=True), 0.0, clauses["below"].value


def _around(clauses: Mapping[str, Quantity]) -> tuple[float, float]:
    middle, within = clauses["is"].value, clauses["within"].value
    return middle - within, middle + within


def _sensitivity(design: Design, first: str, second: str) -> float:
    """By how much the first is louder at the same voltage (dB); 0 unless both state their sensitivity."""
    given = [design.drivers[name].quantities.get("sensitivity") for name in (first, second)]
    return 0.0 if given[0] is None or given[1] is None else given[0].value - given[1].value


def figures(solver: Solver, proved: Sequence[Proof]) -> tuple[Figure, ...]:
    """Those of the expectations, then those that every design is asked for."""
    expected = dict.fromkeys(figure for proof in proved for figure, _, _ in proof.bounds)
    asked = {(type(figure), figure.subjects) for figure in expected}
    return (*expected, *(figure for figure in _usual(solver) if (type(figure), figure.subjects) not in asked))


def _usual(solver: Solver) -> Iterable[Figure]:
    freq = np.geomspace(LOWEST_HZ, HIGHEST_HZ, POINTS)
    response = solver.solve(freq)
    voltages = {driver.name: np.abs(response.driver_voltage(driver.name)) for driver in solver.network.drivers}
    levels = {name: square_to_db(voltage**2) for name, voltage in voltages.items() if voltage.any()}
    for first, second in combinations(levels, 2):
        if np.abs(levels[first] - levels[second]).max() < ALIKE_DB:
            continue
        for crossing in measures.crossings(solver, first, second, LOWEST_HZ, HIGHEST_HZ):
            others = [levels[name] for name in levels if name not in (first, second)]
            if all(np.interp(crossing.freq_hz, freq, other) <= crossing.level_db for other in others):
                yield Crossing((first, second), crossing.freq_hz)
    for name, level in levels.items():
        (first_place,), (last_place,) = band_of(level[:, None])
        yield Level((name,), float(freq[(first_place + last_place) // 2]))
    for feed in solver.network.feeds:
        yield Impedance((feed.name,), LOWEST_HZ, HIGHEST_HZ)


def grid(wanted: Iterable[Figure]) -> Real:
    """POINTS frequencies from LOWEST_HZ to HIGHEST_HZ, wider if a figure asks for it, and every point asked for."""
    wanted = tuple(wanted)
    points = sorted({freq for figure in wanted for freq in figure.points_hz})
    near = [figure.near_hz for figure in wanted if isinstance(figure, Crossing | Corner)]
    low, high = min([LOWEST_HZ, *points, *(f / 2 for f in near)]), max([HIGHEST_HZ, *points, *(f * 2 for f in near)])
    per_decade = (POINTS - 1) / np.log10(HIGHEST_HZ / LOWEST_HZ)
    steps = int(np.ceil(np.log10(high / low) * per_decade - 1e-9))
    even = np.geomspace(low, high, steps + 1)
    extra = [freq for freq in points if np.abs(even / freq - 1).min() > 1e-9]
    return np.asarray(np.sort(np.concatenate((even, extra))))
