"""Things that stand in no walk, and ends at which nothing else arrives.

In: a `Circuit` and its dead clusters. Out: `Ends`. Two open ends that one missing wire would have joined
are one fault, told at one of them. Refuses to know shorts.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Literal

import networkx as nx

from shuntwise.graph.circuit import Attachment, Circuit, Net, point_of
from shuntwise.graph.currents import Cluster
from shuntwise.model.kinds import KINDS, TAPPED_COIL
from shuntwise.syntax.words import nearest

EndKind = Literal["loose-node", "half-fitted", "driver-one-lead", "terminal-unused"]
Side = Literal["hot", "return", "free"]

MOST_PAIRS = 10_000
"""Ends are not paired in a text with more possible pairs than this: it is broken beyond such finesse."""


@dataclass(frozen=True)
class OpenEnd:
    """A net at which a single end arrives (or a node at which none does), and the rule that tells of it.

    `name` is the author's name for the net: a node or a port, else "". `omitted` are parts left out that
    would arrive here. `partner` is the end to which the missing wire may have led.
    """

    kind: EndKind
    net: str
    attachment: Attachment | None
    name: str = ""
    omitted: tuple[str, ...] = ()
    partner: OpenEnd | None = None

    @property
    def point(self) -> str:
        return self.name or (self.attachment.point if self.attachment else self.net)


@dataclass(frozen=True)
class Ends:
    """`unwired` are labels of parts, drivers and networks in no walk. `nets` are all nets explained here."""

    unwired: tuple[str, ...]
    open: tuple[OpenEnd, ...]
    nets: frozenset[str]


def find_ends(circuit: Circuit, clusters: Sequence[Cluster]) -> Ends:
    """All that is open, each fault once. Says nothing where a whole file could not be read."""
    if circuit.design.unread:
        return Ends((), (), frozenset(circuit.nets))
    finding = _Finding(circuit)
    unwired = finding.unwired()
    nets = finding.nets_of(unwired)
    ends = [end for net in circuit.nets.values() if net.name not in nets for end in finding.at(net)]
    ends += finding.open_links()
    nets |= {end.net for end in ends} | finding.left_open
    return Ends(unwired, _told_once(circuit, clusters, ends), frozenset(nets))


class _Finding:
    def __init__(self, circuit: Circuit) -> None:
        self.circuit, self.design = circuit, circuit.design
        self.left_open: set[str] = set()
        self.ports = {port: label for label, ports in self.design.instances.items() for port in ports}
        self.omitted_at = {
            point_of(part.label, terminal): part.label
            for part in self.design.parts.values()
            if not part.fitted
            for terminal in KINDS[part.kind].terminals
        }

    # --- what stands in no walk

    def unwired(self) -> tuple[str, ...]:
        design = self.design
        found = [label for label in design.instances if not self.reached(label)]
        # What is inside an unwired network is not news.
        found = [label for label in found if not any(_inside(label, outer) for outer in found)]
        for part in design.parts.values():
            if part.fitted and not any(_inside(part.label, outer) for outer in found):
                points = [point_of(part.label, terminal) for terminal in KINDS[part.kind].terminals]
                found += [part.label] * self.untouched(points)
        for driver in design.drivers:
            found += [driver] * self.untouched([f"{driver}+", f"{driver}-"])
        return tuple(label for label in found if label not in design.doubtful and label not in self.circuit.meant)

    def untouched(self, points: Iterable[str]) -> bool:
        circuit = self.circuit
        return not any(point in circuit.joints or circuit.net_of[point] in circuit.doubtful for point in points)

    def reached(self, label: str) -> bool:
        """Does any joint lead from outside to a port of this network?"""
        for port in self.design.instances[label]:
            if self.circuit.net_of[port] in self.circuit.doubtful:
                return True
            for wire in self.circuit.joints.get(port, ()):
                if not (_inside(wire.first, label) and _inside(wire.second, label)):
                    return True
        return False

    def nets_of(self, unwired: tuple[str, ...]) -> set[str]:
        owners = set(unwired)
        networks = [label for label in unwired if label in self.design.instances]
        return {
            self.circuit.net_of[attachment.point]
            for net in self.circuit.nets.values()
            for attachment in net.attachments
            if attachment.owner in owners or any(_inside(attachment.owner, label) for label in networks)
        }

    # --- open ends

    def at(self, net: Net) -> list[OpenEnd]:
        circuit = self.circuit
        if net.name in circuit.doubtful or len(net.attachments) > 1:
            return []
        if any(node in self.design.testpoints for node in net.nodes):
            self.left_open.add(net.name)
            return []
        ports = sorted(point for point in net.points if point in self.ports)
        omitted = tuple(sorted({self.omitted_at[point] for point in net.points if point in self.omitted_at}))
        name = net.nodes[0] if net.nodes else ports[0] if ports else ""
        if not net.attachments:
            return [] if omitted or not net.nodes else [OpenEnd("loose-node", net.name, None, name)]
        only = net.attachments[0]
        if only.owner in circuit.meant or name.rpartition(".")[0] in circuit.meant:
            self.left_open.add(net.name)
            return []
        if name:
            return [OpenEnd("loose-node", net.name, only, name, omitted)]
        match only.kind:
            case "driver":
                kind: EndKind = "driver-one-lead"
            case "part":
                kind = "half-fitted"
                if self.spare_terminal(only):
                    kind = "terminal-unused"
            case "posts" if omitted:  # a pair that this variant does without
                self.left_open.add(net.name)
                return []
            case _:
                kind = "terminal-unused"
        return [OpenEnd(kind, net.name, only, "", omitted)]

    def spare_terminal(self, attachment: Attachment) -> bool:
        """Is this the one terminal of a tapped coil that is not wired?"""
        if self.design.parts[attachment.owner].kind != TAPPED_COIL.word:
            return False
        points = [point_of(attachment.owner, terminal) for terminal in TAPPED_COIL.terminals]
        return sum(point in self.circuit.joints for point in points) == len(points) - 1

    def open_links(self) -> list[OpenEnd]:
        """Links of which one end leads to nothing: they are wire, so no net shows it."""
        circuit = self.circuit
        links = [part.label for part in circuit.fitted_parts if part.kind == "link"]
        links = [label for label in links if any(p in circuit.joints for p in _link_ends(label))]
        if not links:
            return []
        pieces = nx.utils.UnionFind(circuit.net_of)
        for wire in circuit.wires:
            if wire.link is None:
                pieces.union(wire.first, wire.second)
        arriving: dict[str, int] = {}
        ends = [point for label in links for point in _link_ends(label)]
        attached = [attachment.point for net in circuit.nets.values() for attachment in net.attachments]
        for point in (*attached, *ends):
            arriving[pieces[point]] = arriving.get(pieces[point], 0) + 1
        found = []
        for point in ends:
            net = circuit.net_of[point]
            if arriving[pieces[point]] == 1 and net not in circuit.doubtful:
                label, _, terminal = point.rpartition(".")
                found.append(OpenEnd("half-fitted", f"{net} at {point}", Attachment(label, terminal, "part")))
        return found


def _link_ends(label: str) -> tuple[str, str]:
    return point_of(label, "start"), point_of(label, "end")


def _inside(name: str, network: str) -> bool:
    return name.startswith(f"{network}.")


# --- one missing wire has two ends


def _told_once(circuit: Circuit, clusters: Sequence[Cluster], ends: list[OpenEnd]) -> tuple[OpenEnd, ...]:
    """Of two ends that one missing wire would join, the more telling, with the other as its partner.

    A missing wire parts what hangs on the return from what hangs on the input: it has an end on each side,
    in one leg. An input's own pad is not told of when an end on the other side lacks just such a wire.
    """
    cluster_at = {net: number for number, cluster in enumerate(clusters) for net in cluster.nets}
    returns = {circuit.pad(pair.name, "-") for pair in circuit.design.feeds}

    def side(end: OpenEnd) -> Side | None:
        if end.net not in cluster_at:
            return None
        contacts = clusters[cluster_at[end.net]].contacts
        if not contacts:
            return "free"
        if contacts <= returns:
            return "return"
        return None if contacts & returns else "hot"

    sides = [(end, side(end)) for end in ends if end.attachment is None or end.attachment.kind in ("part", "driver")]
    to_return = [end for end, at in sides if at == "return"]
    others = [end for end, at in sides if at in ("hot", "free")]
    partner_of: dict[str, OpenEnd] = {}
    if len(to_return) * len(others) <= MOST_PAIRS:
        for end in to_return:
            fitting = [
                other
                for other in others
                if other.net not in partner_of
                and cluster_at[other.net] != cluster_at[end.net]
                and _share_leg(circuit, end, other)
            ]
            if fitting:
                best = min(fitting, key=lambda other: (not _alike(end, other), others.index(other)))
                partner_of[end.net], partner_of[best.net] = best, end
    told = []
    for end in ends:
        partner = partner_of.get(end.net)
        if partner is None:
            if not (end.attachment and end.attachment.kind == "feed" and _explained(circuit, end, sides)):
                told.append(end)
        elif _telling(end, circuit) < _telling(partner, circuit):
            told.append(replace(end, partner=partner))
    return tuple(told)


def _share_leg(circuit: Circuit, a: OpenEnd, b: OpenEnd) -> bool:
    first, second = _legs(circuit, a), _legs(circuit, b)
    return not first or not second or not first.isdisjoint(second)


def _legs(circuit: Circuit, end: OpenEnd) -> frozenset[int]:
    return frozenset[int]().union(*(circuit.leg_of.get(name, frozenset()) for name in _names(end)))


def _alike(a: OpenEnd, b: OpenEnd) -> bool:
    return bool(a.name and b.name and nearest(a.name, (b.name,)))


def _telling(end: OpenEnd, circuit: Circuit) -> tuple[int, int, str]:
    """Names that do not meet say most, then parts, then drivers; of two alike the later in the text."""
    rank = ("loose-node", "half-fitted", "driver-one-lead", "terminal-unused").index(end.kind)
    spans = (span for name in _names(end) for span in circuit.spans.get(name, ()))
    return rank, -max((span.start for span in spans), default=0), end.net


def _names(end: OpenEnd) -> tuple[str, ...]:
    """What stands in walks where this end is."""
    owner = end.attachment.owner if end.attachment else ""
    return end.name, owner, f"{owner}+", f"{owner}-"


def _explained(circuit: Circuit, feed_end: OpenEnd, sides: list[tuple[OpenEnd, Side | None]]) -> bool:
    """Does another open end lack the wire to this pad of an input?"""
    assert feed_end.attachment is not None
    wanted = ("hot", "free") if feed_end.attachment.terminal == "-" else ("return", "free")
    component = nx.node_connected_component(circuit.graph, feed_end.net)
    feeds = {circuit.pad(pair.name, sign) for pair in circuit.design.feeds for sign in "+-"}
    for end, at in sides:
        if at == "free" and nx.node_connected_component(circuit.graph, end.net).isdisjoint(feeds):
            return True
        if at in wanted and end.net in component:
            return True
    return False
