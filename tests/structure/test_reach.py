"""Potentials agree with a dense linear solution, and every document has one answer to which driver is turned round."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from shuntwise.api import load, load_text
from shuntwise.documents.read_aloud import read_aloud
from shuntwise.graph.circuit import Circuit
from shuntwise.pipeline import Compilation
from shuntwise.structure.ladders import recognise
from shuntwise.structure.reach import potentials, turned_round

TESTS = Path(__file__).parents[1]
DESIGNS = sorted([*(TESTS.parent / "examples").glob("*.shunt"), *(TESTS / "strangers").glob("*.shunt")])


def variants(path: Path) -> list[Compilation]:
    base = load(str(path))
    return [base, *(load(str(path), variant=variant.name) for variant in base.design.variants)]


def dense(circuit: Circuit) -> dict[str, float]:
    """Potentials by the conductance matrix of all nets (node analysis), solved by least squares."""
    nets = list(circuit.nets)
    matrix, right = np.zeros((len(nets), len(nets))), np.zeros(len(nets))
    for edge in circuit.edges.values():
        if edge.kind in ("part", "driver"):
            a, b = nets.index(edge.plus), nets.index(edge.minus)
            matrix[[a, b, a, b], [a, b, b, a]] += (1, 1, -1, -1) if a != b else (0, 0, 0, 0)
    for pair in circuit.design.feeds:
        for sign, volt in (("+", 1.0), ("-", 0.0)):
            row = nets.index(circuit.pad(pair.name, sign))
            matrix[row], right[row] = 0, volt
            matrix[row, row] = 1
    return dict(zip(nets, np.linalg.lstsq(matrix, right, rcond=None)[0], strict=True))


@pytest.mark.parametrize("path", DESIGNS, ids=lambda path: path.stem)
def test_potentials_agree_with_a_dense_solution(path: Path) -> None:
    for made in variants(path):
        ours, theirs = potentials(made.circuit), dense(made.circuit)
        assert ours == pytest.approx({net: theirs[net] for net in ours}, abs=1e-10)
        assert {made.circuit.pad(name, "+") for name in made.design.drivers} <= ours.keys()


@pytest.mark.parametrize("seed", range(40))
def test_potentials_of_random_meshes(seed: int) -> None:
    rng = np.random.default_rng(seed)
    nodes = ["input+", "return", *(f"n{k}" for k in range(int(rng.integers(1, 9))))]
    walks, parts = [], []
    for number in range(int(rng.integers(3, 25))):
        a, b = rng.choice(nodes, 2, replace=False)
        parts.append(f"resistor R{number} 1 ohm")
        walks.append(f"  {a} -- R{number} -- {b}")
    text = "driver woofer 8 ohm\n" + "\n".join(parts) + "\nleg woofer {\n  input+ -- woofer+\n  woofer- -- return\n"
    circuit = load_text(text + "\n".join(walks) + "\n}\n").circuit
    ours, theirs = potentials(circuit), dense(circuit)
    assert ours == pytest.approx({net: theirs[net] for net in ours}, abs=1e-10)


def test_a_long_ladder_is_no_recursion() -> None:
    count = 3_000
    parts = "".join(f"resistor R{k} 1 ohm\n" for k in range(count))
    walk = " -- ".join(f"R{k}" for k in range(count))
    text = f"driver woofer 8 ohm\n{parts}leg woofer {{\n  input+ -- {walk} -- woofer-\n  woofer+ -- return\n}}\n"
    assert turned_round(load_text(text).circuit) == {"woofer"}


def said_turned(made: Compilation) -> set[str]:
    said = [line for line in read_aloud(made.circuit).splitlines() if line.endswith("its minus is the fed end.")]
    told = {line.removeprefix("The ").partition(" is turned round")[0] for line in said}
    return {name for name in made.circuit.design.drivers if {name, name[0].upper() + name[1:]} & told}


UNEVEN = """driver woofer 8 ohm { re 6 ohm }
resistor R1 1 ohm
resistor R2 1 ohm
resistor R3 1 ohm
resistor R4 1 ohm
resistor R5 1 ohm
leg woofer {
  input+ -- %s
  %s -- return
}
"""
WAYS = [
    ("(R1 | R2 | R3) -- woofer-", "woofer+ -- R4 -- R5"),
    ("R1 -- R2 -- R3 -- woofer+", "woofer- -- R4 -- R5"),
    ("R1 -- R2 -- R3 -- woofer-", "woofer+ -- R4 -- R5"),
    ("R1 -- R2 -- R3 -- woofer-", "woofer+ -- (R4 | R5)"),
]


@pytest.mark.parametrize("path", DESIGNS, ids=lambda path: path.stem)
def test_reading_and_checks_turn_the_same_drivers_round(path: Path) -> None:
    for made in variants(path):
        assert_one_answer(made)


@pytest.mark.parametrize("way", WAYS)
def test_reading_and_checks_turn_the_same_driver_round_by_its_resistors(way: tuple[str, str]) -> None:
    assert_one_answer(load_text(UNEVEN % way))


def assert_one_answer(made: Compilation) -> None:
    turned = turned_round(made.circuit)
    assert said_turned(made) == turned
    ladders = recognise(made.circuit).ladders
    assert {name for name, ladder in ladders.items() if ladder.turned} == turned & ladders.keys()
