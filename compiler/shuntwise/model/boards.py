"""Boards and layouts: what copper there is, what is done to it, and where every part lies.

Out of `resolve`, into `board/`. All lengths are in millimetres, angles in degrees. Points are seen from the side of
the parts, from the lower left corner of the outline, across and up; what a board states as seen from the other side has
been turned. Refuses to know what is joined to what.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from shuntwise.source import Span

Point = tuple[float, float]
Side = Literal["parts", "solder"]


@dataclass(frozen=True)
class Area:
    """A piece of copper: its corners in turn, at least three, a simple polygon that may have notches."""

    name: str
    corners: tuple[Point, ...]
    span: Span


@dataclass(frozen=True)
class Track:
    """A strip of copper `width` wide along `points`, its ends round."""

    width: float
    points: tuple[Point, ...]
    span: Span


@dataclass(frozen=True)
class Hole:
    """A hole, called `north 3` (`row` and number) or `h1`. `ring`: diameter of a copper ring around it, 0 without one.

    A `tag` is a soldering lug and no hole: leads are hooked in, and it is a piece of metal of its own.
    `area` is the copper that it is said to be in, if the text says so.
    """

    name: str
    row: str
    at: Point
    diameter: float
    span: Span
    ring: float = 0.0
    tag: bool = False
    area: str | None = None
    drilled: bool = False


@dataclass(frozen=True)
class Fixing:
    """A hole for a screw or a stand-off, with a circle of diameter 2 x `keep` that must stay free."""

    at: Point
    diameter: float
    keep: float
    span: Span


@dataclass(frozen=True)
class Corner:
    """The corner at `at` is cut off, `cut` along each edge: it tells the sides of the board apart."""

    at: Point
    cut: float
    span: Span


@dataclass(frozen=True)
class Board:
    """A general-purpose board as it is bought. `copper` is its thickness (0.035 where none is stated).

    `seen_from` is the side from which its points are written; they have been turned to be as seen from the parts side.
    `refused`: some line of it was wrong, so that nothing is said of what its copper joins.
    """

    name: str
    title: str | None
    width: float
    height: float
    thickness: float
    copper: float
    copper_side: Side
    seen_from: Side
    corners: tuple[Corner, ...]
    areas: tuple[Area, ...]
    tracks: tuple[Track, ...]
    holes: tuple[Hole, ...]
    fixings: tuple[Fixing, ...]
    span: Span
    name_span: Span
    refused: bool = False

    @property
    def hole(self) -> dict[str, Hole]:
        return {hole.name: hole for hole in self.holes}


@dataclass(frozen=True)
class Spot:
    """Where a lead or a wire ends: a hole or tag of a layout's board, or a pad of a driver, input or posts.

    `layout` is the name of the layout whose board has it, `hole` its name there (`north 3`); for a pad `layout` is None
    and `hole` is `woofer+`.
    """

    layout: str | None
    hole: str
    span: Span


@dataclass(frozen=True)
class Cut:
    """Copper taken away along a straight line, `width` wide, with square ends."""

    start: Point
    end: Point
    width: float
    span: Span


@dataclass(frozen=True)
class Wire:
    """A wire from one spot to another: a jumper, or what leads out to a pad. `bus`: bare, soldered to every hole or tag
    of its row between the two.

    `diameter` and `length` are 0 where the text does not say.
    """

    kind: Literal["jumper", "bus", "lead out"]
    first: Spot
    second: Spot
    diameter: float
    length: float
    sleeved: bool
    span: Span


@dataclass(frozen=True)
class Lead:
    """One lead of a part. `terminal` is None where the text does not tell the two leads apart (`leads into`)."""

    terminal: str | None
    spot: Spot
    span: Span


@dataclass(frozen=True)
class Tie:
    """A tie through two holes that it needs, `width` wide."""

    width: float
    first: Point
    second: Point
    span: Span


@dataclass(frozen=True)
class Place:
    """Where one part lies. `at` is its centre, None off the board. `axis` is that of its body: degrees from across, or
    upright. `raised`: how far above the board. `leads` in the order of the text.
    """

    label: str
    at: Point | None
    side: Side
    axis: float | Literal["upright"] | None
    raised: float
    leads: tuple[Lead, ...]
    ties: tuple[Tie, ...]
    notes: tuple[str, ...]
    span: Span
    label_span: Span


@dataclass(frozen=True)
class Layout:
    """What is done to one board. `drilled` are holes that the builder adds. `depth` is the room above the parts side.

    `span` ends at its closing brace; it is that of the statement outside of variants, if there is one. `refused`: some
    statement of it could not be read, so that nothing is said of what is missing.
    """

    name: str
    board: Board
    cuts: tuple[Cut, ...]
    drilled: tuple[Hole, ...]
    wires: tuple[Wire, ...]
    places: tuple[Place, ...]
    depth: float | None
    span: Span
    name_span: Span
    refused: bool = False

    @property
    def holes(self) -> Iterator[Hole]:
        """Those of the board, then those that are drilled."""
        yield from self.board.holes
        yield from self.drilled
