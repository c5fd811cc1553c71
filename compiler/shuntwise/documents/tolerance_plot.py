"""Spread -> drawings: the band in which builds lie, for every driver's level and every input's impedance.

In: a `Spread` and the design that it belongs to. Out: drawings. A plot of its own for levels and for impedances has the
stated curve on the shade of 9 builds in 10 in its upper panel; the lower one has how far from the stated curve those
builds lie, and dotted how far the worst. Beside plots of what is stated, one plot of both lower panels is enough. It
refuses to work out anything beyond that difference.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import ceil, log10

import numpy as np
import numpy.typing as npt

from shuntwise.documents.plot_page import Drawing, Page, drawing_settings
from shuntwise.documents.plot_panel import Curve, Plot
from shuntwise.documents.plots import (
    HEARD_DB,
    impedance_range,
    least_allowed,
    level_range,
    mark_bounds,
    plot_heading,
)
from shuntwise.model.design import Design
from shuntwise.tolerance.spread import PERCENT, Envelope, Spread

Real = npt.NDArray[np.float64]

LOW, HIGH = PERCENT.index(5), PERCENT.index(95)

SHOWN = "In the shade and, below, between the lines: 9 builds in 10. Dotted: the worst found"

STEPS = (0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50)
"""Steps of the lower panel's axis, in dB or %."""


def level_spread_plot(spread: Spread, design: Design, *, mark: str = "") -> Drawing:
    """Levels with their bands, and below how many dB from the stated level builds lie, where the driver is heard."""
    with drawing_settings():
        return Drawing(level_spread_page(spread, design, mark=mark))


def impedance_spread_plot(spread: Spread, design: Design, *, mark: str = "") -> Drawing:
    """Impedances with their bands, and below how many per cent from the stated impedance builds lie."""
    with drawing_settings():
        return Drawing(impedance_spread_page(spread, design, mark=mark))


def deviation_plot(spread: Spread, design: Design, *, mark: str = "") -> Drawing:
    """How far from what is stated builds lie: levels, where the driver is heard, and impedances."""
    with drawing_settings():
        return Drawing(deviation_page(spread, design, mark=mark))


def level_spread_page(spread: Spread, design: Design, *, mark: str = "") -> Page:
    """What `level_spread_plot` saves; within `drawing_settings`."""
    what = f"Level across each driver. {SHOWN}"
    plot = Plot(spread.freq_hz, plot_heading(design, what, mark), (1.7, 1))
    low, high, step = level_range([band.nominal for band in spread.levels])
    panel = plot.panel("level", "dB", (low, high), np.arange(low, high + step / 2, step))
    panel.curves += map(_with_band, spread.levels)
    _level_deviations(plot, "from stated", spread)
    return plot.finish(_said("Levels", spread.levels, spread))


def impedance_spread_page(spread: Spread, design: Design, *, mark: str = "") -> Page:
    """What `impedance_spread_plot` saves; within `drawing_settings`."""
    allowed = least_allowed(design.amplifier)
    plot = Plot(spread.freq_hz, plot_heading(design, f"Impedance. {SHOWN}", mark), (1.7, 1))
    shown = [*(float(band.worst.min()) for band in spread.impedances), *(ohm for ohm, _ in allowed)]
    low, high, ticks = impedance_range([band.nominal for band in spread.impedances], shown)
    panel = plot.panel("impedance", "ohm", (low, high), ticks, logarithmic=True)
    mark_bounds(panel, design)
    panel.curves += map(_with_band, spread.impedances)
    _impedance_deviations(plot, "from stated", spread)
    return plot.finish(_said("Impedance", spread.impedances, spread))


def deviation_page(spread: Spread, design: Design, *, mark: str = "") -> Page:
    """What `deviation_plot` saves; within `drawing_settings`."""
    what = "How far builds lie from what is stated. Between the lines: 9 builds in 10. Dotted: the worst found"
    plot = Plot(spread.freq_hz, plot_heading(design, what, mark), (1, 1))
    _level_deviations(plot, "level from stated", spread)
    _impedance_deviations(plot, "impedance from stated", spread)
    owners = ", ".join(band.owner for band in (*spread.levels, *spread.impedances))
    return plot.finish(
        f"Distance of {owners} from the stated levels and impedances over frequency: the band of 5 to 95 per cent of "
        f"{spread.builds} builds."
    )


def _level_deviations(plot: Plot, label: str, spread: Spread) -> None:
    """In dB, where the driver is heard."""
    heard = [np.where(b.nominal > b.nominal.max() - HEARD_DB, 0, np.nan) for b in spread.levels]
    _deviations(plot, label, "dB", spread.levels, [
        _edges(band) - band.nominal + gap for band, gap in zip(spread.levels, heard, strict=True)
    ])  # fmt: skip


def _impedance_deviations(plot: Plot, label: str, spread: Spread) -> None:
    edges = [100 * (_edges(band) / band.nominal - 1) for band in spread.impedances]
    _deviations(plot, label, "%", spread.impedances, edges)


def _with_band(band: Envelope) -> Curve:
    return Curve(band.owner, band.nominal[None], band=band.percentiles[[LOW, HIGH]])


def _edges(band: Envelope) -> Real:
    """Of 9 builds in 10, then of the worst found: (4, F)."""
    return np.vstack((band.percentiles[[LOW, HIGH]], band.worst))


def _deviations(plot: Plot, label: str, unit: str, bands: Sequence[Envelope], edges: Sequence[Real]) -> None:
    """A panel: both edges of 9 builds in 10 in the curve's own line, the worst found thin and dotted."""
    far = max((float(np.nanmax(np.abs(each))) for each in edges if np.isfinite(each).any()), default=0)
    step = next((step for step in STEPS if far <= 4 * step), 10.0 ** ceil(log10(max(far, 1))))
    end = step * max(1, ceil(far / step))
    panel = plot.panel(label, unit, (-1.05 * end, 1.05 * end), np.arange(-end, end + step / 2, step))
    panel.curves += [Curve(band.owner, each[:2], outer=each[2:]) for band, each in zip(bands, edges, strict=True)]


def _said(what: str, bands: Sequence[Envelope], spread: Spread) -> str:
    return (
        f"{what} of {', '.join(band.owner for band in bands)} over frequency with the band of 5 to 95 per cent of "
        f"{spread.builds} builds, and below its distance from the stated values."
    )
