"""What a box's own file means, and what is said of one that cannot be meant: one finding for each slip."""

from __future__ import annotations

import pytest

from boxes.texts import TWO_INPUTS, WEDGE, read
from shuntwise.model.box import OPEN, Reading
from shuntwise.model.box_text import MEASURED_SHARE
from shuntwise.model.instruments import Instruments
from shuntwise.settings import read_settings, settings_of

HEAD = 'box 7 of "a.shunt"\n'
TABLE = "".join(f"{20 * 2**n} {8 + n / 100} 0\n" for n in range(11))


def names(text: str, design: str = WEDGE, **beside: str) -> list[str]:
    return [finding.name for finding in read(HEAD + text, design, **beside).findings]


def test_a_box_is_what_its_lines_say() -> None:
    found = read(
        "# left\n" + HEAD + "variant soft\nbench { series 12 ohm }\nmeasured C1 5.5 uF { 2 % }\nmeasured P1.Rs 4R2\n"
        'note "one"\nreading resistance L1.start to return, drivers off: open\nrework "a joint"\n'
        'reading volts at sub.a, sub off, 1 kHz: 0 mV\nsweep "t.txt", dummies on\nnote "two"\n',
        t=TABLE,
    )
    box = found.box
    assert found.findings == () and box is not None
    assert (box.name, box.design_path, box.variant, box.notes) == ("7", "a.shunt", "soft", ("one", "two"))
    assert box.instruments == Instruments(source_v=1.0, meter_share=0.03, series_ohm=12.0)  # the design's, then its own
    assert {label: (q.value, share) for label, (q, share) in box.measured.items()} == {
        "C1": (5.5e-6, 0.02),
        "P1.Rs": (4.2, MEASURED_SHARE),
    }
    assert box.reworks == ("a joint",)
    assert [taken.reading for taken in box.before] == [Reading("resistance", "L1.start", "input-", "drivers off")]
    assert box.before[0].value == OPEN
    first, *swept = box.taken
    assert (first.reading, first.value) == (Reading("volts", "sub.a+", "sub.a-", "sub off", 1000.0, "input"), 0.0)
    assert [(taken.reading.freq_hz, taken.value) for taken in swept] == [
        (20.0 * 2**n, pytest.approx(8 + n / 100)) for n in range(11)
    ]
    assert {taken.reading.words() for taken in swept[:1]} == {"impedance at input, dummies on, 20 Hz"}
    assert found.design is not None and found.design.variant == "soft"


def test_a_later_reading_counts_and_a_very_different_one_is_told() -> None:
    same = "reading resistance at woofer, drivers on: 6 ohm\n"
    for second, told in (("6.5 ohm", []), ("7 ohm", ["reading-taken-again"]), ("open", ["reading-taken-again"])):
        found = read(HEAD + same + same.replace("6 ohm", second))
        assert found.box is not None and len(found.box.taken) == 1
        assert found.box.taken[0].value != 6.0
        assert [finding.name for finding in found.findings] == told
        assert not found.failed
    assert names(same + 'rework "x"\n' + same.replace("6 ohm", "60 ohm")) == []


def test_a_reading_is_the_same_with_the_leads_exchanged() -> None:
    """An ohmmeter on linear parts and an AC voltmeter show the same (reciprocity; a voltage's size has no sign)."""
    text = "reading {} tweeter- to tweeter+, {}\nreading {} at tweeter, {}\n"
    for quantity, rest in (("resistance", "drivers off: 6 ohm"), ("volts", "dummies on, 1 kHz: 0.5 V")):
        found = read(HEAD + text.format(quantity, rest, quantity, rest))
        assert found.box is not None and found.findings == () and len(found.box.taken) == 1
    assert names(text.format("resistance", "drivers off: 6 ohm", "resistance", "drivers off: open")) == [
        "reading-taken-again"
    ]
    assert names("reading volts input- to input+, dummies on, 1 kHz: 1.21 V\n") == ["reading-impossible"]
    one, other = (Reading("volts", "a+", point, "dummies on", 1000.0, "input") for point in ("b+", "b-"))
    assert one != other and one != "a reading"


def test_measured_parts_are_tried_values_of_the_language() -> None:
    box = read(HEAD + "measured C1 5.5 uF { 2 % }\nmeasured B1 5.25 ohm\n").box
    assert box is not None
    settings = settings_of(box)
    assert settings == ("C1=1 * 5.5 uF", "C1.tolerance=2 %", "B1=1 * 5.25 ohm", "B1.tolerance=1 %")
    assert [entry.target.text for entry in read_settings(settings)] == ["C1", "C1.tolerance", "B1", "B1.tolerance"]


