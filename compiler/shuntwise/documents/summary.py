"""What a build prints on the screen: the figures of the box, what each part bears, and the cautions.

In: a design, its figures and its findings. Out: text of at most `WIDTH` cells a line (more only where a name is
very long), safe to print. It refuses to work anything out beyond scaling from 1 V to the amplifier's voltage.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import isfinite, sqrt

from shuntwise import units as u
from shuntwise.diagnostics.diagnostic import Diagnostic, NotChecked
from shuntwise.diagnostics.terminal import cell_width, visible, wrap
from shuntwise.diagnostics.text import summary as counted
from shuntwise.documents.measured import CrossingFigures, DriverFigures, LeastFigures, Measured, PassBand, group_name
from shuntwise.model.design import Amplifier, Design
from shuntwise.response.measures import FLOOR_DB

WIDTH = 100

CAUTIONS = (
    "Sound: 85 dBA for 8 hours a day, half the time for each 3 dB more, 100 dBA for 15 minutes. Wear protectors, start "
    "at the lowest level, nobody at the horn mouth. Low sweeps can wreck tweeters: start above the crossover.",
    "Amplifier outputs: large ones reach volts that shock and currents that burn. Switch off, wait and measure before "
    "you touch; insulate joints and posts. Never drive full power with a driver unplugged.",
    "Hot parts: resistors can exceed 200 degrees Celsius at their rating and burn for minutes. Keep them clear of "
    "wadding, glue, ties and wire.",
    "Local codes, licensed practice and the part makers' data come before anything printed here.",
)
"""Short forms; the exposure times are those of the NIOSH criteria for occupational noise, 1998 (from memory)."""


def build_summary(
    design: Design,
    measured: Measured,
    *,
    findings: Sequence[Diagnostic] = (),
    not_checked: Sequence[NotChecked] = (),
    waived: int = 0,
    mark: str = "",
) -> str:
    """The whole summary; it ends with a line end. `waived` counts findings that the design allows."""
    blocks = [
        _heading(design, mark),
        _drivers(design, measured),
        _crossings(measured.crossings),
        _impedance(measured.least, design.amplifier),
        _shares(design, measured),
        _findings(findings, not_checked, waived),
        ["Cautions", *(line for caution in CAUTIONS for line in hanging(caution))],
    ]
    return "\n\n".join("\n".join(block) for block in blocks if block) + "\n"


def hanging(text: str) -> list[str]:
    return [f"  {'  ' * (number > 0)}{line}" for number, line in enumerate(wrap(text, WIDTH - 4))]


def _heading(design: Design, mark: str) -> list[str]:
    lines = wrap(design.title or "Design without a title", WIDTH)
    if design.variant is not None:
        title = next((v.title for v in design.variants if v.name == design.variant), None)
        lines += wrap(f"variant {design.variant}" + (f": {title}" if title else ""), WIDTH)
    lines += wrap(f"amplifier: {_amplifier(design.amplifier)}", WIDTH)
    return [*lines, f"design mark: {mark}"] if mark else lines


def _amplifier(amplifier: Amplifier | None) -> str:
    if amplifier is None:
        return "not stated"
    volt = amplifier_volt(amplifier)
    texts = [] if volt is None or amplifier.power is None or amplifier.load is None else [
        f"{_value(amplifier.power.value, u.WATT)} into {_value(amplifier.load.value, u.OHM)}, "
        f"which is {_value(volt, u.VOLT)} r.m.s."
    ]  # fmt: skip
    if "least" in amplifier.quantities:
        texts.append(f"least load {_value(amplifier.quantities['least'].value, u.OHM)}")
    texts += ["bridged"] if amplifier.bridged else []
    return "; ".join(texts) or "not stated soundly"


def amplifier_volt(amplifier: Amplifier | None) -> float | None:
    """The r.m.s. voltage (V) of a sine of the rated power into the rated load, U = sqrt(P R); None if not stated."""
    if amplifier is None or amplifier.power is None or amplifier.load is None:
        return None
    return sqrt(amplifier.power.value * amplifier.load.value)


# --- levels and impedance


def _drivers(design: Design, measured: Measured) -> list[str]:
    heads = ("Drivers", "peak", "within 3 dB", "within 6 dB", "dB/octave an octave out")
    known = {driver.name: driver for driver in measured.drivers}
    rows = [
        _driver_row(known[name]) if name in known else (f"  {name}", "not fed", "", "", "") for name in design.drivers
    ]
    return aligned([heads, *rows], left={0, 1, 2, 3, 4}) if rows else ["Drivers: none is fed"]


def _driver_row(driver: DriverFigures) -> tuple[str, ...]:
    if driver.peak_db < FLOOR_DB:
        return (f"  {driver.name}", "no voltage", "", "", "")
    slopes = [f"{slope:+z.1f}" for slope in (driver.low_slope, driver.high_slope) if slope is not None]
    return (
        f"  {driver.name}",
        f"{driver.peak_db:+z.1f} dB",
        _band(driver.within_3_db),
        _band(driver.within_6_db),
        ", ".join(slopes),
    )


def _band(band: PassBand) -> str:
    low, high = (None if freq is None else _value(freq, u.HERTZ) for freq in (band.low_hz, band.high_hz))
    text = f"{low} to {high}" if low and high else f"from {low}" if low else f"to {high}" if high else "all of the band"
    return text + (", dips" if band.dips else "")


def _crossings(crossings: Sequence[CrossingFigures]) -> list[str]:
    lines = [
        f"  {visible(group_name(c.first))} and {visible(group_name(c.second))} at {_value(c.freq_hz, u.HERTZ)}, "
        f"{c.level_db:+z.1f} dB"
        + (f"; with their sensitivities at {_value(c.heard_hz, u.HERTZ)}" if c.heard_hz else "")
        for c in crossings
    ]
    return ["Crossings", *(lines or ["  none in the band"])]


def _impedance(least: Sequence[LeastFigures], amplifier: Amplifier | None) -> list[str]:
    lines = []
    for figure in least:
        text = f"least {_value(figure.ohm, u.OHM)} at {_value(figure.freq_hz, u.HERTZ)}"
        lines.append(f"  {visible(figure.input)}: {text if isfinite(figure.ohm) else 'no current flows in'}")
    bound = amplifier.quantities.get("least") if amplifier is not None else None
    if bound is not None and any(figure.ohm < bound.value for figure in least):
        lines.append(f"  That is below the {_value(bound.value, u.OHM)} that the amplifier may drive.")
    return ["Impedance", *lines]


# --- what the parts bear


def _shares(design: Design, measured: Measured) -> list[str]:
    volt = amplifier_volt(design.amplifier)
    over = ["", "", "1 V:", "", ""] + ([f"{_value(volt, u.VOLT)}:", "", ""] if volt is not None else []) + [""]
    heads = ["Part", "", "V", "A", "W"] + (["V", "A", "W"] if volt is not None else []) + ["hottest at"]
    rows = []
    for share in measured.shares:
        part = design.parts.get(share.label)
        value = part.value if part is not None else None
        row = [f"  {share.label}", _value(value.value, value.dimension) if value is not None else ""]
        row += [f"{number:.3g}" for number in (share.volt, share.ampere, share.watt)]
        if volt is not None:
            row += [f"{number:.3g}" for number in (share.volt * volt, share.ampere * volt, share.watt * volt**2)]
        rows.append([*row, "" if share.hottest_hz is None else _value(share.hottest_hz, u.HERTZ)])
    band = f"{_value(measured.from_hz, u.HERTZ)} to {_value(measured.to_hz, u.HERTZ)}"
    said = "for 1 V r.m.s. at every input"
    if volt is not None:
        said += f", and for {_value(volt, u.VOLT)} r.m.s., the amplifier's rated power as a plain sine"
    text = (
        f"What each part bears, {said}. Each number is the worst from {band}: that of a steady sine held at the "
        "frequency that is worst for that part. Music loads most parts less."
    )
    return [*wrap(text, WIDTH), *aligned([over, heads, *rows], left={0, 1})] if rows else []


# --- findings and layout


def _findings(findings: Sequence[Diagnostic], not_checked: Sequence[NotChecked], waived: int) -> list[str]:
    text = f"Findings: {counted(findings, not_checked)}"
    return wrap(text + (f"; {waived} allowed by the design" if waived else ""), WIDTH)


def _value(value: float, dimension: u.Dimension) -> str:
    return u.write(value, dimension, 3)


def aligned(rows: Sequence[Sequence[str]], left: set[int]) -> list[str]:
    """Aligned columns; those in `left` at their left end, the others at their right."""
    shown = [[visible(cell) for cell in row] for row in rows]
    widths = [max(map(cell_width, column)) for column in zip(*shown, strict=True)]
    lines = []
    for row in shown:
        cells = []
        for place, (cell, width) in enumerate(zip(row, widths, strict=True)):
            blanks = " " * (width - cell_width(cell))
            cells.append(cell + blanks if place in left else blanks + cell)
        lines.append("  ".join(cells).rstrip())
    return lines
