"""Spread -> the report of how builds differ, in plain words, and the bands as a table of numbers.

In: a `Spread` and the design that it belongs to. Out: groups of blocks for the report and the binder, and columns of
numbers. It refuses to work anything out.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from itertools import groupby
from math import floor, isnan

import numpy as np
import numpy.typing as npt

from shuntwise import units as u
from shuntwise.documents.aligned import as_text
from shuntwise.documents.page import Block, Group, Heading, Listing, Paragraph, Table
from shuntwise.documents.summary import variant_told
from shuntwise.documents.table import Column
from shuntwise.figures.figure import Crossing, Figure
from shuntwise.model.design import Design
from shuntwise.tolerance.confidence import interval
from shuntwise.tolerance.spread import PERCENT, Envelope, FigureSpread, Spread, Yield

MOST_PARTS = 3
"""Parts named for each figure."""

DISTRIBUTIONS = {
    "uniform": "anywhere within it, every value as likely",
    "normal": "normally distributed within it, the tolerance being three standard deviations and the rest cut off",
}


def spread_report(spread: Spread, design: Design, *, mark: str = "", box: str = "") -> str:
    """The whole report; it ends with a line end."""
    return as_text([_title(design, mark, box), *told(spread)])


def told(spread: Spread) -> tuple[Group, ...]:
    """What varies, how figures come out, the yield, and which parts matter; some may be empty."""
    return (_what(spread), _figures(spread), _yields(spread), _influences(spread))


def _title(design: Design, mark: str, box: str) -> Group:
    lines = [f"box {box}"] if box else []
    lines += [f"variant {text}" for text in variant_told(design)]
    lines += [f"design mark: {mark}"] if mark else []
    return (Heading(design.title or "Design without a title"), *map(Paragraph, lines))


def _what(spread: Spread) -> Group:
    parts = sorted(spread.varying.parts, key=lambda part: (part.tolerance, part.label))
    groups = [
        f"{tolerance * 100:.3g} %: {', '.join(part.label for part in group)}"
        for tolerance, group in groupby(parts, key=lambda part: part.tolerance)
    ]
    blocks: list[Block] = [
        Paragraph(
            f"{spread.builds} builds, seed {spread.seed}. The value of every part that states a tolerance is "
            f"{DISTRIBUTIONS[spread.distribution]}."
        ),
        Listing(tuple(groups)),
    ]
    if spread.varying.exact:
        blocks.append(Paragraph(f"Without a tolerance, and so exact: {', '.join(spread.varying.exact)}."))
    kept = (
        "Kept as stated: the resistance of coils and capacitors, the coupling of coils, and the drivers' models. "
        "Real drivers differ too: what is shown is what the parts alone do."
    )
    return (*blocks, Paragraph(kept))


# --- figures


def _figures(spread: Spread) -> Group:
    heads = ("How the box comes out", "as stated", "9 builds in 10", "all builds", "worst found")
    rows = tuple(
        (
            one.figure.name,
            quantity(one.figure, one.nominal),
            _range(one, one.percentiles[PERCENT.index(5)], one.percentiles[PERCENT.index(95)]),
            _range(one, one.percentiles[0], one.percentiles[-1]),
            _range(one, *one.worst),
        )
        for one in spread.figures
    )
    notes = [f"{one.missing} builds have no {one.figure.name}." for one in spread.figures if one.missing]
    if spread.all_corners:
        corners = f"all {spread.corners} cases with every part at one end of its tolerance"
    else:
        corners = f"the {spread.corners} cases with every part at one end of its tolerance to which sensitivities point"
    if any(isinstance(one.figure, Crossing) and one.figure.louder_db for one in spread.figures):
        notes.append("Crossings: where the drivers are as loud, for the sensitivities that the design states.")
    notes.append(f"Worst found: over the builds and {corners}.")
    return (Table(heads, rows), Listing(tuple(notes), marked=False))


def quantity(figure: Figure, value: float) -> str:
    """A figure's value with its unit; a dash if there is none."""
    if isnan(value):
        return "-"
    if figure.dimension in (u.DECIBEL, u.DECIBEL_PER_OCTAVE):
        return f"{value:z.2f} {u.SYMBOLS[figure.dimension]}"
    return u.write(value, figure.dimension, 3)


