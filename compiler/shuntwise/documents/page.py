"""What pages say, as values: chapters of headings, paragraphs, lists, tables and pictures.

In: nothing (plain values). Out: nothing. `aligned.py` lays blocks out as text, `flow.py` on sheets of paper, `html.py`
for a screen, all from the same values. It refuses to know what they look like.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Literal

from shuntwise.documents.sheet import Drawn, Sheet


@dataclass(frozen=True)
class Heading:
    text: str


@dataclass(frozen=True)
class Paragraph:
    text: str


@dataclass(frozen=True)
class Listing:
    """`marked`: with a mark before each entry."""

    entries: tuple[str, ...]
    marked: bool = True


@dataclass(frozen=True)
class Table:
    """Rows as wide as `heads`, which is empty where the columns need none. The first column names the row.

    Columns in `left` stand at their left end, the others, which are numbers, at their right. Those in `written` are
    boxes for a reader's hand, whose cells are empty.
    """

    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    left: frozenset[int] = frozenset({0})
    written: frozenset[int] = frozenset()


@dataclass(frozen=True)
class Picture:
    """Its marks lie within `width` and `height` mm; where it is no wider than the page it keeps its size.

    `on_white`: its colours are made for white ground, whatever the reader's setting.
    """

    drawn: Drawn
    width: float
    height: float
    title: str
    on_white: bool = False


@dataclass(frozen=True)
class Behind:
    """What a screen folds away under a title, and paper leaves out."""

    title: str
    blocks: tuple[Table, ...]


Block = Heading | Paragraph | Listing | Table | Picture | Behind

Group = tuple[Block, ...]
"""Blocks that belong together; a heading, if any, comes first."""


@dataclass(frozen=True)
class Chapter:
    """`key` is its name in links. A whole `Sheet` among the groups has a page of its own, behind them."""

    key: str
    title: str
    content: tuple[Group | Sheet, ...]


@dataclass(frozen=True)
class Front:
    """What every page bears: whose it is, and from which text it was made."""

    title: str
    variant: str
    mark: str


@dataclass(frozen=True)
class Printing:
    """How documents are wanted: for which paper, for how many boards, of which day (ISO 8601; empty: they bear none),
    whether the schematic has the ratings of its parts, of which box, by the name that its own file gives it, and
    whether the binder has the sheet for the bench.
    """

    paper: Literal["a4", "letter"] = "a4"
    boards: int = 1
    date: str = ""
    ratings: bool = False
    box: str = ""
    bench: bool = False


def blocks(content: Iterable[Group | Sheet]) -> Iterator[Block | Sheet]:
    """One by one, without their groups."""
    for entry in content:
        if isinstance(entry, Sheet):
            yield entry
        else:
            yield from entry


USUAL = Printing()
