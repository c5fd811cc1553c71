"""What is done to mend a layout, step by step.

In: layouts and a step. Out: the layouts with the step done. Steps name holes and leads; words for them are made
elsewhere. Refuses to know why a step is done.

A lead is known by its hole as much as by its terminal, since the text may leave open which lead of a part is which.
That of a pad is the end of its lead out.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal, TypeAlias

from shuntwise.board.islands import Key
from shuntwise.board.wanted import Lead
from shuntwise.board.wires import is_pad, key_of
from shuntwise.model.boards import Cut, Hole, Layout, Place, Point, Spot, Wire
from shuntwise.model.boards import Lead as PlacedLead

WireKind: TypeAlias = Literal["jumper", "bus", "lead out"]


@dataclass(frozen=True)
class NewHole:
    """A hole that is to be drilled for a step. Its name is free in its layout; diameter in mm."""

    key: Key
    at: Point
    diameter: float


@dataclass(frozen=True)
class Move:
    """A lead, or the board's end of a lead out, goes from one hole to another."""

    lead: Lead
    source: Key
    target: Key
    hole: NewHole | None = None


@dataclass(frozen=True)
class MoveWire:
    """One end of a wire goes from one hole or pad to another; `other` is its other end."""

    kind: WireKind
    source: Key
    other: Key
    target: Key
    hole: NewHole | None = None


@dataclass(frozen=True)
class ExchangeLeads:
    """Two leads, each into the hole of the other. `keys` are where they lie before, in the order of `leads`.

    Of the two pads of one owner all that goes to them is exchanged; `keys` are then the pads.
    """

    leads: tuple[Lead, Lead]
    keys: tuple[Key, Key]

    @property
    def owner(self) -> str | None:
        """The one part, driver, input or posts whose leads both are."""
        return self.leads[0][0] if self.leads[0][0] == self.leads[1][0] else None


@dataclass(frozen=True)
class ExchangeParts:
    """Two parts in each other's place. `leads` go from one hole to another, by the part's label."""

    labels: tuple[str, str]
    leads: tuple[tuple[str, Key, Key], ...]


@dataclass(frozen=True)
class AddWire:
    """A jumper from one hole to another, a bus along a row, or a lead out from a hole to a pad."""

    kind: WireKind
    first: Key
    second: Key
    holes: tuple[NewHole, ...] = ()


@dataclass(frozen=True)
class TakeWire:
    """A wire is taken away."""

    kind: WireKind
    first: Key
    second: Key


@dataclass(frozen=True)
class MakeCut:
    """Copper is cut. `words` say where ("between north 2 and north 3"), `apart` are a hole on each side."""

    layout: str
    cut: Cut
    words: str
    apart: tuple[Key, Key]


@dataclass(frozen=True)
class TakeCut:
    """A cut is not made, or bridged where it has been."""

    layout: str
    cut: Cut


@dataclass(frozen=True)
class PlaceLeads:
    """A part is placed, or leads of it that the text lacks go into holes. None: no hole is known for it."""

    label: str
    leads: tuple[tuple[Lead, Key | None], ...]


Step: TypeAlias = Move | MoveWire | ExchangeLeads | ExchangeParts | AddWire | TakeWire | MakeCut | TakeCut | PlaceLeads


def apply(step: Step, layouts: Sequence[Layout]) -> tuple[Layout, ...]:
    """The layouts with a step done; what it does not touch stays as it is.

    Raises ValueError where a layout does not have what the step names.
    """
    done = _done(step, layouts)
    if done == tuple(layouts):
        raise ValueError(f"nothing to do for {step}")
    return done


def _done(step: Step, layouts: Sequence[Layout]) -> tuple[Layout, ...]:
    match step:
        case Move(lead, source, target, hole):
            drilled = _drilled(layouts, (hole,) if hole else ())
            if lead[1] in "+-":
                return _rewired(drilled, Wired("lead out", source, ("", lead[0] + lead[1])), target)
            return _leads_to(drilled, {(lead[0], source): target}, (lead,))
        case MoveWire(kind, source, other, target, hole):
            return _rewired(_drilled(layouts, (hole,) if hole else ()), Wired(kind, source, other), target)
        case ExchangeLeads(leads, keys):
            return _exchanged(layouts, leads, keys)
        case ExchangeParts(labels, leads):
            return _in_place(layouts, labels, {(label, source): target for label, source, target in leads})
        case AddWire(kind, first, second, holes):
            home = first[0] or second[0]
            return tuple(
                replace(layout, wires=(*layout.wires, _wire(kind, first, second, layout)))
                if layout.name == home
                else layout
                for layout in _drilled(layouts, holes)
            )
        case TakeWire(kind, first, second):
            return _rewired(layouts, Wired(kind, first, second), None)
        case MakeCut(name, cut):
            return tuple(
                replace(layout, cuts=(*layout.cuts, cut)) if layout.name == name else layout for layout in layouts
            )
        case TakeCut(name, cut):
            return tuple(
                replace(layout, cuts=tuple(other for other in layout.cuts if other != cut))
                if layout.name == name
                else layout
                for layout in layouts
            )
        case PlaceLeads(label, leads):
            return _placed(layouts, label, {lead[1]: key for lead, key in leads if key is not None})


@dataclass(frozen=True)
class Wired:
    """How a wire is known: its kind, one end, the other."""

    kind: WireKind
    end: Key
    other: Key


