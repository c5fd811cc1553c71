"""A box on the bench: which one, with which instruments it was read, what was measured of it and what was read.

Out of the text of a box (`*.box`), into the bench. Refuses to know what a reading should be, and what is wrong.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import Literal

from shuntwise.model.design import Quantity
from shuntwise.model.instruments import USUAL, Instruments
from shuntwise.source import Source, Span
from shuntwise.units import HERTZ, write

__all__ = ["DRIVERS_OFF", "DRIVERS_ON", "DUMMIES_ON", "OPEN", "Box", "Instruments", "ReadQuantity", "Reading", "Taken"]

ReadQuantity = Literal["resistance", "volts", "impedance"]

DRIVERS_OFF, DRIVERS_ON, DUMMIES_ON = "drivers off", "drivers on", "dummies on"
"""What hangs on the wires to the drivers. One driver off alone is its name and ` off`: `woofer off`."""

_DIGITS = 9
"""Of a frequency as it is written, so that it is read back as the same."""

OPEN = float("inf")
"""A resistance beyond what the meter shows."""


@dataclass(frozen=True, eq=False)
class Reading:
    """What is read: between which two points, with what on the wires to the drivers, at what frequency.

    Points are named as in a design (`woofer+`, `L1.start`, a node's name); those of a driver are its tags, where its
    wires end. `freq_hz` is 0 for a resistance, read with direct current and no generator; `fed` is the input that
    the generator is on. A meter shows the same with its leads exchanged (a resistance of parts that let current through
    either way, an AC voltage without its sign), so it is the same reading, whichever point is named first.
    """

    quantity: ReadQuantity
    plus: str
    minus: str
    loads: str
    freq_hz: float = 0.0
    fed: str = ""

    def __eq__(self, other: object) -> bool:
        return self.key == other.key if isinstance(other, Reading) else NotImplemented

    def __hash__(self) -> int:
        return hash(self.key)

    @cached_property
    def key(self) -> tuple[str, str, str, str, float, str]:
        """What two readings have in common that are one, and what they are put in order by."""
        one, other = sorted((self.plus, self.minus))
        return self.quantity, one, other, self.loads, self.freq_hz, self.fed

    @property
    def place(self) -> str:
        """`at woofer` for the two pads of one thing, else `input+ to woofer+`."""
        name = self.plus.removesuffix("+")
        whole = (self.plus, self.minus) == (f"{name}+", f"{name}-")
        return f"at {name}" if whole else f"{self.plus} to {self.minus}"

    def words(self, inputs: int = 1) -> str:
        """As it stands in a box's text, of a design of so many inputs: `volts at tweeter, dummies on, 3 kHz`."""
        into = f", into {self.fed}" if self.freq_hz and inputs > 1 else ""
        at = f", {write(self.freq_hz, HERTZ, _DIGITS)}" if self.freq_hz else ""
        return f"{self.quantity} {self.place}, {self.loads}{into}{at}"


@dataclass(frozen=True)
class Taken:
    """A reading that was taken: ohm or volts, OPEN for a resistance beyond the meter's range."""

    reading: Reading
    value: float
    span: Span | None = field(default=None, compare=False)


@dataclass(frozen=True)
class Box:
    """One box. `design_path` is as written; `variant` as `--variant` takes it.

    `measured` are values of parts, by label, with the share by which the measurement may be off. `taken` are the
    readings since the last rework, in their order; `before` those that it has made void. A sweep's points are readings
    of an impedance among them. `yardstick` is another box whose readings stand for what is right.
    """

    source: Source
    name: str
    design_path: str
    design_span: Span
    variant: str | None = None
    instruments: Instruments = USUAL
    measured: Mapping[str, tuple[Quantity, float]] = field(default_factory=dict)
    taken: tuple[Taken, ...] = ()
    before: tuple[Taken, ...] = ()
    reworks: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    yardstick: Box | None = None
