"""From readings to shares: how likely each hypothesis of a dictionary is, and how far the best is from the readings.

ln p(h | u) = ln prior - 1/2 ln |S| - 1/2 (NU + k) ln(1 + d^2/NU): Student's tails for what is not linear in ours.
Refuses to know what the hypotheses are.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from shuntwise.bench.dictionary import Columns
from shuntwise.bench.rig import Real

NU = 8.0

AT_ONCE = 32
"""Boards that are compared together, so that the arrays stay in the cache."""


@dataclass(frozen=True, eq=False)
class Lookup:
    """Some readings of every hypothesis, ready to be compared with many boards' (B)."""

    mean: Real
    inverse_root: Real
    log_determinant: Real

    def rows(self, rows: npt.NDArray[np.bool_]) -> Lookup:
        """Some of the hypotheses."""
        return Lookup(self.mean[rows], self.inverse_root[rows], self.log_determinant[rows])

    def distances(self, u: Real) -> Real:
        """d^2 (B, H) of boards' readings (B, k)."""
        found = np.empty((len(u), len(self.mean)))
        whiten = self.inverse_root.reshape(-1, u.shape[1]).T
        own = (self.inverse_root @ self.mean[:, :, None]).reshape(-1)
        for begin in range(0, len(u), AT_ONCE):
            part = slice(begin, begin + AT_ONCE)
            white = (u[part] @ whiten - own).reshape(-1, *self.mean.shape)
            found[part] = np.einsum("bhi,bhi->bh", white, white)
        return found

    def log_likelihoods(self, square: Real) -> Real:
        """(B, H), of distances."""
        count = self.mean.shape[1]
        return np.asarray(-0.5 * self.log_determinant - 0.5 * (NU + count) * np.log1p(square / NU))


def lookup(columns: Columns) -> Lookup:
    """Columns of the readings that were taken, ready for use."""
    root = np.linalg.cholesky(columns.covariance())
    diagonal = np.arange(root.shape[1])
    return Lookup(columns.mean, np.linalg.inv(root), 2 * np.log(root[:, diagonal, diagonal]).sum(axis=1))


def shares(log_weights: Real) -> Real:
    """(..., H) that sum to one, from logarithms of any height."""
    weights = np.exp(log_weights - log_weights.max(axis=-1, keepdims=True))
    return np.asarray(weights / weights.sum(axis=-1, keepdims=True))
