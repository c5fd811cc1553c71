"""Which pieces of copper are one, and where they are so, or are not, by a hair.

In: `Copper` and the holes of its layout. Out: `Touching`. Refuses to know of layouts beside this one.

Two pieces touch where they overlap or share an edge or a point; the width of their contact is the diameter of what
they share. Contacts of NARROW and more are joined first, then narrower ones, the widest first: so a narrow contact is
only told of where no wider way leads round it.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from math import inf
from typing import Literal

from shuntwise.board.copper import NARROW, Copper, Item, Piece
from shuntwise.board.plane import TOUCH, apart, box, close_pairs, diameter, middle, shared
from shuntwise.graph.topology import DisjointSets
from shuntwise.model.boards import Hole, Point

REACH = 0.5
"""Copper that comes as near as this to a hole's edge takes its solder (mm; common practice, no source: solder wets the
copper around a lead for about half a millimetre at least, and drills wander by less).
"""


@dataclass(frozen=True)
class Hair:
    """A place where a hair's breadth decides. `kind`: a `joint` of copper narrower than NARROW, `width` wide, 0 where
    pieces only meet at a point; a `gap` that leaves less than NARROW open; a `hole` that copper not joined otherwise
    reaches, `width` being how far the farther of both is from its edge.
    """

    kind: Literal["joint", "gap", "hole"]
    at: Point
    width: float
    items: tuple[Item, Item]


@dataclass(frozen=True)
class Touching:
    """`sets`: for every piece the number of the piece that stands for its copper. `at_hole`: for every hole that has
    copper, by name, the nearest piece. `reach`: all pieces that it reaches.
    """

    sets: tuple[int, ...]
    at_hole: Mapping[str, int]
    reach: Mapping[str, tuple[int, ...]]
    hairs: tuple[Hair, ...]


def touching(copper: Copper, holes: Iterable[Hole]) -> Touching:
    """The pieces of a layout's copper in sets, and which holes (no tags) they hold."""
    pieces, drilled = copper.pieces, [hole for hole in holes if not hole.tag]
    sets: DisjointSets[int] = DisjointSets(range(len(pieces)))
    narrow: list[tuple[float, int, int, Point]] = []
    for one, other in close_pairs([piece.box for piece in pieces], NARROW):
        if sets[one] != sets[other]:
            width, at = contact(pieces[one], pieces[other])
            if width >= NARROW:
                sets.union(one, other)
            elif width > -NARROW:
                narrow.append((width, one, other, at))
    reach = _reached(pieces, drilled)
    at_hole = {name: near[0][1] for name, near in reach.items()}
    hairs = _joined_narrowly(copper, sets, narrow, at_hole.values())
    hairs += _left_open(copper, sets, narrow, at_hole.values())
    for hole in drilled:
        near = reach.get(hole.name, [])
        for distance, other in near[1:]:
            if sets[other] != sets[near[0][1]]:
                items = pieces[near[0][1]].item, pieces[other].item
                hairs.append(Hair("hole", hole.at, max(0.0, distance - hole.diameter / 2), items))
                break
    return Touching(
        tuple(sets[number] for number in range(len(pieces))),
        at_hole,
        {name: tuple(number for _, number in near) for name, near in reach.items()},
        tuple(hairs),
    )


def contact(one: Piece, other: Piece) -> tuple[float, Point]:
    """How wide the contact of two pieces is, and where; where they do not touch, the gap between them as a negative.

    A contact that is surely wide enough may be told as infinite.
    """
    between = one.radius + other.radius
    if between:
        distance, at = apart(one.core, other.core) if len(one.core) < len(other.core) else apart(other.core, one.core)
        if distance - between > TOUCH:
            return between - distance, at
        # A line through both nearest points, or from a point in both, stays in what they share for at least this.
        spans = [between - distance, *(p.radius or diameter(p.core) / 2 for p in (one, other))]
        if min(spans) >= NARROW:
            return inf, at
        common = shared(one.outline, other.bounds)
        return (diameter(common), middle(common)) if common else (0.0, at)
    common = shared(one.core, other.bounds)
    if common:
        return diameter(common), middle(common)
    distance, at = apart(one.core, other.core)
    return min(-distance, -TOUCH), at


def _reached(pieces: Sequence[Piece], holes: Sequence[Hole]) -> dict[str, list[tuple[float, int]]]:
    """For every hole the copper that takes its solder: distance from its centre, and piece, the nearest first."""
    count = len(pieces)
    found: dict[str, list[tuple[float, int]]] = defaultdict(list)
    boxes = [box((hole.at,), hole.diameter / 2 + REACH) for hole in holes]
    for low, high in close_pairs([*(piece.box for piece in pieces), *boxes]):
        if low < count <= high:
            hole = holes[high - count]
            distance = max(0.0, -pieces[low].around(hole.at))
            if distance <= hole.diameter / 2 + REACH + TOUCH:
                found[hole.name].append((distance, low))
    return {name: sorted(near) for name, near in found.items()}


def _joined_narrowly(
    copper: Copper,
    sets: DisjointSets[int],
    contacts: Iterable[tuple[float, int, int, Point]],
    held: Iterable[int],
) -> list[Hair]:
    """Unite what touches narrowly; the contacts without which copper that some hole is in would come apart."""
    with_holes = {sets[number] for number in held}
    hairs: list[Hair] = []
    for width, one, other, at in sorted(contacts, key=lambda found: (-found[0], found[1:])):
        if width < 0 or sets[one] == sets[other]:
            continue
        both = {sets[one], sets[other]}
        if both <= with_holes:
            hairs.append(Hair("joint", at, width, _named(copper, one, other, at)))
        sets.union(one, other)
        if both & with_holes:
            with_holes.add(sets[one])
    return hairs


def _left_open(
    copper: Copper,
    sets: DisjointSets[int],
    contacts: Iterable[tuple[float, int, int, Point]],
    held: Iterable[int],
) -> list[Hair]:
    """The narrowest gap between any two pieces of copper that some hole is in."""
    with_holes = {sets[number] for number in held}
    told: set[frozenset[int]] = set()
    hairs: list[Hair] = []
    for width, one, other, at in sorted(contacts, key=lambda found: (-found[0], found[1:])):
        both = frozenset((sets[one], sets[other]))
        if width < 0 and len(both) == 2 and both <= with_holes and both not in told:
            told.add(both)
            hairs.append(Hair("gap", at, -width, _named(copper, one, other, at)))
    return hairs


def _named(copper: Copper, one: int, other: int, at: Point) -> tuple[Item, Item]:
    """What meets there: two items, or one and the cut or hole that all but parts it."""
    first, second = copper.pieces[one].item, copper.pieces[other].item
    if first == second and copper.taken:
        second = max(copper.taken, key=lambda gone: gone.around(at)).item
    return first, second
