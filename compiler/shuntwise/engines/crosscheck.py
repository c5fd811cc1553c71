"""Compares the built-in solver with an outside simulator on the same network.

In: a `Network`, a `Sweep`, an `Engine`. Out: a `CrossCheck` with the worst deviation and its place. It
refuses to know how either side solves: both start from the network, one of them through the emitted text,
so a disagreement beyond rounding is a mistake in the netlist, in the solver or in the simulator.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from shuntwise.engines.engine import Engine
from shuntwise.engines.gnucap import GNUCAP
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.netlist.spice import emit
from shuntwise.network.network import Network
from shuntwise.network.sweep import Sweep
from shuntwise.response.solve import solve

Quantity = Literal["node", "driver", "impedance"]
Phasors = NDArray[np.complex128]

ENGINES = {engine.program: engine for engine in (NGSPICE, GNUCAP)}


@dataclass(frozen=True)
class Deviation:
    """The largest difference found for one quantity, and the frequency at which it was found.

    Relative to the source voltage of 1 V for a `node` or `driver`, to its modulus for an `impedance`.
    """

    quantity: Quantity
    name: str
    relative: float
    freq_hz: float


@dataclass(frozen=True)
class CrossCheck:
    """What was compared, at how many frequencies, and how far apart it was.

    `deviations` has one entry for each node, driver and input of the network; a driver with both pads on one
    node has no voltage to compare.
    """

    engine: str
    bound: float
    bound_reason: str
    points: int
    deviations: tuple[Deviation, ...]

    @property
    def worst(self) -> Deviation:
        return max(self.deviations, key=lambda deviation: deviation.relative)

    @property
    def passed(self) -> bool:
        return self.worst.relative <= self.bound

    def worst_of(self, quantity: Quantity) -> Deviation | None:
        """The worst of one kind of quantity, None if the network has none."""
        of_kind = (deviation for deviation in self.deviations if deviation.quantity == quantity)
        return max(of_kind, key=lambda deviation: deviation.relative, default=None)


def crosscheck(network: Network, sweep: Sweep, engine: Engine, bound: float | None = None) -> CrossCheck:
    """Solve `network` twice, at the frequencies that the engine reports, and compare everything.

    `bound` is the engine's own unless given. It is a fraction of the source voltage, also where a resonance
    without losses lifts a node to thousands of volts; rounding alone can then exceed it (2 of 12,000 random
    networks; exact rational arithmetic puts both sides within 2e-11 of that node's own voltage).

    Raises EngineMissing and EngineFailed, and what the solver raises on a singular network.
    """
    found = engine.run(emit(network, sweep, design_title=network.title))
    freq_hz = found.freq_hz
    response = solve(network, freq_hz)
    pairs: list[tuple[Quantity, str, Phasors, Phasors]] = []
    pairs += [("node", name, volt, response.voltage(name)) for name, volt in found.voltages.items()]
    pairs += [("driver", name, volt, response.driver_voltage(name)) for name, volt in found.driver_voltages.items()]
    pairs += [("impedance", name, ohm, response.impedance(name)) for name, ohm in found.impedances.items()]
    deviations = []
    for quantity, name, theirs, ours in pairs:
        relative = np.abs(ours - theirs) / (np.abs(theirs) if quantity == "impedance" else 1.0)
        relative = np.where(np.isfinite(relative), relative, np.inf)
        at = int(np.argmax(relative))
        deviations.append(Deviation(quantity, name, float(relative[at]), float(freq_hz[at])))
    if bound is None:
        return CrossCheck(engine.program, engine.bound, engine.bound_reason, len(freq_hz), tuple(deviations))
    return CrossCheck(engine.program, bound, "asked for", len(freq_hz), tuple(deviations))
