"""The reader sees what is wrong with a sheet; what it does not see is the same circuit."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from itertools import combinations

import pytest

from schematic.circuits import example, wanted, without_links
from schematic.reading import BAR, PEN, WIRE, Read, Unreadable, gathered, read
from shuntwise.documents.schematic.draw import schematic_sheets
from shuntwise.documents.sheet import Mark, Sheet, Stroke, Text, moved
from shuntwise.graph.circuit import Circuit
from shuntwise.model.differences import differences

DESIGNS = ("02-rehearsal-wedge", "05-cafe-series", "07-market-horn", "13-harbour-stage")


def seen(sheet: Sheet, marks: list[Mark], circuit: Circuit) -> bool:
    try:
        found = without_links(read([replace(sheet, content=tuple(marks))]), circuit)
    except (Unreadable, AssertionError, ValueError):
        return True
    return found != wanted(circuit)


def wires_left_out(marks: list[Mark]) -> Iterator[tuple[str, list[Mark]]]:
    for mark in marks:
        if isinstance(mark, Stroke) and mark.width == WIRE and not mark.dashes:
            yield f"wire at {mark.points}", [other for other in marks if other is not mark]


def signs_exchanged(marks: list[Mark]) -> Iterator[tuple[str, list[Mark]]]:
    """A part turned round: its signs change places, or its dot goes to the other end of its winding."""
    plus, minus = ([m for m in marks if isinstance(m, Text) and m.text == sign and m.size == 2.6] for sign in "+−")
    for a, b in zip(plus, minus, strict=True):
        turned = {id(a): replace(a, x=b.x, y=b.y), id(b): replace(b, x=a.x, y=a.y)}
        yield f"driver at {a.x}, {a.y}", [turned.get(id(m), m) for m in marks]
    for winding in (m for m in marks if isinstance(m, Stroke) and m.width == PEN and len(m.points) > 30):
        dots = [m for m in marks if isinstance(m, Stroke) and m.width == 0 and _beside(m, winding)]
        for dot in dots:
            (x1, y1), (x2, y2) = winding.points[0], winding.points[-1]
            x, y = dot.points[0]
            # The middle of the winding is where the dot is mirrored; it is half a millimetre wide.
            across, down = (x1 + x2 - 2 * x + 1, 0) if y1 == y2 else (0, y1 + y2 - 2 * y)
            other = moved(dot, across, down)
            yield f"winding at {winding.points[0]}", [other if m is dot else m for m in marks]


def _beside(dot: Stroke, winding: Stroke) -> bool:
    x, y = dot.points[0]
    near = min(max(abs(x - px), abs(y - py)) for px, py in winding.points)
    return len(dot.points) == 16 and near < 2.2 and max(abs(x - a) for a, _ in dot.points) < 1.05


def symbols_shifted(marks: list[Mark]) -> Iterator[tuple[str, list[Mark]]]:
    """Along and across its wires, farther than a plate is long: on a plate its wire may end anywhere."""
    outlines = [m for m in marks if isinstance(m, Stroke) and m.width == PEN and len(m.points) not in (5, 16)]
    for shape in gathered(outlines):
        for across, down in ((3.0, 0.0), (0.0, 3.0)):
            yield f"{shape.strokes[0].points[0]}", [moved(m, across, down) if m in shape.strokes else m for m in marks]


def labels_exchanged(marks: list[Mark]) -> Iterator[tuple[str, list[Mark]]]:
    labels = [mark for mark in marks if isinstance(mark, Text) and mark.bold and mark.size == 3.0]
    # Of neighbours and every third pair beside: all would take seconds.
    pairs = list(combinations(labels, 2))
    for a, b in [pair for n, pair in enumerate(pairs) if n % 3 == 0 or pair[0].y == pair[1].y]:
        swapped = {id(a): replace(a, text=b.text), id(b): replace(b, text=a.text)}
        yield f"{a.text} and {b.text}", [swapped.get(id(m), m) for m in marks]


def names_exchanged(marks: list[Mark]) -> Iterator[tuple[str, list[Mark]]]:
    """The names at two wires, of posts among them."""
    names = [mark for mark in marks if isinstance(mark, Text) and mark.size == 2.4 and ":" not in mark.text]
    boxed = [name for name in names if name.anchor == "end" or "." in name.text]
    for a, b in combinations(boxed, 2):
        if a.text != b.text:
            swapped = {id(a): replace(a, text=b.text), id(b): replace(b, text=a.text)}
            yield f"{a.text} and {b.text}", [swapped.get(id(m), m) for m in marks]


SPOILERS: tuple[Callable[[list[Mark]], Iterator[tuple[str, list[Mark]]]], ...] = (
    wires_left_out,
    signs_exchanged,
    symbols_shifted,
    labels_exchanged,
    names_exchanged,
)


@pytest.mark.parametrize("stem", DESIGNS)
@pytest.mark.parametrize("spoil", SPOILERS, ids=lambda spoil: spoil.__name__)
def test_a_spoilt_sheet_is_seen(spoil: Callable[[list[Mark]], Iterator[tuple[str, list[Mark]]]], stem: str) -> None:
    circuit = example(stem)[0]
    (sheet,) = schematic_sheets(circuit)
    marks = list(sheet.marks)
    assert not seen(sheet, marks, circuit)
    spoilt = list(spoil(marks))
    assert spoilt
    missed = [what for what, worse in spoilt if not seen(sheet, worse, circuit)]
    assert missed == []


def test_bars_are_read_at_what_they_mark() -> None:
    """One that is left out, and one that stands beside other words."""
    itself, variant, *_ = example("13-harbour-stage")
    (sheet,) = schematic_sheets(variant, differences=differences(variant.design, itself.design))
    bars = [mark for mark in sheet.marks if isinstance(mark, Stroke) and mark.width == BAR]
    assert read([sheet]).marked == wanted(variant, itself).marked == {"P1.Rs", "P1.Rp"}
    (label,) = [mark for mark in sheet.marks if isinstance(mark, Text) and mark.text == "C1"]
    for bar in bars:
        others = [mark for mark in sheet.marks if mark is not bar]
        assert len(read([replace(sheet, content=tuple(others))]).marked) == 1
        (x, top), (_, low) = bar.points
        elsewhere = moved(bar, label.x - 1.2 - x, label.y + 0.9 - (top + low) / 2)
        assert "C1" in read([replace(sheet, content=(*others, elsewhere))]).marked


def test_of_a_crossing_only_a_dot_makes_a_joint() -> None:
    """Two wires that cross, with and without one."""
    cross: list[Mark] = [Stroke(((0, 5), (10, 5)), WIRE), Stroke(((5, 0), (5, 10)), WIRE)]
    dot = Stroke(((4.5, 5), (5, 4.5), (5.5, 5), (5, 5.5)), 0, closed=True, fill="ink")
    names = [_named("a", 0, 5), _named("b", 5, 0)]
    for more, joined in ((cross, False), ([*cross, dot], True)):
        found: Read = read([Sheet(20, 20, "", (*more, *names[0], *names[1]))])
        assert len(found.nets) == (1 if joined else 2)


def _named(name: str, x: float, y: float) -> list[Mark]:
    """A post at a wire's end."""
    from math import cos, pi, sin

    ring = tuple((x - 1 + cos(n * pi / 8), y + sin(n * pi / 8)) for n in range(16))
    return [Stroke(ring, PEN, closed=True), Text(x - 3, y + 0.5, name, 2.4, "end")]
