"""A Touchstone file of version 1 with one port -> rows of frequency and impedance.

In: the source of a data file. Out: its rows in hertz and ohm; raises `Faulty`. The option line and the meaning
of the columns are as in Touchstone File Format Specification, revision 1.1, IBIS Open Forum, 2002 (from
memory; tested against an independent reader). Refuses to know plain tables.
"""

from __future__ import annotations

import cmath
import math
import re
from dataclasses import dataclass

from shuntwise.model.table_rows import MOST_POINTS, NUMBER, Line, Row, lines, malformed, number, too_many, within
from shuntwise.source import Source

_FREQ_UNITS = {"HZ": 1.0, "KHZ": 1e3, "MHZ": 1e6, "GHZ": 1e9}
_OPTION_WORDS = frozenset((*_FREQ_UNITS, *"SYZGHR", "MA", "DB", "RI"))


@dataclass(frozen=True)
class _Options:
    factor: float = 1e9
    parameter: str = "S"
    form: str = "MA"
    reference_ohm: float = 50.0


def is_touchstone(source: Source) -> bool:
    """By the ending that the format prescribes for one port, or by an option line that names a parameter and a form."""
    if source.name.casefold().endswith(".s1p"):
        return True
    for line in lines(source):
        if line.text.lstrip().startswith("#"):
            words = {word.upper() for word in line.text.lstrip()[1:].split()}
            plain = {word for word in words if not NUMBER.fullmatch(word)}
            return bool(plain <= _OPTION_WORDS and plain & {"MA", "DB", "RI"} and plain & set("SYZGH"))
        if line.text.strip() and not line.text.lstrip().startswith("!"):
            return False
    return False


def touchstone_rows(source: Source) -> list[Row]:
    """The rows in the order of the file; at most `MOST_POINTS`."""
    options: _Options | None = None
    rows: list[Row] = []
    for whole in lines(source):
        line = Line(source, whole.start, whole.text.partition("!")[0].rstrip())
        if not line.text.strip():
            continue
        if line.text.lstrip().startswith("["):
            raise malformed(
                line.span,
                "this is a Touchstone file of version 2",
                "a keyword of version 2",
                "save it as version 1 (.s1p)",
            )
        if line.text.lstrip().startswith("#"):
            if options is None and not rows:
                options = _options(line)
            continue  # the standard has later option lines ignored
        options = options or _Options()
        cells = [(match.start(), match[0]) for match in re.finditer(r"\S+", line.text)]
        if len(cells) != 3:
            raise malformed(
                line.span,
                f"this row has {len(cells)} columns; a one-port file has 3",
                "frequency and two numbers",
                "only files of one port hold an impedance",
            )
        freq, first, second = (number(line, start, text, "value") for start, text in cells)
        rows.append(Row(line, freq * options.factor, _impedance(line, options, first, second)))
        # hypot, as abs() of a complex number may overflow.
        magnitude = math.hypot(rows[-1].ohm.real, rows[-1].ohm.imag)
        within(line, {"frequency": rows[-1].freq_hz, "magnitude": magnitude})
        if len(rows) > MOST_POINTS:
            raise too_many(line)
    return rows


def _options(line: Line) -> _Options:
    words = line.text.lstrip()[1:].upper().split()
    found = _Options()
    factor, parameter, form, reference = found.factor, found.parameter, found.form, found.reference_ohm
    while words:
        word = words.pop(0)
        if word in _FREQ_UNITS:
            factor = _FREQ_UNITS[word]
        elif word in ("S", "Y", "Z"):
            parameter = word
        elif word in ("MA", "DB", "RI"):
            form = word
        elif word == "R" and words and NUMBER.fullmatch(words[0]) and float(words[0]) > 0:
            reference = float(words.pop(0))
        else:
            raise malformed(
                line.span,
                f"`{word[:40]}` in the option line is not understood",
                "the option line",
                "such as `# Hz S MA R 50`: unit, S or Y or Z, MA or DB or RI, and the reference resistance",
            )
    return _Options(factor, parameter, form, reference)


def _impedance(line: Line, options: _Options, first: float, second: float) -> complex:
    """Ohm from one pair of numbers. In files of version 1, Y and Z are normalised to the reference."""
    try:
        if options.form == "RI":
            value = complex(first, second)
        else:
            modulus = 10 ** (first / 20) if options.form == "DB" else first
            value = cmath.rect(modulus, math.radians(second))
        if options.parameter == "Z":
            return value * options.reference_ohm
        if options.parameter == "Y":
            return options.reference_ohm / value
        return options.reference_ohm * (1 + value) / (1 - value)
    except (ZeroDivisionError, OverflowError, ValueError):
        raise malformed(
            line.span,
            "this row stands for no finite impedance",
            "open, shorted or out of range",
            "leave out points where the measurement overflowed",
        ) from None
