"""What the verdicts on ratings use: what each part gets at the amplifier's limit, its rating, and what is left.

In: a design and its stress. Out: groups of blocks for the summary and the binder. It refuses to judge: the checks do.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import pi

from shuntwise import units as u
from shuntwise.checks.protection import HOT_AIR_C, carries_a
from shuntwise.checks.protection import KINDS as OPENING
from shuntwise.diagnostics.wording import rounded
from shuntwise.documents.page import Group, Heading, Listing, Paragraph, Table
from shuntwise.graph.circuit import Circuit
from shuntwise.graph.links import beyond
from shuntwise.model.conductors import RESISTIVITY_OHM_M
from shuntwise.model.design import Design, Driver, Part
from shuntwise.model.kinds import KINDS
from shuntwise.stress.stress import Bearing, Lacking, Stress

OPEN_OHM = 1e5
"""From so much on nothing hangs on an amplifier but what leaks."""


@dataclass(frozen=True)
class Margin:
    """One part or driver: what it gets, the rating that it is judged by, and rating over what is compared with it.

    `programme_w` is its heat with the programme, a driver's in its nominal impedance; `sine_w` its heat with the rated
    sine at its worst frequency. `rating` is empty where none is stated, and `margin` None then.
    """

    owner: str
    bearing: Bearing
    programme_w: float
    sine_w: float
    rating: str
    margin: float | None


def margins_of(design: Design, stress: Stress) -> Iterator[Margin]:
    """Drivers first, then parts, those that carry current."""
    for driver in design.drivers.values():
        if driver.name in stress.branches:
            yield _of_driver(stress, driver)
    for part in design.parts.values():
        if part.label in stress.branches:
            yield _of_part(stress, part)


def _of_driver(stress: Stress, driver: Driver) -> Margin:
    bearing, rated_w = stress.bears(driver.name), driver.noise_w
    got_w = stress.nominal_w(driver)
    margin = rated_w / got_w if rated_w is not None and got_w else None
    rating = "" if rated_w is None else u.write(rated_w, u.WATT, 3)
    return Margin(driver.name, bearing, got_w, stress.sine_heat_w(driver.name), rating, margin)


def _of_part(stress: Stress, part: Part) -> Margin:
    bearing = stress.bears(part.label)
    name, got = {
        "resistor": ("power", bearing.heat_w),
        "attenuator": ("power", bearing.heat_w),
        "capacitor": ("voltage", bearing.peak_v),
        "coil": ("current", bearing.peak_a),
        "tapped coil": ("current", bearing.peak_a),
        "lamp": ("voltage", bearing.programme_v),
    }.get(part.kind, ("", 0.0))
    sine_w = stress.sine_heat_w(part.label)
    if part.kind in OPENING and part.value is not None and bearing.programme_a:
        carries = carries_a(part)
        words = f"{u.write(carries, u.AMPERE, 3)} in {HOT_AIR_C:.0f} C"
        return Margin(part.label, bearing, bearing.heat_w, sine_w, words, carries / bearing.programme_a)
    rating = part.quantities.get(name)
    if rating is None or not got:
        return Margin(part.label, bearing, bearing.heat_w, sine_w, "", None)
    written = u.write(rating.value, rating.dimension, 3)
    return Margin(part.label, bearing, bearing.heat_w, sine_w, written, rating.value / got)


@dataclass(frozen=True)
class Wire:
    """A link of stated length and diameter: the programme's current, and the volts and watts that its copper takes."""

    label: str
    words: str
    ampere: float
    volt: float
    watt: float


def wires_of(circuit: Circuit, stress: Stress) -> Iterator[Wire]:
    """The fitted links that state both, and that alone carry what hangs behind them.

    R = resistivity x length / section.
    """
    for part in circuit.fitted_parts:
        length, wire = part.quantities.get("length"), part.quantities.get("wire")
        if not KINDS[part.kind].wire or length is None or wire is None:
            continue
        ends = beyond(circuit, part)
        if ends:
            ohm = RESISTIVITY_OHM_M["copper"] * length.value / (pi / 4 * wire.value**2)
            ampere = stress.programme_current(ends)
            yield Wire(part.label, f"{length.text} of {wire.text}", ampere, ampere * ohm, ampere**2 * ohm)


def margins(design: Design, circuit: Circuit, stress: Stress | Lacking) -> tuple[Group, ...]:
    """The table, hook-up wires, the load with a driver unplugged; one line where it cannot be worked out."""
    if isinstance(stress, Lacking):
        return ((Paragraph(f"What the verdicts on ratings use is not worked out: it needs {stress.lacks}."),),)
    rows = tuple(
        (one.owner, *_numbers(one), one.rating, "" if one.margin is None else rounded(one.margin, 2))
        for one in margins_of(design, stress)
    )
    text = (
        "What the verdicts use, at the amplifier's limit: amperes r.m.s. and watts with the programme (a driver's "
        "in its nominal impedance); watts with the rated sine at the worst frequency, and its volts and amperes at "
        "the peak; copper cold or hot, the worse of the two. Then the rating, and how many times it is what it is "
        "compared with: programme watts of drivers, resistors and attenuators, peak volts of capacitors, peak amperes "
        "of cores, programme amperes of fuses and protectors, programme volts of lamps."
    )
    heads = ("At the limit", "programme A", "W", "sine W", "peak V", "peak A", "rating", "times")
    first: Group = (Paragraph(text), Table(heads, rows))
    return (first, _travels(design, stress), _wires(circuit, stress), _unplugged(design, stress))


def _travels(design: Design, stress: Stress) -> Group:
    """How far cones move, of those drivers whose data tell."""
    rows = []
    for driver in design.drivers.values():
        moves = stress.excursion(driver) if driver.name in stress.branches else None
        xmax = driver.quantities.get("xmax")
        if moves is not None:
            can = (xmax.text, rounded(xmax.value / moves.peak_m, 2)) if xmax is not None else ("", "")
            rows.append((driver.coil_of or driver.name, u.write(moves.peak_m, u.METRE, 2), *can))
    return (Table(("Cones", "to one side", "can go", "times"), tuple(rows)),) if rows else ()


def _wires(circuit: Circuit, stress: Stress) -> Group:
    rows = tuple(
        (w.label, w.words, f"{w.ampere:.3g}", f"{w.volt:.2g}", f"{w.watt:.2g}") for w in wires_of(circuit, stress)
    )
    heads = ("Hook-up wire", "", "programme A", "volts lost", "W")
    return (Table(heads, rows, frozenset({0, 1})),) if rows else ()


def _numbers(one: Margin) -> tuple[str, ...]:
    bearing = one.bearing
    numbers = (bearing.programme_a, one.programme_w, one.sine_w, bearing.peak_v, bearing.peak_a)
    return tuple(rounded(number, 3) for number in numbers)


def _unplugged(design: Design, stress: Stress) -> Group:
    entries = []
    for feed in design.feeds:
        for driver, (least, _) in stress.unplugged_loads(feed.name).items():
            if driver in stress.bare:
                told = "no bound, since nothing with resistance damps what is left"
            elif least.ohm > OPEN_OHM:
                told = "open: nothing is left on the amplifier"
            else:
                told = f"least {u.write(least.ohm, u.OHM, 3)} at {u.write(least.freq_hz, u.HERTZ, 3)}"
            at = f" at {feed.name}" if len(design.feeds) > 1 else ""
            entries.append(f"{driver} off{at}: {told}")
    return (Heading("Load with a driver unplugged"), Listing(tuple(entries), marked=False)) if entries else ()
