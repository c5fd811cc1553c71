"""Things that stand in no walk, and ends at which nothing else arrives.

In: a `Circuit` and its dead clusters. Out: `Ends`. Refuses to know shorts, and which ends belong together:
that is for `pairing`.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from shuntwise.checks.faults.open_end import EndKind, OpenEnd
from shuntwise.checks.faults.pairing import pair
from shuntwise.graph.circuit import Attachment, Circuit, Net, is_group_end, point_of
from shuntwise.graph.currents import Cluster
from shuntwise.graph.topology import DisjointSets
from shuntwise.model.kinds import KINDS, TAPPED_COIL


@dataclass(frozen=True)
class Ends:
    """`unwired` are labels of parts, drivers and networks in no walk. `open` are the ends that are told of.

    `nets` are all nets that this explains, and `inputs` those of which it explains why nothing flows. `spare` are
    nets of terminals of tapped coils that may stay open.
    """

    unwired: tuple[str, ...]
    open: tuple[OpenEnd, ...]
    nets: frozenset[str]
    inputs: frozenset[str]
    spare: frozenset[str] = frozenset()


def find_ends(circuit: Circuit, clusters: Sequence[Cluster]) -> Ends:
    """All that is open, each fault once. Says nothing where a whole file could not be read."""
    if circuit.design.unread:
        return Ends((), (), frozenset(circuit.nets), frozenset())
    finding = _Finding(circuit)
    unwired = finding.unwired()
    nets = finding.nets_of(unwired)
    ends = [end for net in circuit.nets.values() if net.name not in nets for end in finding.at(net)]
    ends += finding.open_links()
    spare = [end for end in ends if finding.is_spare(end)]  # may stay open, and explains nothing but itself
    ends = [end for end in ends if end not in spare]
    explained = nets | finding.left_open | circuit.doubtful
    for cluster in clusters:
        if cluster.nets.isdisjoint(explained | {end.net for end in ends}):
            ends += finding.open_together(cluster)
    told = pair(circuit, clusters, ends, explained, unwired)
    opened = (*told.ends, *spare)
    return Ends(unwired, opened, frozenset(explained | told.nets), told.inputs, frozenset(end.net for end in spare))


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
        """Is anything outside of this network joined to one of its ports?"""
        nets = [self.circuit.nets[self.circuit.net_of[port]] for port in self.design.instances[label]]
        return any(
            net.name in self.circuit.doubtful
            or any(not _inside(point, label) and not is_group_end(point) for point in net.points)
            for net in nets
        )

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

    def open_together(self, cluster: Cluster) -> list[OpenEnd]:
        """The open end of a dead cluster at which several parts arrive: of a declared group, or at a port."""
        for name in sorted(cluster.nets):
            net = self.circuit.nets[name]
            owners = [attachment.owner for attachment in net.attachments]
            ports = sorted(point for point in net.points if point in self.ports)
            if net.nodes or len(set(owners)) < len(owners) or any(a.kind != "part" for a in net.attachments):
                continue
            if ports and all(_inside(point, self.ports[ports[0]]) or is_group_end(point) for point in net.points):
                return [OpenEnd("loose-node", name, net.attachments[0], ports[0])]
            grouped = any(group.issuperset(owners) for group in self.circuit.groups)
            if not ports and grouped and any(is_group_end(point) for point in net.points):
                return [OpenEnd("half-fitted", name, net.attachments[0])]
        return []

    def spare_terminal(self, attachment: Attachment) -> bool:
        """Is this the one terminal of a tapped coil that is not wired?"""
        if self.design.parts[attachment.owner].kind != TAPPED_COIL.word:
            return False
        points = [point_of(attachment.owner, terminal) for terminal in TAPPED_COIL.terminals]
        return sum(point in self.circuit.joints for point in points) == len(points) - 1

    def is_spare(self, end: OpenEnd) -> bool:
        return end.kind == "terminal-unused" and end.attachment is not None and end.attachment.kind == "part"

    def open_links(self) -> list[OpenEnd]:
        """Links of which one end leads to nothing: they are wire, so no net shows it."""
        circuit = self.circuit
        links = [part.label for part in circuit.fitted_parts if part.kind == "link"]
        links = [label for label in links if any(p in circuit.joints for p in _link_ends(label))]
        if not links:
            return []
        pieces = DisjointSets(circuit.net_of)
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
