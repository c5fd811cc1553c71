"""How each driver is fed: the parts in its path, the parts across it, and in which order the signal meets them.

In: a `Circuit` whose wiring could be read whole. Out: a `Structure`: one `Ladder` for each driver that an
input feeds, and what lies straight across an input. Wires and links are nets already. Refuses to know values: it
sees kinds of parts and nothing else.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import TypeVar

from shuntwise.graph.circuit import Circuit
from shuntwise.graph.topology import links, reached, shortest_path
from shuntwise.model.design import Driver
from shuntwise.structure.blocks import Block, draw_together, like_beside, like_together, singles
from shuntwise.structure.reach import SAME, dc_path, potentials, way_round

MOST_PARTS = 300
"""Circuits with more parts and drivers are not traced: the time grows with the square, and no crossover has so many."""


@dataclass(frozen=True)
class Step:
    """A block that all of a driver's current passes: from the amplifier's side `near` to the driver's side `far`."""

    block: Block
    near: str
    far: str
    in_return: bool


@dataclass(frozen=True)
class Shunt:
    """A block across the path to a driver, behind the steps `ahead` and ahead of the steps `behind`.

    `at_input` is true where it lies straight across the input.
    """

    block: Block
    ahead: tuple[Step, ...]
    behind: tuple[Step, ...]
    at_input: bool


Place = TypeVar("Place", bound="Step | Shunt")


@dataclass(frozen=True)
class Ladder:
    """How one driver is fed. `steps` are in the order of the signal, those in the return wire last.

    `transformed` is how many times its own impedance the driver is to what lies ahead of a tapped coil.

    `turned` is true where the driver's minus is nearer to the input's plus. `twins` are drivers between the
    same two nets. `together` is the driver with all that stand in a row with it or side by side, no part between them.
    """

    driver: Driver
    feed: str
    turned: bool
    steps: tuple[Step, ...]
    shunts: tuple[Shunt, ...]
    twins: tuple[str, ...]
    together: Block
    transformed: float = 1.0

    @property
    def role(self) -> str | None:
        return self.driver.role

    @property
    def labels(self) -> frozenset[str]:
        """All parts in the path and across it."""
        blocks = [step.block for step in self.steps] + [s.block for s in self.shunts if not s.at_input]
        return frozenset(label for block in blocks for label in block.labels)

    @property
    def hot_pad(self) -> str:
        """The driver's pad that is nearer to the input's plus."""
        return self.driver.name + ("-" if self.turned else "+")

    @property
    def parts(self) -> tuple[Step, ...]:
        """The steps that are not themselves drivers."""
        return tuple(step for step in self.steps if not step.block.is_driver)

    def series(self, letters: str) -> tuple[Step, ...]:
        """Steps of one of these kinds."""
        return tuple(step for step in self.steps if step.block.letter and step.block.letter in letters)

    def across(self, letters: str) -> tuple[Shunt, ...]:
        """Shunts of one of these kinds of the path itself, not of the input."""
        return tuple(s for s in self.shunts if not s.at_input and s.block.letter and s.block.letter in letters)

    @property
    def coils_in_path(self) -> tuple[Step, ...]:
        """Coils in the path. A tapped coil is one, at its first section, and none if another section lies across."""
        across = {label for shunt in self.across("T") for label in shunt.block.labels}
        return tuple(_once(self.series("LT"), across))

    @property
    def coils_across(self) -> tuple[Shunt, ...]:
        """Coils across the path. A tapped coil is one, at its first section."""
        return tuple(_once(self.across("LT"), set()))

    @property
    def low_pass_order(self) -> int:
        """Coils in the path and capacitors across it, behind a coil or (series type) with nothing in the path."""
        coils = self.coils_in_path
        return len(coils) + sum(self._behind(shunt, coils) for shunt in self.across("C"))

    @property
    def high_pass_order(self) -> int:
        """Capacitors in the path and coils across it, behind a capacitor or with nothing in the path."""
        capacitors = self.series("C")
        return len(capacitors) + sum(self._behind(shunt, capacitors) for shunt in self.coils_across)

    @property
    def only_low_pass(self) -> bool:
        return self.low_pass_order > 0 and self.high_pass_order == 0

    @property
    def only_high_pass(self) -> bool:
        return self.high_pass_order > 0 and self.low_pass_order == 0

    def _behind(self, shunt: Shunt, steps: tuple[Step, ...]) -> bool:
        return not self.parts or any(step in shunt.ahead for step in steps)


def _once(places: Iterable[Place], told: set[str]) -> Iterator[Place]:
    """The places of which no part has been told before."""
    for place in places:
        if told.isdisjoint(place.block.labels):
            told |= {*place.block.labels}
            yield place


