"""The bench of one circuit: its sheet, the verdict on readings, and what to read next.

In: a circuit, the instruments, measured parts, readings. Out: `BenchSheet`, `Verdict`, `Proposal`. Each is worked out
when it is asked for; nothing here knows files or screens.
"""

from __future__ import annotations

from collections.abc import Hashable, Iterable, Mapping, Sequence
from functools import cached_property

import numpy as np

from shuntwise.bench.asking import outcomes
from shuntwise.bench.catalogue import Neighbours, catalogue
from shuntwise.bench.choosing import expected_gains
from shuntwise.bench.classes import classes, kind_of
from shuntwise.bench.dictionary import Columns, Dictionary
from shuntwise.bench.faults import Fault
from shuntwise.bench.inference import Lookup, lookup, shares
from shuntwise.bench.meters import scale_of
from shuntwise.bench.naming import Telling
from shuntwise.bench.neighbours import neighbours_of
from shuntwise.bench.pairs import best_pair
from shuntwise.bench.pool import pool
from shuntwise.bench.rig import Real, Rig, Whole, rig_of
from shuntwise.bench.sheet import chosen, lines, sheet_of, steady
from shuntwise.bench.sweeps import thinned
from shuntwise.bench.verdict import Answer, BenchSheet, Outcome, Proposal, SheetLine, Suspected, Verdict
from shuntwise.bench.windows import SEED, Boards, distance_limit, sound_boards, sound_limit
from shuntwise.graph.circuit import Circuit
from shuntwise.model.box import Instruments, Reading, Taken

SUSPECTS = 3
SOUND_BOARDS, FAULTY_BOARDS, REACH_BOARDS = 2000, 600, 150
"""Boards drawn for windows and for what passes, for what one fault explains, and for the reach of one hypothesis."""

FAR = 144.0
"""Hypotheses that lie further from a sound board than this, d^2, have no share in what sound boards are taken for."""

SPECIAL, STANDS_OUT = ("drift", "dried", "turns", "core", "doubled"), 0.9
"""Ways in which a part may have come to be too small or too large, and the share of its class at which one is named."""

TIED = 1e-3
"""Shares that differ by less are one: where sound boards all read alike, so do their shares but for the last digits."""

WORTH = 0.02
"""A reading is proposed only if it is expected to tell more than this (nats)."""

STILL_POSSIBLE, MOST_POSSIBLE = 10.0, 120
"""Hypotheses that are asked about: so many at the most, none further below the likeliest than this (nats)."""

