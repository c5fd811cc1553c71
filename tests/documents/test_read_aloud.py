"""The circuit in words: the whole text of one example, and that nothing of any circuit goes unread."""

from __future__ import annotations

import json
import re
from collections import Counter

import pytest

from documents.designs import EXAMPLES, TWO_WAY, compiled, example, one
from shuntwise.cli.main import main
from shuntwise.documents.read_aloud import described, read_aloud, with_article
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
        drivers = [
            (driver.coil_of or driver.name).capitalize() for driver in design.drivers.values()
        ]  # `Horn, a tweeter`
        assert sum(spoken[name] for name in spoken if name not in drivers) == len(design.parts)
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
    lines = [line for line in lines if (" goes " in line and ": its " not in line) or line.startswith("From ")]
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
    assert "From low plus, through K1, a link of 1 millimetre wire, fitted, to high plus." in base
    assert "From low plus, through K1, a link of 1 millimetre wire, left out, to high plus." in variant
    assert "High is a pair of posts, fed by no amplifier of its own" in base
    assert "High is an input, fed by an amplifier" in variant
    assert "Variant two_amplifiers: one amplifier for each leg, links out." in base
    assert "This is the variant two_amplifiers: one amplifier for each leg, links out." in variant
    assert "Return" not in variant  # two inputs: neither is the return
    assert variant.endswith("two capacitors and two links. Not fitted: two parts.\n")
    assert "L1, a 0.5 millihenry coil, not fitted, to woofer plus" in read_aloud(one(TWO_WAY + "omit L1\n").circuit)


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
        "tap at 0.3 millihenry from its start, in at its start and out at its end, to the node hp; on through L1, "
        "a 1 millihenry coil, to woofer plus." in lines
    )
    assert "T1: its start goes to input plus; its tap to B1; its end to the node hp." in lines
    assert (
        "From the tap of T1, through B1, a lamp of 5 ohms cold and 58 ohms hot, then L2, a 1 millihenry coil, "
        "to return." in lines
    )
    assert "L1 and L2 are coupled by minus 3.5 percent." in lines
    assert "One test point: hp." in lines
    assert lines[-1] == "That makes four parts: two coils, one tapped coil and one lamp."


TAPS = """\
driver horn 8 ohm { role tweeter, re 6 ohm }
network step (top, out, foot) {
  tapped coil T1 4 mH { tap 0.6 mH, dcr 0.5 ohm, tap_dcr 0.1 ohm, k 0.95, 5 %, ferrite core, 20 A }
  top -- (R1 | R2) -- T1.end
  T1.start -- foot
  T1.tap -- out
  resistor R1 10 ohm
  resistor R2 5 ohm
}
use step as U1
tapped coil T2 1 mH { tap 0.2 mH }
resistor R1 1 ohm
leg horn {
  input+ -- (R1 | T2) -- U1 -- horn+
  U1.foot -- return
  horn- -- return
}
"""


def test_each_end_of_a_tapped_coil_is_told_also_where_no_walk_goes_through_it() -> None:
    lines = sentences(TAPS)
    start = lines.index("The leg of horn.")
    assert [line for line in lines[start + 1 :] if line] == [
        "From input plus, through two in parallel: R1, a 1 ohm resistor; and T2, a 1 millihenry tapped coil with its tap "
        "at 0.2 millihenry from its start, in at its start and out at its end; these two joined again, then the network "
        "U1, in at its port top and out at its port out, to horn plus.",
        "The port foot of U1 goes straight to return.",
        "Horn minus goes straight to return.",
        "Inside the network U1.",
        "T1, a 4 millihenry ferrite-core tapped coil with 5 percent tolerance, 0.5 ohm DC resistance, its tap at 0.6 "
        "millihenry from its start, 0.1 ohm of DC resistance up to the tap and its sections coupled by 95 percent, rated "
        "for 20 amperes, has its ends wired one by one.",
        "From the port top, through two in parallel: R1, a 10 ohm resistor; and R2, a 5 ohm resistor; these two joined "
        "again, to the end of T1.",
        "The start of T1 goes straight to the port foot.",
        "The tap of T1 goes straight to the port out.",
        "T2: its start goes to input plus; its end to the network U1.",
        "U1.T1: its start goes to the port foot of U1; its tap to the port out of U1; its end to the group of U1.R1 and "
        "U1.R2.",
        "Nothing is wired to the tap of T2.",
        "That makes five parts: two tapped coils and three resistors.",
    ]


