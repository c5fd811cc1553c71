"""A piece of a schematic placed on a canvas: symbols, texts, wires and names, in mm.

In: a `Piece` and its `Sizes`. Out: marks on a `Canvas`. The wires between elements are right-angled, and those of one
net are one figure. Refuses to know pages.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, field
from itertools import pairwise

from shuntwise.documents.lettering import ASCENT
from shuntwise.documents.schematic.pieces import real
from shuntwise.documents.schematic.sizes import (
    AIR,
    BAR,
    BARRED,
    BUS,
    GAP,
    LEADING,
    STEM,
    Block,
    Lying,
    Sizes,
    Tag,
    drop,
)
from shuntwise.documents.schematic.symbols import PEN, WIRE, Place, circle, placed
from shuntwise.documents.schematic.tree import NOWHERE, Tree
from shuntwise.documents.sheet import GREY, INK, PAPER, Mark, Point, Stroke, Text

Box = tuple[float, float, float, float]

START = 3.0
"""From a post to where the first branch may begin."""

DOT = 0.55
POST = 0.9


@dataclass
class Canvas:
    """What has been drawn. `boxes` are those that each element fills, words included."""

    marks: list[Mark] = field(default_factory=list)
    wires: list[tuple[Point, Point]] = field(default_factory=list)
    boxes: dict[str, list[Box]] = field(default_factory=lambda: defaultdict(list))

    def wire(self, *points: Point) -> None:
        self.wires += [(a, b) for a, b in pairwise(points) if a != b]

    def ring(self, points: Iterable[Point]) -> None:
        self.marks.append(Stroke(tuple(points), PEN, closed=True, fill=PAPER))

    def words(self, block: Block, x: float, top: float, anchor: str, tone: str = INK) -> Box:
        """Lines from `top` downwards; x is their start, middle or end. Returns what they fill."""
        y = top
        left = x - {"start": 0, "middle": block.width / 2, "end": block.width}[anchor]
        if block.barred:
            at = left + BAR / 2
            self.marks.append(Stroke(((at, top + BAR), (at, top + block.height - BAR)), BAR))
            x += {"start": BARRED, "middle": BARRED / 2, "end": 0}[anchor]
        for line in block.lines:
            full = line.size * LEADING
            base = y + (full - line.size) / 2 + line.size * ASCENT
            self.marks.append(Text(x, base, line.text, line.size, anchor, line.bold, tone))  # type: ignore[arg-type]
            y += full
        return left, top, left + block.width, y

    def name(self, tag: Tag, tip: Point, way: Point) -> None:
        """A name in a box with a point, which begins at `tip` and lies in the direction `way`; or what else ends so."""
        (x, y), (right, down) = tip, way
        wide, high = tag.width, tag.height
        reach = STEM if tag.kind != "name" else AIR
        left = x + right * reach - wide / 2 * (1 - right)
        top = y + down * reach - high / 2 * (1 - down)
        if tag.kind == "net":
            corners = [(left, top), (left + wide, top), (left + wide, top + high), (left, top + high)]
            # The point stands between the two corners of the near side.
            self.ring(_pointed(corners, tip, way))
        elif tag.kind == "test":
            self.ring(circle(x + right * POST, y + down * POST, POST, 16))
        # The name of a node is grey, since it stands at a wire as a value does.
        tone = GREY if tag.kind == "name" else INK
        self.words(tag.block, left + wide / 2, top + (high - tag.block.height) / 2, "middle", tone)

    def dots(self) -> list[Point]:
        """Where three or more ways meet."""
        level: dict[float, list[tuple[float, float]]] = defaultdict(list)
        upright: dict[float, list[tuple[float, float]]] = defaultdict(list)
        for (x1, y1), (x2, y2) in self.merged():
            if y1 == y2:
                level[y1].append((x1, x2))
            else:
                upright[x1].append((y1, y2))
        found = []
        for x, y in sorted({point for wire in self.wires for point in map(_on_grid, wire)}):
            ways = sum((a < x) + (b > x) for a, b in level[y] if a <= x <= b)
            ways += sum((a < y) + (b > y) for a, b in upright[x] if a <= y <= b)
            if ways > 2:
                found.append((x, y))
        return found

    def merged(self) -> list[tuple[Point, Point]]:
        """The wires, those that lie on one another made one."""
        lines: dict[tuple[bool, float], list[tuple[float, float]]] = defaultdict(list)
        for wire in self.wires:
            (x1, y1), (x2, y2) = map(_on_grid, wire)
            if (x1, y1) != (x2, y2):
                level = y1 == y2
                lines[level, y1 if level else x1].append((min(x1, x2), max(x1, x2)) if level else _sorted(y1, y2))
        made = []
        for (level, at), spans in lines.items():
            spans.sort()
            start, end = spans[0]
            for a, b in [*spans[1:], (float("inf"), 0.0)]:
                if a <= end:
                    end = max(end, b)
                    continue
                made.append(((start, at), (end, at)) if level else ((at, start), (at, end)))
                start, end = a, b
        return made


def _on_grid(point: Point) -> Point:
    """Rounded, so that what meets is equal."""
    return round(point[0], 4), round(point[1], 4)


def _sorted(a: float, b: float) -> tuple[float, float]:
    return (a, b) if a < b else (b, a)


def _pointed(corners: list[Point], tip: Point, way: Point) -> list[Point]:
    """The corners of a box, from the left at the top on clockwise, and the tip between those of its near side."""
    after = {(1, 0): 3, (0, 1): 0, (-1, 0): 1, (0, -1): 2}[int(way[0]), int(way[1])]
    return [*corners[: after + 1], tip, *corners[after + 1 :]]


class Placing:
    """One piece on a canvas."""

    def __init__(self, canvas: Canvas, sizes: Sizes) -> None:
        self.canvas = canvas
        self.sizes = sizes
        self.drivers = 0.0
        self.buses = 0.0

    # --- pieces

    def piece(self, x: float, y: float, drivers: float) -> None:
        """The piece with its upper left corner at (x, y); its drivers stand `drivers` from the left, if it is a
        ladder.
        """
        piece, frame = self.sizes.piece, framed(self.sizes)
        tree = piece.tree
        x, y = x + frame.left, y + frame.above
        if piece.is_ladder:
            low = y + frame.height
            self.pole(piece.a, x, y)
            self.pole(piece.b, x, low)
            if tree is None:
                self.canvas.wire((x, y), (x + START, y))
                self.canvas.wire((x, low), (x + START, low))
                return
            self.drivers = x - frame.left + drivers
            self.buses = self.drivers + self.sizes.ladder(tree).right
            self.canvas.wire((x, y), (x + START, y))
            feet = self.ladder(tree, x + START, y, frame.height)
            self.canvas.wire((x, low), (max([x + START, *feet]), low))
            return
        assert tree is not None
        if real(piece.a) in self.sizes.named:
            self.canvas.name(self.sizes.name(piece.a), (x, y), (-1, 0))
        size = self.sizes.lying(tree)
        self.lying(tree, x, y, size.width)
        if not tree.loose and real(piece.b) in self.sizes.named:
            self.canvas.name(self.sizes.name(piece.b), (x + size.width, y), (1, 0))

    def pole(self, net: str, x: float, y: float) -> None:
        """A post, or the name of a net that is drawn elsewhere, too."""
        if real(net) not in self.sizes.named:
            return
        tag = self.sizes.name(net)
        if self.sizes.piece.posts is None:
            self.canvas.name(tag, (x, y), (-1, 0))
            return
        self.canvas.ring(circle(x - POST, y, POST, 16))
        self.canvas.words(tag.block, x - 2 * POST - AIR, y - tag.block.height / 2, "end")

    # --- lying

    def lying(self, tree: Tree, x: float, y: float, width: float) -> None:
        canvas, sizes = self.canvas, self.sizes
        match tree.form:
            case "row":
                extra = (width - sizes.lying(tree).width) / len(tree.kids)
                for kid in tree.kids:
                    own = sizes.lying(kid).width + extra
                    self.lying(kid, x, y, own)
                    x += own
            case "group":
                self._lying_group(tree, x, y, width)
            case "end":
                tag = sizes.at_end(tree.a)
                canvas.wire((x, y), (x + STEM, y))
                if tag is not None:
                    canvas.name(tag, (x + STEM, y), (1, 0))
            case "gap":
                self.gap(tree, (x, y), (x + width, y), (1, 0))
            case _:
                self._lying_one(tree, x, y, width)

    def _lying_group(self, tree: Tree, x: float, y: float, width: float) -> None:
        before = None
        inner, x1, x2 = width - 2 * GAP, x + GAP, x + width - GAP
        self.canvas.wire((x, y), (x1, y))
        if not tree.loose:
            self.canvas.wire((x2, y), (x + width, y))
        level, right = y, None
        for kid in tree.kids:
            size = self.sizes.lying(kid)
            if before is not None:
                level -= before.above + GAP + size.below
                self.canvas.wire((x1, y), (x1, level))
                if not kid.loose and right is not None:
                    self.canvas.wire((x2, right), (x2, level))
            self.lying(kid, x1, level, size.width if kid.loose else inner)
            before = size
            if not kid.loose:
                # The wires at the right begin at the line itself.
                self.canvas.wire((x2, y if right is None else right), (x2, level))
                right = level

    def _lying_one(self, tree: Tree, x: float, y: float, width: float) -> None:
        sizes, canvas = self.sizes, self.canvas
        end = x + width
        spare = (width - sizes.lying(tree).width) / 2
        near, far = x + AIR / 2 + spare, end - AIR / 2 - spare
        canvas.wire((x, y), (near, y))
        canvas.wire((far, y), (end, y))
        near = self.tags_along(tree, 0, near, y)
        far -= sizes.along(tree, 1)
        self.tags_along(tree, 1, far, y)
        drawn = sizes.symbol(tree)
        left = (near + far - drawn.length) / 2
        canvas.wire((near, y), (left, y))
        canvas.wire((left + drawn.length, y), (far, y))
        place = Place(left, y, turned=tree.ends == (1, 0), length=drawn.length)
        canvas.marks += placed(drawn, place)
        words = sizes.words(tree.part)
        middle = left + drawn.length / 2
        box = canvas.words(words, middle, y - drawn.above - AIR / 2 - words.height, "middle")
        self.fill(tree, (left, y - drawn.above, left + drawn.length, y + drawn.below), box)
        third = sizes.third(tree)
        if third is not None and drawn.third is not None:
            at, tip = place.at(drawn.third), y + drawn.below + AIR / 2
            canvas.wire(at, (at[0], tip))
            canvas.name(third, (at[0], tip), (0, 1))

    def tags_along(self, tree: Tree, end: int, x: float, y: float) -> float:
        """The tags at one end of a lying part, from x on; returns where they end."""
        for tag in self.sizes.tags.get((tree, end), ()):
            middle = x + (tag.width + AIR) / 2
            stem = 0.0 if tag.kind == "name" else STEM
            self.canvas.wire((x, y), (middle, y))
            self.canvas.wire((middle, y), (x + tag.width + AIR, y))
            if stem:
                self.canvas.wire((middle, y), (middle, y - stem))
            self.canvas.name(tag, (middle, y - stem), (0, -1))
            x += tag.width + AIR
        return x

    def gap(self, tree: Tree, start: Point, end: Point, way: Point) -> None:
        """The names at both ends of what is drawn elsewhere."""
        (x1, y1), (x2, y2) = start, end
        right, down = way
        near = (x1 + right * STEM, y1 + down * STEM)
        far = (x2 - right * STEM, y2 - down * STEM)
        self.canvas.wire(start, near)
        self.canvas.wire(far, end)
        self.canvas.name(self.sizes.name(tree.a), near, way)
        self.canvas.name(self.sizes.name(tree.b), far, (-right, -down))

    def fill(self, tree: Tree, *boxes: Box) -> None:
        self.canvas.boxes[tree.part.label] += boxes

    # --- standing

    def standing(self, tree: Tree, x: float, y: float, height: float) -> None:
        canvas, sizes = self.canvas, self.sizes
        match tree.form:
            case "row":
                top = y
                y = self.lowered(x, y, height - sizes.standing(tree).height)
                canvas.wire((x, y), (x, y + sizes.margin(tree)))
                y += sizes.margin(tree)
                for kid in tree.kids:
                    own = sizes.standing(kid).height
                    self.standing(kid, x, y, own)
                    y += own
                if not tree.loose:
                    canvas.wire((x, y), (x, top + height))
            case "group":
                self._standing_group(tree, x, y, height)
            case "end":
                tag = sizes.at_end(tree.a)
                canvas.wire((x, y), (x, y + STEM))
                if tag is not None:
                    canvas.name(tag, (x, y + STEM), (0, 1))
            case "gap":
                self.gap(tree, (x, y), (x, y + height), (0, 1))
            case _:
                self._standing_one(tree, x, y, height)

    def lowered(self, x: float, y: float, spare: float) -> float:
        """A wire down from y, so that what has room to spare stands neither at the top nor far below."""
        lower = y + min(spare / 2, 3 * GAP)
        self.canvas.wire((x, y), (x, lower))
        return lower

    def _standing_group(self, tree: Tree, x: float, y: float, height: float) -> None:
        inner = self.sizes.standing(tree).height - 2 * GAP
        top = self.lowered(x, y, height - inner - 2 * GAP) + GAP
        low = top + inner
        self.canvas.wire((x, y), (x, top))
        if not tree.loose:
            self.canvas.wire((x, low), (x, y + height))
        at, last, joined = x, x, x
        for number, kid in enumerate(tree.kids):
            size = self.sizes.standing(kid)
            at = x if number == 0 else at + size.left
            self.canvas.wire((last, top), (at, top))
            self.standing(kid, at, top, size.height if kid.loose else inner)
            if not kid.loose:
                self.canvas.wire((joined, low), (at, low))
                joined = at
            last = at
            at += size.right + GAP

    def _standing_one(self, tree: Tree, x: float, y: float, height: float) -> None:
        sizes, canvas = self.sizes, self.canvas
        size, drawn = sizes.standing(tree), sizes.symbol(tree)
        near = self.lowered(x, y, height - size.height)
        far = near + size.height
        canvas.wire((x, far), (x, y + height))
        near = self.tags_down(tree, 0, x, near)
        below = far - sizes.down(tree, 1)
        self.tags_down(tree, 1, x, below)
        top = (near + below - drawn.length) / 2
        canvas.wire((x, near), (x, top))
        canvas.wire((x, top + drawn.length), (x, below))
        place = Place(x, top, down=True, turned=tree.ends == (1, 0), length=drawn.length)
        canvas.marks += placed(drawn, place)
        words = sizes.words(tree.part)
        box = canvas.words(words, x + drawn.above + AIR, top + (drawn.length - words.height) / 2, "start")
        self.fill(tree, (x - drawn.below, top, x + drawn.above, top + drawn.length), box)
        third = sizes.third(tree)
        if third is not None and drawn.third is not None:
            at, tip = place.at(drawn.third), x - drawn.below - AIR / 2
            canvas.wire(at, (tip, at[1]))
            canvas.name(third, (tip, at[1]), (-1, 0))

    def tags_down(self, tree: Tree, end: int, x: float, y: float) -> float:
        for tag in self.sizes.tags.get((tree, end), ()):
            middle = y + (tag.height + AIR) / 2
            stem = 0.0 if tag.kind == "name" else STEM
            self.canvas.wire((x, y), (x, middle))
            self.canvas.wire((x, middle), (x, y + tag.height + AIR))
            if stem:
                self.canvas.wire((x, middle), (x + stem, middle))
            self.canvas.name(tag, (x + stem, middle), (1, 0))
            y += tag.height + AIR
        return y

    # --- ladders

    def ladder(self, tree: Tree, x: float, y: float, height: float, *, led: bool = True) -> list[float]:
        """From (x, y) to the right and down to y + height; returns where it meets the lower wire, which is not drawn.
        It begins with a wire from x, if it is `led` there.
        """
        match tree.form:
            case "row":
                return self._stacked(tree, x, y, height, led)
            case "group":
                return self._beside(tree, x, y, height, led)
            case "tee":
                return self._tee(tree, x, y, height)
            case "end":
                self.lying(tree, x, y, self.sizes.lying(tree).width)
                return []
        at = self.drivers if tree.path else x + self.sizes.standing(tree).left + GAP
        if led:
            self.canvas.wire((x, y), (at, y))
        self.standing(tree, at, y, height)
        return [at]

    def _stacked(self, tree: Tree, x: float, y: float, height: float, led: bool) -> list[float]:
        sizes, canvas = self.sizes, self.canvas
        heads, body, rest = tree.parted
        for head in heads:
            own = sizes.lying(head).width
            self.lying(head, x, y, own)
            x += own
        if rest is None:
            return self.ladder(body, x, y, height, led=led or bool(heads))
        first = sizes.ladder(body).height
        feet = self.ladder(body, x, y, first, led=led or bool(heads))
        middle = y + first
        if not rest.path:
            at = self.drivers
            canvas.wire((min([at, *feet]), middle), (max([at, *feet]), middle))
            self.standing(rest, at, middle, height - first)
            return [] if rest.loose else [at]
        under = sizes.ladder(rest)
        entry = self.way_down(rest, 0.0) if rest.form == "group" and rest.split[0] else 0.0
        start = max(x, min([*(foot - entry for foot in feet), self.drivers - under.width]))
        join = start if drop(under) else self.way_down(rest, start)
        canvas.wire((min([join, *feet]), middle), (max([join, *feet]), middle))
        lower = middle + drop(under)
        canvas.wire((start, middle), (start, lower))
        return self.ladder(rest, start, lower, height - first - drop(under), led=drop(under) > 0)

    def way_down(self, tree: Tree, x: float) -> float:
        """Where the first wire goes down from the upper wire of a ladder that begins at x; x itself, if that goes on
        first.
        """
        if tree.form == "row" and not tree.parted[0]:
            return self.way_down(tree.parted[1], x)
        if tree.form == "group" and (across := tree.split[0]):
            return x + GAP + self.sizes.standing(across[0]).left
        return self.drivers if tree.form == "one" and tree.path else x

    def _beside(self, tree: Tree, x: float, y: float, height: float, led: bool) -> list[float]:
        sizes, canvas = self.sizes, self.canvas
        across, legs = tree.split
        feet: list[float] = []
        for kid in across:
            size = sizes.standing(kid)
            at = x + GAP + size.left
            if led:
                canvas.wire((x, y), (at, y))
            led = True
            self.standing(kid, at, y, size.height if kid.loose else height)
            feet += [] if kid.loose else [at]
            x = at + size.right
            if legs or kid is not across[-1]:
                canvas.wire((at, y), (x, y))
        if not legs:
            return feet
        if len(legs) == 1:
            return feet + self.ladder(legs[0], x, y, height)
        bus = self.buses + BUS * sizes.ladder(tree).buses
        level, last, joined = y, y, None
        for number, leg in enumerate(legs):
            own_size = sizes.ladder(leg)
            level += own_size.above + GAP if number else 0
            canvas.wire((x, last), (x, level))
            canvas.wire((x, level), (x + GAP, level))
            own = own_size.height if number < len(legs) - 1 else height - (level - y)
            landed = self.ladder(leg, x + GAP, level, own)
            last = level
            level += own
            if number < len(legs) - 1 and landed:
                canvas.wire((min(landed), level), (bus, level))
                joined = level if joined is None else joined
        if joined is not None:
            canvas.wire((bus, joined), (bus, y + height))
            feet.append(bus)
        return feet + landed

    def _tee(self, tree: Tree, x: float, y: float, height: float) -> list[float]:
        sizes, canvas = self.sizes, self.canvas
        size, drawn, words = sizes.tee(tree), sizes.symbol(tree), sizes.words(tree.part)
        end = x + size.width
        assert drawn.third is not None
        if tree.part.symbol == "tapped coil":
            foot = self._tapped(tree, x, y, size)
        else:
            near = self.tags_along(tree, 0, x, y)
            far = end - sizes.along(tree, 1)
            self.tags_along(tree, 1, far, y)
            left = (near + far - drawn.length) / 2
            canvas.wire((near, y), (left, y))
            canvas.wire((left + drawn.length, y), (far, y))
            place = Place(left, y, length=drawn.length)
            canvas.marks += placed(drawn, place)
            box = canvas.words(words, left + drawn.length / 2, y - drawn.above - AIR / 2 - words.height, "middle")
            self.fill(tree, (left, y - drawn.above, left + drawn.length, y + drawn.below), box)
            foot = place.at(drawn.third)
        canvas.wire(foot, (foot[0], y + height))
        return [foot[0], *self.ladder(tree.kids[0], end, y, height)]

    def _tapped(self, tree: Tree, x: float, y: float, size: Lying) -> Point:
        """The winding stands below the wire, its tap to the right and up again; returns its foot."""
        sizes, canvas = self.sizes, self.canvas
        drawn, words = sizes.symbol(tree), sizes.words(tree.part)
        assert drawn.third is not None
        at = self.tags_along(tree, 0, x, y) + drawn.above + AIR
        canvas.wire((x, y), (at, y))
        top = y + drawn.lead
        canvas.wire((at, y), (at, top))
        # Entered at its start the winding begins above, at its end below.
        place = Place(at, top, down=True, turned=tree.ends[0] == 1, flipped=True, length=drawn.length)
        canvas.marks += placed(drawn, place)
        tap = place.at(drawn.third)
        up = at + 2 * GAP - AIR
        canvas.wire(tap, (up, tap[1]), (up, y), (x + size.width - sizes.along(tree, 1), y))
        self.tags_along(tree, 1, x + size.width - sizes.along(tree, 1), y)
        box = canvas.words(words, up + AIR, y + AIR, "start")
        self.fill(tree, (at - drawn.above, top, up, top + drawn.length), box)
        return at, top + drawn.length


@dataclass(frozen=True)
class Frame:
    """Of a piece: what stands left of its first point and above it, the whole width, and from the upper to the lower
    wire; `drivers` is from its left edge to the column of drivers.
    """

    left: float
    above: float
    width: float
    height: float
    below: float
    drivers: float


def framed(sizes: Sizes) -> Frame:
    piece = sizes.piece
    tags = [sizes.name(net) for net in (piece.a, piece.b) if real(net) in sizes.named and net != NOWHERE]
    high = max((tag.height for tag in tags), default=0.0) / 2
    if piece.is_ladder:
        left = max((tag.width for tag in tags), default=0.0) + 2 * STEM
        if piece.tree is None:
            return Frame(left, high, left + START, 2 * high + GAP, high, 0)
        size = sizes.ladder(piece.tree)
        drivers = left + START + size.width
        right = size.right + BUS * size.buses
        return Frame(left, max(high, size.above), drivers + right, max(size.height, 2 * high + GAP), high, drivers)
    assert piece.tree is not None
    lying = sizes.lying(piece.tree)
    a, b = (
        sizes.name(net).width + STEM if real(net) in sizes.named and net != NOWHERE else 0.0
        for net in (piece.a, piece.b)
    )
    above, below = max(high, lying.above), max(high, lying.below)
    return Frame(a, above, a + lying.width + b, 0, below, 0)


def wires(canvas: Canvas) -> list[Mark]:
    """The wires and the dots where they join."""
    drawn: list[Mark] = [Stroke(wire, WIRE) for wire in canvas.merged()]
    return drawn + [Stroke(circle(x, y, DOT, 16), 0, closed=True, fill=INK) for x, y in canvas.dots()]
