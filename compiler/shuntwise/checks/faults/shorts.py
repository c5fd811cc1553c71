"""What is joined by bare wire though it should not be.

In: a `Circuit`, the joints that are explained already, and clusters of dead edges. Out: `Shorts`: inputs,
posts and drivers whose two pads are one net, wires that bridge parts, and parts that bridge nothing. What
only an earlier short joins is not a second fault. Refuses to know resistances.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from shuntwise.graph.circuit import Circuit, Wire, is_group_end, point_of
from shuntwise.graph.currents import DeadPiece
from shuntwise.model.kinds import KINDS

ShortKind = Literal[
    "input-shorted", "driver-shorted", "wired-across", "does-nothing", "winding-shorted", "level-chosen"
]


@dataclass(frozen=True)
class Short:
    """`owners` are what is shorted, `chain` the joints that do it, and `blamed` the one that should go.

    For `does-nothing` and `winding-shorted` there is no blame on a wire: `owners` are parts of which both ends are
    on one net; in the latter a current flows all the same, which a field drives. `level-chosen` is no fault: a link
    across resistors is fitted for the full level and left out for less.
    `between` are the two points that the chain joins.
    """

    kind: ShortKind
    net: str
    owners: tuple[str, ...]
    chain: tuple[Wire, ...]
    blamed: Wire | None
    between: tuple[str, str]


def find_shorts(
    circuit: Circuit, explained: Iterable[Wire], clusters: Sequence[DeadPiece]
) -> tuple[tuple[Short, ...], tuple[DeadPiece, ...]]:
    """All shorts, each once, and the clusters that are dead for another reason.

    `explained` joints are taken out first: another finding tells of them.
    """
    finding = _Finding(circuit, set(explained))
    finding.pairs()
    finding.parts()
    others = tuple(cluster for cluster in clusters if not finding.loop(cluster))
    bridges = [
        replace(short, kind="level-chosen") if _chooses_level(circuit, short) else short
        for short in finding.bridges.values()
    ]
    return (*finding.found, *bridges, *finding.idle.values()), others


def _chooses_level(circuit: Circuit, short: Short) -> bool:
    """Is this a link across resistors only, those of used networks included?"""
    if short.blamed is None or short.blamed.link is None:
        return False
    inside = {
        edge.owner
        for edge in circuit.edges.values()
        if edge.plus == edge.minus == short.net and outermost(circuit, edge.owner) in short.owners
    }
    parts = [circuit.design.parts.get(owner) for owner in {*short.owners, *inside} - {*circuit.design.instances}]
    return bool(parts) and all(part is not None and part.kind == "resistor" for part in parts)


class _Finding:
    def __init__(self, circuit: Circuit, removed: set[Wire]) -> None:
        self.circuit, self.removed = circuit, removed
        self.found: list[Short] = []
        self.bridges: dict[Wire, Short] = {}
        self.idle: dict[tuple[str, ...], Short] = {}
        self.paths: dict[tuple[str, str], tuple[Wire, ...]] = {}

    # --- pairs of pads

    def pairs(self) -> None:
        design = self.circuit.design
        for pair in design.feeds:
            self.pair("input-shorted", pair.name, f"{pair.name}+", f"{pair.name}-")
            # Amplifiers share their return, so a plus on the other's minus is as bad.
            for other in design.feeds:
                if other is not pair:
                    self.pair("input-shorted", pair.name, f"{pair.name}+", f"{other.name}-")
        for pair in design.terminals:
            if not pair.fed:
                self.pair("input-shorted", pair.name, f"{pair.name}+", f"{pair.name}-")
        for driver in design.drivers:
            self.pair("driver-shorted", driver, f"{driver}+", f"{driver}-")

    def pair(self, kind: ShortKind, owner: str, plus: str, minus: str) -> None:
        net = self.circuit.net_of[plus]
        if self.circuit.net_of[minus] != net:
            return
        chain = self.circuit.wire_path(plus, minus, self.removed)
        if chain:
            blamed = self.blame(chain) or max(chain, key=_place)
            self.found.append(Short(kind, net, (owner,), chain, blamed, (plus, minus)))
            self.removed.update(chain)

    # --- parts

    def parts(self) -> None:
        circuit = self.circuit
        for edge in circuit.edges.values():
            if edge.kind == "part" and edge.plus == edge.minus:
                self.short(edge.plus, edge.owner, *edge.points)
        for part in circuit.fitted_parts:
            kind = KINDS[part.kind]
            ends = point_of(part.label, kind.ends[0]), point_of(part.label, kind.ends[1])
            net = circuit.net_of[ends[0]]
            if net != circuit.net_of[ends[1]]:
                continue
            if kind.wire and ends[0] in circuit.joints:
                self.needless_link(net, part.label, ends)
            elif kind.ends not in kind.sections.values() and not self.idle_throughout(part.label):
                self.short(net, part.label, *ends)  # its sections in a row

    def idle_throughout(self, label: str) -> bool:
        """Is every section of a part shorted by itself?"""
        return all(edge.plus == edge.minus for edge in self.circuit.edges_of(label))

    def short(self, net: str, owner: str, start: str, end: str) -> None:
        """A part between two points of one net: bridged by a joint, or wired back to where it began."""
        path = self.path(start, end)
        if not path:
            return
        whole = self.network_led_round(owner, path)
        chain = tuple(wire for wire in path if not self.own_lead(wire, (start, end), whole))
        blamed = self.blame(chain)
        if blamed is not None:
            self.bridge(Short("wired-across", net, (whole or owner,), chain, blamed, (start, end)))
            return
        kind: ShortKind = "winding-shorted" if partners(self.circuit, owner) else "does-nothing"
        key = (kind, *(_groups(path) or ((whole,) if whole else (start, end))))
        short = Short(kind, net, (owner if kind == "winding-shorted" else whole or owner,), chain, None, (start, end))
        self.idle[key] = _with(self.idle.get(key), short)

    def network_led_round(self, owner: str, path: Sequence[Wire]) -> str:
        """The outermost used network that holds the part, if the chain leaves it: then it is shorted as a whole."""
        outer = outermost(self.circuit, owner)
        points = {point for wire in path for point in (wire.first, wire.second) if not is_group_end(point)}
        return outer if outer and any(not point.startswith(f"{outer}.") for point in points) else ""

    def own_lead(self, wire: Wire, ends: tuple[str, str], network: str) -> bool:
        """A part's or a used network's own joint to its neighbour, or a joint at the end of a declared group."""
        points = (wire.first, wire.second)
        if wire.link is not None:
            return False
        if any(is_group_end(point) or (point in ends and not point.endswith(("+", "-"))) for point in points):
            return True
        return bool(network) and sum(point.startswith(f"{network}.") for point in points) == 1

    def bridge(self, short: Short) -> None:
        assert short.blamed is not None
        self.bridges[short.blamed] = _with(self.bridges.get(short.blamed), short)

    def path(self, start: str, end: str) -> tuple[Wire, ...]:
        """The chain between two points. Where each has one joint the search between the far ends is shared."""
        joints = self.circuit.joints
        first, last = joints.get(start, ()), joints.get(end, ())
        if len(first) != 1 or len(last) != 1 or self.removed & {*first, *last}:
            return self.circuit.wire_path(start, end, self.removed)
        a, b = _far(first[0], start), _far(last[0], end)
        if first[0] == last[0]:
            return first
        if a == b:
            return (*first, *last)
        if (a, b) not in self.paths:
            self.paths[a, b] = self.circuit.wire_path(a, b, self.removed)
        between = self.paths[a, b]
        return (*first, *between, *last) if between else ()

    def needless_link(self, net: str, label: str, ends: tuple[str, str]) -> None:
        links = {wire for wire in self.circuit.joints[ends[0]] if wire.link == label}
        chain = self.circuit.wire_path(*ends, self.removed | links)
        if chain:
            self.found.append(Short("does-nothing", net, (label,), chain[1:-1], None, ends))

    def loop(self, cluster: DeadPiece) -> bool:
        """Parts in series whose two ends are on one net, but not at one point: a wire bridges them together.

        True if that is so, or if only a short that has been told of makes the two ends one net.
        """
        if len(cluster.contacts) != 1:
            return False
        (net,) = cluster.contacts
        points = [
            point
            for edge in cluster.edges
            for point in edge.points
            if self.circuit.net_of[point] == net and point in self.circuit.joints
        ]
        owners = tuple(dict.fromkeys(edge.owner for edge in cluster.edges))
        for other in points[1:]:
            path = self.circuit.wire_path(points[0], other, self.removed)
            if not path:
                return True
            networks = {self.network_led_round(owner, path) for owner in owners}
            whole = networks.pop() if len(networks) == 1 else ""
            chain = tuple(wire for wire in path if not self.own_lead(wire, (points[0], other), whole))
            blamed = self.blame(chain)
            if blamed is not None:
                self.bridge(
                    Short("wired-across", net, (whole,) if whole else owners, chain, blamed, (points[0], other))
                )
                return True
            if whole or _groups(path):
                kind: ShortKind = "does-nothing"
                if any(partners(self.circuit, owner) for owner in owners):
                    kind = "winding-shorted"
                key = (kind, *(_groups(path) or (whole,)))
                short = Short(kind, net, (whole,) if whole else owners, chain, None, (points[0], other))
                self.idle[key] = _with(self.idle.get(key), short)
                return True
        return False

    # --- blame

    def blame(self, chain: Sequence[Wire]) -> Wire | None:
        """The joint that should go: one that is blamed already, a link, or the last in the text that is unusual."""
        for wire in chain:
            if wire in self.bridges:
                return wire
        links = [wire for wire in chain if wire.link]
        if links:
            return links[-1]
        return max((wire for wire in chain if not self.usual_return(wire)), key=_place, default=None)

    def usual_return(self, wire: Wire) -> bool:
        """A driver's or post's minus pad on an input's or post's minus: the wire that every box has."""
        ends = (wire.first, wire.second)
        if not all(end.endswith("-") for end in ends):
            return False
        feeds = {f"{pair.name}-" for pair in self.circuit.design.feeds}
        return any(end in feeds for end in ends)


def partners(circuit: Circuit, owner: str) -> tuple[str, ...]:
    """The parts that feel a current in this one: those coupled with it; the rest of a tapped coil is itself."""
    part = circuit.design.parts.get(owner)
    if part is not None and KINDS[part.kind].couples_inside:
        return (owner,) if any(edge.plus != edge.minus for edge in circuit.edges_of(owner)) else ()
    near = [b if a == owner else a for a, b in circuit.coupled if owner in (a, b)]
    return tuple(circuit.edges[key].owner for key in near)


def outermost(circuit: Circuit, owner: str) -> str:
    """The name of the used network, in the design itself, that holds a part; "" for the design's own parts."""
    name, dot, _ = owner.partition(".")
    return name if dot and name in circuit.design.instances else ""


def _groups(path: Sequence[Wire]) -> tuple[str, ...]:
    """The ends of declared groups on a chain: what lies between them does nothing for one reason."""
    return tuple(sorted({point for wire in path for point in (wire.first, wire.second) if is_group_end(point)}))


def _far(wire: Wire, point: str) -> str:
    return wire.second if wire.first == point else wire.first


def _place(wire: Wire) -> tuple[int, int]:
    return wire.span.start, wire.span.end


def _with(old: Short | None, new: Short) -> Short:
    if old is None:
        return new
    owners = tuple(dict.fromkeys((*old.owners, *new.owners)))
    return Short(old.kind, old.net, owners, old.chain, old.blamed, old.between)
