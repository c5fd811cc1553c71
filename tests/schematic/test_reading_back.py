"""The circuit is read back from the strokes of its schematic, by a reader that knows nothing of how it was drawn."""

from __future__ import annotations

import os
from collections import Counter
from dataclasses import replace
from pathlib import Path

import pytest

from schematic.circuits import EXAMPLES, Random_, circuit_of, circuits, example, wanted, without_links
from schematic.reading import WIRE, read
from schematic.test_large import ladder
from schematic.test_legible import faults
from shuntwise.documents.schematic.draw import A4_ACROSS, ENLARGED, LEAST, schematic_sheets
from shuntwise.documents.sheet import Mark, Stroke, Text, moved
from shuntwise.graph.circuit import Circuit
from shuntwise.model.differences import differences

LONG = os.environ.get("SHUNTWISE_LONG") == "1"


def holds(circuit: Circuit, itself: Circuit | None = None) -> None:
    """`itself` is the design of which the circuit is a variant."""
    differing = differences(circuit.design, itself.design) if itself is not None else ()
    found = without_links(read(schematic_sheets(circuit, differences=differing)), circuit)
    assert found == wanted(circuit, itself)


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_example_is_read_back(path: Path) -> None:
    """With the bars at what a variant has otherwise."""
    itself, *variants = circuits(path)
    holds(itself)
    for circuit in variants:
        holds(circuit, itself)


@pytest.mark.parametrize("stem", ["02-rehearsal-wedge", "16-village-hall", "18-circus-top"])
def test_a_small_drawing_fills_its_page_and_is_the_same(stem: str) -> None:
    """Its lines and words grow alike, up to what was asked and to the edges of the page."""
    circuit = example(stem)[0]
    (plain,), (large,) = (schematic_sheets(circuit, most=most) for most in (1.0, ENLARGED))
    scale = min(mark.width for mark in large.marks if isinstance(mark, Stroke) and mark.width) / WIRE
    assert 1.05 < scale < ENLARGED + 1e-9
    assert [*faults(large)] == []
    shrunk = tuple(moved(mark, 0, 0, 1 / scale) for mark in large.marks)
    again = replace(large, content=tuple(_rounded(mark) for mark in shrunk))
    assert without_links(read([again]), circuit) == wanted(circuit)
    assert Counter(mark.text for mark in large.marks if isinstance(mark, Text)) == Counter(
        mark.text for mark in plain.marks if isinstance(mark, Text)
    )


def _rounded(mark: Mark) -> Mark:
    """So that the sizes by which a reader knows things are equal again."""
    if isinstance(mark, Text):
        return replace(mark, size=round(mark.size, 6))
    return replace(mark, width=round(mark.width, 6))


def test_a_drawing_that_fills_its_page_stays_as_it_is() -> None:
    circuit = circuit_of(Random_(1).series_parallel())
    for page in (A4_ACROSS, LEAST):
        sheets = schematic_sheets(circuit, page=page, most=ENLARGED)
        assert all([*faults(sheet)] == [] for sheet in sheets)
    crowded = circuit_of(ladder(40))
    assert schematic_sheets(crowded, most=ENLARGED) == schematic_sheets(crowded)


@pytest.mark.parametrize("block", range(10))
def test_random_series_parallel_circuits_are_read_back(block: int) -> None:
    count = 200 if LONG else 10
    for seed in range(block * count, (block + 1) * count):
        text = Random_(seed).series_parallel()
        try:
            holds(circuit_of(text))
        except Exception as error:
            raise AssertionError(f"seed {seed}:\n{text}") from error


@pytest.mark.parametrize("block", range(10))
def test_any_random_circuit_is_read_back(block: int) -> None:
    count = 100 if LONG else 5
    for seed in range(block * count, (block + 1) * count):
        text = Random_(seed).any_graph()
        try:
            holds(circuit_of(text))
        except Exception as error:
            raise AssertionError(f"seed {seed}:\n{text}") from error
