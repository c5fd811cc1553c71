"""Which one slip explains that a circuit does not do what it must.

In: a circuit, and what it must do as figures and polarities. Out: the changes of one thing with which all of it comes
out, the best first. All values are solved in one run, as builds of the same network. Refuses to know rules, and what
a finding is.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from shuntwise.figures.band import Real
from shuntwise.figures.curves import solve_curves
from shuntwise.figures.expected import Wanted, proofs
from shuntwise.figures.figure import Impedance
from shuntwise.figures.nominal import HIGHEST_HZ, LOWEST_HZ
from shuntwise.graph.circuit import Circuit
from shuntwise.model.design import Design
from shuntwise.network.lower import lower
from shuntwise.network.network import Network
from shuntwise.response.pivoted import SingularNetwork
from shuntwise.response.solve import Solver
from shuntwise.structure.reach import turned_round
from shuntwise.suspects.changes import MOST_PARTS, Change, exchanges, value_changes
from shuntwise.tolerance.grid import grid


@dataclass(frozen=True)
class Demands:
    """What a circuit must do: figures that are asked for, loads, and which drivers are turned round.

    A load that is too low by itself speaks of no slip: it counts once something else does not come out.
    `polarities` maps one or two drivers to whether they are turned round, or differ.
    """

    figures: tuple[Wanted, ...]
    loads: tuple[Wanted, ...]
    polarities: Mapping[tuple[str, ...], bool]

    def polarities_met(self, circuit: Circuit) -> bool:
        turned = turned_round(circuit)
        return all(
            (sum(name in turned for name in names) % 2 == 1) == wanted for names, wanted in self.polarities.items()
        )


@dataclass(frozen=True)
class Suspect:
    """A change with which all comes out. `off` is how far the worst figure is from its middle: 1 is a bound."""

    change: Change
    off: float

    @property
    def score(self) -> float:
        return self.off + self.change.unlikely


def demands(design: Design, network: Network) -> Demands:
    """What the `expect` lines and the amplifier ask for, of what the network feeds."""
    inputs = [feed.name for feed in network.feeds]
    fed = {driver.name for driver in network.drivers} | {*inputs}
    figures = [
        w for proof in proofs(design, inputs) if fed.issuperset(proof.expectation.subjects) for w in proof.wanted
    ]
    least = design.amplifier.quantities.get("least") if design.amplifier is not None else None
    loads: list[Wanted] = []
    if least is not None:
        loads = [Wanted(Impedance((name,), LOWEST_HZ, HIGHEST_HZ), least.value, np.inf) for name in inputs]
    polarities = {e.subjects: e.word in ("reversed", "opposite") for e in design.expectations if e.word is not None}
    return Demands(
        tuple(figures), tuple(loads), {names: odd for names, odd in polarities.items() if fed.issuperset(names)}
    )


def explain(circuit: Circuit, network: Network, demands: Demands) -> tuple[Suspect, ...]:
    """The suspects, the likeliest first; none where the circuit does all that it must, or is a large one."""
    if len(circuit.fitted_parts) > MOST_PARTS or not network.elements:
        return ()
    every = (*demands.figures, *demands.loads)
    freq_hz = grid(wanted.figure for wanted in every)
    found: list[Suspect] = []
    if demands.polarities_met(circuit):
        if _offs(network, [{}], demands.figures, freq_hz)[0] <= 1:
            return ()
        valued = [(change, made) for change in value_changes(circuit) if (made := _same(network, change)) is not None]
        offs = _offs(network, [made for _, made in valued], every, freq_hz) if valued else ()
        found += [Suspect(change, float(off)) for (change, _), off in zip(valued, offs, strict=True)]
    for change in exchanges(circuit):
        other = lower(change.circuit)
        if not isinstance(other, Network) or not demands.polarities_met(change.circuit):
            continue
        found.append(Suspect(change, float(_offs(other, [{}], every, freq_hz)[0])))
    return tuple(sorted((s for s in found if s.off <= 1), key=lambda s: s.score))


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
    wanted: Iterable[Wanted],
    freq_hz: Real,
) -> Real:
    """By case, how far the worst figure is from the middle of its window; infinite where one does not exist."""
    touched = dict.fromkeys((network.elements[0].name, *(name for one in changed for name in one)))
    nominal = {element.name: element.value for element in network.elements}
    values = {name: np.array([one.get(name, nominal[name]) for one in changed]) for name in touched}
    try:
        curves = solve_curves(Solver(network), values, freq_hz)
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
