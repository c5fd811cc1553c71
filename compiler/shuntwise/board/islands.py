"""Which holes and tags of layouts hang together by bare copper.

In: layouts. Out: `Islands`. Refuses to know wires, leads and nets.

A hole is in the nearest copper that comes within REACH of its edge: a lead is soldered where copper surrounds the hole
at least in part. A tag is an island of its own.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Literal

from shuntwise.board.copper import Copper, copper_of
from shuntwise.board.touching import Touching, touching
from shuntwise.model.boards import Layout, Point
from shuntwise.source import Span

Key = tuple[str, str]
"""A hole or tag: name of the layout, name there."""


@dataclass(frozen=True)
class Contact:
    """A place of a layout where a hair's breadth decides what is joined.

    `kind`: a `joint` of copper that is counted as joined though less than 0.1 mm wide, 0 where it only meets at a
    point; a `gap` that is counted as open though less than 0.1 mm wide; a `hole` within reach of two islands, which
    solder may join: it is counted to the nearer. `width` in mm: of the joint, of the gap, or from the hole's edge to
    the copper that it is not counted to. `items`: what meets there, such as `the area north`, `the track at line 7`,
    `the ring of h1`, or `the cut at line 20` and `the hole h1` where these leave a neck; `spans`: their places.
    """

    layout: str
    kind: Literal["joint", "gap", "hole"]
    at: Point
    width: float
    items: tuple[str, str]
    spans: tuple[Span, Span]


@dataclass(frozen=True)
class Islands:
    """`of`: for every hole and tag of every layout the number of its island, from 0 in the order of the layouts' holes;
    a hole without copper is an island of its own. `bare`: these holes. `astray`: holes that are said to be in an area
    (`hole.area`) and have no copper of it. `too_fine`: layouts whose cuts leave more pieces than are worked on; every
    hole of them is an island of its own, which is not true. `drawn`: the copper of the other layouts, by their names.
    """

    of: Mapping[Key, int]
    bare: frozenset[Key]
    narrow: tuple[Contact, ...]
    astray: frozenset[Key] = frozenset()
    too_fine: frozenset[str] = frozenset()
    drawn: Mapping[str, tuple[Copper, Touching]] = field(default_factory=dict, repr=False, compare=False)

    def keys(self, island: int) -> tuple[Key, ...]:
        """The holes and tags of an island, in order."""
        return tuple(key for key, number in self.of.items() if number == island)


def islands(layouts: Sequence[Layout]) -> Islands:
    """The islands of bare copper of all layouts, which have different names."""
    of: dict[Key, int] = {}
    bare: set[Key] = set()
    astray: set[Key] = set()
    narrow: list[Contact] = []
    too_fine: set[str] = set()
    drawn: dict[str, tuple[Copper, Touching]] = {}
    count = 0
    for layout in layouts:
        copper = copper_of(layout)
        if copper.too_fine:
            too_fine.add(layout.name)
        found = None if copper.too_fine else touching(copper, layout.holes)
        if found:
            drawn[layout.name] = copper, found
        numbers: dict[int, int] = {}
        for hole in layout.holes:
            key = (layout.name, hole.name)
            piece = found.at_hole.get(hole.name) if found else None
            if found and piece is not None:
                of[key] = numbers.setdefault(found.sets[piece], count)
            else:
                of[key] = count
            count += of[key] == count
            if found and not hole.tag:
                if piece is None:
                    bare.add(key)
                reached = {copper.pieces[number].item.area for number in found.reach.get(hole.name, ())}
                if hole.area is not None and hole.area not in reached:
                    astray.add(key)
        for hair in found.hairs if found else ():
            one, other = hair.items
            narrow.append(
                Contact(layout.name, hair.kind, hair.at, hair.width, (one.words, other.words), (one.span, other.span))
            )
    return Islands(of, frozenset(bare), tuple(narrow), frozenset(astray), frozenset(too_fine), drawn)
