"""A circuit read from a sheet as a person reads it: by strokes, dots, signs and names, and by nothing else.

It knows the pens (wires 0.25 mm, symbols 0.35 mm, bars beside words 0.7 mm) and the shapes of the symbols, and no
module that draws them. A wire's end on another wire joins the two; where two cross only a dot does. A label belongs to
the symbol that it is nearest to.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from itertools import combinations, pairwise
from math import dist, hypot

from shuntwise.documents.lettering import width
from shuntwise.documents.sheet import Point, Sheet, Stroke, Text

Box = tuple[float, float, float, float]
WIRE, PEN, BAR = 0.25, 0.35, 0.7
NEAR = 0.02
"""Closer than this (mm) is the same place."""

ONE_SYMBOL = 1.65
"""Strokes no farther apart belong to one symbol."""


class Unreadable(Exception):
    """The sheet says nothing, or several things."""


@dataclass
class Block:
    """Lines of one size under one another."""

    lines: list[Text]

    @property
    def text(self) -> str:
        return "".join(line.text for line in self.lines)

    @property
    def box(self) -> Box:
        return hull(text_box(line) for line in self.lines)


@dataclass
class Shape:
    strokes: list[Stroke]
    ends: list[Point] = field(default_factory=list)
    signs: list[Text] = field(default_factory=list)
    dots: list[Point] = field(default_factory=list)
    label: str = ""

    @property
    def box(self) -> Box:
        return hull((x, y, x, y) for stroke in self.strokes for x, y in stroke.points)

    @property
    def kind(self) -> str:
        closed = [stroke for stroke in self.strokes if stroke.closed]
        lines = [stroke for stroke in self.strokes if not stroke.closed]
        corners = sorted(len(stroke.points) for stroke in closed)
        points = sorted(len(line.points) for line in lines)
        match corners, points:
            case [], [*_, many] if many > 20:
                core = [line for line in lines if len(line.points) == 2]
                return "tapped coil" if len(self.ends) > 2 else _CORED[core[0].dashes != () if core else None]
            case [], [2, 2]:
                return "polarised capacitor" if self.signs else "capacitor"
            case [4], []:
                return "resistor"
            case [4], [2]:
                return "fuse"
            case [4], [3]:
                return "protector"
            case [4], [2, 3]:
                return "attenuator"
            case [4, 4], []:
                return "driver"
            case [many], [2, 2] if many > 8:
                return "lamp"
            case [24, 24], [2]:
                (bar,) = lines
                return "fitted link" if all(_touches(end, closed) for end in bar.points) else "open link"
        raise Unreadable(f"a symbol of {corners} and {points}")


_CORED = {None: "coil", False: "iron-cored coil", True: "ferrite-cored coil"}


@dataclass(frozen=True)
class Read:
    """By label its kind; and the nets, each with what is attached to it: (label, terminal), where the ends of what is
    the same both ways round have no terminal, and (post, ""). `marked` are labels with a bar beside them.
    """

    kinds: dict[str, str]
    nets: Counter[frozenset[tuple[tuple[str, str], int]]]
    marked: frozenset[str] = frozenset()


def read(sheets: Sequence[Sheet]) -> Read:
    """Raises Unreadable."""
    reading = _Reading()
    for number, sheet in enumerate(sheets):
        reading.sheet(number, sheet)
    return reading.result()


def shapes(sheet: Sheet) -> list[Shape]:
    """The symbols on a sheet, each with its label."""
    reading = _Reading()
    reading.sheet(0, sheet)
    return reading.shapes


class _Reading:
    def __init__(self) -> None:
        self.shapes: list[Shape] = []
        self.parents: dict[object, object] = {}
        self.attached: list[tuple[object, tuple[str, str]]] = []
        self.kinds: dict[str, str] = {}
        self.marked: list[str] = []

    def root(self, key: object) -> object:
        self.parents.setdefault(key, key)
        while self.parents[key] != key:
            key = self.parents[key]
        return key

    def join(self, a: object, b: object) -> None:
        self.parents[self.root(a)] = self.root(b)

    def result(self) -> Read:
        members: dict[object, Counter[tuple[str, str]]] = defaultdict(Counter)
        for key, attached in self.attached:
            members[self.root(key)][attached] += 1
            if attached[1] == "post":
                members[self.root(key)][attached] = 1
        nets = Counter(frozenset(counts.items()) for counts in members.values())
        return Read(self.kinds, nets, frozenset(self.marked))

    def sheet(self, number: int, sheet: Sheet) -> None:
        strokes = [mark for mark in sheet.marks if isinstance(mark, Stroke)]
        texts = [mark for mark in sheet.marks if isinstance(mark, Text)]
        wires = [s.points for s in strokes if s.width == WIRE and not s.dashes and not s.closed]
        dots = [middle(s) for s in strokes if s.width == 0]
        outlines = [s for s in strokes if s.width == PEN]
        self.wires(number, wires, dots)
        at_wires = sorted({point for wire in wires for point in wire})
        names = [s for s in outlines if s.closed and len(s.points) == 5]
        posts = [s for s in outlines if s.closed and len(s.points) == 16]
        shapes = gathered([s for s in outlines if s not in names and s not in posts])
        blocks = gathered_lines(texts)
        for name in names:
            inside = [block for block in blocks if within(block.box, hull_of(name))]
            tips = [point for point in at_wires if any(dist(point, corner) < NEAR for corner in name.points)]
            if len(inside) != 1 or len(tips) != 1:
                raise Unreadable(f"a box with {len(inside)} names at {len(tips)} wires")
            self.named(inside[0].text, (number, tips[0]), "")
        for post in posts:
            tips = [point for point in at_wires if _touches(point, [post])]
            x, y = middle(post)
            beside = [
                b
                for b in blocks
                if b.lines[0].anchor == "end"
                and 0 < x - b.box[2] < 3.5
                and b.box[1] < y < b.box[3]
                and b.lines[0].size < 2.6
            ]
            if len(tips) != 1:
                raise Unreadable(f"a post at {len(tips)} wires")
            if beside:
                (block,) = beside
                self.named(block.text, (number, tips[0]), "post")
        for shape in shapes:
            shape.ends = [point for point in at_wires if _touches(point, shape.strokes)]
        free = [dot for dot in dots if not any(on(dot, wire) for wire in wires)]
        for dot in free:
            nearest(shapes, (*dot, *dot)).dots.append(dot)
        for text in texts:
            if text.text in ("+", "−", "in", "out") and text.size == 2.6:
                nearest(shapes, text_box(text)).signs.append(text)
        for place, block in enumerate(blocks):
            if is_label(block):
                shape = nearest(shapes, words_box(blocks[place:]))
                if shape.label:
                    raise Unreadable(f"{shape.label} and {block.text} at one symbol")
                shape.label = block.text
        for bar in (hull_of(s) for s in strokes if s.width == BAR):
            beside = [b.text for n, b in enumerate(blocks) if is_label(b) and at_left(bar, words_box(blocks[n:]))]
            if len(beside) != 1 or beside[0] in self.marked:
                raise Unreadable(f"a bar beside {beside}")
            self.marked += beside
        for shape in shapes:
            self.part(number, shape)
        self.shapes += shapes

    def named(self, text: str, key: object, kind: str) -> None:
        for name in text.replace(" ", "").split(","):
            self.join(("name", name), key)
            if kind:
                self.attached.append((key, (name, kind)))

    def wires(self, number: int, wires: list[tuple[Point, ...]], dots: list[Point]) -> None:
        for a, b in wires:
            self.join((number, a), (number, b))
        for point in [*dots, *{point for wire in wires for point in wire}]:
            for wire in wires:
                if on(point, wire):
                    self.join((number, point), (number, wire[0]))

    def part(self, number: int, shape: Shape) -> None:
        label, kind = shape.label, shape.kind
        if not label or label in self.kinds:
            raise Unreadable(f"a {kind} called {label!r}")
        if len(shape.ends) != (3 if kind in ("tapped coil", "attenuator") else 2):
            raise Unreadable(f"{label} has {len(shape.ends)} ends")
        self.kinds[label] = kind
        for end in shape.ends:
            self.attached.append(((number, end), (label, terminal(shape, kind, end))))


def terminal(shape: Shape, kind: str, end: Point) -> str:
    """Which of its terminals an end is, as its signs say; nothing where it does not matter."""

    def at_sign(sign: str) -> bool:
        spots = [((b[0] + b[2]) / 2, (b[1] + b[3]) / 2) for b in (text_box(t) for t in shape.signs if t.text == sign)]
        if len(spots) != 1:
            raise Unreadable(f"{shape.label} has {len(spots)} signs {sign}")
        return min(shape.ends, key=lambda other: dist(other, spots[0])) == end

    if kind == "driver":
        plus, minus = at_sign("+"), at_sign("−")
        if plus == minus:
            raise Unreadable(f"{shape.label} has both signs at one end")
        return "+" if plus else "-"
    if kind == "attenuator":
        return "in" if at_sign("in") else "out" if at_sign("out") else "common"
    if kind == "polarised capacitor":
        return "start" if at_sign("+") else "end"
    if shape.dots:
        (dot,) = shape.dots
        (winding,) = [s for s in shape.strokes if len(s.points) > 20]
        if not any(dist(end, corner) < NEAR for corner in (winding.points[0], winding.points[-1])):
            return "tap"
        outer = sorted((winding.points[0], winding.points[-1]), key=lambda point: dist(point, dot))
        return "start" if dist(outer[0], end) < NEAR else "end"
    return ""


def is_label(block: Block) -> bool:
    return block.lines[0].bold and block.lines[0].size == 3.0


def at_left(bar: Box, words: Box) -> bool:
    return 0 < words[0] - bar[2] < 2 and words[1] < bar[1] < bar[3] < words[3]


def words_box(blocks: Sequence[Block]) -> Box:
    """Of a label and what stands under it."""
    boxes = [blocks[0].box]
    for block in blocks[1:]:
        first, label = block.lines[0], blocks[0].lines[0]
        if first.bold or (first.x, first.anchor) != (label.x, label.anchor) or block.box[1] - boxes[-1][3] > 1.5:
            break
        boxes.append(block.box)
    return hull(boxes)


# --- geometry


def text_box(text: Text) -> Box:
    wide = width(text.text, text.size, bold=text.bold)
    left = text.x - {"start": 0.0, "middle": wide / 2, "end": wide}[text.anchor]
    return left, text.y - 0.76 * text.size, left + wide, text.y + 0.24 * text.size


def hull(boxes: Iterable[Box]) -> Box:
    lefts, tops, rights, lows = zip(*boxes, strict=True)
    return min(lefts), min(tops), max(rights), max(lows)


def hull_of(stroke: Stroke) -> Box:
    return hull((x, y, x, y) for x, y in stroke.points)


def within(box: Box, outer: Box) -> bool:
    return outer[0] <= box[0] and outer[1] <= box[1] and box[2] <= outer[2] and box[3] <= outer[3]


def middle(stroke: Stroke) -> Point:
    box = hull_of(stroke)
    return (box[0] + box[2]) / 2, (box[1] + box[3]) / 2


def apart(a: Box, b: Box) -> float:
    return hypot(max(a[0] - b[2], b[0] - a[2], 0), max(a[1] - b[3], b[1] - a[3], 0))


def nearest(shapes: Sequence[Shape], box: Box) -> Shape:
    if not shapes:
        raise Unreadable("a sign or a label without a symbol")
    return min(shapes, key=lambda shape: apart(shape.box, box))


def on(point: Point, wire: Sequence[Point]) -> bool:
    (x1, y1), (x2, y2) = wire
    (x, y) = point
    return min(x1, x2) - NEAR < x < max(x1, x2) + NEAR and min(y1, y2) - NEAR < y < max(y1, y2) + NEAR


def sides(stroke: Stroke) -> list[tuple[Point, Point]]:
    points = (*stroke.points, stroke.points[0]) if stroke.closed else stroke.points
    return list(pairwise(points))


def off(point: Point, side: tuple[Point, Point]) -> float:
    """Distance of a point from a straight line between two."""
    (x1, y1), (x2, y2) = side
    long = (x2 - x1) ** 2 + (y2 - y1) ** 2
    share = 0.0 if long == 0 else ((point[0] - x1) * (x2 - x1) + (point[1] - y1) * (y2 - y1)) / long
    share = min(max(share, 0.0), 1.0)
    return dist(point, (x1 + share * (x2 - x1), y1 + share * (y2 - y1)))


def _touches(point: Point, strokes: Iterable[Stroke]) -> bool:
    return any(
        apart((*point, *point), hull_of(stroke)) < NEAR and any(off(point, side) < NEAR for side in sides(stroke))
        for stroke in strokes
    )


def gathered(strokes: Sequence[Stroke]) -> list[Shape]:
    """Strokes that belong together. Those that cross have no corner near one another, but their boxes meet."""
    groups: list[list[Stroke]] = [[stroke] for stroke in strokes]
    boxes = {id(stroke): hull_of(stroke) for stroke in strokes}
    of = {id(stroke): group for stroke, group in zip(strokes, groups, strict=True)}
    for a, b in combinations(strokes, 2):
        if of[id(a)] is of[id(b)] or apart(boxes[id(a)], boxes[id(b)]) > ONE_SYMBOL:
            continue
        near = any(off(p, side) <= ONE_SYMBOL for s, t in ((a, b), (b, a)) for p in s.points for side in sides(t))
        if near:
            kept, gone = of[id(a)], of[id(b)]
            kept += gone
            for stroke in gone:
                of[id(stroke)] = kept
    return [Shape(group) for group in {id(group): group for group in of.values()}.values()]


def gathered_lines(texts: Sequence[Text]) -> list[Block]:
    """Lines of the same size, edge and weight, each as far under the one before as lines of a block are."""
    blocks: list[Block] = []
    for text in texts:
        above = blocks[-1].lines[-1] if blocks else None
        if (
            above is not None
            and (above.x, above.size, above.anchor, above.bold) == (text.x, text.size, text.anchor, text.bold)
            and abs(text.y - above.y - 1.25 * text.size) < NEAR
        ):
            blocks[-1].lines.append(text)
        else:
            blocks.append(Block([text]))
    return blocks
