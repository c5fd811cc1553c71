"""The symbols of a schematic as strokes, after IEC 60617 (from memory; what is added to it is told at the
symbol).

In: the name of a symbol. Out: a `Symbol`, lying from its first terminal at (0, 0) to its second at (`length`, 0), and
placed as strokes and texts. Refuses to know what it is called and what it is joined to.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from functools import cache
from math import cos, pi, sin

from shuntwise.documents.lettering import ASCENT
from shuntwise.documents.sheet import INK, PAPER, Mark, Point, Stroke, Text

PEN = 0.35
"""Of symbols, in mm; wires are thinner."""

WIRE = 0.25
SIGN = 2.6
"""Height of the signs at terminals."""

Ring = tuple[Point, ...]


@dataclass(frozen=True)
class Symbol:
    """`above` and `below` are how far it reaches from the line between its terminals, signs included; `lead` is the
    least length of a straight wire at both ends, so that signs have room. `third` is where a third terminal is.

    Signs are short texts, each with the middle of its letters at a point.
    """

    length: float
    above: float
    below: float
    lines: tuple[Ring, ...] = ()
    closed: tuple[Ring, ...] = ()
    filled: tuple[Ring, ...] = ()
    dashed: tuple[Ring, ...] = ()
    signs: tuple[tuple[float, float, str], ...] = ()
    lead: float = 2.5
    third: Point | None = None


@dataclass(frozen=True)
class Place:
    """Where a symbol lies: its first point (the second terminal's, if `turned`) and whether it goes down from there.

    What is above a lying symbol is at the right of a standing one, and at its left if `flipped`.
    """

    x: float
    y: float
    down: bool = False
    turned: bool = False
    flipped: bool = False
    length: float = field(default=0.0)

    def at(self, point: Point) -> Point:
        along, across = point
        if self.turned:
            along = self.length - along
        if self.flipped:
            across = -across
        return (self.x - across, self.y + along) if self.down else (self.x + along, self.y + across)


def placed(symbol: Symbol, place: Place) -> list[Mark]:
    """The marks of a symbol at its place."""

    def ring(points: Iterable[Point]) -> Ring:
        return tuple(map(place.at, points))

    marks: list[Mark] = [Stroke(ring(line), PEN, closed=True, fill=PAPER) for line in symbol.closed]
    marks += [Stroke(ring(line), PEN) for line in symbol.lines]
    marks += [Stroke(ring(line), 0, closed=True, fill=INK) for line in symbol.filled]
    marks += [Stroke(ring(line), PEN, dashes=(1.2, 0.8)) for line in symbol.dashed]
    for along, across, sign in symbol.signs:
        x, y = place.at((along, across))
        marks.append(Text(x, y + SIGN * ASCENT / 2, sign, SIGN, "middle"))
    return marks


def circle(x: float, y: float, radius: float, corners: int = 24) -> Ring:
    return tuple(
        (x + radius * cos(2 * pi * n / corners), y + radius * sin(2 * pi * n / corners)) for n in range(corners)
    )


def _box(length: float, half: float) -> Ring:
    return ((0, -half), (length, -half), (length, half), (0, half))


@cache
def symbol(name: str, coupled: bool = False) -> Symbol:
    """A name that has none gets a plain box, in a winding with a dot at its start."""
    if name in _COILS:
        return _coil(name, coupled)
    return _SYMBOLS.get(name, _MARKED if coupled else _PLAIN)


def has_symbol(name: str) -> bool:
    return name in _COILS or name in _SYMBOLS


def _winding() -> Ring:
    """Four half circles of 1 mm, humps up."""
    steps = 10
    return tuple(
        (2 * hump + 1 - cos(pi * n / steps), -sin(pi * n / steps))
        for hump in range(4)
        for n in range(0 if hump == 0 else 1, steps + 1)
    )


_COILS = ("coil", "iron-cored coil", "ferrite-cored coil", "tapped coil")


def _coil(name: str, coupled: bool) -> Symbol:
    """A core is a line; that it is dashed for ferrite is common practice, no source. The dot is at the start."""
    core = (((0.3, -1.9), (7.7, -1.9)),)
    tapped = name == "tapped coil"
    return Symbol(
        8,
        2.2 if "cored" in name else 1.2,
        2.2 if coupled or tapped else 0.3,
        lines=(_winding(), *(core if name == "iron-cored coil" else ())),
        dashed=core if name == "ferrite-cored coil" else (),
        filled=(circle(0.5, 1.2, 0.5, 16),) if coupled or tapped else (),
        third=(4, 0) if tapped else None,
    )


_PLATES: tuple[Ring, ...] = (((0, -2.4), (0, 2.4)), ((1.3, -2.4), (1.3, 2.4)))
_RESISTOR = _box(7.5, 1.25)
_CROSS = 2.4 / 2**0.5
_ENDS = (circle(0.7, 0, 0.7), circle(7.3, 0, 0.7))

_PLAIN = Symbol(6, 2.6, 2.6, closed=(_box(6, 2.5),))
_MARKED = Symbol(6, 2.6, 3.9, closed=(_box(6, 2.5),), filled=(circle(0.5, 3.3, 0.5, 16),))

_SYMBOLS = {
    "capacitor": Symbol(1.3, 2.5, 2.5, lines=_PLATES, lead=4),
    "polarised capacitor": Symbol(1.3, 2.5, 3.4, lines=_PLATES, signs=((-1.9, 2.0, "+"),), lead=4.5),
    "resistor": Symbol(7.5, 1.5, 1.5, closed=(_RESISTOR,)),
    "lamp": Symbol(
        4.8,
        2.6,
        2.6,
        closed=(circle(2.4, 0, 2.4),),
        lines=(
            ((2.4 - _CROSS, -_CROSS), (2.4 + _CROSS, _CROSS)),
            ((2.4 - _CROSS, _CROSS), (2.4 + _CROSS, -_CROSS)),
        ),
        lead=3,
    ),
    "fuse": Symbol(7.5, 1.5, 1.5, closed=(_RESISTOR,), lines=(((0, 0), (7.5, 0)),)),
    # A thermistor whose resistance rises with temperature.
    "protector": Symbol(
        7.5,
        3.0,
        4.8,
        closed=(_RESISTOR,),
        lines=(((0.2, 2.6), (1.6, 2.6), (6.2, -2.8)),),
        signs=((4.2, 3.5, "+ϑ"),),
    ),
    # A variable attenuator; `in` and `out` are ours, since it is not the same from both sides.
    "attenuator": Symbol(
        10,
        5.2,
        4.2,
        closed=(((0, -4), (10, -4), (10, 4), (0, 4)),),
        lines=(((0.8, 3.6), (9.3, -4.9)), ((7.6, -4.6), (9.3, -4.9), (9.0, -3.2))),
        signs=((2.9, -2.2, "dB"), (-2.2, -2.8, "in"), (12.9, -2.8, "out")),
        lead=5.5,
        third=(5, 4),
    ),
    "driver": Symbol(
        6,
        5.0,
        3.4,
        closed=(_box(6, 1.4), ((0, -1.4), (-2, -4.8), (8, -4.8), (6, -1.4))),
        signs=((-2.0, 2.0, "+"), (8.0, 2.0, "−")),
        lead=4,
    ),
    "fitted link": Symbol(8, 0.9, 0.9, closed=_ENDS, lines=(((1.4, 0), (6.6, 0)),)),
    # The bar is lifted off its second end.
    "open link": Symbol(8, 2.6, 0.9, closed=_ENDS, lines=(((1.4, -0.2), (6.5, -2.1)),)),
}
