"""Values in the letter-and-digit code of IEC 60062:2016 + A1:2019, Marking codes for resistors and capacitors.

The rows of tests/reference/01_rkm_codes.csv and 01_tolerance_letters.csv are from open texts that quote the
standard (status b) or from memory (status c); the standard itself was not read.
"""

from __future__ import annotations

import csv
import re
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shuntwise import units
from shuntwise.syntax.tables import TERMINALS

REFERENCE = Path(__file__).parents[1] / "reference"


def rows(name: str) -> list[dict[str, str]]:
    with (REFERENCE / name).open(encoding="utf-8", newline="") as stream:
        return list(csv.DictReader(stream))


@pytest.mark.parametrize("row", rows("01_rkm_codes.csv"), ids=lambda row: row["code"])
def test_published_code_is_read(row: dict[str, str]) -> None:
    """Every code of the list gives exactly its value; a capacitance says no dimension by itself."""
    code = units.read_code(row["code"])
    assert code is not None
    assert code.value == float(row["value"])
    assert code.dimension == (units.OHM if row["quantity"] == "resistance" else None)
    assert code.tolerance is None


def letters(unit: str) -> dict[str, dict[str, str]]:
    return {row["letter"]: row for row in rows("01_tolerance_letters.csv") if row["unit of limits"] == unit}


@pytest.mark.parametrize("letter", units.TOLERANCE_LETTERS)
def test_tolerance_letter_is_the_published_one(letter: str) -> None:
    """The letters that are read stand for the symmetric limits of the list, in percent."""
    row = letters("percent")[letter]
    assert float(row["upper limit"]) == -float(row["lower limit"])
    assert units.TOLERANCE_LETTERS[letter] == pytest.approx(float(row["upper limit"]) / 100, rel=1e-12)
    code = units.read_code(f"4R7{letter}")
    assert code == units.CodeValue(4.7, units.OHM, units.TOLERANCE_LETTERS[letter])


def test_letters_that_open_texts_disagree_on_are_not_read() -> None:
    """E, L, P, W, H, N and the asymmetric Q, T, S and Z are not known as tolerance letters."""
    for letter in set(letters("percent")) - set(units.TOLERANCE_LETTERS):
        assert units.read_code(f"4R7{letter}") is None


def test_code_without_digits_or_with_a_letter_too_many_is_none() -> None:
    """A word is no value, and a tolerance letter needs a digit before it."""
    for text in ("", "R", "k", "4", "4R7X", "RR", "4R7JJ", "4RJ", "u", "4.7R", "-4R7", "٤R7"):
        assert units.read_code(text) is None


CODE = re.compile(TERMINALS["CODE"])
SHAPED = st.from_regex(r"\A[0-9]{0,3}[A-Za-zµμ]?[0-9]{0,3}[A-Z]?\Z")


@given(SHAPED)
def test_every_code_of_the_grammar_can_be_read(text: str) -> None:
    """The grammar's pattern and the reader agree: what is a code to the one is a code to the other."""
    if CODE.fullmatch(text):
        assert units.read_code(text) is not None


@given(SHAPED)
def test_code_that_begins_with_a_digit_is_one_to_the_grammar(text: str) -> None:
    """The other way round, but for `6u8F` and its like: there the letter could be the farad."""
    code = units.read_code(text)
    if code is not None and text[0].isdigit() and not (text.endswith("F") and "R" not in text):
        assert CODE.fullmatch(text)


def test_f_behind_a_capacitance_is_no_tolerance() -> None:
    """`6u8F` may be meant as 6.8 microfarad, or as that to 1 %: the grammar reads it as neither."""
    assert CODE.fullmatch("4R7F")
    assert not CODE.fullmatch("6u8F")
