"""Coils coupled by mutual inductance, each drawn together with what is in series with it.

In: a network and its terminals. Out: `Windings`: the groups that are coupled among themselves, and the windings
that lead nowhere and so carry no current. Structure only; it refuses to know any value.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass

from shuntwise.network.network import Network


@dataclass(frozen=True)
class Winding:
    """A coupled coil and the elements in series with it: the nodes of its `path`, the (element, sign) between.

    Elements are their numbers in the network; the sign is -1 where an element's minus comes first on the path.
    """

    coil: int
    path: tuple[str, ...]
    items: tuple[tuple[int, int], ...]


@dataclass(frozen=True)
class Windings:
    """`groups` of two or more coupled windings that may carry current.

    `loose` are (winding, held at its start) with one end that leads nowhere, in the order in which they were cut
    off; `floating` are the nodes of windings that nothing holds at either end.
    """

    groups: tuple[tuple[Winding, ...], ...]
    loose: tuple[tuple[Winding, bool], ...]
    floating: tuple[str, ...]


def find_windings(network: Network, terminals: Collection[str]) -> Windings:
    """Group the coupled coils of a network, grow their windings, and cut loose ones off."""
    elements = network.elements
    number = {element.name: i for i, element in enumerate(elements)}
    group_of: dict[int, list[int]] = {}
    for coupling in network.couplings:
        a, b = number[coupling.first], number[coupling.second]
        one, two = group_of.setdefault(a, [a]), group_of.setdefault(b, [b])
        if one is not two:
            one += two
            group_of.update((coil, one) for coil in two)
    at: dict[str, set[int]] = {}
    for i, element in enumerate(elements) if group_of else ():
        at.setdefault(element.plus, set()).add(i)
        at.setdefault(element.minus, set()).add(i)
    taken = set(group_of)
    groups = [
        [_grow(network, coil, at, terminals, taken) for coil in coils]
        for coils in {id(group): group for group in group_of.values()}.values()
    ]
    loose: list[tuple[Winding, bool]] = []
    floating: list[str] = []
    cut = True
    while cut:
        cut = False
        for windings in groups:
            for winding in tuple(windings):
                ends = [winding.path[0], winding.path[-1]]
                free = [end not in terminals and len(at[end]) == 1 for end in ends]
                if not any(free) or ends[0] == ends[1]:
                    continue
                cut = True
                windings.remove(winding)
                for item, _ in winding.items:
                    at[elements[item].plus].discard(item)
                    at[elements[item].minus].discard(item)
                if all(free):
                    floating.extend(winding.path)
                else:
                    loose.append((winding, free[1]))
    kept = tuple(tuple(windings) for windings in groups if len(windings) > 1)
    return Windings(kept, tuple(loose), tuple(floating))


def _grow(
    network: Network, coil: int, at: Mapping[str, set[int]], terminals: Collection[str], taken: set[int]
) -> Winding:
    """A coil with every element that hangs in series at either end; `taken` elements belong to windings already."""
    elements = network.elements
    path, items = [elements[coil].plus, elements[coil].minus], [(coil, 1)]
    for end, insert_at in ((0, 0), (-1, len(elements))):
        while path[0] != path[-1]:
            node = path[end]
            others = at[node] - {items[end][0]}
            if node in terminals or len(others) != 1 or others <= taken:
                break
            (extra,) = others
            element = elements[extra]
            if element.plus == element.minus:
                break
            taken.add(extra)
            beyond = element.plus if element.minus == node else element.minus
            items.insert(insert_at, (extra, 1 if (element.plus == node) == (end == -1) else -1))
            path.insert(insert_at, beyond)
    return Winding(coil, tuple(path), tuple(items))
