"""Frames about the parts of used networks: each piece of one that stands by itself, with the network's name.

In: canvases, and which network each use is of. Out: frames with their names as marks, and the parts that none could
hold. No frame holds a part of anything else. Refuses to know pages.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import product
from math import hypot

from shuntwise.documents.lettering import extent, settable
from shuntwise.documents.schematic.place import DOT, Box, Canvas
from shuntwise.documents.schematic.sizes import AIR, FRAMED, LEADING, block
from shuntwise.documents.schematic.symbols import WIRE
from shuntwise.documents.sheet import GREY, Mark, Stroke

MARGINS = (1.5, 1.0, 2.0, 0.6, 3.6)
"""From the parts of a piece to its frame, in mm, of which the first is taken that crosses nothing."""

INSET = 0.4
"""Between a frame and its name."""

WIDE, NARROW = 60.0, 15.0
"""Longer names are broken into lines; into lines no longer than the second, or than their frame, where that helps."""

NEAREST = 6
"""With so many pieces a part is tried to be put together, the nearest first: hundreds would take seconds."""


@dataclass(frozen=True)
class Framed:
    """`marks` by canvas; `left` by use the parts that no frame could be drawn about."""

    marks: tuple[tuple[Mark, ...], ...]
    left: Mapping[str, tuple[str, ...]]


def framed_networks(canvases: Sequence[Canvas], networks: Mapping[str, str], room: Box) -> Framed:
    """`networks` are by the names of their uses, of which `P1.Z1` is one inside `P1`; nothing is drawn outside
    `room`.
    """
    sheets = [_Sheet(canvas, room) for canvas in canvases] if networks else []
    left: dict[str, list[str]] = defaultdict(list)
    for name in sorted(networks, key=lambda name: -name.count(".")):  # inner ones first: outer frames go round them
        pieces = [(sheet, piece) for sheet in sheets for piece in sheet.pieces(name)]
        for number, (sheet, piece) in enumerate(pieces, start=1):
            several = len(pieces) > 1
            whole = f"{name}: {networks[name]}{f', part {number} of {len(pieces)}' if several else ''}"
            short = f"{name}, {number} of {len(pieces)}" if several else name
            if not sheet.frame(name, piece, (settable(whole), settable(short))):
                left[name] += piece
    marks = []
    for sheet in sheets:
        for frame in tuple(sheet.framed):
            if not sheet.name(frame):
                sheet.framed.remove(frame)
                left[frame.use] += frame.labels
        marks.append((*(edge(frame.box) for frame in sheet.framed), *sheet.lettering.marks))
    return Framed(tuple(marks) or ((),) * len(canvases), {use: tuple(labels) for use, labels in left.items()})


@dataclass(frozen=True)
class _Frame:
    """`words` are what may be written at it, of which the first is taken that has room."""

    use: str
    labels: tuple[str, ...]
    box: Box
    words: tuple[str, ...]


class _Sheet:
    """`solid` is what no line of a frame may cross, `taken` where no name may stand."""

    def __init__(self, canvas: Canvas, room: Box) -> None:
        self.room = room
        self.boxes = {label: hull(boxes) for label, boxes in canvas.boxes.items()}
        self.wires: list[Box] = [(*start, *end) for start, end in canvas.merged()]
        self.solid = [*self.boxes.values(), *map(extent, canvas.marks)]
        self.taken = [*self.solid, *(grown(wire, DOT) for wire in self.wires)]
        self.framed: list[_Frame] = []
        self.lettering = Canvas()

    def pieces(self, name: str) -> list[list[str]]:
        """The drawn parts of a use in as few pieces as possible about which nothing else stands."""
        own = {label: box for label, box in self.boxes.items() if label.startswith(f"{name}.")}
        others = [box for label, box in self.boxes.items() if label not in own]

        def alone(box: Box) -> bool:
            return not any(meet(grown(box, min(MARGINS)), other) for other in others)

        if not own or alone(hull(own.values())):
            return [[*own]] if own else []
        pieces: list[tuple[list[str], Box]] = []
        for label, box in sorted(own.items(), key=lambda entry: entry[1]):
            near = sorted(pieces, key=lambda piece: apart(piece[1], box))[:NEAREST]
            whole = next((piece for piece in near if alone(hull((piece[1], box)))), None)
            if whole is None:
                pieces.append(([label], box))
            else:
                pieces[pieces.index(whole)] = ([*whole[0], label], hull((whole[1], box)))
        return [labels for labels, _ in pieces]

    def frame(self, use: str, piece: Sequence[str], words: tuple[str, ...]) -> bool:
        """Frame a piece, if a rectangle can go round it."""
        labels = {*piece}
        inner = [frame.box for frame in self.framed if labels.issuperset(frame.labels)]
        own = [*map(named, inner), *(self.boxes[label] for label in piece)]
        others = [box for label, box in self.boxes.items() if label not in labels]
        others += [frame.box for frame in self.framed if frame.box not in inner]
        for margin in MARGINS:
            box = self.around(grown(hull(own), margin))
            if not inside(box, self.room) or any(meet(grown(box, INSET), other) for other in others):
                continue
            if any(cut(box, other) for other in self.solid) or any(on_edge(box, wire) for wire in self.wires):
                continue
            self.framed.append(_Frame(use, tuple(piece), box, words))
            return True
        return False

    def around(self, frame: Box) -> Box:
        """Wide enough for what would be cut, such as a name at a wire."""
        for _ in range(3):
            through = [box for box in self.solid if cut(frame, box)]
            if not through:
                break
            frame = grown(hull((frame, *through)), min(MARGINS))
        return frame

    def name(self, frame: _Frame) -> bool:
        """Write the name of a frame, if there is room."""
        for words, room in product(frame.words, (WIDE, max(frame.box[2] - frame.box[0], NARROW))):
            text = block(words, FRAMED, room=room)
            for x, y in places(frame.box, text.width, text.height):
                if self.is_free((x - AIR / 2, y, x + text.width + AIR / 2, y + text.height), frame):
                    self.taken.append(self.lettering.words(text, x, y, "start"))
                    return True
        return False

    def is_free(self, box: Box, frame: _Frame) -> bool:
        """May the name of a frame stand here: in all that hold the frame, in no other, and not at another?"""
        if not inside(box, self.room) or cut(frame.box, box) or any(meet(box, other) for other in self.taken):
            return False
        around = [other.box for other in self.framed if inside(frame.box, other.box)]
        beside = [other.box for other in self.framed if other is not frame and other.box not in around]
        away = INSET if inside(box, frame.box) else 2 * AIR
        return all(inside(box, grown(other, -AIR)) for other in around) and not any(
            meet(box, grown(other, away)) for other in beside
        )


def edge(box: Box) -> Stroke:
    left, top, right, low = box
    return Stroke(((left, top), (right, top), (right, low), (left, low)), WIRE, GREY, (1.5, 1.0), closed=True)


def named(box: Box) -> Box:
    """A frame with room for its name."""
    return box[0], box[1] - FRAMED * LEADING - INSET - AIR, box[2], box[3]


def places(frame: Box, width: float, height: float) -> Iterator[tuple[float, float]]:
    """For a name at a frame: over it, inside at its top, under it, beside it, or anywhere inside."""
    left, top, right, low = frame
    over = spread(left, right - width)
    inner = spread(left + AIR, right - AIR - width) if right - left - 2 * AIR > width else []
    yield from ((x, top - height - INSET) for x in over)
    yield from ((x, top + INSET) for x in inner)
    yield from ((x, low + INSET) for x in over)
    yield from ((x, y) for x in (right + AIR, left - width - AIR) for y in spread(top, low - height))
    yield from ((x, y) for y in spread(low - INSET - height, top + INSET) for x in inner)


def spread(start: float, end: float) -> list[float]:
    """Places from start to end, wherever that lies."""
    return [start + n * (end - start) / 6 for n in range(7)]


# --- boxes


def hull(boxes: Iterable[Box]) -> Box:
    lefts, tops, rights, lows = zip(*boxes, strict=True)
    return min(lefts), min(tops), max(rights), max(lows)


def grown(box: Box, by: float) -> Box:
    return box[0] - by, box[1] - by, box[2] + by, box[3] + by


def meet(a: Box, b: Box) -> bool:
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]


def apart(a: Box, b: Box) -> float:
    return hypot(max(a[0] - b[2], b[0] - a[2], 0.0), max(a[1] - b[3], b[1] - a[3], 0.0))


def cut(frame: Box, box: Box) -> bool:
    """Does a line of the frame go through a box?"""
    return meet(frame, box) and not inside(box, frame)


def inside(box: Box, outer: Box) -> bool:
    return outer[0] < box[0] and outer[1] < box[1] and box[2] < outer[2] and box[3] < outer[3]


def edges(frame: Box) -> tuple[list[Box], list[Box]]:
    """The lines of a frame, level ones and upright ones."""
    left, top, right, low = frame
    level, upright = ((left, y, right, y) for y in (top, low)), ((x, top, x, low) for x in (left, right))
    return [grown(line, WIRE / 2) for line in level], [grown(line, WIRE / 2) for line in upright]


def on_edge(frame: Box, wire: Box) -> bool:
    """Does a wire run along a line of the frame?"""
    level, upright = edges(frame)
    return any(meet(edge, grown(wire, WIRE)) for edge in (level if wire[1] == wire[3] else upright))
