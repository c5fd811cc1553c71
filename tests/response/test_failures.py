"""Every branch open and shorted by the rank-one formula, against solving every case: designs and random meshes."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from lowering import texts
from property.random_networks import random_network
from shuntwise.api import load, network
from shuntwise.network.network import Branch, Network
from shuntwise.response import failures
from shuntwise.response.cases import opened, shorted, solve_cases
from shuntwise.response.failures import fail_each
from shuntwise.response.pivoted import SingularNetwork
from shuntwise.response.solve import Solver

TESTS = Path(__file__).parents[1]
DESIGNS = sorted([*(TESTS.parent / "examples").glob("*.shunt"), *(TESTS / "strangers").glob("*.shunt")])
FREQ_HZ = np.geomspace(20, 20e3, 61)


def by_part(circuit: Network) -> list[tuple[Branch, ...]]:
    cases: dict[str, list[Branch]] = {}
    for branch in circuit.branches:
        cases.setdefault(circuit.element[branch.through].part, []).append(branch)
    return [tuple(branches) for branches in cases.values()]


def agrees(circuit: Network) -> None:
    """Within 1e-5 of the greatest value of a curve: open is 1e12 ohm and shorted 1e-9 ohm where a case is solved."""
    solver, cases = Solver(circuit), by_part(circuit)
    found = fail_each(solver, cases, FREQ_HZ)
    for row, make in enumerate((opened, shorted)):
        values = [{n: v for branch in case for n, v in make(circuit, branch).items()} for case in cases]
        response = solve_cases(solver, values, FREQ_HZ, parts=False)
        for driver in circuit.drivers:
            exact = np.abs(response.driver_voltage(driver.name))
            assert np.abs(found.voltage[driver.name][row] - exact).max() < 1e-5 * max(1.0, exact.max())
        for feed in circuit.feeds:
            exact = np.abs(response.admittance(feed.name))
            assert (np.abs(found.admittance[feed.name][row] - exact) <= 1e-5 * exact + 1e-9).all()


@pytest.mark.parametrize("path", DESIGNS, ids=lambda path: path.stem)
def test_designs(path: Path) -> None:
    agrees(network(load(str(path))))


@pytest.mark.parametrize("seed", range(40))
def test_generated_designs(seed: int, tmp_path: Path) -> None:
    """Coupled coils, tapped ones, dead ends, several inputs."""
    text = texts.make(1000 + seed)
    made = load(str(text.write(tmp_path)), variant=text.variant, settings=text.settings)
    if not isinstance(made.lowered, Network) or not made.lowered.elements:
        pytest.skip("nothing to solve")
    try:
        agrees(made.lowered)
    except SingularNetwork:
        pytest.skip("no single solution")


@pytest.mark.parametrize("seed", range(40))
def test_random_meshes(seed: int) -> None:
    try:
        agrees(random_network(seed))
    except SingularNetwork:
        pytest.skip("no single solution")


def test_most_is_found_by_the_formula(monkeypatch: pytest.MonkeyPatch) -> None:
    """In a design without coupled windings hardly a case is solved: the formula is what makes it fast."""
    solved: list[int] = []
    monkeypatch.setattr(failures, "opened", lambda circuit, branch: solved.append(1) or opened(circuit, branch))
    circuit = network(load(str(next(path for path in DESIGNS if path.stem == "tram-depot"))))
    fail_each(Solver(circuit), by_part(circuit), FREQ_HZ)
    assert len(solved) <= 3, "the drivers alone"


def test_blocks_of_frequencies_change_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    circuit = network(load(str(DESIGNS[0])))
    whole = fail_each(Solver(circuit), by_part(circuit), FREQ_HZ)
    monkeypatch.setattr(failures, "ROOM", 1)
    parts = fail_each(Solver(circuit), by_part(circuit), FREQ_HZ)
    for name, curve in whole.voltage.items():
        assert parts.voltage[name] == pytest.approx(curve, rel=1e-9, abs=1e-15)
