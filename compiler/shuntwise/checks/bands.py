"""What band a driver is given: its level over frequency, as the voltage at its pads says.

In: a `Response` over a sweep. Out: `Band`s and levels in dB re the input. A driver's own sound is no part of it,
but for the sensitivity that the author states. Refuses to know what a good band is.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TypeAlias

import numpy as np
from numpy.typing import NDArray

from shuntwise.model.design import Driver
from shuntwise.response.measures import FLOOR_DB
from shuntwise.response.solve import Response

Real: TypeAlias = NDArray[np.float64]

IN_BAND_DB = 6.0
"""A driver's band is where it gets more than its greatest level less this (the trade reads corners at -6 dB)."""


@dataclass(frozen=True)
class Band:
    """The band of one driver. `reference_db` is the level that most of it has, `level_db` the whole curve."""

    freq_hz: Real
    level_db: Real
    reference_db: float
    first: int
    last: int

    def begins_hz(self, below_db: float) -> float | None:
        """Where the level rises through `below_db` under the reference; None if it is above from the start."""
        return self._passes(self.first, -1, below_db)

    def ends_hz(self, below_db: float) -> float | None:
        """Where the level falls through `below_db` under the reference; None if it is above to the end."""
        return self._passes(self.last, 1, below_db)

    def _passes(self, edge: int, outward: int, below_db: float) -> float | None:
        over = self.level_db - (self.reference_db - below_db)
        inside = edge
        while over[inside] < 0:  # the edge of the band lies deeper: the place is further in
            inside -= outward
        while 0 <= inside + outward < over.size and over[inside + outward] >= 0:
            inside += outward
        outside = inside + outward
        if not 0 <= outside < over.size:
            return None
        share = over[inside] / (over[inside] - over[outside])
        return float(self.freq_hz[inside] * (self.freq_hz[outside] / self.freq_hz[inside]) ** share)


def levels_db(response: Response, driver: str) -> Real:
    """The level at a driver's pads (dB re 1 V at the input), at least FLOOR_DB: one that gets nothing has one too."""
    magnitude = np.abs(response.driver_voltage(driver))
    return np.asarray(20 * np.log10(np.maximum(magnitude, 10 ** (FLOOR_DB / 20))), np.float64)


def band(response: Response, driver: str) -> Band:
    """From the first to the last point within `IN_BAND_DB` of the greatest level: a notch does not end a band."""
    level = levels_db(response, driver)
    inside = np.flatnonzero(level > level.max() - IN_BAND_DB)
    first, last = int(inside[0]), int(inside[-1])
    return Band(response.freq_hz, level, _most_common(level[first : last + 1]), first, last)


def _most_common(levels: Real) -> float:
    """Where values lie closest: the half-sample mode (T. Robertson, J. D. Cryer, J. Am. Stat. Assoc. 69, 1974).

    Unlike a mean or a greatest value it is moved neither by a peak nor by the slopes at the band's ends.
    """
    values = np.sort(levels)
    while values.size > 3:
        half = (values.size + 1) // 2
        widths = values[half - 1 :] - values[: values.size - half + 1]
        start = int(np.argmin(widths))
        values = values[start : start + half]
    return float(values.mean())


def sensitivity_difference(first: Driver, second: Driver) -> float | None:
    """By how much the first is louder at the same voltage (dB); None unless both state their sensitivity."""
    if "sensitivity" not in first.quantities or "sensitivity" not in second.quantities:
        return None
    return first.quantities["sensitivity"].value - second.quantities["sensitivity"].value
