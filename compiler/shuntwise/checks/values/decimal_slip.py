"""A value that is off by a power of ten.

What it finds: a value outside the window in which crossover parts lie (a capacitor in the path to a driver 1 to 100 uF,
any other 0.1 to 470 uF, a coil 0.05 to 15 mH, a resistor 0.3 to 100 ohm: common practice, no source); and a part
of a filter that speaks of a corner further from what the other parts of its crossover speak of than the bound
(a factor), where ten times more or less brings it close.

Why it matters: 0.56 for 5.6 is one dot, and the board shows nothing of it.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    capacitor C2 6.8 uF
    coil L2 8.2 mH
            ^^^^^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter-
      tweeter- -- L2 -- tweeter+
      tweeter+ -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    capacitor C2 6.8 uF
    coil L2 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter-
      tweeter- -- L2 -- tweeter+
      tweeter+ -- return
    }

When to ignore it: for an unusual value that is meant.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import log10

from shuntwise import units
from shuntwise.checks.crossovers import Estimate, estimates, middle_hz
from shuntwise.checks.rule import Bound, Confidence, Diagnostic, Evidence, Rule, Severity
from shuntwise.checks.structure import Structure
from shuntwise.model.design import Part
from shuntwise.model.findings import replace

WINDOWS = {
    "series capacitor": (1e-6, 100e-6),
    "capacitor": (0.1e-6, 470e-6),
    "coil": (0.05e-3, 15e-3),
    "resistor": (0.3, 100.0),
}
"""Where values lie (F, H, ohm): common practice, no source."""

BLEEDER_OHM = 1e3
"""From here on a resistor side by side with a capacitor is there to discharge it, not to shape anything."""

MERE_LEAK_OHM = 4.7e3
"""From here on a resistor shapes nothing, wherever it is."""


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for label, (factor, why) in _slips(evidence).items():
        yield _finding(evidence, evidence.design.parts[label], factor, why)


def slipped(evidence: Evidence) -> frozenset[str]:
    """The parts of which the value looks off by a power of ten: what comes of them is no second finding."""
    return frozenset(_slips(evidence))


def _slips(evidence: Evidence) -> dict[str, tuple[float, str]]:
    """For each such part the power of ten that mends it, and how it shows."""
    slips = {label: (factor, "no usual value for its place") for label, factor in _outside(evidence)}
    for estimate, middle in _far_off(evidence, set(slips)):
        factor = 10.0 ** round(log10(estimate.freq_hz / middle))
        shown = units.write(estimate.freq_hz, units.HERTZ, 2), units.write(middle, units.HERTZ, 2)
        slips[estimate.label] = factor, f"fits a corner at {shown[0]}, and the rest one at {shown[1]}"
    return slips


def _outside(evidence: Evidence) -> Iterator[tuple[str, float]]:
    """Parts outside their window, with the power of ten that would bring them inside."""
    in_path = series_capacitors(evidence.structure)
    for part in evidence.design.parts.values():
        if not part.fitted or part.value is None:
            continue
        window = WINDOWS.get("series capacitor" if part.label in in_path else part.kind)
        if window is None or _leaks(part) or bleeds(evidence, part):
            continue
        low, high = window
        factor = 1.0
        while part.value.value * factor < low and factor < 1e12:
            factor *= 10
        while part.value.value * factor > high and factor > 1e-12:
            factor /= 10
        if factor != 1:
            yield part.label, factor


def series_capacitors(structure: Structure) -> set[str]:
    return {step.block.label for ladder in structure.of_role("tweeter", "mid") for step in ladder.series("C")}


def _leaks(part: Part) -> bool:
    return part.kind == "resistor" and part.value is not None and part.value.value >= MERE_LEAK_OHM


def bleeds(evidence: Evidence, part: Part) -> bool:
    """Is this a resistor that discharges a capacitor beside it?"""
    if part.kind != "resistor" or part.value is None or part.value.value < BLEEDER_OHM:
        return False
    ends = {evidence.circuit.net_of[f"{part.label}.start"], evidence.circuit.net_of[f"{part.label}.end"]}
    return any(
        {edge.plus, edge.minus} == ends
        for edge in evidence.circuit.edges.values()
        if edge.kind == "part" and evidence.design.parts[edge.owner].kind == "capacitor"
    )


def _far_off(evidence: Evidence, told: set[str]) -> Iterator[tuple[Estimate, float]]:
    design, bound = evidence.design, evidence.bound(RULE)
    for lower, upper in evidence.structure.neighbours():
        if lower.labels & upper.labels:
            continue  # a part of both legs belongs to no one crossover
        found = (*estimates(design, lower, False), *estimates(design, upper, True))
        if len(found) < 3 or told & {estimate.label for estimate in found}:
            continue
        middle = middle_hz(found)
        worst = max(found, key=lambda estimate: abs(log10(estimate.freq_hz / middle)))
        off = abs(log10(worst.freq_hz / middle))
        if off > log10(bound) and abs(off - round(off)) < off / 2:
            yield worst, middle


def _finding(evidence: Evidence, part: Part, factor: float, label: str) -> Diagnostic:
    assert part.value is not None
    corrected = units.write(part.value.value * factor, part.value.dimension)
    plain = part.value.span.text == part.value.text
    return RULE.finding(
        part.value.span if part.value.span.source is evidence.design.source else evidence.place(part.label),
        f"the value of `{part.label}` looks off by a power of ten: {part.value.text}",
        label=label,
        why="a dot in the wrong place does not show on the board, only in the sound",
        help=f"look at the part; `{corrected}` would fit",
        fixes=(replace(part.value.span, corrected, Confidence.NEEDS_REVIEW),) if plain else (),
        subjects=(part.label,),
    )


RULE = Rule("decimal-slip", Severity.WARNING, "settled", check, Bound(4.5, units.PLAIN))
