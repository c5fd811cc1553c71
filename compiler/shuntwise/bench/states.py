"""Many boards at once, each with something otherwise: arrays that the solver takes, and how a fault is put into a row.

In: a `Rig`, and for each row edits or random offsets. Out: `States`. Refuses to know what is read.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, fields

import numpy as np

from shuntwise.bench.rig import DRIVER_WAYS, WARMTH, Real, Rig, Whole

BRIDGE_OHM = 0.01
"""What joins two nodes that are not to be joined."""


@dataclass(frozen=True, eq=False)
class States:
    """Boards (N): the node of each point (N, P), what each branch is (N, B), and the set-up.

    `turn_k`, `turn_w`: the inductance is L (1 - k s/(s + w)). `spare` (N, 2, 2) are the nodes of two more resistors of
    `spare_ohm` (N, 2; infinite: none). `driver` and `dummy` (N, D) are factors of their impedance, `offsets` (N, D, 4)
    those of drivers by DRIVER_WAYS (None: as stated). `series`, `source` factors (N,), `droop` (N,) the share by which
    the meter reads too little at its highest frequency, `scatter` (N,) how much further than stated parts vary, and
    `warmth` (N, lamps) the share that lamps have of what a filament in a vacuum gains by its volts.
    """

    node_of: Whole
    ohm: Real
    henry: Real
    elastance: Real
    turn_k: Real
    turn_w: Real
    spare: Whole
    spare_ohm: Real
    driver: Real
    dummy: Real
    series: Real
    source: Real
    droop: Real
    scatter: Real
    warmth: Real
    offsets: Real | None = None

    def __len__(self) -> int:
        return len(self.node_of)

    def part(self, rows: slice | Whole) -> States:
        """Some of the boards."""
        chosen = {f.name: getattr(self, f.name)[rows] for f in fields(self) if f.name != "offsets"}
        return States(**chosen, offsets=None if self.offsets is None else self.offsets[rows])


@dataclass(eq=False)
class Row:
    """One board, while it is being put wrong: as a row of `States`."""

    rig: Rig
    node_of: Whole
    ohm: Real
    henry: Real
    elastance: Real
    turn_k: Real
    turn_w: Real
    spare: Whole
    spare_ohm: Real
    driver: Real
    dummy: Real
    warmth: Real
    series: float = 1.0
    source: float = 1.0
    droop: float = 0.0
    scatter: float = 1.0

    def first_spare(self) -> int:
        """A node that nothing lies on, for what is off; the second one if the first is taken."""
        free = len(self.rig.nodes)
        return free + 1 if free in self.node_of or free in self.spare else free

    def join(self, one: int, other: int, ohm: float) -> None:
        """Put a resistor between two nodes; there is room for two."""
        at = 0 if np.isinf(self.spare_ohm[0]) else 1
        self.spare[at], self.spare_ohm[at] = (one, other), ohm


Edit = Callable[[Row], None]


def as_stated(rig: Rig) -> Row:
    """The board as the design says it."""
    branches = rig.branches
    zero = np.zeros(len(branches))
    return Row(
        rig,
        rig.node_of.copy(),
        np.array([b.ohm for b in branches]),
        np.array([b.henry for b in branches]),
        np.array([b.elastance for b in branches]),
        zero.copy(),
        zero + 1e3,
        np.zeros((2, 2), np.intp),
        np.full(2, np.inf),
        np.ones(len(rig.drivers)),
        np.ones(len(rig.drivers)),
        np.full(len(rig.filaments), WARMTH),
    )


def stacked(rig: Rig, edits: Sequence[Sequence[Edit]]) -> States:
    """Boards, each as stated but for its edits, made in their order."""
    rows = []
    for changes in edits:
        row = as_stated(rig)
        for change in changes:
            change(row)
        rows.append(row)
    names = [f.name for f in fields(States) if f.name != "offsets"]
    return States(*(np.array([getattr(row, name) for row in rows]) for name in names))


def varied(rig: Rig, states: States, generator: np.random.Generator) -> States:
    """The same boards with everything that varies drawn at random, the parts' values as far as they scatter."""
    count, drivers = len(states), len(rig.drivers)
    names = ("ohm", "henry", "elastance", "dummy", "warmth")
    ohm, henry, elastance, dummy, warmth = (getattr(states, name).copy() for name in names)
    offsets = np.zeros((count, drivers, len(DRIVER_WAYS)))
    for variation in rig.variations:
        drawn = variation.spread * generator.uniform(-1, 1, count)
        if variation.way == "value":
            for number in rig.branches_of[variation.of]:
                array = {"R": ohm, "L": henry, "E": elastance}[rig.branches[number].value_in]
                factor = 1 + states.scatter * drawn
                array[:, number] *= 1 / factor if rig.branches[number].value_in == "E" else factor
        elif variation.way == "loss":
            for number in rig.branches_of[variation.of]:
                ohm[:, number] *= 1 + drawn
        elif variation.way == "warmth":
            own = rig.branches_of[variation.of]
            warmth[:, [n for n, (number, _) in enumerate(rig.filaments) if number in own]] *= 1 + drawn[:, None]
        elif variation.way == "dummy":
            dummy[:, rig.drivers.index(variation.of)] *= 1 + drawn
        else:
            offsets[:, rig.drivers.index(variation.of), DRIVER_WAYS.index(variation.way)] = drawn
    values = {f.name: getattr(states, f.name) for f in fields(States)}
    drawn_anew = dict(zip(names, (ohm, henry, elastance, dummy, warmth), strict=True))
    return States(**(values | drawn_anew | {"offsets": offsets}))
