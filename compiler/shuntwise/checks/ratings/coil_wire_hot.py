"""A coil with too thin a wire for its current.

What it finds: a coil that turns more than 4 W into heat for every 100 g of its copper, with the programme at the
stated amplifier; that is a current density of 4.5 A/mm2. Common practice (no source) says 2 W with music, and music
has less than half the average power of the clipped programme. `limit coil-wire-hot 3 W / 100 g` sets another bound.
The mass of the copper follows from `wire` and `dcr`. An air coil that does not state its wire is taken at its `mass`,
or else at the copper that the best of all shapes needs for its inductance and resistance. A cored coil that does not
state its wire cannot be checked.

Why it matters: an air coil cools badly, wound layer upon layer. Warm copper has a third more resistance, so the level
drops, and former and ties soften.

Bad:
    amplifier 300 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 400 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 100 W }
    coil L1 0.27 mH { dcr 0.38 ohm, 5 %, air core, wire 0.7 mm }
                                                        ^^^^^^
    capacitor C1 3.9 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

Good:
    amplifier 300 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 400 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 100 W }
    coil L1 0.27 mH { dcr 0.15 ohm, 5 %, air core, wire 1.4 mm }
    capacitor C1 3.9 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: for a single-layer coil in free air, which cools far better.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import pi, sqrt

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import driven_by, named, rated_at, watts
from shuntwise.checks.rule import Bound, Diagnostic, NotChecked, Rule, Severity
from shuntwise.model.design import Part
from shuntwise.model.kinds import INDUCTIVE, KINDS
from shuntwise.stress.copper import BROOKS_H_PER_M, COPPER_KG_PER_M3, COPPER_OHM_M
from shuntwise.units import GRAM, WATT, quotient

FILLED = 0.6
"""The share of a winding's section that is copper (common practice for round enamelled wire, no source)."""


def copper_gram(part: Part) -> float | None:
    """The mass of a coil's copper (g), as well as it is known."""
    wire, dcr = part.get("wire"), part.get("dcr")
    if wire and dcr:  # density x area^2 x resistance / resistivity
        return 1e3 * COPPER_KG_PER_M3 * (pi / 4 * wire**2) ** 2 * dcr / COPPER_OHM_M
    if part.construction != "air core":
        return None
    if "mass" in part.quantities:
        return part.get("mass")
    return brooks_gram(part.value.value, dcr) if part.value is not None and dcr else None


def brooks_gram(henry: float, ohm: float) -> float:
    """The mass of copper (g) of a coil of the shape that needs the least of it.

    That is a Brooks coil, of a square section of side c about a core of radius c. R = 3 pi rho N^2 / (f c) with a
    share f of copper, so L/R gives c.
    """
    c = sqrt(henry / ohm * 3 * pi * COPPER_OHM_M / (1.5 * BROOKS_H_PER_M * FILLED))
    return 1e3 * COPPER_KG_PER_M3 * FILLED * 3 * pi * c**3


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    unknown = []
    for part in evidence.stress.parts(*INDUCTIVE):
        gram = copper_gram(part)
        if gram is None:
            unknown += [part.label] * ("wire" in KINDS[part.kind].attributes)
            continue
        heat = evidence.stress.bears(part.label).heat_w
        if heat <= RULE.limit(evidence) * gram:
            continue
        yield RULE.finding(
            rated_at(evidence, part, "wire"),
            f"`{part.label}` turns {watts(heat)} into heat in {gram:.0f} g of copper",
            label=f"{watts(heat / gram * 100)} for every 100 g",
            why=f"at {driven_by(evidence)}, the copper warm",
            help="wind or buy it with thicker wire",
            subjects=named(evidence, part.label),
        )
    if unknown:
        yield RULE.not_checked("the diameter of the `wire`", *unknown)


RULE = Rule("coil-wire-hot", Severity.WARNING, "stress", check, Bound(0.04, quotient(WATT, GRAM)))
