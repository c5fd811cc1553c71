"""The circuit in words: the whole text of one example, and that nothing of any circuit goes unread."""

from __future__ import annotations

import json
import re
from collections import Counter

import pytest

from documents.designs import EXAMPLES, TWO_WAY, compiled, example, one
from shuntwise.cli.main import main
from shuntwise.documents.read_aloud import read_aloud, with_article
from shuntwise.model.design import NodeStop, ParallelStop
from shuntwise.structure.reach import turned_round

# ruff: noqa: E501
WEDGE = """\
Rehearsal-room wedge.
The amplifier gives 120 watts into 8 ohms and may drive no less than 4 ohms.
Input is fed by an amplifier: input plus and input minus.
Return means input minus.

Two drivers.
Woofer: nominal 8 ohms, re 5.9 ohms, le 0.4 millihenry, fs 61 Hz, qms 4.5, qes 0.48, rated for 200 watts of noise power.
Tweeter: nominal 8 ohms, re 6.2 ohms, le 0.05 millihenry, fs 820 Hz, qms 2.2, qes 1.4, rated for 60 watts of noise power.

The woofer leg.
From input plus, through L1, a 0.82 millihenry air-core coil with 5 percent tolerance and 0.28 ohm DC resistance, to woofer plus.
From woofer plus, through C1, a 6.8 microfarad film capacitor with 5 percent tolerance, rated for 250 volts, to woofer minus.
Woofer minus goes straight to return.

The tweeter leg.
From input plus, through C2, a 6.8 microfarad film capacitor with 5 percent tolerance, rated for 250 volts, to tweeter minus.
From tweeter minus, through L2, a 0.82 millihenry air-core coil with 5 percent tolerance and 0.4 ohm DC resistance, to tweeter plus.
Tweeter plus goes straight to return.
The tweeter is turned round: its minus is the fed end.

That makes four parts: two coils and two capacitors.
"""


def sentences(text: str) -> list[str]:
    return read_aloud(one(text).circuit).splitlines()


def test_whole_text_of_the_wedge() -> None:
    assert read_aloud(example("02").circuit) == WEDGE


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_example_is_read_whole_and_no_part_twice(path) -> None:
    """Each part, driver, node and port of each example and variant is spoken; each part is walked once."""
    for compilation in compiled(path.read_text(encoding="utf-8")):
        design = compilation.design
        text = read_aloud(compilation.circuit)
        spoken = Counter(re.findall(r"\b([A-Z]+\w*), an? ", text))
        for label in design.parts:
            local = label.rpartition(".")[2]
            alike = sum(other.rpartition(".")[2] == local for other in design.parts)
            assert spoken[local] == alike, label
        assert sum(spoken.values()) == len(design.parts)
        for name in (*design.drivers, *(pair.name for pair in design.terminals)):
            assert f"{name} plus" in text.lower() and f"{name} minus" in text.lower()
        for node in design.node_spans:
            assert f"the node {node.rpartition('.')[2]}" in text.lower()
        for instance, ports in design.instances.items():
            assert f"Inside the network {instance}." in text
            assert all(f"port {port.rpartition('.')[2]}" in text for port in ports)
        assert "after" not in text and "could not be read" not in text and "Nothing is wired" not in text


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_sentences_follow_the_order_of_the_walks(path) -> None:
    compilation = compiled(path.read_text(encoding="utf-8"))[0]
    lines = read_aloud(compilation.circuit).splitlines()
    lines = [line for line in lines if " goes " in line or line.startswith("From ")]
    walks = sorted(compilation.design.walks, key=lambda walk: (walk.leg is None, walk.leg or 0))
    assert len(lines) == len(walks)
    for line, walk in zip(lines, walks, strict=True):
        ends = [walk.stops[0], walk.stops[-1]]
        names = [stop.node.rstrip("+-").rpartition(".")[2] for stop in ends if isinstance(stop, NodeStop)]
        if names[0] != "return":
            assert names[0] in line.lower().split(",")[0].split(" goes ")[0]
        groups = sum(isinstance(stop, ParallelStop) for stop in walk.stops)
        assert line.count("joined again") == groups


def test_networks_are_named_and_their_insides_read() -> None:
    text = read_aloud(example("12").circuit, {"P1": "lpad", "N1": "notch"})
    assert "through the network P1, an lpad, in at its port source and out at its port load, to tweeter plus" in text
    assert "Inside the network P1, an lpad.\nFrom the port source, through Rs, a 2.952 ohm" in text
    assert "The port back of P1 goes straight to return." in text


def test_parallel_group_names_its_end() -> None:
    lines = sentences(TWO_WAY.replace("-- L1 --", "-- (L1 | (R1 | R2) -- C2) --")
                      + "resistor R1 8 ohm\nresistor R2 11 ohm { wirewound }\ncapacitor C2 100 nF\n")  # fmt: skip
    assert lines[10] == (
        "From input plus, through two in parallel: L1, a 0.5 millihenry coil; and a group of two in parallel: R1, an "
        "8 ohm resistor; and R2, an 11 ohm wirewound resistor; these two joined again, then C2, a 0.1 microfarad "
        "capacitor; these two joined again, to woofer plus."
    )  # fmt: skip


