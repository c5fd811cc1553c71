"""Layouts against the circuit: what is open, shorted, not placed, and what is otherwise but electrically the same.

In: a `Circuit`, layouts, their copper. Out: a `Comparison`. How a mistake is mended, and which findings are of one
mistake, is `repair`'s. Refuses to know words.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import TypeAlias

from shuntwise.board.islands import Islands, Key
from shuntwise.board.same import Branch, Joined, same
from shuntwise.board.state import State, read
from shuntwise.board.wanted import Lead, wanted
from shuntwise.board.wires import is_pad
from shuntwise.graph.circuit import Circuit
from shuntwise.model.boards import Layout

MOST_PARTS = 80
"""On boards of more parts the text is taken as it is written, and like parts are not exchanged: the work grows with
the square, and no box has so many."""

MOST_ALIKE = 12
"""Of more parts that are alike, or in one row, no two are tried in each other's place where something is wrong."""

# --- what is wrong


@dataclass(frozen=True)
class Open:
    """A net in several pieces, `groups` the leads of each, the largest first."""

    net: str
    groups: tuple[tuple[Lead, ...], ...]


@dataclass(frozen=True)
class Short:
    """Several nets on one piece of metal, with the leads of each there, the one with most leads first."""

    nets: tuple[str, ...]
    leads: tuple[tuple[Lead, ...], ...]


@dataclass(frozen=True)
class NothingLeadsTo:
    """A pad that no wire leads to, though its net has other leads."""

    pad: Lead


@dataclass(frozen=True)
class NoCopper:
    """A lead in a hole without copper, though its net has other leads elsewhere."""

    lead: Lead
    key: Key


@dataclass(frozen=True)
class NotPlaced:
    """A part of the circuit that lies on no board."""

    label: str


@dataclass(frozen=True)
class LeadMissing:
    """A lead of a placed part that goes nowhere."""

    lead: Lead


@dataclass(frozen=True)
class Unused:
    """A part that is placed, but is not in the circuit, or is left out there."""

    label: str


@dataclass(frozen=True)
class Untold:
    """A part of which it matters which lead is which; its text does not say."""

    label: str


Finding: TypeAlias = Open | Short | NothingLeadsTo | NoCopper | NotPlaced | LeadMissing | Unused | Untold

# --- what is otherwise, and no mistake


@dataclass(frozen=True)
class Turned:
    """A part with two like leads lies the other way round than its text and the circuit say."""

    label: str


@dataclass(frozen=True)
class Alike:
    """Two parts that are alike, each in the other's place."""

    labels: tuple[str, str]


@dataclass(frozen=True)
class Reordered:
    """Parts in a row, in another order than in the circuit."""

    labels: tuple[str, ...]


Equal: TypeAlias = Turned | Alike | Reordered


@dataclass(frozen=True)
class Comparison:
    """`wiring` are opens and shorts with what causes them plainly; `absent` is what is not there or too much.

    `doubtful`: a statement of a layout could not be read, or its copper is not known, so nothing is said of it.
    `settled` has every lead where it lies, leads that may be taken for each other named as fits the circuit best;
    `written` has them as the text does.
    """

    wiring: tuple[Finding, ...]
    absent: tuple[Finding, ...]
    equal: tuple[Equal, ...]
    doubtful: bool
    settled: State = field(repr=False, compare=False)
    written: State = field(repr=False, compare=False)

    @property
    def right(self) -> bool:
        """Does what is placed do what the circuit says, with all of it placed?"""
        return not self.wiring and not self.absent

    @property
    def keys(self) -> Mapping[Lead, Key]:
        """Where every lead lies; for a pad with one lead out the end of that on the board."""
        return dict(zip(self.settled.case.leads, self.settled.key, strict=False))


def compare(circuit: Circuit, layouts: Sequence[Layout], copper: Islands) -> Comparison:
    """What differs between the boards and the circuit, all layouts taken together."""
    reading = read(layouts, copper, wanted(circuit))
    if copper.too_fine or any(layout.refused for layout in layouts):
        return Comparison((), (), (), True, reading.state, reading.state)
    state, equal = settle(reading.state)
    absent: tuple[Finding, ...] = (
        *(NotPlaced(label) for label in reading.absent),
        *(LeadMissing(lead) for lead in reading.missing),
        *(Unused(label) for label in reading.unused),
        *(Untold(label) for label in reading.untold),
    )
    if state.distance:
        order = same_but_for_order(state)
        if order is not None:
            return Comparison((), absent, (*equal, order), False, state, reading.state)
    return Comparison(tuple(differences(state)), absent, equal, False, state, reading.state)


