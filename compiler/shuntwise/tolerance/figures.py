"""The single numbers that a builder asks of a box, worked out for many builds at once.

In: the curves of many builds on a grid of frequencies. Out: one number for each build (NaN where a build has none),
and its first-order effects by part. What each number means is what `expect` lines mean by it. It refuses to know how
the builds came about.

On the grid a crossing or corner lies on the cubic of level over log frequency through four points, a least
impedance on the parabola through three. With 200 points from 20 Hz to 20 kHz both are good to about 1e-5 of
themselves, unless a resonance is narrower than the grid.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Sequence
from dataclasses import dataclass
from math import log
from typing import Any

import numpy as np
import numpy.typing as npt

from shuntwise import units as u
from shuntwise.response import measures
from shuntwise.response.solve import Solver
from shuntwise.tolerance.curves import Curves, Single, square_to_db, square_to_ohm
from shuntwise.tolerance.draws import VaryingPart
from shuntwise.tolerance.first_order import impedance_effects, level_effects

Real = npt.NDArray[np.float64]

NEWTON_STEPS = 4
"""From the middle of two points of the grid, between which levels are all but straight."""

REFERENCE_HZ = tuple(np.geomspace(20.0, 20e3, 121).tolist())
"""Where the reference of a corner is taken: as many points as the checks take, so that both mean the same corner."""

IN_BAND_DB = 6.0
"""A driver's band goes from the first to the last frequency where it gets more than its greatest level less this."""


@dataclass(frozen=True)
class Figure(ABC):
    """One number of a box, of some drivers or inputs."""

    subjects: tuple[str, ...]

    @property
    @abstractmethod
    def name(self) -> str:
        """In words, without its value."""

    @property
    @abstractmethod
    def dimension(self) -> u.Dimension: ...

    @property
    def points_hz(self) -> tuple[float, ...]:
        """Frequencies that the grid must hold."""
        return ()

    @abstractmethod
    def of(self, curves: Curves) -> Real:
        """The number of each build, (builds,)."""

    @abstractmethod
    def effects(self, solver: Solver, parts: Sequence[VaryingPart], nominal: Curves) -> Real:
        """The first-order change for each part at the upper end of its tolerance, (parts,).

        `nominal` are the curves of the one build of stated values. Zero where that build has no such number.
        """


@dataclass(frozen=True)
class Level(Figure):
    """A driver's level (dB re the input) at a frequency."""

    at_hz: float

    @property
    def name(self) -> str:
        return f"level of {self.subjects[0]} at {u.write(self.at_hz, u.HERTZ, 3)}"

    @property
    def dimension(self) -> u.Dimension:
        return u.DECIBEL

    @property
    def points_hz(self) -> tuple[float, ...]:
        return (self.at_hz,)

    def of(self, curves: Curves) -> Real:
        return square_to_db(curves.voltage_square[self.subjects[0]][_place(curves, self.at_hz)])

    def effects(self, solver: Solver, parts: Sequence[VaryingPart], nominal: Curves) -> Real:
        return level_effects(solver, parts, self.subjects[0], [self.at_hz])[:, 0]


@dataclass(frozen=True)
class Slope(Figure):
    """The mean slope of a driver's level between two frequencies (dB/octave)."""

    from_hz: float
    to_hz: float

    @property
    def name(self) -> str:
        band = f"{u.write(self.from_hz, u.HERTZ, 3)} to {u.write(self.to_hz, u.HERTZ, 3)}"
        return f"slope of {self.subjects[0]} from {band}"

    @property
    def dimension(self) -> u.Dimension:
        return u.DECIBEL_PER_OCTAVE

    @property
    def points_hz(self) -> tuple[float, ...]:
        return (self.from_hz, self.to_hz)

    @property
    def octaves(self) -> float:
        return float(np.log2(self.to_hz / self.from_hz))

    def of(self, curves: Curves) -> Real:
        square = curves.voltage_square[self.subjects[0]]
        low, high = (square_to_db(square[_place(curves, freq)]) for freq in (self.from_hz, self.to_hz))
        return np.asarray((high - low) / self.octaves)

    def effects(self, solver: Solver, parts: Sequence[VaryingPart], nominal: Curves) -> Real:
        ends = level_effects(solver, parts, self.subjects[0], [self.from_hz, self.to_hz])
        return np.asarray((ends[:, 1] - ends[:, 0]) / self.octaves)


