"""Boards as they happen to be made: a circuit's parts with their errors, and what is wrong with one of them.

In: a `Circuit`, what the errors are, a `Fault` as its table says. Out: a `Board` that `decks` writes as SPICE. It
knows nothing of how faults are found, and uses no solver of the project: of a design only what parts and drivers are
made of.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from math import exp, log, pi, sqrt
from random import Random

from faultfinding.lamps import MOST_GAS, Lamp
from shuntwise.bench.faults import Fault
from shuntwise.graph.circuit import Circuit
from shuntwise.graph.topology import pair_links, reached
from shuntwise.model.design import Driver, Part
from shuntwise.model.kinds import KINDS
from shuntwise.network.driver_model import driver_model
from shuntwise.network.ideal import Ideal as Drawn
from shuntwise.network.ideal import Stage
from shuntwise.network.lower import ONE_MOTION
from shuntwise.network.part_model import part_model

UNSTATED_TOLERANCE = 0.05
UNSTATED_ESR_OHM = {True: 0.1, False: 0.05}
"""Of an electrolytic capacitor and of others: common practice, no source."""

TURN_HZ = 200.0
"""Where a shorted turn takes half of its effect, R2/(2 pi L2): from the table of faults, about."""

SOLDER_OHM = 0.001

COILS, CAPACITORS = ("coil", "tapped coil"), ("capacitor",)


@dataclass(frozen=True)
class Errors:
    """How far what is on the bench may be off, evenly to both sides: `parts` in their tolerances, the rest shares.

    `sag` is what the voltmeter loses at its highest frequency, going with the square of it; `gas` the most that the gas
    carries off in a lamp.
    """

    parts: float = 1.0
    copper: float = 0.1
    esr: float = 0.5
    drivers: float = 0.1
    dummies: float = 0.01
    sag: float = 0.0
    gas: float = MOST_GAS


NONE = Errors(0.0, 0.0, 0.0, 0.0, 0.0, gas=0.0)


@dataclass
class Ideal:
    """An element: R, L or C, what it stands for, ohm, henry or farad."""

    kind: str
    quantity: str
    value: float


Row = list[Ideal]
Stages = list[list[Row]]


@dataclass
class Board:
    """A board, its drivers and the set-up. `at` has the node of every point of the circuit, `wires` the node that the
    wire from a tag (`woofer+`) leads to, None if it is off. `joints` are ohm at a lead, `solder` ohm between two nodes.

    `rows` are the sections of parts, by key: owner, ends as points, elements. `turns` are shorted windings: the key of
    their coil, the share of its inductance that they take, R2/L2. `lamps` are those, by label, that their volts warm.
    """

    at: dict[str, str]
    wires: dict[str, str | None]
    rows: dict[str, tuple[str, tuple[str, str], Row]]
    drivers: dict[str, Stages]
    dummies: dict[str, float]
    joints: dict[str, float] = field(default_factory=dict)
    solder: list[tuple[str, str, float]] = field(default_factory=list)
    turns: list[tuple[str, float, float]] = field(default_factory=list)
    lamps: dict[str, Lamp] = field(default_factory=dict)
    source: float = 1.0
    series: float = 1.0
    sag: float = 0.0
    fresh: int = 0

    def new_node(self) -> str:
        """A node that nothing lies on."""
        self.fresh += 1
        return f"new {self.fresh}"

    def put(self, point: str, node: str) -> None:
        """A lead, or the end of a wire to a driver or input, lies on another node."""
        self.at[point] = node
        if point in self.wires:
            self.wires[point] = node


class Plan:
    """A circuit as a maker of boards has it before him."""

    def __init__(self, circuit: Circuit) -> None:
        design = circuit.design
        self.circuit = circuit
        self.parts: dict[str, Part] = {p.label: p for p in circuit.fitted_parts if not KINDS[p.kind].wire}
        self.links = {part.label for part in circuit.fitted_parts if KINDS[part.kind].wire}
        self.all_parts: Mapping[str, Part] = design.parts
        self.drivers: Mapping[str, Driver] = design.drivers
        self.feeds = tuple(feed.name for feed in design.feeds)
        self.pads = [f"{name}{sign}" for name in (*(t.name for t in design.terminals), *self.drivers) for sign in "+-"]
        self.edges = {edge.key: edge for edge in circuit.edges.values() if edge.kind == "part"}
        self.nets = {net: net for net in circuit.nets} | dict(circuit.net_of)
        self._rows = {label: part_model(part).sections for label, part in self.parts.items()}
        self._stages = {name: driver_model(driver).stages for name, driver in self.drivers.items()}
        self.couplings = tuple(self._couplings())
        self.lamps: dict[str, tuple[float, float]] = {}
        for label, part in self.parts.items():
            volts, watts, hot = part.get("voltage"), part.get("power"), part.get("hot")
            if part.kind == "lamp" and volts and (hot or watts):
                self.lamps[label] = hot or volts**2 / watts, volts

    def _couplings(self) -> list[tuple[tuple[str, str], tuple[str, str], float]]:
        """Pairs of inductances that share a field, each as owner's key and quantity, and their factors."""
        keys = {(edge.owner, edge.section): edge.key for edge in self.edges.values()}
        found = []
        for label, part in self.parts.items():
            for first, second, k in part_model(part).couplings:
                found.append(((keys[label, first], "inductance"), (keys[label, second], "inductance"), k))
        for declared in self.circuit.design.couplings:
            if declared.k is not None and {declared.first, declared.second} <= self.edges.keys():
                found.append(((declared.first, "inductance"), (declared.second, "inductance"), declared.k.value))
        for name, driver in self.drivers.items():
            if driver.other in self.drivers:
                held = {ideal.quantity for stage in self._stages[name] for chain in stage for ideal in chain}
                for quantity, k in (("lces", ONE_MOTION), ("le", driver.coils_k)):
                    if quantity in held:
                        found.append(((driver.other or "", quantity), (name, quantity), k))
        return found

    def coils_of(self, name: str) -> list[str]:
        """The driver of that name, or its voice coils."""
        return [own for own, driver in self.drivers.items() if name in (own, driver.coil_of)]

    def stated(self, label: str, section: str) -> tuple[Drawn, ...]:
        """The elements of a section as the design says them."""
        return self._rows[label][section]

    def sections(self, label: str, draw: Random, errors: Errors) -> dict[str, Row]:
        """The elements of one part as it came out of the drawer, by section."""
        part, even = self.parts[label], lambda share: 1 + share * draw.uniform(-1, 1)
        value, copper = even(errors.parts * part.get("tolerance", UNSTATED_TOLERANCE)), even(errors.copper)
        made: dict[str, Row] = {}
        for section, ideals in self._rows[label].items():
            row = [Ideal(i.kind, i.quantity, i.value * (copper if i.copper else value)) for i in ideals]
            if part.kind in CAPACITORS:
                stated = part.get("esr") or UNSTATED_ESR_OHM["electrolytic" in (part.construction or "")]
                row = [i for i in row if i.kind == "C"]
                if errors.esr or part.get("esr"):
                    row.append(Ideal("R", "esr", stated * even(errors.esr)))
            made[section] = row
        return made

    def board(self, draw: Random, errors: Errors = NONE, dummy_ohm: float = 8.0) -> Board:
        """A sound board, with fresh drivers and dummies."""
        rows = {}
        for label in self.parts:
            made = self.sections(label, draw, errors)
            for edge in self.circuit.edges_of(label):
                rows[edge.key] = (label, edge.points, made[edge.section])
        formers = {name: driver.coil_of or name for name, driver in self.drivers.items()}
        off = {
            former: {what: 1 + errors.drivers * draw.uniform(-1, 1) for what in ("re", "le", "fs", "q")}
            for former in dict.fromkeys(formers.values())
        }
        drivers = {name: _stages(self._stages[name], off[formers[name]]) for name in self.drivers}
        return Board(
            dict(self.nets),
            {pad: self.circuit.net_of[pad] for pad in self.pads if pad in self.circuit.net_of},
            rows,
            drivers,
            {name: dummy_ohm * (1 + errors.dummies * draw.uniform(-1, 1)) for name in self.drivers},
            lamps={label: Lamp(*rated, errors.gas * draw.random()) for label, rated in self.lamps.items()},
            sag=errors.sag,
        )


