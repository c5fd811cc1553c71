"""`layout`: what comes out of its lines, what lies over what, and what is refused."""

from __future__ import annotations

import time

import pytest

from model.boxes_with_boards import BOX, STRIP, layout, resolved
from shuntwise.model import layout_text
from shuntwise.model.boards import Layout, Lead, Spot


def read(lines: str) -> Layout:
    design, said = resolved(layout(lines))
    assert [finding.headline for finding in said] == []
    (one,) = design.layouts
    assert not one.refused
    return one


def spots(leads: tuple[Lead, ...]) -> list[tuple[str | None, str | None, str]]:
    return [(lead.terminal, lead.spot.layout, lead.spot.hole) for lead in leads]


def of(spot: Spot) -> tuple[str | None, str]:
    return spot.layout, spot.hole


# --- values


def test_place_says_where_a_part_lies() -> None:
    one = read("place L1 at 50:20 mm on solder side { axis upright, start into north 1, end into lug, raised 8 mm\n"
               'tie 4.8 mm from 40:20 mm to 60:20 mm, note "coil on edge" }')  # fmt: skip
    (place,) = one.places
    assert (place.label, place.at, place.side, place.axis, place.raised) == ("L1", (50, 20), "solder", "upright", 8.0)
    assert spots(place.leads) == [("start", "strip", "north 1"), ("end", "strip", "lug")]
    assert [(tie.width, tie.first, tie.second) for tie in place.ties] == [(4.8, (40, 20), (60, 20))]
    assert place.notes == ("coil on edge",)


def test_leads_that_are_not_told_apart_and_three_terminals() -> None:
    one = read("place R1 at 50:20 mm { axis -45 deg, leads into south 1 and south 2 }\n"
               "place T1 off board { start into north 1, end into woofer-, tap into upper 2 }")  # fmt: skip
    plain, tapped = one.places
    assert (plain.axis, plain.side, plain.raised, spots(plain.leads)) == (
        -45.0, "parts", 0.0, [(None, "strip", "south 1"), (None, "strip", "south 2")],
    )  # fmt: skip
    assert tapped.at is None
    assert spots(tapped.leads)[1:] == [("end", None, "woofer-"), ("tap", "strip", "upper 2")]


def test_cuts_holes_and_wires() -> None:
    one = read("cut from 50:24 mm to 50:40 mm\ncut from 1:1 mm to 2:1 mm { width 2 mm }\n"
               "drill h1 1.3 mm at 25:33 mm in north\n"
               "jumper h1 -- south 2 { wire 1.4 mm, sleeved, length 40 mm }\nbus south 1 to south 4\n"
               "lead out lug to input+ { length 250 mm, wire 1.8 mm }\ndepth 60 mm")  # fmt: skip
    assert [(cut.start, cut.end, cut.width) for cut in one.cuts] == [((50, 24), (50, 40), 1.0), ((1, 1), (2, 1), 2.0)]
    (hole,) = one.drilled
    assert (hole.name, hole.row, hole.area, hole.drilled, hole.ring) == ("h1", "h1", "north", True, 0.0)
    assert [(w.kind, of(w.first), of(w.second), w.diameter, w.length, w.sleeved) for w in one.wires] == [
        ("jumper", ("strip", "h1"), ("strip", "south 2"), 1.4, 40.0, True),
        ("bus", ("strip", "south 1"), ("strip", "south 4"), 0.0, 0.0, False),
        ("lead out", ("strip", "lug"), (None, "input+"), 1.8, 250.0, False),
    ]
    assert one.depth == 60.0
    assert one.span.text.endswith("}")


def test_two_boards_are_joined_by_wires_in_either_order() -> None:
    """A hole that another layout drills further down may be named."""
    text = f"{BOX}{STRIP}layout on strip as low {{ jumper lug -- high.h1 }}\n"
    text += "layout on strip as high { drill h1 1 mm at 1:1 mm, jumper lug -- low.south 2 }\n"
    design, said = resolved(text)
    assert not said
    assert [of(wire.second) for one in design.layouts for wire in one.wires] == [("high", "h1"), ("low", "south 2")]


def test_parts_of_used_networks_and_of_two_coils() -> None:
    text = "network pad (a, b) { resistor Rs 1 ohm\na -- Rs -- b }\nuse pad as P1\n"
    text += "driver sub 4 ohm { coils 2, re 3.2 ohm, 100 W }\n"
    text += "leg sub { input+ -- P1 -- sub.a+\nsub.a- -- sub.b+\nsub.b- -- return }\n"
    text += STRIP + "layout on strip { place P1.Rs at 5:5 mm\nlead out lug to sub.b- }\n"
    design, said = resolved(text)
    assert [finding.headline for finding in said] == []
    assert design.layouts[0].places[0].label == "P1.Rs"
    assert design.layouts[0].wires[0].second.hole == "sub.b-"


