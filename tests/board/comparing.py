"""What the project says of layouts, in the few words that judging needs. All else here knows none of its names."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from shuntwise.board.compare import Unused, compare
from shuntwise.board.cutting import TrialCut, trial_cuts
from shuntwise.board.drilling import free_spot
from shuntwise.board.islands import islands
from shuntwise.board.repair import repair
from shuntwise.board.steps import apply
from shuntwise.graph.circuit import Circuit
from shuntwise.model.boards import Layout, Point


@dataclass(frozen=True)
class Said:
    """`wrong`: is anything called a mistake? `steps`: of its repair. `repaired`: with it made, if there is one."""

    wrong: bool
    steps: int = 0
    repaired: tuple[Layout, ...] | None = None


def compared(circuit: Circuit, layouts: Sequence[Layout]) -> Said:
    copper = islands(layouts)
    comparison = compare(circuit, layouts, copper)
    wrong = [*comparison.wiring, *(found for found in comparison.absent if not isinstance(found, Unused))]
    if not wrong:  # a part that is placed and left out of the circuit, as in some variant, is no mistake
        return Said(wrong=comparison.doubtful)

    def cuts(island: int) -> Iterable[TrialCut]:
        return trial_cuts(layouts, copper, island)

    def spot(layout: str, island: int, diameter: float) -> Point | None:
        return free_spot(next(each for each in layouts if each.name == layout), copper, island, diameter)

    cure = repair(comparison, cuts, spot)
    steps = (*cure.steps, *cure.placing)
    repaired = tuple(layouts)
    try:
        for step in steps:
            repaired = apply(step, repaired)
    except ValueError:  # a step that there is nothing to do for cures nothing
        return Said(wrong=True, steps=len(steps))
    return Said(wrong=True, steps=len(steps), repaired=repaired if cure.cures else None)
