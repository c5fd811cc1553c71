"""How text documents are laid out: the width of a line, hanging paragraphs, columns.

In: text and cells. Out: lines safe to print. It refuses to know what they say.
"""

from __future__ import annotations

from collections.abc import Sequence

from shuntwise.diagnostics.terminal import cell_width, visible, wrap

WIDTH = 100


def hanging(text: str) -> list[str]:
    return [f"  {'  ' * (number > 0)}{line}" for number, line in enumerate(wrap(text, WIDTH - 4))]


def aligned(rows: Sequence[Sequence[str]], left: set[int]) -> list[str]:
    """Aligned columns; those in `left` at their left end, the others at their right."""
    shown = [[visible(cell) for cell in row] for row in rows]
    widths = [max(map(cell_width, column)) for column in zip(*shown, strict=True)]
    lines = []
    for row in shown:
        cells = []
        for place, (cell, width) in enumerate(zip(row, widths, strict=True)):
            blanks = " " * (width - cell_width(cell))
            cells.append(cell + blanks if place in left else blanks + cell)
        lines.append("  ".join(cells).rstrip())
    return lines