def test_part_that_is_not_fitted_may_be_placed() -> None:
    assert not resolved(layout("place R1 at 5:5 mm") + "omit R1\n")[1]


# --- what lies over what

LAID = layout(
    "place R1 at 5:5 mm\ndrill h1 1 mm at 1:1 mm\nlead out lug to input+\ndepth 60 mm\ncut from 1:30 mm to 9:30 mm\n"
    "jumper h1 -- lug"
)


@pytest.mark.parametrize("where", ["variant v { %s }\n", "choice c { position a { }\nposition v { %s } }\n"])
def test_layout_in_a_variant_lies_over_the_one_outside(where: str) -> None:
    inner = "layout on strip { place R1 at 9:9 mm\ndrill h1 2 mm at 3:3 mm\nlead out south 1 to input+\ndepth 40 mm\n"
    inner += "cut from 1:9 mm to 9:9 mm\njumper lug -- south 2 }"
    text = LAID + where % inner
    base, said = resolved(text)
    over, more = resolved(text, "v" if where.startswith("variant") else "c.v")
    assert not said and not more
    assert [place.at for place in base.layouts[0].places] == [(5, 5)]
    (one,) = over.layouts
    assert [place.at for place in one.places] == [(9, 9)]
    assert [(hole.at, hole.diameter) for hole in one.drilled] == [((3, 3), 2.0)]
    assert [(wire.kind, wire.first.hole) for wire in one.wires] == [
        ("jumper", "h1"), ("lead out", "south 1"), ("jumper", "lug"),
    ]  # fmt: skip
    assert (one.depth, len(one.cuts)) == (40.0, 2)


def test_place_in_a_variant_takes_a_part_from_another_board() -> None:
    text = f"{BOX}{STRIP}layout on strip as low {{ place R1 at 5:5 mm }}\n"
    text += "variant v { layout on strip as high { place R1 at 9:9 mm } }\n"
    design, said = resolved(text, "v")
    assert not said
    assert [(one.name, len(one.places)) for one in design.layouts] == [("low", 0), ("high", 1)]
    assert [one.name for one in resolved(text)[0].layouts] == ["low"]


# --- what is refused


@pytest.mark.parametrize(
    ("lines", "name"),
    [
        ("place L9 at 5:5 mm", "unknown-name"),
        ("place woofer at 5:5 mm", "unknown-name"),
        ("place L1 at 5:5 mm\nplace L1 at 9:5 mm", "same-label-twice"),
        ("place L1 at 105:5 mm", "outside-board"),
        ("place L1 at 5:5 mm { start into nort 1 }", "unknown-name"),
        ("place L1 at 5:5 mm { start into north 4 }", "unknown-name"),
        ("place L1 at 5:5 mm { start into north 0 }", "unknown-name"),
        ("place L1 at 5:5 mm { start into north 1.5 }", "value-unclear"),
        ("place L1 at 5:5 mm { start into north }", "lead-unclear"),
        ("place L1 at 5:5 mm { start into lug 1 }", "lead-unclear"),
        ("place L1 at 5:5 mm { start into woofer }", "lead-unclear"),
        ("place L1 at 5:5 mm { start into woofr+ }", "unknown-name"),
        ("place L1 at 5:5 mm { start into high.lug }", "unknown-name"),
        ("place L1 at 5:5 mm { begin into lug }", "unknown-word"),
        ("place L1 at 5:5 mm { start into lug, start into lug }", "attribute-twice"),
        ("place L1 at 5:5 mm { leads into lug and north 1, start into lug }", "lead-unclear"),
        ("place L1 at 5:5 mm { start into lug, leads into lug and north 1 }", "lead-unclear"),
        ("place L1 at 5:5 mm { leads into lug }", "lead-unclear"),
        ("place T1 at 5:5 mm { leads into lug and north 1 }", "lead-unclear"),
        ("place L1 at 5:5 mm { axis 90 }", "unit-missing"),
        ("place L1 at 5:5 mm { axis 90 mm }", "unit-wrong-kind"),
        ("place L1 at 5:5 mm { axis 1000 deg }", "value-absurd"),
        ("place L1 at 5:5 mm { axis up }", "unknown-word"),
        ("place L1 at 5:5 mm { raised 0 mm }", "value-not-positive"),
        ("place L1 at 5:5 mm { raised 3 mm, raised 4 mm }", "attribute-twice"),
        ("place L1 at 5:5 mm { tie 4 mm from 1:1 mm to 1:99 mm }", "outside-board"),
        ('place L1 at 5:5 mm { remark "so" }', "unknown-word"),
        ("cut from 1:1 mm to 1:1 mm", "shape-impossible"),
        ("cut from 1:1 mm to 1:50 mm", "outside-board"),
        ("cut from 1:1 mm to 1:9 mm { wire 1 mm }", "unknown-word"),
        ("drill lug 1 mm at 1:1 mm", "same-label-twice"),
        ("drill north 1 mm at 1:1 mm", "same-label-twice"),
        ("drill h1 1 mm at 1:1 mm\ndrill h1 1 mm at 2:2 mm", "same-label-twice"),
        ("drill h1 1 mm at 90.5:12 mm", "holes-collide"),
        ("drill h1 1 mm at 50:10 mm in north", "hole-outside-area"),
        ("drill h1 1 mm at 50:33 mm in nrth", "unknown-name"),
        ("jumper lug -- lug", "lead-unclear"),
        ("jumper lug -- woofer+", "lead-unclear"),
        ("lead out lug to south 1", "lead-unclear"),
        ("lead out woofer+ to lug", "lead-unclear"),
        ("bus south 1 to north 1", "lead-unclear"),
        ("bus lug to north 1", "lead-unclear"),
        ("depth 60 mm\ndepth 50 mm", "attribute-twice"),
        ("depth 0 mm", "value-not-positive"),
    ],
)
def test_statement_that_cannot_be_is_one_finding(lines: str, name: str) -> None:
    said = resolved(layout(lines))[1]
    assert [finding.name for finding in said] == [name]
    start = layout("").index("layout on strip")
    assert said[0].span.start > start
    assert said[0].help


