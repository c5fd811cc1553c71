"""The repair of a slip cures it and is as short; that of two slips cures them. Cured is what graph isomorphism says."""

from __future__ import annotations

import os
import random
from collections.abc import Sequence
from dataclasses import replace
from functools import partial
from time import process_time

import pytest

from board.boxes import (
    Bench,
    Slip,
    board,
    circuit_of,
    electrically_same,
    islands,
    laid_out,
    random_text,
    slips,
    wire,
)
from board.test_compare import BOX, LEADS, box
from shuntwise.board.compare import NoCopper, NothingLeadsTo, Open, Short, compare
from shuntwise.board.cutting import trial_cuts
from shuntwise.board.drilling import free_spot
from shuntwise.board.islands import Islands
from shuntwise.board.islands import islands as copper_islands
from shuntwise.board.repair import Repair, repair
from shuntwise.board.steps import (
    AddWire,
    ExchangeLeads,
    ExchangeParts,
    MakeCut,
    Move,
    MoveWire,
    PlaceLeads,
    Step,
    TakeWire,
    apply,
)
from shuntwise.graph.circuit import Circuit
from shuntwise.model.boards import Layout

LONG = bool(os.environ.get("SHUNTWISE_LONG"))


def repaired(circuit: Circuit, layout: Layout) -> Repair:
    bench = Bench([layout])
    return repair(compare(circuit, [layout], bench.islands), bench.cuts, bench.spot)


def done(layout: Layout, steps: Sequence[Step]) -> Layout:
    layouts: tuple[Layout, ...] = (layout,)
    for step in steps:
        layouts = apply(step, layouts)
    return layouts[0]


def made(seed: int) -> tuple[Circuit, list[Slip], random.Random]:
    rng = random.Random(seed)
    circuit = circuit_of(random_text(rng, rng.randint(1, 3)))
    wrong = [slip for slip in slips(laid_out(circuit, rng), rng) if not electrically_same(circuit, slip.layout)]
    return circuit, wrong, rng


def test_slips_are_cured_by_as_many_steps() -> None:
    """The longer ones may be one in a hundred."""
    count = longer = 0
    for seed in range(600 if LONG else 8):
        circuit, wrong, _ = made(7000 + seed)
        for slip in wrong:
            found = repaired(circuit, slip.layout)
            assert found.cures and electrically_same(circuit, done(slip.layout, found.steps)), (seed, slip.kind)
            count += 1
            longer += len(found.steps) > slip.steps
    assert count > 60 and longer <= 0.01 * count, (longer, count)


def test_two_slips_are_cured() -> None:
    """Those not cured may be one in twenty; as the rest those with more than two steps."""
    count = uncured = longer = 0
    for seed in range(300 if LONG else 4):
        circuit, wrong, rng = made(8000 + seed)
        for first in wrong:
            slip = rng.choice(list(slips(first.layout, rng)))
            if electrically_same(circuit, slip.layout):
                continue
            found = repaired(circuit, slip.layout)
            count += 1
            cured = found.cures and electrically_same(circuit, done(slip.layout, found.steps))
            uncured += not cured
            longer += len(found.steps) > 2
    assert count > 30 and uncured <= 0.05 * count and longer <= 0.05 * count, (uncured, longer, count)


@pytest.mark.parametrize("seed", range(30 if LONG else 2))
def test_repairs_hold_on_copper(seed: int) -> None:
    """The same with areas, cuts and drilled holes as geometry."""
    circuit, wrong, _ = made(9000 + seed)
    for slip in wrong:
        copper = copper_islands([slip.layout])
        assert copper.of == islands([slip.layout]).of and not copper.narrow
        found = repair(
            compare(circuit, [slip.layout], copper),
            partial(trial_cuts, [slip.layout], copper),
            lambda _, island, diameter: free_spot(slip.layout, copper, island, diameter),  # noqa: B023
        )
        cured = done(slip.layout, found.steps)
        assert found.cures and compare(circuit, [cured], copper_islands([cured])).right, slip.kind
        assert len(found.steps) <= slip.steps


def test_the_same_text_gives_the_same_repair() -> None:
    circuit, wrong, _ = made(7003)
    for slip in wrong[:3]:
        assert repaired(circuit, slip.layout) == repaired(circuit, slip.layout)