def differences(state: State) -> Iterator[Finding]:
    """What is open and what is shorted, in the circuit's order."""
    case = state.case
    bare = state.copper.bare
    for net, joints in sorted(state.joints_of.items()):
        if len(joints) > 1:
            groups = [state.at[joint, net] for joint in joints]
            lonely = [group[0] for group in groups if len(group) == 1]
            pads = [n for n in lonely if is_pad(state.key[n]) and case.is_pad(n) and _is_alone(state, n)]
            off = [n for n in lonely if state.key[n] in bare and _is_alone(state, n)]
            yield from (NothingLeadsTo(case.leads[n]) for n in pads)
            yield from (NoCopper(case.leads[n], state.key[n]) for n in off)
            left = [group for group in groups if group[0] not in pads and group[0] not in off]
            if len(left) > 1 or not (pads or off):
                yield Open(case.nets[net], tuple(tuple(case.leads[n] for n in group) for group in left))
    for joint, nets in sorted(state.nets_of.items()):
        if len(nets) > 1:
            ordered = sorted(nets, key=lambda net: (-len(state.at[joint, net]), net))
            yield Short(
                tuple(case.nets[net] for net in ordered),
                tuple(tuple(case.leads[n] for n in state.at[joint, net]) for net in ordered),
            )


def _is_alone(state: State, lead: int) -> bool:
    """Is a lead the only thing on its joint, no wire there either?"""
    joint = state.joint[state.node[lead]]
    return len(state.nodes_of[joint]) == 1 and len(state.nets_of[joint]) == 1


# --- leads named as fits best


def settle(state: State) -> tuple[State, tuple[Equal, ...]]:
    """The nearest reading of which lead is which, which of like parts is which, and in what order rows are.

    A text that says it as the circuit does is left as it is.
    """
    if not state.distance or len(state.case.leads_of) > MOST_PARTS:
        return state, ()
    other = _propagated(state)
    starts = (other,) if not other.distance else (state, other)
    best, said = min((descended(start) for start in starts), key=lambda found: found[0].distance)
    return best, tuple(_told(state, best, said))


def turned(state: State) -> State:
    """The nearest reading of which lead is which, every part being what the text says."""
    starts = (state, _propagated(state))
    return min((descended(start, turns)[0] for start in starts), key=lambda found: found.distance)


def _told(was: State, state: State, said: Sequence[Equal]) -> Iterator[Equal]:
    """What has been named otherwise in the end, each part once."""
    case = state.case
    moved = {case.leads[n][0] for n, (a, b) in enumerate(zip(was.want, state.want, strict=True)) if a != b}
    told: set[str] = set()
    for equal in said:
        labels = () if isinstance(equal, Turned) else equal.labels
        if labels and moved.issuperset(labels) and told.isdisjoint(labels):
            told.update(labels)
            yield equal
    for label in case.turnable:
        first = case.leads_of[label][0]
        if label in case.told and label not in told and was.key[first] != state.key[first]:
            yield Turned(label)


def _propagated(state: State) -> State:
    """Parts named one after the other, from the pads on, each so that it fits those named before."""
    case = state.case
    open_parts = dict.fromkeys(case.turnable)
    joint = state.joint
    pairs = {(joint[state.node[n]], state.want[n]) for n in range(case.placed) if case.leads[n][0] not in open_parts}
    turn: list[tuple[int, int]] = []
    while open_parts:
        nets, joints = {net for _, net in pairs}, {at for at, _ in pairs}
        choice: tuple[tuple[int, int], str, bool] | None = None
        for label in open_parts:
            a, b = case.leads_of[label]
            at, want = (joint[state.node[a]], joint[state.node[b]]), (state.want[a], state.want[b])
            worth = []
            for ends in (at, at[::-1]):
                agree = sum(pair in pairs for pair in zip(ends, want, strict=True))
                differ = sum(net in nets or end in joints for end, net in zip(ends, want, strict=True)) - agree
                worth.append(agree * 2 - differ)
            rank = -abs(worth[0] - worth[1]), -max(worth)
            if choice is None or rank < choice[0]:
                choice = rank, label, worth[1] > worth[0]
        assert choice is not None
        _, label, turned = choice
        del open_parts[label]
        a, b = case.leads_of[label]
        if turned:
            turn.append((a, b))
        for end, lead in zip((b, a) if turned else (a, b), (a, b), strict=True):
            pairs.add((joint[state.node[end]], state.want[lead]))
    return state.swapped(turn)


def descended(
    state: State, changes: Callable[[State], Iterable[tuple[Equal, State]]] | None = None
) -> tuple[State, tuple[Equal, ...]]:
    """One change after the other, as long as one brings the state nearer: the best, of equals the first."""
    said: tuple[Equal, ...] = ()
    while state.distance:
        best: tuple[int, State, Equal] | None = None
        for equal, other in (changes or freely)(state):
            if other.distance < (best[0] if best is not None else state.distance):
                best = other.distance, other, equal
        if best is None:
            break
        state, said = best[1], (*said, best[2])
    return state, said


