"""Pieces made small enough for a page: what is too large is drawn by itself, and named where it was.

In: pieces, and the room on a page in mm. Out: pieces that fit. Refuses to know where on which page they come to stand.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from math import inf

from shuntwise.documents.schematic.elements import Inventory
from shuntwise.documents.schematic.pieces import Piece, Pieces, real
from shuntwise.documents.schematic.place import START, framed
from shuntwise.documents.schematic.sizes import BUS, GAP, Sizes
from shuntwise.documents.schematic.tree import NOWHERE, Tree, end, group, row, tee

DEEP = 24
"""Levels in one piece: a page has no room for more, and nothing here may nest as deeply as a hostile text can."""

SHARES = (1.0, 0.8, 0.65, 0.5, 0.4, 0.3)
"""Of the room on a page so much is tried in turn for a ladder."""

END = 8.0
"""Height of the end of a wire with its name."""

STACKED = 4
"""Drivers in a row that stand under one another in one piece."""

RIGHT = 58.0
"""What stands right of the column of drivers has so much room: words, what lies behind a driver, wires that join
legs.
"""


def fitted(stock: Inventory, pieces: Pieces, width: float, height: float) -> tuple[list[Sizes], list[Sizes]]:
    """Ladders and rows, each with its sizes."""
    named = pieces.named
    while True:
        fitting = _Fitting(stock, named, width, height)
        fitting.all((*pieces.ladders, *pieces.rows))
        if fitting.named == named:
            break
        # Names take room, so all is measured anew. They only become more, so this ends.
        named = frozenset(fitting.named)
    return [Sizes(stock, piece, named) for piece in fitting.ladders], [Sizes(stock, p, named) for p in fitting.rows]


@dataclass
class _Fitting:
    stock: Inventory
    known: frozenset[str]
    width: float
    height: float

    def __post_init__(self) -> None:
        self.named = set(self.known)
        self.ladders: list[Piece] = []
        self.rows: list[Piece] = []
        self.waiting: list[Piece] = []
        self.started = False
        self.tall = self.height

    def measured(self, piece: Piece) -> Sizes:
        return Sizes(self.stock, piece, frozenset(self.named))

    def emit(self, tree: Tree) -> None:
        """Have a tree drawn by itself."""
        self.named |= {real(net) for net in (tree.a, tree.b) if net != NOWHERE}
        self.waiting.append(Piece(tree.a, tree.b, tree))

    def all(self, pieces: Iterable[Piece]) -> None:
        """Each piece, and behind it what had to be cut off it."""
        left = list(pieces)[::-1]
        while left:
            self.waiting = []
            self.piece(left.pop())
            left += self.waiting[::-1]

    def piece(self, piece: Piece) -> None:
        if piece.is_ladder:
            self.ladder(piece)
        else:
            self.row(piece)

    # --- ladders

    def ladder(self, piece: Piece) -> None:
        self.sizes = self.measured(piece)
        if piece.tree is None:
            self.ladders.append(piece)
            return
        tags = [self.sizes.name(net).width for net in (piece.a, piece.b) if real(net) in self.named]
        room = self.width - max(tags, default=0.0) - START - RIGHT
        named = set(self.named)
        for share in SHARES:
            self.named, self.waiting, self.started = set(named), [], False
            self.tall = share * self.height
            tree = self.trimmed(piece.tree, share * room, 0, self.tall)
            parts = [replace(piece, tree=part) for part in self.shared_out(tree)]
            if all(self.fits(part) for part in parts):
                break
        self.ladders += parts

    def fits(self, piece: Piece) -> bool:
        """Is it as small as was asked? With the names that it bears by now, some of which it got while it was cut."""
        frame = framed(self.measured(piece))
        return frame.above + frame.height + frame.below <= self.height and frame.width <= self.width

    def shared_out(self, tree: Tree) -> Iterator[Tree]:
        """The legs of one pair of posts, as many together as fit on a page."""
        if tree.form != "group" or self.sizes.ladder(tree).height <= self.tall or len(tree.split[1]) < 2:
            yield tree
            return
        together: list[Tree] = list(tree.split[0])
        used = 0.0
        for leg in tree.split[1]:
            size = self.sizes.ladder(leg)
            own = size.height + size.above + GAP
            if used and used + own > self.tall:
                yield group(together)
                together, used = [], 0.0
            together.append(leg)
            used += own
        yield group(together)

    def cut(self, tree: Tree) -> Tree:
        """The end of a wire, where the rest is drawn by itself."""
        self.emit(tree)
        return end(tree.a, path=True)

    def trimmed(self, tree: Tree, room: float, level: int, tall: float) -> Tree:
        """What of a tree fits into `room` mm in front of the drivers, and stands `tall` mm; the rest is cut off."""
        if self.started and level > DEEP:
            return self.cut(tree)
        match tree.form:
            case "row":
                return self._row(tree, room, level, tall)
            case "group":
                return self._group(tree, room, level, tall)
            case "tee":
                size = self.sizes.tee(tree)
                if self.started and size.width + GAP > room:
                    return self.cut(tree)
                self.started = True
                rest = self.trimmed(tree.kids[0], room - size.width, level + 1, tall)
                return tee(tree.part, tree.ends, rest, tree.b)
            case "one":
                if self.started and self.sizes.standing(tree).left + GAP > room:
                    return self.cut(tree)
                self.started = True
        return tree

    def _row(self, tree: Tree, room: float, level: int, tall: float) -> Tree:
        heads, body, rest = tree.parted
        kept: list[Tree] = []
        for number, head in enumerate(heads):
            small = self.small(head, lying=True)
            taken = self.sizes.lying(small).width
            if self.started and taken + 4 * GAP > room:
                return row([*kept, self.cut(row([small, *tree.kids[number + 1 :]]))])
            self.started = True
            kept.append(small)
            room -= taken
        if rest is not None and not rest.path:
            rest = self.small(rest, lying=False, room=RIGHT - 4 * BUS, tall=tall / 2)
            tall -= self.sizes.standing(rest).height
        left = tall if rest is None or not rest.path else tall - END
        trimmed = self.trimmed(body, room, level + 1, left)
        if rest is not None and trimmed.form == "end":
            # Without its body the rest would hang in the air.
            if rest.form != "gap":
                self.emit(rest)
            return row([*kept, trimmed])
        kept.append(trimmed)
        if rest is None or not rest.path:
            return row(kept if rest is None else [*kept, rest])
        left = tall - self.sizes.ladder(trimmed).height
        if sum(kid.path for kid in (rest.kids if rest.form == "row" else (rest,))) < STACKED and left > 2 * END:
            rest = self.trimmed(rest, room, level + 1, left)
            if self.sizes.ladder(rest).height <= left:
                return row([*kept, rest])
        return row([*kept, self.cut(rest)])

    def _group(self, tree: Tree, room: float, level: int, tall: float) -> Tree:
        across, legs = tree.split
        kept: list[Tree] = []
        for number, kid in enumerate(across):
            small = self.small(kid, lying=False, tall=tall)
            size = self.sizes.standing(small)
            taken = GAP + size.left + size.right
            if self.started and taken + 4 * GAP > room:
                return group([*kept, self.cut(group([small, *across[number + 1 :], *legs]))])
            self.started = True
            kept.append(small)
            room -= taken
        inner = [self.trimmed(leg, room - GAP * (len(legs) > 1), level + 1, tall) for leg in legs]
        if len(inner) > 1 and level > 0 and self.sizes.ladder(group(inner)).height > tall:
            # Not at the posts: there the legs go to several pages as they are.
            inner = [leg if leg.form == "end" else self.cut(leg) for leg in inner]
        whole = [leg for leg in inner if leg.form != "end"]
        if len(whole) < len(inner) and not (tree.a == self.sizes.piece.a and kept + whole):
            whole.append(end(tree.a, path=True))
        return group([*kept, *whole])

    def small(self, tree: Tree, *, lying: bool, room: float = inf, tall: float = inf) -> Tree:
        """A part of a ladder that holds no driver: a gap, if it is too large to be seen as one thing."""
        if tree.form in ("one", "gap", "end"):
            return tree
        if tree.depth <= DEEP:
            if lying:
                size = self.sizes.lying(tree)
                fits = size.width <= self.width / 2 and size.above + size.below <= self.height / 2.5
            else:
                standing = self.sizes.standing(tree)
                wide = standing.left + standing.right <= min(room, self.width / 2)
                fits = wide and standing.height + 2 * GAP <= min(tall, self.height)
            if fits:
                return tree
        self.emit(tree)
        if tree.loose:
            return end(tree.a)
        return Tree("gap", tree.a, tree.b, count=0)

    # --- rows

    def row(self, piece: Piece) -> None:
        tree = piece.tree
        assert tree is not None
        sizes = self.sizes = self.measured(piece)
        if tree.form not in ("row", "group") or (tree.depth <= DEEP and self.row_fits(sizes)):
            self.rows.append(piece)
            return
        run: list[Tree] = []
        for kid in tree.kids:
            if kid.depth > DEEP - 1 or not self.row_fits(self.measured(Piece(kid.a, kid.b, kid))):
                self.keep(tree, run)
                run = []
                self.keep(tree, [kid])
                continue
            longer = _together(tree, [*run, kid])
            if run and not self.row_fits(self.measured(Piece(longer.a, longer.b, longer))):
                self.keep(tree, run)
                run = []
            run.append(kid)
        self.keep(tree, run)

    def keep(self, tree: Tree, run: list[Tree]) -> None:
        if run:
            self.emit(_together(tree, run))

    def row_fits(self, sizes: Sizes) -> bool:
        frame = framed(sizes)
        names = [sizes.name(net).width for net in (sizes.piece.a, sizes.piece.b) if net != NOWHERE and real(net)]
        fits = frame.above + frame.below <= self.height
        return fits and sizes.lying(sizes.piece.tree).width + sum(names) + 4 * GAP <= self.width  # type: ignore[arg-type]


def _together(tree: Tree, kids: list[Tree]) -> Tree:
    return row(kids) if tree.form == "row" else group(kids)
