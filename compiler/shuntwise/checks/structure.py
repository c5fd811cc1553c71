"""How each driver is fed: the parts in its path, the parts across it, and in which order the signal meets them.

In: a `Circuit` whose wiring could be read whole. Out: a `Structure`: one `Ladder` for each driver that an
input feeds, and what lies straight across an input. Parts that stand only in a row or only side by side
are first drawn together into `Block`s, so that a Zobel, a trap or a pad is one thing. Wires and links are
nets already. Refuses to know values: it sees kinds of parts and nothing else.
"""

from __future__ import annotations

from collections import defaultdict, deque
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from typing import Literal

import numpy as np

from shuntwise.graph.circuit import Circuit, Edge
from shuntwise.model.design import Driver
from shuntwise.model.kinds import ROLES

LETTERS = {"coil": "L", "tapped coil": "T", "capacitor": "C", "resistor": "R", "lamp": "B"}
"""A letter for each kind of part; a driver is D. `Block.letters` spells a block with them."""


@dataclass(frozen=True)
class Block:
    """One part or driver, a chain of blocks in a row, or a group side by side, between the nets `a` and `b`.

    `ones` are the letter and label of each single part inside. The blocks of a chain stand in order from `a`
    to `b`. `passes_dc` is true where direct current can flow between them.
    """

    form: Literal["one", "chain", "group"]
    a: str
    b: str
    ones: tuple[tuple[str, str], ...]
    passes_dc: bool
    inner: tuple[Block, ...] = ()

    @property
    def letter(self) -> str:
        """The letter of all parts inside, if they are of one kind: several that make up a value count as one part."""
        kinds = {letter for letter, _ in self.ones}
        return kinds.pop() if len(kinds) == 1 else ""

    @property
    def letters(self) -> str:
        """The letters of all parts inside, sorted: a Zobel is `CR`."""
        return "".join(sorted(letter for letter, _ in self.ones))

    @property
    def labels(self) -> tuple[str, ...]:
        return tuple(dict.fromkeys(label for _, label in self.ones))

    @property
    def label(self) -> str:
        return self.ones[0][1]

    def one(self, letter: str) -> str:
        """The label of the first part of this kind inside."""
        return next(label for kind, label in self.ones if kind == letter)

    @property
    def is_driver(self) -> bool:
        return self.letter == "D"

    def turned(self) -> Block:
        """The same block seen from its other end."""
        inner = tuple(block.turned() for block in reversed(self.inner)) if self.form == "chain" else self.inner
        return Block(self.form, self.b, self.a, self.ones, self.passes_dc, inner)

    def flat(self, form: Literal["chain", "group"]) -> tuple[Block, ...]:
        return self.inner if self.form == form else (self,)


def _like_together(blocks: Sequence[Block]) -> list[Block]:
    """The blocks of a chain, neighbours of one kind drawn together."""
    together: list[Block] = []
    for block in blocks:
        if together and block.letter and block.letter == together[-1].letter:
            together[-1] = _chain(together[-1], block)
        else:
            together.append(block)
    return together


def _like_beside(blocks: Sequence[Block]) -> list[Block]:
    """The blocks of a group, single parts of one kind drawn together."""
    by_kind: dict[str, list[Block]] = defaultdict(list)
    for number, block in enumerate(blocks):
        by_kind[block.letter if block.form == "one" else str(number)].append(block)
    return [_group(alike) if len(alike) > 1 else alike[0] for alike in by_kind.values()]


def _single(edge: Edge, letter: str) -> Block:
    return Block("one", edge.plus, edge.minus, ((letter, edge.owner),), letter != "C")


def _chain(first: Block, second: Block) -> Block:
    passes = first.passes_dc and second.passes_dc
    inner = (*first.flat("chain"), *second.flat("chain"))
    return Block("chain", first.a, second.b, first.ones + second.ones, passes, inner)


def _group(blocks: Sequence[Block]) -> Block:
    first = blocks[0]
    alike = [block if block.a == first.a else block.turned() for block in blocks]
    inner = tuple(one for block in alike for one in block.flat("group"))
    ones = tuple(one for block in inner for one in block.ones)
    return Block("group", first.a, first.b, ones, any(block.passes_dc for block in inner), inner)


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


