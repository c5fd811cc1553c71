"""How much room everything on a schematic takes: texts, names at wires, symbols, and trees of them.

In: a tree and the nets that are named. Out: millimetres. Everything is drawn in one of three ways: lying from left to
right, standing from top to bottom, or as a ladder whose drivers stand in one column at the right. Refuses to know a
place on the sheet.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property, lru_cache
from typing import Literal, TypeVar

from shuntwise.documents.lettering import width, wrapped
from shuntwise.documents.schematic.elements import Element, Inventory
from shuntwise.documents.schematic.pieces import Piece, real
from shuntwise.documents.schematic.symbols import Symbol, symbol
from shuntwise.documents.schematic.tree import Tree

LABEL, VALUE, NAME, FRAMED = 3.0, 2.6, 2.4, 2.8
"""Sizes of type: of labels, of what stands under them, of names at wires, and of those at frames."""

LEADING = 1.25
ROOM = 27.0
"""Wider texts are broken."""

AIR = 1.2
"""Between a text and anything else."""

GAP = 2.5
"""Between branches."""

BUS = 3.0
"""Between upright wires that join legs."""

BAR, BARRED = 0.7, 1.8
"""Width of the bar beside a text, and what it takes of the width of both."""

STEM = 2.0
"""From a wire to a name's box, and the box's point."""


@dataclass(frozen=True)
class Line:
    text: str
    size: float
    bold: bool


@dataclass(frozen=True)
class Block:
    """Lines of text, one under the other, with a bar at their left if they are `barred`."""

    lines: tuple[Line, ...]
    barred: bool = False

    @cached_property
    def width(self) -> float:
        bar = BARRED if self.barred else 0.0
        return bar + max((width(line.text, line.size, bold=line.bold) for line in self.lines), default=0.0)

    @cached_property
    def height(self) -> float:
        return sum(line.size * LEADING for line in self.lines)


@lru_cache(maxsize=4096)
def block(text: str, size: float, *, bold: bool = False, room: float = ROOM) -> Block:
    return Block(tuple(Line(line, size, bold) for line in wrapped(text, room, size, bold=bold)))


@dataclass(frozen=True)
class Tag:
    """What is written at a wire: a `name` of the author's, the name of a `net` that is drawn in several places, in a
    box with a point, or a point for a `test`.
    """

    kind: Literal["name", "net", "test"]
    block: Block

    @cached_property
    def width(self) -> float:
        return self.block.width + 2 * AIR

    @cached_property
    def height(self) -> float:
        return self.block.height + (1.0 if self.kind == "net" else 0.5)


@dataclass(frozen=True)
class Lying:
    """From (0, 0) to (width, 0)."""

    width: float
    above: float
    below: float


@dataclass(frozen=True)
class Standing:
    """From (0, 0) to (0, height)."""

    height: float
    left: float
    right: float


@dataclass(frozen=True)
class Ladder:
    """`width` from its first point to the column of drivers, `right` from there on, without the wires that join legs,
    of which there are `buses`; `height` from its upper wire to its lower.
    """

    width: float
    right: float
    height: float
    above: float
    buses: int = 0


Size = TypeVar("Size", Lying, Standing, Ladder)


class Sizes:
    """The sizes in one piece. `named` are the nets that are drawn in several places."""

    def __init__(self, stock: Inventory, piece: Piece, named: frozenset[str]) -> None:
        self.stock = stock
        self.piece = piece
        self.named = named
        self.tags = self._tags()
        self._lying: dict[Tree, Lying] = {}
        self._standing: dict[Tree, Standing] = {}
        self._ladders: dict[Tree, Ladder] = {}

    # --- texts

    def words(self, element: Element) -> Block:
        label, *others = element.lines
        lines = block(label, LABEL, bold=True).lines
        for other in others:
            lines += block(other, VALUE).lines
        return Block(lines, element.marked)

    def name(self, net: str) -> Tag:
        return Tag("net", block(self.stock.names[real(net)], NAME))

    def at_end(self, net: str) -> Tag | None:
        """What stands at the end of a wire that goes no further."""
        net = real(net)
        if net in self.named:
            return self.name(net)
        own = self.own_tags(net)
        return own[0] if own else None

    def own_tags(self, net: str) -> list[Tag]:
        if net in self.stock.tested:
            return [Tag("test", block(self.stock.tested[net], NAME))]
        return [Tag("name", block(self.stock.noted[net], NAME))] if net in self.stock.noted else []

    def _tags(self) -> Mapping[tuple[Tree, int], list[Tag]]:
        """By leaf and its end. Each net has its tags once, where a wire of it first has room: behind a part, if it
        can.
        """
        if self.piece.tree is None:
            return {}
        hosts: dict[str, tuple[Tree, int]] = {}
        covered, borne = _covered(self.piece.tree)
        borne |= {self.piece.a, self.piece.b}
        for end in (1, 0):
            for leaf in self.piece.tree.leaves():
                if leaf.form not in ("one", "tee"):
                    continue
                net = leaf.a if end == 0 else leaf.kids[0].a if leaf.form == "tee" else leaf.b
                if (leaf, end) not in covered and net not in borne:
                    hosts.setdefault(net, (leaf, end))
        tags: dict[tuple[Tree, int], list[Tag]] = defaultdict(list)
        for net, host in hosts.items():
            own = self.own_tags(net)
            if net in self.named:
                own = [self.name(net), *(tag for tag in own if tag.kind == "test")]
            tags[host] += own
        return tags

    def third(self, tree: Tree) -> Tag | None:
        """The name at the third terminal of a part that is drawn from end to end."""
        part = tree.part
        return self.name(part.nets[2]) if tree.form == "one" and len(part.nets) > 2 else None

    @staticmethod
    def symbol(tree: Tree) -> Symbol:
        return symbol(tree.part.symbol, tree.part.coupled)

    # --- lying

    def lying(self, tree: Tree) -> Lying:
        found = self._lying.get(tree)
        if found is None:
            found = self._lying[tree] = self._measure_lying(tree)
        return found

    def _measure_lying(self, tree: Tree) -> Lying:
        match tree.form:
            case "row":
                sizes = [self.lying(kid) for kid in tree.kids]
                return Lying(
                    sum(size.width for size in sizes), max(s.above for s in sizes), max(s.below for s in sizes)
                )
            case "group":
                sizes = [self.lying(kid) for kid in tree.kids]
                height = sum(s.above for s in sizes) + sum(s.below for s in sizes[1:]) + GAP * (len(sizes) - 1)
                return Lying(max(s.width for s in sizes) + 2 * GAP, height, sizes[0].below)
            case "end":
                tag = self.at_end(tree.a)
                half = tag.height / 2 if tag else 1.0
                return Lying(STEM + (STEM + tag.width + AIR if tag else STEM), half, half)
            case "gap":
                tags = [self.name(net) for net in (tree.a, tree.b)]
                half = max(tag.height for tag in tags) / 2
                return Lying(4 * STEM + sum(tag.width for tag in tags) + 2 * GAP, half, half)
        words, drawn = self.words(tree.part), self.symbol(tree)
        third = self.third(tree)
        before, after = (self.along(tree, end) for end in (0, 1))
        above = max([drawn.above + AIR + words.height, *(self.over(tag) for tag in self.both(tree))])
        below = drawn.below + AIR / 2 + (STEM * 2 + third.height if third else 0)
        middle = max(drawn.length, words.width, third.width if third else 0)
        return Lying(before + after + 2 * drawn.lead + middle + AIR, above, below)

    def both(self, tree: Tree) -> list[Tag]:
        return [*self.tags.get((tree, 0), ()), *self.tags.get((tree, 1), ())]

    def along(self, tree: Tree, end: int) -> float:
        """Length of wire at one end of a lying part that its tags take."""
        return sum(tag.width + AIR for tag in self.tags.get((tree, end), ()))

    @staticmethod
    def over(tag: Tag) -> float:
        """How far a tag reaches above a lying wire."""
        return tag.height + (AIR if tag.kind == "name" else AIR / 2 + 2 * STEM)

    # --- standing

    def standing(self, tree: Tree) -> Standing:
        found = self._standing.get(tree)
        if found is None:
            found = self._standing[tree] = self._measure_standing(tree)
        return found

    def _measure_standing(self, tree: Tree) -> Standing:
        match tree.form:
            case "row":
                row = [self.standing(kid) for kid in tree.kids]
                height = sum(size.height for size in row) + self.margin(tree)
                return Standing(height, max(s.left for s in row), max(s.right for s in row))
            case "group":
                sizes = [self.standing(kid) for kid in tree.kids]
                spread = sum(s.left + s.right + GAP for s in sizes) - GAP - sizes[0].left
                return Standing(max(s.height for s in sizes) + 2 * GAP, sizes[0].left, spread)
            case "end":
                tag = self.at_end(tree.a)
                half = tag.width / 2 if tag else 1.0
                return Standing(STEM + (STEM + tag.height + AIR if tag else STEM), half, half)
            case "gap":
                tags = [self.name(net) for net in (tree.a, tree.b)]
                half = max(tag.width for tag in tags) / 2
                return Standing(4 * STEM + sum(tag.height for tag in tags) + 2 * GAP, half, half)
        words, drawn = self.words(tree.part), self.symbol(tree)
        third = self.third(tree)
        top, bottom = (self.down(tree, end) for end in (0, 1))
        right = max([drawn.above + AIR + words.width, *(self.beside(tag) for tag in self.both(tree))])
        left = drawn.below + (STEM * 2 + third.width if third else 0)
        middle = max(drawn.length + 2 * drawn.lead, words.height + AIR, third.height + AIR if third else 0)
        return Standing(top + bottom + middle, max(left, 2.6), right + AIR)

    def margin(self, tree: Tree) -> float:
        """Over a standing row that is a used network's: room for the frame about it and its name."""
        used = {leaf.part.label.partition(".")[0] for leaf in tree.leaves() if leaf.element is not None}
        return FRAMED * LEADING + GAP if len(used) == 1 and used <= self.stock.networks.keys() else 0.0

    def down(self, tree: Tree, end: int) -> float:
        return sum(tag.height + AIR for tag in self.tags.get((tree, end), ()))

    @staticmethod
    def beside(tag: Tag) -> float:
        """How far a tag reaches to the right of a standing wire."""
        return tag.width + AIR + (0 if tag.kind == "name" else 2 * STEM)

    # --- ladders

    def ladder(self, tree: Tree) -> Ladder:
        found = self._ladders.get(tree)
        if found is None:
            found = self._ladders[tree] = self._measure_ladder(tree)
        return found

    def _measure_ladder(self, tree: Tree) -> Ladder:
        match tree.form:
            case "row":
                return self._stacked(tree)
            case "group":
                return self._beside(tree)
            case "tee":
                near, rest = self.tee(tree), self.ladder(tree.kids[0])
                return Ladder(
                    near.width + rest.width,
                    rest.right,
                    max(near.below + GAP, rest.height),
                    max(near.above, rest.above),
                    rest.buses,
                )
            case "end":
                wire = self.lying(tree)
                return Ladder(wire.width + GAP, 0, wire.below + GAP, wire.above)
        size = self.standing(tree)
        return Ladder(size.left + GAP, size.right, size.height + 2 * GAP, 0)

    def tee(self, tree: Tree) -> Lying:
        """A part of three terminals in a ladder, from its near end to where the rest begins."""
        words, drawn = self.words(tree.part), self.symbol(tree)
        tags = self.along(tree, 0) + self.along(tree, 1)
        over = max((self.over(tag) for tag in self.both(tree)), default=0.0)
        if tree.part.symbol == "tapped coil":
            # It stands below the wire: its words are right of the wire from its tap, the tags of both nets beside it.
            across = drawn.above + 2 * GAP + words.width + 2 * AIR
            return Lying(tags + across, max(over, 1.0), 2 * drawn.lead + max(drawn.length, words.height))
        return Lying(
            tags + 2 * drawn.lead + max(drawn.length, words.width),
            max(over, drawn.above + AIR + words.height),
            drawn.below,
        )

    def _stacked(self, tree: Tree) -> Ladder:
        heads, body, rest = tree.parted
        lying = [self.lying(head) for head in heads]
        head = sum(size.width for size in lying)
        first = self.ladder(body)
        height, right, buses = first.height, first.right, first.buses
        beside = first.width
        if rest is not None and rest.path:
            under = self.ladder(rest)
            beside = max(beside, under.width)
            right, buses = max(right, under.right), max(buses, under.buses)
            height += drop(under) + under.height
        elif rest is not None:
            under_it = self.standing(rest)
            beside, right = max(beside, under_it.left + GAP), max(right, under_it.right)
            height += under_it.height
        return Ladder(
            head + beside,
            right,
            max([height, *(size.below + GAP for size in lying)]),
            max([first.above, *(size.above for size in lying)]),
            buses,
        )

    def _beside(self, tree: Tree) -> Ladder:
        across, legs = tree.split
        columns = [self.standing(kid) for kid in across]
        head = sum(GAP + size.left + size.right for size in columns)
        height = max((size.height + 2 * GAP for size in columns), default=0.0)
        if not legs:
            return Ladder(head, 0, height, 0)
        sizes = [self.ladder(leg) for leg in legs]
        if len(sizes) == 1:
            (only,) = sizes
            return Ladder(head + only.width, only.right, max(height, only.height), only.above, only.buses)
        return Ladder(
            head + GAP + max(size.width for size in sizes),
            max(size.right for size in sizes),
            max(height, sum(size.height for size in sizes) + sum(GAP + size.above for size in sizes[1:])),
            sizes[0].above,
            1 + max(size.buses for size in sizes),
        )


def drop(under: Ladder) -> float:
    """From the lower wire of a ladder to the upper one of a ladder under it: none if nothing stands up from that."""
    return 0.0 if under.above == 0 else under.above + GAP


def _covered(tree: Tree) -> tuple[set[tuple[Tree, int]], set[str]]:
    """Ends of leaves at which nothing but the end of a wire is, which has its own name; and the nets from which a wire
    goes that does nothing but bear the name.
    """
    found: set[tuple[Tree, int]] = set()
    nets: set[str] = set()
    waiting = [tree]
    while waiting:
        here = waiting.pop()
        waiting.extend(here.kids)
        if here.form == "group":
            nets |= {kid.a for kid in here.kids if kid.form == "end"}
        if here.form == "row" and here.kids[-1].form == "end":
            net = here.kids[-1].a
            found |= {(leaf, 1) for leaf in here.kids[-2].leaves() if leaf.b == net}
    return found, nets