# --- the box by hand


@pytest.fixture(scope="module")
def circuit() -> Circuit:
    return circuit_of(BOX)


def test_a_right_box_needs_nothing(circuit: Circuit) -> None:
    assert repaired(circuit, box()).steps == ()


def test_a_lead_goes_back_to_its_row(circuit: Circuit) -> None:
    moved = box(low=("L1.end", "", "woofer+"), hp=("R1.end", "L2.start", "tweeter-", "C1.start"))
    (mistake,) = repaired(circuit, moved).mistakes
    assert mistake.steps == (Move(("C1", "start"), ("rows", "r3 4"), ("rows", "r1 4")),)
    assert {type(finding) for finding in mistake.findings} == {Open, Short}


def test_a_driver_turned_round_is_one_mistake(circuit: Circuit) -> None:
    wrong = box(hp=("R1.end", "L2.start", "tweeter+"), back=("input-", "C1.end", "woofer-", "L2.end", "tweeter-"))
    ((step,),) = (mistake.steps for mistake in repaired(circuit, wrong).mistakes)
    assert isinstance(step, ExchangeLeads) and step.owner == "tweeter"


def test_two_parts_exchanged_are_one_mistake(circuit: Circuit) -> None:
    """Also where their leads are not told apart, and with the body of one where the other's was."""
    rows = {
        "in": ("input+", "L2.start", "C2.start"),
        "low": ("L2.end", "C1.start", "woofer+"),
        "hp": ("R1.end", "L1.start", "tweeter-"),
        "back": ("input-", "C1.end", "woofer-", "L1.end", "tweeter+"),
    }
    layout = box(**{**LEADS, **rows})
    bodies = {"L1": (10.0, 20.0), "L2": (90.0, 40.0)}
    layout = replace(layout, places=tuple(replace(p, at=bodies.get(p.label)) for p in layout.places))
    ((step,),) = (mistake.steps for mistake in repaired(circuit, layout).mistakes)
    assert isinstance(step, ExchangeParts) and set(step.labels) == {"L1", "L2"}
    cured = {place.label: place.at for place in done(layout, (step,)).places}
    assert (cured["L1"], cured["L2"]) == (bodies["L2"], bodies["L1"])


def test_a_pad_gets_a_lead_out(circuit: Circuit) -> None:
    (mistake,) = repaired(circuit, box(low=("L1.end", "C1.start"))).mistakes
    (step,) = mistake.steps
    assert isinstance(step, AddWire) and step.kind == "lead out" and step.second == ("", "woofer+")
    assert mistake.findings == (NothingLeadsTo(("woofer", "+")),)


def test_both_leads_out_at_one_pad(circuit: Circuit) -> None:
    layout = box(back=("input-", "C1.end", "woofer+", "L2.end", "tweeter+"))
    ((step,),) = (mistake.steps for mistake in repaired(circuit, layout).mistakes)
    assert step == MoveWire("lead out", ("", "woofer+"), ("rows", "r4 3"), ("", "woofer-"))
    assert compare(circuit, [done(layout, (step,))], islands([layout])).right


def test_a_wire_that_shorts_is_taken_away(circuit: Circuit) -> None:
    layout = box()
    wires = (*layout.wires, wire("jumper", ("rows", "r0 4"), ("rows", "r4 6")))
    ((step,),) = (mistake.steps for mistake in repaired(circuit, replace(layout, wires=wires)).mistakes)
    assert step == TakeWire("jumper", ("rows", "r0 4"), ("rows", "r4 6"))


def test_a_row_of_two_nets_is_cut_between_them(circuit: Circuit) -> None:
    """A cut is rather made than three leads and a lead out moved; what is written shows that it does."""
    rows = {"in": (*LEADS["in"], *LEADS["low"]), "mid": LEADS["mid"], "hp": LEADS["hp"], "back": LEADS["back"]}
    layout = box(**{**dict.fromkeys(LEADS, ()), **rows})
    ((step,),) = (mistake.steps for mistake in repaired(circuit, layout).mistakes)
    assert isinstance(step, MakeCut) and step.words == "between r0 3 and r0 4"
    assert compare(circuit, [done(layout, (step,))], islands([done(layout, (step,))])).right


