"""Which figures every builder asks for, whether a design expects them or not.

In: one circuit and its drivers. Out: figures with their numbers, those that documents print and that random builds are
judged by. Each is one that an `expect` line can state, at frequencies of as many digits as are printed. It refuses to
judge them, and writes no text.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations
from math import isfinite

from shuntwise.figures.figure import Corner, Crossing, Figure, Impedance, Level, Slope, louder_db
from shuntwise.figures.nominal import HIGHEST_HZ, LOWEST_HZ, Nominal
from shuntwise.model.design import Driver
from shuntwise.response.measures import FLOOR_DB, greatest_level

ALIKE_DB = 0.01
"""Drivers whose levels differ by less than this all over the band are fed alike, and cross nowhere."""

DOWN_DB = (3.0, 6.0)
"""How far down the corners are that are printed: half the power, and where the trade reads corners."""

DIGITS = 3
"""Of a frequency at which a figure is taken."""


@dataclass(frozen=True)
class Said:
    """A figure and its number."""

    figure: Figure
    value: float


@dataclass(frozen=True)
class Corners:
    """Where a driver's band begins and ends, `below_db` down; None where it goes on. `dips` tells of a gap in it."""

    below_db: float
    begins: Said | None
    ends: Said | None
    dips: bool


@dataclass(frozen=True)
class DriverFigures:
    """`level` is that in the middle of the band, `greatest` the highest; both None for a driver that gets nothing.

    `slopes` are those beyond the corners, outwards: over the second octave, or the first if the second is not looked
    at.
    """

    name: str
    level: Said | None = None
    greatest: Said | None = None
    corners: tuple[Corners, ...] = ()
    slopes: tuple[Said, ...] = ()


@dataclass(frozen=True)
class CrossingFigures:
    """Where two drivers are equally loud and no third is louder.

    Drivers fed alike count as one: `first` and `second` are groups. `levels` are those of both at the frequency as it
    is printed: they differ by the sensitivities, if both state one, and a little where curves are steep.
    """

    first: tuple[str, ...]
    second: tuple[str, ...]
    crossing: Said
    levels: tuple[Said, Said]

    @property
    def freq_hz(self) -> float:
        return self.crossing.value

    @property
    def by_sensitivity(self) -> bool:
        return isinstance(self.crossing.figure, Crossing) and self.crossing.figure.louder_db != 0


@dataclass(frozen=True)
class LeastFigures:
    """The least impedance of an input (infinite if no current flows in), and where it is (Hz)."""

    input: str
    impedance: Said
    freq_hz: float


@dataclass(frozen=True)
class Usual:
    """The figures of one circuit. Impedances are looked for from `from_hz` to `to_hz`, and crossings printed there."""

    from_hz: float
    to_hz: float
    drivers: tuple[DriverFigures, ...]
    crossings: tuple[CrossingFigures, ...]
    least: tuple[LeastFigures, ...]

    @property
    def of_builds(self) -> tuple[Figure, ...]:
        """Those by which random builds are judged: crossings, the level of every driver, least impedances."""
        levels = (driver.level.figure for driver in self.drivers if driver.level is not None)
        return (
            *(crossing.crossing.figure for crossing in self.crossings),
            *levels,
            *(least.impedance.figure for least in self.least),
        )


def usual(
    circuit: Nominal, drivers: Mapping[str, Driver], from_hz: float = LOWEST_HZ, to_hz: float = HIGHEST_HZ
) -> Usual:
    """The figures of a circuit. Raises SingularNetwork."""
    network = circuit.solver.network
    return Usual(
        from_hz,
        to_hz,
        tuple(_driver(circuit, driver.name) for driver in network.drivers),
        tuple(c for c in _crossings(circuit, drivers) if from_hz <= c.freq_hz <= to_hz),
        tuple(_least(circuit, feed.name, from_hz, to_hz) for feed in network.feeds),
    )


def told_hz(freq_hz: float) -> float:
    """A frequency as it is printed: a figure that is told at it is taken at it."""
    return float(f"{freq_hz:.{DIGITS}g}")


def _say(circuit: Nominal, figure: Figure) -> Said:
    return Said(figure, figure.nominal(circuit))


def _driver(circuit: Nominal, name: str) -> DriverFigures:
    top_hz, top_db = greatest_level(circuit.solver, name, LOWEST_HZ, HIGHEST_HZ)
    if top_db <= FLOOR_DB:
        return DriverFigures(name)
    band = circuit.band(name)
    middle_hz = told_hz((band.from_hz * band.to_hz) ** 0.5)
    corners = tuple(_corners(circuit, name, down) for down in DOWN_DB)
    outer = corners[-1]
    slopes = [_slope(circuit, name, outer.begins.value, -1)] if outer.begins else []
    slopes += [_slope(circuit, name, outer.ends.value, 1)] if outer.ends else []
    return DriverFigures(
        name,
        _say(circuit, Level((name,), middle_hz)),
        _say(circuit, Level((name,), told_hz(top_hz))),
        corners,
        tuple(slope for slope in slopes if slope is not None),
    )


