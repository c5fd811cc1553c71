"""Copper otherwise: cut, or a cut undone.

In: a state, its room. Out: `Action`s that may bring the state nearer. Refuses to know which of them is best.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice

from shuntwise.board.actions import CUT, TAKE, Action, healing, parting
from shuntwise.board.room import Room
from shuntwise.board.state import State
from shuntwise.board.steps import MakeCut, TakeCut


def made_cuts(room: Room, state: State) -> Iterator[Action]:
    """Cuts through copper that joins nets."""
    shorted = [joint for joint, nets in sorted(state.nets_of.items()) if len(nets) > 1]
    nodes = [node for joint in shorted for node in state.nodes_of[joint] if _holds_several(state, node)]
    told: set[object] = set()
    for node in nodes:
        island = next((state.copper.of[key] for key in state.members[node] if key in state.copper.of), None)
        for trial in room.cuts(state, island, long=len(nodes) > 1) if island is not None else ():
            mark = trial.layout, trial.cut.start, trial.cut.end
            if mark not in told:
                told.add(mark)
                apart = min(trial.groups[0]), min(trial.groups[1])
                step = MakeCut(trial.layout, trial.cut, trial.words, apart)
                yield Action(CUT, (step,), parting(trial.groups))


def _holds_several(state: State, node: int) -> bool:
    """Is there anything on this copper that could be parted?"""
    held = (key for key in state.members.get(node, ()) if key in state.busy or key in state.under_bus)
    return len(tuple(islice(held, 2))) > 1


def taken_cuts(room: Room, state: State) -> Iterator[Action]:
    """A cut that parts one net. Only before others are made, whose copper is known with all of them there."""
    if state.copper is not room.case.copper or len(state.joint) > room.case.pieces:
        return
    open_on = {
        state.key[lead][0] for (_, net), leads in state.at.items() if len(state.joints_of[net]) > 1 for lead in leads
    }
    for layout in room.case.layouts.values():
        for cut in layout.cuts if layout.name in open_on else ():
            copper = room.healed(layout, cut)
            yield Action(TAKE, (TakeCut(layout.name, cut),), healing(copper))
