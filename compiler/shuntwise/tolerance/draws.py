"""Which values differ from build to build, and by how much.

In: a design and its network. Out: the parts that vary, the parts that do not and why, and random offsets. It
refuses to know what the offsets do to a response.

What varies: the value of every fitted part that states a `tolerance`. Which elements that moves, the part's kind
says; the two sections of a tapped coil are one winding and move together. What is kept as stated: a coil's and a
capacitor's series resistance (a tolerance is that of the inductance or capacitance; of the copper it says nothing),
couplings, and the model of every driver.

An offset is a share of the part's own tolerance, from -1 to 1. `uniform`: every value within the tolerance is equally
likely. `normal`: the tolerance is three standard deviations, and what lies beyond it is drawn again. Which is nearer
to a drawer full of real parts is not known; uniform is the wider of the two, and the default.

Every part has a stream of its own, made from the seed and its label alone (M. E. O'Neill's PCG64 as in numpy). So the
offsets do not depend on the order of the parts, on which other parts vary, or on how many builds are taken at a time,
and the first thousand builds are the same whether a thousand or ten thousand are drawn.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import erf, exp, pi, sqrt
from typing import Literal

import numpy as np
import numpy.typing as npt

from shuntwise.model.design import Design
from shuntwise.model.kinds import KINDS
from shuntwise.network.network import Network

Real = npt.NDArray[np.float64]
Distribution = Literal["uniform", "normal"]

SIGMAS = 3.0
"""The tolerance in standard deviations of the normal distribution."""


@dataclass(frozen=True)
class VaryingPart:
    """A part whose value varies, the network's elements that move with it, and its tolerance as a share."""

    label: str
    elements: tuple[str, ...]
    tolerance: float


@dataclass(frozen=True)
class Varying:
    """The parts that vary, in the order of their labels, and the labels of fitted parts without a tolerance."""

    parts: tuple[VaryingPart, ...]
    exact: tuple[str, ...]


def varying(design: Design, network: Network) -> Varying:
    """What varies in a network; parts that carry no current do not count."""
    values: dict[str, list[str]] = {}
    for element in network.elements:
        owner = design.parts.get(element.part)
        if owner is not None and element.quantity in KINDS[owner.kind].varying:
            values.setdefault(owner.label, []).append(element.name)
    parts, exact = [], []
    for label in sorted(values):
        tolerance = design.parts[label].get("tolerance")
        if tolerance > 0:
            parts.append(VaryingPart(label, tuple(values[label]), tolerance))
        else:
            exact.append(label)
    return Varying(tuple(parts), tuple(exact))


def draw(parts: Sequence[VaryingPart], builds: int, seed: int, distribution: Distribution = "uniform") -> Real:
    """Offsets (parts, builds) as shares of each part's tolerance, -1 to 1. The seed is a whole number from 0."""
    return np.array([_stream(part.label, builds, seed, distribution) for part in parts]).reshape(len(parts), builds)


def _stream(label: str, builds: int, seed: int, distribution: Distribution) -> Real:
    from hashlib import sha256  # loads a crypto library, which the checks can do without

    digest = int.from_bytes(sha256(label.encode("utf-8")).digest()[:16], "big")
    generator = np.random.Generator(np.random.PCG64(np.random.SeedSequence([seed, digest])))
    if distribution == "uniform":
        return generator.uniform(-1.0, 1.0, builds)
    # Those beyond the tolerance are dropped from the stream, so that a longer run begins as a shorter one does.
    kept = np.empty(0)
    while kept.size < builds:
        more = generator.standard_normal(1024 + builds // 64 if kept.size else builds + 64) / SIGMAS
        kept = np.concatenate((kept, more[np.abs(more) <= 1]))
    return kept[:builds]


def standard_deviation(distribution: Distribution) -> float:
    """Of one offset. Uniform from -1 to 1: 1/sqrt(3). Normal of sigma 1/SIGMAS, cut off at 1: a little under sigma."""
    if distribution == "uniform":
        return 1 / sqrt(3)
    density = exp(-(SIGMAS**2) / 2) / sqrt(2 * pi)
    return sqrt(1 - 2 * SIGMAS * density / erf(SIGMAS / sqrt(2))) / SIGMAS


def element_values(network: Network, parts: Sequence[VaryingPart], offsets: Real) -> Mapping[str, Real]:
    """The element values (builds,) that offsets (parts, builds) stand for."""
    return {
        name: network.element[name].value * (1 + part.tolerance * offset)
        for part, offset in zip(parts, offsets, strict=True)
        for name in part.elements
    }
