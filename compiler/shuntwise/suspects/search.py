"""Which one slip explains that a circuit does not do what it must.

In: a circuit, what it must do as figures and polarities, and changes of one thing. Out: the changes with which all of
it comes out, the best first. Those of values are solved in one run, as builds of the same network. Refuses to know
rules, and what a finding is.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from shuntwise.figures.band import Real
from shuntwise.figures.curves import Curves, solve_curves, square_to_db
from shuntwise.figures.expected import Wanted, proofs
from shuntwise.figures.figure import Crossing, Impedance, Level, Slope
from shuntwise.figures.nominal import HIGHEST_HZ, LOWEST_HZ
from shuntwise.graph.circuit import Circuit
from shuntwise.model.design import Design
from shuntwise.network.lower import lower
from shuntwise.network.network import Network
from shuntwise.response.pivoted import PivotedPoints, SingularNetwork
from shuntwise.response.solve import Solver, at_posts
from shuntwise.structure.reach import turned_round
from shuntwise.suspects.change import Change
from shuntwise.tolerance.grid import grid

MOST_PARTS = 60
"""Larger circuits are left alone: every change is a network of its own."""


@dataclass(frozen=True)
class Demands:
    """What a circuit must do: figures that are asked for, loads, and which drivers are turned round.

    A load that is too low by itself speaks of no slip: it counts once something else does not come out.
    `polarities` maps one or two drivers to whether they are turned round, or differ. `drivers` must all be fed.
    """

    figures: tuple[Wanted, ...]
    loads: tuple[Wanted, ...]
    polarities: Mapping[tuple[str, ...], bool]
    drivers: frozenset[str]

    @property
    def every(self) -> tuple[Wanted, ...]:
        return *self.figures, *self.loads

    def polarities_met(self, circuit: Circuit) -> bool:
        if not self.polarities:
            return True
        turned = turned_round(circuit)
        return all(
            (sum(name in turned for name in names) % 2 == 1) == wanted for names, wanted in self.polarities.items()
        )

    def met(self, circuit: Circuit, network: Network) -> bool:
        """Does the circuit do all that is asked for, loads apart?"""
        fed = self.drivers <= {driver.name for driver in network.drivers}
        return fed and self.polarities_met(circuit) and bool(_offs(network, [{}], self.figures)[0] <= 1)


@dataclass(frozen=True)
class Suspect:
    """A change with which all comes out. `off` is how far the worst figure is from its middle: 1 is a bound."""

    change: Change
    off: float

    @property
    def score(self) -> float:
        return self.off + self.change.unlikely


def demands(design: Design) -> Demands:
    """What the `expect` lines and the amplifier ask for."""
    inputs = [pair.name for pair in design.feeds]
    figures = [wanted for proof in proofs(design, inputs) for wanted in proof.wanted]
    least = design.amplifier.quantities.get("least") if design.amplifier is not None else None
    loads: list[Wanted] = []
    if least is not None:
        loads = [Wanted(Impedance((name,), LOWEST_HZ, HIGHEST_HZ), least.value, np.inf) for name in inputs]
    polarities = {e.subjects: e.word in ("reversed", "opposite") for e in design.expectations if e.word is not None}
    return Demands(tuple(figures), tuple(loads), polarities, frozenset(design.drivers))


def explain(circuit: Circuit, network: Network, demands: Demands, changes: Iterable[Change]) -> tuple[Suspect, ...]:
    """The suspects among `changes`, the likeliest first; none where the circuit is a large one."""
    if len(circuit.fitted_parts) > MOST_PARTS or not network.elements:
        return ()
    found: list[Suspect] = []
    valued: list[tuple[Change, dict[str, float]]] = []
    whole = demands.drivers <= {driver.name for driver in network.drivers}
    right_way = whole and demands.polarities_met(circuit)
    for change in changes:
        if change.manner == "value":
            if right_way and (made := _same(network, change)) is not None:
                valued.append((change, made))
        else:
            found.append(Suspect(change, _off_of(change.circuit, demands)))
    if valued:
        offs = _offs(network, [made for _, made in valued], demands.every)
        found += [Suspect(change, float(off)) for (change, _), off in zip(valued, offs, strict=True)]
    return tuple(sorted((s for s in found if s.off <= 1), key=lambda s: s.score))


def _off_of(circuit: Circuit, demands: Demands) -> float:
    """How far the worst figure of another circuit is from its middle; infinite where something does not come out."""
    other = lower(circuit) if demands.polarities_met(circuit) else None
    if not isinstance(other, Network) or not demands.drivers <= {driver.name for driver in other.drivers}:
        return float("inf")
    return float(_offs(other, [{}], demands.every)[0]) if _may_meet(other, demands.every) else float("inf")


STEEPEST = 60.0
"""No filter that is built falls faster (dB/octave): so far two drivers can be apart in level near their crossing."""

LOOKED_AT_HZ = (30.0, 300.0, 3000.0, 15000.0)
"""Where a load is looked at before it is swept."""


def _may_meet(network: Network, wanted: Sequence[Wanted]) -> bool:
    """A quick look at a few frequencies: False where some figure cannot come out.

    Most changes fail here, and a compiled solver for each would take several times as long.
    """
    crossings = [(one, one.figure) for one in wanted if isinstance(one.figure, Crossing)]
    loads = [(one, one.figure) for one in wanted if isinstance(one.figure, Impedance) and not one.figure.greatest]
    quick = [one for one in wanted if isinstance(one.figure, Level | Slope)]
    points = {freq for one in quick for freq in one.figure.points_hz} | {figure.near_hz for _, figure in crossings}
    freq_hz = np.array(sorted(points | {*LOOKED_AT_HZ}))
    parameters = [element.value for element in network.elements] + [coupling.k for coupling in network.couplings]
    try:
        solved = PivotedPoints(network, parameters, freq_hz, refuse_singular=False)
    except np.linalg.LinAlgError:
        return False
    drive = [1.0] * len(network.feeds)
    volts = {d.name: solved.node_voltage(d.plus, drive) - solved.node_voltage(d.minus, drive) for d in network.drivers}
    curves = Curves(freq_hz, {name: (np.abs(v[:, None]) ** 2).astype(np.float32) for name, v in volts.items()}, {})
    for one, load in loads:
        inside = (load.from_hz <= freq_hz) & (freq_hz <= load.to_hz)
        siemens = np.abs(at_posts(network, load.subjects[0], solved.input_admittance(load.subjects[0])))[inside]
        if siemens.size and siemens.max() * one.low > 1 + 1e-6:
            return False
    for one, crossing in crossings:
        at = int(np.argmin(np.abs(freq_hz - crossing.near_hz)))
        first, second = (float(square_to_db(curves.voltage_square[name][at, 0])) for name in crossing.subjects)
        octaves = np.log2(max(one.high / crossing.near_hz, crossing.near_hz / max(one.low, 1e-9)))
        if abs(first + crossing.louder_db - second) > STEEPEST * octaves:
            return False
    return all(one.met(np.asarray(one.figure.of(curves), np.float64))[0] for one in quick)


def _same(network: Network, change: Change) -> dict[str, float] | None:
    """The elements with other values, where the change leaves the network's form as it is."""
    other = lower(change.circuit)
    if not isinstance(other, Network) or len(other.elements) != len(network.elements):
        return None
    pairs = list(zip(network.elements, other.elements, strict=True))
    if any((a.name, a.plus, a.minus) != (b.name, b.plus, b.minus) for a, b in pairs):
        return None
    return {a.name: b.value for a, b in pairs if a.value != b.value}