@dataclass(frozen=True)
class Crossing(Figure):
    """Where two drivers are equally loud (Hz), nearest to `near_hz`; the first is `louder_db` at the same voltage."""

    near_hz: float
    louder_db: float = 0.0

    @property
    def name(self) -> str:
        return f"crossing of {' and '.join(self.subjects)}"

    @property
    def dimension(self) -> u.Dimension:
        return u.HERTZ

    def of(self, curves: Curves) -> Real:
        first, second = (curves.voltage_square[name] for name in self.subjects)
        gain = np.float32(10 ** (self.louder_db / 10))
        return _crossings(curves.freq_hz, gain * first, second, self.near_hz)

    def effects(self, solver: Solver, parts: Sequence[VaryingPart], nominal: Curves) -> Real:
        freq = float(self.of(nominal)[0])
        if np.isnan(freq):
            return np.zeros(len(parts))
        first, second = (level_effects(solver, parts, name, [freq])[:, 0] for name in self.subjects)
        steep = _steepness(solver, self.subjects[0], freq) - _steepness(solver, self.subjects[1], freq)
        return -freq * (first - second) / steep


@dataclass(frozen=True)
class Corner(Figure):
    """Where a driver's level is `below_db` under what it mostly is in its band (Hz), nearest to `near_hz`."""

    near_hz: float
    below_db: float = 3.0

    @property
    def name(self) -> str:
        return f"corner of {self.subjects[0]}, {self.below_db:.3g} dB down"

    @property
    def dimension(self) -> u.Dimension:
        return u.HERTZ

    @property
    def points_hz(self) -> tuple[float, ...]:
        return REFERENCE_HZ

    def of(self, curves: Curves) -> Real:
        square = curves.voltage_square[self.subjects[0]]
        target = reference_db(square_to_db(square[_reference_places(curves)])) - self.below_db
        return _crossings(curves.freq_hz, square, np.broadcast_to(10 ** (target / 10), square.shape), self.near_hz)

    def effects(self, solver: Solver, parts: Sequence[VaryingPart], nominal: Curves) -> Real:
        freq = float(self.of(nominal)[0])
        if np.isnan(freq):
            return np.zeros(len(parts))
        driver = self.subjects[0]
        here = level_effects(solver, parts, driver, [freq])[:, 0]
        grid = _reference_places(nominal)
        places, count = _most_common(square_to_db(nominal.voltage_square[driver][grid]))
        common = nominal.freq_hz[grid[places[: count[0], 0]]]
        reference = level_effects(solver, parts, driver, common).mean(axis=1)
        return np.asarray(-freq * (here - reference) / _steepness(solver, driver, freq))


@dataclass(frozen=True)
class Impedance(Figure):
    """The least, or the greatest, magnitude of an input's impedance in a band (ohm)."""

    from_hz: float
    to_hz: float
    greatest: bool = False

    @property
    def name(self) -> str:
        return f"{'greatest' if self.greatest else 'least'} impedance of {self.subjects[0]}"

    @property
    def dimension(self) -> u.Dimension:
        return u.OHM

    @property
    def points_hz(self) -> tuple[float, ...]:
        return (self.from_hz, self.to_hz)

    def of(self, curves: Curves) -> Real:
        return self._extreme(curves)[1]

    def effects(self, solver: Solver, parts: Sequence[VaryingPart], nominal: Curves) -> Real:
        freq = float(self._extreme(nominal)[0][0])
        return impedance_effects(solver, parts, self.subjects[0], [freq])[:, 0]

    def _extreme(self, curves: Curves) -> tuple[Real, Real]:
        """Frequencies and magnitudes, (builds,)."""
        band = slice(_place(curves, self.from_hz), _place(curves, self.to_hz) + 1)
        square = curves.admittance_square[self.subjects[0]][band]
        # The least impedance is the greatest admittance.
        at = square.argmin(axis=0) if self.greatest else square.argmax(axis=0)
        return _vertex(np.log(curves.freq_hz[band]), square, at)


def band_of(level: Real) -> tuple[npt.NDArray[np.intp], npt.NDArray[np.intp]]:
    """The first and last place of each build's level (frequencies, builds) within IN_BAND_DB of its greatest."""
    inside = level > level.max(axis=0) - IN_BAND_DB
    return inside.argmax(axis=0), level.shape[0] - 1 - inside[::-1].argmax(axis=0)


def reference_db(level: Real) -> Real:
    """What each build's level (frequencies, builds) mostly is in its band; (builds,).

    The half-sample mode (T. Robertson, J. D. Cryer, J. Am. Stat. Assoc. 69, 1974): of the sorted levels the half that
    lies closest is taken again and again, and of the last three or fewer the mean.
    """
    places, count = _most_common(level)
    chosen = np.take_along_axis(level, places, axis=0)
    return np.asarray(np.where(np.arange(3)[:, None] < count, chosen, 0.0).sum(axis=0) / count)


