"""Straight cuts that would part an island of copper.

In: layouts, their islands. Out: `TrialCut`s. Refuses to know which of them a circuit needs.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import combinations, pairwise
from math import cos, dist, hypot, pi, sin

from shuntwise.board.copper import NARROW, Copper, Piece, copper_of, cut_piece, without_cut
from shuntwise.board.islands import Islands, Key
from shuntwise.board.plane import TOUCH, Box, apart, close_pairs
from shuntwise.board.touching import Touching, contact, touching
from shuntwise.graph.topology import DisjointSets
from shuntwise.model.boards import Cut, Hole, Layout, Point

WIDTH = 1.0
"""How wide a cut is (mm) where nothing else is said."""

BEYOND = (0.5, 0.25, 0.12)
"""How far a cut runs beyond the copper that it parts (mm), the first that leaves other copper alone."""

SLANTS = 12
"""Two holes that no square cut parts are tried with this many directions."""

MOST_TRIED = 200
"""So many lines and cuts are tried for one island; common boards need less than a hundred."""

MOST_LONG, MOST_WIDTHS = 80, 8
"""So many lines and cuts through several islands are tried for one of them, each over so many widths of copper."""


@dataclass(frozen=True)
class TrialCut:
    """A cut on the board of the layout `layout` that parts an island into `groups` of its holes; one through several
    islands parts each of them, and the groups of the one that was asked for come first. `words`: `between north 2 and
    north 3`. `long`: it parts several islands.
    """

    layout: str
    cut: Cut
    words: str
    groups: tuple[frozenset[Key], ...]
    long: bool = False


def trial_cuts(layouts: Sequence[Layout], islands: Islands, island: int) -> Iterator[TrialCut]:
    """Straight cuts that a builder would make, each of which parts an island in another way.

    They run square to the board or across tracks, in the middle between neighbouring holes, corners and ends of tracks,
    over one width of copper or from the first to the last that the line meets; for holes that none of these parts
    slanting ones are tried. None comes within 0.1 mm of a hole or of other copper. Last come longer ones, which part
    other islands of the board too.
    """
    keys = islands.keys(island)
    layout = next((layout for layout in layouts if keys and layout.name == keys[0][0]), None)
    if layout is None or len(keys) < 2:
        return
    plate = _Plate.of(layout, [name for _, name in keys])
    told: set[frozenset[frozenset[str]]] = set()
    together = set(combinations(sorted(plate.holes), 2))
    tried = 0
    for across, up in plate.directions():
        for line in plate.lines(across, up, plate.span(across, up)):
            cuts = list(plate.cuts(line))
            tried += 1 + len(cuts)
            if tried > MOST_TRIED:
                return
            yield from _new(plate, cuts, told, together)
    for pair in sorted(together):
        one, other = (plate.holes[name].at for name in pair)
        for step in range(SLANTS):
            if pair not in together or tried > MOST_TRIED:
                break
            turn = pi * step / SLANTS
            ahead = (other[0] - one[0], other[1] - one[1])
            length = hypot(*ahead) or 1.0
            across = (ahead[0] * cos(turn) - ahead[1] * sin(turn)) / length
            up = (ahead[0] * sin(turn) + ahead[1] * cos(turn)) / length
            ends = sorted(across * x + up * y for x, y in (one, other))
            for line in plate.lines(across, up, (ends[0], ends[1])):
                cuts = list(plate.cuts(line))
                tried += 1 + len(cuts)
                if pair not in together or tried > MOST_TRIED:
                    break
                yield from _new(plate, cuts, told, together)
    yield from _long_cuts(plate, islands, island, told)


Line = tuple[float, float, float]
"""Points with across x + up y = bound."""


@dataclass(frozen=True)
class _Plate:
    """An island: its pieces, its holes by name, and what else is on the layout that no cut may come near."""

    layout: Layout
    pieces: tuple[Piece, ...]
    others: tuple[Piece, ...]
    holes: dict[str, Hole]
    at_hole: dict[str, int]
    touching: tuple[tuple[int, int], ...]
    """Which pieces touch."""

    @classmethod
    def of(cls, layout: Layout, names: Iterable[str]) -> _Plate:
        copper, found = _metal(layout)
        wanted = set(names)
        holes = {hole.name: hole for hole in layout.holes if hole.name in wanted and not hole.tag}
        sets = {found.sets[found.at_hole[name]] for name in holes if name in found.at_hole}
        numbers = [number for number in range(len(copper.pieces)) if found.sets[number] in sets]
        inside = tuple(copper.pieces[number] for number in numbers)
        others = tuple(piece for number, piece in enumerate(copper.pieces) if found.sets[number] not in sets)
        at_hole = {name: numbers.index(found.at_hole[name]) for name in holes if name in found.at_hole}
        pairs = tuple(
            (one, other)
            for one, other in close_pairs([piece.box for piece in inside], TOUCH)
            if contact(inside[one], inside[other])[0] >= 0
        )
        return cls(layout, inside, others, holes, at_hole, pairs)

    def directions(self) -> list[Point]:
        """Normals of lines: those of the board's edges first, then along tracks."""
        found: list[Point] = [(1.0, 0.0), (0.0, 1.0)]
        for piece in self.pieces:
            if len(piece.core) == 2:
                (x0, y0), (x1, y1) = piece.core
                length = hypot(x1 - x0, y1 - y0)
                across, up = (x1 - x0) / length, (y1 - y0) / length
                if not any(abs(across * other[1] - up * other[0]) < 0.02 for other in found):
                    found.append((across, up))
        return found

    def span(self, across: float, up: float) -> tuple[float, float]:
        """From where to where the island reaches in a direction."""
        ends = [across * x + up * y for piece in self.pieces for x, y in piece.outline]
        return min(ends), max(ends)

    def lines(self, across: float, up: float, span: tuple[float, float]) -> Iterator[Line]:
        """In the middle between whatever follows one another in a direction, the widest gaps first."""
        marks = [across * x + up * y for piece in self.pieces for x, y in piece.core]
        marks += [across * hole.at[0] + up * hole.at[1] for hole in self.holes.values()]
        marks = sorted({*span, *(round(mark, 6) for mark in marks if span[0] < mark < span[1])})
        gaps = sorted(pairwise(marks), key=lambda gap: (round(gap[0] - gap[1], 6), gap))
        for low, high in gaps:
            if high - low > WIDTH / 2:
                yield across, up, (low + high) / 2

    def cuts(self, line: Line) -> Iterator[Cut]:
        """Cuts along a line over each width of copper, then over all, if clear of holes and other copper."""
        crossed = _crossed(self.pieces, line)
        if len(crossed) > 1:
            crossed.append((crossed[0][0], crossed[-1][1]))
        for low, high in crossed:
            for beyond in BEYOND:
                cut = self._along(line, low - beyond, high + beyond)
                if self.clear(cut):
                    yield cut
                    break

    def long_cuts(self, line: Line, own: Iterable[Piece]) -> Iterator[Cut]:
        """Cuts along a line over neighbouring widths of copper, some of them of `own`, if clear of holes."""
        crossed = _crossed(self.pieces, line)
        mine = _crossed(own, line)
        if not mine or not 1 < len(crossed) <= MOST_WIDTHS:
            return
        for first, last in combinations(range(len(crossed)), 2):
            low, high = crossed[first][0], crossed[last][1]
            if not any(low <= start and end <= high for start, end in mine):
                continue
            room = min(
                low - crossed[first - 1][1] if first else BEYOND[0] + 2 * NARROW,
                crossed[last + 1][0] - high if last + 1 < len(crossed) else BEYOND[0] + 2 * NARROW,
            )
            beyond = next((beyond for beyond in BEYOND if beyond <= room - NARROW), None)
            if beyond is not None:
                cut = self._along(line, low - beyond, high + beyond)
                if self.clear(cut):
                    yield cut

    def _along(self, line: Line, *ends: float) -> Cut:
        across, up, bound = line
        start, end = ((round(across * bound - up * along, 3), round(up * bound + across * along, 3)) for along in ends)
        return Cut(start, end, WIDTH, self.layout.span)

    def clear(self, cut: Cut) -> bool:
        taken = cut_piece(cut)
        if taken is None:
            return False
        for hole in self.layout.holes:
            clear_of = hole.diameter / 2 + NARROW
            near = not hole.tag and _apart_by_box((*hole.at, *hole.at), taken.box) < clear_of
            if near and -taken.around(hole.at) < clear_of:
                return False
        for piece in self.others:
            if (
                _apart_by_box(piece.box, taken.box) < NARROW
                and apart(taken.core, piece.core)[0] - piece.radius < NARROW
            ):
                return False
        return True

    def groups(self, cut: Cut) -> list[frozenset[str]]:
        """The holes that are together after a cut; nothing if it leaves a hair's breadth anywhere.

        Only what the cut meets is looked at anew.
        """
        taken = cut_piece(cut)
        if taken is None:
            return []
        left, lower, right, upper = taken.box
        parts: dict[int, list[Piece]] = {}
        for number, piece in enumerate(self.pieces):
            box = piece.box
            if box[0] < right and box[2] > left and box[1] < upper and box[3] > lower:
                after = without_cut([piece], cut)
                if after != [piece]:
                    parts[number] = after
        sets: DisjointSets[tuple[int, int]] = DisjointSets()
        hairs: list[tuple[tuple[int, int], tuple[int, int]]] = []
        pairs = [*((one, other) for one, other in self.touching), *((number, number) for number in parts)]
        for one, other in pairs:
            if one not in parts and other not in parts:
                sets.union((one, 0), (other, 0))
                continue
            for i, first in enumerate(parts.get(one, (self.pieces[one],))):
                for j, second in enumerate(parts.get(other, (self.pieces[other],))):
                    if (one, i) == (other, j) or _apart_by_box(first.box, second.box) > NARROW:
                        continue
                    width = contact(first, second)[0]
                    if width >= NARROW:
                        sets.union((one, i), (other, j))
                    elif width > -NARROW:
                        hairs.append(((one, i), (other, j)))
        if any(sets[one] != sets[other] for one, other in hairs):
            return []
        groups: dict[tuple[int, int], set[str]] = {}
        for name, number in self.at_hole.items():
            pieces, at = parts.get(number, ()), self.holes[name].at
            around = [piece.around(at) for piece in pieces] if len(pieces) > 1 else [0.0]
            part = around.index(max(around))
            groups.setdefault(sets[number, part], set()).add(name)
        return sorted((frozenset(group) for group in groups.values()), key=min)


