"""Traps: coil and capacitor that take out one frequency, the right way round and the wrong one.

In: a structure. Out: the parts of each trap, its tune and its Q. Refuses to know what a good Q is.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import hypot, pi, sqrt

from shuntwise.graph.circuit import Circuit
from shuntwise.model.design import Design, Driver
from shuntwise.structure.blocks import Block
from shuntwise.structure.ladders import Ladder, Structure

NEAR = 1.3
"""By what factor a row may be off a driver's resonance and still be meant for it: common practice, no source."""


def traps(structure: Structure) -> Iterator[tuple[Block, str]]:
    """Coil and capacitor, with or without a resistor: groups in a path, rows across one; each with its driver."""
    seen: set[tuple[str, ...]] = set()
    for name, ladder in structure.ladders.items():
        if name in structure.dc_paths:
            continue
        blocks = [s.block for s in ladder.steps if s.block.form == "group"]
        blocks += [s.block for s in ladder.shunts if s.block.form == "chain" and not s.at_input]
        for block in blocks:
            if {*block.letters} - {"R"} == {"L", "C"} and all(b.letter for b in block.inner):
                if block.labels not in seen:
                    yield block, name
                seen.add(block.labels)


def trap_q(design: Design, block: Block) -> float | None:
    """The Q of coil, capacitor and resistor by themselves: R sqrt(C/L) side by side, sqrt(L/C) / R in a row.

    The coil's wire counts as well. None where a value is not known.
    """
    coil, cap = design.parts[block.one("L")], design.parts[block.one("C")]
    if coil.value is None or cap.value is None:
        return None
    impedance = sqrt(coil.value.value / cap.value.value)
    resistors = [design.parts[label].value for letter, label in block.ones if letter == "R"]
    if any(resistor is None for resistor in resistors):
        return None
    ohms = [resistor.value for resistor in resistors if resistor]
    wire = coil.get("dcr")
    if block.form == "chain":
        return impedance / max(sum(ohms) + wire, 1e-6)
    admittance = sum(1 / ohm for ohm in ohms) + wire / hypot(wire, impedance) ** 2
    return 1 / max(admittance * impedance, 1e-6)


def tune_hz(design: Design, block: Block) -> float | None:
    """Where coil and capacitor resonate (Hz), 1 / (2 pi sqrt(L C)); None where a value is not known."""
    coil, cap = design.parts[block.one("L")].value, design.parts[block.one("C")].value
    return 1 / (2 * pi * sqrt(coil.value * cap.value)) if coil is not None and cap is not None else None


def evens_resonance(design: Design, block: Block, driver: Driver) -> bool:
    """Is this a row across a driver that is tuned to its resonance? It evens out the impedance, and takes out no peak.

    The exact row has the driver's own Q: L = Qes Re / (2 pi fs), C = 1 / (2 pi fs Qes Re), R = Re (1 + Qes / Qms), the
    dual of the lumped model of the motion (R. H. Small, Direct-radiator loudspeaker system analysis, J. Audio Eng.
    Soc. 20(5), 1972).
    """
    tune, fs = tune_hz(design, block), driver.quantities.get("fs")
    if block.form != "chain" or tune is None or fs is None:
        return False
    return 1 / NEAR <= tune / fs.value <= NEAR


OFF_TUNE = 2.0
"""From what factor on a row is off the resonance that it is made for, if a design sets no limit: an octave."""

LIKE = 1.5
"""By what factor a part may be off the exact row's and still show what the row is made for."""


@dataclass(frozen=True)
class OffTune:
    """The part that takes a row off its driver's resonance, the value that would fit (H or F), and the tune (Hz)."""

    label: str
    wanted: float
    tune_hz: float


def off_tune(design: Design, block: Block, driver: Driver, bound: float = OFF_TUNE) -> OffTune | None:
    """A row of three across a driver of which resistor and coil, or resistor and capacitor, are those of the row that
    evens out its resonance (see `evens_resonance`), while the third takes its tune far off.
    """
    like, tune = like_exact_row(design, block, driver), tune_hz(design, block)
    if like is None or tune is None or "R" not in like or len(like) != 2:
        return None
    fs = driver.quantities["fs"].value
    if 1 / bound <= tune / fs <= bound:
        return None
    off, kept = ("C", "L") if "L" in like else ("L", "C")
    beside = design.parts[block.one(kept)].value
    assert beside is not None
    return OffTune(block.one(off), 1 / ((2 * pi * fs) ** 2 * beside.value), tune)


def like_exact_row(design: Design, block: Block, driver: Driver) -> str | None:
    """The letters of those parts of a row of three that are about those of the row that evens out this driver's
    resonance (see `evens_resonance`), the coil's wire counted with the resistor. None where a value is not known.
    """
    q = driver.quantities
    if block.form != "chain" or block.letters != "CLR" or not {"re", "fs", "qms", "qes"} <= q.keys():
        return None
    re, fs, qms, qes = (q[key].value for key in ("re", "fs", "qms", "qes"))
    exact = {"L": qes * re / (2 * pi * fs), "C": 1 / (2 * pi * fs * qes * re), "R": re * (1 + qes / qms)}
    there = {letter: value.value for letter in "LCR" if (value := design.parts[block.one(letter)].value) is not None}
    if there.keys() != exact.keys():
        return None
    there["R"] += design.parts[block.one("L")].get("dcr")
    return "".join(letter for letter in "LCR" if 1 / LIKE <= there[letter] / exact[letter] <= LIKE)


def traps_across(circuit: Circuit, ladder: Ladder) -> tuple[tuple[str, ...], ...]:
    """Coil, capacitor and any resistor that the author has put side by side, as a group, across this driver.

    Bare they count across a woofer only: across the others the coil is that of a high-pass.
    """
    found = []
    for shunt in ladder.shunts:
        tanks = [inner for inner in shunt.block.inner if inner.form == "group" and inner.letters == "CL"]
        if shunt.block.form == "chain" and not shunt.at_input and tanks:
            found.append(tuple(label for _, label in sorted(shunt.block.ones, key=lambda one: "LCR".find(one[0]))))
    across = [one for shunt in ladder.across("LCR") for one in shunt.block.ones]
    for group in circuit.groups if ladder.role == "woofer" else ():
        ones = [one for one in across if one[1] in group]
        if {"L", "C"} <= {letter for letter, _ in ones}:
            found.append(tuple(label for _, label in sorted(ones, key=lambda one: "LCR".index(one[0]))))
    return tuple(found)


def traps_in_path(ladder: Ladder) -> tuple[tuple[str, ...], ...]:
    """Coil, capacitor and resistor that follow one another in the path, with nothing across it between them.

    In the path to a tweeter they are a trap beside the filter's own capacitor, and the last three that may be one. A
    mid's may be its two filters and a pad.
    """
    if ladder.role == "mid" or (ladder.role == "tweeter" and len(ladder.series("C")) < 2):
        return ()
    found = []
    for index in range(len(ladder.steps) - 2):
        steps = ladder.steps[index : index + 3]
        if sorted(step.block.letter for step in steps) == ["C", "L", "R"] and not any(
            shunt.block.a == steps[i].far for shunt in ladder.shunts for i in (0, 1)
        ):
            found.append(tuple(step.block.labels[-1] for step in steps))
    return tuple(found if ladder.role == "woofer" else found[-1:])
