"""Every fault that a board of this circuit may have, and how each is put into a row of `States`.

In: a `Rig`, and what its layout tells of neighbours, jumpers and cuts. Out: `Fault`s, and edits. A new family is a
generator here, its line in `EDITS`, and its row in the table of `faults.py`.

Refuses to know what is read.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from itertools import combinations

import numpy as np

from shuntwise.bench.faults import Family, Fault
from shuntwise.bench.rig import UNSTATED_TOLERANCE, Rig
from shuntwise.bench.states import BRIDGE_OHM, Edit, Row
from shuntwise.graph.circuit import Circuit, point_of
from shuntwise.graph.connect import connect
from shuntwise.model.design import Part
from shuntwise.model.kinds import KINDS

LOW, HIGH = (0.05, 0.8), (1.25, 20.0)
"""Of a part's value: what a wrong one may be."""

JOINT_OHM = (0.5, 20.0)
DRIED, CORE, TURNS = (0.5, 0.7), (0.15, 0.6), (0.3, 0.7)
OTHER_SIZE = ((0.35, 0.7), (1.4, 2.5))
"""Of drivers and dummies: 4 ohm for 8 and the reverse, and somewhat beyond."""

SERIES = ((0.35, 0.7), (1.4, 7.5))
"""Of the ohm between generator and box: up to those of a generator that has 50 or 60 of its own."""

SOURCE = ((0.4, 0.9), (1.1, 2.0))
METER = (0.6, 0.98)
SCATTER = (1.3, 2.2)

DRIED_ESR = 20.0
TURN_HZ, TURN_FACTOR = 200.0, 2.72
"""Above this a shorted turn takes its share of the inductance, and by what factor that may be off: common practice, no
source."""

CELLS: dict[Family, int] = {
    "value": 10, "joint": 5, "dried": 2, "drift": 2, "core": 3, "turns": 3, "driver": 3, "dummies": 3, "series": 5,
    "source": 4, "meter": 8, "scatter": 2,
}  # fmt: skip
"""Into how many sizes the range of a family is cut, evenly in the logarithm."""


@dataclass(frozen=True)
class Neighbours:
    """What a layout tells: nets (by a point of each) whose copper lies close together; wires and cuts that the layout
    makes, by the name that the text gives them, each with the points that it joins or the nets that it parts.
    """

    close: tuple[tuple[str, str], ...] = ()
    jumpers: tuple[tuple[str, tuple[str, ...]], ...] = ()
    cuts: tuple[tuple[str, tuple[str, str]], ...] = ()


def catalogue(rig: Rig, neighbours: Neighbours | None = None) -> tuple[Fault, ...]:
    """All faults of a board, and of the set-up that it is read with. Without neighbours any two nets may be bridged."""
    circuit = rig.circuit
    parts = [part for part in circuit.fitted_parts if not KINDS[part.kind].wire and part.label in rig.branches_of]
    wires = [*rig.drivers, *(pair.name for pair in circuit.design.terminals)]
    faults = [fault for part in parts for fault in (*_of_part(part), *_of_leads(rig, part))]
    faults += _exchanged(rig, parts)
    for name in wires:
        for sign in "+-":
            lead = f"{name}{sign}"
            faults.append(Fault("open", (name,), (lead,)))
            faults.append(Fault("joint", (name,), (lead,), size=JOINT_OHM))
            faults += _elsewhere(rig, name, lead)
    faults += [Fault("reversed", (name,), (f"{name}+", f"{name}-")) for name in rig.drivers]
    faults += [Fault("outputs", pair) for pair in combinations(rig.drivers, 2)]
    faults += _links(circuit)
    places = _places(rig)
    pairs = neighbours.close if neighbours is not None else combinations(places.values(), 2)
    faults += [Fault("bridge", (), pair) for pair in pairs]
    if neighbours is not None:
        faults += [Fault("jumper", (name,), points) for name, points in neighbours.jumpers]
        faults += [Fault("cut", (name,), points) for name, points in neighbours.cuts]
    faults += [Fault("driver", (name,), size=size) for name in rig.drivers for size in OTHER_SIZE]
    faults += [Fault("dummies", size=size) for size in OTHER_SIZE]
    faults += [Fault("series", size=size) for size in SERIES]
    faults += [Fault("source", size=size) for size in SOURCE]
    faults += [Fault("meter", size=METER), Fault("scatter", size=SCATTER)]
    return tuple(faults)


