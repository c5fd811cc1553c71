"""Where labels go, so that none covers another.

In: curves and points in pixels, texts and their sizes. Out: positions, and which curves lie on each other. Plain
geometry: it refuses to know what is drawn, and draws nothing.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import accumulate, pairwise

import numpy as np
import numpy.typing as npt

Real = npt.NDArray[np.float64]

CELL = 4.0
"""Pixels: places are compared on a lattice as fine as this."""

APART = 4.0
"""Pixels that a text keeps from everything."""

COVERED, CROSSED, COLLIDING = 2.0, 6.0, 1e4
"""What it costs to cover 4 pixels of a curve, to lead a line over one, and to touch what is taken; a step as far away
as a text is at least costs 1."""

UNLED = 6.0
"""So many times its least distance a text is away from what it belongs to, if no line leads there."""

DEAR, UNLED_DEAR = 80.0, 20.0
"""What a place may cost: one that hides so much would take more than it gives."""

BLOCK = 5
"""Of so many places by so many, only the cheapest is looked at for what lies between it and its point."""


@dataclass(frozen=True)
class Box:
    """Left, bottom, right and top, in pixels."""

    left: float
    bottom: float
    right: float
    top: float

    def grown(self, by: float) -> Box:
        return Box(self.left - by, self.bottom - by, self.right + by, self.top + by)

    def towards(self, other: Box) -> tuple[tuple[float, float], tuple[float, float]]:
        """The ends of the shortest way from this box to another one; the same point twice if they meet."""
        across = _nearest(self.left, self.right, other.left, other.right)
        up = _nearest(self.bottom, self.top, other.bottom, other.top)
        return (across[0], up[0]), (across[1], up[1])

    def overlaps(self, other: Box) -> bool:
        return (
            self.left < other.right and other.left < self.right and self.bottom < other.top and other.bottom < self.top
        )


def _nearest(low: float, high: float, other_low: float, other_high: float) -> tuple[float, float]:
    """Where two ranges are nearest to each other: the middle of what they share, or their ends."""
    if high < other_low:
        return high, other_low
    if other_high < low:
        return low, other_high
    middle = (max(low, other_low) + min(high, other_high)) / 2
    return middle, middle


def spaced(wanted: Sequence[float], sizes: Sequence[float], low: float, high: float) -> list[float]:
    """Middles of labels of these sizes, side by side between `low` and `high`, as near to the wanted ones as can be.

    Least squares under an order is the pooling of neighbours that violate it (M. Ayer and others, Ann. Math. Stat.
    26(4), 1955; from memory), and under bounds as well that result cut to them. Without room for all they run over the
    top.
    """
    order = sorted(range(len(wanted)), key=lambda index: (wanted[index], index))
    ends = [0.0, *accumulate(sizes[index] for index in order)]
    middles = [(start + end) / 2 for start, end in pairwise(ends)]
    pools: list[list[float]] = []  # where the stack below each label would have to begin
    for index, middle in zip(order, middles, strict=True):
        pool = [wanted[index] - middle]
        while pools and _mean(pools[-1]) > _mean(pool):
            pool = pools.pop() + pool
        pools.append(pool)
    starts = [max(low, min(_mean(pool), high - ends[-1])) for pool in pools for _ in pool]
    placed = dict(zip(order, (start + middle for start, middle in zip(starts, middles, strict=True)), strict=True))
    return [placed[index] for index in range(len(wanted))]


def _mean(values: Sequence[float]) -> float:
    return sum(values) / len(values)


def coincide(x: Real, first: Real, second: Real, pixels: float) -> bool:
    """Do two curves run within so many pixels of each other? `x` (F,) and their heights (K, F) in pixels, which are NaN
    where a curve is not seen; that must be at the same places but for a pixel.

    The distance is taken across the curve, not upwards, since a steep one moves far up in a pixel.
    """
    if first.shape != second.shape:
        return False
    if x.size < 2:
        return bool(np.nanmax(np.abs(first - second), initial=0.0) < pixels)
    with np.errstate(invalid="ignore"):
        slope = np.fmax(*(np.abs(np.gradient(rows, x, axis=-1)) for rows in (first, second)))
        across = np.abs(first - second) / np.hypot(1, np.nan_to_num(slope))
    return bool(np.nanmax(across, initial=0.0) < pixels and _seen_alike(x, first, second, pixels))


def _seen_alike(x: Real, first: Real, second: Real, pixels: float) -> bool:
    """Do two curves end at the same places? Runs in which only one is seen are no wider than that."""
    one = (np.isnan(first) != np.isnan(second)).any(axis=0)
    edges = np.flatnonzero(np.diff(np.concatenate(([0], one.astype(int), [0]))))
    return all(x[end - 1] - x[start] < pixels for start, end in zip(edges[::2], edges[1::2], strict=True))


class Placer:
    """Finds room for texts inside a frame, away from curves and from each other."""

    def __init__(self, frame: Box) -> None:
        self.frame = frame
        shape = (int((frame.top - frame.bottom) // CELL) + 1, int((frame.right - frame.left) // CELL) + 1)
        self._drawn, self._taken = np.zeros(shape), np.zeros(shape)

    def add_curve(self, x: Real, y: Real, weight: float = 1.0) -> None:
        """A curve in pixels that texts should not cover; gaps are NaN. One of less weight gives way sooner."""
        step_x, step_y = np.diff(x), np.diff(y)
        length = np.hypot(step_x, step_y)
        counts = np.where(np.isfinite(length), np.clip(np.nan_to_num(length) / CELL, 1, 400), 0).astype(int)
        segment = np.repeat(np.arange(len(counts)), counts)
        share = (np.arange(len(segment)) - np.repeat(np.cumsum(counts) - counts, counts)) / counts[segment]
        rows, columns, inside = self._cells(x[segment] + share * step_x[segment], y[segment] + share * step_y[segment])
        cells = rows[inside], columns[inside]
        self._drawn[cells] = np.maximum(self._drawn[cells], weight)

    def add_line(self, start: tuple[float, float], end: tuple[float, float]) -> None:
        """A straight line that no text may touch and none should cross."""
        share = np.linspace(0, 1, int(np.hypot(end[0] - start[0], end[1] - start[1]) // CELL) + 2)
        x, y = (first + share * (last - first) for first, last in zip(start, end, strict=True))
        rows, columns, inside = self._cells(x, y)
        self._taken[rows[inside], columns[inside]] = 1

    def add_box(self, box: Box) -> None:
        """A place that no text may touch."""
        low, left = self._cell(box.left, box.bottom)
        high, right = self._cell(box.right, box.top)
        self._taken[max(low, 0) : max(high + 1, 0), max(left, 0) : max(right + 1, 0)] = 1

    def place(
        self, at: Box, width: float, height: float, *, near: float = 12, led: bool = False, on: bool = False
    ) -> Box | None:
        """The best place for a text that belongs to a point or a line, at least `near` away; it is then taken. None
        where there is no room for it. `led`: a line will lead from one to the other, which no other text may bar;
        without one it is at most UNLED times `near` away. `on`: on the level line itself, as the numbers of contours
        are.
        """
        tall, wide = (int(np.ceil((size + 2 * APART) / CELL)) + 1 for size in (height, width))
        if tall > self._drawn.shape[0] or wide > self._drawn.shape[1]:
            return None
        cost = COVERED * _windows(self._drawn, tall, wide) + COLLIDING * _windows(self._taken, tall, wide)
        left = self.frame.left + APART + CELL * np.arange(cost.shape[1])
        bottom = self.frame.bottom + APART + CELL * np.arange(cost.shape[0])[:, None]
        across = np.maximum(np.maximum(left - at.right, at.left - left - width), 0)
        up = np.maximum(np.maximum(bottom - at.top, at.bottom - bottom - height), 0)
        gap = np.hypot(across, up) / near
        if on:
            cost = cost + across + np.where(np.abs(bottom + height / 2 - at.bottom) > CELL / 2, COLLIDING, 0)
        else:
            cost = cost + np.maximum(gap, 1) + 40 * np.maximum(1 - gap, 0)
            cost = cost if led else cost + np.where(gap > UNLED, COLLIDING, 0)
        best: tuple[float, Box] | None = None
        cost = cost.round(6)  # what is as good comes in the order of the lattice, whatever the sums have lost
        for row, column in _cheapest(cost):
            if best is not None and cost[row, column] >= best[0]:
                break
            low, start = float(bottom[row, 0]), float(left[column])
            box = Box(start, low, start + width, low + height)
            whole = round(float(cost[row, column]) + self._on_the_way(at, box, near, led=led), 6)
            if best is None or whole < best[0]:
                best = (whole, box)
        own = COVERED * wide if on else 0  # the line that it stands on
        if best is None or best[0] > own + (DEAR if led else UNLED_DEAR):
            return None
        box = best[1]
        self.add_box(Box(box.left - 2 * APART, box.bottom, box.right + 2 * APART, box.top))
        return box

    def _on_the_way(self, at: Box, box: Box, near: float, *, led: bool) -> float:
        """What lies between one and the other, the first pixels not counted."""
        (x, y), (end_x, end_y) = at.towards(box)
        length = float(np.hypot(end_x - x, end_y - y))
        if length <= near:
            return 0.0
        share = np.arange(near, length, CELL) / length
        rows, columns, inside = self._cells(x + share * (end_x - x), y + share * (end_y - y))
        rows, columns = rows[inside], columns[inside]
        barred = COLLIDING * self._taken[rows, columns].sum() if led else 0
        return float(CROSSED * self._drawn[rows, columns].sum() + barred)

    def _cell(self, x: float, y: float) -> tuple[int, int]:
        return int((y - self.frame.bottom) // CELL), int((x - self.frame.left) // CELL)

    def _cells(self, x: Real, y: Real) -> tuple[npt.NDArray[np.intp], npt.NDArray[np.intp], npt.NDArray[np.bool_]]:
        """Rows and columns of points, and which of them lie inside."""
        rows = ((y - self.frame.bottom) // CELL).astype(np.intp)
        columns = ((x - self.frame.left) // CELL).astype(np.intp)
        inside = (rows >= 0) & (rows < self._drawn.shape[0]) & (columns >= 0) & (columns < self._drawn.shape[1])
        return rows, columns, inside


def _cheapest(cost: Real) -> Iterator[tuple[int, int]]:
    """Rows and columns of the cheapest place of each block, the cheapest first."""
    rows, columns = (-(-size // BLOCK) for size in cost.shape)
    missing = [(0, count * BLOCK - size) for count, size in zip((rows, columns), cost.shape, strict=True)]
    blocks = np.pad(cost, missing, constant_values=np.inf).reshape(rows, BLOCK, columns, BLOCK).swapaxes(1, 2)
    flat = blocks.reshape(rows * columns, BLOCK * BLOCK)
    inside = flat.argmin(axis=1)
    for block in np.argsort(flat.min(axis=1), kind="stable").tolist():
        row, column = divmod(int(inside[block]), BLOCK)
        yield block // columns * BLOCK + row, block % columns * BLOCK + column


def _windows(cells: Real, tall: int, wide: int) -> Real:
    """The sum over every window of so many cells, by differences of running sums."""
    sums = np.pad(cells, ((1, 0), (1, 0))).cumsum(axis=0).cumsum(axis=1)
    return np.asarray(sums[tall:, wide:] - sums[:-tall, wide:] - sums[tall:, :-wide] + sums[:-tall, :-wide])
