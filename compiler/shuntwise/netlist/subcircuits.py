"""A network as SPICE subcircuits: the crossover as one and each driver as one, to be dropped into a larger simulation.

In: a `Network`. Out: text that ngspice and gnucap take among other text, without a source, a sweep or an output. It
refuses to know amplifiers: their resistance and cable are left to who simulates them.

Pins are named as nodes of a netlist are, since they become such in the example of use; nodes inside are shorter,
since ngspice prints them as `x1.NODE`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

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
    bodies = _bodies(network, drivers)
    models = [names.model(f"driver {_called(body)}") for body in bodies]
    pin = {node: names.node(RETURN if node == GROUND else node) for node in dict.fromkeys((*pads, GROUND, *ends))}
    spell = Speller(inside, names, pin, before=_BEFORE)

    lines = [f"* shuntwise: {note(design_title)}", *_USE, *(f"* note: remark: {note(text)}" for text in notes)]
    lines += [
        f'* note: input "{note(feed.name)}" is pin {pin[node]} against {pin[GROUND]}'
        for feed, node in zip(network.feeds, pads, strict=True)
    ]
    lines += [
        f'* note: driver "{note(d.name)}" is {model}, between {pin[d.plus]} and {pin[d.minus]}'
        for body, model in zip(bodies, models, strict=True)
        for d in body
    ]
    lines += ["* note: for example:", f"* x1 {' '.join(pin.values())} {name}"]
    for at, (body, model) in enumerate(zip(bodies, models, strict=True), start=2):
        lines.append(f"* x{at} {' '.join(pin[node] for d in body for node in (d.plus, d.minus))} {model}")
    lines += ["*", f".subckt {name} {' '.join(pin.values())}", *_body(inside, spell), f".ends {name}"]
    for body, model in zip(bodies, models, strict=True):
        lines += ["*", *_driver(network, body, model)]
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


def _bodies(network: Network, drivers: Sequence[DriverPort]) -> list[tuple[DriverPort, ...]]:
    """The drivers, those together that a field couples: the voice coils on one former."""
    owner = {element.name: element.part for element in network.elements}
    coupled = [{owner[coupling.first], owner[coupling.second]} for coupling in network.couplings]
    found: list[tuple[DriverPort, ...]] = []
    for driver in drivers:
        at = next((at for at, body in enumerate(found) if {body[0].name, driver.name} in coupled), None)
        if at is None:
            found.append((driver,))
        else:
            found[at] += (driver,)
    return found


def _called(body: Sequence[DriverPort]) -> str:
    """A driver's name; of several voice coils what their names have in common."""
    return body[0].name if len(body) == 1 else body[0].name.rpartition(".")[0]


def _driver(network: Network, body: Sequence[DriverPort], model: str) -> Iterator[str]:
    """A driver by itself. Its pads are named apart even where the crossover joins two of them."""
    parts, names, pins, at = {driver.name for driver in body}, NameTable(), {}, {}
    for driver in body:
        coil = f"{driver.name.rpartition('.')[2]} " if len(body) > 1 else ""
        for node, sign, pad in ((driver.plus, "+", "plus"), (driver.minus, "-", "minus")):
            at[driver.name, node] = point = f"{driver.name}{sign}"
            pins[point] = names.node(coil + pad)
    elements = tuple(
        replace(element, plus=at.get((element.part, element.plus), element.plus),
                minus=at.get((element.part, element.minus), element.minus))
        for element in network.elements if element.part in parts
    )  # fmt: skip
    inside = Network(elements, tuple(c for c in network.couplings if network.element[c.first].part in parts))
    spell = Speller(inside, names, pins, before=_BEFORE)
    yield f".subckt {model} {' '.join(pins.values())}"
    yield from _body(inside, spell)
    yield f".ends {model}"