@dataclass(frozen=True)
class Ladder:
    """How one driver is fed. `steps` are in the order of the signal, those in the return wire last.

    `turned` is true where the driver's minus is nearer to the input's plus. `twins` are drivers between the
    same two nets.
    """

    driver: Driver
    feed: str
    turned: bool
    steps: tuple[Step, ...]
    shunts: tuple[Shunt, ...]
    twins: tuple[str, ...]

    @property
    def role(self) -> str | None:
        return self.driver.role

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
    def low_pass_order(self) -> int:
        """Coils in the path and capacitors across it, behind a coil or (series type) with nothing in the path."""
        return len(self.series("L")) + sum(self._behind(shunt, "L") for shunt in self.across("C"))

    @property
    def high_pass_order(self) -> int:
        """Capacitors in the path and coils across it, behind a capacitor or with nothing in the path."""
        return len(self.series("C")) + sum(self._behind(shunt, "C") for shunt in self.across("L"))

    @property
    def only_low_pass(self) -> bool:
        return self.low_pass_order > 0 and self.high_pass_order == 0

    @property
    def only_high_pass(self) -> bool:
        return self.high_pass_order > 0 and self.low_pass_order == 0

    def _behind(self, shunt: Shunt, letter: str) -> bool:
        return not self.parts or any(step.block.letter == letter for step in shunt.ahead)


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

    def neighbours(self) -> Iterator[tuple[Ladder, Ladder]]:
        """Pairs of drivers that follow one another from low to high, one of each role."""
        ranked = [ladders[0] for role in ROLES if (ladders := self.of_role(role))]
        return pairwise(ranked)

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
    blocks = draw_together(_singles(circuit), rails | pads)
    potential = potentials(circuit)
    ladders: dict[str, Ladder] = {}
    for driver in design.drivers.values():
        for feed, (plus, minus) in feeds.items():
            ladder = _Tracing(circuit, blocks, potential, driver, feed, plus, minus).ladder()
            if ladder is not None:
                ladders[driver.name] = ladder
                break
    across = [block for plus, minus in set(feeds.values()) for block in _between(blocks, plus, minus)]
    unfed = tuple(name for name in design.drivers if name not in ladders)
    tweeters = [driver.name for driver in design.drivers.values() if driver.role == "tweeter"]
    reached = {name: path for name in tweeters if (path := dc_path(circuit, name)) is not None}
    return Structure(ladders, unfed, tuple(across), reached)


def _between(blocks: Iterable[Block], plus: str, minus: str) -> Iterator[Block]:
    for block in blocks:
        if {block.a, block.b} == {plus, minus} and not block.is_driver:
            yield from _like_beside((block if block.a == plus else block.turned()).flat("group"))


def _singles(circuit: Circuit) -> list[Block]:
    singles = []
    for edge in circuit.edges.values():
        if edge.plus == edge.minus or edge.kind in ("feed", "posts"):
            continue
        letter = "D" if edge.kind == "driver" else LETTERS[circuit.design.parts[edge.owner].kind]
        singles.append(_single(edge, letter))
    return singles


def draw_together(blocks: Iterable[Block], kept: Collection[str]) -> list[Block]:
    """Merge parts side by side into groups and parts in a row into chains, as far as it goes.

    Nets in `kept` are not drawn into a chain, and drivers are merged with nothing.
    """
    pool = list(blocks)
    while True:
        merged = _side_by_side(pool)
        rowed = _in_a_row(merged, kept)
        if len(rowed) == len(pool):
            return rowed
        pool = rowed


def _side_by_side(blocks: list[Block]) -> list[Block]:
    drivers = [block for block in blocks if block.is_driver]
    between: dict[frozenset[str], list[Block]] = defaultdict(list)
    for block in blocks:
        if not block.is_driver:
            between[frozenset((block.a, block.b))].append(block)
    return [group[0] if len(group) == 1 else _group(group) for group in between.values()] + drivers


def _in_a_row(blocks: list[Block], kept: Collection[str]) -> list[Block]:
    at: dict[str, dict[int, Block]] = defaultdict(dict)
    pool = dict(enumerate(blocks))
    for number, block in pool.items():
        at[block.a][number] = at[block.b][number] = block
    fresh = len(blocks)
    for net in list(at):
        if net in kept or len(at[net]) != 2:
            continue
        (n, first), (m, second) = at[net].items()
        if first.a == net:
            first = first.turned()
        if second.b == net:
            second = second.turned()
        if first.a == second.b or first.is_driver or second.is_driver:
            continue
        chain = _chain(first, second)
        for number in (n, m):
            block = pool.pop(number)
            at[block.a].pop(number, None)
            at[block.b].pop(number, None)
        pool[fresh] = at[chain.a][fresh] = at[chain.b][fresh] = chain
        fresh += 1
    return list(pool.values())


