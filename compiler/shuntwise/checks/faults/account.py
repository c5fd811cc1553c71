"""Circuit -> Faults: the steps of this package, in order.

In: a `Circuit`. Out: `Faults`, each of which one rule puts into words.
"""

from __future__ import annotations

from dataclasses import dataclass

from shuntwise.checks.faults.dead import Dead, find_dead
from shuntwise.checks.faults.ends import Ends, find_ends
from shuntwise.checks.faults.names import LookAlike, find_look_alikes
from shuntwise.checks.faults.shorts import Short, find_shorts
from shuntwise.graph.circuit import Circuit, Wire
from shuntwise.graph.currents import dead_clusters, live_edges


@dataclass(frozen=True)
class Faults:
    """What is wrong with the wiring, each fault in one of these lists. `live` are keys of sound edges."""

    ends: Ends
    shorts: tuple[Short, ...]
    look_alikes: tuple[LookAlike, ...]
    dead: tuple[Dead, ...]
    live: frozenset[str]

    @property
    def shorted_nets(self) -> frozenset[str]:
        return frozenset(short.net for short in self.shorts)


def account(circuit: Circuit) -> Faults:
    """Find what is wrong, and give each fault to one rule. Time is nearly linear in the size of the circuit."""
    live = live_edges(circuit)
    clusters = dead_clusters(circuit, live)
    ends = find_ends(circuit, clusters)
    look_alikes = find_look_alikes(circuit, ends)
    waived = {waiver.subject for waiver in circuit.design.waivers if waiver.finding == "look-alike-names"}
    in_doubt = {net for pair in look_alikes if pair.names[0] not in waived for net in pair.nets}
    explained = circuit.doubtful | ends.nets | in_doubt
    unexplained = [cluster for cluster in clusters if not cluster.nets & explained]
    shorts, others = find_shorts(circuit, misplaced_returns(circuit, ends), unexplained)
    return Faults(ends, shorts, look_alikes, find_dead(circuit, others, _broken(circuit, ends)), live)


def misplaced_returns(circuit: Circuit, ends: Ends) -> set[Wire]:
    """Return wires on the wrong pad: of a driver with one lead, the joint from its other pad to the return.

    `woofer+ -- return` typed for `woofer- -- return` shorts whatever lies before the woofer, for the one slip.
    """
    feeds = {f"{pair.name}-" for pair in circuit.design.feeds}
    return {
        wire
        for end in ends.open
        if end.kind == "driver-one-lead" and end.attachment is not None
        for other in [end.attachment.owner + ("-" if end.attachment.terminal == "+" else "+")]
        if len(circuit.joints.get(other, ())) > 1
        for wire in circuit.joints[other]
        if feeds & {wire.first, wire.second}
    }


def _broken(circuit: Circuit, ends: Ends) -> set[str]:
    """Inputs that are shorted, or of which a pad is wired to nothing."""
    design = circuit.design
    broken = {pair.name for pair in design.feeds if circuit.pad(pair.name, "+") == circuit.pad(pair.name, "-")}
    for pair in design.feeds:
        if any(circuit.pad(pair.name, sign) in ends.nets for sign in "+-"):
            broken.add(pair.name)
    return broken
