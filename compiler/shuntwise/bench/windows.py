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

ALARMS = 0.0045
"""Share of sound boards that a verdict may take for wrong, and of boards with one fault for ones with several."""

SEED = 20261130


def boards(dictionary: Dictionary, readings: Sequence[Reading], rows: Whole, seed: int = SEED) -> Real:
    """What the meters show (N, M) on boards with the faults of some rows of the dictionary; row 0 is a sound board."""
    generator = np.random.default_rng(seed)
    states = varied(dictionary.rig, dictionary.states.part(rows), generator)
    true = solved(dictionary.rig, states, dictionary.bench, readings).values
    return scale_of(readings, dictionary.bench).read(true, generator)


def sound_boards(dictionary: Dictionary, readings: Sequence[Reading], count: int, seed: int = SEED) -> Real:
    """What the meters show on boards with nothing wrong (count, M)."""
    return boards(dictionary, readings, np.zeros(count, np.intp), seed)


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
    """The least d^2 that ALARMS of boards (N, M) with a single fault go beyond."""
    return float(np.quantile(lookup.distances(u).min(axis=1), 1 - ALARMS))
