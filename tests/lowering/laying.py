"""Walks to nets, and parts and drivers to branches between nets (LANGUAGE.md, "Wiring" and "Parts")."""

from __future__ import annotations

import itertools
import math
from collections.abc import Callable, Hashable
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from lowering.meaning import FlatDriver, FlatPart, Meaning
from lowering.reading import Path, Station, Unreadable, Walk

Net = Hashable
# Impedance in ohm at the angular frequencies w (F,), the own part of a branch.
Law = Callable[[NDArray[np.float64]], NDArray[np.complex128]]


# Of a driver of two voice coils: what each of them has, and the impedance between them.
PairLaw = Callable[[FlatDriver], tuple[Law, Law, Law]]


@dataclass
class Branch:
    """A current from one net to another through an impedance: V(start) - V(end) = Z I + what is coupled in."""

    start: Net
    end: Net
    law: Law


@dataclass
class Circuit:
    branches: dict[Hashable, Branch] = field(default_factory=dict)
    # Between two branches: in H, or as an impedance.
    mutual: list[tuple[Hashable, Hashable, float | Law]] = field(default_factory=list)
    inputs: dict[str, tuple[Net, Net]] = field(default_factory=dict)
    drivers: dict[str, tuple[Net, Net]] = field(default_factory=dict)
    source: float = 0.0
    cable: float = 0.0


def lay_out(meaning: Meaning, driver_law: Callable[[FlatDriver], Law], pair: PairLaw) -> Circuit:
    """The circuit of a design, each driver with the law that `driver_law` gives it, two voice coils with `pair`."""
    nets = _Nets(meaning)
    circuit = Circuit(source=meaning.source, cable=meaning.cable)
    for name in meaning.inputs:
        circuit.inputs[name] = (nets.of(("pad", name, "+")), nets.of(("pad", name, "-")))
    for name, driver in meaning.drivers.items():
        if driver.attributes.get("coils") == 2:
            continue
        ends = (nets.of(("pad", name, "+")), nets.of(("pad", name, "-")))
        circuit.drivers[name] = ends
        circuit.branches["driver", name] = Branch(*ends, driver_law(driver))
    for one, other in itertools.pairwise(meaning.drivers.values()):
        if one.attributes.get("coils") == 2 and one.name.endswith(".a"):
            _lay_two_coils(circuit, one, other, nets, pair)
    for part in meaning.parts.values():
        if part.fitted and part.kind != "link":
            _lay_part(circuit, part, nets)
    _couple(circuit, meaning)
    return circuit


def _lay_two_coils(circuit: Circuit, one: FlatDriver, other: FlatDriver, nets: _Nets, pair: PairLaw) -> None:
    """Two voice coils on one former; one of which no pad is wired carries nothing."""
    wired = [driver for driver in (one, other) if any(nets.touched(("pad", driver.name, sign)) for sign in "+-")]
    first, second, between = pair(one)
    for driver, law in zip((one, other), (first, first if len(wired) == 1 else second), strict=True):
        if driver in wired or not wired:
            plus, minus = (nets.of(("pad", driver.name, sign)) for sign in "+-")
            circuit.drivers[driver.name] = (plus, minus)
            circuit.branches["driver", driver.name] = Branch(plus, minus, law)
    if len(wired) != 1:
        circuit.mutual.append((("driver", one.name), ("driver", other.name), between))


DROPS = {"fuse": 0.1, "protector": 0.25}
"""Volts at the current that stands behind the name, where no resistance is stated."""


def ends_of(part: FlatPart) -> tuple[str, str]:
    """The terminals that a walk goes through."""
    return ("in", "out") if part.kind == "attenuator" else ("start", "end")


def _lay_part(circuit: Circuit, part: FlatPart, nets: _Nets) -> None:
    start, end = (nets.of((part.path, terminal)) for terminal in ends_of(part))
    value = part.value
    if value is None:
        raise Unreadable(f"{part.path} has no value")
    if part.kind == "coil":
        circuit.branches[part.path] = Branch(start, end, coil(value, part.attributes.get("dcr", 0.0)))
    elif part.kind == "capacitor":
        circuit.branches[part.path] = Branch(start, end, capacitor(value, part.attributes.get("esr", 0.0)))
    elif part.kind == "tapped coil":
        winding = tapped(value, part.attributes)
        tap = nets.of((part.path, "tap"))
        first, second = (*part.path, "a"), (*part.path, "b")
        circuit.branches[first] = Branch(start, tap, coil(winding.first, winding.first_dcr))
        circuit.branches[second] = Branch(tap, end, coil(winding.second, winding.second_dcr))
        circuit.mutual.append((first, second, winding.mutual))
    elif part.kind == "attenuator":
        k, common = 10 ** (-max(part.attributes["loss"], 0.01) / 20), nets.of((part.path, "common"))
        circuit.branches[*part.path, "series"] = Branch(start, end, resistor(value * (1 - k)))
        circuit.branches[*part.path, "shunt"] = Branch(end, common, resistor(value * k / (1 - k)))
    elif part.kind in DROPS:
        circuit.branches[part.path] = Branch(
            start, end, resistor(part.attributes.get("cold", DROPS[part.kind] / value))
        )
    else:  # a resistor, or a lamp: cold, everywhere and at every level
        circuit.branches[part.path] = Branch(start, end, resistor(value))


