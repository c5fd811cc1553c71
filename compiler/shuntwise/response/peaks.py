"""Resonances that are so narrow that they fall between the points of a sweep.

In: a compiled network, cases (see `cases.py`) and curves over a sweep. Out: where and how high the peaks are, and
sweeps with points gathered about them: about peaks of the current where heat and load are looked at, about all tops and
bottoms of levels and impedances where these are drawn. It refuses to know what the cases stand for.

A coil and a capacitor without what damps them show at an input long before the resonance itself: their reactances
cancel over a width that their losses have no part in. So a sweep sees that there is a peak, if not how high it is.

Every peak is solved by itself, which for hundreds of parts with as many peaks would take minutes; so in a network of
more than LARGEST elements, far from any box, the points of the sweep are all there is.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import partial

import numpy as np

from shuntwise.response.cases import STEPS_PER_OCTAVE, Case, solve_cases, sweep, vertex
from shuntwise.response.measures import decibel, least_on
from shuntwise.response.solve import Response, Solver, beside_resonances
from shuntwise.response.tape import Real

SHARP = 0.5
"""From here on (see `vertex`) a peak is looked at by solving again: it is as wide as the step, or less."""

LARGEST = 200

MOST_PEAKS = 8
"""Of one case, in a sweep of it: each brings its points, and a box has as many narrow resonances as legs."""

FLAT = 1e-5
"""A peak is found when what is left of its bracket differs by less than this share."""

TOLD, SHARPLY = 2e-3, 0.1
"""A top or bottom is told by the points if those beside it differ by less than this share, 0.02 dB: it lies no more
than a quarter of that beyond them. Where points are dear, 0.9 dB: up to 0.2 dB are then lost."""

DECIBELS = 20 / np.log(10)

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
    return _rising(found)


FEW_ABOUT = ABOUT[::9]
"""Where points are dear: a ninth as many distances."""


def sweep_to_draw(solver: Solver, freq_hz: Real, *, sparing: bool = False) -> Real:
    """The frequencies (Hz, rising), with points added where a level at a driver or an impedance at an input has a top
    or bottom that they do not tell, and gathered about it: a line through them then shows the true one. `sparing`: only
    where they are far from it, and few.

    Lossless resonances among them are to be solved by `beside_resonances`. Raises as `solve`.
    """
    if len(solver.network.elements) > LARGEST:
        return freq_hz
    response = beside_resonances(solver.solve, freq_hz)
    told, about = (SHARPLY, FEW_ABOUT) if sparing else (TOLD, ABOUT)
    curves = [partial(_voltage, name=driver.name) for driver in solver.network.drivers]
    curves += [partial(_admittance, name=feed.name) for feed in solver.network.feeds]
    found = [freq_hz]
    for curve in curves:
        for sign in (1, -1):

            def solved(at: Real, curve: Magnitude = curve, sign: int = sign) -> Real:
                return np.asarray(sign * curve(beside_resonances(solver.solve, at)))

            for place in _untold(sign * curve(response), told):
                at_hz, _ = least_on(solved, freq_hz[place - 1 : place + 2])
                found.append(np.clip(at_hz * 2 ** np.concatenate([-about, [0], about]), freq_hz[0], freq_hz[-1]))
    return _rising(found)


Magnitude = Callable[[Response], Real]


def _voltage(response: Response, name: str) -> Real:
    return np.asarray(decibel(response.driver_voltage(name)) / DECIBELS, np.float64)


def _admittance(response: Response, name: str) -> Real:
    return np.asarray(decibel(response.admittance(name)) / DECIBELS, np.float64)


def _untold(logarithm: Real, told: float) -> list[int]:
    """Places of the points of a curve (natural logarithms, (F,)) that are bottoms which they do not tell: the deepest,
    so many as MOST_PEAKS.
    """
    below, at, above = logarithm[:-2], logarithm[1:-1], logarithm[2:]
    rise = np.maximum(below, above) - at
    places = np.flatnonzero((at < below) & (at <= above) & (rise > told)) + 1
    deepest = np.argsort(-rise[places - 1], kind="stable")[:MOST_PEAKS]
    return [int(place) for place in places[deepest]]


def _rising(parts: Sequence[Real]) -> Real:
    """All points once, rising. As `np.unique` would, which loads masked arrays when it is first called: 25 ms of a cold
    start.
    """
    freq_hz = np.sort(np.concatenate(parts))
    return np.asarray(freq_hz[np.diff(freq_hz, prepend=-np.inf) > 0])
