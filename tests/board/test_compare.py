"""Boards are right exactly where graph isomorphism says that they are the circuit; what is equal is told as such."""

from __future__ import annotations

import os
import random
from dataclasses import replace

import networkx as nx
import pytest

from board.boxes import Bench, circuit_of, electrically_same, islands, laid_out, random_text, slips, spot, wire
from shuntwise.board.compare import (
    Alike,
    Comparison,
    LeadMissing,
    NoCopper,
    NothingLeadsTo,
    NotPlaced,
    Open,
    Reordered,
    Short,
    Turned,
    Untold,
    Unused,
    compare,
)
from shuntwise.board.islands import Islands
from shuntwise.board.wires import joints, key_of
from shuntwise.graph.circuit import Circuit
from shuntwise.model.boards import Layout, Lead, Place

LONG = bool(os.environ.get("SHUNTWISE_LONG"))


@pytest.mark.parametrize("seed", range(500 if LONG else 40))
def test_a_board_that_is_the_circuit_is_never_flagged(seed: int) -> None:
    """Nets in two rows, rows of two nets that are cut, parts either way round, like parts anywhere."""
    rng = random.Random(seed)
    circuit = circuit_of(random_text(rng, rng.randint(1, 3)))
    layout = laid_out(circuit, rng)
    found = compare(circuit, [layout], islands([layout]))
    assert found.right, (found.wiring, found.absent)


@pytest.mark.parametrize("seed", range(300 if LONG else 10))
def test_the_judge_and_the_comparison_agree_on_slips(seed: int) -> None:
    rng = random.Random(1000 + seed)
    circuit = circuit_of(random_text(rng, rng.randint(1, 3)))
    for slip in slips(laid_out(circuit, rng), rng):
        found = compare(circuit, [slip.layout], islands([slip.layout]))
        assert bool(found.wiring) != electrically_same(circuit, slip.layout), slip.kind


# --- one box, by hand

BOX = """driver woofer 8 ohm
driver tweeter 8 ohm
coil L1 0.82 mH
coil L2 0.3 mH
capacitor C1 6.8 uF
capacitor C2 6.8 uF
resistor R1 2.2 ohm
leg woofer {
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- return
  woofer- -- return
}
leg tweeter {
  input+ -- C2 -- R1 -- hp -- tweeter-
  hp -- L2 -- return
  tweeter+ -- return
}
"""

LEADS = {
    "in": ("input+", "L1.start", "C2.start"),
    "low": ("L1.end", "C1.start", "woofer+"),
    "mid": ("C2.end", "R1.start"),
    "hp": ("R1.end", "L2.start", "tweeter-"),
    "back": ("input-", "C1.end", "woofer-", "L2.end", "tweeter+"),
}
"""Rows of the box's layout, with what lies in their holes from 1 on; two holes of each are free."""


def box(**other: tuple[str, ...]) -> Layout:
    """The box laid out, some rows otherwise."""
    from board.boxes import board

    leads = {**LEADS, **other}
    places: dict[str, list[Lead]] = {}
    wires = []
    for row, ends in enumerate(leads.values()):
        for n, end in enumerate(ends):
            at = ("rows", f"r{row} {n + 1}")
            if end.endswith(("+", "-")):
                wires.append(wire("lead out", at, ("", end)))
            elif end:
                label, terminal = end.split(".")
                places.setdefault(label, []).append(Lead(terminal, spot(at), wires[0].span if wires else spot(at).span))
    span = spot(("", "")).span
    return Layout(
        "rows",
        board([len(ends) + 2 for ends in leads.values()]),
        (),
        (),
        tuple(wires),
        tuple(Place(label, None, "parts", 0.0, 0.0, tuple(ends), (), (), span, span) for label, ends in places.items()),
        None,
        span,
        span,
    )


@pytest.fixture(scope="module")
def circuit() -> Circuit:
    return circuit_of(BOX)


def compared(circuit: Circuit, layout: Layout) -> Comparison:
    return compare(circuit, [layout], Bench([layout]).islands)


def test_the_box_is_right(circuit: Circuit) -> None:
    found = compared(circuit, box())
    assert found.right and not found.equal


def test_what_is_equal_is_told(circuit: Circuit) -> None:
    turned = box(**{"in": ("input+", "L1.end", "C2.start"), "low": ("L1.start", "C1.start", "woofer+")})
    assert compared(circuit, turned).right
    assert compared(circuit, turned).equal == (Turned("L1"),)
    alike = box(
        **{"in": ("input+", "L1.start", "C1.start"), "low": ("L1.end", "C2.start", "woofer+")},
        mid=("C1.end", "R1.start"),
        back=("input-", "C2.end", "woofer-", "L2.end", "tweeter+"),
    )
    assert compared(circuit, alike).right
    assert compared(circuit, alike).equal == (Alike(("C1", "C2")),)
    order = box(
        **{"in": ("input+", "L1.start", "R1.start")}, mid=("R1.end", "C2.start"), hp=("C2.end", "L2.start", "tweeter-")
    )
    assert compared(circuit, order).right
    assert compared(circuit, order).equal == (Reordered(("C2", "R1")),)


def test_a_block_in_a_row_may_stand_at_either_end() -> None:
    """Two parts side by side, in a row with a third, in either order: no exchange of two parts tells this."""
    text = """driver woofer 8 ohm
coil L1 1 mH
resistor R1 3.3 ohm
capacitor C1 10 uF
leg woofer {
  input+ -- (C1 | R1) -- L1 -- woofer+
  woofer- -- return
}
"""
    circuit = circuit_of(text)
    rows = {
        "in": ("input+", "L1.start"),
        "low": ("L1.end", "C1.start", "R1.start"),
        "mid": ("C1.end", "R1.end", "woofer+"),
        "hp": (),
        "back": ("input-", "woofer-"),
    }
    found = compared(circuit, box(**rows))
    assert found.right and any(isinstance(equal, Reordered) for equal in found.equal)
    rows["low"], rows["mid"] = ("L1.end", "C1.start", "R1.start", "R1.end"), ("C1.end", "woofer+")
    assert compared(circuit, box(**rows)).wiring


