"""Kirchhoff's laws for a circuit, as a dense tableau: one unknown for each net and one for each branch's current.

Every branch keeps its own current, so that a winding with both ends on one net, a coupling of 1 and a resistance
of zero need no special case. What hangs on no input has a net of its own to count from.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from lowering.laying import Circuit, Net


class Unsolvable(Exception):
    """The circuit has no single solution, such as two amplifiers on one net."""


@dataclass
class Solution:
    drivers: dict[str, NDArray[np.complex128]]  # V, plus to minus, 1 V at every input
    impedance: dict[str, NDArray[np.complex128]]  # ohm at each input, the other inputs at 0 V


def solve(circuit: Circuit, freq_hz: NDArray[np.float64]) -> Solution:
    w = 2 * np.pi * np.asarray(freq_hz, dtype=float)
    ends = {key: (branch.start, branch.end) for key, branch in circuit.branches.items()}
    ends |= {("input", name): pair for name, pair in circuit.inputs.items()}
    nets = list(dict.fromkeys(net for pair in ends.values() for net in pair))
    island = _islands(nets, list(ends.values()))
    counted = [net for net in nets if island[net] != net]  # the first net of each island is its zero
    row = {net: at for at, net in enumerate(counted)}
    column = {key: len(counted) + at for at, key in enumerate(ends)}
    size = len(counted) + len(ends)

    matrix = np.zeros((len(w), size, size), dtype=complex)
    for key, (start, end) in ends.items():
        at = column[key]
        for net, sign in ((start, 1.0), (end, -1.0)):
            if net in row:
                matrix[:, row[net], at] += sign  # the current that leaves the net
                matrix[:, at, row[net]] += sign  # the voltage along the branch
        if key in circuit.branches:
            matrix[:, at, at] -= circuit.branches[key].law(w)
        else:  # an amplifier: its voltage less what its resistance and the cable take
            matrix[:, at, at] -= circuit.source + circuit.cable
    for one, other, shared in circuit.mutual:
        ohm = shared(w) if callable(shared) else 1j * w * shared
        matrix[:, column[one], column[other]] -= ohm
        matrix[:, column[other], column[one]] -= ohm

    inputs = list(circuit.inputs)
    sources = np.zeros((size, len(inputs)), dtype=complex)  # one right side for each input alone
    for at, name in enumerate(inputs):
        sources[column["input", name], at] = 1.0
    unknowns = _solve(matrix, sources)

    def voltage(net: Net) -> NDArray[np.complex128]:
        together = unknowns.sum(axis=2)
        return together[:, row[net]] if net in row else np.zeros(len(w), dtype=complex)

    with np.errstate(divide="ignore", invalid="ignore"):
        impedance = {n: 1 / -unknowns[:, column["input", n], at] - circuit.source for at, n in enumerate(inputs)}
    return Solution(
        {name: voltage(plus) - voltage(minus) for name, (plus, minus) in circuit.drivers.items()},
        impedance,
    )


def _islands(nets: list[Net], pairs: list[tuple[Net, Net]]) -> dict[Net, Net]:
    """For each net the first net of those that branches join it with."""
    neighbours: dict[Net, list[Net]] = {net: [] for net in nets}
    for one, other in pairs:
        neighbours[one].append(other)
        neighbours[other].append(one)
    island: dict[Net, Net] = {}
    for first in nets:
        waiting = [first] if first not in island else []
        while waiting:
            net = waiting.pop()
            if net not in island:
                island[net] = first
                waiting += neighbours[net]
    return island


def _solve(matrix: NDArray[np.complex128], sources: NDArray[np.complex128]) -> NDArray[np.complex128]:
    """Solve for each frequency (F, N, N) and each source (N, S); least squares where currents are left open."""
    weight = 1 / np.abs(matrix).max(axis=2, keepdims=True).clip(1e-300)
    scaled, right = matrix * weight, sources[None] * weight
    found = np.empty(right.shape, dtype=complex)
    for at in range(len(matrix)):
        try:
            found[at] = np.linalg.solve(scaled[at], right[at])
            good = np.isfinite(found[at]).all() and np.linalg.cond(scaled[at]) < 1e13
        except np.linalg.LinAlgError:
            good = False
        if not good:
            found[at] = np.linalg.lstsq(scaled[at], right[at], rcond=1e-13)[0]
            if np.abs(scaled[at] @ found[at] - right[at]).max() > 1e-9:
                raise Unsolvable("no solution keeps Kirchhoff's laws")
    return found