def names(*ladders: Ladder) -> tuple[str, ...]:
    """The drivers that some ladders feed."""
    return tuple(ladder.driver.name for ladder in ladders)


@dataclass(frozen=True)
class Structure:
    """`across_input` are blocks straight across an input. `unfed` are drivers that no input feeds.

    `dc_paths` are the tweeters that direct current reaches, each with the parts on its way.
    """

    ladders: Mapping[str, Ladder]
    unfed: tuple[str, ...]
    across_input: tuple[Block, ...]
    dc_paths: Mapping[str, tuple[str, ...]]

    def of_role(self, *roles: str) -> tuple[Ladder, ...]:
        """Ladders of drivers of these roles, but for drivers of which the outputs are exchanged."""
        return tuple(
            ladder for name, ladder in self.ladders.items() if ladder.role in roles and name not in self.exchanged
        )

    @cached_property
    def exchanged(self) -> frozenset[str]:
        """A woofer on a leg that is only a high-pass while a tweeter is on one that is only a low-pass."""
        woofers = {n for n, ladder in self.ladders.items() if ladder.role == "woofer" and ladder.only_high_pass}
        tweeters = {n for n, ladder in self.ladders.items() if ladder.role == "tweeter" and ladder.only_low_pass}
        return frozenset(woofers | tweeters) if woofers and tweeters else frozenset()

    def polarity(self, drivers: Sequence[str]) -> str:
        """How a driver is joined, `normal` or `reversed`, or how two are to one another, `same` or `opposite`."""
        turned = [self.ladders[name].turned for name in drivers]
        if len(turned) == 2:
            return "same" if turned[0] == turned[1] else "opposite"
        return "reversed" if turned[0] else "normal"

    @property
    def whole(self) -> bool:
        """Is every driver fed?"""
        return not self.unfed


def recognise(circuit: Circuit) -> Structure:
    """Trace how every driver is fed."""
    design = circuit.design
    feeds = {
        pair.name: (circuit.pad(pair.name, "+"), circuit.pad(pair.name, "-"))
        for pair in design.feeds
        if circuit.pad(pair.name, "+") != circuit.pad(pair.name, "-")
    }
    rails = {net for pair in feeds.values() for net in pair}
    pads = {circuit.pad(name, sign) for name in design.drivers for sign in "+-"}
    parts, drivers = [[b for b in singles(circuit) if b.is_driver is driver] for driver in (False, True)]
    blocks = draw_together(parts, rails | pads) + drivers
    joined = {
        name: block
        for block in draw_together(drivers, rails | {net for part in parts for net in (part.a, part.b)})
        for name in block.labels
    }
    potential = potentials(circuit)
    ladders: dict[str, Ladder] = {}
    for driver in design.drivers.values():
        for feed, (plus, minus) in feeds.items():
            ladder = _Tracing(circuit, blocks, potential, driver, feed, plus, minus).ladder(joined)
            if ladder is not None:
                ladders[driver.name] = ladder
                break
    across = [block for plus, minus in dict.fromkeys(feeds.values()) for block in _between(blocks, plus, minus)]
    unfed = tuple(name for name in design.drivers if name not in ladders)
    tweeters = [driver.name for driver in design.drivers.values() if driver.role == "tweeter"]
    dc_paths = {name: path for name in tweeters if (path := dc_path(circuit, name)) is not None}
    return Structure(ladders, unfed, tuple(across), dc_paths)


def _between(blocks: Iterable[Block], plus: str, minus: str) -> Iterator[Block]:
    for block in blocks:
        if {block.a, block.b} == {plus, minus} and not block.is_driver:
            yield from like_beside((block if block.a == plus else block.turned()).flat("group"))


