"""Design and network -> how builds of it differ: bands, worst corners, yield, and which part matters.

In: a design, its network, how many builds, a seed. Out: a `Spread`, numbers only. It refuses to judge them and to
write a text.

Bands are order statistics: the q % value of n builds is the least that at least q % of the builds do not exceed. They
commute with every rising function, so squared voltages can be ranked and the seven results turned into levels.

Worst corners: every part at one end of its tolerance. With ALL_CORNERS parts or fewer all corners are solved; with
more, those that the first-order sensitivities point at: of each figure, and of each level and impedance at every
frequency of the grid. What a random build exceeds counts too.

Memory: curves take at most about ROOM bytes, and half as much again while they are ranked. What does not fit is solved
twice: builds some at a time for the figures, frequencies some at a time for the bands. Offsets and values take 16 bytes
x builds x parts, figures 8 bytes x builds. A three-way of 14 parts peaks at 45 MB for 10,000 builds and at 170 MB for
MOST_BUILDS.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from shuntwise.figures.curves import Curves, Single, solve_curves, square_to_db, square_to_ohm
from shuntwise.figures.expected import Proof, proofs
from shuntwise.figures.figure import Figure
from shuntwise.figures.nominal import Nominal
from shuntwise.figures.usual import usual
from shuntwise.model.design import Design, Expectation
from shuntwise.network.network import Network
from shuntwise.response.peaks import sweep_to_draw
from shuntwise.response.solve import Solver
from shuntwise.tolerance.draws import (
    Distribution,
    Varying,
    VaryingPart,
    draw,
    element_values,
    standard_deviation,
    varying,
)
from shuntwise.tolerance.first_order import figure_effects, impedance_effects, level_effects
from shuntwise.tolerance.grid import grid

Real = npt.NDArray[np.float64]

PERCENT = (0, 5, 25, 50, 75, 95, 100)
"""The rows of every band: the least, five values between, the greatest."""

ALL_CORNERS = 10
"""With this many parts or fewer all corners are solved: 1024 at the most."""

MOST_BUILDS = 100_000

ROOM = 64 << 20
"""Bytes of curves that are held at a time (more only where one frequency of all builds takes more)."""

FIGURE_BUILDS = 2_000
"""Builds whose figures are worked out at a time, in double precision."""


Progress = Callable[[float], None]


class NothingVaries(Exception):
    """No part that carries current states a tolerance."""


@dataclass(frozen=True)
class Envelope:
    """A driver's level (dB) or an input's impedance (ohm) over frequency.

    `nominal` is (F,); `percentiles` (7, F), a row for each of PERCENT; `worst` (2, F): least and greatest found.
    """

    owner: str
    nominal: Real
    percentiles: Real
    worst: Real


@dataclass(frozen=True)
class Influence:
    """One part's part in a figure: the first-order change for its whole tolerance, and its share of the variance."""

    label: str
    effect: float
    share: float


@dataclass(frozen=True)
class FigureSpread:
    """How one figure differs from build to build, in the figure's unit.

    `percentiles` (7,) are of the builds that have such a number, `missing` counts those that have none; NaN where
    no build has. `worst` are the least and greatest found. `deviation` is the standard deviation to first order,
    `influences` the parts behind it, the greatest first.
    """

    figure: Figure
    nominal: float
    percentiles: tuple[float, ...]
    worst: tuple[float, float]
    missing: int
    deviation: float
    influences: tuple[Influence, ...]


@dataclass(frozen=True)
class Yield:
    """The share of builds that meet an `expect` line."""

    expectation: Expectation
    share: float


@dataclass(frozen=True)
class Spread:
    """How builds differ. `met` is the share of builds that meet all of `yields`, None if there are none.

    `corners` is the number of corners solved, `all_corners` whether those are all there are.
    """

    builds: int
    seed: int
    distribution: Distribution
    varying: Varying
    freq_hz: Real
    levels: tuple[Envelope, ...]
    impedances: tuple[Envelope, ...]
    figures: tuple[FigureSpread, ...]
    yields: tuple[Yield, ...]
    met: float | None
    corners: int
    all_corners: bool


