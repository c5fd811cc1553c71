"""A board on the bench as numbers: its points, what lies between them, and what may vary from board to board.

In: a circuit that can be lowered. Out: `Rig`. Every end of a part, every tag of a driver and every post of an input is
a *point* that lies on a node; a wrong lead is a point on another node, so that whatever is wired wrongly is told by
points alone. The wires from the board to the drivers and to the posts have no resistance of their own.

Refuses to know what is read, and what may be wrong.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from math import sqrt
from typing import Any

import numpy as np
import numpy.typing as npt

from shuntwise.graph.circuit import Circuit, is_group_end, point_of
from shuntwise.model.kinds import KINDS
from shuntwise.network.driver_model import driver_model
from shuntwise.network.filament import Filament, filament_of
from shuntwise.network.ideal import Stage
from shuntwise.network.part_model import part_model

Real = npt.NDArray[np.float64]
Complex = npt.NDArray[np.complexfloating[Any, Any]]
Whole = npt.NDArray[np.intp]

UNSTATED_TOLERANCE = 0.05
"""Of a part that states none: common practice, no source."""

DCR_SPREAD, ESR_SPREAD = 0.10, 0.50
"""How far a coil's copper, and a capacitor's losses, may be from what is stated: common practice, no source."""

UNSTATED_ESR, UNSTATED_ESR_ELECTROLYTIC = 0.05, 0.1
"""Ohm in series with a capacitor that states none, about which it may vary: common practice, no source."""

DRIVER_SPREAD = 0.10
"""How far a driver's resistance, inductance, resonance and Q may be from its data: common practice, no source."""

DUMMY_SPREAD = 0.01
"""How far a dummy may be from what is stated: common practice, no source."""

WARMTH, WARMTH_SPREAD = 0.5, 1.0
"""Of what a filament in a vacuum gains by its volts: a lamp has anything from none of it to all, as the gas cools it,
which it does most while it hardly glows (common practice, no source)."""

DRIVER_WAYS = ("re", "coil", "fs", "q")
"""In which ways a driver varies: its resistance, its inductance with the losses, its resonances, their height."""

MOTION = ("res", "lces", "cmes", "lceb", "cmep", "rel")
"""What the quantities of a motional impedance begin with."""


@dataclass(frozen=True)
class RigBranch:
    """What lies between two points (their numbers): R + s L + E/s in ohm, henry, 1/farad. `owner` is the part's label,
    `section` that of its kind; `value_in` is where its value lies: "R", "L" or "E".
    """

    owner: str
    section: str
    ends: tuple[int, int]
    ohm: float
    henry: float
    elastance: float
    value_in: str


@dataclass(frozen=True)
class Variation:
    """One thing that varies between sound boards: up to `spread` (a share) to either side, evenly.

    `of` is a part's label, a driver's or a dummy's name; `way` is "value", "loss", "dummy", one of DRIVER_WAYS, or
    "warmth", what a lamp gains by its volts.
    """

    of: str
    way: str
    spread: float

    @property
    def sigma(self) -> float:
        """Of an even distribution: spread / sqrt(3)."""
        return self.spread / sqrt(3)


