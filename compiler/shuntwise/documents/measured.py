"""Solver -> the figures that documents print: crossings, corners, slopes, least impedance, what each part bears.

In: a compiled network and a band. Out: a `Measured`, numbers only. Every figure comes from `response.measures`; here
is decided which of them a reader wants to see. It refuses to judge them, and writes no text.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations
from types import MappingProxyType

import numpy as np
import numpy.typing as npt

from shuntwise.response.measures import (
    FLOOR_DB,
    corners,
    crossings,
    grid,
    least_impedance,
    level_db,
    local_slope_db_per_octave,
    peak_db,
)
from shuntwise.response.solve import Response, Solver
from shuntwise.response.stress import greatest

Real = npt.NDArray[np.float64]

ALIKE_DB = 0.01
"""Drivers whose levels differ by less than this all over the band are fed alike; so little is no crossing."""


@dataclass(frozen=True)
class PassBand:
    """Where a driver's level is within some dB of its highest: outermost edges in Hz, None where the band ends first.

    `dips` says that the level drops out of it in between.
    """

    low_hz: float | None
    high_hz: float | None
    dips: bool


@dataclass(frozen=True)
class DriverFigures:
    """`peak_db` is the highest level in the band over 1 V at the inputs, minus infinity for a driver that is not fed.

    Slopes are those one octave beyond the -6 dB edges, in dB per octave; None where there is no such edge.
    """

    name: str
    peak_db: float
    within_3_db: PassBand
    within_6_db: PassBand
    low_slope: float | None
    high_slope: float | None


@dataclass(frozen=True)
class CrossingFigures:
    """Where two drivers are equally loud and no third is louder. Drivers fed alike count as one: `first` and
    `second` are groups. `heard_hz` is where they are equally loud with their sensitivities, if both state one."""

    first: tuple[str, ...]
    second: tuple[str, ...]
    freq_hz: float
    level_db: float
    heard_hz: float | None = None


@dataclass(frozen=True)
class LeastFigures:
    """The least modulus of an input's impedance in the band (ohm), and where; infinite if no current flows in."""

    input: str
    ohm: float
    freq_hz: float


@dataclass(frozen=True)
class Share:
    """What a part (or a driver, or a section of a tapped coil) bears for 1 V r.m.s. at every input.

    Each is the greatest over the band, V and A r.m.s., W; `hottest_hz` is where the heat is greatest, None if
    there is none.
    """

    label: str
    volt: float
    ampere: float
    watt: float
    hottest_hz: float | None


@dataclass(frozen=True)
class Measured:
    from_hz: float
    to_hz: float
    drivers: tuple[DriverFigures, ...]
    crossings: tuple[CrossingFigures, ...]
    least: tuple[LeastFigures, ...]
    shares: tuple[Share, ...]


def measure(
    solver: Solver,
    from_hz: float = 20.0,
    to_hz: float = 20_000.0,
    sensitivity_db: Mapping[str, float] = MappingProxyType({}),
) -> Measured:
    """All figures of a network in a band; `sensitivity_db` of the drivers that state one. Raises SingularNetwork."""
    network = solver.network
    response = solver.solve(grid(from_hz, to_hz))
    with np.errstate(divide="ignore", invalid="ignore"):
        return Measured(
            from_hz,
            to_hz,
            tuple(_driver(solver, driver.name, from_hz, to_hz) for driver in network.drivers),
            tuple(_crossings(solver, response, from_hz, to_hz, sensitivity_db)),
            tuple(_least(solver, feed.name, from_hz, to_hz) for feed in network.feeds),
            tuple(_share(response, branch.label) for branch in network.branches),
        )


def _driver(solver: Solver, name: str, from_hz: float, to_hz: float) -> DriverFigures:
    peak = peak_db(solver, name, from_hz, to_hz)
    if not peak >= FLOOR_DB:
        nothing = PassBand(None, None, False)
        return DriverFigures(name, peak, nothing, nothing, None, None)
    three, six = (_pass_band(solver, name, peak, drop, from_hz, to_hz) for drop in (3.0, 6.0))
    low = None if six.low_hz is None else local_slope_db_per_octave(solver, name, six.low_hz / 2)
    high = None if six.high_hz is None else local_slope_db_per_octave(solver, name, six.high_hz * 2)
    return DriverFigures(name, peak, three, six, low, high)


