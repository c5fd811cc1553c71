"""Nothing on a schematic lies on anything else, and all of it lies on the page."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterator, Sequence
from itertools import combinations
from math import inf
from pathlib import Path

import pytest

from schematic.circuits import EXAMPLES, Random_, circuit_of, circuits
from schematic.reading import BAR, PEN, WIRE, Box, apart, hull_of, sides, text_box
from shuntwise.documents.schematic.draw import A4_ACROSS, LEAST, schematic_sheets
from shuntwise.documents.sheet import Point, Sheet, Stroke, Text
from shuntwise.graph.circuit import Circuit
from shuntwise.model.differences import Difference, differences

MARGIN = 5.0
SLACK = 0.05


def shrunk(box: Box) -> Box:
    return box[0] + SLACK, box[1] + SLACK, box[2] - SLACK, box[3] - SLACK


def grown(bar: Box) -> Box:
    """A bar is as wide as its pen."""
    return bar[0] - BAR / 2, bar[1], bar[2] + BAR / 2, bar[3]


def crosses(side: tuple[Point, Point], box: Box) -> bool:
    """Does a straight line enter a box (Liang-Barsky clipping)?"""
    (x1, y1), (x2, y2) = side
    enter, leave = 0.0, 1.0
    for start, step, low, high in ((x1, x2 - x1, box[0], box[2]), (y1, y2 - y1, box[1], box[3])):
        if step == 0:
            if not low < start < high:
                return False
            continue
        near, far = sorted(((low - start) / step, (high - start) / step))
        enter, leave = max(enter, near), min(leave, far)
    return enter < leave


def faults(sheet: Sheet) -> Iterator[str]:
    texts = [mark for mark in sheet.marks if isinstance(mark, Text)]
    strokes = [mark for mark in sheet.marks if isinstance(mark, Stroke)]
    boxes = {id(text): shrunk(text_box(text)) for text in texts}
    for a, b in combinations(texts, 2):
        if apart(boxes[id(a)], boxes[id(b)]) == 0:
            yield f"{a.text!r} on {b.text!r}"
    for text in texts:
        for stroke in strokes:
            if apart(boxes[id(text)], hull_of(stroke)) == 0 and any(crosses(s, boxes[id(text)]) for s in sides(stroke)):
                yield f"{text.text!r} on a line at {stroke.points[0]}"
    for bar in (grown(hull_of(stroke)) for stroke in strokes if stroke.width == BAR):
        for stroke in strokes:
            if stroke.width in (WIRE, PEN) and any(crosses(side, bar) for side in sides(stroke)):
                yield f"a bar at {bar} on a line at {stroke.points[0]}"
    for box in [*boxes.values(), *map(hull_of, strokes)]:
        if box[0] < MARGIN or box[1] < MARGIN or box[2] > sheet.width - MARGIN or box[3] > sheet.height - MARGIN:
            yield f"at {box} off a page of {sheet.width} x {sheet.height}"
    yield from symbol_faults(strokes)


def symbol_faults(strokes: Sequence[Stroke]) -> Iterator[str]:
    """Wires that go through symbols, or on one another without being one."""
    wires = [stroke for stroke in strokes if stroke.width == WIRE and not stroke.dashes]
    for stroke in strokes:
        if stroke.width > WIRE and stroke.closed:
            inside = shrunk(hull_of(stroke))
            for wire in wires:
                if any(crosses(side, inside) for side in sides(wire)) and len(stroke.points) != 5:
                    yield f"a wire at {wire.points[0]} through a symbol at {stroke.points[0]}"
    level: dict[float, list[Stroke]] = defaultdict(list)
    for wire in wires:
        (x1, y1), (x2, y2) = wire.points
        if x1 != x2 and y1 != y2:
            yield f"a slanting wire at {wire.points}"
        level[y1 if y1 == y2 else -x1].append(wire)


def legible(
    circuit: Circuit,
    page: tuple[float, float] = A4_ACROSS,
    *,
    ratings: bool = False,
    differing: Collection[Difference] = (),
) -> None:
    for sheet in schematic_sheets(circuit, page=page, ratings=ratings, differences=differing):
        assert [*faults(sheet)] == []


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_example_is_legible(path: Path) -> None:
    itself = circuits(path)[0].design
    for circuit in circuits(path):
        differing = differences(circuit.design, itself)
        legible(circuit, differing=differing)
        legible(circuit, (297.0, inf), ratings=True, differing=differing)


@pytest.mark.parametrize("seed", range(6))
def test_random_circuits_are_legible(seed: int) -> None:
    """Long names among them, on the smallest page, too."""
    random = Random_(seed)
    circuit = circuit_of(random.any_graph())
    legible(circuit)
    legible(circuit, LEAST, ratings=True)
    legible(circuit, differing=every(circuit))
    legible(circuit_of(random.series_parallel()), LEAST)


def every(circuit: Circuit) -> list[Difference]:
    """As if a variant had every part and driver otherwise."""
    design = circuit.design
    found = [Difference("part", label, "", part.value, None) for label, part in design.parts.items()]
    return found + [Difference("driver", name, "wiring", "otherwise", None) for name in design.drivers]


def test_the_check_sees_what_it_looks_for() -> None:
    """A text on a text, on a wire, off the page, a wire through a symbol, and through a bar."""
    wire = Stroke(((20, 20), (60, 20)))
    box = Stroke(((30, 18), (40, 18), (40, 22), (30, 22)), 0.35, closed=True)
    spoilt = [
        (Text(20, 40, "one"), Text(22, 41, "two")),
        (Text(25, 21, "one"), wire),
        (Text(96, 40, "one"),),
        (wire, box),
        (wire, Stroke(((25, 18), (25, 22)), BAR)),
    ]
    for marks in spoilt:
        assert [*faults(Sheet(100, 100, "", marks))] != []
    assert [*faults(Sheet(100, 100, "", (wire, Text(25, 30, "one"))))] == []
