"""Bands, figures, yields and corners of random builds, against loops of single solves and closed forms."""

from __future__ import annotations

import tracemalloc
from dataclasses import replace
from math import pi, sqrt
from pathlib import Path

import numpy as np
import pytest

from shuntwise.api import load, network
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.intent import expectation_unmet
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.figures import curves as curves_module
from shuntwise.figures.band import REFERENCE_HZ, reference_db
from shuntwise.figures.curves import solve_curves
from shuntwise.figures.expected import proofs
from shuntwise.figures.figure import Corner, Crossing, Impedance
from shuntwise.model.design import Design
from shuntwise.network.network import Network
from shuntwise.response import measures, tape
from shuntwise.response.solve import Solver
from shuntwise.tolerance import spread as spread_module
from shuntwise.tolerance.draws import draw, element_values, varying
from shuntwise.tolerance.grid import grid
from shuntwise.tolerance.spread import PERCENT, NothingVaries, Spread, spread
from tolerance.designs import FIRST_ORDER, SHOWCASE, TAPPED, sound


def showcase() -> tuple[Design, Network]:
    compilation = load(str(SHOWCASE))
    return compilation.design, network(compilation)


def same(first: Spread, second: Spread, relative: float) -> bool:
    """Do all numbers of two spreads agree?"""
    arrays = [
        np.concatenate(
            [b.percentiles.ravel() for b in (*s.levels, *s.impedances)]
            + [b.worst.ravel() for b in (*s.levels, *s.impedances)]
            + [np.array([*f.percentiles, *f.worst]) for f in s.figures]
        )
        for s in (first, second)
    ]
    return np.allclose(*arrays, rtol=relative, atol=relative) and first.met == second.met


def test_bands_are_those_of_a_loop_of_single_solves() -> None:
    """41 builds solved one by one: every rank of every band at every frequency, in single precision."""
    design, circuit = showcase()
    result = spread(design, circuit, builds=41, seed=9)
    parts = varying(design, circuit).parts
    values = element_values(circuit, parts, draw(parts, 41, 9))
    solver = Solver(circuit)
    one_by_one = [
        solver.solve(result.freq_hz, values={name: float(value[i]) for name, value in values.items()})
        for i in range(41)
    ]
    ranks = [max(0, int(np.ceil(percent / 100 * 41)) - 1) for percent in PERCENT]
    for one in result.levels:
        levels = np.sort([20 * np.log10(np.abs(r.driver_voltage(one.owner))) for r in one_by_one], axis=0)
        assert np.abs(levels[ranks] - one.percentiles).max() < 2e-6
    (one,) = result.impedances
    ohms = np.sort([np.abs(r.impedance(one.owner)) for r in one_by_one], axis=0)
    assert np.abs(one.percentiles / ohms[ranks] - 1).max() < 2e-7


@pytest.mark.parametrize("driver", ["woofer", "mid", "tweeter"])
def test_reference_is_the_half_sample_mode(driver: str) -> None:
    """Build by build, wild ones included, against the definition (Robertson and Cryer, 1974) one value at a time."""
    design, circuit = showcase()
    parts = [replace(part, tolerance=0.5) for part in varying(design, circuit).parts]
    values = element_values(circuit, parts, draw(parts, 40, 6))
    solver = Solver(circuit)
    responses = [
        solver.solve(REFERENCE_HZ, values={name: float(value[i]) for name, value in values.items()}) for i in range(40)
    ]
    levels = [measures.decibel(response.driver_voltage(driver)) for response in responses]
    assert reference_db(np.transpose(levels)) == pytest.approx([half_sample_mode(level) for level in levels], abs=1e-12)


def half_sample_mode(level: np.ndarray) -> float:
    """Of the level from the first to the last point within 6 dB of the greatest."""
    inside = [place for place, value in enumerate(level) if value > max(level) - 6]
    values = sorted(level[inside[0] : inside[-1] + 1])
    while len(values) > 3:
        half = (len(values) + 1) // 2
        start = min(range(len(values) - half + 1), key=lambda k: values[k + half - 1] - values[k])
        values = values[start : start + half]
    return sum(values) / len(values)


def test_figures_are_those_of_the_exact_search() -> None:
    """Crossing, corner and least impedance on the grid against the refined search, build by build: 1e-4."""
    design, circuit = showcase()
    parts = varying(design, circuit).parts
    figures = (
        Crossing(("woofer", "mid"), 450.0),
        Crossing(("mid", "tweeter"), 3000.0, -8.0),
        Corner(("woofer",), 400.0),
        Impedance(("input",), 20.0, 20e3),
    )
    values = element_values(circuit, parts, draw(parts, 12, 4))
    curves = solve_curves(Solver(circuit), values, grid(figures))
    found = [figure.of(curves) for figure in figures]
    for i in range(12):
        elements = (replace(e, value=float(values[e.name][i])) if e.name in values else e for e in circuit.elements)
        solver = Solver(replace(circuit, elements=tuple(elements)))
        low, high = (
            min(measures.crossings(solver, *pair, 20, 20e3, louder), key=lambda f: abs(f - near))
            for pair, louder, near in ((("woofer", "mid"), 0.0, 450), (("mid", "tweeter"), -8.0, 3000))
        )
        reference = half_sample_mode(measures.decibel(solver.solve(REFERENCE_HZ).driver_voltage("woofer")))
        corners = measures.corners(solver, "woofer", 3.0, 20, 20e3, reference)
        exact = [
            low,
            high,
            min(corners, key=lambda f: abs(f - 400)),
            measures.least_impedance(solver, "input", 20, 20e3).ohm,
        ]
        assert [float(f[i]) for f in found] == pytest.approx(exact, rel=1e-4)