@pytest.mark.parametrize(("part", "said"), [
    ("coil L1 11 mH { 5 %, 3 A, wire 1.4 mm, dcr 1.2 ohm }",
     "an 11 millihenry coil with 5 percent tolerance, 1.2 ohm DC resistance and 1.4 millimetre wire, rated for 3 amperes"),
    ("capacitor C1 8.2 uF { 10 %, 100 V, ac 63 V, 4 A, non-polar electrolytic, esr 0.08 ohm }",
     "an 8.2 microfarad non-polar electrolytic capacitor with 10 percent tolerance and 0.08 ohm series resistance, "
     "rated for 100 volts, 4 amperes and 63 volts r.m.s."),
    ("resistor R1 4R7J { 20 W }", "a 4.7 ohm resistor with 5 percent tolerance, rated for 20 watts"),
    ("lamp B1 5 ohm { hot 58 ohm, 10 %, 24 V, 10 W }",
     "a lamp of 5 ohms cold and 58 ohms hot, with 10 percent tolerance, rated for 24 volts and 10 watts"),
    ("lamp B1 5 ohm { 24 V }", "a lamp of 5 ohms cold, rated for 24 volts"),
    ("fuse F1 4 A { time lag, cold 0.02 ohm, 250 V, i2t 20 A2s }",
     "a time-lag fuse of 4 amperes with 0.02 ohm cold resistance and an I2t of 20 A2s, rated for 250 volts"),
    ("protector F2 1.7 A { trip 3.4 A, cold 0.1 ohm, tripped 80 ohm, derating 1 %, 60 V }",
     "a protector that holds 1.7 amperes and trips at 3.4 amperes, with 0.1 ohm cold resistance, 80 ohm tripped "
     "resistance and 1 percent derating per kelvin, rated for 60 volts"),
    ("protector F2 1 A { 60 V }", "a protector that holds 1 ampere, rated for 60 volts"),
    ("link K1 { wire 1.5 mm }", "a link of 1.5 millimetre wire, fitted"),
    ("coil L1 { 5 %, 3 A }", "a coil whose value could not be read, with 5 percent tolerance, rated for 3 amperes"),
])  # fmt: skip
def test_tolerance_and_ratings_of_each_kind_are_told(part: str, said: str) -> None:
    label = part.split()[1]
    lines = sentences(
        f"driver woofer 8 ohm\n{part}\nleg woofer {{\ninput+ -- {label} -- woofer+\nwoofer- -- return\n}}\n"
    )
    assert f"From input plus, through {label}, {said}, to woofer plus." in lines


NETWORK = "network n (a, b, c) {\nresistor R 1 ohm\na -- R -- b\nc -- a\n}\n"