def test_a_bus_that_is_too_long_is_shortened(circuit: Circuit) -> None:
    """Tags in a row: a bus takes all between its ends."""
    tags = board([12])
    tags = replace(tags, holes=tuple(replace(hole, at=(hole.at[0], 10.0), tag=True) for hole in tags.holes))
    names = ["in", "in", "in", "low", "low", "low", "mid", "mid", "hp", "hp", "hp", "back"]
    ends = [*LEADS["in"], *LEADS["low"], *LEADS["mid"], *LEADS["hp"]]
    flat = box(**{**dict.fromkeys(LEADS, ()), "in": (*ends, *LEADS["back"])})

    def on_tag(name: str) -> str:
        return f"r0 {min(int(name.split()[1]), 12)}"

    def moved(layout: Layout) -> Layout:
        return replace(
            layout,
            board=tags,
            wires=tuple(replace(w, first=replace(w.first, hole=on_tag(w.first.hole))) for w in layout.wires),
            places=tuple(
                replace(p, leads=tuple(replace(x, spot=replace(x.spot, hole=on_tag(x.spot.hole))) for x in p.leads))
                for p in layout.places
            ),
        )

    buses = [(1, 3), (4, 7), (7, 8), (9, 11)]
    assert [names[a - 1] for a, _ in buses] == ["in", "low", "mid", "hp"]
    layout = moved(flat)
    wires = (*layout.wires, *(wire("bus", ("rows", f"r0 {a}"), ("rows", f"r0 {b}")) for a, b in buses))
    layout = replace(layout, wires=wires)
    alone = Islands({("rows", hole.name): n for n, hole in enumerate(tags.holes)}, frozenset(), ())
    found = repair(compare(circuit, [layout], alone))
    assert found.steps == (MoveWire("bus", ("rows", "r0 7"), ("rows", "r0 4"), ("rows", "r0 6")),)
    assert compare(circuit, [done(layout, found.steps)], alone).right


def test_where_no_hole_is_free_one_is_drilled(circuit: Circuit) -> None:
    moved = box(low=("L1.end", "woofer+"), hp=("R1.end", "L2.start", "tweeter-", "C1.start"))
    full = {"r1 1", "r1 2"}
    holes = tuple(hole for hole in moved.board.holes if hole.row != "r1" or hole.name in full)
    layout = replace(moved, board=replace(moved.board, holes=holes))
    (step,) = repaired(circuit, layout).steps
    assert isinstance(step, Move) and step.hole is not None and step.target == step.hole.key == ("rows", "h1")
    cured = done(layout, (step,))
    assert cured.drilled and compare(circuit, [cured], islands([cured])).right


def test_a_lead_goes_where_it_fits(circuit: Circuit) -> None:
    """The nearest free hole is narrower than the one that the lead comes from by more than 0.3 mm."""
    moved = box(low=("L1.end", "", "woofer+"), hp=("R1.end", "L2.start", "tweeter-", "C1.start"))
    (step,) = repaired(circuit, moved).steps
    assert isinstance(step, Move)
    holes = tuple(replace(h, diameter=0.9) if h.name == step.target[1] else h for h in moved.board.holes)
    (other,) = repaired(circuit, replace(moved, board=replace(moved.board, holes=holes))).steps
    assert isinstance(other, Move) and other.target[1].startswith("r1") and other.target != step.target


def test_a_bus_is_soldered_along_tags(circuit: Circuit) -> None:
    """Where a net lies on three tags in a row one wire joins them."""
    layout = box()
    tags = tuple(replace(h, tag=True, diameter=0.0) if h.row == "r4" else h for h in layout.board.holes)
    layout = replace(layout, board=replace(layout.board, holes=tags))
    whole = islands([layout]).of
    apart = {key: 100 + n if key[1].startswith("r4") else whole[key] for n, key in enumerate(whole)}
    found = repair(compare(circuit, [layout], Islands(apart, frozenset(), ())))
    (step,) = found.steps
    assert step == AddWire("bus", ("rows", "r4 1"), ("rows", "r4 5"))
    (cured,) = apply(step, (layout,))
    assert compare(circuit, [cured], Islands(apart, frozenset(), ())).right


