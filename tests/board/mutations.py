"""Mistakes of a builder, and changes that are none, on the values of layouts.

Each is a `Change`: a function on all layouts of a design, so that several can be made one after another, and the
number of a builder's steps that undo it. Each family is made whole, or as a sample by a seed where it is large.
"""

from __future__ import annotations

import math
import random
from collections import defaultdict
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import combinations
from typing import TypeVar

from shapely import geometry

from board.outside import Key, island_of, key_of, likeness, metal
from shuntwise.graph.circuit import Circuit
from shuntwise.model.boards import Cut, Hole, Layout, Lead, Place, Point, Spot, Wire
from shuntwise.model.kinds import KINDS
from shuntwise.source import Span

Layouts = tuple[Layout, ...]

FAMILIES = (
    "lead in another spot",
    "two leads exchanged",
    "driver or input reversed",
    "part turned",
    "wire forgotten",
    "wire's end misplaced",
    "lead out at another spot",
    "cut forgotten",
    "cut shifted",
    "cut too short",
    "part not placed",
    "hole off the copper",
)


@dataclass(frozen=True)
class Change:
    """`make` raises Gone where what it changes is not there any more. `steps`: how many undo it."""

    family: str
    words: str
    steps: int
    make: Callable[[Layouts], Layouts]


class Gone(Exception):
    """What a change is made on has been taken away by another."""


@dataclass(frozen=True)
class LeadAt:
    """The lead number `lead` of the part `label` in the layout number `layout`."""

    layout: int
    label: str
    lead: int


@dataclass(frozen=True)
class WireAt:
    """An end, `first` or `second`, of the wire written at `span` in the layout number `layout`."""

    layout: int
    span: Span
    end: str


EndAt = LeadAt | WireAt


def mistakes(circuit: Circuit, layouts: Layouts, seed: int, most: int = 10_000) -> Iterator[Change]:
    """Every single mistake, family by family; of a family that has more than `most` a sample of so many."""
    families: dict[str, list[Change]] = defaultdict(list)
    for made in (
        _leads(circuit, layouts),
        _exchanges(circuit, layouts),
        _reversed(layouts),
        _turned(circuit, layouts),
        _wires(layouts),
        _cuts(layouts),
        _absent(layouts),
        _off_copper(layouts),
    ):
        for change in made:
            families[change.family].append(change)
    rng = random.Random(seed)
    for family in FAMILIES:
        changes = families[family]
        yield from rng.sample(changes, most) if len(changes) > most else changes


# --- reading and writing ends


def place_at(layouts: Layouts, layout: int, label: str) -> Place:
    for place in layouts[layout].places:
        if place.label == label:
            return place
    raise Gone


def wire_at(layouts: Layouts, layout: int, span: Span) -> Wire:
    for wire in layouts[layout].wires:
        if wire.span == span:
            return wire
    raise Gone


def spot_at(layouts: Layouts, at: EndAt) -> Spot:
    if isinstance(at, LeadAt):
        return place_at(layouts, at.layout, at.label).leads[at.lead].spot
    wire = wire_at(layouts, at.layout, at.span)
    return wire.first if at.end == "first" else wire.second


def with_spot(layouts: Layouts, at: EndAt, spot: Spot) -> Layouts:
    layout = layouts[at.layout]
    if isinstance(at, LeadAt):
        place = place_at(layouts, at.layout, at.label)
        lead = place.leads[at.lead]
        leads = other_than(place.leads, lead, replace(lead, spot=spot))
        changed = replace(layout, places=other_than(layout.places, place, replace(place, leads=leads)))
    else:
        wire = wire_at(layouts, at.layout, at.span)
        new = replace(wire, first=spot) if at.end == "first" else replace(wire, second=spot)
        changed = replace(layout, wires=other_than(layout.wires, wire, new))
    return with_layout(layouts, at.layout, changed)


def exchanged(layouts: Layouts, one: EndAt, other: EndAt) -> Layouts:
    first, second = spot_at(layouts, one), spot_at(layouts, other)
    return with_spot(with_spot(layouts, one, second), other, first)


def with_layout(layouts: Layouts, at: int, layout: Layout) -> Layouts:
    return (*layouts[:at], layout, *layouts[at + 1 :])


Item = TypeVar("Item", Cut, Hole, Lead, Place, Wire)


def other_than(items: tuple[Item, ...], old: Item, new: Item | None) -> tuple[Item, ...]:
    """The items with one of them changed, or without it. Raises Gone."""
    at = next((at for at, item in enumerate(items) if item is old or item == old), None)
    if at is None:
        raise Gone
    return (*items[:at], *((new,) if new is not None else ()), *items[at + 1 :])


