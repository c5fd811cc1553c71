"""What is made and judged: faults within a narrow range of sizes, and which of them are one and the same on a bench.

Two faults are one class if a quadratic discriminant cannot tell them apart: from boards of each, with the errors of
parts, drivers and meters, all readings of the sheet, as logarithms. It is trained on half of the boards and tells the
other half, then the reverse; below `APART` right they are one. Boards, sizes and readings are drawn here and solved by
ngspice, so that nothing of this rests on what is judged. Faults of one part that go in one direction are one class,
too: a low value by whatever factor, a dried capacitor, a shorted turn, two coils side by side.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from itertools import pairwise
from math import ceil, hypot, log
from random import Random

import numpy as np
from numpy.typing import NDArray

from faultfinding.boards import COILS, UNSTATED_TOLERANCE, Board, Errors, Plan, drawn_size, spoil
from faultfinding.decks import OPEN_FROM_OHM, shown, true_values
from shuntwise.bench.faults import Fault
from shuntwise.model.box import Instruments, Reading, Taken

APART = 0.75
"""The share of boards told right from which two faults are two. By chance it is 0.5; two equal normal distributions
reach it 1.35 standard deviations apart."""

SLICE = 2.0
"""A fault whose sizes span more is told apart slice by slice: no normal distribution fits a joint of 0.5 to 20 ohm."""

CLASS_BOARDS = 40
PRIOR_BOARDS = 10
"""Boards of each slice, and how many boards' weight the mean covariance of all slices has in each one's."""

LEAST_SPREAD = 0.01
"""Of a logarithm: what no reading falls below, such as of open circuits, which all show alike."""

ANY_VALUE = 10.0
TOLERANCED = (*COILS, "capacitor", "resistor")


@dataclass(frozen=True)
class Case:
    """A fault to be made, in a family: its own, or one of the harness's. None is a sound board."""

    family: str
    fault: Fault | None = None

    @property
    def slices(self) -> list[Case]:
        """The same within ranges of sizes of `SLICE` at the most."""
        if self.fault is None:
            return [self]
        low, high = self.fault.size
        many = max(1, ceil(log(high / low) / log(SLICE) - 1e-9)) if high > low else 1
        edges = [low * (high / low) ** (place / many) for place in range(many + 1)]
        return [replace(self, fault=replace(self.fault, size=pair)) for pair in pairwise(edges)]

    def at(self, size: float) -> Case:
        """The slice that has this size."""
        return next((case for case in self.slices if case.fault and size <= case.fault.size[1]), self.slices[-1])


SOUND = Case("sound")


def own_cases(plan: Plan) -> list[Case]:
    """Families that no list has: drift of 2 to 4 tolerances, and any value beyond that, up to ten times off."""
    cases = []
    for label, part in plan.parts.items():
        if part.kind in TOLERANCED:
            share = part.get("tolerance", UNSTATED_TOLERANCE)
            for family, sizes in (("drift", (1 + 2 * share, 1 + 4 * share)), ("any value", (1 + 4 * share, ANY_VALUE))):
                for size in (sizes, (1 / sizes[1], 1 / sizes[0])):
                    cases.append(Case(family, Fault("value", (label,), size=size)))
    return cases


def direction(plan: Plan, fault: Fault) -> object:
    """What faults of one class by name have in common: the owner and where its value goes. Of others, themselves."""
    low, high = fault.size
    down = low * high < 1
    if fault.family == "doubled":
        down = plan.parts[fault.owners[0]].kind != "capacitor"
    elif fault.family in ("dried", "turns"):
        down = True
    if fault.family in ("value", "core", "doubled", "dried", "turns"):
        return fault.owners, "low" if down else "high"
    if fault.family == "joint":
        (owner,), points = fault.owners, fault.points
        return fault.family, owner if owner in plan.parts and len(plan.circuit.edges_of(owner)) == 1 else points
    if fault.of_setup:
        return fault.family, fault.owners, down
    return replace(fault, size=(1.0, 1.0))


@dataclass
class Made:
    """A board on the bench with somebody who reads it: `sizes` are what was drawn for its faults."""

    board: Board
    draw: Random
    lead_ohm: float
    sizes: tuple[float, ...] = ()

    @property
    def size(self) -> float:
        """Of the first fault; 1 without any."""
        return self.sizes[0] if self.sizes else 1.0


def made(plan: Plan, faults: Iterable[Fault], seed: str, errors: Errors, instruments: Instruments) -> Made:
    """A board with these faults. The same seed gives the same board."""
    draw = Random(seed)
    board, sizes = plan.board(draw, errors, instruments.dummy_ohm), []
    for fault in faults:
        sizes.append(drawn_size(fault, draw))
        spoil(board, plan, fault, sizes[-1], draw, errors)
    return Made(board, draw, instruments.leads_ohm * draw.uniform(-1, 1), tuple(sizes))


def read(
    plan: Plan, boards: Sequence[tuple[Made, Sequence[Reading]]], instruments: Instruments
) -> list[tuple[Taken, ...]]:
    """What the meters show of the readings of each board."""
    true = true_values(plan, [(one.board, readings) for one, readings in boards], instruments)
    return [
        tuple(
            Taken(reading, shown(reading, value, one.lead_ohm, one.board.sag, instruments, one.draw))
            for reading, value in zip(readings, values, strict=True)
        )
        for (one, readings), values in zip(boards, true, strict=True)
    ]


def logarithm(taken: Taken) -> float:
    """ln(R + 0.5 ohm), an open circuit being as the most that the meter shows, or ln sqrt(V^2 + (3 mV)^2)."""
    if taken.reading.quantity == "resistance":
        return log(min(taken.value, OPEN_FROM_OHM) + 0.5)
    return log(hypot(taken.value, 0.003))


