"""What a part is rated for, where that is written, and how the amplifier's signal is told.

In: evidence and a part or driver. Out: places and words for the findings on ratings. It refuses to judge.
"""

from __future__ import annotations

from shuntwise import units as u
from shuntwise.checks.evidence import Evidence
from shuntwise.model.design import Driver, Part
from shuntwise.source import Span

ELECTROLYTIC = ("non-polar electrolytic", "polar electrolytic")
CORED = ("iron core", "ferrite core")
VOLT_STEPS = (35.0, 50.0, 63.0, 100.0, 160.0, 250.0, 400.0, 630.0, 1000.0, 1600.0)
"""Voltages in which capacitors for crossovers are sold: common practice, no source."""

STANDARD_STEPS = (1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.3, 7.0, 8.0, 10.0)


def rated_at(evidence: Evidence, item: Part | Driver, attribute: str = "") -> Span:
    """Where a rating is written (`value`: a part's value), else the part's name. For a part of a used network it is
    the place of that use: the network's own text may serve many designs.
    """
    owner = item.label if isinstance(item, Part) else item.name
    use = evidence.design.instance_spans.get(instance_of(evidence, owner) or "")
    if use is not None:
        return use
    quantity = item.value if attribute == "value" and isinstance(item, Part) else item.quantities.get(attribute)
    return quantity.span if quantity is not None else item.name_span


def named(evidence: Evidence, *owners: str) -> tuple[str, ...]:
    """The subjects of a finding on parts: their labels, and the used networks that they belong to."""
    uses = (instance_of(evidence, owner) for owner in owners)
    return tuple(dict.fromkeys((*owners, *(use for use in uses if use is not None))))


def instance_of(evidence: Evidence, label: str) -> str | None:
    """The outermost used network that a part belongs to."""
    first = label.partition(".")[0]
    return first if first != label and first in evidence.design.instance_spans else None


def driven_by(evidence: Evidence) -> str:
    """The amplifier and its programme in words."""
    signal, amplifier = evidence.stress.signal, evidence.amplifier
    assert amplifier is not None and amplifier.power is not None and amplifier.load is not None
    source = f"{watts(amplifier.power.value)} into {u.write(amplifier.load.value, u.OHM)}"
    if signal.shares is None:
        return f"{source}, a steady sine of {volts(signal.sine_v)} r.m.s. at the worst frequency"
    level = f"{volts(signal.programme_v)} r.m.s. (crest factor {signal.crest:g})"
    return f"{source}, {amplifier.programme} programme of {level}"


def next_rating(least: float) -> float:
    """The next step up in which power resistors and coils are commonly sold."""
    decade = 10.0 ** (len(f"{int(least)}") - 1) if least >= 1 else 0.1
    return next(step * decade for step in STANDARD_STEPS if step * decade >= least * (1 - 1e-9))


def next_volts(least: float) -> float:
    """The next voltage up in which capacitors are commonly sold; beyond the row, the next rating."""
    return next((step for step in VOLT_STEPS if step >= least * (1 - 1e-9)), next_rating(least))


def volts(value: float) -> str:
    return _round(value, u.VOLT)


def amperes(value: float) -> str:
    return _round(value, u.AMPERE)


def watts(value: float) -> str:
    return _round(value, u.WATT)


def ohms(value: float) -> str:
    return _round(value, u.OHM) if value >= 1e-3 else "less than 0.001 ohm"


def hertz(value: float) -> str:
    return u.write(value, u.HERTZ, 2)


def _round(value: float, dimension: u.Dimension) -> str:
    return u.write(value, dimension, 3 if value < 1000 else 4)
