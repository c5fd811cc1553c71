"""How far a reading may be from the truth, and the scale on which readings are compared.

In: the instruments and true values. Out: variances and simulated readings. The scale is a logarithm that goes flat
where a meter shows nothing: u = ln(R + 0.5 ohm), ln(|Z| + 0.05 ohm), and ln sqrt(V^2 + (3 mV)^2).

All errors but those that the instruments state are common practice, no source. Refuses to know what is read.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from shuntwise.bench.rig import Real
from shuntwise.bench.solving import BEYOND_OHM
from shuntwise.model.box import Instruments, Reading

FLOOR_OHM, FLOOR_Z, FLOOR_V = 0.5, 0.05, 3e-3
OHM_DIGIT, OHM_CONTACT, OHM_SHARE = 0.1, 0.1, 0.01
VOLT_DIGIT, VOLT_HUM = 1e-3, 0.5e-3
WIRE_V, WIRE_SEEN_V = 4e-3, 6e-3
"""What some milliohm of wire make of a reading of nothing, at most, and of which readings it is lost in the rest."""

IMPEDANCE_SHARE = 0.02
SLACK = 0.005
"""What no model has, in each reading for itself: on the scale of comparison."""


@dataclass(frozen=True, eq=False)
class Scale:
    """Of some readings (M): which are resistances and which impedances; the others are volts."""

    resistance: np.ndarray
    impedance: np.ndarray
    bench: Instruments

    def u(self, x: Real) -> Real:
        """Readings (..., M) on the scale of comparison; an open circuit is the end of the meter's range."""
        x = np.minimum(x, np.where(self.resistance, BEYOND_OHM, np.inf))
        volts = 0.5 * np.log(x * x + FLOOR_V**2)
        return np.where(self.resistance, np.log(x + FLOOR_OHM), np.where(self.impedance, np.log(x + FLOOR_Z), volts))

    def slope(self, x: Real) -> Real:
        """du/dx, of no volts that of a digit."""
        volts = np.hypot(x, VOLT_DIGIT) / (x * x + FLOOR_V**2)
        return np.where(self.resistance, 1 / (x + FLOOR_OHM), np.where(self.impedance, 1 / (x + FLOOR_Z), volts))

    def x(self, u: Real) -> Real:
        """Ohm and volts again."""
        volts = np.sqrt(np.maximum(np.exp(2 * u) - FLOOR_V**2, 0))
        ohm = np.maximum(np.exp(u) - np.where(self.impedance, FLOOR_Z, FLOOR_OHM), 0)
        return np.where(self.resistance | self.impedance, ohm, volts)

    def leads(self, x: Real) -> Real:
        """Standard deviation of u by the leads, which all resistances have in common."""
        return np.where(self.resistance & (x < BEYOND_OHM), self.bench.leads_ohm / 3**0.5 * self.slope(x), 0.0)

    def variance(self, x: Real) -> Real:
        """Of u, by what each reading has for itself."""
        ohm = OHM_DIGIT**2 / 12 + OHM_CONTACT**2 / 3 + (OHM_SHARE * x) ** 2 / 3
        wire = WIRE_V**2 / 3 / (1 + (x / WIRE_SEEN_V) ** 2)
        volts = (self.bench.meter_share * x) ** 2 / 3 + VOLT_DIGIT**2 / 3 + VOLT_HUM**2 + wire
        impedance = (IMPEDANCE_SHARE * x) ** 2 / 3
        each = np.where(self.resistance, ohm, np.where(self.impedance, impedance, volts)) * self.slope(x) ** 2
        return np.where(self.resistance & (x >= BEYOND_OHM), 1e-4, each) + SLACK**2

    def read(self, x: Real, generator: np.random.Generator) -> Real:
        """What the meters show of true values (N, M)."""
        each = generator.uniform(-1, 1, x.shape)
        leads = self.bench.leads_ohm * generator.uniform(-1, 1, (len(x), 1))
        contact = OHM_CONTACT * generator.uniform(-1, 1, x.shape)
        hum = VOLT_HUM * generator.normal(size=x.shape)
        wire = WIRE_V * generator.uniform(0, 1, x.shape) / np.hypot(1, x / WIRE_SEEN_V)
        ohm = np.maximum(np.round((x * (1 + OHM_SHARE * each) + leads + contact) / OHM_DIGIT) * OHM_DIGIT, 0)
        ohm = np.where(x < BEYOND_OHM, ohm, BEYOND_OHM)
        volts = np.sqrt((x * (1 + self.bench.meter_share * each)) ** 2 + hum**2 + wire**2)
        volts = np.round(volts / VOLT_DIGIT) * VOLT_DIGIT
        return np.where(self.resistance, ohm, np.where(self.impedance, x * (1 + IMPEDANCE_SHARE * each), volts))


def scale_of(readings: Sequence[Reading], bench: Instruments) -> Scale:
    """The scale of some readings."""
    quantities = np.array([reading.quantity for reading in readings], dtype=object)
    return Scale(quantities == "resistance", quantities == "impedance", bench)
