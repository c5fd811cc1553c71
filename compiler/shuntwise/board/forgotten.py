"""What comes of a wire that is not soldered in, and of a cut that is not made.

In: the boards of a circuit, judged, which make the circuit. Out: leads that come apart from the rest of their net, and
nets that stay joined. A bus that is forgotten as a whole is seen at once; one of its joints is not, so each is a wire
of its own here. A wire that leads out to a pad is left out: without it the pad is off, as any lead may be.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import combinations

from shuntwise.board.clearance import nets_of
from shuntwise.board.islands import Key, islands
from shuntwise.board.judging import Judgement
from shuntwise.board.state import Run, State
from shuntwise.board.wanted import Lead
from shuntwise.board.wires import numbered
from shuntwise.graph.circuit import point_of
from shuntwise.model.boards import Cut
from shuntwise.model.kinds import KINDS

MOST_WIRES, MOST_CUTS = 200, 40
"""Of boards with more wires, or of a layout with more cuts, none is told: each is worked out anew without it."""


@dataclass(frozen=True)
class ForgottenWire:
    """`leads` come apart from the rest of their net where the run is not soldered in, or a bus not at `joint`."""

    run: Run
    joint: Key | None
    leads: tuple[Lead, ...]


@dataclass(frozen=True)
class ForgottenCut:
    """Two nets of the circuit that stay joined where a cut of a layout is not made."""

    layout: str
    cut: Cut
    nets: tuple[str, str]


def wires(judgement: Judgement) -> Iterator[ForgottenWire]:
    """Each wire that something hangs on, in the order of the text."""
    state = judgement.comparison.settled
    if sum(len(run.keys) for run in state.runs) > 2 * MOST_WIRES:
        return
    whole = [[state.where[key] for key in run.keys] for run in state.runs] + _links(judgement, state)
    for number, run in enumerate(state.runs):
        joints = run.keys if run.kind == "bus" and len(run.keys) > 2 else (None,)
        for joint in joints:
            left = [state.where[key] for key in run.keys if key != joint] if joint is not None else []
            runs = [*whole[:number], *([left] if left else []), *whole[number + 1 :]]
            for leads in _apart(judgement, state, runs):
                yield ForgottenWire(run, joint, leads)


def _links(judgement: Judgement, state: State) -> list[list[int]]:
    """Links that are fitted, as wires."""
    parts = judgement.circuit.design.parts
    return [
        [state.node[n] for n in numbers]
        for label, numbers in state.case.leads_of.items()
        if label in parts and KINDS[parts[label].kind].wire and parts[label].fitted
    ]


def _apart(judgement: Judgement, state: State, runs: Sequence[Sequence[int]]) -> Iterator[tuple[Lead, ...]]:
    """The leads of each piece of a net but that which an input is on, or else the most leads."""
    circuit = judgement.circuit
    joint = numbered(len(state.joint), runs)
    pieces: dict[str, dict[int, list[Lead]]] = defaultdict(lambda: defaultdict(list))
    for n in range(state.case.placed):
        lead = state.case.leads[n]
        if lead[0] not in circuit.design.parts or not KINDS[circuit.design.parts[lead[0]].kind].wire:
            pieces[circuit.net_of[point_of(*lead)]][joint[state.node[n]]].append(lead)
    feeds = {pair.name for pair in circuit.design.feeds}
    for found in pieces.values():
        ranked = sorted(found.values(), key=lambda leads: (all(lead[0] not in feeds for lead in leads), -len(leads)))
        yield from map(tuple, ranked[1:])


def cuts(judgement: Judgement) -> Iterator[ForgottenCut]:
    """Each cut that parts nets, once for each pair that it parts."""
    nets = nets_of(judgement)
    for layout in judgement.layouts:
        for cut in layout.cuts if len(layout.cuts) <= MOST_CUTS else ():
            whole = islands((replace(layout, cuts=tuple(one for one in layout.cuts if one is not cut)),))
            joined: dict[int, set[str]] = defaultdict(set)
            for key, island in whole.of.items():
                if key in nets:
                    joined[island].add(nets[key])
            for found in joined.values():
                yield from (ForgottenCut(layout.name, cut, pair) for pair in combinations(sorted(found), 2))
