"""Boxes that do not match as closely as the design asks.

What it finds: only in a design that sets this limit, and so declares that its boxes must match: part tolerances that
let two boxes differ by more than the limit in 1 pair out of 20. What is compared is each driver's level at its pads,
in its band, and how loud two drivers are against one another where they cross. To first order, every value within
its tolerance being equally likely; drivers are taken to be alike.

Why it matters: two boxes that stand left and right must sound alike. Half a decibel between them moves the image.
(Common practice, no source.)

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.56 mH { 5 % }
    capacitor C1 4.7 uF { 10 % }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }
    limit spread-too-wide 0.5 dB
    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.56 mH { 2 % }
    capacitor C1 4.7 uF { 2 % }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }
    limit spread-too-wide 0.5 dB

When to ignore it: where parts are measured and sorted into pairs before they are fitted.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations
from math import sqrt
from typing import TYPE_CHECKING

import numpy as np

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Label, NotChecked, Rule, Severity
from shuntwise.figures.band import Real
from shuntwise.figures.figure import louder_db

if TYPE_CHECKING:
    from shuntwise.tolerance.draws import VaryingPart

PAIRS = 1.96 * sqrt(2)
"""19 pairs in 20 of normally distributed values differ by less than this times the deviation of one (a sum of many
small contributions is near enough to normal)."""

CROSSING_DB = 12.0
"""Two drivers cross where both are within this of their greatest level; what lies lower is not heard."""


@dataclass(frozen=True)
class Stray:
    """By how much two boxes may differ, in what, at which frequency, and the effect of each part (dB)."""

    decibel: float
    what: str
    freq_hz: float
    drivers: tuple[str, ...]
    effects: Real


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    limit = evidence.design.limits.get(RULE.name)
    if limit is None:
        return
    # Few designs set this limit, so the tolerance analysis is loaded by those alone.
    from shuntwise.tolerance.draws import varying

    parts = varying(evidence.design, evidence.network).parts
    if not parts:
        yield RULE.not_checked("parts that state their tolerance")
        return
    widest = max(_strays(evidence, parts), key=lambda stray: stray.decibel, default=None)
    if widest is None or widest.decibel <= RULE.limit(evidence):
        return
    most = int(np.argmax(np.abs(widest.effects)))
    label, share = parts[most].label, float(widest.effects[most] ** 2 / (widest.effects**2).sum())
    yield RULE.finding(
        limit.span,
        f"two boxes may differ by {widest.decibel:.2g} dB in {widest.what}, "
        f"at {units.write(widest.freq_hz, units.HERTZ, 2)}",
        label="1 pair in 20 differs by more than that",
        why="two boxes side by side must sound alike",
        help=f"take closer parts, `{label}` first, or measure them and sort them into pairs",
        places=(Label(evidence.place(label), f"`{label}` brings in {share * 100:.0f} % of the variance"),),
        subjects=(*widest.drivers, label),
    )


def _strays(evidence: Evidence, parts: tuple[VaryingPart, ...]) -> Iterator[Stray]:
    from shuntwise.tolerance.first_order import level_effects

    figures, solver, drivers = evidence.figures, evidence.solver, evidence.design.drivers
    freq_hz = figures.sweep.freq_hz
    fed = [d.name for d in evidence.network.drivers if figures.sweep.driver_voltage(d.name).any()]
    for name in fed:
        band = figures.band(name)
        inside = freq_hz[(freq_hz >= band.from_hz) & (freq_hz <= band.to_hz)]
        yield _widest(level_effects(solver, parts, name, inside), inside, f"the level of `{name}`", (name,))
    for first, second in combinations(fed, 2):
        loud_db = [figures.levels_db(name).max() - CROSSING_DB for name in (first, second)]
        heard = [
            freq
            for freq in figures.crossings(first, second, louder_db(drivers, first, second))
            if all(figures.level_db(n, freq) > least for n, least in zip((first, second), loud_db, strict=True))
        ]
        if heard:
            what = f"how loud `{first}` is against `{second}` where they cross"
            effects = level_effects(solver, parts, first, heard) - level_effects(solver, parts, second, heard)
            yield _widest(effects, np.array(heard), what, (first, second))


def _widest(effects: Real, freq_hz: Real, what: str, drivers: tuple[str, ...]) -> Stray:
    """At which of some frequencies two boxes may differ most; `effects` are (parts, frequencies)."""
    from shuntwise.tolerance.draws import standard_deviation

    strays = PAIRS * standard_deviation("uniform") * np.sqrt((effects**2).sum(axis=0))
    at = int(strays.argmax())
    return Stray(float(strays[at]), what, float(freq_hz[at]), drivers, effects[:, at])


RULE = Rule("spread-too-wide", Severity.ADVICE, "sound", check, Bound(0.5, units.DECIBEL))
