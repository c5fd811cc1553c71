"""Parts that stand only in a row or only side by side, drawn together: a Zobel, a trap or a made-up value is one thing.

In: the edges of a `Circuit`. Out: `Block`s. Refuses to know where they stand in a leg, and what their values are.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass
from typing import Literal

from shuntwise.graph.circuit import Circuit, Edge
from shuntwise.model.kinds import KINDS


@dataclass(frozen=True)
class Block:
    """One part or driver, a chain of blocks in a row, or a group side by side, between the nets `a` and `b`.

    `ones` are the letter (its kind's; D for a driver) and label of each single part inside. The blocks of a chain
    stand in order from `a` to `b`. `passes_dc` is true where direct current can flow between them.
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


def like_together(blocks: Sequence[Block]) -> list[Block]:
    """The blocks of a chain, neighbours of one kind drawn together."""
    together: list[Block] = []
    for block in blocks:
        if together and block.letter and block.letter == together[-1].letter:
            together[-1] = _chain(together[-1], block)
        else:
            together.append(block)
    return together


def like_beside(blocks: Sequence[Block]) -> list[Block]:
    """The blocks of a group, single parts of one kind drawn together."""
    by_kind: dict[str, list[Block]] = defaultdict(list)
    for number, block in enumerate(blocks):
        by_kind[block.letter if block.form == "one" else str(number)].append(block)
    return [_group(alike) if len(alike) > 1 else alike[0] for alike in by_kind.values()]


def _single(edge: Edge, letter: str, passes_dc: bool) -> Block:
    return Block("one", edge.plus, edge.minus, ((letter, edge.owner),), passes_dc)


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


def singles(circuit: Circuit) -> list[Block]:
    """Every part and driver that is not bridged, by itself."""
    singles = []
    for edge in circuit.edges.values():
        if edge.plus == edge.minus or edge.kind in ("feed", "posts"):
            continue
        if edge.kind == "driver":
            singles.append(_single(edge, "D", True))
        else:
            kind = KINDS[circuit.design.parts[edge.owner].kind]
            singles.append(_single(edge, kind.block, kind.passes_dc))
    return singles


def draw_together(blocks: Iterable[Block], kept: Collection[str]) -> list[Block]:
    """Merge parts side by side into groups and parts in a row into chains, as far as it goes.

    Nets in `kept` are not drawn into a chain.
    """
    pool = list(blocks)
    while True:
        merged = _side_by_side(pool)
        rowed = _in_a_row(merged, kept)
        if len(rowed) == len(pool):
            return rowed
        pool = rowed


def _side_by_side(blocks: list[Block]) -> list[Block]:
    between: dict[frozenset[str], list[Block]] = defaultdict(list)
    for block in blocks:
        between[frozenset((block.a, block.b))].append(block)
    return [group[0] if len(group) == 1 else _group(group) for group in between.values()]


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
        if first.a == second.b:
            continue
        chain = _chain(first, second)
        for number in (n, m):
            block = pool.pop(number)
            at[block.a].pop(number, None)
            at[block.b].pop(number, None)
        pool[fresh] = at[chain.a][fresh] = at[chain.b][fresh] = chain
        fresh += 1
    return list(pool.values())
