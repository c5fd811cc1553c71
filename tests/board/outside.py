"""A judge of layouts from outside: what copper joins, by shapely and networkx, and what the circuit so built does.

It knows the values of `model` only, compares no graphs, and shares no code with `shuntwise.board`. Each part is put
between the nets on which its leads lie; a tableau of Kirchhoff's laws gives the voltages across all drivers and posts
and the impedance of every input. Whether a mistake does harm is told by these numbers alone.

Parts that are alike in everything that is stated of them count as the same; all others are solved with values that
differ a little, so that two that are equal by chance, or differ in a rating only, are told apart.
"""

from __future__ import annotations

import math
import zlib
from collections.abc import Callable, Hashable, Iterator, Sequence
from dataclasses import dataclass, field
from functools import cache
from itertools import combinations

import networkx as nx
import numpy as np
from numpy.typing import NDArray
from shapely import MultiPolygon, STRtree
from shapely.geometry import LineString, Point, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.ops import unary_union

from shuntwise.graph.circuit import Circuit, point_of
from shuntwise.model.boards import Board, Cut, Hole, Layout, Spot
from shuntwise.model.design import Design, Driver, Part
from shuntwise.model.kinds import KINDS

FREQ_HZ = np.geomspace(23.0, 19_000.0, 12)

SAME = 1e-6
"""Results nearer than this, as a share of the greater, are the same."""

HAIR_MM = 0.06
"""Copper is looked at a hair wider and a hair narrower: where that joins or parts something, nothing can be said."""

REACH_MM = (0.2, 0.5, 0.9)
"""How far from a hole's edge solder finds copper: by all three the same, or nothing can be said."""

Key = tuple[str, str]


class Doubtful(Exception):
    """Copper that joins or does not by a hair's breadth."""


class Unsolvable(Exception):
    """No voltages keep Kirchhoff's laws, as where an amplifier is shorted."""


class Unjudged(Exception):
    """Something that this judge has no model of."""


# --- copper


def key_of(spot: Spot) -> Key:
    return (spot.layout or "", spot.hole)


def metal(board: Board, cuts: Sequence[Cut], holes: Sequence[Hole]) -> BaseGeometry:
    """The copper that is left, tags not among it."""
    pieces = [Polygon(area.corners) for area in board.areas]
    pieces += [LineString(track.points).buffer(track.width / 2) for track in board.tracks]
    pieces += [Point(hole.at).buffer(hole.ring / 2) for hole in holes if hole.ring]
    gone = [LineString((cut.start, cut.end)).buffer(cut.width / 2, cap_style="flat") for cut in cuts]
    gone += [Point(hole.at).buffer(hole.diameter / 2) for hole in holes if not hole.tag]
    return unary_union(pieces).difference(unary_union(gone))


def pieces_of(copper: BaseGeometry) -> list[Polygon]:
    if isinstance(copper, MultiPolygon):
        return list(copper.geoms)
    return [copper] if isinstance(copper, Polygon) and not copper.is_empty else []


_seen: dict[Hashable, dict[str, int | None]] = {}


def island_of(layout: Layout) -> dict[str, int | None]:
    """The piece of copper at each hole, None for bare holes and tags. Raises Doubtful."""
    key = (layout.board.name, layout.cuts, layout.drilled, id(layout.board))
    if key not in _seen:
        _seen[key] = _islands(layout)
        _kept.append(layout.board)
    return _seen[key]


_kept: list[Board] = []  # so that no other board gets the id of one that is in `_seen`


def _islands(layout: Layout) -> dict[str, int | None]:
    holes = list(layout.holes)
    copper = metal(layout.board, layout.cuts, holes)
    found = [_at_holes(copper.buffer(wider), holes, 0.5) for wider in (0.0, -HAIR_MM, HAIR_MM)]
    found += [_at_holes(copper, holes, reach) for reach in REACH_MM]
    first = found[0]
    for other in found[1:]:
        if any((a is None) != (b is None) for a, b in zip(first.values(), other.values(), strict=True)):
            raise Doubtful("a hole at the edge of copper")
        if len({(a, b) for a, b in zip(first.values(), other.values(), strict=True)}) != len(set(first.values())):
            raise Doubtful("copper joined or parted by a hair's breadth")
        if len(set(other.values())) != len(set(first.values())):
            raise Doubtful("copper joined or parted by a hair's breadth")
    return first