SLIPS = {
    "measured F1 2.4 A": "unknown-name",
    "measured K1 1 ohm": "unknown-name",
    "measured woofer 8 ohm": "unknown-name",
    "measured L1.dcr 0.2 ohm": "unknown-name",
    "measured C1 6.8": "unit-missing",
    "measured C1 6.8 uF { 80 % }": "value-absurd",
    "measured C1 680 nF": "measured-far-off",
    "reading resistance at F1, drivers off: 1 ohm": "reading-point-unknown",
    "reading resistance at sub, drivers off: 1 ohm": "reading-point-unknown",
    "reading resistance L1.tap to return, drivers off: 1 ohm": "reading-point-unknown",
    "reading resistance mitte to mitte, drivers off: 1 ohm": "reading-impossible",
    "reading resistance at woofer, mitte off: 1 ohm": "reading-loads-unclear",
    "reading resistance at woofer, woofer on: 1 ohm": "reading-loads-unclear",
    "reading volts at woofer, dummies on, into input: 1 V": "reading-frequency-wrong",
    "reading volts at woofer, dummies on, 0 Hz: 1 V": "value-not-positive",
    "reading volts at woofer, dummies on, 1 kHz: 1 ohm": "unit-wrong-kind",
    "reading volts at woofer, dummies on, 1 kHz: -1 V": "value-absurd",
    "reading volts at woofer, dummies on, 1 kHz: 10.1 V": "reading-impossible",
    "reading volts at input, dummies on, 1 kHz: 1.21 V": "reading-impossible",
    "reading impedance at woofer, dummies on, 1 kHz: 8 ohm": "reading-impossible",
    "reading impedance at input, dummies on, 1 kHz: open": "reading-impossible",
    "reading volts at woofer, dummies on, 1 kHz: OL": "reading-impossible",
    "reading impedance at input, dummies on, 1 kHz: ol": "reading-impossible",
    "reading sound at input, dummies on, 1 kHz: 8 ohm": "unknown-word",
    'sweep "none.txt", drivers on': "sweep-not-read",
    'sweep "t.txt", drivers fitted': "reading-loads-unclear",
    'beside "none.box"': "sister-box-unfit",
    'beside "other.box"': "sister-box-unfit",
    'beside "wrong.box"': "sister-box-unfit",
    "variant hard": "box-variant-unknown",
    "bench { source 200 V }": "value-absurd",
    "bench { dummy 8 ohm }": "unknown-word",
    "bench { meter 2 }": "unit-missing",
    "bench { meter 200 }": "value-absurd",
    'box 8 of "a.shunt"': "same-label-twice",
}


@pytest.mark.parametrize("line", SLIPS)
def test_one_slip_is_told_once(line: str) -> None:
    other, wrong = HEAD + "variant soft\n", HEAD + "reading volts\n"
    assert names(line + "\n", t=TABLE, other=other, wrong=wrong) == [SLIPS[line]]


@pytest.mark.parametrize(
    ("line", "remedy"),
    [
        ("reading resistance at woofer, drivers out: 1 ohm", "drivers off"),
        ("reading resistance at woofer, woofer unplugged: 1 ohm", "woofer off"),
        ("reading resistance at woofer, Drivers Removed: 1 ohm", "drivers off"),
        ("reading resistance at woofer, dummies out: 1 ohm", "drivers off"),
        ("reading resistance at woofer, drivers off: OL", "open"),
        ("bench { meter 2 }", "2 %"),
    ],
)
def test_what_people_say_has_its_word(line: str, remedy: str) -> None:
    """Never the one that looks alike and means the contrary."""
    (said,) = read(HEAD + line + "\n").findings
    assert said.help == f"write `{remedy}`"
    assert [edit.text for fix in said.fixes for edit in fix.edits] == [remedy]


@pytest.mark.parametrize(
    ("line", "example"),
    [
        ("reading volts at woofer, dummies on, 1 kHz: 3 ohm", "270 mV"),
        ("reading volts at woofer, dummies on, 1 kHz: 3 Q", "270 mV"),
        ("reading resistance at woofer, drivers off: 3 V", "2.8 ohm"),
        ("bench { source 2 ohm }", "2 V"),
        ("bench { leads 2 V }", "0.2 ohm"),
    ],
)
def test_a_wrong_unit_is_answered_with_a_value_of_the_bench(line: str, example: str) -> None:
    (said,) = read(HEAD + line + "\n").findings
    assert said.help.endswith(f"such as `{example}`")


