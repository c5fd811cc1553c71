"""The single numbers that a builder asks of a box: what each is, for one circuit and for many builds.

In: a `Nominal`, or the curves of many builds on a grid of frequencies. Out: one number for each (NaN where there is
none), and its first-order form. What each number means is what `expect` lines mean by it, and everything that prints
or compares one asks here. It refuses to know how builds came about, and what a number should have been.

On the grid of many builds a crossing or corner lies on the cubic of level over log frequency through four points, a
least impedance on the parabola through three. With 200 points from 20 Hz to 20 kHz both are good to about 1e-5 of
themselves, unless a resonance is narrower than the grid.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from math import log
from typing import Literal

import numpy as np

from shuntwise import units as u
from shuntwise.figures.band import REFERENCE_HZ, Places, Real, reference_db
from shuntwise.figures.builds import crossings_of_builds, vertex_ohm
from shuntwise.figures.curves import Curves, square_to_db
from shuntwise.figures.nominal import HIGHEST_HZ, LOWEST_HZ, Nominal
from shuntwise.model.design import Driver
from shuntwise.response import measures

DIGITS = 6
"""Of a frequency that belongs to a figure's name: as many as an author writes."""


@dataclass(frozen=True)
class Term:
    """One term of a figure's first-order form: `weight` times the change of a level (dB) or an impedance (ohm)."""

    of: Literal["level", "impedance"]
    subject: str
    freq_hz: float
    weight: float


def sensitivity_difference(first: Driver, second: Driver) -> float | None:
    """By how much the first is louder at the same voltage (dB); None unless both state their sensitivity."""
    if "sensitivity" not in first.quantities or "sensitivity" not in second.quantities:
        return None
    return first.quantities["sensitivity"].value - second.quantities["sensitivity"].value


def louder_db(drivers: Mapping[str, Driver], first: str, second: str) -> float:
    """What a crossing of two drivers counts in: the difference of their sensitivities (dB), 0 unless both state one."""
    return sensitivity_difference(drivers[first], drivers[second]) or 0.0


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
    def nominal(self, circuit: Nominal) -> float:
        """The number of one circuit, exactly."""

    @abstractmethod
    def of(self, curves: Curves) -> Real:
        """The number of each build, (builds,)."""

    @abstractmethod
    def terms(self, circuit: Nominal) -> tuple[Term, ...]:
        """The change of the number for small changes of levels and impedances; empty where there is no number."""


@dataclass(frozen=True)
class Level(Figure):
    """A driver's level (dB re the input) at a frequency."""

    at_hz: float

    @property
    def name(self) -> str:
        return f"level of {self.subjects[0]} at {u.write(self.at_hz, u.HERTZ, DIGITS)}"

    @property
    def dimension(self) -> u.Dimension:
        return u.DECIBEL

    @property
    def points_hz(self) -> tuple[float, ...]:
        return (self.at_hz,)

    def nominal(self, circuit: Nominal) -> float:
        return circuit.level_db(self.subjects[0], self.at_hz)

    def of(self, curves: Curves) -> Real:
        return square_to_db(curves.voltage_square[self.subjects[0]][_place(curves, self.at_hz)])

    def terms(self, circuit: Nominal) -> tuple[Term, ...]:
        return (Term("level", self.subjects[0], self.at_hz, 1.0),)


