"""What cannot be built of a layout, by shapely: holes under bodies, ties that hold nothing.

Of bodies that meet, are too high or go over the edge rules tell. Lengths in mm. Common practice, no source: a coil of
more than 50 g is tied down; a lead goes through no hole that another has, but many hang on one tag.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from shapely import affinity
from shapely.geometry import LineString, Point, Polygon, box

from board.outside import key_of
from shuntwise.model.boards import Layout, Place
from shuntwise.model.design import Design, Part

TIED_FROM_G = 50.0


@dataclass(frozen=True)
class Body:
    """Where a part is, seen from above, and from what height to what height over its side of the board."""

    place: Place
    outline: Polygon
    low: float
    high: float


def body_of(part: Part, place: Place) -> Body | None:
    """None off the board, or where its size is not stated."""
    length, width, height, diameter = (1000 * part.get(name) for name in ("length", "width", "height", "diameter"))
    if place.at is None or not length or not (diameter or (width and height)):
        return None
    if place.axis == "upright":
        outline = Point(place.at).buffer(diameter / 2, quad_segs=32)
        tall = length
    else:
        across, tall = (diameter, diameter) if diameter else (width, height)
        x, y = place.at
        lying = box(x - length / 2, y - across / 2, x + length / 2, y + across / 2)
        outline = affinity.rotate(lying, place.axis or 0.0, origin=place.at)
    return Body(place, outline, place.raised, place.raised + tall)


def outline_of(layout: Layout) -> Polygon:
    board = layout.board
    outline = box(0, 0, board.width, board.height)
    for corner in board.corners:
        (x, y), cut = corner.at, corner.cut
        inward = (x + cut if x == 0 else x - cut, y), (x, y + cut if y == 0 else y - cut)
        outline = outline.difference(Polygon((corner.at, *inward)))
    return outline


def faults(design: Design, layout: Layout) -> Iterator[str]:
    parts = {place.label: design.parts[place.label] for place in layout.places}
    bodies = [body for place in layout.places if (body := body_of(parts[place.label], place))]
    outline = outline_of(layout)
    yield from _holes(layout, bodies, outline)
    for place in layout.places:
        yield from _ties(layout, parts[place.label], place, bodies, outline)


def _holes(layout: Layout, bodies: list[Body], outline: Polygon) -> Iterator[str]:
    wires = [(spot, wire.diameter) for wire in layout.wires for spot in (wire.first, wire.second) if wire.kind != "bus"]
    used = [*(lead.spot for place in layout.places for lead in place.leads), *(spot for spot, _ in wires)]
    here = {hole.name: hole for hole in layout.holes}
    for key, count in Counter(key_of(spot) for spot in used if spot.layout == layout.name).items():
        hole = here[key[1]]
        if count > 1 and not hole.tag:
            yield f"{count} leads in {key[1]}"
        for body in bodies:
            if body.low < 3 and body.outline.buffer(-0.5).contains(Point(hole.at)):
                yield f"{key[1]} is under {body.place.label}"
    for spot, diameter in wires:
        if spot.layout == layout.name and 0 < here[spot.hole].diameter < diameter:
            yield f"a wire of {diameter} mm does not go through {spot.hole}"
    for one, other in combinations(here.values(), 2):
        if Point(one.at).distance(Point(other.at)) < (one.diameter + other.diameter) / 2 + 1.5:
            yield f"{one.name} and {other.name} are too near"
    for hole in here.values():
        if outline.exterior.distance(Point(hole.at)) < hole.diameter / 2 + 1 or not outline.contains(Point(hole.at)):
            yield f"{hole.name} is at the edge"


def _ties(layout: Layout, part: Part, place: Place, bodies: list[Body], outline: Polygon) -> Iterator[str]:
    heavy = part.kind in ("coil", "tapped coil") and part.get("mass") > TIED_FROM_G  # in grams, as the text has it
    if heavy and not place.ties and place.at is not None:
        yield f"{part.label} is not tied"
    own = next((body for body in bodies if body.place is place), None)
    for tie in place.ties:
        if own is not None and not LineString((tie.first, tie.second)).intersects(own.outline):
            yield f"the tie {tie.first} goes past {part.label}"
        for end in (tie.first, tie.second):
            for body in bodies:
                in_bore = (
                    body.place is place
                    and place.axis == "upright"
                    and Point(end).distance(Point(place.at)) < 0.4 * 500 * part.get("diameter")
                )
                if body.outline.contains(Point(end)) and not in_bore and body.place.side == "parts":
                    yield f"the tie's hole at {end} of {part.label} is under {body.place.label}"
            for hole in layout.holes:
                if Point(end).distance(Point(hole.at)) < hole.diameter / 2 + tie.width / 2 + 1:
                    yield f"the tie's hole at {end} of {part.label} meets {hole.name}"
            for fixing in layout.board.fixings:
                if Point(end).distance(Point(fixing.at)) < fixing.keep:
                    yield f"the tie's hole at {end} of {part.label} is at a fixing"
            if not outline.buffer(-2).contains(Point(end)):
                yield f"the tie's hole at {end} of {part.label} is at the edge"
