"""Which lead lies on which piece of metal, and how far that is from what the circuit asks.

In: layouts, copper, `Wanted`. Out: a `State`, and states with one thing otherwise. Refuses to know what a mistake is.

The distance is the number of nets' joints but one each, and of joints' nets but one each: 0 where every net is one
joint and every joint one net. Moving a lead or a wire's end lowers it by 2 at most, exchanging two leads by 4.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, fields
from functools import cached_property
from math import dist, inf

from shuntwise.board.islands import Islands, Key
from shuntwise.board.steps import WireKind
from shuntwise.board.wanted import Lead, Wanted
from shuntwise.board.wires import is_pad, key_of, numbered, soldered
from shuntwise.graph.circuit import point_of
from shuntwise.model.boards import Layout, Place, Point


@dataclass(frozen=True)
class Run:
    """A wire with all that it is soldered to; the first and the last of `keys` are its ends. `diameter` in mm, 0 if the
    text does not say."""

    kind: WireKind
    keys: tuple[Key, ...]
    diameter: float = 0.0


@dataclass(frozen=True)
class Case:
    """What does not change while a repair is looked for. Leads and nets are known by their numbers.

    `leads` are those that lie somewhere, in the order of the circuit, behind them (from `placed` on) those that do not.
    `out` are pads with one lead out: their lead is that wire's end on the board. `told` are parts whose text tells one
    lead from the other, `turnable` those whose leads may be taken for each other; `lies` is where leads lie as written.
    `thick`: the diameter in mm of leads of which it is known. `pieces`: how many pieces of metal there are without
    wires.
    """

    wanted: Wanted
    layouts: Mapping[str, Layout]
    leads: tuple[Lead, ...]
    placed: int
    nets: tuple[str, ...]
    out: frozenset[int]
    leads_of: Mapping[str, tuple[int, ...]]
    turnable: tuple[str, ...]
    told: frozenset[str]
    lies: tuple[Key, ...]
    thick: Mapping[int, float]
    copper: Islands
    pieces: int

    @cached_property
    def at(self) -> Mapping[Key, Point]:
        return {(layout.name, hole.name): hole.at for layout in self.layouts.values() for hole in layout.holes}

    @cached_property
    def tags(self) -> frozenset[Key]:
        return frozenset(
            (layout.name, hole.name) for layout in self.layouts.values() for hole in layout.holes if hole.tag
        )

    @cached_property
    def place_of(self) -> Mapping[str, Place]:
        return {place.label: place for layout in self.layouts.values() for place in layout.places}

    @cached_property
    def diameter(self) -> Mapping[Key, float]:
        return {(layout.name, hole.name): hole.diameter for layout in self.layouts.values() for hole in layout.holes}

    @cached_property
    def used(self) -> frozenset[Key]:
        """Where leads lie as written."""
        return frozenset(self.lies)

    @cached_property
    def rows(self) -> tuple[tuple[Key, ...], ...]:
        """The holes and tags of every row that has several."""
        found: dict[Key, list[Key]] = defaultdict(list)
        for layout in self.layouts.values():
            for hole in layout.holes:
                if (layout.name, hole.name) in self.copper.of:
                    found[layout.name, hole.row].append((layout.name, hole.name))
        return tuple(tuple(row) for row in found.values() if len(row) > 1)

    @cached_property
    def sort(self) -> Mapping[str, str]:
        return self.wanted.sort

    def is_pad(self, lead: int) -> bool:
        return self.leads[lead][1] in "+-"

    def span(self, one: Key, other: Key) -> float:
        """How far apart two holes of one board are, in mm; infinite between boards, or to a pad."""
        if one[0] != other[0] or one not in self.at or other not in self.at:
            return inf
        return dist(self.at[one], self.at[other])


@dataclass(frozen=True)
class State:
    """`key` and `node` (piece of metal) of every placed lead, `want` the net of every lead, `joint` that of every node.

    `where` gives the node of every hole, tag and pad, `runs` are the wires that join nodes. `copper` is that of the
    text, or that without one of its cuts.
    """

    case: Case
    key: tuple[Key, ...]
    node: tuple[int, ...]
    want: tuple[int, ...]
    runs: tuple[Run, ...]
    joint: tuple[int, ...]
    where: Mapping[Key, int]
    members: Mapping[int, tuple[Key, ...]]
    copper: Islands

    @cached_property
    def distance(self) -> int:
        return distance(self.node, self.want, self.joint)

    @property
    def mark(self) -> tuple[tuple[int, ...], tuple[int, ...], tuple[int, ...]]:
        """Equal for states that are the same for the circuit."""
        return self.node, self.want, self.joint

    @cached_property
    def at(self) -> Mapping[tuple[int, int], tuple[int, ...]]:
        """The leads by joint and net."""
        found: dict[tuple[int, int], list[int]] = defaultdict(list)
        for lead, node in enumerate(self.node):
            found[self.joint[node], self.want[lead]].append(lead)
        return {pair: tuple(leads) for pair, leads in found.items()}

    @cached_property
    def nets_of(self) -> Mapping[int, frozenset[int]]:
        """The nets that are on each joint."""
        found: dict[int, set[int]] = defaultdict(set)
        for joint, net in self.at:
            found[joint].add(net)
        return {joint: frozenset(nets) for joint, nets in found.items()}

    @cached_property
    def joints_of(self) -> Mapping[int, tuple[int, ...]]:
        """The joints that each net is on, the one with most of its leads first."""
        found: dict[int, list[int]] = defaultdict(list)
        for joint, net in self.at:
            found[net].append(joint)
        return {
            net: tuple(sorted(joints, key=lambda joint: (-len(self.at[joint, net]), joint)))
            for net, joints in found.items()
        }

    @cached_property
    def nodes_of(self) -> Mapping[int, tuple[int, ...]]:
        """The pieces of each joint."""
        found: dict[int, list[int]] = defaultdict(list)
        for node, joint in enumerate(self.joint):
            found[joint].append(node)
        return {joint: tuple(nodes) for joint, nodes in found.items()}

    @cached_property
    def wrong(self) -> frozenset[int]:
        """The leads whose net is on several joints, or whose joint has several nets."""
        return frozenset(
            lead
            for (joint, net), leads in self.at.items()
            if len(self.nets_of[joint]) > 1 or len(self.joints_of[net]) > 1
            for lead in leads
        )

    @cached_property
    def at_key(self) -> Mapping[Key, tuple[int, ...]]:
        """The leads in every hole, on every tag and pad."""
        found: dict[Key, list[int]] = defaultdict(list)
        for lead, key in enumerate(self.key):
            found[key].append(lead)
        return {key: tuple(leads) for key, leads in found.items()}

    @cached_property
    def busy(self) -> frozenset[Key]:
        """Where a lead is, or the end of a wire that is no bus."""
        ends = (key for run in self.runs if run.kind != "bus" for key in (run.keys[0], run.keys[-1]))
        return frozenset((*self.key, *ends))

    @cached_property
    def under_bus(self) -> frozenset[Key]:
        """What a bus is soldered to: a lead can still be put there, but not as easily."""
        return frozenset(key for run in self.runs if run.kind == "bus" for key in run.keys)

    def is_moved(self, lead: int) -> bool:
        """Does a lead lie elsewhere than written? Not if it is where the part's other lead was, or all of them are."""
        case = self.case
        together = case.leads_of[case.leads[lead][0]]
        homes = {case.lies[n] for n in ((lead,) if case.is_pad(lead) else together)}
        elsewhere = self.key[lead] not in case.used or any(self.key[n] == case.lies[n] for n in together)
        return self.key[lead] not in homes and elsewhere

    # --- states with one thing otherwise

    def _with(self, **other: object) -> State:
        """Some fields otherwise: `dataclasses.replace`, five times as fast, which a search feels."""
        state = object.__new__(State)
        own = self.__dict__
        state.__dict__.update({name: own[name] for name in _FIELDS}, **other)
        return state

    def moved(self, keys: Mapping[int, Key]) -> State:
        """Some leads in other holes."""
        key, node = list(self.key), list(self.node)
        for lead, target in keys.items():
            key[lead], node[lead] = target, self.where[target]
        return self._with(key=tuple(key), node=tuple(node))

    def swapped(self, pairs: Iterable[tuple[int, int]]) -> State:
        """Leads, each in the hole of another."""
        key, node = list(self.key), list(self.node)
        for a, b in pairs:
            key[a], key[b] = key[b], key[a]
            node[a], node[b] = node[b], node[a]
        return self._with(key=tuple(key), node=tuple(node))

    def asking(self, want: Mapping[int, int]) -> State:
        """Some leads that are to be on other nets: what is electrically the same."""
        asked = list(self.want)
        for lead, net in want.items():
            asked[lead] = net
        return self._with(want=tuple(asked))

    def wired(self, runs: Sequence[Run]) -> State:
        """Other wires."""
        return self._with(runs=tuple(runs), joint=self.joint_with(runs))

    def joint_with(self, runs: Sequence[Run]) -> tuple[int, ...]:
        return numbered(len(self.joint), ([self.where[key] for key in run.keys] for run in runs))

    def parted(self, groups: Sequence[frozenset[Key]], island: int) -> State:
        """One island cut: the first of the groups keeps its number."""
        where = dict(self.where)
        count = len(self.joint)
        for group in groups[1:]:
            there = [key for key in group if self.where.get(key) == island]
            if there:
                where.update(dict.fromkeys(there, count))
                count += 1
        node = tuple(
            was if was != island or key not in where else where[key]
            for key, was in zip(self.key, self.node, strict=True)
        )
        joint = numbered(count, ([where[key] for key in run.keys] for run in self.runs))
        return self._with(node=node, joint=joint, where=where, members=members(where))

    def healed(self, copper: Islands) -> State:
        """A cut undone, which leaves `copper`: what hangs together there has the least of its numbers."""
        held: dict[int, list[int]] = defaultdict(list)
        for key, island in copper.of.items():
            held[island].append(self.where[key])
        root = numbered(len(self.joint), held.values())
        where = {key: root[node] for key, node in self.where.items()}
        joint = numbered(len(self.joint), ([where[key] for key in run.keys] for run in self.runs))
        node = tuple(root[one] for one in self.node)
        return self._with(node=node, joint=joint, where=where, members=members(where), copper=copper)

    def drilled(self, key: Key, node: int) -> State:
        """One hole more."""
        where = {**self.where, key: node}
        return self._with(where=where, members={**self.members, node: (*self.members.get(node, ()), key)})


