"""The schematic of a circuit as sheets: a ladder for each input, legs under one another, drivers in one column.

In: a `Circuit`. Out: `Sheet`s, of which a reader can take the circuit again (a test does). Refuses to know files, and
what a sheet becomes.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import dataclass, field
from math import inf

from shuntwise.documents.differing import DIFFERS
from shuntwise.documents.lettering import extent, settable, wrapped
from shuntwise.documents.schematic.elements import Inventory, take_stock
from shuntwise.documents.schematic.fit import fitted
from shuntwise.documents.schematic.frames import framed_networks
from shuntwise.documents.schematic.pieces import taken_apart
from shuntwise.documents.schematic.place import Canvas, Placing, framed, wires
from shuntwise.documents.schematic.sizes import LEADING, Block, Sizes, block
from shuntwise.documents.sheet import GREY, Drawn, Mark, Sheet, Text, moved
from shuntwise.graph.circuit import Circuit
from shuntwise.model.differences import Difference

A4_ACROSS = (297.0, 210.0)
LEAST = (190.0, 150.0)
"""A page must have this width and height in mm for one branch with long names."""

MOST = 600
"""Circuits of more elements are not drawn: no page shows them."""

EDGE = 12.0
TITLE, NOTE = 4.5, 2.6
BETWEEN = 8.0
"""Edges of a page, sizes of type, and the room between pieces, in mm."""


ENLARGED = 1.4
"""A small drawing on a page of paper becomes so much larger at the most: its words are then nearly as its title's."""


@dataclass
class _Page:
    """`drawn` once the drawing is as large as it will be; notes come behind it. `low` is where there is room again."""

    canvas: Canvas = field(default_factory=Canvas)
    low: float = 0.0
    drawn: list[Mark] = field(default_factory=list)
    notes: Canvas = field(default_factory=Canvas)


def schematic_sheets(
    circuit: Circuit,
    *,
    page: tuple[float, float] = A4_ACROSS,
    ratings: bool = False,
    title: str = "",
    differences: Collection[Difference] = (),
    most: float = 1.0,
) -> tuple[Sheet, ...]:
    """The sheets of a circuit, sound or not, of width and height `page` in mm; with an infinite height it is one, as
    high as it must be and no wider. With `ratings` the words beside a part have its ratings. `title` is for a design
    that has none. What `differences` name, the design being a variant, has a bar, and they are told below. A
    drawing that leaves room on its page becomes up to `most` times as large.

    Raises ValueError where a page is smaller than `LEAST`.
    """
    if page[0] < LEAST[0] or page[1] < LEAST[1]:
        raise ValueError(f"a page must have {LEAST[0]:g} x {LEAST[1]:g} mm")
    stock = take_stock(circuit, ratings=ratings, differences=differences)
    return _Drawing(circuit, stock, page, circuit.design.title or title or "Schematic").sheets(most)