@dataclass(frozen=True)
class _Fit:
    """A normal distribution: its mean, what makes it white, and ln of the root of the determinant of its covariance."""

    mean: NDArray[np.float64]
    whitener: NDArray[np.float64]
    log_root: float

    def likelihood(self, points: NDArray[np.float64]) -> NDArray[np.float64]:
        """ln p + constant of points (n, d)."""
        return -0.5 * np.square((points - self.mean) @ self.whitener.T).sum(axis=1) - self.log_root


class Classes:
    """Which faults are one on a bench, by the readings of a sheet. `known` are those that the mean covariance is of.

    A pair's answer depends on these and on the seed, not on what is asked first.
    """

    def __init__(
        self,
        plan: Plan,
        readings: Sequence[Reading],
        instruments: Instruments,
        seed: str,
        known: Sequence[Case],
        boards: int = CLASS_BOARDS,
    ) -> None:
        self.plan, self.readings, self.instruments, self.seed, self.boards = plan, readings, instruments, seed, boards
        self._points: dict[Case, NDArray[np.float64]] = {}
        self._fits: dict[Case, tuple[_Fit, _Fit]] = {}
        self._same: dict[tuple[Case, Case], bool] = {}
        self._slices: dict[Fault, list[Case]] = {}
        slices = (replace(slice_, family="") for case in known for slice_ in case.slices)
        self.known = [*dict.fromkeys((SOUND, *slices))]
        self.draw_boards(self.known)
        scatters = [np.cov(self._points[case], rowvar=False) for case in self.known]
        self._mean_scatter = np.atleast_2d(np.mean(scatters, axis=0))

    def draw_boards(self, cases: Iterable[Case]) -> None:
        """Make and read boards of cases that there are none of yet, all in one go."""
        fresh = [case for case in dict.fromkeys(cases) if case not in self._points]
        boards = [
            (made(self.plan, [case.fault] if case.fault else [], f"{self.seed} class {case} {number}", Errors(),
                  self.instruments), self.readings)
            for case in fresh
            for number in range(self.boards)
        ]  # fmt: skip
        rows = np.array([[logarithm(one) for one in taken] for taken in read(self.plan, boards, self.instruments)])
        for place, case in enumerate(fresh):
            self._points[case] = rows[place * self.boards : (place + 1) * self.boards]

    def prepare(self, named: Iterable[tuple[Fault | None, Fault]]) -> None:
        """Boards of faults that will be asked for, each with what the board has, None if it is sound."""
        asked = dict.fromkeys(pair for pair in named if pair[0] is not None)
        self.draw_boards(
            case
            for true, fault in asked
            if true is not None and direction(self.plan, true) != direction(self.plan, fault)
            for case in self.slices(fault)
        )

    def slices(self, fault: Fault) -> list[Case]:
        if fault not in self._slices:
            self._slices[fault] = [replace(case, family="") for case in Case("", fault).slices]
        return self._slices[fault]

    def right(self, true: Case, size: float, named: Fault) -> bool:
        """Is a board with the fault `true` of that size explained by `named`?"""
        assert true.fault is not None
        if direction(self.plan, true.fault) == direction(self.plan, named):
            return True
        slice_ = replace(true.at(size), family="")
        self.draw_boards([slice_, *self.slices(named)])
        return any(self.same(slice_, other) for other in self.slices(named))

    def near_sound(self, case: Case, size: float) -> bool:
        """Is a board with a fault of that size one with a sound board?"""
        slice_ = replace(case.at(size), family="")
        self.draw_boards([slice_])
        return self.same(slice_, SOUND)

    def always_near(self, case: Case) -> bool:
        """Is it so at all sizes?"""
        return all(self.near_sound(case, slice_.fault.size[1]) for slice_ in case.slices if slice_.fault)

    def same(self, one: Case, other: Case) -> bool:
        key = (one, other) if str(one) <= str(other) else (other, one)
        if key not in self._same:
            self._same[key] = one == other or self._told(*key) < APART
        return self._same[key]

    def _told(self, one: Case, other: Case) -> float:
        """The share of held-out boards of two cases that a quadratic discriminant tells right."""
        right = []
        for half in (0, 1):
            fits = [self._fit(case)[half] for case in (one, other)]
            for place, case in enumerate((one, other)):
                held = self._points[case][1 - half :: 2]
                right.append(np.mean(fits[place].likelihood(held) > fits[1 - place].likelihood(held)))
        return float(np.mean(right))

    def _fit(self, case: Case) -> tuple[_Fit, _Fit]:
        if case not in self._fits:
            first, second = (self._normal(self._points[case][half::2]) for half in (0, 1))
            self._fits[case] = first, second
        return self._fits[case]

    def _normal(self, points: NDArray[np.float64]) -> _Fit:
        many, width = points.shape
        own = np.atleast_2d(np.cov(points, rowvar=False))
        scatter = (many * own + PRIOR_BOARDS * self._mean_scatter) / (many + PRIOR_BOARDS)
        root = np.linalg.cholesky(scatter + LEAST_SPREAD**2 * np.eye(width))
        return _Fit(points.mean(axis=0), np.linalg.inv(root), float(np.log(np.diag(root)).sum()))

    @cached_property
    def listed(self) -> list[tuple[Case, list[Case]]]:
        """The known cases that are not told from some other one, with these: written before anything is judged."""
        return [(one, [other for other in self.known if other != one and self.same(one, other)]) for one in self.known]