def _corners(circuit: Nominal, name: str, down_db: float) -> Corners:
    begins, ends, dips = circuit.edges(name, down_db)
    said = [None if freq is None else Said(Corner((name,), freq, down_db), freq) for freq in (begins, ends)]
    return Corners(down_db, said[0], said[1], dips)


def _slope(circuit: Nominal, name: str, corner_hz: float, outwards: int) -> Said | None:
    for octaves in (1, 0):
        near, far = (told_hz(corner_hz * 2.0 ** (outwards * (octaves + step))) for step in (0, 1))
        if LOWEST_HZ <= far <= HIGHEST_HZ:
            return _say(circuit, Slope((name,), min(near, far), max(near, far)))
    return None


def _crossings(circuit: Nominal, drivers: Mapping[str, Driver]) -> list[CrossingFigures]:
    groups = _fed_alike(circuit, drivers)
    found = []
    for first, second in combinations(groups, 2):
        louder = louder_db(drivers, first[0], second[0])
        for freq in circuit.crossings(first[0], second[0], louder):
            others = [group[0] for group in groups if group not in (first, second)]
            if not _heard(circuit, drivers, first[0], others, freq):
                continue
            if not _parts_ways(circuit, first[0], second[0], louder, freq):
                continue
            levels = [_say(circuit, Level((name,), told_hz(freq))) for name in (first[0], second[0])]
            crossing = Said(Crossing((first[0], second[0]), freq, louder), freq)
            found.append(CrossingFigures(first, second, crossing, (levels[0], levels[1])))
    return sorted(found, key=lambda crossing: crossing.freq_hz)


def _heard(circuit: Nominal, drivers: Mapping[str, Driver], first: str, others: Sequence[str], freq_hz: float) -> bool:
    """Is no third driver louder than the two that cross, and do they get anything at all?"""
    level = circuit.level_db(first, freq_hz)
    louder = (circuit.level_db(other, freq_hz) + louder_db(drivers, other, first) for other in others)
    return level > FLOOR_DB and all(other <= level for other in louder)


def _fed_alike(circuit: Nominal, drivers: Mapping[str, Driver]) -> list[tuple[str, ...]]:
    """Drivers in groups of equal level and sensitivity, those that are fed nothing left out."""
    groups: list[tuple[str, ...]] = []
    for driver in circuit.solver.network.drivers:
        level = circuit.levels_db(driver.name)
        if level.max() <= FLOOR_DB:
            continue
        for place, group in enumerate(groups):
            alike = abs(circuit.levels_db(group[0]) - level).max() < ALIKE_DB
            if alike and louder_db(drivers, group[0], driver.name) == 0:
                groups[place] = (*group, driver.name)
                break
        else:
            groups.append((driver.name,))
    return groups


def _parts_ways(circuit: Nominal, first: str, second: str, louder: float, freq_hz: float) -> bool:
    """Do the levels differ a twelfth of an octave away? If not, the two run together and rounding made them cross."""
    sides = (freq_hz * 2 ** (-1 / 12), freq_hz * 2 ** (1 / 12))
    return all(abs(circuit.level_db(first, f) + louder - circuit.level_db(second, f)) > ALIKE_DB for f in sides)


def _least(circuit: Nominal, feed: str, from_hz: float, to_hz: float) -> LeastFigures:
    figure = Impedance((feed,), from_hz, to_hz)
    place = figure.place(circuit)
    return LeastFigures(feed, Said(figure, place.ohm), place.freq_hz)


def group_name(group: Sequence[str]) -> str:
    """Drivers fed alike, as one: `woofer1/woofer2`."""
    return "/".join(group)


def plain(figures: Usual) -> dict[str, object]:
    """The figures as numbers and texts, for JSON; what is infinite is None."""
    return {
        "from_hz": figures.from_hz,
        "to_hz": figures.to_hz,
        "drivers": [_plain_driver(driver) for driver in figures.drivers],
        "crossings": [
            {
                "first": one.first,
                "second": one.second,
                "freq_hz": one.freq_hz,
                "by_sensitivity": one.by_sensitivity,
                "levels": [_plain(level) for level in one.levels],
            }
            for one in figures.crossings
        ],
        "least": [
            {
                "input": least.input,
                "ohm": least.impedance.value if isfinite(least.impedance.value) else None,
                "freq_hz": least.freq_hz,
            }
            for least in figures.least
        ],
    }


def _plain_driver(driver: DriverFigures) -> dict[str, object]:
    corners = [
        {
            "below_db": corners.below_db,
            "begins_hz": corners.begins.value if corners.begins else None,
            "ends_hz": corners.ends.value if corners.ends else None,
            "dips": corners.dips,
        }
        for corners in driver.corners
    ]
    return {
        "name": driver.name,
        "level": _plain(driver.level),
        "greatest": _plain(driver.greatest),
        "corners": corners,
        "slopes": [_plain(slope) for slope in driver.slopes],
    }


def _plain(said: Said | None) -> dict[str, float] | None:
    match said:
        case Said(Level(at_hz=at), value):
            return {"db": value, "at_hz": at}
        case Said(Slope(from_hz=low, to_hz=high), value):
            return {"db_per_octave": value, "from_hz": low, "to_hz": high}
    return None
