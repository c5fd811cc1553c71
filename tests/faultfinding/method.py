"""What is judged, as the harness sees it: anything that has a sheet, judges readings and says what to read next."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from typing import Protocol

from shuntwise.bench.faults import Fault
from shuntwise.bench.verdict import BenchSheet, Proposal, Verdict
from shuntwise.graph.circuit import Circuit
from shuntwise.model.box import Instruments, Taken


class Method(Protocol):
    """The fault finder for one circuit."""

    @property
    def faults(self) -> tuple[Fault, ...]: ...

    @property
    def points(self) -> Collection[str]: ...

    def sheet(self) -> BenchSheet: ...

    def judge(self, taken: Sequence[Taken]) -> Verdict: ...

    def propose(self, taken: Sequence[Taken]) -> Proposal | None: ...


def bench(circuit: Circuit, instruments: Instruments) -> Method:
    """The project's own."""
    from shuntwise.bench.bench import Bench

    return Bench(circuit, instruments=instruments, measured={})
