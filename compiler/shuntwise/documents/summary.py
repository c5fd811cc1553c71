"""What a build prints on the screen: the figures of the box, what each part bears, and the cautions.

In: a design, its figures and its findings. Out: groups of blocks, which the binder takes one by one and the summary
lays out as text of at most `WIDTH` cells a line (more only where a name is very long), safe to print. It refuses to
work anything out beyond scaling from 1 V to the amplifier's voltage.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import isfinite, sqrt

from shuntwise import units as u
from shuntwise.diagnostics.diagnostic import Diagnostic, NotChecked
from shuntwise.diagnostics.text import summary as counted
from shuntwise.documents.aligned import as_text
from shuntwise.documents.cautions import GENERAL
from shuntwise.documents.differing import DIFFERS, differing
from shuntwise.documents.page import Block, Group, Heading, Listing, Paragraph, Table
from shuntwise.documents.reference import is_ideal, of_impedance, of_levels
from shuntwise.figures.figure import Level, Slope
from shuntwise.figures.nominal import HIGHEST_HZ, LOWEST_HZ
from shuntwise.figures.usual import Corners, CrossingFigures, DriverFigures, LeastFigures, Said, Usual, group_name
from shuntwise.model.design import Amplifier, Design, Waiver
from shuntwise.model.differences import Difference
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
    pins: Group = (),
    limits: Sequence[Group] = (),
    cautions: Sequence[str] = GENERAL,
    differences: Sequence[Difference] = (),
    box: str = "",
) -> str:
    """The whole summary; it ends with a line end. `waived` are findings that the design allows, `pins` what
    `pins.table` says of connectors, `limits` what `margins` says of the amplifier's limit.
    """
    groups = [
        told_of(design, mark, differences, box),
        pins,
        drivers(design, figures),
        fitted(fits),
        slopes(figures),
        crossings(figures.crossings),
        impedance(figures, design.amplifier),
        for_one_volt(design, figures, shares),
        *limits,
        found(findings, not_checked, waived),
        (Heading("Cautions"), Listing(tuple(cautions))),
    ]
    return as_text(groups)


def told_of(design: Design, mark: str, differences: Sequence[Difference] = (), box: str = "") -> Group:
    """Which box it is: title, name of the box, variant and its `differences`, amplifier, what levels and impedance are
    told of, design mark.
    """
    blocks: list[Block] = [Heading(design.title or "Design without a title")]
    blocks += [Paragraph(f"box {box}")] if box else []
    blocks += [Paragraph(f"variant {text}") for text in variant_told(design)]
    blocks += [Paragraph(f"choice {text}") for text in choices_told(design)]
    if differences:
        blocks.append(Paragraph(f"{DIFFERS}: {', '.join(differing(differences))}"))
    blocks.append(Paragraph(f"amplifier: {amplifier_told(design.amplifier)}"))
    if not is_ideal(design.amplifier):
        told = f"levels for 1 V {of_levels(design.amplifier)}; impedance {of_impedance(design.amplifier)}"
        blocks.append(Paragraph(told))
    return (*blocks, Paragraph(f"design mark: {mark}")) if mark else tuple(blocks)


def variant_told(design: Design) -> list[str]:
    """The variant with its title; nothing of the design itself."""
    if design.variant is None:
        return []
    title = design.variant_title
    return [design.variant + (f": {title}" if title else "")]


def choices_told(design: Design) -> list[str]:
    """Where each choice stands."""
    titles = [{p.name: p.title for p in choice.positions}.get(choice.chosen) for choice in design.choices]
    return [
        f"{choice.name} at {choice.chosen}" + (f": {title}" if title else "")
        for choice, title in zip(design.choices, titles, strict=True)
    ]


def amplifier_told(amplifier: Amplifier | None) -> str:
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
    texts += [amplifier.cable.words] if amplifier.cable is not None else []
    texts += ["bridged"] if amplifier.bridged else []
    return "; ".join(texts) or "not stated soundly"


def amplifier_volt(amplifier: Amplifier | None) -> float | None:
    """The r.m.s. voltage (V) of a sine of the rated power into the rated load, U = sqrt(P R); None if not stated."""
    if amplifier is None or amplifier.power is None or amplifier.load is None:
        return None
    return sqrt(amplifier.power.value * amplifier.load.value)


# --- levels and impedance


def drivers(design: Design, figures: Usual) -> Group:
    """Level and corners of every driver."""
    heads = ("Drivers", "in the band", "greatest", "3 dB below the band", "6 dB below")
    known = {driver.name: driver for driver in figures.drivers}
    rows = [_driver_row(known[name]) if name in known else (name, "not fed", "", "", "") for name in design.drivers]
    return (Table(heads, tuple(rows), frozenset(range(5))) if rows else Paragraph("Drivers: none is fed"),)


def _driver_row(driver: DriverFigures) -> tuple[str, ...]:
    if driver.level is None or driver.greatest is None:
        return (driver.name, "no voltage", "", "", "")
    three, six = (_corners(corners) for corners in driver.corners)
    return (driver.name, _level(driver.level), _level(driver.greatest), three, six)


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


def fitted(fits: Sequence[FitReport]) -> Group:
    """How near fitted drivers come to what they stand for."""
    return (Listing(tuple(fit.sentence for fit in fits)),) if fits else ()


def slopes(figures: Usual) -> Group:
    rows = []
    for driver in figures.drivers:
        for said in driver.slopes:
            assert isinstance(said.figure, Slope)
            span = f"from {_value(said.figure.from_hz, u.HERTZ)} to {_value(said.figure.to_hz, u.HERTZ)}"
            rows.append((driver.name, f"{said.value:+z.1f} dB/octave", span))
    return (Heading("Slopes beyond the corners"), Table((), tuple(rows), frozenset({0, 2}))) if rows else ()


def crossings(found: Sequence[CrossingFigures]) -> Group:
    entries = tuple(map(crossing_told, found)) or ("none in the band",)
    return (Heading("Crossings"), Listing(entries, marked=False))


def crossing_told(one: CrossingFigures) -> str:
    names = f"{group_name(one.first)} and {group_name(one.second)}"
    levels = " and ".join(dict.fromkeys(_decibels(level.value) for level in one.levels))
    how = " as loud, with their sensitivities," if one.by_sensitivity else ""
    return f"{names}{how} at {_value(one.freq_hz, u.HERTZ)}, {levels}"


def impedance(figures: Usual, amplifier: Amplifier | None) -> Group:
    """The least of every input, and whether the amplifier may drive it."""
    entries = [f"{least.input}: {least_told(least, figures)}" for least in figures.least]
    bound = amplifier.quantities.get("least") if amplifier is not None else None
    if bound is not None and any(least.impedance.value < bound.value for least in figures.least):
        entries.append(f"That is below the {_value(bound.value, u.OHM)} that the amplifier may drive.")
    return (Heading("Impedance"), Listing(tuple(entries), marked=False))


def least_told(least: LeastFigures, figures: Usual) -> str:
    """The least impedance of one input, and the band in which it was looked for, if that is not the whole."""
    if not isfinite(least.impedance.value):
        return "no current flows in"
    whole = (figures.from_hz, figures.to_hz) == (LOWEST_HZ, HIGHEST_HZ)
    span = "" if whole else f", from {_value(figures.from_hz, u.HERTZ)} to {_value(figures.to_hz, u.HERTZ)}"
    return f"least {_value(least.impedance.value, u.OHM)} at {_value(least.freq_hz, u.HERTZ)}{span}"


# --- what the parts bear


def for_one_volt(design: Design, figures: Usual, shares: Sequence[Share]) -> Group:
    """What each part sees, carries and dissipates for 1 V."""
    rows = []
    for share in shares:
        part = design.parts.get(share.label)
        value = part.value if part is not None else None
        numbers = (f"{number:.3g}" for number in (share.volt, share.ampere, share.watt))
        hottest = "" if share.hottest_hz is None else _value(share.hottest_hz, u.HERTZ)
        rows.append((share.label, "" if value is None else _value(value.value, value.dimension), *numbers, hottest))
    band = f"{_value(figures.from_hz, u.HERTZ)} to {_value(figures.to_hz, u.HERTZ)}"
    where = "at every input" if is_ideal(design.amplifier) else of_levels(design.amplifier)
    text = (
        f"What each part sees, carries and dissipates, for 1 V r.m.s. {where}. Each number is the worst from {band}: "
        "that of a steady sine held at the frequency that is worst for that part. Music loads most parts less."
    )
    heads = ("For 1 V", "", "V", "A", "W", "hottest at")
    return (Paragraph(text), Table(heads, tuple(rows), frozenset({0, 1}))) if rows else ()


# --- findings


def found(
    findings: Sequence[Diagnostic], not_checked: Sequence[NotChecked], waived: Sequence[tuple[Diagnostic, Waiver]]
) -> Group:
    """How many findings there are, and what the design allows."""
    text = f"Findings: {counted(findings, not_checked)}"
    allowed = tuple(
        f"{finding.headline.replace('`', '')}: allowed because {waiver.reason}" for finding, waiver in waived
    )
    if not allowed:
        return (Paragraph(text),)
    return (Paragraph(f"{text}; {len(allowed)} allowed by the design:"), Listing(allowed))


def _value(value: float, dimension: u.Dimension) -> str:
    return u.write(value, dimension, 3)