WILD = """
expect corner of woofer at 400 Hz within 10 %
expect slope of tweeter 11 dB/octave from 400 Hz to 1 kHz within 1 dB/octave
expect impedance below 9 ohm from 300 Hz to 3 kHz
expect level of mid above -1 dB at 1.2 kHz
"""


def test_a_build_passes_where_the_check_passes_it(tmp_path: Path) -> None:
    """30 wild builds: each `expect` line is met in the yield if and only if `expectation-unmet` says nothing of it."""
    (tmp_path / "wild.shunt").write_text(SHOWCASE.read_text("utf-8").replace("5 %", "20 %") + WILD, "utf-8")
    design = load(str(tmp_path / "wild.shunt"))
    circuit = network(design)
    parts = varying(design.design, circuit).parts
    assert 0.2 in {part.tolerance for part in parts}
    proved = proofs(design.design, ["input"])
    figures = tuple(wanted.figure for proof in proved for wanted in proof.wanted)
    values = element_values(circuit, parts, draw(parts, 30, 2))
    curves = solve_curves(Solver(circuit), values, grid(figures))
    found = {figure: figure.of(curves) for figure in figures}
    ours = {proof.expectation.span: proof.met(found) for proof in proved}
    for i in range(30):
        elements = (replace(e, value=float(values[e.name][i])) if e.name in values else e for e in circuit.elements)
        evidence = Evidence(design.design, design.circuit, replace(circuit, elements=tuple(elements)))
        unmet = {finding.span for finding in expectation_unmet.check(evidence) if isinstance(finding, Diagnostic)}
        assert {span for span, met in ours.items() if not met[i]} == unmet & set(ours)
    shares = [met.mean() for met in ours.values()]
    assert min(shares) < 0.7 < max(shares), "the builds must be wild enough to tell the two apart"


def test_yield_of_one_part_has_a_closed_form() -> None:
    """The crossing lies at 1 / (2 pi sqrt(L C)): it is within 3 % for C from 1.03^-2 to 0.97^-2 of its value."""
    centre = 1 / (2 * pi * sqrt(0.5e-3 * 5e-6))
    design, circuit = sound(FIRST_ORDER + f"expect crossing of woofer and tweeter at {centre!r} Hz within 3 %\n")
    builds = 20_000
    result = spread(design, circuit, builds=builds)
    share = (0.97**-2 - 1.03**-2) / 0.2
    assert result.met == result.yields[0].share
    assert result.met == pytest.approx(share, abs=4 * sqrt(share * (1 - share) / builds))
    ratio = 1 + 0.1 * draw(varying(design, circuit).parts, builds, 1)[0]
    exact = np.mean((ratio >= 1.03**-2) & (ratio <= 0.97**-2))
    assert result.met == pytest.approx(float(exact), abs=3 / builds), "but for builds on the very edge"
    crossing = next(one for one in result.figures if isinstance(one.figure, Crossing))
    assert crossing.nominal == pytest.approx(centre, rel=1e-5)
    assert crossing.worst == pytest.approx((centre / sqrt(1.1), centre / sqrt(0.9)), rel=1e-5)
    assert crossing.influences[0].label == "C1" and crossing.influences[0].share == pytest.approx(1)
    assert crossing.influences[0].effect == pytest.approx(-centre * 0.1 / 2, rel=1e-4)  # f goes with C^(-1/2)
    assert result.all_corners and result.corners == 2


@pytest.mark.parametrize("distribution", ["uniform", "normal"])
def test_first_order_deviation_is_that_of_the_builds(distribution: str) -> None:
    """With 5 % parts the middle half of 10,000 builds is as wide as the first-order deviation says, within 10 %."""
    design, circuit = showcase()
    result = spread(design, circuit, distribution=distribution)  # type: ignore[arg-type]
    for one in result.figures:
        if isinstance(one.figure, Impedance):
            continue  # the lesser of two hollows that are equally deep: no derivative describes it
        quarter, three_quarters = (one.percentiles[PERCENT.index(p)] for p in (25, 75))
        # The quartiles of a normal distribution are 1.349 deviations apart, of a uniform one 1.732.
        assert 1.25 < (three_quarters - quarter) / one.deviation < 1.75
        assert sum(part.share for part in one.influences) == pytest.approx(1)
        assert one.missing == 0


