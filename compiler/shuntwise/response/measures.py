"""What a builder asks of a response: where drivers cross, corners, slopes, the least impedance.

In: a `Solver`, a driver or input by name, and a band in Hz. Out: a few numbers. It refuses to know what the
numbers should have been; that is for expectations and checks.

Everything is found on a logarithmic grid first and then refined by solving again inside the bracket that the
grid gave, so results do not depend on the grid, except that features narrower than its step can be missed.
Levels are dB relative to the 1 V at the input.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from itertools import pairwise
from typing import cast

import numpy as np

from shuntwise.response.sensitivity import omega_slope
from shuntwise.response.solve import Solver
from shuntwise.response.tape import Complex, Real

POINTS_PER_DECADE = 200
"""Step of the first look: 1/60 octave."""

REFINEMENT = 33
"""Points by which a bracket is looked at again; each look narrows it 16 to 32 times."""

RELATIVE_WIDTH = 1e-10
"""Brackets are narrowed to this fraction of the frequency."""

FLOOR_DB = -200.0
"""No level is told below this: 0.1 nanovolt of 1 V is nothing to a builder, and the rounding of a balanced bridge."""

Curve = Callable[[Real], Real]
"""A real quantity at each of some frequencies (Hz)."""


@dataclass(frozen=True)
class Crossing:
    """A frequency where two drivers are at the same level (dB)."""

    freq_hz: float
    level_db: float


@dataclass(frozen=True)
class Least:
    """The least magnitude of an impedance in a band (ohm), and where."""

    ohm: float
    freq_hz: float


def grid(from_hz: float, to_hz: float, per_decade: int = POINTS_PER_DECADE) -> Real:
    """Frequencies from `from_hz` to `to_hz`, both included, evenly spaced in log f, at least `per_decade` to a decade.

    Raises ValueError unless 0 < from_hz < to_hz and per_decade is at least 1.
    """
    if not (0 < from_hz < to_hz < np.inf) or per_decade < 1:
        raise ValueError("a band goes from a frequency above zero to a higher one")
    steps = max(1, int(np.ceil(np.log10(to_hz / from_hz) * per_decade - 1e-9)))
    return np.geomspace(from_hz, to_hz, steps + 1)


def level_db(solver: Solver, driver: str, freq_hz: float) -> float:
    """The level of a driver at a frequency. Minus infinity only if its voltage is exactly zero."""
    return float(_level(solver, driver)(np.array([freq_hz]))[0])


def crossings(
    solver: Solver, first: str, second: str, from_hz: float, to_hz: float, louder_db: float = 0.0
) -> tuple[Crossing, ...]:
    """Every frequency in the band where the two drivers are equally loud, rising, to about 1e-9 of itself.

    `louder_db` is by how much the first is louder at the same voltage; the level returned is the first's. Where
    they touch or run together without one passing the other, there is no crossing.
    """
    level = _level(solver, first)
    gain = 10 ** (louder_db / 20)

    def difference(freq_hz: Real) -> Real:
        response = solver.solve(freq_hz)
        return gain * np.abs(response.driver_voltage(first)) - np.abs(response.driver_voltage(second))

    return tuple(Crossing(freq, float(level(np.array([freq]))[0])) for freq in _zeros(difference, grid(from_hz, to_hz)))


def corners(
    solver: Solver,
    driver: str,
    below_db: float,
    from_hz: float,
    to_hz: float,
    reference_db: float | None = None,
) -> tuple[float, ...]:
    """Every frequency (Hz) where a driver's level passes through `below_db` under the reference, rising order.

    The -3 dB corners are those for below_db = 3, the -6 dB corners those for 6. The reference is the level given or,
    by default, the greatest level in the band: a peak at resonance or an L-pad are then taken with it.
    """
    level = _level(solver, driver)
    if reference_db is None:
        reference_db = peak_db(solver, driver, from_hz, to_hz)
    target = reference_db - below_db
    return tuple(_zeros(lambda freq_hz: level(freq_hz) - target, grid(from_hz, to_hz)))


def peak_db(solver: Solver, driver: str, from_hz: float, to_hz: float) -> float:
    """The greatest level of a driver in the band (dB)."""
    level = _level(solver, driver)
    return -_least(lambda freq_hz: -level(freq_hz), grid(from_hz, to_hz))[1]


def slope_db_per_octave(solver: Solver, driver: str, from_hz: float, to_hz: float) -> float:
    """The mean slope between two frequencies: the difference in level over the octaves between."""
    low, high = _level(solver, driver)(np.array([from_hz, to_hz]))
    return float((high - low) / np.log2(to_hz / from_hz))


def local_slope_db_per_octave(solver: Solver, driver: str, freq_hz: float) -> float:
    """The slope at a frequency, from the exact derivative: d(20 lg |V|) / d(lb f) = 20 lg 2 Re(omega V'/V)."""
    ratio = omega_slope(solver.solve([freq_hz]), driver)
    return float(20 * np.log10(2) * 2 * np.pi * freq_hz * ratio.real[0])


def bare_resonances(solver: Solver, input_name: str, freq_hz: Real, values: Mapping[str, object]) -> tuple[float, ...]:
    """Frequencies (Hz) at which an input is shorted by a series resonance without any resistance.

    `freq_hz` (F,) is the grid on which changes of sign of the reactance are looked for, `values` are as in
    `Solver.solve`. A reactance rises through zero at a series resonance (R. M. Foster, A reactance theorem, Bell Syst.
    Tech. J. 3(2), 1924); there is no resistance if the least of it is below 1e-6 of the reactances that cancel.
    """

    def impedance(at: Real) -> Complex:
        with np.errstate(divide="ignore", invalid="ignore"):
            return np.asarray(1 / solver.solve(at, values=values, nodes=()).admittance(input_name).reshape(-1))

    rough = impedance(freq_hz)
    found = []
    for place in np.flatnonzero((rough.imag[:-1] < 0) & (rough.imag[1:] >= 0)):
        low, high = float(freq_hz[place]), float(freq_hz[place + 1])
        cancelling = max(abs(rough[place].imag), abs(rough[place + 1].imag)) * low / (high - low)
        if min(rough[place].real, rough[place + 1].real) > 1e-2 * cancelling:
            continue
        while high - low > RELATIVE_WIDTH * low:
            inside = np.geomspace(low, high, REFINEMENT)
            rises = np.flatnonzero(~(impedance(inside[1:-1]).imag < 0))
            last = int(rises[0]) + 1 if rises.size else inside.size - 1
            low, high = float(inside[last - 1]), float(inside[last])
        resonance = (low + high) / 2
        beside = impedance(np.array([resonance * (1 - 1e-6), resonance * (1 + 1e-6)]))
        if not np.abs(beside.real).max() > 1e-6 * cancelling:
            found.append(resonance)
    return tuple(found)


def least_impedance(solver: Solver, input_name: str, from_hz: float, to_hz: float) -> Least:
    """The least magnitude of an input impedance in the band; the ends of the band count."""

    def magnitude(freq_hz: Real) -> Real:
        return 1 / np.abs(solver.solve(freq_hz).admittance(input_name))

    freq, ohm = _least(magnitude, grid(from_hz, to_hz))
    return Least(ohm, freq)


def _level(solver: Solver, driver: str) -> Curve:
    def level(freq_hz: Real) -> Real:
        with np.errstate(divide="ignore"):
            return cast(Real, 20 * np.log10(np.abs(solver.solve(freq_hz).driver_voltage(driver))))

    return level


def _zeros(curve: Curve, freq_hz: Real) -> list[float]:
    """Where a curve changes sign, each bracket narrowed until a straight line is as good as the curve."""
    sign = np.sign(curve(freq_hz))
    signed = np.nonzero(np.isfinite(sign) & (sign != 0))[0]
    found = []
    for before, after in pairwise(signed):
        if sign[before] == sign[after]:
            continue
        low, high = float(freq_hz[before]), float(freq_hz[after])
        while high - low > RELATIVE_WIDTH * low:
            inside = np.geomspace(low, high, REFINEMENT)
            values = curve(inside)
            changed = np.nonzero(np.sign(values[1:]) != np.sign(values[0]))[0]
            if not changed.size:  # the sign at an end was rounding: the zero is there
                break
            low, high = float(inside[changed[0]]), float(inside[changed[0] + 1])
        found.append((low + high) / 2)
    return found


def _least(curve: Curve, freq_hz: Real) -> tuple[float, float]:
    """Where a curve is least on the grid, refined between its neighbours, and how much it is there.

    A minimum is flat: its value is good to rounding long before its place is, which is good to about 1e-7.
    """
    while True:
        values = curve(freq_hz)
        at = int(np.argmin(values))
        low, high = float(freq_hz[max(at - 1, 0)]), float(freq_hz[min(at + 1, freq_hz.size - 1)])
        if high - low <= 1e-8 * low:
            return float(freq_hz[at]), float(values[at])
        freq_hz = np.geomspace(low, high, REFINEMENT)