def _stages(stages: Iterable[Stage], by: Mapping[str, float]) -> Stages:
    """A driver whose resistance, inductance, resonances and their Q are by so much off.

    L and C of a resonance go with 1/fs, so that the root of L/C stays, and its resistance with Q. Sections of a lossy
    voice coil go with its inductance.
    """
    made: Stages = []
    for stage in stages:
        ideals = [ideal for chain in stage for ideal in chain]
        moving = any(i.kind == "C" or i.quantity == "lces" for i in ideals)  # the second voice coil has lces alone

        def factor(i: Drawn, moving: bool = moving) -> float:
            if not moving:
                return by["re"] if i.copper or i.quantity == "nominal" else by["le"]
            return 1 / by["fs"] if i.kind != "R" else by["q"] if i.quantity.startswith("res") else 1.0

        made.append([[Ideal(i.kind, i.quantity, i.value * factor(i)) for i in chain] for chain in stage])
    return made


# --- what may be wrong: one function a family


def spoil(board: Board, plan: Plan, fault: Fault, size: float, draw: Random, errors: Errors = NONE) -> None:
    """Make `fault` on a board, of that size."""
    _FAMILIES[fault.family](_Case(board, plan, fault, size, draw, errors))


@dataclass
class _Case:
    board: Board
    plan: Plan
    fault: Fault
    size: float
    draw: Random
    errors: Errors

    def rows(self, owner: str) -> list[Row]:
        return [row for label, _, row in self.board.rows.values() if label == owner]

    def ideals(self, owner: str, *kinds: str) -> list[Ideal]:
        return [ideal for row in self.rows(owner) for ideal in row if ideal.kind in kinds]


