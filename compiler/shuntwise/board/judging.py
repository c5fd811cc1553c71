"""A design's layouts judged against its circuit, each step worked out when somebody asks for it, and once.

In: a circuit with layouts. Out: `Judgement`. Refuses to know words.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from shuntwise.board.compare import Comparison, compare
from shuntwise.board.islands import Islands, TrialCut, islands
from shuntwise.graph.circuit import Circuit
from shuntwise.model.boards import Layout, Point

if TYPE_CHECKING:
    from shuntwise.board.repair import Repair


@dataclass(frozen=True)
class Judgement:
    """What the boards are, and what they should be."""

    circuit: Circuit

    @property
    def layouts(self) -> tuple[Layout, ...]:
        return self.circuit.design.layouts

    @cached_property
    def by_name(self) -> Mapping[str, Layout]:
        return {layout.name: layout for layout in self.layouts}

    @cached_property
    def copper(self) -> Islands:
        """The islands of bare copper."""
        return islands(self.layouts)

    @cached_property
    def comparison(self) -> Comparison:
        """What differs from the circuit."""
        return compare(self.circuit, self.layouts, self.copper)

    @cached_property
    def repair(self) -> Repair:
        """The shortest way to put it right."""
        from shuntwise.board.repair import repair

        return repair(self.comparison, self._cuts, self._spot)

    def _cuts(self, island: int) -> Iterator[TrialCut]:
        from shuntwise.board.islands import trial_cuts

        return trial_cuts(self.layouts, self.copper, island)

    def _spot(self, layout: str, island: int, diameter: float) -> Point | None:
        from shuntwise.board.islands import free_spot

        return free_spot(self.by_name[layout], self.copper, island, diameter)
