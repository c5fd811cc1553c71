"""The subset of SPICE that `spice` emits, read back.

In: the text of an emitted netlist. Out: the `Network` of the circuit in it, under the names of the text. It
refuses to know any SPICE beyond that subset, and to guess: another line is an error.
"""

from __future__ import annotations

import math

from shuntwise.netlist.spice import CIRCUIT_ENDS
from shuntwise.network.network import Coupling, Element, ElementKind, Feed, Network

_KINDS: dict[str, ElementKind] = {"r": "R", "l": "L", "c": "C"}


class NotEmittedHere(ValueError):
    """A line that `spice.emit` does not write. `line` is its 1-based number."""

    def __init__(self, line: int, text: str) -> None:
        super().__init__(f"line {line} is outside the subset: {text!r}")
        self.line = line


def read(text: str) -> Network:
    """The circuit of an emitted netlist, without what only measures.

    Drivers, branches and parts stand in comments and are lost: an element's part is its own name.
    Raises NotEmittedHere.
    """
    elements: list[Element] = []
    couplings: list[Coupling] = []
    feeds: list[Feed] = []
    for number, line in enumerate(text.split("\n"), start=1):
        if line == CIRCUIT_ENDS:
            break
        if line.startswith("*") or not line:
            continue
        match line[0], line.split(" "):
            case ("r" | "l" | "c") as kind, [name, plus, minus, value]:
                elements.append(Element(name, _KINDS[kind], plus, minus, _number(value, number, line), name))
            case "k", [name, first, second, k]:
                couplings.append(Coupling(name, first, second, _number(k, number, line)))
            case "v", [name, node, "0", "dc", "0", "ac", "1.0"]:
                feeds.append(Feed(name, node))
            case _:
                raise NotEmittedHere(number, line)
    return Network(tuple(elements), tuple(couplings), tuple(feeds))


def _number(value: str, number: int, line: str) -> float:
    """A finite number written in full, with no unit and no SPICE suffix."""
    try:
        found = float(value)
    except ValueError:
        raise NotEmittedHere(number, line) from None
    if not math.isfinite(found):
        raise NotEmittedHere(number, line)
    return found
