"""`board`: what comes out of its lines, and what is refused."""

from __future__ import annotations

import math
import random
import time

import pytest
import shapely

from model.boxes_with_boards import STRIP, resolved
from shuntwise.loading import LIBRARY, read_design
from shuntwise.model.board_shapes import collisions, crosses_itself, inside
from shuntwise.model.boards import Board
from shuntwise.pipeline import compile_include
from shuntwise.syntax.words import LIBRARY_BOARDS


def board(lines: str) -> Board:
    design, said = resolved(f"board b {{\noutline 100:40 mm\nthickness 1.6 mm\n{lines}\n}}\n")
    assert [finding.headline for finding in said] == []
    return design.boards["b"]


def names(text: str) -> list[str]:
    return [finding.name for finding in resolved(text)[1]]


def refused(*lines: str, head: str = "outline 100:40 mm\nthickness 1.6 mm\n") -> list[str]:
    return names("board b {\n" + head + "\n".join(lines) + "\n}\n")


# --- values


def test_row_is_evenly_spaced_and_numbered() -> None:
    holes = board("holes north 4 of 1.3 mm from 10:5 mm to 11:35 mm { ring 4 mm }").holes
    assert [hole.name for hole in holes] == ["north 1", "north 2", "north 3", "north 4"]
    assert [hole.at for hole in holes] == [(10, 5), (10.333333333, 15), (10.666666667, 25), (11, 35)]
    assert {(hole.row, hole.diameter, hole.ring, hole.tag, hole.area) for hole in holes} == {
        ("north", 1.3, 4.0, False, None)
    }


def test_single_ones_and_tags() -> None:
    lug, earth, upper, _ = board(
        "hole lug of 2.2 mm at 10:5 mm\ntag earth at 9:9 mm\ntags u 2 from 1:1 mm to 2:1 mm"
    ).holes
    assert (lug.name, lug.row, lug.diameter, lug.tag) == ("lug", "lug", 2.2, False)
    assert (earth.name, earth.diameter, earth.tag) == ("earth", 0.0, True)
    assert (upper.name, upper.row, upper.tag) == ("u 1", "u", True)


def test_row_called_as_an_area_lies_in_it() -> None:
    strip = resolved(STRIP)[0].boards["strip"]
    assert {hole.row: hole.area for hole in strip.holes} == {
        "north": "north", "south": None, "lug": None, "upper": None,
    }  # fmt: skip


def test_what_is_not_stated_is_usual() -> None:
    plain = board("")
    assert (plain.copper, plain.copper_side, plain.seen_from, plain.title) == (0.035, "solder", "parts", None)
    thick = board("copper 0.07 mm on parts side\nfixing 4.3 mm at 8:9 mm\nfixing 4 mm at 80:9 mm { keep 8 mm }")
    assert (thick.copper, thick.copper_side) == (0.07, "parts")
    assert [(fixing.diameter, fixing.keep) for fixing in thick.fixings] == [(4.3, 4.3), (4.0, 8.0)]


def test_points_seen_from_the_solder_side_are_turned() -> None:
    """x -> width - x, wherever in the text the side is told."""
    lines = "hole lug of 2 mm at 10:5 mm\ncorner 0:40 mm cut 5 mm\narea n from 60:1 mm to 70:9 mm\n"
    lines += "track 2 mm from 1:1 mm to 2:3 mm"
    turned, straight = board(lines + "\nseen from solder side"), board(lines)
    assert turned.holes[0].at == (90, 5)
    assert turned.corners[0].at == (100, 40)
    assert turned.areas[0].corners == ((30, 1), (40, 1), (40, 9), (30, 9))
    assert turned.tracks[0].points == ((99, 1), (98, 3))
    assert straight.areas[0].corners == ((60, 1), (70, 1), (70, 9), (60, 9))


def test_units_formulas_and_names_of_values() -> None:
    text = "let width = 2 mm\nboard b { outline 10:4 cm, thickness 4 mm / 2, track width from .5:1 cm to 1:1.5 cm }\n"
    design, said = resolved(text)
    assert not said
    one = design.boards["b"]
    assert (one.width, one.height, one.thickness) == (100, 40, 2)
    assert (one.tracks[0].width, one.tracks[0].points) == (2.0, ((5, 10), (10, 15)))


