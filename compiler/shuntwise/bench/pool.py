"""Which readings may be asked for: every pair of posts and tags, at a few frequencies, with dummies or nothing on.

Real drivers are read with direct current only: what they are at a frequency differs more than most faults do. Volts are
read only between points that something joins: a lead that hangs in the air picks up hum.

In: a rig and the instruments. Out: readings in the order in which they need the fewest changes. Refuses to know which
of them tell much.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

import numpy as np

from shuntwise.bench.rig import Rig, Whole
from shuntwise.graph.topology import DisjointSets
from shuntwise.model.box import DRIVERS_OFF, DRIVERS_ON, DUMMIES_ON, Instruments, Reading

FREQS_HZ = (60.0, 150.0, 400.0, 1000.0, 2000.0, 3500.0, 6000.0, 10000.0)
"""Round figures about two to an octave and a half; those beyond the meter's range are left out."""


def pool(rig: Rig, bench: Instruments) -> tuple[Reading, ...]:
    """All readings of the posts and tags of a board."""
    frequencies = [freq for freq in FREQS_HZ if freq <= bench.meter_top_hz]
    found = list(_resistances(rig))
    for loads in (DUMMIES_ON, DRIVERS_OFF):
        joined = _joined(rig, loads)
        for fed in rig.inputs:
            for freq in frequencies:
                every = _volts(rig, loads, fed, freq)
                found += [r for r in every if joined[rig.number[r.plus]] == joined[rig.number[r.minus]]]
    return tuple(found)


def _joined(rig: Rig, loads: str) -> Whole:
    """Of each point (P,) a number that is one for all that parts and loads join."""
    sets = DisjointSets(range(len(rig.nodes)))
    ends = [branch.ends for branch in rig.branches]
    if loads == DUMMIES_ON:
        ends += [(rig.number[f"{name}+"], rig.number[f"{name}-"]) for name in rig.drivers]
    for one, other in ends:
        sets.union(int(rig.node_of[one]), int(rig.node_of[other]))
    return np.array([sets[node] for node in rig.node_of.tolist()], np.intp)


def _resistances(rig: Rig) -> Iterator[Reading]:
    owners = [*rig.inputs, *rig.drivers]
    for owner in owners:
        yield Reading("resistance", f"{owner}+", f"{owner}-", DRIVERS_OFF)
    for sign in "+-":
        for one, other in combinations(owners, 2):
            yield Reading("resistance", f"{one}{sign}", f"{other}{sign}", DRIVERS_OFF)
    for owner in owners:
        yield Reading("resistance", f"{owner}+", f"{owner}-", DRIVERS_ON)


def _volts(rig: Rig, loads: str, fed: str, freq_hz: float) -> Iterator[Reading]:
    yield Reading("volts", f"{fed}+", f"{fed}-", loads, freq_hz, fed)
    if loads != DRIVERS_OFF:
        for driver in rig.drivers:
            yield Reading("volts", f"{driver}+", f"{driver}-", loads, freq_hz, fed)
            yield Reading("volts", f"{driver}-", f"{fed}-", loads, freq_hz, fed)
