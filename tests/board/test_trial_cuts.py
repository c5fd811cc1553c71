"""Cuts that are proposed part what they say, when they are made and the layout is worked out anew."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations, islice
from math import dist
from random import Random

import pytest

from board.layouts import at, cut, hole, layout, polygon, rectangle, tag, track
from shuntwise.board.cutting import TrialCut, trial_cuts
from shuntwise.board.drilling import LAND, free_spot
from shuntwise.board.islands import islands
from shuntwise.model.boards import Cut, Fixing, Layout


def proposed(drawn: Layout, first: str) -> list[TrialCut]:
    found = islands([drawn])
    return list(trial_cuts([drawn], found, found.of["plate", first]))


def partings(drawn: Layout, first: str) -> set[frozenset[str]]:
    """The groups that lack the first hole, of all cuts."""
    return {
        frozenset(name for _, name in group)
        for trial in proposed(drawn, first)
        for group in trial.groups
        if ("plate", first) not in group
    }


def with_cut(drawn: Layout, more: Cut) -> Layout:
    return replace(drawn, cuts=(*drawn.cuts, more))


def test_an_area_is_cut_between_neighbouring_holes_both_ways() -> None:
    places = [(20 + 10 * column, 20 + 10 * row) for row in (0, 1) for column in (0, 1, 2)]
    holes = [hole(f"north {number}", *place) for number, place in enumerate(places, 1)]
    drawn = layout(rectangle("north", 10, 10, 50, 40), *holes)
    found = partings(drawn, "north 1")
    assert frozenset({"north 2", "north 3", "north 5", "north 6"}) in found
    assert frozenset({"north 3", "north 6"}) in found
    assert frozenset({"north 4", "north 5", "north 6"}) in found
    assert "between north 2 and north 5" in {trial.words for trial in proposed(drawn, "north 1")}


def test_a_track_is_cut_across_and_other_copper_left_alone() -> None:
    drawn = layout(
        track(3, (10, 10), (40, 40)),
        track(3, (10, 20), (30, 40)),  # 7 mm beside it
        hole("a", 10, 10),
        hole("b", 40, 40),
        hole("c", 10, 20),
        hole("d", 30, 40),
    )
    (trial,) = proposed(drawn, "a")[:1]
    assert set(trial.groups) == {frozenset({("plate", "a")}), frozenset({("plate", "b")})}
    assert trial.words == "between a and b"
    after = islands([with_cut(drawn, trial.cut)])
    assert after.of["plate", "c"] == after.of["plate", "d"]


def test_holes_that_no_square_cut_parts_are_parted_by_a_slanting_one() -> None:
    # A chequer of holes: between some of them only a slanting cut goes.
    places = [(20, 20), (24, 24), (28, 20), (32, 24), (24, 16), (20, 28), (32, 16), (28, 28)]
    drawn = layout(rectangle("all", 12, 10, 40, 34), *(hole(f"h{n}", *place, 2.4) for n, place in enumerate(places)))
    together = set(combinations([f"h{n}" for n in range(len(places))], 2))
    for trial in proposed(drawn, "h0"):
        for group in trial.groups:
            names = {name for _, name in group}
            together -= {pair for pair in together if len(names & {*pair}) == 1}
    assert not together


def test_a_loop_of_tracks_is_parted_by_one_cut_over_both_sides() -> None:
    loop = track(2, (20, 20), (60, 20), (60, 40), (20, 40), (20, 20))
    drawn = layout(loop, hole("a", 20, 30), hole("b", 60, 30))
    assert partings(drawn, "a") == {frozenset({"b"})}


def test_a_long_cut_parts_two_areas_at_once() -> None:
    """The holes of one are not in line with those of the other, so that few lines pass between both."""
    holes = [hole("a", 20, 20), hole("b", 40, 20), hole("c", 24, 60), hole("d", 44, 60)]
    drawn = layout(rectangle("low", 10, 10, 50, 30), rectangle("high", 10, 50, 50, 70), *holes)
    before = islands([drawn])
    (trial,) = [trial for trial in proposed(drawn, "a") if trial.long][:1]
    assert set(trial.groups) == {frozenset({("plate", name)}) for name in "abcd"}
    assert {name for _, name in trial.groups[0] | trial.groups[1]} == {"a", "b"} and trial.words == "between a and b"
    after = islands([with_cut(drawn, trial.cut)])
    assert len(set(before.of.values())) == 2 and len(set(after.of.values())) == 4


def test_nothing_parts_a_single_hole_or_tag() -> None:
    drawn = layout(rectangle("north", 10, 10, 50, 40), hole("a", 20, 20), tag("lug", 40, 20))
    assert proposed(drawn, "a") == proposed(drawn, "lug") == []


def test_every_cut_parts_its_island_as_told_and_nothing_else() -> None:
    checked = 0
    for seed in range(10):
        chance = Random(seed)
        places = [(chance.uniform(12, 88), chance.uniform(12, 68)) for _ in range(12)]
        holes = [
            hole(f"h{number}", *place)
            for number, place in enumerate(places)
            if all(dist(place, other) > 2 for other in places[:number])
        ]
        tracks = [track(chance.choice((2, 3)), *chance.sample(places, 3)) for _ in range(3)]
        drawn = layout(rectangle("a", 10, 10, 45, 40), rectangle("b", 55, 10, 90, 70), *tracks, *holes)
        before = islands([drawn])
        for trial in islice(trial_cuts([drawn], before, before.of["plate", "h0"]), 5):
            after = islands([with_cut(drawn, trial.cut)])
            named = [{after.of[key] for key in group} for group in trial.groups]
            assert all(len(found) == 1 for found in named), (seed, trial)
            assert len(set.union(*named)) == len(named) > 1
            assert set.union(*map(set, trial.groups)) >= {*before.keys(before.of["plate", "h0"])}
            for other in set(before.of.values()) - {before.of["plate", "h0"]} if not trial.long else ():
                assert len({after.of[key] for key in before.keys(other)}) == 1, (seed, trial)
            checked += 1
    assert checked > 15


def test_a_hole_more_has_copper_and_room_around_it() -> None:
    drawn = layout(
        rectangle("north", 10, 10, 40, 24),
        hole("a", 25, 15),
        hole("b", 36, 20),
        tag("lug", 16, 16),
        cuts=[cut((30, 5), (30, 40))],
        fixings=(Fixing((20, 12), 3, 4, at()),),
    )
    found = islands([drawn])
    spot = free_spot(drawn, found, found.of["plate", "a"], 1.3)
    assert spot is not None
    room = 0.65 + LAND
    assert 10 + room <= spot[0] <= 29.5 - room and 10 + room <= spot[1] <= 24 - room
    assert dist(spot, (25, 15)) >= room + 0.65 and dist(spot, (16, 16)) >= room + 2.5 and dist(spot, (20, 12)) >= 4.65
    assert free_spot(drawn, found, found.of["plate", "a"], 1.3, (11, 23)) == pytest.approx((12.5, 21.5))
    assert free_spot(drawn, found, found.of["plate", "a"], 12) is None
    assert free_spot(drawn, found, found.of["plate", "lug"], 1.3) is None


def test_a_hole_more_fits_where_parts_of_a_notched_area_meet() -> None:
    # Each of its triangles is too narrow for a circle that the whole holds.
    arrow = polygon("arrow", (10, 10), (30, 10), (30, 20), (20, 14.5), (10, 20))
    drawn = layout(arrow, hole("a", 29, 19))
    found = islands([drawn])
    assert free_spot(drawn, found, 0, 1.0, (20, 12)) == (20, 12)
