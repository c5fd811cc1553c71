"""What is read on many boards at once, and how it moves with what varies from board to board.

In: a `Rig`, `States`, the instruments and readings. Out: ohm and volts (N, M), and their derivatives. The network is
solved by its nodes, all boards and frequencies at once; derivatives are by the adjoint network (S. W. Director and
R. A. Rohrer, The generalized adjoint network and network sensitivities, IEEE Trans. Circuit Theory 16(3), 1969; from
memory): d(volts of a port) = sum over branches of alpha dz beta, alpha and beta being the currents in the branch
when 1 A is fed into the port, and when the source is on.

Refuses to know what is likely, and how it is called.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from shuntwise.bench.rig import DRIVER_WAYS, Complex, Real, Rig, Variation, Whole
from shuntwise.bench.states import States
from shuntwise.model.box import DRIVERS_OFF, DRIVERS_ON, DUMMIES_ON, Instruments, Reading

DIRECT_HZ = 1e-6
"""Direct current: coils are wire, and a capacitor has a gigohm."""

METER_OHM = 1e6
"""Of a voltmeter, from every node to the reference, so that what hangs in the air reads nothing."""

BEYOND_OHM = 5000.0
"""An ohmmeter shows more than this as open: common practice, no source."""

WARMING = 12
"""The volts of a lamp and its resistance settle within these: each halves what is left at the least."""

AT_ONCE = 256
"""Boards that are solved together, so that the arrays stay in the cache."""


@dataclass(frozen=True, eq=False)
class Solved:
    """`values` (N, M), ohm and volts; `moves` (N, M, V): derivatives by the rig's variations, each as a share."""

    values: Real
    moves: Real | None


def solved(rig: Rig, states: States, bench: Instruments, readings: Sequence[Reading], moves: bool = False) -> Solved:
    """Ohm or volts of readings on boards; a resistance beyond the meter's range is BEYOND_OHM."""
    parts = [_solved(rig, states.part(slice(at, at + AT_ONCE)), bench, readings, moves) for at in _starts(len(states))]
    values = np.concatenate([part.values for part in parts])
    return Solved(values, np.concatenate([part.moves for part in parts if part.moves is not None]) if moves else None)


def _starts(count: int) -> range:
    return range(0, max(count, 1), AT_ONCE)


def _solved(rig: Rig, states: States, bench: Instruments, readings: Sequence[Reading], moves: bool) -> Solved:
    values = np.zeros((len(states), len(readings)))
    derivatives = np.zeros((*values.shape, len(rig.variations))) if moves else None
    groups: dict[tuple[str, str], list[int]] = {}
    for number, reading in enumerate(readings):
        groups.setdefault((reading.loads, reading.fed if reading.freq_hz else ""), []).append(number)
    for (loads, fed), numbers in groups.items():
        for direct in (True, False):
            chosen = [n for n in numbers if (readings[n].freq_hz == 0) is direct]
            if chosen:
                work = _SetUp(rig, states, bench, loads, fed or rig.inputs[0], [readings[n] for n in chosen])
                found, moved = work.resistances(moves) if direct else work.volts(moves)
                values[:, chosen] = found
                if derivatives is not None and moved is not None:
                    derivatives[:, chosen] = moved
    return Solved(values, derivatives)


