"""Straight-line complex arithmetic over a frequency axis: the machine that a compiled network runs on.

In: a list of steps (sum, difference, product, reciprocal, and Laurent sums in s = j omega whose
coefficients come from element values), values for the parameters, and frequencies. Out: the wanted
registers, the points at which a step lost too many digits, and exact derivatives by running the same
steps backwards. It refuses to know what a node, a branch or a volt is.

A step is recorded once and has one value per frequency. Nothing is evaluated until it is wanted, and
then only what it depends on. Equal steps are recorded once.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import NamedTuple

import numpy as np
import numpy.typing as npt

Real = npt.NDArray[np.float64]
Complex = npt.NDArray[np.complex128]
Mask = npt.NDArray[np.bool_]
Scalar = float | Real
"""One number, or one number per build as a column (builds, 1)."""

Column = complex | Complex
"""A coefficient, ready for complex arithmetic: one number, or a column (builds, 1)."""

ZERO, ONE = 0, 1
"""Registers that hold the constants 0 and 1; arithmetic with them is folded away while recording."""

LAURENT, ADD, SUB, MUL, RECIPROCAL, NEGATE = range(6)

GROWTH_LIMIT = 1e3
"""A watched ratio above this has cost three digits: the point is solved again with pivoting."""

VANISHING = 1e-12
"""A lossless sum below this fraction of its terms is taken for zero: the point is solved again."""

CHUNK_POINTS = 4096
"""Points per chunk of a many-builds run: about eight live registers of 64 KiB fit a level-2 cache."""

Monomial = tuple[tuple[int, float], ...]
"""Powers of parameters: ((parameter, exponent), ...); the product of parameter ** exponent."""

Coefficient = tuple[Monomial, ...]
"""A sum of monomials in the parameters. All have the factor +1."""


class Laurent(NamedTuple):
    """sum of coefficient * (j omega) ** power, plus other registers. `terms` are (power, coefficient number)."""

    terms: tuple[tuple[int, int], ...]
    addends: tuple[int, ...]
    can_vanish: bool


class Axis:
    """Angular frequency and the factors (j omega) ** power, whose other part is exactly zero."""

    def __init__(self, freq_hz: Real) -> None:
        omega = 2 * np.pi * freq_hz
        square = omega * omega
        self.omega: Real = omega
        self.factor: dict[int, Complex] = {1: omega * 1j, -1: -1j / omega, 2: -square + 0j, -2: -1 / square + 0j}


@dataclass
class Schedule:
    """The steps that a set of wanted registers needs, for one choice of which parameters vary by build.

    `fixed` steps have one value per frequency and run once; `varying` steps run in every chunk of builds,
    each writing into buffer `slot[step]` (wanted steps write into the result itself).
    """

    fixed: list[int]
    varying: list[int]
    slot: dict[int, int]
    buffers: int


class Tape:
    """Records steps and runs them."""

    def __init__(self) -> None:
        self.steps: list[tuple[int, int, int]] = [(LAURENT, 0, 0), (LAURENT, 0, 0)]
        self.sums: list[Laurent] = [Laurent((), (), False)]
        self.coefficients: list[Coefficient] = []
        self.watched: set[int] = set()
        self._number_of_coefficient: dict[Coefficient, int] = {}
        self._number_of_step: dict[tuple[object, ...], int] = {}
        self._schedules: dict[tuple[tuple[int, ...], frozenset[int]], Schedule] = {}

    # Recording

    def _record(self, code: int, a: int, b: int) -> int:
        key = (code, a, b)
        number = self._number_of_step.get(key)
        if number is None:
            number = self._number_of_step[key] = len(self.steps)
            self.steps.append(key)
        return number

    def coefficient(self, monomials: Iterable[Monomial]) -> int:
        """The number of a coefficient: a sum of monomials in the parameters."""
        key = tuple(monomials)
        number = self._number_of_coefficient.setdefault(key, len(self.coefficients))
        if number == len(self.coefficients):
            self.coefficients.append(key)
        return number

    def laurent(
        self,
        terms: Mapping[int, Sequence[Monomial]],
        addends: Iterable[int] = (),
        can_vanish: bool = False,
    ) -> int:
        """Record sum over powers of coefficient * s ** power, plus the registers `addends`."""
        numbered = tuple((power, self.coefficient(terms[power])) for power in sorted(terms, key=abs, reverse=True))
        others = tuple(a for a in addends if a != ZERO)
        if not numbered and not others:
            return ZERO
        spec = Laurent(numbered, others, can_vanish)
        number = self._number_of_step.get(spec)
        if number is None:
            number = self._number_of_step[spec] = len(self.steps)
            self.steps.append((LAURENT, len(self.sums), 0))
            self.sums.append(spec)
        return number

    def add(self, a: int, b: int) -> int:
        if a == ZERO or b == ZERO:
            return a + b
        return self._record(ADD, min(a, b), max(a, b))

    def sub(self, a: int, b: int) -> int:
        if b == ZERO:
            return a
        if a == b:
            return ZERO
        return self.neg(b) if a == ZERO else self._record(SUB, a, b)

    def mul(self, a: int, b: int) -> int:
        if ZERO in (a, b):
            return ZERO
        if ONE in (a, b):
            return a + b - ONE
        return self._record(MUL, min(a, b), max(a, b))

    def neg(self, a: int) -> int:
        if a == ZERO:
            return ZERO
        code, inner, _ = self.steps[a]
        return inner if code == NEGATE else self._record(NEGATE, a, 0)

    def reciprocal(self, a: int) -> int:
        if a == ONE:
            return ONE
        code, inner, _ = self.steps[a]
        return inner if code == RECIPROCAL else self._record(RECIPROCAL, a, 0)

    def watch(self, a: int) -> None:
        """Flag the points where |register a| exceeds GROWTH_LIMIT."""
        if a not in (ZERO, ONE):
            self.watched.add(a)

    # Selecting

    def operands(self, step: int) -> tuple[int, ...]:
        code, a, b = self.steps[step]
        if code == LAURENT:
            return self.sums[a].addends
        return (a,) if code in (RECIPROCAL, NEGATE) else (a, b)

    def needed(self, wanted: Iterable[int], known: Sequence[object] = ()) -> list[int]:
        """The steps behind `wanted`, in order, without those whose entry in `known` is set."""
        seen: set[int] = set()
        stack = [step for step in wanted if step > ONE]
        while stack:
            step = stack.pop()
            if step in seen or (step < len(known) and known[step] is not None):
                continue
            seen.add(step)
            stack.extend(a for a in self.operands(step) if a > ONE)
        return sorted(seen)

    def _schedule(self, wanted: tuple[int, ...], varying: frozenset[int]) -> Schedule:
        """Split the needed steps by whether they depend on a varying parameter, and share out buffers."""
        key = (wanted, varying)
        known = self._schedules.get(key)
        if known is not None:
            return known
        moves = [any(p in varying for mono in c for p, _ in mono) for c in self.coefficients]
        big: set[int] = set()
        schedule = Schedule([], [], {}, 0)
        for step in self.needed(wanted):
            code, a, _ = self.steps[step]
            own = code == LAURENT and any(moves[c] for _, c in self.sums[a].terms)
            if own or any(o in big for o in self.operands(step)):
                big.add(step)
                schedule.varying.append(step)
            else:
                schedule.fixed.append(step)
        last_use = {o: step for step in schedule.varying for o in self.operands(step)}
        keep = set(wanted)
        free: list[int] = []
        for step in schedule.varying:
            operands = self.operands(step)
            dying = [schedule.slot[o] for o in set(operands) if o in big - keep and last_use[o] == step]
            # Element by element a result may overwrite its operand, but a third addend must outlive the first sum.
            in_place = len(operands) <= 2
            if in_place:
                free.extend(dying)
            if step not in keep:
                if not free:
                    free.append(schedule.buffers)
                    schedule.buffers += 1
                schedule.slot[step] = free.pop()
                if step not in last_use:
                    free.append(schedule.slot[step])
            if not in_place:
                free.extend(dying)
        self._schedules[key] = schedule
        return schedule

    # Running

    def evaluate_coefficients(self, parameters: Sequence[Scalar]) -> list[Column]:
        """The value of every coefficient: one number, or a column where a parameter varies by build."""
        return [_polynomial(monomials, parameters) + 0j for monomials in self.coefficients]

    def evaluate(
        self, wanted: Iterable[int], registers: list[Complex | None], coefficients: Sequence[Column], axis: Axis
    ) -> Mask | None:
        """Fill the registers behind `wanted` with arrays (F,) where they are still None; return flagged points."""
        if registers:
            steps = self.needed(wanted, registers)
        else:
            steps = self._schedule(tuple(wanted), frozenset()).fixed
        registers.extend([None] * (len(self.steps) - len(registers)))
        registers[ZERO], registers[ONE] = _CONSTANTS
        suspects: list[Mask] = []
        with np.errstate(all="ignore"):
            self._execute(steps, registers, coefficients, axis, None, suspects)
        return _any_of(suspects)

    def run(
        self, wanted: Sequence[int], parameters: Sequence[Scalar], freq_hz: Real
    ) -> tuple[list[Complex], Mask | None]:
        """Arrays (builds, F) of the wanted registers for parameters that are floats or columns (builds, 1).

        Memory: the results, the fixed registers (one row each) and a few chunk buffers. Flagged points come
        back as a mask (builds, F) or None.
        """
        axis = Axis(freq_hz)
        varying = frozenset(i for i, value in enumerate(parameters) if isinstance(value, np.ndarray))
        builds = max((p.shape[0] for p in parameters if isinstance(p, np.ndarray)), default=1)
        schedule = self._schedule(tuple(dict.fromkeys(wanted)), varying)
        coefficients = self.evaluate_coefficients(parameters)
        fixed: list[Complex | None] = [None] * len(self.steps)
        fixed[ZERO], fixed[ONE] = _CONSTANTS
        suspects: list[Mask] = []
        results = {step: np.empty((builds, freq_hz.size), np.complex128) for step in set(wanted)}
        mask: Mask | None = None
        rows = max(1, CHUNK_POINTS // max(1, freq_hz.size))
        pool = [np.empty((rows, freq_hz.size), np.complex128) for _ in range(schedule.buffers)]
        with np.errstate(all="ignore"):
            self._execute(schedule.fixed, fixed, coefficients, axis, None, suspects)
            for first in range(0, builds, rows):
                part = slice(first, min(first + rows, builds))
                count = part.stop - part.start
                registers = fixed.copy()
                out: dict[int, Complex] = {step: pool[slot][:count] for step, slot in schedule.slot.items()}
                out.update((step, result[part]) for step, result in results.items())
                now = [c[part] if isinstance(c, np.ndarray) else c for c in coefficients]
                here = suspects.copy()
                self._execute(schedule.varying, registers, now, axis, out, here)
                for step, result in results.items():
                    if step not in schedule.varying:
                        result[part] = registers[step]
                    if not is_finite(result[part]):
                        here.append(~np.isfinite(result[part]))
                if here:
                    mask = np.zeros((builds, freq_hz.size), np.bool_) if mask is None else mask
                    for suspect in here:
                        mask[part] |= suspect
        return [results[step] for step in wanted], mask

    def _execute(
        self,
        steps: Iterable[int],
        registers: list[Complex | None],
        coefficients: Sequence[Column],
        axis: Axis,
        out: Mapping[int, Complex] | None,
        suspects: list[Mask],
    ) -> None:
        """Run `steps` in order; `out` gives each its array, or None to let numpy allocate."""
        table, watched, sums = self.steps, self.watched, self.sums
        reg: list[Complex] = registers  # type: ignore[assignment]  # operands are filled before they are used
        multiply, add, subtract, reciprocal = np.multiply, np.add, np.subtract, np.reciprocal
        target: Complex | None = None
        for step in steps:
            code, a, b = table[step]
            if out is not None:
                target = out[step]
            if code == MUL:
                value = multiply(reg[a], reg[b], target)
            elif code == LAURENT:
                value = _laurent(sums[a], reg, coefficients, axis, target, suspects)
            elif code == RECIPROCAL:
                value = reciprocal(reg[a], target)
            elif code == ADD:
                value = add(reg[a], reg[b], target)
            elif code == SUB:
                value = subtract(reg[a], reg[b], target)
            else:
                value = np.negative(reg[a], target)
            reg[step] = value
            # The sum of squares bounds the greatest square, so one cheap call clears a whole array.
            if step in watched and not np.vdot(value, value).real <= GROWTH_LIMIT**2:
                suspects.append(~(np.abs(value) <= GROWTH_LIMIT))

    def gradient(
        self, output: int, registers: Sequence[Complex | None], coefficients: Sequence[Column], axis: Axis
    ) -> tuple[dict[int, Complex], Complex]:
        """Exact derivatives of a register with respect to every coefficient, and to omega (1/(rad/s)).

        `registers` must hold every step behind `output` (see `evaluate`). The steps are run backwards, each
        handing its derivative on to its operands (A. Griewank, A. Walther, Evaluating Derivatives, 2nd ed.,
        SIAM 2008, chapter 3): the cost is a few forward runs, whatever the number of elements.
        """
        reg: Sequence[Complex] = registers  # type: ignore[assignment]
        by_coefficient: dict[int, Complex] = {}
        by_omega = np.zeros(axis.omega.shape, np.complex128)
        adjoint: dict[int, Complex] = {output: np.ones(axis.omega.shape, np.complex128)}
        s = 1j * axis.omega

        def hand(step: int, amount: Complex) -> None:
            if step > ONE:
                adjoint[step] = adjoint[step] + amount if step in adjoint else amount

        for step in reversed(self.needed([output])):
            bar = adjoint.pop(step, None)
            if bar is None:
                continue
            code, a, b = self.steps[step]
            if code == LAURENT:
                for power, c in self.sums[a].terms:
                    amount = bar * s**power
                    by_coefficient[c] = by_coefficient[c] + amount if c in by_coefficient else amount
                    by_omega += amount * (power * coefficients[c]) / axis.omega
                for addend in self.sums[a].addends:
                    hand(addend, bar)
            elif code == MUL:
                hand(a, bar * reg[b])
                hand(b, bar * reg[a])
            elif code == RECIPROCAL:
                hand(a, -bar * reg[step] ** 2)
            elif code == NEGATE:
                hand(a, -bar)
            else:
                hand(a, bar)
                hand(b, bar if code == ADD else -bar)
        return by_coefficient, by_omega


def by_parameter(
    coefficients: Sequence[Coefficient], by_coefficient: Mapping[int, Complex], parameters: Sequence[float]
) -> dict[int, Complex]:
    """Chain derivatives by coefficient on to derivatives by parameter: d(p**e)/dp = e p**e / p."""
    total: dict[int, Complex] = {}
    for number, slope in by_coefficient.items():
        for monomial in coefficients[number]:
            value = _polynomial((monomial,), parameters)
            for p, exponent in monomial:
                if value != 0:
                    share = slope * (exponent * value / parameters[p])
                else:  # the only parameters that may be zero enter with exponent 1
                    rest = tuple(q for q in monomial if q[0] != p)
                    share = slope * _polynomial((rest,), parameters)
                total[p] = total[p] + share if p in total else share
    return total


def is_finite(values: Complex) -> bool:
    """Whether every value is finite. A finite sum of squares settles it in one call."""
    return bool(np.isfinite(np.vdot(values, values).real)) or bool(np.isfinite(values).all())


_CONSTANTS: tuple[Complex, Complex] = (np.zeros((), np.complex128), np.ones((), np.complex128))


def _any_of(masks: Sequence[Mask]) -> Mask | None:
    return np.logical_or.reduce(masks) if masks else None


def _polynomial(monomials: Coefficient, parameters: Sequence[Scalar]) -> Scalar:
    total: Scalar = 0.0
    for monomial in monomials:
        product: Scalar = 1.0
        for p, exponent in monomial:
            value = parameters[p]
            if exponent == 1:
                product = product * value
            elif exponent == -1:
                product = product / value
            else:
                product = product * value**exponent
        total = total + product
    return total


def _laurent(
    spec: Laurent,
    reg: Sequence[Complex],
    coefficients: Sequence[Column],
    axis: Axis,
    out: Complex | None,
    suspects: list[Mask],
) -> Complex:
    """Evaluate one Laurent sum.

    All of it is complex arithmetic on contiguous arrays: numpy runs that at about twice the speed of the half as many
    real operations on the real and imaginary parts, which lie two apart. Nothing is lost, since the factors
    are purely real or purely imaginary.
    """
    if out is None:
        out = np.empty(axis.omega.shape, np.complex128)
    size = _size(spec, reg, coefficients, axis) if spec.can_vanish else None
    total: Complex | complex | None = None
    for addend in spec.addends:
        total = reg[addend] if total is None else np.add(total, reg[addend], out)
    for power, c in spec.terms:
        if power == 0:
            total = coefficients[c] if total is None else np.add(total, coefficients[c], out)
        elif total is None:
            total = np.multiply(coefficients[c], axis.factor[power], out)
        else:
            total = np.add(total, coefficients[c] * axis.factor[power], out)
    if total is not out:
        out[...] = total
    if size is not None:
        vanishing = ~(np.abs(out) > VANISHING * size)
        if vanishing.any():
            suspects.append(vanishing)
    return out


def _size(spec: Laurent, reg: Sequence[Complex], coefficients: Sequence[Column], axis: Axis) -> Real:
    """The sum of the magnitudes of all terms."""
    terms = [np.abs(coefficients[c] * axis.factor[power] if power else coefficients[c]) for power, c in spec.terms]
    return np.asarray(sum(terms) + sum(np.abs(reg[addend]) for addend in spec.addends))
