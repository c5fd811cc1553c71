"""Solve a network: voltages, currents, impedance and heat over frequency.

In: a `Network` (or a `Solver` that has compiled one), frequencies, and element values where they differ
from the network's. Out: a `Response`, which works out what it is asked for and remembers it. It refuses
to know what is a good answer; `measures.py` and the checks judge.

All voltages and currents are phasors for every feed at 1 V r.m.s., phase 0. Arrays are (F,), or (B, F) when
values vary over B builds.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, TypeVar

import numpy as np

from shuntwise.network.network import GROUND, Branch, DriverPort, Network
from shuntwise.response.pivoted import PivotedPoints, SingularNetwork
from shuntwise.response.plan import Plan
from shuntwise.response.tape import ONE, ZERO, Axis, Complex, Mask, Real, Scalar, Settled, is_finite

__all__ = ["Builds", "Response", "SingularNetwork", "Solver", "beside_resonances", "solve"]

Solution = TypeVar("Solution")

ASIDE = 1e-9
"""By this share a frequency is moved that meets a lossless resonance: the solution there has digits enough."""

RESIDUAL_FLOOR = 1e-4
"""Nodes and loops that carry less than this fraction of the greatest are measured against that fraction."""


class Solver:
    """A network compiled once, to be solved for many frequencies or values."""

    def __init__(self, network: Network) -> None:
        self.network = network
        self.plan = Plan(network)
        self._stated = Settled(self.plan.tape, self.plan.parameters())

    def solve(
        self,
        freq_hz: object,
        *,
        values: Mapping[str, object] | None = None,
        nodes: Iterable[str] | None = None,
    ) -> Response:
        """Solve at `freq_hz` (F,), each finite and above zero.

        `values` gives element values and coupling factors by name, a number or an array (builds,). `nodes` are
        the nodes whose voltages are wanted at once; by default all driver voltages, and for one build the input
        impedances. Anything else is worked out when asked for, which over many builds costs another run. Raises
        SingularNetwork, KeyError for an unknown node, or ValueError for bad frequencies or values.
        """
        plan, freq = self.plan, self._frequencies(freq_hz)
        settled = self._stated if values is None else Settled(plan.tape, plan.parameters(values))
        response = Response(freq, Points(plan, settled, freq))
        if nodes is not None:
            wanted = [plan.node_voltage(self._known_node(node)) for node in nodes]
        else:
            wanted = [plan.voltage_between(d.plus, d.minus) for d in self.network.drivers]
            if not response.points.varies:
                wanted += [plan.input_admittance(f.name) for f in self.network.feeds]
        response.points.fill(wanted)
        response.points.pivoted()
        return response

    def stream(self, freq_hz: object, values: Mapping[str, object], *, admittances: bool = False) -> Iterator[Builds]:
        """Solve for many builds, a few at a time, in memory that does not grow with their number.

        `values` as in `solve`, each a number or an array (builds,). Input admittances are worked out if asked for.
        Raises as `solve` does.
        """
        plan, feeds = self.plan, self.network.feeds if admittances else ()
        freq = self._frequencies(freq_hz)
        parameters = plan.parameters(values)
        drivers = self.network.drivers
        wanted = [plan.voltage_between(d.plus, d.minus) for d in drivers]
        wanted += [plan.input_admittance(f.name) for f in feeds]
        weights = [1.0] * len(self.network.feeds)
        for part, found, flagged in plan.tape.run(wanted, parameters, freq):
            voltages = dict(zip((d.name for d in drivers), found, strict=False))
            currents = dict(zip((f.name for f in feeds), found[len(drivers) :], strict=True))
            if flagged is not None:
                now = [p[part] if isinstance(p, np.ndarray) else p for p in parameters]
                points = pivoted_points(plan, now, freq, flagged)
                for d in drivers:
                    careful = points.node_voltage(d.plus, weights) - points.node_voltage(d.minus, weights)
                    voltages[d.name] = _patched(voltages[d.name], flagged, careful)
                for f in feeds:
                    currents[f.name] = _patched(currents[f.name], flagged, points.input_admittance(f.name))
            yield Builds(part, voltages, {name: at_posts(self.network, name, y) for name, y in currents.items()})

    def _frequencies(self, freq_hz: object) -> Real:
        freq = np.atleast_1d(np.asarray(freq_hz, np.float64))
        if freq.ndim != 1 or not freq.size or not (np.isfinite(freq).all() and freq.min() > 0):
            raise ValueError("frequencies must be a list of finite numbers above zero")
        if self.plan.floating:
            raise SingularNetwork(self.plan.floating, float(freq[0]))
        return freq

    def _known_node(self, node: str) -> str:
        if node != GROUND and node not in self.network.nodes:
            raise KeyError(f"no node is called {node!r}")
        return node


def at_posts(network: Network, input_name: str, siemens: Complex) -> Complex:
    """What is seen from an amplifier's posts (S), of what its ideal source sees: 1/Y less its output resistance."""
    ohm = next(network.source_ohm(feed) for feed in network.feeds if feed.name == input_name)
    return np.asarray(siemens / (1 - ohm * siemens)) if ohm else siemens


