"""Series and parallel reduction of a network, before any value is known.

In: two-terminal elements between nodes, and the nodes that must stay. Out: the branches that remain
between the nodes that stay, each as a tree of series and parallel clusters over its elements, and the
dead ends that were cut off. It refuses to know what an element is worth; a reader who knows two
resistors in series knows all that happens here.

Trees may be thousands deep (a ladder is one tree), so nothing in this module recurses.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import dataclass, field
from typing import NamedTuple

LEAF, SERIES, PARALLEL = range(3)


class Joined(NamedTuple):
    """An element, or two branches joined, from `plus` to `minus`.

    For a LEAF, `first` is the element. Otherwise `first` and `second` are branches, each turned round first
    if its `flip` says so; a series pair runs plus, first, (node), second, minus.
    """

    code: int
    plus: str
    minus: str
    first: int
    first_flip: bool = False
    second: int = -1
    second_flip: bool = False


@dataclass
class Reduced:
    """What is left: `core` maps each staying node to its neighbours and the branch between.

    `dead_ends` are (cut node, neighbour, branch), in the order of cutting: no current flows in the branch, and
    the cut node has the voltage of its neighbour. `loops` are elements with both ends on one node.
    """

    edges: list[Joined] = field(default_factory=list)
    core: dict[str, dict[str, int]] = field(default_factory=dict)
    dead_ends: list[tuple[str, str, int]] = field(default_factory=list)
    loops: list[int] = field(default_factory=list)


@dataclass
class Cluster:
    """Everything joined in one series, or in one parallel, run.

    `items` are (is_cluster, number, sign): an element or a further cluster of the other kind, with sign -1 if its
    own plus points to this cluster's minus. For a series run `path` holds the nodes before, between and after
    the items. `parent` is the enclosing cluster or -1, `sign` this cluster's direction in it. Parents have lower
    numbers than their children.
    """

    kind: int
    plus: str
    minus: str
    parent: int
    sign: int
    items: list[tuple[bool, int, int]] = field(default_factory=list)
    path: list[str] = field(default_factory=list)


def reduce(elements: Iterable[tuple[int, str, str]], staying: Collection[str]) -> Reduced:
    """Fuse parallel branches and nodes of degree two until nothing but `staying` nodes and meshes remain."""
    result = Reduced()
    edges, core = result.edges, result.core
    for node in staying:
        core[node] = {}

    def join(edge: Joined) -> None:
        """Add a branch, in parallel with one that is already there."""
        number = len(edges)
        edges.append(edge)
        old = core[edge.plus].get(edge.minus)
        if old is not None:
            flip = edge.plus != edges[old].plus
            edges.append(Joined(PARALLEL, edges[old].plus, edges[old].minus, old, False, number, flip))
            number += 1
        core[edge.plus][edge.minus] = number
        core[edge.minus][edge.plus] = number

    for element, plus, minus in elements:
        if plus == minus:
            result.loops.append(element)
            continue
        core.setdefault(plus, {})
        core.setdefault(minus, {})
        join(Joined(LEAF, plus, minus, element))

    work = [node for node in core if node not in staying]
    while work:
        node = work.pop()
        around = core.get(node)
        if around is None or len(around) > 2:
            continue
        if len(around) == 1:
            ((other, branch),) = around.items()
            result.dead_ends.append((node, other, branch))
            del core[node], core[other][node]
            if other not in staying:
                work.append(other)
        elif len(around) == 2:
            (start, first), (end, second) = around.items()
            del core[node], core[start][node], core[end][node]
            join(Joined(SERIES, start, end, first, edges[first].plus != start, second, edges[second].plus != node))
            work.extend(n for n in (start, end) if n not in staying)
    return result


def unfold(edges: list[Joined], branch: int, clusters: list[Cluster]) -> int:
    """Append the clusters of one branch to `clusters`; return the number of the outermost.

    A branch that is a single element becomes a parallel cluster of one.
    """
    root = len(clusters)
    top = edges[branch]
    kind = SERIES if top.code == SERIES else PARALLEL
    clusters.append(Cluster(kind, top.plus, top.minus, -1, 1))
    waiting = [(root, branch)]
    while waiting:
        number, start = waiting.pop()
        cluster = clusters[number]
        stack = [(start, False)]
        if cluster.kind == SERIES:
            cluster.path.append(cluster.plus)
        while stack:
            current, flip = stack.pop()
            edge = edges[current]
            if edge.code == cluster.kind:
                halves = [(edge.first, edge.first_flip ^ flip), (edge.second, edge.second_flip ^ flip)]
                stack.extend(halves if flip else reversed(halves))
                continue
            end = edge.plus if flip else edge.minus
            if edge.code == LEAF:
                cluster.items.append((False, edge.first, -1 if flip else 1))
            else:
                # The child keeps its own direction; how it lies in its parent is its sign.
                child = Cluster(edge.code, edge.plus, edge.minus, number, -1 if flip else 1)
                cluster.items.append((True, len(clusters), child.sign))
                waiting.append((len(clusters), current))
                clusters.append(child)
            if cluster.kind == SERIES:
                cluster.path.append(end)
    return root
