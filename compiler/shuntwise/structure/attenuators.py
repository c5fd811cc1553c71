"""Resistors in the path to a driver and across it: the pads (attenuators) of a ladder.

In: a `Ladder`. Out: its series resistors, each with what lies around it, and the load that its filter sees.
Refuses to know whether a pad is good.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass

from shuntwise.model.design import Design, Driver, Part
from shuntwise.structure.blocks import Block
from shuntwise.structure.ladders import Ladder, Shunt, Step

GLOWING = 0.5
"""A lamp of more than this share of its hot resistance is one that glows."""


DAMPING = 0.3
"""A resistor below this share of the drivers' impedance, in a row with a capacitor, damps it and makes no Zobel."""


@dataclass(frozen=True)
class SeriesResistor:
    """A resistor in the path of a ladder.

    `shunt_behind` and `shunt_ahead` are resistors across the path at its own two ends. `later_shunts` are all
    shunts on the driver's side of it, `later_steps` all steps there.
    """

    step: Step
    shunt_behind: Shunt | None
    shunt_ahead: Shunt | None
    later_shunts: tuple[Shunt, ...]
    later_steps: tuple[Step, ...]

    @property
    def label(self) -> str:
        return self.step.block.label

    @property
    def shunt_labels(self) -> tuple[str, ...]:
        """The resistors across the path behind it."""
        return self.shunt_behind.block.labels if self.shunt_behind else ()


def series_resistors(ladder: Ladder) -> Iterator[SeriesResistor]:
    """The resistors in the path, from the amplifier on."""
    resistors = ladder.across("R")
    for step in ladder.series("R"):
        behind = next((s for s in resistors if step.far in (s.block.a, s.block.b)), None)
        ahead = next((s for s in resistors if step.near in (s.block.a, s.block.b)), None)
        index = ladder.steps.index(step)
        later = tuple(s for s in ladder.shunts if step in s.ahead)
        yield SeriesResistor(step, behind, ahead, later, ladder.steps[index + 1 :])


def drivers_ohm(design: Design, ladder: Ladder) -> float | None:
    """The nominal impedance of the driver with those beside it and in a row with it (ohm); None if one is unknown."""
    in_path = [step.block for step in ladder.steps if step.block.is_driver]
    apart = [block for block in in_path if not {*block.labels} <= {*ladder.together.labels}]
    found = [_joined(block, lambda name: nominal_ohm(design.drivers, name)) for block in (ladder.together, *apart)]
    known = [impedance for impedance in found if impedance is not None]
    return sum(known) if len(known) == len(found) else None


def voice_coil(design: Design, ladder: Ladder) -> tuple[float, float] | None:
    """Re (ohm) and Le (H) of the driver and those that it is drawn together with, seen as one; None if one is unknown.

    Exact for equal drivers, of which the resistances and the inductances add up in the same way.
    """

    def of(key: str) -> float | None:
        known = {name: design.drivers[name].quantities.get(key) for name in ladder.together.labels}
        return _joined(ladder.together, lambda name: quantity.value if (quantity := known[name]) else None)

    re, le = of("re"), of("le")
    names = {*ladder.together.labels}
    sharing = [d for name in names if (d := design.drivers[name]).other in names]
    if le is not None and sharing and len(names) == 2:  # two coils on one former, which carry the same current
        le *= 1 + sharing[0].coils_k
    return (re, le) if re is not None and le is not None else None


def load_ohm(design: Design, ladder: Ladder) -> float | None:
    """What the filter is loaded with (ohm): the drivers and the pad; None where a value is not known.

    Resistors are gathered from the driver back to the nearest coil or capacitor in its path.
    """
    impedance = drivers_ohm(design, ladder)
    if impedance is None:
        return None
    for count in range(len(ladder.steps), -1, -1):
        for shunt in ladder.across("R"):
            if len(shunt.ahead) == count:
                across = value_of(design, shunt.block)
                if across is None:
                    return None
                impedance = impedance * across / (impedance + across)
        if count == 0 or ladder.steps[count - 1].block.letter not in ("R", "D"):
            break
        block = ladder.steps[count - 1].block
        in_path = value_of(design, block) if block.letter == "R" else 0.0
        if in_path is None:
            return None
        impedance += in_path
    return impedance


def nominal_ohm(drivers: Mapping[str, Driver], name: str) -> float | None:
    """A driver's nominal impedance, or its DC resistance where none is given."""
    driver = drivers[name]
    if driver.nominal is not None:
        return driver.nominal.value
    return driver.quantities["re"].value if "re" in driver.quantities else None


def pad_ohms(ohm: float, ratio: float) -> tuple[float, float]:
    """The resistors in the path and across (ohm) of a pad that keeps a load and divides its voltage by `ratio` > 1.

    R (K - 1) / K and R / (K - 1): the L-attenuator of handbooks.
    """
    return ohm * (ratio - 1) / ratio, ohm / (ratio - 1)


def value_of(design: Design, block: Block) -> float | None:
    """The value of a part, or of several of one kind that make up a value (ohm, H, F); None where one is not known."""

    def of(label: str) -> float | None:
        value = design.parts[label].value
        return value.value if value is not None else None

    return _joined(block, of)


def _joined(block: Block, of: Callable[[str], float | None]) -> float | None:
    """What several of one kind come to, `of` being the value of each; None where one is not known."""
    if block.form == "one":
        return of(block.label)
    values = [_joined(inner, of) for inner in block.inner]
    known = [value for value in values if value is not None]
    if len(known) < len(values):
        return None
    adds = (block.form == "chain") != (block.letter == "C")
    return sum(known) if adds else 1 / sum(1 / value for value in known)


def damped_shunts(design: Design, ladder: Ladder) -> tuple[Shunt, ...]:
    """Rows of a capacitor and a small resistor behind a coil: a filter's capacitor with damping, not a Zobel."""
    nominal = drivers_ohm(design, ladder)
    found = []
    for shunt in ladder.shunts:
        block = shunt.block
        if block.form == "chain" and set(block.letters) == {"C", "R"} and not shunt.at_input and nominal is not None:
            ohms = [value_of(design, inner) or 0.0 for inner in block.inner if inner.letter == "R"]
            if 0.0 not in ohms and sum(ohms) < DAMPING * nominal:
                found.append(shunt)
    return tuple(found)


def glows(design: Design, ladder: Ladder) -> bool:
    """Has a lamp or protector in the path its hot resistance? The leg is shown in overload and has no band to judge."""
    return any(
        _is_hot(design.parts[label]) for step in ladder.steps for _, label in step.block.ones if label in design.parts
    )


def _is_hot(part: Part) -> bool:
    never = float("inf")
    if part.kind == "lamp":
        return part.value is not None and part.value.value > GLOWING * part.get("hot", never)
    return part.kind == "protector" and part.get("cold") > GLOWING * part.get("tripped", never)