def _is_link(case: _Case) -> bool:
    return bool(case.fault.owners) and case.fault.owners[0] in case.plan.links


def _open(case: _Case) -> None:
    board, fault = case.board, case.fault
    if _is_link(case):
        _split(case)
        return
    for point in fault.points or (case.plan.circuit.edges_of(fault.owners[0])[0].points[0],):
        if point in board.wires:
            board.wires[point] = None
        else:
            board.put(point, board.new_node())


def _join(case: _Case) -> None:
    first, second = case.fault.points
    case.board.solder.append((case.board.at[first], case.board.at[second], SOLDER_OHM))


def _value(case: _Case) -> None:
    (owner,), size = case.fault.owners, case.size
    kind = case.plan.parts[owner].kind
    of = {"R": sqrt(size) if kind in COILS else 1 / size if kind in CAPACITORS else size, "L": size, "C": size}
    for ideal in case.ideals(owner, "R", "L", "C"):
        ideal.value *= of[ideal.kind]


def _dried(case: _Case) -> None:
    for ideal in case.ideals(case.fault.owners[0], "C", "R"):
        ideal.value *= case.size if ideal.kind == "C" else 20


def _turns(case: _Case) -> None:
    for key, (label, _, _) in case.board.rows.items():
        if label == case.fault.owners[0]:
            case.board.turns.append((key, case.size, 2 * pi * TURN_HZ * exp(case.draw.uniform(-1, 1))))
            break


def _core(case: _Case) -> None:
    for ideal in case.ideals(case.fault.owners[0], "L"):
        ideal.value *= case.size


def _exchanged(case: _Case) -> None:
    first, second = (case.rows(owner) for owner in case.fault.owners)
    for one, other in zip(first, second, strict=True):
        one[:], other[:] = list(other), list(one)


