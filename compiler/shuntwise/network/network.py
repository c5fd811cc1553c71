"""The circuit as ideal elements: what both the netlist and the solver are made from.

A `Network` is the last value before numbers: every coil, driver and lossy capacitor is already
resistors, inductors, capacitors and couplings between named nodes. It refuses to know what a woofer
is beyond the two nodes that its voltage is read between.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Literal

GROUND = "0"
"""The reference node: the minus pad of every input (amplifiers are taken to share their return)."""

ElementKind = Literal["R", "L", "C"]


@dataclass(frozen=True)
class Element:
    """An ideal element between two nodes. `value` in ohm, henry or farad, finite and above zero.

    `name` is unique in the network, and tells nothing else. `part` is the author's label of the part that it belongs
    to, `quantity` what it stands for in it, such as `inductance` or `dcr`. `copper`: its resistance rises with heat as
    that of copper does. For an inductor `plus` is the dotted end.
    """

    name: str
    kind: ElementKind
    plus: str
    minus: str
    value: float
    part: str
    quantity: str = ""
    copper: bool = False


@dataclass(frozen=True)
class Coupling:
    """Mutual inductance between two inductor elements: M = k sqrt(L1 L2), -1 <= k <= 1."""

    name: str
    first: str
    second: str
    k: float


@dataclass(frozen=True)
class Feed:
    """An ideal voltage source of 1 V (r.m.s., phase 0) from ground to `node`: one per input.

    Where an amplifier has an output resistance, `source` is the element that stands for it, from `node` to the
    amplifier's posts: 1 V is its open-circuit voltage then, and its load is what is seen from the posts.
    """

    name: str
    node: str
    source: str = ""


@dataclass(frozen=True)
class DriverPort:
    """Two nodes that a driver hangs between: its voltage is V(plus) - V(minus)."""

    name: str
    plus: str
    minus: str


@dataclass(frozen=True)
class Branch:
    """A part as a two-terminal branch: the current in it is the current of element `through`, plus to minus.

    `elements` are the names of all elements that model the part. A tapped coil is two branches. `terminals` are the
    part's at `plus` and at `minus`.
    """

    label: str
    plus: str
    minus: str
    through: str
    elements: tuple[str, ...]
    terminals: tuple[str, str] = ("", "")


@dataclass(frozen=True)
class FitReport:
    """How near the elements of one driver come to the impedance that they stand for.

    `stands_for` is what was fitted, in words. The two errors are those of the whole driver at each of `freq_hz`
    (F,), which span the band in which they hold; outside it the elements go on as elements do. `scatter` is
    the noise of a measured table, as a fraction of the magnitude; 0 for a formula.
    """

    driver: str
    stands_for: str
    sections: int
    resonances: int
    freq_hz: tuple[float, ...]
    magnitude_error: tuple[float, ...]
    phase_error_deg: tuple[float, ...]
    scatter: float = 0.0

    @property
    def band_hz(self) -> tuple[float, float]:
        return self.freq_hz[0], self.freq_hz[-1]

    @property
    def worst_magnitude(self) -> tuple[float, float]:
        """The greatest magnitude error as a fraction, unsigned, and its frequency."""
        return max((abs(error), freq) for error, freq in zip(self.magnitude_error, self.freq_hz, strict=True))

    @property
    def worst_phase(self) -> tuple[float, float]:
        """The greatest phase error in degrees, unsigned, and its frequency."""
        return max((abs(error), freq) for error, freq in zip(self.phase_error_deg, self.freq_hz, strict=True))

    @property
    def words(self) -> str:
        """The error, as everybody is told of it."""
        magnitude, phase_deg = self.worst_magnitude[0], self.worst_phase[0]
        return (
            f"the elements of `{self.driver}` miss {self.stands_for} by up to {100 * magnitude:.2g} % "
            f"and {phase_deg:.2g} degrees"
        )

    @property
    def sentence(self) -> str:
        """The same for documents, with no mark about the name."""
        return f"{self.words[0].upper()}{self.words[1:].replace('`', '')}."

    @property
    def plain(self) -> dict[str, object]:
        """The error by names, for machines: the worst of magnitude (a fraction) and phase, where (Hz), in what band."""
        (magnitude, magnitude_hz), (phase_deg, phase_hz) = self.worst_magnitude, self.worst_phase
        return {
            "driver": self.driver,
            "stands_for": self.stands_for,
            "magnitude_error": magnitude,
            "magnitude_hz": magnitude_hz,
            "phase_error_deg": phase_deg,
            "phase_hz": phase_hz,
            "band_hz": self.band_hz,
        }


@dataclass(frozen=True)
class Network:
    """Elements, couplings, feeds and the places where a builder reads results.

    `fits` has one entry for each driver whose elements were fitted to a formula or a table.

    Invariants (kept by `lower`): element names unique; coupling ends are inductors of this network; every
    node has a path of elements to ground; no two feeds on one node and none on ground.
    """

    elements: tuple[Element, ...]
    couplings: tuple[Coupling, ...] = ()
    feeds: tuple[Feed, ...] = ()
    drivers: tuple[DriverPort, ...] = ()
    branches: tuple[Branch, ...] = ()
    title: str = ""
    fits: tuple[FitReport, ...] = ()

    @cached_property
    def nodes(self) -> tuple[str, ...]:
        """All nodes but ground, in order of first mention: feeds first, then elements."""
        seen: dict[str, None] = {feed.node: None for feed in self.feeds}
        for element in self.elements:
            seen.setdefault(element.plus)
            seen.setdefault(element.minus)
        seen.pop(GROUND, None)
        return tuple(seen)

    @cached_property
    def element(self) -> dict[str, Element]:
        return {element.name: element for element in self.elements}

    def source_ohm(self, feed: Feed) -> float:
        """The output resistance of an input's amplifier (ohm)."""
        return self.element[feed.source].value if feed.source else 0.0

    def posts(self, feed: Feed) -> str:
        """The node of the amplifier's plus post."""
        return self.element[feed.source].minus if feed.source else feed.node

    @cached_property
    def branch(self) -> dict[str, Branch]:
        return {branch.label: branch for branch in self.branches}
