"""A sheet of paper as a value: strokes, areas and texts in millimetres, which every renderer draws alike.

In: nothing (plain values). Out: nothing. The origin is at the top left, x to the right, y down. It refuses to know what
is drawn, and whether it becomes a PDF, a page on a screen or an SVG.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from typing import Literal

Point = tuple[float, float]

INK, GREY, PAPER = "ink", "grey", "paper"
"""Tones that follow the reader's setting, dark or light; any other is a colour, `#0072B2`, the same in both."""

Anchor = Literal["start", "middle", "end"]

Role = Literal["P", "H1", "H2", "L", "LI", "TR", "TH", "TD", "", "Artifact"]
"""What a text is to who listens to a page, after the standard structure types of ISO 32000-1, 14.8.4.

`L` is the first entry of a list, `LI` another; `TR` the head of a row of a table and begins it, `TH` the head of a
column; without a role a text goes on with the
one before it; an `Artifact` is no part of the content.
"""


@dataclass(frozen=True)
class Stroke:
    """A line through points, or several (`rest`): closed or open, drawn with a pen of `width`, perhaps filled.

    A width of 0 draws no line. `dashes` are lengths of line and gap. With several rings a fill leaves out what an even
    number of them encloses.
    """

    points: tuple[Point, ...]
    width: float = 0.25
    tone: str = INK
    dashes: tuple[float, ...] = ()
    closed: bool = False
    fill: str | None = None
    rest: tuple[tuple[Point, ...], ...] = ()


@dataclass(frozen=True)
class Text:
    """One line of text; (x, y) is on its baseline, at its start, middle or end. `size` is the height of the type.

    `role` is of account outside pictures only.
    """

    x: float
    y: float
    text: str
    size: float = 3.0
    anchor: Anchor = "start"
    bold: bool = False
    tone: str = INK
    role: Role = "P"


Mark = Stroke | Text


@dataclass(frozen=True)
class Drawn:
    """Marks that make a picture together, and what it shows in words for who does not see it. Pictures do not nest."""

    marks: tuple[Mark, ...]
    said: str


@dataclass(frozen=True)
class Sheet:
    """`content` in reading order."""

    width: float
    height: float
    title: str
    content: tuple[Mark | Drawn, ...] = field(default=())

    @property
    def marks(self) -> tuple[Mark, ...]:
        """All marks, those of pictures included."""
        return tuple(flat(self.content))


def flat(content: Iterable[Mark | Drawn]) -> Iterable[Mark]:
    for entry in content:
        if isinstance(entry, Drawn):
            yield from entry.marks
        else:
            yield entry


def moved(mark: Mark, across: float, down: float, scale: float = 1.0) -> Mark:
    """The same mark elsewhere, first scaled about the origin."""
    if isinstance(mark, Text):
        return replace(mark, x=mark.x * scale + across, y=mark.y * scale + down, size=mark.size * scale)
    rings = [tuple((x * scale + across, y * scale + down) for x, y in ring) for ring in (mark.points, *mark.rest)]
    dashes = tuple(length * scale for length in mark.dashes)
    return replace(mark, points=rings[0], rest=tuple(rings[1:]), width=mark.width * scale, dashes=dashes)
