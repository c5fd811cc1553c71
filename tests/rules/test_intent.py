"""One mistake, one finding: the checks on what a circuit is for, and what they must not say.

What a circuit should look like is common practice, no source, unless said beside a case.
"""

from __future__ import annotations

import csv
from pathlib import Path

import pytest

from rules import boxes
from rules.boxes import changed, found_in
from shuntwise.graph.connect import connect
from shuntwise.model.include import include, nothing_to_include
from shuntwise.model.resolve import resolve
from shuntwise.source import Source
from shuntwise.structure.ladders import Ladder, Structure, recognise
from shuntwise.syntax.parser import parse

REFERENCE = Path(__file__).parents[1] / "reference"

SOUND = {
    "first order": boxes.FIRST_ORDER,
    "second order": boxes.SECOND_ORDER,
    "third order": boxes.THIRD_ORDER,
    "a horn with a pad": boxes.HORN,
    "a Zobel": boxes.ZOBEL,
    "a notch": boxes.NOTCH,
    "three ways": boxes.THREE_WAY,
    "series type": boxes.SERIES_TYPE,
    "posts with links in and out": boxes.BI_WIRED,
    "two woofers, side by side and in a row": boxes.TWO_WOOFERS,
    "a lamp ahead of the tweeter's filter, cold and glowing": changed(
        boxes.HORN,
        ("resistor R1", "lamp B1 5 ohm { hot 58 ohm }\nresistor R1"),
        ("-- C2 -- hp", "-- B1 -- C2 -- hp"),
    )
    + "variant glowing {\n  set B1 = 58 ohm\n}\n",
    "a lamp with a resistor beside it": changed(
        boxes.FIRST_ORDER,
        ("capacitor C1", "lamp B1 5 ohm { hot 58 ohm }\nresistor R9 22 ohm\ncapacitor C1"),
        ("-- C1 -- tweeter+", "-- (B1 | R9) -- C1 -- tweeter+"),
    ),
    "a fuse ahead of the woofer's filter, and a protector ahead of the tweeter's": changed(
        boxes.FIRST_ORDER,
        ("capacitor C1", "fuse F1 2 A { cold 0.05 ohm }\nprotector F2 1 A { cold 0.2 ohm }\ncapacitor C1"),
        ("input+ -- L1", "input+ -- F1 -- L1"),
        ("-- C1 -- tweeter+", "-- F2 -- C1 -- tweeter+"),
    ),
    "coupled coils": boxes.THREE_WAY + "coupling L1 and L2 -0.4 %\n",
    "a tapped coil for the tweeter's level": changed(
        boxes.FIRST_ORDER,
        ("capacitor C1", "tapped coil T1 1.2 mH { tap 0.6 mH, dcr 0.4 ohm }\ncapacitor C1"),
        ("-- C1 -- tweeter+", "-- C1 -- T1.end\n  T1.tap -- tweeter+\n  T1.start -- return"),
    ),
    "a filter in the return wire": changed(
        boxes.FIRST_ORDER,
        ("input+ -- C1 -- tweeter+", "input+ -- tweeter+"),
        ("tweeter- -- return", "tweeter- -- C1 -- return"),
    ),
    "a value made up of two in parallel, and of two in a row": changed(
        boxes.SECOND_ORDER,
        ("capacitor C1 6.8 uF", "capacitor C1 4.7 uF\ncapacitor C9 2.2 uF\ncoil L9 0.18 mH"),
        ("coil L1 0.82 mH { dcr 0.28 ohm }", "coil L1 0.68 mH"),
        ("woofer+ -- C1 -- woofer-", "woofer+ -- (C1 | C9) -- woofer-"),
        ("input+ -- L1 -- woofer+", "input+ -- L1 -- L9 -- woofer+"),
    ),
    "a damped filter capacitor": changed(
        boxes.SECOND_ORDER,
        ("capacitor C1", "resistor R9 1 ohm\ncapacitor C1"),
        ("woofer+ -- C1 --", "woofer+ -- R9 -- C1 --"),
    ),
    "a mid of which both filters meet across it": changed(
        boxes.THREE_WAY,
        ("input+ -- C2 -- high -- L3 -- mid-", "input+ -- C2 -- L3 -- mid-"),
        ("high -- L2 -- return", "mid- -- L2 -- mid+"),
    ),
    "a resistor that discharges the tweeter's capacitors": changed(
        boxes.THIRD_ORDER,
        ("coil L3", "resistor R9 10 kohm\ncoil L3"),
        ("tweeter- -- return", "tweeter- -- return\n  tweeter+ -- R9 -- return"),
    ),
    "a contour of resistor and capacitor ahead of the tweeter": changed(
        boxes.FIRST_ORDER,
        ("capacitor C1", "resistor R9 4.7 ohm\ncapacitor C9 4.7 uF\ncapacitor C1"),
        ("-- C1 -- tweeter+", "-- C1 -- (R9 | C9) -- tweeter+"),
    ),
    "a resistor alone that lowers the tweeter a little": changed(
        boxes.FIRST_ORDER,
        ("capacitor C1", "resistor R9 2.7 ohm\ncapacitor C1"),
        ("-- C1 -- tweeter+", "-- C1 -- R9 -- tweeter+"),
    ),
    "a high-pass that mid and tweeter share": """
        driver woofer 8 ohm { re 5.8 ohm, le 0.8 mH }
        driver mid 8 ohm { re 6 ohm, le 0.2 mH }
        driver tweeter 8 ohm { re 6 ohm, le 0.04 mH }
        coil L1 2.2 mH
        capacitor C1 33 uF
        coil L2 0.33 mH
        capacitor C2 3.3 uF
        leg woofer {
          input+ -- L1 -- woofer+
          woofer- -- return
        }
        leg mid and tweeter {
          input+ -- C1 -- hp
          hp -- L2 -- mid+
          mid- -- return
          hp -- C2 -- tweeter+
          tweeter- -- return
        }
        """,
    "fourth order in both legs": """
        driver woofer 8 ohm { re 6.2 ohm, le 0.3 mH, fs 50 Hz, qms 5, qes 0.4 }
        driver tweeter 8 ohm { re 6 ohm, le 0.03 mH, fs 900 Hz, qms 3, qes 1.1 }
        coil L1 0.91 mH
        capacitor C1 12 uF
        coil L2 0.47 mH
        capacitor C2 2.7 uF
        capacitor C3 4.3 uF
        coil L3 0.33 mH
        capacitor C4 8.2 uF
        coil L4 1.5 mH
        leg woofer {
          input+ -- L1 -- m -- L2 -- woofer+
          m -- C1 -- return
          woofer+ -- C2 -- return
          woofer- -- return
        }
        leg tweeter {
          input+ -- C3 -- n -- C4 -- tweeter+
          n -- L3 -- return
          tweeter+ -- L4 -- return
          tweeter- -- return
        }
        """,
    "an ordinary full-range driver": """
        driver cone 8 ohm { role woofer, re 6 ohm, le 0.3 mH }
        leg cone {
          input+ -- cone+
          cone- -- return
        }
        """,
}


