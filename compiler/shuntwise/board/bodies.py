"""Which room the parts on boards take: the body of each, as its text states it or as such parts usually are.

In: parts and their places. Out: `Body`s, in mm. Refuses to know what is too near.

Where the text states no size, one is assumed from what decides it: a capacitor's voltage, a coil's wire or resistance,
a resistor's power. Where that is not stated either, or the direction of its axis, nothing is known of a body. All
assumed sizes are common practice, no source, but for the proportions of air coils, and may be off by a third.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from math import cos, pi, radians, sin, sqrt

from shuntwise.board.plane import Box, Shape, apart, box, close_pairs, outward
from shuntwise.model.boards import Fixing, Layout, Place, Point, Side
from shuntwise.model.conductors import RESISTIVITY_OHM_M
from shuntwise.model.design import Part
from shuntwise.model.kinds import INDUCTIVE

# --- how large parts are


@dataclass(frozen=True)
class Size:
    """Along its axis, and across: `height` is up from the board where it lies. `round` bodies are as wide as high."""

    length: float
    width: float
    height: float
    round: bool
    assumed: bool


def size_of(part: Part) -> Size | None:
    """Size of a part in mm: stated if all of it is, else assumed with what is stated in it; None where not known."""
    if part.refused:
        return None
    length, width, height, diameter = (1e3 * part.get(name) for name in ("length", "width", "height", "diameter"))
    if length and diameter:
        return Size(length, diameter, diameter, round=True, assumed=False)
    if length and width and height:
        return Size(length, width, height, round=False, assumed=False)
    usual = _USUAL[part.kind](part) if part.kind in _USUAL else None
    if usual is None:
        return None
    across = diameter or width or usual.width
    return Size(
        length or usual.length,
        across,
        diameter or height or (across if usual.round else usual.height),
        round=bool(diameter) or (usual.round and not (width or height)),
        assumed=True,
    )


def _cylinder(length: float, diameter: float) -> Size:
    return Size(length, diameter, diameter, round=True, assumed=True)


def _box(length: float, width: float, height: float) -> Size:
    return Size(length, width, height, round=False, assumed=True)


def _capacitor(part: Part) -> Size | None:
    """A cylinder of a volume in proportion to C V: 6 mm3 per uF V of film, 1 mm3 of an electrolytic."""
    volts = part.get("voltage")
    if part.value is None or not volts or part.construction is None:
        return None
    film = part.construction == "film"
    volume = max(200.0, part.value.value * 1e6 * volts * (6.0 if film else 1.0))
    slim = 1.7 if film else 2.0  # length over diameter
    diameter = (volume / (pi / 4 * slim)) ** (1 / 3)
    return _cylinder(slim * diameter, diameter)


_CEMENTED = ((5, 22, 10, 9), (7, 35, 10, 9), (10, 48, 10, 9), (15, 48, 13, 12), (20, 60, 14, 13))
_FILM = ((0.6, 6.5, 2.5), (1, 12, 5), (2, 16, 6), (3, 18, 6.5), (5, 25, 8.5))
"""Power in watts, and the usual size of a body that bears it in mm (from memory). Above, there are too many forms."""


def _resistor(part: Part) -> Size | None:
    watts = part.get("power")
    if not watts or part.construction is None:
        return None
    if part.construction == "wirewound":
        for most, *size in _CEMENTED:
            if watts <= most:
                return _box(*size)
        return None
    for power, length_mm, diameter in _FILM:
        if watts <= power:
            return _cylinder(length_mm, diameter)
    return None


PACKED = 1.1
"""How far apart the turns of a winding lie, over the diameter of their copper: enamel, and what is left between."""


def brooks_mm(henry: float, wire: float, dcr: float) -> float | None:
    """The side c of the square section of an air coil that gives most inductance for its wire; None without both.

    H. B. Brooks, Design of standards of inductance, Bureau of Standards Journal of Research 7, 1931 (from memory): the
    bore is 2 c, the outer diameter 4 c, the length c, and L = 1.6994e-6 a N^2 with the mean radius a = 1.5 c. With N
    turns of a wire of diameter d (m) in c^2 = N (1.1 d)^2, its resistance is rho 3 pi c N / (pi d^2 / 4).
    """
    factor = 1.6994e-6 * 1.5
    if wire:
        return 1e3 * float((henry * (PACKED * wire) ** 4 / factor) ** 0.2)
    if dcr:
        return 1e3 * sqrt(12 * RESISTIVITY_OHM_M["copper"] * PACKED**2 * henry / (factor * dcr))
    return None


def _coil(part: Part) -> Size | None:
    """Air coils by Brooks. With a core the wire is that of a third of the inductance, on a longer bobbin."""
    if part.value is None or part.construction is None:
        return None
    henry = part.value.value if part.construction == "air core" else part.value.value / 3
    side = brooks_mm(henry, part.get("wire"), part.get("dcr"))
    if side is None:
        return None
    return _cylinder(side, 4 * side) if part.construction == "air core" else _cylinder(3.3 * side, 3 * side)


def _fuse(part: Part) -> Size | None:
    """A cartridge of 5.2 by 20 mm (IEC 60127-2, from memory) in open clips, above 10 A of 6.3 by 32 mm."""
    return _box(23, 10, 12) if part.value is not None and part.value.value <= 10 else _box(36, 12, 15)


def _lamp(part: Part) -> Size | None:
    """A tube of glass between two springs."""
    watts = part.get("power")
    return None if not watts else _cylinder(45, 16) if watts <= 25 else _cylinder(75, 25)


_USUAL: Mapping[str, Callable[[Part], Size | None]] = {
    "capacitor": _capacitor,
    "resistor": _resistor,
    "fuse": _fuse,
    "lamp": _lamp,
    **dict.fromkeys(INDUCTIVE, _coil),
}

# --- where they are


@dataclass(frozen=True)
class Body:
    """Seen from above it is all within `radius` of `core`: a circle, or a rectangle and `radius` 0. It is from `low` to
    `high` over its side of the board.
    """

    place: Place
    core: Shape
    radius: float
    low: float
    high: float
    assumed: bool

    @property
    def side(self) -> Side:
        return self.place.side

    @property
    def box(self) -> Box:
        return box(self.core, self.radius)


def body_of(part: Part, place: Place) -> Body | None:
    """The body of a placed part; None off the board, or where its size or the direction of its axis is not known."""
    size = size_of(part)
    if size is None or place.at is None or place.axis is None:
        return None
    tall = size.length if place.axis == "upright" else size.height
    room = place.raised, place.raised + tall, size.assumed
    if place.axis != "upright":
        return Body(place, _rectangle(place.at, size.length, size.width, place.axis), 0.0, *room)
    if size.round:
        return Body(place, (place.at,), size.width / 2, *room)
    return Body(place, _rectangle(place.at, size.width, size.height, 0.0), 0.0, *room)


def bodies(parts: Mapping[str, Part], layout: Layout) -> tuple[Body, ...]:
    """Those of a layout's parts that are fitted."""
    fitted = [(parts[place.label], place) for place in layout.places if place.label in parts]
    return tuple(body for part, place in fitted if part.fitted and (body := body_of(part, place)) is not None)