@pytest.mark.parametrize(("changed", "instead", "more", "said"), [
    ("", "", "coil L7 1 mH\nomit L7\n", ["In no walk: L7, a 1 millihenry coil, not fitted."]),
    ("", "", f"{NETWORK}use n as U1\n", ["In no walk: the network U1."]),
    ("-- L1 --", "-- L1 -- U1 --", f"{NETWORK}use n as U1\nomit U1\n", ["Nothing is wired to the port c of U1."]),
    # The coil by its tap alone, in a group, by its ends: in a walk each time.
    ("-- L1 --", "-- L1 -- T1.tap\nT1.tap --", "tapped coil T1 1 mH { tap 0.2 mH }\n",
     ["Nothing is wired to the start of T1 and the end of T1."]),
    ("-- L1 --", "-- (L1 -- T1.tap -- R1 | T1) --", "resistor R1 1 ohm\ntapped coil T1 1 mH { tap 0.2 mH }\n", []),
    # A part that a refused station may stand for may be in a walk, others are not.
    ("-- L1 --", "-- L8 --", "resistor R1 1 ohm\n",
     ["In no walk that could be read: L1, a 0.5 millihenry coil.", "In no walk: R1, a 1 ohm resistor."]),
    ("input+ -- L1 -- woofer+", "input+ -- L1+\nL1- -- woofer+", "",
     ["In no walk that could be read: L1, a 0.5 millihenry coil."]),
    ("  tweeter- -- return", "  @@ tweeter- !! return", "", ["Nothing that could be read is wired to tweeter minus."]),
    ("-- L1 --", "-- (L1) --", "", []),
    # A pad, of the design and of a pair of posts.
    ("  tweeter- -- return\n", "", "posts spare\n", ["Nothing is wired to spare plus, spare minus and tweeter minus."]),
])  # fmt: skip
def test_what_no_walk_touches_is_said_where_it_is_true(changed: str, instead: str, more: str, said: list[str]) -> None:
    assert changed in TWO_WAY
    lines = sentences(TWO_WAY.replace(changed, instead) + more)
    assert [line for line in lines if line.startswith(("In no walk", "Nothing"))] == said


def test_walks_inside_a_network_are_read_there_also_where_they_join_ports_of_another() -> None:
    """`return` is no node of the input in a network, and a wire between ports of an inner one is the outer one's."""
    lines = sentences(
        "driver woofer 8 ohm\n"
        + NETWORK
        + "network outer (a, b) {\nuse n as Z1\nZ1.c -- Z1.b\na -- Z1 -- b\nresistor R7 7 ohm\nb -- R7 -- return\n}\nuse outer as U1\n"
        + "leg woofer {\ninput+ -- U1 -- woofer+\nwoofer- -- return\n}\n"
    )
    at = lines.index("Inside the network U1.")
    assert lines[at + 1 : at + 4] == [
        "The port c of Z1 goes straight to the port b of Z1.",
        "From the port a, through the network U1.Z1, in at its port a and out at its port b, to the port b.",
        "From the port b, through R7, a 7 ohm resistor, to the node return.",
    ]


@pytest.mark.parametrize(
    "path", sorted((EXAMPLES[0].parents[1] / "tests/strangers").glob("*.shunt")), ids=lambda p: p.stem
)
def test_the_strangers_designs_are_read_whole(path) -> None:
    for compilation in compiled(path.read_text(encoding="utf-8")):
        text = read_aloud(compilation.circuit)
        assert not re.search("In no walk|Nothing|could not be read", text)
        for part in compilation.design.parts.values():
            assert f"{part.label.rpartition('.')[2]}, {described(part)}" in text


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
    ("n", "an"), ("Lpad", "an"), ("Eq", "an"), ("Notch", "a"),
])  # fmt: skip
def test_article_as_spoken(text: str, article: str) -> None:
    assert with_article(text) == f"{article} {text}"


def test_json_has_the_same_sentences(capsys: pytest.CaptureFixture[str]) -> None:
    path = str(next(path for path in EXAMPLES if path.stem.startswith("02")))
    assert main(["read", path, "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert "\n\n".join("\n".join(lines) for lines in told["paragraphs"]) + "\n" == WEDGE


def test_plurals_begin_above_one_and_a_list_has_one_and() -> None:
    lines = sentences("amplifier 1 W into 4 ohm { least 0.5 ohm, source 0.04 ohm }\ndriver horn 1 ohm { role mid }\n")
    assert "The amplifier gives 1 watt into 4 ohms, may drive no less than 0.5 ohm and has 0.04 ohm of output " \
           "resistance." in lines  # fmt: skip
    assert "Horn, a mid: nominal 1 ohm." in lines


def test_names_that_are_no_roles_have_no_article() -> None:
    text = TWO_WAY.replace("tweeter", "tweeter1").replace("-- C1 -- tweeter1+", "-- C1 -- tweeter1-")
    said = sentences(text.replace("tweeter1- -- return", "tweeter1+ -- return"))
    assert "The leg of tweeter1." in said and "Tweeter1 is turned round: its minus is the fed end." in said