@pytest.mark.parametrize("situation", SOUND)
def test_sound_box_has_no_finding(situation: str) -> None:
    found = found_in(SOUND[situation])
    if "discharges" in situation:  # it does nothing that can be heard, and the advice says so
        found = [finding for finding in found if finding != ("no-effect-part", "R9")]
    assert found == []


MISTAKES = {
    "the tweeter's capacitor forgotten": (
        boxes.HORN,
        [("input+ -- C2 -- hp", "input+ -- hp"), ("capacitor C2 5.6 uF\n", "")],
        [("bare-tweeter", "tweeter+")],
    ),
    "the coil of a series type forgotten": (
        boxes.SERIES_TYPE,
        [("  input+ -- L1 -- middle\n", ""), ("coil L1 0.47 mH { dcr 0.2 ohm }\n", "")],
        [("bare-tweeter", "tweeter+")],
    ),
    "a pad's resistor from the input": (
        boxes.HORN,
        [("-- hp -- R1 -- tweeter+", "-- hp\n  input+ -- R1 -- tweeter+")],
        [("bare-tweeter", "tweeter+")],
    ),
    "a resistor across the capacitor": (
        boxes.SECOND_ORDER,
        [("capacitor C2", "resistor R1 33 ohm\ncapacitor C2"), ("-- C2 -- tweeter-", "-- (C2 | R1) -- tweeter-")],
        [("dc-into-tweeter", "R1")],
    ),
    "the shunt resistor of a pad to the wrong rail": (
        boxes.HORN,
        [("tweeter+ -- R2 -- tweeter-", "tweeter+ -- R2 -- input+")],
        [("dc-into-tweeter", "R2")],
    ),
    "the tweeter's coil ahead of its capacitor": (
        boxes.HORN,
        [("hp -- L2 -- return", "input+ -- L2 -- return")],
        [("coil-across-amp", "L2")],
    ),
    "the woofer's capacitor ahead of its coil": (
        boxes.SECOND_ORDER,
        [("woofer+ -- C1 -- woofer-", "input+ -- C1 -- return")],
        [("shunt-before-coil", "C1")],
    ),
    "the capacitor of a third order on the wrong end": (
        boxes.THIRD_ORDER,
        [("middle -- C1 -- return", "input+ -- C1 -- return")],
        [("shunt-before-coil", "C1")],
    ),
    "a spare capacitor across the input": (
        boxes.SECOND_ORDER,
        [("coil L2", "capacitor C9 1 uF\ncoil L2"), ("leg tweeter {", "leg tweeter {\n  input+ -- C9 -- return")],
        [("cap-across-amp", "C9")],
    ),
    "a trap without resistor across the input": (
        boxes.SECOND_ORDER,
        [
            ("coil L2", "capacitor C9 10 uF\ncoil L9 0.33 mH\ncoil L2"),
            ("leg tweeter {", "leg tweeter {\n  input+ -- L9 -- C9 -- return"),
        ],
        [("bare-trap-across-amp", "C9")],
    ),
    "the second coil of a third order from the input": (
        boxes.THIRD_ORDER,
        [("middle -- L2 -- woofer+", "middle\n  input+ -- L2 -- woofer+")],
        [("bare-trap-across-amp", "L1")],
    ),
    "a coil in the tweeter's path": (
        boxes.SECOND_ORDER,
        [("coil L2", "coil L9 0.1 mH\ncoil L2"), ("-- C2 -- tweeter-", "-- C2 -- L9 -- tweeter-")],
        [("coil-feeds-tweeter", "L9")],
    ),
    "a capacitor in the woofer's path": (
        boxes.FIRST_ORDER,
        [("capacitor C1", "capacitor C9 100 uF\ncapacitor C1"), ("-- L1 -- woofer+", "-- C9 -- L1 -- woofer+")],
        [("cap-feeds-woofer", "C9")],
    ),
    "the tweeter's coil across the woofer": (
        boxes.ZOBEL,
        [("tweeter+ -- L2 -- tweeter-\n", ""), ("woofer- -- return", "woofer+ -- L2 -- woofer-\n  woofer- -- return")],
        [("coil-across-woofer", "L2")],
    ),
    "the woofer's coil bridged": (
        boxes.FIRST_ORDER,
        [("input+ -- L1 -- woofer+", "input+ -- woofer+"), ("coil L1 0.47 mH { dcr 0.2 ohm }\n", "")],
        [("leg-unfiltered", "woofer+")],
    ),
    "a part of a mid's filter forgotten": (
        boxes.THREE_WAY,
        [
            ("input+ -- C2 -- high -- L3", "input+ -- L3"),
            ("  high -- L2 -- return\n", ""),
            ("capacitor C2 27 uF\ncoil L2 3.3 mH { dcr 0.9 ohm }\n", ""),
        ],
        [("leg-unfiltered", "mid-")],
    ),
    "the legs joined": (
        boxes.SECOND_ORDER,
        [("input+ -- C2", "woofer+ -- C2")],
        [("legs-tied", "woofer+")],
    ),
    "a series resistor ahead of the filter": (
        boxes.SECOND_ORDER,
        [("coil L2", "resistor R1 1.5 ohm\ncoil L2"), ("input+ -- C2", "input+ -- R1 -- C2")],
        [("resistor-wrong-side", "R1")],
    ),
    "a resistor in the woofer's path": (
        boxes.FIRST_ORDER,
        [("capacitor C1", "resistor R1 1 ohm\ncapacitor C1"), ("-- L1 -- woofer+", "-- L1 -- R1 -- woofer+")],
        [("resistor-wrong-side", "R1")],
    ),
    # 3.9 and 8.2 ohm, meant for 6 dB, give 3.5 dB and a load of 4.8 ohm (calculated).
    "a pad the wrong way round": (
        boxes.HORN,
        [("tweeter+ -- R2 -- tweeter-", "hp -- R2 -- return")],
        [("pad-reversed", "R1")],
    ),
    "the tweeter's coil behind its pad": (
        boxes.HORN,
        [("hp -- L2 -- return", "tweeter+ -- L2 -- return")],
        [("pad-ahead-of-filter", "R1")],
    ),
    "the shunt resistor of a pad forgotten": (
        boxes.HORN,
        [("  tweeter+ -- R2 -- tweeter-\n", ""), ("resistor R2 8.2 ohm\n", "")],
        [("pad-half-missing", "R1")],
    ),
    "the series resistor of a pad forgotten": (
        boxes.HORN,
        [("-- hp -- R1 -- tweeter+", "-- hp -- tweeter+"), ("resistor R1 3.9 ohm\n", "")],
        [("pad-half-missing", "R2")],
    ),
    "a Zobel ahead of the coil": (
        boxes.ZOBEL,
        [("woofer+ -- R1 -- C1", "input+ -- R1 -- C1")],
        [("zobel-misplaced", "R1")],
    ),
    "a Zobel's end on the input's plus": (
        boxes.ZOBEL,
        [("R1 -- C1 -- return", "R1 -- C1 -- input+")],
        [("zobel-misplaced", "R1")],
    ),
    "a Zobel without its resistor": (
        boxes.ZOBEL,
        [("woofer+ -- R1 -- C1", "woofer+ -- C1"), ("resistor R1 6.8 ohm\n", "")],
        [("zobel-without-r", "C1")],
    ),
    "a notch across the woofer": (
        boxes.NOTCH,
        [("-- L1 -- (L2 | C1 | R1) -- woofer+", "-- L1 -- woofer+\n  woofer+ -- (L2 | C1 | R1) -- return")],
        [("double-entry", "C2"), ("trap-wrong-way", "L2")],
    ),
    "a row of coil, capacitor and resistor in the woofer's path": (
        boxes.NOTCH,
        [("(L2 | C1 | R1) -- woofer+", "L2 -- C1 -- R1 -- woofer+")],
        [("trap-wrong-way", "L2")],
    ),
    "a notch without its resistor": (
        boxes.NOTCH,
        [("(L2 | C1 | R1)", "(L2 | C1)"), ("resistor R1 15 ohm\n", "")],
        [("trap-undamped", "L2")],
    ),
    "the tweeter of a second order not turned": (
        boxes.SECOND_ORDER,
        [("-- C2 -- tweeter-", "-- C2 -- tweeter+"), ("tweeter+ -- return", "tweeter- -- return")],
        [("polarity-even-order", "tweeter+")],
    ),
    "the mid of a three-way not turned": (
        boxes.THREE_WAY,
        [("L3 -- mid-", "L3 -- mid+"), ("mid+ -- return", "mid- -- return")],
        [("polarity-even-order", "mid+"), ("polarity-even-order", "tweeter+")],
    ),
    "the woofer of a third order turned": (
        boxes.THIRD_ORDER,
        [("L2 -- woofer+", "L2 -- woofer-"), ("woofer- -- return", "woofer+ -- return")],
        [("turned-unsaid", "woofer-")],
    ),
    "one of two woofers turned": (
        boxes.TWO_WOOFERS[: boxes.TWO_WOOFERS.index("variant")],
        [("pair -- woofer2+", "pair -- woofer2-"), ("woofer2- -- return", "woofer2+ -- return")],
        [("pair-opposed", "woofer2-")],
    ),
    "the corners of a mid exchanged": (
        boxes.THREE_WAY,
        [
            ("C2 27 uF", "C2 3.3 uF"),
            ("L2 3.3 mH { dcr 0.9 ohm }", "L2 0.47 mH { dcr 0.3 ohm }"),
            ("L3 0.47 mH", "L3 3.3 mH"),
            ("C3 3.3 uF", "C3 27 uF"),
        ],
        [("band-inside-out", "C2")],
    ),
    "a named node between two coils": (
        boxes.THIRD_ORDER,
        [("  middle -- C1 -- return\n", ""), ("capacitor C1 10 uF\n", "")],
        [("row-of-equals", "middle")],
    ),
    "the coils of a third order exchanged": (
        boxes.THIRD_ORDER,
        [("L1 0.75 mH", "L1 0.27 mH"), ("L2 0.27 mH", "L2 0.75 mH")],
        [("taper-reversed", "L2")],
    ),
    "the capacitors of a third order exchanged": (
        boxes.THIRD_ORDER,
        [("C2 5.6 uF", "C2 15 uF"), ("C3 15 uF", "C3 5.6 uF")],
        [("taper-reversed", "C3")],
    ),
    "a lamp in the woofer's path": (
        boxes.FIRST_ORDER,
        [("capacitor C1", "lamp B1 1 ohm { hot 12 ohm }\ncapacitor C1"), ("input+ -- L1", "input+ -- B1 -- L1")],
        [("lamp-or-fuse-wrong", "B1")],
    ),
    "a lamp across the tweeter": (
        boxes.FIRST_ORDER,
        [
            ("capacitor C1", "lamp B1 22 ohm { hot 220 ohm }\ncapacitor C1"),
            ("tweeter- -- return", "tweeter- -- return\n  tweeter+ -- B1 -- return"),
        ],
        [("lamp-or-fuse-wrong", "B1")],
    ),
    "a fuse across the woofer": (
        boxes.FIRST_ORDER,
        [
            ("capacitor C1", "fuse F1 2 A { cold 9 ohm }\ncapacitor C1"),
            ("woofer- -- return", "woofer- -- return\n  woofer+ -- F1 -- return"),
        ],
        [("lamp-or-fuse-wrong", "F1")],
    ),
    "a resistor across the amplifier": (
        boxes.HORN,
        [("tweeter+ -- R2 -- tweeter-", "input+ -- R2 -- return"), ("resistor R1 3.9 ohm", "resistor R1 1 ohm")],
        [("resistor-across-amp", "R2")],
    ),
    "one link left out": (boxes.BI_WIRED, [("omit K1 and K2", ""), ("link K2", "link K2\nomit K1")], None),
    "one link left in": (boxes.BI_WIRED, [("omit K1 and K2", "omit K2")], [("link-left-in", "K1")]),
    "outputs exchanged": (
        boxes.FIRST_ORDER,
        [("L1 -- woofer+", "L1 -- tweeter+"), ("C1 -- tweeter+", "C1 -- woofer+")],
        None,
    ),
}