def _places(rig: Rig) -> dict[int, str]:
    """A point of each node that something lies on, as a person would call it: of a driver or an input, else a name."""
    circuit, found = rig.circuit, {}
    for node, name in enumerate(rig.nodes):
        net = circuit.nets[name]
        if net.attachments:
            pads = [end.point for end in net.attachments if end.kind != "part"]
            posts = [end.point for end in net.attachments if end.kind in ("feed", "posts")]
            found[node] = (posts or pads or list(net.nodes) or [net.attachments[0].point])[0]
    return found


def _of_part(part: Part) -> Iterator[Fault]:
    kind, owner = KINDS[part.kind], (part.label,)
    terminals = [point_of(part.label, terminal) for terminal in kind.terminals]
    if len(terminals) == 2:
        yield Fault("open", owner)
    else:
        yield from (Fault("open", owner, (point,)) for point in terminals)
    for ends in combinations(terminals, 2):
        yield Fault("short", owner, ends)
    if kind.value is None or part.kind == "attenuator":
        return
    yield Fault("value", owner, size=LOW)
    yield Fault("value", owner, size=HIGH)
    tolerance = part.get("tolerance") or UNSTATED_TOLERANCE
    yield Fault("drift", owner, size=(max(1 - 4 * tolerance, 0.25), max(1 - 2 * tolerance, 0.5)))
    yield Fault("drift", owner, size=(1 + 2 * tolerance, 1 + 4 * tolerance))
    yield Fault("doubled", owner)
    if part.kind == "capacitor" and "electrolytic" in (part.construction or ""):
        yield Fault("dried", owner, size=DRIED)
    if kind.inductive:
        yield Fault("turns", owner, size=TURNS)
        if (part.construction or "air core") != "air core":
            yield Fault("core", owner, size=CORE)


def _of_leads(rig: Rig, part: Part) -> Iterator[Fault]:
    terminals = KINDS[part.kind].terminals
    for number, terminal in enumerate(terminals):
        lead = point_of(part.label, terminal)
        if len(terminals) > 2 or number == 0:  # one joint in a row with a part is as good as another
            yield Fault("joint", (part.label,), (lead,), size=JOINT_OHM)
        yield from _elsewhere(rig, part.label, lead)


def _elsewhere(rig: Rig, owner: str, lead: str) -> Iterator[Fault]:
    own = rig.node_of[rig.number[lead]]
    yield from (Fault("moved", (owner,), (lead,), to) for node, to in _places(rig).items() if node != own)


def _exchanged(rig: Rig, parts: list[Part]) -> Iterator[Fault]:
    """Two parts of one kind and two leads that differ, and that do not lie between the same nets."""
    for one, other in combinations(parts, 2):
        if one.kind == other.kind and len(KINDS[one.kind].terminals) == 2:
            (first,), (second,) = rig.branches_of[one.label], rig.branches_of[other.label]
            a, b = rig.branches[first], rig.branches[second]
            same = (a.ohm, a.henry, a.elastance) == (b.ohm, b.henry, b.elastance)
            if not same and {*rig.node_of[list(a.ends)]} != {*rig.node_of[list(b.ends)]}:
                yield Fault("exchanged", (one.label, other.label))


def _links(circuit: Circuit) -> Iterator[Fault]:
    for part in circuit.design.parts.values():
        if KINDS[part.kind].wire:
            ends = tuple(point_of(part.label, terminal) for terminal in KINDS[part.kind].ends)
            if all(end in circuit.net_of for end in ends):
                yield Fault("link", (part.label,), ends)


def cells(fault: Fault) -> tuple[float, ...]:
    """The sizes that a fault is tried with: the middles of its cells; (1,) where it has no size."""
    low, high = fault.size
    count = CELLS.get(fault.family, 1)
    if low == high:
        return (1.0,)
    return tuple(float(low * (high / low) ** ((k + 0.5) / count)) for k in range(count))


def edit(rig: Rig, fault: Fault, size: float = 1.0) -> Edit:
    """What puts a row wrong by this fault, of this size."""
    change = EDITS[fault.family]
    return lambda row: change(rig, row, fault, size)


def _open(rig: Rig, row: Row, fault: Fault, _: float) -> None:
    lead = fault.points[0] if fault.points else rig.points[rig.branches[rig.branches_of[fault.owners[0]][0]].ends[0]]
    row.node_of[rig.number[lead]] = row.first_spare()


def _bridged(rig: Rig, row: Row, fault: Fault, _: float) -> None:
    one, other = (int(row.node_of[rig.number[point]]) for point in fault.points)
    row.join(one, other, BRIDGE_OHM)


