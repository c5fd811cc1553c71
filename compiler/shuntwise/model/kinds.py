"""The part kinds: what each may carry, in which unit, within which bounds, and what every pass must know of it.

A table, and nothing but: DEVELOPERS.md says how to add a row, and what a new part kind needs beside it.
Bounds are where a value stops being a crossover part at all (a slip of the unit, not of a digit); all
are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property

from shuntwise import units as u


@dataclass(frozen=True)
class Attribute:
    """A value that an item may carry. `low` and `high` bound what is credible, in SI units.

    `others` are further ways to say it, told by their unit. `spoken` is how a part's reading tells of it, `{}` being
    its amount (`{:alone}` where no noun follows, `{:share}` in percent); ratings begin with `rated for`. Without it the
    reading is silent of it. `owner` is what has it, in a finding on a value that no such thing has. `example` is a
    likely value, where those of parts would mislead.
    """

    name: str
    dimension: u.Dimension
    low: float
    high: float
    meaning: str
    signed: bool = False
    spoken: str = ""
    others: tuple[Attribute, ...] = ()
    owner: str = "crossover"
    example: str = ""


def _attribute(name: str, dimension: u.Dimension, low: float, high: float, meaning: str, spoken: str = "") -> Attribute:
    return Attribute(name, dimension, low, high, meaning, spoken=spoken)


TOLERANCE = _attribute("tolerance", u.PLAIN, 1e-5, 0.8, "the tolerance", "{:share} tolerance")
POWER = _attribute("power", u.WATT, 0.01, 1e5, "the power that it is rated for", "rated for {:alone}")
VOLTAGE = _attribute("voltage", u.VOLT, 1, 1e5, "the voltage that it is rated for", "rated for {:alone}")
CURRENT = _attribute("current", u.AMPERE, 0.01, 1e3, "the current that it is rated for", "rated for {:alone}")

BODY = (
    _attribute("length", u.METRE, 1e-3, 5, "body length, of a link the length of its wire"),
    _attribute("width", u.METRE, 1e-3, 1, "body width"),
    _attribute("height", u.METRE, 1e-3, 1, "body height above the board"),
    _attribute("diameter", u.METRE, 1e-3, 1, "body diameter"),
    _attribute("lead", u.METRE, 1e-4, 1e-2, "lead diameter"),
    _attribute("mass", u.GRAM, 1e-2, 1e5, "mass"),
    _attribute("price", u.PLAIN, 1e-4, 1e6, "price of one, in the currency of the builder's own lists"),
)
TEXTS = ("note",)
"""Attributes that carry a quoted text, allowed on everything."""


@dataclass(frozen=True)
class Kind:
    """What a declaration may carry.

    `value` is the attribute that follows the name. `bare` are attributes told by their unit alone.
    `words` maps a phrase to the construction that it names. `files` are keys whose quoted text names a data file
    beside the design.
    """

    word: str
    value: Attribute | None
    bare: tuple[Attribute, ...] = ()
    keyed: tuple[Attribute, ...] = ()
    words: Mapping[str, str] = field(default_factory=dict)
    files: tuple[str, ...] = ()

    @property
    def attributes(self) -> dict[str, Attribute]:
        return {attribute.name: attribute for attribute in (*self.bare, *self.keyed, *BODY)}


@dataclass(frozen=True)
class PartKind(Kind):
    """One kind of part. What has no default must be said of every kind.

    `example` is what may stand behind the word in a sound statement. `letters` are the label letters that the trade
    uses for the kind, and `for_no_node` those that with a number behind are never meant for a node. `block` is the
    letter by which the structure of a leg is recognised: kinds of one letter are taken for each other, and their
    values drawn together, so that a kind of several sections needs one of its own.

    `terminals` in the order in which a walk goes through: first in, second out; further ones are wired by name.
    `sections` are what carries current, by the name that is put behind the label, each from one terminal to another;
    in an inductive part the first is the dotted end. A lone section has no name.

    `toleranced` are the quantities of its ideal elements that its tolerance is of; without them it is that of the
    value. `inductive`: its sections are windings, which fields couple. `passes_dc`: direct current flows through.
    `wire`: it is a piece of wire that may be left out, and no element. `spoken` are ways to read it aloud, of which
    the first is taken that names only what is stated: `{noun}`, and `{value}` or an attribute, with `:alone` where no
    noun follows.

    `asked` are attributes that checks miss where they are not stated, each with an example as it is typed.

    Raises ValueError where terminals and sections do not fit together, or the letter is the driver's.
    """

    example: str = field(kw_only=True)
    letters: tuple[str, ...] = field(kw_only=True)
    for_no_node: tuple[str, ...] = field(default=(), kw_only=True)
    block: str = field(kw_only=True)
    terminals: tuple[str, ...] = field(default=("start", "end"), kw_only=True)
    sections: Mapping[str, tuple[str, str]] = field(default_factory=lambda: {"": ("start", "end")}, kw_only=True)
    toleranced: tuple[str, ...] = field(default=(), kw_only=True)
    inductive: bool = field(default=False, kw_only=True)
    passes_dc: bool = field(default=True, kw_only=True)
    wire: bool = field(default=False, kw_only=True)
    spoken: tuple[str, ...] = field(default=("{value} {noun}",), kw_only=True)
    asked: Mapping[str, str] = field(default_factory=dict, kw_only=True)

    def __post_init__(self) -> None:
        if {end for ends in self.sections.values() for end in ends} != set(self.terminals):
            raise ValueError(f"the sections of the part kind `{self.word}` do not use its terminals, and no others")
        if (len(self.sections) == 1) != ("" in self.sections):
            raise ValueError(f"sections of the part kind `{self.word}` need names if there are several")
        if not any({*self.ends} <= winding for winding in self.windings):
            raise ValueError(f"a walk through the part kind `{self.word}` goes through none of its sections")
        if self.block == "D":
            raise ValueError(f"the letter D in a block is the driver's, not the part kind `{self.word}`'s")

    @property
    def ends(self) -> tuple[str, str]:
        """The two terminals that a walk goes through."""
        return self.terminals[0], self.terminals[1]

    @cached_property
    def windings(self) -> tuple[frozenset[str], ...]:
        """The terminals, those that sections join taken together."""
        joined: list[frozenset[str]] = []
        for ends in self.sections.values():
            met = [winding for winding in joined if not winding.isdisjoint(ends)]
            joined = [winding for winding in joined if winding not in met] + [frozenset(ends).union(*met)]
        return tuple(joined)

    @property
    def couples(self) -> bool:
        """May a `coupling` name it? Only where it says which field is meant."""
        return self.inductive and len(self.sections) == 1

    @property
    def couples_inside(self) -> bool:
        """Do its sections share a field?"""
        return self.inductive and len(self.sections) > 1

    @property
    def varying(self) -> tuple[str, ...]:
        """The quantities of its ideal elements that move with its tolerance."""
        return self.toleranced or ((self.value.name,) if self.value is not None else ())

    @property
    def two_ended(self) -> bool:
        """Are its two terminals all that it has, so that its leads are alike to whoever measures it?"""
        return len(self.terminals) == 2

    @property
    def example_value(self) -> str:
        """The value of the example: `0.82 mH`."""
        return self.example.partition(" {")[0].partition(" ")[2]


_DCR = _attribute("dcr", u.OHM, 1e-4, 1e3, "DC resistance of the winding", "{} DC resistance")
_WIRE = _attribute("wire", u.METRE, 5e-5, 1e-2, "diameter of the wire", "{} wire")
_CORES = {"air core": "air core", "iron core": "iron core", "ferrite core": "ferrite core"}

TIGHT = 0.98
"""Coupling of the two sections of a tapped coil where none is given (common practice, no source)."""

COIL = PartKind(
    "coil",
    _attribute("inductance", u.HENRY, 1e-6, 1, "inductance"),
    bare=(TOLERANCE, CURRENT),
    keyed=(_DCR, _WIRE),
    words=_CORES,
    example="L1 0.82 mH",
    asked={"tolerance": "5 %", "dcr": "dcr 0.3 ohm"},
    letters=("L",),
    for_no_node=("L",),
    block="L",
    inductive=True,
)
TAPPED_COIL = PartKind(
    "tapped coil",
    _attribute("inductance", u.HENRY, 1e-6, 1, "inductance of the whole winding"),
    bare=(TOLERANCE, CURRENT),
    keyed=(
        _DCR,
        _WIRE,
        Attribute(
            "tap",
            u.HENRY,
            1e-7,
            1,
            "inductance from the start to the tap",
            spoken="its tap at {} from its start",
            others=(
                Attribute("tap", u.PLAIN, 0.01, 0.99, "share of the turns from the start to the tap"),
                Attribute("tap", u.DECIBEL, -40, -0.1, "level at the tap, below the whole", signed=True),
            ),
        ),
        _attribute(
            "tap_dcr", u.OHM, 1e-5, 1e3, "DC resistance from the start to the tap", "{} of DC resistance up to the tap"
        ),
        _attribute("k", u.PLAIN, 0.01, 1, "coupling of the two sections", "its sections coupled by {:share}"),
    ),
    words=_CORES,
    example="T1 1.2 mH { tap 0.3 mH }",
    asked={"tolerance": "5 %", "dcr": "dcr 0.3 ohm"},
    letters=("L", "T"),
    for_no_node=("T", "TL"),
    block="T",
    terminals=("start", "end", "tap"),
    sections={"lower": ("start", "tap"), "upper": ("tap", "end")},
    inductive=True,
)
CAPACITOR = PartKind(
    "capacitor",
    _attribute("capacitance", u.FARAD, 1e-10, 0.1, "capacitance"),
    bare=(TOLERANCE, VOLTAGE, CURRENT),
    keyed=(
        _attribute("esr", u.OHM, 1e-5, 100, "series resistance", "{} series resistance"),
        _attribute("ac", u.VOLT, 1, 1e5, "r.m.s. voltage that it is rated for", "rated for {:alone} r.m.s."),
    ),
    words={
        "film": "film",
        "non-polar electrolytic": "non-polar electrolytic",
        "bipolar electrolytic": "non-polar electrolytic",
        "polar electrolytic": "polar electrolytic",
    },
    example="C1 6.8 uF",
    asked={"tolerance": "10 %", "voltage": "250 V"},
    letters=("C",),
    for_no_node=("C",),
    block="C",
    passes_dc=False,
)
RESISTOR = PartKind(
    "resistor",
    _attribute("resistance", u.OHM, 1e-3, 1e6, "resistance"),
    bare=(TOLERANCE, POWER),
    words={
        "wirewound": "wirewound",
        "metal film": "metal film",
        "metal oxide": "metal oxide",
        "carbon film": "carbon film",
    },
    example="R1 3.3 ohm",
    asked={"tolerance": "5 %", "power": "20 W"},
    letters=("R",),
    for_no_node=("R",),
    block="R",
)
LAMP = PartKind(
    "lamp",
    _attribute("resistance", u.OHM, 1e-2, 1e4, "resistance when cold"),
    bare=(TOLERANCE, VOLTAGE, POWER),
    keyed=(_attribute("hot", u.OHM, 1e-2, 1e5, "resistance when it glows"),),
    example="B1 5 ohm { hot 58 ohm }",
    asked={"voltage": "250 V", "power": "20 W"},
    letters=("B", "LA", "LP", "E", "H"),
    block="B",
    spoken=("{noun} of {value:alone} cold and {hot:alone} hot", "{noun} of {value:alone} cold"),
)
_COLD = _attribute("cold", u.OHM, 1e-4, 1e3, "resistance when cold", "{} cold resistance")
FUSE = PartKind(
    "fuse",
    _attribute("rated", u.AMPERE, 0.01, 100, "rated current"),
    bare=(VOLTAGE,),
    keyed=(
        _COLD,
        _attribute("i2t", u.AMPERE2_SECOND, 1e-6, 1e6, "pre-arcing I2t", "an I2t of {}"),
    ),
    words={"quick acting": "quick acting", "time lag": "time lag"},
    example="F1 2.5 A",
    asked={"cold": "cold 0.05 ohm", "voltage": "250 V"},
    letters=("F",),
    for_no_node=("F",),
    block="F",
    toleranced=("cold",),
    spoken=("{noun} of {value:alone}",),
)
PROTECTOR = PartKind(
    "protector",
    _attribute("hold", u.AMPERE, 0.01, 100, "current that it carries without end, in air of 23 C"),
    bare=(VOLTAGE,),
    keyed=(
        _attribute("trip", u.AMPERE, 0.01, 300, "current from which it surely trips, in air of 23 C"),
        _COLD,
        _attribute("tripped", u.OHM, 0.1, 1e6, "resistance when it has tripped", "{} tripped resistance"),
        _attribute(
            "derating",
            u.PLAIN,
            1e-4,
            0.05,
            "share by which both currents fall for each kelvin",
            "{:share} derating per kelvin",
        ),
    ),
    example="F2 0.9 A",
    asked={"trip": "trip 1.8 A", "cold": "cold 0.3 ohm", "tripped": "tripped 60 ohm", "voltage": "60 V"},
    letters=("F", "PT", "RT"),
    block="P",
    toleranced=("cold",),
    spoken=(
        "{noun} that holds {value:alone} and trips at {trip:alone}",
        "{noun} that holds {value:alone}",
    ),
)
ATTENUATOR = PartKind(
    "attenuator",
    _attribute("resistance", u.OHM, 0.5, 1e3, "resistance of the load that it is made for"),
    bare=(TOLERANCE, POWER),
    keyed=(
        Attribute("loss", u.DECIBEL, -60, 60, "loss where it stands", signed=True),
        Attribute("least", u.DECIBEL, 0, 60, "loss at the open end of its range", signed=True),
        Attribute("most", u.DECIBEL, 0.1, 60, "loss at the other end of its range", signed=True),
    ),
    example="A1 8 ohm { loss 3 dB, most 20 dB }",
    asked={"power": "50 W"},
    letters=("A", "P", "R"),
    block="A",
    terminals=("in", "out", "common"),
    sections={"series": ("in", "out"), "shunt": ("out", "common")},
    toleranced=("series", "shunt"),
    spoken=(
        "{noun} of {least} to {most} for {value:alone} set to {loss}",
        "{noun} of up to {most} for {value:alone} set to {loss}",
        "{noun} for {value:alone} set to {loss}",
        "{noun} for {value:alone}",
    ),
)
LINK = PartKind(
    "link",
    None,
    keyed=(_WIRE,),
    example="K1",
    letters=("K", "LK", "J", "W", "B"),
    block="",
    wire=True,
    spoken=("{noun} of {wire} wire", "{noun}"),
)

KINDS: dict[str, PartKind] = {
    kind.word: kind
    for kind in (
        COIL,
        TAPPED_COIL,
        CAPACITOR,
        RESISTOR,
        LAMP,
        FUSE,
        PROTECTOR,
        ATTENUATOR,
        LINK,
    )
}

INDUCTIVE = tuple(kind.word for kind in KINDS.values() if kind.inductive)
"""The kinds that are windings."""

ROLES = ("woofer", "mid", "full_range", "tweeter")
"""What a driver is for, from low to high."""

COILS = ("a", "b")
"""The two voice coils of a driver that has two, behind its name and a dot."""

COIL_COUPLING = 0.9
"""Of the inductances of two voice coils on one former, where none is stated (common practice, no source)."""

PROGRAMME_OVER_NOISE = 2.0
"""The programme power that makers state for a driver, over the power with noise: common practice, no source."""

DRIVER = Kind(
    "driver",
    _attribute("nominal", u.OHM, 0.5, 1e3, "nominal impedance"),
    bare=(POWER,),
    keyed=(
        _attribute("re", u.OHM, 0.1, 1e3, "DC resistance of the voice coil"),
        _attribute("le", u.HENRY, 1e-7, 0.1, "inductance of the voice coil"),
        _attribute("fs", u.HERTZ, 1, 2e4, "resonance frequency"),
        _attribute("qms", u.PLAIN, 0.05, 100, "mechanical Q at resonance"),
        _attribute("qes", u.PLAIN, 0.05, 100, "electrical Q at resonance"),
        _attribute("qts", u.PLAIN, 0.05, 100, "total Q at resonance"),
        _attribute("res", u.OHM, 0.1, 1e4, "motional resistance"),
        _attribute("les", u.HENRY, 1e-6, 10, "motional inductance"),
        _attribute("ces", u.FARAD, 1e-7, 1, "motional capacitance"),
        _attribute("xmax", u.METRE, 1e-5, 0.1, "how far its cone can go to one side"),
        _attribute("mms", u.GRAM, 0.01, 5e3, "moving mass, with its load of air"),
        _attribute("bl", u.TESLA_METRE, 0.1, 100, "force factor Bl"),
        _attribute("coils", u.PLAIN, 0.1, 1000, "number of its voice coils"),
        _attribute("k", u.PLAIN, 0.01, 1, "coupling of the inductances of its two voice coils"),
        _attribute("sensitivity", u.DECIBEL, 40, 130, "level at 1 m for 2.83 V"),
        _attribute("lowest", u.HERTZ, 10, 2e4, "lowest corner that its maker allows"),
        _attribute("slope", u.DECIBEL_PER_OCTAVE, 3, 60, "least slope below that corner"),
        # Factors and exponents of the voice-coil formulas; a factor's unit is ohm s^exponent, so it is a plain number.
        _attribute("semi_k", u.PLAIN, 1e-7, 100, "factor K of the semi-inductance K (j w)^n, in ohm s^n"),
        _attribute("semi_n", u.PLAIN, 0.3, 1, "exponent n of the semi-inductance K (j w)^n"),
        _attribute(
            "r_factor", u.PLAIN, 1e-9, 100, "factor of the coil's resistance r_factor w^r_exponent, in ohm s^r_exponent"
        ),
        _attribute("r_exponent", u.PLAIN, 0.1, 1.5, "exponent of the coil's resistance r_factor w^r_exponent"),
        _attribute(
            "x_factor", u.PLAIN, 1e-9, 100, "factor of the coil's reactance x_factor w^x_exponent, in ohm s^x_exponent"
        ),
        _attribute("x_exponent", u.PLAIN, 0.1, 1.5, "exponent of the coil's reactance x_factor w^x_exponent"),
        _attribute("alpha", u.PLAIN, 0.02, 50, "compliance ratio Vas/Vb of driver and box"),
        _attribute("fb", u.HERTZ, 5, 500, "tuning of a vented box"),
        _attribute("ql", u.PLAIN, 0.5, 200, "leakage Q of a vented box"),
    ),
    words={"noise power": "noise power", "programme power": "programme power"},
    files=("measured",),
)

AMPLIFIER = Kind(
    "amplifier",
    _attribute("power", u.WATT, 0.1, 1e5, "rated power"),
    keyed=(
        _attribute("least", u.OHM, 0.1, 1e3, "least load impedance that it may drive"),
        _attribute("source", u.OHM, 1e-4, 100, "output resistance"),
        _attribute("cable", u.METRE, 0.05, 1000, "length of the cable to the box, one way"),
        _attribute("section", u.METRE2, 5e-8, 1e-3, "section of one of its conductors"),
        _attribute("conductor", u.OHM, 1e-4, 100, "resistance of one of its conductors"),
        _attribute("crest", u.PLAIN, 1, 30, "peak over r.m.s. value of the programme that it plays at its limit"),
        _attribute("marked", u.OHM, 0.5, 1e3, "nominal impedance that the box is marked with"),
        _attribute("boxes", u.PLAIN, 1, 100, "number of such boxes that are linked to it"),
    ),
    words={"bridged": "bridged", "copper clad": "copper-clad aluminium"},
)
PROGRAMMES = ("simulated", "pink", "sine")
"""What may stand behind `programme` on an amplifier; the first is taken where nothing does."""
AMPLIFIER_LOAD = _attribute("load", u.OHM, 0.1, 1e3, "the load at which its power is rated")


def _of_bench(
    name: str, dimension: u.Dimension, low: float, high: float, meaning: str, example: str, zero: bool = False
) -> Attribute:
    return Attribute(name, dimension, low, high, meaning, signed=zero, owner="bench", example=example)


BENCH = Kind(
    "bench",
    None,
    keyed=(
        _of_bench("source", u.VOLT, 0.01, 50, "a generator's voltage", "2 V"),
        _of_bench("series", u.OHM, 0.1, 1e4, "a resistor between generator and box", "10 ohm"),
        _of_bench("dummies", u.OHM, 0.5, 1e3, "a resistor in the place of a driver", "8 ohm"),
        _of_bench("meter", u.PLAIN, 1e-4, 0.3, "a share by which the voltmeter may be off", "2 %"),
        _of_bench("meter_top", u.HERTZ, 50, 1e7, "a frequency up to which the voltmeter is right", "6 kHz"),
        _of_bench("leads", u.OHM, 0, 10, "a resistance of the ohmmeter's leads", "0.2 ohm", zero=True),
    ),
)
"""What stands on the bench where a box is read."""
COUPLING = Attribute("coupling", u.PLAIN, -1, 1, "coupling factor", signed=True)
