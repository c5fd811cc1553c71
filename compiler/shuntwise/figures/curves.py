"""The curves of many builds at once: every driver's voltage and every input's admittance, squared.

In: a solver, element values by build, frequencies. Out: `Curves`, four bytes for each number. Squared magnitudes in
single precision are good to 1e-6 dB, rank builds as levels do, and need no logarithm. It refuses to know why values
differ.

Memory: 4 bytes x builds x frequencies x (drivers + inputs + 1), and what the solver needs for BATCH builds.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from shuntwise.figures.band import Real
from shuntwise.response.measures import FLOOR_DB
from shuntwise.response.solve import Solver

Single = npt.NDArray[np.float32]

BATCH = 10_000
"""Builds that the solver gets at a time: its coefficients take memory by build."""

Tick = Callable[[int], None]
"""Told how many points (builds x frequencies) were solved since it was last told."""


@dataclass(frozen=True)
class Curves:
    """|V|^2 (V^2) by driver and |Y|^2 (S^2) by input, each (frequencies, builds)."""

    freq_hz: Real
    voltage_square: Mapping[str, Single]
    admittance_square: Mapping[str, Single]

    def builds(self, part: slice) -> Curves:
        """Some of the builds."""
        return Curves(
            self.freq_hz,
            {name: square[:, part] for name, square in self.voltage_square.items()},
            {name: square[:, part] for name, square in self.admittance_square.items()},
        )


def solve_curves(solver: Solver, values: Mapping[str, Real], freq_hz: Real, tick: Tick | None = None) -> Curves:
    """Solve for every build of `values` (builds,). Raises SingularNetwork."""
    builds = next(iter(values.values())).size
    network, shape = solver.network, (builds, freq_hz.size)
    voltages = {driver.name: np.empty(shape, np.float32) for driver in network.drivers}
    admittances = {feed.name: np.empty(shape, np.float32) for feed in network.feeds}
    squares: Real = np.empty((0, 2 * freq_hz.size))
    for first in range(0, builds, BATCH):
        some = {name: value[first : first + BATCH] for name, value in values.items()}
        for found in solver.stream(freq_hz, some, admittances=True):
            part = slice(first + found.part.start, first + found.part.stop)
            if squares.shape[0] < part.stop - part.start:
                squares = np.empty((part.stop - part.start, squares.shape[1]))
            for kept, new in ((voltages, found.driver_voltage), (admittances, found.input_admittance)):
                for name, value in new.items():
                    pairs = np.ascontiguousarray(value).view(np.float64)
                    square = np.square(pairs, out=squares[: pairs.shape[0]])
                    np.add(square[:, 0::2], square[:, 1::2], out=kept[name][part], casting="same_kind")
            if tick is not None:
                tick((part.stop - part.start) * freq_hz.size)
    return Curves(freq_hz, _turned(voltages), _turned(admittances))


def _turned(kept: dict[str, Single]) -> dict[str, Single]:
    """The arrays the other way round, which is how they are ranked; one at a time, so that memory holds one twice."""
    return {name: np.ascontiguousarray(kept.pop(name).T) for name in tuple(kept)}


def square_to_db(square: npt.ArrayLike) -> Real:
    return np.asarray(10 * np.log10(np.maximum(square, 10 ** (FLOOR_DB / 10)), dtype=np.float64), np.float64)


def square_to_ohm(square: npt.ArrayLike) -> Real:
    with np.errstate(divide="ignore"):
        return np.asarray(1 / np.sqrt(square, dtype=np.float64), np.float64)
