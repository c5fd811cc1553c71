"""Where to look for a fault: places on the boards, or without a layout what meets at a net.

In: a circuit, its boards, a `Fault`. Out: sentences without a full stop. Points of boards are as seen from the parts
side, as in a layout. Refuses to know how to be sure.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import cached_property
from math import dist
from typing import TYPE_CHECKING

from shuntwise.bench.faults import Fault
from shuntwise.bench.neighbours import cut_name, key_name, wire_name
from shuntwise.board.judging import Judgement, judged
from shuntwise.diagnostics.wording import listed
from shuntwise.graph.circuit import Circuit, is_group_end, lead_of, point_of
from shuntwise.graph.spoken import spoken_lead, spoken_net, spoken_owner, spoken_point
from shuntwise.model.kinds import KINDS

if TYPE_CHECKING:
    from shuntwise.board.clearance import Near
    from shuntwise.board.forgotten import ForgottenCut, ForgottenWire
    from shuntwise.board.islands import Key
    from shuntwise.board.wanted import Lead
    from shuntwise.model.boards import Hole, Place

MOST_LEADS = 6
"""Of a net with more leads the rest is only counted."""


class Places:
    """Where the leads and nets of one circuit are."""

    def __init__(self, circuit: Circuit, boards: Judgement | None = None) -> None:
        boards = boards or judged(circuit)
        self.circuit = circuit
        self.boards = boards if boards is not None and boards.sound else None

    def of(self, fault: Fault) -> tuple[str, ...]:
        """Where to look; nothing for the instruments."""
        return tuple(dict.fromkeys(self._of(fault)))

    def _of(self, fault: Fault) -> Iterator[str]:
        owners, points = fault.owners, fault.points
        match fault.family:
            case "bridge":
                yield from self.between(*points)
            case "jumper":
                yield from self.wire(owners[0])
            case "cut":
                yield from self.cut(fault)
            case "moved":
                lead = lead_of(points[0])
                yield self.lies(lead)
                yield from self.instead(lead, fault.to)
            case "joint" | "open" if points and not self.is_two_ended(owners[0]):
                yield self.lies(lead_of(points[0]))
            case "reversed" | "outputs":
                yield from (self.lies((name, sign)) for name in owners for sign in "+-")
            case "driver":
                yield f"at the tags of {spoken_owner(owners[0])}, and on its label"
            case _:
                yield from (self.stands(label) for label in owners)

    def is_two_ended(self, owner: str) -> bool:
        part = self.circuit.design.parts.get(owner)
        return part is not None and KINDS[part.kind].two_ended

    # --- leads

    def stands(self, label: str) -> str:
        """A part: where its body is, and where its leads go."""
        terminals = KINDS[self.circuit.design.parts[label].kind].terminals
        leads = [(label, terminal) for terminal in terminals]
        place = self.places.get(label)
        if place is None and KINDS[self.circuit.design.parts[label].kind].wire:
            return listed([f"the {lead[1]} of {label} goes to {self.walked_to(point_of(*lead))}" for lead in leads])
        if place is None:
            return listed([f"the {lead[1]} of {label} goes to {self.net_of(lead)}" for lead in leads])
        layout, one = place
        where = "off the board" if one.at is None else f"at {_at(one.at)} on the {one.side} side"
        board = f" of {layout}" if len(self.layouts) > 1 else ""
        into = [f"its {lead[1]} {self.spot(self.keys[lead])}" for lead in leads if lead in self.keys]
        return f"{label} is {where}{board}, {listed(into)}"

    def walked_to(self, point: str) -> str:
        """What the walks join an end of a link with: the net is one with that of its other end while it is fitted."""
        others = [end for wire in self.circuit.joints.get(point, ()) for end in (wire.first, wire.second)]
        named = [end for end in dict.fromkeys(others) if not is_group_end(end) and lead_of(end)[0] != lead_of(point)[0]]
        return listed([spoken_point(self.circuit.design, end) for end in named]) or self.net_of(lead_of(point))

    def lies(self, lead: Lead) -> str:
        """Where a lead goes, if it is right."""
        key = self.keys.get(lead)
        if key is None:
            return f"{spoken_lead(point_of(*lead))} goes to {self.net_of(lead)}{self.met(lead)}"
        if lead[1] in "+-":
            tag = f"the tag {spoken_point(self.circuit.design, point_of(*lead))}"
            return (
                f"{spoken_lead(point_of(*lead))}: from {tag} to {self.spot(key, '')}"
                if key[0]
                else f"{spoken_lead(point_of(*lead))}: {tag}"
            )
        return f"{spoken_lead(point_of(*lead))} belongs {self.spot(key)}"

    def net_of(self, lead: Lead) -> str:
        return spoken_net(self.circuit, point_of(*lead))

    def met(self, lead: Lead) -> str:
        """With what else a lead meets there."""
        others = self.leads_at(point_of(*lead))
        return f", where it meets {listed(others)}" if others else ""

    def leads_at(self, point: str) -> list[str]:
        """The other leads that meet at the net of a point, in words."""
        ends = self.circuit.nets[self.circuit.net_of[point]].attachments
        words = [spoken_lead(end.point) for end in ends if end.point != point]
        rest = len(words) - MOST_LEADS
        return words if rest <= 1 else [*words[:MOST_LEADS], f"{rest} more"]

    def instead(self, lead: Lead, to: str) -> Iterator[str]:
        """Where a lead may lie that is on the net of another point: what of that net is nearest."""
        key = self.keys.get(lead)
        if key is not None and key in self.holes and self.boards is not None:
            from shuntwise.board.clearance import nets_of

            at, net = self.holes[key].at, self.circuit.net_of[to]
            there = [
                (dist(at, self.holes[other].at), other)
                for other, found in nets_of(self.boards).items()
                if found == net and other in self.holes and other[0] == key[0]
            ]
            if there:
                yield f"the nearest place on {spoken_net(self.circuit, to)} is {self.spot(min(there)[1], '')}"
                return
        yield self.meeting(to)

    def meeting(self, point: str) -> str:
        """What meets at the net of a point."""
        ends = self.circuit.nets[self.circuit.net_of[point]].attachments
        words = (
            self.leads_at(point)
            if all(end.point != point for end in ends)
            else [spoken_lead(point), *self.leads_at(point)]
        )
        return f"at {spoken_net(self.circuit, point)} meet {listed(words)}"

    # --- what is between nets

    def between(self, one: str, other: str) -> Iterator[str]:
        """Where two nets may be bridged."""
        pair = tuple(sorted((self.circuit.net_of[one], self.circuit.net_of[other])))
        for near in self.near:
            if near.nets == pair:
                side = f", on the {next(iter(near.sides))} side" if len(near.sides) == 1 else ""
                board = f" on {near.layout}" if len(self.layouts) > 1 else ""
                apart = f"{near.gap:.1f} mm apart" if near.gap >= 0.05 else "crossing each other"
                yield f"about {_at(near.at)}{board}{side}, where they are {apart}"
        for owner in (*(pads.name for pads in self.circuit.design.terminals), *self.circuit.design.drivers):
            if sorted(self.circuit.pad(owner, sign) for sign in "+-") == list(pair):
                yield f"at the tags of {spoken_owner(owner)}, and where its two wires are soldered"
        if self.boards is None:
            yield from (self.meeting(point) for point in (one, other))

    def wire(self, name: str) -> Iterator[str]:
        """A wire of a board, by its name."""
        wire = self.wires.get(name)
        if wire is not None:
            ends = [wire.joint] if wire.joint is not None else [wire.run.keys[0], wire.run.keys[-1]]
            yield f"at {listed([self.spot(key, '') for key in ends])}"

    def cut(self, fault: Fault) -> Iterator[str]:
        cut = self.cuts.get(fault.owners[0])
        if cut is not None and self.boards is not None:
            side = self.boards.by_name[cut.layout].board.copper_side
            one, other = (spoken_net(self.circuit, point) for point in fault.points)
            yield f"on the {side} side, all along it: {one} is on one side of it, {other} on the other"

    # --- the boards

    @property
    def layouts(self) -> tuple[str, ...]:
        return tuple(self.boards.by_name) if self.boards is not None else ()

    @cached_property
    def keys(self) -> dict[Lead, Key]:
        return dict(self.boards.comparison.keys) if self.boards is not None else {}

    @cached_property
    def places(self) -> dict[str, tuple[str, Place]]:
        layouts = self.boards.layouts if self.boards is not None else ()
        return {place.label: (layout.name, place) for layout in layouts for place in layout.places}

    @cached_property
    def holes(self) -> dict[Key, Hole]:
        layouts = self.boards.layouts if self.boards is not None else ()
        return {(layout.name, hole.name): hole for layout in layouts for hole in layout.holes}

    @cached_property
    def near(self) -> tuple[Near, ...]:
        if self.boards is None:
            return ()
        from shuntwise.board.clearance import near

        return near(self.boards)

    @cached_property
    def wires(self) -> dict[str, ForgottenWire]:
        if self.boards is None:
            return {}
        from shuntwise.board.forgotten import wires

        return {wire_name(self.boards, wire): wire for wire in wires(self.boards)}

    @cached_property
    def cuts(self) -> dict[str, ForgottenCut]:
        if self.boards is None:
            return {}
        from shuntwise.board.forgotten import cuts

        return {cut_name(self.boards, cut): cut for cut in cuts(self.boards)}

    def spot(self, key: Key, word: str = "in ") -> str:
        """A hole, tag or pad with its place: `in north 1 (33:97 mm)`, `on upper 3 (40:90 mm)`."""
        if not key[0]:
            return f"{word and 'on '}{spoken_point(self.circuit.design, key[1])}"
        assert self.boards is not None
        hole = self.holes[key]
        return f"{word and ('on ' if hole.tag else word)}{key_name(self.boards, key)} ({_at(hole.at)})"


def _at(at: tuple[float, float]) -> str:
    from shuntwise.board.writing import point_text

    return point_text(at)
