"""What is told of a suspect beside its title: the same faults, the places, how to be sure."""

from __future__ import annotations

from functools import cache

import pytest

from bench_words.boards import EXAMPLES, telling
from documents.designs import lowered
from shuntwise.bench.catalogue import catalogue
from shuntwise.bench.faults import Fault
from shuntwise.bench.naming import Telling
from shuntwise.bench.neighbours import neighbours_of
from shuntwise.bench.rig import rig_of
from shuntwise.bench.verdict import Suspected


@cache
def market_horn() -> Telling:
    return Telling(rig_of(lowered(next(EXAMPLES.glob("07-*.shunt")))[0].circuit))


def told(fault: Fault, size: float = 1.0) -> Suspected:
    return market_horn().suspected([fault], size, 0.9)


def test_the_same_are_not_more_than_anybody_reads() -> None:
    faults = [Fault("open", (label,)) for label in ("R1", "R2", "C1", "C2", "L1", "F1", "R1")]
    same = telling().suspected(faults, 1.0, 0.5).same
    assert same == ("R2 is open", "C1 is open", "C2 is open", "L1 is open", "2 more")
    assert len(telling().suspected(faults[:-1], 1.0, 0.5).same) == 5


def test_a_size_that_was_another_faults_is_not_told() -> None:
    small = Fault("value", ("C2",), size=(0.05, 0.8))
    assert told(small, 0.33).size == "about 0.33 of 5.6 uF: near 1.8 uF"
    assert told(small, 1.0).size == "" and told(small, 1.0).effects == told(small, 0.8).effects


@pytest.mark.parametrize(
    ("fault", "where"),
    [
        (
            Fault("open", ("C2",)),
            ("C2 is at 156:77 mm on the parts side, its start in north 5 (144:94 mm) and its end in h3 (178:90 mm)",),
        ),
        (
            Fault("moved", ("L1",), ("L1.end",), "input-"),
            (
                "the end of L1 belongs in north_west 4 (64:94 mm)",
                "the nearest place on the return is rail_west 3 (58:22 mm)",
            ),
        ),
        (
            Fault("bridge", (), ("hp", "tweeter+")),
            ("about 185:84 mm, on the solder side, where they are 2.0 mm apart",),
        ),
        (
            Fault("joint", ("woofer",), ("woofer+",), size=(0.5, 20)),
            ("the plus wire of the woofer: from the tag woofer plus to lug (10:51 mm)",),
        ),
        (
            Fault("jumper", ("jumper from rail_west 5 to rail_east 1",), ("R2.end",)),
            ("at rail_west 5 (98:22 mm) and rail_east 1 (118:22 mm)",),
        ),
        (Fault("meter", size=(0.6, 0.98)), ()),
    ],
    ids=lambda value: value.family if isinstance(value, Fault) else "",
)
def test_places_are_those_of_the_layouts_text(fault: Fault, where: tuple[str, ...]) -> None:
    assert told(fault).where == where


def test_without_a_layout_what_meets_is_told() -> None:
    places = telling().places
    assert places.of(Fault("moved", ("C1",), ("C1.start",), "hp")) == (
        "the start of C1 goes to woofer plus, where it meets the end of L1 and the plus wire of the woofer",
        "at the node hp meet the end of C2 and the end of T1",
    )
    assert places.of(Fault("link", ("K1",), ("K1.start", "K1.end"))) == (
        "the start of K1 goes to the node level and the end of K1 goes to tweeter plus",
    )
    assert "at the tags of the input, and where its two wires are soldered" in places.of(
        Fault("bridge", (), ("input+", "input-"))
    )


@pytest.mark.parametrize(
    ("fault", "parts"),
    [
        (Fault("open", ("C2",)), ("lift one end of C2", "5.6 uF within 5 %, and not open")),
        (Fault("value", ("R1",), size=(0.05, 0.8)), ("printed", "3.9 ohm within 5 %")),
        (Fault("exchanged", ("R1", "R2")), ("R1 3.9 ohm within 5 % and R2 8.2 ohm within 5 %",)),
        (Fault("moved", ("L1",), ("L1.end",), "input-"), ("follow the end of L1: it must go to woofer plus",)),
        (Fault("joint", ("L1",), ("L1.start",)), ("four-wire milliohms", "under 2 milliohm, suspect from 10")),
        # R1 by itself: L2 and R2 go to the return, and the drivers are off: 3.9 || (8.2 + 0.35) ohm, by hand.
        (Fault("bridge", (), ("hp", "tweeter+")), ("with a glass", "it must read 2.7 ohm")),
        # L1 is 0.25 ohm of wire: a bridge across it is not seen by an ohmmeter.
        (Fault("bridge", (), ("input+", "woofer+")), ("cannot tell: 0.25 ohm is right",)),
        (Fault("reversed", ("woofer",), ("woofer+", "woofer-")), ("a battery of 1.5 V", "less than a second")),
        (Fault("reversed", ("tweeter",), ("tweeter+", "tweeter-")), ("never put a battery on it",)),
        (Fault("outputs", ("woofer", "tweeter")), ("that of the woofer to the start of C1",)),
        (Fault("driver", ("woofer",), size=(0.35, 0.7)), ("5.8 ohm within a tenth",)),
        (Fault("meter", size=(0.6, 0.98)), ("two equal resistors", "half of the generator's 2 V")),
    ],
    ids=lambda value: value.family if isinstance(value, Fault) else "",
)
def test_proofs_say_what_must_be_read(fault: Fault, parts: tuple[str, ...]) -> None:
    proof = told(fault).proof
    assert all(part in proof for part in parts), proof
    if not fault.of_setup:
        assert proof.startswith("amplifier off, capacitors discharged")


def test_every_fault_of_a_board_has_all_its_words() -> None:
    """Tapped coil, attenuator, links, a board: one fault of each family and owner, so that none is without a proof."""
    circuit = lowered(next(EXAMPLES.glob("16-*.shunt")))[0].circuit
    rig = rig_of(circuit)
    whole = Telling(rig)
    seen = set()
    for fault in catalogue(rig, neighbours_of(circuit)):
        if (fault.family, fault.owners, len(fault.points)) not in seen:
            seen.add((fault.family, fault.owners, len(fault.points)))
            found = whole.suspected([fault], fault.size[0], 0.5)
            assert found.title and found.proof and len(found.effects) <= 3
            assert bool(found.where) is (not fault.of_setup or fault.family == "driver"), fault
            assert bool(found.effects) is (not fault.of_setup or fault.family == "driver"), fault
            assert bool(found.size) is (fault.size != (1.0, 1.0))
            assert not any("`" in words for words in (found.title, found.proof, *found.where, *found.effects))
