"""Many networks that differ from one in a single branch each, from the solution of that one.

In: a compiled network, cases (see `cases.py`) and frequencies. Out: the magnitudes of each driver's voltage and each
input's admittance, case by case. It refuses to know what the cases stand for.

An answer is a quotient of two polynomials of the first degree in any one immittance x (H. W. Bode, Network Analysis
and Feedback Amplifier Design, Van Nostrand 1945, citation from memory; as a change of an inverse matrix: J. Sherman,
W. J. Morrison, Ann. Math. Stat. 21(1), 1950). The denominator is always D(x), the determinant of the network, so

    H(x + d) = H(x) + d H'(x) / (1 + d D'(x) / D(x)).

H' of all immittances comes from one backward run of the compiled steps for each answer, D'/D from one more, since
ln D is the sum of the logarithms of what the elimination divides by. D'/D is the admittance in the loop of a series
element, and the impedance across a parallel one. The time is that of a few sweeps instead of one for each case.

The answer is as exact, against the greater of H before and after, as 1 + d D'/D is: to 1e-9, or 1e-12 of the input's
voltage. Where that loses digits, where the first solution needed pivoting, and where a case changes more than one
branch (a coupled coil that is shorted, say), the case is solved by itself, in time of its own.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import Any

import numpy as np

from shuntwise.response.cases import Case, solve_cases
from shuntwise.response.pivoted import SingularNetwork
from shuntwise.response.solve import Response, Solver, at_posts
from shuntwise.response.tape import Axis, Complex, Mask, Real, Settled, by_parameter

LEAST_SHARE = 1e-5
"""Where 1 + d D'/D is under this fraction of its terms, five digits of sixteen are lost: solved by itself."""

BLOCK_NUMBERS = 4_000_000
"""Complex numbers held for one block of frequencies (64 MB): every step of the plan is kept while it is run back."""

BLOCK_CASES = 256
"""Cases that are solved by themselves in one run."""

POWERS = {"R": (0, 1), "L": (1, 1), "C": (-1, -1)}
"""The impedance of an element of value v: s to the first times v to the second."""


