"""The sheet for the bench: every reading with its window and a box to write in, and what stands around them."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import pytest

from documents.binders import HOSTILE, hostile
from documents.designs import EXAMPLES, Compiled, compiled, example, one
from documents.test_flow import box
from shuntwise.bench.bench import Bench
from shuntwise.bench.verdict import SheetLine
from shuntwise.documents.aligned import as_text
from shuntwise.documents.bench_setup import WIDTH, set_up_picture
from shuntwise.documents.bench_sheet import cautions, check_frequencies, content
from shuntwise.documents.bench_words import SetUp, by_set_up, connect, expected, shown, window
from shuntwise.documents.binder import CHAPTERS
from shuntwise.documents.flow import flow
from shuntwise.documents.html import as_html
from shuntwise.documents.material import Material
from shuntwise.documents.page import Chapter, Front, Group, Picture, Printing
from shuntwise.documents.pins import ways_in
from shuntwise.documents.sheet import Stroke, Text
from shuntwise.model.box import OPEN, Reading
from shuntwise.model.instruments import USUAL, Instruments
from shuntwise.network.sweep import Sweep


@cache
def fill() -> tuple[Compiled, Bench]:
    made = example("01")
    return made, Bench(made.circuit)


@cache
def two_amplifiers() -> Compiled:
    """A box with two inputs, on the pins of a socket."""
    (path,) = [path for path in EXAMPLES if path.name.startswith("18")]
    return compiled(path.read_text(encoding="utf-8"))[-1]


@cache
def groups() -> tuple[Group, ...]:
    made, bench = fill()
    return tuple(group for group in content(made.circuit, USUAL, bench.sheet) if group)


def test_every_reading_stands_in_its_set_up_with_its_window() -> None:
    """In the order of the sheet, counted through, as the file of a box words it."""
    made, bench = fill()
    text = as_text(content(made.circuit, USUAL, bench.sheet, drawn=False))
    assert text.replace("\n\n", "\n") == as_text(groups()).replace("\n\n\n\n", "\n\n").replace("\n\n", "\n")
    rows = [line.split("  ") for line in text.splitlines() if line.strip()[:1].isdigit() and "____" in line]
    told = [[cell.strip() for cell in row if cell.strip()] for row in rows]
    assert [row[0] for row in told] == [str(number + 1) for number in range(len(bench.sheet.lines))]
    for row, line in zip(told, bench.sheet.lines, strict=True):
        assert row[1].startswith(line.reading.place) and row[2] == shown(line.expected, line.reading.quantity)
        assert tuple(row[3:5]) == window(line)
    assert text.count("ohmmeter\n") + text.count("generator\n") == len(list(by_set_up(bench.sheet.lines)))


def test_the_readings_of_a_two_way_stand_on_one_page_with_boxes() -> None:
    """A box for each reading, each check of the meter, and what is filled in at the head."""
    _, bench = fill()
    sheets, _ = flow((Chapter("bench", "Bench check", groups()),), Front("Fill", "", ""))
    boxes = [
        mark
        for mark in sheets[0].marks
        if isinstance(mark, Stroke) and mark.closed and mark.width == 0.2 and len(mark.points) == 4
    ]
    assert len(boxes) == len(bench.sheet.lines) + len(check_frequencies(bench.sheet)) + 4
    page = as_html((Chapter("bench", "Bench check", groups()),), Front("Fill", "", ""))
    assert page.count('written"></td>') == len(boxes)
    assert "<h1>Fill</h1>" in page and "Key figures" not in page and "<nav" not in page


def test_levels_and_what_a_short_draws_follow_the_instruments() -> None:
    """Ohm's law by hand: 4 V across 20 ohm are 0.2 A and 0.8 W; a dummy gets 4 V squared over 80 ohm at most."""
    made, _ = fill()
    bench = Instruments(source_v=4.0, series_ohm=20.0, dummy_ohm=4.0, meter_share=0.05, meter_top_hz=1000.0)
    text = " ".join(as_text(content(made.circuit, bench, Bench(made.circuit, bench).sheet)).split())
    for words in ("draws 200 mA at most, and heats it with 800 mW", "take one of 2 W or more", "dummies of 500 mW",
                  "1.9 V 2.1 V", "dummies of 4 ohm on the wires to woofer and tweeter", "feeds the box, at 4 V",
                  "50 ohm of its own", "within 5 % up to 1 kHz", "Generator at 4 V"):  # fmt: skip
        assert words in text, words


def test_a_pop_is_for_woofers_only() -> None:
    _, bench = fill()
    assert "Pop test, woofer only" in as_text(groups())
    horn = one("driver tweeter 8 ohm { fs 800 Hz }\ncapacitor C1 5 uF\nleg tweeter {\n  input+ -- C1 -- tweeter+\n"
               "  tweeter- -- return\n}\n")  # fmt: skip
    assert "No pop test" in as_text(content(horn.circuit, USUAL, bench.sheet))