class _Drawing:
    def __init__(self, circuit: Circuit, stock: Inventory, page: tuple[float, float], title: str) -> None:
        self.stock = stock
        self.width, self.height = page
        design = circuit.design
        self.title = settable(title)
        self.variant = settable(design.variant_title or design.variant or "")
        self.head = wrapped(self.title, self.width - 2 * EDGE, TITLE, bold=True)
        self.under = wrapped(self.variant, self.width - 2 * EDGE, NOTE) if self.variant else []
        self.top = EDGE + TITLE * LEADING * len(self.head) + NOTE * LEADING * (len(self.under) + 1) + 4
        self.pages = [_Page(low=self.top)]

    def sheets(self, most: float) -> tuple[Sheet, ...]:
        notes: list[str] = []
        if len(self.stock.elements) > MOST:
            notes.append(f"Not drawn: more than {MOST} parts and drivers.")
        else:
            notes += self.draw()
        room = (EDGE / 2, self.top - NOTE, self.width - EDGE / 2, self.height - EDGE / 2)
        framed = framed_networks([page.canvas for page in self.pages], self.stock.networks, room)
        for page, frames in zip(self.pages, framed.marks, strict=True):
            page.canvas.marks += frames
        notes += [self.unframed(name, labels) for name, labels in framed.left.items()]
        for page in self.pages:
            page.drawn = [*wires(page.canvas), *page.canvas.marks]
        lines = [block(note, NOTE, room=self.width - 2 * EDGE) for note in notes]
        if len(self.pages) == 1 and most > 1 and self.pages[0].drawn:
            self.enlarge(self.pages[0], most, sum(text.height + 1 for text in lines))
        self.notes(lines)
        return tuple(self.sheet(page, number) for number, page in enumerate(self.pages, start=1))

    def unframed(self, name: str, labels: Iterable[str]) -> str:
        said = f"Parts of {name} ({self.stock.networks[name]}) that no frame has room about: {', '.join(labels)}."
        return settable(said)

    def draw(self) -> list[str]:
        stock = self.stock
        room = self.height - self.top - EDGE - BETWEEN
        ladders, rows = fitted(stock, taken_apart(stock), self.width - 2 * EDGE, room)
        self.ladders(ladders)
        self.rows(rows)
        notes = []
        if rows or any(sizes.piece.posts is None for sizes in ladders) or any(_named_inside(s) for s in ladders):
            notes.append("A name in a pointed box: all wires with this name are joined.")
        if stock.couplings:
            notes.append(f"Coupled coils, dots at their starts: {'; '.join(stock.couplings)}.")
        elif any(element.symbol == "tapped coil" for element in stock.elements):
            notes.append("A dot at a tapped coil: its start, from which its tap is counted.")
        if any(element.symbol == "open link" for element in stock.elements):
            notes.append("An open contact between two rings: a link that is left out.")
        if stock.tested:
            notes.append("A ring with a name, at a wire: a place for a meter.")
        unfed = [settable(pair.name) for pair in stock.posts if not pair.fed]
        if unfed:
            notes.append(f"Posts that no amplifier feeds of its own: {', '.join(unfed)}.")
        if stock.omitted:
            notes.append(f"Left out: {', '.join(stock.omitted)}.")
        if stock.differing:
            head = f"Marked by a bar: {DIFFERS}" if any(e.marked for e in stock.elements) else DIFFERS.capitalize()
            notes.append(f"{head}: {', '.join(stock.differing)}.")
        return notes

    def room_for(self, height: float) -> _Page:
        page = self.pages[-1]
        if page.low + height > self.height - EDGE and page.low > self.top:
            page = _Page(low=self.top)
            self.pages.append(page)
        return page

    def ladders(self, ladders: list[Sizes]) -> None:
        """One under the other, their first points and their drivers in line as far as the page is wide enough."""
        frames = [framed(sizes) for sizes in ladders]
        first = max((frame.left for frame in frames), default=0.0)
        column = max((first + frame.drivers - frame.left for frame in frames), default=0.0)
        for sizes, frame in zip(ladders, frames, strict=True):
            high = frame.above + frame.height + frame.below
            page = self.room_for(high)
            spare = max(self.width - 2 * EDGE - frame.width, 0.0)
            indent = min(first - frame.left, spare)
            drivers = min(column - indent, frame.drivers + spare - indent)
            Placing(page.canvas, sizes).piece(EDGE + indent, page.low, drivers)
            page.low += high + BETWEEN

    def rows(self, rows: list[Sizes]) -> None:
        """Side by side, as many as fit."""
        line: list[Sizes] = []
        used = 0.0
        for sizes in rows:
            wide = framed(sizes).width + BETWEEN
            if line and used + wide > self.width - 2 * EDGE + BETWEEN:
                self.line(line)
                line, used = [], 0.0
            line.append(sizes)
            used += wide
        if line:
            self.line(line)

    def line(self, line: list[Sizes]) -> None:
        frames = [framed(sizes) for sizes in line]
        above, below = max(f.above for f in frames), max(f.below for f in frames)
        page = self.room_for(above + below)
        x = EDGE
        for sizes, frame in zip(line, frames, strict=True):
            Placing(page.canvas, sizes).piece(x, page.low + above - frame.above, 0)
            x += frame.width + BETWEEN
        page.low += above + below + BETWEEN

    def enlarge(self, page: _Page, most: float, below: float) -> None:
        """As far as the page has room, `below` being that for the notes."""
        lefts, tops, rights, lows = zip(*map(extent, page.drawn), strict=True)
        left, top = min(lefts), min(tops)
        across = (self.width - 2 * EDGE) / (max(rights) - left)
        down = (self.height - EDGE - below - BETWEEN - top) / (max(lows) - top)
        scale = min(most, across, down)
        if scale > 1:
            page.drawn = [moved(mark, EDGE - left * scale, top - top * scale, scale) for mark in page.drawn]
            page.low = top + (max(lows) - top) * scale + BETWEEN

    def notes(self, notes: Iterable[Block]) -> None:
        for lines in notes:
            page = self.room_for(lines.height)
            page.notes.words(lines, EDGE, page.low, "start")
            page.low += lines.height + 1

    def sheet(self, page: _Page, number: int) -> Sheet:
        marks: list[Mark] = []
        y = EDGE
        for line in self.head:
            y += TITLE * LEADING
            marks.append(Text(EDGE, y, line, TITLE, bold=True))
        of = f"Circuit diagram, sheet {number} of {len(self.pages)}" if len(self.pages) > 1 else "Circuit diagram"
        for line in [*self.under, of]:
            y += NOTE * LEADING
            marks.append(Text(EDGE, y + 0.5, line, NOTE, tone=GREY))
        picture = Drawn((*page.drawn, *page.notes.marks), self.said(of))
        width, height = self.width, self.height
        if height == inf:
            # The sheet is as large as what is on it.
            height = page.low + EDGE - BETWEEN / 2
            width = min(width, EDGE + max(extent(mark)[2] for mark in (*marks, *picture.marks)))
        return Sheet(width, height, f"{self.title}: {of[0].lower()}{of[1:]}", (*marks, picture))

    def said(self, of: str) -> str:
        """For who does not see it: what stands in it. How it is wired is told by the document that reads it aloud."""
        drivers = [" ".join(e.lines) for e in self.stock.elements if e.is_driver]
        parts = [" ".join(e.lines) for e in self.stock.elements if not e.is_driver]
        told = f"{of} of {self.title}. Drivers: {', '.join(drivers) or 'none'}. Parts: {', '.join(parts) or 'none'}."
        told += f" It {DIFFERS}: {', '.join(self.stock.differing)}." if self.stock.differing else ""
        return f"{told} The wiring in words is in read-back.txt."


def _named_inside(sizes: Sizes) -> bool:
    tree = sizes.piece.tree
    own = {sizes.piece.a, sizes.piece.b}
    tags = any(tag.kind == "net" for tags in sizes.tags.values() for tag in tags)
    return tags or (
        tree is not None
        and any(
            leaf.form == "gap"
            or (leaf.form == "end" and (leaf.a in sizes.named or "\0" in leaf.a or leaf.a in own))
            or (leaf.element is not None and sizes.third(leaf) is not None)
            for leaf in tree.leaves()
        )
    )
