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

from collections.abc import Iterator
from dataclasses import dataclass
from math import inf, isinf, isnan

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, NotChecked, Rule, Severity
from shuntwise.diagnostics.wording import quoted
from shuntwise.figures.expected import Wanted, proofs
from shuntwise.figures.figure import Corner, Crossing, Figure, Impedance, Level, Slope, search_hz
from shuntwise.model.design import Expectation


@dataclass(frozen=True)
class Unmet:
    """What came out instead, as a headline, and what to do about it."""

    headline: str
    help: str = ""


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    inputs = [feed.name for feed in evidence.network.feeds]
    fed = {driver.name for driver in evidence.network.drivers} | {*inputs}
    wanted = {proof.expectation.span: proof.wanted for proof in proofs(evidence.design, inputs)}
    drivers = evidence.design.drivers
    for expectation in evidence.design.expectations:
        lost = [name for name in expectation.subjects if name not in fed]
        if expectation.quantity == "polarity":
            if not evidence.traceable:
                yield RULE.not_checked("a circuit of fewer parts", *expectation.subjects)
                continue
            lost += [name for name in expectation.subjects if name in evidence.structure.unfed]
        refused = [name for name in expectation.subjects if name in drivers and drivers[name].refused]
        if refused:
            yield RULE.not_checked(f"all figures of `{refused[0]}`", *refused)
            continue
        if lost:
            yield RULE.not_checked(f"a way in which an input feeds `{lost[0]}`", *lost)
            continue
        if expectation.quantity == "polarity":
            unmet = _polarity(evidence, expectation)
        else:
            unmet = next(filter(None, (_off(evidence, expectation, one) for one in wanted[expectation.span])), None)
        if unmet is not None:
            yield RULE.finding(
                expectation.span,
                unmet.headline,
                label="not met",
                why="this line states what the box is made for",
                help=unmet.help or "look for a part, a value or a lead that is not what it should be",
                subjects=expectation.subjects,
            )


def _off(evidence: Evidence, expectation: Expectation, wanted: Wanted) -> Unmet | None:
    real = wanted.figure.nominal(evidence.figures)
    if wanted.met(real):
        return None
    said, asked = _said(evidence, wanted.figure, real), _asked(expectation, wanted)
    return Unmet(said if isnan(real) else f"{said}, not {asked}")


def _said(evidence: Evidence, figure: Figure, real: float) -> str:
    """What came out, as a sentence."""
    match figure:
        case Crossing(subjects=(first, second), near_hz=near):
            low, high = map(_hertz, search_hz(near))
            if isnan(real):
                return f"`{first}` and `{second}` do not cross at all between {low} and {high}"
            return f"`{first}` and `{second}` cross at {_hertz(real)}"
        case Corner(subjects=(name,), near_hz=near):
            low, high = map(_hertz, search_hz(near))
            if isnan(real):
                return f"`{name}` has no corner between {low} and {high}"
            return f"the corner of `{name}` is at {_hertz(real)}"
        case Level(subjects=(name,), at_hz=at_hz):
            return f"the level of `{name}` is {_decibel(real)} at {_hertz(at_hz)}"
        case Slope(subjects=(name,), from_hz=low_hz, to_hz=high_hz):
            span = f"from {_hertz(low_hz)} to {_hertz(high_hz)}"
            return f"the level of `{name}` changes by {real:.3g} dB/octave {span}"
        case Impedance(subjects=(name,)):
            where = f" at `{name}`" if len(evidence.network.feeds) > 1 else ""
            ohms = "without bound" if isinf(real) else units.write(real, units.OHM, 3)
            return f"the impedance{where} is {ohms} at {_hertz(figure.place(evidence.figures).freq_hz)}"
    raise AssertionError(figure)


def _asked(expectation: Expectation, wanted: Wanted) -> str:
    """What the line asks for."""
    clauses = expectation.clauses
    if wanted.high == inf and "above" in clauses:
        return f"above {clauses['above'].text}"
    if "below" in clauses and wanted.low in (0.0, -inf):
        return f"below {clauses['below'].text}"
    middle = clauses["at"] if isinstance(wanted.figure, Crossing | Corner) else clauses["is"]
    how = {Crossing: "at ", Corner: "at ", Slope: "by "}.get(type(wanted.figure), "")
    return f"{how}{middle.text} within {clauses['within'].text}"


WAYS = {
    "same": "the same way round",
    "opposite": "opposite ways round",
    "reversed": "reversed",
    "normal": "the normal way round",
}
"""What `Structure.polarity` says, in a sentence."""


def _polarity(evidence: Evidence, expectation: Expectation) -> Unmet | None:
    real = evidence.structure.polarity(expectation.subjects)
    if real == expectation.word:
        return None
    names = quoted(expectation.subjects)
    verb = "are" if len(expectation.subjects) == 2 else "is"
    wanted = WAYS[expectation.word or real]
    return Unmet(f"{names} {verb} {WAYS[real]}, not {wanted}", "turn the leads of a driver round")


def _hertz(freq_hz: float) -> str:
    return units.write(freq_hz, units.HERTZ, 3)


def _decibel(level_db: float) -> str:
    return f"{level_db:.3g} dB"


RULE = Rule("expectation-unmet", Severity.ERROR, "sound", check)