def _at_holes(copper: BaseGeometry, holes: Sequence[Hole], reach: float) -> dict[str, int | None]:
    bored = [hole for hole in holes if not hole.tag]
    at: dict[str, int | None] = dict.fromkeys(hole.name for hole in holes)
    if not bored:
        return at
    points = [Point(hole.at) for hole in bored]
    near = STRtree(pieces_of(copper)).query(points, "dwithin", [hole.diameter / 2 + reach for hole in bored])
    for number, piece in near.T:
        name = bored[number].name
        if at[name] is not None:
            raise Doubtful(f"{name} lies at two pieces of copper")
        at[name] = int(piece)
    return at


# --- nets


def joined(design: Design, layouts: Sequence[Layout]) -> nx.Graph:
    """All that is one metal, as a graph: holes and pads, pieces of copper, and the leads of parts as points."""
    graph = nx.Graph()
    for layout in layouts:
        for hole, island in island_of(layout).items():
            graph.add_node((layout.name, hole))
            if island is not None:
                graph.add_edge((layout.name, hole), ("copper", layout.name, island))
    for layout in layouts:
        for wire in layout.wires:
            first, second = key_of(wire.first), key_of(wire.second)
            graph.add_edge(first, second)
            if wire.kind == "bus":
                nx.add_path(graph, _along(layout, first[1], second[1]))
        for place in layout.places:
            part = design.parts.get(place.label)
            if part is None or not part.fitted:
                continue
            for terminal, spot in leads(part, place.leads):
                graph.add_edge(("point", point_of(part.label, terminal)), key_of(spot))
            if KINDS[part.kind].wire:
                graph.add_edge(*(("point", point_of(part.label, end)) for end in KINDS[part.kind].ends))
    return graph


def leads(part: Part, said: Sequence[object]) -> Iterator[tuple[str, Spot]]:
    """The terminal of each lead; those that the text does not tell apart in the order of the kind."""
    ends = iter(KINDS[part.kind].ends)
    for lead in said:
        yield lead.terminal or next(ends), lead.spot  # type: ignore[attr-defined]


def _along(layout: Layout, first: str, last: str) -> list[Key]:
    """The holes of a row from one to another."""
    row = [hole.name for hole in layout.board.holes if hole.row == layout.board.hole[first].row]
    low, high = sorted((row.index(first), row.index(last)))
    return [(layout.name, name) for name in row[low : high + 1]]


def nets_of(design: Design, layouts: Sequence[Layout]) -> Callable[[str], Hashable]:
    """The net of a point as laid out: `L1.start`, `woofer+`. What is soldered to nothing has a net of its own."""
    graph = joined(design, layouts)
    net: dict[Hashable, int] = {}
    for number, nodes in enumerate(nx.connected_components(graph)):
        net |= dict.fromkeys(nodes, number)

    def of(point: str) -> Hashable:
        pad = ("", point) if point[-1] in "+-" else ("point", point)
        return net.get(pad, ("open", point))

    return of


# --- elements


@dataclass(frozen=True)
class Element:
    """An ideal R, L or C (ohm, henry, farad) between two nets."""

    name: str
    kind: str
    plus: Hashable
    minus: Hashable
    value: float


BACK_OHM = 0.02
"""Of a conductor between a box and an amplifier: what parts one amplifier's return from another's."""


@dataclass
class Laid:
    """A circuit as elements. `mutual`: pairs of names of coils and henry. `inputs`: pads and ohm in front of each."""

    elements: list[Element] = field(default_factory=list)
    mutual: list[tuple[str, str, float]] = field(default_factory=list)
    inputs: dict[str, tuple[Hashable, Hashable]] = field(default_factory=dict)
    source: float = 0.0
    cable: float = 0.0
    seen: dict[str, tuple[Hashable, Hashable]] = field(default_factory=dict)

    def row(self, name: str, ends: tuple[Hashable, Hashable], *items: tuple[str, float]) -> None:
        """Elements in series; those of no value are none."""
        items = tuple(item for item in items if item[1]) or (("R", 0.0),)
        nets = [ends[0], *((name, at) for at in range(1, len(items))), ends[1]]
        for at, (kind, value) in enumerate(items):
            self.elements.append(Element(f"{kind}_{name}" + f"_{at}" * bool(at), kind, nets[at], nets[at + 1], value))


