"""What joins the parts of a box that is laid out, as resistances: tracks, jumpers, bus wires, links and wires to pads.

In: a circuit, its layouts, where every lead lies. Out: `Metal`. An area of copper is one potential, so is a ring. A
wire of which the text does not state the diameter has no resistance, nor has one to a pad without its length; a jumper
without a length is as long as its ends are apart. Refuses to know what parts are made of.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from math import dist, pi

from shuntwise.board.compare import Comparison
from shuntwise.board.islands import Islands, Key
from shuntwise.board.strips import strips
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
    """Between two bits of metal, `ohm` 0 where they are taken for one. A track is called as what it goes between."""

    name: str
    ends: tuple[Key, Key]
    ohm: float
    owner: str
    track: bool = False


def wire_ohm(length_mm: float, diameter_mm: float) -> float:
    """The resistance of a round copper wire at 20 C: rho l / (pi d^2 / 4); 0 where one of the two is not known."""
    if not length_mm or not diameter_mm:
        return 0.0
    return RESISTIVITY_OHM_M["copper"] * (length_mm / 1e3) / (pi * (diameter_mm / 1e3) ** 2 / 4)


def strip_ohm(length_mm: float, width_mm: float, thickness_mm: float) -> float:
    """The resistance of a strip of copper at 20 C: rho l / (w t)."""
    return RESISTIVITY_OHM_M["copper"] * length_mm / (width_mm * thickness_mm) * 1e3


MOST_TRACKS = 200
"""Where more lengths of track carry current, tracks are taken for areas: a real board has a tenth of it."""


def metal(circuit: Circuit, layouts: Sequence[Layout], copper: Islands, comparison: Comparison) -> Metal:
    """The metal of layouts that make the circuit. A net is then one joint, and has all leads that it should."""
    found = _metal(circuit, layouts, copper, comparison)
    if sum(": track " in strap.name for strap in found.straps) > MOST_TRACKS:
        return _metal(circuit, layouts, replace(copper, drawn={}), comparison)
    return found


def _metal(circuit: Circuit, layouts: Sequence[Layout], copper: Islands, comparison: Comparison) -> Metal:
    lies = comparison.keys
    boards = {layout.name: layout for layout in layouts}
    soldered_to = {key for layout in layouts for wire in layout.wires for key in soldered(wire, boards)}
    bit, tracks = _bits(layouts, copper, {*lies.values(), *soldered_to})
    net_of = {lead: circuit.net_of[point_of(*lead)] for lead in lies}
    at = {lead: ("", point_of(*lead)) if lead[1] in "+-" else _at(key, bit) for lead, key in lies.items()}
    wires = [*_wires(layouts, bit), *_links(circuit, lies, bit), *tracks]
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
    straps = _carrying(straps, one, busy)

    def point(key: Key) -> Point:
        root = one[key]
        net = net_at[joined[root]]
        return Point(net, net if root == chief[net] else f"{net} at {' '.join(filter(None, root))}")

    names = _names(straps)
    return Metal(
        {lead: point(key) for lead, key in at.items()},
        tuple(
            Strap(name, point(wire.ends[0]), point(wire.ends[1]), wire.ohm, wire.owner)
            for name, wire in zip(names, straps, strict=True)
            if joined[wire.ends[0]] in net_at
        ),
    )


def _names(straps: Iterable[_Wire]) -> Iterator[str]:
    """A name for each, no two the same."""
    seen: Counter[str] = Counter()
    for wire in straps:
        (layout, first), (_, second) = wire.ends
        name = f"{layout}: track {first} to {second}" if wire.track else wire.name
        seen[name] += 1
        yield f"{name}, number {seen[name]}" if seen[name] > 1 else name


def _carrying(straps: Sequence[_Wire], one: DisjointSets[Key], busy: Collection[Key]) -> list[_Wire]:
    """Those that current may go through: not what leads nowhere. Tracks in a row are one."""
    left = dict(enumerate(straps))
    meeting: dict[Key, set[int]] = defaultdict(set)
    for number, wire in left.items():
        for end in wire.ends:
            meeting[one[end]].add(number)
    waiting = list(meeting)
    while waiting:
        key = waiting.pop()
        if key not in busy and len(meeting[key]) == 1:
            for end in left.pop(next(iter(meeting[key]))).ends:
                meeting[one[end]] &= left.keys()
                waiting.append(one[end])
    for key, numbers in meeting.items():
        if key in busy or len(numbers) != 2 or not all(left[number].track for number in numbers):
            continue
        number, other = sorted(numbers)
        near, far = (next(end for end in left[n].ends if one[end] != key) for n in (number, other))
        if one[near] != one[far]:
            left[number] = replace(left[number], ends=(near, far), ohm=left[number].ohm + left.pop(other).ohm)
            meeting[one[far]] ^= {number, other}
    return list(left.values())


def _bits(
    layouts: Sequence[Layout], copper: Islands, used: Collection[Key]
) -> tuple[Mapping[Key, Key], Iterable[_Wire]]:
    """For every hole or tag its bit of copper, called as one of these, and the tracks between the bits."""
    bit: dict[Key, Key] = {}
    tracks: list[_Wire] = []
    first: dict[int, Key] = {}
    for key, island in copper.of.items():
        bit[key] = first.setdefault(island, key)
    for layout in layouts:
        if layout.name not in copper.drawn:
            continue
        holes = [hole for hole in layout.holes if (layout.name, hole.name) in used]
        found = strips(*copper.drawn[layout.name], holes)
        bit.update({(layout.name, hole): (layout.name, name) for hole, name in found.bit.items()})
        for strip in found.strips:
            one, other = strip.ends
            ohm = strip_ohm(strip.length, strip.width, layout.board.copper)
            ends = (layout.name, one), (layout.name, other)
            tracks.append(_Wire("", ends, ohm, f"board {layout.name}", track=True))
    return bit, tracks


def _wires(layouts: Sequence[Layout], bit: Mapping[Key, Key]) -> Iterator[_Wire]:
    boards = {layout.name: layout for layout in layouts}
    where = {(layout.name, hole.name): hole.at for layout in layouts for hole in layout.holes}
    for layout in layouts:
        for wire in layout.wires:
            for a, b in pairwise(soldered(wire, boards)):
                length = wire.length
                if wire.kind != "lead out" and (wire.kind == "bus" or not length) and a[0] == b[0]:
                    length = dist(where[a], where[b])
                name = f"{layout.name}: {wire.kind} {a[1]} to {b[1]}"
                yield _Wire(name, (_at(a, bit), _at(b, bit)), wire_ohm(length, wire.diameter), f"board {layout.name}")


def _at(key: Key, bit: Mapping[Key, Key]) -> Key:
    return key if is_pad(key) else bit[key]


def _links(circuit: Circuit, lies: Mapping[Lead, Key], bit: Mapping[Key, Key]) -> Iterator[_Wire]:
    for part in circuit.design.parts.values():
        kind = KINDS[part.kind]
        ends = [lies.get((part.label, terminal)) for terminal in kind.ends]
        if kind.wire and part.fitted and ends[0] is not None and ends[1] is not None:
            ohm = wire_ohm(1e3 * part.get("length"), 1e3 * part.get("wire"))
            yield _Wire(part.label, (_at(ends[0], bit), _at(ends[1], bit)), ohm, part.label)