SOUND_TITLE = "nothing is wrong"


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
        """`measured` are values of parts (SI) by label, and the share by which each may be off; `beside` the readings
        of another box of the same design, known to be sound: the yardstick. Without `neighbours` they are those that
        the circuit's layouts tell.
        """
        self.circuit, self.instruments = circuit, instruments or Instruments()
        self.rig: Rig = rig_of(circuit, measured)
        self.neighbours = neighbours or neighbours_of(circuit)
        self.faults: tuple[Fault, ...] = catalogue(self.rig, self.neighbours)
        self.dictionary = Dictionary(self.rig, self.faults, self.instruments)
        self.measured = measured or {}
        self.yardstick = {one.reading: one.value for one in beside}
        self.telling = Telling(self.rig, self.instruments)
        self._lines: dict[Reading, SheetLine] = {}
        self._limits: dict[tuple[Reading, ...], tuple[float, float]] = {}

    @property
    def points(self) -> tuple[str, ...]:
        """What a reading may be taken at."""
        return self.rig.points

    @cached_property
    def pool(self) -> tuple[Reading, ...]:
        """What may be proposed: readings of posts and tags that are at no sharp resonance."""
        every = pool(self.rig, self.instruments)
        return tuple(every[number] for number in steady(self.dictionary, every))

    @cached_property
    def class_of(self) -> Whole:
        """The class of each hypothesis: those of one class are told apart by no reading of the pool. 0 is sound."""
        return classes(self.rig, self.faults, self.dictionary.fault_of, self.dictionary.columns(self.pool))

    @cached_property
    def sheet(self) -> BenchSheet:
        return sheet_of(self._sound, self.readings)

    @cached_property
    def readings(self) -> tuple[Reading, ...]:
        """Those of the sheet: of the circuit as stated, so that a sheet is the same whatever was measured of a box."""
        if self.measured:
            return Bench(self.circuit, self.instruments, neighbours=self.neighbours).readings
        return chosen(self.dictionary, self.class_of, self.pool)

    def line(self, reading: Reading) -> SheetLine:
        """A reading with its window: that of the sheet, or of its own where it does not stand there."""
        if reading not in self._lines:
            of_sheet = next((line for line in self.sheet.lines if line.reading == reading), None)
            self._lines[reading] = of_sheet or lines(self._sound, [reading])[0][0]
        return self._lines[reading]

    # --- the verdict

    def judge(self, taken: Iterable[Taken], *, in_full: bool = True) -> Verdict:
        """What readings say; of those of the same thing the last one counts. Raises KeyError for an unknown point.

        Without `in_full` suspects have their titles and shares alone, which takes a tenth of the time.
        """
        values = {one.reading: one for one in taken}
        of_sheet = {line.reading: line for line in self.sheet.lines}
        missing = tuple(line for reading, line in of_sheet.items() if reading not in values)
        outside = tuple(
            (one, of_sheet[r]) for r, one in values.items() if r in of_sheet and not of_sheet[r].allows(one.value)
        )
        if not values:
            return Verdict("good so far", 1.0, missing=missing)
        readings, u = self._scaled(values.values())
        columns = self._columns(readings)
        found = lookup(columns)
        square = found.distances(u[None])[0]
        log_posterior = found.log_likelihoods(square) + self.dictionary.log_prior
        posterior = shares(log_posterior)
        sound = float(posterior[self.class_of == 0].sum())
        sound_at, single_at = self._limit(readings, found)
        if sound >= sound_at * (1 - TIED):
            return Verdict("good so far" if missing else "passed", sound, (), None, outside, missing)
        suspects = self._suspects(posterior, in_full)
        if square.min() > single_at and square.min() > self._reach(readings, found, int(square.argmin())):
            pair = self._pair(readings, columns, u, log_posterior, in_full)
            return Verdict("no single fault", sound, suspects, pair, outside, missing)
        outcome: Outcome = "set-up" if suspects[0].fault.of_setup else "fault"
        return Verdict(outcome, sound, suspects, None, outside, missing)

    def _scaled(self, taken: Iterable[Taken]) -> tuple[tuple[Reading, ...], Real]:
        """Readings in an order of their own, and their values on the scale of comparison."""
        pairs = sorted(((one.reading, one.value) for one in thinned(taken)), key=lambda pair: pair[0].key)
        readings = tuple(reading for reading, _ in pairs)
        return readings, self._u(readings, np.array([value for _, value in pairs]))

    def _u(self, readings: Sequence[Reading], values: Real) -> Real:
        return scale_of(readings, self.instruments).u(values)

    def _columns(self, readings: Sequence[Reading]) -> Columns:
        """Of every hypothesis, as readings are compared with them."""
        columns = self.dictionary.columns(readings)
        return columns.beside(self._of_yardstick(readings)) if self.yardstick else columns

    def _of_yardstick(self, readings: Sequence[Reading]) -> Real:
        """The yardstick's readings on the scale of comparison, NaN where it has none."""
        return self._u(readings, np.array([self.yardstick.get(reading, np.nan) for reading in readings]))

    def _limit(self, readings: tuple[Reading, ...], found: Lookup) -> tuple[float, float]:
        """Below which share a board is not sound, beyond which distance no single fault explains it."""
        if readings not in self._limits:
            sound, faulty = self._shown(readings, self._sound), self._shown(readings, self._faulty)
            near = found.distances(found.mean[:1])[0] < FAR
            limit = sound_limit(found.rows(near), self.dictionary.log_prior[near], (self.class_of == 0)[near], sound)
            self._limits[readings] = limit, distance_limit(found, faulty)
        return self._limits[readings]

    def _reach(self, readings: tuple[Reading, ...], found: Lookup, row: int) -> float:
        """How far boards with the fault of one row lie from what explains them best."""
        return distance_limit(found, self._shown(readings, Boards(self.dictionary, np.full(REACH_BOARDS, row))))

    @cached_property
    def _sound(self) -> Boards:
        return sound_boards(self.dictionary, SOUND_BOARDS)

    @cached_property
    def _faulty(self) -> Boards:
        rows = np.linspace(0, len(self.dictionary) - 1, FAULTY_BOARDS).astype(np.intp)
        return Boards(self.dictionary, rows)

    @cached_property
    def _beside(self) -> Boards:
        """What the yardstick might as well have been."""
        return sound_boards(self.dictionary, SOUND_BOARDS, seed=SEED + 1)

    def _shown(self, readings: tuple[Reading, ...], boards: Boards) -> Real:
        """What the meters show on some boards, on the scale of comparison."""
        u = self._u(readings, boards.shown(readings))
        if self.yardstick:  # the other board has a scatter of its own
            step = self._of_yardstick(readings) - self._u(readings, self._beside.shown(readings)[: len(u)])
            u = u + np.where(np.isnan(step), 0.0, step)
        return u

    def _suspects(self, posterior: Real, in_full: bool) -> tuple[Suspected, ...]:
        """The likeliest classes, with their shares among all that is not sound."""
        weight = np.bincount(self.class_of, posterior)
        weight[0] = 0
        share = weight / max(weight.sum(), 1e-300)
        ranked = [int(number) for number in np.argsort(-share)[:SUSPECTS] if share[number] > 0]
        found = []
        for number in ranked:
            rows = self._led(np.nonzero(self.class_of == number)[0], posterior)
            found.append(self._suspected(rows, float(share[number]), in_full))
        return tuple(found)

    def _led(self, rows: Whole, posterior: Real) -> list[int]:
        """Hypotheses of one class, the likeliest first; where a special way of being too small does not stand out, the
        plain one leads.
        """
        rows = rows[np.argsort(-posterior[rows])]
        fault_of = self.dictionary.fault_of[rows]
        first = posterior[rows[fault_of == fault_of[0]]].sum() / max(posterior[rows].sum(), 1e-300)
        plain = np.array([self.faults[number].family == "value" for number in fault_of])
        if first < STANDS_OUT and self.faults[fault_of[0]].family in SPECIAL and plain.any():
            rows = rows[np.argsort(~plain, kind="stable")]
        found: list[int] = rows.tolist()
        return found

    def _suspected(self, rows: Sequence[int], share: float, in_full: bool) -> Suspected:
        """Hypotheses that are one, the likeliest first, as a suspect."""
        faults = [self.faults[n] for n in dict.fromkeys(self.dictionary.fault_of[list(rows)].tolist())]
        if in_full:
            return self.telling.suspected(faults, float(self.dictionary.size_of[rows[0]]), share)
        return Suspected(faults[0], self.telling.title(faults[0]), share)

    def _pair(
        self, readings: Sequence[Reading], columns: Columns, u: Real, log_posterior: Real, in_full: bool
    ) -> tuple[Suspected, Suspected] | None:
        faults = np.nonzero(self.class_of != 0)[0]
        best = best_pair(self.dictionary, columns, readings, u, log_posterior, faults)
        if best is None:
            return None
        one, other, share = best
        return self._suspected([one], share, in_full), self._suspected([other], share, in_full)

    def is_one(self, one: Fault, other: Fault) -> bool:
        """Are two faults one class: told apart by no reading of the pool, or one part that is too small?"""
        return self._class_of_kind[kind_of(self.rig, one)] == self._class_of_kind[kind_of(self.rig, other)]

    @cached_property
    def _class_of_kind(self) -> dict[Hashable, int]:
        rows = zip(self.dictionary.fault_of.tolist(), self.class_of.tolist(), strict=True)
        return {kind_of(self.rig, self.faults[number]): label for number, label in rows if number >= 0}

    # --- what to read next

    def propose(self, taken: Iterable[Taken]) -> Proposal | None:
        """The reading that tells most after those that were taken; None where none tells much.

        The first readings of the sheet, which find what is dangerous, come before all others.
        """
        values = {one.reading: one for one in taken}
        readings, u = self._scaled(values.values())
        log_posterior = self.dictionary.log_prior
        if readings:
            found = lookup(self._columns(readings))
            log_posterior = log_posterior + found.log_likelihoods(found.distances(u[None]))[0]
        rows = np.argsort(-log_posterior)[:MOST_POSSIBLE]
        rows = rows[log_posterior[rows] > log_posterior[rows[0]] - STILL_POSSIBLE]
        log_posterior = log_posterior[rows]
        known = self._columns(readings or self.pool[:1]).rows(rows).of(range(len(readings)))
        line = next((line for line in self.sheet.lines[: self.sheet.dangers] if line.reading not in values), None)
        if line is None:
            candidates = [reading for reading in self.pool if reading not in values]
            asked = self._columns(candidates or self.pool[:1]).rows(rows)
            gains = expected_gains(known, u, asked, log_posterior, self.class_of[rows])
            if not candidates or gains.max() < WORTH:
                return None
            line = self.line(candidates[int(np.argmax(gains))])
        return Proposal(line, self._answers(line, known, u, log_posterior, rows))

    def _answers(
        self, line: SheetLine, known: Columns, u: Real, log_posterior: Real, rows: Whole
    ) -> tuple[Answer, ...]:
        scale = scale_of([line.reading], self.instruments)
        asked = self._columns([line.reading]).rows(rows)
        answers = []
        for begin, end, label, share in outcomes(known, u, asked, log_posterior, self.class_of[rows]):
            low, high = (float(scale.x(np.array([mark]))[0]) for mark in (begin, end))
            answers.append(Answer(low, high, self._title(label, rows), share))
        return tuple(answers)

    def _title(self, label: int, rows: Whole) -> str:
        """What a class is called: as its likeliest hypothesis, of rows in the order of their shares."""
        row = next(row for row in rows if self.class_of[row] == label)
        return SOUND_TITLE if label == 0 else self.telling.title(self.dictionary.fault(row)[0])
