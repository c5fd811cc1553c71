"""The check sheet of a circuit: few readings that tell its faults apart, in an order that needs few changes.

In: a dictionary and the classes of its hypotheses. Out: the chosen readings, their windows, and what a bench with this
sheet does to generator, resistor and dummies. Refuses to know what was read.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from shuntwise.bench.catalogue import cells
from shuntwise.bench.choosing import greedy, tells
from shuntwise.bench.dictionary import Dictionary
from shuntwise.bench.effects import DIRECT_SHARE
from shuntwise.bench.meters import scale_of
from shuntwise.bench.rig import Real, Whole
from shuntwise.bench.solving import BEYOND_OHM, DIRECT_HZ, solved
from shuntwise.bench.states import stacked
from shuntwise.bench.verdict import BenchSheet, SheetLine
from shuntwise.bench.windows import Boards, sound_boards, windows
from shuntwise.model.box import DRIVERS_OFF, DRIVERS_ON, OPEN, Reading

DANGERS = 4
"""So many readings come first, which find what is dangerous."""

DANGER_WEIGHT = 9.0
"""How much more than all other faults the dangerous ones count in the choice of the first readings, each of them alike:
of a lead on a wrong node there are many, each as bad as the one short.
"""

SETUP_WEIGHT = 0.5
"""How much what may be wrong with the set-up counts in the choice of all readings: less, as a sheet is for boards."""

SHORT_OHM = 1.0
"""An input with less than this is dangerous (common practice, no source)."""

NONLINEAR = 3.2
"""Readings whose scatter goes beyond so many standard deviations are too near a resonance for a sheet."""

TRIES, LARGE = 3, 48_000
"""A sheet is the best of so many, as one choice after the other may lead astray; of fewer where hypotheses times
readings times tries are more than this, as that takes too long.
"""


def length(dictionary: Dictionary) -> int:
    """How many readings a sheet has."""
    rig = dictionary.rig
    return 8 if len(rig.drivers) <= 2 and len(rig.inputs) == 1 else 10 if len(rig.drivers) <= 3 else 12


def steady(dictionary: Dictionary, pool: Sequence[Reading]) -> list[int]:
    """Readings of the pool that are not at a sharp resonance: their scatter is what the first order makes of it."""
    columns = dictionary.columns(pool)
    shown = scale_of(pool, dictionary.bench).u(sound_boards(dictionary, 300).shown(pool))
    sigma = np.sqrt(np.einsum("mv,mv->m", columns.factor[0], columns.factor[0]) + columns.variance[0])
    ends = np.quantile(shown, [0.005, 0.995], axis=0)
    return [int(n) for n in np.nonzero(np.abs(ends - columns.mean[0]).max(axis=0) < NONLINEAR * sigma)[0]]


def dangerous(dictionary: Dictionary) -> Whole:
    """Which hypotheses (H,) let an amplifier meet a short, or a driver direct current that is not its own: 0 or 1."""
    rig = dictionary.rig
    ohm = [Reading("resistance", f"{name}+", f"{name}-", DRIVERS_ON) for name in rig.inputs]
    volts = [
        Reading("volts", f"{owner}+", f"{owner}-", DRIVERS_ON, DIRECT_HZ, fed)
        for fed in rig.inputs
        for owner in (fed, *rig.drivers)
    ]
    found = solved(rig, dictionary.states, dictionary.bench, [*ohm, *volts]).values
    low = (found[:, : len(ohm)] < SHORT_OHM) & (found[0, : len(ohm)] >= SHORT_OHM)
    seen = found[:, len(ohm) :].reshape(len(found), len(rig.inputs), -1)
    share = seen[:, :, 1:] / np.maximum(seen[:, :, :1], 1e-9)
    direct = (share > DIRECT_SHARE) & (share[0] < DIRECT_SHARE / 2)
    return np.asarray((low.any(axis=1) | direct.any(axis=(1, 2))) & ~dictionary.of_setup, np.intp)


def chosen(dictionary: Dictionary, class_of: Whole, pool: Sequence[Reading]) -> tuple[Reading, ...]:
    """The readings of the sheet: what is dangerous first, then what tells faults apart, by set-up."""
    rows, of = _representatives(dictionary, class_of)
    columns, likely = dictionary.columns(pool).rows(rows), np.exp(dictionary.log_prior)

    def weighed(weight: Real) -> Real:
        weights = np.asarray(np.bincount(of, likely * weight, len(rows)), np.float64)
        weights[0] = 0.25 * weights[1:].sum()
        return weights

    label, counts = class_of[rows], np.where(dictionary.of_setup, SETUP_WEIGHT, 1.0)
    ohms = [n for n, reading in enumerate(pool) if reading.quantity == "resistance" and reading.loads != DRIVERS_ON]
    danger = weighed(counts + DANGER_WEIGHT * _alike(likely, dangerous(dictionary)))
    first = [ohms[number] for number in greedy(columns.of(ohms), danger, label, DANGERS)]
    weights = weighed(counts)
    seeds = range(min(TRIES, max(1, LARGE // columns.mean.size)))
    tries = [greedy(columns, weights, label, length(dictionary), begun=first, seed=seed) for seed in seeds]
    every = tries[0]
    if len(tries) > 1:
        every = max(tries, key=lambda numbers: tells(columns.of(numbers), weights, label))
    # The pool is in the order of set-ups.
    return tuple(pool[number] for number in (*first, *sorted(every[len(first) :])))


def _alike(likely: Real, which: Whole) -> Real:
    """Factors (H,) by which some hypotheses are each as likely as the others of them, and together as they were."""
    return np.asarray(which * (likely @ which) / max(int(which.sum()), 1) / likely)


def _representatives(dictionary: Dictionary, class_of: Whole) -> tuple[Whole, Whole]:
    """Hypotheses of which a sheet is made, and which of these stands for each (H,).

    For each class one, for a fault of many sizes each third of them.
    """
    chosen: dict[tuple[int, int, int], int] = {}
    of = np.empty(len(dictionary), np.intp)
    place, before = 0, -1
    for row, (fault, label) in enumerate(zip(dictionary.fault_of.tolist(), class_of.tolist(), strict=True)):
        place = place + 1 if fault == before else 0
        before = fault
        many = fault >= 0 and len(cells(dictionary.faults[fault])) > 3
        of[row] = chosen.setdefault((label, fault, place // 3) if many else (label, -1, 0), len(chosen))
    return np.unique(of, return_index=True)[1], of


def lines(sound: Boards, readings: Sequence[Reading]) -> tuple[tuple[SheetLine, ...], float]:
    """Readings with what they should be and their windows, and the share of sound boards that pass all of these."""
    dictionary, bench = sound.dictionary, sound.dictionary.bench
    expected = solved(dictionary.rig, stacked(dictionary.rig, [[]]), bench, readings).values[0]
    resistance = scale_of(readings, bench).resistance
    low, high, together = windows(sound.shown(readings), resistance.tolist())
    shown = np.where(resistance & (expected >= BEYOND_OHM), OPEN, expected)
    rows = zip(readings, shown.tolist(), low.tolist(), high.tolist(), strict=True)
    return tuple(SheetLine(*row) for row in rows), together


def sheet_of(sound: Boards, readings: Sequence[Reading]) -> BenchSheet:
    """The sheet of some readings, with windows by sound boards, and what the readings do to the bench."""
    bench, rig = sound.dictionary.bench, sound.dictionary.rig
    found, together = lines(sound, readings)
    set_ups = dict.fromkeys((r.loads, r.freq_hz, r.fed) for r in readings if r.freq_hz)
    seen = [Reading("impedance", f"{fed}+", f"{fed}-", loads, freq_hz, fed) for loads, freq_hz, fed in set_ups]
    volts = [
        Reading("volts", f"{driver}+", f"{driver}-", loads, freq_hz, fed)
        for loads, freq_hz, fed in set_ups
        for driver in (() if loads == DRIVERS_OFF else rig.drivers)
    ]
    values = solved(rig, stacked(rig, [[]]), bench, [*seen, *volts]).values[0]
    ohm, most_v = values[: len(seen)].min(initial=np.inf), float(values[len(seen) :].max(initial=0))
    current, short = bench.source_v / (bench.series_ohm + ohm), bench.source_v / bench.series_ohm
    return BenchSheet(
        found,
        min(DANGERS, len(found)),
        together,
        most_v,
        float(current**2 * bench.series_ohm),
        most_v**2 / bench.dummy_ohm,
        short,
        short**2 * bench.series_ohm,
    )
