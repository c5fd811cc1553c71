"""Where one more hole can be drilled.

In: a layout, its islands. Out: a point. Refuses to know what the hole is for, and what bodies lie over it.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil, dist, floor

from shuntwise.board.copper import Piece, copper_of, cut_piece, drawn
from shuntwise.board.islands import Islands
from shuntwise.board.plane import edges, to_edge
from shuntwise.board.touching import touching
from shuntwise.model.boards import Layout, Point

LAND = 1.5
"""Copper all around a drilled hole, and the web between two holes (mm): common practice, no source."""

GRID = 0.5
"""Places are on a grid of this (mm), so that they can be marked out."""

MOST_STEPS = 100
"""Large copper is searched by a wider grid."""

LUG = 5.0
"""Diameter of a soldering lug, which a hole must leave free (mm): common practice, no source."""


def free_spot(
    layout: Layout, islands: Islands, island: int, diameter: float, near: Point | None = None
) -> Point | None:
    """Where a hole of `diameter` mm can be drilled into an island with LAND around it and to every other hole, clear of
    cuts and fixings: the place nearest to `near` (to the middle of the island's holes there, if that is not given).
    None if there is none on the grid.
    """
    names = {name for layout_name, name in islands.keys(island) if layout_name == layout.name}
    holes = [hole for hole in layout.holes if hole.name in names and not hole.tag]
    copper = copper_of(layout)
    found = touching(copper, layout.holes)
    sets = {found.sets[found.at_hole[hole.name]] for hole in holes if hole.name in found.at_hole}
    pieces = [piece for number, piece in enumerate(copper.pieces) if found.sets[number] in sets]
    if near is None and holes:
        near = sum(hole.at[0] for hole in holes) / len(holes), sum(hole.at[1] for hole in holes) / len(holes)
    if near is None:
        return None
    around = diameter / 2 + LAND
    kept = [(hole.at, around + (LUG if hole.tag else hole.diameter) / 2) for hole in layout.holes]
    kept += [(fixing.at, fixing.keep + diameter / 2) for fixing in layout.board.fixings]
    cuts = [taken for cut in layout.cuts if (taken := cut_piece(cut))]
    items = {piece.item for piece in pieces}
    best: tuple[float, Point] | None = None
    for whole in drawn(layout.board, layout.holes):
        if whole.item not in items:
            continue
        for place in _grid(whole, around):
            far = (dist(place, near), place)
            if (
                (best is None or far < best)
                and _room(whole, layout, place) >= around
                and all(dist(place, at) >= apart for at, apart in kept)
                and all(-cut.around(place) >= around for cut in cuts)
                and any(piece.around(place) >= 0 for piece in pieces)
            ):
                best = far
    return best[1] if best else None


def _grid(piece: Piece, margin: float) -> Iterator[Point]:
    """Places in the box around copper, clear of its sides; at most MOST_STEPS in each direction."""
    left, lower, right, upper = piece.box
    # A part of a notched area borders on others, where copper goes on.
    margin = margin if piece.radius else 0.0
    step = GRID * max(1, ceil(max(right - left, upper - lower) / GRID / MOST_STEPS))
    for across in range(ceil((left + margin) / step), floor((right - margin) / step) + 1):
        for up in range(ceil((lower + margin) / step), floor((upper - margin) / step) + 1):
            yield across * step, up * step


def _room(piece: Piece, layout: Layout, place: Point) -> float:
    """Radius of the largest circle round a place that is all one item's copper as drawn; negative off the piece."""
    room = piece.around(place)
    if room < 0 or piece.item.area is None:
        return room
    area = next(area for area in layout.board.areas if area.name == piece.item.area)
    return min(to_edge(place, start, end)[0] for start, end in edges(area.corners))
