"""Cases of a network: element values that differ (warm copper, a driver unplugged, a part open or shorted).

In: a compiled network, and cases. Out: one `Response` whose builds are the cases. It refuses to know which matter.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np

from shuntwise.network.network import Branch, Network
from shuntwise.response.solve import Response, Solver, beside_resonances
from shuntwise.response.tape import Real

Case = Mapping[str, float]
"""Element values (and couplings) by name that differ from the network's."""

BAND_HZ = (20.0, 20_000.0)
STEPS_PER_OCTAVE = 48

MOST_BETWEEN = 5**0.5
"""How many times the greatest point a peak between the points may be, to be told from them."""

OPEN = {"R": 1e12, "L": 1e9, "C": 1e-21}
SHORT = {"R": 1e-9, "L": 1e-12, "C": 1e6}
"""Values (ohm, henry, farad) that are open or a short at every audible frequency beside any crossover part.

The solver takes no differences, so they cost no digits, and the network keeps its one compiled plan.
"""


def sweep(low_hz: float = BAND_HZ[0], high_hz: float = BAND_HZ[1], steps_per_octave: int = STEPS_PER_OCTAVE) -> Real:
    """Frequencies in equal steps of log frequency, both ends included; Hz, (F,)."""
    return np.geomspace(low_hz, high_hz, round(np.log2(high_hz / low_hz) * steps_per_octave) + 1)


def opened(network: Network, branch: Branch) -> Case:
    """The case of a branch that carries no current.

    A resistance in series is opened where there is one. A coil that has none loses its couplings as well, since
    what is induced in an open coil drives no current.
    """
    elements = [network.element[name] for name in branch.elements]
    chosen = next((element for element in elements if element.kind == "R"), network.element[branch.through])
    case = {chosen.name: OPEN[chosen.kind]}
    if chosen.kind == "L":
        case |= {c.name: 0.0 for c in network.couplings if chosen.name in (c.first, c.second)}
    return case


def shorted(network: Network, branch: Branch) -> Case:
    """The case of a branch that is bridged."""
    return {name: SHORT[network.element[name].kind] for name in branch.elements}


def solve_cases(solver: Solver, cases: Sequence[Case], freq_hz: Real, *, parts: bool = True) -> Response:
    """Solve all cases at once: arrays of the response are (cases, F).

    Driver voltages and input admittances are worked out in one run with, if `parts` is set, the voltage and
    current of every branch. A frequency that meets a lossless resonance is moved aside. Raises SingularNetwork.
    """
    plan, network = solver.plan, solver.network
    nominal: dict[str, float] = {element.name: element.value for element in network.elements}
    nominal |= {coupling.name: coupling.k for coupling in network.couplings}
    # One value by case at the least, so that the answer always has an axis of cases.
    touched = dict.fromkeys((network.elements[0].name, *(name for case in cases for name in case)))
    values = {name: np.array([case.get(name, nominal[name]) for case in cases]) for name in touched}
    wanted = [plan.voltage_between(driver.plus, driver.minus) for driver in network.drivers]
    wanted += [plan.input_admittance(feed.name) for feed in network.feeds]
    if parts:
        for branch in network.branches:
            wanted.append(plan.voltage_between(branch.plus, branch.minus))
            wanted += [plan.element_current(name) for name in branch.elements if network.element[name].kind == "R"]
            wanted.append(plan.element_current(branch.through))

    def solved(at: Real) -> Response:
        response = solver.solve(at, values=values, nodes=())
        response.points.fill(wanted)
        response.points.pivoted()
        return response

    return beside_resonances(solved, freq_hz)


def greatest(curve: Real, freq_hz: Real) -> Real:
    """The greatest value of a curve of magnitudes (..., F) -> (...), found between the points of the sweep as well."""
    curve = np.asarray(curve, np.float64)
    at = curve.argmax(-1)
    top = np.take_along_axis(curve, at[..., None], -1)[..., 0]
    inner = np.clip(at, 1, curve.shape[-1] - 2)
    height, _ = vertex(curve, freq_hz, inner)
    # A vertex below zero, or none, is no resonance: the points themselves are then all there is.
    good = (inner == at) & np.isfinite(height) & (height >= top) & (height < MOST_BETWEEN * top)
    return np.asarray(np.where(good, height, top))


def vertex(curve: Real, freq_hz: Real, at: Any) -> tuple[Real, Real]:
    """The height of the peak about the point `at` of a curve of magnitudes, (..., F) and (...) -> (...), and how sharp
    it is: by which share 1/magnitude^2 falls from the points beside it to the peak, 1 or more if nothing is left of it.

    Near a resonance 1/magnitude^2 is a parabola in frequency, so its vertex through the three points about the
    greatest one is the height of the peak itself.
    """
    x = np.log(freq_hz)
    below, above = x[at - 1] - x[at], x[at + 1] - x[at]
    with np.errstate(all="ignore"):
        left, middle, right = (
            np.take_along_axis(curve, (at + step)[..., None], -1)[..., 0] ** -2.0 for step in (-1, 0, 1)
        )
        falling, rising = (left - middle) / below, (right - middle) / above
        bend = (rising - falling) / (above - below)
        lowest = middle - (falling - bend * below) ** 2 / (4 * bend)
        return np.asarray(lowest**-0.5), np.asarray(1 - lowest / np.maximum(left, right))
