"""A hundred parts and more in the shapes that are worst for a page: several pages, which say so, and all reads back."""

from __future__ import annotations

import itertools
import time
from collections.abc import Iterator

import pytest

from schematic.circuits import circuit_of, wanted, without_links
from schematic.reading import read
from schematic.test_legible import faults
from shuntwise.documents.schematic.draw import LEAST, MOST, schematic_sheets
from shuntwise.documents.sheet import Text


def design(walks: list[str], parts: dict[str, str], drivers: int = 1) -> str:
    names = [f"woofer{n}" for n in range(1, drivers + 1)]
    lines = [f"driver {name} 8 ohm" for name in names]
    lines += [
        f"{kind} {label} {value}" for label, (kind, _, value) in ((k, v.partition(" ")) for k, v in parts.items())
    ]
    return "\n".join([*lines, f"leg {' and '.join(names)} {{", *(f"  {walk}" for walk in walks), "}"]) + "\n"


def ladder(sections: int) -> str:
    """Coil, capacitor, coil, capacitor: nested as deeply as it is long."""
    parts = {f"L{n}": "coil 1 mH" for n in range(sections)} | {f"C{n}": "capacitor 5 uF" for n in range(sections)}
    nodes = ["input+", *(f"node_{n}" for n in range(sections))]
    walks = [f"{a} -- L{n} -- {b}" for n, (a, b) in enumerate(itertools.pairwise(nodes))]
    walks += [f"node_{n} -- C{n} -- return" for n in range(sections)]
    return design([*walks, f"{nodes[-1]} -- woofer1+", "woofer1- -- return"], parts)


def behind(sections: int) -> str:
    """The same behind a driver's back, with no driver in it."""
    return ladder(sections).replace(f"node_{sections - 1} -- woofer1+", "input+ -- woofer1+")


def in_a_row(count: int) -> str:
    parts = {f"R{n}": "resistor 4 ohm" for n in range(count)}
    return design([f"input+ -- {' -- '.join(parts)} -- woofer1+", "woofer1- -- return"], parts)


def side_by_side(count: int) -> str:
    parts = {f"C{n}": "capacitor 5 uF" for n in range(count)}
    return design([f"input+ -- ({' | '.join(parts)}) -- woofer1+", "woofer1- -- return"], parts)


def across(count: int) -> str:
    parts = {f"C{n}": "capacitor 5 uF" for n in range(count)}
    return design(
        ["input+ -- woofer1+", "woofer1- -- return", *(f"woofer1+ -- {part} -- return" for part in parts)], parts
    )


def drivers(count: int, way: str) -> str:
    names = [f"woofer{n}" for n in range(1, count + 1)]
    if way == "row":
        ends = ["input+", *(f"node_{n}" for n in range(count - 1)), "return"]
        walks = [
            w
            for n, (a, b) in zip(names, itertools.pairwise(ends), strict=True)
            for w in (f"{a} -- {n}+", f"{n}- -- {b}")
        ]
    else:
        walks = [walk for n in names for walk in (f"input+ -- {n}+", f"{n}- -- return")]
    return design(walks, {}, count)


def grid(side: int) -> str:
    """Squares of resistors: far from series and parallel."""
    parts, walks = {}, []
    for x in range(side):
        for y in range(side):
            for label, (u, v) in ((f"R{x}_{y}", (x + 1, y)), (f"R{x}_{y}b", (x, y + 1))):
                if max(u, v) < side:
                    parts[label] = "resistor 4 ohm"
                    walks.append(f"node_{x}_{y} -- {label} -- node_{u}_{v}")
    last = f"node_{side - 1}_{side - 1}"
    return design(["input+ -- node_0_0", *walks, f"{last} -- woofer1+", "woofer1- -- return"], parts)


TEXTS = {
    "ladder": ladder(70),
    "behind": behind(60),
    "in_a_row": in_a_row(100),
    "side_by_side": side_by_side(60),
    "across": across(70),
    "drivers_in_a_row": drivers(30, "row"),
    "drivers_side_by_side": drivers(30, "side"),
    "grid": grid(6),
}


@pytest.mark.parametrize("name", TEXTS)
def test_hundreds_of_parts_are_drawn_and_read_back(name: str) -> None:
    circuit = circuit_of(TEXTS[name])
    start = time.perf_counter()
    sheets = schematic_sheets(circuit)
    assert time.perf_counter() - start < 8
    assert without_links(read(sheets), circuit) == wanted(circuit)
    assert len(sheets) > 1
    for number, sheet in enumerate(sheets, start=1):
        assert f"sheet {number} of {len(sheets)}" in " ".join(texts(sheet.marks))


def test_a_large_drawing_is_legible() -> None:
    for text in (ladder(40), side_by_side(30), drivers(12, "row")):
        for sheet in schematic_sheets(circuit_of(text), page=LEAST, ratings=True):
            assert [*faults(sheet)] == []


def test_what_no_page_shows_is_not_drawn() -> None:
    (sheet,) = schematic_sheets(circuit_of(in_a_row(MOST)))
    assert any("Not drawn" in text for text in texts(sheet.marks))


def test_too_small_a_page_is_refused() -> None:
    with pytest.raises(ValueError, match="190 x 150 mm"):
        schematic_sheets(circuit_of(in_a_row(2)), page=(100, 100))


def texts(marks: object) -> Iterator[str]:
    assert isinstance(marks, tuple)
    return (mark.text for mark in marks if isinstance(mark, Text))
