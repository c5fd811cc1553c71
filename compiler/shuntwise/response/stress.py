"""What a network bears when an amplifier drives it: volts, amperes and watts from phasors at 1 V.

In: a compiled network, and cases: element values that differ (warm copper, a driver unplugged, a part open or
shorted). Out: one `Response` whose builds are the cases, and the reading of its curves for a signal. It refuses
to know what any part is rated for.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from shuntwise.network.network import Branch, Network
from shuntwise.response.programme import STEADY, power_shares
from shuntwise.response.solve import Response, Solver
from shuntwise.response.tape import Real

Case = Mapping[str, float]
"""Element values (and couplings) by name that differ from the network's."""

BAND_HZ = (20.0, 20_000.0)
STEPS_PER_OCTAVE = 48

OPEN = {"R": 1e12, "L": 1e9, "C": 1e-21}
SHORT = {"R": 1e-9, "L": 1e-12, "C": 1e6}
"""Values (ohm, henry, farad) that are open or a short at every audible frequency beside any crossover part.

The solver takes no differences, so they cost no digits, and the network keeps its one compiled plan.
"""


def sweep(low_hz: float = BAND_HZ[0], high_hz: float = BAND_HZ[1], steps_per_octave: int = STEPS_PER_OCTAVE) -> Real:
    """Frequencies in equal steps of log frequency, both ends included; Hz, (F,)."""
    return np.geomspace(low_hz, high_hz, round(np.log2(high_hz / low_hz) * steps_per_octave) + 1)


# --- cases


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
    current of every branch. Raises SingularNetwork.
    """
    plan, network = solver.plan, solver.network
    nominal: dict[str, float] = {element.name: element.value for element in network.elements}
    nominal |= {coupling.name: coupling.k for coupling in network.couplings}
    # One value by case at the least, so that the answer always has an axis of cases.
    touched = dict.fromkeys((network.elements[0].name, *(name for case in cases for name in case)))
    values = {name: np.array([case.get(name, nominal[name]) for case in cases]) for name in touched}
    response = solver.solve(freq_hz, values=values, nodes=())
    wanted = [plan.voltage_between(driver.plus, driver.minus) for driver in network.drivers]
    wanted += [plan.input_admittance(feed.name) for feed in network.feeds]
    if parts:
        for branch in network.branches:
            wanted.append(plan.voltage_between(branch.plus, branch.minus))
            wanted += [plan.element_current(name) for name in branch.elements if network.element[name].kind == "R"]
            wanted.append(plan.element_current(branch.through))
    response.points.fill(wanted)
    return response


# --- signals


@dataclass(frozen=True, eq=False)
class Signal:
    """What the amplifier gives: a sine of `sine_v`, or a programme of `programme_v` (V r.m.s.).

    The programme's peaks are `crest` times its r.m.s. value. `shares` are its power by frequency, (F,); None is a
    steady sine at the worst frequency.
    """

    programme_name: str
    sine_v: float
    programme_v: float
    crest: float
    shares: Real | None

    @property
    def peak_v(self) -> float:
        """The greatest voltage that the amplifier ever gives."""
        return float(self.sine_v * np.sqrt(2))

    def at(self, freq_hz: Real) -> Signal:
        """The same signal for another sweep."""
        return replace(self, shares=None if self.shares is None else power_shares(self.programme_name, freq_hz))

    def sine(self, per_volt: Real) -> Real:
        """The greatest r.m.s. value over frequency with the full sine, (...); `per_volt` (..., F), for 1 V."""
        return np.asarray(self.sine_v * greatest(per_volt))

    def programme(self, per_volt: Real) -> Real:
        """The r.m.s. value with the programme, (...); `per_volt` (..., F), for 1 V at each frequency."""
        if self.shares is None:
            return np.asarray(self.programme_v * greatest(per_volt))
        return np.asarray(self.programme_v * np.sqrt(per_volt**2 @ self.shares))

    def heat(self, per_square_volt: Real) -> Real:
        """The power with the programme (W), (...); `per_square_volt` (..., F) is the power for 1 V."""
        return np.asarray(self.programme(np.sqrt(per_square_volt)) ** 2)


def amplifier_signal(power_w: float, load_ohm: float, programme: str, crest: float, freq_hz: Real) -> Signal:
    """The signal of an amplifier of a rated power into a rated load.

    Its sine is U = sqrt(P R) r.m.s., its greatest instantaneous voltage sqrt(2) U. A programme driven until its
    peaks just reach that voltage has the r.m.s. value sqrt(2) U / crest. Crest factor 2 is that of the clipped
    programme signal of the IEC 60268 series (1.8 to 2.2: IEC 60268-7:2010, clause 8.3.2): the amplifier then
    gives half its rated power, all day. A steady sine has its own crest factor.
    """
    sine_v = float(np.sqrt(power_w * load_ohm))
    peak_v = float(np.sqrt(2) * sine_v)
    if programme == STEADY:
        return Signal(programme, sine_v, sine_v, float(np.sqrt(2)), None)
    return Signal(programme, sine_v, peak_v / crest, crest, power_shares(programme, freq_hz))


def greatest(curve: Real) -> Real:
    """The greatest value of a curve of magnitudes (..., F) -> (...), found between the points of the sweep as well.

    Near a resonance 1/magnitude^2 is a parabola in frequency, so its vertex through the three points about the
    greatest one is the height of the peak itself.
    """
    curve = np.asarray(curve, np.float64)
    at = curve.argmax(-1)
    top = np.take_along_axis(curve, at[..., None], -1)[..., 0]
    inner = np.clip(at, 1, curve.shape[-1] - 2)
    with np.errstate(all="ignore"):
        left, middle, right = (
            np.take_along_axis(curve, (inner + step)[..., None], -1)[..., 0] ** -2.0 for step in (-1, 0, 1)
        )
        bend = left - 2 * middle + right
        vertex = middle - (right - left) ** 2 / (8 * bend)
        peak = vertex**-0.5
    # A vertex below zero, or none, is no resonance: the points themselves are then all there is.
    good = (inner == at) & np.isfinite(peak) & (peak >= top) & (vertex > 0.2 * middle)
    return np.asarray(np.where(good, peak, top))
