"""What a builder asks of a response: where drivers cross, corners, slopes, the least impedance.

In: a `Solver`, a driver or input by name, and a band in Hz. Out: a few numbers. It refuses to know what the
numbers should have been; that is for expectations and checks.

Everything is found on a logarithmic lattice first and then refined by solving again inside the bracket that it
gave, so results do not depend on it, except that features narrower than its step can be missed.
Levels are dB relative to the 1 V at the input.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from shuntwise.response.sensitivity import omega_slope
from shuntwise.response.solve import Solver, beside_resonances
from shuntwise.response.tape import Complex, Real

POINTS_PER_DECADE = 200
"""Step of the first look: 1/60 octave."""

ANCHOR_HZ = 20.0
"""From here the lattice is counted."""

REFINEMENT = 33
"""Points by which a bracket is looked at again; each look narrows it 16 to 32 times."""

EVENLY = np.linspace(0.0, 1.0, 17)
AROUND = np.concatenate([sign * 4.0 ** -np.arange(2.0, 18.0) for sign in (-1, 1)])
"""Where in its bracket a zero is looked for: everywhere, and ever closer about the place at which the straight line
through its ends meets zero. The former narrows it 16 times, the latter to the square as soon as the curve is smooth
in it; as shares of its width."""

RELATIVE_WIDTH = 1e-10
"""Brackets are narrowed to this fraction of the frequency."""

FLOOR_DB = -200.0
"""No level is told below this: 0.1 nanovolt of 1 V is nothing to a builder, and the rounding of a balanced bridge."""

Curve = Callable[[Real], Real]
"""A real quantity at each of some frequencies (Hz)."""


@dataclass(frozen=True)
class Extreme:
    """The least or greatest magnitude of an impedance in a band (ohm), and where."""

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


def lattice(from_hz: float, to_hz: float) -> Real:
    """Where figures are looked for between two frequencies: both, and all of 20 Hz x 10^(k/200) between them.

    The points do not move with the ends, so a feature that is seen in a band is seen in every wider one.
    """
    first, last = (POINTS_PER_DECADE * np.log10(end / ANCHOR_HZ) for end in (from_hz, to_hz))
    inner = np.arange(np.floor(first + 1e-6) + 1, np.ceil(last - 1e-6))
    return np.concatenate(([from_hz], ANCHOR_HZ * 10 ** (inner / POINTS_PER_DECADE), [to_hz]))


def level_db(solver: Solver, driver: str, freq_hz: float) -> float:
    """The level of a driver at a frequency (dB), at least FLOOR_DB."""
    return float(_level(solver, driver)(np.array([freq_hz]))[0])


def crossings(
    solver: Solver, first: str, second: str, from_hz: float, to_hz: float, louder_db: float = 0.0
) -> tuple[float, ...]:
    """Every frequency (Hz) in the band where the two drivers are equally loud, rising, to about 1e-9 of itself.

    `louder_db` is by how much the first is louder at the same voltage. Where they touch or run together without one
    passing the other, there is no crossing.
    """
    gain = 10 ** (louder_db / 20)

    def difference(freq_hz: Real) -> Real:
        response = solver.solve(freq_hz)
        return gain * np.abs(response.driver_voltage(first)) - np.abs(response.driver_voltage(second))

    return tuple(_zeros(difference, lattice(from_hz, to_hz)))


def corners(
    solver: Solver, driver: str, below_db: float, from_hz: float, to_hz: float, reference_db: float
) -> tuple[float, ...]:
    """Every frequency (Hz) where a driver's level passes through `below_db` under the reference, rising order."""
    level, target = _level(solver, driver), reference_db - below_db
    return tuple(_zeros(lambda freq_hz: level(freq_hz) - target, lattice(from_hz, to_hz)))