def solve(
    network: Network,
    freq_hz: object,
    *,
    values: Mapping[str, object] | None = None,
    nodes: Iterable[str] | None = None,
) -> Response:
    """Compile and solve a network; see `Solver.solve`."""
    return Solver(network).solve(freq_hz, values=values, nodes=nodes)


def beside_resonances(solve_at: Callable[[Real], Solution], freq_hz: Real) -> Solution:
    """What `solve_at` gives at some frequencies (F,), of which those that meet a lossless resonance are moved by ASIDE.

    Raises SingularNetwork if there is no single solution beside such a frequency either.
    """
    moved: set[float] = set()
    while True:
        try:
            return solve_at(freq_hz)
        except SingularNetwork as singular:
            if singular.freq_hz in moved:
                raise
            aside = singular.freq_hz * (1 + ASIDE)
            moved.add(aside)
            freq_hz = np.where(freq_hz == singular.freq_hz, aside, freq_hz)


class Points:
    """The numbers of one solution: registers of the compiled plan, patched where it lost digits.

    A sweep keeps every register it has filled. A run over builds keeps only results, and runs the tape again
    for what is asked later, so its memory is that of the results.
    """

    def __init__(self, plan: Plan, settled: Settled, freq_hz: Real) -> None:
        self.plan = plan
        self.settled = settled
        self.parameters = parameters = settled.parameters
        self.freq_hz = freq_hz
        self.varies = any(isinstance(p, np.ndarray) for p in parameters)
        self.axis = Axis(freq_hz)
        builds = max((p.shape[0] for p in parameters if isinstance(p, np.ndarray)), default=1)
        self.shape = (builds, freq_hz.size) if self.varies else (freq_hz.size,)
        self.registers: list[Complex | None] = []
        self.results: dict[int, Complex] = {}
        self.filled: set[int] = set()
        self.flagged: Mask | None = None
        self._pivoted: tuple[Mask, PivotedPoints] | None = None

    def fill(self, wanted: Sequence[int]) -> None:
        """Work out registers, and flag the points where they cannot be trusted."""
        tape = self.plan.tape
        if self.varies:
            missing = [w for w in dict.fromkeys(wanted) if w not in self.results]
            if not missing:
                return
            mask = None
            self.results.update((w, np.empty(self.shape, np.complex128)) for w in missing)
            for part, values, suspects in tape.run(missing, self.parameters, self.freq_hz):
                for w, value in zip(missing, values, strict=True):
                    self.results[w][part] = value
                if suspects is not None:
                    mask = np.zeros(self.shape, np.bool_) if mask is None else mask
                    mask[part] = suspects
        else:
            wanted = [w for w in wanted if w not in self.filled]
            if not wanted:
                return
            self.filled.update(wanted)
            mask = tape.evaluate(wanted, self.registers, self.settled, self.axis)
            for w in wanted:
                filled = self.registers[w]
                if w > ONE and filled is not None and not is_finite(filled):
                    mask = ~np.isfinite(filled) | (False if mask is None else mask)
        if mask is not None:
            self.flagged = mask if self.flagged is None else self.flagged | mask

    def pivoted(self) -> PivotedPoints | None:
        """The careful solution of the flagged points."""
        if self.flagged is None:
            return None
        if self._pivoted is None or self._pivoted[0] is not self.flagged:
            self._pivoted = (self.flagged, pivoted_points(self.plan, self.parameters, self.freq_hz, self.flagged))
        return self._pivoted[1]

    def read(self, register: int, careful: Callable[[PivotedPoints], Complex]) -> Complex:
        """A register, with the flagged points taken from the careful solution."""
        if register in (ZERO, ONE):
            return np.full(self.shape, register, np.complex128)
        self.fill([register])
        found = self.results[register] if self.varies else self.registers[register]
        assert found is not None
        value = found if found.shape == self.shape else np.broadcast_to(found, self.shape)
        points = self.pivoted()
        return value if points is None else _patched(value, self.flagged, careful(points))