@pytest.mark.parametrize("situation", MISTAKES)
def test_one_mistake_has_one_finding(situation: str) -> None:
    text, changes, expected = MISTAKES[situation]
    found = found_in(changed(text, *changes))
    if situation == "one link left out":
        assert ("link-missing", "posts high") in found
    elif situation == "outputs exchanged":
        assert [name for name, _ in found] == ["legs-crossed"]
    else:
        assert found == expected


def test_waived_error_does_not_silence_other_rules() -> None:
    """What the author accepts is no mistake, so what follows is judged."""
    bare = [("input+ -- C1 -- tweeter+", "input+ -- tweeter+"), ("capacitor C1 6.8 uF\n", "")]
    open_top = [("input+ -- L1 -- woofer+", "input+ -- woofer+"), ("coil L1 0.47 mH { dcr 0.2 ohm }\n", "")]
    text = changed(boxes.FIRST_ORDER, *bare)
    waived = text + 'allow bare-tweeter on tweeter because "the amplifier has its own crossover"\n'
    more = changed(waived, *open_top)
    assert found_in(text) == [("bare-tweeter", "tweeter+")]
    assert found_in(waived) == []
    assert found_in(more) == [("leg-unfiltered", "woofer+")]


def test_lost_wiring_says_nothing_of_what_is_missing() -> None:
    """A walk that could not be read may hold the capacitor."""
    text = changed(boxes.FIRST_ORDER, ("input+ -- C1 -- tweeter+", "input+ -- C1 - - tweeter+"))
    names = {name for name, _ in found_in(text)}
    assert names <= {"syntax-error"}


