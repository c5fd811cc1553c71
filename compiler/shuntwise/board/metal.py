"""What joins the parts of a box that is laid out, as resistances: jumpers, bus wires, links and wires to pads.

In: a circuit, its layouts, where every lead lies. Out: `Metal`. An area of copper is one potential. A wire of which the
text does not state the diameter has no resistance, nor has one to a pad without its length; a jumper without a length
is as long as its ends are apart. Refuses to know what parts are made of.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import dist, pi

from shuntwise.board.compare import Comparison
from shuntwise.board.islands import Islands, Key
from shuntwise.board.wanted import Lead
from shuntwise.board.wires import is_pad, soldered
from shuntwise.graph.circuit import Circuit, point_of
from shuntwise.graph.topology import DisjointSets
from shuntwise.model.boards import Layout
from shuntwise.model.conductors import RESISTIVITY_OHM_M
from shuntwise.model.kinds import KINDS


@dataclass(frozen=True)
class Point:
    """A piece of metal of a net. The one called as its net is that which the others hang on."""

    net: str
    name: str


@dataclass(frozen=True)
class Strap:
    """Metal between two points of one net, `ohm` above zero. `name` is unique, `owner` what it is a piece of."""

    name: str
    first: Point
    second: Point
    ohm: float
    owner: str


@dataclass(frozen=True)
class Metal:
    """On which point each end lies; an end that is not named lies on its net's first. Every point of a net hangs on
    the others by straps, and an input's ends lie on those that are called as their nets.
    """

    point_of: Mapping[Lead, Point]
    straps: tuple[Strap, ...] = ()


@dataclass(frozen=True)
class _Wire:
    """Between two pieces, `ohm` 0 where they are taken for one."""

    name: str
    ends: tuple[Key, Key]
    ohm: float
    owner: str


def wire_ohm(length_mm: float, diameter_mm: float) -> float:
    """The resistance of a round copper wire at 20 C: rho l / (pi d^2 / 4); 0 where one of the two is not known."""
    if not length_mm or not diameter_mm:
        return 0.0
    return RESISTIVITY_OHM_M["copper"] * (length_mm / 1e3) / (pi * (diameter_mm / 1e3) ** 2 / 4)


def metal(circuit: Circuit, layouts: Sequence[Layout], copper: Islands, comparison: Comparison) -> Metal:
    """The metal of layouts that make the circuit. A net is then one joint, and has all leads that it should."""
    lies = comparison.keys
    piece = _Pieces(copper)
    net_of = {lead: circuit.net_of[point_of(*lead)] for lead in lies}
    at = {lead: ("", point_of(*lead)) if lead[1] in "+-" else piece[key] for lead, key in lies.items()}
    wires = [*_wires(layouts, piece), *_links(circuit, lies, piece)]
    inputs = [(pair.name, sign) for pair in circuit.design.feeds for sign in "+-"]
    one, joined = DisjointSets[Key](at.values()), DisjointSets[Key](at.values())
    for wire in wires:
        joined.union(*wire.ends)
        if not wire.ohm:
            one.union(*wire.ends)
    grounds: dict[str, Key] = {}
    for lead in inputs:  # amplifiers share their return
        if lead in at:
            one.union(at[lead], grounds.setdefault(net_of[lead], at[lead]))
    net_at = {joined[at[lead]]: net for lead, net in net_of.items()}
    most: dict[str, Counter[Key]] = defaultdict(Counter)
    for lead, net in net_of.items():
        most[net][one[at[lead]]] += 1
    chief = {net: one[grounds[net]] if net in grounds else found.most_common(1)[0][0] for net, found in most.items()}
    busy = {one[key] for key in at.values()}
    straps = [wire for wire in wires if wire.ohm and one[wire.ends[0]] != one[wire.ends[1]]]
    while True:  # what leads nowhere carries no current
        degree = Counter(one[end] for wire in straps for end in wire.ends)
        kept = [wire for wire in straps if all(degree[one[end]] > 1 or one[end] in busy for end in wire.ends)]
        if len(kept) == len(straps):
            break
        straps = kept

    def point(key: Key) -> Point:
        root = one[key]
        net = net_at[joined[root]]
        return Point(net, net if root == chief[net] else f"{net} at {' '.join(filter(None, root))}")

    return Metal(
        {lead: point(key) for lead, key in at.items()},
        tuple(
            Strap(wire.name, point(wire.ends[0]), point(wire.ends[1]), wire.ohm, wire.owner)
            for wire in straps
            if joined[wire.ends[0]] in net_at
        ),
    )


class _Pieces:
    """Every hole or tag by one of its island, every pad by itself."""

    def __init__(self, copper: Islands) -> None:
        self.of = copper.of
        self.first: dict[int, Key] = {}
        for key, island in copper.of.items():
            self.first.setdefault(island, key)

    def __getitem__(self, key: Key) -> Key:
        return key if is_pad(key) else self.first[self.of[key]]


def _wires(layouts: Sequence[Layout], piece: _Pieces) -> Iterator[_Wire]:
    boards = {layout.name: layout for layout in layouts}
    where = {(layout.name, hole.name): hole.at for layout in layouts for hole in layout.holes}
    seen: Counter[str] = Counter()
    for layout in layouts:
        for wire in layout.wires:
            for a, b in pairwise(soldered(wire, boards)):
                length = wire.length
                if wire.kind != "lead out" and (wire.kind == "bus" or not length) and a[0] == b[0]:
                    length = dist(where[a], where[b])
                name = f"{layout.name}: {wire.kind} {a[1]} to {b[1]}"
                seen[name] += 1
                name += f", number {seen[name]}" if seen[name] > 1 else ""
                yield _Wire(name, (piece[a], piece[b]), wire_ohm(length, wire.diameter), f"board {layout.name}")


def _links(circuit: Circuit, lies: Mapping[Lead, Key], piece: _Pieces) -> Iterator[_Wire]:
    for part in circuit.design.parts.values():
        kind = KINDS[part.kind]
        ends = [lies.get((part.label, terminal)) for terminal in kind.ends]
        if kind.wire and part.fitted and ends[0] is not None and ends[1] is not None:
            ohm = wire_ohm(1e3 * part.get("length"), 1e3 * part.get("wire"))
            yield _Wire(part.label, (piece[ends[0]], piece[ends[1]]), ohm, part.label)