def _valued(rig: Rig, row: Row, fault: Fault, size: float) -> None:
    for number in rig.branches_of[fault.owners[0]]:
        row.henry[number] *= size
        row.elastance[number] /= size
        value_in = rig.branches[number].value_in
        row.ohm[number] *= {"R": size, "L": size**0.5, "E": 1 / size}[value_in]


def _dried(rig: Rig, row: Row, fault: Fault, size: float) -> None:
    for number in rig.branches_of[fault.owners[0]]:
        row.elastance[number] /= size
        row.ohm[number] *= DRIED_ESR


def _core(rig: Rig, row: Row, fault: Fault, size: float) -> None:
    for number in rig.branches_of[fault.owners[0]]:
        row.henry[number] *= size


def _turns(rig: Rig, row: Row, fault: Fault, size: float) -> None:
    for number in rig.branches_of[fault.owners[0]]:
        row.turn_k[number], row.turn_w[number] = size, 2 * np.pi * TURN_HZ


def _exchange(rig: Rig, row: Row, fault: Fault, _: float) -> None:
    one, other = ([*rig.branches[rig.branches_of[owner][0]].ends] for owner in fault.owners)
    row.node_of[one], row.node_of[other] = row.node_of[other], row.node_of[one]


def _doubled(rig: Rig, row: Row, fault: Fault, _: float) -> None:
    for number in rig.branches_of[fault.owners[0]]:
        for of in (row.ohm, row.henry, row.elastance):
            of[number] /= 2


def _moved(rig: Rig, row: Row, fault: Fault, _: float) -> None:
    row.node_of[rig.number[fault.points[0]]] = rig.node_of[rig.number[fault.to]]


def _joint(rig: Rig, row: Row, fault: Fault, size: float) -> None:
    lead, off = rig.number[fault.points[0]], row.first_spare()
    row.join(int(row.node_of[lead]), off, size)
    row.node_of[lead] = off


def _apart(rig: Rig, row: Row, fault: Fault, _: float) -> None:
    off = row.first_spare()
    for point in fault.points:
        row.node_of[rig.number[point]] = off


def _link(rig: Rig, row: Row, fault: Fault, size: float) -> None:
    """A link left out parts its net, as the circuit without it does; one that is fitted is a bridge."""
    circuit, label = rig.circuit, fault.owners[0]
    part = circuit.design.parts[label]
    if not part.fitted:
        _bridged(rig, row, fault, size)
        return
    parts = {**circuit.design.parts, label: replace(part, fitted=False)}
    without, _ = connect(replace(circuit.design, parts=parts))
    begin, end = fault.points
    if without.net_of[begin] != without.net_of[end]:
        far = without.nets[without.net_of[end]]
        _apart(rig, row, replace(fault, points=tuple(p for p in far.points if p in rig.number)), size)


def _reversed(rig: Rig, row: Row, fault: Fault, _: float) -> None:
    tags = [rig.number[point] for point in fault.points]
    row.node_of[tags] = row.node_of[tags[::-1]]


def _outputs(rig: Rig, row: Row, fault: Fault, _: float) -> None:
    one, other = ([rig.number[f"{name}{sign}"] for sign in "+-"] for name in fault.owners)
    row.node_of[one], row.node_of[other] = row.node_of[other], row.node_of[one]


def _driver(rig: Rig, row: Row, fault: Fault, size: float) -> None:
    row.driver[rig.drivers.index(fault.owners[0])] *= size


def _dummies(rig: Rig, row: Row, fault: Fault, size: float) -> None:
    row.dummy *= size


def _series(rig: Rig, row: Row, fault: Fault, size: float) -> None:
    row.series *= size


def _source(rig: Rig, row: Row, fault: Fault, size: float) -> None:
    row.source *= size


def _meter(rig: Rig, row: Row, fault: Fault, size: float) -> None:
    row.droop = 1 - size


def _scattered(rig: Rig, row: Row, fault: Fault, size: float) -> None:
    row.scatter = size


EDITS: dict[Family, Callable[[Rig, Row, Fault, float], None]] = {
    "open": _open,
    "short": _bridged,
    "value": _valued,
    "drift": _valued,
    "dried": _dried,
    "turns": _turns,
    "core": _core,
    "exchanged": _exchange,
    "doubled": _doubled,
    "moved": _moved,
    "joint": _joint,
    "bridge": _bridged,
    "jumper": _apart,
    "cut": _bridged,
    "link": _link,
    "reversed": _reversed,
    "outputs": _outputs,
    "driver": _driver,
    "dummies": _dummies,
    "series": _series,
    "source": _source,
    "meter": _meter,
    "scatter": _scattered,
}
