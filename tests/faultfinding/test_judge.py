"""The judge works: what it takes for one fault, what it counts, what the bench makes of a sample of boards.

The whole of it takes two hours of two cores and is run by itself: python tests/faultfinding/run.py.
"""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path

import pytest

from engines.installed import needs
from faultfinding.boards import Plan
from faultfinding.cases import SOUND, Case, Classes, direction, own_cases
from faultfinding.sample import SEED, sample
from faultfinding.scoring import Amount, Score
from faultfinding.table import COUNTS, TABLE, markdown, mean_of
from faultfinding.targets import LATER, OWN, Target, judged
from shuntwise.api import check
from shuntwise.bench.faults import Fault
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.model.box import DRIVERS_OFF, DUMMIES_ON, Instruments, Reading

needs_ngspice = needs(NGSPICE)
ANEW = "if that is meant, the command that the page begins with writes it and what the tests compare with anew"
(ROPEWALK,) = [Target(path) for path in OWN if path.stem == "ropewalk"]


@pytest.mark.parametrize("path", [*OWN, *LATER], ids=lambda path: path.stem)
def test_a_design_of_the_judge_is_sound(path: Path) -> None:
    assert not any(compilation.failed for compilation in check(str(path)))


@needs_ngspice
def test_classes_are_what_a_bench_cannot_tell_apart() -> None:
    plan = Plan(ROPEWALK.circuit())
    readings = [Reading("resistance", f"{name}+", f"{name}-", DRIVERS_OFF) for name in plan.drivers]
    readings += [
        Reading("volts", f"{n}+", f"{n}-", DUMMIES_ON, f) for n in ("input", *plan.drivers) for f in (600.0, 3e3)
    ]
    short, opened = Fault("short", ("L1",), ("L1.start", "L1.end")), Fault("open", ("C1",))
    bridge, joint = Fault("bridge", (), ("input+", "woofer+")), Fault("joint", ("C2",), ("C2.end",), size=(0.5, 20.0))
    drift = Case("drift", Fault("value", ("L2",), size=(0.99, 1.01)))
    cases = [Case(fault.family, fault) for fault in (short, opened, bridge, joint)]
    classes = Classes(plan, readings, Instruments(), "test", [*cases, drift])
    assert len(cases[3].slices) == 6
    assert classes.right(cases[0], 1.0, bridge)
    assert not classes.right(cases[0], 1.0, opened)
    assert not classes.right(cases[1], 1.0, bridge)
    assert classes.right(cases[3], 5.0, Fault("joint", ("C2",), ("C2.start",), size=(4.0, 6.0)))
    assert not classes.near_sound(cases[3], 19.0)
    assert classes.always_near(drift)
    assert not classes.always_near(cases[1])
    listed = dict(classes.listed)
    assert Case("", bridge) in listed[Case("", short)]
    assert Case("", drift.fault) in listed[SOUND]


def test_one_part_in_one_direction_is_one_class() -> None:
    plan = Plan(ROPEWALK.circuit())
    low, lower = (Fault("value", ("L1",), size=size) for size in ((0.5, 0.8), (0.1, 0.2)))
    high = Fault("value", ("L1",), size=(1.2, 2.0))
    assert direction(plan, low) == direction(plan, lower) == direction(plan, Fault("turns", ("L1",), size=(0.3, 0.6)))
    assert direction(plan, low) == direction(plan, Fault("doubled", ("L1",))) != direction(plan, high)
    assert direction(plan, Fault("doubled", ("C1",))) == direction(plan, Fault("value", ("C1",), size=(1.5, 3.0)))
    ends = [direction(plan, Fault("joint", ("L1",), (point,), size=(1, 2))) for point in ("L1.start", "L1.end")]
    assert ends[0] == ends[1]
    wires = [direction(plan, Fault("joint", ("woofer",), (point,), size=(1, 2))) for point in ("woofer+", "woofer-")]
    assert wires[0] != wires[1]
    assert direction(plan, Fault("open", ("L1",))) != direction(plan, Fault("open", ("C1",)))


def test_own_cases_lie_beside_each_other() -> None:
    """Drift ends where any value begins, on both sides, of every part."""
    cases = [case.fault for case in own_cases(Plan(ROPEWALK.circuit())) if case.fault and case.fault.owners == ("L1",)]
    assert [fault.size for fault in cases] == [
        (1.1, 1.2), (1 / 1.2, 1 / 1.1), (1.2, 10.0), (1 / 10.0, 1 / 1.2)
    ]  # fmt: skip


@cache
def _stand_in() -> Score:
    return judged(ROPEWALK, Amount(boards=1, most=1, broken=True, class_boards=10), SEED, True, lambda _: None)


@needs_ngspice
def test_the_harness_counts_what_a_plain_fault_finder_does() -> None:
    """It names what is plain, passes most sound boards, and is no good at what lies near."""
    score = _stand_in()
    assert score.sound["boards"] == 20
    assert score.sound["passed"] >= 17
    assert score.families["outputs"] == {**score.families["outputs"], "boards": 1, "detected": 1, "first": 1}
    assert mean_of(score.families, "detected", ("short", "bridge", "exchanged"))[0] > 0.8
    assert score.families["drift"]["detected"] <= score.families["drift"]["boards"] // 2
    for counts in score.families.values():
        assert counts["first"] <= counts["among 3"] <= counts["detected"] <= counts["boards"]
    assert score.pairs["boards"] == 10
    assert max(score.pairs["flagged"], score.pairs["one first"]) <= 10
    assert all(4 <= counts["readings"] / counts["boards"] <= 12 for counts in score.adaptive.values())
    assert {counts["sound"] for counts in score.broken.values()} == {4}
    assert sum(counts["cases"] for counts in score.stated.values()) > 0


@needs_ngspice
def test_the_page_says_what_was_counted() -> None:
    score = _stand_in()
    page = markdown([json.loads(json.dumps(score.plain()))], {"boards": 1, "most": 1})
    passed = 100 * score.sound["passed"] / score.sound["boards"]
    row = next(line for line in page.splitlines() if line.startswith("| ropewalk | 2 | 8 |"))
    assert f"| {passed:.1f} % |" in row
    assert f"| sound boards pass the whole sheet | 98.5 % and more | {passed:.1f} % |" in page
    later = {**score.plain(), "name": LATER[0].stem, "sound": {"boards": 20, "passed": 7}}
    both = markdown([score.plain(), later], {"boards": 1, "most": 1})
    assert f"| sound boards pass the whole sheet | 98.5 % and more | {passed:.1f} % | 35.0 % |" in both
    outputs = next(line for line in page.splitlines() if line.startswith("| outputs |"))
    assert outputs == "| outputs | 1 | 100.0 % | 100.0 % | 100.0 % | 0.0 % | 0.0 % |"


@needs_ngspice
def test_the_bench_makes_of_a_sample_of_boards_what_it_made_of_it() -> None:
    assert json.loads(json.dumps(sample())) == json.loads(COUNTS.read_text(encoding="utf-8"))["sample"], ANEW


def test_the_table_is_written_from_its_counts() -> None:
    told = json.loads(COUNTS.read_text(encoding="utf-8"))
    assert TABLE.read_text(encoding="utf-8") == markdown(told["counts"], told["amount"]), ANEW