# --- structure


def structure_of(text: str) -> Structure:
    tree, _ = parse(Source("box.shunt", text))
    collected, _ = include(tree, nothing_to_include, "")
    return recognise(connect(resolve(collected)[0])[0])


def shape(ladder: Ladder) -> tuple[list[str], list[tuple[str, int]]]:
    """Steps and shunts by their labels, each shunt with the number of steps ahead of it."""
    steps = [" ".join(step.block.labels) for step in ladder.steps]
    shunts = sorted((" ".join(shunt.block.labels), len(shunt.ahead)) for shunt in ladder.shunts)
    return steps, shunts


def test_structure_of_a_horn_with_a_pad() -> None:
    structure = structure_of(boxes.HORN)
    assert shape(structure.ladders["woofer"]) == (["L1"], [("C1", 1)])
    assert shape(structure.ladders["tweeter"]) == (["C2", "R1"], [("L2", 1), ("R2", 2)])
    assert not structure.ladders["tweeter"].turned and structure.whole and not structure.across_input


def test_structure_of_a_mid_turned_round() -> None:
    mid = structure_of(boxes.THREE_WAY).ladders["mid"]
    assert shape(mid) == (["C2", "L3"], [("C3", 2), ("L2", 1)])
    assert (mid.turned, mid.low_pass_order, mid.high_pass_order) == (True, 2, 2)


