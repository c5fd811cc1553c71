"""The inverse of a symmetric matrix, recorded on a tape: the admittances of coils that all couple with each other.

In: registers of the entries. Out: registers of the inverse, and of the pivots. It refuses to know what an entry is.
"""

from __future__ import annotations

from collections.abc import Sequence

from shuntwise.response.tape import ZERO, Tape


def invert(tape: Tape, diagonal: Sequence[int], below: Sequence[Sequence[int]]) -> tuple[list[list[int]], list[int]]:
    """The inverse and the pivots, whose product is the determinant; `below[i][j]` stands under the diagonal, j < i.

    By sweeping each row in turn, ending with the negative of the inverse (A. E. Beaton, The use of special matrix
    operators in statistical calculus, ETS RB-64-51, 1964). The shares of each pivot are watched.
    """
    size = len(diagonal)
    n = [[ZERO] * size for _ in range(size)]
    for i in range(size):
        n[i][i] = diagonal[i]
        for j in range(i):
            n[i][j] = n[j][i] = below[i][j]
    pivots: list[int] = []
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
