"""The shortest repair of layouts that are not what the circuit asks.

In: a `Comparison`, and what can be cut and drilled. Out: a `Repair`: steps, and for each mistake what it does. Refuses
to know words.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from math import inf

from shuntwise.board.actions import Action
from shuntwise.board.compare import MOST_PARTS, Comparison, Finding, differences, turned
from shuntwise.board.cutting import TrialCut
from shuntwise.board.placing import placing
from shuntwise.board.room import FreeSpot, Room, TrialCuts
from shuntwise.board.search import Search
from shuntwise.board.state import State
from shuntwise.board.steps import ExchangeLeads, ExchangeParts, Move, PlaceLeads, Step
from shuntwise.board.wires import is_pad
from shuntwise.model.boards import Point

MOST_WRONG = 150
"""With more wrong leads than this there is no list at all: it would not help anybody."""


def _no_cuts(island: int) -> Iterable[TrialCut]:
    return ()


def _no_spot(layout: str, island: int, diameter: float) -> Point | None:
    return None


@dataclass(frozen=True)
class Mistake:
    """Steps that belong together, and what would still be wrong if all others were done.

    `others` are repairs of the same cost or nearly so, each as good as `steps`.
    """

    steps: tuple[Step, ...]
    findings: tuple[Finding, ...]
    others: tuple[tuple[Step, ...], ...] = ()


@dataclass(frozen=True)
class Repair:
    """`mistakes`, each with its steps: all of them together cure the wiring. `placing` is what is to be placed.

    Not `shortest`: the search was given up, and the list may be longer than need be. `left` is what is wrong after all
    steps, where no list was found that cures.
    """

    mistakes: tuple[Mistake, ...]
    placing: tuple[PlaceLeads, ...]
    cost: float
    shortest: bool
    left: tuple[Finding, ...] = ()

    @property
    def cures(self) -> bool:
        return not self.left

    @property
    def steps(self) -> tuple[Step, ...]:
        return tuple(step for mistake in self.mistakes for step in mistake.steps)


def repair(comparison: Comparison, trial_cuts: TrialCuts = _no_cuts, free_spot: FreeSpot = _no_spot) -> Repair:
    """The cheapest list of steps after which nothing is open or shorted."""
    state = comparison.settled
    room = Room(state.case, trial_cuts, free_spot)
    if not comparison.wiring:
        return Repair((), placing(room, comparison, state), 0.0, True)
    if len(state.wrong) > MOST_WRONG or len(state.case.leads_of) > MOST_PARTS:
        return Repair((), (), inf, False, tuple(differences(state)))
    search = Search(room)
    path, end, shortest = search.path((state, turned(comparison.written), comparison.written))
    mistakes = tuple(_mistakes(state, path, end))
    done = [action for action in path if action.steps]
    if len(done) == 1:
        mistakes = (replace(mistakes[0], others=search.others(done[0])),)
    cost = sum(action.cost for action in path)
    return Repair(mistakes, placing(room, comparison, end), cost, shortest, tuple(differences(end)))


def _can_do(state: State, actions: Iterable[Action]) -> bool:
    """Does every step find its leads where it takes them from?"""
    case = state.case
    for action in actions:
        lie = {(case.leads[n][0], key) for n, key in enumerate(state.key)}
        for step in action.steps:
            match step:
                case Move(lead, source):
                    taken = [(lead[0], source)]
                case ExchangeLeads(leads, keys):
                    taken = [(lead[0], key) for lead, key in zip(leads, keys, strict=True) if not is_pad(key)]
                case ExchangeParts(_, leads_of):
                    taken = [(label, source) for label, source, _ in leads_of]
                case _:
                    taken = []
            if not lie.issuperset(taken):
                return False
        state = action.do(state)
    return True


def _mistakes(state: State, path: Sequence[Action], end: State) -> Iterator[Mistake]:
    """Each action with what is wrong where all others are done; one without which it is as well is not needed."""
    left = frozenset(differences(end))
    kept = list(path)
    for action in path:
        if action.steps:
            without = state
            for other in kept:
                without = other.do(without) if other is not action else without
            if without.distance > end.distance or not _can_do(state, [other for other in kept if other is not action]):
                yield Mistake(action.steps, tuple(f for f in differences(without) if f not in left))
            else:
                kept.remove(action)