@pytest.mark.parametrize("name", LIBRARY_BOARDS)
def test_shipped_board_checks_by_itself(name: str) -> None:
    collected, said = read_design(str(LIBRARY / f"{name}.shunt"))
    compiled = compile_include(collected, said)
    assert [finding.headline for finding in compiled.findings] == []
    assert name in compiled.design.boards


# --- what is refused

POLYGONS = [
    ("1:1 mm to 9:9 mm to 9:1 mm to 1:9 mm", "shape-impossible"),
    ("1:1 mm to 9:1 mm to 5:1 mm to 5:9 mm", "shape-impossible"),  # back over itself
    ("1:1 mm to 9:1 mm to 9:1 mm to 5:9 mm", "shape-impossible"),  # a corner twice
    ("1:1 mm to 9:1 mm to 5:5 mm to 9:9 mm to 1:9 mm to 5:5 mm", "shape-impossible"),  # pinched
    ("1:1 mm to 5:1 mm to 9:1 mm", "shape-impossible"),
    ("1:1 mm to 9:1 mm", "shape-impossible"),
    ("1:1 mm to 9:1 mm to 9:9 mm to 5:3 mm to 1:9 mm", ""),  # notched
    ("1:1 mm to 1:9 mm to 9:9 mm to 9:1 mm", ""),  # clockwise
    ("0:0 mm to 100:40 mm", ""),  # up to the edge
    ("0:0 mm to 100.1:40 mm", "outside-board"),
    ("-1:0 mm to 5:5 mm", "outside-board"),
]


@pytest.mark.parametrize(("corners", "name"), POLYGONS)
def test_area_is_a_simple_polygon_on_the_board(corners: str, name: str) -> None:
    assert refused(f"area a from {corners}") == ([name] if name else [])


@pytest.mark.parametrize(
    ("line", "name"),
    [
        ("outline 100:40 mm", "attribute-twice"),
        ("area n from 1:1 mm to 2:2 mm\narea n from 3:3 mm to 4:4 mm", "same-label-twice"),
        ("hole n of 1 mm at 1:1 mm\ntags n 2 from 5:5 mm to 9:5 mm", "same-label-twice"),
        ("corner 100:41 mm cut 2 mm", "shape-impossible"),
        ("corner 0:0 mm cut 2 mm\ncorner 0:0 mm cut 3 mm", "same-label-twice"),
        ("corner 0:0 mm cut 30 mm", "shape-impossible"),
        ("corner 0:0 mm cut 8 mm\nhole a of 1 mm at 2:3 mm", "outside-board"),
        ("track 2 mm from 1:1 mm to 1:1 mm", "shape-impossible"),
        ("track 0 mm from 1:1 mm to 2:1 mm", "value-not-positive"),
        ("track 2 V from 1:1 mm to 2:1 mm", "unit-wrong-kind"),
        ("hole a of -1 mm at 1:1 mm", "value-not-positive"),
        ("hole a of 1 m at 1:1 mm", "value-absurd"),
        ("hole a of 1 at 1:1 mm", "unit-missing"),
        ("hole a of 2 mm at 1:1 mm { ring 2 mm }", "shape-impossible"),
        ("hole a of 2 mm at 1:1 mm { keep 2 mm }", "unknown-word"),
        ("tag a at 1:1 mm { ring 2 mm }", "unknown-word"),
        ("hole a of 2 mm at 1:1 furlong", "unknown-unit"),
        ("hole a of 2 mm at 1:1 s", "unit-wrong-kind"),
        ("hole a of 2 mm at 1,5:1 mm", "decimal-comma"),
        ("holes a 1 of 2 mm from 1:1 mm to 5:5 mm", "value-unclear"),
        ("holes a 0 of 2 mm from 1:1 mm to 5:5 mm", "value-unclear"),
        ("holes a 2.5 of 2 mm from 1:1 mm to 5:5 mm", "value-unclear"),
        ("holes a 1e9 of 2 mm from 1:1 mm to 5:5 mm", "value-unclear"),
        ("holes a 9 of 2 mm from 1:1 mm to 5:5 mm", "holes-collide"),
        ("hole a of 2 mm at 1:1 mm\nhole b of 2 mm at 2.9:1 mm", "holes-collide"),
        ("hole a of 2 mm at 1:1 mm\nhole b of 2 mm at 3:1 mm", ""),
        ("tag a at 1:1 mm\ntag b at 1:1 mm", "holes-collide"),
        ("area n from 1:1 mm to 9:9 mm\nholes n 3 of 1 mm from 2:2 mm to 9.5:2 mm", "hole-outside-area"),
    ],
)
def test_line_that_cannot_be_is_one_finding(line: str, name: str) -> None:
    assert refused(*line.splitlines()) == ([name] if name else [])


