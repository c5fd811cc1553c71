"""A place in a source drawn for a reader: numbered lines with marks under the span, and changes as - and +.

In: a `Span` or the edits of one fix. Out: lines of text, each at most `width` cells wide. It refuses to
know why the place is shown.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from shuntwise.diagnostics.diagnostic import Edit
from shuntwise.diagnostics.fixes import in_order, replaced
from shuntwise.diagnostics.terminal import TAB_STOP, Paint, cell_width, glyphs, wrap
from shuntwise.source import Source, Span

LONGEST_EXCERPT = 6
"""A span of more lines than this is drawn as its first two and last two lines."""

LONGEST_CHANGE = 8
"""A fix's preview shows at most this many lines removed and this many added in one place."""

NARROWEST_LABEL = 24
"""A label with fewer cells than this beside the marks goes on the line below them."""

_ELLIPSIS = "..."


@dataclass(frozen=True)
class Frame:
    """How excerpts of one diagnostic are drawn: line numbers in `gutter` cells, `width` cells in all."""

    gutter: int
    width: int
    paint: Paint

    @property
    def room(self) -> int:
        """Cells for the text of a line; a window too narrow to be of use is exceeded."""
        return max(self.width - self.gutter - 3, 3 * len(_ELLIPSIS) + 3)

    def margin(self, number: int | None = None, sign: str = "|") -> str:
        shown = "" if number is None else str(number)
        return self.paint("gutter", f"{shown:>{self.gutter}} {sign}")


def last_line(span: Span) -> int:
    """The 1-based line that holds the span's last character (its line end belongs to the line)."""
    return span.source.position(max(span.start, span.end - 1))[0]


def draw_span(frame: Frame, span: Span, label: str, *, mark: str = "^", style: str = "error") -> list[str]:
    """The span's lines with `mark` under each cell of the span, and the label after the last marks.

    An empty span, and one that holds only a line end, gets one mark. A span on a blank line is shown with
    the last line above that has text.
    """
    source, first, last = span.source, span.line, last_line(span)
    lines = [frame.margin()]
    if not _line(source, first).strip():
        above = next((n for n in range(first - 1, max(0, first - 100), -1) if _line(source, n).strip()), None)
        if above is not None:
            lines.append(_numbered(frame, above, fit(_line(source, above), 0, 0, frame.room)[0]))
    for number in _chosen(first, last, LONGEST_EXCERPT):
        if number is None:
            lines.append(frame.paint("gutter", f"{'':>{frame.gutter}} {_ELLIPSIS}"))
            continue
        text = _line(source, number)
        low, high = _marked(span, number, first, last, text)
        shown, start, end = fit(text, low, high, frame.room)
        lines.append(_numbered(frame, number, shown))
        if low < high or number in (first, last):
            ending = label if number == last else ""
            lines.extend(_marks(frame, start, mark * (end - start), ending, style))
    return lines


def draw_change(frame: Frame, edits: Sequence[Edit]) -> list[str]:
    """The lines that the edits touch, before (-) and after (+), in the order of the file.

    Edits that overlap have no sound result and give no lines.
    """
    ordered = in_order(edits)
    if ordered is None:
        return []
    lines: list[str] = []
    for group in _by_lines(ordered):
        source = group[0].span.source
        first = group[0].span.line
        last = max(source.position(edit.span.end)[0] for edit in group)
        start, end = source.line_starts[first - 1], source.line_starts[last - 1] + len(_line(source, last))
        before = source.text[start:end]
        after = replaced(before, [(e.span.start - start, e.span.end - start, e.text) for e in group])
        focus = group[0].span.start - start
        if len({edit.span.source for edit in ordered}) > 1:
            lines.extend(f"{'':>{frame.gutter}}   {line}" for line in wrap(source.name, frame.room))
        lines.extend(_signed(frame, "-", first, before, focus))
        if after.strip():
            lines.extend(_signed(frame, "+", first, after, focus))
    return lines


