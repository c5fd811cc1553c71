"""`board` statements -> boards: every point turned to be as seen from the parts side, every row with all its holes.

In: the declarations, the scope of the design. Out: `Board`s by name, and findings in the scope. A line that is refused
is left out and its board kept; a board without an outline is left out. Refuses to know what is built on a board.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import TypeVar

from shuntwise.model import board_sizes as sizes
from shuntwise.model import findings
from shuntwise.model.board_shapes import CLOSE, area, collisions, crosses_itself, inside, rectangle
from shuntwise.model.boards import Area, Board, Corner, Fixing, Hole, Point, Side, Track
from shuntwise.model.evaluate import Scope
from shuntwise.source import Span
from shuntwise.syntax import board_tree as b
from shuntwise.syntax import tree as t

_Single = TypeVar("_Single", b.Outline, b.Thickness, b.Copper, b.Seen)

MOST_BOARDS = 20
"""A design is one box; more boards than this are a mistake or mischief. So are the other bounds, for one board."""
MOST_HOLES = 2000
MOST_SHAPES = 1000
MOST_CORNERS = 5000
USUAL_COPPER = 0.035
"""mm: copper of 305 g/m2, the usual foil (common practice, no source)."""


def read_boards(declared: Mapping[str, t.BoardDecl], lost: Sequence[t.Lost], scope: Scope) -> dict[str, Board]:
    """The boards that can be had, in the order of the text. In one of which something was `lost` nothing is missed."""
    found = {}
    for number, (name, entry) in enumerate(declared.items()):
        if number == MOST_BOARDS:
            scope.say(findings.too_much_on_board(entry.name.span, f"more than {MOST_BOARDS} boards are declared"))
            break
        said, gone = len(scope.diagnostics), is_lost(entry.span, lost)
        board = _Reading(entry, scope, gone).read()
        if board is not None:
            found[name] = replace(board, refused=gone or len(scope.diagnostics) > said)
    return found


@dataclass
class _Reading:
    """One board so far."""

    entry: t.BoardDecl
    scope: Scope
    lost: bool
    seen_from: Side = "parts"
    width: float = 0.0
    height: float = 0.0
    areas: dict[str, Area] = field(default_factory=dict)
    tracks: list[Track] = field(default_factory=list)
    holes: list[Hole] = field(default_factory=list)
    rows: dict[str, b.HolesDecl] = field(default_factory=dict)
    fixings: list[Fixing] = field(default_factory=list)
    corners: list[Corner] = field(default_factory=list)
    singles: dict[type, b.BoardLine] = field(default_factory=dict)
    counted: int = 0
    shapes: int = 0
    shape_corners: int = 0
    full: bool = False

    def read(self) -> Board | None:
        self.take_singles()
        outline = self.one(b.Outline)
        if outline is None:
            if not self.lost:
                self.scope.say(findings.board_incomplete(self.entry.name, "outline", "outline 100:80 mm"))
            return None
        size = sizes.point(outline.size, self.scope)
        if size is None:
            return None
        if not all(CLOSE < length <= sizes.LARGEST for length in size):
            self.scope.say(findings.outline_impossible(outline.size.span, sizes.LARGEST))
            return None
        self.width, self.height = size
        thickness = self.thickness()
        copper, copper_side = self.copper()
        for line in self.entry.lines:
            if isinstance(line, b.CornerDecl):
                self.corner(line)
        for line in self.entry.lines:  # areas before the rows that lie in them
            if isinstance(line, b.AreaDecl | b.TrackDecl):
                self.shape(line)
        for line in self.entry.lines:
            if isinstance(line, b.HolesDecl):
                self.row(line)
            elif isinstance(line, b.FixingDecl):
                self.fixing(line)
        self.collide()
        return Board(
            name=self.entry.name.text,
            title=self.entry.title.value if self.entry.title else None,
            width=self.width,
            height=self.height,
            thickness=thickness,
            copper=copper,
            copper_side=copper_side,
            seen_from=self.seen_from,
            corners=tuple(self.corners),
            areas=tuple(self.areas.values()),
            tracks=tuple(self.tracks),
            holes=tuple(self.holes),
            fixings=tuple(self.fixings),
            span=self.entry.span,
            name_span=self.entry.name.span,
        )

    # --- what a board has once

    def take_singles(self) -> None:
        for line in self.entry.lines:
            if isinstance(line, b.Outline | b.Thickness | b.Copper | b.Seen):
                old = self.singles.setdefault(type(line), line)
                if old is not line:
                    word = line.span.text.split(maxsplit=1)[0]
                    self.scope.say(findings.told_twice(f"`{word}`", self.entry.name.text, line.span, old.span))
        seen = self.one(b.Seen)
        if seen is not None:
            self.seen_from = _side(seen.side)

    def one(self, kind: type[_Single]) -> _Single | None:
        line = self.singles.get(kind)
        return line if isinstance(line, kind) else None

    def thickness(self) -> float:
        line = self.one(b.Thickness)
        if line is None:
            if not self.lost:
                self.scope.say(findings.board_incomplete(self.entry.name, "thickness", "thickness 1.6 mm"))
            return 0.0
        return sizes.size(line.value, sizes.THICKNESS, self.scope, self.entry.name.text) or 0.0

    def copper(self) -> tuple[float, Side]:
        line = self.one(b.Copper)
        if line is None:
            return USUAL_COPPER, "solder"
        if line.thickness is None:
            return USUAL_COPPER, _side(line.side)
        stated = sizes.size(line.thickness, sizes.COPPER, self.scope, self.entry.name.text)
        return stated or USUAL_COPPER, _side(line.side)

    # --- points

    def turned(self, at: Point) -> Point:
        """As seen from the parts side."""
        return at if self.seen_from == "parts" else (round(self.width - at[0], 9), at[1])

    def points(self, written: tuple[b.Point, ...]) -> tuple[Point, ...] | None:
        """On the board, as seen from the parts side; None where a finding has been made."""
        found = sizes.points(written, self.scope)
        if found is None:
            return None
        turned = tuple(self.turned(at) for at in found)
        for at, one in zip(turned, written, strict=True):
            if not on_board(at, self.width, self.height, self.corners):
                self.scope.say(findings.outside_board(one.span, self.entry.name.text, (self.width, self.height)))
                return None
        return turned

    # --- its lines

    def corner(self, line: b.CornerDecl) -> None:
        found = sizes.point(line.at, self.scope)
        cut = sizes.size(line.cut, sizes.CLIPPED, self.scope, self.entry.name.text)
        if found is None or cut is None:
            return
        x, y = at = self.turned(found)
        if min(abs(x), abs(x - self.width)) > CLOSE or min(abs(y), abs(y - self.height)) > CLOSE:
            self.scope.say(findings.no_corner(line.at.span, (self.width, self.height)))
            return
        if cut > min(self.width, self.height) / 2:
            self.scope.say(findings.shape_impossible(line.cut.span, "more is cut off than there is",
                                                     "cut less than half of the shorter side off"))  # fmt: skip
            return
        old = next((corner for corner in self.corners if corner.at == at), None)
        if old is not None:
            self.scope.say(findings.same_label_twice(line.at.span.text, line.at.span, old.span, "corner"))
            return
        self.corners.append(Corner(at, cut, line.span))

    def shape(self, line: b.AreaDecl | b.TrackDecl) -> None:
        written = line.corners if isinstance(line, b.AreaDecl) else line.points
        self.shapes, self.shape_corners = self.shapes + 1, self.shape_corners + len(written)
        if self.shapes > MOST_SHAPES or self.shape_corners > MOST_CORNERS:
            self.overfull(line.span, f"more than {MOST_SHAPES} areas and tracks, or {MOST_CORNERS} corners of them")
            return
        if isinstance(line, b.AreaDecl):
            old = self.areas.get(line.name.text)
            if old is not None:
                self.scope.say(findings.same_label_twice(line.name.text, line.name.span, old.span, "area"))
                return
        found = self.points(written)
        if isinstance(line, b.TrackDecl):
            self.track(line, found)
        elif found is not None:
            self.area(line, found)

    def area(self, line: b.AreaDecl, found: tuple[Point, ...]) -> None:
        corners = rectangle(*found) if len(found) == 2 else found
        if len(found) > 2 and crosses_itself(corners):
            said = findings.shape_impossible(line.name.span, f"the edge of the area `{line.name.text}` meets itself",
                                             "give the corners in turn, each once")  # fmt: skip
        elif area(corners) < CLOSE:
            said = findings.shape_impossible(line.name.span, f"the area `{line.name.text}` encloses nothing",
                                             "two opposite corners make a rectangle")  # fmt: skip
        else:
            self.areas[line.name.text] = Area(line.name.text, corners, line.span)
            return
        self.scope.say(said)

    def track(self, line: b.TrackDecl, found: tuple[Point, ...] | None) -> None:
        width = sizes.size(line.width, sizes.TRACK, self.scope, self.entry.name.text)
        sizes.sizes(line.items, sizes.TRACK_LIST, self.scope, "track")
        if found is None or width is None:
            return
        for one, other, at in zip(found, found[1:], line.points[1:], strict=False):
            if max(abs(one[0] - other[0]), abs(one[1] - other[1])) < CLOSE:
                self.scope.say(findings.shape_impossible(at.span, "the track stands still between two of its points",
                                                         "give each point once"))  # fmt: skip
                return
        self.tracks.append(Track(width, found, line.span))

    def row(self, line: b.HolesDecl) -> None:
        name = line.name.text
        old = self.rows.setdefault(name, line)
        if old is not line:
            what = "row" if line.number is not None else "hole"
            self.scope.say(findings.same_label_twice(name, line.name.span, old.name.span, what))
            return
        count = 1 if line.number is None else whole(line.number, self.scope)
        diameter = 0.0
        if line.diameter is not None:
            stated = sizes.size(line.diameter, sizes.HOLE, self.scope, name)
            count, diameter = (count, stated) if stated is not None else (None, 0.0)
        kind = sizes.TAG_LIST if line.diameter is None else sizes.RING
        ring = sizes.sizes(line.items, kind, self.scope, name)[0].get("ring", 0.0)
        found = self.points(line.points)
        if found is None or count is None:
            return
        if ring and ring <= diameter:
            self.scope.say(findings.shape_impossible(line.span, f"the ring around `{name}` is no larger than its hole",
                                                     "give the outer diameter of the copper"))  # fmt: skip
            return
        if line.number is not None and count < 2:
            self.scope.say(findings.value_unclear(line.number.span, "a row has two or more",
                                                  f"a single one is `{_single(line)}`"))  # fmt: skip
            return
        self.counted += count
        if self.counted > MOST_HOLES:
            self.overfull((line.number or line.name).span, f"more than {MOST_HOLES} holes and tags")
            return
        within = self.areas.get(name)
        (x, y), (x2, y2) = found[0], found[-1]
        for number in range(count):
            part = number / (count - 1) if count > 1 else 0.0
            at = (round(x + (x2 - x) * part, 9), round(y + (y2 - y) * part, 9))
            called = name if line.number is None else f"{name} {number + 1}"
            if within is not None and not inside(at, within.corners):
                self.scope.say(findings.hole_outside_area(called, line.name.span, name, within.span))
                within = None
            area = within.name if within is not None else None
            self.holes.append(Hole(called, name, at, diameter, line.span, ring, line.diameter is None, area))

    def fixing(self, line: b.FixingDecl) -> None:
        diameter = sizes.size(line.diameter, sizes.HOLE, self.scope, "fixing")
        keep = sizes.sizes(line.items, sizes.KEEP, self.scope, "fixing")[0].get("keep", diameter)
        found = self.points((line.at,))
        if found is not None and diameter is not None and keep is not None:
            self.fixings.append(Fixing(found[0], diameter, keep, line.span))

    def collide(self) -> None:
        """Holes that run into each other; once for each pair of rows."""
        told: set[tuple[str, str]] = set()
        circles = [(hole.at, hole.diameter) for hole in self.holes]
        for later, earlier in collisions(circles):
            one, other = self.holes[later], self.holes[earlier]
            if (one.row, other.row) not in told:
                told.add((one.row, other.row))
                self.scope.say(findings.holes_collide(one.name, one.span, other.name, other.span))

    def overfull(self, span: Span, what: str) -> None:
        if not self.full and not self.lost:
            self.full = True
            self.scope.say(findings.too_much_on_board(span, f"{what} are on `{self.entry.name.text}`"))


def is_lost(span: Span, lost: Sequence[t.Lost]) -> bool:
    """Is text missing within this statement, or may it be?"""
    return any(
        one.whole_file or (one.span.source is span.source and span.start <= one.span.start < span.end) for one in lost
    )


def on_board(at: Point, width: float, height: float, corners: Collection[Corner]) -> bool:
    """Within the outline, the edge included, and not where a corner is cut off."""
    x, y = at
    if not (-CLOSE <= x <= width + CLOSE and -CLOSE <= y <= height + CLOSE):
        return False
    return all(abs(x - c.at[0]) + abs(y - c.at[1]) >= c.cut - CLOSE for c in corners)


def whole(number: t.Ident, scope: Scope) -> int | None:
    """How many, or which."""
    if re.fullmatch(r"[0-9]{1,12}", number.text):
        return int(number.text)
    scope.say(findings.value_unclear(number.span, f"`{number.text[:20]}` is no whole number",
                                     "holes are counted: 1, 2, 3"))  # fmt: skip
    return None


def _side(word: t.Ident) -> Side:
    return "parts" if word.text == "parts" else "solder"


def _single(line: b.HolesDecl) -> str:
    word, at = line.name.text, line.points[0].span.text
    return f"tag {word} at {at}" if line.diameter is None else f"hole {word} of {line.diameter.span.text} at {at}"
