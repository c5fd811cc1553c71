"""Exact first-order sensitivities: how an answer moves with every element value.

In: a `Response` of one sweep (values may differ from the network's, but not by build). Out: derivatives of a
driver voltage or an input impedance by every element and coupling, and by frequency. It refuses to know
tolerances.

The compiled steps are run backwards once (`Tape.gradient`), which is the adjoint of the whole elimination;
points that needed pivoting use the adjoint network. No difference is ever taken, so nothing cancels.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from shuntwise.network.network import DriverPort
from shuntwise.response.pivoted import PivotedPoints
from shuntwise.response.solve import Response
from shuntwise.response.tape import ONE, Complex, Real, by_parameter

Slopes = dict[int, Complex]


def voltage_sensitivity(response: Response, driver: str) -> dict[str, Complex]:
    """p dV/dp of a driver's voltage V by every element p, and dV/dk by every coupling; complex (F,), V.

    The change of V for a small relative change x of an element is x times its entry; in level that is
    20/ln 10 Re(entry / V) dB per unit of x.
    """
    ends = _driver(response, driver)
    return _by_name(response, voltage_slopes(response, ends.plus, ends.minus)[0])


def impedance_sensitivity(response: Response, input_name: str) -> dict[str, Complex]:
    """p dZ/dp of an input impedance Z by every element p, and dZ/dk by every coupling; complex (F,), ohm."""
    source_ohm = next(response.network.source_ohm(f) for f in response.network.feeds if f.name == input_name)
    impedance = response.impedance(input_name) + source_ohm  # the slopes are those of all that the source sees
    slopes, _ = _slopes(
        response,
        response.points.plan.input_admittance(input_name),
        lambda points: points.admittance_slopes(input_name),
    )
    # Z = 1/Y
    return {name: -(impedance**2) * slope for name, slope in _by_name(response, slopes).items()}


def voltage_slopes(response: Response, plus: str, minus: str) -> tuple[Slopes, Complex]:
    """Derivatives of V(plus) - V(minus) by parameter number, and by omega (V per rad/s); (F,)."""
    weights = [1.0] * len(response.network.feeds)
    return _slopes(
        response,
        response.points.plan.voltage_between(plus, minus),
        lambda points: points.voltage_slopes(plus, minus, weights),
    )


def group_delay(response: Response, driver: str) -> Real:
    """-d phase / d omega of a driver's voltage (s, real (F,)), from its exact derivative.

    Good to about 1e-12 of the phase slope of the sharpest resonance. Zero where the voltage is zero. Raises
    ValueError where values vary by build.
    """
    ratio = omega_slope(response, driver)
    return np.asarray(np.where(np.isfinite(ratio), -ratio.imag, 0.0))


def omega_slope(response: Response, driver: str) -> Complex:
    """V'/V of a driver's voltage V, its derivative by omega over itself (s); complex (F,), not finite where V is 0."""
    ends = _driver(response, driver)
    with np.errstate(all="ignore"):
        return np.asarray(voltage_slopes(response, ends.plus, ends.minus)[1] / response.driver_voltage(driver))


def _driver(response: Response, name: str) -> DriverPort:
    ends = next((d for d in response.network.drivers if d.name == name), None)
    if ends is None:
        raise KeyError(f"no driver is called {name!r}")
    return ends


def _slopes(
    response: Response, register: int, careful: Callable[[PivotedPoints], tuple[Slopes, Complex]]
) -> tuple[Slopes, Complex]:
    points = response.points
    if points.varies:
        raise ValueError("sensitivities need one value for each element, not one for each build")
    plan, network = points.plan, points.plan.network
    size = len(network.elements) + len(network.couplings)
    slopes: Slopes = {p: np.zeros(points.shape, np.complex128) for p in range(size)}
    by_omega: Complex = np.zeros(points.shape, np.complex128)
    if register > ONE:
        points.fill([register])
        parameters = [float(p) for p in points.parameters]
        with np.errstate(all="ignore"):
            by_coefficient, by_omega = plan.tape.gradient(
                {register: 1.0}, points.registers, points.settled.coefficients, points.axis
            )
            found = by_parameter(plan.tape.coefficients, by_coefficient, parameters)
        for p, slope in found.items():
            if p < size:
                slopes[p] = slopes[p] + slope
            else:  # (1 - k)(1 + k) of the coupling that stands as far before it as there are couplings
                k = p - len(network.couplings)
                slopes[k] = slopes[k] - 2 * parameters[k] * slope
    careful_points = points.pivoted()
    if careful_points is not None:
        at = points.flagged
        patches, by_omega_there = careful(careful_points)
        by_omega[at] = by_omega_there
        for p, patch in patches.items():
            slopes[p][at] = patch
    return slopes, by_omega


def _by_name(response: Response, slopes: Slopes) -> dict[str, Complex]:
    """Slopes by name; those of elements multiplied by the element value."""
    network, parameters = response.network, response.points.parameters
    named = {e.name: slopes[i] * parameters[i] for i, e in enumerate(network.elements)}
    first = len(network.elements)
    return named | {c.name: slopes[first + i] for i, c in enumerate(network.couplings)}
