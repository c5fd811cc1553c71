"""Unit words, prefixes, and values written back as a person types them."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shuntwise import units

# The International System of Units (BIPM, SI brochure, 9th edition 2019), table 7 of prefixes; from memory.
PREFIXES = {"p": -12, "n": -9, "u": -6, "µ": -6, "μ": -6, "m": -3, "": 0, "k": 3, "M": 6}
SYMBOLS = {"ohm": units.OHM, "Ω": units.OHM, "\u2126": units.OHM, "H": units.HENRY, "F": units.FARAD, "V": units.VOLT,
           "A": units.AMPERE, "W": units.WATT, "Hz": units.HERTZ, "s": units.SECOND, "m": units.METRE,

           "A2s": units.AMPERE2_SECOND, "A²s": units.AMPERE2_SECOND, "Tm": units.TESLA_METRE}  # fmt: skip


@pytest.mark.parametrize(
    "word", [word for word in units.UNITS if word not in ("%", "dB", "octave", "octaves", "cm", "deg")]
)
def test_unit_word_is_a_prefix_and_a_symbol(word: str) -> None:
    """Each word means its symbol's dimension times its prefix, and no word can be split in two ways."""
    if word.endswith("g"):
        assert units.UNITS[word] == (1.0 if word == "g" else 1e3, units.GRAM)
        return
    if word in ("mm2", "mm²"):  # the prefix is squared with the metre
        assert units.UNITS[word] == (1e-6, units.METRE2)
        return
    bare = word.removesuffix("s") if word.endswith("ohms") else word
    split = [
        (10.0 ** PREFIXES[bare[: -len(symbol)]], dimension)
        for symbol, dimension in SYMBOLS.items()
        if bare.endswith(symbol) and bare[: -len(symbol)] in PREFIXES and (symbol != "s" or "A" not in bare)
    ]
    assert len(split) == 1
    factor, dimension = units.UNITS[word]
    assert dimension == split[0][1]
    assert factor == pytest.approx(split[0][0], rel=1e-15)


def test_what_values_of_a_crossover_are_typed_in_is_known() -> None:
    """The spellings that the language promises."""
    parts = "ohm ohms Ω mohm kohm kΩ Mohm H mH uH µH μH nH F uF µF μF nF pF mF V mV kV A mA W mW kW"
    others = "Hz kHz MHz s ms m mm cm g kg % dB octave"
    assert set(units.UNITS) >= {*parts.split(), *others.split()}


@pytest.mark.parametrize(
    ("number", "unit", "value"),
    [
        ("0.82", "mH", 0.00082),
        ("6.8", "uF", 6.8e-6),
        ("3.3", "kohm", 3300.0),
        ("5", "%", 0.05),
        (".5", "mm", 0.0005),
        ("1e3", "Hz", 1000.0),
        ("2.", "W", 2.0),
    ],
)
def test_value_is_the_float_nearest_to_what_is_written(number: str, unit: str, value: float) -> None:
    """A prefix does not cost a rounding: `0.82 mH` is the float that `0.00082` is."""
    assert units.scale(number, units.UNITS[unit][0]) == value


WRITTEN = (units.OHM, units.HENRY, units.FARAD, units.VOLT, units.AMPERE, units.WATT, units.HERTZ, units.SECOND,
           units.METRE, units.DECIBEL, units.PLAIN)  # fmt: skip


@given(
    st.sampled_from(WRITTEN),
    st.floats(1e-9, 1e8).map(lambda value: float(f"{value:.4g}")),
    st.booleans(),
)
def test_value_written_is_the_value_read(dimension: units.Dimension, value: float, negative: bool) -> None:
    """Written with four digits and read again, a value of four digits is the same value."""
    value = -value if negative else value
    number, _, unit = units.write(value, dimension).partition(" ")
    factor, read_dimension = units.UNITS[unit] if unit else (1.0, units.PLAIN)
    assert read_dimension == dimension
    assert math.isclose(units.scale(number, factor), value, rel_tol=1e-12)


@pytest.mark.parametrize(
    ("value", "dimension", "text"),
    [
        (0.00082, units.HENRY, "0.82 mH"),
        (6.8e-6, units.FARAD, "6.8 uF"),
        (2400.0, units.HERTZ, "2.4 kHz"),
        (0.28, units.OHM, "0.28 ohm"),
        (4700.0, units.OHM, "4.7 kohm"),
        (0.0256, units.METRE, "25.6 mm"),
        (999.96, units.HERTZ, "1 kHz"),
        (-25.6, units.DECIBEL, "-25.6 dB"),
        (0.0, units.VOLT, "0 V"),
    ],
)
def test_value_is_written_as_a_person_types_it(value: float, dimension: units.Dimension, text: str) -> None:
    """The trade counts coils in millihenry and capacitors in microfarad."""
    assert units.write(value, dimension) == text


def test_dimension_in_words_names_what_has_no_name() -> None:
    """A formula may pass through dimensions that nothing is measured in."""
    assert units.describe(units.OHM) == "a resistance"
    assert units.describe(units.product(units.OHM, units.OHM)) == "a value in V^2 A^-2"
