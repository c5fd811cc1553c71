"""Series and parallel reduction: the elements between two poles as a tree of rows and groups.

In: leaves, and the two poles. Out: a `Reduced`. What hangs at one net only becomes a twig of it; what is not
series-parallel loses the part whose removal lets most reduce, which becomes a twig too, with a name at its far end.
The rules are those of J. Valdes, R. E. Tarjan, E. L. Lawler, The recognition of series parallel digraphs, SIAM J.
Comput. 11(2), 1982, without directions. Refuses to know what is drawn how.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Literal

from shuntwise.documents.schematic.elements import Element

NOWHERE = ""
"""The far pole of a twig."""

DEEPEST = 120
"""Trees nest deeper only in networks of hundreds of parts, where twigs are drawn apart."""

TRIED = 24
"""So many parts are tried in turn where one must be taken out."""

Form = Literal["one", "row", "group", "tee", "end", "gap"]


@dataclass(frozen=True, eq=False)
class Tree:
    """Elements between the nets `a` and `b`: in a row in the order from `a`, or a group side by side.

    A leaf is `one` element between its terminals `ends` (by number), or the `end` of a twig, a wire that is named if
    its net is. A `tee` is an element of three terminals from `a` into what its only kid is, its third at `b`. A `gap`
    stands for what is drawn elsewhere. `path`: it holds a driver, or the way to one.
    """

    form: Form
    a: str
    b: str
    inner: tuple[Tree, ...] = ()
    element: Element | None = None
    ends: tuple[int, int] = (0, 1)
    turned: bool = False
    path: bool = False
    depth: int = 0
    count: int = 1

    @property
    def loose(self) -> bool:
        """Does it hang at `a` alone?"""
        return self.b == NOWHERE

    @property
    def part(self) -> Element:
        assert self.element is not None
        return self.element

    def other_way(self) -> Tree:
        """The same seen from its other pole. Takes no time: what is inside is turned when it is asked for."""
        return replace(self, a=self.b, b=self.a, ends=self.ends[::-1], turned=not self.turned)

    @cached_property
    def kids(self) -> tuple[Tree, ...]:
        if not self.turned:
            return self.inner
        kids = tuple(kid.other_way() for kid in self.inner)
        return kids[::-1] if self.form == "row" else kids

    @cached_property
    def parted(self) -> tuple[tuple[Tree, ...], Tree, Tree | None]:
        """A row as a ladder has it: what lies along the upper wire, the body with the first driver, and the rest
        under it.
        """
        first = next((number for number, kid in enumerate(self.kids) if kid.path), len(self.kids) - 1)
        under = self.kids[first + 1 :]
        return self.kids[:first], self.kids[first], row(under) if under else None

    @cached_property
    def split(self) -> tuple[list[Tree], list[Tree]]:
        """A group as a ladder has it: what stands across, and the legs."""
        return [kid for kid in self.kids if not kid.path], [kid for kid in self.kids if kid.path]

    def leaves(self) -> Iterator[Tree]:
        """Everything that is no row and no group, in drawing order; a tee comes before what follows it."""
        waiting = [self]
        while waiting:
            tree = waiting.pop()
            if tree.form not in ("row", "group"):
                yield tree
            waiting.extend(reversed(tree.kids))


def one(element: Element, ends: tuple[int, int] = (0, 1)) -> Tree:
    nets = element.nets
    return Tree("one", nets[ends[0]], nets[ends[1]], element=element, ends=ends, path=element.is_driver)


def end(net: str, *, path: bool = False) -> Tree:
    return Tree("end", net, NOWHERE, path=path, count=0)


def row(parts: Iterable[Tree]) -> Tree:
    """Trees in a row, each from where the one before ends."""
    flat = [inner for tree in parts for inner in (tree.kids if tree.form == "row" else (tree,))]
    return flat[0] if len(flat) == 1 else _holding("row", flat[0].a, flat[-1].b, flat)


def group(parts: Iterable[Tree]) -> Tree:
    """Trees side by side from one net; twigs among them end nowhere."""
    flat = [inner for tree in parts for inner in (tree.kids if tree.form == "group" else (tree,))]
    far = next((tree.b for tree in flat if not tree.loose), NOWHERE)
    return flat[0] if len(flat) == 1 else _holding("group", flat[0].a, far, flat)


def tee(element: Element, ends: tuple[int, int], rest: Tree, third: str) -> Tree:
    """`ends` are its terminals at the near net and at `rest`."""
    whole = _holding("tee", element.nets[ends[0]], third, [rest])
    return replace(whole, element=element, ends=ends, count=rest.count + 1)


def _holding(form: Form, a: str, b: str, inner: Sequence[Tree]) -> Tree:
    return Tree(
        form,
        a,
        b,
        tuple(inner),
        path=any(tree.path for tree in inner),
        depth=1 + max(tree.depth for tree in inner),
        count=sum(tree.count for tree in inner),
    )


@dataclass(frozen=True)
class Reduced:
    """`tree` is what lies between the poles, with the twigs that can hang in it; `apart` could not. `named` are nets
    that need a name, since a part was taken out there.
    """

    tree: Tree | None
    apart: tuple[Tree, ...]
    named: frozenset[str]


def reduced(leaves: Sequence[Tree], poles: tuple[str, str]) -> Reduced:
    """The tree from the first pole to the second. A leaf with both ends on one net becomes a twig."""
    named: set[str] = set()
    taken: list[Tree] = []
    core, twigs = _reduce(leaves, poles, named)
    while len(core) > 1:
        out = _most_in_the_way(core, poles)
        taken.append(out)
        core, more = _reduce([tree for tree in core if tree is not out], poles, named)
        for net, hanging in more.items():
            twigs.setdefault(net, []).extend(hanging)
    tree = core[0] if core else None
    if tree is not None and tree.a != poles[0]:
        tree = tree.other_way()
    if tree is not None:
        tree = with_tees(tree)
    apart: list[Tree] = []
    for net, hanging in twigs.items():
        for twig in hanging:
            held = hang(tree, net, twig) if tree is not None else twig if net == poles[0] else None
            if held is None:
                apart.append(twig)
                named.add(net)
            else:
                tree = held
    for out in taken:
        held = None
        for way in (out, out.other_way()):
            held = held or (hang(tree, way.a, row([way, end(way.b)])) if tree is not None else None)
        named |= {out.a, out.b}
        if held is None:
            apart.append(out)
        else:
            tree = held
    return Reduced(tree, tuple(apart), frozenset(named))


def _reduce(
    leaves: Iterable[Tree], poles: tuple[str, str], named: set[str]
) -> tuple[list[Tree], dict[str, list[Tree]]]:
    """What cannot be reduced any more, and the twigs by the net at which they hang. Nets at which something begins
    and ends are added to `named`.
    """
    between: dict[frozenset[str], Tree] = {}
    at: dict[str, dict[frozenset[str], None]] = defaultdict(dict)
    twigs: dict[str, list[Tree]] = defaultdict(list)
    waiting: list[str] = []

    def put(tree: Tree) -> None:
        if tree.a == tree.b:
            twigs[tree.a].append(row([tree, end(tree.a)]))
            named.add(tree.a)
            waiting.append(tree.a)
            return
        ends = frozenset((tree.a, tree.b))
        mate = between.get(ends)
        if mate is not None:
            tree = group([mate, tree if tree.a == mate.a else tree.other_way()])
        between[ends] = tree
        for net in (tree.a, tree.b):
            at[net][ends] = None
            waiting.append(net)

    def take(ends: frozenset[str]) -> Tree:
        for net in ends:
            del at[net][ends]
        return between.pop(ends)

    for leaf in leaves:
        put(leaf)
    waiting.reverse()
    while waiting:
        net = waiting.pop()
        if net in poles or not 1 <= len(at[net]) <= 2:
            continue
        found = [take(ends) for ends in tuple(at[net])]
        into = found[0] if found[0].b == net else found[0].other_way()
        if len(found) == 1:
            twigs[into.a].append(row([into, group(twigs.pop(net))] if twigs.get(net) else [into, end(net)]))
            waiting.append(into.a)
        else:
            put(row([into, found[1] if found[1].a == net else found[1].other_way()]))
    return list(between.values()), {net: hanging for net, hanging in twigs.items() if hanging}


def _most_in_the_way(core: list[Tree], poles: tuple[str, str]) -> Tree:
    """Of what cannot be reduced the tree without which least is left, the poles joined; drivers stay in if they can."""
    removable = [tree for tree in core if not tree.path] or core
    removable.sort(key=lambda tree: tree.count)

    def left(out: Tree) -> int:
        return len(_reduce([tree for tree in core if tree is not out], poles, set())[0]) or len(core)

    return min(removable[:TRIED], key=left)


def hang(tree: Tree, net: str, twig: Tree) -> Tree | None:
    """The tree with a twig beside what follows `net` on a way to a driver; None if there is no such place."""
    if tree.a == net:
        return group([tree, twig])
    if tree.depth > DEEPEST or tree.form not in ("row", "group", "tee"):
        return None
    if tree.form == "tee":
        held = hang(tree.kids[0], net, twig)
        return None if held is None else tee(tree.part, tree.ends, held, tree.b)
    kids = tree.kids
    first = next((number for number, kid in enumerate(kids) if kid.path), len(kids))
    for number, kid in enumerate(kids):
        if tree.form == "row" and kid.a == net and number <= first and not (number == first and kid.form == "group"):
            return row([*kids[:number], group([row(kids[number:]), twig])])
        if kid.path:
            held = hang(kid, net, twig)
            if held is not None:
                rebuilt = [*kids[:number], held, *kids[number + 1 :]]
                return row(rebuilt) if tree.form == "row" else group(rebuilt)
    return None


def with_tees(tree: Tree) -> Tree:
    """Two sections of one element, one in the way to a driver and one from behind it to the far pole, made a tee."""
    if tree.depth > DEEPEST or not tree.path or tree.form not in ("row", "group"):
        return tree
    kids = [with_tees(kid) for kid in tree.kids]
    if tree.form == "group":
        return group(kids)
    first, last = kids[-2], kids[-1]
    if first.form == "one" and first.part.sections and last.form == "group":
        across = [kid for kid in last.kids if kid.form == "one" and kid.element is first.element]
        rest = [kid for kid in last.kids if kid not in across]
        if len(across) == 1 and rest and first.ends[1] == across[0].ends[0] and _may_tee(first):
            kids[-2:] = [tee(first.part, first.ends, group(rest), last.b)]
    return row(kids)


def _may_tee(first: Tree) -> bool:
    """An attenuator goes in at `in`; a tapped coil may be entered at either end."""
    return first.part.terminals[first.ends[0]] in ("in", "start", "end")


def sections_whole(trees: Iterable[Tree]) -> Mapping[str, bool]:
    """By label of the elements of three terminals: are they drawn as one?"""
    whole: dict[str, bool] = {}
    for tree in trees:
        for leaf in tree.leaves():
            if leaf.element is not None and leaf.element.sections:
                whole[leaf.element.label] = leaf.form == "tee"
    return whole
