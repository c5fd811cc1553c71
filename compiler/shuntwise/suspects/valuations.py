"""Values as they would be, had one been typed or read off by a power of ten.

In: a `Circuit`. Out: the same circuit with one value, one resistance of a part, or one figure of a driver otherwise; a
tapped coil's tap goes with its value. Refuses to know whether that is better.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import replace

from shuntwise import units
from shuntwise.graph.circuit import Circuit
from shuntwise.model.design import Design, Part, Quantity
from shuntwise.structure.slips import WINDOWS, driver_windows
from shuntwise.suspects.change import Change

POWERS = (0.1, 10.0, 0.01, 100.0, 1e-3, 1e3)
"""How far a dot, a misread ring or a prefix puts a value off: common practice, no source."""

RESISTANCES = {"dcr": (0.01, 3.0), "esr": (0.001, 2.0)}
"""Resistances of parts, and where they lie (ohm): common practice, no source."""


Restated = Callable[[str, str], Circuit | None]
"""The circuit with a named value put otherwise: its name, and how the value is written."""


def named_value_changes(design: Design, restated: Restated) -> Iterator[Change]:
    """Values that have names, each off by a power of ten."""
    for name, quantity in design.values.items():
        for new in _others(quantity, POWERS, 0.0, float("inf")):
            circuit = restated(name, new.text)
            if circuit is not None:
                yield Change("value", (name,), circuit, f"make `{name}` {new.text}", quantity=quantity, text=new.text)


def value_changes(circuit: Circuit) -> Iterator[Change]:
    """Values of parts, their resistances, and figures of drivers, each off by a power of ten."""
    design = circuit.design
    for part in design.parts.values():
        if not part.fitted:
            continue
        if part.value is not None and not _worked_out(design, part):
            window = WINDOWS.get(part.kind, (0.0, float("inf")))
            for new in _others(part.value, POWERS, *window):
                changed = _part(design, part.label, value=new, quantities=_with_tap(part, new.value / part.value.value))
                yield _valued(circuit, part.label, "", part.value, new, changed)
        for name, (low, high) in RESISTANCES.items():
            if name in part.quantities:
                old = part.quantities[name]
                for new in _others(old, POWERS[:4], low, high):
                    changed = _part(design, part.label, quantities={**part.quantities, name: new})
                    yield _valued(circuit, part.label, name, old, new, changed)
    for driver in design.drivers.values():
        for name, (low, high) in driver_windows(driver).items():
            if name in driver.quantities and driver.measured is None:
                old = driver.quantities[name]
                for new in _others(old, POWERS[:4], low, high):
                    other = replace(driver, quantities={**driver.quantities, name: new})
                    changed = replace(design, drivers={**design.drivers, driver.name: other})
                    yield _valued(circuit, driver.name, name, old, new, changed)


def _others(quantity: Quantity, powers: Iterable[float], low: float, high: float) -> Iterator[Quantity]:
    """The quantity times each of `powers`, where that lies between `low` and `high`."""
    for power in powers:
        value = quantity.value * power
        if low < value <= high * (1 + 1e-9):
            yield replace(quantity, value=value, text=units.write(value, quantity.dimension))


def _valued(circuit: Circuit, owner: str, name: str, old: Quantity, new: Quantity, design: Design) -> Change:
    what = f"`{name}` of `{owner}`" if name else f"`{owner}`"
    other = replace(circuit, design=design)
    return Change("value", (owner,), other, f"make {what} {new.text}", 0.3 * bool(name), old, text=new.text)


def _worked_out(design: Design, part: Part) -> bool:
    """Is the value of this part worked out from named values, or given by one? Then it cannot be off by itself."""
    if part.value is None:
        return False
    words = re.findall(r"[^\W\d]\w*", part.value.text)
    use = part.label.rpartition(".")[0]
    names = {f"{use}.{word}" if use else word for word in words}
    return not names.isdisjoint(design.values)


def _with_tap(part: Part, factor: float) -> Mapping[str, Quantity]:
    """The attributes of a part of another value: what a coil has at its tap is a share of the whole."""
    tap = part.quantities.get("tap")
    return part.quantities if tap is None else {**part.quantities, "tap": replace(tap, value=tap.value * factor)}


def _part(design: Design, label: str, **changes: object) -> Design:
    return replace(design, parts={**design.parts, label: replace(design.parts[label], **changes)})  # type: ignore[arg-type]
