"""What sound boards read: windows that a sheet prints, and the limits at which a verdict turns.

In: a dictionary and the readings of a sheet. Out: windows that JOINT of sound boards pass as a whole, found on boards
drawn at random; the share of "sound" below which a board is no longer believed to be; the distance beyond which no
single fault explains what is read. Refuses to know which readings make a good sheet.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from shuntwise.bench.dictionary import Dictionary
from shuntwise.bench.inference import Lookup, shares
from shuntwise.bench.meters import scale_of
from shuntwise.bench.rig import Real, Whole
from shuntwise.bench.solving import BEYOND_OHM, solved
from shuntwise.bench.states import varied
from shuntwise.model.box import Reading

JOINT = 0.99
"""Share of sound boards that pass all windows of a sheet."""

ALARMS, SEVERAL = 0.0045, 0.01
"""Share of sound boards that a verdict may take for wrong, and of boards with one fault for ones with several."""

SEED = 20261130


class Boards:
    """Boards (N) drawn at random, with the faults of some rows of a dictionary; row 0 is a sound board.

    What there is on them is worked out when a reading is first asked for, and kept.
    """

    def __init__(self, dictionary: Dictionary, rows: Whole, seed: int = SEED) -> None:
        self.dictionary, self.seed = dictionary, seed
        self.states = varied(dictionary.rig, dictionary.states.part(rows), np.random.default_rng(seed))
        self._true: dict[Reading, Real] = {}

    def shown(self, readings: Sequence[Reading]) -> Real:
        """What the meters show (N, M)."""
        rig, bench = self.dictionary.rig, self.dictionary.bench
        missing = [reading for reading in dict.fromkeys(readings) if reading not in self._true]
        if missing:
            self._true.update(zip(missing, solved(rig, self.states, bench, missing).values.T, strict=True))
        true = np.stack([self._true[reading] for reading in readings], axis=1)
        return scale_of(readings, bench).read(true, np.random.default_rng((self.seed, 1)))


def sound_boards(dictionary: Dictionary, count: int, seed: int = SEED) -> Boards:
    """Boards with nothing wrong."""
    return Boards(dictionary, np.zeros(count, np.intp), seed)


def windows(shown: Real, resistance: Sequence[bool]) -> tuple[Real, Real, float]:
    """Low and high (M,) of each reading, and the share of boards (N, M) that pass them all.

    The same share is cut off at every end, as large as JOINT allows. What reads open on nearly every board must.
    """
    best = None
    for cut in np.geomspace(0.02, 1e-4, 40):
        low, high = np.quantile(shown, [cut, 1 - cut], axis=0)
        passed = float(((shown >= low - 1e-12) & (shown <= high + 1e-12)).all(axis=1).mean())
        if passed >= JOINT:
            best = low, high, passed
            break
    if best is None:
        best = shown.min(axis=0), shown.max(axis=0), 1.0
    low, high, passed = best
    is_open = np.asarray(resistance) & (high >= BEYOND_OHM)
    return low, np.where(is_open, np.inf, high), passed


def sound_limit(lookup: Lookup, log_prior: Real, is_sound: Real, u: Real) -> float:
    """The share of "sound" that ALARMS of sound boards (N, M) fall below."""
    posterior = shares(lookup.log_likelihoods(lookup.distances(u)) + log_prior)
    return float(np.quantile(posterior[:, is_sound].sum(axis=1), ALARMS))


def distance_limit(lookup: Lookup, u: Real) -> float:
    """The least d^2 that SEVERAL of boards (N, M) with a single fault go beyond."""
    return float(np.quantile(lookup.distances(u).min(axis=1), 1 - SEVERAL))