def freely(state: State) -> Iterator[tuple[Equal, State]]:
    """States that are electrically the same by one change: a part turned, like parts or parts of a row exchanged.

    Only parts with a wrong lead are tried.
    """
    yield from turns(state)
    yield from exchanges(state)


def turns(state: State) -> Iterator[tuple[Equal, State]]:
    case = state.case
    touched = {case.leads[n][0] for n in state.wrong}
    for label in case.turnable:
        if label in touched:
            a, b = case.leads_of[label]
            if state.node[a] != state.node[b]:
                yield Turned(label), state.swapped([(a, b)])


def exchanges(state: State) -> Iterator[tuple[Equal, State]]:
    case = state.case
    touched = {case.leads[n][0] for n in state.wrong}
    leads = {lead: n for n, lead in enumerate(case.leads)}
    sorts: dict[str, list[str]] = {}
    for label, sort in case.sort.items():
        sorts.setdefault(sort, []).append(label)
    for like in (labels for labels in sorts.values() if len(labels) <= MOST_ALIKE):
        for place, one in enumerate(like):
            for other in like[place + 1 :]:
                if one in touched or other in touched:
                    want: dict[int, int] = {}
                    for terminal in case.wanted.parts[one]:
                        a, b = leads.get((one, terminal)), leads.get((other, terminal))
                        if a is not None and b is not None:
                            want[a], want[b] = state.want[b], state.want[a]
                    yield Alike((one, other)), state.asking(want)
    for row in rows(state):
        labels = tuple(label for label, _, _ in row)
        if touched.isdisjoint(labels) or len(row) > MOST_ALIKE:
            continue
        nets = [state.want[near] for _, near, _ in row]
        nets.append(state.want[row[-1][2]])
        for i in range(len(row)):
            for j in range(i + 1, len(row)):
                want = {}
                for slot, (_, near, far) in ((j, row[i]), (i, row[j])):
                    want[near], want[far] = nets[slot], nets[slot + 1]
                yield Reordered(labels), state.asking(want)


Row: TypeAlias = list[tuple[str, int, int]]
"""Parts in a row, each with its lead towards the beginning and the one towards the end."""


def rows(state: State) -> Iterator[Row]:
    """The unbranched rows of two parts and more: nothing else is asked to be on the nets inside."""
    case = state.case
    on_net: dict[int, list[int]] = {}
    for n, net in enumerate(state.want):
        on_net.setdefault(net, []).append(n)
    partner: dict[int, int] = {}
    ends: dict[str, list[int]] = {}
    for n, (owner, _) in enumerate(case.leads):
        ends.setdefault(owner, []).append(n)
    simple = {
        label for label, terminals in case.wanted.parts.items() if len(terminals) == 2 and len(ends.get(label, ())) == 2
    }
    inner: dict[int, int] = {}
    for found in on_net.values():
        if len(found) == 2:
            a, b = found
            one, other = case.leads[a][0], case.leads[b][0]
            if one != other and one in simple and other in simple:
                inner[a], inner[b] = b, a
    for label in simple:
        a, b = ends[label]
        partner[a], partner[b] = b, a
    done: set[int] = set()
    for start in sorted(partner):
        if start in done or start in inner:
            continue
        row: Row = []
        near = start
        while True:
            far = partner[near]
            row.append((case.leads[near][0], near, far))
            done.update((near, far))
            if far not in inner:
                break
            near = inner[far]
        if len(row) > 1:
            yield row


def same_but_for_order(state: State) -> Reordered | None:
    """Is the board electrically the circuit, whatever in rows is exchanged? Then the parts that lie elsewhere."""
    case = state.case
    if case.placed < len(case.leads):
        return None
    at = [state.joint[node] for node in state.node]
    if not same(_joined(state, state.want), _joined(state, at)):
        return None
    return Reordered(tuple(dict.fromkeys(case.leads[n][0] for n in sorted(state.wrong) if not case.is_pad(n))))


def _joined(state: State, net: Sequence[int]) -> Joined:
    case = state.case
    sort = case.sort
    fixed: dict[int, frozenset[str]] = {}
    branches: list[Branch] = []
    stars: list[tuple[str, tuple[int, ...]]] = []
    for owner, leads in case.leads_of.items():
        if owner not in sort:
            for n in leads:
                fixed[net[n]] = fixed.get(net[n], frozenset()) | {"".join(case.leads[n])}
        elif len(leads) == 2:
            a, b = leads
            turns = owner in case.turnable
            forth = ("part", sort[owner] + ("" if turns else ">"))
            branches.append(Branch(net[a], net[b], forth, forth if turns else ("part", f"{sort[owner]}<")))
        else:
            stars.append((sort[owner], tuple(net[n] for n in leads)))
    return Joined(tuple(branches), fixed, tuple(stars))
