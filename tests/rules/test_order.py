"""The order of the registry says nothing: run backwards or shuffled, the rules find the same."""

from __future__ import annotations

import random

import pytest

from rules.compiling import OWN_NAME, loader
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.page import Example, page_of
from shuntwise.checks.registry import CATALOGUE, PAGES, RANK, RULES
from shuntwise.checks.run import Checked, run
from shuntwise.graph.connect import connect
from shuntwise.loading import loader as file_loader
from shuntwise.model.include import Collected
from shuntwise.model.resolve import resolve
from shuntwise.model.variants import to_check
from shuntwise.network.lower import lower
from shuntwise.pipeline import read
from shuntwise.source import Source
from strangers.slips import MadeSlip, read_slips

EXAMPLES = {
    f"{name}-{kind}-{number}": example
    for name in PAGES
    for kind, examples in (("bad", page_of(name).bad), ("good", page_of(name).good))
    for number, example in enumerate(examples)
}


def orders(shuffles: int) -> list[list[str]]:
    """As registered, backwards, and some others."""
    names = list(RULES)
    return [names, names[::-1], *(random.Random(seed).sample(names, len(names)) for seed in range(shuffles))]


def assert_same_in_every_order(collected: Collected, shuffles: int) -> None:
    """Everything that is found, waived and left unchecked in a design and its variants."""
    for variant in (None, *to_check(resolve(collected)[0])):
        design, _ = resolve(collected, variant=variant, catalogue=CATALOGUE)
        circuit, _ = connect(design)
        lowered = lower(circuit)
        usual, *others = (told(names, Evidence(design, circuit, lowered)) for names in orders(shuffles))
        for other in others:
            assert other == usual, variant


def told(names: list[str], evidence: Evidence) -> tuple[object, ...]:
    checked: Checked = run([RULES[name] for name in names], evidence)
    found = sorted((f.name, f.span.start, f.headline, f.severity.value) for f in checked.findings)
    waived = sorted((f.name, f.span.start, f.headline) for f, _ in checked.waived)
    return found, waived, checked.not_checked


@pytest.mark.parametrize("example", EXAMPLES.values(), ids=EXAMPLES.keys())
def test_an_example_of_a_page(example: Example) -> None:
    assert_same_in_every_order(read(example.source, loader(example.source, example.files), OWN_NAME)[0], shuffles=0)


@pytest.mark.parametrize("slip", read_slips()[::9], ids=lambda slip: f"{slip.design}-{slip.part}")
def test_a_slip_in_a_stranger_s_design(slip: MadeSlip) -> None:
    source = Source(slip.path.name, slip.harmed)
    assert_same_in_every_order(read(source, file_loader(slip.path, slip.path.name))[0], shuffles=1)


def test_every_rule_has_its_place_in_the_order_of_cause() -> None:
    assert RANK.keys() == RULES.keys()
    assert RANK["conflict-markers"] < RANK["same-label-twice"] < min(RANK["unknown-name"], RANK["label-kind-clash"])
    assert RANK["unknown-name"] < RANK["slip-explains"] < RANK["decimal-slip"] < RANK["load-too-low"]
    assert RANK["load-too-low"] < RANK["resistor-hot"] < RANK["unplugged-collapse"] < RANK["expectation-unmet"]
