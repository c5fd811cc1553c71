"""The shortest repair of layouts that are not what the circuit asks.

In: a `Comparison`, and what can be cut and drilled. Out: a `Repair`: steps, and for each mistake what it does. Refuses
to know words.

States are searched best first, by what the steps cost and half of how far the state still is; leads that may be taken
for each other are exchanged for nothing. Steps that bring a state no nearer are not tried.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from heapq import heappop, heappush
from itertools import combinations, product
from math import ceil, dist, inf
from typing import TypeAlias

from shuntwise.board.compare import (
    MOST_PARTS,
    Comparison,
    Finding,
    LeadMissing,
    NotPlaced,
    descended,
    differences,
    freely,
    turned,
    turns,
)
from shuntwise.board.cutting import TrialCut
from shuntwise.board.islands import Key
from shuntwise.board.state import Case, Run, State
from shuntwise.board.steps import (
    AddWire,
    ExchangeLeads,
    ExchangeParts,
    MakeCut,
    Move,
    MoveWire,
    NewHole,
    PlaceLeads,
    Step,
    TakeWire,
)
from shuntwise.board.wanted import Lead
from shuntwise.board.wires import is_pad, row_of
from shuntwise.graph.circuit import point_of
from shuntwise.model.boards import Layout, Point

MOVE, EXCHANGE, JUMPER, TAKE, CUT = 1.0, 1.0, 1.1, 1.0, 1.2
"""What steps cost: how much rather a builder does one than another (common practice, no source)."""

UNLIKELY = 0.03
"""The most that a step costs in addition for being an unlikely slip: too little to outweigh another sort of step."""

NEAR_MM = 60.0
"""From this distance on a slip into another hole is as unlikely as it gets (common practice, no source)."""

MOST_MOVED = 3
"""So many leads of one net on one joint are moved together at most."""

MOST_EMPTY = 2
"""So many pieces of copper without a lead are tried for leads that belong to no other."""

MOST_STATES, MOST_TRIALS = 60, 10_000
"""So many states are gone on from at most, and so many are looked at, before a list that may be longer is made."""

MANY, FEW_STATES = 8, 10
"""A state that is farther off has more than two mistakes: of such, fewer are gone on from before one step after the
other is taken, whichever brings most for its cost."""

MOST_WRONG = 150
"""With more wrong leads than this there is no list at all: it would not help anybody."""

MOST_LEFT = 6
"""So far from the circuit may a state be after two parts are exchanged, for others to be taken the other way round."""

DRILL_MM = 1.3
"""A hole that is drilled for a lead where nothing says how thick that is."""


TrialCuts: TypeAlias = Callable[[int], Iterable[TrialCut]]
"""Cuts that part an island, which is told by its number in `Islands.of`."""

FreeSpot: TypeAlias = Callable[[str, int, float], Point | None]
"""Where in an island on the layout of a name a hole of a diameter (mm) can be drilled."""


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
    search = _Search(state.case, trial_cuts, free_spot)
    if not comparison.wiring:
        return Repair((), search.placing(comparison, state), 0.0, True)
    if len(state.wrong) > MOST_WRONG or len(state.case.leads_of) > MOST_PARTS:
        return Repair((), (), inf, False, tuple(differences(state)))
    path, end, shortest = search.path((state, turned(comparison.written)))
    mistakes = tuple(_mistakes(state, path, end))
    done = [action for action in path if action.steps]
    if len(done) == 1:
        mistakes = (replace(mistakes[0], others=search.others(done[0])),)
    cost = sum(action.cost for action in path)
    return Repair(mistakes, search.placing(comparison, end), cost, shortest, tuple(differences(end)))


@dataclass(frozen=True)
class _Action:
    """Steps that are done together, and what comes of them. Without a step: another reading."""

    cost: float
    steps: tuple[Step, ...]
    do: Callable[[State], State]


def _mistakes(state: State, path: Sequence[_Action], end: State) -> Iterator[Mistake]:
    """Each action with what is wrong where all others are done; one without which it is as well is not needed."""
    left = frozenset(differences(end))
    kept = list(path)
    for action in path:
        if action.steps:
            without = state
            for other in kept:
                without = other.do(without) if other is not action else without
            if without.distance > end.distance:
                yield Mistake(action.steps, tuple(f for f in differences(without) if f not in left))
            else:
                kept.remove(action)


_Entry: TypeAlias = tuple[float, int, int, float, State, tuple[_Action, ...]]
"""A state that is waiting: how soon, of equals the nearest and the first, what it has cost, and what led there."""


class _Search:
    def __init__(self, case: Case, trial_cuts: TrialCuts, free_spot: FreeSpot) -> None:
        self.case = case
        self.trial_cuts = trial_cuts
        self.free_spot = free_spot
        self.cuts: dict[int, tuple[TrialCut, ...]] = {}
        self.spots: dict[tuple[str, int, float], Point | None] = {}
        self.singles: list[_Action] = []
        self.trials = 0

    # --- best first

    def path(self, starts: Sequence[State]) -> tuple[tuple[_Action, ...], State, bool]:
        """The actions of the cheapest repair that was found, the state after them, and was all looked at.

        `starts` are readings of one text; the first action takes the first of them to the one that was best.
        """
        waiting: list[_Entry] = []
        known: dict[object, float] = {}
        for start in starts:
            if start.mark not in known:
                known[start.mark] = 0.0
                first = _Action(0.0, (), _reading(starts[0], start))
                waiting.append((start.distance / 2, start.distance, len(waiting), 0.0, start, (first,)))
        best: tuple[float, tuple[_Action, ...], State] | None = None
        nearest: tuple[State, tuple[_Action, ...]] = starts[0], ()
        serial = len(waiting)
        visited = 0
        most = MOST_STATES if starts[0].distance <= MANY else FEW_STATES
        while waiting and visited < most and self.trials < MOST_TRIALS:
            *_, cost, found, path = heappop(waiting)
            # One step mends 4, or 8 where two parts are exchanged, which is tried in the first states.
            if best is not None and cost + max(1, ceil(found.distance / 4)) > best[0] - UNLIKELY:
                continue
            visited += 1
            state, _ = descended(found) if len(path) > 1 else (found, ())
            if state is not found:
                path = (*path, _Action(0.0, (), _reading(found, state)))
                if state.distance == 0:
                    if best is None or cost < best[0]:
                        best = cost, path, state
                    continue
            if state.distance < nearest[0].distance:
                nearest = state, path
            for tried in self.actions(state):
                self.trials += 1
                action, after = tried, tried.do(state)
                if (
                    cost < 2 * MOVE
                    and action.steps
                    and isinstance(action.steps[0], ExchangeParts)
                    and after.distance <= MOST_LEFT
                ):
                    # Beside exchanged parts others may have been taken the wrong way round, to fit those.
                    fitted = descended(after, turns)[0]
                    action = replace(action, do=_and_then(action.do, _reading(after, fitted)))
                    after = fitted
                if after.distance > state.distance or (after.distance == state.distance and action.steps):
                    continue
                total = cost + action.cost
                if after.distance == 0:
                    if not cost:
                        self.singles.append(action)
                    if best is None or total < best[0]:
                        best = total, (*path, action), after
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
        onward = self.listed(state, path)
        return (
            min((onward, self.listed(starts[0], ())), key=lambda made: made[1].distance)
            if onward[1].distance
            else onward
        )

    def listed(self, state: State, path: tuple[_Action, ...]) -> tuple[tuple[_Action, ...], State, bool]:
        """What has been done, and then always what brings the state nearest for its cost: a list that may be long."""
        while state.distance:
            best: tuple[float, _Action, State] | None = None
            for action in self.actions(state):
                after = action.do(state)
                gain = (state.distance - after.distance) / max(action.cost, UNLIKELY)
                if gain > (best[0] if best is not None else 0):
                    best = gain, action, after
            if best is None:
                break
            path, state = (*path, best[1]), best[2]
        rest = self.one_by_one(state) or ()
        for action in rest:
            state = action.do(state)
        return (*path, *rest), state, False

    def others(self, chosen: _Action) -> tuple[tuple[Step, ...], ...]:
        """Single actions that cure as well, at nearly the same cost, the likeliest first."""
        near = [a for a in self.singles if a is not chosen and a.cost < chosen.cost + MOVE / 2 and a.steps]
        ordered = sorted(range(len(near)), key=lambda n: (near[n].cost, n))
        found = dict.fromkeys(near[n].steps for n in ordered if near[n].steps != chosen.steps)
        return tuple(found)[:3]

    def one_by_one(self, state: State) -> list[_Action] | None:
        """Every net gets the joint where most of its leads are; what lies elsewhere is moved there, or joined."""
        home: dict[int, int] = {}
        given: set[int] = set()
        for (joint, net), leads in sorted(state.at.items(), key=lambda entry: (-len(entry[1]), entry[0])):
            if net not in home and joint not in given and any(not is_pad(state.key[n]) for n in leads):
                home[net] = state.node[next(n for n in leads if not is_pad(state.key[n]))]
                given.add(joint)
        empty = [joint for joint in state.nodes_of if joint not in given and joint not in state.nets_of]
        actions: list[_Action] = []
        for (_, net), leads in sorted(state.at.items()):
            if net not in home:
                if not empty:
                    return None
                home[net] = state.nodes_of[empty.pop(0)][0]
            target = state.joint[home[net]]
            if state.joint[state.node[leads[0]]] == target:
                continue
            jumper = self.jumper(state, state.joint[state.node[leads[0]]], target) if len(leads) > 1 else None
            if jumper is not None and state.nets_of[state.joint[state.node[leads[0]]]] == {net}:
                actions.append(jumper)
                state = jumper.do(state)
                continue
            for lead in leads:
                action = next(self.moves_to(state, (lead,), target), None)
                if action is None:
                    return None
                actions.append(action)
                state = action.do(state)
        return actions if state.distance == 0 else None

    # --- what can be done

    def actions(self, state: State) -> Iterator[_Action]:
        """All that may bring a state nearer: what undoes a likely slip first."""
        for _, other in freely(state):
            yield _Action(0.0, (), _reading(state, other))
        yield from self.exchanged_leads(state)
        yield from self.moved(state)
        yield from self.exchanged_parts(state)
        yield from self.moved_wires(state)
        yield from self.taken_wires(state)
        yield from self.added_wires(state)
        yield from self.cut(state)
        yield from self.turned_and_moved(state)

    def moved(self, state: State) -> Iterator[_Action]:
        """All leads of a net on a joint to another joint of the net; or to copper without leads."""
        for (joint, net), leads in sorted(state.at.items()):
            if leads[0] not in state.wrong or len(leads) > MOST_MOVED:
                continue
            targets = [other for other in state.joints_of[net] if other != joint]
            if len(state.nets_of[joint]) > 1 and not targets:
                targets = self.empty(state, state.key[leads[0]])
            for target in targets:
                yield from self.moves_to(state, leads, target)

    def turned_and_moved(self, state: State) -> Iterator[_Action]:
        """A part with like leads, taken the other way round, and one of its leads moved or exchanged then."""
        wrong = {self.case.leads[n][0] for n in state.wrong}
        for label in self.case.turnable:
            if label not in wrong:
                continue
            a, b = self.case.leads_of[label]
            if state.node[a] == state.node[b]:
                continue
            turned = state.swapped([(a, b)])
            for action in self.exchanged_leads(turned, (a, b)):
                yield _Action(action.cost, action.steps, _after_turn(a, b, action))
            for lead in (a, b):
                here = turned.joint[turned.node[lead]]
                for target in turned.joints_of[turned.want[lead]]:
                    if target != here:
                        for action in self.moves_to(turned, (lead,), target):
                            yield _Action(action.cost, action.steps, _after_turn(a, b, action))

    def moves_to(self, state: State, leads: Sequence[int], joint: int) -> Iterator[_Action]:
        """Some leads to a joint, if there is a hole for each. A pad that nothing leads to gets a lead out."""
        case = self.case
        taken: set[Key] = set()
        keys: dict[int, Key] = {}
        holes: dict[Key, NewHole] = {}
        steps: list[Step] = []
        cost = 0.0
        for lead in leads:
            name, source = case.leads[lead], state.key[lead]
            spot = self.spot(state, source, joint, taken)
            if spot is None or source not in case.used:  # what has been moved once stays
                return
            target, hole = spot
            if is_pad(source) and case.is_pad(lead):
                if len(state.nodes_of[state.joint[state.node[lead]]]) > 1:
                    return  # several wires lead to it: those are moved
                steps.append(AddWire("lead out", target, source, (hole,) if hole else ()))
                cost += JUMPER
            else:
                steps.append(Move(name, source, target, hole))
                cost += MOVE + self.far(source, target) + self.off_centre(state, lead, target)
            taken.add(target)
            keys[lead] = target
            if hole is not None:
                holes[target] = hole
        yield _Action(cost, tuple(steps), _moving(keys, {key: min(state.nodes_of[joint]) for key in holes}))

    def exchanged_leads(self, state: State, among: Sequence[int] = ()) -> Iterator[_Action]:
        """Two leads of which one at least is on a joint that the other belongs to, with one of `among`, if any."""
        case = self.case
        wrong = sorted(state.wrong)
        for a, b in product(among, wrong) if among else combinations(wrong, 2):
            here, there = state.joint[state.node[a]], state.joint[state.node[b]]
            one, other = state.want[a], state.want[b]
            if here == there or one == other or not (one in state.nets_of[there] or other in state.nets_of[here]):
                continue
            same = case.leads[a][0] == case.leads[b][0]
            pads = [n for n in (a, b) if case.is_pad(n) and is_pad(state.key[n])]
            names, keys = (case.leads[a], case.leads[b]), (state.key[a], state.key[b])
            unlikely = 0.0 if same else UNLIKELY / 3 + self.far(*keys) / 2
            if not pads:
                if (same and case.leads[a][0] in case.turnable) or any(is_pad(key) for key in keys):
                    continue
                yield _Action(EXCHANGE + unlikely, (ExchangeLeads(names, keys),), _swapping(((a, b),)))
            elif same:
                ends = ("", point_of(*names[0])), ("", point_of(*names[1]))
                yield _Action(EXCHANGE + unlikely, (ExchangeLeads(names, ends),), _trading(a, b, ends))
            elif len(pads) == 1:
                yield from self.led_to_other_pad(state, pads[0], b if pads[0] == a else a)

    def led_to_other_pad(self, state: State, pad: int, led: int) -> Iterator[_Action]:
        """The lead out of one pad to another, to which nothing leads."""
        case = self.case
        if case.is_pad(led) and len(state.nodes_of[state.joint[state.node[pad]]]) == 1:
            ends = [("", point_of(*case.leads[n])) for n in (led, pad)]
            step = MoveWire("lead out", ends[0], state.key[led], ends[1])
            yield _Action(MOVE, (step,), _leading(pad, led, ends[0]))

    def exchanged_parts(self, state: State) -> Iterator[_Action]:
        """Two parts of two leads in each other's place, or of the same kind with more."""
        case = self.case
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
                step = ExchangeParts((one, other), leads)
                yield _Action(EXCHANGE + UNLIKELY / 2, (step,), _swapping(pairs))

    def moved_wires(self, state: State) -> Iterator[_Action]:
        """One end of a wire to a joint where something is wrong; that of a bus to another hole of its row."""
        bad = [joint for joint in state.nodes_of if self.is_wrong(state, joint)]
        for n, run in enumerate(state.runs):
            for end in (0, -1):
                source, other = run.keys[end], run.keys[-1 - end]
                if run.kind == "bus":
                    yield from self.other_bus(state, n, end)
                    continue
                if is_pad(source):
                    yield from self.wire_to_pad(state, n, end)
                    continue
                for joint in bad:
                    if joint in (state.joint[state.where[source]], state.joint[state.where[other]]):
                        continue
                    spot = self.spot(state, source, joint, set())
                    if spot is None or spot[1] is not None:
                        continue
                    target = spot[0]
                    keys = (target, other) if end == 0 else (other, target)
                    step = MoveWire(run.kind, source, other, target)
                    yield _Action(MOVE + self.far(source, target), (step,), _rewiring(n, run, Run(run.kind, keys)))

    def other_bus(self, state: State, n: int, end: int) -> Iterator[_Action]:
        run = state.runs[n]
        source, other = run.keys[end], run.keys[-1 - end]
        row = row_of(self.case.layouts[source[0]], source) if source[0] in self.case.layouts else []
        if other not in row:
            return
        for target in row:
            if target not in (source, other):
                a, b = sorted((row.index(target), row.index(other)))
                keys = tuple(row[a : b + 1])
                step = MoveWire("bus", source, other, target)
                yield _Action(MOVE + self.far(source, target), (step,), _rewiring(n, run, Run("bus", keys)))

    def wire_to_pad(self, state: State, n: int, end: int) -> Iterator[_Action]:
        """One of several wires to a pad to another one, to which nothing leads."""
        run = state.runs[n]
        source, other = run.keys[end], run.keys[-1 - end]
        for lead in sorted(state.wrong):
            pad = state.key[lead]
            if self.case.is_pad(lead) and is_pad(pad) and len(state.nodes_of[state.joint[state.node[lead]]]) == 1:
                step = MoveWire(run.kind, source, other, pad)
                yield _Action(MOVE, (step,), _rewiring(n, run, Run(run.kind, (other, pad))))

    def taken_wires(self, state: State) -> Iterator[_Action]:
        for n, run in enumerate(state.runs):
            if self.is_wrong(state, state.joint[state.where[run.keys[0]]]):
                step = TakeWire(run.kind, run.keys[0], run.keys[-1])
                yield _Action(TAKE, (step,), _told_anew(_rewiring(n, run, None)))

    def added_wires(self, state: State) -> Iterator[_Action]:
        """A jumper between two joints of one net, where they come nearest."""
        for _, joints in sorted(state.joints_of.items()):
            for one, other in combinations(joints, 2):
                action = self.jumper(state, one, other)
                if action is not None:
                    yield action

    def jumper(self, state: State, one: int, other: int) -> _Action | None:
        ends = self.nearest(state, one, other)
        if ends is None:
            return None
        (first, hole), (second, drilled) = ends
        new = tuple(h for h in (hole, drilled) if h is not None)
        drilling = (hole, one), (drilled, other)
        nodes = {h.key: min(state.nodes_of[joint]) for h, joint in drilling if h is not None}
        step = AddWire("jumper", first, second, new)
        return _Action(JUMPER + self.far(first, second), (step,), _wiring(Run("jumper", (first, second)), nodes))

    def cut(self, state: State) -> Iterator[_Action]:
        for joint, nets in sorted(state.nets_of.items()):
            if len(nets) < 2:
                continue
            for node in state.nodes_of[joint]:
                keys = state.members.get(node, ())
                island = self.case.island.get(keys[0]) if keys else None
                if island is None:
                    continue
                if island not in self.cuts:
                    self.cuts[island] = tuple(self.trial_cuts(island))
                for trial in self.cuts[island]:
                    groups = [group & frozenset(keys) for group in trial.groups]
                    groups = [group for group in groups if group]
                    if len(groups) > 1:
                        apart = min(groups[0]), min(groups[1])
                        step = MakeCut(trial.layout, trial.cut, trial.words, apart)
                        yield _Action(CUT, (step,), _told_anew(_parting(groups, node)))

    # --- where

    def is_wrong(self, state: State, joint: int) -> bool:
        nets = state.nets_of.get(joint, frozenset())
        return len(nets) > 1 or any(len(state.joints_of[net]) > 1 for net in nets)

    def empty(self, state: State, near: Key) -> list[int]:
        """Joints without leads that have copper and a hole, the nearest first."""
        found: list[tuple[float, int]] = []
        for joint in state.nodes_of:
            if joint not in state.nets_of:
                spot = self.spot(state, near, joint, set(), drill=False)
                if spot is not None:
                    found.append((self.case.span(near, spot[0]), joint))
        return [joint for _, joint in sorted(found)[:MOST_EMPTY]]

    def free(self, state: State, joint: int) -> list[Key]:
        """The holes of a joint that nothing is in, and its tags."""
        busy = self.busy(state)
        return [
            key
            for node in state.nodes_of[joint]
            for key in state.members.get(node, ())
            if not is_pad(key) and key not in self.case.bare and (key in self.case.tags or key not in busy)
        ]

    def busy(self, state: State) -> frozenset[Key]:
        ends = (key for run in state.runs for key in (run.keys[0], run.keys[-1]))
        return frozenset((*state.key, *ends))

    def spot(
        self, state: State, near: Key, joint: int, taken: set[Key], drill: bool = True
    ) -> tuple[Key, NewHole | None] | None:
        """A hole of a joint that is free, the nearest; or one to be drilled there."""
        free = [key for key in self.free(state, joint) if key in self.case.tags or key not in taken]
        if free:
            return min(free, key=lambda key: self.case.span(near, key)), None
        return self.drilled(state, near, joint) if drill else None

    def drilled(self, state: State, near: Key, joint: int) -> tuple[Key, NewHole] | None:
        for node in state.nodes_of[joint]:
            keys = [key for key in state.members.get(node, ()) if key in self.case.island]
            # Where copper has been cut in this repair, nobody knows on which side the spot would be.
            if not keys or len({state.where[key] for key in self.whole(keys[0])}) > 1 or keys[0] in self.case.bare:
                continue
            layout, island = keys[0][0], self.case.island[keys[0]]
            diameter = self.case.diameter.get(near) or DRILL_MM
            if (layout, island, diameter) not in self.spots:
                self.spots[layout, island, diameter] = self.free_spot(layout, island, diameter)
            at = self.spots[layout, island, diameter]
            name = _free_name(self.case.layouts[layout], state)
            if at is not None and all(dist(at, hole.at) > diameter for hole in self.new(state)):
                return (layout, name), NewHole((layout, name), at, diameter)
        return None

    def new(self, state: State) -> Iterator[NewHole]:
        """Holes that this repair drills already: a second one would be in the same place."""
        for key in state.where:
            if not is_pad(key) and key not in self.case.at:
                for (layout, _, diameter), at in self.spots.items():
                    if at is not None and layout == key[0]:
                        yield NewHole(key, at, diameter)

    def whole(self, key: Key) -> list[Key]:
        return [other for other, island in self.case.island.items() if island == self.case.island[key]]

    def nearest(
        self, state: State, one: int, other: int
    ) -> tuple[tuple[Key, NewHole | None], tuple[Key, NewHole | None]] | None:
        """The two free holes of two joints that are nearest to each other; one that is drilled where there is none."""
        first, second = self.free(state, one), self.free(state, other)
        if first and second:
            a, b = min(((a, b) for a in first for b in second), key=lambda pair: self.case.span(*pair))
            return (a, None), (b, None)
        if first:
            there = self.drilled(state, first[0], other)
            return ((first[0], None), there) if there else None
        if second:
            here = self.drilled(state, second[0], one)
            return (here, (second[0], None)) if here else None
        return None

    # --- how likely

    def far(self, source: Key, target: Key) -> float:
        """What a slip costs for its length."""
        return UNLIKELY * min(self.case.span(source, target), NEAR_MM) / NEAR_MM

    def off_centre(self, state: State, lead: int, target: Key) -> float:
        """What a lead costs that lies well: of a part with two leads the body is about halfway between them."""
        label = self.case.leads[lead][0]
        place, leads = self.case.place_of.get(label), self.case.leads_of[label]
        if place is None or place.at is None or len(leads) != 2:
            return 0.0
        other = state.key[leads[1] if leads[0] == lead else leads[0]]
        source = state.key[lead]
        at = self.case.at
        if any(key not in at or key[0] != source[0] for key in (source, target, other)):
            return 0.0
        was, will = (
            dist(place.at, ((at[key][0] + at[other][0]) / 2, (at[key][1] + at[other][1]) / 2))
            for key in (source, target)
        )
        return UNLIKELY * max(-1.0, min(1.0, (will - was) / NEAR_MM))

    # --- what is not there

    def placing(self, comparison: Comparison, end: State) -> tuple[PlaceLeads, ...]:
        """Parts and leads that are not placed, each with holes on its nets as the boards are after the repair."""
        missing: dict[str, list[Lead]] = {}
        for finding in comparison.absent:
            match finding:
                case NotPlaced(label):
                    missing[label] = [(label, terminal) for terminal in self.case.wanted.parts[label]]
                case LeadMissing(lead):
                    missing.setdefault(lead[0], []).append(lead)
        taken: set[Key] = set()
        found: list[PlaceLeads] = []
        for label, leads in missing.items():
            keys: list[tuple[Lead, Key | None]] = []
            near = next((end.key[n] for n in self.case.leads_of.get(label, ())), ("", ""))
            for lead in leads:
                net = self.case.wanted.net_of.get(lead)
                joints = end.joints_of.get(self.case.nets.index(net), ()) if net is not None else ()
                spots = (self.spot(end, near, joint, taken, drill=False) for joint in joints)
                spot = next((spot for spot in spots if spot is not None), None)
                keys.append((lead, spot[0] if spot else None))
                if spot:
                    near = spot[0]
                    taken.add(spot[0])
            found.append(PlaceLeads(label, tuple(keys)))
        return tuple(found)


