"""What a schematic shows of a circuit: its elements, the pieces of wire between them, and how both are called.

In: a `Circuit`. Out: an `Inventory`. Links are elements here, fitted or left out, so the nets are those of the wires
alone. Refuses to know where anything is drawn.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass

from shuntwise.documents.differing import differing
from shuntwise.documents.lettering import settable
from shuntwise.documents.schematic.symbols import has_symbol
from shuntwise.graph.circuit import Circuit, point_of
from shuntwise.graph.topology import DisjointSets
from shuntwise.model.design import Design, Driver, Part, Quantity
from shuntwise.model.differences import Difference
from shuntwise.model.kinds import BODY, KINDS
from shuntwise.structure.reach import turned_round
from shuntwise.units import PLAIN, write


@dataclass(frozen=True)
class Element:
    """A part, a driver or one of its two voice coils. `nets` are those at its `terminals`, in their order.

    `sections` are pairs of terminals by their numbers, of a part with three; `symbol` says how it is drawn, `lines`
    what is written beside it, the label first. `marked`: it is otherwise in the design itself.
    """

    label: str
    symbol: str
    terminals: tuple[str, ...]
    nets: tuple[str, ...]
    lines: tuple[str, ...]
    sections: tuple[tuple[int, int], ...] = ()
    coupled: bool = False
    marked: bool = False

    @property
    def is_driver(self) -> bool:
        return self.symbol == "driver"


@dataclass(frozen=True)
class Posts:
    """A pair of posts, the nets at their plus and minus, and whether an amplifier feeds them."""

    name: str
    plus: str
    minus: str
    fed: bool


@dataclass(frozen=True)
class Inventory:
    """`names` are how nets are called where they must be, one for each; `noted` those that an author gave, and `tested`
    the nets at which a meter is held. `omitted` are parts that are left out, links apart, `networks` the used networks,
    `differing` what is otherwise in the design itself.
    """

    elements: tuple[Element, ...]
    posts: tuple[Posts, ...]
    names: Mapping[str, str]
    noted: Mapping[str, str]
    tested: Mapping[str, str]
    omitted: tuple[str, ...]
    couplings: tuple[str, ...]
    networks: Mapping[str, str]
    differing: tuple[str, ...]


def take_stock(circuit: Circuit, *, ratings: bool = False, differences: Collection[Difference] = ()) -> Inventory:
    """All that is drawn of a circuit; with `ratings` what is written beside each part tells them too."""
    design = circuit.design
    nets = _nets(circuit)
    turned = turned_round(circuit)
    coupled = {label for coupling in design.couplings for label in (coupling.first, coupling.second)}
    marked = {label for one in differences for label in _about(one)}
    elements = [
        *(
            _driver(driver, nets, ratings, turned=driver.name in turned, marked=driver.name in marked)
            for driver in design.drivers.values()
        ),
        *(
            element
            for part in design.parts.values()
            if part.fitted or (KINDS[part.kind].wire and _wired(circuit, part))
            for element in _part(part, nets, part.label in coupled, ratings, part.label in marked)
        ),
    ]
    posts = tuple(
        Posts(pair.name, nets[f"{pair.name}+"], nets[f"{pair.name}-"], pair.fed)
        for pair in sorted(design.terminals, key=lambda pair: not pair.fed)
    )
    return Inventory(
        tuple(elements),
        posts,
        _names(elements, posts, nets, design),
        _called(nets, design.node_spans),
        _called(nets, design.testpoints),
        tuple(_left_out(part) for part in design.parts.values() if not part.fitted and not KINDS[part.kind].wire),
        tuple(_couplings(circuit)),
        design.network_of,
        tuple(map(settable, differing(differences))),
    )


def _about(one: Difference) -> Iterable[str]:
    """The parts and drivers at which a difference is seen."""
    if one.of == "coupling":
        return one.subject.split(" and ")
    return (one.subject,) if one.of in ("part", "driver") else ()


def _left_out(part: Part) -> str:
    return settable(part.label) + (f" ({_amount(part.value)})" if part.value is not None else "")


def _wired(circuit: Circuit, part: Part) -> bool:
    points = (point_of(part.label, terminal) for terminal in KINDS[part.kind].terminals)
    return any(point in circuit.joints for point in points)


def _nets(circuit: Circuit) -> Mapping[str, str]:
    """By point the piece of wire that it is on, named by one of its points: links join nothing here."""
    pieces = DisjointSets(circuit.net_of)
    for wire in circuit.wires:
        if wire.link is None:
            pieces.union(wire.first, wire.second)
    return {point: pieces[point] for point in circuit.net_of}


def _called(nets: Mapping[str, str], nodes: Mapping[str, object]) -> Mapping[str, str]:
    by_net: dict[str, list[str]] = defaultdict(list)
    for node in nodes:
        if node in nets:
            by_net[nets[node]].append(settable(node))
    return {net: ", ".join(names) for net, names in by_net.items()}


def _names(
    elements: list[Element], posts: tuple[Posts, ...], nets: Mapping[str, str], design: Design
) -> Mapping[str, str]:
    """For each net the posts on it, else the author's nodes, a driver's pad, or a part's end: no two are the same."""
    points: dict[str, list[str]] = defaultdict(list)
    for pair in posts:
        points[pair.plus].append(f"{pair.name}+")
        points[pair.minus].append(f"{pair.name}-")
    names = {net: ", ".join(settable(point) for point in found) for net, found in points.items()}
    names = {**_called(nets, design.node_spans), **names}
    for element in sorted(elements, key=lambda element: not element.is_driver):
        for terminal, net in zip(element.terminals, element.nets, strict=True):
            names.setdefault(net, settable(point_of(element.label, terminal)))
    return names