def test_corners_bound_the_builds() -> None:
    """No random build is beyond the worst found."""
    design, circuit = sound(TAPPED)
    result = spread(design, circuit, builds=3000)
    assert result.all_corners and result.corners == 2**5
    for one in (*result.levels, *result.impedances):
        assert (one.worst[0] <= one.percentiles[0]).all() and (one.worst[1] >= one.percentiles[-1]).all()
    few = spread(*showcase(), builds=3000)
    assert not few.all_corners
    assert all(f.worst[0] <= f.percentiles[0] and f.worst[1] >= f.percentiles[-1] for f in few.figures)


def test_sensitivity_corners_find_what_all_corners_find(monkeypatch: pytest.MonkeyPatch) -> None:
    """For a design small enough to try all corners, those that sensitivities point at reach as far, within 2 %."""
    design, circuit = sound(TAPPED)
    every = spread(design, circuit, builds=10)
    monkeypatch.setattr(spread_module, "ALL_CORNERS", 0)
    some = spread(design, circuit, builds=10)
    assert not some.all_corners and some.corners < every.corners
    for a, b in zip(every.levels, some.levels, strict=True):
        width = a.worst[1] - a.worst[0]
        assert ((b.worst[1] - b.worst[0]) > 0.98 * width).all()


def test_a_seed_repeats_whatever_the_chunks(monkeypatch: pytest.MonkeyPatch) -> None:
    """Chunks of the solver, batches and room for curves change nothing but the last bits."""
    design, circuit = showcase()
    first = spread(design, circuit, builds=700, seed=3)
    assert same(first, spread(design, circuit, builds=700, seed=3), 0)
    assert not same(first, spread(design, circuit, builds=700, seed=4), 1e-3)
    monkeypatch.setattr(tape, "CHUNK_POINTS", 1000)
    assert same(first, spread(design, circuit, builds=700, seed=3), 1e-6)
    monkeypatch.setattr(curves_module, "BATCH", 123)
    monkeypatch.setattr(spread_module, "FIGURE_BUILDS", 50)
    assert same(first, spread(design, circuit, builds=700, seed=3), 1e-6)
    monkeypatch.setattr(spread_module, "ROOM", 200_000)
    shares: list[float] = []
    assert same(first, spread(design, circuit, builds=700, seed=3, progress=shares.append), 1e-6)
    assert shares == sorted(shares) and shares[-1] == pytest.approx(1)


def test_memory_is_bounded(monkeypatch: pytest.MonkeyPatch) -> None:
    """With room for 2 MB of curves, 6,000 builds of 19 MB of curves take under 20 MB in all: curves and their
    transients, offsets and values (8 bytes x builds x parts, twice), figures (8 bytes x builds x 12) and the solver's
    coefficients of a batch."""
    design, circuit = showcase()
    spread(design, circuit, builds=10)
    monkeypatch.setattr(spread_module, "ROOM", 2_000_000)
    monkeypatch.setattr(curves_module, "BATCH", 1000)
    tracemalloc.start()
    spread(design, circuit, builds=6000)
    peak = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    assert peak < 20e6


def test_nothing_to_vary_and_wrong_numbers() -> None:
    design, circuit = sound(FIRST_ORDER.replace(" { 10 % }", ""))
    with pytest.raises(NothingVaries):
        spread(design, circuit)
    design, circuit = sound(FIRST_ORDER)
    for builds in (0, 100_001):
        with pytest.raises(ValueError, match="number of builds"):
            spread(design, circuit, builds=builds)
    assert spread(design, circuit, builds=1).levels[0].percentiles.shape[0] == len(PERCENT)


def test_a_crossing_that_some_builds_lack() -> None:
    """Such builds are counted, do not meet the expectation, and leave the others' numbers alone."""
    text = FIRST_ORDER.replace("capacitor C1 5 uF { 10 % }", "capacitor C1 5 uF\nresistor R1 8 ohm { 80 % }")
    text = text.replace("input+ -- C1 -- tweeter+", "input+ -- R1 -- tweeter+")
    text += "expect crossing of woofer and tweeter at 4 kHz within 100 %\n"
    design, circuit = sound(text)
    # The tweeter gets 8 / (8 + R) of the input, the woofer less than that above 1/(2 pi) 8/L sqrt((1 + R/8)^2 - 1).
    result = spread(design, circuit, builds=500)
    (crossing,) = (one for one in result.figures if isinstance(one.figure, Crossing))
    resistance = 8 * (1 + 0.8 * draw(varying(design, circuit).parts, 500, 1)[0])
    exact = 8 / (2 * pi * 0.5e-3) * np.sqrt((1 + resistance / 8) ** 2 - 1)
    assert result.met == pytest.approx(float(np.mean(exact <= 8000)), abs=2 / 500)
    assert crossing.missing == 0
    assert crossing.percentiles[3] == pytest.approx(float(np.sort(exact)[249]), rel=1e-4)
    none = spread(*sound(text.replace("R1 8 ohm { 80 % }", "R1 0.1 ohm { 80 % }").replace("0.5 mH", "1 uH")), builds=20)
    assert none.met == 0 and none.figures[0].missing == 20 and np.isnan(none.figures[0].percentiles[0])
