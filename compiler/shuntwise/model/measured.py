"""The text of a measured impedance table -> `ImpedanceTable`.

In: the source of a data file: plain text with columns of frequency, magnitude and phase, or a Touchstone
file of version 1 with one port. Out: the table, and what is wrong with it, pointed at in that file. Refuses to
know which driver was measured, and never guesses: a column or a unit that is not plain is a finding.

Plain text: comment lines begin with # ! * ; or //; a line of words names the columns and may name their
units in brackets; without one the columns are frequency in hertz, magnitude in ohm, phase in degrees.
Columns are parted by blanks, tabs, semicolons or commas.
"""

from __future__ import annotations

import cmath
import math
import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model.design import ImpedanceTable
from shuntwise.model.physical import unphysical
from shuntwise.model.table_rows import (
    DEFAULT_UNIT,
    MOST_POINTS,
    NUMBER,
    Faulty,
    Line,
    Row,
    lines,
    malformed,
    number,
    too_many,
    within,
)
from shuntwise.model.touchstone import is_touchstone, touchstone_rows
from shuntwise.source import Source, Span

FEWEST_POINTS = 10
AUDIO_HZ = (10.0, 24_000.0)
"""At least `FEWEST_POINTS` points must lie in this band."""

_COMMENT = re.compile(r"\s*(?:[#!*;]|//)")
_DECIMAL_COMMA = re.compile(r"[+-]?\d+,\d+")
_PARTED_CELL = re.compile(r"[^,;\t\s][^,;\t]*")
_CELL = re.compile(r"[^\s(\[]+(?:\s*(?:\([^)]*\)|\[[^\]]*\]))?|\([^)]*\)|\[[^\]]*\]")

_COLUMN_WORDS = {
    "frequency": "frequency", "freq": "frequency", "f": "frequency",
    "magnitude": "magnitude", "mag": "magnitude", "modulus": "magnitude", "impedance": "magnitude",
    "z": "magnitude", "|z|": "magnitude", "phase": "phase", "angle": "phase", "arg": "phase",
}  # fmt: skip
_DEGREE = math.pi / 180
_UNITS = {
    "frequency": {"hz": 1.0, "khz": 1e3},
    "magnitude": {"ohm": 1.0, "ohms": 1.0, "ω": 1.0, "kohm": 1e3, "kω": 1e3},
    "phase": {"degree": 1.0, "degrees": 1.0, "deg": 1.0, "°": 1.0, "rad": 1 / _DEGREE, "radian": 1 / _DEGREE,
              "radians": 1 / _DEGREE},
}  # fmt: skip


@dataclass(frozen=True)
class _Column:
    kind: str
    factor: float = 1.0


_PLAIN_COLUMNS = (_Column("frequency"), _Column("magnitude"), _Column("phase"))


@lru_cache(maxsize=128)  # sources are equal only if they are the same object: variants share one reading
def read_table(source: Source) -> tuple[ImpedanceTable | None, tuple[Diagnostic, ...]]:
    """The table in a data file, or None and the finding that says why there is none."""
    try:
        rows = touchstone_rows(source) if is_touchstone(source) else _plain_rows(source)
        _check_rows(source, rows)
    except Faulty as fault:
        return None, (fault.finding,)
    table = ImpedanceTable(source.name, tuple(row.freq_hz for row in rows), tuple(row.ohm for row in rows))
    found = unphysical(table, [row.line.span for row in rows])
    return (None, (found,)) if found else (table, ())


# --- plain text


def _plain_rows(source: Source) -> list[Row]:
    columns: tuple[_Column, ...] | None = None
    header: Line | None = None
    remarks: list[Line] = []
    rows: list[Row] = []
    for line in lines(source):
        if not line.text.strip():
            continue
        if _COMMENT.match(line.text):
            if not rows:
                remarks.append(line)
            continue
        cells = _cells(line)
        if any(NUMBER.fullmatch(text) for _, text in cells[:1]):
            if columns is None:
                columns = _columns_of_remarks(remarks, len(cells)) or _PLAIN_COLUMNS
            rows.append(_plain_row(line, cells, columns, header))
            if len(rows) > MOST_POINTS:
                raise too_many(line)
        elif rows or header is not None:
            raise malformed(
                line.span,
                "this line of the table is not numbers",
                "expected numbers here",
                "remove it, or make it a comment with `#`",
            )
        else:
            header, columns = line, _header_columns(line)
    return rows


def _cells(line: Line) -> list[tuple[int, str]]:
    """(offset, text) of the columns of a line; refuses a decimal comma."""
    parted = re.search(r"[;\t ]", line.text.strip())
    if parted and (comma := _DECIMAL_COMMA.search(line.text)):
        loose = re.sub(r",\s+", " ", line.text)
        if _DECIMAL_COMMA.search(loose) and not re.search(r"\d,\s|\s,", line.text):
            raise malformed(
                line.part(*comma.span()),
                "a decimal comma stands in the table",
                "one number or two",
                "save the table with decimal points",
            )
    return [(match.start(), match[0]) for match in re.finditer(r"[^\s,;]+", line.text)]


