"""What the program writes into a box's own file is read back as the same values."""

from __future__ import annotations

from random import Random

import pytest

from boxes.texts import TWO_INPUTS, WEDGE, read
from shuntwise.model.box import OPEN, Reading, Taken
from shuntwise.model.box_writing import bench_line, new_box, reading_line, with_reading
from shuntwise.model.instruments import Instruments

POINTS = {
    WEDGE: (
        "input+",
        "input-",
        "woofer+",
        "sub.a+",
        "sub.b-",
        "L1.start",
        "C1.end",
        "P1.Rs.start",
        "P1.load",
        "hp",
        "mitte",
    ),
    TWO_INPUTS: ("low+", "high-", "woofer+", "tweeter-", "C1.start", "posts3+"),
}
PAIRS = {WEDGE: ("input", "woofer", "sub.a"), TWO_INPUTS: ("low", "high", "tweeter", "posts3")}
LOADS = {
    WEDGE: ("drivers off", "drivers on", "dummies on", "woofer off", "sub off"),
    TWO_INPUTS: ("drivers off", "drivers on", "dummies on", "tweeter off"),
}
INPUTS = {WEDGE: ("input",), TWO_INPUTS: ("low", "high")}


def any_reading(random: Random, design: str) -> Taken:
    quantity = random.choice(("resistance", "volts", "impedance"))
    fed = random.choice(INPUTS[design])
    if quantity == "impedance":
        plus, minus = f"{fed}+", f"{fed}-"
    elif random.random() < 0.4:
        pair = random.choice(PAIRS[design])
        plus, minus = f"{pair}+", f"{pair}-"
    else:
        plus, minus = random.sample(POINTS[design], 2)
    freq_hz = 0.0 if quantity == "resistance" else float(f"{10 ** random.uniform(0, 6):.{random.randint(1, 7)}g}")
    largest = {"volts": -4.0, "impedance": 5.0, "resistance": 8.0}[quantity]
    value = random.choice((0.0, float(f"{10 ** random.uniform(-6, largest):.4g}")))
    if quantity == "resistance" and random.random() < 0.2:
        value = OPEN
    reading = Reading(quantity, plus, minus, random.choice(LOADS[design]), freq_hz, fed if freq_hz else "")
    return Taken(reading, value)


@pytest.mark.parametrize("design", [WEDGE, TWO_INPUTS], ids=["one input", "two inputs"])
def test_any_reading_is_read_back_as_it_was_written(design: str) -> None:
    random, inputs = Random(12), len(INPUTS[design])
    wanted: dict[Reading, Taken] = {}
    text = new_box("7", "a.shunt")
    for _ in range(300):
        taken = any_reading(random, design)
        text = with_reading(text, taken, inputs)
        wanted.pop(taken.reading, None)
        wanted[taken.reading] = taken
    found = read(text, design)
    assert [finding.headline for finding in found.findings if finding.name != "reading-taken-again"] == []
    assert found.box is not None and found.box.taken == tuple(wanted.values())


def test_words_are_those_of_the_reference() -> None:
    """As the issue has them: `at` for two pads of one thing, no frequency for a resistance."""
    at = Taken(Reading("volts", "tweeter+", "tweeter-", "dummies on", 3000.0, "input"), 0.223)
    across = Taken(Reading("resistance", "input+", "woofer+", "drivers off"), 0.5)
    beyond = Taken(Reading("resistance", "woofer+", "woofer-", "woofer off"), OPEN)
    assert reading_line(at, 1) == "reading volts at tweeter, dummies on, 3 kHz: 223 mV"
    assert reading_line(at, 2) == "reading volts at tweeter, dummies on, into input, 3 kHz: 223 mV"
    assert reading_line(across, 2) == "reading resistance input+ to woofer+, drivers off: 0.5 ohm"
    assert reading_line(beyond, 1) == "reading resistance at woofer, woofer off: open"


def test_a_line_is_added_and_nothing_else_is_touched() -> None:
    taken = Taken(Reading("resistance", "input+", "woofer+", "drivers off"), 0.5)
    line = "reading resistance input+ to woofer+, drivers off: 0.5 ohm"
    for before, after in (
        ("", f"{line}\n"),
        ("box 7 of", f"box 7 of\n{line}\n"),
        ("a\r\nb # end\r\n", f"a\r\nb # end\r\n{line}\r\n"),
        ("a\r\nb", f"a\r\nb\r\n{line}\r\n"),
        ("# \t\n\n\n", f"# \t\n\n\n{line}\n"),
    ):
        assert with_reading(before, taken, 1) == after


def test_a_new_file_says_what_is_not_usual() -> None:
    instruments = Instruments(source_v=1.5, meter_share=0.035, leads_ohm=0.0)
    text = new_box("HS-0007", "a.shunt", "soft", instruments)
    assert text.splitlines()[:2] == ['box "HS-0007" of "a.shunt"', "variant soft"]
    found = read(text, WEDGE)
    assert found.findings == () and found.box is not None
    assert (found.box.name, found.box.variant, found.box.instruments) == ("HS-0007", "soft", instruments)
    assert bench_line(Instruments()) not in new_box("7", "a.shunt")
    for name in ('a"b', "", "a\nb", "a\x1b[31m"):
        with pytest.raises(ValueError, match="quotes"):
            new_box(name, "a.shunt")
