"""Which values vary, and what is drawn: seeds, distributions, and what a draw does not depend on."""

from __future__ import annotations

from dataclasses import replace
from math import sqrt
from typing import Any

import numpy as np
import pytest

from shuntwise.tolerance.draws import Distribution, VaryingPart, draw, element_values, standard_deviation, varying
from tolerance.designs import TAPPED, sound

PARTS = tuple(VaryingPart(label, (label,), 0.05) for label in ("C1", "L1", "R1"))


def test_only_values_with_a_tolerance_vary() -> None:
    """Winding and series resistances, couplings and driver models are kept; a part without a tolerance is exact."""
    moving = varying(*sound(TAPPED))
    assert [(part.label, part.elements, part.tolerance) for part in moving.parts] == [
        ("C1", ("C1",), 0.05),
        ("L2", ("L2",), 0.05),
        ("L3", ("L3",), 0.04),
        ("R1", ("R1",), 0.1),
        ("T1", ("T1.lower", "T1.upper"), 0.07),
    ]
    assert moving.exact == ("C2",)


def test_the_sections_of_a_tapped_coil_move_together() -> None:
    network = sound(TAPPED)[1]
    parts = [part for part in varying(*sound(TAPPED)).parts if part.label == "T1"]
    values = element_values(network, parts, draw(parts, 50, seed=1))
    lower, upper = values["T1.lower"], values["T1.upper"]
    assert np.ptp(lower) > 0
    assert np.allclose(lower / network.element["T1.lower"].value, upper / network.element["T1.upper"].value, rtol=1e-14)


def of_scipy(distribution: Distribution) -> Any:
    from scipy import stats  # which takes seconds, so not while tests are only collected

    return stats.uniform(-1, 2) if distribution == "uniform" else stats.truncnorm(-3, 3, scale=1 / 3)


@pytest.mark.parametrize("distribution", ["uniform", "normal"])
class TestStreams:
    def test_a_seed_repeats_and_another_differs(self, distribution: Distribution) -> None:
        once, again, other = (draw(PARTS, 100, seed, distribution) for seed in (7, 7, 8))
        assert np.array_equal(once, again)
        assert not np.isclose(once, other).any()

    def test_parts_are_independent_of_order_and_of_one_another(self, distribution: Distribution) -> None:
        forth, back = draw(PARTS, 500, 1, distribution), draw(PARTS[::-1], 500, 1, distribution)
        assert np.array_equal(forth, back[::-1])
        assert np.array_equal(draw(PARTS[1:2], 500, 1, distribution)[0], forth[1])
        assert np.abs(np.corrcoef(forth) - np.eye(3)).max() < 4 / sqrt(500)

    def test_a_longer_run_begins_as_a_shorter_one(self, distribution: Distribution) -> None:
        assert np.array_equal(draw(PARTS, 20_000, 3, distribution)[:, :777], draw(PARTS, 777, 3, distribution))

    def test_tolerances_do_not_change_the_draw(self, distribution: Distribution) -> None:
        wider = [replace(part, tolerance=0.2) for part in PARTS]
        assert np.array_equal(draw(PARTS, 10, 1, distribution), draw(wider, 10, 1, distribution))

    def test_moments(self, distribution: Distribution) -> None:
        """Mean, deviation and shape against scipy's distributions, at 5 sigma of the estimates."""
        offsets = draw([VaryingPart("C1", ("C1",), 0.05)], 100_000, 5, distribution)[0]
        expected = of_scipy(distribution)
        assert np.abs(offsets).max() <= 1
        assert abs(offsets.mean()) < 5 * expected.std() / sqrt(offsets.size)
        assert offsets.std() == pytest.approx(expected.std(), rel=5 / sqrt(offsets.size))
        from scipy import stats

        assert stats.kstest(offsets, expected.cdf).pvalue > 1e-4

    def test_standard_deviation(self, distribution: Distribution) -> None:
        expected = of_scipy(distribution)
        assert standard_deviation(distribution) == pytest.approx(expected.std(), rel=1e-12)


def test_values_stay_within_their_tolerance() -> None:
    design, network = sound(TAPPED)
    parts = varying(design, network).parts
    for name, value in element_values(network, parts, draw(parts, 10_000, seed=2)).items():
        tolerance = next(part.tolerance for part in parts if name in part.elements)
        ratio = value / network.element[name].value - 1
        assert tolerance * 0.999 < np.abs(ratio).max() <= tolerance * (1 + 1e-12)
