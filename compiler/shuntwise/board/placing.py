"""Where parts and leads go that are not placed.

In: a comparison, the state after its repair. Out: `PlaceLeads`. Refuses to know where bodies lie.
"""

from __future__ import annotations

from shuntwise.board.compare import Comparison, LeadMissing, NotPlaced
from shuntwise.board.islands import Key
from shuntwise.board.room import Room
from shuntwise.board.state import State
from shuntwise.board.steps import PlaceLeads
from shuntwise.board.wanted import Lead


def placing(room: Room, comparison: Comparison, end: State) -> tuple[PlaceLeads, ...]:
    """Parts and leads that are not placed, each with holes or pads on its nets as the boards are after the repair.

    A net of which nothing is placed yet gets copper of its own.
    """
    case = room.case
    missing: dict[str, list[Lead]] = {}
    for finding in comparison.absent:
        match finding:
            case NotPlaced(label):
                missing[label] = [(label, terminal) for terminal in case.wanted.parts[label]]
            case LeadMissing(lead):
                missing.setdefault(lead[0], []).append(lead)
    joints_of = {case.nets[net]: list(joints) for net, joints in end.joints_of.items()}
    taken: set[Key] = set()
    given: set[int] = set()
    found: list[PlaceLeads] = []
    for label, leads in missing.items():
        keys: list[tuple[Lead, Key | None]] = []
        near = next((end.key[n] for n in case.leads_of.get(label, ())), ("", ""))
        needed = case.wanted.thick.get(label, 0.0)
        for lead in leads:
            net = case.wanted.net_of.get(lead)
            if net is not None and net not in joints_of:
                joints_of[net] = [joint for joint in room.empty(end, near) if joint not in given][:1]
                given.update(joints_of[net])
            spots = (
                room.spot_or_pad(end, near, joint, needed, taken, drill=False)
                for joint in (joints_of[net] if net is not None else ())
            )
            spot = next((spot for spot in spots if spot is not None), None)
            keys.append((lead, spot[0] if spot else None))
            if spot:
                near = spot[0]
                taken.add(spot[0])
        found.append(PlaceLeads(label, tuple(keys)))
    return tuple(found)
