"""A layout's copper as convex pieces, with its cuts and the holes that break it taken out.

In: a layout. Out: `Copper`. Refuses to know which pieces are one.

Areas are polygons, tracks are strips with round ends, rings are round discs. A piece is a point, an edge or a polygon
with all that lies within a radius of it, so that what is round stays exactly so, until a cut or hole meets it: then it
is a polygon inscribed in the circle, not 0.005 mm off. Holes take their copper away, but are taken out only where they
may part something: where no piece has copper all around them. Tags are metal of their own, even where they lie over
copper: a lug stands off the board and is soldered to nothing but leads, so they are no pieces.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from math import cos, hypot, pi, sin

from shuntwise.board.plane import (
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
from shuntwise.model.boards import Cut, Hole, Layout, Point
from shuntwise.source import Span

NARROW = 0.1
"""Copper or a gap of less than this (mm) is not relied on: common practice, no source (such is the width of the finest
traces that are etched without special care, and half the play of a saw).
"""

MOST_PIECES = 20_000
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
    and `radius` 0.
    """

    item: Item
    core: Shape
    radius: float = 0.0

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

    def around(self, point: Point) -> float:
        """Radius of the largest circle round a point that is all copper; outside, minus how far off it is."""
        if self.radius:
            return self.radius - to_edge(point, self.core[0], self.core[-1])[0]
        inside = min(bound - across * point[0] - up * point[1] for across, up, bound in self.bounds)
        return inside if inside >= 0 else -min(to_edge(point, start, end)[0] for start, end in edges(self.core))


@dataclass(frozen=True)
class Copper:
    """The pieces that are left of a layout's copper; `broken_by` are the cuts and holes that were taken out, with their
    shapes. `too_fine`: there are more pieces than MOST_PIECES, and those given are not all.
    """

    pieces: tuple[Piece, ...]
    broken_by: tuple[tuple[Item, Shape], ...]
    too_fine: bool = False


def copper_of(layout: Layout) -> Copper:
    """All copper of a layout, its cuts and holes taken out."""
    whole = tuple(_drawn(layout))
    cuts = [(Item(f"the cut at line {cut.span.line}", cut.span), cut) for cut in layout.cuts]
    pieces, too_fine = _without_cuts(whole, [cut for _, cut in cuts])
    if too_fine:
        return Copper(tuple(pieces), (), too_fine)
    pieces, holes = _without_holes(pieces, [hole for hole in layout.holes if not hole.tag])
    broken = [(item, cut_shape(cut)) for item, cut in cuts]
    broken += [(Item(f"the hole {hole.name}", hole.span), round_shape(hole)) for hole in holes]
    return Copper(tuple(pieces), tuple(broken), len(pieces) > MOST_PIECES)


def cut_shape(cut: Cut) -> Shape:
    """The rectangle that a cut takes away, nothing if it has no length."""
    (x0, y0), (x1, y1) = cut.start, cut.end
    length = hypot(x1 - x0, y1 - y0)
    if not length:
        return ()
    across, up = (y1 - y0) / length * cut.width / 2, (x0 - x1) / length * cut.width / 2
    return ((x0 - across, y0 - up), (x0 + across, y0 + up), (x1 + across, y1 + up), (x1 - across, y1 - up))


def round_shape(hole: Hole) -> Shape:
    """The corners of a hole."""
    return rounded((hole.at,), hole.diameter / 2)


def without_cut(pieces: Sequence[Piece], cut: Cut) -> list[Piece]:
    """Pieces of copper after one more cut."""
    return _without_cuts(pieces, [cut])[0]


def _drawn(layout: Layout) -> Iterator[Piece]:
    """The copper as the board is bought, with the rings."""
    board = layout.board
    for area in board.areas:
        item = Item(f"the area {area.name}", area.span, area.name)
        for part in convex_parts(area.corners):
            yield Piece(item, part)
    for track in board.tracks:
        item = Item(f"the track at line {track.span.line}", track.span)
        for start, end in zip(track.points, track.points[1:], strict=False):
            yield Piece(item, (start,) if start == end else (start, end), track.width / 2)
    for hole in layout.holes:
        if hole.ring:
            yield Piece(Item(f"the ring of {hole.name}", hole.span), (hole.at,), hole.ring / 2)