@dataclass(frozen=True, eq=False)
class Rig:
    """`nodes` are the circuit's nets, and behind them SPARE nodes with no name. `node_of` is the node of each point.

    `couplings` are pairs of branches and k, `filaments` the branches that are lamps. `drivers` are the names with tags,
    each voice coil its own; of `shared` the second's motion is the first's, times n (and n squared), `k` couples their
    inductances.
    """

    circuit: Circuit
    nodes: tuple[str, ...]
    points: tuple[str, ...]
    node_of: Whole
    branches: tuple[RigBranch, ...]
    couplings: tuple[tuple[int, int, float], ...]
    filaments: tuple[tuple[int, Filament], ...]
    drivers: tuple[str, ...]
    stages: tuple[tuple[Stage, ...], ...]
    shared: tuple[tuple[int, int, float, float], ...]
    inputs: tuple[str, ...]
    variations: tuple[Variation, ...]

    SPARE = 2

    @property
    def size(self) -> int:
        return len(self.nodes) + self.SPARE

    @cached_property
    def number(self) -> Mapping[str, int]:
        """Of a point, by name; a node's name is a point, too."""
        return {point: number for number, point in enumerate(self.points)}

    @cached_property
    def branches_of(self) -> Mapping[str, tuple[int, ...]]:
        found: dict[str, tuple[int, ...]] = {}
        for number, branch in enumerate(self.branches):
            found[branch.owner] = (*found.get(branch.owner, ()), number)
        return found

    def driver_ohm(self, s: Complex, offsets: Real | None = None) -> tuple[Complex, Complex]:
        """Impedance of the drivers (N, F, D) at `s` (F,) rad/s, and between those that share a motion (N, F, shared).

        `offsets` (N, D, 4) are shares by DRIVER_WAYS.
        """
        if offsets is None:
            offsets = np.zeros((1, len(self.drivers), len(DRIVER_WAYS)))
        own = np.zeros((len(offsets), s.size, len(self.drivers)), np.complex128)
        motion = np.zeros_like(own)
        coil = np.zeros_like(own)
        for number, stages in enumerate(self.stages):
            factors = _Factors(offsets[:, number])
            for stage in stages:
                found = factors.stage(stage, s)
                own[:, :, number] += found
                if stage[0][0].quantity.startswith(MOTION):
                    motion[:, :, number] += found
                elif stage[0][0].quantity == "le":
                    coil[:, :, number] += found
        mutual = np.zeros((*own.shape[:2], len(self.shared)), np.complex128)
        for number, (first, second, turns, k) in enumerate(self.shared):
            mutual[:, :, number] = turns * motion[:, :, first] + k * np.sqrt(coil[:, :, first] * coil[:, :, second])
            own[:, :, second] += turns**2 * motion[:, :, first]
        return own, mutual


@dataclass(frozen=True)
class _Factors:
    """What the offsets (N, 4) of one driver make of its elements."""

    offsets: Real

    def stage(self, stage: Stage, s: Complex) -> Complex:
        """Ohm (N, F) of chains side by side."""
        admittance = sum(1 / sum(self.element(i.kind, i.quantity, i.value, s) for i in chain) for chain in stage)
        return np.asarray(1 / admittance)

    def element(self, kind: str, quantity: str, value: float, s: Complex) -> Complex:
        of = dict(zip(DRIVER_WAYS, self.offsets.T, strict=True))
        if quantity.startswith(MOTION):
            factor = 1 + of["q"] if kind == "R" else 1 / (1 + of["fs"])
        else:
            factor = 1 + of["re" if quantity in ("re", "nominal") else "coil"]
        scaled = (value * factor)[:, None]
        return np.asarray(scaled + 0 * s if kind == "R" else s * scaled if kind == "L" else 1 / (s * scaled))