def test_structure_of_a_series_type_has_no_steps() -> None:
    ladders = structure_of(boxes.SERIES_TYPE).ladders
    assert shape(ladders["woofer"]) == ([], [("C1", 0)])
    assert shape(ladders["tweeter"]) == ([], [("L1", 0)])
    assert ladders["woofer"].low_pass_order == ladders["tweeter"].high_pass_order == 1


def test_structure_of_parts_in_the_return_wire() -> None:
    text = changed(
        boxes.FIRST_ORDER,
        ("input+ -- C1 -- tweeter+", "input+ -- tweeter+"),
        ("tweeter- -- return", "tweeter- -- C1 -- return\n  tweeter+ -- L9 -- tweeter-"),
        ("capacitor C1", "coil L9 0.82 mH\ncapacitor C1"),
    )
    tweeter = structure_of(text).ladders["tweeter"]
    assert shape(tweeter) == (["C1"], [("L9", 1)])
    assert tweeter.steps[0].in_return and tweeter.high_pass_order == 2


def test_structure_does_not_hang_on_the_order_or_direction_of_walks() -> None:
    """A circuit is the same however its walks are written."""
    text = changed(
        boxes.HORN,
        ("input+ -- C2 -- hp -- R1 -- tweeter+", "tweeter+ -- R1 -- hp\n  hp -- C2 -- input+"),
        ("hp -- L2 -- return", "return -- L2 -- hp"),
    )
    before, after = structure_of(boxes.HORN), structure_of(text)
    assert {name: shape(ladder) for name, ladder in before.ladders.items()} == {
        name: shape(ladder) for name, ladder in after.ladders.items()
    }