def leads_of(circuit: Circuit, layouts: Layouts) -> list[LeadAt]:
    """The leads of all parts that are fitted."""
    return [
        LeadAt(at, place.label, lead)
        for at, layout in enumerate(layouts)
        for place in layout.places
        if circuit.design.parts[place.label].fitted
        for lead in range(len(place.leads))
    ]


def lead_name(layouts: Layouts, at: EndAt) -> str:
    if isinstance(at, LeadAt):
        place = place_at(layouts, at.layout, at.label)
        return f"{place.label}.{place.leads[at.lead].terminal or at.lead + 1}"
    wire = wire_at(layouts, at.layout, at.span)
    return f"the {wire.kind} {wire.first.hole} to {wire.second.hole}"


def spots(layouts: Layouts) -> list[Key]:
    return [(layout.name, hole.name) for layout in layouts for hole in layout.holes]


def _spot(key: Key, like: Spot) -> Spot:
    return Spot(key[0] or None, key[1], like.span)


# --- mistakes


def _leads(circuit: Circuit, layouts: Layouts) -> Iterator[Change]:
    for at in leads_of(circuit, layouts):
        yield from _moved("lead in another spot", layouts, at)


def _moved(family: str, layouts: Layouts, at: EndAt) -> Iterator[Change]:
    now = spot_at(layouts, at)
    for key in spots(layouts):
        if key != key_of(now):
            words = f"{lead_name(layouts, at)} in {key[1]}, not in {now.hole}"
            yield Change(family, words, 1, lambda ls, key=key: with_spot(ls, at, _spot(key, now)))


def _exchanges(circuit: Circuit, layouts: Layouts) -> Iterator[Change]:
    for one, other in combinations(leads_of(circuit, layouts), 2):
        if (one.layout, one.label) != (other.layout, other.label):
            words = f"{lead_name(layouts, one)} and {lead_name(layouts, other)}"
            yield Change("two leads exchanged", words, 1, lambda ls, one=one, other=other: exchanged(ls, one, other))


def _reversed(layouts: Layouts) -> Iterator[Change]:
    outs = {
        key_of(wire.second)[1]: WireAt(at, wire.span, "first")
        for at, layout in enumerate(layouts)
        for wire in layout.wires
        if wire.kind == "lead out"
    }
    for pad, one in outs.items():
        other = outs.get(pad[:-1] + "-")
        if pad.endswith("+") and other is not None:
            yield Change(
                "driver or input reversed", pad[:-1], 1, lambda ls, one=one, other=other: exchanged(ls, one, other)
            )


def _turned(circuit: Circuit, layouts: Layouts) -> Iterator[Change]:
    for one, other in combinations(leads_of(circuit, layouts), 2):
        if (one.layout, one.label) == (other.layout, other.label):
            words = f"{lead_name(layouts, one)} and {lead_name(layouts, other)}"
            yield Change("part turned", words, 1, lambda ls, one=one, other=other: exchanged(ls, one, other))


def _wires(layouts: Layouts) -> Iterator[Change]:
    for at, layout in enumerate(layouts):
        for wire in layout.wires:
            words = f"the {wire.kind} {wire.first.hole} to {wire.second.hole}"
            yield Change("wire forgotten", words, 1, lambda ls, at=at, wire=wire: _without_wire(ls, at, wire))
            if wire.kind == "jumper":
                for end in ("first", "second"):
                    yield from _moved("wire's end misplaced", layouts, WireAt(at, wire.span, end))
            if wire.kind == "bus":
                yield from _bus_ends(layouts, at, wire)
            if wire.kind == "lead out":
                yield from _moved("lead out at another spot", layouts, WireAt(at, wire.span, "first"))


def _bus_ends(layouts: Layouts, at: int, wire: Wire) -> Iterator[Change]:
    """The wire along a row ends one hole or two before or behind where it should."""
    holes = layouts[at].board.holes
    row = [hole.name for hole in holes if hole.row == layouts[at].board.hole[wire.first.hole].row]
    for end, other in (("first", wire.second), ("second", wire.first)):
        where = WireAt(at, wire.span, end)
        now = spot_at(layouts, where)
        for far in (-2, -1, 1, 2):
            number = row.index(now.hole) + far
            if 0 <= number < len(row) and row[number] != other.hole:
                spot = replace(now, hole=row[number])
                words = f"the bus {wire.first.hole} to {wire.second.hole} with its {end} end at {spot.hole}"
                yield Change(
                    "wire's end misplaced", words, 1, lambda ls, where=where, spot=spot: with_spot(ls, where, spot)
                )


