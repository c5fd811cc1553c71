"""What the author says of a driver: complete, told once, and each mistake named once."""

from __future__ import annotations

import numpy as np
import pytest

from drivers.designs import compile_text, free_air, names, one_driver, table_text
from shuntwise.network.lower import Unlowered

FREQ_HZ = np.geomspace(20, 20000, 80)
S = 2j * np.pi * FREQ_HZ
TABLE = table_text(FREQ_HZ, 5.8 + 0.0155 * S**0.69 + free_air(S, 5.8, 42, 4.2, 0.46), 6)
FILES = {"t.txt": TABLE}

AIR = "fs 42 Hz, qms 4.2, qes 0.46"


@pytest.mark.parametrize(
    "attributes",
    [
        "",
        "re 5.8 ohm",
        "re 5.8 ohm, le 0.5 mH",
        f"re 5.8 ohm, {AIR}",
        f"re 5.8 ohm, semi_k 0.0155, semi_n 0.69, {AIR}",
        f"re 5.8 ohm, {AIR}, alpha 1.1",
        f"re 5.8 ohm, {AIR}, alpha 1.1, fb 45 Hz",
        f"re 5.8 ohm, {AIR}, alpha 1.1, fb 45 Hz, ql 12",
        "r_factor 0.0009, r_exponent 0.75, x_factor 0.0036, x_exponent 0.69, re 5.8 ohm",
        'measured "t.txt"',
        'measured "t.txt", re 5.8 ohm, fs 42 Hz, sensitivity 94 dB, 200 W, note "box 3"',
    ],
)
def test_sound_description_gives_no_finding(attributes: str) -> None:
    compilation = one_driver(attributes, FILES)
    assert names(compilation) == []
    assert not isinstance(compilation.lowered, Unlowered)


@pytest.mark.parametrize(
    ("attributes", "missing"),
    [
        ("le 0.5 mH", "re"),
        ("re 5.8 ohm, semi_k 0.0155", "semi_n"),
        ("re 5.8 ohm, semi_n 0.69", "semi_k"),
        ("semi_k 0.0155, semi_n 0.69", "re"),
        ("re 5.8 ohm, r_factor 0.004, x_factor 0.02", "r_exponent and x_exponent"),
        ("re 5.8 ohm, fs 42 Hz, qms 4.2", "qes"),
        ("re 5.8 ohm, fs 42 Hz", "qms and qes"),
        ("re 5.8 ohm, alpha 1.1", "fs and qms and qes"),
        (f"re 5.8 ohm, {AIR}, fb 45 Hz", "alpha"),
        (f"re 5.8 ohm, {AIR}, alpha 1.1, ql 7", "fb"),
        (f"semi_k 0.0155, {AIR}", "re and semi_n"),
    ],
)
def test_incomplete_description_names_what_is_missing(attributes: str, missing: str) -> None:
    """One finding, and no network is made from the half that was told."""
    compilation = one_driver(attributes)
    assert [(f.name, f.headline) for f in compilation.findings] == [
        ("driver-model-incomplete", f"the model of `woofer` lacks {missing}")
    ]
    assert compilation.lowered == Unlowered("a sound model of `woofer`", ("woofer",))


@pytest.mark.parametrize(
    ("attributes", "again"),
    [
        ("re 5.8 ohm, le 0.5 mH, semi_k 0.0155, semi_n 0.69", "0.0155"),
        ("re 5.8 ohm, semi_k 0.0155, semi_n 0.69, r_factor 0.004", "0.004"),
        ('measured "t.txt", le 0.5 mH', "0.5 mH"),
        (f'measured "t.txt", re 5.8 ohm, {AIR}', "4.2"),
        ('measured "t.txt", alpha 1', "1"),
    ],
)
def test_driver_told_twice_is_one_finding_at_the_second(attributes: str, again: str) -> None:
    compilation = one_driver(attributes, FILES)
    assert names(compilation) == ["driver-model-twice"]
    assert compilation.findings[0].span.text == again
    assert isinstance(compilation.lowered, Unlowered)


@pytest.mark.parametrize(
    ("attributes", "name"),
    [
        ("re 5.8 ohm, fs 42 uF, qms 4.2, qes 0.46", "unit-wrong-kind"),
        ("re 5.8 ohm, semi_k 0.02, semi_n 1.2", "value-absurd"),
        ("re 5.8 ohm, semi_k 0.02 ohm, semi_n 0.7", "unit-wrong-kind"),
        ("re 5.8 ohm, le 0.5", "unit-missing"),
        ("measured woofer", "value-unclear"),
        ("measured", "value-unclear"),
        ('mesured "t.txt"', "unknown-word"),
        ('measured "t.txt", measured "t.txt"', "attribute-twice"),
    ],
)
def test_value_that_is_refused_is_not_missed_as_well(attributes: str, name: str) -> None:
    assert names(one_driver(attributes, FILES)) == [name]


def test_values_may_be_set_and_worked_out() -> None:
    text = (
        "let tuning = 45 Hz\n"
        f"driver woofer 8 ohm {{ re 5.8 ohm, {AIR}, alpha 1.1, fb tuning }}\n"
        "leg woofer {\n  input+ -- woofer+\n  woofer- -- return\n}\n"
        'variant low "a longer vent" {\n  set woofer.fb = 38 Hz\n}\n'
    )
    base, low = compile_text(text)
    assert (base.findings, low.findings) == ((), ())
    assert base.lowered.element["woofer.cmep"].value < low.lowered.element["woofer.cmep"].value


def test_table_may_belong_to_a_variant() -> None:
    text = (
        "driver woofer 8 ohm\nleg woofer {\n  input+ -- woofer+\n  woofer- -- return\n}\n"
        'variant measured "with the sample of the store" {\n  driver woofer 8 ohm { measured "t.txt" }\n}\n'
    )
    base, variant = compile_text(text, FILES)
    assert (base.findings, variant.findings) == ((), ())
    assert base.lowered.fits == ()
    assert [fit.driver for fit in variant.lowered.fits] == ["woofer"]


@pytest.mark.parametrize(
    ("attributes", "nominal", "headline"),
    [
        ('measured "t.txt"', "4 ohm", "the table of `woofer` is not that of a driver of 4 ohm"),
        ('measured "t.txt"', "16 ohm", "the table of `woofer` is not that of a driver of 16 ohm"),
        (
            'measured "t.txt", re 7.8 ohm',
            "8 ohm",
            "the table of `woofer` does not go with its DC resistance of 7.8 ohm",
        ),
        ('measured "t.txt", fs 900 Hz', "8 ohm", "the table of `woofer` has no peak near its resonance of 900 Hz"),
    ],
)
def test_table_of_another_driver_is_noticed(attributes: str, nominal: str, headline: str) -> None:
    compilation = one_driver(attributes, FILES, nominal)
    assert [(f.name, f.headline) for f in compilation.findings] == [("measured-unlike-driver", headline)]
