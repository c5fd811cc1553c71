"""What a part is made of: ideal elements for every kind.

In: a `Part` of the design. Out: a `PartModel`, a row of elements for each section of its kind. It
refuses to know nodes.

A new part kind is one function and one row in `PART_MODELS`. There is no kind that an unknown one is taken for.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from math import sqrt

from shuntwise.model.design import Part
from shuntwise.model.kinds import KINDS, TIGHT
from shuntwise.network.ideal import Ideal
from shuntwise.structure.attenuators import pad_ohms

LEAST_LOSS_DB = 0.01
"""Of an attenuator: 9 milliohm in one of 8 ohm (common practice, no source)."""


@dataclass(frozen=True)
class PartModel:
    """By section, as its kind names it: elements in series, from its first terminal to its second.

    What has the value zero is left out of the row. A quantity is the name of an attribute where it is stated by one.
    `couplings` are pairs of sections and the coupling of their inductors; a section has one inductor at the most.
    """

    sections: Mapping[str, tuple[Ideal, ...]]
    couplings: tuple[tuple[str, str, float], ...] = ()


def part_model(part: Part) -> PartModel:
    """The elements of a part with a sound value. Raises ValueError for a kind that the tables do not agree on."""
    kind, build = KINDS[part.kind], PART_MODELS.get(part.kind)
    if build is None:
        raise ValueError(f"PART_MODELS does not say what the part kind `{kind.word}` is made of")
    model = build(part)
    if model.sections.keys() != kind.sections.keys():
        raise ValueError(f"the model of the part kind `{kind.word}` has other sections than its row in KINDS")
    rows = {section: tuple(ideal for ideal in row if ideal.value != 0) for section, row in model.sections.items()}
    if not all(rows.values()):
        raise ValueError(f"the model of `{part.label}` has a section without elements")
    return replace(model, sections=rows)


def _value(part: Part) -> float:
    assert part.value is not None
    return part.value.value


def _coil(part: Part) -> PartModel:
    dcr = Ideal("R", "dcr", part.get("dcr"), copper=True)
    return PartModel({"": (Ideal("L", "inductance", _value(part)), dcr)})


def _tapped_coil(part: Part) -> PartModel:
    """The sections' inductances from the whole and the tapped one: L = La + Lb + 2 k sqrt(La Lb), series aiding.

    It is solved for sqrt(Lb). Where the resistance at the tap is not given, it goes as the turns.
    """
    whole, tap, k, dcr = _value(part), part.get("tap"), part.get("k", TIGHT), part.get("dcr")
    root = -k * sqrt(tap) + sqrt(whole - tap * (1 - k * k))
    tap_dcr = part.get("tap_dcr", dcr * sqrt(tap / whole))
    return PartModel(
        {
            "lower": (Ideal("L", "inductance", tap), Ideal("R", "dcr", tap_dcr, copper=True)),
            "upper": (Ideal("L", "inductance", root * root), Ideal("R", "dcr", max(dcr - tap_dcr, 0.0), copper=True)),
        },
        (("lower", "upper", k),),
    )


def _capacitor(part: Part) -> PartModel:
    return PartModel({"": (Ideal("C", "capacitance", _value(part)), Ideal("R", "esr", part.get("esr")))})


def _resistor(part: Part) -> PartModel:
    return PartModel({"": (Ideal("R", "resistance", _value(part)),)})


def _fuse(part: Part) -> PartModel:
    """Where no resistance is stated, that of a drop of 0.1 V at the rated current: common practice, no source."""
    return PartModel({"": (Ideal("R", "cold", part.get("cold", 0.1 / _value(part))),)})


def _protector(part: Part) -> PartModel:
    """Where no resistance is stated, that of a drop of 0.25 V at the held current: common practice, no source."""
    return PartModel({"": (Ideal("R", "cold", part.get("cold", 0.25 / _value(part))),)})


def _attenuator(part: Part) -> PartModel:
    """The pad of its loss. A wiper at the open end still has some milliohm, so that the loss is never quite 0."""
    series, shunt = pad_ohms(_value(part), 10 ** (max(part.get("loss"), LEAST_LOSS_DB) / 20))
    return PartModel({"series": (Ideal("R", "series", series),), "shunt": (Ideal("R", "shunt", shunt),)})


PART_MODELS: dict[str, Callable[[Part], PartModel]] = {
    "coil": _coil,
    "tapped coil": _tapped_coil,
    "capacitor": _capacitor,
    "resistor": _resistor,
    "lamp": _resistor,
    "fuse": _fuse,
    "protector": _protector,
    "attenuator": _attenuator,
}
"""By kind; kinds that are wire have none."""
