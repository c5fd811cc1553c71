"""What a repair does at one go: its steps, what they cost, and what comes of them on any state.

In: what is to be changed. Out: an `Action`. Refuses to know whether it helps.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import TypeAlias

from shuntwise.board.islands import Islands, Key
from shuntwise.board.state import Run, State
from shuntwise.board.steps import Step

MOVE, EXCHANGE, JUMPER, TAKE, CUT = 1.0, 1.0, 1.1, 1.0, 1.2
"""What steps cost: how much rather a builder does one than another (common practice, no source)."""

UNLIKELY = 0.03
"""The most that a step costs in addition for being an unlikely slip: too little to outweigh another sort of step."""

Change: TypeAlias = Callable[[State], State]


@dataclass(frozen=True)
class Action:
    """Steps that are done together, and what comes of them. Without a step: another reading."""

    cost: float
    steps: tuple[Step, ...]
    do: Change


def reading(state: State, other: State) -> Change:
    """What turns a state into one that is electrically the same: the leads that go, the nets that are asked."""
    want = {n: net for n, net in enumerate(other.want) if net != state.want[n]}
    pairs = [
        (a, b)
        for a, b in (state.case.leads_of[label] for label in state.case.turnable)
        if (state.key[a], state.node[a]) != (other.key[a], other.node[a])
    ]

    def do(before: State) -> State:
        return (before.asking(want) if want else before).swapped(pairs)

    return do


def moving(keys: Mapping[int, Key], new: Mapping[Key, int]) -> Change:
    """Leads in other holes, of which `new` are drilled first, each in a node."""
    return lambda before: _drilled(before, new).moved(keys)


def after_turn(a: int, b: int, action: Action) -> Action:
    """The same with a part taken the other way round before."""
    return Action(action.cost, action.steps, lambda before: action.do(before.swapped([(a, b)])))


def swapping(pairs: Sequence[tuple[int, int]]) -> Change:
    return lambda before: before.swapped(pairs)


def trading(a: int, b: int, pads: tuple[Key, Key]) -> Change:
    """Two pads with all that goes to them exchanged."""
    other = {pads[0]: pads[1], pads[1]: pads[0]}

    def do(before: State) -> State:
        after = before.swapped([(a, b)])
        keys = {n: other[key] for n, key in enumerate(after.key) if key in other}
        runs = [Run(run.kind, tuple(other.get(key, key) for key in run.keys), run.diameter) for run in after.runs]
        return after.moved(keys).wired(runs)

    return do


def leading(pad: int, led: int, freed: Key) -> Change:
    """The pad gets the other's lead out, which is left with nothing."""
    return lambda before: before.moved({pad: before.key[led], led: freed})


def rewiring(n: int, run: Run, instead: Run | None) -> Change:
    """One wire otherwise, or none: the one with this number, wherever it is by then."""

    def do(before: State) -> State:
        place = n if n < len(before.runs) and before.runs[n] == run else None
        if place is None:
            place = before.runs.index(run) if run in before.runs else len(before.runs)
        rest = before.runs[place + 1 :]
        return before.wired((*before.runs[:place], *((instead,) if instead else ()), *rest))

    return told_anew(do)


def wiring(run: Run, new: Mapping[Key, int]) -> Change:
    """One wire more, `new` holes drilled for it first, each in a node."""

    def do(before: State) -> State:
        after = _drilled(before, new)
        return after.wired((*after.runs, run))

    return do


def parting(groups: Sequence[frozenset[Key]]) -> Change:
    """Copper that a cut leaves in groups of holes, of one island or several."""

    def do(before: State) -> State:
        after = before
        for node in sorted({before.where[key] for group in groups for key in group if key in before.where}):
            mine = [group.intersection(before.members[node]) for group in groups]
            held = [group for group in mine if group]
            if len(held) > 1:
                after = after.parted(held, node)
        return after

    return told_anew(do)


def healing(copper: Islands) -> Change:
    """A cut taken away, which leaves `copper`."""
    return lambda before: before.healed(copper)


def and_then(first: Change, second: Change) -> Change:
    return lambda before: second(first(before))


def told_anew(do: Change) -> Change:
    """What parts metal: of parts that had both leads on it nobody could tell which lead was which."""

    def done(before: State) -> State:
        after = do(before)
        for label in before.case.turnable:
            a, b = before.case.leads_of[label]
            one, other = after.node[a], after.node[b]
            if before.joint[before.node[a]] == before.joint[before.node[b]] and after.joint[one] != after.joint[other]:
                turned = after.swapped([(a, b)])
                if turned.distance < after.distance:
                    after = turned
        return after

    return done


def _drilled(state: State, new: Mapping[Key, int]) -> State:
    for key, node in new.items():
        state = state.drilled(key, node)
    return state
