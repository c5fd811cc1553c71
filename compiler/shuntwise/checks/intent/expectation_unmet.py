"""An `expect` line that the design does not meet.

What it finds: by solving, an `expect` line whose number does not come out. Crossings are those of the levels at the
drivers' pads, with the sensitivities added where both drivers state theirs. A corner is 3 dB below the level that
most of the driver's band has, or as far below as the line says. Levels are dB re the input. A driver is reversed if
its minus pad is nearer to the input's plus with every part replaced by 1 ohm.

Why it matters: `expect` lines are what the box is made for. A part that slipped shows here first.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }
    expect crossing of woofer and tweeter at 5 kHz within 5 %
    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }
    expect crossing of woofer and tweeter at 3 kHz within 20 %

When to ignore it: never; change the line if the box is to do something else.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from math import log

import numpy as np

from shuntwise import units
from shuntwise.checks.bands import band, sensitivity_difference
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, NotChecked, Rule, Severity
from shuntwise.model.design import Expectation
from shuntwise.response import measures

LOWEST_HZ, HIGHEST_HZ = 20.0, 20e3
"""The band in which an expectation holds that states none."""


@dataclass(frozen=True)
class Unmet:
    """What came out instead, as a headline, and what to do about it."""

    headline: str
    help: str = ""


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    fed = {driver.name for driver in evidence.network.drivers} | {feed.name for feed in evidence.network.feeds}
    for expectation in evidence.design.expectations:
        lost = [name for name in expectation.subjects if name not in fed]
        if expectation.quantity == "polarity":
            if not evidence.traceable:
                yield RULE.not_checked("a circuit of fewer parts", *expectation.subjects)
                continue
            lost += [name for name in expectation.subjects if name in evidence.structure.unfed]
        if lost:
            yield RULE.not_checked(f"a way in which an input feeds `{lost[0]}`", *lost)
            continue
        unmet = PROOFS[expectation.quantity](evidence, expectation)
        if unmet is not None:
            yield RULE.finding(
                expectation.span,
                unmet.headline,
                label="not met",
                why="this line states what the box is made for",
                help=unmet.help or "look for a part, a value or a lead that is not what it should be",
                subjects=expectation.subjects,
            )


def _crossing(evidence: Evidence, expectation: Expectation) -> Unmet | None:
    first, second = expectation.subjects
    at, within = expectation.clauses["at"].value, expectation.clauses["within"].value
    drivers = evidence.design.drivers
    louder = sensitivity_difference(drivers[first], drivers[second]) or 0.0
    low, high = min(LOWEST_HZ, at / 2), max(HIGHEST_HZ, at * 2)
    found = [c.freq_hz for c in measures.crossings(evidence.solver, first, second, low, high, louder)]
    real = _nearest(found, at)
    if real is None:
        return Unmet(f"`{first}` and `{second}` do not cross at all between {_hertz(low)} and {_hertz(high)}")
    if abs(real / at - 1) <= within:
        return None
    return Unmet(f"`{first}` and `{second}` cross at {_hertz(real)}, not at {_hertz(at)} {_within(expectation)}")


def _corner(evidence: Evidence, expectation: Expectation) -> Unmet | None:
    (name,) = expectation.subjects
    at, within = expectation.clauses["at"].value, expectation.clauses["within"].value
    below = abs(expectation.clauses["is"].value) if "is" in expectation.clauses else 3.0
    reference = band(evidence.sweep, name).reference_db
    low, high = min(LOWEST_HZ, at / 2), max(HIGHEST_HZ, at * 2)
    real = _nearest(measures.corners(evidence.solver, name, below, low, high, reference), at)
    if real is None:
        return Unmet(f"`{name}` has no corner between {_hertz(low)} and {_hertz(high)}")
    if abs(real / at - 1) <= within:
        return None
    return Unmet(f"the corner of `{name}` is at {_hertz(real)}, not at {_hertz(at)} {_within(expectation)}")


def _impedance(evidence: Evidence, expectation: Expectation) -> Unmet | None:
    clauses = expectation.clauses
    low = clauses["from"].value if "from" in clauses else LOWEST_HZ
    high = clauses["to"].value if "to" in clauses else HIGHEST_HZ
    for name in expectation.subjects or tuple(feed.name for feed in evidence.network.feeds):
        if "above" in clauses:
            least = measures.least_impedance(evidence.solver, name, low, high)
            if least.ohm < clauses["above"].value:
                wanted = f"above {clauses['above'].text}"
                return Unmet(_impedance_text(evidence, name, least.ohm, least.freq_hz, wanted))
        if "below" in clauses:
            freq = measures.grid(low, high)
            admittance = np.abs(evidence.solver.solve(freq).admittance(name))
            at = int(np.argmin(admittance))
            greatest = 1 / max(float(admittance[at]), 1e-12)
            if greatest > clauses["below"].value:
                wanted = f"below {clauses['below'].text}"
                return Unmet(_impedance_text(evidence, name, greatest, float(freq[at]), wanted))
    return None


def _impedance_text(evidence: Evidence, name: str, ohm: float, freq_hz: float, wanted: str) -> str:
    where = f" at `{name}`" if len(evidence.network.feeds) > 1 else ""
    return f"the impedance{where} is {units.write(ohm, units.OHM, 3)} at {_hertz(freq_hz)}, not {wanted}"


def _level(evidence: Evidence, expectation: Expectation) -> Unmet | None:
    (name,) = expectation.subjects
    clauses = expectation.clauses
    at = clauses["at"].value
    real = measures.level_db(evidence.solver, name, at)
    said = f"the level of `{name}` is {_decibel(real)} at {_hertz(at)}"
    if "is" in clauses and not abs(real - clauses["is"].value) <= clauses["within"].value:
        return Unmet(f"{said}, not {_decibel(clauses['is'].value)} {_within(expectation)}")
    if "above" in clauses and not real > clauses["above"].value:
        return Unmet(f"{said}, not above {_decibel(clauses['above'].value)}")
    if "below" in clauses and not real < clauses["below"].value:
        return Unmet(f"{said}, not below {_decibel(clauses['below'].value)}")
    return None


def _slope(evidence: Evidence, expectation: Expectation) -> Unmet | None:
    (name,) = expectation.subjects
    clauses = expectation.clauses
    low, high, wanted = clauses["from"].value, clauses["to"].value, clauses["is"].value
    real = measures.slope_db_per_octave(evidence.solver, name, low, high)
    if abs(real - wanted) <= clauses["within"].value:
        return None
    return Unmet(
        f"the level of `{name}` changes by {real:.3g} dB/octave from {_hertz(low)} to {_hertz(high)}, "
        f"not by {wanted:.3g} dB/octave {_within(expectation)}"
    )


def _polarity(evidence: Evidence, expectation: Expectation) -> Unmet | None:
    turned = [evidence.structure.ladders[name].turned for name in expectation.subjects]
    names = " and ".join(f"`{name}`" for name in expectation.subjects)
    if len(turned) == 2:
        real = "same" if turned[0] == turned[1] else "opposite"
        words = {"same": "the same way round", "opposite": "opposite ways round"}
    else:
        real = "reversed" if turned[0] else "normal"
        words = {"reversed": "reversed", "normal": "the normal way round"}
    if real == expectation.word:
        return None
    verb = "are" if len(turned) == 2 else "is"
    wanted = words[expectation.word or real]
    return Unmet(f"{names} {verb} {words[real]}, not {wanted}", "turn the leads of a driver round")


PROOFS: dict[str, Callable[[Evidence, Expectation], Unmet | None]] = {
    "crossing": _crossing,
    "corner": _corner,
    "impedance": _impedance,
    "level": _level,
    "slope": _slope,
    "polarity": _polarity,
}


def _nearest(found: list[float] | tuple[float, ...], at: float) -> float | None:
    return min(found, key=lambda freq: abs(log(freq / at)), default=None)


def _hertz(freq_hz: float) -> str:
    return units.write(freq_hz, units.HERTZ, 3)


def _decibel(level_db: float) -> str:
    return f"{level_db:.3g} dB"


def _within(expectation: Expectation) -> str:
    return f"within {expectation.clauses['within'].text}"


RULE = Rule("expectation-unmet", Severity.ERROR, "sound", check)
