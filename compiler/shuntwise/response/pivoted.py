"""The careful solver: modified nodal analysis with partial pivoting, point by point.

In: a network and points (element values and a frequency each). Out: every node voltage and every coil
current at those points, driven from each feed in turn, or the nodes that make a point singular. It
refuses to be fast; the compiled plan calls it for the few points where a total nearly vanished.

Unknowns are the voltages of all nodes but ground and the feeds, and the currents of all inductors, so an
ideal coil, a resonance and |k| = 1 are ordinary rows (C. W. Ho, A. E. Ruehli, P. A. Brennan, The modified
nodal approach to network analysis, IEEE Trans. Circuits Syst. 22(6), 1975). Rows and columns are scaled by
the square roots of their greatest entries before LAPACK pivots.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

import numpy as np

from shuntwise.network.network import GROUND, Network
from shuntwise.response.tape import Complex, Real, Scalar

RANK_LIMIT = 1e-14
"""A scaled matrix whose least singular value is below this fraction of its greatest is called singular."""

BATCH_ENTRIES = 2_000_000
"""Matrix entries held at a time (32 MB), whatever the number of points."""


class SingularNetwork(Exception):
    """The network has no single solution at a frequency.

    `nodes` are those whose voltage nothing fixes, or that a lossless resonance short-circuits or lets grow
    without bound; `freq_hz` is where.
    """

    def __init__(self, nodes: Sequence[str], freq_hz: float) -> None:
        super().__init__(f"no single solution at {freq_hz:g} Hz around the nodes {', '.join(nodes)}")
        self.nodes = tuple(nodes)
        self.freq_hz = freq_hz


class PivotedPoints:
    """Solutions at some points of a network.

    `parameters` as in `Plan.parameters`, each a float or an array (points,); `freq_hz` (points,).
    Raises SingularNetwork at the first point that has no single solution; if these are not to be refused, which takes
    most of the time, LinAlgError only where a matrix cannot be solved at all.
    """

    def __init__(
        self, network: Network, parameters: Sequence[Scalar], freq_hz: Real, *, refuse_singular: bool = True
    ) -> None:
        self._network = network
        self._parameters = parameters
        self._omega = 2 * np.pi * freq_hz
        self._freq_hz = freq_hz
        fed = {GROUND, *(feed.node for feed in network.feeds)}
        self._unknown = {node: i for i, node in enumerate(n for n in network.nodes if n not in fed)}
        coils = [i for i, e in enumerate(network.elements) if e.kind == "L"]
        self._coil_row = {coil: len(self._unknown) + i for i, coil in enumerate(coils)}
        self._size = len(self._unknown) + len(coils)
        self._number = {e.name: i for i, e in enumerate(network.elements)}
        points, feeds = freq_hz.size, len(network.feeds)
        self._solution: Complex = np.zeros((points, self._size, feeds), np.complex128)
        for part in self._parts() if self._size else ():
            matrix, right = self._assemble(part)
            scaled, scale = self._scaled(matrix)
            if refuse_singular:
                self._refuse_singular(scaled, scale, part)
            self._solution[part] = np.linalg.solve(scaled, right * scale[:, :, None]) * scale[:, :, None]

    def _parts(self) -> Iterable[slice]:
        points = self._omega.size
        step = max(1, BATCH_ENTRIES // self._size**2)
        for first in range(0, points, step):
            yield slice(first, min(first + step, points))

    def _column(self, number: int, part: slice) -> Scalar:
        value = self._parameters[number]
        return value[part] if isinstance(value, np.ndarray) else value

    def _admittance(self, number: int, part: slice) -> Complex:
        """1/R or j omega C of an element, (points,)."""
        value = self._column(number, part)
        omega = self._omega[part]
        if self._network.elements[number].kind == "R":
            return np.asarray(1 / value + 0j * omega)
        return np.asarray(1j * omega * value)

    def _stamps(self, part: slice) -> Iterable[tuple[int, int, Any]]:
        """Entries (row, column, amount) of the full matrix; rows and columns of fed nodes are -2 - feed, ground -1."""
        place = {GROUND: -1, **{f.node: -2 - i for i, f in enumerate(self._network.feeds)}, **self._unknown}
        omega = self._omega[part]
        for number, e in enumerate(self._network.elements):
            a, b = place[e.plus], place[e.minus]
            if e.kind == "L":
                row = self._coil_row[number]
                for node, sign in ((a, 1.0), (b, -1.0)):
                    yield node, row, sign
                    yield row, node, sign
                yield row, row, -1j * omega * self._column(number, part)
            else:
                y = self._admittance(number, part)
                yield a, a, y
                yield b, b, y
                yield a, b, -y
                yield b, a, -y
        for row, column, mutual in self._mutuals(part):
            yield row, column, -1j * omega * mutual

    def _mutuals(self, part: slice) -> Iterable[tuple[int, int, Scalar]]:
        for i, coupling in enumerate(self._network.couplings):
            a, b = self._number[coupling.first], self._number[coupling.second]
            k = self._column(len(self._network.elements) + i, part)
            mutual = k * np.sqrt(self._column(a, part) * self._column(b, part))
            yield self._coil_row[a], self._coil_row[b], mutual
            yield self._coil_row[b], self._coil_row[a], mutual

    def _assemble(self, part: slice) -> tuple[Complex, Complex]:
        points = part.stop - part.start
        matrix = np.zeros((points, self._size, self._size), np.complex128)
        right = np.zeros((points, self._size, len(self._network.feeds)), np.complex128)
        for row, column, amount in self._stamps(part):
            if row < 0:
                continue
            if column >= 0:
                matrix[:, row, column] += amount
            elif column < -1:
                right[:, row, -2 - column] -= amount
        return matrix, right

    def _scaled(self, matrix: Complex) -> tuple[Complex, Real]:
        """The matrix with rows and columns multiplied by the same factors, so that every row peaks near 1."""
        scale = np.ones(matrix.shape[:2])
        for _ in range(3):
            greatest = np.abs(matrix * scale[:, :, None] * scale[:, None, :]).max(axis=2)
            scale /= np.sqrt(np.where(greatest > 0, greatest, 1.0))
        return matrix * scale[:, :, None] * scale[:, None, :], scale

    def _refuse_singular(self, scaled: Complex, scale: Real, part: slice) -> None:
        for point, spectrum in enumerate(np.linalg.svd(scaled, compute_uv=False)):
            if not spectrum[-1] > RANK_LIMIT * spectrum[0]:
                nodes = self._loose_nodes(scaled[point], scale[point])
                raise SingularNetwork(nodes, float(self._freq_hz[part][point]))

    def _loose_nodes(self, scaled: Complex, scale: Real) -> list[str]:
        """The nodes that take part in the null vector; those at the coils if only coil currents do."""
        null = np.abs(np.linalg.svd(scaled)[2][-1]) * scale
        nodes = list(self._unknown)
        part = null[: len(nodes)]
        if nodes and part.max() > 1e-6 * null.max():
            return [node for node, share in zip(nodes, part, strict=True) if share > 1e-3 * part.max()]
        names: dict[str, None] = {}
        for coil, row in self._coil_row.items():
            if null[row] > 1e-3 * null.max():
                element = self._network.elements[coil]
                names.update({element.plus: None, element.minus: None})
        return [node for node in names if node != GROUND]

    # Reading. `drive` is a 0/1 weight for each feed.

    def node_voltage(self, node: str, drive: Sequence[float]) -> Complex:
        """(points,) V."""
        if node in self._unknown:
            return np.asarray(self._solution[:, self._unknown[node], :] @ np.asarray(drive, np.float64))
        fed = {feed.node: weight for feed, weight in zip(self._network.feeds, drive, strict=True)}
        return np.full(self._omega.shape, fed.get(node, 0.0), np.complex128)

    def element_voltage(self, name: str, drive: Sequence[float]) -> Complex:
        """(points,) V, plus to minus."""
        element = self._network.element[name]
        return self.node_voltage(element.plus, drive) - self.node_voltage(element.minus, drive)

    def element_current(self, name: str, drive: Sequence[float]) -> Complex:
        """(points,) A, plus to minus."""
        number = self._number[name]
        if number in self._coil_row:
            return np.asarray(self._solution[:, self._coil_row[number], :] @ np.asarray(drive, np.float64))
        return self._admittance(number, slice(0, self._omega.size)) * self.element_voltage(name, drive)

    def input_admittance(self, feed: str) -> Complex:
        """(points,) S: the current out of a feed at 1 V with the others at rest."""
        drive = [1.0 if f.name == feed else 0.0 for f in self._network.feeds]
        node = next(f.node for f in self._network.feeds if f.name == feed)
        total = np.zeros(self._omega.shape, np.complex128)
        for element in self._network.elements:
            if element.plus == element.minus:
                continue
            if element.plus == node:
                total += self.element_current(element.name, drive)
            if element.minus == node:
                total -= self.element_current(element.name, drive)
        return total

    # Derivatives, by the adjoint network: with A x = b and the output c.x, d(c.x)/dp = y.(db/dp - dA/dp x), A y = c
    # (S. W. Director, R. A. Rohrer, The generalized adjoint network and network sensitivities, IEEE Trans. Circuit
    # Theory 16(3), 1969). The matrix as assembled here is symmetric, so the adjoint network is the network itself.

    def voltage_slopes(self, plus: str, minus: str, drive: Sequence[float]) -> tuple[dict[int, Complex], Complex]:
        """d(V(plus) - V(minus)) by parameter number (elements, then couplings), and by omega; (points,) each."""
        adjoint = np.zeros(self._solution.shape[:2], np.complex128)
        for part in self._parts() if self._size else ():
            scaled, scale = self._scaled(self._assemble(part)[0])
            right = np.zeros((scaled.shape[0], self._size), np.complex128)
            for node, sign in ((plus, 1.0), (minus, -1.0)):
                if node in self._unknown:
                    right[:, self._unknown[node]] += sign
            adjoint[part] = np.linalg.solve(scaled, (right * scale)[:, :, None])[:, :, 0] * scale
        return self._slopes(adjoint, {}, drive)

    def admittance_slopes(self, feed: str) -> tuple[dict[int, Complex], Complex]:
        """dY at a feed, others at rest, by parameter number and by omega: the adjoint is the solution, reversed."""
        drive = [1.0 if f.name == feed else 0.0 for f in self._network.feeds]
        fed = {f.node: -weight for f, weight in zip(self._network.feeds, drive, strict=True)}
        return self._slopes(-(self._solution @ np.asarray(drive)), fed, drive)

    def _slopes(
        self, adjoint: Complex, fed: dict[str, float], drive: Sequence[float]
    ) -> tuple[dict[int, Complex], Complex]:
        elements, everything = self._network.elements, slice(0, self._omega.size)
        solution = self._solution @ np.asarray(drive, np.float64)
        slopes: dict[int, Complex] = {}
        by_omega = np.zeros(self._omega.shape, np.complex128)

        def dual(node: str) -> Complex | float:
            return adjoint[:, self._unknown[node]] if node in self._unknown else fed.get(node, 0.0)

        for number, e in enumerate(elements):
            value = self._column(number, everything)
            if e.kind == "L":
                row = self._coil_row[number]
                product = 1j * adjoint[:, row] * solution[:, row]
                slopes[number] = self._omega * product
                by_omega += value * product
                continue
            product = -(dual(e.plus) - dual(e.minus)) * self.element_voltage(e.name, drive)
            if e.kind == "C":
                slopes[number] = 1j * self._omega * product
                by_omega += 1j * value * product
            else:
                slopes[number] = -product / value**2
        for i, coupling in enumerate(self._network.couplings):
            a, b = self._number[coupling.first], self._number[coupling.second]
            k = self._column(len(elements) + i, everything)
            one, other = self._coil_row[a], self._coil_row[b]
            mean = np.sqrt(self._column(a, everything) * self._column(b, everything))
            product = 1j * (adjoint[:, one] * solution[:, other] + adjoint[:, other] * solution[:, one])
            slopes[len(elements) + i] = self._omega * product * mean
            by_omega += product * k * mean
            for coil in (a, b):
                slopes[coil] = slopes[coil] + self._omega * product * k * mean / (2 * self._column(coil, everything))
        return slopes, by_omega
