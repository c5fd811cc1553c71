"""Source text and places in it.

In: the text of one file. Out: a `Source`, and `Span`s into it. This is the one place where
offsets become lines and columns; everything inside the compiler counts code points from 0, and
everything that leaves it goes through `Source.position`. It refuses to know what the text means.
"""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from functools import cached_property


@dataclass(frozen=True, eq=False)
class Source:
    """One text: `name` as the user knows it (a path relative to where they stand), and `text`.

    `file` is the real path of the file that it was read from, "" if it was read from none. Two sources are equal only
    if they are the same object; a design may include one file once only.
    """

    name: str
    text: str
    file: str = ""

    @cached_property
    def line_starts(self) -> tuple[int, ...]:
        """Offset of the first code point of each line. Lines end with LF; CR before it belongs to the end."""
        starts = [0]
        find = self.text.find
        at = find("\n")
        while at >= 0:
            starts.append(at + 1)
            at = find("\n", at + 1)
        return tuple(starts)

    def position(self, offset: int) -> tuple[int, int]:
        """The 1-based line and column (in code points; a tab is one column) of a 0-based offset."""
        offset = max(0, min(offset, len(self.text)))
        line = bisect_right(self.line_starts, offset)
        return line, offset - self.line_starts[line - 1] + 1

    def line(self, number: int) -> str:
        """The text of a 1-based line, without its line end."""
        start = self.line_starts[number - 1]
        end = self.line_starts[number] if number < len(self.line_starts) else len(self.text)
        return self.text[start:end].rstrip("\r\n")


@dataclass(frozen=True)
class Span:
    """The half-open range `start` to `end` (code points from 0) of one source."""

    source: Source
    start: int
    end: int

    @property
    def text(self) -> str:
        return self.source.text[self.start : self.end]

    @property
    def line(self) -> int:
        return self.source.position(self.start)[0]

    @property
    def column(self) -> int:
        return self.source.position(self.start)[1]

    def to(self, other: Span) -> Span:
        """The span from the start of this one to the end of another in the same source."""
        return Span(self.source, min(self.start, other.start), max(self.end, other.end))
