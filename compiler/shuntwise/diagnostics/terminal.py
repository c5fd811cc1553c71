"""Text as a terminal will show it: what may be sent, how wide it is, how it is wrapped.

In: any text, hostile text included. Out: text in which nothing can steer a terminal, and its width in
character cells. It refuses to know what a diagnostic is.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from itertools import chain
from typing import NamedTuple
from unicodedata import category, east_asian_width

TAB_STOP = 4
"""Tabs in an excerpt are drawn as blanks up to the next multiple of this many cells."""

MARKS_ON_ONE_CHARACTER = 4
"""More combining marks than this on one character are shown as escapes: a pile of them covers other lines."""

Paint = Callable[[str, str], str]
"""`paint(style, text)` gives the text as it is sent; the styles are the keys of `_SGR`."""

_SGR = {
    "error": "1;31",
    "warning": "1;33",
    "advice": "1;36",
    "not checked": "1;35",
    "name": "2",
    "place": "36",
    "gutter": "34",
    "second": "34",
    "removed": "31",
    "added": "32",
    "strong": "1",
}

# Characters that Unicode counts as letters, marks or symbols but that draw nothing (the property
# Default_Ignorable_Code_Point of the Unicode Character Database less category Cf, which is caught by its
# category, and the blank Braille pattern). List from memory.
_INVISIBLE = frozenset(
    chain(
        (0x034F, 0x115F, 0x1160, 0x17B4, 0x17B5, 0x2800, 0x3164, 0xFFA0),
        *(range(0x180B, 0x1810), range(0xFE00, 0xFE10), range(0xE0100, 0xE01F0)),
    )
)


class Glyph(NamedTuple):
    """One code point as drawn: the text sent for it, and the half-open range of cells that it covers.

    A combining mark covers the cells of the character that it stands on.
    """

    shown: str
    start: int
    end: int


def painter(colour: bool) -> Paint:
    """The function that colours text by style, or one that leaves it alone."""
    if not colour:
        return lambda style, text: text
    return lambda style, text: f"\x1b[{_SGR[style]}m{text}\x1b[0m" if text else ""


def glyphs(text: str, *, tab_stop: int = 0) -> list[Glyph]:
    """The code points of `text` as drawn from cell 0 on, one glyph for each.

    Whatever is not printable (controls, line ends, bidi controls, joiners, odd blanks, lone surrogates) or
    is invisible becomes an escape like `<U+202E>`. A tab becomes blanks if `tab_stop` is above 0.
    """
    drawn: list[Glyph] = []
    at = 0
    base_start = 0
    marks = MARKS_ON_ONE_CHARACTER  # a mark with nothing before it must not land on what precedes the text
    for char in text:
        if " " <= char <= "~":  # most of every file
            marks = 0
            drawn.append(Glyph(char, at, at + 1))
            base_start, at = at, at + 1
            continue
        if _is_mark(char) and marks < MARKS_ON_ONE_CHARACTER:
            marks += 1
            drawn.append(Glyph(char, base_start, at))
            continue
        if char == "\t" and tab_stop:
            shown, cells = " " * (tab_stop - at % tab_stop), tab_stop - at % tab_stop
        elif not char.isprintable() or ord(char) in _INVISIBLE or _is_mark(char):
            shown = f"<U+{ord(char):04X}>"
            cells = len(shown)
        else:
            shown, cells = char, 2 if east_asian_width(char) in "WF" else 1
        if not _is_mark(char):
            marks = 0
        drawn.append(Glyph(shown, at, at + cells))
        base_start, at = at, at + cells
    return drawn


def visible(text: str) -> str:
    """The text with every character that could act on a terminal, or hide on it, as a visible escape."""
    if text.isascii() and text.isprintable():
        return text
    return "".join(glyph.shown for glyph in glyphs(text))


def cell_width(text: str) -> int:
    """How many cells `visible(text)` takes. Characters of ambiguous width (such as the omega) take one."""
    if text.isascii() and text.isprintable():
        return len(text)
    return max((glyph.end for glyph in glyphs(text)), default=0)


def wrap(text: str, width: int) -> list[str]:
    """`visible(text)` in lines of at most `width` cells, broken at blanks, and inside a word only if it must.

    At least one line comes back, and a line holds at least one character.
    """
    lines: list[str] = []
    line, used = "", 0
    for word in re.findall(r" *[^ ]+", visible(text)):
        piece = word
        cells = cell_width(piece)
        if line and used + cells > width:
            lines.append(line)
            line, used = "", 0
        if lines and not line:
            piece = piece.lstrip(" ")
            cells = cell_width(piece)
        while cells > width:
            head = _head(piece, width)
            lines.append(head)
            piece = piece[len(head) :]
            cells = cell_width(piece)
        line, used = line + piece, used + cells
    if line or not lines:
        lines.append(line)
    return lines


def _head(word: str, width: int) -> str:
    """The longest beginning of a word that fits `width` cells, but at least its first character and marks."""
    drawn = glyphs(word)
    count = 1
    while count < len(drawn) and (drawn[count].end <= width or drawn[count].start == drawn[0].start):
        count += 1
    return word[:count]


def _is_mark(char: str) -> bool:
    """True of characters that stand on the one before: marks, and the vowels and finals of Hangul."""
    if char < "\u0300" or ord(char) in _INVISIBLE:
        return False
    return category(char) in ("Mn", "Me") or "\u1161" <= char <= "\u11ff" or "\ud7b0" <= char <= "\ud7fb"
