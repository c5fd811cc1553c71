"""What each outcome of a reading would mean.

In: what is known of a board, and one more reading. Out: ranges of the reading, each with the class that it would make
the likeliest. Refuses to know how classes are called.
"""

from __future__ import annotations

from itertools import groupby

import numpy as np

from shuntwise.bench.choosing import conditional
from shuntwise.bench.dictionary import Columns
from shuntwise.bench.inference import shares
from shuntwise.bench.rig import Real, Whole

MARKS = 200
LEAST_SHARE = 1e-3
"""A hypothesis of less is not asked where its reading lies."""


def outcomes(
    known: Columns, u: Real, asked: Columns, log_posterior: Real, label: Whole
) -> list[tuple[float, float, int, float]]:
    """Ranges of u of the one reading `asked`: from, to, the likeliest label there, and its share in that range.

    `known` are the columns of the readings `u` (k,) that were taken; all are of the same hypotheses.
    """
    mean, variance = conditional(known, u, asked)
    centre, sigma, share = mean[:, 0], np.sqrt(variance[:, 0]), shares(log_posterior)
    seen = share > LEAST_SHARE
    marks = np.linspace((centre - 2 * sigma)[seen].min(), (centre + 2 * sigma)[seen].max(), MARKS)
    density = share * np.exp(-0.5 * ((marks[:, None] - centre) / sigma) ** 2) / sigma
    labels = np.unique(label)
    by_label = np.stack([density[:, label == one].sum(axis=1) for one in labels], axis=1)
    winner = by_label.argmax(axis=1)
    found = []
    for number, run in groupby(range(MARKS), key=lambda mark: winner[mark]):
        marked = list(run)
        part = by_label[marked]
        share_here = float(part[:, number].sum() / max(part.sum(), 1e-300))
        found.append((float(marks[marked[0]]), float(marks[marked[-1]]), int(labels[number]), share_here))
    return found