def _without_cuts(pieces: Sequence[Piece], cuts: Sequence[Cut]) -> tuple[list[Piece], bool]:
    """Pieces after cuts, and whether there are too many of them (they are not all given then)."""
    shapes = [shape for cut in cuts if (shape := cut_shape(cut))]
    if not shapes:
        return list(pieces), False
    meeting: dict[int, list[int]] = defaultdict(list)
    count = len(pieces)
    for low, high in close_pairs([*(piece.box for piece in pieces), *(box(shape) for shape in shapes)]):
        if low < count <= high:
            meeting[low].append(high - count)
    left: list[Piece] = []
    for number, piece in enumerate(pieces):
        parts = [piece]
        for met in sorted(meeting.get(number, ())):
            parts = [after for part in parts for after in _cut(part, shapes[met])]
            if len(left) + len(parts) > MOST_PIECES:
                return left + parts, True
        left += parts
    return left, False


def _cut(piece: Piece, shape: Shape) -> list[Piece]:
    """What a cut leaves of a piece.

    The sides along the cut go first: what is left before its start and beyond its end then joins them by an edge as
    long as the neck there is wide.
    """
    left, lower, right, upper = piece.box
    cut_left, cut_lower, cut_right, cut_upper = box(shape)
    if cut_left >= right or cut_right <= left or cut_lower >= upper or cut_upper <= lower:
        return [piece]
    left_side, start, right_side, end = outward(shape)
    parts: list[Shape] = []
    middle = piece.outline
    for across, up, bound in (left_side, right_side, start, end):
        parts.append(half(middle, -across, -up, -bound))
        middle = half(middle, across, up, bound)
        if thin(middle):
            return [piece]
    return [Piece(piece.item, part) for part in parts if not thin(part)]


def _without_holes(pieces: Sequence[Piece], holes: Sequence[Hole]) -> tuple[list[Piece], list[Hole]]:
    """Pieces after the holes that may part them, and these holes.

    A hole in copper that is wide enough all around it parts nothing: whatever it takes away has a way round.
    """
    boxes = [piece.box for piece in pieces]
    count = len(pieces)
    met: dict[int, list[int]] = defaultdict(list)
    for low, high in close_pairs([*boxes, *(box((hole.at,), hole.diameter / 2) for hole in holes)]):
        if low < count <= high:
            met[high - count].append(low)
    broken: dict[int, list[Hole]] = defaultdict(list)
    taken: list[Hole] = []
    for number, near in sorted(met.items()):
        hole = holes[number]
        if hole.diameter and not any(
            pieces[other].around(hole.at) >= hole.diameter / 2 + NARROW - 1e-9 for other in near
        ):
            taken.append(hole)
            for other in near:
                broken[other].append(hole)
    left: list[Piece] = []
    for number, piece in enumerate(pieces):
        parts = [piece]
        for hole in broken.get(number, ()):
            parts = [after for part in parts for after in _drilled(part, hole)]
        left += parts
        if len(left) > MOST_PIECES:
            break
    return left, [hole for hole in taken if hole.diameter]


def _drilled(piece: Piece, hole: Hole) -> list[Piece]:
    """What a hole leaves of a piece: wedges, which join by edges as long as the copper beside the hole is wide."""
    radius = hole.diameter / 2
    if piece.around(hole.at) <= -radius:
        return [piece]
    circle, (x, y) = round_shape(hole), hole.at
    if thin(shared(piece.outline, outward(circle))):
        return [piece]
    wedges: list[Piece] = []
    turn = pi / len(circle)
    for number, (xa, ya) in enumerate(circle):
        xb, yb = circle[(number + 1) % len(circle)]
        across, up = ((xa + xb) / 2 - x, (ya + yb) / 2 - y)
        length = hypot(across, up)
        across, up = across / length, up / length
        part = half(piece.outline, -across, -up, -(across * xa + up * ya))
        for side in (-1, 1):  # the two rays from the centre through the ends of this side of the circle
            back, beside = sin(turn), side * cos(turn)
            normal = (-across * back - up * beside, -up * back + across * beside)
            part = half(part, *normal, normal[0] * x + normal[1] * y)
        if not thin(part):
            wedges.append(Piece(piece.item, part))
    return wedges
