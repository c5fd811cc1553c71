"""What hangs behind a link: the ends that its current goes to.

In: a circuit and a link. Out: owners and terminals. It refuses to know how much flows.
"""

from __future__ import annotations

from shuntwise.graph.circuit import Circuit, point_of
from shuntwise.graph.topology import pair_links, reached
from shuntwise.model.design import Part


def beyond(circuit: Circuit, link: Part) -> tuple[tuple[str, str], ...]:
    """What is wired to the net on the far side of a link alone: (owner, terminal) pairs, without inputs.

    Empty where another wire leads around the link, which then shares its current in a way that nobody knows.
    """
    ends = point_of(link.label, "start"), point_of(link.label, "end")
    wires = pair_links((wire.first, wire.second) for wire in circuit.wires if wire.link != link.label)
    for end in ends:
        side = reached(wires, end)
        if not side.isdisjoint(set(ends) - {end}):
            return ()
        here = [a for a in circuit.nets[circuit.net_of[end]].attachments if a.point in side]
        if all(attachment.kind != "feed" for attachment in here):
            return tuple((a.owner, a.terminal) for a in here if a.kind in ("part", "driver"))
    return ()
