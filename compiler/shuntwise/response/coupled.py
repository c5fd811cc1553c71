"""The inverse of the impedance matrix of one group of coupled windings, recorded as steps.

In: a tape, the self impedances of the windings, their mutual inductances. Out: the registers of the admittances, and of
what was divided by. It refuses to know where the windings lie.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from shuntwise.response.tape import ZERO, Monomial, Tape

Terms = dict[int, list[Monomial]]
"""Coefficients by power of s."""

Mutual = Callable[[int, int], list[Monomial]]
"""The mutual inductance of two coils, by their numbers."""


def inverse(
    tape: Tape, terms: Sequence[Terms], z: Sequence[int], coils: Sequence[int], mutual: Mutual, couplings: int
) -> tuple[list[list[int]], list[int]]:
    """The admittance matrix of some windings, and the pivots whose product is the determinant of their impedances.

    `z` are the registers of their self impedances, whose coefficients are `terms`; `couplings` is how far behind the k
    of a coupling its (1 - k)(1 + k) stands among the parameters.
    """
    between = mutual(coils[0], coils[1])
    if len(coils) > 2 or len(between) != 1:
        return _swept(tape, z, coils, mutual)
    # With resistance in both windings no current flows without a voltage, so nothing can vanish.
    can_vanish = any(0 not in t for t in terms)
    determinant = tape.laurent(_determinant(terms, coils, between[0][0][0] + couplings), can_vanish=can_vanish)
    per_determinant = tape.reciprocal(determinant)
    across = tape.neg(tape.mul(tape.laurent({1: between}), per_determinant))
    return [[tape.mul(z[1], per_determinant), across], [across, tape.mul(z[0], per_determinant)]], [determinant]


def _determinant(terms: Sequence[Terms], coils: Sequence[int], leak: int) -> Terms:
    """z1 z2 - (s M)^2 as one polynomial, in which L1 L2 - M^2 is written as L1 L2 (1 - k)(1 + k), exactly."""
    product: Terms = {}
    for power, one in terms[0].items():
        for other_power, other in terms[1].items():
            for a in one:
                for b in other:
                    both = a + b
                    if {p for p, _ in both} == {*coils} and power == other_power == 1:
                        both += ((leak, 1.0),)
                    product.setdefault(power + other_power, []).append(both)
    return product


def _swept(tape: Tape, z: Sequence[int], coils: Sequence[int], mutual: Mutual) -> tuple[list[list[int]], list[int]]:
    """The inverse of the symmetric impedance matrix by sweeping each row in turn, ending with its negative.

    A. E. Beaton, The use of special matrix operators in statistical calculus, ETS RB-64-51, 1964.
    """
    size, pivots = len(coils), []
    n = [[ZERO] * size for _ in range(size)]
    for i in range(size):
        n[i][i] = z[i]
        for j in range(i):
            n[i][j] = n[j][i] = tape.laurent({1: mutual(coils[i], coils[j])})
    for k in range(size):
        pivots.append(n[k][k])
        per_pivot = tape.reciprocal(n[k][k])
        row = list(n[k])
        share = [tape.mul(entry, per_pivot) for entry in row]
        for i in range(size):
            for j in range(i, size):
                if k not in (i, j):
                    n[i][j] = n[j][i] = tape.sub(n[i][j], tape.mul(share[i], row[j]))
        for i in range(size):
            if i != k:
                n[i][k] = n[k][i] = share[i]
                tape.watch(share[i])
        n[k][k] = tape.neg(per_pivot)
    return [[tape.neg(entry) for entry in row] for row in n], pivots