def _doubled(case: _Case) -> None:
    (owner,) = case.fault.owners
    made = case.plan.sections(owner, case.draw, case.errors)
    for edge in case.plan.circuit.edges_of(owner):
        case.board.rows[f"{edge.key} again"] = (f"{owner} again", edge.points, made[edge.section])


def _moved(case: _Case) -> None:
    (point,), board = case.fault.points, case.board
    to = board.at[case.fault.to]
    if _is_link(case):
        other = next(end for end in _split(case) if end != point)
        board.solder.append((board.at[other], board.at[case.fault.to], SOLDER_OHM))
    else:
        board.put(point, to)


def _joint(case: _Case) -> None:
    if _is_link(case):
        start, end = _split(case)
        case.board.solder.append((case.board.at[start], case.board.at[end], case.size))
    else:
        case.board.joints[case.fault.points[0]] = case.size


def _jumper(case: _Case) -> None:
    apart = case.board.new_node()
    for point in case.fault.points:
        case.board.put(point, apart)


def _link(case: _Case) -> None:
    if _is_link(case):
        _split(case)
    else:
        _join(case)


def _split(case: _Case) -> tuple[str, str]:
    """Take a link away: what only it joined is two nets then. Its two ends."""
    label = case.fault.owners[0]
    start, end = f"{label}.start", f"{label}.end"
    side = reached(pair_links((w.first, w.second) for w in case.plan.circuit.wires if w.link != label), end)
    if start not in side:
        apart = case.board.new_node()
        for point in side:
            case.board.put(point, apart)
    return start, end


def _reversed(case: _Case) -> None:
    for name in case.plan.coils_of(case.fault.owners[0]):
        _exchange_wires(case.board, (f"{name}+", f"{name}-"))


def _outputs(case: _Case) -> None:
    first, second = (case.plan.coils_of(owner) for owner in case.fault.owners)
    for one, other in zip(first, second, strict=False):
        for sign in "+-":
            _exchange_wires(case.board, (f"{one}{sign}", f"{other}{sign}"))


def _exchange_wires(board: Board, tags: tuple[str, str]) -> None:
    one, other = tags
    board.wires[one], board.wires[other] = board.wires[other], board.wires[one]


def _driver(case: _Case) -> None:
    for name in case.plan.coils_of(case.fault.owners[0]):
        for stage in case.board.drivers[name]:
            for chain in stage:
                for ideal in chain:
                    ideal.value *= 1 / case.size if ideal.kind == "C" else case.size


def _dummies(case: _Case) -> None:
    case.board.dummies = {name: ohm * case.size for name, ohm in case.board.dummies.items()}


def _series(case: _Case) -> None:
    case.board.series *= case.size


def _source(case: _Case) -> None:
    case.board.source *= case.size


def _meter(case: _Case) -> None:
    case.board.sag = 1 - (1 - case.board.sag) * case.size


def _scatter(case: _Case) -> None:
    """Every part so many times as far from its value as it is."""
    for key, (label, _, row) in case.board.rows.items():
        stated = {i.quantity: i for i in case.plan.stated(label, case.plan.edges[key].section)}
        for ideal in row:
            if ideal.quantity in stated and ideal.quantity != "esr" and not stated[ideal.quantity].copper:
                right = stated[ideal.quantity].value
                ideal.value = right + case.size * (ideal.value - right)


_FAMILIES: dict[str, Callable[[_Case], None]] = {
    "open": _open, "short": _join, "value": _value, "drift": _value, "dried": _dried, "turns": _turns, "core": _core,
    "exchanged": _exchanged, "doubled": _doubled, "moved": _moved, "joint": _joint, "bridge": _join,
    "jumper": _jumper, "cut": _join, "link": _link, "reversed": _reversed, "outputs": _outputs,
    "driver": _driver, "dummies": _dummies, "series": _series, "source": _source, "meter": _meter,
    "scatter": _scatter,
}  # fmt: skip


def drawn_size(fault: Fault, draw: Random) -> float:
    """A size within the fault's range, evenly in the logarithm."""
    low, high = fault.size
    return exp(draw.uniform(log(low), log(high)))