def test_links_and_parts_left_out() -> None:
    base, variant = (read_aloud(c.circuit) for c in compiled((EXAMPLES[9]).read_text(encoding="utf-8")))
    assert "From low plus, through K1, a link, fitted, to high plus." in base
    assert "From low plus, through K1, a link, left out, to high plus." in variant
    assert "High is a pair of posts, fed by no amplifier of its own" in base
    assert "High is an input, fed by an amplifier" in variant
    assert "Variant two_amplifiers: one amplifier for each leg, links out." in base
    assert "This is the variant two_amplifiers: one amplifier for each leg, links out." in variant
    assert "Return" not in variant  # two inputs: neither is the return
    assert variant.endswith("two capacitors and two links. Not fitted: two parts.\n")
    assert "L1, a 0.5 millihenry coil, not fitted, to woofer plus" in read_aloud(one(TWO_WAY + "omit L1\n").circuit)


def test_what_no_walk_touches_is_said() -> None:
    lines = sentences(TWO_WAY.replace("  tweeter- -- return\n", "") + "resistor R7 3.3 ohm\nposts spare\n")
    assert "In no walk: R7, a 3.3 ohm resistor." in lines
    assert "Nothing is wired to spare plus, spare minus and tweeter minus." in lines


def test_couplings_test_points_taps_and_lamps() -> None:
    lines = sentences("""\
driver woofer 8 ohm
tapped coil T1 1.2 mH { tap 0.3 mH, dcr 0.4 ohm, iron core }
coil L1 1 mH
lamp B1 5 ohm { hot 58 ohm }
coupling L1 and L2 -3.5 %
coil L2 1 mH
testpoint hp
leg woofer {
  input+ -- T1 -- hp -- L1 -- woofer+
  T1.tap -- B1 -- L2 -- return
  woofer- -- return
}
""")
    assert (
        "From input plus, through T1, a 1.2 millihenry iron-core tapped coil with 0.4 ohm DC resistance and its "
        "tap at 0.3 millihenry, to the node hp; on through L1, a 1 millihenry coil, to woofer plus." in lines
    )
    assert (
        "From the tap of T1, through B1, a lamp of 5 ohms cold and 58 ohms hot, then L2, a 1 millihenry coil, "
        "to return." in lines
    )
    assert "L1 and L2 are coupled by minus 3.5 percent." in lines
    assert "One test point: hp." in lines
    assert lines[-1] == "That makes four parts: two coils, one tapped coil and one lamp."


def test_an_unsound_design_is_read_as_far_as_it_goes() -> None:
    """A part without a value, a walk that ends at a part, an unknown station: all are spoken of."""
    legs = "leg woofer {\n input+ -- L1\n L7 -- woofer+\n woofer- -- return\n}"
    lines = sentences("driver woofer 8 ohm\ncoil L1\n" + legs)
    assert "From input plus, through L1, a coil whose value could not be read, and there it ends." in lines
    assert "Beginning with something that could not be read, straight to woofer plus." in lines
    assert read_aloud(one("").circuit).splitlines()[0] == "A design without a title."


def test_turned_round_is_told_by_the_graph() -> None:
    """Second drivers of a series type, a balanced filter and a driver on no input."""
    assert turned_round(example("04").circuit) == {"mid"}
    assert turned_round(example("05").circuit) == frozenset()
    balanced = TWO_WAY.replace("woofer- -- return", "woofer- -- L2 -- return") + "coil L2 0.5 mH\n"
    assert turned_round(one(balanced).circuit) == frozenset()
    swapped = balanced.replace("woofer+", "x").replace("woofer-", "woofer+").replace("x", "woofer-")
    assert turned_round(one(swapped).circuit) == {"woofer"}
    assert turned_round(one("driver woofer 8 ohm\n").circuit) == frozenset()


def test_hostile_title_cannot_steer_a_terminal() -> None:
    text = read_aloud(one('design "\x1b[2J\u202e box"\n' + TWO_WAY).circuit)
    assert text.startswith("<U+001B>[2J<U+202E> box.\n")


@pytest.mark.parametrize(("text", "article"), [
    ("8 ohm", "an"), ("80 ohm", "an"), ("8.2 ohm", "an"), ("11 ohm", "an"), ("18 ohm", "an"), ("1.8 ohm", "a"),
    ("0.82 ohm", "a"), ("110 ohm", "a"), ("lpad", "an"), ("link", "a"), ("air-core", "an"), ("notch", "a"),
])  # fmt: skip
def test_article_as_spoken(text: str, article: str) -> None:
    assert with_article(text) == f"{article} {text}"


def test_json_has_the_same_sentences(capsys: pytest.CaptureFixture[str]) -> None:
    path = str(next(path for path in EXAMPLES if path.stem.startswith("02")))
    assert main(["read", path, "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert "\n\n".join("\n".join(lines) for lines in told["paragraphs"]) + "\n" == WEDGE


def test_names_that_are_no_roles_have_no_article() -> None:
    text = TWO_WAY.replace("tweeter", "tweeter1").replace("-- C1 -- tweeter1+", "-- C1 -- tweeter1-")
    said = sentences(text.replace("tweeter1- -- return", "tweeter1+ -- return"))
    assert "The leg of tweeter1." in said and "Tweeter1 is turned round: its minus is the fed end." in said
