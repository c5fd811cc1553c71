"""A network with the metal that joins its parts: resistance of wires and tracks between ends that are on one net.

In: a network without them, and `Metal`. Out: a network of the same parts, whose ends lie on points of their own, with a
resistor for every strap between two of these. Refuses to know what metal it is, and where it lies.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import TYPE_CHECKING

from shuntwise.network.network import Element, Network

if TYPE_CHECKING:
    from shuntwise.board.metal import Metal, Point


def laid_out(network: Network, metal: Metal) -> Network:
    """The network with its ends moved to their points, and the straps between them as elements."""
    node_of: dict[str, str] = {}

    def moved(end: tuple[str, str], node: str) -> str:
        point = metal.point_of.get(end)
        if point is None:
            return node
        node_of[point.net] = node  # ground has other names than its nets have
        return node if point.name == point.net else point.name

    elements = {element.name: element for element in network.elements}
    branches = []
    for branch in network.branches:
        owner = elements[branch.through].part
        plus = moved((owner, branch.terminals[0]), branch.plus)
        minus = moved((owner, branch.terminals[1]), branch.minus)
        for name in branch.elements:
            element = elements[name]
            elements[name] = replace(
                element,
                plus=plus if element.plus == branch.plus else element.plus,
                minus=minus if element.minus == branch.minus else element.minus,
            )
        branches.append(replace(branch, plus=plus, minus=minus))
    ports = tuple(
        replace(port, plus=moved((port.name, "+"), port.plus), minus=moved((port.name, "-"), port.minus))
        for port in network.drivers
    )
    straps = tuple(
        Element(strap.name, "R", _node(strap.first, node_of), _node(strap.second, node_of), strap.ohm, strap.owner)
        for strap in metal.straps
        if strap.first.net in node_of  # what carries no current is not in the network
    )
    return replace(network, elements=(*elements.values(), *straps), drivers=ports, branches=tuple(branches))


def _node(point: Point, node_of: Mapping[str, str]) -> str:
    return node_of[point.net] if point.name == point.net else point.name
