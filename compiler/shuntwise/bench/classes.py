"""Which faults are one to the bench: those that no reading tells apart.

In: a dictionary's columns and its faults. Out: the class of every hypothesis. Two are one where the distance of their
readings, d^2 = (difference of means)^T ((S1 + S2)/2)^-1 (difference of means), is under APART: a coil that dangles
and one that is shorted may be one class, though their readings are not equal. A part that is too small is one class
however it came to be so.

Refuses to know how likely a fault is.
"""

from __future__ import annotations

from collections.abc import Hashable, Sequence

import numpy as np

from shuntwise.bench.dictionary import Columns
from shuntwise.bench.faults import Fault
from shuntwise.bench.rig import Real, Rig, Whole
from shuntwise.graph.topology import DisjointSets

APART = 1.35
"""Two Gaussians so many standard deviations apart are told from each other in 75 of 100 cases."""

MOST_OF_IT = 0.8
"""A fault of many sizes is the other one where so many of its sizes are."""


def kind_of(rig: Rig, fault: Fault) -> Hashable:
    """What faults have in common that are one repair: the part and whether it is too small or too large."""
    if fault.family in ("value", "drift", "dried", "turns", "core", "doubled"):
        large = fault.size[0] > 1
        if fault.family == "doubled":
            large = rig.branches[rig.branches_of[fault.owners[0]][0]].value_in == "E"
        return fault.owners[0], large
    if fault.of_setup:
        return fault.family, fault.owners, fault.size[0] > 1
    return fault


def classes(rig: Rig, faults: Sequence[Fault], fault_of: Whole, columns: Columns) -> Whole:
    """The class of each hypothesis (H,), numbered from 0, which is that of no fault."""
    groups: dict[Hashable, list[int]] = {}
    for row, number in enumerate(fault_of.tolist()):
        groups.setdefault(None if number < 0 else kind_of(rig, faults[number]), []).append(row)
    group_of = np.empty(len(fault_of), np.intp)
    for index, rows in enumerate(groups.values()):
        group_of[rows] = index
    count = np.bincount(group_of)
    # What is otherwise in its scatter alone has the means of a sound board, and the distance is one of means.
    by_scatter = {
        int(group_of[row]) for row, number in enumerate(fault_of) if number >= 0 and faults[number].family == "scatter"
    }
    # How many rows of one group have a row that is near in another.
    first, second = near(columns, group_of)
    both = np.concatenate([first, second]).tolist(), np.concatenate([second, first]).tolist()
    met = {(row, int(group_of[other])) for row, other in zip(*both, strict=True)}
    share: dict[tuple[int, int], int] = {}
    for row, group in met:
        key = int(group_of[row]), group
        share[key] = share.get(key, 0) + 1
    sets: DisjointSets[int] = DisjointSets(range(len(groups)))
    for (one, other), near_rows in share.items():
        alike = (count[one] == 1) == (count[other] == 1) or other == 0
        if one != other and alike and not {one, other} & by_scatter and near_rows >= MOST_OF_IT * count[one]:
            sets.union(one, other)
    found = np.empty(len(groups), np.intp)
    for index, members in enumerate(sorted(sets.sets(), key=min)):
        found[list(members)] = index
    return np.asarray(found[group_of])


FEW = 14
"""So many readings are compared first: all together are as far apart as some of them at the least."""


def near(columns: Columns, group_of: Whole) -> tuple[Whole, Whole]:
    """Pairs of rows of different groups that are under APART from each other, each pair once."""
    spread = columns.variance + np.einsum("hmv,hmv->hm", columns.factor, columns.factor)
    pairs = []
    for row in range(len(columns.mean) - 1):
        step = (columns.mean[row + 1 :] - columns.mean[row]) ** 2
        close = (step <= APART**2 * 0.5 * (spread[row + 1 :] + spread[row])).all(axis=1)
        others = row + 1 + np.nonzero(close & (group_of[row + 1 :] != group_of[row]))[0]
        pairs.append(np.stack([np.full(len(others), row), others], axis=1))
    found = np.concatenate(pairs)
    few = columns.of(range(0, columns.mean.shape[1], max(1, columns.mean.shape[1] // FEW)))
    for compared in (few, columns):
        keep = [_square(compared, found[at : at + 512]) < APART**2 for at in range(0, len(found), 512)]
        found = found[np.concatenate([np.zeros(0, bool), *keep])]
    return found[:, 0], found[:, 1]


def _square(columns: Columns, pairs: Whole) -> Real:
    first, second = pairs[:, 0], pairs[:, 1]
    step = columns.mean[first] - columns.mean[second]
    middle = (columns.rows(first).covariance() + columns.rows(second).covariance()) / 2
    return np.asarray(np.einsum("pm,pm->p", step, np.linalg.solve(middle, step[:, :, None])[:, :, 0]))
