"""What every fault does to every reading: the dictionary that readings are looked up in.

In: a rig, its faults, the instruments. Out: `Dictionary`: for each hypothesis (no fault, or one of a size) the expected
readings and how sound boards scatter about them, on the scale of `meters.py`. Fault dictionaries: J. W. Bandler and
A. E. Salama, Fault diagnosis of analog circuits, Proc. IEEE 73(8), 1985 (from memory).

Readings are worked out when they are asked for, and kept. Refuses to know what was read.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np
import numpy.typing as npt

from shuntwise.bench.catalogue import TURN_FACTOR, cells, edit
from shuntwise.bench.faults import Family, Fault
from shuntwise.bench.meters import Scale, scale_of
from shuntwise.bench.rig import Real, Rig, Whole
from shuntwise.bench.solving import solved
from shuntwise.bench.states import States, stacked
from shuntwise.model.box import Instruments, Reading

SOUND = 0.5
"""How likely it is beforehand that nothing is wrong."""

WEIGHTS: dict[Family, float] = {
    "open": 2, "short": 1.5, "value": 2, "drift": 0.5, "dried": 0.5, "turns": 0.5, "core": 0.3, "exchanged": 2,
    "doubled": 0.5, "moved": 2, "joint": 3, "bridge": 1, "jumper": 1, "cut": 1, "link": 1, "reversed": 2,
    "outputs": 0.5, "driver": 0.1, "dummies": 0.1, "series": 0.05, "source": 0.1, "meter": 1.6, "scatter": 0.5,
}  # fmt: skip
"""How often each family happens, beside the others: common practice, no source."""


@dataclass(frozen=True, eq=False)
class Columns:
    """Some readings (M) under every hypothesis (H): `mean` (H, M) of u, `factor` (H, M, V), whose product with its
    transpose is the covariance that boards have in common between readings, `variance` (H, M) what each has for itself.
    """

    mean: Real
    factor: Real
    variance: Real

    def of(self, chosen: Sequence[int]) -> Columns:
        index = list(chosen)
        return Columns(self.mean[:, index], self.factor[:, index], self.variance[:, index])

    def rows(self, rows: Whole) -> Columns:
        return Columns(self.mean[rows], self.factor[rows], self.variance[rows])

    def beside(self, u: Real) -> Columns:
        """The same columns with another board, known to be sound, as what is right: its readings are `u` (M,).

        What the design is wrong about, both boards have in common; each has its own scatter. A reading that the other
        board has none of is NaN, and stays as it was.
        """
        known = ~np.isnan(u)
        shift = np.where(known, u - self.mean[0], 0.0)
        other = np.broadcast_to(self.factor[0] * known[:, None], self.factor.shape)
        variance = self.variance + self.variance[0] * known
        return Columns(self.mean + shift, np.concatenate([self.factor, other], axis=2), variance)

    def covariance(self) -> Real:
        """(H, M, M)."""
        covariance = self.factor @ np.swapaxes(self.factor, 1, 2)
        diagonal = np.arange(self.mean.shape[1])
        covariance[:, diagonal, diagonal] += self.variance
        return covariance


class Dictionary:
    """Hypotheses in rows: the first is that nothing is wrong, then every fault in each of its sizes."""

    def __init__(self, rig: Rig, faults: Sequence[Fault], bench: Instruments) -> None:
        self.rig, self.faults, self.bench = rig, tuple(faults), bench
        rows = [(-1, 1.0)] + [(number, size) for number, fault in enumerate(faults) for size in cells(fault)]
        self.fault_of = np.array([number for number, _ in rows], np.intp)
        self.size_of = np.array([size for _, size in rows])
        self.log_prior = np.log(self._prior())
        self._known: dict[Reading, tuple[Real, Real, Real]] = {}

    def __len__(self) -> int:
        return len(self.fault_of)

    @cached_property
    def states(self) -> States:
        return stacked(self.rig, [[] if n < 0 else [edit(self.rig, self.faults[n], size)] for n, size in self.rows])

    @property
    def rows(self) -> list[tuple[int, float]]:
        """Each hypothesis as the number of its fault (-1: none) and its size."""
        return list(zip(self.fault_of.tolist(), self.size_of.tolist(), strict=True))

    def fault(self, row: int) -> tuple[Fault, float]:
        """The fault of a hypothesis, and its size."""
        return self.faults[self.fault_of[row]], float(self.size_of[row])

    @cached_property
    def of_setup(self) -> npt.NDArray[np.bool_]:
        """Which hypotheses (H,) are the set-up's."""
        return np.array([number >= 0 and self.faults[number].of_setup for number in self.fault_of])

    def _prior(self) -> Real:
        """Of each hypothesis: families by WEIGHTS, within one all faults alike, and all cells of a fault."""
        families = [fault.family for fault in self.faults]
        whole = sum(WEIGHTS[family] for family in dict.fromkeys(families))
        count = Counter(families)
        of_family = [(1 - SOUND) * WEIGHTS[family] / whole / count[family] for family in families]
        each = np.array(of_family) / np.bincount(self.fault_of[1:], minlength=len(self.faults))
        return np.array([SOUND, *each[self.fault_of[1:]]])

    def columns(self, readings: Sequence[Reading]) -> Columns:
        """Means and scatter of readings; what is not known yet is worked out in one go."""
        missing = [reading for reading in dict.fromkeys(readings) if reading not in self._known]
        if missing:
            self._work_out(missing)
        found = [self._known[reading] for reading in readings]
        mean, factor, variance = (np.stack([entry[i] for entry in found], axis=1) for i in range(3))
        return Columns(mean, factor, variance)

    def _work_out(self, readings: Sequence[Reading]) -> None:
        scale = scale_of(readings, self.bench)
        found = solved(self.rig, self.states, self.bench, readings, moves=True)
        assert found.moves is not None
        x, slope = found.values, scale.slope(found.values)
        sigma = np.array([variation.sigma for variation in self.rig.variations])
        mean = scale.u(x)
        parts = found.moves * (slope[:, :, None] * sigma)
        values = [number for number, variation in enumerate(self.rig.variations) if variation.way == "value"]
        parts[:, :, values] *= self.states.scatter[:, None, None]
        others = scale.leads(x), self._within(mean), self._by_corner(readings, scale)
        factor = np.concatenate([parts, *(other[:, :, None] for other in others)], axis=2)
        variance = scale.variance(x)
        for number, reading in enumerate(readings):
            self._known[reading] = mean[:, number], factor[:, number], variance[:, number]

    def _by_corner(self, readings: Sequence[Reading], scale: Scale) -> Real:
        """How u (H, M) scatters by the corner from which on a shorted turn takes its share: up to TURN_FACTOR off."""
        found = np.zeros((len(self), len(readings)))
        rows = np.nonzero(self.states.turn_k.any(axis=1))[0]
        if len(rows):
            turned = self.states.part(rows)
            ends = [
                scale.u(solved(self.rig, replace(turned, turn_w=turned.turn_w * by), self.bench, readings).values)
                for by in (TURN_FACTOR**0.5, TURN_FACTOR**-0.5)
            ]
            found[rows] = (ends[0] - ends[1]) / 3**0.5
        return found

    def _within(self, mean: Real) -> Real:
        """How u (H, M) scatters within the cell of a fault's size, from the cells beside it: step / sqrt(12)."""
        above = np.append(self.fault_of[1:] == self.fault_of[:-1], False)
        below = np.roll(above, 1)
        rows = np.arange(len(mean))
        high, low = rows + above, rows - below
        step = (mean[high] - mean[low]) / np.maximum(high - low, 1)[:, None]
        return np.asarray(step / 12**0.5)
