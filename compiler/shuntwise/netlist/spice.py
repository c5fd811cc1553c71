"""A network as a plain SPICE netlist.

In: a `Network` and a `Sweep`. Out: a `Netlist`: text that ngspice and gnucap run unchanged, and the names it
uses. It refuses to know what a coil or a driver is made of (the network says) and who will run the text.

The dialect is what both simulators agree on: R, L, C, K, V, I and E, flat, lower case, values as plain
numbers, comments on lines of their own. PySpice's element classes spell the element lines; they check no
name and no title, so those are made safe by `names` before, and the lines around them are written here.

Neither simulator prints expressions in batch mode, so what is not a node voltage is made into one:

- The voltage of a driver that hangs between two nodes is repeated against ground by a meter, a
  voltage-controlled voltage source of gain 1, which draws no current. ngspice would print `vm(a,b)`, but
  gnucap reads that as `vm(a) vm(b)`. Meters of other elements were tried and are worse: an ideal 1:1
  transformer spoils ngspice's pivots (errors of 1 % and more), and a copy of the circuit with the driver's
  minus pad as node 0 makes the input's source float, which costs gnucap all its digits.
- The impedance at an input is the voltage there when 1 A is driven into it and the other inputs are shorted,
  in a copy of the circuit that shares only ground with it.

What is printed holds 9 digits or more in both: enough to compare with a solver, and the most that stand under their
headings in ngspice. How names keep the headings apart is told in `names`.
"""

from __future__ import annotations

import logging
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType

from shuntwise.netlist.names import NameTable, note
from shuntwise.network.network import GROUND, Branch, Coupling, DriverPort, Element, Feed, Network
from shuntwise.network.sweep import Sweep

CIRCUIT_ENDS = "* note: the circuit ends here; what follows only measures"
"""The line before the first meter. No author's text can produce it: all of it follows a longer prefix."""

OPTIONS = (
    "* note: the next line is a command to ngspice: decimals and phases of what `.print` writes",
    "*# set numdgt=9 units=degrees",
    ".options short=1e-15 numdgt=9",
    "* note: the next row belongs to the options in ngspice (do without a direct-current solution, which",
    "* note: capacitors in series and loops of coils do not have), and to this comment in gnucap",
    "+ noopac",
)
"""Taken without a complaint by both. `short` is the resistance of gnucap's ideal sources, else 10 microohm.

`numdgt` among the options gives gnucap 9 digits. ngspice 39 overlooks it there (7 digits, one less behind a minus
sign, whatever it says), but obeys it as a command: 10 and 9. `*#` makes a line one, and is a comment to all others.
Phases are in degrees then, as gnucap's are without being told. Nothing of an author's may stand on such a line.

Without `noopac` ngspice 39 crashed on 3 of 300 random networks and warned on 224, although the answers that
it gave were right. gnucap complains of the word, so it is put where only ngspice finds it: both join a row
that starts with `+` to the line before, but only ngspice skips comments in doing so.
"""

_PROBES_TO_A_ROW = 4


@dataclass(frozen=True)
class Netlist:
    """A netlist and its names.

    `node_names` and the three beside it lead from the author's names to those of the text, `author_nodes`
    and `author_elements` back. `driver_nodes` and `impedance_nodes` give, by driver and by input, the node of
    the text whose voltage is the driver's voltage or the input's impedance in ohm; a driver with both pads on
    one node has none.
    """

    text: str
    sweep: Sweep
    node_names: Mapping[str, str]
    element_names: Mapping[str, str]
    coupling_names: Mapping[str, str]
    feed_names: Mapping[str, str]
    driver_nodes: Mapping[str, str]
    impedance_nodes: Mapping[str, str]

    @property
    def author_nodes(self) -> dict[str, str]:
        return {spice: author for author, spice in self.node_names.items()}

    @property
    def author_elements(self) -> dict[str, str]:
        return {spice: author for author, spice in self.element_names.items()}


