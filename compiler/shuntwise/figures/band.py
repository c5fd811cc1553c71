"""What band a driver is given: its level over frequency, as the voltage at its pads says.

In: levels (dB), by frequency and, if wanted, by build. Out: where the band lies, and the level that most of it has. A
driver's own sound is no part of it. Refuses to know what a good band is.
"""

from __future__ import annotations

from typing import TypeAlias

import numpy as np
from numpy.typing import NDArray

Real: TypeAlias = NDArray[np.float64]
Places: TypeAlias = NDArray[np.intp]

IN_BAND_DB = 6.0
"""A driver's band is where it gets more than its greatest level less this (the trade reads corners at -6 dB)."""

REFERENCE_HZ = tuple(np.geomspace(20.0, 20e3, 121).tolist())
"""Where a band is looked at, for one circuit and for many builds: 40 points a decade."""


def band_places(level: Real) -> tuple[Places, Places]:
    """The first and last place of each build's level (frequencies, builds) within IN_BAND_DB of its greatest.

    A notch does not end a band.
    """
    inside = level > level.max(axis=0) - IN_BAND_DB
    return inside.argmax(axis=0), level.shape[0] - 1 - inside[::-1].argmax(axis=0)


def reference_db(level: Real) -> Real:
    """What each build's level (frequencies, builds) mostly is in its band; (builds,).

    The half-sample mode (T. Robertson, J. D. Cryer, J. Am. Stat. Assoc. 69, 1974): of the sorted levels the half that
    lies closest is taken again and again, and of the last three or fewer the mean. Unlike a mean or a greatest value
    it is moved neither by a peak nor by the slopes at the band's ends.
    """
    places, count = most_common(level)
    chosen = np.take_along_axis(level, places, axis=0)
    return np.asarray(np.where(np.arange(3)[:, None] < count, chosen, 0.0).sum(axis=0) / count)


def most_common(level: Real) -> tuple[Places, Places]:
    """The places (3, builds) of the levels that `reference_db` is the mean of, and how many of them count."""
    first, last = band_places(level)
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
