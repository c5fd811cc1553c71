"""How text documents are laid out: the width of a line, hanging paragraphs, columns.

In: text and cells, or blocks of a page. Out: lines safe to print. It refuses to know what they say.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from shuntwise.diagnostics.terminal import cell_width, visible, wrap
from shuntwise.documents.page import Block, Group, Heading, Listing, Paragraph, Table

WIDTH = 100

TO_WRITE = "_" * 12
"""Where a reader's hand writes."""


def as_text(groups: Iterable[Group]) -> str:
    """Groups of blocks with a blank line between them; it ends with a line end. Pictures are left out."""
    return "\n\n".join("\n".join(lines(group)) for group in groups if group) + "\n"


def lines(group: Iterable[Block]) -> Iterator[str]:
    """At most `WIDTH` cells each; more only where a name in a table is very long."""
    for block in group:
        match block:
            case Heading(text) | Paragraph(text):
                yield from wrap(text, WIDTH)
            case Listing(entries):
                for entry in entries:
                    yield from _hanging(entry)
            case Table(heads, rows, left, written):
                filled = [[TO_WRITE if place in written else cell for place, cell in enumerate(row)] for row in rows]
                indented = [(f"  {name}", *cells) for name, *cells in filled]
                yield from aligned([*filter(None, [heads]), *indented], left)


def _hanging(text: str) -> list[str]:
    return [f"  {'  ' * (number > 0)}{line}" for number, line in enumerate(wrap(text, WIDTH - 4))]


def aligned(rows: Sequence[Sequence[str]], left: Iterable[int]) -> list[str]:
    """Aligned columns; those in `left` at their left end, the others at their right."""
    shown = [[visible(cell) for cell in row] for row in rows]
    widths = [max(map(cell_width, column)) for column in zip(*shown, strict=True)]
    at_left, found = {*left}, []
    for row in shown:
        cells = []
        for place, (cell, width) in enumerate(zip(row, widths, strict=True)):
            blanks = " " * (width - cell_width(cell))
            cells.append(cell + blanks if place in at_left else blanks + cell)
        found.append("  ".join(cells).rstrip())
    return found
