"""Every fault in a builder's words, read here as a list, and no two of one board with the same words."""

from __future__ import annotations

from collections import Counter
from typing import get_args

import pytest

from bench_words.boards import EXAMPLES, telling
from documents.designs import lowered
from shuntwise.bench.catalogue import catalogue
from shuntwise.bench.faults import Family, Fault
from shuntwise.bench.naming import Telling
from shuntwise.bench.neighbours import neighbours_of
from shuntwise.bench.rig import rig_of

LOW, HIGH = (0.05, 0.8), (1.25, 20.0)
WORDS = {
    Fault("open", ("C1",)): "C1 is open",
    Fault("open", ("T1",), ("T1.tap",)): "the tap of T1 is off",
    Fault("open", ("woofer",), ("woofer+",)): "the plus wire of the woofer is off",
    Fault("open", ("input",), ("input-",)): "the minus wire of the input is off",
    Fault("short", ("L1",), ("L1.start", "L1.end")): "L1 is shorted",
    Fault("short", ("T1",), ("T1.start", "T1.tap")): "the start of T1 and the tap of T1 are shorted",
    Fault("value", ("R1",), size=LOW): "R1 is too small",
    Fault("value", ("R1",), size=HIGH): "R1 is too large",
    Fault("value", ("F1",), size=HIGH): "F1 has too much resistance",
    Fault("drift", ("C2",), size=(0.8, 0.9)): "C2 is a little too small",
    Fault("dried", ("C1",), size=(0.5, 0.7)): "C1 has dried out",
    Fault("turns", ("L1",), size=(0.3, 0.7)): "L1 has shorted turns",
    Fault("core", ("L1",), size=(0.15, 0.6)): "the core of L1 is another one",
    Fault("exchanged", ("R1", "R2")): "R1 and R2 are exchanged",
    Fault("doubled", ("C2",)): "two C2 lie side by side",
    Fault("moved", ("C1",), ("C1.start",), "input-"): "the start of C1 lies on the return instead of woofer plus",
    Fault("moved", ("R1",), ("R1.start",), "hp"): (
        "the start of R1 lies on the node hp instead of the node between R1 and T1"
    ),
    Fault("moved", ("tweeter",), ("tweeter-",), "woofer+"): (
        "the minus wire of the tweeter lies on woofer plus instead of the return"
    ),
    Fault("joint", ("L1",), ("L1.start",), size=(0.5, 20)): "a bad joint at L1",
    Fault("joint", ("T1",), ("T1.tap",), size=(0.5, 20)): "a bad joint at the tap of T1",
    Fault("joint", ("tweeter",), ("tweeter+",), size=(0.5, 20)): "a bad joint at the plus wire of the tweeter",
    Fault("bridge", (), ("woofer+", "input-")): "woofer plus is bridged to the return",
    Fault("jumper", ("jumper from a 1 to b 2",), ("R2.end",)): "the jumper from a 1 to b 2 is forgotten",
    Fault("cut", ("cut from 1:2 mm to 1:9 mm",), ("hp", "input+")): (
        "the cut from 1:2 mm to 1:9 mm is not made: the node hp stays joined to input plus"
    ),
    Fault("link", ("K1",), ("K1.start", "K1.end")): "the link K1 is left out",
    Fault("link", ("K2",), ("K2.start", "K2.end")): "the link K2 is fitted",
    Fault("reversed", ("woofer",), ("woofer+", "woofer-")): "the two wires of the woofer are exchanged",
    Fault("outputs", ("woofer", "tweeter")): "the wires of the woofer and those of the tweeter are exchanged",
    Fault("driver", ("tweeter",), size=LOW): "the tweeter is of another size, with fewer ohm",
    Fault("driver", ("tweeter",), size=HIGH): "the tweeter is of another size, with more ohm",
    Fault("dummies", size=LOW): "the dummies are not 8 ohm, but less",
    Fault("series", size=HIGH): "more than 10 ohm lies between generator and box",
    Fault("source", size=LOW): "the generator does not give 2 V, but less",
    Fault("meter", size=(0.6, 0.98)): "the meter reads too little at high frequencies",
    Fault("scatter", size=(1.3, 2.2)): "the parts are further from their values than their tolerances say",
}
SIZES = [
    (Fault("value", ("C2",), size=LOW), 0.33, "about 0.33 of 6.8 uF: near 2.2 uF"),
    (Fault("value", ("F1",), size=HIGH), 5.0, "about 5 times its resistance"),
    (Fault("dried", ("C1",), size=(0.5, 0.7)), 0.6, "about 0.6 of 47 uF: near 28 uF, with about 20 times its series"),
    (Fault("turns", ("L1",), size=(0.3, 0.7)), 0.5, "about 50 % of its inductance lost at high frequencies"),
    (Fault("joint", ("L1",), ("L1.start",), size=(0.5, 20)), 3.16, "about 3 ohm"),
    (Fault("driver", ("tweeter",), size=LOW), 0.5, "about 0.5 of 8 ohm: near 4 ohm"),
    (Fault("source", size=LOW), 0.5, "about 0.5 of 2 V: near 1 V"),
    (Fault("meter", size=(0.6, 0.98)), 0.92, "reads 8 % too little at 6 kHz"),
    (Fault("open", ("C1",)), 1.0, ""),
]


def test_every_family_is_read_here() -> None:
    assert {fault.family for fault in WORDS} == {*get_args(Family)}


@pytest.mark.parametrize(
    ("fault", "words"), WORDS.items(), ids=[" ".join(words.split()[:7]) for words in WORDS.values()]
)
def test_title(fault: Fault, words: str) -> None:
    assert telling().title(fault) == words


@pytest.mark.parametrize(("fault", "size", "words"), SIZES, ids=[fault.family for fault, _, _ in SIZES])
def test_size(fault: Fault, size: float, words: str) -> None:
    found = telling().size(fault, size)
    assert found.startswith(words) and bool(found) is bool(words)


@pytest.mark.parametrize("number", ["05", "07", "13", "16", "18"])
def test_no_two_faults_have_one_title(number: str) -> None:
    """Nets between parts, used networks, several inputs, tapped coils, links, jumpers and cuts among them."""
    circuit = lowered(next(EXAMPLES.glob(f"{number}-*.shunt")))[0].circuit
    rig = rig_of(circuit)
    titles = Counter(Telling(rig).title(fault) for fault in catalogue(rig, neighbours_of(circuit)))
    assert len(titles) > 50
    assert [title for title, count in titles.items() if count > 1] == []
