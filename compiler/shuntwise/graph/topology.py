"""Three graph searches on plain edges: what is joined, what is reached, what lies on a common loop.

In: pairs of names. Out: sets of names or pairs. They are written here, iterative and linear, because every start of
`check` needs them, and loading the graph library takes longer than all checks together; tests hold them against
that library. Refuses to know what a net is.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator


class DisjointSets:
    """Names united step by step (B. A. Galler, M. J. Fischer, An improved equivalence algorithm, CACM 7(5), 1964)."""

    def __init__(self, names: Iterable[str] = ()) -> None:
        self._parent: dict[str, str] = {name: name for name in names}
        self._size: dict[str, int] = {}

    def add(self, name: str) -> None:
        """Make a name known, alone in its set."""
        self._parent.setdefault(name, name)

    def __getitem__(self, name: str) -> str:
        """The name that stands for the set of `name`; an unknown name becomes a set of its own."""
        parent = self._parent
        root = parent.setdefault(name, name)
        while root != parent[root]:
            root = parent[root]
        while parent[name] != root:  # so that the next search is short
            parent[name], name = root, parent[name]
        return root

    def union(self, first: str, second: str) -> None:
        """Unite the sets of two names."""
        a, b = self[first], self[second]
        if a == b:
            return
        size = self._size
        if size.get(a, 1) < size.get(b, 1):
            a, b = b, a
        self._parent[b] = a
        size[a] = size.get(a, 1) + size.pop(b, 1)

    def sets(self) -> list[list[str]]:
        """All sets, in the order in which their first names became known."""
        members: dict[str, list[str]] = defaultdict(list)
        for name in list(self._parent):
            members[self[name]].append(name)
        return list(members.values())


def neighbours(pairs: Iterable[tuple[str, str]]) -> dict[str, list[str]]:
    """Each name with the names that it is paired with."""
    near: dict[str, list[str]] = defaultdict(list)
    for a, b in pairs:
        near[a].append(b)
        near[b].append(a)
    return near


def reached(pairs: Iterable[tuple[str, str]], start: str) -> set[str]:
    """All names connected with `start`, itself included."""
    near = neighbours(pairs)
    found, waiting = {start}, [start]
    while waiting:
        for name in near.get(waiting.pop(), ()):
            if name not in found:
                found.add(name)
                waiting.append(name)
    return found


def loops(pairs: Iterable[tuple[str, str]]) -> Iterator[list[tuple[str, str]]]:
    """The pairs in groups: two are together if some closed loop runs through both.

    These are the biconnected components (R. E. Tarjan, Depth-first search and linear graph algorithms, SIAM J.
    Comput. 1(2), 1972). Pairs of equal names and repetitions must be left out.
    """
    near = neighbours(pairs)
    number: dict[str, int] = {}
    for root in near:
        if root in number:
            continue
        number[root] = 0
        low = {root: 0}
        trail: list[tuple[str, str]] = []
        # With each name: the one it was found from, the place on the trail of the pair that found it, what is near.
        stack: list[tuple[str, str, int, Iterator[str]]] = [(root, root, 0, iter(near[root]))]
        while stack:
            parent, here, begin, ahead = stack[-1]
            for name in ahead:
                if name == parent:
                    continue
                if name not in number:
                    number[name] = low[name] = len(number)
                    stack.append((here, name, len(trail), iter(near[name])))
                    trail.append((here, name))
                    break
                if number[name] < number[here]:  # a way back, closing a loop
                    low[here] = min(low[here], number[name])
                    trail.append((here, name))
            else:
                stack.pop()
                if not stack:
                    continue
                above = stack[-1][1]
                low[above] = min(low[above], low[here])
                if low[here] >= number[above]:
                    yield trail[begin:]
                    del trail[begin:]
