"""Which holes hang together: cases whose answer is plain from the drawing, on the edge between joined and parted."""

from __future__ import annotations

import pytest

from board.layouts import cut, hole, layout, polygon, rectangle, tag, track
from shuntwise.board.islands import Contact, Islands, islands
from shuntwise.model.boards import Layout

PLATE = rectangle("north", 10, 10, 70, 40)
HOLES = (hole("north 1", 20, 25), hole("north 2", 60, 25))


def groups(*layouts: Layout) -> tuple[set[frozenset[str]], Islands]:
    """The islands as sets of names."""
    found = islands(layouts)
    return {frozenset(name for _, name in found.keys(number)) for number in set(found.of.values())}, found


def joined(
    *copper: object, one: str = "north 1", other: str = "north 2", **more: object
) -> tuple[bool, Contact | None]:
    """Are two holes of one layout joined, and what the only narrow place is."""
    found = islands([layout(*copper, **more)])  # type: ignore[arg-type]
    assert len(found.narrow) <= 1
    return found.of["plate", "north 1"] == found.of["plate", "north 2"], (found.narrow or (None,))[0]


def test_holes_of_one_area_are_one_island_and_a_tag_over_it_is_none_of_it() -> None:
    found, all_of = groups(layout(PLATE, *HOLES, tag("lug", 40, 25), hole("bare", 90, 70)))
    assert found == {frozenset({"north 1", "north 2"}), frozenset({"lug"}), frozenset({"bare"})}
    assert all_of.bare == {("plate", "bare")}
    assert list(all_of.of.values()) == [0, 0, 1, 2]


def test_layouts_have_islands_of_their_own() -> None:
    low, high = layout(PLATE, *HOLES, name="low"), layout(PLATE, *HOLES, name="high")
    assert islands([low, high]).of == {
        ("low", "north 1"): 0,
        ("low", "north 2"): 0,
        ("high", "north 1"): 1,
        ("high", "north 2"): 1,
    }


@pytest.mark.parametrize(
    ("upper", "joins", "width"),
    [
        (50.0, False, None),
        (40.0, False, None),  # just to the edge
        (40.0 - 1e-3, True, 1e-3),  # a hair too short
        (39.95, True, 0.05),
        (39.9, True, None),  # 0.1 mm is no hair
        (30.0, True, None),
    ],
)
def test_a_cut_parts_an_area_if_it_is_long_enough(upper: float, joins: bool, width: float | None) -> None:
    together, narrow = joined(PLATE, *HOLES, cuts=[cut((40, 5), (40, upper), line=7)])
    assert together is joins
    if width is None:
        assert narrow is None
    else:
        assert narrow is not None and narrow.kind == "joint"
        assert narrow.width == pytest.approx(width, abs=1e-9)
        assert narrow.items == ("the area north", "the cut at line 7")
        assert narrow.at == pytest.approx((39.5, 40 - width / 2)) or narrow.at == pytest.approx((40.5, 40 - width / 2))


@pytest.mark.parametrize("gap", [-0.2, -0.05, 0.0, 0.05, 0.2])
def test_two_cuts_that_run_towards_each_other(gap: float) -> None:
    cuts = [cut((40, 5), (40, 25 - gap / 2)), cut((40, 25 + gap / 2), (40, 45))]
    for order in (cuts, cuts[::-1]):
        together, narrow = joined(PLATE, *HOLES, cuts=order)
        assert together is (gap > 0)
        assert (narrow is not None) is (0 < gap < 0.1)


def test_a_cut_that_takes_out_a_corner_by_two_strokes() -> None:
    # Down from the upper edge, then to the right: the second begins where the first ends, or a hair beside it.
    for slip, joins in ((0.0, False), (0.55, True)):
        cuts = [cut((40, 45), (40, 25)), cut((40 + slip, 25), (75, 25))]
        copper = (PLATE, hole("north 1", 20, 30), hole("north 2", 60, 35))
        together, narrow = joined(*copper, cuts=cuts)
        assert together is joins
        assert (narrow is None) is (slip == 0)


@pytest.mark.parametrize("where", [((5, 5), (5, 60)), ((80, 10), (80, 40)), ((10, 9.5), (70, 9.5)), ((40, 5), (40, 5))])
def test_a_cut_beside_the_copper_along_its_edge_or_of_no_length_parts_nothing(where: tuple) -> None:
    assert joined(PLATE, *HOLES, cuts=[cut(*where)]) == (True, None)


@pytest.mark.parametrize(
    ("left", "joins", "kind", "width"),
    [
        (69.0, True, None, 0),
        (70.0 - 1e-4, True, None, 0),  # overlapping by little, but 30 mm wide
        (70.0, True, None, 0),  # an edge in common
        (70.05, False, "gap", 0.05),
        (70.2, False, None, 0),
    ],
)
def test_two_areas_join_by_an_edge_and_not_over_a_gap(left: float, joins: bool, kind: str | None, width: float) -> None:
    other = rectangle("east", left, 10, 90, 40)
    together, narrow = joined(PLATE, other, HOLES[0], hole("north 2", 80, 25))
    assert together is joins
    assert (narrow.kind if narrow else None) == kind
    if narrow:
        assert narrow.width == pytest.approx(width)
        assert narrow.items == ("the area north", "the area east")


