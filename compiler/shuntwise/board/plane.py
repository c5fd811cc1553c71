"""Plane geometry of convex shapes: clipping, distance, what two share, and polygons as triangles.

In and out: corners in millimetres, counterclockwise, as tuples; a shape may be one point or two. Refuses to know what
copper is. Plain floats: for tens of shapes they are faster than any library takes to load.

Clipping by half-planes: I. E. Sutherland, G. W. Hodgman, Reentrant polygon clipping, CACM 17(1), 1974.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from math import acos, ceil, cos, dist, hypot, inf, pi, sin

from shuntwise.model.boards import Point

Shape = tuple[Point, ...]
Box = tuple[float, float, float, float]
"""Left, lower, right, upper."""
Side = tuple[float, float, float]
"""A half-plane: unit normal outward, and bound along it."""

TOUCH = 1e-6
"""What is nearer than this touches, and what is thinner is nothing (mm)."""

ROUND = 0.004
"""A circle is a polygon inscribed in it, and nowhere farther inside than this (mm)."""


def half(shape: Shape, across: float, up: float, bound: float, slack: float = 0.0) -> Shape:
    """What of a convex shape lies where `across` x + `up` y <= `bound`, the first two a unit vector."""
    kept: list[Point] = []
    if not shape:
        return ()
    x0, y0 = shape[-1]
    before = across * x0 + up * y0 - bound
    for x, y in shape:
        here = across * x + up * y - bound
        if (here <= slack) != (before <= slack):
            part = min(1.0, max(0.0, before / (before - here)))
            kept.append((x0 + part * (x - x0), y0 + part * (y - y0)))
        if here <= slack:
            kept.append((x, y))
        x0, y0, before = x, y, here
    return tuple(kept)


def edges(shape: Shape) -> Iterator[tuple[Point, Point]]:
    """The edges of a shape in turn; a single point is an edge of no length, two points are one edge."""
    if len(shape) < 3:
        yield shape[0], shape[-1]
        return
    before = shape[-1]
    for corner in shape:
        yield before, corner
        before = corner


def outward(shape: Shape) -> tuple[Side, ...]:
    """The half-planes that bound a convex shape of three corners and more, in the order of `edges`."""
    found: list[Side] = []
    x0, y0 = shape[-1]
    for x1, y1 in shape:
        length = hypot(x1 - x0, y1 - y0)
        if length > 1e-12:
            across, up = (y1 - y0) / length, (x0 - x1) / length
            found.append((across, up, across * x0 + up * y0))
        x0, y0 = x1, y1
    return tuple(found)


def shared(one: Shape, bounds: Iterable[Side]) -> Shape:
    """What a convex shape has in common with one inside `bounds`, nothing if they lie apart by more than TOUCH."""
    for across, up, bound in bounds:
        one = half(one, across, up, bound, TOUCH)
        if not one:
            break
    return one


def diameter(points: Sequence[Point]) -> float:
    """The greatest distance of two of the points."""
    return max((dist(a, b) for i, a in enumerate(points) for b in points[i + 1 :]), default=0.0)


def middle(points: Sequence[Point]) -> Point:
    """The middle of the box around points."""
    left, lower, right, upper = box(points)
    return (left + right) / 2, (lower + upper) / 2


def box(points: Sequence[Point], more: float = 0.0) -> Box:
    """The box around points, larger by `more` on every side."""
    if len(points) == 1:
        ((x, y),) = points
        return x - more, y - more, x + more, y + more
    xs = [x for x, _ in points]
    ys = [y for _, y in points]
    return min(xs) - more, min(ys) - more, max(xs) + more, max(ys) + more


def area(shape: Sequence[Point]) -> float:
    """Area of a simple polygon in mm2, negative where its corners run clockwise."""
    x0, y0 = shape[0]  # as an origin, so that the products stay small
    total = xa = ya = 0.0
    for xb, yb in shape[1:]:
        x, y = xb - x0, yb - y0
        total += xa * y - x * ya
        xa, ya = x, y
    return total / 2


def thin(shape: Shape) -> bool:
    """Is this no shape with an area: nothing, a point, a line, or a sliver thinner than TOUCH?"""
    if len(shape) < 3:
        return True
    left, lower, right, upper = box(shape)
    return area(shape) <= TOUCH * max(right - left, upper - lower)


def to_edge(point: Point, start: Point, end: Point) -> tuple[float, Point]:
    """Distance of a point from an edge, and the nearest point of the edge."""
    (x, y), (x0, y0), (x1, y1) = point, start, end
    dx, dy = x1 - x0, y1 - y0
    square = dx * dx + dy * dy
    part = ((x - x0) * dx + (y - y0) * dy) / square if square else 0.0
    part = 0.0 if part < 0 else min(part, 1.0)
    x0 += part * dx
    y0 += part * dy
    return hypot(x - x0, y - y0), (x0, y0)


def meet(one: Shape, other: Shape) -> bool:
    """Do two convex shapes overlap, unless only by a corner that lies on the other?"""
    if len(one) > len(other):
        one, other = other, one
    if len(other) > 2:
        return bool(shared(one, outward(other)))
    return len(one) == 2 and _cross(one, other)


def _cross(one: Shape, other: Shape) -> bool:
    """Does each of two edges have its ends on both sides of the other?"""
    (a, b), (c, d) = one, other
    return _turn(a, b, c) * _turn(a, b, d) < 0 and _turn(c, d, a) * _turn(c, d, b) < 0


def _turn(a: Point, b: Point, c: Point) -> float:
    """Twice the area of a triangle: positive for a turn to the left at `b`."""
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def apart(one: Shape, other: Shape) -> tuple[float, Point]:
    """Distance of two convex shapes, 0 where they meet, and a point halfway between them or of one of them."""
    if len(one) == 1 and len(other) < 3:
        distance, (x, y) = to_edge(one[0], other[0], other[-1])
        return distance, ((x + one[0][0]) / 2, (y + one[0][1]) / 2)
    if meet(one, other):
        return 0.0, one[0]
    best, at = inf, one[0]
    for points, against in ((one, other), (other, one)):
        for start, end in edges(against):
            for point in points:
                found, nearest = to_edge(point, start, end)
                if found < best:
                    best, at = found, ((point[0] + nearest[0]) / 2, (point[1] + nearest[1]) / 2)
    return best, at


def rounded(core: Shape, radius: float) -> Shape:
    """The corners of a point or edge with all that lies within `radius` of it: a circle, or a strip with round ends."""
    (x0, y0), (x1, y1) = core[0], core[-1]
    length = hypot(x1 - x0, y1 - y0)
    ahead, left = ((x1 - x0) / length, (y1 - y0) / length) if length else (1.0, 0.0)
    steps = 2 * max(
        2, ceil(pi / acos(max(0.0, 1 - ROUND / radius)) / 4)
    )  # of half a circle; even, so that one looks ahead
    found: list[Point] = []
    for x, y, begin in ((x1, y1, 0), (x0, y0, steps)):
        for step in range(begin, begin + steps + (1 if length else 0)):
            angle = pi * (step / steps - 0.5)
            along, beside = radius * cos(angle), radius * sin(angle)
            found.append((x + along * ahead - beside * left, y + along * left + beside * ahead))
    return tuple(found)


def simplified(corners: Sequence[Point]) -> Shape:
    """A polygon counterclockwise, without corners that coincide with one or lie in line with two neighbours."""
    shape = [corner for corner, before in zip(corners, (corners[-1], *corners), strict=False) if corner != before]
    if len(shape) > 2 and area(shape) < 0:
        shape.reverse()
    last = -1
    while len(shape) != last:  # a corner taken out may bring two into line
        last = len(shape)
        shape = [
            here
            for before, here, after in zip((shape[-1], *shape), shape, (*shape[1:], shape[0]), strict=False)
            if abs(_turn(before, here, after)) > 1e-9 * max(1.0, dist(before, after))
        ]
        if len(shape) < 3:
            return ()
    return tuple(shape)


def convex_parts(corners: Sequence[Point]) -> list[Shape]:
    """A simple polygon as convex shapes that share edges: itself, or triangles if it has notches.

    Ears are clipped until no notch is left (G. H. Meisters, Polygons have ears, American Mathematical Monthly 82(6),
    1975, from memory). Only corners that point inward can lie in an ear.
    """
    rest = list(simplified(corners))
    if not rest:
        return []
    parts: list[Shape] = []
    inward = {
        here
        for before, here, after in zip((rest[-1], *rest), rest, (*rest[1:], rest[0]), strict=False)
        if _turn(before, here, after) <= 0
    }
    at = 0
    since = 0
    while inward and len(rest) > 3:
        before, here, after = rest[at - 1], rest[at], rest[(at + 1) % len(rest)]
        # After a whole round without an ear the polygon is no simple one: clipping on ends the search all the same.
        if since > len(rest) or _is_ear(before, here, after, inward):
            parts.append((before, here, after))
            del rest[at]
            inward.discard(here)
            at %= len(rest)
            for place in (at - 1, at):
                if rest[place] in inward and _turn(rest[place - 1], rest[place], rest[(place + 1) % len(rest)]) > 0:
                    inward.discard(rest[place])
            since = 0
        else:
            at = (at + 1) % len(rest)
            since += 1
    parts.append(tuple(rest))
    return [part for part in parts if not thin(part)]


def _is_ear(before: Point, here: Point, after: Point, inward: set[Point]) -> bool:
    if here in inward or _turn(before, here, after) <= 0:
        return False
    return not any(
        _turn(before, here, corner) >= 0 and _turn(here, after, corner) >= 0 and _turn(after, before, corner) >= 0
        for corner in inward
        if corner not in (before, here, after)
    )


def close_pairs(boxes: Sequence[Box], more: float = 0.0) -> Iterator[tuple[int, int]]:
    """The numbers of all boxes that overlap or lie no farther apart than `more`, the first always the smaller.

    A line is swept along the longer side of what they fill; only boxes that it meets at once are compared.
    """
    if not boxes:
        return
    wide = max(b[2] for b in boxes) - min(b[0] for b in boxes)
    high = max(b[3] for b in boxes) - min(b[1] for b in boxes)
    low, side = (0, 1) if wide >= high else (1, 0)
    order = sorted(range(len(boxes)), key=lambda number: boxes[number][low])
    met: list[int] = []
    for number in order:
        here = boxes[number]
        begin, under, over = here[low] - more, here[side] - more, here[side + 2] + more
        met = [other for other in met if boxes[other][low + 2] >= begin]
        for other in met:
            beside = boxes[other]
            if beside[side] <= over and beside[side + 2] >= under:
                yield (other, number) if other < number else (number, other)
        met.append(number)
