"""The cheapest actions that lead from a state to one that is as the circuit asks.

In: readings of one text, their room. Out: the actions, and what they lead to. Refuses to know what is told of them.

States are searched best first, by what the steps cost and half of how far the state still is; leads that may be taken
for each other are exchanged for nothing. Steps that bring a state no nearer are not tried.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from heapq import heappop, heappush
from math import ceil, inf
from typing import TypeAlias

from shuntwise.board.actions import CUT, MOVE, TAKE, UNLIKELY, Action, and_then, reading
from shuntwise.board.compare import descended, freely, turns
from shuntwise.board.moves import exchanged_leads, exchanged_parts, moved, moves_to, turned_and_moved
from shuntwise.board.recutting import made_cuts, taken_cuts
from shuntwise.board.rewiring import added_wires, jumper, moved_wires, taken_wires
from shuntwise.board.room import Room
from shuntwise.board.state import State
from shuntwise.board.steps import ExchangeLeads, ExchangeParts, Step
from shuntwise.board.wires import is_pad

MOST_STATES, MOST_TRIALS = 60, 10_000
"""So many states are gone on from at most, and so many are looked at, before a list that may be longer is made."""

MANY, FEW_STATES = 8, 10
"""A state that is farther off has more than two mistakes: of such, fewer are gone on from before one step after the
other is taken, whichever brings most for its cost."""

MORE_STATES = 12
"""So many more states are gone on from for a likelier pair of steps, once one has been found."""

MOST_LEFT = 6
"""So far from the circuit may a state be after two parts are exchanged, for others to be taken the other way round."""

_Entry: TypeAlias = tuple[float, int, int, float, State, tuple[Action, ...]]
"""A state that is waiting: how soon, of equals the nearest and the first, what it has cost, and what led there."""

Found: TypeAlias = tuple[tuple[Action, ...], State, bool]
"""The actions, the state after them, and was all looked at."""


class Search:
    def __init__(self, room: Room) -> None:
        self.room = room
        self._singles: list[Action] = []
        self._trials = 0
        self._least = inf

    def path(self, starts: Sequence[State]) -> Found:
        """The actions of the cheapest repair that was found.

        `starts` are readings of one text; the first action takes the first of them to the one that was best.
        """
        waiting: list[_Entry] = []
        known: dict[object, float] = {}
        for start in starts:
            if start.mark not in known:
                known[start.mark] = 0.0
                first = Action(0.0, (), reading(starts[0], start))
                waiting.append((start.distance / 2, start.distance, len(waiting), 0.0, start, (first,)))
        best: tuple[float, tuple[Action, ...], State] | None = None
        nearest: tuple[State, tuple[Action, ...]] = starts[0], ()
        serial = len(waiting)
        visited = 0
        most = MOST_STATES if starts[0].distance <= MANY else FEW_STATES
        while waiting and visited < most and self._trials < MOST_TRIALS:
            *_, cost, found, path = heappop(waiting)
            # One step mends 4, or 8 where two parts are exchanged, which is tried in the first states.
            if best is not None and cost + max(1, ceil(found.distance / 4)) > best[0] - UNLIKELY:
                continue
            visited += 1
            state, _ = descended(found) if len(path) > 1 else (found, ())
            if state is not found:
                path = (*path, Action(0.0, (), reading(found, state)))
                if state.distance == 0:
                    if best is None or cost < best[0]:
                        best = cost, path, state
                        self._least = cost
                    continue
            if state.distance < nearest[0].distance:
                nearest = state, path
            for tried in self._actions(state, cost):
                self._trials += 1
                action, after = tried, tried.do(state)
                if action.steps and self._may_refit(action.steps[0], cost, state, after):
                    # Beside what was exchanged parts may have been taken the wrong way round, to fit that.
                    fitted = descended(after, turns)[0]
                    action = replace(action, do=and_then(action.do, reading(after, fitted)))
                    after = fitted
                if after.distance > state.distance or (after.distance == state.distance and action.steps):
                    continue
                total = cost + action.cost
                if after.distance == 0:
                    if not cost:
                        self._singles.append(action)
                    if best is None or total < best[0]:
                        best = total, (*path, action), after
                        self._least = total
                        if total < 3 * MOVE:  # no fewer steps do, as every single one is tried first
                            most = min(most, visited + MORE_STATES)
                    continue
                if known.get(after.mark, inf) <= total or (best is not None and total + 1 > best[0] - UNLIKELY):
                    continue
                known[after.mark] = total
                serial += 1
                reached = after.distance
                heappush(waiting, (total + reached / 2, reached, serial, total, after, (*path, action)))
        if best is not None:
            return best[1], best[2], not waiting or best[0] < 3 * MOVE
        state, path = nearest
        onward = self._listed(state, path)
        if not onward[1].distance:
            return onward
        return min((onward, self._listed(starts[0], ())), key=lambda made: made[1].distance)

    def others(self, chosen: Action) -> tuple[tuple[Step, ...], ...]:
        """Single actions that cure as well, at nearly the same cost, the likeliest first."""
        near = [a for a in self._singles if a is not chosen and a.cost < chosen.cost + MOVE / 2 and a.steps]
        ordered = sorted(range(len(near)), key=lambda n: (near[n].cost, n))
        found = dict.fromkeys(near[n].steps for n in ordered if near[n].steps != chosen.steps)
        return tuple(found)[:3]

    def _actions(self, state: State, cost: float = 0.0) -> Iterator[Action]:
        """All that may bring a state nearer which has cost so much: what undoes a likely slip first."""
        room = self.room
        for _, other in freely(state):
            yield Action(0.0, (), reading(state, other))
        yield from exchanged_leads(room, state)
        yield from moved(room, state)
        yield from exchanged_parts(room, state)
        yield from moved_wires(room, state)
        yield from taken_wires(room, state)
        yield from added_wires(room, state)
        if cost + CUT < self._least + (0 if cost else MOVE / 2):  # of a single step others as good are told
            yield from made_cuts(room, state)
        if cost + TAKE < self._least:
            yield from taken_cuts(room, state)
        yield from turned_and_moved(room, state)

    def _may_refit(self, step: Step, cost: float, state: State, after: State) -> bool:
        match step:
            case ExchangeParts():
                return cost < 2 * MOVE and after.distance <= MOST_LEFT
            case ExchangeLeads():
                return cost < MOVE and 0 < after.distance <= min(MOST_LEFT, state.distance + 2)
        return False

    # --- where the search is given up

    def _listed(self, state: State, path: tuple[Action, ...]) -> Found:
        """What has been done, and then always what brings the state nearest for its cost: a list that may be long."""
        while state.distance:
            best: tuple[float, Action, State] | None = None
            for action in self._actions(state):
                after = action.do(state)
                gain = (state.distance - after.distance) / max(action.cost, UNLIKELY)
                if gain > (best[0] if best is not None else 0):
                    best = gain, action, after
            if best is None:
                break
            path, state = (*path, best[1]), best[2]
        rest = self._one_by_one(state) or ()
        for action in rest:
            state = action.do(state)
        return (*path, *rest), state, False

    def _one_by_one(self, state: State) -> list[Action] | None:
        """Every net gets the joint where most of its leads are; what lies elsewhere is moved there, or joined."""
        home: dict[int, int] = {}
        given: set[int] = set()
        for (joint, net), leads in sorted(state.at.items(), key=lambda entry: (-len(entry[1]), entry[0])):
            if net not in home and joint not in given and any(not is_pad(state.key[n]) for n in leads):
                home[net] = state.node[next(n for n in leads if not is_pad(state.key[n]))]
                given.add(joint)
        empty = [joint for joint in state.nodes_of if joint not in given and joint not in state.nets_of]
        actions: list[Action] = []
        for (_, net), leads in sorted(state.at.items()):
            if net not in home:
                if not empty:
                    return None
                home[net] = state.nodes_of[empty.pop(0)][0]
            here, target = state.joint[state.node[leads[0]]], state.joint[home[net]]
            if here == target:
                continue
            joining = jumper(self.room, state, here, target) if len(leads) > 1 else None
            if joining is not None and state.nets_of[here] == {net}:
                actions.append(joining)
                state = joining.do(state)
                continue
            for lead in leads:
                action = next(moves_to(self.room, state, (lead,), target), None)
                if action is None:
                    return None
                actions.append(action)
                state = action.do(state)
        return actions if state.distance == 0 else None
