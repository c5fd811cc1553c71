"""Circuit -> Faults: the steps of this package, in order.

In: a `Circuit`. Out: `Faults`, each of which one rule puts into words.
"""

from __future__ import annotations

from dataclasses import dataclass

from shuntwise.checks.faults.dead import Dead, find_dead
from shuntwise.checks.faults.ends import Ends, find_ends
from shuntwise.checks.faults.names import LookAlike, find_look_alikes
from shuntwise.checks.faults.shorts import Short, find_shorts
from shuntwise.graph.circuit import Circuit, Edge, Wire
from shuntwise.graph.currents import dead_clusters, live_edges


@dataclass(frozen=True)
class Faults:
    """What is wrong with the wiring, each fault in one of these lists. `live` are keys of sound edges.

    `left_bare` is the short where something that stands in no walk may have stood, a wire in its place.
    """

    ends: Ends
    shorts: tuple[Short, ...]
    look_alikes: tuple[LookAlike, ...]
    dead: tuple[Dead, ...]
    live: frozenset[str]

    @property
    def left_bare(self) -> Short | None:
        bare = [short for short in self.shorts if short.blamed is not None and short.blamed.link is None]
        return bare[0] if bare and self.ends.unwired else None

    @property
    def shorted_nets(self) -> frozenset[str]:
        return frozenset(short.net for short in self.shorts)


def account(circuit: Circuit) -> Faults:
    """Find what is wrong, and give each fault to one rule. Time is nearly linear in the size of the circuit."""
    live = live_edges(circuit, circuit.coupled_sections)
    clusters = dead_clusters(circuit, live)
    ends = find_ends(circuit, clusters)
    look_alikes = find_look_alikes(circuit, ends)
    waived = {waiver.subject for waiver in circuit.design.waivers if waiver.finding == "look-alike-names"}
    in_doubt = {net for pair in look_alikes if pair.names[0] not in waived for net in pair.nets}
    explained = circuit.doubtful | ends.nets | in_doubt
    unexplained = [
        cluster
        for cluster in clusters
        if not cluster.nets & explained and not all(_at(edge, ends.spare) for edge in cluster.edges)
    ]
    shorts, others = find_shorts(circuit, misplaced_joints(circuit, ends), unexplained)
    shorted = {feed.name for feed in circuit.design.feeds if circuit.pad(feed.name, "+") == circuit.pad(feed.name, "-")}
    return Faults(ends, shorts, look_alikes, find_dead(circuit, others, shorted | ends.inputs), live)


def _at(edge: Edge, nets: frozenset[str]) -> bool:
    return edge.plus in nets or edge.minus in nets


def misplaced_joints(circuit: Circuit, ends: Ends) -> set[Wire]:
    """Joints at the wired pad of a driver with one lead, if something is shorted there: one is on the wrong pad.

    `woofer+ -- return` typed for `woofer- -- return` shorts whatever lies before the woofer, for the one slip.
    """
    shorted = {edge.plus for edge in circuit.edges.values() if edge.plus == edge.minus}
    found = set[Wire]()
    for end in ends.open:
        if end.kind == "driver-one-lead" and end.attachment is not None:
            other = other_pad(end.attachment.point)
            if circuit.net_of[other] in shorted and len(circuit.joints.get(other, ())) > 1:
                found.update(circuit.joints[other])
    return found


def other_pad(pad: str) -> str:
    return pad[:-1] + ("-" if pad.endswith("+") else "+")
