"""A layout's copper as convex pieces, with its cuts and the holes that break it taken out.

In: a layout. Out: `Copper`. Refuses to know which pieces are one.

Areas are polygons, tracks are strips with round ends, rings are round discs. A piece is a point, an edge or a polygon
with all that lies within a radius of it, so that what is round stays exactly so, until a cut or hole meets it: then it
is a polygon inscribed in the circle, not 0.005 mm off. Holes take their copper away, but are taken out only where they
may part something: where no piece has copper all around them, or where they crowd. Tags are metal of their own, even
where they lie over copper: a lug stands off the board and is soldered to nothing but leads, so they are no pieces.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from math import dist, hypot

from shuntwise.board.plane import (
    TOUCH,
    Box,
    Shape,
    Side,
    box,
    close_pairs,
    convex_parts,
    edges,
    half,
    outward,
    rounded,
    shared,
    thin,
    to_edge,
)
from shuntwise.model.boards import Board, Cut, Hole, Layout, Point
from shuntwise.source import Span

NARROW = 0.1
"""Copper or a gap of less than this (mm) is not relied on: common practice, no source (such is the width of the finest
traces that are etched without special care, and half the play of a saw).
"""

MOST_PIECES = 10_000
"""More pieces are not worked on: 2,000 cuts through 1,000 areas would leave millions."""


@dataclass(frozen=True)
class Item:
    """What made a piece, or broke it: words such as `the area north`, and its place in the text."""

    words: str
    span: Span
    area: str | None = None
    """The name of an area."""


@dataclass(frozen=True)
class Piece:
    """Convex copper of one item: all within `radius` of `core`, which is a point or an edge, or else a convex polygon
    and `radius` 0. `axis`: of a track's, the stretch of track that it is, or is left of.
    """

    item: Item
    core: Shape
    radius: float = 0.0
    axis: tuple[Point, Point] | None = None

    @cached_property
    def box(self) -> Box:
        return box(self.core, self.radius)

    @cached_property
    def outline(self) -> Shape:
        """Its corners; a circle is a polygon inscribed in it."""
        return rounded(self.core, self.radius) if self.radius else self.core

    @cached_property
    def bounds(self) -> tuple[Side, ...]:
        """The half-planes that bound its outline."""
        return outward(self.outline)

    def left(self, shapes: Iterable[Shape]) -> list[Piece]:
        """What is left of it."""
        return [Piece(self.item, shape, axis=self.axis) for shape in shapes if not thin(shape)]

    def around(self, point: Point) -> float:
        """Radius of the largest circle round a point that is all copper; outside, minus how far off it is."""
        if self.radius:
            return self.radius - to_edge(point, self.core[0], self.core[-1])[0]
        inside = min(bound - across * point[0] - up * point[1] for across, up, bound in self.bounds)
        return inside if inside >= 0 else -min(to_edge(point, start, end)[0] for start, end in edges(self.core))


@dataclass(frozen=True)
class Copper:
    """The pieces that are left of a layout's copper, and what was taken out of it, cuts and holes, as pieces too.

    `too_fine`: there are more pieces than MOST_PIECES, and those given are not all.
    """

    pieces: tuple[Piece, ...]
    taken: tuple[Piece, ...]
    too_fine: bool = False


def copper_of(layout: Layout) -> Copper:
    """All copper of a layout, its cuts and holes taken out."""
    cuts = [taken for cut in layout.cuts if (taken := cut_piece(cut))]
    pieces = _without(tuple(drawn(layout.board, layout.holes)), cuts, _cut)
    holes = _breaking(pieces, [hole for hole in layout.holes if not hole.tag and hole.diameter])
    pieces = _without(pieces, holes, _drilled)
    return Copper(tuple(pieces), (*cuts, *holes), len(pieces) > MOST_PIECES)


def cut_piece(cut: Cut) -> Piece | None:
    """The rectangle that a cut takes away; None if it has no length."""
    (x0, y0), (x1, y1) = cut.start, cut.end
    length = hypot(x1 - x0, y1 - y0)
    if not length:
        return None
    across, up = (y1 - y0) / length * cut.width / 2, (x0 - x1) / length * cut.width / 2
    corners = ((x0 - across, y0 - up), (x0 + across, y0 + up), (x1 + across, y1 + up), (x1 - across, y1 - up))
    return Piece(Item(f"the cut at line {cut.span.line}", cut.span), corners)


def without_cut(pieces: Sequence[Piece], cut: Cut) -> list[Piece]:
    """Pieces of copper after one more cut."""
    taken = cut_piece(cut)
    return [part for piece in pieces for part in _cut(piece, taken)] if taken else list(pieces)


def drawn(board: Board, holes: Iterable[Hole]) -> Iterator[Piece]:
    """The copper of a board as it is bought, with the rings of holes."""
    for area in board.areas:
        item = Item(f"the area {area.name}", area.span, area.name)
        for part in convex_parts(area.corners):
            yield Piece(item, part)
    for track in board.tracks:
        item = Item(f"the track at line {track.span.line}", track.span)
        for start, end in zip(track.points, track.points[1:], strict=False):
            if start == end:
                yield Piece(item, (start,), track.width / 2)
            else:
                yield Piece(item, (start, end), track.width / 2, (start, end))
    for hole in holes:
        if hole.ring:
            yield Piece(Item(f"the ring of {hole.name}", hole.span), (hole.at,), hole.ring / 2)


def _without(
    pieces: Sequence[Piece], taken: Sequence[Piece], parts_of: Callable[[Piece, Piece], list[Piece]]
) -> list[Piece]:
    """Pieces after something is taken out of them; once there are too many, not all."""
    if not taken:
        return list(pieces)
    meeting: dict[int, list[int]] = defaultdict(list)
    for number, other in _pairs(pieces, [gone.box for gone in taken]):
        meeting[number].append(other)
    left: list[Piece] = []
    for number, piece in enumerate(pieces):
        parts = [piece]
        for other in sorted(meeting.get(number, ())):
            gone = taken[other]
            x0, y0, x1, y1 = gone.box
            parts = [
                after
                for part in parts
                for after in (
                    (part,)
                    if part.box[0] >= x1 or part.box[2] <= x0 or part.box[1] >= y1 or part.box[3] <= y0
                    else parts_of(part, gone)
                )
            ]
            if len(left) + len(parts) > MOST_PIECES:
                return left + parts
        left += parts
    return left


def _pairs(pieces: Sequence[Piece], boxes: Sequence[Box]) -> Iterator[tuple[int, int]]:
    """The numbers of all pieces and boxes that overlap."""
    count = len(pieces)
    for low, high in close_pairs([*(piece.box for piece in pieces), *boxes]):
        if low < count <= high:
            yield low, high - count


def _cut(piece: Piece, cut: Piece) -> list[Piece]:
    """What a cut leaves of a piece.

    The sides along the cut go first: what is left before its start and beyond its end then joins them by an edge as
    long as the neck there is wide.
    """
    left_side, start, right_side, end = cut.bounds
    parts: list[Shape] = []
    middle = piece.outline
    for across, up, bound in (left_side, right_side, start, end):
        parts.append(half(middle, -across, -up, -bound))
        middle = half(middle, across, up, bound)
        if thin(middle):
            return [piece]
    return piece.left(parts)


def _breaking(pieces: Sequence[Piece], holes: Sequence[Hole]) -> list[Piece]:
    """The holes that may part pieces.

    A hole in copper that is wide enough all around it parts nothing, as what it takes away has a way round, unless
    another hole is so near that it may take this away.
    """
    boxes = [box((hole.at,), hole.diameter / 2) for hole in holes]
    crowded = {
        number
        for pair in close_pairs(boxes, NARROW)
        if dist(*(holes[number].at for number in pair)) < sum(holes[number].diameter for number in pair) / 2 + NARROW
        for number in pair
    }
    met: set[int] = set()
    safe: set[int] = set()
    for piece, number in _pairs(pieces, boxes):
        if number not in safe:
            met.add(number)
            hole = holes[number]
            if number not in crowded and pieces[piece].around(hole.at) >= hole.diameter / 2 + NARROW - TOUCH:
                safe.add(number)
    broken = [holes[number] for number in sorted(met - safe)]
    return [Piece(Item(f"the hole {hole.name}", hole.span), (hole.at,), hole.diameter / 2) for hole in broken]


def _drilled(piece: Piece, hole: Piece) -> list[Piece]:
    """What a hole leaves of a piece: wedges, which join by edges as long as the copper beside the hole is wide."""
    circle, ((x, y),) = hole.outline, hole.core
    if piece.around((x, y)) <= -hole.radius or thin(shared(piece.outline, hole.bounds)):
        return [piece]
    wedges: list[Shape] = []
    for (xa, ya), (xb, yb) in edges(circle):
        # Beyond this side of the circle, and between the rays from the centre through its ends.
        part = piece.outline
        for (x0, y0), (x1, y1) in (((xb, yb), (xa, ya)), ((x, y), (xa, ya)), ((xb, yb), (x, y))):
            length = hypot(x1 - x0, y1 - y0)
            across, up = (y1 - y0) / length, (x0 - x1) / length
            part = half(part, across, up, across * x0 + up * y0)
        wedges.append(part)
    return piece.left(wedges)
