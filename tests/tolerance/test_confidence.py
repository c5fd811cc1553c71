"""The confidence of a counted share, against scipy's score interval."""

from __future__ import annotations

import pytest
from scipy.stats import binomtest

from shuntwise.tolerance.confidence import interval


@pytest.mark.parametrize(("met", "count"), [(0, 1), (1, 1), (0, 50), (50, 50), (7, 50), (999, 1000), (500, 1000)])
def test_it_is_the_score_interval(met: int, count: int) -> None:
    wanted = binomtest(met, count).proportion_ci(confidence_level=0.95, method="wilson")
    assert interval(met / count, count) == pytest.approx((wanted.low, wanted.high), abs=1e-12)


def test_a_share_of_nothing_is_refused() -> None:
    with pytest.raises(ValueError, match="a share of nothing"):
        interval(0.5, 0)
