"""The judge of layouts is right by the project's solver and by ngspice, and the layouts of the examples are sound."""

from __future__ import annotations

import random
import subprocess
from collections import Counter
from dataclasses import replace
from itertools import islice
from pathlib import Path

import numpy as np
import pytest

from board.bodies import faults
from board.designs import EXAMPLES, JUDGES, LaidOut, forms, laid_out
from board.mutations import FAMILIES, mistakes, rerouted
from board.outside import FREQ_HZ, Doubtful, Judge, deck, lay, nets_of, solve
from engines.installed import needs
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.network.lower import Unlowered, lower
from shuntwise.response.solve import Response, Solver

ALL = [*EXAMPLES, *JUDGES]
each_design = pytest.mark.parametrize("path", ALL, ids=lambda path: path.stem)


def response_of(laid: LaidOut) -> Response:
    network = lower(laid.circuit)
    assert not isinstance(network, Unlowered)
    return Solver(network).solve(FREQ_HZ)


def test_there_are_layouts_to_judge() -> None:
    assert len(EXAMPLES) >= 5
    assert len(JUDGES) == 3


@each_design
def test_every_form_as_laid_out_does_what_its_circuit_does(path: Path) -> None:
    """As laid out by the judge's own tableau, as meant by the project's solver."""
    for laid in forms(path):
        built, meant = solve(lay(laid.design, nets_of(laid.design, laid.layouts))), response_of(laid)
        for driver in laid.design.drivers:
            assert built.volts[driver].sum(axis=1) == pytest.approx(meant.driver_voltage(driver), rel=1e-6)
        for feed in laid.design.feeds:
            assert built.ohm(feed.name) == pytest.approx(meant.impedance(feed.name), rel=1e-6)


@needs(NGSPICE)
@each_design
def test_ngspice_on_what_is_laid_out_gives_the_response_of_the_circuit(path: Path, tmp_path: Path) -> None:
    laid = laid_out(path)
    built = lay(laid.design, nets_of(laid.design, laid.layouts))
    (tmp_path / "layout.cir").write_text(deck(built, [float(freq) for freq in FREQ_HZ]))
    subprocess.run(["ngspice", "-b", "-n", "layout.cir"], cwd=tmp_path, check=True, capture_output=True, timeout=60)
    rows = [np.loadtxt(tmp_path / f"out{at}.txt", skiprows=1) for at in range(len(FREQ_HZ))]
    found = np.array([row[1::2] + 1j * row[2::2] for row in rows])
    meant = response_of(laid)
    (feed,) = laid.design.feeds
    assert -1 / found[:, 0] - built.source == pytest.approx(meant.impedance(feed.name), rel=1e-6)
    for at, name in enumerate(built.seen, 1):
        if name in laid.design.drivers:
            assert found[:, at] == pytest.approx(meant.driver_voltage(name), rel=1e-6)


def test_a_layout_that_cannot_be_built_is_told() -> None:
    """All parts of one shifted together: onto a fixing, over a hole, and over the ties of others."""
    laid = laid_out(EXAMPLES[1])
    (layout,) = laid.layouts
    places = [replace(place, at=(place.at[0] - 8, place.at[1])) for place in layout.places if place.at]
    told = list(faults(laid.design, replace(layout, places=tuple(places), depth=30.0)))
    told += faults(laid.design, replace(layout, places=(*layout.places, replace(places[0], label="L2", ties=()))))
    for piece in (
        "on the fixing",
        "is under C1",
        "of L1 is under L2",
        "too tall",
        "not tied",
        "are in one place",
        "2 leads in",
    ):
        assert any(piece in fault for fault in told), piece


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_the_layouts_of_the_examples_can_be_built(path: Path) -> None:
    laid = laid_out(path)
    placed = {place.label for layout in laid.layouts for place in layout.places}
    assert placed == set(laid.design.parts)
    assert [fault for layout in laid.layouts for fault in faults(laid.design, layout)] == []


def test_the_two_way_board_does_not_take_the_six_parts_as_it_is_bought() -> None:
    """Without its jumper or its cut it does something else, and one of its areas has fewer holes than leads."""
    laid = next(laid_out(path) for path in EXAMPLES if path.stem == "07-market-horn")
    (layout,) = laid.layouts
    judge = Judge(laid.circuit)
    assert judge.harmless((layout,))
    assert not judge.harmless((replace(layout, cuts=()),))
    assert not judge.harmless((replace(layout, wires=tuple(w for w in layout.wires if w.kind != "jumper")),))
    used = [lead.spot.hole for place in layout.places for lead in place.leads]
    used += [wire.first.hole for wire in layout.wires]
    area = {hole.name: hole.area for hole in layout.holes}
    assert Counter(map(area.get, used))["north_east"] > Counter(hole.area for hole in layout.board.holes)["north_east"]


@each_design
def test_mistakes_do_harm_and_other_ways_do_none(path: Path) -> None:
    """A few of each family here, all of them in run.py: mistakes mostly do harm, what is only re-routed never does."""
    laid = laid_out(path)
    judge = Judge(laid.circuit)
    harm = Counter[str]()
    for change in mistakes(laid.circuit, laid.layouts, seed=1, most=12):
        try:
            harm[change.family] += not judge.harmless(change.make(laid.layouts))
        except Doubtful:
            continue
    never = {
        "part turned",
        "cut forgotten",
        "cut shifted",
        "cut too short",
        "hole off the copper",
        "wire's end misplaced",
    }
    assert {family for family in FAMILIES if family not in never} <= {family for family, count in harm.items() if count}
    for change in islice(rerouted(laid.circuit, laid.layouts, random.Random(1)), 12):
        assert judge.harmless(change.make(laid.layouts)), change.words