def lay(design: Design, net: Callable[[str], Hashable], *, told_apart: bool = False) -> Laid:
    """The circuit with every terminal and pad on the net that `net` says."""
    amplifier = design.amplifier
    source = amplifier.quantities["source"].value if amplifier and "source" in amplifier.quantities else 0.0
    laid = Laid(source=source, cable=2 * amplifier.cable.conductor_ohm if amplifier and amplifier.cable else 0.0)
    several = told_apart and sum(pair.fed for pair in design.terminals) > 1
    for pair in design.terminals:
        ends: tuple[Hashable, Hashable] = net(pair.name + "+"), net(pair.name + "-")
        if pair.fed and several:  # amplifiers share their minus, but only behind a conductor that each has
            laid.row(f"{pair.name}_back", (ends[1], (pair.name, "back")), ("R", BACK_OHM))
            ends = ends[0], (pair.name, "back")
        (laid.inputs if pair.fed else laid.seen)[pair.name] = ends
    for driver in design.drivers.values():
        laid.seen[driver.name] = (net(driver.name + "+"), net(driver.name + "-"))
        _lay_driver(laid, driver, laid.seen[driver.name])
    for part in design.parts.values():
        if part.fitted and not KINDS[part.kind].wire:
            _lay_part(laid, part, lambda terminal, part=part: net(point_of(part.label, terminal)), told_apart)
    henry = {element.name: element.value for element in laid.elements if element.kind == "L"}
    for coupling in design.couplings:
        one, other = f"L_{coupling.first}", f"L_{coupling.second}"
        if coupling.k is not None and one in henry and other in henry:
            laid.mutual.append((one, other, coupling.k.value * math.sqrt(henry[one] * henry[other])))
    return laid


def likeness(part: Part) -> tuple[object, ...]:
    """Parts of which this is equal may stand for each other."""
    said = sorted((name, quantity.value) for name, quantity in part.quantities.items())
    return part.kind, part.value.value if part.value else None, part.construction, tuple(said)


def _lay_part(laid: Laid, part: Part, net: Callable[[str], Hashable], told_apart: bool) -> None:
    if part.value is None:
        raise Unjudged(f"{part.label} has no value")
    odd = zlib.crc32(repr(likeness(part)).encode()) / 2**32 if told_apart else 0.0
    value = part.value.value * (1 + 0.02 * odd)
    start, end = (net(terminal) for terminal in KINDS[part.kind].ends)
    match part.kind:
        case "coil":
            laid.row(part.label, (start, end), ("L", value), ("R", part.get("dcr")))
        case "capacitor":
            laid.row(part.label, (start, end), ("C", value), ("R", part.get("esr")))
        case "tapped coil":
            # L = La + Lb + 2 k sqrt(La Lb); turns go with the square root of the inductance
            k, first = part.get("k", 0.98), part.get("tap") * value / part.value.value
            root = -k * math.sqrt(first) + math.sqrt(k * k * first + value - first)
            first_dcr = part.get("tap_dcr", part.get("dcr") * math.sqrt(first / value))
            tap = net("tap")
            laid.row(f"{part.label}_a", (start, tap), ("L", first), ("R", first_dcr))
            laid.row(f"{part.label}_b", (tap, end), ("L", root * root), ("R", part.get("dcr") - first_dcr))
            laid.mutual.append((f"L_{part.label}_a", f"L_{part.label}_b", k * math.sqrt(first) * root))
        case "attenuator":
            share = 10 ** (-max(part.get("loss"), 0.01) / 20)
            laid.row(f"{part.label}_a", (start, end), ("R", value * (1 - share)))
            laid.row(f"{part.label}_b", (end, net("common")), ("R", value * share / (1 - share)))
        case "fuse" | "protector":
            drop = {"fuse": 0.1, "protector": 0.25}[part.kind]
            laid.row(part.label, (start, end), ("R", part.get("cold", drop / part.value.value) * (1 + 0.02 * odd)))
        case "resistor" | "lamp":
            laid.row(part.label, (start, end), ("R", value))
        case _:
            raise Unjudged(f"no model of a {part.kind}")


