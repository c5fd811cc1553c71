"""Which values look off by a power of ten.

In: a design and its structure. Out: parts with the power of ten that mends them. Refuses to say what follows from it.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass
from math import log10

from shuntwise import units
from shuntwise.graph.circuit import Circuit
from shuntwise.model.design import Design, Driver, Part
from shuntwise.structure.crossovers import Estimate, estimates, middle_hz, misgrouped, neighbours
from shuntwise.structure.ladders import Structure

FAR_OFF = 4.5
"""How many times the corner that a part speaks of may lie from those of its neighbours, if a design sets no limit."""

WINDOWS = {
    "series capacitor": (1e-6, 100e-6),
    "capacitor": (0.1e-6, 470e-6),
    "coil": (0.05e-3, 15e-3),
    "resistor": (0.3, 100.0),
}
"""Where values lie (F, H, ohm): common practice, no source."""

RE_SHARE = (0.4, 1.0)
"""A driver's DC resistance as a share of its nominal impedance: common practice, no source."""

DRIVER_WINDOWS = {
    "woofer": {"fs": (15.0, 200.0), "le": (0.05e-3, 5e-3)},
    "mid": {"fs": (60.0, 1500.0), "le": (0.02e-3, 2e-3)},
    "full_range": {"fs": (35.0, 400.0), "le": (0.01e-3, 2e-3)},
    "tweeter": {"fs": (250.0, 5000.0), "le": (3e-6, 0.3e-3)},
}
"""Where resonance (Hz) and voice coil inductance (H) of drivers lie, by role: common practice, no source."""

LOWEST_CORNER_HZ = 40.0
"""Of a woofer that is alone: down to this corner a coil is that of a subwoofer (common practice, no source)."""

BYPASS = 10.0
"""How many times a capacitor's value one beside it has at the least, which it bypasses (common practice, no source)."""

_PREFIX = 1e-3
"""What `mF` is off where `uF` was meant: MFD on old parts is the latter."""

BLEEDER_OHM = 1e3
"""From here on a resistor side by side with a capacitor is there to discharge it, not to shape anything."""

MERE_LEAK_OHM = 4.7e3
"""From here on a resistor shapes nothing, wherever it is."""


@dataclass(frozen=True)
class Slip:
    """The power of ten that mends a value, and how it shows, in words."""

    factor: float
    why: str


def slips(circuit: Circuit, structure: Structure, far_off: float = FAR_OFF) -> Mapping[str, Slip]:
    """By part, every value that looks off by a power of ten."""
    found = {label: Slip(factor, "no usual value for its place") for label, factor in _outside(circuit, structure)}
    for estimate, middle in _far_off(circuit.design, structure, far_off, found.keys()):
        shown = units.write(estimate.freq_hz, units.HERTZ, 2), units.write(middle, units.HERTZ, 2)
        why = f"fits a corner at {shown[0]}, and the rest one at {shown[1]}"
        found[estimate.label] = Slip(10.0 ** round(log10(estimate.freq_hz / middle)), why)
    return found


def driver_windows(driver: Driver) -> Mapping[str, tuple[float, float]]:
    """Where a driver's figures lie, by attribute, as far as its nominal impedance and role tell."""
    windows = dict(DRIVER_WINDOWS.get(driver.role or "", {}))
    if driver.nominal is not None:
        windows["re"] = (RE_SHARE[0] * driver.nominal.value, RE_SHARE[1] * driver.nominal.value)
    return windows


def bleeds(circuit: Circuit, part: Part) -> bool:
    """Is this a resistor that discharges a capacitor beside it?"""
    if part.kind != "resistor" or part.value is None or part.value.value < BLEEDER_OHM:
        return False
    return any(_capacitors_beside(circuit, part))


def _bypasses(circuit: Circuit, part: Part) -> bool:
    """Is this a small capacitor beside a large one?"""
    if part.kind != "capacitor" or part.value is None:
        return False
    beside = [other.value.value for other in _capacitors_beside(circuit, part) if other.value is not None]
    return any(value >= BYPASS * part.value.value for value in beside)


def _capacitors_beside(circuit: Circuit, part: Part) -> Iterator[Part]:
    """The capacitors between the same two nets."""
    ends = {circuit.net_of[f"{part.label}.start"], circuit.net_of[f"{part.label}.end"]}
    for edge in circuit.edges.values():
        if edge.kind == "part" and edge.owner != part.label and {edge.plus, edge.minus} == ends:
            other = circuit.design.parts[edge.owner]
            if other.kind == "capacitor":
                yield other


def _fits(design: Design, structure: Structure, label: str) -> bool:
    """Does an unusual value speak of the corner that the rest of its filter has, nearer than a power of ten?"""
    for lower, upper in neighbours(design, structure):
        found = (*estimates(design, lower, False), *estimates(design, upper, True))
        own = [estimate.freq_hz for estimate in found if estimate.label == label]
        rest = [estimate for estimate in found if estimate.label != label]
        if own and len(rest) > 1:
            return abs(log10(own[0] / middle_hz(rest))) < 0.5
    alone = list(structure.of_role("woofer")) if len(structure.ladders) == 1 else []
    found = tuple(estimate for ladder in alone for estimate in estimates(design, ladder, False))
    return any(estimate.label == label and estimate.freq_hz >= LOWEST_CORNER_HZ for estimate in found)


def _outside(circuit: Circuit, structure: Structure) -> Iterator[tuple[str, float]]:
    """Parts outside their window, with the power of ten that would bring them inside."""
    in_path = {
        step.block.label: ladder.transformed
        for ladder in structure.of_role("tweeter", "mid")
        for step in ladder.series("C")
    }
    for part in circuit.design.parts.values():
        if not part.fitted or part.value is None:
            continue
        window = WINDOWS.get("series capacitor" if part.label in in_path else part.kind)
        if window is None or _leaks(part) or bleeds(circuit, part) or _bypasses(circuit, part):
            continue
        # What lies across a tapped coil may bring the load back to the driver's own: both windows are usual.
        times = in_path.get(part.label, 1.0)
        low, high = window[0] / max(times, 1.0), window[1] / min(times, 1.0)
        factor = _PREFIX if "mF" in part.value.text and low <= part.value.value * _PREFIX <= high else 1.0
        while part.value.value * factor < low and factor < 1e12:
            factor *= 10
        while part.value.value * factor > high and factor > 1e-12:
            factor /= 10
        if factor != 1 and not _fits(circuit.design, structure, part.label):
            yield part.label, factor


def _leaks(part: Part) -> bool:
    return part.kind == "resistor" and part.value is not None and part.value.value >= MERE_LEAK_OHM


def _far_off(
    design: Design, structure: Structure, far_off: float, told: Collection[str]
) -> Iterator[tuple[Estimate, float]]:
    """Estimates far from those of their crossover, each with the middle of them (Hz)."""
    for lower, upper in neighbours(design, structure):
        if lower.labels & upper.labels:
            continue  # a part of both legs belongs to no one crossover
        if misgrouped(design, lower, upper):
            continue  # the values fit one another
        found = (*estimates(design, lower, False), *estimates(design, upper, True))
        if len(found) < 3 or any(estimate.label in told for estimate in found):
            continue
        middle = middle_hz(found)
        worst = max(found, key=lambda estimate: abs(log10(estimate.freq_hz / middle)))
        off = abs(log10(worst.freq_hz / middle))
        if off > log10(far_off) and abs(off - round(off)) < off / 2:
            yield worst, middle
