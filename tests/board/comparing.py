"""What the project says of layouts, in the few words that judging needs."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from shuntwise.graph.circuit import Circuit
from shuntwise.model.boards import Layout


@dataclass(frozen=True)
class Said:
    """`wrong`: is anything called a mistake? `steps`: of its repair. `repaired`: with that repair made."""

    wrong: bool
    steps: int = 0
    repaired: tuple[Layout, ...] | None = None


def compared(circuit: Circuit, layouts: Sequence[Layout]) -> Said:
    raise NotImplementedError