def greatest_level(solver: Solver, driver: str, from_hz: float, to_hz: float) -> tuple[float, float]:
    """The frequency (Hz) at which a driver's level is greatest in the band, and the level there (dB)."""
    level = _level(solver, driver)
    freq_hz, least = least_on(lambda freq_hz: -level(freq_hz), lattice(from_hz, to_hz))
    return freq_hz, -least


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

    def solved(at: Real) -> Complex:
        with np.errstate(divide="ignore", invalid="ignore"):
            return np.asarray(1 / solver.solve(at, values=values, nodes=()).admittance(input_name).reshape(-1))

    def impedance(at: Real) -> Complex:
        return beside_resonances(solved, at)

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


def least_impedance(solver: Solver, input_name: str, from_hz: float, to_hz: float) -> Extreme:
    """The least magnitude of an input impedance in the band; the ends of the band count. Infinite without current."""

    def magnitude(freq_hz: Real) -> Real:
        with np.errstate(divide="ignore"):
            return 1 / np.abs(solver.solve(freq_hz).admittance(input_name))

    freq, ohm = least_on(magnitude, lattice(from_hz, to_hz))
    return Extreme(ohm, freq)


def greatest_impedance(solver: Solver, input_name: str, from_hz: float, to_hz: float) -> Extreme:
    """The greatest magnitude of an input impedance in the band, infinite where no current flows in."""

    def magnitude(freq_hz: Real) -> Real:
        return np.abs(solver.solve(freq_hz).admittance(input_name))

    freq, siemens = least_on(magnitude, lattice(from_hz, to_hz))
    return Extreme(1 / siemens if siemens else float("inf"), freq)


def decibel(voltage: Complex) -> Real:
    """The level of a voltage (dB re 1 V), at least FLOOR_DB: one that is zero has one too."""
    return np.asarray(20 * np.log10(np.maximum(np.abs(voltage), 10 ** (FLOOR_DB / 20))), np.float64)


def _level(solver: Solver, driver: str) -> Curve:
    return lambda freq_hz: decibel(solver.solve(freq_hz).driver_voltage(driver))


def _zeros(curve: Curve, freq_hz: Real) -> list[float]:
    """Where a curve changes sign, each bracket narrowed until a straight line is as good as the curve."""
    value = curve(freq_hz)
    sign = np.sign(value)
    signed = np.nonzero(np.isfinite(sign) & (sign != 0))[0]
    found = []
    for before, after in pairwise(signed):
        if sign[before] == sign[after]:
            continue
        low, high = float(freq_hz[before]), float(freq_hz[after])
        below, above = float(value[before]), float(value[after])
        while high - low > RELATIVE_WIDTH * low:
            fall = below - above
            guess = below / fall if np.isfinite(fall) and fall else 0.5
            shares = np.clip(np.concatenate((EVENLY, guess + AROUND)), 0.0, 1.0)
            inside = np.sort(low + (high - low) * shares)
            values = curve(inside)
            changed = np.nonzero(np.sign(values[1:]) != np.sign(values[0]))[0]
            if not changed.size:  # the sign at an end was rounding: the zero is there
                break
            at = int(changed[0])
            low, high = float(inside[at]), float(inside[at + 1])
            below, above = float(values[at]), float(values[at + 1])
        found.append((low + high) / 2)
    return found


def least_on(curve: Curve, freq_hz: Real, flat: float = 0.0) -> tuple[float, float]:
    """Where a curve is least on the grid, refined between its neighbours, and how much it is there.

    It is refined until what is left differs by less than the share `flat`. A minimum is flat: its value is good to
    rounding long before its place is, which is good to about 1e-7.
    """
    while True:
        values = curve(freq_hz)
        at = int(np.argmin(values))
        beside = [max(at - 1, 0), min(at + 1, freq_hz.size - 1)]
        low, high = (float(freq_hz[n]) for n in beside)
        if high - low <= 1e-8 * low or values[beside].max() < (1 + flat) * values[at]:
            return float(freq_hz[at]), float(values[at])
        freq_hz = np.geomspace(low, high, REFINEMENT)
