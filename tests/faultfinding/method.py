"""What is judged, as the harness sees it: anything that has a sheet, judges readings and says what to read next."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from typing import Protocol

from shuntwise.bench.bench import Bench
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

    @property
    def sheet(self) -> BenchSheet: ...

    def judge(self, taken: Sequence[Taken]) -> Verdict: ...

    def is_one(self, one: Fault, other: Fault) -> bool: ...

    def propose(self, taken: Sequence[Taken]) -> Proposal | None: ...


def bench(circuit: Circuit, instruments: Instruments) -> Method:
    """The project's own."""
    return _Unworded(circuit, instruments)


class _Unworded(Bench):
    """The bench, whose suspects are not told in full: their words are not judged here, and take most of the time."""

    def judge(self, taken: Iterable[Taken], *, in_full: bool = False) -> Verdict:
        return super().judge(taken, in_full=in_full)
