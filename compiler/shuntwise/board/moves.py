"""Leads elsewhere: moved, exchanged, and parts exchanged.

In: a state, its room. Out: `Action`s that may bring the state nearer. Refuses to know which of them is best.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations, product

from shuntwise.board.actions import (
    EXCHANGE,
    JUMPER,
    MOVE,
    UNLIKELY,
    Action,
    after_turn,
    leading,
    moving,
    swapping,
    trading,
)
from shuntwise.board.islands import Key
from shuntwise.board.room import Room
from shuntwise.board.state import State
from shuntwise.board.steps import AddWire, ExchangeLeads, ExchangeParts, Move, MoveWire, NewHole, Step
from shuntwise.board.wires import is_pad
from shuntwise.graph.circuit import point_of

MOST_MOVED = 3
"""So many leads of one net on one joint are moved together at most."""


def moved(room: Room, state: State) -> Iterator[Action]:
    """All leads of a net on a joint to another joint of the net; or to copper without leads."""
    for (joint, net), leads in sorted(state.at.items()):
        if leads[0] not in state.wrong or len(leads) > MOST_MOVED:
            continue
        targets = [other for other in state.joints_of[net] if other != joint]
        if len(state.nets_of[joint]) > 1 and not targets:
            targets = room.empty(state, state.key[leads[0]])
        for target in targets:
            yield from moves_to(room, state, leads, target)


def turned_and_moved(room: Room, state: State) -> Iterator[Action]:
    """A part with like leads, taken the other way round, and one of its leads moved or exchanged then."""
    case = room.case
    wrong = {case.leads[n][0] for n in state.wrong}
    for label in case.turnable:
        if label not in wrong:
            continue
        a, b = case.leads_of[label]
        if state.node[a] == state.node[b]:
            continue
        turned = state.swapped([(a, b)])
        for action in exchanged_leads(room, turned, (a, b)):
            yield after_turn(a, b, action)
        for lead in (a, b):
            here = turned.joint[turned.node[lead]]
            for target in turned.joints_of[turned.want[lead]]:
                if target != here:
                    for action in moves_to(room, turned, (lead,), target):
                        yield after_turn(a, b, action)


def moves_to(room: Room, state: State, leads: Sequence[int], joint: int) -> Iterator[Action]:
    """Some leads to a joint, if there is a hole for each. A pad that nothing leads to gets a lead out."""
    case = room.case
    taken: set[Key] = set()
    keys: dict[int, Key] = {}
    holes: dict[Key, NewHole] = {}
    steps: list[Step] = []
    cost = 0.0
    for lead in leads:
        name, source = case.leads[lead], state.key[lead]
        to = room.spot if case.is_pad(lead) else room.spot_or_pad
        spot = to(state, source, joint, room.needed(state, lead), taken)
        if spot is None or state.is_moved(lead):  # what has been moved once stays
            return
        target, hole = spot
        if is_pad(source) and case.is_pad(lead):
            if len(state.nodes_of[state.joint[state.node[lead]]]) > 1 or len(state.at_key[source]) > 1:
                return  # several wires lead to it, or a part's lead: those are moved
            steps.append(AddWire("lead out", target, source, (hole,) if hole else ()))
            cost += JUMPER
        else:
            steps.append(Move(name, source, target, hole))
            cost += MOVE + room.far(source, target) + room.off_centre(state, lead, target)
            if is_pad(target) and not room.is_off_board(lead):
                cost += JUMPER - MOVE + UNLIKELY  # rather a wire out
        taken.add(target)
        keys[lead] = target
        if hole is not None:
            holes[target] = hole
    yield Action(cost, tuple(steps), moving(keys, {key: min(state.nodes_of[joint]) for key in holes}))


def exchanged_leads(room: Room, state: State, among: Sequence[int] = ()) -> Iterator[Action]:
    """Two leads of which one at least is on a joint that the other belongs to, with one of `among`, if any."""
    case = room.case
    wrong = sorted(state.wrong)
    for a, b in product(among, wrong) if among else combinations(wrong, 2):
        here, there = state.joint[state.node[a]], state.joint[state.node[b]]
        one, other = state.want[a], state.want[b]
        if here == there or one == other or not (one in state.nets_of[there] or other in state.nets_of[here]):
            continue
        same = case.leads[a][0] == case.leads[b][0]
        out = [n for n in (a, b) if case.is_pad(n)]
        pads = [n for n in out if is_pad(state.key[n])]
        names, keys = (case.leads[a], case.leads[b]), (state.key[a], state.key[b])
        unlikely = 0.0 if same else UNLIKELY / 3 + room.far(*keys) / 2
        if not pads:
            # A wire out ends at a pad already.
            if (same and case.leads[a][0] in case.turnable) or (out and any(is_pad(key) for key in keys)):
                continue
            yield Action(EXCHANGE + unlikely, (ExchangeLeads(names, keys),), swapping(((a, b),)))
        elif same:
            ends = ("", point_of(*names[0])), ("", point_of(*names[1]))
            yield Action(EXCHANGE + unlikely, (ExchangeLeads(names, ends),), trading(a, b, ends))
        elif len(pads) == 1:
            yield from _led_to_other_pad(room, state, pads[0], b if pads[0] == a else a)


def _led_to_other_pad(room: Room, state: State, pad: int, led: int) -> Iterator[Action]:
    """The lead out of one pad to another, to which nothing leads."""
    case = room.case
    if (
        case.is_pad(led)
        and len(state.nodes_of[state.joint[state.node[pad]]]) == 1
        and len(state.at_key[state.key[pad]]) == 1
        and not state.is_moved(led)
    ):
        ends = [("", point_of(*case.leads[n])) for n in (led, pad)]
        step = MoveWire("lead out", ends[0], state.key[led], ends[1])
        yield Action(MOVE, (step,), leading(pad, led, ends[0]))


def exchanged_parts(room: Room, state: State) -> Iterator[Action]:
    """Two parts of two leads in each other's place, or of the same kind with more."""
    case = room.case
    labels = dict.fromkeys(case.leads[n][0] for n in sorted(state.wrong) if not case.is_pad(n))
    for one, other in combinations(labels, 2):
        a, b = case.leads_of[one], case.leads_of[other]
        if len(a) != len(b) or (len(a) > 2 and case.wanted.parts[one] != case.wanted.parts[other]):
            continue
        if any(len({state.key[n] for n in leads}) < len(leads) for leads in (a, b)):
            continue
        turns = len(a) == 2 and (one in case.turnable or other in case.turnable)
        for pairs in ((*zip(a, b, strict=True),), (*zip(a, b[::-1], strict=True),))[: 2 if turns else 1]:
            leads = tuple(
                (label, state.key[here], state.key[there])
                for p, q in pairs
                for label, here, there in ((one, p, q), (other, q, p))
            )
            yield Action(EXCHANGE + UNLIKELY / 2, (ExchangeParts((one, other), leads),), swapping(pairs))