def _without_wire(layouts: Layouts, at: int, wire: Wire) -> Layouts:
    wires = other_than(layouts[at].wires, wire_at(layouts, at, wire.span), None)
    return with_layout(layouts, at, replace(layouts[at], wires=wires))


def _cuts(layouts: Layouts) -> Iterator[Change]:
    """A cut at the wrong place is undone by bridging it and cutting anew."""
    for at, layout in enumerate(layouts):
        for cut in layout.cuts:
            words = f"the cut from {cut.start} to {cut.end}"
            back = replace(cut, start=cut.end, end=cut.start)
            made = [("cut forgotten", words, 1, None)]
            made += [
                ("cut shifted", f"{words} by {far} mm", 2, _shifted(cut, far)) for far in (-35, -20, -8, 8, 20, 35)
            ]
            made += [
                ("cut too short", f"{words} from {each.start} to {share:g}", 1, _shorter(each, share))
                for share in (0.3, 0.6, 0.85)
                for each in (cut, back)
            ]
            for family, said, steps, new in made:
                yield Change(family, said, steps, lambda ls, at=at, cut=cut, new=new: _other_cut(ls, at, cut, new))


def _other_cut(layouts: Layouts, at: int, cut: Cut, new: Cut | None) -> Layouts:
    return with_layout(layouts, at, replace(layouts[at], cuts=other_than(layouts[at].cuts, cut, new)))


def _shifted(cut: Cut, far: int) -> Cut:
    (x, y), (to_x, to_y) = cut.start, cut.end
    length = math.hypot(to_x - x, to_y - y)
    across, up = -(to_y - y) / length * far, (to_x - x) / length * far
    return replace(cut, start=(x + across, y + up), end=(to_x + across, to_y + up))


def _shorter(cut: Cut, share: float) -> Cut:
    (x, y), (to_x, to_y) = cut.start, cut.end
    return replace(cut, end=(x + share * (to_x - x), y + share * (to_y - y)))


def _absent(layouts: Layouts) -> Iterator[Change]:
    for at, layout in enumerate(layouts):
        for place in layout.places:
            words = f"{place.label} on {layout.name}"
            yield Change("part not placed", words, 1, lambda ls, at=at, label=place.label: _unplaced(ls, at, label))


def _unplaced(layouts: Layouts, at: int, label: str) -> Layouts:
    places = other_than(layouts[at].places, place_at(layouts, at, label), None)
    return with_layout(layouts, at, replace(layouts[at], places=places))


def _off_copper(layouts: Layouts) -> Iterator[Change]:
    for at, layout in enumerate(layouts):
        for hole in layout.drilled:
            point = _bare_point(layout, hole)
            if point is not None:
                moved = replace(hole, at=point, area=None)
                yield Change(
                    "hole off the copper",
                    hole.name,
                    1,
                    lambda ls, at=at, hole=hole, moved=moved: _drilled(ls, at, hole, moved),
                )


def _drilled(layouts: Layouts, at: int, hole: Hole, moved: Hole) -> Layouts:
    drilled = other_than(layouts[at].drilled, hole, moved)
    return with_layout(layouts, at, replace(layouts[at], drilled=drilled))


def _bare_point(layout: Layout, hole: Hole) -> Point | None:
    """The nearest point of a lattice at which the hole has no copper."""
    copper = metal(layout.board, layout.cuts, [other for other in layout.holes if other != hole])
    far = [(across, up) for across in range(-60, 61, 4) for up in range(-60, 61, 4)]
    for across, up in sorted(far, key=lambda by: math.hypot(*by)):
        point = hole.at[0] + across, hole.at[1] + up
        on_board = 3 < point[0] < layout.board.width - 3 and 3 < point[1] < layout.board.height - 3
        if on_board and copper.distance(geometry.Point(point)) > hole.diameter / 2 + 1.5:
            return point
    return None


# --- changes that are no mistakes


def rerouted(circuit: Circuit, layouts: Layouts, rng: random.Random) -> Iterator[Change]:
    """Endlessly: one thing or several that a builder may do otherwise, by chance."""
    ways = (_same_island, _alike, _in_a_run, _turned_harmlessly)
    while True:
        made: Layouts = layouts
        told = []
        for _ in range(rng.choice((1, 1, 2, 4))):
            way = rng.choice(ways)
            found = way(circuit, made, rng)
            if found is not None:
                made, words = found
                told.append(words)
        if told:
            yield Change("re-routed", ", ".join(told), 0, lambda _, made=made: made)