def test_structure_of_a_deep_ladder_is_found_in_time() -> None:
    """A stranger's file of a thousand parts must not exhaust the stack."""
    assert structure_of(deep_ladder(300)) is not None
    assert structure_of(deep_ladder(12)).ladders["woofer"].low_pass_order == 24


def deep_ladder(stages: int) -> str:
    lines = ["driver woofer 8 ohm"]
    walk = ["input+"]
    shunts = []
    for number in range(stages):
        lines += [f"coil L{number} 1 mH", f"capacitor C{number} 1 uF"]
        walk += [f"L{number}", f"n{number}"]
        shunts.append(f"  n{number} -- C{number} -- return")
    lines += ["leg woofer {", "  " + " -- ".join([*walk, "woofer+"]), *shunts, "  woofer- -- return", "}"]
    return "\n".join(lines)


def test_prototypes_taper_towards_the_load() -> None:
    """The premise of `taper-reversed`: singly terminated prototypes, tests/reference/02_prototypes.csv (see there)."""
    rows = list(csv.DictReader((REFERENCE / "02_prototypes.csv").open(encoding="utf-8")))
    filters: dict[tuple[str, ...], list[tuple[int, str, float]]] = {}
    for row in rows:
        if row["termination"] == "single":
            key = row["family"], row["normalisation"], row["order"]
            element = int(row["element (1 = next to the source)"])
            filters.setdefault(key, []).append((element, row["kind"], float(row["value"])))
    assert len(filters) > 20
    for elements in filters.values():
        coils = [value for _, kind, value in sorted(elements) if kind.startswith("L")]
        if len(coils) == 2:  # two coils in the path: what the rule is about
            assert coils[1] < 1.07 * coils[0]


# --- expectations


def lines_found(text: str, *lines: str) -> list[str]:
    """The headlines of unmet expectations."""
    from rules.compiling import findings_of

    found = findings_of(Source("box.shunt", text + "\n".join(lines) + "\n"), boxes.SHAPED)
    assert {f.name for f in found} <= {"expectation-unmet", "slip-explains"}
    return [f.headline for f in found if f.name == "expectation-unmet"]