@lru_cache(maxsize=4)
def _metal(layout: Layout) -> tuple[Copper, Touching]:
    """Asked for island after island."""
    copper = copper_of(layout)
    return copper, touching(copper, layout.holes)


@lru_cache(maxsize=4)
def _whole(layout: Layout) -> _Plate:
    """All islands of a layout as one."""
    return _Plate.of(layout, [hole.name for hole in layout.holes])


def _new(
    plate: _Plate, cuts: Iterable[Cut], told: set[frozenset[frozenset[str]]], together: set[tuple[str, str]]
) -> Iterator[TrialCut]:
    """The cuts that part the island in a way not told yet; `told` and `together` are kept up."""
    for cut in cuts:
        groups = plate.groups(cut)
        if len(groups) < 2 or frozenset(groups) in told:
            continue
        told.add(frozenset(groups))
        for group in groups:
            together -= {pair for pair in together if (pair[0] in group) != (pair[1] in group)}
        name = plate.layout.name
        keyed = tuple(frozenset((name, hole) for hole in group) for group in groups)
        yield TrialCut(name, cut, _words(plate, cut, groups), keyed)


def _long_cuts(
    plate: _Plate, islands: Islands, island: int, told: set[frozenset[frozenset[str]]]
) -> Iterator[TrialCut]:
    """Cuts that part an island and others of its board, in ways not told yet."""
    name = plate.layout.name
    whole = _whole(plate.layout)
    tried = 0
    for across, up in plate.directions():
        for line in whole.lines(across, up, plate.span(across, up)):
            cuts = list(whole.long_cuts(line, plate.pieces))
            tried += 1 + len(cuts)
            if tried > MOST_LONG:
                return
            for cut in cuts:
                groups = _parted(whole.groups(cut), {hole: islands.of[name, hole] for hole in whole.holes})
                own = groups.pop(island, [])
                parts = [*own, *(group for of_one in groups.values() for group in of_one)]
                if own and frozenset(parts) not in told:
                    told.add(frozenset(parts))
                    keyed = tuple(frozenset((name, hole) for hole in group) for group in parts)
                    yield TrialCut(name, cut, _words(plate, cut, own), keyed, long=True)


