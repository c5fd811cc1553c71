"""Islands of copper joined by wires: what is one piece of metal.

In: layouts, their islands of bare copper. Out: joints. A joint holds holes, tags and the pads of drivers, inputs and
posts that wires lead to. Refuses to know parts.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from shuntwise.board.islands import Islands, Key
from shuntwise.model.boards import Layout, Spot, Wire


def key_of(spot: Spot) -> Key:
    """The hole or tag of a spot by the names of its layout and its own; a pad, on no board, by ("", "woofer+")."""
    return spot.layout or "", spot.hole


def is_pad(key: Key) -> bool:
    return not key[0]


def soldered(wire: Wire, boards: Mapping[str, Layout]) -> tuple[Key, ...]:
    """All that a wire is soldered to, from end to end: a bus takes every hole or tag of its row between the two.

    `boards` are the layouts by name. A bus whose ends are in two rows is soldered to its ends alone.
    """
    first, second = key_of(wire.first), key_of(wire.second)
    if wire.kind != "bus" or first[0] != second[0] or first[0] not in boards:
        return first, second
    row = row_of(boards[first[0]], first)
    if first not in row or second not in row:
        return first, second
    a, b = row.index(first), row.index(second)
    return tuple(row[min(a, b) : max(a, b) + 1])


def row_of(layout: Layout, key: Key) -> list[Key]:
    """The holes or tags of the row that one is in, in order; nothing for an unknown one."""
    rows = [hole.row for hole in layout.holes if hole.name == key[1]]
    return [(layout.name, hole.name) for hole in layout.holes if hole.row in rows]


def numbered(count: int, wires: Iterable[Sequence[int]]) -> tuple[int, ...]:
    """For each of `count` pieces the least number of those that wires join it with."""
    joint = list(range(count))

    def root(piece: int) -> int:
        while joint[piece] != piece:
            joint[piece] = joint[joint[piece]]
            piece = joint[piece]
        return piece

    for wire in wires:
        for piece in wire[1:]:
            a, b = root(wire[0]), root(piece)
            joint[max(a, b)] = min(a, b)
    for piece in range(count):  # each is joined to a lesser one, of which that has been done
        joint[piece] = joint[joint[piece]]
    return tuple(joint)


def joints(layouts: Sequence[Layout], copper: Islands) -> Mapping[Key, int]:
    """Every hole, tag and wired pad with the number of its joint."""
    boards = {layout.name: layout for layout in layouts}
    number = {island: n for n, island in enumerate(dict.fromkeys(copper.of.values()))}
    piece = {key: number[island] for key, island in copper.of.items()}
    count = len(number)
    runs: list[list[int]] = []
    for layout in layouts:
        for wire in layout.wires:
            run = []
            for key in soldered(wire, boards):
                if key not in piece:
                    piece[key], count = count, count + 1
                run.append(piece[key])
            runs.append(run)
    joint = numbered(count, runs)
    return {key: joint[at] for key, at in piece.items()}
