"""What a build prints on the screen: the figures of the box, what each part bears, and the cautions.

In: a design, its figures and its findings. Out: text of at most `WIDTH` cells a line (more only where a name is
very long), safe to print. It refuses to work anything out beyond scaling from 1 V to the amplifier's voltage.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import isfinite, sqrt

from shuntwise import units as u
from shuntwise.diagnostics.diagnostic import Diagnostic, NotChecked
from shuntwise.diagnostics.terminal import visible, wrap
from shuntwise.diagnostics.text import summary as counted
from shuntwise.documents.aligned import WIDTH, aligned, hanging
from shuntwise.documents.cautions import GENERAL
from shuntwise.documents.reference import is_ideal, of_impedance, of_levels
from shuntwise.figures.figure import Level, Slope
from shuntwise.figures.nominal import HIGHEST_HZ, LOWEST_HZ
from shuntwise.figures.usual import Corners, CrossingFigures, DriverFigures, Said, Usual, group_name
from shuntwise.model.design import Amplifier, Design, Waiver
from shuntwise.network.network import FitReport
from shuntwise.stress.shares import Share


def build_summary(
    design: Design,
    figures: Usual,
    shares: Sequence[Share],
    *,
    findings: Sequence[Diagnostic] = (),
    not_checked: Sequence[NotChecked] = (),
    waived: Sequence[tuple[Diagnostic, Waiver]] = (),
    mark: str = "",
    fits: Sequence[FitReport] = (),
    pins: Sequence[str] = (),
    limits: Sequence[str] = (),
    cautions: Sequence[str] = GENERAL,
) -> str:
    """The whole summary; it ends with a line end. `waived` are findings that the design allows, `pins` what
    `pins.table` says of connectors, `limits` what `margins` says of the amplifier's limit.
    """
    blocks = [
        _heading(design, mark),
        list(pins),
        _drivers(design, figures),
        [line for fit in fits for line in hanging(fit.sentence)],
        _slopes(figures),
        _crossings(figures.crossings),
        _impedance(figures, design.amplifier),
        _shares(design, figures, shares),
        list(limits),
        _findings(findings, not_checked, waived),
        ["Cautions", *(line for caution in cautions for line in hanging(visible(caution)))],
    ]
    return "\n\n".join("\n".join(block) for block in blocks if block) + "\n"


def _heading(design: Design, mark: str) -> list[str]:
    lines = wrap(design.title or "Design without a title", WIDTH)
    if design.variant is not None:
        title = design.variant_title
        lines += wrap(f"variant {design.variant}" + (f": {title}" if title else ""), WIDTH)
    for choice in design.choices:
        said = next((p.title for p in choice.positions if p.name == choice.chosen), None)
        lines += wrap(f"choice {choice.name} at {choice.chosen}" + (f": {said}" if said else ""), WIDTH)
    lines += wrap(f"amplifier: {_amplifier(design.amplifier)}", WIDTH)
    if not is_ideal(design.amplifier):
        told = f"levels for 1 V {of_levels(design.amplifier)}; impedance {of_impedance(design.amplifier)}"
        lines += wrap(told, WIDTH)
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
    if "source" in amplifier.quantities:
        texts.append(f"output resistance {_value(amplifier.quantities['source'].value, u.OHM)}")
    texts += [visible(amplifier.cable.words)] if amplifier.cable is not None else []
    texts += ["bridged"] if amplifier.bridged else []
    return "; ".join(texts) or "not stated soundly"


def amplifier_volt(amplifier: Amplifier | None) -> float | None:
    """The r.m.s. voltage (V) of a sine of the rated power into the rated load, U = sqrt(P R); None if not stated."""
    if amplifier is None or amplifier.power is None or amplifier.load is None:
        return None
    return sqrt(amplifier.power.value * amplifier.load.value)


# --- levels and impedance


def _drivers(design: Design, figures: Usual) -> list[str]:
    heads = ("Drivers", "in the band", "greatest", "3 dB below the band", "6 dB below")
    known = {driver.name: driver for driver in figures.drivers}
    rows = [
        _driver_row(known[name]) if name in known else (f"  {name}", "not fed", "", "", "") for name in design.drivers
    ]
    return aligned([heads, *rows], left={0, 1, 2, 3, 4}) if rows else ["Drivers: none is fed"]


def _driver_row(driver: DriverFigures) -> tuple[str, ...]:
    if driver.level is None or driver.greatest is None:
        return (f"  {driver.name}", "no voltage", "", "", "")
    three, six = (_corners(corners) for corners in driver.corners)
    return (f"  {driver.name}", _level(driver.level), _level(driver.greatest), three, six)


def _level(said: Said) -> str:
    assert isinstance(said.figure, Level)
    return f"{_decibels(said.value)} at {_value(said.figure.at_hz, u.HERTZ)}"


def _decibels(level_db: float) -> str:
    return f"{level_db:+z.1f} dB"


def _corners(corners: Corners) -> str:
    begins, ends = (None if end is None else _value(end.value, u.HERTZ) for end in (corners.begins, corners.ends))
    if begins and ends:
        text = f"{begins} to {ends}"
    else:
        text = f"from {begins}" if begins else f"to {ends}" if ends else "all of the band"
    return text + (", dips" if corners.dips else "")


def _slopes(figures: Usual) -> list[str]:
    rows = []
    for driver in figures.drivers:
        for said in driver.slopes:
            assert isinstance(said.figure, Slope)
            span = f"from {_value(said.figure.from_hz, u.HERTZ)} to {_value(said.figure.to_hz, u.HERTZ)}"
            rows.append((f"  {driver.name}", f"{said.value:+z.1f} dB/octave", span))
    return ["Slopes beyond the corners", *aligned(rows, left={0, 2})] if rows else []


def _crossings(crossings: Sequence[CrossingFigures]) -> list[str]:
    return ["Crossings", *([f"  {_crossing(one)}" for one in crossings] or ["  none in the band"])]


def _crossing(one: CrossingFigures) -> str:
    names = f"{visible(group_name(one.first))} and {visible(group_name(one.second))}"
    levels = " and ".join(dict.fromkeys(_decibels(level.value) for level in one.levels))
    how = " as loud, with their sensitivities," if one.by_sensitivity else ""
    return f"{names}{how} at {_value(one.freq_hz, u.HERTZ)}, {levels}"


def _impedance(figures: Usual, amplifier: Amplifier | None) -> list[str]:
    lines = []
    whole = (figures.from_hz, figures.to_hz) == (LOWEST_HZ, HIGHEST_HZ)
    span = "" if whole else f", from {_value(figures.from_hz, u.HERTZ)} to {_value(figures.to_hz, u.HERTZ)}"
    for least in figures.least:
        text = f"least {_value(least.impedance.value, u.OHM)} at {_value(least.freq_hz, u.HERTZ)}{span}"
        lines.append(f"  {visible(least.input)}: {text if isfinite(least.impedance.value) else 'no current flows in'}")
    bound = amplifier.quantities.get("least") if amplifier is not None else None
    if bound is not None and any(least.impedance.value < bound.value for least in figures.least):
        lines.append(f"  That is below the {_value(bound.value, u.OHM)} that the amplifier may drive.")
    return ["Impedance", *lines]


# --- what the parts bear


def _shares(design: Design, figures: Usual, shares: Sequence[Share]) -> list[str]:
    heads = ["For 1 V", "", "V", "A", "W", "hottest at"]
    rows = []
    for share in shares:
        part = design.parts.get(share.label)
        value = part.value if part is not None else None
        row = [f"  {share.label}", _value(value.value, value.dimension) if value is not None else ""]
        row += [f"{number:.3g}" for number in (share.volt, share.ampere, share.watt)]
        rows.append([*row, "" if share.hottest_hz is None else _value(share.hottest_hz, u.HERTZ)])
    band = f"{_value(figures.from_hz, u.HERTZ)} to {_value(figures.to_hz, u.HERTZ)}"
    where = "at every input" if is_ideal(design.amplifier) else of_levels(design.amplifier)
    text = (
        f"What each part sees, carries and dissipates, for 1 V r.m.s. {where}. Each number is the worst from {band}: "
        "that of a steady sine held at the frequency that is worst for that part. Music loads most parts less."
    )
    return [*wrap(text, WIDTH), *aligned([heads, *rows], left={0, 1})] if rows else []


# --- findings and layout


def _findings(
    findings: Sequence[Diagnostic], not_checked: Sequence[NotChecked], waived: Sequence[tuple[Diagnostic, Waiver]]
) -> list[str]:
    text = f"Findings: {counted(findings, not_checked)}"
    lines = wrap(text + (f"; {len(waived)} allowed by the design:" if waived else ""), WIDTH)
    for finding, waiver in waived:
        lines += hanging(visible(f"{finding.headline.replace('`', '')}: allowed because {waiver.reason}"))
    return lines


def _value(value: float, dimension: u.Dimension) -> str:
    return u.write(value, dimension, 3)
