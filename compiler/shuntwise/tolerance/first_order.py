"""How levels and impedances move with each part, to first order and exactly (no differences are taken).

In: a solver, the parts that vary, frequencies. Out: `effects` (parts, frequencies): the change for a part at the upper
end of its tolerance, to first order. It refuses to know distributions.

A part's effect is the derivative by the logarithm of each of its elements, from `response.sensitivity`, summed and
multiplied by the tolerance.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import log

import numpy as np
import numpy.typing as npt

from shuntwise.figures.figure import Term
from shuntwise.response.sensitivity import impedance_sensitivity, voltage_sensitivity
from shuntwise.response.solve import Solver
from shuntwise.tolerance.draws import VaryingPart

Real = npt.NDArray[np.float64]
Complex = npt.NDArray[np.complex128]


def level_effects(solver: Solver, parts: Sequence[VaryingPart], driver: str, freq_hz: npt.ArrayLike) -> Real:
    """The effects on a driver's level (dB): 20/ln 10 Re(dV/V). Zero where the driver has no voltage."""
    response = solver.solve(freq_hz)
    voltage = response.driver_voltage(driver)
    slopes = _by_part(voltage_sensitivity(response, driver), parts, voltage.shape)
    return np.asarray(20 / log(10) * np.where(voltage == 0, 0, slopes / np.where(voltage == 0, 1, voltage)).real)


def impedance_effects(solver: Solver, parts: Sequence[VaryingPart], input_name: str, freq_hz: npt.ArrayLike) -> Real:
    """The effects on the magnitude of an input impedance (ohm): Re(dZ conj(Z)) / |Z|. Raises SingularNetwork."""
    response = solver.solve(freq_hz)
    impedance = response.impedance(input_name)
    slopes = _by_part(impedance_sensitivity(response, input_name), parts, impedance.shape)
    return np.asarray((slopes * impedance.conj()).real / np.abs(impedance))


def figure_effects(solver: Solver, parts: Sequence[VaryingPart], terms: Sequence[Term]) -> Real:
    """The effects on a figure by its first-order form, (parts,), in its unit; zero where it has no form."""
    total = np.zeros(len(parts))
    for of, subject in dict.fromkeys((term.of, term.subject) for term in terms):
        own = [term for term in terms if (term.of, term.subject) == (of, subject)]
        find = level_effects if of == "level" else impedance_effects
        total += find(solver, parts, subject, [term.freq_hz for term in own]) @ [term.weight for term in own]
    return total


def _by_part(slopes: Mapping[str, Complex], parts: Sequence[VaryingPart], shape: tuple[int, ...]) -> Complex:
    result = np.zeros((len(parts), *shape), np.complex128)
    for i, part in enumerate(parts):
        for name in part.elements:
            result[i] += part.tolerance * slopes[name]
    return result
