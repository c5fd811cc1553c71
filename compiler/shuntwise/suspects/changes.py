"""One thing in a design put otherwise, as a slip would have put it.

In: a `Circuit`. Out: the same circuit with one value off by a power of ten, two parts in each other's place, or a
driver turned round. Refuses to know whether that is better.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import combinations

from shuntwise import units
from shuntwise.graph.circuit import Circuit, Edge
from shuntwise.model.design import Design, Quantity
from shuntwise.structure.slips import WINDOWS, driver_windows

POWERS = (0.1, 10.0, 0.01, 100.0, 1e-3, 1e3)
"""How far a dot, a misread ring or a prefix puts a value off: common practice, no source."""

RESISTANCES = {"dcr": (0.01, 3.0), "esr": (0.001, 2.0)}
"""Resistances of parts, and where they lie (ohm): common practice, no source."""

MOST_PARTS = 60
"""Larger circuits are left alone: every change is a network of its own."""

MOST_TRADED = 24
"""With more parts than this, pairs of them are not exchanged: their number grows with the square."""


@dataclass(frozen=True)
class Change:
    """A circuit in which one thing is otherwise. `owners` are the parts or the driver; `title` says what is done.

    `unlikely` is how much better than another this change must explain things, as a share of a window.
    `quantity` and `text` are what is written and what would be written instead, where it is a value.
    """

    owners: tuple[str, ...]
    circuit: Circuit
    title: str
    unlikely: float = 0.0
    quantity: Quantity | None = None
    text: str = ""


def value_changes(circuit: Circuit) -> Iterator[Change]:
    """Values of parts, their resistances, and figures of drivers, each off by a power of ten."""
    design = circuit.design
    for part in design.parts.values():
        if not part.fitted:
            continue
        if part.value is not None:
            low, high = WINDOWS.get(part.kind, (0.0, float("inf")))
            low = max(low, part.get("tap"))
            for new in _others(part.value, POWERS, low, high):
                yield _valued(circuit, part.label, "", part.value, new, _part(design, part.label, value=new))
        for name, (low, high) in RESISTANCES.items():
            if name in part.quantities:
                old = part.quantities[name]
                for new in _others(old, POWERS[:2], low, high):
                    changed = _part(design, part.label, quantities={**part.quantities, name: new})
                    yield _valued(circuit, part.label, name, old, new, changed)
    for driver in design.drivers.values():
        for name, (low, high) in driver_windows(driver).items():
            if name in driver.quantities and driver.measured is None:
                old = driver.quantities[name]
                for new in _others(old, POWERS[:4], low, high):
                    other = replace(driver, quantities={**driver.quantities, name: new})
                    changed = replace(design, drivers={**design.drivers, driver.name: other})
                    yield _valued(circuit, driver.name, name, old, new, changed)


def exchanges(circuit: Circuit) -> Iterator[Change]:
    """Two parts with two ends in each other's place, a driver's leads exchanged."""
    for name in circuit.design.drivers:
        edges = circuit.edges_of(name)
        if len(edges) == 1:
            (edge,) = edges
            other = replace(edge, plus=edge.minus, minus=edge.plus)
            # A woofer is seldom the one that is wired the other way round on purpose: common practice, no source.
            unlikely = 0.1 if circuit.design.drivers[name].role == "woofer" else 0.0
            yield Change((name,), _with(circuit, other), f"exchange the leads of `{name}`", unlikely)
    simple = [edges[0] for part in circuit.fitted_parts if len(edges := circuit.edges_of(part.label)) == 1]
    if len(simple) > MOST_TRADED:
        return
    kinds = circuit.design.parts
    for one, other in combinations(simple, 2):
        if {one.plus, one.minus} != {other.plus, other.minus}:
            swapped = (
                replace(one, plus=other.plus, minus=other.minus),
                replace(other, plus=one.plus, minus=one.minus),
            )
            title = f"exchange `{one.owner}` and `{other.owner}`"
            unlikely = 0.2 if kinds[one.owner].kind == kinds[other.owner].kind else 0.4
            yield Change((one.owner, other.owner), _with(circuit, *swapped), title, unlikely)


def _others(quantity: Quantity, powers: Iterable[float], low: float, high: float) -> Iterator[Quantity]:
    """The quantity times each of `powers`, where that lies between `low` and `high`."""
    for power in powers:
        value = quantity.value * power
        if low < value <= high * (1 + 1e-9):
            yield replace(quantity, value=value, text=units.write(value, quantity.dimension))


def _valued(circuit: Circuit, owner: str, name: str, old: Quantity, new: Quantity, design: Design) -> Change:
    what = f"`{name}` of `{owner}`" if name else f"`{owner}`"
    return Change((owner,), replace(circuit, design=design), f"make {what} {new.text}", 0.3 * bool(name), old, new.text)


def _part(design: Design, label: str, **changes: object) -> Design:
    return replace(design, parts={**design.parts, label: replace(design.parts[label], **changes)})  # type: ignore[arg-type]


def _with(circuit: Circuit, *edges: Edge) -> Circuit:
    """The circuit with some edges between other nets."""
    net_of = dict(circuit.net_of)
    for edge in edges:
        net_of.update(zip(edge.points, (edge.plus, edge.minus), strict=True))
    return replace(circuit, net_of=net_of, edges={**circuit.edges, **{edge.key: edge for edge in edges}})
