"""The set-up of the bench as a picture: generator, series resistor, box, dummies, voltmeter.

In: a circuit and the instruments. Out: a picture. Refuses to know a reading.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import pi, sin

from shuntwise import units as u
from shuntwise.diagnostics.wording import listed
from shuntwise.documents.lettering import settable, width, wrapped
from shuntwise.documents.page import Picture
from shuntwise.documents.schematic.symbols import PEN, WIRE, Place, circle, placed, symbol
from shuntwise.documents.sheet import GREY, Drawn, Mark, Point, Stroke, Text
from shuntwise.graph.circuit import Circuit
from shuntwise.model.instruments import Instruments

WIDTH, ROW, SIZE = 152.0, 12.5, 2.75
"""Of the picture, of a driver's two wires, and of type, in mm."""

LEFT, RIGHT = 52.0, 92.0
"""The edges of the box."""

APART = 4.5
"""Of a post from the middle between the two of an input."""

DUMMY, METER, SOURCE, RADIUS = 112.0, 134.0, 8.0, 3.8
"""Where dummies, voltmeter and generator stand, and the size of a round instrument."""

MOST = 4
"""So many dummies, and so many inputs, are drawn; of more, the first."""


def set_up_picture(circuit: Circuit, bench: Instruments) -> Picture:
    """Dummies on and the generator in, as most readings are taken; it is drawn on the first of several inputs."""
    names, feeds = [*circuit.design.drivers], [pair.name for pair in circuit.design.feeds]
    dummies, inputs = names[:MOST], feeds[:MOST]
    rows = max(len(dummies), len(inputs))
    more = len(dummies) < len(names) or len(inputs) < len(feeds)
    height = ROW * rows + (5.0 if more else 1.0)
    marks = [*_box(ROW * rows)]
    for number, feed in enumerate(inputs):
        middle = ROW * rows * (number + 0.5) / len(inputs)
        marks += _posts(middle, feed)
        marks += _in_its_turn(middle) if number else _source(middle, bench)
    for number, name in enumerate(dummies):
        marks += _dummy(ROW * number + 1.75, name, bench)
    marks += _meter(1.75)
    for x, drawn, all_of_them in ((DUMMY, dummies, names), (LEFT, inputs, feeds)):
        if len(drawn) < len(all_of_them):
            text = f"and {len(all_of_them) - len(drawn)} more"
            marks.append(Text(x, height - 1.0, text, SIZE, "middle", tone=GREY))
    turns = f"; then {listed(feeds[1:])} in its place, one input at a time" if len(feeds) > 1 else ""
    said = (
        f"The generator feeds {feeds[0]}+ and {feeds[0]}- of the box through the series resistor of "
        f"{_ohm(bench.series_ohm)}{turns}; {_ohm(bench.dummy_ohm)} in the place of {listed(names)}; the voltmeter is "
        "across one of them."
    )
    return Picture(Drawn(tuple(marks), settable(said)), WIDTH, height, "Dummies on, generator in")


def _source(middle: float, bench: Instruments) -> Iterator[Mark]:
    top, low = middle - APART, middle + APART
    yield _wire((SOURCE, middle - RADIUS), (SOURCE, top), (22.0, top))
    yield from placed(symbol("resistor"), Place(22.0, top))
    yield _wire((29.5, top), (LEFT, top))
    yield _wire((SOURCE, middle + RADIUS), (SOURCE, low), (LEFT, low))
    yield Stroke(circle(SOURCE, middle, RADIUS), PEN, closed=True)
    wave = tuple((SOURCE - 2.2 + 4.4 * n / 20, middle - 1.3 * sin(2 * pi * n / 20)) for n in range(21))
    yield Stroke(wave, PEN)
    yield Text(SOURCE + RADIUS + 1.5, middle + 1.0, u.write(bench.source_v, u.VOLT, 3), SIZE)
    yield Text(25.75, top + 4.0, _ohm(bench.series_ohm), SIZE, "middle")


def _posts(middle: float, feed: str) -> Iterator[Mark]:
    """With their names between them, away from those of other inputs."""
    for y, sign, below in ((middle - APART, "+", 3.0), (middle + APART, "-", -1.0)):
        yield from _point(LEFT, y)
        yield Text(LEFT - 1.5, y + below, _cut(f"{feed}{sign}", 18.0), SIZE, "end")


def _in_its_turn(middle: float) -> Iterator[Mark]:
    """At an input on which the generator is not drawn."""
    for y in (middle - APART, middle + APART):
        yield Stroke(((31.5, y), (LEFT, y)), WIRE, dashes=(1.2, 0.9))
    yield Text(29.5, middle + 1.0, "in its turn", SIZE, "end", tone=GREY)


def _box(height: float) -> Iterator[Mark]:
    yield Stroke(((LEFT, 0.2), (RIGHT, 0.2), (RIGHT, height - 0.2), (LEFT, height - 0.2)), PEN, closed=True)
    yield Text(LEFT + 3.0, height / 2 + 1.0, "crossover", SIZE)


def _dummy(top: float, name: str, bench: Instruments) -> Iterator[Mark]:
    low = top + ROW - 3.5
    long = symbol("resistor").length
    begin = (top + low - long) / 2
    yield _wire((RIGHT, top), (DUMMY, top), (DUMMY, begin))
    yield from placed(symbol("resistor"), Place(DUMMY, begin, down=True))
    yield _wire((RIGHT, low), (DUMMY, low), (DUMMY, begin + long))
    yield Text(DUMMY - 2.6, (top + low) / 2 + 1.0, _ohm(bench.dummy_ohm), SIZE, "end")
    for y, sign in ((top, "+"), (low, "-")):
        yield from _point(RIGHT, y)
        yield Text(RIGHT - 1.5, y + 1.0, _cut(f"{name}{sign}", 17.0), SIZE, "end")


def _meter(top: float) -> Iterator[Mark]:
    low, middle = top + ROW - 3.5, top + (ROW - 3.5) / 2
    for y, end in ((top, middle - RADIUS), (low, middle + RADIUS)):
        yield Stroke(((DUMMY, y), (METER, y), (METER, end)), WIRE, dashes=(1.2, 0.9))
        yield from _point(DUMMY, y)
    yield Stroke(circle(METER, middle, RADIUS), PEN, closed=True)
    yield Text(METER, middle + 1.1, "V~", SIZE, "middle")


def _wire(*points: Point) -> Stroke:
    return Stroke(points, WIRE)


def _point(x: float, y: float) -> Iterator[Mark]:
    yield Stroke(circle(x, y, 0.6, 16), 0.0, closed=True, fill="ink")


def _ohm(value: float) -> str:
    return u.write(value, u.OHM, 3)


def _cut(words: str, room: float) -> str:
    shown = settable(words)
    return shown if width(shown, SIZE) <= room else wrapped(shown, room - width("…", SIZE), SIZE)[0] + "…"