def _parted(groups: Iterable[frozenset[str]], island: Mapping[str, int]) -> dict[int, list[frozenset[str]]]:
    """The groups of every island that has several."""
    found: dict[int, list[frozenset[str]]] = {}
    for group in groups:
        found.setdefault(island[min(group)], []).append(group)
    return {number: of_one for number, of_one in found.items() if len(of_one) > 1}


def _words(plate: _Plate, cut: Cut, groups: Sequence[frozenset[str]]) -> str:
    """Where a cut is: between the two holes that are nearest to it, one of each of two groups."""
    middle = (cut.start[0] + cut.end[0]) / 2, (cut.start[1] + cut.end[1]) / 2
    far = {name: dist(hole.at, middle) for name, hole in plate.holes.items()}
    nearest = sorted((min(group, key=lambda name: (far[name], name)) for group in groups), key=lambda name: far[name])
    order = list(plate.holes)
    one, other = sorted(nearest[:2], key=order.index)
    return f"between {one} and {other}"


def _apart_by_box(one: Box, other: Box) -> float:
    """At least so far are two things apart that these boxes hold; less than 0 where the boxes overlap."""
    return max(one[0] - other[2], other[0] - one[2], one[1] - other[3], other[1] - one[3])


def _crossed(pieces: Iterable[Piece], line: Line) -> list[tuple[float, float]]:
    """From where to where copper lies on a line, along (-up, across) from its point nearest to the origin."""
    across, up, bound = line
    found: list[tuple[float, float]] = []
    for piece in pieces:
        left, lower, right, upper = piece.box
        ends = sorted((across * left, across * right)), sorted((up * lower, up * upper))
        if not ends[0][0] + ends[1][0] < bound < ends[0][1] + ends[1][1]:
            continue
        low, high = -1e9, 1e9
        for side_across, side_up, side_bound in piece.bounds:
            slope = side_up * across - side_across * up
            rest = side_bound - bound * (side_across * across + side_up * up)
            if abs(slope) < 1e-12:
                if rest < 0:
                    break
            elif slope > 0:
                high = min(high, rest / slope)
            else:
                low = max(low, rest / slope)
        else:
            if low < high:
                found.append((low, high))
    merged: list[tuple[float, float]] = []
    for low, high in sorted(found):
        if merged and low <= merged[-1][1] + NARROW:
            merged[-1] = merged[-1][0], max(high, merged[-1][1])
        else:
            merged.append((low, high))
    return merged
