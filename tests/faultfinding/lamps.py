"""What a lamp on the bench has in ohm, by the heat that goes in and out of its filament.

Tungsten's resistance goes with the absolute temperature to the power of 1.2, what it radiates with the fourth power
(J. Stefan, L. Boltzmann), and what a gas about it carries off with the difference to the air: all from memory. Common
practice, no source: of the power at its rated volts the gas carries off three tenths at the most.
"""

from __future__ import annotations

from dataclasses import dataclass

MOST_GAS = 0.3
EXPONENT = 1.2
HALVINGS = 50


@dataclass(frozen=True)
class Lamp:
    """The resistance (ohm) when hot, at the rated volts; `gas` is the share of its power that the gas then carries off.

    Raises ValueError for a share of gas that no lamp has.
    """

    hot: float
    rated_v: float
    gas: float = 0.0

    def __post_init__(self) -> None:
        if not 0 <= self.gas <= MOST_GAS:
            raise ValueError(f"a share of {self.gas} for the gas")

    def ohm(self, cold: float, volts: float) -> float:
        """With so many volts (r.m.s.) over it, `cold` without any. Temperatures are shares of the rated one."""
        if self.hot <= cold:
            return cold
        air = (cold / self.hot) ** (1 / EXPONENT)
        low, high = air, max(1.0, volts / self.rated_v)
        for _ in range(HALVINGS):
            middle = (low + high) / 2
            radiated = (1 - self.gas) * (middle**4 - air**4) / (1 - air**4)
            carried = self.gas * (middle - air) / (1 - air)
            taken = (volts / self.rated_v) ** 2 / middle**EXPONENT
            low, high = (middle, high) if taken > radiated + carried else (low, middle)
        return float(self.hot * low**EXPONENT)
