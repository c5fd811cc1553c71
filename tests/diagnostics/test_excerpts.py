"""Marks stand exactly under the span, whatever the line is made of.

Widths follow Unicode Standard Annex 11 (East Asian Width: W and F take two cells) and the general categories
Mn and Me of the Unicode Character Database (no cell of their own); terminals in common use draw them so.
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shuntwise.diagnostics.diagnostic import Diagnostic, Severity
from shuntwise.diagnostics.excerpt import fit
from shuntwise.diagnostics.terminal import cell_width, visible, wrap
from shuntwise.diagnostics.text import render_text
from shuntwise.source import Source, Span


def marked(text: str, start: int, end: int, label: str = "", width: int = 100) -> list[str]:
    """The excerpt of a finding at code points `start` to `end`: the lines after its `|` line."""
    span = Span(Source("a.shunt", text), start, end)
    lines = render_text([Diagnostic("x", Severity.ERROR, "h", span, label)], width=width).splitlines()
    return lines[3 : lines.index("", 3)]


def at(text: str, piece: str) -> tuple[int, int]:
    start = text.index(piece)
    return start, start + len(piece)


@pytest.mark.parametrize(
    ("text", "piece", "expected"),
    [
        ("coil L1", "L1", ["1 | coil L1", "  |      ^^"]),
        ("\tcoil\tL1", "L1", ["1 |     coil    L1", "  |             ^^"]),
        ("ab\tL1", "L1", ["1 | ab  L1", "  |     ^^"]),
        ("abcd\tL1", "L1", ["1 | abcd    L1", "  |         ^^"]),
        ("a\tb", "\t", ["1 | a   b", "  |  ^^^"]),
        ("coil L1\r\nx\r\n", "L1", ["1 | coil L1", "  |      ^^"]),
        ("x\r\n\tL1\r\n", "L1", ["2 |     L1", "  |     ^^"]),
        ("低音 L1", "L1", ["1 | 低音 L1", "  |      ^^"]),
        ("a 低音 b", "低音", ["1 | a 低音 b", "  |   ^^^^"]),
        ("ＡＢ C", "C", ["1 | ＡＢ C", "  |      ^"]),
        ("低\tC", "C", ["1 | 低  C", "  |     ^"]),
        ("e\u0301e\u0301 L1", "L1", ["1 | e\u0301e\u0301 L1", "  |    ^^"]),
        ("ae\u0301b", "e\u0301", ["1 | ae\u0301b", "  |  ^"]),
        ("ae\u0301b", "\u0301", ["1 | ae\u0301b", "  |  ^"]),
        ("\U0001f50a L1", "L1", ["1 | \U0001f50a L1", "  |    ^^"]),
        ("22 Ω µF L1", "L1", ["1 | 22 Ω µF L1", "  |         ^^"]),
        ("a\x1b[2Jb", "b", ["1 | a<U+001B>[2Jb", "  |             ^"]),
        ("a\u202eb", "\u202e", ["1 | a<U+202E>b", "  |  ^^^^^^^^"]),
        ("a\rb\r\n", "b", ["1 | a<U+000D>b", "  |          ^"]),
    ],
)
def test_marks_stand_under_the_span(text: str, piece: str, expected: list[str]) -> None:
    assert marked(text, *at(text, piece)) == expected


def test_joined_emoji_shows_its_joiner() -> None:
    """Terminals disagree on the width of joined emoji, so the joiner is shown and nothing joins."""
    text = "\U0001f468\u200d\U0001f527 L1"
    assert marked(text, *at(text, "L1")) == [
        "1 | \U0001f468<U+200D>\U0001f527 L1",
        "  |              ^^",
    ]


def test_empty_span_gets_one_mark() -> None:
    assert marked("abc", 1, 1) == ["1 | abc", "  |  ^"]


@pytest.mark.parametrize("end", ["\n", "\r\n"])
def test_span_of_a_line_end_is_marked_after_the_last_character(end: str) -> None:
    text = f"coil L1{end}next"
    assert marked(text, 7, 7 + len(end)) == ["1 | coil L1", "  |        ^"]


@pytest.mark.parametrize("text", ["", "\n", "\r\n"])
def test_span_in_an_empty_file_is_shown(text: str) -> None:
    assert marked(text, 0, 0, "nothing here") == ["1 |", "  | ^ nothing here"]


def test_end_of_a_file_without_line_end() -> None:
    assert marked("a\ncoil", 6, 6, "`}` missing") == ["2 | coil", "  |     ^ `}` missing"]


def test_end_of_a_file_with_line_end_shows_the_last_text_above() -> None:
    assert marked("a\nleg {\n\n", 9, 9, "`}` missing") == ["2 | leg {", "4 |", "  | ^ `}` missing"]


def test_offsets_beyond_the_text_are_shown_at_its_end() -> None:
    assert marked("abc", 90, 99) == ["1 | abc", "  |    ^"]


def test_span_of_several_lines_is_marked_line_by_line() -> None:
    text = "leg {\r\n  a -- b  \r\n\r\n\tc\r\n} end\r\n"
    start, end = text.index("{"), text.index("}") + 1
    assert marked(text, start, end, "this leg") == [
        "1 | leg {",
        "  |     ^",
        "2 |   a -- b",
        "  |   ^^^^^^",
        "3 |",
        "4 |     c",
        "  |     ^",
        "5 | } end",
        "  | ^ this leg",
    ]


def test_span_of_many_lines_leaves_out_the_middle() -> None:
    text = "".join(f"line {n}\n" for n in range(1, 13))
    assert marked(text, 0, len(text), "all") == [
        " 1 | line 1",
        "   | ^^^^^^",
        " 2 | line 2",
        "   | ^^^^^^",
        "   ...",
        "11 | line 11",
        "   | ^^^^^^^",
        "12 | line 12",
        "   | ^^^^^^^ all",
    ]


def test_long_line_is_cut_around_the_span() -> None:
    text = "a" * 300 + "SPAN" + "b" * 300
    shown, marks = marked(text, 300, 304, width=44)
    assert shown == "1 | ..." + "a" * 15 + "SPAN" + "b" * 15 + "..."
    assert marks.index("^") == shown.index("SPAN")
    assert marks.count("^") == 4


def test_long_line_is_cut_only_where_it_is_too_long() -> None:
    assert marked("SPAN" + "b" * 99, 0, 4, width=44)[0] == "1 | SPAN" + "b" * 33 + "..."
    assert marked("b" * 99 + "SPAN", 99, 103, width=44)[0] == "1 | ..." + "b" * 33 + "SPAN"


def test_label_that_does_not_fit_beside_the_marks_goes_below() -> None:
    text = "x" * 30 + " L1"
    assert marked(text, 31, 33, "the second coil of that name in this leg", width=44) == [
        "1 | " + text,
        "  | " + " " * 31 + "^^",
        "  | the second coil of that name in this leg",
    ]


def test_long_label_continues_under_itself() -> None:
    assert marked("L1", 0, 2, "a coil whose name was given to another coil before", width=44) == [
        "1 | L1",
        "  | ^^ a coil whose name was given to",
        "  |    another coil before",
    ]


# Code points that take part in trouble: controls, blanks, marks, wide characters, joiners, surrogates.
hostile = st.text(
    st.one_of(
        st.sampled_from("ab \t\r\n\x00\x07\x1b\x7f\x9b\u00a0\u0301\u200d\u202e\u2028\ufe0f\ufeff"),
        st.sampled_from("低音\U0001f50a\u1161"),
        st.characters(),
    ),
    max_size=120,
)


@given(hostile)
def test_visible_text_is_printable_and_of_the_width_told(text: str) -> None:
    shown = visible(text)
    assert shown.isprintable()
    assert cell_width(text) == cell_width(shown)
    assert visible(shown) == shown


@given(hostile, st.integers(10, 60))
def test_wrapped_lines_keep_the_text_and_the_width(text: str, width: int) -> None:
    lines = wrap(text, width)
    assert all(cell_width(line) <= width for line in lines)
    assert "".join(lines).replace(" ", "") == visible(text).replace(" ", "")


@given(hostile, st.integers(0, 120), st.integers(0, 120), st.integers(12, 60))
def test_cut_line_fits_and_holds_its_marks(text: str, low: int, length: int, room: int) -> None:
    low = min(low, len(text))
    high = min(low + length, len(text))
    shown, start, end = fit(text, low, high, room)
    assert cell_width(shown) <= room
    assert 0 <= start < end <= max(room, cell_width(shown) + 1)


@given(hostile, st.integers(0, 130), st.integers(0, 130), st.integers(40, 120))
def test_every_line_of_a_finding_fits_the_width(text: str, start: int, length: int, width: int) -> None:
    span = Span(Source("a", text), start, start + length)
    finding = Diagnostic("some-name", Severity.ERROR, text, span, text, text, text)
    rendered = render_text([finding], width=width)
    assert all(cell_width(line) <= width for line in rendered.split("\n"))
    assert all(line.isprintable() for line in rendered.split("\n"))
