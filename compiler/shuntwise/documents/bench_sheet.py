"""The check sheet of a board on the bench: readings by set-up with their windows, what else to try, and cautions.

In: a circuit, its bench and its crossings. Out: groups of blocks, which text, paper and screen have alike. Refuses to
work out a reading, and to judge one.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from shuntwise import units as u
from shuntwise.bench.verdict import BenchSheet, SheetLine
from shuntwise.diagnostics.wording import listed, percent
from shuntwise.documents.bench_setup import set_up_picture
from shuntwise.documents.bench_words import DIGITS, at, by_set_up, connect, expected, heading, ohmmeter, window
from shuntwise.documents.page import Group, Heading, Listing, Paragraph, Table
from shuntwise.documents.pins import ways_in
from shuntwise.graph.circuit import Circuit
from shuntwise.model.design import Design, Driver
from shuntwise.model.instruments import Instruments
from shuntwise.structure.reach import turned_round

MARGIN_W = 2.0
"""A resistor on the bench is rated for so many times the heat that it may get (common practice, no source)."""

WOOFER_FS_HZ = 120.0
"""A driver without a role that resonates below this stands a short pop of 1.5 V (common practice, no source)."""

CHECKED_HZ = 100.0
"""At which every AC voltmeter is right (common practice, no source)."""

DIVIDER_OHM = 1000.0
"""Of each resistor by which the voltmeter is checked: much for a generator, little for a meter (common practice)."""

PREFERRED_W = (0.5, 1.0, 2.0, 5.0, 10.0, 17.0, 25.0, 50.0, 100.0, 200.0)
"""In which ratings resistors are sold (common practice, no source)."""


def content(circuit: Circuit, bench: Instruments, sheet: BenchSheet, *, drawn: bool = True) -> Iterator[Group]:
    """The whole sheet. `sheet` must be of this circuit and of these instruments; a text needs no picture `drawn`."""
    yield _filled_in()
    yield (Listing(cautions(circuit.design, sheet, bench)),)
    yield (set_up_picture(circuit, bench),) if drawn else ()
    yield _meter_check(sheet, bench)
    if pins := ways_in(circuit):
        yield (Heading("Where the posts are"), Listing(tuple(pins)))
    number = 1
    for set_up, lines in by_set_up(sheet.lines):
        told = Paragraph(connect(set_up, circuit, bench))
        yield (Heading(heading(set_up, circuit)), told, readings(lines, number))
        number += len(lines)
    yield (Heading("Then"), Listing(tuple(_then(circuit))))
    yield (Heading("About the windows"), Paragraph(_about(circuit.design, sheet, bench)))


def _filled_in() -> Group:
    fields = ("Box", "", "Name", "", "Date", "", "Meter", "")
    return (Table((), (fields,), frozenset(range(8)), frozenset({1, 3, 5, 7})),)


def readings(lines: tuple[SheetLine, ...], number: int = 1) -> Table:
    """Readings of one set-up with their windows, counted from `number` on, each with room to write in."""
    rows = tuple(
        (str(place), at(line.reading), expected(line), *window(line), "") for place, line in enumerate(lines, number)
    )
    return Table(
        ("number", lines[0].reading.quantity, "expected", "low", "high", "read"),
        rows,
        frozenset({0, 1, 5}),
        frozenset({5}),
    )


def cautions(design: Design, sheet: BenchSheet, bench: Instruments) -> tuple[str, ...]:
    """What can hurt somebody, a driver or a reading: many generators have 50 ohm (common practice, no source)."""
    series, short = _ohm(bench.series_ohm), u.write(sheet.fault_a, u.AMPERE, DIGITS)
    amplifiers = "amplifiers are" if len(design.feeds) > 1 else "amplifier is"
    tender = "a tweeter, and no ear at a horn's mouth" if _has_tweeter(design) else "a driver, and no ear close to it"
    return (
        f"Only the generator feeds the box, at {_volts(bench.source_v)}; one with 50 ohm of its own, as is usual, "
        f"needs a small amplifier behind it. The box's own {amplifiers} unplugged. Switch off before any lead is "
        "moved.",
        "Bridged amplifiers, and many switching ones, have both terminals live: never clip an earthed lead to either.",
        "Capacitors may be charged: discharge them through a resistor and measure before you touch or read.",
        f"The resistor of {series} stays in place whenever the generator is on: a short then draws {short} at most, "
        f"and heats it with {_watts(sheet.fault_w)}; take one of {_rated(sheet.fault_w)} or more.",
        f"Dummies first. No tone above this level at {tender}.",
        "After a reading outside its window nothing louder: find the cause. Local codes, licensed practice come first.",
    )


def _meter_check(sheet: BenchSheet, bench: Instruments) -> Group:
    freqs, ohms = check_frequencies(sheet), Paragraph(ohmmeter(bench))
    if not freqs:
        return (Heading("The meter first"), ohms)
    heads = ("across one", "low", "high", *(f"at {u.write(freq, u.HERTZ)}" for freq in freqs))
    row = ("half", *check_window(bench), *("" for _ in freqs))
    boxes = frozenset(range(3, len(row)))
    return (Heading("The meter first"), ohms, Paragraph(meter_check(bench)), Table(heads, (row,), boxes | {0}, boxes))


def meter_check(bench: Instruments) -> str:
    """How to find out whether the voltmeter is right at the frequencies of the sheet."""
    return (
        f"Voltmeter: two equal resistors of some {_ohm(DIVIDER_OHM)} in a row across the generator, no box. Set "
        f"that to {_volts(bench.source_v)} by this meter at {u.write(CHECKED_HZ, u.HERTZ)}; then it must show half "
        "across one of the two, at each frequency. If not, take another."
    )


def check_window(bench: Instruments) -> tuple[str, str]:
    """What the voltmeter may show across one of the two resistors, at least and at most."""
    half = bench.source_v / 2
    return _volts(half * (1 - bench.meter_share)), _volts(half * (1 + bench.meter_share))


def check_frequencies(sheet: BenchSheet) -> tuple[float, ...]:
    """The lowest and the highest frequency at which the sheet reads."""
    freqs = sorted({line.reading.freq_hz for line in sheet.lines if line.reading.freq_hz})
    return tuple(dict.fromkeys((*freqs[:1], *freqs[-1:])))


def _then(circuit: Circuit) -> Iterator[str]:
    drivers = circuit.design.drivers
    turned = [name for name in drivers if name in turned_round(circuit)]
    yield (
        "Polarity, at the tags of the real drivers: each plus wire goes to the tag that the maker marks as plus."
        + (f" The board itself turns {listed(turned)} round." if turned else "")
    )
    yield _pop(circuit.design)
    if len(_whole(drivers.values())) > 1:
        yield (
            "Listening to the sum, quietly, with noise: exchange one driver's two wires, and back, amplifier off "
            "each time. About the crossing it must sound otherwise; if not, a driver is silent. Which way is fuller "
            "depends on where drivers stand and you sit, and proves no polarity by itself."
        )


def _pop(design: Design) -> str:
    drivers = design.drivers.values()
    woofers = [driver for driver in drivers if _takes_a_pop(driver)]
    if not woofers:
        return "No pop test: none of these drivers is known to be a woofer."
    others = len(woofers) < len(drivers)
    by_coils = ", each voice coil by itself" if any(driver.coil_of for driver in woofers) else ""
    return (
        f"Pop test, {listed(_whole(woofers))}{' only' * others}{by_coils}, wires off the board: 1.5 V of one dry cell "
        f"for less than a second, plus to plus, moves the cone out.{' Never on a tweeter or a horn driver.' * others}"
    )


def _whole(drivers: Iterable[Driver]) -> list[str]:
    """Their names, each once whatever voice coils it has."""
    return [*dict.fromkeys(driver.coil_of or driver.name for driver in drivers)]


def _has_tweeter(design: Design) -> bool:
    """May one of the drivers be a tweeter?"""
    return any(
        driver.role == "tweeter" or (driver.role is None and not _takes_a_pop(driver))
        for driver in design.drivers.values()
    )


def _takes_a_pop(driver: Driver) -> bool:
    fs = driver.quantities.get("fs")
    return driver.role == "woofer" or (driver.role is None and fs is not None and fs.value < WOOFER_FS_HZ)


def _about(design: Design, sheet: BenchSheet, bench: Instruments) -> str:
    meter = f"{percent(bench.meter_share)} up to {u.write(bench.meter_top_hz, u.HERTZ)}"
    name = next(iter(design.drivers))
    hurt = f"an amplifier or a {'tweeter' if _has_tweeter(design) else 'driver'}"
    most = f"at most {_volts(sheet.most_v)} at any driver or dummy, " if sheet.most_v else ""
    dummy = f", {_watts(sheet.dummy_w)} in a dummy" if sheet.dummy_w else ""
    return (
        f"{percent(sheet.together)} of sound boards pass all readings together: parts within their tolerances, a "
        f"voltmeter within {meter}, an ohmmeter whose leads add at most {_ohm(bench.leads_ohm)}. Readings 1 to "
        f"{sheet.dangers} find most of what could hurt {hurt}; no amplifier before all are passed. Levels of a sound "
        f"board: {most}{_watts(sheet.series_w)} in the series resistor{dummy}; dummies of "
        f"{_rated(bench.source_v**2 / (4 * bench.series_ohm))} are enough. A "
        f"driver's plus and minus are the ends of its wires, or its tags; at {name} means from {name}+ to {name}-."
    )


def _ohm(value: float) -> str:
    return u.write(value, u.OHM, DIGITS)


def _volts(value: float) -> str:
    return u.write(value, u.VOLT, DIGITS)


def _watts(watts: float) -> str:
    return u.write(watts, u.WATT, 2)


def _rated(watts: float) -> str:
    """The rating that is sold and leaves room."""
    enough = (rated for rated in PREFERRED_W if rated >= MARGIN_W * watts)
    return u.write(next(enough, MARGIN_W * watts), u.WATT, 2)