def fit(text: str, low: int, high: int, room: int) -> tuple[str, int, int]:
    """One line cut to `room` cells around its code points `low` to `high`.

    Returns the text to show and the half-open range of cells that the marks take in it, at least one cell.
    Tabs are expanded; what is cut away is replaced by an ellipsis.
    """
    # Only the neighbourhood is measured, so that a file of one endless line costs no more than another.
    skip, stop = max(0, low - 2 * room), low + 2 * room
    drawn = glyphs(text[skip:stop], tab_stop=TAB_STOP)
    cut_left, cut_right = skip > 0, stop < len(text)
    low, high = low - skip, min(high, stop) - skip
    total = drawn[-1].end if drawn else 0
    start = drawn[low].start if low < len(drawn) else total
    end = max(drawn[high - 1].end, start + 1) if low < high else start + 1
    if not (cut_left or cut_right) and max(total, end) <= room:
        return "".join(glyph.shown for glyph in drawn), start, end

    inner = room - 2 * len(_ELLIPSIS)
    left = max(0, start - max(0, inner - (end - start)) // 2)
    if not cut_right:
        left = min(left, max(0, max(total, end) - room + len(_ELLIPSIS)))
    if left <= len(_ELLIPSIS) and not cut_left:
        left = 0
    head = _ELLIPSIS if left or cut_left else ""
    right = left + room - len(head)
    tail = _ELLIPSIS if cut_right or max(total, end) > right else ""
    right -= len(tail)
    kept = [glyph for glyph in drawn if left <= glyph.start and glyph.end <= right]
    origin = (kept[0].start if kept else left) - len(head)
    shown_start = max(start - origin, 0)
    shown_end = max(min(end, right) - origin, shown_start + 1)
    return head + "".join(glyph.shown for glyph in kept) + tail, shown_start, shown_end


def _line(source: Source, number: int) -> str:
    """A 1-based line without its line end (LF or CR LF); any other CR stays and will be shown."""
    start = source.line_starts[number - 1]
    if number == len(source.line_starts):
        return source.text[start:]
    return source.text[start : source.line_starts[number] - 1].removesuffix("\r")


def _chosen(first: int, last: int, most: int) -> list[int | None]:
    """The line numbers to show; None stands for lines left out."""
    if last - first < most:
        return list(range(first, last + 1))
    return [first, first + 1, None, last - 1, last]


def _marked(span: Span, number: int, first: int, last: int, text: str) -> tuple[int, int]:
    """The code points of one line that the span covers; on inner lines without the blanks around the text."""
    line_start = span.source.line_starts[number - 1]
    low = span.start - line_start if number == first else len(text) - len(text.lstrip())
    high = span.end - line_start if number == last else len(text.rstrip())
    low = max(0, min(low, len(text)))
    return low, max(low, min(high, len(text)))


def _numbered(frame: Frame, number: int, shown: str) -> str:
    return f"{frame.margin(number)} {shown}".rstrip(" ")


def _marks(frame: Frame, start: int, marks: str, label: str, style: str) -> list[str]:
    """The line of marks and its label: beside the marks, wrapped beside them, or below them."""
    lead = f"{frame.margin()} {' ' * start}{frame.paint(style, marks)}"
    if not label:
        return [lead]
    beside = start + len(marks) + 1
    if cell_width(label) <= frame.room - beside or frame.room - beside >= NARROWEST_LABEL:
        texts = wrap(label, frame.room - beside)
        lines = [f"{lead} {frame.paint(style, texts[0])}"]
        indent = beside
    else:
        indent = max(0, min(start, frame.room - 2 * NARROWEST_LABEL))
        texts = ["", *wrap(label, frame.room - indent)]
        lines = [lead]
    return lines + [f"{frame.margin()} {' ' * indent}{frame.paint(style, text)}" for text in texts[1:]]


def _by_lines(ordered: Sequence[Edit]) -> list[list[Edit]]:
    """Edits grouped so that those that share a line are shown in one change."""
    groups = [[edit] for edit in ordered[:1]]
    for previous, edit in pairwise(ordered):
        source = edit.span.source
        if previous.span.source is source and source.position(previous.span.end)[0] == edit.span.line:
            groups[-1].append(edit)
        else:
            groups.append([edit])
    return groups


def _signed(frame: Frame, sign: str, number: int, text: str, focus: int) -> list[str]:
    """Lines of one side of a change, each cut to the frame; the first is cut around code point `focus`."""
    lines: list[str] = []
    style = "removed" if sign == "-" else "added"
    texts = text.split("\n")
    for index, line in enumerate(texts[:LONGEST_CHANGE]):
        at = min(focus, len(line)) if index == 0 else 0
        shown = fit(line.removesuffix("\r"), at, at, frame.room)[0]
        lines.append(f"{frame.margin(number + index, sign)} {frame.paint(style, shown)}".rstrip(" "))
    if len(texts) > LONGEST_CHANGE:
        lines.append(f"{'':>{frame.gutter}} {sign} {_ELLIPSIS}")
    return lines
