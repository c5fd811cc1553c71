"""Networks for the solver's tests, written as short lines, and the reference tables they are held against."""

from __future__ import annotations

import csv
import tomllib
from collections.abc import Iterable
from functools import cache
from pathlib import Path

import numpy as np

from shuntwise.network.network import GROUND, Branch, Coupling, DriverPort, Element, Feed, Network

REFERENCE = Path(__file__).parents[1] / "reference"


def network(lines: str | Iterable[str], drivers: Iterable[str] = ()) -> Network:
    """A network from lines "name plus minus value": V is a feed, K couples two coils, R, L, C are parts by themselves.

    `drivers` are lines "name plus minus".
    """
    elements: list[Element] = []
    couplings: list[Coupling] = []
    feeds: list[Feed] = []
    for line in lines.strip().splitlines() if isinstance(lines, str) else lines:
        name, plus, minus, *rest = line.split()
        if name.startswith("V"):
            feeds.append(Feed(name, plus))
        elif name.startswith("K"):
            couplings.append(Coupling(name, plus, minus, float(rest[0])))
        else:
            elements.append(Element(name, name[0], plus, minus, float(rest[0]), name))  # type: ignore[arg-type]
    branches = tuple(Branch(e.name, e.plus, e.minus, e.name, (e.name,)) for e in elements)
    hung = tuple(DriverPort(*line.split()) for line in drivers)
    return Network(tuple(elements), tuple(couplings), tuple(feeds), hung, branches)


def driver_lines(name: str, node: str, re: float, le: float, fs: float, qms: float, qes: float) -> list[str]:
    """The lumped driver model from `node` to ground.

    A. N. Thiele, Loudspeakers in vented boxes, J. Audio Eng. Soc. 19(5), 1971; R. H. Small, Direct-radiator
    loudspeaker system analysis, J. Audio Eng. Soc. 20(5), 1972 (citations from memory): Re, Le, and in parallel
    Res = Re Qms/Qes, Lces = Re/(2 pi fs Qes), Cmes = Qes/(2 pi fs Re).
    """
    omega = 2 * np.pi * fs
    return [
        f"R{name}e {node} {name}a {re!r}",
        f"L{name}e {name}a {name}b {le!r}",
        f"R{name}s {name}b {GROUND} {re * qms / qes!r}",
        f"L{name}s {name}b {GROUND} {re / (omega * qes)!r}",
        f"C{name}s {name}b {GROUND} {qes / (omega * re)!r}",
    ]


@cache
def table(name: str) -> list[dict[str, str]]:
    """A reference table, one dict a row."""
    with (REFERENCE / name).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


@cache
def check_circuits() -> dict[str, Network]:
    """The check circuits N1 to N6."""
    text = tomllib.loads((REFERENCE / "10_networks.toml").read_text(encoding="utf-8"))
    return {name: network(entry["netlist"]) for name, entry in text.items() if name.startswith("N")}


def ladder(sections: int) -> Network:
    """Alternating series coils and shunt capacitors, each coil with resistance: three elements a section."""
    lines = ["V1 n0 0"]
    for i in range(sections):
        lines += [f"L{i} n{i} m{i} 1e-5", f"R{i} m{i} n{i + 1} 0.01", f"C{i} n{i + 1} 0 1e-7"]
    return network([*lines, f"Rload n{sections} 0 8"], [f"load n{sections} 0"])