@dataclass(frozen=True)
class Slope(Figure):
    """The mean slope of a driver's level between two frequencies (dB/octave)."""

    from_hz: float
    to_hz: float

    @property
    def name(self) -> str:
        band = f"{u.write(self.from_hz, u.HERTZ, DIGITS)} to {u.write(self.to_hz, u.HERTZ, DIGITS)}"
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

    def nominal(self, circuit: Nominal) -> float:
        low, high = (circuit.level_db(self.subjects[0], freq) for freq in (self.from_hz, self.to_hz))
        return (high - low) / self.octaves

    def of(self, curves: Curves) -> Real:
        square = curves.voltage_square[self.subjects[0]]
        low, high = (square_to_db(square[_place(curves, freq)]) for freq in (self.from_hz, self.to_hz))
        return np.asarray((high - low) / self.octaves)

    def terms(self, circuit: Nominal) -> tuple[Term, ...]:
        low, high = (Term("level", self.subjects[0], freq, 1.0) for freq in (self.from_hz, self.to_hz))
        return replace(high, weight=1 / self.octaves), replace(low, weight=-1 / self.octaves)


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

    def nominal(self, circuit: Nominal) -> float:
        first, second = self.subjects
        return nearest(circuit.crossings(first, second, self.louder_db, *search_hz(self.near_hz)), self.near_hz)

    def of(self, curves: Curves) -> Real:
        first, second = (curves.voltage_square[name] for name in self.subjects)
        gain = np.float32(10 ** (self.louder_db / 10))
        return crossings_of_builds(curves.freq_hz, gain * first, second, self.near_hz)

    def terms(self, circuit: Nominal) -> tuple[Term, ...]:
        freq, (first, second) = self.nominal(circuit), self.subjects
        if np.isnan(freq):
            return ()
        weight = -freq / (_steepness(circuit, first, freq) - _steepness(circuit, second, freq))
        return Term("level", first, freq, weight), Term("level", second, freq, -weight)


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

    def nominal(self, circuit: Nominal) -> float:
        return nearest(circuit.corners(self.subjects[0], self.below_db, *search_hz(self.near_hz)), self.near_hz)

    def of(self, curves: Curves) -> Real:
        square = curves.voltage_square[self.subjects[0]]
        target_db = reference_db(square_to_db(square[_reference_places(curves)])) - self.below_db
        target = np.broadcast_to(10 ** (target_db / 10), square.shape)
        return crossings_of_builds(curves.freq_hz, square, target, self.near_hz)

    def terms(self, circuit: Nominal) -> tuple[Term, ...]:
        freq, driver = self.nominal(circuit), self.subjects[0]
        if np.isnan(freq):
            return ()
        weight = -freq / _steepness(circuit, driver, freq)
        common = circuit.band(driver).common_hz
        reference = (Term("level", driver, other, -weight / len(common)) for other in common)
        return Term("level", driver, freq, weight), *reference


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

    def nominal(self, circuit: Nominal) -> float:
        return self.place(circuit).ohm

    def place(self, circuit: Nominal) -> measures.Extreme:
        """The number of one circuit, and at which frequency it is."""
        return circuit.extreme_impedance(self.subjects[0], self.from_hz, self.to_hz, greatest=self.greatest)

    def of(self, curves: Curves) -> Real:
        band = slice(_place(curves, self.from_hz), _place(curves, self.to_hz) + 1)
        square = curves.admittance_square[self.subjects[0]][band]
        # The least impedance is the greatest admittance.
        at = square.argmin(axis=0) if self.greatest else square.argmax(axis=0)
        return vertex_ohm(np.log(curves.freq_hz[band]), square, at)

    def terms(self, circuit: Nominal) -> tuple[Term, ...]:
        return (Term("impedance", self.subjects[0], self.place(circuit).freq_hz, 1.0),)


def nearest(found: Sequence[float], near_hz: float) -> float:
    """Of several frequencies the one nearest to another on a logarithmic scale; NaN if there is none."""
    return min(found, key=lambda freq: abs(log(freq / near_hz)), default=float("nan"))


def search_hz(near_hz: float) -> tuple[float, float]:
    """Where a crossing or corner near some frequency is looked for."""
    return min(LOWEST_HZ, near_hz / 2), max(HIGHEST_HZ, near_hz * 2)


def _place(curves: Curves, freq_hz: float) -> int:
    """Where the grid holds a frequency."""
    return int(np.argmin(np.abs(curves.freq_hz - freq_hz)))


def _reference_places(curves: Curves) -> Places:
    """Where the grid holds REFERENCE_HZ."""
    return np.asarray(np.argmin(np.abs(curves.freq_hz[:, None] - np.array(REFERENCE_HZ)), axis=0))


def _steepness(circuit: Nominal, driver: str, freq_hz: float) -> float:
    """d level / d ln f (dB), exactly."""
    return measures.local_slope_db_per_octave(circuit.solver, driver, freq_hz) / log(2)
