"""The mistake harness works, and the checks catch no less than its table says.

The whole harness takes minutes and is run by itself: python tests/mistakes/run.py.
"""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from mistakes.judging import compiled, figures, same, unharmed
from mistakes.sample import sample
from mistakes.table import COMMAND, COUNTS, TABLE, markdown
from mistakes.tally import GROUPS, examine, total
from mistakes.unwire import unwire

ANEW = f"if that is meant, `{COMMAND}` writes the table and what the tests compare with anew"
ALL = [path for paths in GROUPS.values() for path in paths]


@pytest.mark.parametrize("path", ALL, ids=[path.stem for path in ALL])
def test_rewired_design_is_the_same_circuit_and_draws_the_same(path: Path) -> None:
    original = unharmed(path)
    again = compiled(unwire(original.circuit).text(), path)
    told = [finding.name for finding in again.findings]
    if any(choice.contacts for choice in original.design.choices):  # what waits there is loose where there is no choice
        told = [name for name in told if name != "loose-node"]
    assert told == [finding.name for finding in original.findings]
    assert same(figures(original), figures(again))


def test_single_mistakes_of_an_example_are_caught() -> None:
    """The goal for all examples together is 97 %; this one, with its expect lines, reaches it by itself."""
    whole = total(examine(GROUPS["examples"][0], True).values())
    assert whole.counted > 50
    assert (whole.told + whole.advised) / whole.counted >= 0.97


def test_the_checks_make_of_a_sample_of_mistakes_what_they_made_of_it() -> None:
    assert sample() == json.loads(COUNTS.read_text(encoding="utf-8"))["sample"], ANEW


def test_the_table_is_written_from_its_counts() -> None:
    counts = json.loads(COUNTS.read_text(encoding="utf-8"))["counts"]
    assert TABLE.read_text(encoding="utf-8") == markdown(counts), ANEW