def _header_columns(line: Line) -> tuple[_Column, ...]:
    """The columns that a line of words names; every one of the three once, others are passed over."""
    columns = []
    for start, text in _header_cells(line.text):
        words, unit = _words_and_unit(text)
        kind = next((_COLUMN_WORDS[word] for word in reversed(words) if word in _COLUMN_WORDS), "")
        if not kind:
            columns.append(_Column(""))
            continue
        known = _UNITS[kind]
        unit = unit or next((word for word in words if word in known), "")
        if unit and unit not in known:
            raise malformed(
                line.part(start, start + len(text)),
                f"`{unit[:40]}` is no unit of a {kind} here",
                "unit not known",
                "known: Hz, kHz; ohm, kohm; degree, radian; a level in dB has to be turned into ohm first",
            )
        columns.append(_Column(kind, known[unit] if unit else 1.0))
    kinds = [column.kind for column in columns if column.kind]
    for kind in DEFAULT_UNIT:
        if kinds.count(kind) != 1:
            what = "is not named" if kind not in kinds else "is named more than once"
            raise malformed(
                line.span,
                f"the {kind} {what} in the line that names the columns",
                "names of columns",
                "name them `frequency (Hz), magnitude (ohm), phase (degree)` in the order in which they stand",
            )
    return tuple(columns)


def _header_cells(text: str) -> list[tuple[int, str]]:
    """(offset, text) of the names of columns: parted as the rows are, or by blanks outside brackets."""
    pattern = _PARTED_CELL if re.search(r"[,;\t]", text) else _CELL
    return [(match.start(), match[0].rstrip()) for match in pattern.finditer(text)]


def _words_and_unit(cell: str) -> tuple[list[str], str]:
    """The words of a column's name, and what stands in brackets behind them."""
    match = re.fullmatch(r"(.*?)\s*(?:[(\[]\s*([^)\]]*?)\s*[)\]])?", cell.strip().strip("\"'").casefold())
    assert match is not None
    return re.split(r"[\s/_]+", match[1]), match[2] or ""


def _columns_of_remarks(remarks: Sequence[Line], count: int) -> tuple[_Column, ...] | None:
    """Many instruments write the names of the columns into a comment: taken if they fit the first row."""
    for line in reversed(remarks):
        mark = _COMMENT.match(line.text)
        assert mark is not None
        text = line.text[mark.end() :]
        named = [word for _, cell in _header_cells(text) for word in _words_and_unit(cell)[0]]
        if {_COLUMN_WORDS.get(word) for word in named} >= set(DEFAULT_UNIT) and len(_header_cells(text)) == count:
            return _header_columns(Line(line.source, line.start + mark.end(), text))
    return None


def _plain_row(line: Line, cells: list[tuple[int, str]], columns: tuple[_Column, ...], header: Line | None) -> Row:
    if len(cells) != len(columns):
        wanted = f"{len(columns)} are named" if header else f"{len(columns)} are expected"
        raise malformed(
            line.span,
            f"this row has {len(cells)} columns, but {wanted}",
            "frequency, magnitude and phase are looked for",
            "write decimal points, not commas; if there are other columns, name them all in a first line",
        )
    values = {}
    for column, (start, text) in zip(columns, cells, strict=True):
        if column.kind:
            values[column.kind] = number(line, start, text, column.kind) * column.factor
    within(line, values)
    return Row(line, values["frequency"], cmath.rect(values["magnitude"], math.radians(values["phase"])))


def _check_rows(source: Source, rows: list[Row]) -> None:
    whole = Span(source, 0, min(len(source.text), max(1, len(source.line(1)))))
    inside = sum(1 for row in rows if AUDIO_HZ[0] <= row.freq_hz <= AUDIO_HZ[1])
    for before, row in pairwise(rows):
        if row.freq_hz <= before.freq_hz:
            raise malformed(
                row.line.span,
                f"the frequency does not rise here: {before.freq_hz:g} Hz, then {row.freq_hz:g} Hz",
                "not above the row before",
                "sort the table by frequency, each frequency once",
            )
    if len(rows) >= FEWEST_POINTS and rows[-1].freq_hz < 200:
        raise malformed(
            rows[-1].line.span,
            f"the table ends at {rows[-1].freq_hz:g} Hz",
            "the last row",
            "if these are kilohertz, name the columns: `frequency (kHz), magnitude (ohm), phase (degree)`",
        )
    if inside < FEWEST_POINTS:
        raise malformed(
            whole,
            f"the table has {inside} points from {AUDIO_HZ[0]:g} Hz to {AUDIO_HZ[1] / 1e3:g} kHz",
            "this file",
            f"measure at least {FEWEST_POINTS}; a hundred or more show the peaks well",
        )
