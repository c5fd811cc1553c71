"""What can be had of one design: its variants, the positions of its choices, the ends of its attenuators.

In: a design as it stands. Out: names: of a variant (`soft`), of a choice's position (`level.low`), of an end of an
attenuator's range (`A1.most`), and of several of these together, joined by `+`. Refuses to know what they change.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from shuntwise.model.design import Design, Part, Quantity
from shuntwise.model.kinds import ATTENUATOR
from shuntwise.model.part_check import loss_range_db

ENDS = ("least", "most")


def split(name: str | None) -> tuple[str | None, dict[str, str]]:
    """The variant in a name, and what else it chooses: the position of a choice, the end of an attenuator."""
    words = name.split("+") if name else []
    variant = next((word for word in words if "." not in word), None)
    pairs = (word.rpartition(".") for word in words if "." in word)
    return variant, {owner: choice for owner, _, choice in pairs}


def all_names(design: Design) -> tuple[str, ...]:
    """Every name that stands for one thing: variants, positions, ends of attenuators."""
    ends = [f"{label}.{end}" for label in _attenuators(design) for end in ENDS]
    return (*(variant.name for variant in design.variants), *_positions(design), *ends)


def is_known(design: Design, name: str) -> bool:
    """Does the design have this: one variant at most, one position of a choice, one end of an attenuator?"""
    words, known = name.split("+"), all_names(design)
    owners = [word.rpartition(".")[0] for word in words]
    return all(word in known for word in words) and len(set(owners)) == len(owners)


def to_check(design: Design) -> tuple[str, ...]:
    """All that is not the design itself, each choice and attenuator moved by itself, with no variant and with each."""
    here = [f"{choice.name}.{choice.chosen}" for choice in design.choices]
    moved = [*(name for name in _positions(design) if name not in here), *_ends(design)]
    names = list(moved)
    for variant in design.variants:
        names += [variant.name, *(f"{variant.name}+{name}" for name in (*_positions(design), *_ends(design)))]
    return tuple(names)


def in_force(design: Design) -> frozenset[str]:
    """The names that hold in a design, or a variant of it, as it stands."""
    variant, _ = split(design.variant)
    here = {f"{choice.name}.{choice.chosen}" for choice in design.choices}
    here |= {f"{label}.{end}" for label, end in design.knob_ends.items()}
    return frozenset(here | ({variant} if variant else set()))


def at_ends(parts: Mapping[str, Part], ends: Mapping[str, str]) -> dict[str, Part]:
    """The attenuators that are turned to an end, as they are then."""
    turned = {}
    for label, end in ends.items():
        part = parts.get(label)
        if part is None or end not in ENDS or (loss := part.quantities.get("loss")) is None:
            continue
        value = loss_range_db(part)[ENDS.index(end)]
        stated = part.quantities.get(end, Quantity(value, loss.dimension, loss.span, f"{value:g} dB"))
        turned[label] = replace(part, quantities={**part.quantities, "loss": stated})
    return turned


def _positions(design: Design) -> list[str]:
    return [f"{choice.name}.{position.name}" for choice in design.choices for position in choice.positions]


def _ends(design: Design) -> list[str]:
    """The ends of the attenuators that are fitted and stand somewhere else."""
    found = []
    for label, part in _attenuators(design).items():
        if part.fitted and "loss" in part.quantities:
            away = zip(ENDS, loss_range_db(part), strict=True)
            found += [f"{label}.{end}" for end, value in away if value != part.get("loss")]
    return found


def _attenuators(design: Design) -> dict[str, Part]:
    return {label: part for label, part in design.parts.items() if part.kind == ATTENUATOR.word}