def rig_of(circuit: Circuit, measured: Mapping[str, tuple[float, float]] | None = None) -> Rig:
    """The board of a circuit. `measured` are values of parts (SI) by label, and how far the measurement may be off.

    Raises ValueError where a part or a driver has no model (`lower` says so first).
    """
    measured, design = measured or {}, circuit.design
    nodes = tuple(circuit.nets)
    at = {net: number for number, net in enumerate(nodes)}
    points = tuple(point for point in circuit.net_of if not is_group_end(point))
    number = {point: index for index, point in enumerate(points)}
    branches: list[RigBranch] = []
    couplings: list[tuple[int, int, float]] = []
    filaments: list[tuple[int, Filament]] = []
    variations: list[Variation] = []
    for part in circuit.fitted_parts:
        kind = KINDS[part.kind]
        if kind.wire:
            continue
        model, begin = part_model(part), len(branches)
        value, share = measured.get(part.label, (None, None))
        assert part.value is not None
        factor = 1.0 if value is None else value / part.value.value
        sections = list(kind.sections.items())
        for section, terminals in sections:
            ohm = henry = elastance = loss = 0.0
            for ideal in model.sections[section]:
                varies = ideal.quantity in kind.varying or ideal.kind in "LC"
                amount = ideal.value * (factor if varies else 1.0)
                ohm += amount if ideal.kind == "R" else 0.0
                loss += amount if ideal.kind == "R" and not varies else 0.0
                henry += amount if ideal.kind == "L" else 0.0
                elastance += 1 / amount if ideal.kind == "C" else 0.0
            if part.kind == "capacitor" and not ohm:
                ohm = UNSTATED_ESR_ELECTROLYTIC if "electrolytic" in (part.construction or "") else UNSTATED_ESR
            ends = tuple(number[point_of(part.label, terminal)] for terminal in terminals)
            where = "L" if henry else "E" if elastance else "R"
            branches.append(RigBranch(part.label, section, (ends[0], ends[1]), ohm, henry, elastance, where))
        names = [section for section, _ in sections]
        couplings += [(begin + names.index(a), begin + names.index(b), k) for a, b, k in model.couplings]
        tolerance = share if share is not None else part.get("tolerance") or UNSTATED_TOLERANCE
        variations.append(Variation(part.label, "value", tolerance))
        if part.kind == "lamp":
            filaments.append((begin, filament_of(part)))
            variations.append(Variation(part.label, "warmth", WARMTH_SPREAD))
        if branches[begin].value_in != "R":
            variations.append(Variation(part.label, "loss", DCR_SPREAD if kind.inductive else ESR_SPREAD))
    first_of = {branch.owner: index for index, branch in reversed(list(enumerate(branches)))}
    for coupling in design.couplings:
        if coupling.k is not None and coupling.k.value and {coupling.first, coupling.second} <= first_of.keys():
            couplings.append((first_of[coupling.first], first_of[coupling.second], coupling.k.value))
    drivers = tuple(name for name in design.drivers if f"{name}+" in number)
    models = tuple(driver_model(design.drivers[name]).stages for name in drivers)
    for name in drivers:
        variations += [Variation(name, way, DRIVER_SPREAD) for way in DRIVER_WAYS]
    variations += [Variation(name, "dummy", DUMMY_SPREAD) for name in drivers]
    return Rig(
        circuit,
        nodes,
        points,
        np.array([at[circuit.net_of[point]] for point in points], np.intp),
        tuple(branches),
        tuple(couplings),
        tuple(filaments),
        drivers,
        tuple(_without_shared_motion(circuit, name, model) for name, model in zip(drivers, models, strict=True)),
        tuple(_shared(circuit, drivers, models)),
        tuple(pair.name for pair in design.feeds),
        tuple(variations),
    )


def _without_shared_motion(circuit: Circuit, name: str, stages: tuple[Stage, ...]) -> tuple[Stage, ...]:
    """The stages of a driver; of the second of two voice coils without what stands for the first's motion."""
    if circuit.design.drivers[name].other is None:
        return stages
    return tuple(stage for stage in stages if stage[0][0].quantity != "lces")


def _shared(
    circuit: Circuit, drivers: tuple[str, ...], models: tuple[tuple[Stage, ...], ...]
) -> list[tuple[int, int, float, float]]:
    """Pairs of voice coils on one former: first, second, the ratio of their force factors, k of their inductances."""
    found = []
    for second, name in enumerate(drivers):
        driver = circuit.design.drivers[name]
        if driver.other is not None and driver.other in drivers:
            first = drivers.index(driver.other)
            one, other = (_henry(models[number], "lces") for number in (first, second))
            if one and other:
                found.append((first, second, sqrt(other / one), driver.coils_k))
    return found


def _henry(stages: tuple[Stage, ...], quantity: str) -> float:
    return sum(ideal.value for stage in stages for chain in stage for ideal in chain if ideal.quantity == quantity)
