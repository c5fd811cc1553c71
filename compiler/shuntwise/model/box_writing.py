"""Lines of a box's own file: a reading as it is added, and how a new file begins.

In: values, and the text as it stands. Out: text that the grammar of a box reads back as the same values. Refuses to
know files.
"""

from __future__ import annotations

import re

from shuntwise.model.box import OPEN, Taken
from shuntwise.model.instruments import USUAL, Instruments
from shuntwise.units import HERTZ, OHM, VOLT, write

DIGITS = 6
"""Significant digits of what was read: more than any meter shows."""

_PLAIN_NAME = re.compile(r"[^\W\d]\w*|[0-9]+")


def reading_line(taken: Taken, inputs: int) -> str:
    """A reading that was taken, as a line without its end, for a design of so many inputs."""
    dimension = VOLT if taken.reading.quantity == "volts" else OHM
    value = "open" if taken.value == OPEN else write(taken.value, dimension, DIGITS)
    return f"reading {taken.reading.words(inputs)}: {value}"


def addition(text: str, line: str) -> str:
    """What is put behind a text, so that it ends with this line: with line ends as it has them."""
    end = "\r\n" if "\r\n" in text else "\n"
    return ("" if not text or text.endswith("\n") else end) + line + end


def with_reading(text: str, taken: Taken, inputs: int) -> str:
    """The text of a box with one more reading at its end; every other line is as it was."""
    return text + addition(text, reading_line(taken, inputs))


def is_unbegun(text: str) -> bool:
    """Does this say nothing yet: is it empty, or comments alone?"""
    return all(line.strip()[:1] in ("", "#") for line in text.splitlines())


def new_box(name: str, design_path: str, variant: str | None = None, instruments: Instruments = USUAL) -> str:
    """How the file of a box begins. `design_path` is as written in it, with `/` between folders; `instruments` are told
    where they are not the usual.

    Raises ValueError for a name or a path that cannot stand in quotes.
    """
    for text in (name, design_path):
        if not text.strip() or '"' in text or not text.isprintable():
            raise ValueError("a name is made of characters that can be seen, and has no quotes in it")
    shown = name if _PLAIN_NAME.fullmatch(name) else f'"{name}"'
    lines = [f'box {shown} of "{design_path}"']
    lines += [f"variant {variant}"] if variant else []
    lines += [bench_line(instruments)] if instruments != USUAL else []
    return "".join(f"{line}\n" for line in lines)


def bench_line(instruments: Instruments) -> str:
    """What stands on the bench, all of it, as a line without its end."""
    told = (
        ("source", write(instruments.source_v, VOLT)),
        ("series", write(instruments.series_ohm, OHM)),
        ("dummies", write(instruments.dummy_ohm, OHM)),
        ("meter", f"{100 * instruments.meter_share:.3g} %"),
        ("meter_top", write(instruments.meter_top_hz, HERTZ)),
        ("leads", write(instruments.leads_ohm, OHM)),
    )
    return f"bench {{ {', '.join(f'{word} {value}' for word, value in told)} }}"
