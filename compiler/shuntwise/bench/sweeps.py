"""A sweep of an impedance as a few of its points, which are as good as all: neighbours tell the same.

In and out: readings that were taken. Refuses to know what they should be.
"""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np

from shuntwise.model.box import Reading, Taken

POINTS = 14


def thinned(taken: Iterable[Taken]) -> tuple[Taken, ...]:
    """The readings, of those of one sweep about POINTS, evenly in the logarithm of frequency."""
    every = tuple(taken)
    sweeps: dict[tuple[str, str], list[Taken]] = {}
    for one in every:
        if one.reading.quantity == "impedance":
            sweeps.setdefault((one.reading.loads, one.reading.fed), []).append(one)
    dropped: set[Reading] = set()
    for points in sweeps.values():
        freq_hz = np.array([one.reading.freq_hz for one in points])
        marks = np.geomspace(freq_hz.min(), freq_hz.max(), POINTS)
        kept = {int(np.abs(np.log(freq_hz / mark)).argmin()) for mark in marks}
        dropped |= {one.reading for number, one in enumerate(points) if number not in kept}
    return tuple(one for one in every if one.reading not in dropped)
