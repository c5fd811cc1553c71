"""The circuit is read back from the strokes of its schematic, by a reader that knows nothing of how it was drawn."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from schematic.circuits import EXAMPLES, Random_, circuit_of, circuits, wanted, without_links
from schematic.reading import read
from shuntwise.documents.schematic.draw import schematic_sheets
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
