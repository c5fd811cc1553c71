"""Wires elsewhere: jumpers, buses and leads out moved, taken away and added.

In: a state, its room. Out: `Action`s that may bring the state nearer. Refuses to know which of them is best.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import combinations

from shuntwise.board.actions import JUMPER, MOVE, TAKE, Action, rewiring, wiring
from shuntwise.board.islands import Key
from shuntwise.board.room import Room
from shuntwise.board.state import Run, State
from shuntwise.board.steps import AddWire, MoveWire, TakeWire
from shuntwise.board.wires import is_pad, row_of

MOST_NETS = 3
"""A bus over pieces of more nets than this is not tried."""


def moved_wires(room: Room, state: State) -> Iterator[Action]:
    """One end of a wire to a joint where something is wrong; that of a bus to another hole of its row."""
    bad = [joint for joint in state.nodes_of if is_wrong(state, joint)]
    for n, run in enumerate(state.runs):
        for end in (0, -1):
            source, other = run.keys[end], run.keys[-1 - end]
            if run.kind == "bus":
                yield from _other_bus(room, state, n, end)
                continue
            if is_pad(source):
                yield from _wire_to_pad(room, state, n, end)
                continue
            needed = run.diameter or room.as_wide((source, other))
            for joint in bad:
                if joint in (state.joint[state.where[source]], state.joint[state.where[other]]):
                    continue
                spot = room.spot(state, source, joint, needed, drill=False)
                if spot is None:
                    continue
                target = spot[0]
                keys = (target, other) if end == 0 else (other, target)
                step = MoveWire(run.kind, source, other, target)
                cost = MOVE + room.far(source, target)
                yield Action(cost, (step,), rewiring(n, run, Run(run.kind, keys, run.diameter)))


def _other_bus(room: Room, state: State, n: int, end: int) -> Iterator[Action]:
    """A bus that ends elsewhere in its row, at the nearest place of those where it joins the same."""
    run = state.runs[n]
    source, other = run.keys[end], run.keys[-1 - end]
    row = _row(room, source)
    if other not in row:
        return
    held = state.busy.union(*(wire.keys for wire in state.runs if wire.kind == "bus" and wire is not run))
    nearest: dict[frozenset[int], tuple[int, tuple[Key, ...], Key]] = {}
    at, far = row.index(source), row.index(other)
    for place, target in enumerate(row):
        if place != far:
            keys = tuple(row[min(place, far) : max(place, far) + 1])
            joined = frozenset(state.where[key] for key in keys if key in held)
            if joined not in nearest or abs(place - at) < nearest[joined][0]:
                nearest[joined] = abs(place - at), keys, target
    for moved, keys, target in nearest.values():
        if moved and any(is_wrong(state, state.joint[state.where[key]]) for key in keys):
            step = MoveWire("bus", source, other, target)
            instead = Run("bus", keys, run.diameter)
            yield Action(MOVE + room.far(source, target), (step,), rewiring(n, run, instead))


def _wire_to_pad(room: Room, state: State, n: int, end: int) -> Iterator[Action]:
    """One of several wires to a pad to another one, to which nothing leads."""
    run = state.runs[n]
    source, other = run.keys[end], run.keys[-1 - end]
    for lead in sorted(state.wrong):
        pad = state.key[lead]
        if room.case.is_pad(lead) and is_pad(pad) and len(state.nodes_of[state.joint[state.node[lead]]]) == 1:
            step = MoveWire(run.kind, source, other, pad)
            yield Action(MOVE, (step,), rewiring(n, run, Run(run.kind, (other, pad), run.diameter)))


def taken_wires(room: Room, state: State) -> Iterator[Action]:
    for n, run in enumerate(state.runs):
        if is_wrong(state, state.joint[state.where[run.keys[0]]]):
            step = TakeWire(run.kind, run.keys[0], run.keys[-1])
            yield Action(TAKE, (step,), rewiring(n, run, None))


def added_wires(room: Room, state: State) -> Iterator[Action]:
    """A jumper between two joints of one net, where they come nearest; a bus along a row."""
    for _, joints in sorted(state.joints_of.items()):
        for one, other in combinations(joints, 2):
            action = jumper(room, state, one, other)
            if action is not None:
                yield action
    for row in room.case.rows:
        yield from _added_bus(room, state, row)


def jumper(room: Room, state: State, one: int, other: int) -> Action | None:
    """A jumper between two joints, or a lead out where one of them is but a pad."""
    ends = room.nearest(state, one, other)
    if ends is None:
        return _second_way_out(room, state, one, other)
    (first, hole), (second, drilled) = ends
    new = tuple(h for h in (hole, drilled) if h is not None)
    drilling = (hole, one), (drilled, other)
    nodes = {h.key: min(state.nodes_of[joint]) for h, joint in drilling if h is not None}
    step = AddWire("jumper", first, second, new)
    return Action(JUMPER + room.far(first, second), (step,), wiring(Run("jumper", (first, second)), nodes))


def _second_way_out(room: Room, state: State, one: int, other: int) -> Action | None:
    """A lead out to a pad at which a part's lead ends."""
    for here, there in ((one, other), (other, one)):
        pads = [key for node in state.nodes_of[there] for key in state.members.get(node, ()) if is_pad(key)]
        if not pads or len(state.at_key.get(pads[0], ())) < 2:
            continue
        spot = room.spot(state, pads[0], here, 0.0, drill=False)
        if spot is not None:
            step = AddWire("lead out", spot[0], pads[0])
            return Action(JUMPER, (step,), wiring(Run("lead out", (spot[0], pads[0])), {}))
    return None


def _added_bus(room: Room, state: State, row: Sequence[Key]) -> Iterator[Action]:
    """The shortest buses along a row that join pieces of a net."""
    joints = [state.joint[state.where[key]] for key in row]
    ends = [n for n, joint in enumerate(joints) if is_wrong(state, joint)]
    shortest: dict[frozenset[int], tuple[int, int]] = {}
    for at, start in enumerate(ends):
        joined, done = {joints[start]}, start
        for end in ends[at + 1 :]:
            joined.update(joints[done : end + 1])
            done = end
            if not state.copper.bare.isdisjoint(row[start : end + 1]) or len(_nets(state, joined)) > MOST_NETS:
                break
            named = frozenset(joined)
            if len(joined) > 1 and (named not in shortest or end - start < shortest[named][0]):
                shortest[named] = end - start, start
    for joined_here, (length, start) in shortest.items():
        if _mends(state, joined_here):
            keys = tuple(row[start : start + length + 1])
            step = AddWire("bus", keys[0], keys[-1])
            yield Action(JUMPER + room.far(keys[0], keys[-1]), (step,), wiring(Run("bus", keys), {}))


def _nets(state: State, joints: Iterable[int]) -> frozenset[int]:
    return frozenset[int]().union(*(state.nets_of.get(joint, ()) for joint in joints))


def _mends(state: State, joints: Iterable[int]) -> bool:
    """Does joining these bring the state nearer?"""
    held = [state.nets_of[joint] for joint in joints if joint in state.nets_of]
    return 2 * (sum(map(len, held)) - len(_nets(state, joints))) > len(held) - 1


def is_wrong(state: State, joint: int) -> bool:
    nets = state.nets_of.get(joint, frozenset())
    return len(nets) > 1 or any(len(state.joints_of[net]) > 1 for net in nets)


def _row(room: Room, key: Key) -> list[Key]:
    return row_of(room.case.layouts[key[0]], key) if key[0] in room.case.layouts else []
