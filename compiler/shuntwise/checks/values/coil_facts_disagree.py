"""A coil of which the facts cannot belong together.

What it finds: an air coil whose DC resistance is below what any coil of its inductance and wire can have, or above
the bound times as much.

Why it matters: one of the three numbers is wrong, and the level of the woofer and the heat in the coil hang on it.
The least resistance is that of the shape which gives most inductance for a length of wire (H. B. Brooks, Design of
standards of inductance, Bureau of Standards J. Research 7, 1931: a square winding of side c, inner radius c).

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    coil L1 0.82 mH { wire 1 mm, dcr 0.03 ohm, air core }
            ^^^^^^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    coil L1 0.82 mH { wire 1 mm, dcr 0.45 ohm, air core }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: for stranded or foil coils, whose `wire` is no diameter of solid copper.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import pi, sqrt

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.stress.copper import BROOKS_H_PER_M, COPPER_OHM_M

PACKED = pi / sqrt(12)
"""The most of a cross section that round wires can fill."""

LEEWAY = 0.95
"""A stated resistance may be this share of the least: wire and meters are not exact."""


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for part in evidence.design.parts.values():
        quantities = part.quantities
        if part.kind != "coil" or part.value is None or "wire" not in quantities or "dcr" not in quantities:
            continue
        if part.construction not in (None, "air core"):
            continue
        least, stated = least_resistance(part.value.value, quantities["wire"].value), quantities["dcr"].value
        if LEEWAY * least <= stated <= RULE.limit(evidence) * least:
            continue
        side = "less than any" if stated < least else "far more than an"
        yield RULE.finding(
            part.value.span if part.value.span.source is evidence.design.source else evidence.place(part.label),
            f"the facts of `{part.label}` do not agree: {quantities['dcr'].text} is {side} air coil of "
            f"{part.value.text} in {quantities['wire'].text} wire has",
            label=f"at least {units.write(least, units.OHM, 2)} in this wire",
            why="one of inductance, wire and resistance is wrong",
            help="measure the coil again",
            subjects=(part.label,),
        )


def least_resistance(inductance_henry: float, wire_metre: float) -> float:
    """The least DC resistance (ohm, 20 C) of an air coil of this inductance in bare round wire of this diameter.

    A Brooks coil of side c has mean radius 1.5 c and N = PACKED c^2 / (pi d^2 / 4) turns; solved for N.
    """
    area = pi * wire_metre**2 / 4
    side_per_root_turn = sqrt(area / PACKED)
    turns = (inductance_henry / (BROOKS_H_PER_M * 1.5 * side_per_root_turn)) ** 0.4
    length = 2 * pi * 1.5 * side_per_root_turn * turns**1.5
    return float(COPPER_OHM_M * length / area)


RULE = Rule("coil-facts-disagree", Severity.WARNING, "design", check, Bound(3.0, units.PLAIN))
