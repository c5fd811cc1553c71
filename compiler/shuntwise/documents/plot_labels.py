"""Where labels go, so that none covers another.

In: curves and points in pixels, texts and their sizes. Out: positions. Plain geometry: it refuses to know what is
drawn, and draws nothing.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from math import cos, pi, sin

import numpy as np
import numpy.typing as npt

Real = npt.NDArray[np.float64]


@dataclass(frozen=True)
class Box:
    """Left, bottom, right and top, in pixels."""

    left: float
    bottom: float
    right: float
    top: float

    def grown(self, by: float) -> Box:
        return Box(self.left - by, self.bottom - by, self.right + by, self.top + by)

    def nearest(self, x: float, y: float) -> tuple[float, float]:
        """The point of the box that is nearest to (x, y)."""
        return min(max(x, self.left), self.right), min(max(y, self.bottom), self.top)

    def overlaps(self, other: Box) -> bool:
        return (
            self.left < other.right and other.left < self.right and self.bottom < other.top and other.bottom < self.top
        )

    def drawn_in(self, other: Box) -> Box:
        """The other box, moved as little as brings it into this one; its left and top win if it is too large."""
        across = max(min(other.right, self.right) - other.right, self.left - other.left)
        up = min(max(other.bottom, self.bottom) - other.bottom, self.top - other.top)
        return Box(other.left + across, other.bottom + up, other.right + across, other.top + up)


def spaced(wanted: Sequence[float], pitch: float, low: float, high: float) -> list[float]:
    """Heights at least `pitch` apart, between `low` and `high`, and as near to the wanted ones as can be.

    Neighbours that are too close are pooled into a group about their mean. If there is no room for all, they run
    over the top.
    """
    order = sorted(range(len(wanted)), key=lambda index: (wanted[index], index))
    groups: list[tuple[float, list[int]]] = []  # height of the lowest member; members from below
    for index in order:
        members = [index]
        start = _start(wanted, members, pitch, low, high)
        while groups and groups[-1][0] + pitch * len(groups[-1][1]) > start:
            members = groups.pop()[1] + members
            start = _start(wanted, members, pitch, low, high)
        groups.append((start, members))
    heights = [0.0] * len(wanted)
    for start, members in groups:
        for place, member in enumerate(members):
            heights[member] = start + pitch * place
    return heights


def _start(wanted: Sequence[float], members: Sequence[int], pitch: float, low: float, high: float) -> float:
    """The height of a group's lowest member that leaves the group least far from where its members want to be."""
    middle = sum(wanted[member] - pitch * place for place, member in enumerate(members)) / len(members)
    return max(low, min(middle, high - pitch * (len(members) - 1)))


@dataclass
class Placer:
    """Finds room for texts inside `frame`, away from curves and from each other."""

    frame: Box
    taken: list[Box] = field(default_factory=list)
    points: list[Real] = field(default_factory=list)

    def add_curve(self, x: Real, y: Real) -> None:
        """A curve in pixels that texts should not cover; gaps are NaN."""
        step_x, step_y = np.diff(x), np.diff(y)
        length = np.hypot(step_x, step_y)
        counts = np.where(np.isfinite(length), np.clip(np.nan_to_num(length) / 4, 1, 400), 0).astype(int)
        segment = np.repeat(np.arange(len(counts)), counts)
        share = (np.arange(len(segment)) - np.repeat(np.cumsum(counts) - counts, counts)) / counts[segment]
        across, up = x[segment] + share * step_x[segment], y[segment] + share * step_y[segment]
        self.points.append(np.column_stack((across, up)))

    def add_box(self, box: Box) -> None:
        self.taken.append(box)

    def place(self, x: float, y: float, width: float, height: float, *, near: float = 12) -> Box:
        """The best place for a text that belongs to the point (x, y); it is then taken."""
        points = np.vstack(self.points) if self.points else np.empty((0, 2))
        best: tuple[float, Box] | None = None
        for reach in (near, 1.6 * near, 2.6 * near, 4 * near, 6 * near, 9 * near, 13 * near):
            for turn in range(24):
                box = self.frame.drawn_in(_beside(x, y, width, height, reach, 2 * pi * turn / 24))
                cost = self._cost(box, points) + reach / near
                if best is None or cost < best[0] - 1e-9:
                    cost += self._crossed(x, y, box, points)
                    if best is None or cost < best[0] - 1e-9:
                        best = (cost, box)
        assert best is not None
        self.taken.append(best[1])
        return best[1]

    def _cost(self, box: Box, points: Real) -> float:
        wide = box.grown(4)
        cost = 1e3 * sum(wide.overlaps(other) for other in self.taken)
        inside = (
            (points[:, 0] > wide.left) & (points[:, 0] < wide.right)
            & (points[:, 1] > wide.bottom) & (points[:, 1] < wide.top)
        )  # fmt: skip
        return cost + 2.0 * float(np.count_nonzero(inside))

    def _crossed(self, x: float, y: float, box: Box, points: Real) -> float:
        """How much of the way from the point to the box lies on curves, the first pixels not counted."""
        end_x, end_y = box.nearest(x, y)
        share = np.linspace(0, 1, 12)[3:, None]
        way = np.hstack((x + share * (end_x - x), y + share * (end_y - y)))
        gaps = np.abs(way[:, None, :] - points[None, :, :]).max(axis=2) < 5
        return 1.5 * float(np.count_nonzero(gaps.any(axis=1)))


def _beside(x: float, y: float, width: float, height: float, reach: float, angle: float) -> Box:
    """A box whose nearest side or corner is `reach` away from (x, y) in the direction of `angle`."""
    middle_x = x + cos(angle) * (reach + width / 2)
    middle_y = y + sin(angle) * (reach + height / 2)
    return Box(middle_x - width / 2, middle_y - height / 2, middle_x + width / 2, middle_y + height / 2)
