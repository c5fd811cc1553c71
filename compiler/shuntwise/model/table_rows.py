"""Lines and rows of a data file, and how a fault in one is said: what every reader of tables shares.

In: a `Source`. Out: its `Line`s, `Row`s made of them, or `Faulty`, which ends the reading of a file. Refuses to
know any format.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model import findings
from shuntwise.source import Source, Span

MOST_POINTS = 20_000
LONGEST_LINE = 1000
"""A row of a table is a few numbers: what is longer is no table, and could be long to search."""

NUMBER = re.compile(r"[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d{1,3})?")

_LARGEST = {"frequency": 1e9, "magnitude": 1e7, "phase": 1e4}
"""Beyond these a number is no frequency, magnitude or phase of a driver, in Hz, ohm and degrees."""

DEFAULT_UNIT = {"frequency": "hertz", "magnitude": "ohm", "phase": "degrees"}


@dataclass(frozen=True)
class Line:
    """A line of a file: its text without what is beside the numbers, and where it begins."""

    source: Source
    start: int
    text: str

    @property
    def span(self) -> Span:
        return self.part(0, max(1, len(self.text)))

    def part(self, start: int, end: int) -> Span:
        return Span(self.source, self.start + start, self.start + end)


class Faulty(Exception):
    """The file cannot be read: one finding says why, and reading stops."""

    def __init__(self, finding: Diagnostic) -> None:
        super().__init__(finding.headline)
        self.finding = finding


@dataclass(frozen=True)
class Row:
    """One point of a table, and the line that it stands in."""

    line: Line
    freq_hz: float
    ohm: complex


def malformed(span: Span, headline: str, label: str, help: str) -> Faulty:
    """To be raised: the finding on a table that cannot be read."""
    return Faulty(
        findings.error(
            "measured-malformed",
            span,
            headline,
            label=label,
            why="a column or unit read wrongly would give a driver that looks plausible and is not yours",
            help=help,
        )
    )


def lines(source: Source) -> Iterator[Line]:
    """Every line; raises Faulty at one of more than `LONGEST_LINE` characters."""
    for number_of_line, start in enumerate(source.line_starts, 1):
        line = Line(source, start, source.line(number_of_line))
        if len(line.text) > LONGEST_LINE:
            raise malformed(
                line.part(0, 40),
                f"a line of {len(line.text)} characters is no row of a table",
                "a very long line",
                "write one point to a line",
            )
        yield line


def number(line: Line, start: int, text: str, kind: str) -> float:
    """The number that `text` is, perhaps infinite; `start` is its offset in the line. Raises Faulty."""
    if not NUMBER.fullmatch(text):
        raise malformed(
            line.part(start, start + len(text)),
            f"the {kind} `{text[:40]}` is not a number",
            "not a number",
            "leave out points that have no value; write numbers with a decimal point",
        )
    return float(text)


def within(line: Line, values: dict[str, float]) -> None:
    """Raises Faulty unless the values (hertz, ohm, degree, by kind) can be those of a driver."""
    for kind, value in values.items():
        size = abs(value) if kind == "phase" else value
        if not (size <= _LARGEST[kind] and (size > 0 or kind == "phase")):
            raise malformed(
                line.span,
                f"a {kind} of {value:.4g} {DEFAULT_UNIT[kind]} cannot be",
                "in this row",
                "look at the order of the columns and at their units",
            )


def too_many(line: Line) -> Faulty:
    return malformed(
        line.span,
        f"the table has more than {MOST_POINTS} points",
        "one too many",
        "a few hundred points, evenly spaced on a logarithmic scale, say as much",
    )
