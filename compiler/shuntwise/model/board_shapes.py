"""Plane figures in millimetres: does an outline cross itself, is a point within it, which circles run into each other.

In and out: plain numbers. Refuses to know what the figures are.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np

from shuntwise.model.boards import Point

CLOSE = 1e-6
"""Lengths (mm) below this are nothing: points are typed with a few decimals."""


def rectangle(one: Point, other: Point) -> tuple[Point, ...]:
    """The corners of the rectangle with these two opposite ones, anticlockwise from the lower left."""
    (left, right), (low, high) = sorted((one[0], other[0])), sorted((one[1], other[1]))
    return (left, low), (right, low), (right, high), (left, high)


def area(corners: Sequence[Point]) -> float:
    """Of a simple polygon, in mm2: the surveyor's formula."""
    x, y = np.array(corners).T
    return float(abs(np.sum(x * np.roll(y, -1) - y * np.roll(x, -1))) / 2)


def crosses_itself(corners: Sequence[Point]) -> bool:
    """Do two edges of the polygon meet anywhere but at the corner that they share?"""
    start = np.array(corners, dtype=float)
    end = np.roll(start, -1, axis=0)
    along = end - start
    if bool(np.any(np.hypot(*along.T) < CLOSE)):
        return True
    before = np.roll(along, 1, axis=0)  # an edge that goes back over the one before it
    back = np.abs(_cross(before, along)) < CLOSE * np.hypot(*along.T)
    if bool(np.any(back & (np.sum(before * along, axis=1) < 0))):
        return True
    count = len(corners)
    for i in range(count - 2):
        others = slice(i + 2, count - 1 if i == 0 else count)
        if bool(np.any(_meet(start[i], end[i], start[others], end[others]))):
            return True
    return False


def _cross(a: np.ndarray, b: np.ndarray) -> np.ndarray:
    return np.asarray(a[..., 0] * b[..., 1] - a[..., 1] * b[..., 0])


def _meet(p: np.ndarray, q: np.ndarray, starts: np.ndarray, ends: np.ndarray) -> np.ndarray:
    """Which of the edges from `starts` to `ends` have a point in common with the edge from p to q.

    They do if neither lies on one side of the other, and their boxes overlap.
    """
    low, high = np.minimum(p, q) - CLOSE, np.maximum(p, q) + CLOSE
    boxes = np.all((np.minimum(starts, ends) <= high) & (np.maximum(starts, ends) >= low), axis=1)
    here = _cross(q - p, starts - p), _cross(q - p, ends - p)
    there = _cross(ends - starts, p - starts), _cross(ends - starts, q - starts)
    near_here, near_there = CLOSE * np.hypot(*(q - p)), CLOSE * np.hypot(*(ends - starts).T)
    return np.asarray(boxes & _parted(*here, near_here) & _parted(*there, near_there))


def _parted(one: np.ndarray, other: np.ndarray, near: np.ndarray) -> np.ndarray:
    """Two points that do not lie on the same side of a line."""
    return np.asarray(~(((one > near) & (other > near)) | ((one < -near) & (other < -near))))


def inside(at: Point, corners: Sequence[Point]) -> bool:
    """Is the point within the polygon, its edge included? By the edges that a ray to the right crosses."""
    x, y = at
    crossed = False
    for (ax, ay), (bx, by) in zip(corners, (*corners[1:], corners[0]), strict=True):
        length = max(abs(bx - ax), abs(by - ay))
        if abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) <= CLOSE * length and (
            min(ax, bx) - CLOSE <= x <= max(ax, bx) + CLOSE and min(ay, by) - CLOSE <= y <= max(ay, by) + CLOSE
        ):
            return True
        if (ay > y) != (by > y) and x < ax + (y - ay) * (bx - ax) / (by - ay):
            crossed = not crossed
    return crossed


def collisions(circles: Sequence[tuple[Point, float]], known: int = 0) -> Iterator[tuple[int, int]]:
    """Pairs (later, earlier) of circles (centre, diameter) that run into each other, the first for each later one.

    The first `known` are not held against each other.
    """
    centres = np.array([centre for centre, _ in circles], dtype=float).reshape(-1, 2)
    radii = np.array([diameter for _, diameter in circles]) / 2
    for later in range(max(known, 1), len(circles)):
        apart = np.hypot(*(centres[:later] - centres[later]).T)
        hit = np.nonzero(apart < np.maximum(radii[:later] + radii[later] - CLOSE, CLOSE))[0]
        if len(hit):
            yield later, int(hit[0])
