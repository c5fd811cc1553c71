"""Boards on the bench as SPICE, read by ngspice: the true volts and ohms of readings, and what a meter makes of them.

Each reading's circuit is a copy of its own in one deck, and all are solved at the one frequency of 1 Hz: a copy that is
read at f has its inductances and capacitances times f, which is the same circuit. So no deck needs a list of
frequencies, and many boards go through one run. Direct current is a microhertz.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from math import hypot, sqrt
from random import Random

from faultfinding.boards import Board, Ideal, Plan
from faultfinding.lamps import Lamp
from shuntwise.engines.engine import EngineFailed, run_program
from shuntwise.engines.ngspice import read_raw
from shuntwise.model.box import DRIVERS_OFF, DRIVERS_ON, DUMMIES_ON, OPEN, Instruments, Reading

WIRE_OHM, VOLTMETER_OHM = 0.02, 1e6
OPEN_FROM_OHM = 5000.0
DIRECT_HZ = 1e-6
COPIES_A_DECK = 100

HUM_V, DIGIT_V = 0.0005, 0.001
OHM_SHARE, CONTACT_OHM, DIGIT_OHM = 0.01, 0.1, 0.1
"""The meters: a digit of 1 mV and a hum of 0.5 mV; 1 %, 0.1 ohm at the contacts and a digit of 0.1 ohm."""

WARMING = 3
"""So many times lamps are given the resistance that they have by the volts that were over them."""

Job = tuple[Board, Sequence[Reading]]


@dataclass
class _Copy:
    """Some readings of one board, which are taken of one circuit: the job, places among its readings, the readings.

    `ohm` are resistances of lamps, by the number of their element, `nodes` what the nodes of the copy are counted from.
    """

    job: int
    places: Sequence[int]
    readings: Sequence[Reading]
    setup: _Setup
    ohm: dict[int, float] = field(default_factory=dict)
    nodes: int = 0

    def warm(self, volts: dict[int, complex]) -> None:
        for number, lamp in self.setup.lamps.items():
            _, plus, minus, cold = self.setup.elements[number - 1]
            self.ohm[number] = lamp.ohm(cold, abs(self.between(volts, plus, minus)))

    def between(self, volts: dict[int, complex], plus: int, minus: int) -> complex:
        one, other = (volts[self.nodes + node] if node else 0 for node in (plus, minus))
        return one - other


def true_values(plan: Plan, jobs: Sequence[Job], instruments: Instruments) -> list[list[float]]:
    """Volts and ohms of the readings of each job, without the errors of a meter. Raises EngineFailed, EngineMissing."""
    copies, setups = [], {}
    for job, (board, readings) in enumerate(jobs):
        for places in _groups(readings):
            first = readings[places[0]]
            key = job, first.loads, first.fed or plan.feeds[0]
            if key not in setups:
                setups[key] = _Setup(plan, board, *key[1:], instruments)
            copies.append(_Copy(job, places, [readings[place] for place in places], setups[key]))
    lit = [copy for copy in copies if copy.setup.lamps and copy.readings[0].freq_hz]
    for _ in range(WARMING):
        for copy, volts in _solved(lit):
            copy.warm(volts)
    found = [[0.0] * len(readings) for _, readings in jobs]
    for copy, volts in _solved(copies):
        setup = copy.setup
        for place, reading in zip(copy.places, copy.readings, strict=True):
            across = copy.between(volts, *setup.probes(reading))
            if reading.quantity == "impedance":
                across /= (setup.source_v - copy.between(volts, setup.post, 0)) / setup.series_ohm
            found[copy.job][place] = abs(across)
    return found


def _solved(copies: Sequence[_Copy]) -> Iterator[tuple[_Copy, dict[int, complex]]]:
    """Copies with the volts of the nodes of their decks."""
    for start in range(0, len(copies), COPIES_A_DECK):
        deck, some = _Deck(), copies[start : start + COPIES_A_DECK]
        for copy in some:
            deck.copy(copy)
        volts = deck.solved()
        yield from ((copy, volts) for copy in some)


def _groups(readings: Sequence[Reading]) -> list[list[int]]:
    """Which readings are taken of one copy: those with a generator, at one frequency and set-up."""
    groups: dict[object, list[int]] = {}
    for place, reading in enumerate(readings):
        alone = None if reading.freq_hz else place
        groups.setdefault((reading.loads, reading.fed, reading.freq_hz, alone), []).append(place)
    return list(groups.values())


def shown(reading: Reading, true: float, lead_ohm: float, sag: float, instruments: Instruments, draw: Random) -> float:
    """What the meter shows: rounded volts or ohms, OPEN beyond its range."""
    if reading.quantity == "resistance":
        if true > OPEN_FROM_OHM:
            return OPEN
        ohm = true * (1 + OHM_SHARE * draw.uniform(-1, 1)) + lead_ohm + CONTACT_OHM * draw.uniform(-1, 1)
        return round(max(ohm, 0.0) / DIGIT_OHM) * DIGIT_OHM
    share = 1 + instruments.meter_share * draw.uniform(-1, 1)
    share *= 1 - sag * (reading.freq_hz / instruments.meter_top_hz) ** 2
    if reading.quantity == "impedance":
        return true * share
    return round(hypot(true * share, draw.gauss(0, HUM_V)) / DIGIT_V) * DIGIT_V


class _Deck:
    """Copies of boards in one text. Nodes and elements of each are counted on from where those before it end."""

    def __init__(self) -> None:
        self.lines: list[str] = []
        self.saved: dict[int, None] = {}
        self.nodes = self.elements = 0

    def copy(self, copy: _Copy) -> None:
        """A board that is read so, and the volts that are asked for."""
        setup, reading = copy.setup, copy.readings[0]
        copy.nodes = nodes = self.nodes
        names = self.elements
        freq_hz = reading.freq_hz or DIRECT_HZ
        for number, (kind, plus, minus, value) in enumerate(setup.elements, 1):
            names += 1
            ohm_or_so = copy.ohm.get(number, value) if kind == "r" else value * freq_hz
            self.lines.append(
                f"{kind}{names} {nodes + plus if plus else 0} {nodes + minus if minus else 0} {ohm_or_so:.10g}"
            )
        for one, other, k in setup.coupled:
            self.lines.append(
                f"k{self.elements + one}_{other} l{self.elements + one} l{self.elements + other} {k:.10g}"
            )
        if reading.freq_hz:
            inside, source = setup.inside, setup.source_v
            self.lines.append(f"v{names + 1} {nodes + inside} 0 dc 0 ac {source:.10g}")
            if setup.series_ohm:
                self.lines.append(f"r{names + 2} {nodes + inside} {nodes + setup.post} {setup.series_ohm:.10g}")
        else:
            plus, minus = (nodes + node if node else 0 for node in setup.probes(reading))
            self.lines.append(f"i{names + 1} {minus} {plus} dc 0 ac 1")
        self.elements, self.nodes = names + 2, nodes + setup.nodes
        asked = [setup.probes(reading) for reading in copy.readings]
        asked += [setup.elements[number - 1][1:3] for number in setup.lamps] if reading.freq_hz else []
        asked += [(setup.post, 0)] if reading.quantity == "impedance" else []
        self.saved |= dict.fromkeys(nodes + node for pair in asked for node in pair if node)

    def text(self) -> str:
        saved = [f"v({node})" for node in self.saved]
        rows = [".save " + " ".join(saved[start : start + 12]) for start in range(0, len(saved), 12)]
        return "\n".join(["* boards on the bench", *self.lines, *rows, ".options noopac", ".ac lin 1 1 1", ".end", ""])

    def solved(self) -> dict[int, complex]:
        ran = run_program("ngspice", "ngspice", ["-b", "-n", "-r", "result.raw", "circuit.cir"], self.text(),
                          timeout_s=120, result_file="result.raw")  # fmt: skip
        if ran.exit_code or ran.result is None or "singular" in ran.stderr.lower():
            raise EngineFailed("ngspice", "gave no result of a deck of boards", ran.stderr)
        columns = read_raw(ran.result)
        return {node: complex(columns[f"v({node})"][0]) for node in self.saved}


class _Setup:
    """One board with one kind of loads, fed at one input: elements between numbered nodes, 0 that input's minus."""

    def __init__(self, plan: Plan, board: Board, loads: str, fed: str, instruments: Instruments) -> None:
        self.plan, self.board, self.loads, self.fed = plan, board, loads, fed
        self.source_v = instruments.source_v * board.source
        self.series_ohm = instruments.series_ohm * board.series
        self.elements: list[tuple[str, int, int, float]] = []
        self.coupled: list[tuple[int, int, float]] = []
        self.number: dict[str, int] = {f"tag {fed}-": 0}
        self.nodes = 0
        self.inductors: dict[tuple[str, str], int] = {}
        self.lamps: dict[int, Lamp] = {}
        self.leads: dict[str, int] = {}
        for tag, node in board.wires.items():
            if node is not None:
                self.put("r", self.node(f"tag {tag}"), self.node(node), WIRE_OHM + board.joints.get(tag, 0.0))
        for first, second, ohm in board.solder:
            if first != second:
                self.put("r", self.node(first), self.node(second), ohm)
        for key, (label, ends, row) in board.rows.items():
            self.chain(key, row, *(self.lead(point) for point in ends))
            lamp = board.lamps.get(label.removesuffix(" again"))  # one that is doubled is like the first
            if lamp is not None:
                self.lamps[len(self.elements)] = lamp
        for name in board.drivers:
            self.load(name)
        for (one, quantity), (other, others), k in plan.couplings:
            for copy in ("", " again"):  # a part that is doubled
                ends = (one + copy, quantity), (other + copy, others)
                if self.inductors.keys() >= {*ends}:
                    self.coupled.append((self.inductors[ends[0]], self.inductors[ends[1]], k))
        for key, share, corner in board.turns:
            self.turn(key, share, corner)
        for point in [*board.at, *board.wires]:
            self.point(point)
        self.post = self.point(f"{fed}+")
        for number in self.number.values():  # a voltmeter's megohm from everywhere: nothing floats
            if number:
                self.put("r", number, 0, VOLTMETER_OHM)
        self.inside = self.new_node() if self.series_ohm else self.post

    def new_node(self) -> int:
        self.nodes += 1
        return self.nodes

    def node(self, name: str) -> int:
        if name not in self.number:
            self.number[name] = self.new_node()
        return self.number[name]

    def point(self, point: str) -> int:
        """A pad of a driver or input is its tag, anything else the node that it lies on."""
        return self.node(f"tag {point}" if point in self.board.wires else self.board.at[point])

    def probes(self, reading: Reading) -> tuple[int, int]:
        """The two nodes that are read between."""
        return self.point(reading.plus), self.point(reading.minus)

    def put(self, kind: str, plus: int, minus: int, value: float) -> int:
        self.elements.append((kind, plus, minus, float(value)))
        return len(self.elements)

    def lead(self, point: str) -> int:
        """The node of a part's lead: behind its joint, if that is a bad one."""
        node = self.node(self.board.at[point])
        if point not in self.board.joints:
            return node
        if point not in self.leads:
            self.leads[point] = self.new_node()
            self.put("r", self.leads[point], node, self.board.joints[point])
        return self.leads[point]

    def chain(self, key: str, row: Sequence[Ideal], plus: int, minus: int) -> None:
        at = plus
        for ideal in row:
            to = minus if ideal is row[-1] else self.new_node()
            number = self.put(ideal.kind.lower(), at, to, ideal.value)
            if ideal.kind == "L":
                self.inductors[key, ideal.quantity] = number
            at = to

    def load(self, name: str) -> None:
        """What hangs on a driver's tags. A voice coil that is off stays beside the other on its former, on nothing."""
        tags = self.node(f"tag {name}+"), self.node(f"tag {name}-")
        if self.loads == DUMMIES_ON:
            self.put("r", *tags, self.board.dummies[name])
        elif self.loads != DRIVERS_OFF:
            off = self.loads != DRIVERS_ON and name in self.plan.coils_of(self.loads.removesuffix(" off"))
            at, minus = (self.node(f"off {name}+"), self.node(f"off {name}-")) if off else tags
            stages = self.board.drivers[name]
            for stage in stages:
                to = minus if stage is stages[-1] else self.new_node()
                for chain in stage:
                    self.chain(name, chain, at, to)
                at = to

    def turn(self, key: str, share: float, corner: float) -> None:
        """A shorted winding of 1 mH: the coil's inductance becomes L (1 - k^2 s/(s + R2/L2)), k^2 being the share."""
        henry, node = 1e-3, self.new_node()
        number = self.put("l", node, 0, henry)
        self.put("r", node, 0, henry * corner)
        for (own, quantity), inductor in self.inductors.items():
            if quantity == "inductance" and self.board.rows[own][0] == self.board.rows[key][0]:
                self.coupled.append((number, inductor, sqrt(share)))