def _offs(
    network: Network,
    changed: Sequence[Mapping[str, float]],
    wanted: Sequence[Wanted],
    freq_hz: Real | None = None,
) -> Real:
    """By case, how far the worst figure is from the middle of its window; infinite where one does not exist."""
    if not wanted:
        return np.zeros(len(changed))
    touched = dict.fromkeys((network.elements[0].name, *(name for one in changed for name in one)))
    nominal = {element.name: element.value for element in network.elements}
    values = {name: np.array([one.get(name, nominal[name]) for one in changed]) for name in touched}
    try:
        solved_at = grid(one.figure for one in wanted) if freq_hz is None else freq_hz
        curves = solve_curves(Solver(network), values, solved_at)
    except SingularNetwork:
        return np.full(len(changed), np.inf)
    worst = np.zeros(len(changed))
    for one in wanted:
        real = np.asarray(one.figure.of(curves), np.float64)
        worst = np.maximum(worst, np.where(one.met(real), _off(one, real), np.inf))
    return worst


def _off(wanted: Wanted, real: Real) -> Real:
    if not (np.isfinite(wanted.low) and np.isfinite(wanted.high)) or wanted.low == 0:
        return np.zeros_like(real)
    middle, half = (wanted.low + wanted.high) / 2, (wanted.high - wanted.low) / 2
    return np.asarray(np.abs(real - middle) / max(half, 1e-300))