def test_words_follow_the_drivers() -> None:
    """A sub with two voice coils is one driver, and no tweeter: there is no sum to hear, and each coil is popped."""
    sheet = replace(fill()[1].sheet, lines=fill()[1].sheet.lines[1:4])
    told = " ".join(as_text(content(example("17").circuit, USUAL, sheet, drawn=False)).split())
    assert "tweeter" not in told and "Listening" not in told
    assert "Pop test, sub, each voice coil by itself, wires off" in told and "amplifier or a driver" in told
    itself = " ".join(as_text(groups()).split())
    assert "Pop test, woofer only" in itself and "Never on a tweeter" in itself and "a tweeter, and no ear" in itself
    assert "The box's own amplifiers are unplugged" in cautions(two_amplifiers().design, fill()[1].sheet, USUAL)[0]


def test_posts_are_told_by_the_pins_that_lead_to_them() -> None:
    """A builder plugs into a socket: which pin is which stands once for all, and beside where the generator goes."""
    top = two_amplifiers().circuit
    told = " ".join(as_text(content(top, USUAL, fill()[1].sheet, drawn=False)).split())
    assert "Rear, four-pole socket: pin 1+ is low+, pin 1- is low-, pin 2+ is high+ and pin 2- is high-." in told
    assert "to the next box, has the pins of rear" in told
    assert "into low+ (pin 1+ of rear), back from low- (pin 1- of rear)." in connect(
        SetUp("dummies on", "low"), top, USUAL
    )
    assert "pin" not in connect(SetUp("dummies on", "input"), fill()[0].circuit, USUAL)
    unused = one(
        "connector rear { 1+ unused }\ndriver woofer 8 ohm\nleg woofer {\n  input+ -- woofer+\n  woofer- -- return\n}\n"
    )
    assert ways_in(unused.circuit) == ["Rear: no pin is used."]


def test_every_input_is_drawn_and_said() -> None:
    drawn = set_up_picture(two_amplifiers().circuit, USUAL).drawn
    shown = [mark.text for mark in drawn.marks if isinstance(mark, Text)]
    assert {"low+", "low-", "high+", "high-"} <= {*shown} and shown.count("in its turn") == 1
    assert "then high in its place, one input at a time" in drawn.said


def test_an_input_that_is_not_fed_has_nothing_on_it() -> None:
    assert connect(SetUp("dummies on", "high"), two_amplifiers().circuit, USUAL).endswith("Nothing on low.")


@pytest.mark.parametrize("low", [0.0, 0.09626, 0.30000000000000004, 0.36449, 2.4996, 0.0554, 613.37])
@pytest.mark.parametrize("quantity", ["resistance", "volts"])
def test_what_lies_within_a_printed_window_lies_within_the_window(low: float, quantity: str) -> None:
    high = low * 1.37 + 0.1003
    line = SheetLine(Reading(quantity, "a+", "a-", "drivers off"), low, low, high)  # type: ignore[arg-type]
    scale = {"ohm": 1.0, "kohm": 1e3, "mohm": 1e-3, "V": 1.0, "mV": 1e-3, "uV": 1e-6, "kV": 1e3}
    printed = [float(number) * scale[unit] for number, unit in map(str.split, window(line))]
    assert low - 1e-9 <= printed[0] <= low + 0.0101 + low * 0.01
    assert high + 1e-9 >= printed[1] >= high - 0.0101 - high * 0.01
    assert shown(OPEN, "resistance") == "open"


@pytest.mark.parametrize(("value", "words"), [(7.1e-10, "0 V"), (2e-4, "0.2 mV"), (0.0, "0 V")])
def test_less_than_the_last_digit_is_nothing(value: float, words: str) -> None:
    """Rounding leaves some nanovolts between what nothing joins."""
    reading = Reading("volts", "tweeter-", "low-", "dummies on", 60.0, "low")
    assert expected(SheetLine(reading, value, 0.0, 0.004)) == words


def test_names_stay_within_the_picture() -> None:
    material = hostile()
    lone = one("driver sub 8 ohm\nleg sub {\n  input+ -- sub+\n  sub- -- return\n}\n")
    for made in (material.circuit, example("17").circuit, two_amplifiers().circuit, lone.circuit):
        drawn: Picture = set_up_picture(made, USUAL)
        for text in drawn.drawn.marks:
            if isinstance(text, Text):
                left, top, right, bottom = box(text)
                assert left >= 0 and top >= 0 and right <= WIDTH and bottom <= drawn.height
    assert HOSTILE


def test_the_binder_has_it_only_if_asked() -> None:
    """Since it takes a second or more, which no other build is to wait for."""
    made, _ = fill()
    (row,) = [row for row in CHAPTERS if row.key == "bench"]
    for printing in (Printing(), Printing(bench=True)):
        material = Material(made.design, made.circuit, made.lowered, Sweep(), "fill", "0badcafe", printing=printing)
        assert bool(tuple(row.make(material))) == printing.bench
