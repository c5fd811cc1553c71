"""Every branch of a network open, and every branch shorted, from one solution: what reaches the drivers and flows in.

In: a solver, branches, frequencies. Out: magnitudes of driver voltages and input admittances by case. It refuses to
know which failures matter.

A change of one branch is a change of rank one of the network's equations (J. Sherman, W. J. Morrison, Adjustment of an
inverse matrix, Ann. Math. Stat. 21(1), 1950): an impedance dz put into the branch makes an answer x into
x + x' dz / (1 + dz Y), x' being dx/dz and Y the current that 1 V in a row with the branch drives in it. Y is also the
derivative of ln det by z, so both come for all branches at once from running the compiled steps backwards, and the time
grows with the number of branches instead of with its square. Open is dz without bound, shorted is dz = -z.

Coupled windings, drivers, points that needed pivoting, and cases in which the formula would cancel digits are solved
directly.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from shuntwise.network.network import Branch, Element
from shuntwise.response.cases import opened, shorted, solve_cases
from shuntwise.response.solve import Points, Solver
from shuntwise.response.tape import ONE, Complex, Real, by_parameter

CANCELLED = 1e-6
"""A sum this much smaller than its terms has lost half of the digits: such a case is solved directly."""

ROOM = 2_000_000
"""Numbers (parameters x frequencies) of one gradient that are held at a time."""

DIRECT = 200
"""Cases that are solved directly at a time."""


@dataclass(frozen=True)
class Failed:
    """Magnitudes by driver (V) and by input (S), each (2, cases, F): first every case open, then every case shorted."""

    voltage: Mapping[str, Real]
    admittance: Mapping[str, Real]


def fail_each(solver: Solver, cases: Sequence[Sequence[Branch]], freq_hz: Real) -> Failed:
    """Open and short each case's branches, for 1 V at every input; at `freq_hz` (F,). Raises SingularNetwork."""
    network = solver.network
    shape = (2, len(cases), freq_hz.size)
    failed = Failed(
        {driver.name: np.empty(shape) for driver in network.drivers},
        {feed.name: np.empty(shape) for feed in network.feeds},
    )
    size = len(network.elements) + 2 * len(network.couplings)
    step = max(8, ROOM // max(1, size))
    for first in range(0, freq_hz.size, step):
        part = slice(first, min(first + step, freq_hz.size))
        left = _by_rank_one(solver, cases, freq_hz[part], failed, part)
        _directly(solver, cases, freq_hz[part], failed, part, left)
    return failed


def _by_rank_one(
    solver: Solver, cases: Sequence[Sequence[Branch]], freq_hz: Real, failed: Failed, part: slice
) -> np.ndarray:
    """Fill what the formula can; the mask (cases, F) of what is left."""
    plan, network = solver.plan, solver.network
    points = Points(plan, plan.parameters(), freq_hz)
    outputs = [(failed.voltage[d.name], plan.voltage_between(d.plus, d.minus)) for d in network.drivers]
    outputs += [(failed.admittance[feed.name], plan.input_admittance(feed.name)) for feed in network.feeds]
    pivots = plan.log_determinant()
    points.fill([*(register for _, register in outputs), *pivots])
    left = np.zeros((len(cases), freq_hz.size), np.bool_)
    if points.flagged is not None:
        left |= points.flagged
    with np.errstate(all="ignore"):
        weights = {register: times / _value(points, register) for register, times in pivots.items()}
        by_z = _slopes(points, weights)
        slopes = [
            _slopes(points, {register: np.ones(freq_hz.size, np.complex128)}) if register > ONE else {}
            for _, register in outputs
        ]
        nominal = [_value(points, register) for _, register in outputs]
        s: Complex = np.asarray(2j * np.pi * freq_hz, np.complex128)
        for case, branches in enumerate(cases):
            branch = branches[0]
            in_series = plan.stands_in_series(branch.through)
            if in_series is None or len(branches) > 1 or not _in_a_row(solver, branch):
                left[case] = True
                continue
            number = plan.parameter_number(branch.through)
            z = sum((_impedance(network.element[name], s) for name in branch.elements), np.zeros_like(s))
            per_z = 1 / _impedance_slope(network.element[branch.through], s)
            slope = by_z.get(number, np.zeros_like(s)) * per_z
            admittance, rest = (slope, 1 - z * slope) if in_series else (1 / z + slope, -z * slope)
            left[case] |= ~(np.minimum(np.abs(z * admittance), np.abs(rest)) > CANCELLED)
            for (into, _), value, found in zip(outputs, nominal, slopes, strict=True):
                moved = found[number] * per_z if number in found else np.zeros_like(s)
                into[0, case, part] = np.abs(value + moved / admittance)
                into[1, case, part] = np.abs(value - moved * z / rest)
        for into, _ in outputs:
            left |= ~np.isfinite(into[:, :, part]).all(axis=0)
    return left


def _directly(
    solver: Solver, cases: Sequence[Sequence[Branch]], freq_hz: Real, failed: Failed, part: slice, left: np.ndarray
) -> None:
    """Solve what is left, each case at the frequencies at which any of them is."""
    which = np.flatnonzero(left.any(axis=1))
    for first in range(0, which.size, DIRECT):
        some = which[first : first + DIRECT]
        at = np.flatnonzero(left[some].any(axis=0))
        for row, make in enumerate((opened, shorted)):
            changes = [[make(solver.network, branch) for branch in cases[c]] for c in some]
            values = [{name: value for change in each for name, value in change.items()} for each in changes]
            response = solve_cases(solver, values, freq_hz[at], parts=False)
            for driver, into in failed.voltage.items():
                into[row, some[:, None], part.start + at] = np.abs(response.driver_voltage(driver))
            for feed, into in failed.admittance.items():
                into[row, some[:, None], part.start + at] = np.abs(response.admittance(feed))


def _in_a_row(solver: Solver, branch: Branch) -> bool:
    """Do the branch's elements follow one another from its plus to its minus?"""
    path = [branch.plus]
    for name in branch.elements:
        element = solver.network.element[name]
        if path[-1] not in (element.plus, element.minus):
            return False
        path.append(element.minus if element.plus == path[-1] else element.plus)
    return path[-1] == branch.minus and len({*path}) == len(path)


def _value(points: Points, register: int) -> Complex:
    found = points.registers[register]
    assert found is not None
    return np.broadcast_to(found, points.shape)


def _slopes(points: Points, weights: Mapping[int, Complex]) -> dict[int, Complex]:
    """The derivative of a weighted sum of registers by every parameter, (F,)."""
    parameters = [float(p) for p in points.parameters]
    by_coefficient, _ = points.plan.tape.gradient(weights, points.registers, points.coefficients, points.axis)
    return by_parameter(points.plan.tape.coefficients, by_coefficient, parameters)


def _impedance(element: Element, s: Complex) -> Complex:
    match element.kind:
        case "R":
            return np.full_like(s, element.value)
        case "L":
            return s * element.value
    return 1 / (s * element.value)


def _impedance_slope(element: Element, s: Complex) -> Complex:
    """The derivative of an element's impedance by its value."""
    match element.kind:
        case "R":
            return np.ones_like(s)
        case "L":
            return s
    return -1 / (s * element.value**2)