def _patched(value: Complex, flagged: Mask | None, careful: Complex) -> Complex:
    patched = np.array(value)
    patched[flagged] = careful
    return patched


def pivoted_points(plan: Plan, parameters: Sequence[Scalar], freq_hz: Real, flagged: Mask) -> PivotedPoints:
    """The careful solution of the points flagged in a mask (F,) or (builds, F)."""
    where = np.nonzero(flagged)
    here = [p[where[0], 0] if isinstance(p, np.ndarray) else p for p in parameters]
    return PivotedPoints(plan.network, here, freq_hz[where[-1]])


@dataclass(frozen=True)
class Builds:
    """Some builds of a run: which, and their driver voltages (V) and input admittances (S) by name, each (builds, F).

    The arrays are overwritten when the next builds are asked for.
    """

    part: slice
    driver_voltage: Mapping[str, Complex]
    input_admittance: Mapping[str, Complex]


@dataclass(frozen=True, eq=False)
class Response:
    """What a solved network does, asked for by name.

    Every method raises KeyError for an unknown name and SingularNetwork where a point has no single solution.
    Arrays are complex (F,) or (B, F) unless said otherwise, and are not to be written to.
    """

    freq_hz: Real
    points: Points = field(repr=False)
    _memo: dict[tuple[object, ...], Any] = field(default_factory=dict, repr=False)

    def voltage(self, node: str) -> Complex:
        """A node's voltage to ground (V)."""
        if node != GROUND and node not in self.network.nodes:
            raise KeyError(f"no node is called {node!r}")
        return self._read(("V", node), lambda: self._plan.node_voltage(node), lambda p, w: p.node_voltage(node, w))

    def driver_voltage(self, name: str) -> Complex:
        """The voltage over a driver, plus to minus (V)."""
        driver = self._driver(name)
        return self._between(driver.plus, driver.minus)

    def branch_voltage(self, label: str) -> Complex:
        """The voltage over a part, plus to minus (V)."""
        branch = self._branch(label)
        return self._between(branch.plus, branch.minus)

    def current(self, label: str) -> Complex:
        """The current through a part, plus to minus (A)."""
        return self.element_current(self._branch(label).through)

    def element_current(self, name: str) -> Complex:
        """The current through an element, plus to minus (A)."""
        self.network.element[name]
        return self._read(
            ("I", name), lambda: self._plan.element_current(name), lambda p, w: p.element_current(name, w)
        )

    def element_voltage(self, name: str) -> Complex:
        """The voltage over an element, plus to minus (V)."""
        self.network.element[name]
        return self._read(
            ("U", name), lambda: self._plan.element_voltage(name), lambda p, w: p.element_voltage(name, w)
        )

    def dissipation(self, label: str) -> Real:
        """The heat in a part (W, real): the sum of |I|^2 R over its resistances, for 1 V r.m.s. at the inputs."""
        total: Real = np.zeros(self.points.shape)
        for name in self._branch(label).elements:
            if self.network.element[name].kind == "R":
                total = total + self._heat(name)
        return total

    def _heat(self, name: str) -> Real:
        current = self.element_current(name)
        return (current.real**2 + current.imag**2) * self._value(name)

    def admittance(self, input_name: str) -> Complex:
        """I/V at an input's amplifier, its output resistance left out, the other amplifiers at rest (S)."""
        if input_name not in self._plan.every_feed:
            raise KeyError(f"no input is called {input_name!r}")
        total = self._read(
            ("Y", input_name),
            lambda: self._plan.input_admittance(input_name),
            lambda p, _: p.input_admittance(input_name),
        )
        return at_posts(self.network, input_name, total)

    def impedance(self, input_name: str) -> Complex:
        """V/I at an input, the amplifiers of the other inputs at rest (ohm).

        Raises SingularNetwork where no current at all can flow in, since the impedance is then without bound.
        """
        admittance = self.admittance(input_name)
        if not admittance.all():
            node = next(f.node for f in self.network.feeds if f.name == input_name)
            at = int(np.nonzero(admittance == 0)[-1][0])
            raise SingularNetwork((node,), float(self.freq_hz[at]))
        return 1 / admittance

    @property
    def fallback_points(self) -> int:
        """How many points were solved again with pivoting, for what has been asked so far."""
        return 0 if self.points.flagged is None else int(np.count_nonzero(self.points.flagged))

    @property
    def residual(self) -> float:
        """How badly the answer breaks Kirchhoff's laws, at its worst.

        At every node, also those inside parts: |sum of currents| over the sum of their magnitudes. Around every
        element: |its voltage - the difference of its node voltages| over the sum of those magnitudes. A node or an
        element that carries under RESIDUAL_FLOOR of the greatest is measured against that share of the greatest.
        """
        if ("residual",) not in self._memo:
            self._memo["residual",] = self._residual()
        return float(self._memo["residual",])

    def _residual(self) -> float:
        sums: dict[str, Complex] = {}
        sizes: dict[str, Real] = {}
        loops: list[tuple[Real, Real]] = []
        for e in self.network.elements:
            current = self.element_current(e.name)
            for node, sign in ((e.plus, 1), (e.minus, -1)):
                sums[node] = sums.get(node, 0) + sign * current
                sizes[node] = sizes.get(node, 0) + np.abs(current)
            plus, minus = self.voltage(e.plus), self.voltage(e.minus)
            gap = np.abs(self.element_voltage(e.name) - (plus - minus))
            loops.append((gap, np.abs(plus) + np.abs(minus)))
        for node in (GROUND, *(feed.node for feed in self.network.feeds)):
            sums[node] = np.zeros(self.points.shape, np.complex128)
        nodes = [(np.abs(sums[node]), size) for node, size in sizes.items()]
        worst = 0.0
        for pairs in (nodes, loops):
            if pairs:
                scale = np.max([size for _, size in pairs], axis=0) * RESIDUAL_FLOOR
                scale = np.where(scale > 0, scale, 1.0)
                worst = max([worst, *(float((gap / np.maximum(size, scale)).max()) for gap, size in pairs)])
        return worst

    # Plumbing

    @property
    def network(self) -> Network:
        return self.points.plan.network

    @property
    def _plan(self) -> Plan:
        return self.points.plan

    def _value(self, name: str) -> Scalar:
        return self.points.parameters[self._plan.parameter_number(name)]

    def _driver(self, name: str) -> DriverPort:
        for driver in self.network.drivers:
            if driver.name == name:
                return driver
        raise KeyError(f"no driver is called {name!r}")

    def _branch(self, label: str) -> Branch:
        branch = self.network.branch.get(label)
        if branch is None:
            raise KeyError(f"no part is called {label!r}")
        return branch

    def _between(self, plus: str, minus: str) -> Complex:
        return self._read(
            ("B", plus, minus),
            lambda: self._plan.voltage_between(plus, minus),
            lambda p, w: p.node_voltage(plus, w) - p.node_voltage(minus, w),
        )

    def _read(
        self,
        key: tuple[object, ...],
        register: Callable[[], int],
        careful: Callable[[PivotedPoints, Sequence[float]], Complex],
    ) -> Complex:
        flagged = self.points.flagged
        known = self._memo.get(key)
        if known is None or known[0] is not flagged:
            weights = [1.0] * len(self.network.feeds)
            value = self.points.read(register(), lambda points: careful(points, weights))
            known = self._memo[key] = (self.points.flagged, value)
        return np.asarray(known[1])
