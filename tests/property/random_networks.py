"""Random passive networks, the same for the same seed.

In: a seed. Out: a `Network` that keeps the invariants of `shuntwise.network.network`, with what trips
solvers in it: loads that float, drivers in series across the input, nodes that only capacitors
touch, loops of ideal coils, coils that share their field up to |k| = 1, two inputs. It refuses to know
what a sensible crossover looks like; the values are those of real parts.
"""

from __future__ import annotations

import math
import random
from dataclasses import replace

from shuntwise.network.network import GROUND, Branch, Coupling, DriverPort, Element, Feed, Network

VALUE_RANGE = {"R": (0.05, 100.0), "L": (5e-5, 1e-2), "C": (5e-7, 3e-4)}
"""Ohm, henry, farad: from a coil's own resistance to a bleeder, from a tweeter's choke to a woofer's."""


def random_network(seed: int) -> Network:
    """The network of one seed: 2 to 9 nodes and some more, one or two inputs, one to four drivers."""
    draw = random.Random(seed)
    nodes = [f"n{number}" for number in range(1, draw.randint(2, 9) + 1)]
    builder = _Builder(draw)

    # A tree of elements to ground gives every node its path; an element mix of its own for every network
    # makes some of capacitors mainly, and some of coils mainly.
    mix = [draw.choice((0.3, 1.0, 3.0)) for _ in "RLC"]
    reached = [GROUND]
    for node in nodes:
        builder.add(draw.choices("RLC", mix)[0], draw.choice(reached), node)
        reached.append(node)
    for _ in range(draw.randint(0, len(nodes) + 2)):
        builder.add(draw.choices("RLC", mix)[0], *draw.sample(reached, 2))

    for _ in range(draw.choice((0, 0, 1, 2))):
        draw.choice((builder.capacitor_only_node, builder.coil_loop, builder.series_pair))(reached)

    feed_count = 2 if len(nodes) > 2 and draw.random() < 0.3 else 1
    feeds = tuple(Feed(f"input{i}", node) for i, node in enumerate(draw.sample(nodes, feed_count), start=1))
    drivers = [DriverPort(f"driver{i}", *draw.sample(reached, 2)) for i in range(1, draw.randint(1, 4) + 1)]
    builder.load(drivers)
    couplings = builder.couplings()
    elements = tuple(builder.elements)
    branches = tuple(Branch(e.part, e.plus, e.minus, e.name, (e.name,)) for e in elements)
    return Network(elements, couplings, feeds, tuple(drivers), branches, f"random {seed}")


class _Builder:
    def __init__(self, draw: random.Random) -> None:
        self.draw = draw
        self.elements: list[Element] = []

    def add(self, kind: str, plus: str, minus: str) -> None:
        """An element of log-uniform value, either way round."""
        if self.draw.random() < 0.5:
            plus, minus = minus, plus
        low, high = (math.log(end) for end in VALUE_RANGE[kind])
        name = f"{kind}{len(self.elements) + 1}"
        value = math.exp(self.draw.uniform(low, high))
        self.elements.append(Element(name, kind, plus, minus, value, name))

    def capacitor_only_node(self, reached: list[str]) -> None:
        """A new node in the middle of capacitors: it has no direct voltage of its own."""
        node = f"m{len(reached)}"
        for other in self.draw.sample(reached, 2):
            self.add("C", node, other)
        reached.append(node)

    def coil_loop(self, reached: list[str]) -> None:
        """Two ideal coils side by side: a direct current could circle in them for ever."""
        ends = self.draw.sample(reached, 2)
        self.add("L", *ends)
        self.add("L", *ends)

    def series_pair(self, reached: list[str]) -> None:
        """Two loads in series between two nodes, each with a part across it, as in a series crossover."""
        first, last = self.draw.sample(reached, 2)
        middle = f"m{len(reached)}"
        for ends in ((first, middle), (middle, last)):
            self.add("R", *ends)
            self.add(self.draw.choice("LC"), *ends)
        reached.append(middle)

    def load(self, drivers: list[DriverPort]) -> None:
        """A resistance across each driver, most of them with a voice coil's inductance in series."""
        for driver in drivers:
            ends = driver.plus, driver.minus
            if self.draw.random() < 0.6:
                middle = f"{driver.name}.coil"
                self.add("L", middle, driver.minus)
                ends = driver.plus, middle
            self.add("R", *ends)

    def give_resistance(self, coil: str) -> None:
        """Put a resistance in series with a coil: ideal ones with |k| = 1 across two sources are singular."""
        at = next(at for at, element in enumerate(self.elements) if element.name == coil)
        end = f"{coil}.dcr"
        self.add("R", end, self.elements[at].minus)
        self.elements[at] = replace(self.elements[at], minus=end)

    def couplings(self) -> tuple[Coupling, ...]:
        """Couplings that coils in space could have: k of two coils is the cosine between two unit vectors."""
        coils = [element.name for element in self.elements if element.kind == "L"]
        self.draw.shuffle(coils)
        coils = coils[: self.draw.choice((0, 0, 2, 2, 3, 4))]
        if len(coils) == 2 and self.draw.random() < 0.1:
            for coil in coils:
                self.give_resistance(coil)
            return (Coupling("K1", *coils, self.draw.choice((-1.0, 1.0))),)
        vectors = {coil: [self.draw.gauss(0.0, 1.0) for _ in range(4)] for coil in coils}
        pairs = [(a, b) for at, a in enumerate(coils) for b in coils[at + 1 :]]
        return tuple(Coupling(f"K.{a}.{b}", a, b, _cosine(vectors[a], vectors[b])) for a, b in pairs)


def _cosine(a: list[float], b: list[float]) -> float:
    """Shortened a little, so that rounding cannot make the inductance matrix indefinite."""
    return 0.98 * sum(x * y for x, y in zip(a, b, strict=True)) / (math.hypot(*a) * math.hypot(*b))
