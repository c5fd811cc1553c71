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
from shuntwise.graph.currents import DeadPiece
from shuntwise.graph.topology import DisjointSets
from shuntwise.model.kinds import KINDS


@dataclass(frozen=True)
class Ends:
    """`unwired` are labels of parts, drivers and networks in no walk. `open` are the ends that are told of.

    `nets` are all nets that this explains, and `inputs` those of which it explains why nothing flows. `spare` are
    nets of terminals of parts that may stay open.
    """

    unwired: tuple[str, ...]
    open: tuple[OpenEnd, ...]
    nets: frozenset[str]
    inputs: frozenset[str]
    spare: frozenset[str] = frozenset()


def find_ends(circuit: Circuit, clusters: Sequence[DeadPiece]) -> Ends:
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
        self.contacts = frozenset().union(*(choice.contacts for choice in self.design.choices))
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
        waits = only.kind == "part" and not self.contacts.isdisjoint(omitted)  # for its position of a choice
        if waits or only.owner in circuit.meant or name.rpartition(".")[0] in circuit.meant:
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

    def open_together(self, cluster: DeadPiece) -> list[OpenEnd]:
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
        """May this terminal stay open: can current flow between others of the part, if any of its winding is wired?"""
        kind = KINDS[self.design.parts[attachment.owner].kind]
        wired = {end for end in kind.terminals if point_of(attachment.owner, end) in self.circuit.joints}
        (winding,) = (winding for winding in kind.windings if attachment.terminal in winding)
        return attachment.terminal not in wired and len(wired) > 1 and len(wired & winding) != 1

    def is_spare(self, end: OpenEnd) -> bool:
        return end.kind == "terminal-unused" and end.attachment is not None and end.attachment.kind == "part"

    def open_links(self) -> list[OpenEnd]:
        """Links of which one end leads to nothing: they are wire, so no net shows it."""
        circuit = self.circuit
        links = [
            Attachment(part.label, terminal, "part")
            for part in circuit.fitted_parts
            if (kind := KINDS[part.kind]).wire
            and any(point_of(part.label, terminal) in circuit.joints for terminal in kind.ends)
            for terminal in kind.ends
        ]
        if not links:
            return []
        pieces = DisjointSets(circuit.net_of)
        for wire in circuit.wires:
            if wire.link is None:
                pieces.union(wire.first, wire.second)
        arriving: dict[str, int] = {}
        attached = [attachment.point for net in circuit.nets.values() for attachment in net.attachments]
        for point in (*attached, *(end.point for end in links)):
            arriving[pieces[point]] = arriving.get(pieces[point], 0) + 1
        found = []
        for end in links:
            net = circuit.net_of[end.point]
            if arriving[pieces[end.point]] == 1 and net not in circuit.doubtful:
                found.append(OpenEnd("half-fitted", f"{net} at {end.point}", end))
        return found


def _inside(name: str, network: str) -> bool:
    return name.startswith(f"{network}.")