def _most_common(level: Real) -> tuple[npt.NDArray[np.intp], npt.NDArray[np.intp]]:
    """The places (3, builds) of the levels that `reference_db` is the mean of, and how many of them count."""
    first, last = band_of(level)
    place, build = np.arange(level.shape[0])[:, None], np.arange(level.shape[1])
    levels = np.where((place >= first) & (place <= last), level, np.inf)
    order = np.argsort(levels, axis=0, kind="stable")
    values = np.take_along_axis(levels, order, axis=0)
    start, count = np.zeros_like(first), last - first + 1
    while (wide := count > 3).any():
        half = np.where(wide, (count + 1) // 2, count)
        ends = np.minimum(place + half - 1, level.shape[0] - 1)
        with np.errstate(invalid="ignore"):  # inf - inf, outside of what is compared
            widths = values[ends, build] - values
        widths[(place < start) | (place > start + count - half)] = np.inf
        start, count = np.where(wide, widths.argmin(axis=0), start), half
    return order[np.minimum(start + np.arange(3)[:, None], level.shape[0] - 1), build], count


def _place(curves: Curves, freq_hz: float) -> int:
    """Where the grid holds a frequency."""
    return int(np.argmin(np.abs(curves.freq_hz - freq_hz)))


def _reference_places(curves: Curves) -> npt.NDArray[np.intp]:
    """Where the grid holds REFERENCE_HZ."""
    return np.asarray(np.argmin(np.abs(curves.freq_hz[:, None] - np.array(REFERENCE_HZ)), axis=0))


def _steepness(solver: Solver, driver: str, freq_hz: float) -> float:
    """d level / d ln f (dB), exactly."""
    return measures.local_slope_db_per_octave(solver, driver, freq_hz) / log(2)


def _crossings(freq_hz: Real, first: npt.NDArray[Any], second: npt.NDArray[Any], near_hz: float) -> Real:
    """Where two squared curves (frequencies, builds) cross in each build, nearest to `near_hz` in log frequency.

    Between two points of the grid their difference in dB is taken as a cubic over log frequency. (builds,).
    """
    above = first > second
    place, build = np.nonzero(above[1:] != above[:-1])
    ln = np.log(freq_hz)
    four = np.clip(place - 1, 0, ln.size - 4) + np.arange(4)[:, None]
    decibel = square_to_db(first[four, build]) - square_to_db(second[four, build])
    zero = _zero(ln[four], decibel, ln[place], ln[place + 1])
    # Farthest first: of several crossings of one build the last that is written stays.
    order = np.argsort(-np.abs(zero - log(near_hz)), kind="stable")
    found = np.full(first.shape[1], np.nan)
    found[build[order]] = np.exp(zero[order])
    return found


def _zero(x: Real, y: Real, low: Real, high: Real) -> Real:
    """The zero between `low` and `high` of the cubic through four points (4, n) in Newton's form; (n,)."""
    coefficient = y.copy()
    for order in (1, 2, 3):
        coefficient[order:] = (coefficient[order:] - coefficient[order - 1 : -1]) / (x[order:] - x[: 4 - order])
    zero = (low + high) / 2
    for _ in range(NEWTON_STEPS):
        value, slope = coefficient[3], np.zeros_like(zero)
        for order in (2, 1, 0):
            slope = slope * (zero - x[order]) + value
            value = value * (zero - x[order]) + coefficient[order]
        zero = np.clip(zero - value / np.where(slope == 0, np.inf, slope), low, high)
    return zero


def _vertex(ln: Real, square: Single, at: npt.NDArray[np.intp]) -> tuple[Real, Real]:
    """The vertex of the parabola through the impedance at place `at` of each build and its neighbours.

    `ln` is log frequency, `square` the squared admittance (frequencies, builds). At an end of the band it is the end.
    """
    build = np.arange(at.size)
    left, right = np.maximum(at - 1, 0), np.minimum(at + 1, ln.size - 1)
    low, y, high = (square_to_ohm(square[place, build]) for place in (left, at, right))
    a, b = ln[at] - ln[left], ln[right] - ln[at]
    # y + slope t + bend t^2 through the three points: two equations in slope and bend.
    with np.errstate(all="ignore"):
        fall, rise = (y - low) / a, (high - y) / b
        bend, slope = (rise - fall) / (a + b), (fall * b + rise * a) / (a + b)
        shift = np.clip(-slope / (2 * bend), -a, b)
        vertex = y + slope * shift + bend * shift**2
    inner = np.isfinite(vertex)
    return np.exp(ln[at] + np.where(inner, shift, 0.0)), np.where(inner, vertex, y)
