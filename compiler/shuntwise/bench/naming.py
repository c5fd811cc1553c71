"""Faults in words: what they are called, where to look, how to be sure, and what they do."""

from __future__ import annotations

from collections.abc import Sequence

from shuntwise.bench.faults import Fault
from shuntwise.bench.rig import Rig
from shuntwise.bench.verdict import Suspected


class Telling:
    def __init__(self, rig: Rig) -> None:
        self.rig = rig

    def title(self, fault: Fault) -> str:
        return " ".join([fault.family, *fault.owners, *fault.points, fault.to])

    def suspected(self, faults: Sequence[Fault], size: float, share: float) -> Suspected:
        return Suspected(faults[0], self.title(faults[0]), share, tuple(self.title(f) for f in faults[1:]))
