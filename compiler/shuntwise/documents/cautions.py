"""The cautions of a design: what in it can hurt somebody, by name, then those that hold for every box.

In: a design and its stress. Out: sentences. It refuses to judge a rating; the checks do.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from shuntwise import units as u
from shuntwise.diagnostics.wording import listed
from shuntwise.model.design import Design
from shuntwise.response.measures import Extreme
from shuntwise.stress.stress import Lacking, Stress

GENERAL = (
    "First power-up: at the lowest level, with somebody who can switch off at once, and without anybody near the box.",
    "Sound: 85 dBA for 8 hours a day, half the time for each 3 dB more, 100 dBA for 15 minutes. Wear protectors, start "
    "at the lowest level, nobody at the horn mouth. Low sweeps can wreck tweeters: start above the crossover.",
    "Amplifier outputs: large ones reach volts that shock and currents that burn. Switch off, wait and measure before "
    "you touch; insulate joints and posts. Never drive full power with a driver unplugged.",
    "Capacitors hold charge: let them discharge through a resistor and measure before you touch or solder.",
    "Hot parts: resistors can exceed 200 degrees Celsius at their rating and burn for minutes. Keep them clear of "
    "wadding, glue, ties and wire.",
    "Local codes, licensed practice and the part makers' data come before anything printed here.",
)
"""Short forms; the exposure times are those of the NIOSH criteria for occupational noise, 1998 (from memory)."""

HOT_W = 3.0
"""From so much heat on a part's body is too hot to touch: common practice, no source."""


def cautions(design: Design, stress: Stress | Lacking) -> list[str]:
    """Those of this design first."""
    return [*own(design, stress), *GENERAL]


def own(design: Design, stress: Stress | Lacking) -> Iterator[str]:
    """Those of this design alone."""
    amplifier = design.amplifier
    if amplifier is not None and amplifier.bridged:
        yield (
            "The amplifier is bridged: its minus is live. Never clip it to an earthed lead, the shield of a meter's "
            "cable or the other channel's minus."
        )
    if isinstance(stress, Lacking):
        return
    for one in never_unplugged(design, stress):
        at = f" at {one.feed}" if len(design.feeds) > 1 else ""
        if one.load is None:
            yield f"With {one.driver} unplugged nothing bounds the load{at} from below: never run the box so."
        else:
            ohms = f"{u.write(one.load.ohm, u.OHM, 3)} at {u.write(one.load.freq_hz, u.HERTZ, 3)}"
            yield f"With {one.driver} unplugged the load{at} falls to {ohms}: never run the box so."
    hot = [
        part.label
        for part in stress.parts("resistor", "attenuator", "lamp")
        if stress.bears(part.label).heat_w >= HOT_W
    ]
    if hot:
        yield f"Hot at the amplifier's limit: {listed(hot)}. Wait before you touch, and leave air around."
    guards = [part.label for part in stress.parts("fuse")]
    if guards:
        yield f"Replace {listed(guards)} by the same rating and kind only, never by wire."


@dataclass(frozen=True)
class Unplugged:
    """A driver without which the load at an input is too low, and that load; None where nothing bounds it."""

    feed: str
    driver: str
    load: Extreme | None


def never_unplugged(design: Design, stress: Stress | Lacking) -> Iterator[Unplugged]:
    """The drivers without which the box must not be run: the load is below the amplifier's least, or has no bound."""
    least = design.amplifier.quantities.get("least") if design.amplifier is not None else None
    if isinstance(stress, Lacking):
        return
    for feed in design.feeds:
        for driver, (load, _) in stress.unplugged_loads(feed.name).items():
            if driver in stress.bare:
                yield Unplugged(feed.name, driver, None)
            elif least is not None and load.ohm < least.value:
                yield Unplugged(feed.name, driver, load)