def test_what_is_directed_is_not_turned() -> None:
    """A coil that another feels, a tapped coil: turning them is a mistake. So is a coil of another value elsewhere."""
    coupled = circuit_of(BOX + "coupling L1 and L2 2 %\n")
    turned = box(**{"in": ("input+", "L1.end", "C2.start"), "low": ("L1.start", "C1.start", "woofer+")})
    assert compared(coupled, turned).wiring
    told = box()
    place = next(place for place in told.places if place.label == "L1")
    unnamed = replace(place, leads=tuple(replace(lead, terminal=None) for lead in place.leads))
    untold = replace(told, places=tuple(unnamed if p.label == "L1" else p for p in told.places))
    found = compared(coupled, untold)
    assert not found.wiring and found.absent == (Untold("L1"),)


def test_what_is_not_there_is_told_apart(circuit: Circuit) -> None:
    layout = box()
    gone = replace(layout, places=tuple(p for p in layout.places if p.label != "L2"))
    assert compared(circuit, gone).absent == (NotPlaced("L2"),)
    assert not compared(circuit, gone).wiring
    place = next(p for p in layout.places if p.label == "R1")
    one = replace(layout, places=(*(p for p in layout.places if p != place), replace(place, leads=place.leads[:1])))
    assert compared(circuit, one).absent == (LeadMissing(("R1", "end")),)
    more = replace(layout, places=(*layout.places, replace(place, label="R9")))
    assert compared(circuit, more).absent == (Unused("R9"),)
    left_out = circuit_of(BOX + "omit L2\n")
    assert compared(left_out, layout).absent == (Unused("L2"),)
    assert not compared(left_out, gone).absent
    doubtful = compared(circuit, replace(gone, refused=True))
    assert doubtful.doubtful and not doubtful.wiring and not doubtful.absent


def test_opens_and_shorts_name_nets_and_leads(circuit: Circuit) -> None:
    moved = box(low=("L1.end", "woofer+"), hp=("R1.end", "L2.start", "tweeter-", "C1.start"))
    assert compared(circuit, moved).wiring == (
        Open("woofer+", ((("woofer", "+"), ("L1", "end")), (("C1", "start"),))),
        Short(("hp", "woofer+"), ((("tweeter", "-"), ("L2", "start"), ("R1", "end")), (("C1", "start"),))),
    )


def test_a_pad_that_nothing_leads_to(circuit: Circuit) -> None:
    layout = box(low=("L1.end", "C1.start"))
    assert compared(circuit, layout).wiring == (NothingLeadsTo(("woofer", "+")),)


def test_several_leads_out_of_one_pad_join(circuit: Circuit) -> None:
    split = box(**{"in": ("input+", "L1.start"), "mid": ("C2.end", "R1.start")})
    rows = {**LEADS, "in": ("input+", "L1.start"), "far": ("C2.start", "input+")}
    assert compared(circuit, box(**rows)).right
    assert not compared(circuit, split).right


@pytest.mark.parametrize("seed", range(5))
def test_joints_are_the_components_of_islands_and_wires(seed: int) -> None:
    rng = random.Random(seed)
    circuit = circuit_of(random_text(rng, 3))
    layout = laid_out(circuit, rng)
    graph = nx.Graph((key, island) for key, island in islands([layout]).of.items())
    graph.add_edges_from((key_of(w.first), key_of(w.second)) for w in layout.wires)
    ours: dict[int, set[object]] = {}
    for key, joint in joints([layout], islands([layout])).items():
        ours.setdefault(joint, set()).add(key)
    theirs = [{node for node in part if isinstance(node, tuple)} for part in nx.connected_components(graph)]
    assert sorted(map(sorted, ours.values())) == sorted(map(sorted, theirs))  # type: ignore[type-var]


def test_a_lead_in_a_hole_without_copper(circuit: Circuit) -> None:
    rows = {**LEADS, "hp": ("R1.end", "tweeter-"), "off": ("L2.start",)}
    layout = box(**rows)
    copper = islands([layout])
    bare = Islands(copper.of, frozenset({("rows", "r5 1")}), ())
    assert compare(circuit, [layout], bare).wiring == (NoCopper(("L2", "start"), ("rows", "r5 1")),)


def test_a_link_is_a_part_fitted_or_not() -> None:
    """What a link can part must be apart without it, so metal around it is a short; an open one lies there too."""
    text = BOX.replace("resistor R1 2.2 ohm", "link R1")
    rows = dict(LEADS)
    for circuit in (circuit_of(text), circuit_of(text + "omit R1\n")):
        assert compared(circuit, box(**rows)).right
    joined = box(**{**rows, "mid": ("C2.end", "R1.start", "R1.end"), "hp": ("L2.start", "tweeter-")})
    assert compared(circuit_of(text), joined).wiring


def test_a_driver_that_the_circuit_turns_round_is_no_mistake(circuit: Circuit) -> None:
    """The tweeter is wired minus to hot on purpose; wired plus to hot it is wrong."""
    assert compared(circuit, box()).right
    wrong = box(hp=("R1.end", "L2.start", "tweeter+"), back=("input-", "C1.end", "woofer-", "L2.end", "tweeter-"))
    assert compared(circuit, wrong).wiring
