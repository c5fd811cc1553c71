"""Is a board its own mirror image, so that the drawing of its other side cannot be told from that of this one?

In: a board. Out: yes or no. Refuses to know any layout.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Sequence

from shuntwise.board.copper import Piece, drawn
from shuntwise.board.plane import Shape, Side, close_pairs, half, thin
from shuntwise.model.boards import Board, Hole, Point

SAME = 0.2
"""What lies no farther apart than this (mm) looks alike."""

MOST_LEFT = 200
"""Copper of which so many scraps are left uncovered is taken to be another."""


def mirror_alike(board: Board) -> bool:
    """Do copper, holes, tags, fixings and clipped corners come to lie on themselves when the board is turned over, to
    the left or upside down?

    Copper is compared as it looks, not as it is written. A tag with a name of its own bears that name, so it must come
    to lie on itself; tags of a row do not tell themselves apart.
    """
    return any(
        _alike(board, turned)
        for turned in (lambda at: (board.width - at[0], at[1]), lambda at: (at[0], board.height - at[1]))
    )


def _alike(board: Board, turned: Callable[[Point], Point]) -> bool:
    marks: list[tuple[tuple[object, ...], Point]] = [(_kind(hole), hole.at) for hole in board.holes]
    marks += [(("fixing", fixing.diameter), fixing.at) for fixing in board.fixings]
    marks += [(("corner", corner.cut), corner.at) for corner in board.corners]
    places: dict[tuple[object, ...], list[Point]] = defaultdict(list)
    for kind, at in marks:
        places[kind].append(at)
    for kind, at in marks:
        x, y = turned(at)
        if not any(abs(x - u) <= SAME and abs(y - v) <= SAME for u, v in places[kind]):
            return False
    return _covered(tuple(drawn(board, board.holes)), turned)


def _kind(hole: Hole) -> tuple[object, ...]:
    if hole.tag:
        return ("tag", hole.name if hole.name == hole.row else "")
    return ("hole", hole.diameter, hole.ring)


def _covered(pieces: Sequence[Piece], turned: Callable[[Point], Point]) -> bool:
    """Does the copper, turned over, lie in the copper as it is? Then it fills it, as its area is the same."""
    images = [
        Piece(piece.item, tuple(turned(corner) for corner in reversed(piece.core)), piece.radius) for piece in pieces
    ]
    met: dict[int, list[Piece]] = defaultdict(list)
    for low, high in close_pairs([piece.box for piece in (*images, *pieces)]):
        if low < len(images) <= high:
            met[low].append(pieces[high - len(images)])
    for number, image in enumerate(images):
        near = met.get(number, [])
        if any(_same(image, other) for other in near):
            continue
        left = [image.outline]
        for other in near:
            left = [part for shape in left for part in _outside(shape, other.bounds)]
            if len(left) > MOST_LEFT:
                break
        if left:
            return False
    return True


def _same(one: Piece, other: Piece) -> bool:
    """Are two pieces alike, corner by corner, so that nothing of one lies outside the other?"""
    return (
        one.radius <= other.radius
        and len(one.core) == len(other.core)
        and all(any(abs(x - u) < SAME and abs(y - v) < SAME for u, v in other.core) for x, y in one.core)
    )


def _outside(shape: Shape, bounds: Iterable[Side]) -> list[Shape]:
    """What of a convex shape lies outside another by more than SAME."""
    parts: list[Shape] = []
    rest = shape
    for across, up, bound in bounds:
        part = half(rest, -across, -up, -bound - SAME)
        if not thin(part):
            parts.append(part)
        rest = half(rest, across, up, bound + SAME)
        if thin(rest):
            return [shape]
    return parts
