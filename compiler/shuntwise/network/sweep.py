"""The frequencies at which a network is to be looked at.

In: three numbers. Out: a `Sweep`, which the netlist spells as an analysis line. It refuses to know who
steps through it: a simulator places its own points, and comparisons are made at the points it reports.
"""

from __future__ import annotations

import math
from dataclasses import dataclass


@dataclass(frozen=True)
class Sweep:
    """Logarithmic steps from `freq_from_hz` to `freq_to_hz`, `points_per_decade` to each factor of ten.

    Raises ValueError unless 0 < from < to, both finite, and there is at least one point to a decade.
    """

    freq_from_hz: float = 10.0
    freq_to_hz: float = 20000.0
    points_per_decade: int = 100

    def __post_init__(self) -> None:
        if not (0 < self.freq_from_hz < self.freq_to_hz and math.isfinite(self.freq_to_hz)):
            raise ValueError("a sweep goes from a frequency above 0 Hz to a higher, finite one")
        if self.points_per_decade < 1:
            raise ValueError("a sweep has at least one point to a decade")
