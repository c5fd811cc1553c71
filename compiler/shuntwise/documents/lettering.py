"""How wide a text is on a sheet, and where it is broken: by the font that all sheets are set in.

In: texts. Out: millimetres and lines. Refuses to know what a text says.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache, lru_cache
from typing import Any
from unicodedata import bidirectional

from shuntwise.diagnostics.terminal import visible
from shuntwise.documents.fonts import font
from shuntwise.documents.sheet import Mark, Text

ASCENT, DESCENT = 0.76, 0.24
"""How far capitals and descenders reach from the baseline, as shares of the size (measured on the font)."""


@cache
def _widths(*, bold: bool) -> Mapping[int, float]:
    """By character the advance, in thousandths of the size."""
    known: Mapping[int, float] = font(bold=bold).face.charWidths
    return known


def settable(text: str) -> str:
    """An author's text in one line, with `?` for what the font cannot set; nothing in it steers anything."""
    plain, bold = _widths(bold=False), _widths(bold=True)
    shown = visible(text)
    if shown.isascii():
        return shown
    return "".join(c if ord(c) in plain and ord(c) in bold else "?" for c in shown)


def visual(text: str) -> str:
    """A settable line as its letters stand from left to right, for who sets them one by one.

    What runs from right to left is turned round in a line that runs to the right (Unicode Standard Annex 9, brackets
    mirrored by its rule L4), and Arabic letters have the forms in which they join, marks kept.
    """
    if not any(bidirectional(character) in _TO_THE_LEFT for character in text):
        return text
    from bidi import get_display
    from bidi.mirror import MIRRORED

    # The library turns runs round and mirrors nothing. A mark that combines goes with what is before it (rule W1), so
    # one behind each bracket comes out in front of those that were turned round.
    told = "".join(f"{c}{_BEHIND}" if c in MIRRORED else c for c in _joiner().reshape(text) if c != _BEHIND)
    bracket = f"[{re.escape(''.join(MIRRORED))}]"
    turned = re.compile(f"{_BEHIND}({bracket})|({bracket}){_BEHIND}")
    return turned.sub(lambda m: MIRRORED[m[1]] if m[1] else m[2], get_display(told, base_dir="L"))


_TO_THE_LEFT, _BEHIND = ("R", "AL", "AN"), "\u034f"
"""Classes of letters, and a mark that combines, has no looks, and may be left out (COMBINING GRAPHEME JOINER)."""


@cache
def _joiner() -> Any:
    from arabic_reshaper import ArabicReshaper

    # A word that Unicode has a single glyph for is not in every font.
    return ArabicReshaper(configuration={"delete_harakat": False, "ARABIC LIGATURE ALLAH": False})


def width(text: str, size: float, *, bold: bool = False) -> float:
    """Millimetres from the start of a settable text to its end."""
    return size / 1000 * _thousandths(text, bold=bold)


@lru_cache(4096)
def _thousandths(text: str, *, bold: bool) -> float:
    known = _widths(bold=bold)
    return sum([known.get(ord(character), 600.0) for character in text])


def extent(mark: Mark) -> tuple[float, float, float, float]:
    """Left, top, right and low end in mm of what a mark covers, without the width of its pen."""
    if isinstance(mark, Text):
        span = width(mark.text, mark.size, bold=mark.bold)
        left = mark.x - {"start": 0.0, "middle": span / 2, "end": span}[mark.anchor]
        return left, mark.y - ASCENT * mark.size, left + span, mark.y + DESCENT * mark.size
    across, down = zip(*(point for ring in (mark.points, *mark.rest) for point in ring), strict=True)
    return min(across), min(down), max(across), max(down)


def wrapped(text: str, room: float, size: float, *, bold: bool = False) -> list[str]:
    """Lines no wider than `room` mm: broken at blanks; a word that is wider behind `_`, `.`, `-`, `+` and `/`, else
    anywhere.
    """
    if width(text.strip(), size, bold=bold) <= room:
        return [text.strip()]
    lines: list[str] = []
    line = ""
    for word in re.findall(r"[^ ]* ?", text):
        whole = width(word.rstrip(), size, bold=bold) <= room
        for piece in [word] if whole else re.findall(r"[^_.+/-]*[_.+/-]?", word):
            if line and width((line + piece).rstrip(), size, bold=bold) > room:
                lines.append(line.rstrip())
                line = ""
            line += piece if line else piece.lstrip()
            while len(line.rstrip()) > 1 and width(line.rstrip(), size, bold=bold) > room:
                count = _that_fit(line, room, size, bold=bold)
                lines.append(line[:count])
                line = line[count:]
    return [*lines, line.rstrip()] if line.strip() or not lines else lines


def _that_fit(line: str, room: float, size: float, *, bold: bool) -> int:
    """How many characters of a line fit, but at least one."""
    used = 0.0
    for count, character in enumerate(line):
        used += width(character, size, bold=bold)
        if used > room:
            return max(count, 1)
    return len(line)