def test_areas_that_meet_at_a_corner_are_joined_by_nothing_to_rely_on() -> None:
    together, narrow = joined(PLATE, rectangle("east", 70, 40, 90, 60), HOLES[0], hole("north 2", 80, 50))
    assert together and narrow is not None
    assert (narrow.kind, narrow.width) == ("joint", pytest.approx(0, abs=2e-6))
    assert narrow.at == pytest.approx((70, 40))


def test_narrow_contacts_with_a_wide_way_round_them_are_not_told() -> None:
    bridge = track(4, (65, 35), (75, 45))
    assert joined(PLATE, rectangle("east", 70, 40, 90, 60), bridge, HOLES[0], hole("north 2", 80, 50)) == (True, None)


def test_tracks_with_round_ends() -> None:
    # Their ends touch where the distance of the points is half the sum of the widths.
    for x, kind in ((43.9, None), (44.05, "gap"), (44.5, None)):
        tracks = track(4, (20, 25), (40, 25)), track(4, (x, 25), (60, 25))
        together, narrow = joined(*tracks, *HOLES)
        assert together is (x < 44)
        assert (narrow.kind if narrow else None) == kind


@pytest.mark.parametrize("diameter", [3.0, 3.79, 3.9, 4.0, 4.02, 4.5])
def test_a_hole_as_wide_as_its_track_parts_it(diameter: float) -> None:
    joins = diameter <= 4
    strip = track(4, (20, 25), (60, 25))
    together, narrow = joined(strip, *HOLES, drilled=[hole("h1", 40, 25, diameter)])
    assert together is joins
    if joins:
        assert (narrow is not None) is (diameter >= 3.9)
        assert narrow is None or (narrow.kind, narrow.items[1]) == ("joint", "the hole h1")
        assert narrow is None or narrow.width == pytest.approx(2 - diameter / 2, abs=0.005)
    else:  # solder in the hole would join both halves again
        assert narrow is not None and narrow.kind == "hole" and narrow.at == (40, 25)


def test_a_ring_saves_a_track_from_its_hole() -> None:
    assert joined(track(4, (20, 25), (60, 25)), *HOLES, hole("h", 40, 25, 4.5, ring=6)) == (True, None)


def test_a_hole_takes_copper_that_comes_near_its_edge() -> None:
    for x, bare in ((70.0, False), (71.1, False), (71.2, True)):
        found = islands([layout(PLATE, *HOLES, hole("h", x, 25))])
        assert (("plate", "h") in found.bare) is bare
        assert (found.of["plate", "h"] == 0) is not bare


def test_a_hole_between_two_areas_is_told() -> None:
    together, narrow = joined(
        PLATE, rectangle("east", 71, 10, 90, 40), HOLES[0], hole("north 2", 80, 25), hole("h", 70.3, 25)
    )
    assert not together and narrow is not None
    assert (narrow.kind, narrow.items) == ("hole", ("the area north", "the area east"))
    assert narrow.width == pytest.approx(0.05)


def test_a_hole_said_to_be_in_an_area_in_which_it_is_not() -> None:
    wrong = hole("h", 80, 25, area="north")
    found = islands([layout(PLATE, rectangle("east", 72, 10, 90, 40), hole("north 1", 20, 25, area="north"), wrong)])
    assert found.astray == {("plate", "h")}


def test_an_area_with_notches_and_corners_in_line() -> None:
    # A U: both legs are one, until its floor is cut.
    corners = ((10, 10), (40, 10), (70, 10), (70, 40), (60, 40), (60, 25), (60, 20), (20, 20), (20, 40), (10, 40))
    for shape in (corners, corners[::-1], corners[4:] + corners[:4]):
        legs = polygon("north", *shape), hole("north 1", 15, 35), hole("north 2", 65, 35)
        assert joined(*legs) == (True, None)
        assert joined(*legs, cuts=[cut((40, 5), (40, 20))]) == (False, None)
        assert joined(*legs, cuts=[cut((40, 5), (40, 30))]) == (False, None)
        assert joined(*legs, cuts=[cut((5, 25), (75, 25))])[0] is False  # both legs, not the gap between them


def test_pieces_that_coincide_are_one() -> None:
    found, all_of = groups(layout(*[PLATE] * 3, *[track(4, (20, 25), (60, 25))] * 3, *HOLES))
    assert found == {frozenset({"north 1", "north 2"})} and not all_of.narrow


def test_cuts_past_counting_are_refused() -> None:
    plate = rectangle("all", 0, 0, 100, 80)
    cuts = [cut((0, step / 2), (100, step / 2), 0.01) for step in range(1, 110)]
    cuts += [cut((step / 2, 0), (step / 2, 80), 0.01) for step in range(1, 110)]
    assert islands([layout(plate, *HOLES, cuts=cuts)]).too_fine == {"plate"}
