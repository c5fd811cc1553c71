"""What stands on the bench where a box is read.

Out of `bench { ... }` in a design or in a box's own file, into the readings that are expected. Refuses to know a
circuit.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Instruments:
    """What stands on the bench: a design or a box may state it (`bench { ... }`), each else as here.

    `source_v` is the generator's voltage (V, r.m.s.) with nothing on it, `series_ohm` the resistor between it and the
    box, `dummy_ohm` what stands in the place of each driver, `meter_share` how far a voltmeter may be off, up to
    `meter_top_hz`; `leads_ohm` what the leads of the ohmmeter may add.
    """

    source_v: float = 2.0
    series_ohm: float = 10.0
    dummy_ohm: float = 8.0
    meter_share: float = 0.02
    meter_top_hz: float = 6000.0
    leads_ohm: float = 0.2


USUAL = Instruments()
"""Where nothing is stated: common practice, no source."""
