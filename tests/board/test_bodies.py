"""Bodies of parts: their plane geometry against shapely, their sizes against formulas, and what rules say of them."""

from __future__ import annotations

import random
from dataclasses import replace
from math import pi

import pytest
from shapely.geometry import Point

from board.bodies import body_of as drawn
from board.bodies import outline_of
from board.designs import EXAMPLES, laid_out
from rules.compiling import findings_of
from shuntwise.api import load_text
from shuntwise.board.bodies import Body, body_of, brooks_mm, gap, over_edge, size_of, to_point
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model.boards import Corner, Place
from shuntwise.model.design import Part
from shuntwise.source import Source, Span

NOWHERE = Span(Source("bodies", ""), 0, 0)
(HORN,) = (path for path in EXAMPLES if path.stem == "07-market-horn")


def parts(text: str) -> dict[str, Part]:
    return dict(
        load_text(f"driver woofer 8 ohm\n{text}\nleg woofer {{ input+ -- woofer+, woofer- -- return }}").design.parts
    )


def place(label: str, at: tuple[float, float], axis: object, raised: float = 0.0) -> Place:
    return Place(label, at, "parts", axis, raised, (), (), (), NOWHERE, NOWHERE)  # type: ignore[arg-type]


ROUND = "coil ROUND 1 mH { diameter 30 mm, length 12 mm }"
BLOCK = "resistor BLOCK 1 ohm { length 40 mm, width 10 mm, height 14 mm }"


def test_distances_and_overlaps_are_those_of_shapely() -> None:
    """A circle of shapely is a polygon: 32 edges a quarter lie 0.01 mm within it."""
    rng, known = random.Random(3), parts(f"{ROUND}\n{BLOCK}")
    met = 0
    for _ in range(400):
        labels = [rng.choice(("ROUND", "BLOCK")) for _ in range(2)]
        axes = [rng.choice((0.0, 90.0, rng.uniform(-360, 360))) for _ in labels]
        places = [
            place(
                label, (rng.uniform(0, 60), rng.uniform(0, 60)), "upright" if label == "ROUND" and axis < 90 else axis
            )
            for label, axis in zip(labels, axes, strict=True)
        ]
        one, other = (found for each in places if (found := body_of(known[each.label], each)) is not None)
        a, b = (found.outline for each in places if (found := drawn(known[each.label], each)) is not None)
        apart = gap(one, other)
        assert apart == pytest.approx(gap(other, one), abs=1e-9)
        if apart >= 0:
            assert apart == pytest.approx(a.distance(b), abs=0.02)
        else:
            met += 1
            assert a.intersects(b) or apart > -0.02
        at = Point(rng.uniform(0, 60), rng.uniform(0, 60))
        assert max(0.0, to_point(one, (at.x, at.y))) == pytest.approx(a.distance(at), abs=0.02)
    assert 100 < met < 300


def test_bodies_that_touch_are_not_in_each_other() -> None:
    known = parts(f"{ROUND}\n{BLOCK}")

    def body(label: str, *where: object) -> Body:
        found = body_of(known[label], place(label, *where))  # type: ignore[arg-type]
        assert found is not None
        return found

    flat = body("BLOCK", (20, 20), 0.0)
    assert gap(flat, body("BLOCK", (20, 30), 0.0)) == pytest.approx(0)
    assert gap(flat, body("BLOCK", (20, 28), 0.0)) == pytest.approx(-2)
    assert gap(flat, body("ROUND", (55, 20), "upright")) == pytest.approx(0)
    assert gap(flat, body("ROUND", (20, 20), "upright")) == pytest.approx(-20)
    assert (flat.low, flat.high) == (0, 14)
    assert (body("BLOCK", (20, 20), "upright", 5.0).low, body("BLOCK", (20, 20), "upright", 5.0).high) == (5, 45)
    assert body_of(known["ROUND"], place("ROUND", (1, 1), None)) is None


def test_what_goes_over_the_edge_is_what_shapely_cuts_off() -> None:
    """With one corner clipped: a board is convex, so what goes over it goes over one of its sides."""
    rng, known = random.Random(4), parts(f"{ROUND}\n{BLOCK}")
    (layout,) = laid_out(HORN).layouts
    assert layout.board.corners == (Corner((220, 120), 8, layout.board.corners[0].span),)
    for _ in range(300):
        where = place("ROUND", (rng.uniform(180, 225), rng.uniform(70, 125)), "upright")
        if rng.random() < 0.5:
            where = place("BLOCK", (rng.uniform(180, 225), rng.uniform(70, 125)), rng.uniform(0, 180))
        ours, outside = body_of(known[where.label], where), drawn(known[where.label], where)
        assert ours is not None and outside is not None
        left = outside.outline.difference(outline_of(layout)).area
        over = over_edge(ours, layout)
        assert (over > 0) == (left > 0) or abs(over) < 0.02