def _pass_band(solver: Solver, name: str, peak: float, drop: float, from_hz: float, to_hz: float) -> PassBand:
    found = list(corners(solver, name, drop, from_hz, to_hz, peak))
    low = found.pop(0) if found and level_db(solver, name, from_hz) < peak - drop else None
    high = found.pop() if found and level_db(solver, name, to_hz) < peak - drop else None
    return PassBand(low, high, dips=bool(found))


def _crossings(
    solver: Solver, response: Response, from_hz: float, to_hz: float, sensitivity_db: Mapping[str, float]
) -> list[CrossingFigures]:
    levels = {d.name: 20 * np.log10(np.abs(response.driver_voltage(d.name))) for d in solver.network.drivers}
    groups = _fed_alike(levels)
    found = []
    for first, second in combinations(groups, 2):
        for crossing in crossings(solver, first[0], second[0], from_hz, to_hz):
            freq, level = crossing.freq_hz, crossing.level_db
            others = [group[0] for group in groups if group not in (first, second)]
            hidden = any(level_db(solver, other, freq) > level for other in others)
            if not hidden and _parts_ways(solver, first[0], second[0], freq):
                heard = _heard(solver, first[0], second[0], freq, from_hz, to_hz, sensitivity_db)
                found.append(CrossingFigures(first, second, freq, level, heard))
    return sorted(found, key=lambda crossing: crossing.freq_hz)


def _heard(
    solver: Solver,
    first: str,
    second: str,
    near_hz: float,
    from_hz: float,
    to_hz: float,
    sensitivity_db: Mapping[str, float],
) -> float | None:
    """The crossing with the sensitivities counted in that is nearest to the one by voltage."""
    if first not in sensitivity_db or second not in sensitivity_db:
        return None
    louder_db = sensitivity_db[first] - sensitivity_db[second]
    found = [crossing.freq_hz for crossing in crossings(solver, first, second, from_hz, to_hz, louder_db)]
    return min(found, key=lambda freq_hz: abs(np.log(freq_hz / near_hz)), default=None)


def _fed_alike(levels: dict[str, Real]) -> list[tuple[str, ...]]:
    """Drivers in groups of equal level, those that are fed nothing left out."""
    groups: list[tuple[str, ...]] = []
    for name, level in levels.items():
        if not np.isfinite(level).any():
            continue
        for place, group in enumerate(groups):
            if np.nanmax(np.abs(levels[group[0]] - level)) < ALIKE_DB:
                groups[place] = (*group, name)
                break
        else:
            groups.append((name,))
    return groups


def _parts_ways(solver: Solver, first: str, second: str, freq_hz: float) -> bool:
    """Do the levels differ a twelfth of an octave away? If not, the two run together and rounding made them cross."""
    sides = (freq_hz * 2 ** (-1 / 12), freq_hz * 2 ** (1 / 12))
    return all(abs(level_db(solver, first, f) - level_db(solver, second, f)) > ALIKE_DB for f in sides)


def _least(solver: Solver, name: str, from_hz: float, to_hz: float) -> LeastFigures:
    least = least_impedance(solver, name, from_hz, to_hz)
    return LeastFigures(name, least.ohm, least.freq_hz)


def _share(response: Response, label: str) -> Share:
    heat = response.dissipation(label)
    volt, ampere = (float(greatest(np.abs(of(label)))) for of in (response.branch_voltage, response.current))
    watt = float(greatest(np.sqrt(heat)) ** 2)
    return Share(label, volt, ampere, watt, float(response.freq_hz[heat.argmax()]) if watt > 0 else None)


def group_name(group: Sequence[str]) -> str:
    """Drivers fed alike, as one: `woofer1/woofer2`."""
    return "/".join(group)