class CaseCurves:
    """All cases of a network, each (cases, F). The methods raise KeyError and SingularNetwork as `Response` does.

    Memory: four numbers for each case and frequency, and BLOCK_NUMBERS, however many answers are asked for.
    """

    def __init__(self, solver: Solver, cases: Sequence[Case], freq_hz: Real) -> None:
        plan = solver.plan
        if plan.floating:
            raise SingularNetwork(plan.floating, float(freq_hz[0]))
        self._solver, self._cases, self.freq_hz = solver, cases, freq_hz
        self._parameters = [float(p) for p in plan.parameters()]
        runs = [plan.in_one_run(case) for case in cases]
        self._alone: Mask = np.array([run is None for run in runs], np.bool_)
        """The cases that are solved by themselves."""
        self._pivoted: Mask = np.zeros(freq_hz.size, np.bool_)
        """The frequencies at which all are, since the first solution needed pivoting there."""
        self._first = np.array([plan.parameter_number(next(iter(case))) for case in cases], np.intp)
        self._changes, self._units = self._immittances(runs)
        self._gain: Complex = np.zeros((len(cases), freq_hz.size), np.complex128)
        self._find_gains()
        alone, others = np.flatnonzero(self._alone), np.flatnonzero(~self._alone)
        everywhere = np.arange(freq_hz.size)
        self._apart = [*self._solved(alone, everywhere), *self._solved(others, np.flatnonzero(self._pivoted))]

    def driver_voltage(self, name: str) -> Real:
        """|V| over a driver (V)."""
        driver = next((d for d in self._solver.network.drivers if d.name == name), None)
        if driver is None:
            raise KeyError(f"no driver is called {name!r}")
        register = self._solver.plan.voltage_between(driver.plus, driver.minus)
        return self._curves(register, lambda response: response.driver_voltage(name))

    def admittance(self, feed: str) -> Real:
        """|I/V| at an input, the amplifiers of the other inputs at rest (S)."""
        if feed not in self._solver.plan.every_feed:
            raise KeyError(f"no input is called {feed!r}")
        register = self._solver.plan.input_admittance(feed)
        network = self._solver.network
        return self._curves(
            register, lambda response: response.admittance(feed), lambda siemens: at_posts(network, feed, siemens)
        )

    @property
    def solved_alone(self) -> int:
        """How many cases the formula was no good for."""
        return int(np.count_nonzero(self._alone))

    # --- the formula

    def _immittances(self, runs: Sequence[bool | None]) -> tuple[Real, Real]:
        """By case and power of s (0, 1, -1): the change d, and dx/dp of the first element's value p; (cases, 3) each.

        x is the impedance of a series run, or the admittance of elements in parallel.
        """
        elements = self._solver.network.element
        changes, units = np.zeros((len(runs), 3)), np.zeros((len(runs), 3))
        for number, (case, series) in enumerate(zip(self._cases, runs, strict=True)):
            if series is None:
                units[number] = 1, 0, 0
                continue
            sign = 1 if series else -1
            for place, (name, value) in enumerate(case.items()):
                power, exponent = (sign * n for n in POWERS[elements[name].kind])
                before = elements[name].value
                changes[number, power] += value**exponent - before**exponent
                if place == 0:
                    units[number, power] = exponent * before ** (exponent - 1)
        return changes, units

    def _find_gains(self) -> None:
        """d / (1 + d D'/D) for every case; also finds the cases and frequencies for which that is no good."""
        plan, network = self._solver.plan, self._solver.network
        powers = plan.determinant()
        # All answers are worked out with it, so that every step that is watched has been seen.
        answers = [plan.voltage_between(d.plus, d.minus) for d in network.drivers]
        answers += [plan.input_admittance(f.name) for f in network.feeds]
        for part, registers, slope in self._blocks([*powers, *answers]):
            for answer in answers:
                self._pivoted[part] |= ~np.isfinite(registers[answer])
            with np.errstate(all="ignore"):
                slopes = slope({r: power / registers[r] for r, power in powers.items()})
                change = self._changes @ _powers_of_s(self.freq_hz[part])
                product = change * slopes
                whole = 1 + product
                self._gain[:, part] = change / whole
                good = np.abs(whole) > LEAST_SHARE * np.maximum(1, np.abs(product))
            self._alone |= ~(good | self._pivoted[part]).all(-1)

    def _curves(
        self,
        register: int,
        direct: Callable[[Response], Complex],
        turned: Callable[[Complex], Complex] = lambda value: value,
    ) -> Real:
        """The magnitudes of a register in all cases; `turned` makes of it what `direct` gives."""
        curves = np.empty((len(self._cases), self.freq_hz.size))
        for part, registers, slope in self._blocks([register]):
            with np.errstate(all="ignore"):
                value = registers[register] + self._gain[:, part] * slope({register: 1.0})
                curves[:, part] = np.abs(turned(value))
        for rows, columns, response in self._apart:
            curves[np.ix_(rows, columns)] = np.abs(direct(response))
        return curves

    def _blocks(self, wanted: list[int]) -> Iterator[tuple[slice, Any, Callable[[Mapping[int, Any]], Complex]]]:
        """Some frequencies at a time: which, the registers, and what gives dH/dx, (cases, F), of a sum of registers."""
        tape = self._solver.plan.tape
        settled = Settled(tape, self._parameters)
        step = max(1, BLOCK_NUMBERS // len(tape.steps))
        for first in range(0, self.freq_hz.size, step):
            part = slice(first, min(first + step, self.freq_hz.size))
            axis = Axis(self.freq_hz[part])
            registers: list[Complex | None] = []
            flagged = tape.evaluate(wanted, registers, settled, axis)
            if flagged is not None:
                self._pivoted[part] |= flagged
            per_unit = 1 / (self._units @ _powers_of_s(self.freq_hz[part]))

            def slope(
                outputs: Mapping[int, Any], axis: Axis = axis, registers: Any = registers, per_unit: Any = per_unit
            ) -> Complex:
                by_coefficient, _ = tape.gradient(outputs, registers, settled.coefficients, axis)
                found = by_parameter(tape.coefficients, by_coefficient, self._parameters)
                nothing = np.zeros(axis.omega.shape, np.complex128)
                return np.asarray(np.array([found.get(int(p), nothing) for p in self._first]) * per_unit)

            yield part, registers, slope

    # --- cases solved by themselves

    def _solved(self, rows: Any, columns: Any) -> Iterator[tuple[Any, Any, Response]]:
        """Numbers of cases and frequencies, some at a time, and their response."""
        for first in range(0, rows.size if columns.size else 0, BLOCK_CASES):
            some = rows[first : first + BLOCK_CASES]
            cases = [self._cases[number] for number in some]
            yield some, columns, solve_cases(self._solver, cases, self.freq_hz[columns], parts=False)


def _powers_of_s(freq_hz: Real) -> Complex:
    """1, s and 1/s, (3, F)."""
    s = 2j * np.pi * freq_hz
    return np.array([np.ones_like(s), s, 1 / s])
