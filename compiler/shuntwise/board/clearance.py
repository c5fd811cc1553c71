"""How near bare metal of different nets lies on the boards: where a drop of solder or a bent lead may join them.

In: the boards of a circuit, judged. Out: for each pair of nets where they come nearest. Bare are copper, soldered
holes and tags, leads from their holes to the bodies of parts, buses, and jumpers without a sleeve; what leads out is
insulated. Copper without a hole that something lies in belongs to no net.

Which side a wire lies on no text says: a bus is taken to lie on the copper, or where its tags are, a jumper on the
side of the parts. Refuses to know what a bridge would do.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from shuntwise.board.bodies import Body, body_of
from shuntwise.board.islands import Key
from shuntwise.board.judging import Judgement
from shuntwise.board.plane import TOUCH, Box, Shape, apart, box, close_pairs, edges, to_edge
from shuntwise.board.wires import key_of, soldered
from shuntwise.graph.circuit import point_of
from shuntwise.model.boards import Layout, Point, Side

BRIDGED_MM = 2.0
"""What lies no farther apart than this may be joined by a drop of solder or a bent lead: common practice, no source."""

UNSTATED_WIRE_MM = 1.0
"""The diameter of a bare wire that states none: common practice, no source."""

BOTH: frozenset[Side] = frozenset(("parts", "solder"))


@dataclass(frozen=True)
class Near:
    """Two nets of the circuit, how far apart their bare metal is (mm, 0 where it crosses), and where it is nearest."""

    nets: tuple[str, str]
    gap: float
    layout: str
    at: Point
    sides: frozenset[Side]


@dataclass(frozen=True)
class Bare:
    """Metal of a net: all within `radius` of `core`, reached from these sides of the board."""

    net: str
    core: Shape
    radius: float
    sides: frozenset[Side]

    @property
    def box(self) -> Box:
        return box(self.core, self.radius)


def nets_of(judgement: Judgement) -> Mapping[Key, str]:
    """The circuit's net of every hole, tag and pad that is one piece of metal with a lead."""
    state = judgement.comparison.settled
    of_joint = {
        state.joint[state.node[n]]: judgement.circuit.net_of[point_of(*state.case.leads[n])]
        for n in range(state.case.placed)
    }
    return {key: of_joint[at] for key, node in state.where.items() if (at := state.joint[node]) in of_joint}


def near(judgement: Judgement, within: float = BRIDGED_MM) -> tuple[Near, ...]:
    """Pairs of nets that come within a distance (mm), each once and where it is nearest, the nearest first.

    The boards make the circuit (`judgement.sound`).
    """
    found: dict[tuple[str, str], Near] = {}
    nets = nets_of(judgement)
    for layout in judgement.layouts:
        metal = list(bare(judgement, layout, nets))
        for first, second in close_pairs([one.box for one in metal], within):
            one, other = metal[first], metal[second]
            sides = one.sides & other.sides
            if one.net == other.net or not sides:
                continue
            distance, at = apart(*sorted((one.core, other.core), key=len))
            gap = max(0.0, distance - one.radius - other.radius)
            low, high = sorted((one.net, other.net))
            best = found.get((low, high))
            if gap <= within + TOUCH and (best is None or gap < best.gap):
                found[low, high] = Near((low, high), gap, layout.name, at, sides)
    return tuple(sorted(found.values(), key=lambda one: (one.gap, one.nets)))


def bare(judgement: Judgement, layout: Layout, nets: Mapping[Key, str]) -> Iterator[Bare]:
    """All bare metal of a layout that has a net."""
    on_copper = frozenset((layout.board.copper_side,))
    copper, found = judgement.copper.drawn[layout.name]
    of_set = {
        found.sets[piece]: nets[layout.name, hole]
        for hole, piece in found.at_hole.items()
        if (layout.name, hole) in nets
    }
    for number, piece in enumerate(copper.pieces):
        if found.sets[number] in of_set:
            yield Bare(of_set[found.sets[number]], piece.core, piece.radius, on_copper)
    holes = {(layout.name, hole.name): hole for hole in layout.holes}
    for key in judgement.comparison.settled.busy:
        if key in holes and key in nets:
            yield Bare(nets[key], (holes[key].at,), holes[key].diameter / 2, BOTH)
    for place in layout.places:
        part = judgement.circuit.design.parts.get(place.label)
        body = body_of(part, place) if part is not None and part.fitted else None
        for lead in place.leads:
            key = key_of(lead.spot)
            if body is not None and key in holes and key in nets:
                hole = holes[key]
                tags = BOTH if hole.tag else frozenset[Side]()
                thick = 1e3 * part.get("lead") if part is not None else 0.0
                way = (hole.at, edge_of(body, hole.at))
                yield Bare(nets[key], way if way[0] != way[1] else way[:1], thick / 2, tags | {place.side})
    for wire in layout.wires:
        keys = [key for key in soldered(wire, judgement.by_name) if key in holes]
        if wire.kind == "lead out" or wire.sleeved or len(keys) < 2 or keys[0] not in nets:
            continue
        side = on_copper if wire.kind == "bus" and not holes[keys[0]].tag else frozenset[Side](("parts",))
        ends = holes[keys[0]].at, holes[keys[-1]].at
        yield Bare(nets[keys[0]], ends, (wire.diameter or UNSTATED_WIRE_MM) / 2, side)


def edge_of(body: Body, at: Point) -> Point:
    """The point of a body that is nearest to a point, both seen from above; the point itself within the body."""
    distance, nearest = min((to_edge(at, start, end) for start, end in edges(body.core)), key=lambda pair: pair[0])
    inside = len(body.core) > 2 and apart((at,), body.core)[0] == 0
    if inside or distance <= body.radius:
        return at
    share = body.radius / distance
    return nearest[0] + share * (at[0] - nearest[0]), nearest[1] + share * (at[1] - nearest[1])