def spread(
    design: Design,
    network: Network,
    *,
    builds: int = 10_000,
    seed: int = 1,
    distribution: Distribution = "uniform",
    progress: Progress | None = None,
    circuit: Nominal | None = None,
) -> Spread:
    """Solve `builds` random builds, from 1 to MOST_BUILDS, and the worst corners.

    `circuit` is the network's, if some of its figures are known already; `progress` is told again and again what share
    of the random builds is solved, 0 to 1. Raises NothingVaries, SingularNetwork, and ValueError for a number of builds
    out of range.
    """
    if not 1 <= builds <= MOST_BUILDS:
        raise ValueError(f"the number of builds goes from 1 to {MOST_BUILDS}")
    moving = varying(design, network)
    parts = moving.parts
    if not parts:
        raise NothingVaries
    circuit = circuit or Nominal(Solver(network))
    solver = circuit.solver
    proved = proofs(design, [feed.name for feed in network.feeds])
    wanted = _wanted(proved, usual(circuit, design.drivers).of_builds)
    freq = sweep_to_draw(solver, grid(wanted), sparing=True)
    nominal = solve_curves(solver, element_values(network, parts, np.zeros((len(parts), 1))), freq)
    effects = {figure: figure_effects(solver, parts, figure.terms(circuit)) for figure in wanted}
    every = len(parts) <= ALL_CORNERS
    offsets = _every_corner(len(parts)) if every else _corners(solver, parts, freq, list(effects.values()))
    corners = _Run(solver, element_values(network, parts, offsets), freq)
    values = element_values(network, parts, draw(parts, builds, seed, distribution))
    run = _Run(solver, values, freq, progress)

    found = run.figures(wanted)
    extremes = corners.figures(wanted)
    deviation = standard_deviation(distribution)
    spreads = tuple(
        _figure(f, f.nominal(circuit), found[f], extremes[f], effects[f] * deviation, effects[f], parts) for f in wanted
    )
    met = [proof.met(found) for proof in proved]
    levels, impedances = _bands(run, corners, nominal)
    return Spread(
        builds,
        seed,
        distribution,
        moving,
        freq,
        levels,
        impedances,
        spreads,
        tuple(Yield(proof.expectation, float(m.mean())) for proof, m in zip(proved, met, strict=True)),
        float(np.logical_and.reduce(met).mean()) if met else None,
        offsets.shape[1],
        every,
    )


def _wanted(proved: Sequence[Proof], usual: Sequence[Figure]) -> tuple[Figure, ...]:
    """The figures of the expectations, then those that every design is asked for, unless it expects the same itself."""
    expected = dict.fromkeys(wanted.figure for proof in proved for wanted in proof.wanted)
    asked = {(type(figure), figure.subjects) for figure in expected}
    return (*expected, *(figure for figure in usual if (type(figure), figure.subjects) not in asked))


