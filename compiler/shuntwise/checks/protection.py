"""What a fuse or protector lets through, and for how long.

In: a part of one of these kinds. Out: the current that it carries without end in hot air, and the one at which it has
surely opened after so many seconds in cold air. It refuses to know what hangs behind it.

The gates are those of IEC 60127-2 (sheets 2 and 3, second-hand, from memory): at 2.75 times its rated current a quick
acting link opens within 2 s, one with a time lag within 10 s; both carry 1.5 times the rated current for an hour. What
a protector holds and trips at falls with the temperature of the air by about 1 % a kelvin, a fuse's by about 0.1 %
(common practice, no source).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from shuntwise.checks.evidence import Evidence
from shuntwise.model.design import Driver, Part
from shuntwise.structure.ladders import Ladder

KINDS = ("fuse", "protector")
GUARDS = (*KINDS, "lamp")

RATED_C = 23.0
HOT_AIR_C, COLD_AIR_C = 40.0, 0.0
"""The air in a box that stands in the sun, and in one that comes from a cold van: common practice, no source."""

FALLS = {"fuse": 0.001, "protector": 0.01}
"""The share by which currents fall for each kelvin, where the part does not say."""

GATE = 2.75
OPEN_WITHIN_S = {"quick acting": 2.0, "time lag": 10.0}
TRIPS_WITHIN_S = 60.0
"""A protector at the current of which its maker says that it trips: common practice, no source."""

BEARS = {2.0: 4.0, 10.0: 2.0, 60.0: 2.0}
"""How many times its rated power a driver bears for so many seconds: common practice, no source. The short-term and
long-term powers of IEC 60268-5, for 1 s and 1 min, are seldom told.
"""


@dataclass(frozen=True)
class Opening:
    """It has opened after `seconds` at `amperes` (r.m.s.)."""

    amperes: float
    seconds: float


def carries_a(part: Part) -> float:
    """The current (A, r.m.s.) that it carries without end in hot air."""
    return _in_air(part, _value(part), HOT_AIR_C)


def opens_at(part: Part) -> Opening | str:
    """Where it has surely opened, in cold air; or what is not stated for it."""
    if part.kind == "protector":
        trip = part.get("trip")
        return Opening(_in_air(part, trip, COLD_AIR_C), TRIPS_WITHIN_S) if trip else "the current at which it trips"
    seconds = OPEN_WITHIN_S.get(part.construction or "")
    if seconds is None:
        return "whether it is `quick acting` or has a `time lag`"
    return Opening(_in_air(part, GATE * _value(part), COLD_AIR_C), seconds)


def guards(evidence: Evidence) -> Iterator[tuple[Part, Ladder]]:
    """Every fuse, protector or lamp that lies in the path to a driver, with the driver's ladder."""
    parts = evidence.design.parts
    for ladder in evidence.structure.ladders.values():
        for step in ladder.steps:
            yield from (
                (parts[one], ladder) for _, one in step.block.ones if one in parts and parts[one].kind in GUARDS
            )


def rated_a(driver: Driver) -> float | None:
    """The current (A, r.m.s.) of a driver's rated power in its nominal impedance."""
    power_w = driver.noise_w
    if power_w is None or driver.nominal is None:
        return None
    return float((power_w / driver.nominal.value) ** 0.5)


def _value(part: Part) -> float:
    assert part.value is not None
    return part.value.value


def _in_air(part: Part, amperes: float, celsius: float) -> float:
    return amperes * (1 - part.get("derating", FALLS[part.kind]) * (celsius - RATED_C))