def _rewired(layouts: Sequence[Layout], wired: Wired, target: Key | None) -> tuple[Layout, ...]:
    """One wire with its end at `target`; without one it is taken away."""
    found = False
    done = []
    for layout in layouts:
        wires: list[Wire] = []
        for wire in layout.wires:
            ends = key_of(wire.first), key_of(wire.second)
            if found or wire.kind != wired.kind or ends not in ((wired.end, wired.other), (wired.other, wired.end)):
                wires.append(wire)
                continue
            found = True
            if target is not None:
                at_first = ends[0] == wired.end
                wires.append(
                    replace(wire, first=_spot(target, wire.first))
                    if at_first
                    else replace(wire, second=_spot(target, wire.second))
                )
        done.append(replace(layout, wires=tuple(wires)))
    return tuple(done)


def _exchanged(layouts: Sequence[Layout], leads: tuple[Lead, Lead], keys: tuple[Key, Key]) -> tuple[Layout, ...]:
    if all(is_pad(key) for key in keys) and all(lead[1] in "+-" for lead in leads):
        other = {keys[0]: keys[1], keys[1]: keys[0]}
        return _mapped(layouts, lambda owner, key: other.get(key, key))
    of_owner: dict[tuple[str, Key], Key] = {}
    for lead, here, there in zip(leads, keys, keys[::-1], strict=True):
        if lead[1] not in "+-":
            of_owner[lead[0], here] = there
    done = _leads_to(layouts, of_owner, leads)
    moved = [
        (Wired("lead out", here, ("", lead[0] + lead[1])), there)
        for lead, here, there in zip(leads, keys, keys[::-1], strict=True)
        if lead[1] in "+-"
    ]
    for wired, there in moved:
        done = _rewired(done, wired, there)
    return done


def _in_place(
    layouts: Sequence[Layout], labels: tuple[str, str], targets: Mapping[tuple[str, Key], Key]
) -> tuple[Layout, ...]:
    """Two parts exchanged: where a body lies and how it is tied stays, with the other part in it."""
    led = {place.label: place for layout in _leads_to(layouts, targets, ()) for place in layout.places}
    names = {labels[0]: labels[1], labels[1]: labels[0]}

    def placed(place: Place) -> Place:
        if place.label not in names:
            return place
        new = led[names[place.label]]
        return replace(place, label=new.label, leads=new.leads, notes=new.notes)

    return tuple(replace(layout, places=tuple(placed(place) for place in layout.places)) for layout in layouts)


def _leads_to(
    layouts: Sequence[Layout], targets: Mapping[tuple[str, Key], Key], leads: Sequence[Lead]
) -> tuple[Layout, ...]:
    """Leads in other holes, by part and the hole where they are. Of two in one hole the one that is named goes."""
    named = set(leads)

    def placed(place: Place) -> Place:
        of = [lead for lead in place.leads if (place.label, key_of(lead.spot)) in targets]
        told = [lead for lead in of if (place.label, lead.terminal) in named]
        going: list[PlacedLead] = []
        for here in dict.fromkeys(key_of(lead.spot) for lead in of):
            same = [lead for lead in of if key_of(lead.spot) == here]
            going.append(next((lead for lead in same if lead in told), same[0]))
        return replace(
            place,
            leads=tuple(
                replace(lead, spot=_spot(targets[place.label, key_of(lead.spot)], lead.spot))
                if any(lead is one for one in going)
                else lead
                for lead in place.leads
            ),
        )

    return tuple(replace(layout, places=tuple(placed(place) for place in layout.places)) for layout in layouts)


def _mapped(layouts: Sequence[Layout], other: Callable[[str, Key], Key]) -> tuple[Layout, ...]:
    """Every end of a lead or wire at another hole or pad."""

    def spot(owner: str, at: Spot) -> Spot:
        return _spot(other(owner, key_of(at)), at)

    return tuple(
        replace(
            layout,
            wires=tuple(replace(w, first=spot("", w.first), second=spot("", w.second)) for w in layout.wires),
            places=tuple(
                replace(p, leads=tuple(replace(lead, spot=spot(p.label, lead.spot)) for lead in p.leads))
                for p in layout.places
            ),
        )
        for layout in layouts
    )


def _placed(layouts: Sequence[Layout], label: str, keys: Mapping[str, Key]) -> tuple[Layout, ...]:
    """Leads added to a part, which is placed on the first layout if it is not placed at all."""
    home = next((layout for layout in layouts if any(place.label == label for place in layout.places)), layouts[0])
    span = home.name_span
    new = tuple(PlacedLead(terminal, _spot(key, Spot(None, "", span)), span) for terminal, key in keys.items())
    places = tuple(
        replace(place, leads=(*place.leads, *new)) if place.label == label else place for place in home.places
    )
    if all(place.label != label for place in home.places):
        places = (*places, Place(label, None, "parts", None, 0.0, new, (), (), span, span))
    return tuple(replace(layout, places=places) if layout is home else layout for layout in layouts)


def _drilled(layouts: Sequence[Layout], holes: Sequence[NewHole]) -> tuple[Layout, ...]:
    """The layouts with holes drilled that they do not have yet."""
    done = []
    for layout in layouts:
        new = tuple(
            Hole(hole.key[1], hole.key[1], hole.at, hole.diameter, layout.name_span, drilled=True)
            for hole in holes
            if hole.key[0] == layout.name and all(known.name != hole.key[1] for known in layout.holes)
        )
        done.append(replace(layout, drilled=(*layout.drilled, *new)) if new else layout)
    return tuple(done)


def _spot(key: Key, instead_of: Spot) -> Spot:
    return Spot(key[0] or None, key[1], instead_of.span)


def _wire(kind: WireKind, first: Key, second: Key, layout: Layout) -> Wire:
    at = Spot(None, "", layout.name_span)
    return Wire(kind, _spot(first, at), _spot(second, at), 0.0, 0.0, False, layout.name_span)
