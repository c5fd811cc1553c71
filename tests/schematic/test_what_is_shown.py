"""What stands on a schematic beside the wiring: values, ratings, names, frames, notes, and the order of things."""

from __future__ import annotations

from math import inf

from documents.designs import TWO_WAY, compiled, one
from schematic.circuits import example
from schematic.reading import read
from shuntwise.documents.schematic.draw import schematic_sheets
from shuntwise.documents.sheet import GREY, Drawn, Sheet, Stroke, Text
from shuntwise.graph.circuit import Circuit
from shuntwise.model.differences import differences


def shown(circuit: Circuit, *, ratings: bool = False) -> list[str]:
    return [text.text for text in texts(sheet_of(circuit, ratings=ratings))]


def sheet_of(circuit: Circuit, *, ratings: bool = False) -> Sheet:
    (sheet,) = schematic_sheets(circuit, page=(297.0, inf), ratings=ratings)
    return sheet


def texts(sheet: Sheet) -> list[Text]:
    return [mark for mark in sheet.marks if isinstance(mark, Text)]


def test_values_always_and_ratings_on_request() -> None:
    text = TWO_WAY.replace("coil L1 0.5 mH", "coil L1 0.5 mH { dcr 0.2 ohm, 5 %, iron core, 20 A }")
    plain, rated = shown(one(text).circuit), shown(one(text).circuit, ratings=True)
    assert {"0.5 mH", "5 uF", "8 ohm"} <= set(plain)
    assert {"dcr 0.2 ohm", "5 %, 20 A", "iron core"} & set(plain) == set()
    assert {"dcr 0.2 ohm", "5 %, 20 A", "iron core"} <= set(rated)


def test_the_author_s_names_stand_at_their_wires_and_posts() -> None:
    assert {"high", "hp", "input+", "input-"} <= set(shown(example("13-harbour-stage")[0]))
    assert {"low+", "low-", "high+", "high-"} <= set(shown(example("10-museum-loop")[1]))


def test_used_networks_are_framed_with_their_names() -> None:
    for ratings in (False, True):
        framed(sheet_of(example("13-harbour-stage")[0], ratings=ratings))


def framed(sheet: Sheet) -> None:
    frames = [mark for mark in sheet.marks if isinstance(mark, Stroke) and mark.tone == GREY and mark.dashes]
    assert len(frames) == 3
    assert {"Z1: zobel", "Z2: zobel", "P1: lpad"} <= {text.text for text in texts(sheet)}


def test_drivers_stand_in_one_column_in_the_order_of_the_design() -> None:
    for stem, drivers in (
        ("13-harbour-stage", ["woofer", "mid", "tweeter"]),
        ("10-museum-loop", ["woofer", "tweeter"]),
    ):
        labels = [text for text in texts(sheet_of(example(stem)[0])) if text.bold and text.text in drivers]
        assert len({text.x for text in labels}) == 1
        assert [text.text for text in sorted(labels, key=lambda text: text.y)] == drivers


def test_notes_tell_what_cannot_be_drawn() -> None:
    assert "Coupled coils, dots at their starts: L1 and L2, minus 0.4 %." in shown(example("13-harbour-stage")[0])
    text = TWO_WAY.replace("-- C1 --", "-- (C1 | R1) --") + "resistor R1 4 ohm\nomit R1\n"
    assert "Left out: R1 (4 ohm)." in shown(one(text).circuit)


def test_a_variant_tells_what_the_design_itself_has_otherwise() -> None:
    itself = example("16-village-hall")[0]
    (stage,) = [c for c in example("16-village-hall") if c.design.variant == "band+reach.stage"]
    (sheet,) = schematic_sheets(stage, differences=differences(stage.design, itself.design))
    (note,) = [text.text for text in texts(sheet) if "differs" in text.text]
    assert note == (
        "Marked by a bar: differs from the design itself (in brackets what that has): choice reach stage (hall), "
        "R1 fitted (left out), A1.loss 1 dB (3 dB), K1 left out (fitted), K2 fitted (left out)."
    )
    assert read([sheet]).marked == {"R1", "A1", "K1", "K2"}
    (picture,) = [entry for entry in sheet.content if isinstance(entry, Drawn)]
    assert "differs from the design itself" in picture.said and "K1 left out (fitted)" in picture.said


def test_parts_that_a_variant_leaves_out_stand_in_the_same_list() -> None:
    """Not drawn, so nothing has a bar."""
    itself, variant = compiled(f"{TWO_WAY}\nvariant bare {{ omit C1 }}\n")
    sheet = schematic_sheets(variant.circuit, differences=differences(variant.design, itself.design))[0]
    told = [text.text for text in texts(sheet)]
    assert "Left out: C1 (5 uF)." in told
    assert "Differs from the design itself (in brackets what that has): C1 left out (fitted)." in told
    assert read([sheet]).marked == frozenset()


def test_unusual_signs_are_explained_where_they_occur() -> None:
    """An open link, a flag, a tapped coil's dot, posts of no amplifier, a place for a meter."""
    said = {
        "16-village-hall": ("An open contact", "A name in a pointed box", "A dot at a tapped coil"),
        "18-circus-top": ("Posts that no amplifier feeds", "A name in a pointed box"),
        "02-rehearsal-wedge": (),
    }
    signs = {sign for signs in said.values() for sign in signs}
    for stem, own in said.items():
        told = " ".join(shown(example(stem)[0]))
        assert {sign for sign in signs if sign in told} == {*own}
    assert "A ring with a name" in " ".join(shown(one(TESTED).circuit))


TESTED = TWO_WAY.replace("input+ -- C1 -- tweeter+", "input+ -- C1 -- hp -- tweeter+") + "testpoint hp\n"


def test_names_of_nodes_do_not_look_like_values() -> None:
    sheet = sheet_of(example("13-harbour-stage")[0])
    tones = {text.text: text.tone for text in texts(sheet)}
    assert tones["high"] == tones["hp"] == GREY != tones["39 uF"] == tones["Z1: zobel"] == tones["input+"]


def test_a_tapped_coil_and_an_attenuator_are_one_part_in_the_ladder() -> None:
    """No wire is named where they can be drawn straight."""
    text = TWO_WAY.replace(
        "input+ -- C1 -- tweeter+",
        "input+ -- C1 -- T1.end\n  T1.start -- return\n  T1.tap -- A1 -- tweeter+\n  A1.common -- return",
    )
    text += "tapped coil T1 1 mH { tap 0.4 mH }\nattenuator A1 8 ohm { loss 3 dB }\n"
    sheet = sheet_of(one(text).circuit)
    labels = [text.text for text in texts(sheet)]
    assert labels.count("T1") == labels.count("A1") == 1
    assert {"1 mH", "tap 0.4 mH", "loss 3 dB"} <= set(labels)
    assert not any("joined" in label for label in labels)


def test_who_does_not_see_it_is_told_what_it_shows() -> None:
    (picture,) = [entry for entry in sheet_of(example("13-harbour-stage")[0]).content if isinstance(entry, Drawn)]
    for said in ("woofer 8 ohm", "L1 2.2 mH", "Z1.C 30 uF", "read-back.txt"):
        assert said in picture.said
    assert sheet_of(example("13-harbour-stage")[2]).title == "Harbour stage side fill: circuit diagram"


def test_a_circuit_with_nothing_in_it_is_a_sheet() -> None:
    assert {"Schematic", "input+", "input-"} <= set(shown(one("# nothing\n").circuit))
