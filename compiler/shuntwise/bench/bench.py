"""The bench of one circuit: its sheet, the verdict on readings, and what to read next.

In: a circuit, the instruments, measured parts, readings. Out: `BenchSheet`, `Verdict`, `Proposal`. Each is worked out
when it is asked for; nothing here knows files or screens.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from functools import cached_property
from itertools import pairwise

import numpy as np

from shuntwise.bench.catalogue import Neighbours, catalogue, cells, edit
from shuntwise.bench.choosing import conditional, expected_gains, greedy
from shuntwise.bench.classes import classes
from shuntwise.bench.dictionary import Columns, Dictionary
from shuntwise.bench.faults import Fault
from shuntwise.bench.inference import Lookup, lookup, shares
from shuntwise.bench.meters import scale_of
from shuntwise.bench.naming import Telling
from shuntwise.bench.pool import pool
from shuntwise.bench.rig import Real, Rig, Whole, rig_of
from shuntwise.bench.solving import BEYOND_OHM, DIRECT_HZ, solved
from shuntwise.bench.states import stacked
from shuntwise.bench.verdict import Answer, BenchSheet, Outcome, Proposal, SheetLine, Suspected, Verdict
from shuntwise.bench.windows import BOARDS, SEED, distance_limit, faulty_boards, sound_boards, sound_limit, windows
from shuntwise.graph.circuit import Circuit
from shuntwise.model.box import DRIVERS_ON, OPEN, Instruments, Reading, Taken

DANGERS = 4
"""So many readings come first, which find what is dangerous."""

SHORT_OHM, DIRECT_SHARE = 1.0, 0.02
"""What is dangerous: an input with less than this, a driver that gets more than this share of direct current and
none when the board is right (common practice, no source)."""

DANGER_WEIGHT = 30.0
"""How much more than any other fault a dangerous one counts in the choice of the first readings."""

NONLINEAR = 3.2
"""Readings whose scatter goes beyond so many standard deviations are too near a resonance for a sheet."""

SURE = 0.9
SUSPECTS = 3
LIMIT_BOARDS = 500
SWEEP_POINTS = 14
WORTH = 0.02
"""A reading is proposed only if it is expected to tell more than this (nats)."""


class Bench:
    """What can be told of boards of one circuit. Raises ValueError for a circuit that cannot be lowered."""

    def __init__(
        self,
        circuit: Circuit,
        instruments: Instruments | None = None,
        measured: Mapping[str, tuple[float, float]] | None = None,
        neighbours: Neighbours | None = None,
        beside: Iterable[Taken] = (),
    ) -> None:
        """`beside` are the readings of another box of the same design, known to be sound: the yardstick."""
        self.circuit, self.instruments = circuit, instruments or Instruments()
        self.rig: Rig = rig_of(circuit, measured)
        self.faults: tuple[Fault, ...] = catalogue(self.rig, neighbours)
        self.dictionary = Dictionary(self.rig, self.faults, self.instruments)
        self.yardstick = {one.reading: one.value for one in beside}
        self._limits: dict[tuple[Reading, ...], tuple[float, float]] = {}

    @property
    def points(self) -> tuple[str, ...]:
        """What a reading may be taken at."""
        return self.rig.points

    @cached_property
    def pool(self) -> tuple[Reading, ...]:
        return pool(self.rig, self.instruments)

    @cached_property
    def class_of(self) -> Whole:
        """The class of each hypothesis: those of one class are told apart by no reading of the pool. 0 is sound."""
        return classes(self.rig, self.faults, self.dictionary.fault_of, self.dictionary.columns(self.pool))

    @cached_property
    def of_setup(self) -> np.ndarray:
        return np.array([number >= 0 and self.faults[number].of_setup for number in self.dictionary.fault_of])

    # --- the sheet

    @property
    def length(self) -> int:
        """How many readings a sheet has."""
        return (
            8 if len(self.rig.drivers) <= 2 and len(self.rig.inputs) == 1 else 10 if len(self.rig.drivers) <= 3 else 12
        )

    @cached_property
    def steady(self) -> list[int]:
        """Readings of the pool that are not at a sharp resonance: their scatter is what the first order makes of it."""
        columns = self.dictionary.columns(self.pool)
        shown = scale_of(self.pool, self.instruments).u(sound_boards(self.dictionary, self.pool, 300))
        sigma = np.sqrt(np.einsum("mv,mv->m", columns.factor[0], columns.factor[0]) + columns.variance[0])
        ends = np.quantile(shown, [0.005, 0.995], axis=0)
        return np.nonzero(np.abs(ends - columns.mean[0]).max(axis=0) < NONLINEAR * sigma)[0].tolist()

    @cached_property
    def chosen(self) -> tuple[Reading, ...]:
        """The readings of the sheet: what is dangerous first, then what tells faults apart, by set-up."""
        steady = self.steady
        ohms = [n for n in steady if self.pool[n].quantity == "resistance" and self.pool[n].loads != DRIVERS_ON]
        first = self._greedy(1 + DANGER_WEIGHT * self.dangerous, DANGERS, ohms)
        every = self._greedy(np.ones(len(self.dictionary)), self.length, steady, first)
        order = {number: place for place, number in enumerate(first)}
        rest = sorted(every[len(first) :])  # the pool is in the order of set-ups
        return tuple(self.pool[number] for number in (*sorted(order, key=order.__getitem__), *rest))

    def _greedy(self, weight: Real, count: int, allowed: Sequence[int], begun: Sequence[int] = ()) -> list[int]:
        rows, of = self._representatives
        weights = np.bincount(of, np.exp(self.dictionary.log_prior) * weight, len(rows)).astype(np.float64)
        weights[0] = 0.25 * weights[1:].sum()
        columns = self.dictionary.columns(self.pool).rows(rows)
        return greedy(columns, weights, self.class_of[rows], count, allowed, begun=begun)

    @cached_property
    def _representatives(self) -> tuple[Whole, Whole]:
        """Hypotheses of which a sheet is made, and which of these stands for each (H,).

        For each class one, for a fault of many sizes each third of them.
        """
        chosen: dict[tuple[int, int, int], int] = {}
        of = np.empty(len(self.dictionary), np.intp)
        place = 0
        for row, (fault, label) in enumerate(
            zip(self.dictionary.fault_of.tolist(), self.class_of.tolist(), strict=True)
        ):
            place = place + 1 if row and fault == self.dictionary.fault_of[row - 1] else 0
            many = fault >= 0 and len(cells(self.faults[fault])) > 3
            key = (label, fault, place // 3) if many else (label, -1, 0)
            of[row] = chosen.setdefault(key, len(chosen))
        first = np.unique(of, return_index=True)[1]
        return first, of

    @cached_property
    def dangerous(self) -> np.ndarray:
        """Hypotheses (H,) under which an amplifier meets a short, or a driver direct current that is not its own."""
        rig, inputs = self.rig, self.rig.inputs
        ohm = [Reading("resistance", f"{name}+", f"{name}-", DRIVERS_ON) for name in inputs]
        volts = [
            Reading("volts", f"{owner}+", f"{owner}-", DRIVERS_ON, DIRECT_HZ, fed)
            for fed in inputs
            for owner in (fed, *rig.drivers)
        ]
        found = solved(rig, self.dictionary.states, self.instruments, [*ohm, *volts]).values
        low = (found[:, : len(ohm)] < SHORT_OHM) & (found[0, : len(ohm)] >= SHORT_OHM)
        seen = found[:, len(ohm) :].reshape(len(found), len(inputs), -1)
        share = seen[:, :, 1:] / np.maximum(seen[:, :, :1], 1e-9)
        direct = (share > DIRECT_SHARE) & (share[0] < DIRECT_SHARE / 2)
        return np.asarray((low.any(axis=1) | direct.any(axis=(1, 2))) & ~self.of_setup)

    @cached_property
    def lines(self) -> tuple[SheetLine, ...]:
        return self.windows(self.chosen)

    def windows(self, readings: Sequence[Reading]) -> tuple[SheetLine, ...]:
        """Readings with what they should be, and the windows that sound boards pass as a whole."""
        lines, self._together = self._windows(readings)
        return lines

    def _windows(self, readings: Sequence[Reading]) -> tuple[tuple[SheetLine, ...], float]:
        expected = solved(self.rig, stacked(self.rig, [[]]), self.instruments, readings).values[0]
        resistance = scale_of(readings, self.instruments).resistance
        low, high, together = windows(sound_boards(self.dictionary, readings, BOARDS), resistance.tolist())
        shown = np.where(resistance & (expected >= BEYOND_OHM), OPEN, expected)
        rows = zip(readings, shown.tolist(), low.tolist(), high.tolist(), strict=True)
        return tuple(SheetLine(*row) for row in rows), together

    @cached_property
    def sheet(self) -> BenchSheet:
        bench, readings = self.instruments, self.chosen
        lines, together = self._windows(readings)
        volts = [line.expected for line in lines if line.reading.quantity == "volts" and _at_driver(self.rig, line)]
        most = max(volts, default=0.0)
        loads = [(r.loads, r.freq_hz, r.fed) for r in readings if r.freq_hz]
        seen = [Reading("impedance", f"{fed}+", f"{fed}-", on, freq, fed) for on, freq, fed in loads]
        ohm = solved(self.rig, stacked(self.rig, [[]]), bench, seen).values[0] if seen else np.array([np.inf])
        current = bench.source_v / (bench.series_ohm + ohm.min())
        short = bench.source_v / bench.series_ohm
        return BenchSheet(
            lines,
            min(DANGERS, len(lines)),
            together,
            most,
            float(current**2 * bench.series_ohm),
            most**2 / bench.dummy_ohm,
            short,
            short**2 * bench.series_ohm,
        )

    # --- the verdict

    def judge(self, taken: Iterable[Taken]) -> Verdict:
        """What readings say; of those of the same thing the last one counts. Raises KeyError for an unknown point."""
        values = {one.reading: one for one in taken}
        lines = {line.reading: line for line in self.sheet.lines}
        missing = tuple(line for reading, line in lines.items() if reading not in values)
        outside = tuple((one, lines[r]) for r, one in values.items() if r in lines and not lines[r].allows(one.value))
        if not values:
            return Verdict("good so far", 1.0, missing=missing)
        readings, u = self._scaled(values.values())
        found = lookup(self._columns(readings))
        square = found.distances(u[None])[0]
        log_posterior = found.log_likelihoods(square[None])[0] + self.dictionary.log_prior
        posterior = shares(log_posterior)
        sound = float(posterior[self.class_of == 0].sum())
        sound_at, single_at = self._limit(readings, found)
        pair = None
        outcome: Outcome
        if sound >= sound_at:
            outcome = "good so far" if missing else "passed"
            return Verdict(outcome, sound, outside=outside, missing=missing)
        suspects = self._suspects(posterior)
        if square.min() > single_at:
            outcome, pair = "no single fault", self._pair(readings, u, log_posterior)
        else:
            outcome = "set-up" if suspects[0].fault.of_setup else "fault"
        return Verdict(outcome, sound, suspects, pair, outside, missing)

    def _scaled(self, taken: Iterable[Taken]) -> tuple[tuple[Reading, ...], Real]:
        """Readings in an order of their own, and their values on the scale of comparison."""
        pairs = sorted(((one.reading, one.value) for one in thinned(taken)), key=lambda pair: pair[0].words(2))
        readings = tuple(reading for reading, _ in pairs)
        return readings, self._u(readings, np.array([value for _, value in pairs]))

    def _u(self, readings: Sequence[Reading], values: Real) -> Real:
        return scale_of(readings, self.instruments).u(values)

    def _columns(self, readings: Sequence[Reading]) -> Columns:
        columns = self.dictionary.columns(readings)
        return columns.beside(self._of_yardstick(readings)) if self.yardstick else columns

    def _of_yardstick(self, readings: Sequence[Reading]) -> Real:
        """The yardstick's readings on the scale of comparison, NaN where it has none."""
        return self._u(readings, np.array([self.yardstick.get(reading, np.nan) for reading in readings]))

    def _limit(self, readings: tuple[Reading, ...], found: Lookup) -> tuple[float, float]:
        """Below which share a board is not sound, beyond which distance no single fault explains it."""
        if readings not in self._limits:
            sound = self._u(readings, sound_boards(self.dictionary, readings, LIMIT_BOARDS))
            rows = np.linspace(0, len(self.dictionary) - 1, LIMIT_BOARDS).astype(np.intp)
            faulty = self._u(readings, faulty_boards(self.dictionary, readings, rows))
            if self.yardstick:  # the other board has a scatter of its own
                other = self._u(readings, sound_boards(self.dictionary, readings, LIMIT_BOARDS, seed=SEED + 1))
                step = self._of_yardstick(readings) - other
                shift = np.where(np.isnan(step), 0.0, step)
                sound, faulty = sound + shift, faulty + shift
            limit = sound_limit(found, self.dictionary.log_prior, self.class_of == 0, sound)
            self._limits[readings] = limit, distance_limit(found, faulty)
        return self._limits[readings]

    def _suspects(self, posterior: Real) -> tuple[Suspected, ...]:
        """The likeliest classes, with their shares among all that is not sound."""
        weight = np.bincount(self.class_of, posterior)
        weight[0] = 0
        share = weight / max(weight.sum(), 1e-300)
        ranked = np.argsort(-share)[:SUSPECTS]
        return tuple(self._suspected(posterior, number, float(share[number])) for number in ranked if share[number] > 0)

    def _suspected(self, posterior: Real, number: int, share: float) -> Suspected:
        rows = np.nonzero(self.class_of == number)[0]
        weight = np.bincount(self.dictionary.fault_of[rows], posterior[rows], len(self.faults))
        order = [n for n in np.argsort(-weight) if n in self.dictionary.fault_of[rows]]
        row = int(rows[np.argmax(posterior[rows])])
        size = float(self.dictionary.size_of[row])
        return self.telling.suspected([self.faults[n] for n in order], size, share)

    @cached_property
    def telling(self) -> Telling:
        return Telling(self.rig)

    def _pair(self, readings: tuple[Reading, ...], u: Real, log_posterior: Real) -> tuple[Suspected, Suspected] | None:
        """The two faults that explain together best what is read.

        Their readings are first taken to add up on the scale of comparison; the best of these are solved.
        """
        columns, dictionary = self._columns(readings), self.dictionary
        single = np.nonzero((dictionary.fault_of >= 0) & (self.class_of != 0))[0]
        likely = single[np.argsort(-log_posterior[single])[:80]]
        spread = columns.covariance()[likely]
        mean = columns.mean[likely][:, None] + (columns.mean[single] - columns.mean[0])[None]
        rest = np.swapaxes(u - mean, 1, 2)
        square = np.einsum("akb,akb->ab", rest, np.linalg.solve(spread, rest))
        weight = -0.5 * square + dictionary.log_prior[likely][:, None] + dictionary.log_prior[single][None]
        best = np.argsort(-weight.ravel())[:200]
        pairs = [(int(likely[n // len(single)]), int(single[n % len(single)])) for n in best]
        pairs = [pair for pair in pairs if dictionary.fault_of[pair[0]] != dictionary.fault_of[pair[1]]][:120]
        if not pairs:
            return None
        edits = [[edit(self.rig, *self._fault(row)) for row in pair] for pair in pairs]
        states = stacked(self.rig, edits)
        means = self._u(readings, solved(self.rig, states, self.instruments, readings).values)
        means += columns.mean[0] - dictionary.columns(readings).mean[0]
        both = Columns(means, columns.factor[[a for a, _ in pairs]], columns.variance[[a for a, _ in pairs]])
        found = lookup(both)
        scores = found.log_likelihoods(found.distances(u[None]))[0]
        scores += [dictionary.log_prior[a] + dictionary.log_prior[b] for a, b in pairs]
        one, other = pairs[int(np.argmax(scores))]
        share = float(shares(scores).max())
        first, second = (self.telling.suspected([fault], size, share) for fault, size in map(self._fault, (one, other)))
        return first, second

    def _fault(self, row: int) -> tuple[Fault, float]:
        return self.faults[self.dictionary.fault_of[row]], float(self.dictionary.size_of[row])

    # --- what to read next

    def propose(self, taken: Iterable[Taken]) -> Proposal | None:
        """The reading that tells most after those that were taken; None where none tells much.

        After none, or a few of the sheet's first, it is the next of these.
        """
        values = {one.reading: one for one in taken}
        begin = [line for line in self.sheet.lines[: self.sheet.dangers] if line.reading not in values]
        candidates = [r for r in (self.pool[n] for n in self.steady) if r not in values]
        readings, u = self._scaled(values.values())
        posterior = self.dictionary.log_prior
        if readings:
            found = lookup(self._columns(readings))
            posterior = posterior + found.log_likelihoods(found.distances(u[None]))[0]
        rows = np.argsort(-posterior)[:200]
        rows = rows[posterior[rows] > posterior[rows[0]] - 12]
        known = self._columns(readings).rows(rows) if readings else _no_columns(self._columns(candidates[:1]), rows)
        if begin:
            return self._answers(begin[0], known, u, posterior[rows], rows)
        if not candidates:
            return None
        columns = self._columns(candidates).rows(rows)
        gains = expected_gains(known, u, columns, posterior[rows], self.class_of[rows])
        best = int(np.argmax(gains))
        if gains[best] < WORTH:
            return None
        (line,) = self._windows([candidates[best]])[0]
        return self._answers(line, known, u, posterior[rows], rows)

    def _answers(self, line: SheetLine, known: Columns, u: Real, log_posterior: Real, rows: Whole) -> Proposal:
        """What each range of a reading would mean: the likeliest classes, each about its own middle."""
        columns = self._columns([line.reading]).rows(rows)
        mean, variance = conditional(known, u, columns)
        scale = scale_of([line.reading], self.instruments)
        share = shares(log_posterior)
        ends = np.concatenate([mean - 2 * np.sqrt(variance), mean + 2 * np.sqrt(variance)], axis=1)
        marks = np.linspace(ends[share > 1e-3].min(), ends[share > 1e-3].max(), 200)
        density = (
            np.exp(-0.5 * (marks[:, None] - mean[None, :, 0]) ** 2 / variance[:, 0]) / np.sqrt(variance[:, 0]) * share
        )
        by_class = np.stack(
            [density[:, self.class_of[rows] == c].sum(axis=1) for c in np.unique(self.class_of[rows])], axis=1
        )
        whole = by_class.sum(axis=1)
        likeliest = by_class.argmax(axis=1)
        label = np.unique(self.class_of[rows])
        answers: list[Answer] = []
        begins = np.concatenate([[0], np.nonzero(np.diff(likeliest))[0] + 1, [len(marks)]])
        for begin, end in pairwise(begins.tolist()):
            number = label[likeliest[begin]]
            part = slice(begin, end)
            certain = float(by_class[part, likeliest[begin]].sum() / max(whole[part].sum(), 1e-300))
            low, high = (float(scale.x(np.array([marks[i]]))[0]) for i in (begin, end - 1))
            title = self._title_of_class(int(number), rows, share)
            if answers and answers[-1].title == title:
                answers[-1] = Answer(answers[-1].low, high, title, max(answers[-1].share, certain))
            else:
                answers.append(Answer(low, high, title, certain))
        return Proposal(line, tuple(answers))

    def _title_of_class(self, number: int, rows: Whole, share: Real) -> str:
        if number == 0:
            return "nothing is wrong"
        inside = np.nonzero(self.class_of[rows] == number)[0]
        return self.telling.title(self._fault(int(rows[inside[np.argmax(share[inside])]]))[0])


def thinned(taken: Iterable[Taken]) -> tuple[Taken, ...]:
    """Readings without most points of a sweep: SWEEP_POINTS of each are kept, evenly in the logarithm."""
    every = tuple(taken)
    sweeps: dict[tuple[str, str], list[Taken]] = {}
    for one in every:
        if one.reading.quantity == "impedance":
            sweeps.setdefault((one.reading.loads, one.reading.fed), []).append(one)
    dropped: set[Reading] = set()
    for points in sweeps.values():
        freq_hz = np.array([one.reading.freq_hz for one in points])
        marks = np.geomspace(freq_hz.min(), freq_hz.max(), SWEEP_POINTS)
        kept = {int(np.abs(np.log(freq_hz / mark)).argmin()) for mark in marks}
        dropped |= {one.reading for number, one in enumerate(points) if number not in kept}
    return tuple(one for one in every if one.reading not in dropped)


def _no_columns(like: Columns, rows: Whole) -> Columns:
    """Columns of no reading."""
    return like.of(()).rows(rows)


def _at_driver(rig: Rig, line: SheetLine) -> bool:
    return line.reading.plus.removesuffix("+") in rig.drivers


__all__ = ["Bench", "cells"]
