"""Which reading tells most: for a sheet that serves every board, and for one board of which some are known.

In: columns of the dictionary, classes, weights. Out: numbers of readings. What a reading tells is the fall of entropy
that is expected of it (D. V. Lindley, On a measure of the information provided by an experiment, Ann. Math. Stat.
27(4), 1956, and for troubleshooting J. de Kleer and B. C. Williams, Diagnosing multiple faults, Artificial Intelligence
32(1), 1987; both from memory), over boards drawn from the hypotheses.

Refuses to know what the readings are.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import numpy.typing as npt

from shuntwise.bench.dictionary import Columns
from shuntwise.bench.inference import lookup, shares
from shuntwise.bench.rig import Real, Whole

MOST_SURPRISE = 16.0
"""No reading speaks louder than at so many variances: in place of Student's tails, which take three times as long."""

Single = npt.NDArray[np.float32]

LEAST_VARIANCE = 2e-5
WORK, FEWEST, MOST = 2e6, 60, 80
"""Boards times hypotheses times readings of a step, which takes some hundredths of a second, and how many boards that
is at the least and at the most.
"""

FINALISTS, TIMES = 6, 4
"""So many of the best readings of each step are compared once more, on so many times as many boards."""

EACH = 6
"""Boards of each hypothesis on which readings are compared that were chosen in several ways."""

LEAST_SHARE = 1e-4
"""A board that the readings have got so wrong costs no more if they get it wronger."""


def greedy(
    columns: Columns, weights: Real, label: Whole, count: int, *, begun: Sequence[int] = (), seed: int = 1
) -> list[int]:
    """The readings (numbers of columns) that tell `label` (H,) of boards drawn by `weights` (H,), one after the other.

    Each is the one of the greatest mean logarithm of the true label's share, given those before it, of which `begun`
    are taken as they are.
    """
    generator = np.random.default_rng(seed)
    mean, covariance = columns.mean.astype(np.float32), columns.covariance().astype(np.float32)
    boards = int(np.clip(WORK / mean.size, FEWEST, MOST))
    few, many = (_Drawn(columns, weights, label, times * boards, generator) for times in (1, TIMES))
    rest = few.rest(mean, range(mean.shape[1]))
    chosen: list[int] = []
    for step in range(min(count, mean.shape[1])):
        variance: Single = np.maximum(np.diagonal(covariance, axis1=1, axis2=2), LEAST_VARIANCE)
        if step < len(begun):
            column = begun[step]
        else:
            score = few.scores(rest, variance)
            score[chosen] = -np.inf
            best = np.argsort(-score, kind="stable")[: min(FINALISTS, mean.shape[1] - len(chosen))]
            column = int(best[np.argmax(many.scores(many.rest(mean, best), variance[:, best]))])
        chosen.append(column)
        gain = covariance[:, :, column] / variance[:, column, None]
        few.take(rest[:, :, column], variance[:, column], gain)
        many.take(many.rest(mean, [column])[:, :, 0], variance[:, column], gain)
        rest -= few.taken[-1][0][:, :, None] * gain[None]
        covariance -= gain[:, :, None] * covariance[:, None, column, :]
    return chosen


def tells(columns: Columns, weights: Real, label: Whole, *, seed: int = 0) -> float:
    """The mean logarithm of the true label's share after all readings of some columns, of boards that are drawn afresh.

    The higher the better; hypotheses (H) count by `weights`.
    """
    rows = np.repeat(np.arange(len(weights)), EACH)
    found = lookup(columns)
    square = found.distances(_readings(columns, rows, np.random.default_rng(seed)))
    posterior = shares(found.log_likelihoods(square) + np.log(weights + 1e-30))
    right = (posterior * (label[None, :] == label[rows][:, None])).sum(axis=1)
    return float(np.average(np.log(np.maximum(right, LEAST_SHARE)), weights=weights[rows]))


def _readings(columns: Columns, rows: Whole, generator: np.random.Generator) -> Real:
    """Readings (N, M) on the scale of comparison of one board of each row."""
    noise = np.sqrt(columns.variance[rows]) * generator.normal(size=(len(rows), columns.mean.shape[1]))
    drawn = generator.uniform(-(3**0.5), 3**0.5, (len(rows), 1, columns.factor.shape[2]))
    return np.asarray(columns.mean[rows] + noise + (columns.factor[rows] * drawn).sum(axis=2))


