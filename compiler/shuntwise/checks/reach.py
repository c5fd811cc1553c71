"""What hangs together with what, and how far from the input it lies.

In: a `Circuit`. Out: nets that can be reached, potentials, ways for direct current, legs that meet. Refuses to know
what a leg should look like.
"""

from __future__ import annotations

from collections import defaultdict, deque
from collections.abc import Collection, Iterable, Iterator

import numpy as np

from shuntwise.graph.circuit import Circuit, Edge
from shuntwise.model.kinds import KINDS


def potentials(circuit: Circuit) -> dict[str, float]:
    """Each net's voltage with every part and driver replaced by 1 ohm and every input at 1 V; live nets only."""
    fixed: dict[str, float] = {}
    for pair in circuit.design.feeds:
        fixed[circuit.pad(pair.name, "+")] = 1.0
    for pair in circuit.design.feeds:
        fixed[circuit.pad(pair.name, "-")] = 0.0
    edges = [e for e in circuit.edges.values() if e.kind not in ("feed", "posts") and e.plus != e.minus]
    reach = adjacency((e.plus, e.minus) for e in edges)
    live = set(fixed)
    for net in fixed:
        live |= reached(reach, net, ())
    free = {net: number for number, net in enumerate(sorted(live - set(fixed)))}
    matrix, right = np.zeros((len(free), len(free))), np.zeros(len(free))
    for edge in edges:
        for here, there in ((edge.plus, edge.minus), (edge.minus, edge.plus)):
            if here in free:
                matrix[free[here], free[here]] += 1
                if there in free:
                    matrix[free[here], free[there]] -= 1
                else:
                    right[free[here]] += fixed[there]
    solved = np.linalg.solve(matrix, right) if free else right
    return fixed | {net: float(solved[number]) for net, number in free.items()}


Adjacency = dict[str, list[str]]


def adjacency(pairs: Iterable[tuple[str, str]]) -> Adjacency:
    adjacent: Adjacency = defaultdict(list)
    for a, b in pairs:
        adjacent[a].append(b)
        adjacent[b].append(a)
    return adjacent


def reached(adjacent: Adjacency, start: str, barred: Collection[str]) -> set[str]:
    """All nets that can be reached from `start` without entering `barred`."""
    if start in barred:
        return set()
    seen, stack = {start}, [start]
    while stack:
        for net in adjacent.get(stack.pop(), ()):
            if net not in seen and net not in barred:
                seen.add(net)
                stack.append(net)
    return seen


def dc_path(circuit: Circuit, driver: str) -> tuple[str, ...] | None:
    """The parts on a way for direct current to this driver's hot pad, if there is one all the way through it.

    A coil across the driver keeps direct current away from it where it must first pass another driver (series
    type); otherwise coils and resistors are wire.
    """
    parts = circuit.design.parts
    coils = any(e.kind == "part" and KINDS[parts[e.owner].kind].inductive for e in _across(circuit, driver))
    edges = [
        e
        for e in circuit.edges.values()
        if (e.kind == "part" and KINDS[parts[e.owner].kind].passes_dc)
        or (e.kind == "driver" and e.owner != driver and not coils)
    ]
    adjacent = adjacency((e.plus, e.minus) for e in edges)
    pads = circuit.pad(driver, "+"), circuit.pad(driver, "-")
    for pair in circuit.design.feeds:
        plus, minus = circuit.pad(pair.name, "+"), circuit.pad(pair.name, "-")
        for hot, cold in (pads, pads[::-1]):
            if hot in reached(adjacent, plus, (minus,)) and cold in reached(adjacent, minus, (plus,)):
                return _shortest(edges, plus, minus, hot)
    return None


def _across(circuit: Circuit, driver: str) -> Iterator[Edge]:
    pads = {circuit.pad(driver, sign) for sign in "+-"}
    return (edge for edge in circuit.edges.values() if {edge.plus, edge.minus} == pads)


def _shortest(edges: Iterable[Edge], start: str, barred: str, end: str) -> tuple[str, ...]:
    """The owners of the edges on a shortest path that does not enter `barred`."""
    at: dict[str, list[tuple[str, str]]] = defaultdict(list)
    for edge in edges:
        at[edge.plus].append((edge.minus, edge.owner))
        at[edge.minus].append((edge.plus, edge.owner))
    came: dict[str, tuple[str, ...]] = {start: ()}
    queue = deque([start])
    while queue and end not in came:
        net = queue.popleft()
        for other, owner in at[net]:
            if other not in came and other != barred:
                came[other] = (*came[net], owner)
                queue.append(other)
    return came[end]


def tied_legs(circuit: Circuit) -> Iterator[tuple[tuple[str, ...], tuple[str, ...]]]:
    """Sets of drivers that meet behind the input though no leg names them together; with the nets where they may.

    The nets are those of the common island once the inputs' and posts' pads are taken away.
    """
    design = circuit.design
    rails = {circuit.pad(pair.name, sign) for pair in design.terminals for sign in "+-"}
    edges = [e for e in circuit.edges.values() if e.kind in ("part", "driver")]
    adjacent = adjacency((e.plus, e.minus) for e in edges if e.plus not in rails and e.minus not in rails)
    seen: set[str] = set()
    for net in circuit.nets:
        if net in rails or net in seen:
            continue
        island = reached(adjacent, net, ())
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