class _SetUp:
    """Boards with one kind of load, the generator on one input; solved at all frequencies of some readings."""

    def __init__(
        self, rig: Rig, states: States, bench: Instruments, loads: str, fed: str, readings: Sequence[Reading]
    ) -> None:
        self.rig, self.states, self.bench, self.loads, self.fed = rig, states, bench, loads, fed
        self.readings = readings
        frequencies = sorted({reading.freq_hz or DIRECT_HZ for reading in readings})
        self.freq_hz = np.array(frequencies)
        self.s = 2j * np.pi * self.freq_hz
        self.at = [frequencies.index(reading.freq_hz or DIRECT_HZ) for reading in readings]
        pairs = [(rig.number[reading.plus], rig.number[reading.minus]) for reading in readings]
        self.ports = list(dict.fromkeys(pairs))
        self.port_of = [self.ports.index(pair) for pair in pairs]
        self.rows = np.arange(len(states))
        self.on = tuple(name for name in rig.drivers if loads == DRIVERS_ON or _others_off(loads, name))
        self.gained: Real | None = None
        self.branches()

    def branches(self) -> None:
        """Admittances (N, F, B + D) of parts and loads, those between coupled ones, and the nodes of their ends."""
        rig, states, s = self.rig, self.states, self.s
        inductive = states.henry[:, None, :] * np.ones((1, s.size, 1)) + 0j
        if states.turn_k.any():
            turned = states.turn_k[:, None, :] * s[:, None] / (s[:, None] + states.turn_w[:, None, :])
            inductive *= 1 - turned
        own = states.ohm[:, None, :] + s[:, None] * inductive + states.elastance[:, None, :] / s[:, None]
        self.inductive = inductive
        ends = np.array([branch.ends for branch in rig.branches], np.intp).reshape(-1, 2)
        pairs: list[tuple[int, int, Complex]] = []
        for first, second, k in rig.couplings:
            pairs.append((first, second, s * k * np.sqrt(inductive[:, :, first] * inductive[:, :, second])))
        count = len(rig.branches)
        loaded, self.load_of = self._loads()
        if loaded is not None:
            drivers, mutual = loaded
            own = np.concatenate([own, drivers], axis=2)
            tags = [[rig.number[f"{name}{sign}"] for sign in "+-"] for name in rig.drivers]
            present = [n for n, name in enumerate(rig.drivers) if name in self.load_of]
            ends = np.concatenate([ends, np.array([tags[n] for n in present], np.intp).reshape(-1, 2)])
            for number, (first, second, _, _) in enumerate(rig.shared):
                if mutual is not None and {first, second} <= set(present):
                    pairs.append((count + present.index(first), count + present.index(second), mutual[:, :, number]))
        self.ends = states.node_of[:, ends] if len(ends) else np.zeros((len(states), 0, 2), np.intp)
        self.impedance = own
        self.groups = _groups(pairs)
        self.pairs = pairs
        self.admittance = 1 / own
        self.blocks: list[tuple[list[int], Complex]] = []
        for members in self.groups:
            block: Complex = np.zeros((*own.shape[:2], len(members), len(members)), np.complex128)
            for i, branch in enumerate(members):
                block[:, :, i, i] = own[:, :, branch]
            for first, second, between in pairs:
                if first in members:
                    i, j = members.index(first), members.index(second)
                    block[:, :, i, j] = block[:, :, j, i] = between
            self.blocks.append((members, np.asarray(np.linalg.inv(block), np.complex128)))
            self.admittance[:, :, members] = 0

    def _loads(self) -> tuple[tuple[Complex, Complex | None] | None, tuple[str, ...]]:
        """Impedances (N, F, present) of what hangs on the tags, and between those of shared motion."""
        rig, states, shape = self.rig, self.states, (len(self.states), self.s.size)
        if self.loads == DUMMIES_ON:
            ohm = np.broadcast_to(self.bench.dummy_ohm * states.dummy[:, None, :] + 0j, (*shape, len(rig.drivers)))
            return (ohm, None), rig.drivers
        if not self.on:
            return None, ()
        own, mutual = rig.driver_ohm(self.s, states.offsets)
        present = [n for n, name in enumerate(rig.drivers) if name in self.on]
        own = np.broadcast_to(own, (*shape, own.shape[2])) * states.driver[:, None, :]
        both = np.array([[first, second] for first, second, _, _ in rig.shared], np.intp).reshape(-1, 2)
        scale = np.sqrt(states.driver[:, None, both[:, 0]] * states.driver[:, None, both[:, 1]])
        return (own[:, :, present], np.broadcast_to(mutual, (*shape, mutual.shape[2])) * scale), self.on

    def nodal(self, ground: Whole) -> Complex:
        """The nodal admittances (N, F, n, n)."""
        rows, size, states = self.rows, self.rig.size, self.states
        y = np.zeros((len(states), self.s.size, size, size), np.complex128)
        for branch in range(self.ends.shape[1]):
            a, c = self.ends[:, branch, 0], self.ends[:, branch, 1]
            _stamp(y, rows, (a, c), (a, c), self.admittance[:, :, branch])
        for members, block in self.blocks:
            for i, one in enumerate(members):
                for j, other in enumerate(members):
                    ends, others = self.ends[:, one], self.ends[:, other]
                    _stamp(y, rows, (ends[:, 0], ends[:, 1]), (others[:, 0], others[:, 1]), block[:, :, i, j])
        for number in range(states.spare.shape[1]):
            between = states.spare[:, number, 0], states.spare[:, number, 1]
            _stamp(y, rows, between, between, (1 / states.spare_ohm[:, [number]]) + 0j)
        diagonal = np.arange(size)
        y[:, :, diagonal, diagonal] += 1 / METER_OHM
        y[rows, :, ground, ground] += 1e3
        return y

    def tag(self, point: str) -> Whole:
        return np.asarray(self.states.node_of[:, self.rig.number[point]])

    def unit(self, plus: Whole, minus: Whole) -> Real:
        """1 A into one node and out of another, (N, n)."""
        drive = np.zeros((len(self.states), self.rig.size))
        drive[self.rows, plus] += 1
        drive[self.rows, minus] -= 1
        return drive

    def port_drives(self) -> Real:
        """(N, n, ports)."""
        node_of = self.states.node_of
        return np.stack([self.unit(node_of[:, plus], node_of[:, minus]) for plus, minus in self.ports], axis=2)

    def between(self, volts: Complex) -> Complex:
        """Voltages (N, F, k, ports) between the ports, from node voltages (N, F, n, k)."""
        node_of = self.states.node_of
        columns = []
        for plus, minus in self.ports:
            columns.append(volts[self.rows, :, node_of[:, plus]] - volts[self.rows, :, node_of[:, minus]])
        return np.stack(columns, axis=3)

    def currents(self, volts: Complex) -> Complex:
        """Branch currents (N, F, B, k) from node voltages (N, F, n, k)."""
        across = np.empty((*volts.shape[:2], self.ends.shape[1], volts.shape[3]), np.complex128)
        for branch in range(self.ends.shape[1]):
            a, c = self.ends[:, branch, 0], self.ends[:, branch, 1]
            across[:, :, branch] = volts[self.rows, :, a] - volts[self.rows, :, c]
        found = across * self.admittance[:, :, :, None]
        for members, block in self.blocks:
            found[:, :, members] = block @ across[:, :, members]
        return found

    def resistances(self, moves: bool) -> tuple[Real, Real | None]:
        """Ohm of the readings (N, M)."""
        volts = np.linalg.solve(self.nodal(self.tag(f"{self.fed}-")), self.port_drives()[:, None])
        ohm = np.diagonal(self.between(volts), axis1=2, axis2=3).real[:, 0]
        inside = ohm < BEYOND_OHM
        found = np.where(inside, np.maximum(ohm, 0), BEYOND_OHM)[:, self.port_of]
        if not moves:
            return found, None
        current = self.currents(volts)
        derivatives = np.zeros((*found.shape, len(self.rig.variations)))
        for number, (branches, change) in enumerate(map(self.change, self.rig.variations)):
            if branches:
                moved = np.einsum("nfbp,nfbc,nfcp->np", current[:, :, branches], change, current[:, :, branches])
                derivatives[:, :, number] = (moved.real * inside)[:, self.port_of]
        return found, derivatives

    def volts(self, moves: bool) -> tuple[Real, Real | None]:
        """Volts of the readings (N, M), or ohm where an impedance is read."""
        rig, states = self.rig, self.states
        plus, minus = self.tag(f"{self.fed}+"), self.tag(f"{self.fed}-")
        y = self.nodal(minus)
        series = self.bench.series_ohm * states.series
        _stamp(y, self.rows, (plus, minus), (plus, minus), (1 / series)[:, None] + 0j)
        source = self.bench.source_v * states.source
        drive = self.unit(plus, minus) * (source / series)[:, None]
        drives = np.concatenate([drive[:, :, None], self.port_drives()], axis=2) if moves else drive[:, :, None]
        if rig.filaments:
            self.warm(y, drive)
        volts = np.linalg.solve(y, drives[:, None])
        seen = self.between(volts[..., :1])[:, :, 0][:, self.at, self.port_of]
        impedance = [n for n, reading in enumerate(self.readings) if reading.quantity == "impedance"]
        droop = 1 - states.droop[:, None] * (self.freq_hz[self.at] / self.bench.meter_top_hz) ** 2
        found = np.abs(seen) * droop
        chain = droop * np.conj(seen) / np.maximum(np.abs(seen), 1e-12)
        for n in impedance:
            rest = source[:, None] - seen[:, [n]]
            ohm = series[:, None] * seen[:, [n]] / rest
            found[:, [n]] = np.abs(ohm)
            chain[:, [n]] = np.conj(ohm) / np.maximum(np.abs(ohm), 1e-12) * series[:, None] * source[:, None] / rest**2
        if not moves:
            return found, None
        current = self.currents(volts)
        beta, alpha = current[..., 0], current[..., 1:]
        derivatives = np.zeros((*found.shape, len(rig.variations)))
        for number, (branches, change) in enumerate(map(self.change, rig.variations)):
            if branches:
                felt = np.einsum("nfbc,nfc->nfb", change, beta[:, :, branches])
                moved = np.einsum("nfbp,nfb->nfp", alpha[:, :, branches], felt)[:, self.at, self.port_of]
                derivatives[:, :, number] = (chain * moved).real
        return found, derivatives

    def warm(self, y: Complex, drive: Real) -> None:
        """Give lamps the resistance that they have by their volts, here and in the nodal admittances `y`.

        The rest of the network is, for the lamps, volts and impedances (N, F, k, k) between their ends, so that it is
        solved but once.
        """
        rig, states = self.rig, self.states
        lamps = [number for number, _ in rig.filaments]
        ends = [(self.ends[:, lamp, 0], self.ends[:, lamp, 1]) for lamp in lamps]
        ports = np.stack([self.unit(a, c) for a, c in ends], axis=2)
        found = np.linalg.solve(y, np.concatenate([drive[:, :, None], ports], axis=2)[:, None])
        felt = np.swapaxes(ports, 1, 2)[:, None] @ found
        volts, between = felt[..., :1], felt[..., 1:]
        cold = np.asarray(self.impedance[:, :, lamps])
        scale = states.ohm[:, None, lamps].real / [rig.branches[lamp].ohm for lamp in lamps]
        ohm, unit = cold, np.eye(len(lamps))
        for _ in range(WARMING):
            gain = between * (1 / ohm - 1 / cold)[:, :, None, :]
            over = np.abs(np.linalg.solve(unit + gain, volts)[..., 0])
            glowing = np.stack([f.glowing(over[:, :, n]) for n, (_, f) in enumerate(rig.filaments)], axis=2) * scale
            self.gained = np.maximum(glowing - cold.real, 0) * states.warmth[:, None]
            ohm = cold + self.gained
        for n, (lamp, (a, c)) in enumerate(zip(lamps, ends, strict=True)):
            _stamp(y, self.rows, (a, c), (a, c), 1 / ohm[:, :, n] - 1 / cold[:, :, n])
            self.impedance[:, :, lamp], self.admittance[:, :, lamp] = ohm[:, :, n], 1 / ohm[:, :, n]

    def change(self, variation: Variation) -> tuple[list[int], Complex]:
        """The branches that a variation moves, and by how much for each share: ohm (N or 1, F, b, b)."""
        rig, states, s = self.rig, self.states, self.s
        if variation.way == "warmth":
            ((n, lamp),) = [(n, b) for n, (b, _) in enumerate(rig.filaments) if rig.branches[b].owner == variation.of]
            if self.gained is None:  # with direct current no lamp is warm
                return [], np.zeros((1, s.size, 0, 0), np.complex128)
            return [lamp], self.gained[:, :, [n], None] + 0j
        if variation.way in ("value", "loss"):
            own = rig.branches_of[variation.of]
            wound = variation.way == "value" and rig.branches[own[0]].value_in == "L"
            fields = [pair for pair in self.pairs if wound and not {pair[0], pair[1]}.isdisjoint(own)]
            branches = sorted({*own, *(branch for pair in fields for branch in pair[:2])})
            change = np.zeros((len(states), s.size, len(branches), len(branches)), np.complex128)
            for number in own:
                i = branches.index(number)
                change[:, :, i, i] = self._own_change(number, variation.way)
            for one, other, between in fields:  # of a field between two coils that goes with the root of both
                i, j = branches.index(one), branches.index(other)
                change[:, :, i, j] = change[:, :, j, i] = between * (((one in own) + (other in own)) / 2)
            return branches, change
        if variation.of not in self.load_of or (variation.way == "dummy") != (self.loads == DUMMIES_ON):
            return [], np.zeros((1, s.size, 0, 0), np.complex128)
        first, number = len(rig.branches), rig.drivers.index(variation.of)
        if variation.way == "dummy":
            branch = first + self.load_of.index(variation.of)
            return [branch], np.asarray(self.impedance[:, :, branch])[:, :, None, None]
        step = np.zeros((2, len(rig.drivers), len(DRIVER_WAYS)))
        step[:, number, DRIVER_WAYS.index(variation.way)] = (1e-4, -1e-4)
        drivers, mutual = ((above - below) / 2e-4 for above, below in rig.driver_ohm(s, step))
        mates = {number, *(n for pair in rig.shared if number in pair[:2] for n in pair[:2])}
        moved = [n for n, name in enumerate(self.load_of) if rig.drivers.index(name) in mates]
        at = [rig.drivers.index(self.load_of[n]) for n in moved]
        change = np.zeros((s.size, len(moved), len(moved)), np.complex128)
        for i, driver in enumerate(at):
            change[:, i, i] = drivers[:, driver]
        for shared, (one, other, _, _) in enumerate(rig.shared):
            if one in at and other in at:
                i, j = at.index(one), at.index(other)
                change[:, i, j] = change[:, j, i] = mutual[:, shared]
        scale = np.sqrt(states.driver[:, at])
        return [first + n for n in moved], change * (scale[:, None, :, None] * scale[:, None, None, :])

    def _own_change(self, number: int, way: str) -> Complex:
        branch, states = self.rig.branches[number], self.states
        if any(number == lamp for lamp, _ in self.rig.filaments):
            return np.asarray(self.impedance[:, :, number])
        if way == "loss" or branch.value_in == "R":
            return np.asarray(states.ohm[:, [number]] + 0 * self.s)
        if branch.value_in == "L":
            return np.asarray(self.s * self.inductive[:, :, number])
        return np.asarray(-states.elastance[:, [number]] / self.s)


