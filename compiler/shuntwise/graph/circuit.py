"""The circuit: nets are nodes, parts are edges of a MultiGraph; pads, posts and ends are attached to nets.

Out of `connect`, into the wiring checks and `lower`. Refuses to know values beyond what the design holds.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Container, Mapping
from dataclasses import dataclass
from functools import cached_property
from itertools import combinations
from typing import TYPE_CHECKING, Literal

from shuntwise.graph.topology import Links, links, shortest_path
from shuntwise.model.design import Design, Part
from shuntwise.model.kinds import KINDS
from shuntwise.source import Span

if TYPE_CHECKING:
    import networkx as nx

OwnerKind = Literal["part", "driver", "feed", "posts"]


@dataclass(frozen=True)
class Attachment:
    """One end of something on a net: a part's terminal, a driver's pad, an input's or a post's."""

    owner: str
    terminal: str
    kind: OwnerKind

    @property
    def point(self) -> str:
        return point_of(self.owner, self.terminal)


def point_of(owner: str, terminal: str) -> str:
    """How a terminal is called as a point: `woofer+`, `L1.start`, `T1.tap`."""
    return owner + terminal if terminal in "+-" else f"{owner}.{terminal}"


def lead_of(point: str) -> tuple[str, str]:
    """Owner and terminal of a point that is an end of something: what `point_of` made it of."""
    if point[-1] in "+-":
        return point[:-1], point[-1]
    owner, _, terminal = point.rpartition(".")
    return owner, terminal


def is_group_end(point: str) -> bool:
    """Is this point an end of a declared group? No name can have such a form."""
    return point.startswith("(") or point.endswith(")")


@dataclass(frozen=True)
class Net:
    """Points that are one piece of metal. `nodes` are the names that the author gave to it."""

    name: str
    nodes: tuple[str, ...]
    attachments: tuple[Attachment, ...]
    points: frozenset[str]
    spans: tuple[Span, ...]


@dataclass(frozen=True)
class Wire:
    """A bare joint between two points, made by a walk (or by the fitted link `link`)."""

    first: str
    second: str
    span: Span
    link: str | None = None


@dataclass(frozen=True)
class Edge:
    """Something with two ends between two nets. `key` is unique: the label, or label and section.

    `terminals` are its owner's at `plus` and at `minus`, `section` is what the part's kind calls what is between them.
    """

    key: str
    owner: str
    kind: OwnerKind
    plus: str
    minus: str
    terminals: tuple[str, str]
    section: str = ""

    @property
    def points(self) -> tuple[str, str]:
        """Its two ends as points."""
        return point_of(self.owner, self.terminals[0]), point_of(self.owner, self.terminals[1])


@dataclass(frozen=True)
class Circuit:
    """`net_of` maps every point to its net's name. `doubtful` nets touch something that was lost or unknown;
    `meant` are owners that were perhaps meant where a walk names something else.

    `groups` are sets of parts that the author declared to be parallel. `spans` tell where each owner is
    walked through or attached.
    """

    design: Design
    nets: Mapping[str, Net]
    net_of: Mapping[str, str]
    edges: Mapping[str, Edge]
    wires: tuple[Wire, ...]
    groups: tuple[frozenset[str], ...]
    spans: Mapping[str, tuple[Span, ...]]
    leg_of: Mapping[str, frozenset[int]]
    doubtful: frozenset[str]
    meant: frozenset[str] = frozenset()

    @cached_property
    def graph(self) -> nx.MultiGraph:
        """Nets and edges; each edge's data holds its `Edge` under "edge". Asking for it loads the graph library."""
        import networkx as nx

        graph = nx.MultiGraph()
        graph.add_nodes_from(self.nets)
        for edge in self.edges.values():
            graph.add_edge(edge.plus, edge.minus, key=edge.key, edge=edge)
        return graph

    def pad(self, owner: str, sign: str) -> str:
        """The net of an input's, post's or driver's pad."""
        return self.net_of[owner + sign]

    def edges_of(self, owner: str) -> tuple[Edge, ...]:
        return tuple(self._edges_by_owner.get(owner, ()))

    @cached_property
    def _edges_by_owner(self) -> Mapping[str, list[Edge]]:
        by_owner: dict[str, list[Edge]] = defaultdict(list)
        for edge in self.edges.values():
            by_owner[edge.owner].append(edge)
        return by_owner

    @cached_property
    def coupled_sections(self) -> tuple[tuple[str, str], ...]:
        """Pairs of keys of edges that are sections of one part and share a field."""
        sharing = [part.label for part in self.fitted_parts if KINDS[part.kind].couples_inside]
        return tuple((a.key, b.key) for label in sharing for a, b in combinations(self.edges_of(label), 2))

    @cached_property
    def coupled(self) -> tuple[tuple[str, str], ...]:
        """Pairs of keys of edges that feel each other's current: sections of one part, and what the author couples."""
        declared = [(c.first, c.second) for c in self.design.couplings if c.k is not None and c.k.value != 0]
        return (*self.coupled_sections, *(pair for pair in declared if self.edges.keys() >= set(pair)))

    @cached_property
    def joints(self) -> Mapping[str, tuple[Wire, ...]]:
        """The bare joints at each point that has any."""
        at: dict[str, list[Wire]] = defaultdict(list)
        for wire in self.wires:
            at[wire.first].append(wire)
            at[wire.second].append(wire)
        return {point: tuple(wires) for point, wires in at.items()}

    @cached_property
    def _wire_links(self) -> Links[Wire]:
        return links((wire.first, wire.second, wire) for wire in self.wires)

    def wire_path(self, start: str, end: str, without: Container[Wire] = ()) -> tuple[Wire, ...]:
        """A shortest chain of bare joints between two points of one net; empty if there is none."""
        return shortest_path(self._wire_links, start, end, without=without) or ()

    @property
    def fitted_parts(self) -> tuple[Part, ...]:
        return tuple(part for part in self.design.parts.values() if part.fitted)
