"""Graph searches on plain edges: what is joined, what is reached and by what way, what lies on a common loop.

In: pairs of names. Out: sets of names or pairs. They are written here, iterative and linear, because every start of
`check` needs them, and loading the graph library takes longer than all checks together; tests hold them against
that library. Refuses to know what a net is.
"""

from __future__ import annotations

from collections import defaultdict, deque
from collections.abc import Container, Hashable, Iterable, Iterator, Mapping, Sequence
from typing import Generic, TypeAlias, TypeVar

T = TypeVar("T")
N = TypeVar("N", bound=Hashable)


class DisjointSets(Generic[N]):
    """Names united step by step (B. A. Galler, M. J. Fischer, An improved equivalence algorithm, CACM 7(5), 1964)."""

    def __init__(self, names: Iterable[N] = ()) -> None:
        self._parent: dict[N, N] = {name: name for name in names}
        self._size: dict[N, int] = {}

    def add(self, name: N) -> None:
        """Make a name known, alone in its set."""
        self._parent.setdefault(name, name)

    def __getitem__(self, name: N) -> N:
        """The name that stands for the set of `name`; an unknown name becomes a set of its own."""
        parent = self._parent
        root = parent.setdefault(name, name)
        while root != parent[root]:
            root = parent[root]
        while parent[name] != root:  # so that the next search is short
            parent[name], name = root, parent[name]
        return root

    def union(self, first: N, second: N) -> None:
        """Unite the sets of two names."""
        a, b = self[first], self[second]
        if a == b:
            return
        size = self._size
        if size.get(a, 1) < size.get(b, 1):
            a, b = b, a
        self._parent[b] = a
        size[a] = size.get(a, 1) + size.pop(b, 1)

    def sets(self) -> list[list[N]]:
        """All sets, in the order in which their first names became known."""
        members: dict[N, list[N]] = defaultdict(list)
        for name in list(self._parent):
            members[self[name]].append(name)
        return list(members.values())


Links: TypeAlias = Mapping[str, Sequence[tuple[str, T]]]
"""Each name with what it is joined to, and by what: an edge, a wire, a block."""


def links(joints: Iterable[tuple[str, str, T]]) -> Links[T]:
    """Both ends of every joint, with the joint itself."""
    near: dict[str, list[tuple[str, T]]] = defaultdict(list)
    for a, b, joint in joints:
        near[a].append((b, joint))
        near[b].append((a, joint))
    return near


def pair_links(pairs: Iterable[tuple[str, str]]) -> Links[None]:
    """Links of which nothing but their ends is known."""
    return links((a, b, None) for a, b in pairs)


def distances(near: Links[T], start: str, barred: Container[str] = (), without: Container[T] = ()) -> dict[str, int]:
    """How many joints every name is from `start`, nearest first; `barred` is not entered, `without` not passed."""
    if start in barred:
        return {}
    found, waiting = {start: 0}, deque([start])
    while waiting:
        here = waiting.popleft()
        for other, joint in near.get(here, ()):
            if other not in found and other not in barred and joint not in without:
                found[other] = found[here] + 1
                waiting.append(other)
    return found


def reached(near: Links[T], start: str, barred: Container[str] = (), without: Container[T] = ()) -> set[str]:
    """All names connected with `start`, itself included."""
    return set(distances(near, start, barred, without))


def shortest_path(
    near: Links[T], start: str, end: str, barred: Container[str] = (), without: Container[T] = ()
) -> tuple[T, ...] | None:
    """The joints of a shortest path, from `start` on; None if there is none.

    Searched from both ends, the one with fewer joints first, so that a return with hundreds of joints is seldom gone
    through.
    """
    if start == end:
        return ()
    came: tuple[dict[str, tuple[str, T] | None], ...] = ({start: None}, {end: None})
    fringes = [[start], [end]]
    while fringes[0] and fringes[1]:
        costs = [sum(len(near.get(name, ())) for name in fringe) for fringe in fringes]
        side = 0 if costs[0] <= costs[1] else 1
        following: list[str] = []
        for here in fringes[side]:
            for other, joint in near.get(here, ()):
                if other in came[side] or other in barred or joint in without:
                    continue
                came[side][other] = here, joint
                if other in came[1 - side]:
                    return (*reversed(_trail(other, came[0])), *_trail(other, came[1]))
                following.append(other)
        fringes[side] = following
    return None


def _trail(name: str, came: Mapping[str, tuple[str, T] | None]) -> list[T]:
    """The joints by which a search came to a name, from there back to where it began."""
    trail: list[T] = []
    while (step := came[name]) is not None:
        name = step[0]
        trail.append(step[1])
    return trail


def loops(pairs: Iterable[tuple[str, str]]) -> Iterator[list[tuple[str, str]]]:
    """The pairs in groups: two are together if some closed loop runs through both.

    These are the biconnected components (R. E. Tarjan, Depth-first search and linear graph algorithms, SIAM J.
    Comput. 1(2), 1972). Pairs of equal names and repetitions must be left out.
    """
    near = {name: [other for other, _ in found] for name, found in pair_links(pairs).items()}
    number: dict[str, int] = {}
    for root in tuple(near):
        if root in number:
            continue
        number[root] = 0
        low = {root: 0}
        trail: list[tuple[str, str]] = []
        # Each entry with the place on the trail of the pair by which it was entered.
        stack: list[tuple[str, str, Iterator[str], int]] = [(root, root, iter(near[root]), 0)]
        while stack:
            parent, here, ahead, begin = stack[-1]
            for name in ahead:
                if name == parent:
                    continue
                if name not in number:
                    number[name] = low[name] = len(number)
                    stack.append((here, name, iter(near[name]), len(trail)))
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
