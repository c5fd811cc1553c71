"""The circuit: nets are nodes, parts are edges of a MultiGraph; pads, posts and ends are attached to nets.

Out of `connect`, into the wiring checks and `lower`. Refuses to know values beyond what the design holds.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Container, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, Literal

from shuntwise.graph.topology import Links, links, shortest_path
from shuntwise.model.design import Design, Part
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
    """Something with two ends between two nets. `key` is unique: the label, or label and section."""

    key: str
    owner: str
    kind: OwnerKind
    plus: str
    minus: str


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
        return tuple(edge for edge in self.edges.values() if edge.owner == owner)

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
