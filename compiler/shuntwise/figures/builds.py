"""Crossings and extremes of many builds at once, between the points of one grid.

In: squared curves (frequencies, builds). Out: one number for each build. Refuses to know what the curves are.
"""

from __future__ import annotations

from math import log
from typing import Any

import numpy as np
import numpy.typing as npt

from shuntwise.figures.band import Places, Real
from shuntwise.figures.curves import Single, square_to_db, square_to_ohm

NEWTON_STEPS = 4
"""From the middle of two points of the grid, between which levels are all but straight."""


def crossings_of_builds(freq_hz: Real, first: npt.NDArray[Any], second: npt.NDArray[Any], near_hz: float) -> Real:
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


def vertex_ohm(ln: Real, square: Single, at: Places) -> Real:
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
    return np.where(np.isfinite(vertex), vertex, y)
