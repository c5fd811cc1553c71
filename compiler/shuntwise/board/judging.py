"""A design's layouts judged against its circuit, each step worked out when somebody asks for it, and once.

In: a circuit with layouts. Out: `Judgement`. Refuses to know words.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from shuntwise.graph.circuit import Circuit

if TYPE_CHECKING:
    from shuntwise.board.compare import Comparison
    from shuntwise.board.cutting import TrialCut
    from shuntwise.board.islands import Islands
    from shuntwise.board.metal import Metal
    from shuntwise.board.repair import Repair
    from shuntwise.model.boards import Layout, Point


def judged(circuit: Circuit) -> Judgement | None:
    """The boards of a circuit, to be held against it; None where nothing is laid out."""
    return Judgement(circuit) if circuit.design.layouts else None


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
        from shuntwise.board.islands import islands

        return islands(self.layouts)

    @cached_property
    def comparison(self) -> Comparison:
        """What differs from the circuit."""
        from shuntwise.board.compare import compare

        return compare(self.circuit, self.layouts, self.copper)

    @cached_property
    def repair(self) -> Repair:
        """The shortest way to put it right."""
        from shuntwise.board.repair import repair

        return repair(self.comparison, self._cuts, self._spot)

    @cached_property
    def metal(self) -> Metal | None:
        """Wires and tracks between the parts, where the boards make the circuit, with or without parts left over."""
        from shuntwise.board.metal import metal

        return metal(self.circuit, self.layouts, self.copper, self.comparison) if self.sound else None

    @cached_property
    def sound(self) -> bool:
        """Do the boards make the circuit, with or without parts left over?"""
        from shuntwise.board.compare import Unused

        comparison = self.comparison
        lacking = any(not isinstance(finding, Unused) for finding in (*comparison.wiring, *comparison.absent))
        return not (lacking or comparison.doubtful)

    def _cuts(self, island: int) -> Iterator[TrialCut]:
        from shuntwise.board.cutting import trial_cuts

        return trial_cuts(self.layouts, self.copper, island)

    def _spot(self, layout: str, island: int, diameter: float) -> Point | None:
        from shuntwise.board.drilling import free_spot

        return free_spot(self.by_name[layout], self.copper, island, diameter)
