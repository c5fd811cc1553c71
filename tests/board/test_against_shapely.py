"""Islands of random layouts against shapely, a polygon library that the project does not use.

There the copper is one union of polygons, less cuts and all holes; an island is a polygon of it. `SHUNTWISE_LONG=1
pytest tests/board/test_against_shapely.py -s` takes 1,000 layouts in place of 60.
"""

from __future__ import annotations

import os
from itertools import combinations
from math import dist
from random import Random

import pytest

from board.random_layouts import random_layout
from shuntwise.board.copper import Piece, copper_of, cut_piece
from shuntwise.board.islands import islands
from shuntwise.board.plane import convex_parts
from shuntwise.board.touching import REACH, contact
from shuntwise.model.boards import Hole, Layout

shapely = pytest.importorskip("shapely")
COUNT = 1000 if os.environ.get("SHUNTWISE_LONG") else 60
FINE = 0.006
"""Circles are polygons on both sides: ours within 0.004 mm, theirs within 0.002."""


def copper(layout: Layout, spread: float = 0.0) -> list:
    """The copper of a layout as polygons that do not touch; with a border `spread` wider."""
    board = layout.board
    parts = [shapely.Polygon(area.corners) for area in board.areas]
    parts += [shapely.LineString(track.points).buffer(track.width / 2, quad_segs=24) for track in board.tracks]
    parts += [shapely.Point(hole.at).buffer(hole.ring / 2, quad_segs=24) for hole in layout.holes if hole.ring]
    gone = [shapely.Polygon(taken.core) for cut in layout.cuts if (taken := cut_piece(cut))]
    gone += [shapely.Point(hole.at).buffer(hole.diameter / 2, quad_segs=24) for hole in layout.holes if not hole.tag]
    left = shapely.difference(shapely.union_all(parts), shapely.union_all(gone))
    if spread:
        left = left.buffer(spread, quad_segs=4)
    return [part for part in shapely.get_parts(left) if part.area > 1e-9]


def near(hole: Hole, polygons: list, more: float = 0.0) -> list[int]:
    """Which of the polygons are within reach of a hole, the nearest first."""
    middle = shapely.Point(hole.at)
    found = sorted((shapely.distance(middle, part), number) for number, part in enumerate(polygons))
    return [number for distance, number in found if distance <= hole.diameter / 2 + REACH + more]


def pairs(layout: Layout, polygons: list, more: float = 0.0) -> set[tuple[str, str]]:
    """All pairs of holes in one polygon."""
    of = {hole.name: near(hole, polygons, more)[:1] for hole in layout.holes if not hole.tag}
    return {(a, b) for a, b in combinations(of, 2) if of[a] and of[a] == of[b]}


def test_islands_are_the_polygons_of_the_union() -> None:
    narrow_ones = differing = untold = 0
    for seed in range(COUNT):
        drawn = random_layout(seed)
        ours = islands([drawn])
        together = {(a, b) for (_, a), (_, b) in combinations(ours.of, 2) if ours.of["plate", a] == ours.of["plate", b]}
        polygons = copper(drawn)
        exact = pairs(drawn, polygons)
        unsure = {hole.name for hole in drawn.holes if _unsure(hole, polygons)}
        wrong = {pair for pair in together ^ exact if not unsure & {*pair}}
        narrow_ones += bool(ours.narrow)
        if wrong:
            # Only what is told to be by a hair may be otherwise, and then a hair's breadth must account for it.
            assert ours.narrow, (seed, wrong)
            differing += 1
            wider, slimmer = copper(drawn, 0.05 + FINE), copper(drawn, -0.05 - FINE)
            assert wrong & together <= pairs(drawn, wider, 0.06), seed
            assert not wrong & exact & pairs(drawn, slimmer, 0.06), seed
        if not ours.narrow:
            slim = pairs(drawn, copper(drawn, -0.05 + FINE), 0.06)
            untold += any(not unsure & {*pair} for pair in together & exact - slim)
    print(
        f"{COUNT} layouts: {narrow_ones} with a place narrower than 0.1 mm, {differing} differ there, {untold} untold"
    )
    assert narrow_ones > COUNT / 20
    assert differing <= COUNT / 10
    assert untold <= COUNT / 50


def _unsure(hole: Hole, polygons: list) -> bool:
    """Does the hole have no copper within reach, but nearly; or two pieces nearly as near?"""
    if hole.tag:
        return False
    distances = sorted(shapely.distance(shapely.Point(hole.at), part) for part in polygons)
    reach = hole.diameter / 2 + REACH
    return (bool(distances) and abs(distances[0] - reach) < FINE) or (
        len(distances) > 1 and distances[1] <= reach and distances[1] - distances[0] < 2 * FINE
    )


def test_the_width_of_contacts() -> None:
    checked = 0
    for seed in range(COUNT):
        pieces = copper_of(random_layout(seed)).pieces
        polygons = [_polygon(piece) for piece in pieces]
        chosen = Random(seed).sample(range(len(pieces)), min(40, len(pieces)))
        for one, other in combinations(chosen, 2):
            apart = shapely.distance(polygons[one], polygons[other])
            if apart > 0.5:
                continue
            width, _ = contact(pieces[one], pieces[other])
            checked += 1
            if apart > FINE:
                assert width == pytest.approx(-apart, abs=FINE), (seed, one, other)
            elif not apart and width < 0.1:
                # What polygons share, a hair wider and a hair slimmer than ours may be where circles are rounded.
                fat, thin = (
                    shapely.intersection(*(polygons[number].buffer(by, quad_segs=2) for number in (one, other)))
                    for by in (FINE, -FINE)
                )
                assert _diameter(thin) - 0.01 <= max(0.0, width) <= _diameter(fat) + 0.01, (seed, one, other)
            elif not apart:
                fat = [polygons[number].buffer(1e-6, quad_segs=2) for number in (one, other)]  # edges in common too
                assert _diameter(shapely.intersection(*fat)) > 0.1 - FINE, (seed, one, other)
    assert checked > 20 * COUNT


def _diameter(polygon: object) -> float:
    corners = [tuple(corner) for corner in shapely.get_coordinates(polygon)]
    return max((dist(p, q) for p, q in combinations(corners, 2)), default=0.0)


def _polygon(piece: Piece) -> object:
    if not piece.radius:
        return shapely.Polygon(piece.core)
    core = shapely.LineString(piece.core) if len(piece.core) > 1 else shapely.Point(piece.core)
    return core.buffer(piece.radius, quad_segs=24)


def test_polygons_come_apart_into_convex_shapes_that_fill_them() -> None:
    checked = 0
    for seed in range(COUNT):
        for area in random_layout(seed).board.areas:
            whole = shapely.Polygon(area.corners)
            if not whole.is_valid:
                continue
            parts = [shapely.Polygon(part) for part in convex_parts(area.corners)]
            assert all(part.convex_hull.area == pytest.approx(part.area) and part.exterior.is_ccw for part in parts)
            assert sum(part.area for part in parts) == pytest.approx(whole.area)
            assert shapely.symmetric_difference(shapely.union_all(parts), whole).area < 1e-6
            checked += 1
    assert checked > COUNT