def test_a_lead_in_a_hole_without_copper_is_moved(circuit: Circuit) -> None:
    layout = box(**{**LEADS, "hp": ("R1.end", "tweeter-"), "off": ("L2.start",)})
    bare = Islands(islands([layout]).of, frozenset({("rows", f"r5 {n}") for n in (1, 2, 3)}), ())
    (mistake,) = repair(compare(circuit, [layout], bare)).mistakes
    assert mistake.findings == (NoCopper(("L2", "start"), ("rows", "r5 1")),)
    (step,) = mistake.steps
    assert isinstance(step, Move) and step.target[1].startswith("r3")


def test_what_is_not_placed_gets_holes_on_its_nets(circuit: Circuit) -> None:
    layout = box()
    gone = replace(layout, places=tuple(p for p in layout.places if p.label != "L2"))
    found = repaired(circuit, gone)
    assert not found.steps
    (placing,) = found.placing
    assert isinstance(placing, PlaceLeads) and placing.label == "L2"
    assert compare(circuit, [done(gone, (placing,))], islands([gone])).right


def test_two_mistakes_are_told_apart(circuit: Circuit) -> None:
    """Two leads astray in different places: each has its own step, and its findings name nothing of the other."""
    rows = {
        "low": ("L1.end", "", "woofer+"),
        "hp": ("", "L2.start", "tweeter-", "C1.start"),
        "mid": ("C2.end", "R1.start"),
        "back": ("input-", "C1.end", "woofer-", "L2.end", "tweeter+", "R1.end"),
    }
    found = repaired(circuit, box(**{**LEADS, **rows}))
    assert len(found.mistakes) == 2
    for mistake in found.mistakes:
        (step,) = mistake.steps
        assert isinstance(step, Move)
        astray = {finding.leads[-1] for finding in mistake.findings if isinstance(finding, Short)}
        opened = {finding.groups[-1] for finding in mistake.findings if isinstance(finding, Open)}
        assert astray == {(step.lead,)} and len(opened) == 1
    assert {mistake.steps[0].lead for mistake in found.mistakes} == {("C1", "start"), ("R1", "end")}  # type: ignore[union-attr]


def test_two_leads_on_another_net_are_moved_together(circuit: Circuit) -> None:
    """Neither move alone brings anything nearer, since the two leads are the whole net."""
    rows = {"in": (*LEADS["in"], *LEADS["mid"]), "mid": ()}
    layout = box(**{**LEADS, **rows})
    found = repair(compare(circuit, [layout], islands([layout])))  # nothing may be cut here
    (mistake,) = found.mistakes
    assert len(mistake.steps) == 2
    assert compare(circuit, [done(layout, mistake.steps)], islands([layout])).right


def test_on_a_board_without_room_no_repair_is_named(circuit: Circuit) -> None:
    rows = {"in": (*LEADS["in"], *LEADS["mid"])}
    layout = box(**{name: ends for name, ends in {**LEADS, **rows}.items() if name != "mid"})
    assert len(layout.board.holes) and "mid" not in rows
    single = replace(layout, board=replace(layout.board, holes=layout.board.holes))
    keep = {key for key in islands([single]).of if not key[1].startswith("r2")}
    of = {key: n for key, n in islands([single]).of.items() if key in keep}
    found = repair(compare(circuit, [single], Islands(of, frozenset(), ())))
    assert not found.cures and found.left


def test_half_a_layout_has_an_answer_at_once() -> None:
    """Everything in one row, or nothing joined: far from any circuit. No search may run on and on."""
    rng = random.Random(5)
    circuit = circuit_of(random_text(rng, 3))
    layout = laid_out(circuit, rng)
    for wrong in (replace(layout, wires=()), replace(layout, cuts=(), wires=layout.wires[::3])):
        begin = process_time()
        found = repaired(circuit, wrong)
        assert process_time() - begin < 3  # a bound against running away: 0.3 s were measured
        if found.cures:
            assert electrically_same(circuit, done(wrong, found.steps))


def test_a_step_that_names_what_is_not_there_is_refused() -> None:
    with pytest.raises(ValueError, match="nothing to do"):
        apply(TakeWire("jumper", ("rows", "r0 1"), ("rows", "r1 1")), (box(),))
