"""Resonances that are so narrow that they fall between the points of a sweep.

In: a compiled network, cases (see `cases.py`) and curves over a sweep. Out: where and how high the peaks are, and
sweeps with points gathered about them. It refuses to know what the cases stand for.

A coil and a capacitor without what damps them show at an input long before the resonance itself: their reactances
cancel over a width that their losses have no part in. So a sweep sees that there is a peak, if not how high it is.

Every peak is solved by itself, which for hundreds of parts with as many peaks would take minutes; so in a network of
more than LARGEST elements, far from any box, the points of the sweep are all there is.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from shuntwise.response.cases import STEPS_PER_OCTAVE, Case, solve_cases, sweep, vertex
from shuntwise.response.measures import least_on
from shuntwise.response.solve import Solver, beside_resonances
from shuntwise.response.tape import Real

SHARP = 0.5
"""From here on (see `vertex`) a peak is looked at by solving again: it is as wide as the step, or less."""

LARGEST = 200

MOST_PEAKS = 8
"""Of one case, in a sweep of it: each brings its points, and a box has as many narrow resonances as legs."""

FLAT = 1e-5
"""A peak is found when what is left of its bracket differs by less than this share."""

ABOUT = 2.0 ** (np.arange(-36, 2) / 2) / STEPS_PER_OCTAVE
"""Distances from a peak (octaves) at which points are gathered: so many to each halving, whatever its width."""


@dataclass(frozen=True)
class Peak:
    """A narrow peak of the current into an input for 1 V, in the case of this number."""

    case: int
    freq_hz: float
    siemens: float


def narrow_peaks(
    solver: Solver, cases: Sequence[Case], feed: str, admittance: Real, freq_hz: Real, most: int
) -> Iterator[Peak]:
    """The peaks of magnitudes of admittance (S), (cases, F), whose height the points do not tell: of each case at most
    so many, the highest. Raises as `solve`.
    """
    if len(solver.network.elements) > LARGEST:
        return
    inner = admittance[:, 1:-1]
    rows, places = np.nonzero((inner > admittance[:, :-2]) & (inner >= admittance[:, 2:]))
    at = places + 1
    sharp = ~(vertex(admittance[rows], freq_hz, at)[1] < SHARP)
    rows, at = rows[sharp], at[sharp]
    for row in sorted(set(rows.tolist())):
        places = at[rows == row]
        for place in places[np.argsort(-admittance[row, places])][:most]:
            yield _solved(solver, cases, row, feed, freq_hz[place - 1 : place + 2])


def _solved(solver: Solver, cases: Sequence[Case], number: int, feed: str, bracket: Real) -> Peak:
    def ohms(freq_hz: Real) -> Real:
        with np.errstate(divide="ignore"):
            return 1 / np.abs(solver.solve(freq_hz, values=cases[number], nodes=()).admittance(feed).reshape(-1))

    peak_hz, ohm = least_on(lambda freq_hz: beside_resonances(ohms, freq_hz), bracket, flat=FLAT)
    return Peak(number, peak_hz, 1 / ohm if ohm else np.inf)


def gathered_sweep(solver: Solver, cases: Sequence[Case]) -> Real:
    """The sweep of all cases (Hz, rising), with points gathered about every narrow peak of one. Raises as `solve`."""
    if len(solver.network.elements) > LARGEST:
        return sweep()
    response = solve_cases(solver, cases, sweep(), parts=False)
    freq_hz = response.freq_hz
    about = np.concatenate([-ABOUT, ABOUT])
    found = [freq_hz]
    for feed in solver.network.feeds:
        admittance = np.abs(response.admittance(feed.name))
        for peak in narrow_peaks(solver, cases, feed.name, admittance, freq_hz, MOST_PEAKS):
            found.append(np.clip(peak.freq_hz * 2**about, freq_hz[0], freq_hz[-1]))
    freq_hz = np.sort(np.concatenate(found))
    # As `np.unique` would, which loads masked arrays when it is first called: 25 ms of a cold start.
    return freq_hz[np.diff(freq_hz, prepend=-np.inf) > 0]