def _lay_driver(laid: Laid, driver: Driver, ends: tuple[Hashable, Hashable]) -> None:
    """Re, Le and the resonance in parallel, as LANGUAGE.md has them under `driver`."""
    has = {name: quantity.value for name, quantity in driver.quantities.items()}
    if driver.measured or driver.coil_of or {"semi_k", "r_factor"} & set(has):
        raise Unjudged(f"no model of {driver.name}")
    if "re" not in has:
        laid.row(driver.name, ends, ("R", driver.nominal.value if driver.nominal else 0.0))
        return
    if "fs" not in has and "res" not in has:
        laid.row(driver.name, ends, ("R", has["re"]), ("L", has.get("le", 0.0)))
        return
    cone = (driver.name, "cone")
    laid.row(driver.name, (ends[0], cone), ("R", has["re"]), ("L", has.get("le", 0.0)))
    if "res" in has:
        res, les, ces = has["res"], has["les"], has["ces"]
    else:
        qms = has["qms"] if "qms" in has else 1 / (1 / has["qts"] - 1 / has["qes"])
        qes = has["qes"] if "qes" in has else 1 / (1 / has["qts"] - 1 / has["qms"])
        ws = 2 * math.pi * has["fs"]
        res, les, ces = has["re"] * qms / qes, has["re"] / (ws * qes), qes / (ws * has["re"])
    for kind, value in (("R", res), ("L", les), ("C", ces)):
        laid.row(f"{driver.name}_cone", (cone, ends[1]), (kind, value))
    if "alpha" in has:
        lb, wb, ql = les / has["alpha"], 2 * math.pi * has.get("fb", 0.0), has.get("ql", 7.0)
        vent = (("C", 1 / (wb * wb * lb)), ("R", wb * lb / ql)) if wb else ()
        laid.row(f"{driver.name}_box", (cone, ends[1]), ("L", lb), *vent)


# --- solution


@dataclass(frozen=True)
class Results:
    """Each driver's and post's voltage by each input alone (F, S), V, and what each input's amplifier gives (F,), A.

    The open-circuit voltage of an amplifier is 1 V, `source` its output resistance (ohm).
    """

    volts: dict[str, NDArray[np.complex128]]
    amperes: dict[str, NDArray[np.complex128]]
    source: float

    def ohm(self, name: str) -> NDArray[np.complex128]:
        """The impedance of an input, seen from its amplifier's posts."""
        return 1 / self.amperes[name] - self.source

    def same_as(self, other: Results) -> bool:
        pairs = [(self.volts[name], other.volts[name]) for name in self.volts]
        pairs += [(self.amperes[name], other.amperes[name]) for name in self.amperes]
        return all(bool((abs(a - b) <= SAME * np.maximum(abs(a), abs(b)) + 1e-11).all()) for a, b in pairs)


def solve(laid: Laid, freq_hz: NDArray[np.float64] = FREQ_HZ) -> Results:
    """Kirchhoff's laws with an unknown for each net and each current. Raises Unsolvable."""
    w = 2 * np.pi * freq_hz
    ends = {e.name + e.kind + str(n): (e.plus, e.minus) for n, e in enumerate(laid.elements)}
    ends |= {f"input {name}": pair for name, pair in laid.inputs.items()}
    graph = nx.Graph([*ends.values(), *laid.seen.values()])
    # Amplifiers share their minus, which is the zero; whatever hangs on no input has a zero of its own.
    zeros = {minus for _, minus in laid.inputs.values()}
    graph.add_edges_from(combinations(zeros, 2))
    for nodes in nx.connected_components(graph):
        if not nodes & zeros:
            zeros.add(next(iter(nodes)))
    row = {net: at for at, net in enumerate(net for net in graph if net not in zeros)}
    size = len(row) + len(ends)
    matrix = np.zeros((len(w), size, size), dtype=complex)
    for column, pair in enumerate(ends.values(), len(row)):
        for net, sign in zip(pair, (1.0, -1.0), strict=True):
            if net in row:
                matrix[:, row[net], column] += sign
                matrix[:, column, row[net]] += sign
    first = len(row)
    column_of = {}
    for column, element in enumerate(laid.elements, first):
        column_of[element.name] = column
        if element.kind == "C":  # by its admittance, so that nothing is huge
            matrix[:, column] *= (1j * w * element.value)[:, None]
            matrix[:, column, column] -= 1
        else:
            matrix[:, column, column] -= element.value if element.kind == "R" else 1j * w * element.value
    for one, other, henry in laid.mutual:
        matrix[:, column_of[one], column_of[other]] -= 1j * w * henry
        matrix[:, column_of[other], column_of[one]] -= 1j * w * henry
    feeds = range(first + len(laid.elements), size)
    right = np.zeros((len(w), size, len(feeds)), dtype=complex)
    for at, column in enumerate(feeds):
        matrix[:, column, column] -= laid.source + laid.cable
        right[:, column, at] = 1.0
    found = _solve(matrix, right)

    def volts(net: Hashable) -> NDArray[np.complex128]:
        return found[:, row[net]] if net in row else np.zeros((len(w), len(feeds)), dtype=complex)

    return Results(
        {name: volts(plus) - volts(minus) for name, (plus, minus) in laid.seen.items()},
        {name: -found[:, feeds[at], at] for at, name in enumerate(laid.inputs)},
        laid.source,
    )


