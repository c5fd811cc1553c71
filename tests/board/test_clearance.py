"""Where bare metal of two nets comes close, against shapely, which the project does not use."""

from __future__ import annotations

from collections import defaultdict
from itertools import combinations

import pytest

from board.designs import EXAMPLES, laid_out
from board.test_against_shapely import FINE, copper
from board.test_against_shapely import near as reached
from shuntwise.board.bodies import body_of
from shuntwise.board.clearance import BRIDGED_MM, near
from shuntwise.board.judging import Judgement
from shuntwise.graph.circuit import point_of

shapely = pytest.importorskip("shapely")
WITHIN = 6.0


def judgement(number: str) -> Judgement:
    path = next(path for path in EXAMPLES if path.name.startswith(number))
    return Judgement(laid_out(path).circuit)


@pytest.mark.parametrize("number", ["07", "11", "13", "16"])
def test_copper_is_as_near_as_shapely_has_it(number: str) -> None:
    judged = judgement(number)
    (layout,) = judged.layouts
    polygons = copper(layout)
    metal: dict[str, list] = defaultdict(list)
    for lead, (board, hole) in judged.comparison.keys.items():
        if board:
            at = next(one for one in layout.holes if one.name == hole)
            metal[judged.circuit.net_of[point_of(*lead)]] += [polygons[n] for n in reached(at, polygons)[:1]]
    by_shapely = {}
    for one, other in combinations(sorted(metal), 2):
        gap = min(shapely.distance(a, b) for a in metal[one] for b in metal[other])
        if gap <= WITHIN:
            by_shapely[one, other] = gap
    ours = {one.nets: one.gap for one in near(judged, WITHIN) if one.sides == {layout.board.copper_side}}
    assert by_shapely
    assert ours == pytest.approx({pair: gap for pair, gap in by_shapely.items() if pair in ours}, abs=FINE)
    # What is not told here as copper is told where leads are nearer still.
    assert by_shapely.keys() <= {one.nets for one in near(judged, WITHIN)}


def test_a_lead_beside_another_nets_hole_is_near() -> None:
    """In example 13 `L4`'s end runs from rail 6 to the edge of its body, 1.4 mm from where the tweeter's wire is."""
    judged = judgement("13")
    (found,) = near(judged)
    (layout,) = judged.layouts
    place = next(place for place in layout.places if place.label == "L4")
    body = body_of(judged.circuit.design.parts["L4"], place)
    assert body is not None
    holes = {hole.name: hole for hole in layout.holes}
    disc = shapely.Point(body.core[0]).buffer(body.radius, quad_segs=4096)
    lead = shapely.shortest_line(shapely.Point(holes["rail 6"].at), disc)
    horn = holes["horn 1"]
    assert found.nets == ("return", "tweeter+")
    assert found.gap == pytest.approx(shapely.distance(lead, shapely.Point(horn.at)) - horn.diameter / 2, abs=FINE)
    assert found.gap < BRIDGED_MM and found.sides == {"parts"}


def test_tags_far_apart_have_no_neighbours() -> None:
    """The strip of example 4 has tags 19 mm apart, and sleeves on the wires that cross."""
    assert near(judgement("04")) == ()
