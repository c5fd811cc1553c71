"""Are two ways of joining parts electrically the same?

In: nets as numbers, what hangs on them. Out: yes or no. Parts in a row or side by side are taken together, whatever
their order, until nothing is left to take together (series-parallel reduction: R. J. Duffin, Topology of
series-parallel networks, J. Math. Anal. Appl. 10(2), 1965, from memory); what is left are few nets, which are matched
by what is near them (colour refinement) and by trying. Refuses to know boards.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Hashable, Iterable, Mapping
from dataclasses import dataclass
from typing import Any, TypeAlias

Word: TypeAlias = tuple[str, Any]
"""What a branch is: ("part", sort), or ("row", words) or ("beside", words), sorted."""


@dataclass(frozen=True)
class Branch:
    """Something with two ends. `forth` tells it from end to end, `back` the other way; equal where it may be turned."""

    start: int
    end: int
    forth: Word
    back: Word

    def from_(self, net: int) -> Word:
        return self.forth if net == self.start else self.back

    def beyond(self, net: int) -> int:
        return self.end if net == self.start else self.start


@dataclass(frozen=True)
class Joined:
    """Branches between nets. `fixed` nets bear what cannot be exchanged: pads, by their names.

    `stars` are parts of more than two ends: what they are and the net of every end, in the kind's order.
    """

    branches: tuple[Branch, ...]
    fixed: Mapping[int, frozenset[str]]
    stars: tuple[tuple[str, tuple[int, ...]], ...]


def same(one: Joined, other: Joined) -> bool:
    """Does some matching of the nets carry one into the other, rows in any order, like parts exchanged?"""
    a, b = _reduced(one), _reduced(other)
    return _match(a, b, _colours(a), _colours(b))


def _reduced(joined: Joined) -> Joined:
    branches = set(range(len(joined.branches)))
    all_branches = list(joined.branches)
    fixed = {net: set(names) for net, names in joined.fixed.items()}
    held = set(joined.fixed) | {net for _, ends in joined.stars for net in ends}
    changed = True
    while changed:
        changed = False
        between: dict[tuple[int, int], list[int]] = defaultdict(list)
        for n in sorted(branches):
            branch = all_branches[n]
            if branch.start == branch.end:  # shorted: nothing but a mark on its net
                fixed.setdefault(branch.start, set())
                mark = f"loop {min(branch.forth, branch.back)}"
                while mark in fixed[branch.start]:
                    mark += "'"
                fixed[branch.start].add(mark)
                held.add(branch.start)
                branches.discard(n)
                changed = True
            else:
                between[min(branch.start, branch.end), max(branch.start, branch.end)].append(n)
        for (start, end), found in between.items():
            if len(found) > 1:
                forth = sorted(all_branches[n].from_(start) for n in found)
                back = sorted(all_branches[n].from_(end) for n in found)
                branches.difference_update(found)
                branches.add(len(all_branches))
                all_branches.append(Branch(start, end, ("beside", tuple(forth)), ("beside", tuple(back))))
                changed = True
        near: dict[int, list[int]] = defaultdict(list)
        for n in sorted(branches):
            near[all_branches[n].start].append(n)
            near[all_branches[n].end].append(n)
        for net, found in near.items():
            if net in held or len(found) != 2 or not branches.issuperset(found):
                continue
            first, second = (all_branches[n] for n in found)
            start, end = first.beyond(net), second.beyond(net)
            if start == net or end == net:
                continue
            branches.difference_update(found)
            branches.add(len(all_branches))
            forth_row = _row((first.from_(start), second.from_(net)))
            back_row = _row((second.from_(end), first.from_(net)))
            all_branches.append(Branch(start, end, forth_row, back_row))
            changed = True
    return Joined(
        tuple(all_branches[n] for n in sorted(branches)),
        {net: frozenset(names) for net, names in fixed.items()},
        joined.stars,
    )


def _row(words: Iterable[Word]) -> Word:
    """A row of what may be rows themselves, in any order."""
    inner: list[Word] = []
    for word in words:
        inner += word[1] if word[0] == "row" else [word]
    return "row", tuple(sorted(inner))


Colours: TypeAlias = dict[int, Hashable]


def _nets(joined: Joined) -> set[int]:
    nets = set(joined.fixed) | {net for _, ends in joined.stars for net in ends}
    return nets | {net for branch in joined.branches for net in (branch.start, branch.end)}


def _colours(joined: Joined) -> Colours:
    return {net: hash(tuple(sorted(joined.fixed.get(net, ())))) for net in _nets(joined)}


def _refined(joined: Joined, colours: Colours) -> Colours:
    """Each net told by what hangs on it and the nets beyond, until that tells no more of them apart."""
    kinds = len(set(colours.values()))
    while True:
        seen: dict[int, list[tuple[Word, int]]] = defaultdict(list)
        for branch in joined.branches:
            seen[branch.start].append((branch.forth, hash(colours[branch.end])))
            seen[branch.end].append((branch.back, hash(colours[branch.start])))
        for sort, ends in joined.stars:
            around = hash(tuple(colours[end] for end in ends))
            for place, end in enumerate(ends):
                seen[end].append((("part", f"{place} of {sort}"), around))
        colours = {net: hash((colours[net], tuple(sorted(seen[net])))) for net in colours}
        if len(set(colours.values())) == kinds:
            return colours
        kinds = len(set(colours.values()))


def _match(one: Joined, other: Joined, a: Colours, b: Colours) -> bool:
    a, b = _refined(one, a), _refined(other, b)
    if Counter(a.values()) != Counter(b.values()):
        return False
    groups: dict[Hashable, list[int]] = defaultdict(list)
    for net, colour in a.items():
        groups[colour].append(net)
    several = [nets for nets in groups.values() if len(nets) > 1]
    if not several:
        to = {colour: net for net, colour in b.items()}
        return _told(one, {net: to[colour] for net, colour in a.items()}) == _told(other, {net: net for net in b})
    net = min(sorted(several, key=len)[0])
    return any(
        _match(one, other, {**a, net: "chosen"}, {**b, candidate: "chosen"})
        for candidate in sorted(n for n, colour in b.items() if colour == a[net])
    )


def _told(joined: Joined, to: Mapping[int, int]) -> tuple[object, ...]:
    branches = Counter(
        min((to[b.start], to[b.end], b.forth), (to[b.end], to[b.start], b.back)) for b in joined.branches
    )
    stars = Counter((sort, tuple(to[end] for end in ends)) for sort, ends in joined.stars)
    return branches, stars, {to[net]: names for net, names in joined.fixed.items()}
