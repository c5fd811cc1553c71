"""The circuit in pieces that can be drawn: a ladder for each pair of posts, and rows for what lies elsewhere.

In: an `Inventory`. Out: `Piece`s. What a leg is: the elements that hang together without a post between them. Refuses
to know how large anything is.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from shuntwise.documents.schematic.elements import Element, Inventory, Posts
from shuntwise.documents.schematic.tree import NOWHERE, Reduced, Tree, group, one, reduced, sections_whole
from shuntwise.graph.topology import DisjointSets

AGAIN = "\0"
"""Behind a net's name: the same net once more, where a wire to it is not drawn but named."""


@dataclass(frozen=True)
class Piece:
    """Drawn by itself, from the net `a` to `b`; `posts` if these are a pair. Without a tree it is a lone pair of
    posts.
    """

    a: str
    b: str
    tree: Tree | None
    posts: Posts | None = None

    @property
    def is_ladder(self) -> bool:
        return self.posts is not None or (self.tree is not None and self.tree.path and self.b != NOWHERE)


@dataclass(frozen=True)
class Pieces:
    """`named` are the nets that must be named wherever they are drawn."""

    ladders: tuple[Piece, ...]
    rows: tuple[Piece, ...]
    named: frozenset[str]


def real(net: str) -> str:
    return net.partition(AGAIN)[0]


def taken_apart(stock: Inventory) -> Pieces:
    """All pieces; a part of three terminals whose sections do not come to lie together is drawn from end to end, its
    third terminal named.
    """
    apart: set[str] = set()
    while True:
        made = _Taking(stock, apart).pieces()
        trees = [piece.tree for piece in (*made.ladders, *made.rows) if piece.tree is not None]
        split = {label for label, whole in sections_whole(trees).items() if not whole} - apart
        if not split:
            return made
        apart |= split


class _Taking:
    def __init__(self, stock: Inventory, apart: set[str]) -> None:
        self.stock = stock
        self.poles = {net for pair in stock.posts for net in (pair.plus, pair.minus)}
        self.named: set[str] = set()
        self.leaves: list[Tree] = []
        self.copies = 0
        for element in stock.elements:
            if element.sections and element.label not in apart:
                self.leaves += [one(element, ends) for ends in element.sections]
            else:
                self.leaves.append(one(element))
                if len(element.nets) > 2:
                    self.named.add(element.nets[2])

    def pieces(self) -> Pieces:
        by_pair: dict[str, list[Tree]] = defaultdict(list)
        rows: list[Piece] = []
        for leaves in self.components():
            touched = list(dict.fromkeys(net for leaf in leaves for net in (leaf.a, leaf.b) if net in self.poles))
            pair = next(
                (p for p in self.stock.posts if p.plus != p.minus and {p.plus, p.minus} <= {*touched}),
                None,
            )
            if pair is not None:
                a, b = pair.plus, pair.minus
            else:
                a = touched[0] if touched else min(leaves, key=lambda leaf: not leaf.path).a
                b = touched[1] if len(touched) > 1 else self.far(leaves, a)
            found = self.reduced(leaves, a, b)
            if found.tree is not None:
                if pair is not None:
                    by_pair[pair.name].append(found.tree)
                else:
                    rows.append(self.row(found.tree))
            rows += [self.row(tree) for tree in found.apart]
        ladders = [
            Piece(pair.plus, pair.minus, self.ladder(by_pair[pair.name]), pair)
            for pair in self.stock.posts
            if by_pair[pair.name] or not self.shown(pair, by_pair)
        ]
        ends = [net for piece in (*ladders, *rows) for net in (piece.a, piece.b)]
        self.named |= {net for net in map(real, ends) if net != NOWHERE}
        return Pieces(tuple(ladders), tuple(rows), frozenset(self.named))

    def shown(self, pair: Posts, by_pair: dict[str, list[Tree]]) -> bool:
        """Are both posts on nets of pairs that are drawn before it?"""
        nets = {net for p in self.stock.posts if p is not pair and by_pair[p.name] for net in (p.plus, p.minus)}
        return {pair.plus, pair.minus} <= nets

    def components(self) -> Iterator[list[Tree]]:
        """Leaves that hang together without a post between them, in the order of the design."""
        joined: DisjointSets[str] = DisjointSets()
        for leaf in self.leaves:
            inner = [net for net in (leaf.a, leaf.b) if net not in self.poles]
            joined.add(f"\0{id(leaf)}")
            for net in inner:
                joined.union(net, f"\0{id(leaf)}")
        members: dict[str, list[Tree]] = defaultdict(list)
        for leaf in self.leaves:
            members[joined[f"\0{id(leaf)}"]].append(leaf)
        yield from members.values()

    def far(self, leaves: Sequence[Tree], a: str) -> str:
        """Without a second post: the other pad of a driver whose first is `a`, else nowhere in the circuit."""
        for leaf in leaves:
            if leaf.path and a in (leaf.a, leaf.b) and leaf.a != leaf.b:
                return leaf.b if leaf.a == a else leaf.a
        return AGAIN

    def reduced(self, leaves: Iterable[Tree], a: str, b: str) -> Reduced:
        """Posts other than these two are ends that are named."""
        inside = [self.cut_off(leaf, {a, b}) for leaf in leaves]
        found = reduced(inside, (a, b))
        self.named |= {real(net) for net in found.named}
        return found

    def cut_off(self, leaf: Tree, kept: set[str]) -> Tree:
        def inside(net: str) -> str:
            if net not in self.poles - kept:
                return net
            self.copies += 1
            self.named.add(net)
            return f"{net}{AGAIN}{self.copies}"

        return replace(leaf, a=inside(leaf.a), b=inside(leaf.b))

    def row(self, tree: Tree) -> Piece:
        return Piece(tree.a, tree.b, tree)

    def ladder(self, trees: list[Tree]) -> Tree | None:
        """What lies across the posts first, then the legs in the order of their drivers."""
        order = {element.label: number for number, element in enumerate(self.stock.elements)}

        def first_driver(tree: Tree) -> int:
            return min((order[e.label] for e in _drivers(tree)), default=-1)

        return group(sorted(trees, key=first_driver)) if trees else None


def _drivers(tree: Tree) -> Iterator[Element]:
    return (leaf.element for leaf in tree.leaves() if leaf.element is not None and leaf.element.is_driver)