class _Run:
    """Many builds, solved in pieces that fit."""

    def __init__(
        self, solver: Solver, values: Mapping[str, Real], freq_hz: Real, progress: Progress | None = None
    ) -> None:
        self.solver, self.values, self.freq_hz, self.progress = solver, values, freq_hz, progress
        self.builds = next(iter(values.values())).size
        numbers = len(solver.network.drivers) + len(solver.network.feeds)
        self.build_step = max(1, ROOM // (4 * numbers * freq_hz.size))
        self.freq_step = max(1, ROOM // (4 * numbers * self.builds))
        fits = self.build_step >= self.builds
        self.done, self.points = 0, self.builds * freq_hz.size * (1 if fits else 2)
        self.whole = self._solve(slice(None), slice(None)) if fits else None

    def _solve(self, builds: slice, freq: slice) -> Curves:
        some = {name: value[builds] for name, value in self.values.items()}
        return solve_curves(self.solver, some, self.freq_hz[freq], self._tick)

    def _tick(self, points: int) -> None:
        self.done += points
        if self.progress is not None:
            self.progress(self.done / self.points)

    def figures(self, wanted: Sequence[Figure]) -> dict[Figure, Real]:
        """Every figure of every build, (builds,)."""
        result = {figure: np.empty(self.builds) for figure in wanted}
        for first in range(0, self.builds, self.build_step):
            outer = slice(first, min(first + self.build_step, self.builds))
            curves = self.whole or self._solve(outer, slice(None))
            for start in range(outer.start, outer.stop, FIGURE_BUILDS):
                inner = slice(start, min(start + FIGURE_BUILDS, outer.stop))
                some = curves.builds(slice(inner.start - first, inner.stop - first))
                for figure in wanted:
                    result[figure][inner] = figure.of(some)
        return result

    def percentiles(self, rows: Sequence[int]) -> Curves:
        """The ranked squares at some percentages, (F, rows) in place of (F, builds)."""
        ranks = [max(0, -(-row * self.builds // 100) - 1) for row in rows]
        pieces = []
        for first in range(0, self.freq_hz.size, self.freq_step):
            curves = self.whole or self._solve(slice(None), slice(first, first + self.freq_step))
            pieces.append(
                [
                    {name: np.sort(square, axis=1)[:, ranks] for name, square in squares.items()}
                    for squares in (curves.voltage_square, curves.admittance_square)
                ]
            )
            if self.whole is not None:
                break
        joined = [{name: np.concatenate([piece[i][name] for piece in pieces]) for name in pieces[0][i]} for i in (0, 1)]
        return Curves(self.freq_hz, joined[0], joined[1])


def _every_corner(parts: int) -> Real:
    """All combinations of signs, (parts, 2 ** parts)."""
    return np.asarray(1.0 - 2.0 * ((np.arange(2**parts) >> np.arange(parts)[:, None]) & 1))


def _corners(solver: Solver, parts: Sequence[VaryingPart], freq_hz: Real, effects: Sequence[Real]) -> Real:
    """The signs of every sensitivity and their opposites, each once, (parts, corners)."""
    columns = [np.stack(effects, axis=1)] if effects else []
    columns += [level_effects(solver, parts, driver.name, freq_hz) for driver in solver.network.drivers]
    columns += [impedance_effects(solver, parts, feed.name, freq_hz) for feed in solver.network.feeds]
    signs = np.where(np.concatenate(columns, axis=1) < 0, -1.0, 1.0)
    return np.unique(np.concatenate((signs, -signs), axis=1), axis=1)


def _figure(
    figure: Figure,
    nominal: float,
    values: Real,
    corners: Real,
    deviations: Real,
    effects: Real,
    parts: Sequence[VaryingPart],
) -> FigureSpread:
    there = np.sort(values[~np.isnan(values)])
    ranks = [max(0, -(-row * there.size // 100) - 1) for row in PERCENT]
    extremes = [*there[:1], *there[-1:], *corners[~np.isnan(corners)]]
    variance = float((deviations**2).sum())
    influences = [
        Influence(part.label, float(effect), float(own**2) / variance if variance > 0 else 0.0)
        for part, effect, own in zip(parts, effects, deviations, strict=True)
    ]
    return FigureSpread(
        figure,
        nominal,
        tuple(float(there[rank]) if there.size else float("nan") for rank in ranks),
        (float(min(extremes)), float(max(extremes))) if extremes else (float("nan"), float("nan")),
        int(values.size - there.size),
        float(np.sqrt(variance)),
        tuple(sorted(influences, key=lambda influence: (-influence.share, influence.label))),
    )


def _bands(run: _Run, corners: _Run, nominal: Curves) -> tuple[tuple[Envelope, ...], tuple[Envelope, ...]]:
    ranked, ends = run.percentiles(PERCENT), corners.percentiles((0, 100))

    def band(owner: str, squares: Sequence[Single]) -> tuple[Single, Single, Single]:
        middle, random, corner = squares
        low = np.minimum(random[:, 0], corner[:, 0])
        high = np.maximum(random[:, -1], corner[:, -1])
        return middle[:, 0], random.T, np.stack((low, high))

    levels, impedances = [], []
    for owner in nominal.voltage_square:
        middle, random, worst = band(owner, [c.voltage_square[owner] for c in (nominal, ranked, ends)])
        levels.append(Envelope(owner, square_to_db(middle), square_to_db(random), square_to_db(worst)))
    for owner in nominal.admittance_square:
        middle, random, worst = band(owner, [c.admittance_square[owner] for c in (nominal, ranked, ends)])
        # The greatest admittance is the least impedance.
        impedances.append(
            Envelope(owner, square_to_ohm(middle), square_to_ohm(random[::-1]), square_to_ohm(worst[::-1]))
        )
    return tuple(levels), tuple(impedances)
