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
    along, count = end - start, len(corners)
    if bool(np.any(np.hypot(*along.T) < CLOSE)):
        return True
    before = np.roll(along, 1, axis=0)  # an edge that goes back over the one before it
    back = np.abs(_cross(before, along)) < CLOSE * np.hypot(*along.T)
    if bool(np.any(back & (np.sum(before * along, axis=1) < 0))):
        return True
    low, high = np.minimum(start, end) - CLOSE, np.maximum(start, end) + CLOSE
    for one, other in _overlapping(low, high):
        apart = (one - other) % count
        kept = (apart != 1) & (apart != count - 1)
        a, b = one[kept], other[kept]
        if bool(np.any(_meet(start[a], end[a], start[b], end[b]))):
            return True
    return False


def _overlapping(low: np.ndarray, high: np.ndarray) -> Iterator[tuple[np.ndarray, np.ndarray]]:
    """The pairs of boxes that overlap, in portions: each box with the k-th behind it, in the direction in which fewer
    lie side by side."""
    spread = np.ptp(low, axis=0) / np.maximum(np.mean(high - low, axis=0), CLOSE)
    axis = int(np.argmax(spread))
    order = np.argsort(low[:, axis], kind="stable")
    low, high = low[order], high[order]
    longest = float(np.max(high[:, axis] - low[:, axis]))
    for step in range(1, len(low)):
        gap = low[step:, axis] - low[:-step, axis]
        if not bool(np.any(gap <= longest)):
            return
        hit = np.nonzero(np.all(low[step:] <= high[:-step], axis=1) & np.all(high[step:] >= low[:-step], axis=1))[0]
        if len(hit):
            yield order[hit], order[hit + step]


def _cross(a: np.ndarray, b: np.ndarray) -> np.ndarray:
    return np.asarray(a[..., 0] * b[..., 1] - a[..., 1] * b[..., 0])


def _meet(a: np.ndarray, b: np.ndarray, c: np.ndarray, d: np.ndarray) -> np.ndarray:
    """Which of the edges from a to b have a point in common with that from c to d; their boxes overlap.

    They do if neither lies on one side of the other.
    """
    here, there = _cross(b - a, c - a), _cross(d - c, a - c)
    near_here, near_there = CLOSE * np.hypot(*(b - a).T), CLOSE * np.hypot(*(d - c).T)
    return np.asarray(_parted(here, _cross(b - a, d - a), near_here) & _parted(there, _cross(d - c, b - c), near_there))


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


def collisions(circles: Sequence[tuple[Point, float]], known: int = 0) -> tuple[tuple[int, int], ...]:
    """Pairs (later, earlier) of circles (centre, diameter) that run into each other, one for each later one.

    The first `known` are not held against each other.
    """
    if len(circles) < 2:
        return ()
    centres = np.array([centre for centre, _ in circles], dtype=float)
    radii = np.array([diameter for _, diameter in circles]) / 2
    reach = np.maximum(radii, CLOSE)[:, None]
    hit_by: dict[int, int] = {}
    for one, other in _overlapping(centres - reach, centres + reach):
        apart = np.hypot(*(centres[one] - centres[other]).T)
        hit = apart < np.maximum(radii[one] + radii[other] - CLOSE, CLOSE)
        later, earlier = np.maximum(one, other)[hit], np.minimum(one, other)[hit]
        fresh = later >= known
        for pair in zip(later[fresh].tolist(), earlier[fresh].tolist(), strict=True):
            hit_by.setdefault(*pair)
        if len(hit_by) >= len(circles) - max(known, 1):
            break  # every one has been hit
    return tuple(sorted(hit_by.items()))
