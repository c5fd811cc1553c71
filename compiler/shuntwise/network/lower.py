"""Circuit -> Network: trade terms turned into ideal elements.

In: a sound circuit. Out: a `Network`, and what stands in the way if there is none. A part becomes what
`part_model` makes of it, a driver what `driver_model` does. What hangs on no input, by wire or by
coupled coils, is left out: it carries no current, and the wiring checks have named it. So is, as a driver to read
results at, one through which no current can flow.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from shuntwise.graph.circuit import Circuit, Edge
from shuntwise.graph.currents import live_edges
from shuntwise.graph.topology import DisjointSets, pair_links, reached
from shuntwise.model.design import Driver
from shuntwise.model.kinds import KINDS
from shuntwise.network.driver_model import driver_model, lacks
from shuntwise.network.ideal import Ideal, Stage
from shuntwise.network.network import GROUND, Branch, Coupling, DriverPort, Element, Feed, FitReport, Network
from shuntwise.network.part_model import part_model

ONE_MOTION = 0.99999
"""Coupling of the motional coils of two voice coils on one former. With 1 simulators divide by zero, and nearer to it
gnucap loses digits; what leaks is a hundred-thousandth of Lces, some tenths of a microhenry."""


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
        if part.value is None and KINDS[part.kind].value is not None:
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


@dataclass(frozen=True)
class _Coupled:
    """A coupling, and the keys of the edges that it is between."""

    edges: tuple[str, str]
    coupling: Coupling


class _Lowering:
    def __init__(self, circuit: Circuit) -> None:
        self.circuit = circuit
        grounds = {circuit.pad(pair.name, "-") for pair in circuit.design.feeds}
        self.node_of = {net: GROUND if net in grounds else net for net in circuit.nets}
        self.elements: list[Element] = []
        self.branches: list[Branch] = []
        self.fits: list[FitReport] = []
        self.models = {p.label: part_model(p) for p in circuit.fitted_parts if not KINDS[p.kind].wire}
        self.couplings = tuple(self._couplings())
        self.live = self._live()
        self.excited = self._excited()

    def _couplings(self) -> Iterator[_Coupled]:
        """Between sections of one part, and between the coils that the author couples."""
        edges = self.circuit.edges
        sections = {(edge.owner, edge.section): edge for edge in edges.values()}
        for label, model in self.models.items():
            for number, (first, second, k) in enumerate(model.couplings, 1):
                name = f"{label}.k" if number == 1 else f"{label}.k{number}"
                yield self._coupled(name, sections[label, first], sections[label, second], k)
        for driver in self.circuit.design.drivers.values():
            if driver.other is not None and edges.keys() >= {driver.name, driver.other}:
                yield from self._one_former(edges[driver.other], edges[driver.name], driver)
        for declared in self.circuit.design.couplings:
            coils = declared.first, declared.second
            if declared.k is not None and declared.k.value != 0 and edges.keys() >= set(coils):
                yield self._coupled(" and ".join(coils), edges[coils[0]], edges[coils[1]], declared.k.value)

    def _one_former(self, first: Edge, second: Edge, driver: Driver) -> Iterator[_Coupled]:
        """Two voice coils that move together: they share the motional impedance, and the field of their inductances."""
        quantities = {ideal.quantity for stage in driver_model(driver).stages for chain in stage for ideal in chain}
        for quantity, k in (("lces", ONE_MOTION), ("le", driver.coils_k)):
            if quantity in quantities:
                ends = f"{first.key}.{quantity}", f"{second.key}.{quantity}"
                name = f"{driver.coil_of}.{quantity}"
                yield _Coupled((first.key, second.key), Coupling(name, *ends, k))

    def _coupled(self, name: str, first: Edge, second: Edge, k: float) -> _Coupled:
        return _Coupled((first.key, second.key), Coupling(name, self._inductor(first), self._inductor(second), k))

    def _inductor(self, edge: Edge) -> str:
        """The name of the inductor in a section of a part. Raises ValueError if there is none."""
        for ideal in self.models[edge.owner].sections[edge.section]:
            if ideal.kind == "L":
                return self._name(edge, ideal)
        raise ValueError(f"the model of `{edge.owner}` has no inductor to be coupled")

    def _name(self, edge: Edge, ideal: Ideal) -> str:
        """What stands for the value of a part is called as the edge is; else the quantity is put behind."""
        part = self.circuit.design.parts[edge.owner] if edge.kind == "part" else None
        value = KINDS[part.kind].value if part is not None else None
        return edge.key if value is not None and value.name == ideal.quantity else f"{edge.key}.{ideal.quantity}"

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
        coupled = [(edges[a].plus, edges[b].plus) for a, b in (coupling.edges for coupling in self.couplings)]
        while held := next((b if a in live else a for a, b in coupled if (a in live) != (b in live)), None):
            self.node_of[held] = GROUND
            live |= reached(near, held)
        return live

    def network(self) -> Network:
        design = self.circuit.design
        for edge in self.circuit.edges.values():
            if edge.kind != "feed" and edge.plus in self.live and (not self.shorted(edge) or edge.key in self.excited):
                self.edge(edge)
        feeds = tuple(self.feed(pair.name) for pair in design.feeds)
        present = {element.name for element in self.elements}
        coupled = [coupling.edges for coupling in self.couplings]
        carrying = live_edges(self.circuit, coupled, self.node_of)
        drivers = tuple(
            DriverPort(name, *(self.node_of[self.circuit.pad(name, sign)] for sign in "+-"))
            for name in design.drivers
            if name in carrying
        )
        return Network(
            tuple(self.elements),
            tuple(c.coupling for c in self.couplings if c.coupling.first in present),
            feeds,
            drivers,
            tuple(self.branches),
            design.title or "",
            tuple(self.fits),
        )

    def feed(self, name: str) -> Feed:
        """An input, with its amplifier's output resistance and the two conductors of the cable ahead of it."""
        amplifier, node = self.circuit.design.amplifier, self.node_of[self.circuit.pad(name, "+")]
        source, cable = ("", None) if amplifier is None else (f"{name}.source", amplifier.cable)
        if cable is not None and cable.conductor_ohm:
            posts = f"posts of the amplifier of {name}"
            element = Element(f"{name}.cable", "R", posts, node, 2 * cable.conductor_ohm, name, "cable")
            self.elements.append(element)
            self.branches.append(Branch(element.name, posts, node, element.name, (element.name,)))
            node = posts
        output = amplifier.quantities.get("source") if amplifier is not None else None
        if output is None:
            return Feed(name, node)
        inside = f"inside the amplifier of {name}"
        self.elements.append(Element(source, "R", inside, node, output.value, name, "source"))
        return Feed(name, inside, source)

    def shorted(self, edge: Edge) -> bool:
        return self.node_of[edge.plus] == self.node_of[edge.minus]

    def _excited(self) -> set[str]:
        """Coils that are coupled, directly or through others, with one that can have a voltage.

        Among them a shorted winding has none, but a current that the others feel; elsewhere it has neither.
        """
        groups = DisjointSets(key for coupling in self.couplings for key in coupling.edges)
        for coupling in self.couplings:
            groups.union(*coupling.edges)
        edges = self.circuit.edges
        return {coil for group in groups.sets() if not all(self.shorted(edges[c]) for c in group) for coil in group}

    def edge(self, edge: Edge) -> None:
        if edge.kind == "driver":
            model = driver_model(self.circuit.design.drivers[edge.owner])
            self.lay(edge, model.stages)
            if model.fit is not None:
                self.fits.append(model.fit)
        else:
            self.lay(edge, tuple(((ideal,),) for ideal in self.models[edge.owner].sections[edge.section]))

    def lay(self, edge: Edge, stages: tuple[Stage, ...]) -> None:
        """Stages in series from the edge's plus to its minus, the chains of each stage side by side."""
        plus, minus = self.node_of[edge.plus], self.node_of[edge.minus]
        names: list[str] = []
        node = plus
        for index, stage in enumerate(stages, 1):
            following = minus if index == len(stages) else f"inside {self._name(edge, stage[0][-1])}"
            for chain in stage:
                at = node
                for ideal in chain:
                    name = self._name(edge, ideal)
                    to = following if ideal is chain[-1] else f"inside {name}"
                    self.elements.append(
                        Element(name, ideal.kind, at, to, ideal.value, edge.owner, ideal.quantity, ideal.copper)
                    )
                    names.append(name)
                    at = to
            node = following
        self.branches.append(Branch(edge.key, plus, minus, names[0], tuple(names), edge.terminals))