Rerouted = tuple[Layouts, str] | None


def _same_island(circuit: Circuit, layouts: Layouts, rng: random.Random) -> Rerouted:
    """A lead or a wire's end in another hole of the same copper."""
    ends: list[EndAt] = [*leads_of(circuit, layouts)]
    for at, layout in enumerate(layouts):
        for wire in layout.wires:
            if wire.kind != "bus":
                ends += [WireAt(at, wire.span, end) for end in ("first", "second")[: 1 + (wire.kind == "jumper")]]
    at = rng.choice(ends)
    now = spot_at(layouts, at)
    if now.layout is None:
        return None
    islands = {layout.name: island_of(layout) for layout in layouts}
    here = islands[now.layout][now.hole]
    if here is None:
        return None
    others = [hole for hole, island in islands[now.layout].items() if island == here and hole != now.hole]
    if not others:
        return None
    hole = rng.choice(others)
    return with_spot(layouts, at, replace(now, hole=hole)), f"{lead_name(layouts, at)} in {hole}"


def _placed(layouts: Layouts) -> dict[str, tuple[int, Place]]:
    return {place.label: (at, place) for at, layout in enumerate(layouts) for place in layout.places}


def _spots_exchanged(layouts: Layouts, one: str, other: str) -> Layouts:
    """Each of two parts lies where the other lay; leads by terminal if both have their terminals told."""
    placed = _placed(layouts)
    (at, first), (at_other, second) = placed[one], placed[other]
    number_of = {lead.terminal: number for number, lead in enumerate(second.leads) if lead.terminal}
    for number, lead in enumerate(first.leads):
        beside = LeadAt(at_other, other, number_of.get(lead.terminal or "", number))
        layouts = exchanged(layouts, LeadAt(at, one, number), beside)
    return layouts


def _coupled(circuit: Circuit) -> set[str]:
    return {label for coupling in circuit.design.couplings for label in (coupling.first, coupling.second)}


def _alike(circuit: Circuit, layouts: Layouts, rng: random.Random) -> Rerouted:
    parts, placed = circuit.design.parts, _placed(layouts)
    free = [
        p
        for p in parts
        if p in placed and parts[p].fitted and p not in _coupled(circuit) and not KINDS[parts[p].kind].wire
    ]
    pairs = [(a, b) for a, b in combinations(free, 2) if likeness(parts[a]) == likeness(parts[b])]
    if not pairs:
        return None
    one, other = rng.choice(pairs)
    return _spots_exchanged(layouts, one, other), f"{one} and {other} exchanged"


def runs(circuit: Circuit) -> list[tuple[str, str]]:
    """Pairs of two-ended parts that follow each other with nothing else between."""
    found = []
    for net in circuit.nets.values():
        here = net.attachments
        parts = [circuit.design.parts.get(a.owner) for a in here]
        if len(here) == 2 and all(p and p.fitted and len(KINDS[p.kind].terminals) == 2 for p in parts):
            one, other = (a.owner for a in here)
            if one != other and not any(p and KINDS[p.kind].wire for p in parts):
                found.append((one, other))
    return found


def _in_a_run(circuit: Circuit, layouts: Layouts, rng: random.Random) -> Rerouted:
    placed = _placed(layouts)
    pairs = [p for p in runs(circuit) if set(p) <= placed.keys() and not set(p) & _coupled(circuit)]
    if not pairs:
        return None
    one, other = rng.choice(pairs)
    return _spots_exchanged(layouts, one, other), f"{one} and {other} in the other order"


def _turned_harmlessly(circuit: Circuit, layouts: Layouts, rng: random.Random) -> Rerouted:
    parts = circuit.design.parts
    free = [
        (at, label)
        for label, (at, _) in _placed(layouts).items()
        if parts[label].fitted and len(KINDS[parts[label].kind].terminals) == 2 and label not in _coupled(circuit)
    ]
    at, label = rng.choice(free)
    return exchanged(layouts, LeadAt(at, label, 0), LeadAt(at, label, 1)), f"{label} turned"


def doubles(changes: Sequence[Change], rng: random.Random) -> Iterator[Change]:
    """Endlessly: two mistakes at once, by chance."""
    while True:
        one, other = rng.sample(changes, 2)

        yield Change(
            "two at once",
            f"{one.words}; {other.words}",
            one.steps + other.steps,
            lambda layouts, one=one, other=other: one.make(other.make(layouts)),
        )