def test_layout_of_an_unknown_board_names_the_nearest_or_the_library() -> None:
    (near,) = resolved(f"{STRIP}layout on stripe {{ depth 9 mm }}\n")[1]
    (shipped,) = resolved("layout on gusset { depth 9 mm }\n")[1]
    assert (near.name, near.help) == ("unknown-name", "a similar name exists: `strip`")
    assert shipped.help.endswith('`include "gusset" from library`')


def test_layout_of_one_name_is_on_one_board_and_stands_once() -> None:
    other = STRIP.replace("board strip", "board plate")
    twice = f"{STRIP}{other}layout on strip {{ }}\n"
    assert [f.name for f in resolved(twice + "layout on strip { }\n")[1]] == ["same-label-twice"]
    both = twice + "variant v { layout on plate as strip { } }\n"
    assert [f.name for f in resolved(both, "v")[1]] == ["same-label-twice"]
    assert not resolved(both)[1]


def test_what_was_refused_is_not_missed_where_it_is_named() -> None:
    """One mistake on the board is one finding, though leads go there; and the layout says that something is missing."""
    text = layout("place R1 at 5:5 mm { leads into lug and south 1 }").replace(
        "lug of 2 mm at 90:12", "lug of 2 mm at 90:92"
    )
    design, said = resolved(text)
    assert [finding.name for finding in said] == ["outside-board"]
    assert design.layouts[0].refused
    lost, found = resolved(layout("drill h1 $ 1 mm at 1:1 mm\njumper h1 -- lug"))
    assert [finding.name for finding in found] == ["syntax-error"]
    assert lost.layouts[0].refused


# --- hostile texts

HOSTILE = {
    "cuts": "\n".join(f"cut from {n % 90}:{n // 90 % 30} mm to 100:40 mm" for n in range(10_000)),
    "ties": "place L1 at 5:5 mm {\n" + "tie 1 mm from 1:1 mm to 2:2 mm\n" * 10_000 + "}",
}


@pytest.mark.parametrize("lines", HOSTILE.values(), ids=HOSTILE)
def test_hostile_layout_is_one_finding_in_no_time(lines: str) -> None:
    started = time.process_time()
    assert [finding.name for finding in resolved(layout(lines))[1]] == ["too-much-on-board"]
    assert time.process_time() - started < 1.5  # 0.1 to 0.5 s on a quiet machine


def test_layers_of_variants_do_not_add_up_beyond_the_bound(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(layout_text, "MOST_STATEMENTS", 20)
    many = "cut from 1:1 mm to 2:2 mm\n" * 12
    text = layout(many) + f"variant v {{ layout on strip {{ {many} }} }}\n"
    assert not resolved(text)[1]
    assert [finding.name for finding in resolved(text, "v")[1]] == ["too-much-on-board"]
