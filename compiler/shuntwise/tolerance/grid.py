"""The frequencies at which many builds are solved: as few as their figures need."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np

from shuntwise.figures.band import Real
from shuntwise.figures.figure import Corner, Crossing, Figure
from shuntwise.figures.nominal import HIGHEST_HZ, LOWEST_HZ

POINTS = 240
"""From LOWEST_HZ to HIGHEST_HZ; a wider grid has as many to a decade."""


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