def emit(network: Network, sweep: Sweep, *, design_title: str, notes: Sequence[str] = ()) -> Netlist:
    """The netlist of a network, with a sweep and the outputs that a builder reads.

    `ngspice -b FILE` prints each driver's voltage in volt (1 V at every input) and each input's impedance
    in ohm, magnitude and phase. `notes` are further comment lines, for example the name of a variant.
    """
    names = NameTable()
    spell = Speller(network, names)
    nodes = spell.nodes

    lines = [f"* shuntwise: {note(design_title)}"]
    lines += [f"* note: remark: {note(text)}" for text in notes]
    lines += spell.notes()
    lines += _circuit(network, spell)

    lines += ["*", CIRCUIT_ENDS]
    driver_nodes: dict[str, str] = {}
    for driver in network.drivers:
        if driver.plus == driver.minus:
            continue
        if driver.minus == GROUND:
            driver_nodes[driver.name] = nodes[driver.plus]
            continue
        meter = driver_nodes[driver.name] = names.node(driver.name, "d_")
        lines += ["*", f'* note: the voltage at {meter} is that across driver "{note(driver.name)}"']
        lines += [spell.meter(driver, names.element("E", driver.name), meter)]
    impedance_nodes: dict[str, str] = {}
    for number, feed in enumerate(network.feeds, start=1):
        at = impedance_nodes[feed.name] = names.node(feed.name, "z_")
        prefix = "z_" if len(network.feeds) == 1 else f"z{number}_"
        copied = {GROUND: GROUND, network.posts(feed): at}
        lines += _copy(network, feed, Speller(network, names, copied, prefix, feed))

    lines += ["*", *OPTIONS, "*", *_outputs(network, driver_nodes, impedance_nodes)]
    lines += [f".ac dec {sweep.points_per_decade} {sweep.freq_from_hz!r} {sweep.freq_to_hz!r}", ".end"]
    text = "\n".join(lines) + "\n"
    return Netlist(text, sweep, nodes, spell.elements, spell.couplings, spell.feeds, driver_nodes, impedance_nodes)


def _circuit(network: Network, spell: Speller) -> Iterator[str]:
    """The circuit itself, part by part, each under a comment that says whose it is."""
    for feed in network.feeds:
        yield "*"
        yield f'* note: input "{note(feed.name)}", 1 V between "{note(feed.node)}" and return'
        yield spell.voltage(feed, 1.0)
    parts: dict[str, list[Element]] = {}
    for element in network.elements:
        parts.setdefault(element.part, []).append(element)
    branch_of = {name: branch for branch in network.branches for name in branch.elements}
    pads = {driver.name: driver for driver in network.drivers}
    for part, elements in parts.items():
        yield "*"
        yield f'* note: part "{note(part)}"'
        found: list[Branch | DriverPort] = [branch_of[e.name] for e in elements if e.name in branch_of]
        found += [pads[part]] if part in pads else []
        for plus, minus in dict.fromkeys((ends.plus, ends.minus) for ends in found):
            yield f'* note: from "{note(plus)}" to "{note(minus)}"'
        for element in elements:
            yield spell.element(element)
    if network.couplings:
        yield "*"
        yield "* note: coils that share their field; the first node of each is its dotted end"
    for coupling in network.couplings:
        yield spell.coupling(coupling)


def _copy(network: Network, measured: Feed, spell: Speller) -> Iterator[str]:
    """A copy of the circuit with 1 A into the `measured` input and the others shorted."""
    yield "*"
    yield "* note: 1 A is driven into the input of this copy, other inputs are shorted: the voltage"
    yield f'* note: at {spell.nodes[network.posts(measured)]} is the impedance of input "{note(measured.name)}" in ohm'
    for feed in network.feeds:
        yield spell.current(feed, network.posts(feed)) if feed is measured else spell.voltage(feed, 0.0)
    for element in network.elements:
        if element.name != measured.source:  # what is seen from the posts
            yield spell.element(element)
    for coupling in network.couplings:
        yield spell.coupling(coupling)


