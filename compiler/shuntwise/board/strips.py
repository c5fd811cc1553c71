"""Tracks as conductors: a layout's copper as bits, each of one potential, and the lengths of track between them.

In: `Copper`, which of its pieces are one, and the holes that something is soldered into. Out: `Strips`. Refuses to know
what the copper is made of.

Along its axis a piece of track is met by other copper and by holes. Between two of them that follow one another it is a
strip as long as they lie apart there; where an area or ring covers it, it is a part of that. What a cut or a hole
leaves of a track is as wide as it is across the axis. That current spreads from a hole, and goes round a corner of a
track by the shorter way, is passed over.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from itertools import islice
from math import dist

from shuntwise.board.copper import NARROW, Copper, Piece
from shuntwise.board.plane import TOUCH, Shape, close_pairs, middle, shared, to_edge
from shuntwise.board.touching import Touching, contact
from shuntwise.graph.topology import DisjointSets
from shuntwise.model.boards import Hole, Point

MOST_MEETINGS = 10_000
"""Where more pieces of copper lie near each other, tracks are taken for areas: a board of 2,000 ringed holes in rows on
strips has half as many."""


@dataclass(frozen=True)
class Strip:
    """A length of track between two bits of copper, both in mm."""

    ends: tuple[str, str]
    length: float
    width: float


@dataclass(frozen=True)
class Strips:
    """`bit`: for every hole with copper that was asked of the bit that it is in. Bits are called as one of their holes,
    else as their copper.
    """

    bit: Mapping[str, str]
    strips: tuple[Strip, ...]


Node = int | str | tuple[int, int]
"""A piece that is no track, by its number; a hole by its name; the joint of two pieces of track."""


def strips(copper: Copper, found: Touching, holes: Iterable[Hole]) -> Strips:
    """The strips between the bits of a layout's copper; `holes` are those that something is soldered into."""
    pieces = copper.pieces
    bits: DisjointSets[Node] = DisjointSets()
    met: dict[int, list[tuple[float, float, Node]]] = defaultdict(list)
    tracked = {found.sets[number] for number, piece in enumerate(pieces) if piece.axis}
    laid = [number for number in range(len(pieces)) if found.sets[number] in tracked]
    pairs = list(islice(close_pairs([pieces[number].box for number in laid], NARROW), MOST_MEETINGS + 1))
    if len(pairs) > MOST_MEETINGS:
        pairs, tracked = [], set()

    def node(number: int) -> Node:
        return number if found.sets[number] in tracked else found.sets[number]

    for hole in holes:
        bits.add(hole.name)
        reached = found.reach.get(hole.name, ())
        for number in reached:
            if found.sets[number] == found.sets[reached[0]]:
                if pieces[number].axis and tracked:
                    met[number].append((*_stretch(pieces[number], (hole.at,)), hole.name))
                else:
                    bits.union(hole.name, node(number))
    for low, high in pairs:
        one, other = laid[low], laid[high]
        width, at = contact(pieces[one], pieces[other])
        if width < 0:
            continue
        if pieces[one].axis and pieces[other].axis:
            joint = (_joint(pieces[one], pieces[other], at),)
            met[one].append((*_stretch(pieces[one], joint), (one, other)))
            met[other].append((*_stretch(pieces[other], joint), (one, other)))
        elif pieces[one].axis or pieces[other].axis:
            track, area = (one, other) if pieces[one].axis else (other, one)
            met[track].append((*_covered(pieces[track], pieces[area], at), area))
        else:
            bits.union(one, other)
    between: list[tuple[Node, Node, float, float]] = []
    for number, stretches in met.items():
        for *_, here in stretches:
            bits.add(here)
        stretches.sort(key=lambda stretch: stretch[:2])
        _, reach, before = stretches[0]
        for start, stop, here in stretches[1:]:
            if start - reach > TOUCH:
                between.append((before, here, start - reach, _breadth(pieces[number])))
            else:
                bits.union(before, here)
            reach, before = max(reach, stop), here
    names = _names(copper, bits)
    return Strips(
        {hole.name: names[bits[hole.name]] for hole in holes if hole.name in found.at_hole},
        tuple(
            Strip((names[bits[one]], names[bits[other]]), length, width)
            for one, other, length, width in between
            if bits[one] != bits[other]
        ),
    )


def _names(copper: Copper, bits: DisjointSets[Node]) -> dict[Node, str]:
    """For the node that stands for each bit what the bit is called: each a name of its own."""
    found: dict[Node, str] = {}
    count: Counter[str] = Counter()
    for members in bits.sets():
        holes = [member for member in members if isinstance(member, str)]
        numbers = [member for member in members if isinstance(member, int)]
        joints = [member[0] for member in members if isinstance(member, tuple)]
        words = holes[0] if holes else copper.pieces[(numbers or joints)[0]].item.words
        count[words] += 1
        found[bits[members[0]]] = f"{words}, {count[words]}" if count[words] > 1 else words
    return found


def _along(piece: Piece, point: Point) -> tuple[float, float]:
    """How far a point is along the axis of a piece of track, from its start, and to the left of it."""
    assert piece.axis is not None
    (x0, y0), (x1, y1) = piece.axis
    length = dist(*piece.axis)
    ahead, left = (x1 - x0) / length, (y1 - y0) / length
    x, y = point[0] - x0, point[1] - y0
    return x * ahead + y * left, y * ahead - x * left


def _stretch(piece: Piece, shape: Shape) -> tuple[float, float]:
    """From where to where a shape goes along the axis."""
    places = [_along(piece, corner)[0] for corner in shape]
    return min(places), max(places)


def _covered(track: Piece, area: Piece, at: Point) -> tuple[float, float]:
    """From where to where other copper is on a piece of track, which it meets at a point."""
    if track.radius and len(area.core) == 1:  # a ring, of which there may be many
        middle_at, beside = _along(track, area.core[0])
        if abs(beside) <= track.radius:
            return middle_at - area.radius, middle_at + area.radius
    return _stretch(track, shared(track.outline, area.bounds) or (at,))


def _breadth(piece: Piece) -> float:
    """Width across the axis."""
    if piece.radius:
        return 2 * piece.radius
    places = [_along(piece, corner)[1] for corner in piece.core]
    return max(places) - min(places)


def _joint(one: Piece, other: Piece, at: Point) -> Point:
    """Where current goes from one piece of track to another: where their axes are nearest, if both are there."""
    assert one.axis is not None and other.axis is not None
    ends = [(*to_edge(end, *axis), end) for a, axis in ((one.axis, other.axis), (other.axis, one.axis)) for end in a]
    crossing = _crossing(one.axis, other.axis)
    _, nearest, end = min(ends)
    point = crossing or ((nearest[0] + end[0]) / 2, (nearest[1] + end[1]) / 2)
    if one.around(point) >= -TOUCH and other.around(point) >= -TOUCH:
        return point
    common = shared(one.outline, other.bounds)
    return middle(common) if common else at


def _crossing(one: tuple[Point, Point], other: tuple[Point, Point]) -> Point | None:
    """Where two edges cross."""
    (ax, ay), (bx, by) = one
    (cx, cy), (dx, dy) = other
    turn = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx)
    if abs(turn) <= 1e-9 * dist(*one) * dist(*other):
        return None
    part = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / turn
    share = ((cx - ax) * (by - ay) - (cy - ay) * (bx - ax)) / turn
    if not (0 <= part <= 1 and 0 <= share <= 1):
        return None
    return ax + part * (bx - ax), ay + part * (by - ay)
