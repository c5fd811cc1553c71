"""What the circuit asks of the boards: which leads must be one piece of metal, and what may be otherwise than written.

In: a `Circuit`. Out: `Wanted`. A link is a part with two leads here, whether or not it is fitted, so that what it can
part must be apart without it. Refuses to know boards.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import TypeAlias

from shuntwise.graph.circuit import Circuit, point_of
from shuntwise.graph.topology import DisjointSets
from shuntwise.model.design import Part
from shuntwise.model.kinds import KINDS

Lead: TypeAlias = tuple[str, str]
"""An end by owner and terminal: ("L1", "start"), ("woofer", "+")."""


@dataclass(frozen=True)
class Wanted:
    """Every lead with its net, parts by label with their terminals.

    `free` are leads whose net is not known, since the text has a mistake there: they may lie anywhere. `needed` are the
    parts that must be placed; a link that the text leaves out may be. `turnable` parts have two leads of which it does
    not matter which is which. Parts of the same `sort` are alike in everything but the label. `thick`: the
    diameter in mm of the leads of parts that state it.
    """

    net_of: Mapping[Lead, str]
    free: frozenset[Lead]
    parts: Mapping[str, tuple[str, ...]]
    pads: tuple[Lead, ...]
    needed: frozenset[str]
    turnable: frozenset[str]
    sort: Mapping[str, str]
    thick: Mapping[str, float]

    @cached_property
    def nets(self) -> Mapping[str, tuple[Lead, ...]]:
        """The leads of every net."""
        found: dict[str, list[Lead]] = defaultdict(list)
        for lead, net in self.net_of.items():
            found[net].append(lead)
        return {net: tuple(leads) for net, leads in found.items()}


def wanted(circuit: Circuit) -> Wanted:
    """The leads of all fitted parts and links, of drivers, inputs and posts, by net."""
    design = circuit.design
    contacts = frozenset[str]().union(*(choice.contacts for choice in design.choices))
    parts = {
        part.label: KINDS[part.kind].terminals for part in design.parts.values() if part.fitted or KINDS[part.kind].wire
    }
    pads = tuple(
        (owner, sign) for owner in (*(pair.name for pair in design.terminals), *design.drivers) for sign in "+-"
    )
    leads = [*pads, *((label, terminal) for label, terminals in parts.items() for terminal in terminals)]
    nets = _without_links(circuit)
    doubted = {lead for lead in leads if circuit.net_of[point_of(*lead)] in circuit.doubtful}
    coupled = frozenset(label for coupling in design.couplings for label in (coupling.first, coupling.second))
    return Wanted(
        net_of={lead: nets[point_of(*lead)] for lead in leads if lead not in doubted},
        free=frozenset(doubted),
        parts=parts,
        pads=pads,
        needed=frozenset(label for label in parts if design.parts[label].fitted or label in contacts),
        turnable=frozenset(label for label, ends in parts.items() if len(ends) == 2 and label not in coupled),
        sort={label: _sort(design.parts[label], coupled) for label in parts},
        thick={
            label: 1000 * design.parts[label].quantities["lead"].value
            for label in parts
            if "lead" in design.parts[label].quantities
        },
    )


def _without_links(circuit: Circuit) -> dict[str, str]:
    """Every point with the net that is left of its own where links are taken out.

    What keeps a pad or a name of the author's keeps the net's name, other pieces are told by a point of theirs.
    """
    if all(wire.link is None for wire in circuit.wires):
        return dict(circuit.net_of)
    joined = DisjointSets(circuit.net_of)
    for wire in circuit.wires:
        if wire.link is None:
            joined.union(wire.first, wire.second)
    pieces: dict[str, list[list[str]]] = defaultdict(list)
    for points in joined.sets():
        pieces[circuit.net_of[points[0]]].append(sorted(points))
    found: dict[str, str] = {}
    for name, sides in pieces.items():
        net = circuit.nets[name]
        chief = max(sides, key=lambda side: (_names(side, name, net.nodes), len(side)))
        for side in sides:
            own = [point for point in side if point[-1] in "+-" or point in net.nodes]
            called = name if side is chief else own[0] if own else f"{name} beyond {side[0]}"
            found.update(dict.fromkeys(side, called))
    return found


def _names(points: Collection[str], name: str, nodes: Collection[str]) -> int:
    """How much of a net's name some of its points have."""
    return 3 * (name in points) + 2 * any(point[-1] in "+-" for point in points) + (not set(points).isdisjoint(nodes))


def _sort(part: Part, coupled: Collection[str]) -> str:
    """What a part is, its label left out; a link, and a coil that another one feels, is like no other."""
    if KINDS[part.kind].wire or part.label in coupled:
        return f"{part.kind} {part.label}"
    value = part.value.value if part.value is not None else part.label
    stated = sorted((name, quantity.value) for name, quantity in part.quantities.items())
    return repr((part.kind, value, stated, part.construction, part.notes))
