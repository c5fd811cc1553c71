"""The filament of a lamp: its resistance when it glows, and how that goes with the volts over it.

In: a lamp of a design. Out: `Filament`. Refuses to know what gives the lamp its volts.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import sqrt
from typing import TYPE_CHECKING, TypeVar

from shuntwise.model.design import Part

if TYPE_CHECKING:  # of which nothing that starts without a solver has need
    import numpy as np
    import numpy.typing as npt

RESISTANCE_EXPONENT = 0.45
"""Of the volts: between a third and a half, from the radiation of a black body and tungsten's resistance that goes with
the temperature to the power of 1.2 (from memory), as far as the lamp is much hotter than the air."""

UNSTATED_V = 12.0
"""Of a lamp of which nothing tells the volts: the least that is usual in a box (common practice, no source)."""

HOT_OVER_COLD = 10.0
"""A filament's resistance when it glows over that when cold (common practice, no source)."""

Volts = TypeVar("Volts", float, "npt.NDArray[np.float64]")


@dataclass(frozen=True)
class Filament:
    """`cold` and `hot` resistance (ohm), and the volts (r.m.s.) at which it has the latter."""

    cold: float
    hot: float
    rated_v: float

    def glowing(self, volts: Volts) -> Volts:
        """Ohm at some volts (a number or an array), as far as that is more than `cold`: below it does not glow."""
        ohm: Volts = self.hot * (volts / self.rated_v) ** RESISTANCE_EXPONENT
        return ohm


def rated_ohm(part: Part) -> float:
    """What a lamp has at its rated volts and watts, V^2/W; 0 where one of them is not stated."""
    volts, watts = part.get("voltage"), part.get("power")
    return volts**2 / watts if volts and watts else 0.0


def filament_of(part: Part) -> Filament:
    """The filament of a lamp."""
    cold = part.value.value if part.value else 0.0
    hot = part.get("hot") or rated_ohm(part) or HOT_OVER_COLD * cold
    return Filament(cold, hot, part.get("voltage") or sqrt(part.get("power", 0.0) * hot) or UNSTATED_V)