def plain(text: str) -> str:
    """The drivers as resistors of 8 ohm, the wire of coils as nothing: closed forms hold."""
    import re

    return re.sub(r"(?m)^(driver \w+ 8 ohm).*|( \{ dcr [^}]*\})", lambda m: m[1] or "", text)


# First-order sections: |H| = 1/sqrt(1 + (f/f0)^2), f0 = R/(2 pi L) = 2709 Hz for 8 ohm and 0.47 mH, and
# 1/(2 pi R C) = 2926 Hz for 6.8 uF; they are equal where f^2 = 2709 x 2926 (calculated): 2815 Hz at -3.2 dB.
TRUE = (
    "expect crossing of woofer and tweeter at 2815 Hz within 0.1 %",
    "expect corner of woofer at 2709 Hz within 1 %",
    # Most of the band up to 20 kHz, where a first-order high-pass still rises, lies 0.2 dB below its end.
    "expect corner of tweeter at 2926 Hz within 3 %",
    "expect level of woofer -3.01 dB at 2709 Hz within 0.01 dB",
    "expect level of tweeter below -20 dB at 280 Hz",
    "expect level of tweeter above -0.5 dB at 15 kHz",
    "expect slope of tweeter 6 dB/octave from 20 Hz to 40 Hz within 0.02 dB/octave",
    "expect impedance above 7.9 ohm from 20 Hz to 20 kHz",
    "expect impedance below 8.4 ohm",
    "expect polarity of woofer normal",
    "expect polarity of woofer and tweeter same",
)

FALSE = {
    "expect crossing of woofer and tweeter at 2.4 kHz within 10 %": (
        "`woofer` and `tweeter` cross at 2.82 kHz, not at 2.4 kHz within 10 %"
    ),
    "expect corner of tweeter at 2.4 kHz within 10 %": (
        "the corner of `tweeter` is at 2.86 kHz, not at 2.4 kHz within 10 %"
    ),
    "expect level of woofer 0 dB at 2709 Hz within 1 dB": (
        "the level of `woofer` is -3.01 dB at 2.71 kHz, not 0 dB within 1 dB"
    ),
    "expect level of tweeter above -10 dB at 280 Hz": "the level of `tweeter` is -20.4 dB at 280 Hz, not above -10 dB",
    "expect impedance above 9 ohm": "the impedance is 8 ohm at 20 Hz, not above 9 ohm",
    "expect polarity of tweeter reversed": "`tweeter` is the normal way round, not reversed",
    "expect polarity of woofer and tweeter opposite": (
        "`woofer` and `tweeter` are the same way round, not opposite ways round"
    ),
    "expect slope of tweeter 12 dB/octave from 20 Hz to 40 Hz within 2 dB/octave": (
        "the level of `tweeter` changes by 6.02 dB/octave from 20 Hz to 40 Hz, not by 12 dB/octave within 2 dB/octave"
    ),
}


@pytest.mark.parametrize("line", TRUE)
def test_expectation_that_closed_forms_confirm_is_met(line: str) -> None:
    assert lines_found(plain(boxes.FIRST_ORDER), line) == []


@pytest.mark.parametrize("line", FALSE)
def test_expectation_that_closed_forms_refute_is_unmet(line: str) -> None:
    assert lines_found(plain(boxes.FIRST_ORDER), line) == [FALSE[line]]


def test_crossing_counts_stated_sensitivities() -> None:
    """First-order sections x dB apart cross where f0b/f = 10^(x/20) sqrt(...): here both of equal f0 for ease."""
    text = plain(boxes.FIRST_ORDER).replace("tweeter 8 ohm", "tweeter 8 ohm { sensitivity 96 dB }")
    louder = text.replace("woofer 8 ohm", "woofer 8 ohm { sensitivity 90 dB }")
    assert lines_found(text, TRUE[0]) == []  # one of the two says nothing of both
    (headline,) = lines_found(louder, TRUE[0])
    # g^2 / (1 + (f/2709)^2) = 1 / (1 + (2926/f)^2) with g = 10^(-6/20) has its root at 1.44 kHz (calculated).
    assert "cross at 1.44 kHz" in headline


def test_expectation_in_a_variant_is_proved_there() -> None:
    text = plain(boxes.FIRST_ORDER) + "variant hall {\n  set L1 = 0.82 mH\n}\n" + TRUE[0] + "\n"
    from rules.compiling import findings_of

    found = findings_of(Source("box.shunt", text), boxes.SHAPED)
    assert [f.name for f in found] == ["expectation-unmet"]
