"""Whatever is printed of a design is what `expect` means by it: pasted into a line, with one unit of its last digit as
window, every printed crossing, corner, level, slope, least impedance and polarity is met; moved by three, it is not."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

import pytest

from figures.pasting import Line, of_crossing, of_reading, of_spread, of_summary
from lowering import texts
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.intent import expectation_unmet
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.documents.plots import crossing_note
from shuntwise.documents.read_aloud import read_aloud
from shuntwise.documents.summary import build_summary
from shuntwise.documents.tolerance_text import quantity
from shuntwise.figures.nominal import Nominal
from shuntwise.figures.usual import Usual, usual
from shuntwise.graph.circuit import Circuit
from shuntwise.graph.connect import connect
from shuntwise.loading import loader
from shuntwise.model.design import Design
from shuntwise.model.include import Collected
from shuntwise.model.resolve import resolve
from shuntwise.model.variants import to_check
from shuntwise.network.lower import lower
from shuntwise.network.network import Network
from shuntwise.pipeline import read
from shuntwise.response.pivoted import SingularNetwork
from shuntwise.settings import read_settings
from shuntwise.source import Source
from shuntwise.syntax.parser import parse
from shuntwise.tolerance.spread import NothingVaries, spread

TESTS = Path(__file__).parents[1]
DESIGNS = sorted([*(TESTS.parent / "examples").glob("*.shunt"), *(TESTS / "strangers").glob("*.shunt")])
GENERATED = 200


@dataclass(frozen=True)
class Made:
    collected: Collected
    variant: str | None
    settings: Sequence[str]
    design: Design
    circuit: Circuit
    network: Network

    @property
    def evidence(self) -> Evidence:
        return Evidence(self.design, self.circuit, self.network)


def make(path: Path, text: str, variant: str | None, settings: Sequence[str] = ()) -> Made | None:
    return made_of(read(Source(path.name, text), loader(path, path.name), str(path))[0], variant, settings)


def made_of(collected: Collected, variant: str | None, settings: Sequence[str]) -> Made | None:
    design, _ = resolve(collected, variant=variant, settings=read_settings(settings))
    circuit, _ = connect(design)
    network = lower(circuit)
    return Made(collected, variant, settings, design, circuit, network) if isinstance(network, Network) else None


def without_expectations(text: str) -> str:
    return re.sub(r"(?m)^\s*expect .*$", "", text)


def printed(made: Made, figures: Usual) -> Iterator[Line]:
    yield from of_summary(build_summary(made.design, figures, ()))
    for crossing in figures.crossings:
        yield from of_crossing(crossing_note(crossing).text.replace("\n", " "))
    structure = made.evidence.structure
    wired = [name for name in made.design.drivers if name in structure.ladders and name in _fed(made)]
    yield from of_reading(read_aloud(made.circuit), wired)


def _fed(made: Made) -> set[str]:
    return {driver.name for driver in made.network.drivers}


def unmet(plain: Made, lines: Sequence[str]) -> set[str]:
    """Those of some lines that the design does not meet, once they stand below its text."""
    pasted, _ = parse(Source("pasted.shunt", "\n".join(lines) + "\n"))
    entries = (*plain.collected.entries, *pasted.entries)
    made = made_of(replace(plain.collected, entries=entries), plain.variant, plain.settings)
    assert made is not None
    wanted = {expectation.span.text for expectation in made.design.expectations}
    assert wanted >= set(lines)
    told = list(expectation_unmet.check(made.evidence))
    assert all(isinstance(one, Diagnostic) for one in told), told
    return {one.span.text for one in told if isinstance(one, Diagnostic)}


def hold(made: Made, lines: Sequence[Line]) -> None:
    right, moved = {line.text for line in lines}, {line.moved for line in lines}
    told = unmet(made, sorted(right | moved))
    assert told & right == set()
    met = moved - told
    # A crossing or corner that has another one beside it may meet the moved line; that is seldom.
    assert not [line for line in met if not re.match("expect (crossing|corner) ", line)]
    assert len(met) <= 0.1 * len(lines) + 1


@pytest.mark.parametrize("path", DESIGNS, ids=lambda path: path.stem)
def test_what_is_printed_of_a_design(path: Path) -> None:
    text = without_expectations(path.read_text(encoding="utf-8"))
    collected, _ = read(Source(path.name, text), loader(path, path.name), str(path))
    for variant in (None, *to_check(resolve(collected)[0])):
        made = make(path, text, variant)
        assert made is not None
        if made.design.knob_ends:  # what is expected of levels is not asked for there
            continue
        figures = usual(Nominal(made.evidence.solver), made.design.drivers)
        lines = list(printed(made, figures))
        assert len(lines) > 4 * len(made.design.drivers)
        try:
            builds = spread(made.design, made.network, builds=2)
        except NothingVaries:
            pass
        else:
            several = len(made.network.feeds) > 1
            told = [of_spread(f.figure.name, quantity(f.figure, f.nominal), several) for f in builds.figures]
            assert None not in told
            lines += [line for line in told if line is not None]
        hold(made, lines)


@pytest.mark.parametrize("path", DESIGNS[:6], ids=lambda path: path.stem)
def test_what_is_printed_of_a_narrower_band(path: Path) -> None:
    text = without_expectations(path.read_text(encoding="utf-8"))
    made = make(path, text, None)
    assert made is not None
    figures = usual(Nominal(made.evidence.solver), made.design.drivers, 200.0, 8e3)
    hold(made, list(printed(made, figures)))


@pytest.mark.parametrize("seed", range(GENERATED))
def test_what_is_printed_of_a_generated_design(seed: int, tmp_path: Path) -> None:
    made_text = texts.make(seed)
    folder = made_text.write(tmp_path)
    text = without_expectations(folder.read_text(encoding="utf-8"))
    made = make(folder, text, made_text.variant, made_text.settings)
    if made is None or not made.network.elements or not made.evidence.traceable:
        pytest.skip("nothing to solve")
    try:
        figures = usual(Nominal(made.evidence.solver), made.design.drivers)
    except SingularNetwork:
        pytest.skip("no single solution")
    hold(made, list(printed(made, figures)))
