"""Where a lead or a wire can go: free holes and tags, pads, holes that can be drilled, copper that can be cut.

In: a state, and what can be cut and drilled. Out: holes, cuts, and how likely a slip from one hole to another is.
Refuses to know what is wrong.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace
from math import dist, inf
from typing import TypeAlias

from shuntwise.board.actions import UNLIKELY
from shuntwise.board.cutting import TrialCut, trial_cuts
from shuntwise.board.islands import Islands, Key, islands
from shuntwise.board.state import Case, State
from shuntwise.board.steps import NewHole
from shuntwise.board.wires import is_pad
from shuntwise.model.boards import Cut, Layout, Point

NEAR_MM = 60.0
"""From this distance on a slip into another hole is as unlikely as it gets (common practice, no source)."""

MOST_EMPTY = 2
"""So many pieces of copper without a lead are tried for leads that belong to no other."""

DRILL_MM = 1.3
"""A hole that is drilled for a lead where nothing says how thick that is."""

PLAY_MM = 0.3
"""So much narrower may a hole be than the one that a lead of unknown thickness comes from, and so much wider is one
drilled than a lead (common practice, no source)."""

TrialCuts: TypeAlias = Callable[[int], Iterable[TrialCut]]
"""Cuts that part an island, which is told by its number in `Islands.of`."""

FreeSpot: TypeAlias = Callable[[str, int, float], Point | None]
"""Where in an island on the layout of a name a hole of a diameter (mm) can be drilled."""

Spot: TypeAlias = tuple[Key, NewHole | None]
"""A hole, tag or pad; with the hole if it is to be drilled."""


class Room:
    """What is asked of one case again and again is kept."""

    def __init__(self, case: Case, cuts_of: TrialCuts, free_spot: FreeSpot) -> None:
        self.case = case
        self._cuts_of = cuts_of
        self._free_spot = free_spot
        self._cuts: dict[tuple[int, int], tuple[list[TrialCut], Iterator[TrialCut]]] = {}
        self._spots: dict[tuple[str, int, float], Point | None] = {}
        self._healed: dict[Cut, tuple[tuple[Layout, ...], Islands]] = {}

    # --- how thick

    def needed(self, state: State, lead: int) -> float:
        """The least diameter (mm) of a hole for a lead: its own where that is known, else by the narrowest hole that a
        lead of the same part is in."""
        case = self.case
        known = case.thick.get(lead, 0.0)
        alike = (lead,) if case.is_pad(lead) else case.leads_of[case.leads[lead][0]]
        return known or self.as_wide([state.key[n] for n in alike])

    def as_wide(self, keys: Iterable[Key]) -> float:
        """The least diameter of a hole for what was in these; 0 where they are no holes."""
        held = [width for key in keys if (width := self.case.diameter.get(key, 0.0))]
        return max(0.0, min(held, default=0.0) - PLAY_MM)

    # --- holes

    def spot(
        self, state: State, near: Key, joint: int, needed: float, taken: Iterable[Key] = (), drill: bool = True
    ) -> Spot | None:
        """A hole or tag of a joint that is free and at least `needed` mm wide, the nearest; or one to be drilled there,
        or, if nothing else is left, a narrower one."""
        free = [key for key in self.free(state, joint) if key in self.case.tags or key not in taken]
        wide = [key for key in free if self.fits(key, needed)]
        if wide:
            return self.best(state, near, wide), None
        drilled = self.drilled(state, near, joint, needed) if drill else None
        if drilled is None and free:
            return self.best(state, near, free), None
        return drilled

    def spot_or_pad(
        self, state: State, near: Key, joint: int, needed: float, taken: Iterable[Key] = (), drill: bool = True
    ) -> Spot | None:
        """The same for a part's lead, which may end at a pad where no board has a place for it."""
        found = self.spot(state, near, joint, needed, taken, drill)
        pads = [
            key
            for node in state.nodes_of[joint]
            for key in state.members.get(node, ())
            if is_pad(key) and key in state.at_key  # else a wire leads from it, and its lead is on the board
        ]
        return found if found is not None or not pads else (pads[0], None)

    def best(self, state: State, near: Key, keys: Iterable[Key]) -> Key:
        """The nearest, one that no bus lies over first."""
        return min(keys, key=lambda key: (key in state.under_bus, self.case.span(near, key)))

    def fits(self, key: Key, needed: float) -> bool:
        return key in self.case.tags or self.case.diameter.get(key, inf) >= needed

    def free(self, state: State, joint: int) -> list[Key]:
        """The holes of a joint that nothing is in, and its tags."""
        bare, tags = state.copper.bare, self.case.tags
        return [
            key
            for node in state.nodes_of[joint]
            for key in state.members.get(node, ())
            if not is_pad(key) and key not in bare and (key in tags or key not in state.busy)
        ]

    def empty(self, state: State, near: Key) -> list[int]:
        """Joints without leads that have copper and a hole, the nearest first."""
        found: list[tuple[float, int]] = []
        for joint in state.nodes_of:
            if joint not in state.nets_of:
                free = self.free(state, joint)
                if free:
                    found.append((self.case.span(near, self.best(state, near, free)), joint))
        return [joint for _, joint in sorted(found)[:MOST_EMPTY]]

    def drilled(self, state: State, near: Key, joint: int, needed: float) -> Spot | None:
        """A hole more in a joint."""
        case = self.case
        for node in state.nodes_of[joint]:
            keys = [key for key in state.members.get(node, ()) if key in state.copper.of]
            # Where copper has been cut in this repair, nobody knows on which side the spot would be.
            if not keys or keys[0] in state.copper.bare or state.copper is not case.copper or self.is_cut(state, keys):
                continue
            layout, island = keys[0][0], case.copper.of[keys[0]]
            diameter = round(max(needed + PLAY_MM, DRILL_MM if not needed else 0.0), 1)
            if (layout, island, diameter) not in self._spots:
                self._spots[layout, island, diameter] = self._free_spot(layout, island, diameter)
            at = self._spots[layout, island, diameter]
            name = _free_name(case.layouts[layout], state)
            if at is not None and all(dist(at, hole.at) > diameter for hole in self.new(state)):
                return (layout, name), NewHole((layout, name), at, diameter)
        return None

    def is_cut(self, state: State, keys: Iterable[Key]) -> bool:
        """Has the island of some holes been parted?"""
        island = state.copper.of[next(iter(keys))]
        return len({state.where[key] for key in state.copper.keys(island)}) > 1

    def new(self, state: State) -> Iterator[NewHole]:
        """Holes that this repair drills already: a second one would be in the same place."""
        for key in state.where:
            if not is_pad(key) and key not in self.case.at:
                for (layout, _, diameter), at in self._spots.items():
                    if at is not None and layout == key[0]:
                        yield NewHole(key, at, diameter)

    def nearest(self, state: State, one: int, other: int) -> tuple[Spot, Spot] | None:
        """The two free holes of two joints that are nearest to each other; one that is drilled where there is none."""
        first, second = self.free(state, one), self.free(state, other)
        if first and second:
            a, b = min(
                ((a, b) for a in first for b in second),
                key=lambda pair: ((pair[0] in state.under_bus) + (pair[1] in state.under_bus), self.case.span(*pair)),
            )
            return (a, None), (b, None)
        if first:
            there = self.drilled(state, first[0], other, 0.0)
            return ((first[0], None), there) if there else None
        if second:
            here = self.drilled(state, second[0], one, 0.0)
            return (here, (second[0], None)) if here else None
        return None

    # --- copper

    def cuts(self, state: State, island: int, long: bool) -> Iterator[TrialCut]:
        """Cuts that part an island of the state's copper, and those that part others too if they are asked for."""
        named = id(state.copper), island
        if named not in self._cuts:
            found = self._cuts_of(island)
            for layouts, copper in self._healed.values():
                if copper is state.copper:
                    found = trial_cuts(layouts, copper, island)
            self._cuts[named] = [], iter(found)
        known, rest = self._cuts[named]
        for trial in known:
            if long or not trial.long:
                yield trial
        while long or not (known and known[-1].long):  # the long ones come last, and take long to find
            trial_or_none = next(rest, None)
            if trial_or_none is None:
                break
            known.append(trial_or_none)
            if long or not trial_or_none.long:
                yield trial_or_none

    def healed(self, layout: Layout, cut: Cut) -> Islands:
        """The copper without one of the cuts."""
        if cut not in self._healed:
            whole = replace(layout, cuts=tuple(other for other in layout.cuts if other != cut))
            layouts = tuple(whole if other is layout else other for other in self.case.layouts.values())
            self._healed[cut] = layouts, islands(layouts)
        return self._healed[cut][1]

    # --- how likely

    def far(self, source: Key, target: Key) -> float:
        """What a slip costs for its length."""
        return UNLIKELY * min(self.case.span(source, target), NEAR_MM) / NEAR_MM

    def is_off_board(self, lead: int) -> bool:
        place = self.case.place_of.get(self.case.leads[lead][0])
        return place is not None and place.at is None

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


def _free_name(layout: Layout, state: State) -> str:
    number = 1
    names = {hole.name for hole in layout.holes} | {hole.row for hole in layout.holes}
    while f"h{number}" in names or (layout.name, f"h{number}") in state.where:
        number += 1
    return f"h{number}"