def test_an_assumed_air_coil_has_its_inductance_and_resistance() -> None:
    """By another formula, for inches: H. A. Wheeler, Simple inductance formulas for radio coils, Proc. IRE 16, 1928
    (from memory): L = 0.8 a^2 N^2 / (6 a + 9 b + 10 c) uH, a few per cent off."""
    side = brooks_mm(1e-3, 1e-3, 0.0)
    assert side is not None
    turns = (side / 1.1) ** 2
    a, b, c = 1.5 * side / 25.4, side / 25.4, side / 25.4
    assert 0.8 * a**2 * turns**2 / (6 * a + 9 * b + 10 * c) == pytest.approx(1000, rel=0.03)
    ohm = 1.7241e-8 * turns * 2 * pi * 1.5 * side / 1e3 / (pi / 4 * 1e-6)
    assert brooks_mm(1e-3, 0.0, ohm) == pytest.approx(side, rel=1e-9)


@pytest.mark.parametrize(
    ("declared", "size"),
    [
        ("coil X 1 mH { length 20 mm, diameter 50 mm }", (20, 50, 50, True, False)),
        ("resistor X 1 ohm { 10 W, wirewound }", (48, 10, 9, False, True)),
        ("resistor X 1 ohm { 10 W, wirewound, height 12 mm }", (48, 10, 12, False, True)),
        ("fuse X 2 A", (23, 10, 12, False, True)),
        ("capacitor X 10 uF { film }", None),
        ("coil X 1 mH { dcr 0.3 ohm }", None),
        ("resistor X 1 ohm { 200 W, wirewound }", None),
        ("link X", None),
    ],
)
def test_what_is_stated_comes_first_and_too_little_is_no_size(declared: str, size: tuple[object, ...] | None) -> None:
    found = size_of(parts(declared)["X"])
    assert (found and (found.length, found.width, found.height, found.round, found.assumed)) == size


def test_the_examples_state_sizes_such_as_are_assumed() -> None:
    """The volume of a capacitor that is not stated is within a factor of two of what the examples state."""
    for path in EXAMPLES:
        for label, part in laid_out(path).design.parts.items():
            known = {name: value for name, value in part.quantities.items() if name not in ("length", "diameter")}
            stated, usual = size_of(part), size_of(replace(part, quantities=known))
            if part.kind == "capacitor":
                assert stated is not None and usual is not None
                assert 0.5 < (stated.length * stated.width**2) / (usual.length * usual.width**2) < 2, label


# --- what is said


def told(*changes: str) -> list[Diagnostic]:
    text = HORN.read_text(encoding="utf-8")
    for old, new in zip(changes[::2], changes[1::2], strict=True):
        assert text.count(old) == 1, old
        text = text.replace(old, new)
    names = ("part-too-high", "bodies-collide", "body-over-edge")
    return [f for f in findings_of(Source("horn.shunt", text), ("language", "board")) if f.name in names]


R2 = "place R2 at 196:57 mm { axis 90 deg, leads into north_east 2 and rail_east 5, raised 6 mm }"


def test_a_room_too_low_is_told_of_what_is_higher() -> None:
    (finding,) = told("depth 75 mm", "depth 40 mm")
    assert (finding.name, finding.subjects, finding.severity.value) == ("part-too-high", ("L2",), "error")
    assert finding.label.startswith("6 mm higher")
    assert told("depth 75 mm", "depth 40 mm", "amplifier", "limit part-too-high 7 mm\namplifier") == []


def test_a_part_raised_over_another_is_free_if_heights_allow() -> None:
    (finding,) = told(R2, R2.replace("196:57", "26:57"))
    assert (finding.name, finding.subjects) == ("bodies-collide", ("R2", "C1"))
    assert told(R2, R2.replace("196:57", "26:57").replace("raised 6", "raised 20.1")) == []
    assert told(R2, R2.replace("196:57 mm", "26:57 mm on solder side")) == []


def test_a_part_over_the_edge_and_one_on_a_fixing() -> None:
    (finding,) = told(R2, R2.replace("196:57", "212:60"))
    assert (finding.name, finding.subjects) == ("body-over-edge", ("R2",)) and "fixing" in finding.headline
    (finding,) = told(R2, R2.replace("196:57", "217:86"))
    assert (finding.name, finding.subjects, finding.label) == ("body-over-edge", ("R2",), "by 2 mm")


def test_an_assumed_size_is_told_as_such_and_is_no_error() -> None:
    """The coil's resistance gives it 51 mm of diameter and 13 mm of length, lying."""
    (finding,) = told("depth 75 mm", "depth 48 mm", ", diameter 46 mm, length 14 mm, mass 110 g", "")
    assert (finding.name, finding.subjects, finding.severity.value) == ("part-too-high", ("L2",), "warning")
    assert "`L2` is assumed" in finding.help