def _free_name(layout: Layout, state: State) -> str:
    number = 1
    names = {hole.name for hole in layout.holes} | {hole.row for hole in layout.holes}
    while f"h{number}" in names or (layout.name, f"h{number}") in state.where:
        number += 1
    return f"h{number}"


# --- what actions do, to any state that has what they touch


def _reading(state: State, other: State) -> Callable[[State], State]:
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


def _moving(keys: Mapping[int, Key], new: Mapping[Key, int]) -> Callable[[State], State]:
    def do(before: State) -> State:
        for key, node in new.items():
            before = before.drilled(key, node)
        return before.moved(keys)

    return do


def _after_turn(a: int, b: int, action: _Action) -> Callable[[State], State]:
    return lambda before: action.do(before.swapped([(a, b)]))


def _swapping(pairs: Sequence[tuple[int, int]]) -> Callable[[State], State]:
    return lambda before: before.swapped(pairs)


def _trading(a: int, b: int, pads: tuple[Key, Key]) -> Callable[[State], State]:
    """Two pads with all that goes to them exchanged."""
    other = {pads[0]: pads[1], pads[1]: pads[0]}

    def do(before: State) -> State:
        after = before.swapped([(a, b)])
        keys = {n: other[key] for n, key in enumerate(after.key) if key in other}
        runs = [Run(run.kind, tuple(other.get(key, key) for key in run.keys)) for run in after.runs]
        return after.moved(keys).wired(runs)

    return do


