"""What layouts tell the catalogue, and that a design without one loads nothing of boards."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

from bench_words.boards import EVERY_KIND, EXAMPLES
from documents.designs import lowered, one
from shuntwise.bench.neighbours import neighbours_of
from shuntwise.graph.circuit import Circuit


def example(number: str) -> Circuit:
    return lowered(next(EXAMPLES.glob(f"{number}-*.shunt")))[0].circuit


def pairs(circuit: Circuit, found: tuple[tuple[str, str], ...]) -> set[frozenset[str]]:
    return {frozenset(circuit.net_of[point] for point in pair) for pair in found}


def test_close_nets_are_those_of_the_board_and_of_tags() -> None:
    """In example 11 the cuts leave 1 and 2 mm (`tests/board` has it from shapely); all tags have the return beside."""
    circuit = example("11")
    found = neighbours_of(circuit)
    assert found is not None
    tags = {frozenset((net, "return")) for net in ("input+", "woofer+", "tweeter+")}
    cut = {frozenset(("between B1 and C2", "input+")), frozenset(("hp", "tweeter+"))}
    assert pairs(circuit, found.close) == tags | cut
    assert pairs(circuit, tuple(nets for _, nets in found.cuts)) == cut


def test_wires_and_cuts_have_the_names_of_the_text() -> None:
    found = neighbours_of(example("07"))
    assert found is not None
    assert found.jumpers == (("jumper from rail_west 5 to rail_east 1", ("tweeter-", "L2.end", "R2.end")),)
    assert [name for name, _ in found.cuts] == ["cut from 185:82 mm to 185:116 mm"]
    strip = neighbours_of(example("04"))
    assert strip is not None
    assert ("joint at lower 2 of the bus from lower 1 to lower 3", ("woofer-",)) in strip.jumpers


def test_without_a_layout_nothing_is_told_and_nothing_of_boards_loaded() -> None:
    assert neighbours_of(one(EVERY_KIND).circuit) is None
    script = (
        "import sys; from shuntwise.api import load; from shuntwise.bench.neighbours import neighbours_of;"
        f" print(neighbours_of(load({str(EXAMPLES / '01-balcony-fill.shunt')!r}).circuit));"
        " print([m for m in sys.modules if m.startswith('shuntwise.board.') and not m.endswith('judging')])"
    )
    run = subprocess.run(
        [sys.executable, "-c", script],
        env={"PYTHONPATH": str(Path(__file__).parents[2] / "compiler")},
        capture_output=True,
        text=True,
        check=True,
    )
    assert run.stdout.split("\n")[:2] == ["None", "[]"]