def test_a_second_bench_is_to_go_and_not_to_be_renamed() -> None:
    (said,) = read(HEAD + "bench { series 10 ohm }\nbench { leads 0.3 ohm }\n").findings
    assert said.name == "same-label-twice" and "keep one of them" in said.help


SOUND = (
    "reading volts at woofer, dummies on, 1 kHz: 9.9 V",
    "reading volts at input, dummies on, 1 kHz: 1.19 V",
    "reading volts at woofer, dummies on, into input, 1 kHz: 1 V",
    "reading resistance mitte to ground, sub off: 1 Mohm",
    "reading impedance at input, drivers on, 20 kHz: 4R7",
    "measured C1 2.5 uF",
    'beside "sister.box"',
)


@pytest.mark.parametrize("line", SOUND)
def test_what_may_be_is_left_alone(line: str) -> None:
    assert names(line + "\n", sister=HEAD + 'beside "none.box"\n') == []


def test_a_sister_is_read_without_its_own_sister() -> None:
    """Two that name each other are no loop; neither is a third one asked for."""
    text = HEAD + 'beside "b.box"\n'
    sister = 'box 8 of "a.shunt"\nbeside "left.box"\nreading resistance at woofer, drivers on: 6 ohm\n'
    box = read(text, b=sister, left=text).box
    assert box is not None and box.yardstick is not None
    assert (box.yardstick.name, len(box.yardstick.taken), box.yardstick.yardstick) == ("8", 1, None)


def test_a_sister_is_of_the_same_variant_in_whatever_words() -> None:
    """Names joined the other way round, a position that holds anyway, and none at all mean the same board."""
    design = WEDGE + "".join(
        f"choice {name} {{\n  position low {{\n  }}\n  position high {{\n    set L1 = {value} mH\n  }}\n}}\n"
        for name, value in (("level", "0.9"), ("treble", "1"))
    )
    text = HEAD + 'variant {}\nbeside "s.box"\n'
    for own, other, same in (
        ("soft+treble.high", "variant treble.high+soft", True),
        ("soft+treble.high", "variant treble.high+soft+level.low", True),
        ("level.low", "", True),
        ("level.high", "", False),
        ("soft", "variant soft+level.high", False),
    ):
        found = names(text.format(own).removeprefix(HEAD), design, s=f"{HEAD}{other}\n")
        assert found == ([] if same else ["sister-box-unfit"]), own


def test_several_inputs_must_be_told_apart() -> None:
    assert names("reading volts at woofer, dummies on, 1 kHz: 1 V\n", TWO_INPUTS) == ["reading-input-unclear"]
    assert names("reading volts at woofer, dummies on, into posts3, 1 kHz: 1 V\n", TWO_INPUTS) == ["unknown-name"]
    assert names("reading impedance at high, drivers on, into low, 1 kHz: 8 ohm\n", TWO_INPUTS) == [
        "reading-input-unclear"
    ]
    assert names("reading resistance at woofer, drivers on, into low: 8 ohm\n", TWO_INPUTS) == ["reading-input-unclear"]
    assert names('sweep "t.txt", drivers on\n', TWO_INPUTS, t=TABLE) == ["reading-input-unclear"]
    text = HEAD + "reading impedance at high, drivers on, 1 kHz: 8 ohm\n" + 'sweep "t.txt", drivers on, into low\n'
    box = read(text, TWO_INPUTS, t=TABLE).box
    assert box is not None and {taken.reading.fed for taken in box.taken} == {"low", "high"}
    assert names("reading resistance woofer- to return, drivers off: 0 ohm\n", TWO_INPUTS) == ["reading-point-unknown"]


def test_of_an_unsound_design_one_thing_is_said() -> None:
    """A design that lost text may have had any point; its errors are told where it is checked."""
    broken = WEDGE.replace("leg tweeter {", "leg tweeter (")
    found = read(HEAD + "reading resistance hp to input+, drivers off: 1 ohm\n", broken)
    assert [finding.name for finding in found.findings] == ["box-design-unsound"]
    assert "run `shuntwise check a.shunt`" in found.findings[0].help
    assert names("", WEDGE.replace("-- L1 --", "-- L2 --")) == ["box-design-unsound"]


def test_a_box_without_a_head_or_a_design_says_only_that() -> None:
    assert [f.name for f in read('note "x"\nreading volts at nothing, dummies on, 1 kHz: 1 V\n').findings] == [
        "box-unnamed"
    ]
    assert [f.name for f in read('box 7 of "b.shunt"\nmeasured C9 1 uF\n').findings] == ["box-design-missing"]
    assert [f.name for f in read("box 7\nmeasured C9 1 uF\n").findings] == ["syntax-error"]
