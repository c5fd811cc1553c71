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
from numpy.typing import NDArray

from board.bodies import faults
from board.designs import EXAMPLES, JUDGES, STRANGERS, LaidOut, forms, laid_out
from board.mutations import FAMILIES, LeadAt, exchanged, mistakes, rerouted
from board.outside import FREQ_HZ, Doubtful, Judge, Laid, Unsolvable, deck, island_of, lay, nets_of, solve
from engines.installed import needs
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.network.lower import Unlowered, lower
from shuntwise.response.solve import Response, Solver

ALL = [*EXAMPLES, *JUDGES]
each_design = pytest.mark.parametrize("path", ALL, ids=lambda path: path.stem)
each_with_strangers = pytest.mark.parametrize("path", [*ALL, *STRANGERS], ids=lambda path: path.stem)


def response_of(laid: LaidOut) -> Response:
    network = lower(laid.circuit)
    assert not isinstance(network, Unlowered)
    return Solver(network).solve(FREQ_HZ)


def test_there_are_layouts_to_judge() -> None:
    assert len(EXAMPLES) >= 5
    assert len(JUDGES) == 3
    assert len(STRANGERS) == 3


@each_with_strangers
def test_every_form_as_laid_out_does_what_its_circuit_does(path: Path) -> None:
    """As laid out by the judge's own tableau, as meant by the project's solver."""
    for laid in forms(path):
        built, meant = solve(lay(laid.design, nets_of(laid.design, laid.layouts))), response_of(laid)
        for driver in laid.design.drivers:
            assert built.volts[driver].sum(axis=1) == pytest.approx(meant.driver_voltage(driver), rel=1e-6)
        for feed in laid.design.feeds:
            assert built.ohm(feed.name) == pytest.approx(meant.impedance(feed.name), rel=1e-6)


def spiced(built: Laid, folder: Path) -> NDArray[np.complex128]:
    """By ngspice, the current into the amplifier and the voltage across each of `seen` (F, 1 + N)."""
    (folder / "layout.cir").write_text(deck(built, [float(freq) for freq in FREQ_HZ]))
    subprocess.run(["ngspice", "-b", "-n", "layout.cir"], cwd=folder, check=True, capture_output=True, timeout=60)
    rows = [np.loadtxt(folder / f"out{at}.txt", skiprows=1) for at in range(len(FREQ_HZ))]
    return np.array([row[1::2] + 1j * row[2::2] for row in rows])


@needs(NGSPICE)
@each_design
def test_ngspice_on_what_is_laid_out_gives_the_response_of_the_circuit(path: Path, tmp_path: Path) -> None:
    laid = laid_out(path)
    built = lay(laid.design, nets_of(laid.design, laid.layouts))
    found, meant = spiced(built, tmp_path), response_of(laid)
    (feed,) = laid.design.feeds
    assert -1 / found[:, 0] - built.source == pytest.approx(meant.impedance(feed.name), rel=1e-6)
    for at, name in enumerate(built.seen, 1):
        if name in laid.design.drivers:
            assert found[:, at] == pytest.approx(meant.driver_voltage(name), rel=1e-6)


@needs(NGSPICE)
def test_a_coil_turned_against_another_is_solved_as_ngspice_does(tmp_path: Path) -> None:
    """The two coils of this one are coupled: so wound the response is another, if not by much."""
    laid = next(laid_out(path) for path in JUDGES if path.stem == "cut-sheet")
    turned = exchanged(laid.layouts, LeadAt(0, "L1", 0), LeadAt(0, "L1", 1))
    assert not Judge(laid.circuit).harmless(turned)
    built = lay(laid.design, nets_of(laid.design, turned))
    ours = solve(built)
    for at, name in enumerate(built.seen, 1):
        assert spiced(built, tmp_path)[:, at] == pytest.approx(ours.volts[name][:, 0], rel=1e-6)


def test_the_pieces_of_one_board_are_those_that_a_finger_finds() -> None:
    """The two-way board of example 7, followed by hand: its areas, of which one is cut, and the track to the lug."""
    (layout,) = next(laid_out(path) for path in EXAMPLES if path.stem == "07-market-horn").layouts
    pieces: dict[int | None, set[str]] = {}
    for hole, island in island_of(layout).items():
        pieces.setdefault(island, set()).add(hole)
    rows = {name: {f"{name} {n}" for n in range(1, 6)} for name in ("north", "rail_west", "rail_east")}
    assert {frozenset(piece) for piece in pieces.values()} == {
        frozenset({"north_west 1", "north_west 2", "north_west 3", "north_west 4", "lug"}),
        *(frozenset(row) for row in rows.values()),
        frozenset({"north_east 1", "h1", "h3"}),
        frozenset({"north_east 2", "h2", "h4"}),
    }


def test_nothing_is_said_of_copper_that_hangs_by_a_hair() -> None:
    """A cut that ends 1 mm and 0.05 mm before the edge of its area, and one that ends as little behind it."""
    (layout,) = next(laid_out(path) for path in EXAMPLES if path.stem == "07-market-horn").layouts
    (cut,) = layout.cuts

    def pieces(end: float) -> int:
        ending_there = replace(cut, end=(cut.end[0], end))
        return len(set(island_of(replace(layout, cuts=(ending_there,))).values()))

    assert (pieces(113.0), pieces(114.05)) == (5, 6)
    with pytest.raises(Doubtful):
        pieces(113.95)


def test_an_amplifier_that_is_shorted_has_no_solution() -> None:
    laid = laid_out(next(path for path in EXAMPLES if path.stem == "07-market-horn"))
    (layout,) = laid.layouts
    jumper = next(wire for wire in layout.wires if wire.kind == "jumper")
    plus = next(wire for wire in layout.wires if wire.second.hole == "input+")
    shorted = (replace(layout, wires=(*layout.wires, replace(jumper, first=plus.first))),)
    with pytest.raises(Unsolvable):
        solve(lay(laid.design, nets_of(laid.design, shorted)))
    assert not Judge(laid.circuit).harmless(shorted)


def test_a_layout_that_cannot_be_built_is_told() -> None:
    """All parts of one shifted together: onto a fixing, over a hole, and over the ties of others."""
    laid = laid_out(EXAMPLES[1])
    (layout,) = laid.layouts
    places = [replace(place, at=(place.at[0] - 8, place.at[1])) for place in layout.places if place.at]
    told = list(faults(laid.design, replace(layout, places=tuple(places))))
    told += faults(laid.design, replace(layout, places=(*layout.places, replace(places[0], label="L2", ties=()))))
    for piece in (
        "is under C1",
        "of L1 is under L2",
        "not tied",
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
    for change in mistakes(laid.circuit, laid.layouts, seed=1, most=8):
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