def _range(one: FigureSpread, low: float, high: float) -> str:
    """From low to high, with units only where they are not that of the stated value."""
    if isnan(low):
        return "-"
    cells = [quantity(one.figure, value).partition(" ") for value in (one.nominal, low, high)]
    if len({unit for *_, unit in cells}) == 1:
        return f"{cells[1][0]} to {cells[2][0]}"
    return " to ".join("".join(cell) for cell in cells[1:])


# --- yield


def _yields(spread: Spread) -> Group:
    if spread.met is None:
        return (Paragraph("Yield: the design expects nothing that depends on values"),)
    shares = [(one.share, _expectation(one)) for one in sorted(spread.yields, key=lambda one: one.share)]
    if len(shares) > 1:
        shares.append((spread.met, "all of these"))
    rows = tuple((share(part), _sure(part, spread.builds), what) for part, what in shares)
    heading = "Yield: the share of builds that meet what the design expects, and its 95 % confidence interval"
    return (Heading(heading), Table((), rows, left=frozenset({1, 2})))


def _sure(part: float, builds: int) -> str:
    low, high = interval(part, builds)
    return f"{100 * low:.1f} to {100 * high:.1f} %"


def share(part: float) -> str:
    """A share in per cent, rounded down, so that 100 % means all and 0.0 % may be a few."""
    return "100 %" if part == 1 else f"{floor(part * 1000 + 1e-9) / 10:.1f} %"


def _expectation(one: Yield) -> str:
    return " ".join(one.expectation.span.text.split())


# --- which part matters


def _influences(spread: Spread) -> Group:
    heads = ("Which part matters most", *(f"{place}." for place in range(1, MOST_PARTS + 1)))
    rows = tuple(_influence_row(one) for one in spread.figures if one.influences and one.deviation > 0)
    if not rows:
        return ()
    text = (
        "Share of the variance of each figure that a part brings in, and what its whole tolerance upwards does to "
        "the figure, both to first order."
    )
    return (Table(heads, rows, left=frozenset(range(MOST_PARTS + 1))), Listing((text,), marked=False))


def _influence_row(one: FigureSpread) -> tuple[str, ...]:
    named = [influence for influence in one.influences[:MOST_PARTS] if influence.share >= 0.005]
    cells = [f"{part.label} {part.share * 100:.0f} % ({_change(one.figure, part.effect)})" for part in named]
    cells += [""] * (MOST_PARTS - len(cells))
    return (one.figure.name, *cells)


def _change(figure: Figure, effect: float) -> str:
    if figure.dimension in (u.DECIBEL, u.DECIBEL_PER_OCTAVE):
        return f"{effect:+z.2f} dB"
    return f"{'+' if effect > 0 else ''}{u.write(effect, figure.dimension, 2)}"


# --- the bands as numbers


DRAWN = ("as stated", "5 %", "95 %", "least found", "greatest found")
"""The columns of a band that its plot shows."""


def band_columns(spread: Spread, only: Collection[str] = ()) -> tuple[Column, ...]:
    """Frequency, then for each driver (dB) and input (ohm) the stated build, the bands and the ends; or `only` some."""
    columns = [Column("", "frequency", "Hz", "z.1f", spread.freq_hz)]
    for bands, what, unit in ((spread.levels, "level", "dB"), (spread.impedances, "impedance", "ohm")):
        for band in bands:
            columns += [
                Column(band.owner, f"{what} {name}", unit, "z.2f", values)
                for name, values in _rows(band)
                if not only or name in only
            ]
    return tuple(columns)


def _rows(band: Envelope) -> Sequence[tuple[str, npt.NDArray[np.float64]]]:
    named = [("least of builds" if p == 0 else "greatest of builds" if p == 100 else f"{p} %") for p in PERCENT]
    return [
        ("as stated", band.nominal),
        *zip(named, band.percentiles, strict=True),
        ("least found", band.worst[0]),
        ("greatest found", band.worst[1]),
    ]