def _others_off(loads: str, name: str) -> bool:
    """With one driver off alone, is this one on?"""
    return loads.endswith(" off") and loads != DRIVERS_OFF and loads != f"{name} off"


def _groups(pairs: Sequence[tuple[int, int, Complex]]) -> list[list[int]]:
    """Branches that fields join, those that are joined taken together."""
    groups: list[set[int]] = []
    for first, second, _ in pairs:
        met = [group for group in groups if {first, second} & group]
        groups = [group for group in groups if group not in met] + [{first, second}.union(*met)]
    return [sorted(group) for group in groups]


def _stamp(y: Complex, rows: Whole, ends: tuple[Whole, Whole], others: tuple[Whole, Whole], siemens: Complex) -> None:
    """Add what a branch's current is for the voltage over another (or over itself), (N, F), to nodal admittances."""
    for a, sign in zip(map(_one, ends), (1, -1), strict=True):
        for c, other in zip(map(_one, others), (1, -1), strict=True):
            if isinstance(a, int) and isinstance(c, int):
                y[:, :, a, c] += sign * other * siemens
            else:
                y[rows, :, a, c] += sign * other * siemens


def _one(nodes: Whole) -> int | Whole:
    """The node, if it is the same on all boards: which is several times as fast to address."""
    return int(nodes[0]) if len(nodes) and (nodes == nodes[0]).all() else nodes
