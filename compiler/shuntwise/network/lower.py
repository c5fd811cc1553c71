"""Circuit -> Network: trade terms turned into ideal elements.

In: a sound circuit. Out: a `Network`, and what stands in the way if there is none. A coil becomes its
inductance and its DC resistance, a driver what `driver_model` makes of it. What hangs on no input, by wire or by
coupled coils, is left out: it carries no current, and the wiring checks have named it. So is, as a driver to read
results at, one through which no current can flow.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import sqrt

from shuntwise.graph.circuit import Circuit, Edge
from shuntwise.graph.currents import live_edges
from shuntwise.graph.topology import DisjointSets, pair_links, reached
from shuntwise.model.design import Driver, Part
from shuntwise.network.driver_model import driver_model, lacks
from shuntwise.network.network import GROUND, Branch, Coupling, Element, ElementKind, Feed, FitReport, Network
from shuntwise.network.network import Driver as DriverPort

TIGHT = 0.98
"""Coupling of the two sections of a tapped coil where none is given (common practice, no source)."""


@dataclass(frozen=True)
class Unlowered:
    """Why there is no network: what is lacking, in words that complete "not checked: ...", and about what."""

    lacks: str
    subjects: tuple[str, ...] = ()


def lower(circuit: Circuit) -> Network | Unlowered:
    """Turn the circuit into ideal elements. Every input's minus becomes ground."""
    obstacle = _obstacle(circuit)
    if obstacle is not None:
        return obstacle
    lowering = _Lowering(circuit)
    return lowering.network()


def _obstacle(circuit: Circuit) -> Unlowered | None:
    design = circuit.design
    if design.lost_wiring or circuit.doubtful:
        return Unlowered("wiring that could be read whole")
    for part in circuit.fitted_parts:
        if part.value is None and part.kind != "link":
            return Unlowered(f"a sound value of `{part.label}`", (part.label,))
    for driver in design.drivers.values():
        if lacking := lacks(driver):
            return Unlowered(lacking, (driver.name,))
    if any(coupling.k is None for coupling in design.couplings):
        return Unlowered("a sound coupling factor")
    grounds = {circuit.pad(pair.name, "-") for pair in design.feeds}
    fed: dict[str, str] = {}
    for pair in design.feeds:
        net = circuit.pad(pair.name, "+")
        if net in grounds:
            return Unlowered(f"an input `{pair.name}` that is not shorted", (pair.name,))
        if net in fed:
            return Unlowered(f"inputs `{fed[net]}` and `{pair.name}` that are not joined", (pair.name,))
        fed[net] = pair.name
    return None


def tapped_sections(part: Part) -> tuple[float, float, float]:
    """The two sections' inductances (H) and their coupling, from the whole and the tapped inductance.

    L = La + Lb + 2 k sqrt(La Lb), solved for sqrt(Lb): two coils in series aiding.
    """
    assert part.value is not None
    whole, tap, k = part.value.value, part.get("tap"), part.get("k", TIGHT)
    root = -k * sqrt(tap) + sqrt(whole - tap * (1 - k * k))
    return tap, root * root, k


