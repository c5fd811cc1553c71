"""Frames about used networks hold the parts of their use and nothing else; what none can hold is told."""

from __future__ import annotations

import re
import time
from collections import defaultdict

from schematic.circuits import Random_, circuit_of, example, wanted, without_links
from schematic.reading import Box, apart, gathered_lines, hull_of, read, shapes, text_box, within
from schematic.test_legible import faults
from schematic.test_reading_back import LONG
from shuntwise.documents.schematic.draw import schematic_sheets
from shuntwise.documents.sheet import GREY, Sheet, Stroke, Text
from shuntwise.graph.circuit import Circuit


def frames(sheet: Sheet) -> list[Box]:
    strokes = [mark for mark in sheet.marks if isinstance(mark, Stroke)]
    return [hull_of(stroke) for stroke in strokes if stroke.tone == GREY and stroke.dashes and stroke.closed]


def names(sheet: Sheet) -> list[tuple[str, str | None, int, int, Box]]:
    """Of frames: the use, its network if there is room for that, which piece of how many, and where it stands."""
    found = []
    for block in gathered_lines([mark for mark in sheet.marks if isinstance(mark, Text) and mark.size == 2.8]):
        said = re.fullmatch(r"([\w.]+)(?::(\w+?))?(,(?:part)?(\d+)of(\d+))?", block.text.replace(" ", ""))
        assert said is not None
        found.append((said[1], said[2], int(said[4] or 1), int(said[5] or 1), block.box))
    return found


def told(sheet: Sheet) -> dict[str, set[str]]:
    """By use its parts that no frame has room about."""
    text = " ".join(mark.text for mark in sheet.marks if isinstance(mark, Text) and mark.size == 2.6)
    said = re.findall(r"Parts of ([\w.]+) \(\w+\) that no frame has room about: ([\w., ]+)\.(?: |$)", text)
    return {use: set(labels.split(", ")) for use, labels in said}


def hold(sheets: tuple[Sheet, ...], circuit: Circuit) -> tuple[int, int]:
    """How many parts frames hold, and how many none does."""
    uses = circuit.design.network_of
    left = {use: labels for sheet in sheets for use, labels in told(sheet).items()}
    held: dict[str, list[str]] = defaultdict(list)
    pieces: dict[str, list[tuple[int, int]]] = defaultdict(list)
    for sheet in sheets:
        drawn = {shape.label: shape.box for shape in shapes(sheet)}
        labels = [mark for mark in sheet.marks if isinstance(mark, Text) and mark.bold and mark.size == 3.0]
        boxes = frames(sheet)
        for use, network, number, of, at in names(sheet):
            assert network in (uses[use], None)
            pieces[use].append((number, of))
            frame = min(boxes, key=lambda box: apart_from_edge(box, at))
            boxes.remove(frame)
            inside = [label for label, box in drawn.items() if apart(box, frame) == 0]
            assert inside and all(within(drawn[label], frame) and label.startswith(f"{use}.") for label in inside)
            assert {text.text for text in labels if apart(text_box(text), frame) == 0} <= {*inside}
            held[use] += inside
        assert not boxes
    kinds = wanted(circuit).kinds
    for use in uses:
        own = sorted(label for label in kinds if label.startswith(f"{use}."))
        assert sorted([*held[use], *left.get(use, ())]) == own
        numbers = sorted(number for number, _ in pieces[use])
        (count,) = {of for _, of in pieces[use]} or {0}
        assert numbers == [*range(1, count + 1)] or (left.get(use) and {*numbers} < {*range(1, count + 1)})
    return sum(map(len, held.values())), sum(map(len, left.values()))


def apart_from_edge(frame: Box, name: Box) -> float:
    """Of a frame's nearest line; the name may stand inside."""
    left, top, right, low = frame
    lines = ((left, top, right, top), (left, low, right, low), (left, top, left, low), (right, top, right, low))
    return min(apart(line, name) for line in lines)


def test_frames_hold_the_parts_of_their_use_and_no_others() -> None:
    """More than four of five parts of random circuits are in frames; the others are told below."""
    held = left = 0
    for seed in range(400 if LONG else 25):
        text = Random_(seed).networks()
        circuit = circuit_of(text)
        sheets = schematic_sheets(circuit)
        try:
            more = hold(sheets, circuit)
            held, left = held + more[0], left + more[1]
            assert without_links(read(sheets), circuit) == wanted(circuit)
            assert [fault for sheet in sheets for fault in faults(sheet)] == []
        except Exception as error:
            raise AssertionError(f"seed {seed}:\n{text}") from error
    assert held > 5 * left > 0


def test_parts_in_several_places_have_several_frames() -> None:
    """One in the way to the driver, one behind it: between them stands what is not of the use."""
    text = """network ends (into, middle, again, out) {
  resistor Ra 4 ohm
  capacitor Ca 5 uF
  resistor Rb 4 ohm
  into -- Ra -- Ca -- middle
  again -- Rb -- out
}
use ends as E1
driver woofer 8 ohm
coil L1 1 mH
leg woofer {
  input+ -- E1.into
  E1.middle -- L1 -- E1.again
  E1.out -- woofer+
  woofer- -- return
}
"""
    (sheet,) = schematic_sheets(circuit_of(text))
    assert sorted(name[:4] for name in names(sheet)) == [("E1", "ends", 1, 2), ("E1", "ends", 2, 2)]
    assert hold((sheet,), circuit_of(text)) == (3, 0)


def test_the_showcase_has_whole_frames() -> None:
    circuit = example("13-harbour-stage")[0]
    assert hold(schematic_sheets(circuit), circuit) == (6, 0)


def test_a_network_of_hundreds_of_parts_takes_no_time() -> None:
    """Among as many others."""
    inner = [f"  resistor R{n} 4 ohm\n  into -- R{n} -- out" for n in range(150)]
    others = [f"resistor R{n} 4 ohm" for n in range(150)]
    walks = [f"  input+ -- R{n} -- woofer+" for n in range(150)]
    network = "\n".join(["network many (into, out) {", *inner, "}", "use many as M1", "driver woofer 8 ohm", *others])
    leg = "\n".join(["leg woofer {", "  input+ -- M1 -- woofer+", *walks, "  woofer- -- return", "}"])
    circuit = circuit_of(f"{network}\n{leg}\n")
    start = time.perf_counter()
    sheets = schematic_sheets(circuit)
    assert time.perf_counter() - start < 8
    assert len(sheets) > 1 and any(frames(sheet) for sheet in sheets)