class _Drawn:
    """Boards (N) drawn from hypotheses (H), and how likely each hypothesis is of each after the readings so far.

    `taken` is of each of these how far boards lie beside what is expected (N, H), and by how much what is expected of
    the other readings (M) goes with that (H, M).
    """

    def __init__(
        self, columns: Columns, weights: Real, label: Whole, count: int, generator: np.random.Generator
    ) -> None:
        rows = _stratified(weights, count)
        self.u: Single = _readings(columns, rows, generator).astype(np.float32)
        self.own = (label[None, :] == label[rows][:, None]).astype(np.float32)
        logs = np.log(weights.astype(np.float32) + 1e-30)
        self.log_weights: Single = np.broadcast_to(logs, self.own.shape)
        self.taken: list[tuple[Single, Single]] = []

    def rest(self, mean: Single, columns: Sequence[int] | Whole) -> Single:
        """How far boards lie beside what is expected of some readings (N, H, m), given those that were taken."""
        index = list(columns)
        found: Single = self.u[:, None, index] - mean[None, :, index]
        for beside, gain in self.taken:
            found -= beside[:, :, None] * gain[None, :, index]
        return found

    def scores(self, rest: Single, variance: Single) -> Real:
        """The mean logarithm of the true label's share after each of some readings (m,)."""
        posterior = _updated(self.log_weights, rest, variance)
        posterior -= posterior.max(axis=1, keepdims=True)
        np.exp(posterior, out=posterior)
        right = np.einsum("nhc,nh->nc", posterior, self.own) / posterior.sum(axis=1)
        return np.asarray(np.log(np.maximum(right, LEAST_SHARE)).mean(axis=0), np.float64)

    def take(self, rest: Single, variance: Single, gain: Single) -> None:
        """One reading more: `rest` (N, H) beside what is expected, of which other readings (H, M) have their gain."""
        rest = rest.copy()
        self.log_weights = _updated(self.log_weights, rest[:, :, None], variance[:, None])[:, :, 0]
        self.taken.append((rest, gain))


def _updated(log_weights: Single, rest: Single, variance: Single) -> Single:
    """Logarithms of weights (N, H, M) after each of M readings that lie `rest` (N, H, M) beside what is expected."""
    logs = np.square(rest)
    logs /= variance
    np.minimum(logs, MOST_SURPRISE, out=logs)
    logs *= -0.5
    logs += log_weights[:, :, None]
    logs -= 0.5 * np.log(variance)
    return logs


def _stratified(weights: Real, count: int) -> Whole:
    """Rows drawn by their weights, as evenly as can be."""
    whole = np.cumsum(weights) / weights.sum()
    return np.minimum(np.searchsorted(whole, (np.arange(count) + 0.5) / count), len(weights) - 1)


def expected_gains(
    known: Columns, u: Real, candidates: Columns, log_posterior: Real, label: Whole, *, boards: int = 80, seed: int = 1
) -> Real:
    """By how much the entropy of the label is expected to fall (nats) with each candidate (M,), after what is known.

    `known` are the columns of the readings `u` (k,) that were taken, under the same hypotheses (H).
    """
    generator = np.random.default_rng(seed)
    mean, variance = conditional(known, u, candidates)
    posterior = shares(log_posterior)
    rows = _stratified(posterior, boards)
    drawn = mean[rows] + np.sqrt(variance[rows]) * generator.normal(size=(len(rows), 1))
    surprise = (drawn[:, None] - mean[None]) ** 2 / variance[None]
    logs = (log_posterior[:, None] - 0.5 * np.log(variance))[None] - 0.5 * surprise
    updated = shares(np.moveaxis(logs.astype(np.float32), 1, 2))
    labels, index = np.unique(label, return_inverse=True)
    member = np.zeros((len(label), len(labels)))
    member[np.arange(len(label)), index] = 1
    return np.asarray(entropy(posterior @ member) - entropy(updated @ member).mean(axis=0))


def conditional(known: Columns, u: Real, candidates: Columns) -> tuple[Real, Real]:
    """Mean and variance (H, M) of candidates under each hypothesis, once `u` (k,) has been read."""
    own = np.einsum("hmv,hmv->hm", candidates.factor, candidates.factor) + candidates.variance
    if not known.mean.shape[1]:
        return candidates.mean, np.maximum(own, LEAST_VARIANCE)
    between = candidates.factor @ np.swapaxes(known.factor, 1, 2)
    gain = np.swapaxes(np.linalg.solve(known.covariance(), np.swapaxes(between, 1, 2)), 1, 2)
    mean = candidates.mean + np.einsum("hmk,hk->hm", gain, u - known.mean)
    variance = own - np.einsum("hmk,hmk->hm", gain, between)
    return mean, np.maximum(variance, LEAST_VARIANCE)


def entropy(share: Real) -> Real:
    """Of shares along the last axis, in nats."""
    return np.asarray(-(share * np.log(share + 1e-12)).sum(axis=-1))
