"""One circuit with the values that it states: its bands, crossings, corners and least impedances, exactly.

In: a solver. Out: numbers, refined between the points of a fixed lattice, so that the same figure comes out the same
whoever asks for it. Refuses to know what the numbers should have been.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache, cached_property

import numpy as np

from shuntwise.figures.band import REFERENCE_HZ, Real, band_places, most_common, reference_db
from shuntwise.response import measures
from shuntwise.response.measures import Extreme
from shuntwise.response.solve import Response, Solver

LOWEST_HZ, HIGHEST_HZ = 20.0, 20e3
"""The band in which figures are looked for where nothing else is said."""


PLAIN_DB = 1.5
"""A change of level in a driver's band from here on is more than parts of 5 % make, which move it by some 1 dB at the
crossing (worked out on a second-order two-way), and more than the 1 dB that is just heard: common practice."""


@dataclass(frozen=True)
class Band:
    """The band of one driver (Hz), the level that most of it has (dB), and at which frequencies it has that."""

    from_hz: float
    to_hz: float
    reference_db: float
    common_hz: tuple[float, ...]


class Nominal:
    """The figures of one circuit; what several of them need is worked out once. Methods raise SingularNetwork."""

    def __init__(self, solver: Solver) -> None:
        self.solver = solver
        # Every search begins with a solved lattice, and several figures ask for the same.
        self.band = cache(self._band)
        self.corners = cache(self._corners)
        self.crossings = cache(self._crossings)
        self.extreme_impedance = cache(self._extreme_impedance)

    @cached_property
    def sweep(self) -> Response:
        """The circuit solved at REFERENCE_HZ."""
        return self.solver.solve(np.array(REFERENCE_HZ))

    def levels_db(self, driver: str) -> Real:
        """The level at a driver's pads (dB re 1 V at the input) at REFERENCE_HZ."""
        return measures.decibel(self.sweep.driver_voltage(driver))

    def level_db(self, driver: str, freq_hz: float) -> float:
        return measures.level_db(self.solver, driver, freq_hz)

    def greatest_change_db(self, driver: str, values: Mapping[str, float]) -> float:
        """By how much a driver's level would change at most if elements had other values (ohm, H, F by name).

        Looked at in the band that it would then have: further out a change is of a level that nobody hears.
        """
        response = self.solver.solve(np.array(REFERENCE_HZ), values=values)
        level = measures.decibel(response.driver_voltage(driver))
        (first,), (last,) = band_places(level[:, None])
        return float(np.abs(level - self.levels_db(driver))[first : last + 1].max())

    def _band(self, driver: str) -> Band:
        """From the first to the last point of REFERENCE_HZ within IN_BAND_DB of the greatest level."""
        level = self.levels_db(driver)[:, None]
        (first,), (last,) = band_places(level)
        places, (count,) = most_common(level)
        common = tuple(REFERENCE_HZ[place] for place in places[:count, 0])
        return Band(REFERENCE_HZ[first], REFERENCE_HZ[last], float(reference_db(level)[0]), common)

    def _corners(
        self, driver: str, below_db: float, from_hz: float = LOWEST_HZ, to_hz: float = HIGHEST_HZ
    ) -> tuple[float, ...]:
        """Where the level passes through `below_db` under the band's reference (Hz), rising order."""
        return measures.corners(self.solver, driver, below_db, from_hz, to_hz, self.band(driver).reference_db)

    def edges(self, driver: str, below_db: float) -> tuple[float | None, float | None, bool]:
        """The corners (Hz) at which the band begins and ends, and whether the level drops out of it in between.

        None where the band goes on to the end of what is looked at.
        """
        band, corners = self.band(driver), self.corners(driver, below_db)
        target = band.reference_db - below_db
        lower = [corner for corner in corners if corner < band.from_hz]
        upper = [corner for corner in corners if corner > band.to_hz]
        if self.level_db(driver, band.from_hz) < target:  # the edge of the band lies deeper: the corner is further in
            lower = [corner for corner in corners if corner >= band.from_hz][:1]
        if self.level_db(driver, band.to_hz) < target:
            upper = [corner for corner in corners if corner <= band.to_hz][-1:]
        begins, ends = lower[-1] if lower else None, upper[0] if upper else None
        between = [c for c in corners if (begins is None or c > begins) and (ends is None or c < ends)]
        return begins, ends, bool(between)

    def _crossings(
        self,
        first: str,
        second: str,
        louder_db: float = 0.0,
        from_hz: float = LOWEST_HZ,
        to_hz: float = HIGHEST_HZ,
    ) -> tuple[float, ...]:
        """Where two drivers are equally loud (Hz), the first `louder_db` louder at the same voltage; rising order."""
        return measures.crossings(self.solver, first, second, from_hz, to_hz, louder_db)

    def _extreme_impedance(
        self, feed: str, from_hz: float = LOWEST_HZ, to_hz: float = HIGHEST_HZ, *, greatest: bool = False
    ) -> Extreme:
        """The least or greatest magnitude of an input's impedance (ohm), and where."""
        find = measures.greatest_impedance if greatest else measures.least_impedance
        return find(self.solver, feed, from_hz, to_hz)
