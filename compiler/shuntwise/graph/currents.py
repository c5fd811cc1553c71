"""Which edges of a circuit can carry current, and how the others hang together.

In: a `Circuit`. Out: the keys of its live edges, and its dead edges in clusters. Refuses to know whose
fault a dead edge is.

An edge carries current if it lies on a closed loop through an input: it and an input's edge are then in
one biconnected component of the graph (R. E. Tarjan, Depth-first search and linear graph algorithms, SIAM
J. Comput. 1(2), 1972), which is found in linear time. Frequency plays no part: a capacitor is a path.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType

from shuntwise.graph.circuit import Circuit, Edge
from shuntwise.graph.topology import DisjointSets, loops


@dataclass(frozen=True)
class DeadPiece:
    """Dead edges that hang together without passing a live net or an input's pad.

    `contacts` are the live nets and input pads at which it hangs, `nets` those that are its own.
    """

    edges: tuple[Edge, ...]
    contacts: frozenset[str]
    nets: frozenset[str]


def live_edges(
    circuit: Circuit, coupled: Sequence[tuple[str, str]] = (), joined: Mapping[str, str] = MappingProxyType({})
) -> frozenset[str]:
    """Keys of the edges on a closed loop through an input, the inputs' own among them.

    `coupled` are pairs of coils' edges of which each drives a current in the loops of the other; `joined` are nets
    that count as others, such as the minus pads of amplifiers that share their return.
    """
    ends = {key: (joined.get(e.plus, e.plus), joined.get(e.minus, e.minus)) for key, e in circuit.edges.items()}
    between: dict[tuple[str, str], list[Edge]] = defaultdict(list)
    for key, (plus, minus) in ends.items():
        if plus != minus:
            between[_pair(plus, minus)].append(circuit.edges[key])
    live: set[str] = set()
    beside = {key: [key] for key, (plus, minus) in ends.items() if plus == minus}
    for component in loops(between):
        edges = [edge for a, b in component for edge in between[_pair(a, b)]]
        keys = [edge.key for edge in edges]
        if len(edges) > 1:
            beside.update(dict.fromkeys(keys, keys))
            if any(edge.kind == "feed" for edge in edges):
                live.update(keys)
    driven = {coil for pair in coupled for coil in pair if coil not in live and coil in beside}
    while reached := {b if a in live else a for a, b in coupled if (a in live) != (b in live)} & driven:
        live.update(key for coil in reached for key in beside[coil])
    return frozenset(live)


def _pair(a: str, b: str) -> tuple[str, str]:
    return (a, b) if a <= b else (b, a)


def dead_clusters(circuit: Circuit, live: frozenset[str]) -> tuple[DeadPiece, ...]:
    """The edges that carry no current, inputs and shorted edges apart, in clusters."""
    borders = {net for key in live for net in (circuit.edges[key].plus, circuit.edges[key].minus)}
    borders |= {circuit.pad(pair.name, sign) for pair in circuit.design.feeds for sign in "+-"}
    dead = [
        edge
        for edge in circuit.edges.values()
        if edge.key not in live and edge.kind != "feed" and edge.plus != edge.minus
    ]
    joined = DisjointSets(edge.key for edge in dead)
    at_net: dict[str, str] = {}
    for edge in dead:
        for net in {edge.plus, edge.minus} - borders:
            joined.union(at_net.setdefault(net, edge.key), edge.key)
    members: dict[str, list[Edge]] = defaultdict(list)
    for edge in dead:
        members[joined[edge.key]].append(edge)
    return tuple(_cluster(edges, borders) for edges in members.values())


def _cluster(edges: Iterable[Edge], borders: set[str]) -> DeadPiece:
    edges = tuple(edges)
    nets = {net for edge in edges for net in (edge.plus, edge.minus)}
    return DeadPiece(edges, frozenset(nets & borders), frozenset(nets - borders))