def _leading(pad: int, led: int, freed: Key) -> Callable[[State], State]:
    """The pad gets the other's lead out, which is left with nothing."""
    return lambda before: before.moved({pad: before.key[led], led: freed})


def _rewiring(n: int, run: Run, instead: Run | None) -> Callable[[State], State]:
    """One wire otherwise, or none: the one with this number, wherever it is by then."""

    def do(before: State) -> State:
        place = n if n < len(before.runs) and before.runs[n] == run else None
        if place is None:
            place = before.runs.index(run) if run in before.runs else len(before.runs)
        rest = before.runs[place + 1 :]
        return before.wired((*before.runs[:place], *((instead,) if instead else ()), *rest))

    return do


def _wiring(run: Run, new: Mapping[Key, int]) -> Callable[[State], State]:
    def do(before: State) -> State:
        for key, node in new.items():
            before = before.drilled(key, node)
        return before.wired((*before.runs, run))

    return do


def _and_then(first: Callable[[State], State], second: Callable[[State], State]) -> Callable[[State], State]:
    return lambda before: second(first(before))


def _told_anew(do: Callable[[State], State]) -> Callable[[State], State]:
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


def _parting(groups: Sequence[frozenset[Key]], node: int) -> Callable[[State], State]:
    return lambda before: before.parted(groups, node)
