"""A fault finder of the plainest kind, by which the harness itself is tested: the nearest mean of a handful of boards.

It knows only the faults that need no thought, and reads by a fixed sheet. Nothing of it is the project's.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations
from statistics import fmean

import numpy as np

from faultfinding.boards import COILS, Errors, Plan
from faultfinding.cases import logarithm, made, read
from shuntwise.bench.faults import Fault
from shuntwise.bench.verdict import BenchSheet, Proposal, SheetLine, Suspected, Verdict
from shuntwise.graph.circuit import Circuit
from shuntwise.model.box import DRIVERS_OFF, DUMMIES_ON, OPEN, Instruments, Reading, Taken

BOARDS = 6
SOUND_WEIGHT = 1000.0
FIRST_HZ = (600.0, 3000.0, 1500.0, 6000.0)


class NearestMean:
    """By the interface of `method.Method`."""

    def __init__(self, circuit: Circuit, instruments: Instruments) -> None:
        self.plan, self.instruments = Plan(circuit), instruments
        self.faults = tuple(_faults(self.plan))
        self.points = tuple(circuit.net_of)
        self._readings = _readings(self.plan)
        boards = [
            (
                made(self.plan, [fault] if fault else [], f"stand-in {fault} {number}", Errors(), instruments),
                self._readings,
            )
            for fault in (None, *self.faults)
            for number in range(BOARDS)
        ]
        values = [[one.value for one in taken] for taken in read(self.plan, boards, instruments)]
        logs = np.array([[logarithm(Taken(r, v)) for r, v in zip(self._readings, row, strict=True)] for row in values])
        groups = logs.reshape(len(self.faults) + 1, BOARDS, len(self._readings))
        self._means = groups.mean(axis=1)
        self._spread = np.sqrt(np.mean(groups.var(axis=1, ddof=1), axis=0)) + 0.02
        self._sound = values[:BOARDS]

    def sheet(self) -> BenchSheet:
        lines = []
        for place, reading in enumerate(self._readings):
            column = [row[place] for row in self._sound]
            middle = fmean(column) if OPEN not in column else OPEN
            lines.append(SheetLine(reading, middle, middle * 0.8, middle * 1.2))
        return BenchSheet(tuple(lines), 4, 0.99, 2.0, 0.4, 0.4, 0.2, 0.4)

    def judge(self, taken: Sequence[Taken]) -> Verdict:
        columns = [self._readings.index(one.reading) for one in taken]
        seen = np.array([logarithm(one) for one in taken])
        squares = np.square((self._means[:, columns] - seen) / self._spread[columns]).sum(axis=1)
        shares = np.exp(-0.5 * (squares - squares.min()))
        shares[0] *= SOUND_WEIGHT
        shares /= shares.sum()
        order = sorted(range(1, len(shares)), key=lambda place: -shares[place])[:3]
        suspects = tuple(Suspected(self.faults[place - 1], "", float(shares[place])) for place in order)
        if shares[0] > 0.5:
            return Verdict("passed" if len(taken) >= len(self._readings) else "good so far", float(shares[0]), suspects)
        far = squares.min() > 25 + 5 * len(columns)
        return Verdict("no single fault" if far else "fault", float(shares[0]), suspects)

    def propose(self, taken: Sequence[Taken]) -> Proposal | None:
        done = {one.reading for one in taken}
        return next((Proposal(line, ()) for line in self.sheet().lines if line.reading not in done), None)


def _readings(plan: Plan) -> list[Reading]:
    """Direct current from the input to each driver and across it, then volts at each driver and at the inputs."""
    found = []
    for feed in plan.feeds:
        for name in plan.drivers:
            found.append(Reading("resistance", f"{feed}+", f"{name}+", DRIVERS_OFF))
    for name in plan.drivers:
        found.append(Reading("resistance", f"{name}+", f"{name}-", DRIVERS_OFF))
    for feed in plan.feeds:
        for freq_hz in FIRST_HZ:
            for place in (feed, *plan.drivers):
                found.append(Reading("volts", f"{place}+", f"{place}-", DUMMIES_ON, freq_hz, feed))
    return found[:12]


def _faults(plan: Plan) -> Iterator[Fault]:
    for label, part in plan.parts.items():
        terminals = [point for edge in plan.circuit.edges_of(label) for point in edge.points]
        yield Fault("open", (label,)) if len(terminals) == 2 else Fault("open", (label,), (terminals[0],))
        yield Fault("short", (label,), (terminals[0], terminals[-1]))
        yield from (Fault("value", (label,), size=size) for size in ((0.2, 0.5), (0.5, 0.8), (1.25, 2.0), (2.0, 5.0)))
        yield Fault("joint", (label,), (terminals[0],), size=(0.5, 20.0))
        yield Fault("doubled", (label,))
        if part.kind in COILS:
            yield Fault("turns", (label,), size=(0.2, 0.8))
        if "core" in (part.construction or ""):
            yield Fault("core", (label,), size=(0.4, 0.7))
        if "electrolytic" in (part.construction or ""):
            yield Fault("dried", (label,), size=(0.2, 0.6))
    for one, other in combinations(plan.parts.values(), 2):
        if one.kind == other.kind:
            yield Fault("exchanged", (one.label, other.label))
    for net, other_net in combinations(plan.circuit.nets.values(), 2):
        if net.attachments and other_net.attachments:
            yield Fault("bridge", (), (net.attachments[0].point, other_net.attachments[0].point))
    for label, part in plan.all_parts.items():
        if part.kind == "link":
            yield Fault("link", (label,), (f"{label}.start", f"{label}.end"))
    yield from (Fault("reversed", (name,)) for name in plan.drivers)
    yield from (Fault("outputs", pair) for pair in combinations(plan.drivers, 2))
    yield from (Fault("dummies", size=size) for size in ((0.5, 0.8), (1.25, 2.0)))