def potentials(circuit: Circuit) -> dict[str, float]:
    """Each net's voltage with every part and driver replaced by 1 ohm and every input at 1 V; live nets only."""
    fixed: dict[str, float] = {}
    for pair in circuit.design.feeds:
        fixed[circuit.pad(pair.name, "+")] = 1.0
    for pair in circuit.design.feeds:
        fixed[circuit.pad(pair.name, "-")] = 0.0
    edges = [e for e in circuit.edges.values() if e.kind not in ("feed", "posts") and e.plus != e.minus]
    reach = _adjacency((e.plus, e.minus) for e in edges)
    live = set(fixed)
    for net in fixed:
        live |= _reached(reach, net, ())
    free = {net: number for number, net in enumerate(sorted(live - set(fixed)))}
    matrix, right = np.zeros((len(free), len(free))), np.zeros(len(free))
    for edge in edges:
        for here, there in ((edge.plus, edge.minus), (edge.minus, edge.plus)):
            if here in free:
                matrix[free[here], free[here]] += 1
                if there in free:
                    matrix[free[here], free[there]] -= 1
                else:
                    right[free[here]] += fixed[there]
    solved = np.linalg.solve(matrix, right) if free else right
    return fixed | {net: float(solved[number]) for net, number in free.items()}


Adjacency = dict[str, list[str]]


def _adjacency(pairs: Iterable[tuple[str, str]]) -> Adjacency:
    adjacent: Adjacency = defaultdict(list)
    for a, b in pairs:
        adjacent[a].append(b)
        adjacent[b].append(a)
    return adjacent


def _reached(adjacent: Adjacency, start: str, barred: Collection[str]) -> set[str]:
    """All nets that can be reached from `start` without entering `barred`."""
    if start in barred:
        return set()
    seen, stack = {start}, [start]
    while stack:
        for net in adjacent.get(stack.pop(), ()):
            if net not in seen and net not in barred:
                seen.add(net)
                stack.append(net)
    return seen


SAME = 1e-12
"""Potentials closer than this are one: the rounding of a small linear system."""


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
        self.potential = potential
        self.others = [block for block in blocks if not (block.is_driver and block.label == driver.name)]
        self.pads = circuit.pad(driver.name, "+"), circuit.pad(driver.name, "-")

    def ladder(self) -> Ladder | None:
        if any(pad not in self.potential for pad in self.pads):
            return None
        difference = self.potential[self.pads[0]] - self.potential[self.pads[1]]
        if abs(difference) < SAME:
            return None
        turned = difference < 0
        self.hot, self.cold = (self.pads[1], self.pads[0]) if turned else self.pads
        out = self.cuts(self.plus, self.minus, self.hot)
        back = self.cuts(self.minus, self.plus, self.cold)
        if out is None or back is None:
            return None
        steps = [self.steps(out, False), self.steps(back, True)]
        path = (*(s for rail in steps[0] for s in rail), *(s for rail in steps[1] for s in rail))
        twins = tuple(b.label for b in self.others if b.is_driver and {b.a, b.b} == {*self.pads})
        return Ladder(self.driver, self.feed, turned, path, tuple(self.shunts(out, back, steps, path)), twins)

    def cuts(self, start: str, barred: str, end: str) -> list[Block] | None:
        """The blocks without which `end` is parted from `start`, in the order of the signal; None if it is parted."""
        path = self.path(start, barred, end)
        if path is None:
            return None
        return [b for b in path if end not in _reached(self.without(b), start, (barred,))]

    def path(self, start: str, barred: str, end: str) -> list[Block] | None:
        """The blocks of one shortest path."""
        at: dict[str, list[Block]] = defaultdict(list)
        for block in self.others:
            at[block.a].append(block)
            at[block.b].append(block)
        came: dict[str, tuple[str, Block] | None] = {start: None}
        queue = deque([start])
        while queue:
            net = queue.popleft()
            for block in at[net]:
                other = block.b if block.a == net else block.a
                if other not in came and other != barred:
                    came[other] = net, block
                    queue.append(other)
        if end not in came:
            return None
        blocks: list[Block] = []
        step = came[end]
        while step is not None:
            blocks.append(step[1])
            step = came[step[0]]
        return blocks[::-1]

    def without(self, removed: Block | None) -> Adjacency:
        return _adjacency((block.a, block.b) for block in self.others if block is not removed)

    def steps(self, cuts: list[Block], in_return: bool) -> list[tuple[Step, ...]]:
        """For each cut its steps: a chain's parts are steps of their own, but for those of one kind in a row."""
        rails = []
        for block in cuts:
            near_first = (self.potential[block.a] > self.potential[block.b]) != in_return
            chain = (block if near_first else block.turned()).flat("chain")
            rails.append(tuple(Step(inner, inner.a, inner.b, in_return) for inner in _like_together(chain)))
        return rails

    def zones(self, cuts: list[Block], start: str, barred: str, floor: float, ceiling: float) -> dict[str, int]:
        """The nets of one rail, each with the number of cuts between it and `start`."""
        zones: dict[str, int] = {}
        reach = _reached(self.without(None), start, (barred,))
        for block in cuts:
            kept = _reached(self.without(block), start, (barred,))
            for net in reach - kept:
                if floor - SAME <= self.potential.get(net, -1.0) <= ceiling + SAME:
                    zones[net] = zones.get(net, 0) + 1
        return {start: 0, **zones}

    def shunts(
        self, out: list[Block], back: list[Block], steps: list[list[tuple[Step, ...]]], path: tuple[Step, ...]
    ) -> Iterator[Shunt]:
        hot = {self.hot: len(out)} | self.zones(out, self.plus, self.minus, self.potential[self.hot], 1.0)
        cold = {self.cold: len(back)} | self.zones(back, self.minus, self.plus, 0.0, self.potential[self.cold])
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
            for inner in _like_beside(seen.flat("group")):
                yield Shunt(inner, ahead, behind, at_input)