def _solve(matrix: NDArray[np.complex128], right: NDArray[np.complex128]) -> NDArray[np.complex128]:
    weight = 1 / np.abs(matrix).max(axis=2, keepdims=True).clip(1e-300)
    matrix, right = matrix * weight, right * weight
    try:
        found = np.linalg.solve(matrix, right)
        if np.isfinite(found).all() and np.abs(matrix @ found - right).max() < 1e-9 and np.abs(found).max() < 1e9:
            return found
    except np.linalg.LinAlgError:
        pass
    for at in range(len(matrix)):  # currents round a loop of bare wire are left open
        found_at = np.linalg.lstsq(matrix[at], right[at], rcond=1e-13)[0]
        if np.abs(matrix[at] @ found_at - right[at]).max() > 1e-9:
            raise Unsolvable("no solution keeps Kirchhoff's laws")
        right[at] = found_at
    return right


# --- verdict


class Judge:
    """Whether a layout of a circuit does what the circuit does."""

    def __init__(self, circuit: Circuit) -> None:
        self.design = circuit.design
        self.wanted = solve(lay(self.design, circuit.net_of.__getitem__, told_apart=True))
        self._points = [point for point in circuit.net_of if self._is_terminal(point)]
        self._said: dict[frozenset[frozenset[str]], bool] = {}

    def _is_terminal(self, point: str) -> bool:
        owner = point[:-1] if point[-1] in "+-" else point.rpartition(".")[0]
        names = {pair.name for pair in self.design.terminals}
        return owner in names or owner in self.design.drivers or owner in self.design.parts

    def harmless(self, layouts: Sequence[Layout]) -> bool:
        """Raises Doubtful where copper joins by a hair's breadth."""
        net = nets_of(self.design, layouts)
        groups: dict[Hashable, set[str]] = {}
        for point in self._points:
            groups.setdefault(net(point), set()).add(point)
        signature = frozenset(frozenset(group) for group in groups.values())
        if signature not in self._said:
            try:
                built = solve(lay(self.design, net, told_apart=True))
                self._said[signature] = built.same_as(self.wanted)
            except Unsolvable:
                self._said[signature] = False
        return self._said[signature]


# --- SPICE


def deck(laid: Laid, freq_hz: Sequence[float]) -> str:
    """A SPICE deck of one input at 1 V that prints the voltage across each driver and the input's current."""
    ((plus, minus),) = laid.inputs.values()
    number: dict[Hashable, int] = {minus: 0}

    @cache
    def name(item: str) -> str:
        return item.replace(".", "_")

    def node(net: Hashable) -> int:
        return number.setdefault(net, len(number))

    ohm = laid.source + laid.cable
    lines = ["a layout, part by part", f"Vin {'feed' if ohm else node(plus)} 0 dc 0 ac 1"]
    lines += [f"Rin feed {node(plus)} {ohm!r}"] if ohm else []
    for at, e in enumerate(laid.elements):
        letter = f"{e.kind}{at}" if e.kind != "L" else name(e.name)
        lines.append(f"{letter} {node(e.plus)} {node(e.minus)} {e.value!r}")
    henry = {e.name: e.value for e in laid.elements if e.kind == "L"}
    for at, (one, other, shared) in enumerate(laid.mutual):
        lines.append(f"K{at} {name(one)} {name(other)} {shared / math.sqrt(henry[one] * henry[other])!r}")
    for at, (a, b) in enumerate(laid.seen.values()):
        lines += [f"Em{at} m{at} 0 {node(a)} {node(b)} 1", f"Rm{at} m{at} 0 1"]
    what = " ".join(["i(vin)", *(f"v(m{at})" for at in range(len(laid.seen)))])
    lines += [".control", "set numdgt=15", "set wr_singlescale", "set wr_vecnames"]
    for at, freq in enumerate(freq_hz):
        lines += [f"ac lin 1 {freq!r} {freq!r}", f"wrdata out{at}.txt {what}"]
    return "\n".join([*lines, "quit", ".endc", ".end", ""])
