"""The preferred values that parts are made in: IEC 60063.

In: a value. Out: the nearest one of a series. Refuses to know which parts are made to which series.
"""

from __future__ import annotations

from math import floor, log10

E6 = (1.0, 1.5, 2.2, 3.3, 4.7, 6.8)
E12 = (*E6, 1.2, 1.8, 2.7, 3.9, 5.6, 8.2)
E24 = (*E12, 1.1, 1.3, 1.6, 2.0, 2.4, 3.0, 3.6, 4.3, 5.1, 6.2, 7.5, 9.1)
E96 = tuple(round(10 ** (step / 96), 2) for step in range(96))
"""One decade of each series, for tolerances of 20 %, 10 %, 5 % and 1 %."""

SAME = 1e-3
"""Values that differ by less are one: a typed value has two or three digits."""


def nearest_in(series: tuple[float, ...], value: float) -> float:
    """The nearest value, by ratio, in any decade of a series."""
    decade = 10.0 ** floor(log10(value))
    candidates = [number * decade * shift for number in series for shift in (0.1, 1.0, 10.0)]
    return min(candidates, key=lambda candidate: abs(log10(candidate / value)))


def is_in(series: tuple[float, ...], value: float) -> bool:
    """Is it a value of this series?"""
    return abs(nearest_in(series, value) / value - 1) < SAME
