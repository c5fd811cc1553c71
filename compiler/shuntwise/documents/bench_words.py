"""Readings in words: what to connect for them, and values as a meter shows them.

In: readings, a circuit and the instruments. Out: short texts, the same on the sheet, in the verdict and in the
dialogue. Refuses to know what a reading should be.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import groupby
from math import ceil, floor, isfinite, isinf, log10

from shuntwise import units as u
from shuntwise.bench.verdict import SheetLine
from shuntwise.diagnostics.wording import listed
from shuntwise.documents.pins import pin_of
from shuntwise.graph.circuit import Circuit
from shuntwise.model.box import DRIVERS_OFF, DRIVERS_ON, DUMMIES_ON, Reading, ReadQuantity
from shuntwise.model.instruments import Instruments

DIGITS = 3
"""What a hand-held meter shows, and a builder writes down."""

LEAST = {"resistance": 0.01, "impedance": 0.01, "volts": 1e-4}
"""The last digit of such a meter, in ohm and volts: common practice, no source."""

_DIMENSION = {"resistance": u.OHM, "impedance": u.OHM, "volts": u.VOLT}


def shown(value: float, quantity: ReadQuantity) -> str:
    """A value as it is read: `2.8 ohm`, `270 mV`, `open`."""
    return "open" if isinf(value) else u.write(value, _DIMENSION[quantity], DIGITS)


def expected(line: SheetLine) -> str:
    """What a sound board reads; nothing, where that is less than a meter's last digit shows."""
    quantity = line.reading.quantity
    return shown(line.expected if line.expected >= LEAST[quantity] / 2 else 0.0, quantity)


def window(line: SheetLine) -> tuple[str, str]:
    """The ends of a window, rounded inwards: what lies between them as they are printed lies within the window."""
    quantity = line.reading.quantity
    low, high = _rounded(line.low, LEAST[quantity], up=True), _rounded(line.high, LEAST[quantity], up=False)
    return shown(low, quantity), shown(high, quantity)


def _rounded(value: float, least: float, *, up: bool) -> float:
    """To `DIGITS` digits, in one direction, or to the meter's last; what is all but such a number is that number."""
    if value == 0 or not isfinite(value):
        return value
    unit = max(10.0 ** (floor(log10(abs(value))) - DIGITS + 1), least)
    steps = value / unit
    near = round(steps)
    return unit * (near if abs(steps - near) < 1e-6 else ceil(steps) if up else floor(steps))


@dataclass(frozen=True)
class SetUp:
    """What is connected for some readings. `fed` is the input that the generator is on, empty without one."""

    loads: str
    fed: str

    @staticmethod
    def of(reading: Reading) -> SetUp:
        return SetUp(reading.loads, reading.fed)


def by_set_up(lines: Iterable[SheetLine]) -> Iterator[tuple[SetUp, tuple[SheetLine, ...]]]:
    """Lines in their order, those together that need no other connections."""
    for set_up, together in groupby(lines, key=lambda line: SetUp.of(line.reading)):
        yield set_up, tuple(together)


def heading(set_up: SetUp, circuit: Circuit) -> str:
    """`Drivers off, ohmmeter`, `Dummies on, generator into low`."""
    loads = set_up.loads[:1].upper() + set_up.loads[1:]
    if not set_up.fed:
        return f"{loads}, ohmmeter"
    return f"{loads}, generator" + (f" into {set_up.fed}" if len(circuit.design.feeds) > 1 else "")


def connect(set_up: SetUp, circuit: Circuit, bench: Instruments) -> str:
    """What to do before the readings of a set-up, in sentences."""
    return " ".join([_hang(set_up.loads, circuit, bench), _meter(set_up, circuit, bench)])


def _hang(loads: str, circuit: Circuit, bench: Instruments) -> str:
    drivers = [*circuit.design.drivers]
    if loads == DRIVERS_OFF:
        return f"Take everything off the wires to {listed(drivers)}; read at the wires' ends."
    if loads == DRIVERS_ON:
        return f"Put the wires on {listed(drivers)}, plus to plus."
    if loads == DUMMIES_ON:
        ohm = u.write(bench.dummy_ohm, u.OHM, DIGITS)
        if len(drivers) == 1:
            return f"Put a dummy of {ohm} on the wires to {drivers[0]}, in its place."
        return f"Put dummies of {ohm} on the wires to {listed(drivers)}, one in the place of each."
    return f"All drivers on their wires, but {loads.removesuffix(' off')} off."


def _meter(set_up: SetUp, circuit: Circuit, bench: Instruments) -> str:
    if not set_up.fed:
        return "Nothing feeds the box."
    volts, ohm = u.write(bench.source_v, u.VOLT, DIGITS), u.write(bench.series_ohm, u.OHM, DIGITS)
    plus, minus = (_reached(f"{set_up.fed}{sign}", circuit) for sign in "+-")
    others = [pair.name for pair in circuit.design.feeds if pair.name != set_up.fed]
    return f"Generator at {volts} r.m.s. (set with nothing on it) through {ohm} into {plus}, back from {minus}." + (
        f" Nothing on {listed(others)}." if others else ""
    )


def _reached(pad: str, circuit: Circuit) -> str:
    pin = pin_of(circuit, pad)
    return f"{pad} ({pin})" if pin else pad


def ohmmeter(bench: Instruments) -> str:
    """How to use the ohmmeter."""
    leads = u.write(bench.leads_ohm, u.OHM, DIGITS)
    return f"Ohmmeter: a reading that climbs to open is a capacitor that fills, so wait. Its leads may add {leads}."


def at(reading: Reading) -> str:
    """Where and at what frequency, as the file of a box has it: `at woofer, 2 kHz`."""
    return reading.place + (f", {u.write(reading.freq_hz, u.HERTZ)}" if reading.freq_hz else "")