def _rectangle(at: Point, length: float, width: float, axis: float) -> Shape:
    along, beside = cos(radians(axis)), sin(radians(axis))
    corners = ((-length, -width), (length, -width), (length, width), (-length, width))
    return tuple((at[0] + (x * along - y * beside) / 2, at[1] + (x * beside + y * along) / 2) for x, y in corners)


# --- how near they are


def gap(one: Body, other: Body) -> float:
    """How far two bodies are apart seen from above; below 0, how far they are in each other.

    Two convex figures are apart where a line lies between them that is parallel to an edge of one (separating axes);
    round ones are as far apart as their centre is from the other, less their radius.
    """
    if one.radius:
        one, other = other, one
    if len(one.core) == 1 or len(other.core) == 1:
        return _outside(one.core, other.core[0]) - one.radius - other.radius
    deep = max(
        min(across * x + up * y for x, y in points) - bound
        for shape, points in ((one.core, other.core), (other.core, one.core))
        for across, up, bound in outward(shape)
    )
    return apart(one.core, other.core)[0] if deep > 0 else deep


def overlaps(found: Sequence[Body], play: float) -> Iterator[tuple[Body, Body, float]]:
    """Bodies that are more than `play` within another on their side: each once, with one before it, and how far."""
    told: set[int] = set()
    for low, high in close_pairs([body.box for body in found]):
        one, other = found[low], found[high]
        if high in told or one.side != other.side:
            continue
        deep = min(-gap(one, other), min(one.high, other.high) - max(one.low, other.low))
        if deep > play:
            told.add(high)
            yield one, other, deep


def on_fixings(found: Sequence[Body], layout: Layout, play: float) -> Iterator[tuple[Body, Fixing, float]]:
    """Bodies that are more than `play` within what a fixing keeps free, and how far."""
    fixings, count = layout.board.fixings, len(found)
    boxes = [*(body.box for body in found), *(box((fixing.at,), fixing.keep) for fixing in fixings)]
    for low, high in close_pairs(boxes):
        if low < count <= high:
            body, fixing = found[low], fixings[high - count]
            deep = fixing.keep - to_point(body, fixing.at)
            if deep > play:
                yield body, fixing, deep


def to_point(body: Body, at: Point) -> float:
    """How far a body is from a point, seen from above; below 0 within."""
    return _outside(body.core, at) - body.radius


def over_edge(body: Body, layout: Layout) -> float:
    """How far a body goes over the edge of the board, a clipped corner's too; below 0, how far it stays within."""
    board = layout.board
    sides = [(1.0, 0.0, board.width), (-1.0, 0.0, 0.0), (0.0, 1.0, board.height), (0.0, -1.0, 0.0)]
    for corner in board.corners:
        (x, y), slope = corner.at, sqrt(0.5)
        across, up = slope if x else -slope, slope if y else -slope
        sides.append((across, up, across * x + up * y - corner.cut * slope))
    return body.radius + max(across * x + up * y - bound for across, up, bound in sides for x, y in body.core)


def _outside(shape: Shape, at: Point) -> float:
    """Distance of a point from a convex shape; within one, minus how deep."""
    if len(shape) > 2:
        deep = max(across * at[0] + up * at[1] - bound for across, up, bound in outward(shape))
        if deep <= 0:
            return deep
    return apart((at,), shape)[0]
