"""Points and sizes of boards and layouts: what may be stated, within which bounds, and their values in millimetres.

In: nodes of the syntax tree and the scope. Out: numbers, or None where a finding has been made. Bounds are where a size
is a slip of the unit; all are common practice, no source.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass

from shuntwise import units as u
from shuntwise.model import findings
from shuntwise.model.boards import Point
from shuntwise.model.evaluate import Scope
from shuntwise.model.items import read_items
from shuntwise.model.kinds import Attribute, Kind
from shuntwise.syntax import board_tree as b
from shuntwise.syntax import tree as t

LARGEST = 2000.0
"""No board is longer, in mm."""


def _size(name: str, low: float, high: float, meaning: str) -> Attribute:
    return Attribute(name, u.METRE, low, high, meaning)


THICKNESS = _size("thickness", 1e-4, 0.05, "the thickness of a board")
COPPER = _size("copper", 1e-6, 1e-3, "the thickness of the copper")
CLIPPED = _size("cut", 1e-5, 2, "what is cut off a corner")
TRACK = _size("track", 1e-5, 2, "the width of a track")
HOLE = _size("hole", 1e-4, 0.05, "the diameter of a hole")
TIE = _size("tie", 1e-4, 0.1, "the width of a tie")
RAISED = _size("raised", 1e-4, 1, "the height above the board")
DEPTH = _size("depth", 1e-3, 2, "the room above the board")
AXIS = Attribute("axis", u.DEGREE, -360, 360, "the direction of its axis", signed=True)


@dataclass(frozen=True)
class _List(Kind):
    """What the list in braces behind a line may hold: nothing of a part's body."""

    @property
    def attributes(self) -> dict[str, Attribute]:
        return {attribute.name: attribute for attribute in self.keyed}


RING = _List("hole", None, keyed=(_size("ring", 1e-4, 0.1, "the diameter of its ring of copper"),))
KEEP = _List("fixing", None, keyed=(_size("keep", 1e-4, 0.5, "what stays free around it"),))
TRACK_LIST = _List("track", None)
TAG_LIST = _List("tag", None)
CUT = _List("cut", None, keyed=(_size("width", 1e-5, 0.1, "the width of a cut"),))
DRILLED = _List("drilled hole", None)
WIRE = _List(
    "wire",
    None,
    keyed=(_size("wire", 5e-5, 1e-2, "diameter of the wire"), _size("length", 1e-3, 20, "its length")),
    words={"sleeved": "sleeved"},
)


def millimetres(metres: float) -> float:
    """Rounded, so that 0.07 mm is 0.07."""
    return round(metres * 1e3, 9)


def size(expr: t.Expr, attribute: Attribute, scope: Scope, subject: str) -> float | None:
    """A length in mm."""
    quantity = scope.typed(expr, attribute, subject)
    return millimetres(quantity.value) if quantity is not None else None


def sizes(items: tuple[t.Item, ...], kind: Kind, scope: Scope, subject: str) -> tuple[dict[str, float], frozenset[str]]:
    """The lengths (mm) in braces by their words, and the words that stand alone."""
    if not items:
        return {}, frozenset()
    read = read_items(items, kind, scope, subject)
    lengths = {name: millimetres(quantity.value) for name, quantity in read.quantities.items()}
    return lengths, frozenset(read.words)


def point(written: b.Point, scope: Scope) -> Point | None:
    """A point in mm, as written."""
    unit = written.unit
    known = u.UNITS.get(unit.text)
    if known is None:
        sure = u.meant_unit(unit.text, u.METRE)
        scope.say(findings.unknown_unit(written.span, unit.span, u.METRE, sure))
        if sure is None:
            return None
        known = u.UNITS[sure]
    factor, dimension = known
    if dimension != u.METRE:
        scope.say(findings.unit_wrong_kind(written.span, dimension, u.METRE, "a point on the board"))
        return None
    values = []
    for number in (written.across, written.up):
        text = number.text
        if "," in text:
            scope.say(findings.decimal_comma(number.span, text))
            text = text.replace(",", ".")
        values.append(millimetres(u.scale(text, factor)))
    across, up = values
    if not (math.isfinite(across) and math.isfinite(up)):
        scope.say(findings.value_unclear(written.span, "this number is too large", "look at the point again"))
        return None
    return across, up


def points(written: Iterable[b.Point], scope: Scope) -> tuple[Point, ...] | None:
    """All of them, or None."""
    found = [point(one, scope) for one in written]
    return None if None in found else tuple(one for one in found if one is not None)