def _couple(circuit: Circuit, meaning: Meaning) -> None:
    for one, other, factor in meaning.couplings:
        coils = [meaning.parts[path] for path in (one, other)]
        if any(c.kind != "coil" or c.value is None for c in coils):
            raise Unreadable(f"{one} and {other} are not two coils")
        if all(c.fitted for c in coils):
            circuit.mutual.append((one, other, factor * math.sqrt((coils[0].value or 0.0) * (coils[1].value or 0.0))))


def resistor(ohm: float) -> Law:
    return lambda w: np.full(w.shape, ohm, dtype=complex)


def coil(henry: float, ohm: float) -> Law:
    return lambda w: ohm + 1j * w * henry


def capacitor(farad: float, ohm: float) -> Law:
    return lambda w: ohm + 1 / (1j * w * farad)


@dataclass
class Winding:
    """The two sections of a tapped coil: henry and ohm."""

    first: float
    second: float
    mutual: float
    first_dcr: float
    second_dcr: float


def tapped(whole: float, attributes: dict[str, float]) -> Winding:
    """The two sections from L = La + Lb + 2 k sqrt(La Lb)."""
    first = attributes["tap"]
    k = attributes.get("k", 0.98)
    root = -k * math.sqrt(first) + math.sqrt(k * k * first + whole - first)  # of Lb
    second = root * root
    dcr = attributes.get("dcr", 0.0)
    share = math.sqrt(first / whole)  # turns go with the square root of the inductance
    first_dcr = attributes.get("tap_dcr", dcr * share)
    return Winding(first, second, k * math.sqrt(first * second), first_dcr, dcr - first_dcr)


class _Nets:
    """Which points are joined: points are pads, nodes, ports and ends of parts."""

    def __init__(self, meaning: Meaning) -> None:
        self.meaning = meaning
        self.parent: dict[Hashable, Hashable] = {}
        self.said: set[Hashable] = set()
        for name in meaning.inputs[1:]:  # amplifiers share their minus
            self.join(("pad", name, "-"), ("pad", meaning.inputs[0], "-"))
        for where, walk in meaning.walks:
            self.walk(where, walk)
        for part in meaning.parts.values():
            if part.kind == "link" and part.fitted:
                self.join((part.path, "start"), (part.path, "end"))

    def of(self, point: Hashable) -> Net:
        while (up := self.parent.get(point, point)) != point:
            point = up
        return point

    def touched(self, point: Hashable) -> bool:
        return point in self.said

    def join(self, one: Hashable, other: Hashable) -> None:
        self.parent[self.of(one)] = self.of(other)

    def walk(self, where: Path, walk: Walk) -> tuple[Hashable, Hashable]:
        """Join what a walk joins; gives the points where it comes in and goes out."""
        ends = [self.station(where, station) for station in walk]
        for (_, out), (into, _) in itertools.pairwise(ends):
            self.join(out, into)
        return ends[0][0], ends[-1][1]

    def station(self, where: Path, station: Station) -> tuple[Hashable, Hashable]:
        """The points where a walk comes into a station and leaves it; one and the same for a node or a pad."""
        if station[0] == "pad":
            self.said.add(station)
            return station, station
        if station[0] == "group":
            into, out = ("group", where, id(station), 0), ("group", where, id(station), 1)
            for branch in station[1]:
                first, last = self.walk(where, branch)
                self.join(first, into)
                self.join(last, out)
            return into, out
        path: Path = where + station[1]
        if path in self.meaning.parts:
            into, out_of = ends_of(self.meaning.parts[path])
            return (path, into), (path, out_of)
        if path in self.meaning.ports:
            ports = self.meaning.ports[path]
            return ("node", (*path, ports[0])), ("node", (*path, ports[1]))
        point: Hashable
        if len(station[1]) == 2:
            if path[:-1] in self.meaning.parts:
                point = (path[:-1], path[-1])
            elif path[-1] in self.meaning.ports.get(path[:-1], ()):
                point = ("node", path)
            else:
                raise Unreadable(f"nothing is called {'.'.join(path)}")
        elif not where and station[1][0] in ("return", "ground"):
            if len(self.meaning.inputs) != 1:
                raise Unreadable("with several inputs there is no one return")
            point = ("pad", self.meaning.inputs[0], "-")
        else:
            point = ("node", path)
        return point, point