class _Tracing:
    """The ladder of one driver at one input."""

    def __init__(
        self,
        circuit: Circuit,
        blocks: list[Block],
        potential: Mapping[str, float],
        driver: Driver,
        feed: str,
        plus: str,
        minus: str,
    ) -> None:
        self.driver, self.feed, self.plus, self.minus = driver, feed, plus, minus
        self.circuit = circuit
        self.potential = potential
        self.others = [block for block in blocks if not (block.is_driver and block.label == driver.name)]
        self.links = links((block.a, block.b, block) for block in self.others)
        self.pads = circuit.pad(driver.name, "+"), circuit.pad(driver.name, "-")
        self.turned = way_round(circuit, potential, driver.name)

    def ladder(self, joined: Mapping[str, Block]) -> Ladder | None:
        """None where this input does not feed the driver. `joined` are the drivers drawn together, by driver."""
        if self.turned is None:
            return None
        self.hot, self.cold = self.pads[::-1] if self.turned else self.pads
        out = self.cuts(self.plus, self.minus, self.hot)
        back = self.cuts(self.minus, self.plus, self.cold)
        if out is None or back is None:
            return None
        steps = [self.steps(out, False), self.steps(back, True)]
        path = (*(s for rail in steps[0] for s in rail), *(s for rail in steps[1] for s in rail))
        twins = tuple(b.label for b in self.others if b.is_driver and {b.a, b.b} == {*self.pads})
        shunts = tuple(self.shunts(out, back, steps, path))
        return Ladder(
            self.driver,
            self.feed,
            self.turned,
            path,
            shunts,
            twins,
            joined[self.driver.name],
            self.transformed(path, shunts),
        )

    def transformed(self, path: tuple[Step, ...], shunts: tuple[Shunt, ...]) -> float:
        """By how much tapped coils with one section in the path and one across it change the load, as an ideal
        autotransformer does: by the square of the turns, which go with the square root of the inductance.
        """
        factor = 1.0
        for step in path:
            part = self.circuit.design.parts.get(step.block.label)
            tap = part.quantities.get("tap") if part is not None else None
            if part is None or tap is None or part.value is None:
                continue
            whole, lower = part.value.value**0.5, tap.value**0.5
            for shunt in shunts:
                if shunt.block.label == part.label:
                    on_lower = self.circuit.net_of[f"{part.label}.start"] in (shunt.block.a, shunt.block.b)
                    turns = whole / (lower if on_lower else whole - lower)
                    factor *= turns**2 if step in shunt.ahead else turns**-2
        return factor

    def cuts(self, start: str, barred: str, end: str) -> list[Block] | None:
        """The blocks without which `end` is parted from `start`, in the order of the signal; None if it is parted."""
        path = shortest_path(self.links, start, end, (barred,))
        if path is None:
            return None
        return [block for block in path if end not in reached(self.links, start, (barred,), (block,))]

    def steps(self, cuts: list[Block], in_return: bool) -> list[tuple[Step, ...]]:
        """For each cut its steps: a chain's parts are steps of their own, but for those of one kind in a row."""
        rails = []
        for block in cuts:
            near_first = (self.potential[block.a] > self.potential[block.b]) != in_return
            chain = (block if near_first else block.turned()).flat("chain")
            rails.append(tuple(Step(inner, inner.a, inner.b, in_return) for inner in like_together(chain)))
        return rails

    def zones(
        self, cuts: list[Block], start: str, barred: str, end: str, floor: float, ceiling: float
    ) -> dict[str, int]:
        """The nets of one rail, each with the number of cuts between it and `start`.

        Between two cuts those count that lie on a way from the first to the second: what hangs on one net only, such
        as the leg of another driver, does not.
        """
        zones: dict[str, int] = {}
        reach = reached(self.links, start, (barred,))
        behind = [reach - reached(self.links, start, (barred,), (block,)) for block in cuts]
        for number, (block, nets) in enumerate(zip(cuts, behind, strict=True), start=1):
            entry = block.a if block.a in nets else block.b
            following = cuts[number] if number < len(cuts) else None
            leaving = end if following is None else following.a if following.a not in behind[number] else following.b
            between = {entry} if entry == leaving else {entry, *reached(self.links, leaving, (entry, barred))}
            for net in nets & between - (behind[number] if following is not None else set()):
                if floor - SAME <= self.potential.get(net, -1.0) <= ceiling + SAME:
                    zones[net] = number
        return {start: 0, **zones}

    def shunts(
        self, out: list[Block], back: list[Block], steps: list[list[tuple[Step, ...]]], path: tuple[Step, ...]
    ) -> Iterator[Shunt]:
        hot = {self.hot: len(out)} | self.zones(out, self.plus, self.minus, self.hot, self.potential[self.hot], 1.0)
        cold = {self.cold: len(back)} | self.zones(
            back, self.minus, self.plus, self.cold, 0.0, self.potential[self.cold]
        )
        in_path = {id(block) for block in (*out, *back)}
        for block in self.others:
            if block.is_driver or id(block) in in_path:
                continue
            seen = block if block.a in hot and block.b in cold else block.turned()
            if seen.a not in hot or seen.b not in cold:
                continue
            ahead = (
                *(step for rail in steps[0][: hot[seen.a]] for step in rail),
                *(step for rail in steps[1][: cold[seen.b]] for step in rail),
            )
            behind = tuple(step for step in path if step not in ahead)
            at_input = {seen.a, seen.b} == {self.plus, self.minus}
            for inner in like_beside(seen.flat("group")):
                yield Shunt(inner, ahead, behind, at_input)
