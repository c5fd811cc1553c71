"""Two faults that explain together what no single one does.

In: a dictionary, readings, and what each hypothesis makes of them. Out: the two rows, and their share among all pairs
that were looked at. On the scale of comparison two faults are first taken to add up; the best of these are solved.
Refuses to know how faults are called.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from shuntwise.bench.catalogue import edit
from shuntwise.bench.dictionary import Columns, Dictionary
from shuntwise.bench.faults import Fault
from shuntwise.bench.inference import lookup, shares
from shuntwise.bench.meters import scale_of
from shuntwise.bench.rig import Real, Whole
from shuntwise.bench.solving import solved
from shuntwise.bench.states import stacked
from shuntwise.model.box import Reading

FIRSTS, SOLVED = 80, 120
"""How many of the likeliest single faults one of the two must be among, and how many pairs are solved."""


def best_pair(
    dictionary: Dictionary,
    columns: Columns,
    readings: Sequence[Reading],
    u: Real,
    log_posterior: Real,
    candidates: Whole,
) -> tuple[int, int, float] | None:
    """The rows of the two faults, of `candidates`, that explain `u` (k,) best, and the pair's share among pairs.

    `columns` are those of the readings, as they are compared.
    """
    firsts = candidates[np.argsort(-log_posterior[candidates])[:FIRSTS]]
    mean = columns.mean[firsts][:, None] + (columns.mean[candidates] - columns.mean[0])[None]
    rest = np.swapaxes(u - mean, 1, 2)
    square = np.einsum("akb,akb->ab", rest, np.linalg.solve(columns.rows(firsts).covariance(), rest))
    prior = dictionary.log_prior
    weight = -0.5 * square + prior[firsts][:, None] + prior[candidates][None]
    best = np.stack(np.unravel_index(np.argsort(-weight, axis=None), weight.shape), axis=1)[: 4 * SOLVED]
    pairs = [(int(firsts[a]), int(candidates[b])) for a, b in best]
    pairs = [pair for pair in pairs if apart(*(dictionary.fault(row)[0] for row in pair))][:SOLVED]
    if not pairs:
        return None
    states = stacked(dictionary.rig, [[edit(dictionary.rig, *dictionary.fault(row)) for row in pair] for pair in pairs])
    true = solved(dictionary.rig, states, dictionary.bench, readings).values
    shift = columns.mean[0] - dictionary.columns(readings).mean[0]
    first = np.array([one for one, _ in pairs])
    both = columns.rows(first)
    found = lookup(Columns(scale_of(readings, dictionary.bench).u(true) + shift, both.factor, both.variance))
    scores = found.log_likelihoods(found.distances(u[None]))[0] + prior[first] + prior[[other for _, other in pairs]]
    winner = int(np.argmax(scores))
    return (*pairs[winner], float(shares(scores)[winner]))


def apart(one: Fault, other: Fault) -> bool:
    """Can both be at once? No lead is in two places, and no part has two values."""
    leads = {one.family, other.family} & LEADS and not {*one.points}.isdisjoint(other.points)
    return one != other and not leads and (not {*one.owners} & {*other.owners} or bool(one.points and other.points))


LEADS = {"open", "moved", "joint", "reversed", "jumper"}
"""Families whose points are where a lead lies."""
