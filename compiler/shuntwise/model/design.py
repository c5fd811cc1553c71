"""The design: what the author said, names resolved and values typed, in trade terms.

Out of `resolve`, into `connect` and the checks. Every item keeps its `Span`. Refuses to know how things
are joined electrically: it holds walks, not nets.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from shuntwise.model.instruments import USUAL, Instruments
from shuntwise.model.kinds import PROGRAMME_OVER_NOISE, PROGRAMMES
from shuntwise.source import Source, Span
from shuntwise.units import Dimension

if TYPE_CHECKING:
    from shuntwise.model.boards import Board, Layout


@dataclass(frozen=True)
class Quantity:
    """A value in SI units, where it was written, and how the author spelled it."""

    value: float
    dimension: Dimension
    span: Span
    text: str


@dataclass(frozen=True)
class Part:
    """A part on the board. `quantities` by attribute name; `construction` as the kind's table words it.

    `value` is None where the author's value was refused; the part still stands in the wiring. `refused`: some
    attribute could not be read, so that nothing is said of attributes that are missing.
    """

    label: str
    kind: str
    value: Quantity | None
    quantities: Mapping[str, Quantity]
    construction: str | None
    notes: tuple[str, ...]
    fitted: bool
    span: Span
    name_span: Span
    refused: bool = False

    def get(self, attribute: str, default: float = 0.0) -> float:
        quantity = self.quantities.get(attribute)
        return quantity.value if quantity is not None else default


@dataclass(frozen=True)
class ImpedanceTable:
    """A measured impedance: complex ohm at rising frequencies. `name` is that of the file it came from.

    Tables of the same numbers are equal, whatever they are called, so that they are fitted once.
    """

    name: str = field(compare=False)
    freq_hz: tuple[float, ...]
    ohm: tuple[complex, ...]


@dataclass(frozen=True)
class Driver:
    """A driver: nominal impedance, and what is known of its model.

    A `measured` table stands instead of a model from parameters; `measured_span` is where it is named.
    `model_refused` is true where the author described a model that was unsound: the finding has been made.
    `refused`: some attribute could not be read, as in `Part`. `programme_rated`: its power is one with programme.

    Each of two voice coils on one former is a `Driver` of its own, `coil_of` being the name of the whole: what it has
    is what that coil has while the other is open. `other` is the coil wired beside it that shares its motion, of
    which the motional impedance is told; `coils_k` couples the inductances of the two. `stated` is what
    the text says, of the whole driver, where `quantities` are worked out from it.
    """

    name: str
    nominal: Quantity | None
    quantities: Mapping[str, Quantity]
    role: str | None
    notes: tuple[str, ...]
    span: Span
    name_span: Span
    measured: ImpedanceTable | None = None
    measured_span: Span | None = None
    model_refused: bool = False
    refused: bool = False
    programme_rated: bool = False
    coil_of: str | None = None
    other: str | None = None
    coils_k: float = 0.0
    stated: Mapping[str, Quantity] = field(default_factory=dict)

    @property
    def spoken_role(self) -> str:
        """Its role as a sentence has it; empty without one."""
        return (self.role or "").replace("_", "-")

    @property
    def noise_w(self) -> float | None:
        """The power (W) that it is rated for, with noise: a programme power is taken down to it."""
        power = self.quantities.get("power")
        if power is None:
            return None
        return power.value / (PROGRAMME_OVER_NOISE if self.programme_rated else 1)


@dataclass(frozen=True)
class Terminals:
    """A pair of posts, plus and minus; an amplifier feeds it if `fed`. `span` is None for the implied input."""

    name: str
    fed: bool
    span: Span | None


@dataclass(frozen=True)
class Pin:
    """A pin of a connector. `pad` is what it is wired to, such as `input+`; None: nothing in this box."""

    name: str
    pad: str | None
    span: Span


@dataclass(frozen=True)
class Connector:
    """A connector on the box; one `through` another has its pins, which are then those of both.

    `refused`: a pin of it names no pad that there is, so that nothing is said of what it does not carry.
    """

    name: str
    title: str | None
    pins: tuple[Pin, ...]
    through: str | None
    span: Span
    refused: bool = False


@dataclass(frozen=True)
class Cable:
    """The cable from an amplifier to the box. `conductor_ohm` is the resistance of one of its two conductors at 20 C.

    `words` tell it: `10 m of cable, 2.5 mm2 of copper`.
    """

    conductor_ohm: float
    words: str


@dataclass(frozen=True)
class Amplifier:
    """`power` is its rated power into `load`, `programme` a word of the table of kinds: what it plays."""

    power: Quantity | None
    load: Quantity | None
    quantities: Mapping[str, Quantity]
    bridged: bool
    span: Span
    programme: str = PROGRAMMES[0]
    cable: Cable | None = None


@dataclass(frozen=True)
class Coupling:
    """Declared coupling between two coils; signed with respect to their first-walked ends."""

    first: str
    second: str
    k: Quantity | None
    span: Span


# --- wiring


@dataclass(frozen=True)
class NodeStop:
    """A walk touches the point `node` (see `connect` for how points are named)."""

    node: str
    span: Span


@dataclass(frozen=True)
class PartStop:
    """A walk goes through `owner`, in at terminal `into` and out at terminal `out_of`."""

    owner: str
    into: str
    out_of: str
    span: Span


@dataclass(frozen=True)
class ParallelStop:
    """A walk goes through several chains side by side; the author declares them a group."""

    chains: tuple[tuple[Stop, ...], ...]
    span: Span


@dataclass(frozen=True)
class UnknownStop:
    """A station that means nothing; the finding has been made. What it would have joined is in doubt."""

    span: Span


Stop = NodeStop | PartStop | ParallelStop | UnknownStop


def all_stops(stops: Iterable[Stop]) -> Iterator[Stop]:
    """The stops in order, those of chains side by side included."""
    for stop in stops:
        yield stop
        if isinstance(stop, ParallelStop):
            for chain in stop.chains:
                yield from all_stops(chain)


@dataclass(frozen=True)
class Walk:
    """Stops in order. `leg` is the index of its leg in the design, or None inside a network."""

    stops: tuple[Stop, ...]
    leg: int | None
    span: Span


@dataclass(frozen=True)
class Leg:
    drivers: tuple[str, ...]
    span: Span
    name_spans: tuple[Span, ...]


# --- intent


@dataclass(frozen=True)
class Expectation:
    """What must come out. `clauses` by word (at, within, above, below, from, to, is)."""

    quantity: str
    subjects: tuple[str, ...]
    clauses: Mapping[str, Quantity]
    word: str | None
    span: Span


@dataclass(frozen=True)
class Waiver:
    """`allow`: findings of this name on this subject (any, if None) are accepted, for a reason.

    `variants` are those that it is for, by name; without any it holds everywhere.
    """

    finding: str
    subject: str | None
    reason: str
    span: Span
    finding_span: Span
    variants: tuple[str, ...] = ()


@dataclass(frozen=True)
class LimitSetting:
    """`limit`: another bound for the check of this name."""

    finding: str
    quantity: Quantity
    span: Span


@dataclass(frozen=True)
class VariantName:
    name: str
    title: str | None
    span: Span


@dataclass(frozen=True)
class Choice:
    """Positions of which one holds at a time: `chosen` here, the first where nothing says otherwise.

    `contacts` are the parts that its positions fit, each only where its position says so.
    """

    name: str
    title: str | None
    positions: tuple[VariantName, ...]
    chosen: str
    contacts: frozenset[str]
    span: Span


@dataclass(frozen=True)
class Design:
    """One design, or one variant of it.

    `variant` names what it is of all that can be had (`model/variants.py`), `choices` the positions that hold, and
    `knob_ends` the attenuators that stand at one end of their range, `least` or `most`, and not where the text says.
    `instances` maps a used network's name to its ports' points, in order, and `network_of` to the name of its network.
    `values` are the plain numbers that have names: `let`s, and what used networks are given. `doubtful` are words from
    lost text: nothing is said about the absence of what bears such a name. `meant` are names for which a
    station that had to be refused may stand: nothing is said of what they leave open. `lost_wiring` is true when
    a walk could not be read whole; `unread` when a whole file is missing, which may have held anything.
    """

    source: Source
    title: str | None
    amplifier: Amplifier | None
    terminals: tuple[Terminals, ...]
    drivers: Mapping[str, Driver]
    parts: Mapping[str, Part]
    couplings: tuple[Coupling, ...]
    legs: tuple[Leg, ...]
    walks: tuple[Walk, ...]
    testpoints: Mapping[str, Span]
    node_spans: Mapping[str, tuple[Span, ...]]
    expectations: tuple[Expectation, ...]
    waivers: tuple[Waiver, ...]
    limits: Mapping[str, LimitSetting]
    variants: tuple[VariantName, ...]
    variant: str | None
    instances: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    network_of: Mapping[str, str] = field(default_factory=dict)
    instance_spans: Mapping[str, Span] = field(default_factory=dict)
    values: Mapping[str, Quantity] = field(default_factory=dict)
    doubtful: frozenset[str] = frozenset()
    meant: frozenset[str] = frozenset()
    lost_wiring: bool = False
    unread: bool = False
    choices: tuple[Choice, ...] = ()
    connectors: tuple[Connector, ...] = ()
    knob_ends: Mapping[str, str] = field(default_factory=dict)
    boards: Mapping[str, Board] = field(default_factory=dict)
    layouts: tuple[Layout, ...] = ()
    instruments: Instruments = USUAL

    @property
    def variant_title(self) -> str:
        """The titles of the variant and of the positions that `variant` names."""
        titles = {variant.name: variant.title for variant in self.variants}
        titles |= {f"{c.name}.{p.name}": p.title for c in self.choices for p in c.positions}
        named = (self.variant or "").split("+")
        return ", ".join(title for name in named if (title := titles.get(name)))

    @property
    def feeds(self) -> tuple[Terminals, ...]:
        return tuple(terminals for terminals in self.terminals if terminals.fed)
