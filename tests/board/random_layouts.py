"""Layouts by chance: areas with and without notches, tracks, rings, tags, cuts and holes of every size."""

from __future__ import annotations

from math import cos, dist, pi, sin
from random import Random

from board.layouts import cut, hole, layout, polygon, rectangle, tag, track
from shuntwise.model.boards import Area, Cut, Hole, Layout, Point, Track


def random_layout(seed: int) -> Layout:
    """Half of them on a grid of 5 mm, so that edges coincide and cuts run along them; the others anyhow."""
    chance = Random(seed)
    grid = 5.0 if seed % 2 else 0.01

    def point() -> Point:
        return _on(chance.uniform(0, 100), grid), _on(chance.uniform(0, 80), grid)

    copper: list[Area | Track | Hole] = [_area(chance, f"a{number}", grid) for number in range(chance.randint(2, 8))]
    for number in range(chance.randint(1, 6)):
        points = [point() for _ in range(chance.randint(2, 4))]
        copper.append(track(chance.choice((1.0, 1.5, 2.5, 4.0)), *points, line=number + 1))
    spots: list[Hole] = []
    while len(spots) < 30:
        place, diameter = point(), chance.choice((0.8, 1.3, 1.3, 2.2, 4.1))
        if all(dist(place, other.at) > (diameter + other.diameter) / 2 + 0.02 for other in spots):
            name = f"h{len(spots)}"
            ring = chance.choice((0, 0, 3.0, 5.0))
            spots.append(tag(name, *place) if chance.random() < 0.1 else hole(name, *place, diameter, ring=ring))
    copper += spots
    return layout(*copper, cuts=[_cut(chance, point(), grid) for _ in range(chance.randint(0, 8))])


def _on(value: float, grid: float) -> float:
    return round(round(value / grid) * grid, 4)


def _area(chance: Random, name: str, grid: float) -> Area:
    left, lower = _on(chance.uniform(0, 70), grid), _on(chance.uniform(0, 50), grid)
    wide, high = _on(chance.uniform(8, 30), grid), _on(chance.uniform(8, 30), grid)
    form = chance.random()
    if form < 0.5:
        return rectangle(name, left, lower, left + wide, lower + high)
    if form < 0.75:  # a comb: a back with teeth upward
        teeth = chance.randint(2, 4)
        corners = [(left, lower), (left + wide, lower)]
        for number in range(2 * teeth - 1, 0, -1):
            x = _on(left + wide * number / (2 * teeth - 1), 0.01)
            before = _on(left + wide * (number - 1) / (2 * teeth - 1), 0.01)
            top = lower + (high if number % 2 else high / 2)
            corners += [(x, top), (before, top)]
        return polygon(name, *corners)
    count = chance.randint(3, 9)  # a star with long and short arms
    start = chance.uniform(0, 2 * pi)
    arms = [(2 * pi * number / count + start, chance.uniform(4, 16)) for number in range(count)]
    return polygon(name, *((left + 15 + arm * cos(turn), lower + 15 + arm * sin(turn)) for turn, arm in arms))


def _cut(chance: Random, start: Point, grid: float) -> Cut:
    length = chance.uniform(2, 40)
    turn = chance.choice((0, pi / 2)) if chance.random() < 0.7 else chance.uniform(0, 2 * pi)
    end = _on(start[0] + length * cos(turn), grid), _on(start[1] + length * sin(turn), grid)
    return cut(start, end if end != start else (start[0] + grid, start[1]), chance.choice((0.5, 1.0, 2.0)))