@pytest.mark.parametrize(
    ("head", "name"),
    [
        ("outline 100:40 mm\n", "board-incomplete"),
        ("thickness 1.6 mm\n", "board-incomplete"),
        ("thickness 1.6 mm\noutline 0:40 mm\n", "shape-impossible"),
        ("thickness 1.6 mm\noutline -10:40 mm\n", "shape-impossible"),
        ("thickness 1.6 mm\noutline 2001:40 mm\n", "shape-impossible"),
        ("thickness 0 mm\noutline 100:40 mm\n", "value-not-positive"),
        (f"thickness 1.6 mm\noutline {'9' * 400}:40 mm\n", "value-unclear"),
        ("thickness 1.6 mm\noutline $ 100:40 mm\n", "syntax-error"),  # what was lost is not missed
    ],
)
def test_board_that_cannot_be_drawn_is_one_finding(head: str, name: str) -> None:
    assert refused(head=head) == [name]


def test_board_stands_outside_of_variants_and_once() -> None:
    assert names(f"variant v {{\n{STRIP}}}\n") == []
    assert [finding.name for finding in resolved(f"variant v {{\n{STRIP}}}\n", "v")[1]] == ["misplaced-statement"]
    assert names(STRIP + STRIP) == ["same-label-twice"]


# --- hostile texts


def _star(corners: int) -> str:
    turns = [2 * math.pi * number / corners for number in range(corners)]
    return " to ".join(f"{50 + 19 * math.cos(turn):.4f}:{20 + 19 * math.sin(turn):.4f} mm" for turn in turns)


HOSTILE = {
    "holes": "holes a 1000000000 of 1 mm from 1:1 mm to 99:1 mm",
    "rows": "\n".join(f"hole a{n} of .1 mm at {n % 99}.5:{n // 99 % 39}.5 mm" for n in range(10_000)),
    "corners": f"area a from {_star(5001)}",
    "same place": "holes a 2000 of 1 mm from 1:1 mm to 1:1 mm",
}


@pytest.mark.parametrize("text", HOSTILE.values(), ids=HOSTILE)
def test_hostile_board_is_one_finding_in_no_time(text: str) -> None:
    started = time.process_time()
    said = refused(*text.splitlines())
    assert said in (["too-much-on-board"], ["holes-collide"])
    assert time.process_time() - started < 1.5  # 0.1 to 0.5 s on a quiet machine


def test_thousands_of_boards_are_one_finding() -> None:
    text = "".join(f"board b{n} {{ outline 9:9 mm, thickness 1 mm }}\n" for n in range(300))
    assert names(text) == ["too-much-on-board"]


# --- plane figures, against slower ways to find the same


def test_collisions_are_those_of_every_pair() -> None:
    draw = random.Random(5)
    for count in (2, 3, 40, 90):
        circles = [
            ((draw.uniform(0, 30), draw.choice((1.0, draw.uniform(0, 30)))), draw.uniform(0, 2)) for _ in range(count)
        ]
        slow = {
            later
            for later in range(count)
            for earlier in range(later)
            if math.dist(circles[later][0], circles[earlier][0]) < (circles[later][1] + circles[earlier][1]) / 2 - 1e-6
        }
        assert {later for later, _ in collisions(circles)} == slow
        assert {later for later, _ in collisions(circles, known=count // 2)} == {n for n in slow if n >= count // 2}


def test_crossing_is_that_of_shapely() -> None:
    """Reference: `is_simple` of GEOS (polygons closed without zero edges), on polygons of a coarse raster."""
    draw = random.Random(7)
    kinds = set()
    for _ in range(600):
        corners = [(draw.randrange(6), draw.randrange(6)) for _ in range(draw.randrange(3, 8))]
        simple = all(a != b for a, b in zip(corners, corners[1:] + corners[:1], strict=True)) and bool(
            shapely.LinearRing(corners).is_simple
        )
        kinds.add(simple)
        assert crosses_itself(corners) == (not simple), corners
        if simple and len(corners) > 2:
            x, y = draw.uniform(0, 6), draw.uniform(0, 6)
            assert inside((x, y), corners) == shapely.Polygon(corners).covers(shapely.Point(x, y))
    assert kinds == {True, False}
