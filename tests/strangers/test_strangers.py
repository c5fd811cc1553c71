"""Designs and slips that judge the checks: they are sound themselves, and each slip is one.

What the checks make of the slips is measured by run.py; here it is only held that it does not become worse, since
rules are not tuned to them.
"""

from __future__ import annotations

import json
from collections import Counter
from pathlib import Path

import pytest

from shuntwise.api import load
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.intent import expectation_unmet
from shuntwise.checks.registry import FAMILY_OF
from shuntwise.diagnostics.diagnostic import Severity
from strangers.slips import DESIGNS, MadeSlip, read_slips
from strangers.verdicts import COMMAND, PINNED, PINNED_SLIPS, counts, judge, worse

SLIPS = read_slips()


@pytest.mark.parametrize("path", DESIGNS, ids=lambda path: path.stem)
def test_a_design_is_read_whole_and_does_what_it_says(path: Path) -> None:
    """Solved whatever the rules say of it: a rule may be wrong, the design's own lines are not."""
    base = load(str(path))
    assert 3 <= len(base.design.expectations) <= 5
    for variant in (None, *(variant.name for variant in base.design.variants)):
        made = load(str(path), variant=variant)
        errors = [f for f in made.findings if f.severity is Severity.ERROR]
        assert not [f.headline for f in errors if FAMILY_OF[f.name] in ("language", "wiring", "drivers")]
        told = list(expectation_unmet.check(Evidence(made.design, made.circuit, made.lowered)))
        assert told == []


@pytest.mark.parametrize("slip", SLIPS, ids=lambda slip: f"{slip.design}-{slip.part}")
def test_a_slip_can_be_made_and_has_its_place(slip: MadeSlip) -> None:
    assert slip.kind in ("typing", "misread", "node", "pasted", "left-out")
    assert slip.sound.count(slip.was) == 1
    assert slip.harmed != slip.sound
    assert slip.harmed.count(slip.line) == 1
    assert slip.part in slip.harmed or slip.part in slip.was


def test_there_are_eight_designs_and_a_hundred_slips() -> None:
    assert len(DESIGNS) == 8
    assert len(SLIPS) >= 100
    assert min(Counter(slip.design for slip in SLIPS).values()) >= 10
    assert len({(slip.design, slip.was, slip.typed) for slip in SLIPS}) == len(SLIPS)


@pytest.mark.parametrize("path", DESIGNS, ids=lambda path: path.stem)
def test_a_sound_design_draws_no_error(path: Path) -> None:
    """A series type too, with a resistor ahead of its tweeter: a coil lies across both."""
    assert [f.headline for f in load(str(path)).findings if f.severity is Severity.ERROR] == []


@pytest.mark.parametrize("design", [path.stem for path in DESIGNS])
def test_the_checks_make_no_less_of_the_slips_than_they_did(design: str) -> None:
    pinned = json.loads(PINNED.read_text(encoding="utf-8"))[design]
    now = counts(judge(slip) for slip in PINNED_SLIPS if slip.design == design)
    assert now["slips"] == pinned["slips"]
    assert worse(now, pinned) == [], f"if that is meant, `{COMMAND}` writes the figures anew"


def test_worse_is_less_told_and_more_said() -> None:
    before = counts([])
    assert worse(before, {**before, "told": 1}) == ["told 0, was 1"]
    assert worse({**before, "lines": 2, "named": 3}, before) == ["lines 2, was 0"]
