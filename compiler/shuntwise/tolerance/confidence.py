"""How sure a counted share is. In: a share and of how many. Out: an interval. It refuses to know what was counted."""

from __future__ import annotations

from math import sqrt

NORMAL_95 = 1.959963984540054
"""The point of the standard normal distribution beyond which 2.5 % lie."""


def interval(share: float, count: int) -> tuple[float, float]:
    """Where the true share lies in 95 of 100 such counts: the score interval, which holds at 0 and 1 as well.

    E. B. Wilson, Probable inference, the law of succession, and statistical inference, J. Am. Stat. Assoc. 22(158),
    1927, from memory. Raises ValueError unless `count` is positive.
    """
    if count <= 0:
        raise ValueError("a share of nothing")
    z2 = NORMAL_95**2 / count
    middle = share + z2 / 2
    half = NORMAL_95 * sqrt(share * (1 - share) / count + z2 / (4 * count))
    return max(0.0, (middle - half) / (1 + z2)), min(1.0, (middle + half) / (1 + z2))