def _outputs(network: Network, driver_nodes: Mapping[str, str], impedance_nodes: Mapping[str, str]) -> Iterator[str]:
    """The print line. There is one only, over several rows: gnucap keeps the last and forgets the others."""
    yield "* note: vm is a magnitude, vp a phase in degrees"
    for driver in network.drivers:
        node = driver_nodes.get(driver.name)
        found = f"voltage at {node}" if node else "no voltage: both pads are on one node"
        yield f'* note: driver "{note(driver.name)}": {found}'
    for feed in network.feeds:
        node = impedance_nodes[feed.name]
        yield f'* note: input "{note(feed.name)}": impedance in ohm as voltage at {node}'
    nodes = list(dict.fromkeys((*driver_nodes.values(), *impedance_nodes.values())))
    for start in range(0, len(nodes), _PROBES_TO_A_ROW):
        probes = " ".join(f"vm({node}) vp({node})" for node in nodes[start : start + _PROBES_TO_A_ROW])
        yield f"{'+' if start else '.print ac'} {probes}"


class Speller:
    """Element lines of one copy of the network, under names of its own, by PySpice, in lower case.

    PySpice's classes put the letter of the kind before the name that they get. Some nodes have their names already:
    `given`. `measured` is the input whose impedance a copy is for. `before` is as in `NameTable.node`.
    """

    def __init__(
        self,
        network: Network,
        names: NameTable,
        given: Mapping[str, str] = MappingProxyType({GROUND: GROUND}),
        prefix: str = "",
        measured: Feed | None = None,
        before: int = 0,
    ) -> None:
        # The classes by name: the shortcuts on `Circuit` are not there yet if another thread is importing.
        from PySpice.Spice import BasicElement
        from PySpice.Spice.Netlist import Circuit

        logging.getLogger("PySpice").setLevel(logging.CRITICAL)
        self._circuit = Circuit("")
        self._class = {
            "R": BasicElement.Resistor,
            "L": BasicElement.Inductor,
            "C": BasicElement.Capacitor,
            "K": BasicElement.CoupledInductor,
            "V": BasicElement.VoltageSource,
            "I": BasicElement.CurrentSource,
            "E": BasicElement.VoltageControlledVoltageSource,
        }
        self.elements = {e.name: names.element(e.kind, e.name, prefix) for e in network.elements}
        self.couplings = {c.name: names.element("K", c.name, prefix) for c in network.couplings}
        self.feeds = {f.name: names.element("I" if f is measured else "V", f.name, prefix) for f in network.feeds}
        self.nodes = {**given} | names.nodes((node for node in network.nodes if node not in given), prefix, before)

    def notes(self) -> Iterator[str]:
        """Comments that say which author's node is meant by a name that is not the author's."""
        for node, spice in self.nodes.items():
            if spice != node and node != GROUND:
                yield f'* note: node {spice} is "{note(node)}"'

    def _line(self, kind: str, name: str, *words: str | float) -> str:
        return str(self._class[kind](self._circuit, name[1:], *words)).lower()

    def element(self, element: Element) -> str:
        ends = self.nodes[element.plus], self.nodes[element.minus]
        return self._line(element.kind, self.elements[element.name], *ends, float(element.value))

    def coupling(self, coupling: Coupling) -> str:
        coils = ("L" + self.elements[end][1:] for end in (coupling.first, coupling.second))
        return self._line("K", self.couplings[coupling.name], *coils, float(coupling.k))

    def voltage(self, feed: Feed, volt: float) -> str:
        """A source from ground to the feed's node. `dc 0` spares a note from ngspice."""
        return self._line("V", self.feeds[feed.name], self.nodes[feed.node], GROUND, f"dc 0 ac {volt!r}")

    def current(self, feed: Feed, node: str) -> str:
        """A source of 1 A into a node: through a source current flows from its first node."""
        return self._line("I", self.feeds[feed.name], GROUND, self.nodes[node], "dc 0 ac 1.0")

    def meter(self, driver: DriverPort, name: str, node: str) -> str:
        """A source that repeats the driver's voltage between `node` and ground."""
        return self._line("E", name, node, GROUND, self.nodes[driver.plus], self.nodes[driver.minus], 1.0)