class _Lowering:
    def __init__(self, circuit: Circuit) -> None:
        self.circuit = circuit
        grounds = {circuit.pad(pair.name, "-") for pair in circuit.design.feeds}
        self.node_of = {net: GROUND if net in grounds else net for net in circuit.nets}
        self.elements: list[Element] = []
        self.branches: list[Branch] = []
        self.fits: list[FitReport] = []
        self.couplings = tuple(self._couplings())
        self.live = self._live()
        self.excited = self._excited()

    def _couplings(self) -> Iterator[Coupling]:
        """Between fitted coils and sections of tapped coils; an element of a coil is called as its edge is."""
        for part in self.circuit.fitted_parts:
            if part.kind == "tapped coil":
                k = tapped_sections(part)[2]
                yield Coupling(f"{part.label}.k", f"{part.label}.lower", f"{part.label}.upper", k)
        for declared in self.circuit.design.couplings:
            coils = declared.first, declared.second
            if declared.k is not None and declared.k.value != 0 and self.circuit.edges.keys() >= set(coils):
                yield Coupling(" and ".join(coils), *coils, declared.k.value)

    def _live(self) -> set[str]:
        """Nets with a path to an input, along parts, drivers, inputs, and from one coupled coil to another.

        A piece that only a field reaches is held at one point, which becomes ground: what stands between two
        points of it does not depend on which.
        """
        edges = self.circuit.edges
        near = pair_links((edge.plus, edge.minus) for edge in edges.values())
        live: set[str] = set()
        for pair in self.circuit.design.feeds:
            ground = self.circuit.pad(pair.name, "-")
            if ground not in live:
                live |= reached(near, ground)
        coupled = [(edges[coupling.first].plus, edges[coupling.second].plus) for coupling in self.couplings]
        while held := next((b if a in live else a for a, b in coupled if (a in live) != (b in live)), None):
            self.node_of[held] = GROUND
            live |= reached(near, held)
        return live

    def network(self) -> Network:
        design = self.circuit.design
        for edge in self.circuit.edges.values():
            if edge.kind != "feed" and edge.plus in self.live and (not self.shorted(edge) or edge.key in self.excited):
                self.edge(edge)
        present = {element.name for element in self.elements}
        feeds = tuple(Feed(pair.name, self.node_of[self.circuit.pad(pair.name, "+")]) for pair in design.feeds)
        coupled = [(coupling.first, coupling.second) for coupling in self.couplings]
        carrying = live_edges(self.circuit, coupled, self.node_of)
        drivers = tuple(
            DriverPort(name, *(self.node_of[self.circuit.pad(name, sign)] for sign in "+-"))
            for name in design.drivers
            if name in carrying
        )
        return Network(
            tuple(self.elements),
            tuple(coupling for coupling in self.couplings if coupling.first in present),
            feeds,
            drivers,
            tuple(self.branches),
            design.title or "",
            tuple(self.fits),
        )

    def shorted(self, edge: Edge) -> bool:
        return self.node_of[edge.plus] == self.node_of[edge.minus]

    def _excited(self) -> set[str]:
        """Coils that are coupled, directly or through others, with one that can have a voltage.

        Among them a shorted winding has none, but a current that the others feel; elsewhere it has neither.
        """
        groups = DisjointSets(coil for c in self.couplings for coil in (c.first, c.second))
        for coupling in self.couplings:
            groups.union(coupling.first, coupling.second)
        edges = self.circuit.edges
        return {coil for group in groups.sets() if not all(self.shorted(edges[c]) for c in group) for coil in group}

    def edge(self, edge: Edge) -> None:
        if edge.kind == "driver":
            self.driver(self.circuit.design.drivers[edge.owner], edge)
            return
        part = self.circuit.design.parts[edge.owner]
        assert part.value is not None
        match part.kind:
            case "coil":
                self.series(edge, [("L", part.label, part.value.value), ("R", f"{part.label}.dcr", part.get("dcr"))])
            case "capacitor":
                self.series(edge, [("C", part.label, part.value.value), ("R", f"{part.label}.esr", part.get("esr"))])
            case "tapped coil":
                self.section(part, edge)
            case _:
                self.series(edge, [("R", part.label, part.value.value)])

    def section(self, part: Part, edge: Edge) -> None:
        lower_l, upper_l, _ = tapped_sections(part)
        dcr = part.get("dcr")
        lower_dcr = part.get("tap_dcr", dcr * sqrt(lower_l / (part.value.value if part.value else 1)))
        lower_part = edge.key.endswith(".lower")
        inductance, resistance = (lower_l, lower_dcr) if lower_part else (upper_l, dcr - lower_dcr)
        self.series(edge, [("L", edge.key, inductance), ("R", f"{edge.key}.dcr", max(resistance, 0.0))])

    def driver(self, driver: Driver, edge: Edge) -> None:
        """The stages of the driver's model in series, the chains of each stage side by side."""
        model = driver_model(driver)
        name, plus, minus = driver.name, self.node_of[edge.plus], self.node_of[edge.minus]
        names: list[str] = []
        node = plus
        for index, stage in enumerate(model.stages, 1):
            following = minus if index == len(model.stages) else f"inside {name}.{stage[0][-1].suffix}"
            for chain in stage:
                at = node
                for link in chain:
                    element = f"{name}.{link.suffix}"
                    to = following if link is chain[-1] else f"inside {element}"
                    self.elements.append(Element(element, link.kind, at, to, link.value, name))
                    names.append(element)
                    at = to
            node = following
        self.branches.append(Branch(edge.key, plus, minus, names[0], tuple(names)))
        if model.fit is not None:
            self.fits.append(model.fit)

    def series(self, edge: Edge, chain: list[tuple[ElementKind, str, float]]) -> None:
        """Elements in series from the edge's plus to its minus; zero resistances are left out."""
        chain = [link for link in chain if link[2] > 0]
        end = self.node_of[edge.minus]
        node = self.node_of[edge.plus]
        for index, (kind, name, value) in enumerate(chain):
            following = end if index == len(chain) - 1 else f"inside {name}"
            self.elements.append(Element(name, kind, node, following, value, edge.owner))
            node = following
        names = tuple(name for _, name, _ in chain)
        self.branches.append(Branch(edge.key, self.node_of[edge.plus], end, names[0], names))
