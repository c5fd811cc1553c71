"""What the pins of the box's connectors carry, in this variant.

In: a circuit. Out: a line for each pin, for tables and for reading aloud. Refuses to judge it: rules do.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from shuntwise.diagnostics.wording import listed
from shuntwise.documents.page import Group, Table
from shuntwise.graph.circuit import Circuit
from shuntwise.model.design import Connector, Pin


@dataclass(frozen=True)
class Carried:
    """`whence` says how the pin comes to carry anything: `fed by its amplifier`, `joined to low+`."""

    connector: Connector
    pin: Pin
    whence: str


def carried(circuit: Circuit) -> Iterator[Carried]:
    """Pin by pin, without those of connectors that only link through."""
    design = circuit.design
    fed = {pair.name for pair in design.feeds}
    feeding = {f"{name}{sign}": circuit.pad(name, sign) for name in fed for sign in "+-"}
    for connector in design.connectors:
        for pin in connector.pins if connector.through is None else ():
            net = circuit.net_of[pin.pad] if pin.pad is not None else None
            if pin.pad is None:
                whence = "unused in this box"
            elif pin.pad[:-1] in fed:
                whence = "fed by its amplifier"
            else:
                joined = [pad for pad, other in feeding.items() if other == net]
                whence = f"joined to {listed(joined)}" if joined else "fed by nothing"
            yield Carried(connector, pin, whence)


def table(circuit: Circuit) -> Group:
    """The connectors in columns; nothing without any."""
    rows = [(one.connector.name, one.pin.name, one.pin.pad or "", one.whence) for one in carried(circuit)]
    rows += [
        (connector.name, "all", "", f"linked through to {connector.through}")
        for connector in circuit.design.connectors
        if connector.through is not None
    ]
    return (Table(("Connectors", "pin", "wired to", ""), tuple(rows), frozenset(range(4))),) if rows else ()


def pin_of(circuit: Circuit, pad: str) -> str:
    """`pin 1+ of rear`, by which a pad of an input or of posts is reached; empty where no pin leads to it."""
    pins = ((connector.name, pin) for connector in circuit.design.connectors for pin in connector.pins)
    return next((f"pin {pin.name} of {name}" for name, pin in pins if pin.pad == pad), "")


def ways_in(circuit: Circuit) -> list[str]:
    """A sentence for each connector: by which pin one reaches what, whatever feeds it."""
    told = []
    for connector in circuit.design.connectors:
        if connector.through is not None:
            told.append(_linked(connector))
            continue
        pins = [f"pin {pin.name} is {pin.pad}" for pin in connector.pins if pin.pad is not None]
        told.append(f"{_begun(connector)}: {listed(pins)}." if pins else f"{_begun(connector)}: no pin is used.")
    return told


def _begun(connector: Connector) -> str:
    """A connector with its title, as a sentence begins."""
    called = connector.name + (f", {connector.title}" if connector.title else "")
    return f"{called[:1].upper()}{called[1:]}"


def _linked(connector: Connector) -> str:
    comma = "," if connector.title else ""
    return f"{_begun(connector)}{comma} has the pins of {connector.through}: it links through."


def sentences(circuit: Circuit) -> list[str]:
    """A sentence for each connector."""
    told = []
    for connector in circuit.design.connectors:
        if connector.through is not None:
            told.append(_linked(connector))
            continue
        pins = [one for one in carried(circuit) if one.connector is connector]
        words = [
            f"pin {_spoken(one.pin.name)}{' is ' + _spoken(one.pin.pad) if one.pin.pad else ''}, {_spoken(one.whence)}"
            for one in pins
        ]
        count = "one pin" if len(pins) == 1 else f"{len(pins)} pins"
        comma = "," if connector.title else ""
        told.append(f"{_begun(connector)}{comma} has {count}: {'; '.join(words)}.")
    return told


def _spoken(text: str) -> str:
    """Pads as read aloud: `low plus`."""
    words = (
        word[:-1] + (" plus" if word[-1] == "+" else " minus") if len(word) > 1 and word[-1] in "+-" else word
        for word in text.split()
    )
    return " ".join(words)
