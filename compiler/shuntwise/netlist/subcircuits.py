"""A network as SPICE subcircuits: the crossover as one and each driver as one, to be dropped into a larger simulation.

In: a `Network`. Out: text that ngspice and gnucap take among other text, without a source, a sweep or an output. It
refuses to know amplifiers: their resistance and cable are left to who simulates them.

Pins are named as nodes of a netlist are, since they become such in the example of use; nodes inside are shorter,
since ngspice prints them as `x1.NODE`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from shuntwise.netlist.names import NameTable, note
from shuntwise.netlist.spice import Speller
from shuntwise.network.network import GROUND, DriverPort, Element, Feed, Network

RETURN = "return"
_BEFORE = len("x1.")

_USE = (
    "* note: subcircuits for a larger simulation: one of the crossover, one of each driver. Take them in by",
    "* note: .include and use them as in the example below; sources, a sweep and what is printed are yours",
)


def subcircuits(network: Network, *, design_title: str, notes: Sequence[str] = ()) -> str:
    """The text; it ends with a line end. Pins of the crossover are its inputs, the return, and what drivers hang on."""
    names = NameTable()
    drivers = [driver for driver in network.drivers if driver.plus != driver.minus]
    owners = {driver.name for driver in network.drivers}
    box = tuple(e for e in network.elements if e.part not in owners and not _is_amplifier(network, e))
    inside = Network(box, tuple(c for c in network.couplings if c.first in {e.name for e in box}))
    pads = [_box_node(network, feed) for feed in network.feeds]
    ends = [node for driver in drivers for node in (driver.plus, driver.minus)]
    name = names.model("crossover")
    models = {driver.name: names.model(f"driver {driver.name}") for driver in drivers}
    pin = {node: names.node(RETURN if node == GROUND else node) for node in dict.fromkeys((*pads, GROUND, *ends))}
    spell = Speller(inside, names, pin, before=_BEFORE)

    lines = [f"* shuntwise: {note(design_title)}", *_USE, *(f"* note: remark: {note(text)}" for text in notes)]
    lines += [
        f'* note: input "{note(feed.name)}" is pin {pin[node]} against {pin[GROUND]}'
        for feed, node in zip(network.feeds, pads, strict=True)
    ]
    lines += [
        f'* note: driver "{note(d.name)}" is {models[d.name]}, between {pin[d.plus]} and {pin[d.minus]}'
        for d in drivers
    ]
    lines += ["* note: for example:", f"* x1 {' '.join(pin.values())} {name}"]
    lines += [f"* x{at} {pin[d.plus]} {pin[d.minus]} {models[d.name]}" for at, d in enumerate(drivers, start=2)]
    lines += ["*", f".subckt {name} {' '.join(pin.values())}", *_body(inside, spell), f".ends {name}"]
    for driver in drivers:
        lines += ["*", *_driver(network, driver, models[driver.name])]
    return "\n".join(lines) + "\n"


def _is_amplifier(network: Network, element: Element) -> bool:
    return element.part in {feed.name for feed in network.feeds} and element.quantity in ("source", "cable")


def _box_node(network: Network, feed: Feed) -> str:
    """The node of an input's plus pad, behind the amplifier's resistance and the cable."""
    cable = next((e for e in network.elements if e.part == feed.name and e.quantity == "cable"), None)
    return cable.minus if cable is not None else network.posts(feed)


def _body(network: Network, spell: Speller) -> Iterator[str]:
    yield from spell.notes()
    yield from map(spell.element, network.elements)
    yield from map(spell.coupling, network.couplings)


def _driver(network: Network, driver: DriverPort, model: str) -> Iterator[str]:
    inside = Network(tuple(element for element in network.elements if element.part == driver.name))
    names = NameTable()
    pin = {driver.plus: names.node("plus"), driver.minus: names.node("minus")}
    spell = Speller(inside, names, pin, before=_BEFORE)
    yield f".subckt {model} {' '.join(pin.values())}"
    yield from _body(inside, spell)
    yield f".ends {model}"