_FIELDS = tuple(field.name for field in fields(State))


def distance(node: Sequence[int], want: Sequence[int], joint: Sequence[int]) -> int:
    """How far leads on these nodes are from these nets."""
    at = [joint[one] for one in node]
    return 2 * len(set(zip(at, want, strict=False))) - len(set(at)) - len(set(want[: len(at)]))


def members(where: Mapping[Key, int]) -> Mapping[int, tuple[Key, ...]]:
    """The holes, tags and pads of every node."""
    found: dict[int, list[Key]] = defaultdict(list)
    for key, node in where.items():
        found[node].append(key)
    return {node: tuple(keys) for node, keys in found.items()}


@dataclass(frozen=True)
class Reading:
    """A state as the text has it, and what the text lacks or has too much.

    `absent` parts lie nowhere, `missing` leads of placed parts neither; a lead at a hole that there is not is left out,
    as the text's own finding has been made. `untold` are parts of which it matters which lead is which, and the text
    does not say.
    """

    state: State
    absent: tuple[str, ...]
    missing: tuple[Lead, ...]
    unused: tuple[str, ...]
    untold: tuple[str, ...]


def read(layouts: Sequence[Layout], copper: Islands, wanted: Wanted) -> Reading:
    """Where every lead lies."""
    boards = {layout.name: layout for layout in layouts}
    number = {island: n for n, island in enumerate(dict.fromkeys(copper.of.values()))}
    where = {key: number[island] for key, island in copper.of.items()}
    count = len(number)
    for owner, sign in wanted.pads:
        where["", owner + sign], count = count, count + 1
    places = {place.label: place for layout in layouts for place in layout.places}
    laid: dict[Lead, Key] = {}
    lost: set[Lead] = set()
    told: set[str] = set()
    for place in places.values():
        for (terminal, named), key in _leads(place, wanted.parts.get(place.label, ())):
            if named:
                told.add(place.label)
            if key not in where and is_pad(key):
                where[key], count = count, count + 1
            if key in where:
                laid[place.label, terminal] = key
            else:
                lost.add((place.label, terminal))
    runs: list[Run] = []
    at_pad: dict[Key, list[Run]] = defaultdict(list)
    busy = {key for key in laid.values() if is_pad(key)}
    for layout in layouts:
        for wire in layout.wires:
            keys = soldered(wire, boards)
            for key in keys:
                if key not in where and is_pad(key):
                    where[key], count = count, count + 1
            if all(key in where for key in keys):
                run = Run(wire.kind, keys, wire.diameter)
                for key in {keys[0], keys[-1]}:
                    if is_pad(key):
                        at_pad[key].append(run)
                runs.append(run)
    outs: dict[Lead, Key] = {}
    out_mm: dict[Lead, float] = {}
    for lead in wanted.pads:
        pad = ("", point_of(*lead))
        laid[lead] = pad
        alone = at_pad.get(pad, [])
        if len(alone) == 1 and pad not in busy and alone[0].kind == "lead out":
            ends = alone[0].keys
            board_end = ends[0] if ends[-1] == pad else ends[-1]
            if not is_pad(board_end):
                outs[lead] = laid[lead] = board_end
                out_mm[lead] = alone[0].diameter
                runs.remove(alone[0])
    leads = [lead for lead in wanted.net_of if lead in laid]
    rest = [lead for lead in wanted.net_of if lead not in laid]
    nets = tuple(wanted.nets)
    net_number = {net: n for n, net in enumerate(nets)}
    both = (*leads, *rest)
    leads_of: dict[str, list[int]] = defaultdict(list)
    for n, (owner, _) in enumerate(leads):
        leads_of[owner].append(n)
    unplaced = tuple(label for label in wanted.needed if label not in places)
    untold = tuple(
        label
        for label in wanted.parts
        if label in places and label not in told and len(leads_of[label]) == 2 and label not in wanted.turnable
    )
    lies = tuple(laid[lead] for lead in leads)
    case = Case(
        wanted=wanted,
        layouts=boards,
        leads=both,
        placed=len(leads),
        nets=nets,
        out=frozenset(n for n, lead in enumerate(leads) if lead in outs),
        leads_of={owner: tuple(found) for owner, found in leads_of.items()},
        turnable=tuple(
            label
            for label in wanted.parts
            if (label in wanted.turnable or label in untold) and len(leads_of[label]) == 2
        ),
        told=frozenset(told),
        lies=lies,
        thick={
            n: known for n, lead in enumerate(leads) if (known := out_mm.get(lead) or wanted.thick.get(lead[0], 0.0))
        },
        copper=copper,
        pieces=count,
    )
    state = State(
        case=case,
        key=lies,
        node=tuple(where[at] for at in lies),
        want=tuple(net_number[wanted.net_of[lead]] for lead in both),
        runs=tuple(runs),
        joint=numbered(count, ([where[at] for at in run.keys] for run in runs)),
        where=where,
        members=members(where),
        copper=copper,
    )
    return Reading(
        state=state,
        absent=tuple(label for label in wanted.parts if label in unplaced),
        missing=tuple(lead for lead in rest if lead[0] in places and lead not in lost),
        unused=tuple(label for label in places if label not in wanted.parts),
        untold=untold,
    )


def _leads(place: Place, terminals: Sequence[str]) -> list[tuple[tuple[str, bool], Key]]:
    """The leads of a placed part by terminal, whether the text names it, and where they go."""
    named = {lead.terminal for lead in place.leads if lead.terminal is not None}
    others = iter([terminal for terminal in terminals if terminal not in named])
    found: list[tuple[tuple[str, bool], Key]] = []
    for lead in place.leads:
        terminal = lead.terminal if lead.terminal is not None else next(others, None)
        if terminal in terminals:
            assert terminal is not None
            found.append(((terminal, lead.terminal is not None), key_of(lead.spot)))
    return found
