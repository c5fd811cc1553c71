"""Boards and layouts as values, for tests of geometry: no text stands behind them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from shuntwise.model.boards import Area, Board, Cut, Hole, Layout, Point, Track
from shuntwise.source import Source, Span

_SOURCE = Source("board.shunt", "-\n" * 1000)


def at(line: int = 1) -> Span:
    """A place on a line."""
    return Span(_SOURCE, 2 * line - 2, 2 * line - 1)


def rectangle(name: str, left: float, lower: float, right: float, upper: float) -> Area:
    return Area(name, ((left, lower), (right, lower), (right, upper), (left, upper)), at())


def polygon(name: str, *corners: Point) -> Area:
    return Area(name, corners, at())


def track(width: float, *points: Point, line: int = 1) -> Track:
    return Track(width, points, at(line))


def cut(start: Point, end: Point, width: float = 1.0, line: int = 1) -> Cut:
    return Cut(start, end, width, at(line))


def hole(name: str, x: float, y: float, diameter: float = 1.3, **more: object) -> Hole:
    row = name.split(maxsplit=1)[0]
    return Hole(name, row, (x, y), diameter, at(), **more)  # type: ignore[arg-type]


def tag(name: str, x: float, y: float) -> Hole:
    return hole(name, x, y, 0.0, tag=True)


def layout(
    *copper: Area | Track | Hole,
    cuts: Sequence[Cut] = (),
    drilled: Iterable[Hole] = (),
    name: str = "plate",
    **more: object,
) -> Layout:
    """A layout on a board 100 mm by 80 mm of the areas, tracks and holes given."""
    board = {
        "name": "plate",
        "title": None,
        "width": 100.0,
        "height": 80.0,
        "thickness": 2.0,
        "copper": 0.035,
        "copper_side": "solder",
        "seen_from": "parts",
        "corners": (),
        "fixings": (),
        "span": at(),
        "name_span": at(),
        "areas": tuple(item for item in copper if isinstance(item, Area)),
        "tracks": tuple(item for item in copper if isinstance(item, Track)),
        "holes": tuple(item for item in copper if isinstance(item, Hole)),
    } | more
    return Layout(
        name,
        Board(**board),  # type: ignore[arg-type]
        tuple(cuts),
        tuple(drilled),
        (),
        (),
        None,
        at(),
        at(),
    )