def dc_path(circuit: Circuit, driver: str) -> tuple[str, ...] | None:
    """The parts on a way for direct current to this driver's hot pad, if there is one all the way through it.

    A coil across the driver keeps direct current away from it where it must first pass another driver (series
    type); otherwise coils and resistors are wire.
    """
    parts = circuit.design.parts
    coils = {parts[e.owner].kind for e in _across(circuit, driver) if e.kind == "part"} & {"coil", "tapped coil"}
    edges = [
        e
        for e in circuit.edges.values()
        if (e.kind == "part" and parts[e.owner].kind != "capacitor")
        or (e.kind == "driver" and e.owner != driver and not coils)
    ]
    adjacent = _adjacency((e.plus, e.minus) for e in edges)
    pads = circuit.pad(driver, "+"), circuit.pad(driver, "-")
    for pair in circuit.design.feeds:
        plus, minus = circuit.pad(pair.name, "+"), circuit.pad(pair.name, "-")
        for hot, cold in (pads, pads[::-1]):
            if hot in _reached(adjacent, plus, (minus,)) and cold in _reached(adjacent, minus, (plus,)):
                return _shortest(edges, plus, minus, hot)
    return None


def _across(circuit: Circuit, driver: str) -> Iterator[Edge]:
    pads = {circuit.pad(driver, sign) for sign in "+-"}
    return (edge for edge in circuit.edges.values() if {edge.plus, edge.minus} == pads)


def _shortest(edges: Iterable[Edge], start: str, barred: str, end: str) -> tuple[str, ...]:
    """The owners of the edges on a shortest path that does not enter `barred`."""
    at: dict[str, list[tuple[str, str]]] = defaultdict(list)
    for edge in edges:
        at[edge.plus].append((edge.minus, edge.owner))
        at[edge.minus].append((edge.plus, edge.owner))
    came: dict[str, tuple[str, ...]] = {start: ()}
    queue = deque([start])
    while queue and end not in came:
        net = queue.popleft()
        for other, owner in at[net]:
            if other not in came and other != barred:
                came[other] = (*came[net], owner)
                queue.append(other)
    return came[end]


def tied_legs(circuit: Circuit) -> Iterator[tuple[tuple[str, ...], tuple[str, ...]]]:
    """Sets of drivers that meet behind the input though no leg names them together; with the nets where they may.

    The nets are those of the common island once the inputs' and posts' pads are taken away.
    """
    design = circuit.design
    rails = {circuit.pad(pair.name, sign) for pair in design.terminals for sign in "+-"}
    edges = [e for e in circuit.edges.values() if e.kind in ("part", "driver")]
    adjacent = _adjacency((e.plus, e.minus) for e in edges if e.plus not in rails and e.minus not in rails)
    seen: set[str] = set()
    for net in circuit.nets:
        if net in rails or net in seen:
            continue
        island = _reached(adjacent, net, ())
        seen |= island
        drivers = tuple(
            name for name in design.drivers if any(circuit.pad(name, sign) in island for sign in "+-")
        )
        if len(drivers) > 1 and not _declared_together(circuit, drivers):
            yield drivers, tuple(sorted(island))


def _declared_together(circuit: Circuit, drivers: Collection[str]) -> bool:
    """Do the legs that name several drivers at once link all of these?"""
    groups = [set(leg.drivers) for leg in circuit.design.legs]
    linked = {next(iter(drivers))}
    while True:
        wider = linked.union(*(group for group in groups if group & linked))
        if wider == linked:
            return linked >= set(drivers)
        linked = wider