def _driver(driver: Driver, nets: Mapping[str, str], ratings: bool, *, turned: bool, marked: bool) -> Element:
    lines = [driver.name]
    if driver.nominal is not None:
        lines.append(_amount(driver.nominal))
    if driver.coil_of is not None:
        lines.append(f"one voice coil of {driver.coil_of}")
    lines += ["turned round"] if turned else []
    if ratings and "power" in driver.quantities:
        lines.append(_amount(driver.quantities["power"]))
    own = (nets[driver.name + "+"], nets[driver.name + "-"])
    return Element(driver.name, "driver", ("+", "-"), own, tuple(map(settable, lines)), marked=marked)


_CORES = {"iron core": "iron-cored coil", "ferrite core": "ferrite-cored coil"}
_TOLD = {"attenuator": ("loss",), "tapped coil": ("tap",)}
"""Beside the value, what a part cannot be understood without."""


def _part(part: Part, nets: Mapping[str, str], coupled: bool, ratings: bool, marked: bool) -> Iterator[Element]:
    """One element; of a kind that has no symbol one for each section."""
    kind = KINDS[part.kind]
    lines = [part.label]
    if part.value is not None:
        lines.append(_amount(part.value))
    told = _TOLD.get(part.kind, ())
    lines += [f"{name} {_amount(part.quantities[name], 3)}" for name in told if name in part.quantities]
    if ratings:
        lines += _ratings(part, told)
    symbol = part.kind
    if part.kind == "coil":
        symbol = _CORES.get(part.construction or "", symbol)
    elif part.construction == "polar electrolytic":
        symbol = "polarised capacitor"
    elif part.construction == "non-polar electrolytic":
        lines.append("non-polar")
    elif kind.wire:
        symbol = "fitted link" if part.fitted else "open link"
        lines += [] if part.fitted else ["left out"]
    if len(kind.terminals) > 2 and not has_symbol(symbol):
        for name, terminals in kind.sections.items():
            label = f"{part.label}.{name}"
            own = tuple(nets[point_of(part.label, terminal)] for terminal in terminals)
            words = tuple(map(settable, (label, *lines[1:])))
            yield Element(label, symbol, terminals, own, words, (), kind.inductive, marked)
        return
    order = {terminal: number for number, terminal in enumerate(kind.terminals)}
    sections = tuple((order[a], order[b]) for a, b in kind.sections.values()) if len(kind.terminals) > 2 else ()
    own = tuple(nets[point_of(part.label, terminal)] for terminal in kind.terminals)
    yield Element(part.label, symbol, kind.terminals, own, tuple(map(settable, lines)), sections, coupled, marked)


def _ratings(part: Part, told: tuple[str, ...]) -> Iterator[str]:
    kind = KINDS[part.kind]
    bare = [_amount(part.quantities[a.name]) for a in kind.bare if a.name in part.quantities]
    if bare:
        yield ", ".join(bare)
    body = {attribute.name for attribute in BODY}
    for attribute in kind.keyed:
        if attribute.name in part.quantities and attribute.name not in told and attribute.name not in body:
            yield f"{attribute.name} {_amount(part.quantities[attribute.name])}"
    if part.construction:
        yield part.construction


def _amount(quantity: Quantity, digits: int = 4) -> str:
    if quantity.dimension == PLAIN:
        return f"{100 * quantity.value:.4g} %"
    return write(quantity.value, quantity.dimension, digits)


def _couplings(circuit: Circuit) -> Iterator[str]:
    for coupling in circuit.design.couplings:
        if coupling.k is not None:
            sign = "minus " if coupling.k.value < 0 else ""
            yield settable(f"{coupling.first} and {coupling.second}, {sign}{100 * abs(coupling.k.value):.4g} %")
