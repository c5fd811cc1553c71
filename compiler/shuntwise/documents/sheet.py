"""A sheet of paper as a value: strokes, areas and texts in millimetres, which every renderer draws alike.

In: nothing (plain values). Out: nothing. The origin is at the top left, x to the right, y down. It refuses to know what
is drawn, and whether it becomes a PDF, a page on a screen or an SVG.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Literal

Point = tuple[float, float]

INK, GREY, PAPER = "ink", "grey", "paper"
"""Tones that follow the reader's setting, dark or light; any other is a colour, `#0072B2`, the same in both."""

Anchor = Literal["start", "middle", "end"]


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
    """One line of text; (x, y) is on its baseline, at its start, middle or end. `size` is the height of the type."""

    x: float
    y: float
    text: str
    size: float = 3.0
    anchor: Anchor = "start"
    bold: bool = False
    tone: str = INK


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


def moved(mark: Mark, across: float, down: float) -> Mark:
    """The same mark elsewhere."""
    if isinstance(mark, Text):
        return Text(mark.x + across, mark.y + down, mark.text, mark.size, mark.anchor, mark.bold, mark.tone)
    rings = [tuple((x + across, y + down) for x, y in ring) for ring in (mark.points, *mark.rest)]
    return Stroke(rings[0], mark.width, mark.tone, mark.dashes, mark.closed, mark.fill, tuple(rings[1:]))
