"""Chapters laid on sheets of paper: lines are broken, pages filled, and each page gets its head and its foot.

In: chapters. Out: sheets, and where each chapter begins. Whatever a text holds, it stays between the margins, and no
two texts lie on each other. It refuses to know what a chapter says.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from shuntwise.documents.lettering import settable, width, wrapped
from shuntwise.documents.page import Behind, Chapter, Front, Heading, Listing, Paragraph, Picture, Table
from shuntwise.documents.sheet import GREY, Anchor, Drawn, Mark, Role, Sheet, Stroke, Text, moved

PAPER_MM = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}
"""Width and height (ISO 216; US Letter is 8.5 by 11 inch)."""

LEFT, RIGHT, TOP, BOTTOM = 20.0, 14.0, 21.0, 19.0
"""Margins in mm; the left one leaves room for holes. Above and below stand the head and the foot."""

BODY, SMALL, HEADING, CHAPTER, FIRST = 3.1, 2.75, 3.7, 5.2, 8.0
"""Sizes of type in mm: of text, tables, headings, and titles of chapters, the first of them larger."""

LEADING = 1.42
"""From baseline to baseline, as a multiple of the size."""

GAP, GAP_BETWEEN_CHAPTERS, GAP_BETWEEN_COLUMNS, INDENT = 4.2, 11.0, 4.0, 4.0

HEAD_WIDTH = 22.0
"""So wide a head of a column may be before it is broken."""

BOX_WIDTH, BOX_HEIGHT = 30.0, 5.2
"""Of a box to write in."""

LINES_TOGETHER = 6
"""Rows of a table with no more lines than this stay on one page."""

NEAR_HALF = 1.15
"""Pictures higher than half a page by no more than this factor are made smaller, so that two stand on one."""

WRITTEN_TOGETHER = 8
"""A table with no more rows of boxes to write in stands on one page."""

LAST_ROWS = 4
"""So many rows stand together at the end of a table, so that none is left alone on a page."""

START: Anchor = "start"
END: Anchor = "end"


@dataclass(frozen=True)
class Strip:
    """A strip of a page that is not broken, with its content from its own top left corner of the text block.

    `gap` is left above it, unless it begins a page; `with_next`: the following strip stands on the same page; `head`
    is repeated above it where it begins a page.
    """

    height: float
    content: tuple[Mark | Drawn, ...]
    gap: float = 0.0
    with_next: bool = False
    head: tuple[Strip, ...] = ()


@dataclass(frozen=True)
class Place:
    """Where a chapter begins: the number of its sheet, from 0, and mm from its top."""

    title: str
    sheet: int
    y: float


def block(paper: str, *, across: bool = False) -> tuple[float, float]:
    """Width and height in mm of what a page has room for between its margins, the paper upright or `across`."""
    size = PAPER_MM[paper]
    width, height = (size[1], size[0]) if across else size
    return width - LEFT - RIGHT, height - TOP - BOTTOM


def flow(chapters: Sequence[Chapter], front: Front, paper: str = "a4") -> tuple[tuple[Sheet, ...], tuple[Place, ...]]:
    """All chapters in order. One that fits whole below another shares its page; whole sheets stand alone."""
    pages = _Pages(paper)
    for number, chapter in enumerate(chapters):
        pages.add(chapter, FIRST if number == 0 else CHAPTER)
    count = len(pages.sheets)
    shown = [
        replace(sheet, content=(*sheet.content, *_edge(sheet, front, f"page {number} of {count}")))
        for number, sheet in enumerate(pages.sheets, start=1)
    ]
    return tuple(shown), tuple(pages.places)


class _Pages:
    """Pages as they fill."""

    def __init__(self, paper: str) -> None:
        self.paper = paper
        self.width, self.height = PAPER_MM[paper]
        self.room, self.end = self.width - LEFT - RIGHT, self.height - BOTTOM
        self.sheets: list[Sheet] = []
        self.places: list[Place] = []
        self.open = False
        self.y = TOP

    def add(self, chapter: Chapter, size: float) -> None:
        """Its text, then its whole sheets."""
        strips = [replace(line, with_next=True) for line in _lines(chapter.title, self.room, size, "H1")]
        groups = [entry for entry in chapter.content if not isinstance(entry, Sheet)]
        for group in groups:
            strips += _group(group, self.room, self.end - TOP - 12)
        if groups:
            self._fill(chapter.title, strips)
        for place, sheet in enumerate(entry for entry in chapter.content if isinstance(entry, Sheet)):
            begins = not groups and place == 0
            self._whole(sheet, strips if begins else ())
            if begins:
                self.places.append(Place(chapter.title, len(self.sheets) - 1, 0.0))

    def _whole(self, sheet: Sheet, head: Sequence[Strip]) -> None:
        """Between the margins of a page of its own, upright or across as the sheet is, smaller if it must be."""
        across = sheet.width > sheet.height
        room, height = block(self.paper, across=across)
        below, content = TOP, list[Mark | Drawn]()
        for strip in head:
            content += (_moved(entry, LEFT, below) for entry in strip.content)
            below += strip.height
        scale = min(1.0, room / sheet.width, (height + TOP - below) / sheet.height)
        content += (_moved(entry, LEFT, below, scale) for entry in sheet.content)
        self.sheets.append(Sheet(room + LEFT + RIGHT, height + TOP + BOTTOM, sheet.title, tuple(content)))
        self.open = False

    def _fill(self, title: str, strips: Sequence[Strip]) -> None:
        whole = GAP_BETWEEN_CHAPTERS + sum(strip.gap + strip.height for strip in strips)
        if self.open and self.y + whole <= self.end:
            self.y += GAP_BETWEEN_CHAPTERS
        else:
            self._new(title)
        self.places.append(Place(title, len(self.sheets) - 1, self.y))
        for place, strip in enumerate(strips):
            if self.y > TOP and self.y + strip.gap + _together(strips, place) > self.end:
                self._new(title)
                for head in strip.head:
                    self._put(head)
            if self.y > TOP:
                self.y += strip.gap
            self._put(strip)

    def _put(self, strip: Strip) -> None:
        sheet = self.sheets[-1]
        set_down = tuple(_moved(entry, LEFT, self.y) for entry in strip.content)
        self.sheets[-1] = replace(sheet, content=(*sheet.content, *set_down))
        self.y += strip.height

    def _new(self, title: str) -> None:
        self.sheets.append(Sheet(self.width, self.height, title))
        self.open, self.y = True, TOP


def _together(strips: Sequence[Strip], place: int) -> float:
    """The height of a strip and of those that must stand on its page."""
    height = strips[place].height
    while strips[place].with_next and place + 1 < len(strips):
        place += 1
        height += strips[place].gap + strips[place].height
    return height


def _moved(entry: Mark | Drawn, across: float, down: float, scale: float = 1.0) -> Mark | Drawn:
    if isinstance(entry, Drawn):
        return Drawn(tuple(moved(mark, across, down, scale) for mark in entry.marks), entry.said)
    return moved(entry, across, down, scale)


# --- blocks as strips


def _group(group: Iterable[object], room: float, tallest: float) -> Iterator[Strip]:
    blocks = tuple(group)
    for number, block in enumerate(blocks):
        gap = GAP if number == 0 else 1.6
        before_a_table = isinstance(block, Paragraph) and any(
            isinstance(one, Table) for one in blocks[number + 1 :][:1]
        )
        strips = list(_strips(block, room, tallest))
        for strip in strips:
            keep = before_a_table and len(strips) <= LINES_TOGETHER
            yield replace(strip, gap=strip.gap + gap, with_next=strip.with_next or keep)
            gap = 0.0


def _strips(block: object, room: float, tallest: float) -> Iterator[Strip]:
    match block:
        case Heading(text):
            for line in _lines(text, room, HEADING, "H2"):
                yield replace(line, with_next=True)
        case Paragraph(text):
            yield from _lines(text, room, BODY, "P")
        case Listing(entries, marked):
            for place, entry in enumerate(entries):
                lines = _lines(entry, room - INDENT, BODY, "LI" if place else "L", across=INDENT)
                for number, line in enumerate(lines):
                    dot = (Text(1.2, BODY, "•", BODY, role="Artifact"),) if marked and number == 0 else ()
                    yield replace(line, content=(*line.content, *dot), gap=0.9 if number == 0 else 0.0)
        case Table():
            yield from _table(block, room)
        case Picture():
            yield from _picture(block, room, tallest)
        case Behind():
            pass


def _lines(text: str, room: float, size: float, role: Role, across: float = 0.0) -> Iterator[Strip]:
    bold, height = role in ("H1", "H2"), LEADING * size
    for number, line in enumerate(wrapped(settable(text), room, size, bold=bold)):
        yield Strip(height, (Text(across, size, line, size, bold=bold, role="" if number else role),))


def _picture(picture: Picture, room: float, tallest: float) -> Iterator[Strip]:
    """As wide as the page has room; two that come out near half a page each share one."""
    scale = min(1.0, room / picture.width, tallest / picture.height)
    half = tallest / 2 - GAP
    if half < picture.height * scale < half * NEAR_HALF:
        scale = half / picture.height
    yield Strip(picture.height * scale, (_moved(picture.drawn, 0.0, 0.0, scale),))


def _table(table: Table, room: float) -> Iterator[Strip]:
    shown = [[settable(cell) for cell in row] for row in table.rows]
    heads = [settable(cell) for cell in table.heads]
    columns = _columns(heads, shown, room, table.written)
    head = tuple(_row(heads, columns, table.left, head=True)) if heads else ()
    yield from head
    for number, row in enumerate(shown, start=1):
        last_rows = len(shown) if table.written and len(shown) <= WRITTEN_TOGETHER else LAST_ROWS
        near_end = len(shown) - last_rows < number < len(shown)
        for strip in _row(row, columns, table.left, written=table.written):
            yield replace(strip, head=head, with_next=near_end)


def _columns(
    heads: Sequence[str], rows: Sequence[Sequence[str]], room: float, written: frozenset[int]
) -> list[tuple[float, float]]:
    """Where each column begins, and how wide it is: as its cells want, and where that is too much, the widest give."""
    wanted = []
    for place in range(len(rows[0]) if rows else len(heads)):
        cells = [width(row[place], SMALL) for row in rows]
        head = width(heads[place], SMALL, bold=True) if heads else 0.0
        word = max((width(word, SMALL, bold=True) for word in heads[place].split()), default=0.0) if heads else 0.0
        box = BOX_WIDTH if place in written else 1.0
        wanted.append(max(*cells, word, min(head, HEAD_WIDTH), box) + 0.01)
    free = room - GAP_BETWEEN_COLUMNS * (len(wanted) - 1)
    if sum(wanted) > free:
        share, left = free, len(wanted)
        for one in sorted(wanted):
            if one > share / left:
                break
            share, left = share - one, left - 1
        wanted = [min(one, share / left) for one in wanted]
    begins = [0.0]
    for one in wanted:
        begins.append(begins[-1] + one + GAP_BETWEEN_COLUMNS)
    return list(zip(begins, wanted, strict=False))


def _row(
    cells: Sequence[str],
    columns: Sequence[tuple[float, float]],
    left: frozenset[int],
    *,
    head: bool = False,
    written: frozenset[int] = frozenset(),
) -> Iterator[Strip]:
    """A row, ruled off below: whole, cell by cell, or a strip for each of its lines where there are many."""
    step = LEADING * SMALL
    down = (BOX_HEIGHT - step) / 2 if written else 0.0
    broken = [wrapped(cell, room, SMALL, bold=head) for cell, (_, room) in zip(cells, columns, strict=True)]
    count = max(map(len, broken))
    together = count <= LINES_TOGETHER

    def cell(place: int, first: int, lines: Sequence[str]) -> Iterator[Text]:
        begin, room = columns[place]
        x, anchor = (begin, START) if place in left else (begin + room, END)
        role: Role = "TH" if head else "TR" if place == first == 0 else "TD"
        for number, line in enumerate(lines):
            y = SMALL + 0.7 + down + number * step
            yield Text(x, y, line, SMALL, anchor, head, role=role if number == 0 else "")

    last = columns[-1][0] + columns[-1][1]
    for first in range(0, count, count if together else 1):
        shown = [lines if together else lines[first : first + 1] for lines in broken]
        content: list[Mark] = [text for place, lines in enumerate(shown) for text in cell(place, first, lines)]
        content += [_box(*columns[place]) for place in sorted(written) if first == 0]
        height = step * (count if together else 1) + 2 * down
        if together or first == count - 1:
            height += 1.1
            if not written:  # a row with boxes has lines enough
                content.append(Stroke(((0.0, height), (last, height)), 0.3 if head else 0.1, GREY))
        yield Strip(height, tuple(content), with_next=head)


def _box(begin: float, room: float) -> Stroke:
    """A box to write in."""
    end, top, low = begin + room, 0.9, BOX_HEIGHT
    return Stroke(((begin, top), (end, top), (end, low), (begin, low)), 0.2, GREY, closed=True)


# --- the head and the foot of a page


def _edge(sheet: Sheet, front: Front, number: str) -> Iterator[Mark]:
    left, right, foot = LEFT, sheet.width - RIGHT, sheet.height - 11.0
    room = right - left

    def text(x: float, y: float, words: str, *, end: bool = False, bold: bool = False) -> Text:
        return Text(x, y, words, SMALL, "end" if end else "start", bold, GREY, role="Artifact")

    title = _cut(front.title, room * (0.55 if front.variant else 1.0), bold=True)
    yield text(left, 12.0, title, bold=True)
    if front.variant:
        yield text(right, 12.0, _cut(front.variant, room * 0.42), end=True)
    yield Stroke(((left, 14.0), (right, 14.0)), 0.1, GREY)
    yield Stroke(((left, foot - 4.0), (right, foot - 4.0)), 0.1, GREY)
    if front.mark:
        yield text(left, foot, f"design mark {front.mark}")
    yield text(right, foot, number, end=True)


def _cut(words: str, room: float, *, bold: bool = False) -> str:
    """As much of a text as there is room for."""
    shown = settable(words)
    if width(shown, SMALL, bold=bold) <= room:
        return shown
    return wrapped(shown, room - width("…", SMALL, bold=bold), SMALL, bold=bold)[0] + "…"
