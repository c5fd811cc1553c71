"""The statements inside a `board` and a `layout`, as they were written.

In: nothing (plain values). Refuses to know whether a name exists, and whether a point is on the board.
"""

from __future__ import annotations

from typing import NamedTuple

from shuntwise.source import Span
from shuntwise.syntax.tree import Expr, Ident, Item, Pad, Path, Text


class Point(NamedTuple):
    """`12:30 mm`: across and up as typed, with one unit for both."""

    across: Ident
    up: Ident
    unit: Ident
    span: Span


# --- the board as it is bought


class Outline(NamedTuple):
    size: Point
    span: Span


class Thickness(NamedTuple):
    value: Expr
    span: Span


class Copper(NamedTuple):
    thickness: Expr | None
    side: Ident
    span: Span


class Seen(NamedTuple):
    side: Ident
    span: Span


class CornerDecl(NamedTuple):
    at: Point
    cut: Expr
    span: Span


class AreaDecl(NamedTuple):
    """`corners` are two opposite ones of a rectangle, or all in turn."""

    name: Ident
    corners: tuple[Point, ...]
    span: Span


class TrackDecl(NamedTuple):
    width: Expr
    points: tuple[Point, ...]
    items: tuple[Item, ...]
    span: Span


class HolesDecl(NamedTuple):
    """A row of `number` from the first point to the last, or with one point and no `number` a single hole.

    Without a `diameter` they are tags.
    """

    name: Ident
    number: Ident | None
    diameter: Expr | None
    points: tuple[Point, ...]
    items: tuple[Item, ...]
    span: Span


class FixingDecl(NamedTuple):
    diameter: Expr
    at: Point
    items: tuple[Item, ...]
    span: Span


BoardLine = Outline | Thickness | Copper | Seen | CornerDecl | AreaDecl | TrackDecl | HolesDecl | FixingDecl


# --- what is done to it


class SpotRef(NamedTuple):
    """`north 3`, `h1`, `low.upper 2`, or a pad."""

    place: Path | Pad
    number: Ident | None
    span: Span


class CutDecl(NamedTuple):
    start: Point
    end: Point
    items: tuple[Item, ...]
    span: Span


class DrillDecl(NamedTuple):
    name: Ident
    diameter: Expr
    at: Point
    area: Ident | None
    items: tuple[Item, ...]
    span: Span


class WireDecl(NamedTuple):
    """`kind` is jumper, bus or lead out."""

    kind: str
    first: SpotRef
    second: SpotRef
    items: tuple[Item, ...]
    span: Span


class AxisOf(NamedTuple):
    value: Expr
    span: Span


class LeadInto(NamedTuple):
    """`start into north 1`, or without a terminal `leads into A and B`."""

    terminal: Ident | None
    spots: tuple[SpotRef, ...]
    span: Span


class TieDecl(NamedTuple):
    width: Expr
    first: Point
    second: Point
    span: Span


class Raised(NamedTuple):
    value: Expr
    span: Span


class Note(NamedTuple):
    key: Ident
    text: Text
    span: Span


How = AxisOf | LeadInto | TieDecl | Raised | Note


class PlaceDecl(NamedTuple):
    """`at` is None off the board."""

    label: Path
    at: Point | None
    side: Ident | None
    how: tuple[How, ...]
    span: Span


class Depth(NamedTuple):
    value: Expr
    span: Span


LayoutLine = CutDecl | DrillDecl | WireDecl | PlaceDecl | Depth
