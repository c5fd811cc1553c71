"""Straight-line complex arithmetic over a frequency axis: the machine that a compiled network runs on.

In: a list of steps (sum, difference, product, reciprocal, and Laurent sums in s = j omega whose
coefficients come from element values), values for the parameters, and frequencies. Out: the wanted
registers, the points at which a step lost too many digits, and exact derivatives by running the same
steps backwards. It refuses to know what a node, a branch or a volt is.

A step is recorded once and has one value per frequency. Nothing is evaluated until it is wanted, and
then only what it depends on. Equal steps are recorded once.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import reduce
from typing import NamedTuple

import numpy as np
import numpy.typing as npt

Real = npt.NDArray[np.float64]
Complex = npt.NDArray[np.complex128]
Mask = npt.NDArray[np.bool_]
Scalar = float | Real
"""One number, or one number per build as a column (builds, 1)."""

ZERO, ONE = 0, 1
"""Registers that hold the constants 0 and 1; arithmetic with them is folded away while recording."""

LAURENT, ADD, SUB, MUL, RECIPROCAL, NEGATE = range(6)

GROWTH_LIMIT = 1e3
"""A watched ratio above this has cost three digits: the point is solved again with pivoting."""

VANISHING = 1e-12
"""A lossless sum below this fraction of its terms is taken for zero: the point is solved again."""

CHUNK_POINTS = 6144
"""Points per chunk of a run over builds: few enough for a level-2 cache, enough to outweigh the calls."""

PRODUCT_LIMIT = 200_000
"""Multiplications in one matrix product."""

POWERS = (0, 1, -1, 2, -2)
"""The powers of s that occur; those of a pair of coupled windings go to the second."""

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
    """Angular frequency, and (j omega) ** power as pairs of real and imaginary part, one row for each of POWERS.

    A Laurent sum is then a row of coefficients times this matrix, and all sums of a run are one matrix product.
    Nothing is lost by it: every power is purely real or purely imaginary, so all other products are zero.
    """

    def __init__(self, freq_hz: Real) -> None:
        omega = 2 * np.pi * freq_hz
        square = omega * omega
        self.omega: Real = omega
        self.powers: Real = np.zeros((len(POWERS), 2 * omega.size))
        for row, half, values in ((0, 0, 1.0), (1, 1, omega), (2, 1, -1 / omega), (3, 0, -square), (4, 0, -1 / square)):
            self.powers[row, half::2] = values


class Sums:
    """The Laurent sums of some steps, before their addends: `matrix[steps[step]]` are the coefficients of a step.

    `matrix` is (sums, builds, powers), builds being 1 if nothing varies.
    """

    def __init__(self, tape: Tape, steps: Iterable[int], coefficients: Sequence[Scalar], builds: int) -> None:
        specs = [(step, tape.sums[tape.steps[step][1]]) for step in steps if tape.steps[step][0] == LAURENT]
        specs = [(step, spec) for step, spec in specs if spec.terms]
        self.steps = {step: row for row, (step, _) in enumerate(specs)}
        wide = any(abs(power) > 1 for _, spec in specs for power, _ in spec.terms)
        self.matrix: Real = np.zeros((len(specs), builds, 5 if wide else 3))
        for i, (_, spec) in enumerate(specs):
            for power, c in spec.terms:
                self.matrix[i, :, POWERS.index(power)] = np.ravel(coefficients[c])

    def evaluate(self, axis: Axis, part: slice, out: Real | None = None) -> dict[int, Complex]:
        """The sums by step, each (F,) or (builds in `part`, F). `out` may give memory, 2 F floats to a row."""
        count, builds, width = self.matrix.shape
        rows = np.ascontiguousarray(self.matrix[:, part]).reshape(-1, width)
        powers = axis.powers[:width]
        single = builds == 1 and out is None  # among varying sums one build keeps its axis: they grow in place
        out = np.empty((rows.shape[0], powers.shape[1])) if out is None else out[: rows.shape[0]]
        # Products this small stay on one thread, which is faster for them than starting others.
        step = max(1, PRODUCT_LIMIT // powers.size)
        for first in range(0, rows.shape[0], step):
            np.matmul(rows[first : first + step], powers, out[first : first + step])
        each = out.view(np.complex128).reshape(count, -1, axis.omega.size)
        return {step: each[i, 0] if single else each[i] for step, i in self.steps.items()}

    def size(self, step: int, axis: Axis, part: slice) -> Real | float:
        """The sum of the magnitudes of the terms of one sum, shaped as its value."""
        if step not in self.steps:
            return 0.0
        matrix = self.matrix[self.steps[step], part]
        size = np.abs(matrix) @ np.abs(axis.powers[: matrix.shape[-1]])
        size = size[:, 0::2] + size[:, 1::2]
        return np.asarray(size[0] if self.matrix.shape[1] == 1 else size)


KEPT_SUMS = 32
"""How many questions a circuit keeps its matrices for: figures ask a handful, over and over. A ladder of thousands that
is asked for node after node would keep one of its own size for each."""


class Settled:
    """The coefficients of a tape for one choice of parameters: floats, or columns where one varies by build.

    Where none varies, the matrices of the sums that were asked for are kept as well: a search solves a circuit
    hundreds of times at a few frequencies each, and making them anew took longer than the solution.
    """

    def __init__(self, tape: Tape, parameters: Sequence[Scalar]) -> None:
        self.parameters = parameters
        self._tape = tape
        self._coefficients: list[Scalar] = []
        self._sums: dict[tuple[int, ...], Sums] = {}

    @property
    def coefficients(self) -> list[Scalar]:
        """All that the tape has by now."""
        more = self._tape.coefficients[len(self._coefficients) :]
        self._coefficients += [_polynomial(monomials, self.parameters) for monomials in more]
        return self._coefficients

    def sums(self, steps: Sequence[int]) -> Sums:
        """The sums of some steps where no parameter varies."""
        key = tuple(steps)
        if key not in self._sums:
            if len(self._sums) >= KEPT_SUMS:
                self._sums.clear()
            self._sums[key] = Sums(self._tape, key, self.coefficients, 1)
        return self._sums[key]


@dataclass
class Schedule:
    """The steps that a set of wanted registers needs, for one choice of which parameters vary by build.

    `fixed` steps have one value per frequency and run once; `varying` steps run in every chunk of builds,
    each writing into buffer `slot[step]`; wanted steps do not share theirs, and Laurent sums have their own.
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
        numbered = tuple((power, self.coefficient(sums)) for power, sums in terms.items() if sums)
        others = tuple(a for a in addends if a != ZERO)
        if not numbered and len(others) <= 1:
            return others[0] if others else ZERO
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

    def _has_terms(self, step: int) -> bool:
        code, a, _ = self.steps[step]
        return code == LAURENT and bool(self.sums[a].terms)

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
            dying = [
                schedule.slot[o] for o in set(operands) if o in schedule.slot and o not in keep and last_use[o] == step
            ]
            # Element by element a result may overwrite its operand, but a third addend must outlive the first sum.
            in_place = len(operands) <= 2
            if in_place:
                free.extend(dying)
            if not self._has_terms(step):
                if not free:
                    free.append(schedule.buffers)
                    schedule.buffers += 1
                schedule.slot[step] = free.pop()
            if not in_place:
                free.extend(dying)
        self._schedules[key] = schedule
        return schedule

    # Running

    def evaluate(
        self, wanted: Iterable[int], registers: list[Complex | None], settled: Settled, axis: Axis
    ) -> Mask | None:
        """Fill the registers behind `wanted` with arrays (F,) where they are still None; return flagged points."""
        # A first run of the same questions finds its steps ready.
        steps = self.needed(wanted, registers) if registers else self._schedule(tuple(wanted), frozenset()).fixed
        registers.extend([None] * (len(self.steps) - len(registers)))
        registers[ZERO], registers[ONE] = _CONSTANTS
        suspects: list[Mask] = []
        with np.errstate(all="ignore"):
            self._execute(steps, registers, settled.sums(steps), axis, slice(None), None, suspects)
        return np.logical_or.reduce(suspects) if suspects else None

    def run(
        self, wanted: Sequence[int], parameters: Sequence[Scalar], freq_hz: Real
    ) -> Iterator[tuple[slice, list[Complex], Mask | None]]:
        """The wanted registers for parameters that are floats or columns (builds, 1), some builds at a time.

        Yields the slice of builds, an array (builds in the slice, F) for each of `wanted`, and the mask of flagged
        points or None. The arrays are overwritten by the next step. Memory, whatever the number of builds: the fixed
        registers (F each), the coefficients (builds each), and CHUNK_POINTS points for each live register and sum.
        """
        axis = Axis(freq_hz)
        varying = frozenset(i for i, value in enumerate(parameters) if isinstance(value, np.ndarray))
        builds = max((p.shape[0] for p in parameters if isinstance(p, np.ndarray)), default=1)
        schedule = self._schedule(tuple(dict.fromkeys(wanted)), varying)
        coefficients = Settled(self, parameters).coefficients
        fixed: list[Complex | None] = [None] * len(self.steps)
        fixed[ZERO], fixed[ONE] = _CONSTANTS
        always: list[Mask] = []
        rows = min(builds, max(1, CHUNK_POINTS // freq_hz.size))
        pool = [np.empty((rows, freq_hz.size), np.complex128) for _ in range(schedule.buffers)]
        with np.errstate(all="ignore"):
            sums = Sums(self, schedule.fixed, coefficients, 1)
            self._execute(schedule.fixed, fixed, sums, axis, slice(None), None, always)
        # Whole arrays as operands are much faster than a row that numpy repeats, so the repeating is done once.
        used = {o for step in schedule.varying for o in self.operands(step)} - {ZERO, ONE}
        for step in used.intersection(schedule.fixed):
            row = fixed[step]
            assert row is not None
            fixed[step] = np.tile(row, (rows, 1))
        sums = Sums(self, schedule.varying, coefficients, builds)
        memory = np.empty((len(sums.steps) * rows, 2 * freq_hz.size))
        for first in range(0, builds, rows):
            part = slice(first, min(first + rows, builds))
            shape = (part.stop - part.start, freq_hz.size)
            if first == 0 or shape[0] < rows:
                out = {step: pool[slot][: shape[0]] for step, slot in schedule.slot.items()}
                fixed = [r if r is None or r.ndim < 2 else r[: shape[0]] for r in fixed]
            registers, suspects = fixed.copy(), always.copy()
            with np.errstate(all="ignore"):
                self._execute(schedule.varying, registers, sums, axis, part, out, suspects, memory)
            found = [r for r in (registers[step] for step in wanted) if r is not None]
            values = [r if r.shape == shape else np.broadcast_to(r, shape) for r in found]
            suspects += [~np.isfinite(value) for value in values if not is_finite(value)]
            # Steps that do not vary have masks of one row, so these are joined one by one.
            yield part, values, np.broadcast_to(reduce(np.logical_or, suspects), shape) if suspects else None

    def _execute(
        self,
        steps: Iterable[int],
        registers: list[Complex | None],
        sums: Sums,
        axis: Axis,
        part: slice,
        out: Mapping[int, Complex] | None,
        suspects: list[Mask],
        memory: Real | None = None,
    ) -> None:
        """Run `steps` in order for the builds in `part`; `out` gives each its array, or None lets numpy allocate."""
        table, watched = self.steps, self.watched
        reg: list[Complex] = registers  # type: ignore[assignment]  # operands are filled before they are used
        multiply, add, subtract, reciprocal = np.multiply, np.add, np.subtract, np.reciprocal
        lumps = sums.evaluate(axis, part, memory) if sums.steps else {}
        target: Complex | None = None
        for step in steps:
            code, a, b = table[step]
            if out is not None:
                target = out.get(step)
            if code == MUL:
                value = multiply(reg[a], reg[b], target)
            elif code == RECIPROCAL:
                value = reciprocal(reg[a], target)
            elif code == LAURENT:
                value = self._laurent(self.sums[a], reg, lumps.get(step), target)
                if self.sums[a].can_vanish:
                    size = sums.size(step, axis, part) + sum(np.abs(reg[o]) for o in self.sums[a].addends)
                    vanishing = ~(np.abs(value) > VANISHING * size)
                    if vanishing.any():
                        suspects.append(vanishing)
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

    @staticmethod
    def _laurent(spec: Laurent, reg: Sequence[Complex], lump: Complex | None, target: Complex | None) -> Complex:
        """A sum and its addends. The sum has memory of its own, and may grow in place."""
        addends = spec.addends
        if lump is None:
            lump = np.add(reg[addends[0]], reg[addends[1]], target)
            addends = addends[2:]
        for addend in addends:
            np.add(lump, reg[addend], lump)
        return lump

    def gradient(
        self,
        outputs: Mapping[int, Complex | complex],
        registers: Sequence[Complex | None],
        coefficients: Sequence[Scalar],
        axis: Axis,
    ) -> tuple[dict[int, Complex], Complex]:
        """Exact derivatives of a sum of registers with respect to every coefficient, and to omega (1/(rad/s)).

        `outputs` are the registers with the weight of each in the sum, (F,) or a number. `registers` must hold every
        step behind them (see `evaluate`). The steps are run backwards, each handing its derivative on to its operands
        (A. Griewank, A. Walther, Evaluating Derivatives, 2nd ed., SIAM 2008, chapter 3): the cost is a few forward
        runs, whatever the number of elements.
        """
        reg: Sequence[Complex] = registers  # type: ignore[assignment]
        by_coefficient: dict[int, Complex] = {}
        by_omega = np.zeros(axis.omega.shape, np.complex128)
        adjoint: dict[int, Complex] = {
            output: np.broadcast_to(np.asarray(weight, np.complex128), axis.omega.shape)
            for output, weight in outputs.items()
            if output > ONE
        }
        s = 1j * axis.omega
        powers = {power: s**power for power in POWERS}
        per_omega = 1 / axis.omega

        def hand(step: int, amount: Complex) -> None:
            if step > ONE:
                adjoint[step] = adjoint[step] + amount if step in adjoint else amount

        for step in reversed(self.needed(outputs)):
            bar = adjoint.pop(step, None)
            if bar is None:
                continue
            code, a, b = self.steps[step]
            if code == LAURENT:
                for power, c in self.sums[a].terms:
                    amount = bar * powers[power]
                    by_coefficient[c] = by_coefficient[c] + amount if c in by_coefficient else amount
                    if power:
                        by_omega += amount * (power * coefficients[c]) * per_omega
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
