"""Boards that are their own mirror image, and what tells their sides apart."""

from __future__ import annotations

import pytest

from board.layouts import at, hole, layout, polygon, rectangle, tag, track
from shuntwise.board.mirror import mirror_alike
from shuntwise.model.boards import Corner

# The board is 100 mm by 80 mm: these two lie left and right alike, but not up and down.
PAIR = (rectangle("west", 10, 10, 40, 30), rectangle("east", 60, 10, 90, 30), hole("a", 20, 20), hole("b", 80, 20))


@pytest.mark.parametrize(
    ("more", "alike"),
    [
        ((), True),
        ((track(2, (20, 60), (80, 60)),), True),
        ((track(2, (20, 60), (80, 61)),), False),
        ((track(2, (20, 60), (79, 60)),), False),
        ((hole("c", 50, 50, ring=4),), True),
        ((hole("c", 50, 50, ring=4), hole("d", 52, 50)), False),
        ((hole("c", 30, 50), hole("d", 70, 50)), True),
        ((hole("c", 30, 50), hole("d", 70, 50, 2.2)), False),
        ((hole("c", 30, 50, ring=3), hole("d", 70, 50, ring=4)), False),
        ((tag("upper 1", 30, 70), tag("upper 2", 70, 70)), True),
        ((tag("hot", 30, 70), tag("cold", 70, 70)), False),
        # The same copper, written otherwise on either side.
        ((rectangle("n", 30, 40, 50, 50), polygon("m", (50, 40), (70, 40), (70, 50), (60, 50), (50, 50))), True),
        ((rectangle("n", 20, 40, 50, 50), rectangle("m", 50, 40, 65, 50), rectangle("o", 60, 40, 80, 50)), True),
        # An L and its mirror image, and an L alone.
        ((polygon("n", (20, 40), (48, 40), (48, 45), (25, 45), (25, 60), (20, 60)),), False),
        (
            (
                polygon("n", (20, 40), (48, 40), (48, 45), (25, 45), (25, 60), (20, 60)),
                polygon("m", (80, 40), (52, 40), (52, 45), (75, 45), (75, 60), (80, 60)),
            ),
            True,
        ),
    ],
)
def test_left_and_right(more: tuple, alike: bool) -> None:
    assert mirror_alike(layout(*PAIR, *more).board) is alike


def test_upside_down_is_the_other_side_too() -> None:
    rows = (rectangle("low", 10, 10, 40, 30), rectangle("high", 10, 50, 40, 70))
    assert mirror_alike(layout(*rows).board)
    assert not mirror_alike(layout(*rows, hole("a", 20, 20)).board)


def test_turned_round_without_turning_over_is_no_mirror_image() -> None:
    assert not mirror_alike(layout(rectangle("low", 10, 10, 40, 30), rectangle("high", 60, 50, 90, 70)).board)


def test_a_clipped_corner_tells_the_sides_apart() -> None:
    def clipped(*places: tuple[float, float]) -> bool:
        return mirror_alike(layout(*PAIR, corners=tuple(Corner(place, 8, at()) for place in places)).board)

    assert not clipped((100, 80))
    assert clipped((100, 80), (0, 80))
    assert not clipped((100, 80), (0, 0))
