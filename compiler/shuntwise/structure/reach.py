"""What hangs together with what, and how far from the input it lies.

In: a `Circuit`. Out: potentials, which drivers are turned round, ways for direct current, legs that meet. Refuses to
know what a leg should look like.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterator, Mapping
from heapq import heapify, heappop, heappush

from shuntwise.graph.circuit import Circuit, Edge
from shuntwise.graph.topology import links, pair_links, reached, shortest_path
from shuntwise.model.kinds import KINDS

SAME = 1e-12
"""Potentials closer than this are one: the rounding of the elimination."""


def potentials(circuit: Circuit) -> dict[str, float]:
    """Each net's voltage with every part and driver replaced by 1 ohm and every input at 1 V; live nets only.

    Nets are eliminated one by one, the one with the fewest neighbours first (minimum degree: W. F. Tinney,
    J. W. Walker, Direct solutions of sparse network equations, Proc. IEEE 55(11), 1967), so that the time for a ladder
    grows with its length.
    """
    fixed = {circuit.pad(pair.name, "+"): 1.0 for pair in circuit.design.feeds}
    fixed |= {circuit.pad(pair.name, "-"): 0.0 for pair in circuit.design.feeds}
    siemens: dict[str, dict[str, float]] = {}
    for edge in circuit.edges.values():
        if edge.kind in ("feed", "posts") or edge.plus == edge.minus:
            continue
        for here, there in ((edge.plus, edge.minus), (edge.minus, edge.plus)):
            near = siemens.setdefault(here, {})
            near[there] = near.get(there, 0.0) + 1.0
    eliminated = _eliminate(siemens, fixed)
    volt = dict(fixed)
    for net, near in reversed(eliminated):
        if near.keys() <= volt.keys() and near:
            volt[net] = sum(volt[other] * each for other, each in near.items()) / sum(near.values())
    return volt


def _eliminate(siemens: dict[str, dict[str, float]], kept: Collection[str]) -> list[tuple[str, dict[str, float]]]:
    """Replace every net but those `kept` by conductances between its neighbours; in order, each with those it had."""
    waiting = [(len(near), net) for net, near in siemens.items() if net not in kept]
    heapify(waiting)
    eliminated: list[tuple[str, dict[str, float]]] = []
    while waiting:
        degree, net = heappop(waiting)
        if net not in siemens or degree != len(siemens[net]):
            continue  # it has been eliminated, or its degree has changed and it waits with its new one
        near = siemens.pop(net)
        eliminated.append((net, near))
        total = sum(near.values())
        for one in near:
            del siemens[one][net]
        for one, its in near.items():
            for other, others in near.items():
                if one != other:
                    siemens[one][other] = siemens[one].get(other, 0.0) + its * others / total
        for one in near:
            if one not in kept:
                heappush(waiting, (len(siemens[one]), one))
    return eliminated


def way_round(circuit: Circuit, potential: Mapping[str, float], driver: str) -> bool | None:
    """Is this driver turned round, its minus pad nearer to the input's plus? None where its pads are at one potential.

    `potential` is what `potentials` gave. This is what `expect polarity`, the checks and the reading go by.
    """
    plus, minus = (potential.get(circuit.pad(driver, sign)) for sign in "+-")
    if plus is None or minus is None or abs(plus - minus) < SAME:
        return None
    return plus < minus


def turned_round(circuit: Circuit) -> frozenset[str]:
    """The drivers that are turned round."""
    potential = potentials(circuit)
    return frozenset(name for name in circuit.design.drivers if way_round(circuit, potential, name))


def dc_path(circuit: Circuit, driver: str) -> tuple[str, ...] | None:
    """The parts on a way for direct current to this driver's hot pad, if there is one all the way through it.

    A coil across the driver, or across it and resistors in a row with it, keeps direct current away from it where it
    must first pass another driver (series type); otherwise coils and resistors are wire.
    """
    parts = circuit.design.parts
    coils = any(e.kind == "part" and KINDS[parts[e.owner].kind].inductive for e in _across(circuit, driver))
    near = links(
        (e.plus, e.minus, e.owner)
        for e in circuit.edges.values()
        if (e.kind == "part" and KINDS[parts[e.owner].kind].passes_dc)
        or (e.kind == "driver" and e.owner != driver and not coils)
    )
    pads = circuit.pad(driver, "+"), circuit.pad(driver, "-")
    for pair in circuit.design.feeds:
        plus, minus = circuit.pad(pair.name, "+"), circuit.pad(pair.name, "-")
        for hot, cold in (pads, pads[::-1]):
            if hot in reached(near, plus, (minus,)) and cold in reached(near, minus, (plus,)):
                return shortest_path(near, plus, hot, (minus,))
    return None


def _across(circuit: Circuit, driver: str) -> Iterator[Edge]:
    """What lies across a driver, or across it and the resistors in a row with it."""
    at: dict[str, list[Edge]] = defaultdict(list)
    for edge in circuit.edges.values():
        for net in {edge.plus, edge.minus}:
            at[net].append(edge)
    ends = {_beyond_resistors(circuit, at, driver, sign) for sign in "+-"}
    pads = {circuit.pad(driver, sign) for sign in "+-"}
    return (edge for edge in circuit.edges.values() if {edge.plus, edge.minus} in (pads, ends))


def _beyond_resistors(circuit: Circuit, at: Mapping[str, list[Edge]], driver: str, sign: str) -> str:
    """The net at the far end of the resistors that are in a row with a driver's pad; `at` are the edges of a net."""
    parts = circuit.design.parts
    net, behind = circuit.pad(driver, sign), {driver}
    while True:
        further = [edge for edge in at[net] if edge.owner not in behind]
        if len(further) != 1 or further[0].kind != "part" or parts[further[0].owner].kind != "resistor":
            return net
        (edge,) = further
        behind.add(edge.owner)
        net = edge.minus if net == edge.plus else edge.plus


def tied_legs(circuit: Circuit) -> Iterator[tuple[tuple[str, ...], tuple[str, ...]]]:
    """Sets of drivers that meet behind the input though no leg names them together; with the nets where they may.

    The nets are those of the common island once the inputs' and posts' pads are taken away.
    """
    design = circuit.design
    rails = {circuit.pad(pair.name, sign) for pair in design.terminals for sign in "+-"}
    edges = [e for e in circuit.edges.values() if e.kind in ("part", "driver")]
    near = pair_links((e.plus, e.minus) for e in edges if e.plus not in rails and e.minus not in rails)
    seen: set[str] = set()
    for net in circuit.nets:
        if net in rails or net in seen:
            continue
        island = reached(near, net)
        seen |= island
        drivers = tuple(name for name in design.drivers if any(circuit.pad(name, sign) in island for sign in "+-"))
        if len(drivers) > 1 and not _declared_together(circuit, drivers):
            yield drivers, tuple(sorted(island))


def _declared_together(circuit: Circuit, drivers: Collection[str]) -> bool:
    """Do the legs that name several drivers at once link all of these?"""
    groups = [set(leg.drivers) for leg in circuit.design.legs]
    linked = {next(iter(drivers))}
    while True:
        wider = linked.union(*(group for group in groups if group & linked))
        if wider == linked:
            return linked >= set(drivers)
        linked = wider
