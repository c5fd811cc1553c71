"""Spread -> drawings: the band in which builds lie, for every driver's level and every input's impedance.

In: a `Spread` and the design that it belongs to. Out: SVG and PNG bytes. The upper panel has the stated curve on the
shade of 9 builds in 10; the lower one has how far from the stated curve those builds lie, and dotted how far the
worst. It refuses to work out anything beyond that difference.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import ceil, log10

import numpy as np
import numpy.typing as npt

from shuntwise.documents.plot_page import Drawing, drawing_settings, line_style
from shuntwise.documents.plots import Curve, Plot, impedance_range, level_range, plot_heading
from shuntwise.model.design import Design
from shuntwise.tolerance.spread import PERCENT, Envelope, Spread

Real = npt.NDArray[np.float64]

LOW, HIGH = PERCENT.index(5), PERCENT.index(95)

HEARD_DB = 20.0
"""What lies further below a driver's greatest level than this is left out of the lower panel."""

SHOWN = "In the shade and, below, between the lines: 9 builds in 10. Dotted: the worst found"

STEPS = (0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50)
"""Steps of the lower panel's axis, in dB or %."""


def level_spread_plot(spread: Spread, design: Design, *, mark: str = "") -> Drawing:
    """Levels with their bands, and below how many dB from the stated level builds lie, where the driver is heard."""
    names = [band.owner for band in spread.levels]
    stated = _curves(spread.levels, [band.nominal for band in spread.levels])
    with drawing_settings():
        what = f"Level across each driver. {SHOWN}"
        plot = Plot(spread.freq_hz, plot_heading(design, what, mark), (1.7, 1), names)
        low, high, step = level_range(stated)
        panel = plot.panel(0, "level / dB", (low, high), np.arange(low, high + step / 2, step))
        for band in spread.levels:
            panel.shade(np.maximum(band.percentiles[LOW], low), np.maximum(band.percentiles[HIGH], low))
        panel.curves(stated)
        heard = [np.where(b.nominal > b.nominal.max() - HEARD_DB, 0, np.nan) for b in spread.levels]
        _deviations(plot, "from stated / dB", spread.levels, [
            tuple(edge - band.nominal + gap for edge in _edges(band))
            for band, gap in zip(spread.levels, heard, strict=True)
        ])  # fmt: skip
        return plot.page.save(_said("Levels", names, spread))


def impedance_spread_plot(spread: Spread, design: Design, *, mark: str = "") -> Drawing:
    """Impedances with their bands, and below how many per cent from the stated impedance builds lie."""
    names = [band.owner for band in spread.impedances]
    stated = _curves(spread.impedances, [band.nominal for band in spread.impedances])
    with drawing_settings():
        what = f"Impedance. {SHOWN}"
        plot = Plot(spread.freq_hz, plot_heading(design, what, mark), (1.7, 1), names)
        low, high, ticks = impedance_range(stated, [float(band.worst.min()) for band in spread.impedances])
        panel = plot.panel(0, "impedance / ohm", (low, high), ticks, logarithmic=True)
        for expectation in design.expectations:
            panel.expected_impedance(expectation)
        for band in spread.impedances:
            panel.shade(band.percentiles[LOW], band.percentiles[HIGH])
        panel.curves(stated)
        panel.notes([])
        _deviations(plot, "from stated / %", spread.impedances, [
            tuple(100 * (edge / band.nominal - 1) for edge in _edges(band)) for band in spread.impedances
        ])  # fmt: skip
        return plot.page.save(_said("Impedance", names, spread))


def _edges(band: Envelope) -> tuple[Real, Real, Real, Real]:
    return band.percentiles[LOW], band.percentiles[HIGH], band.worst[0], band.worst[1]


def _deviations(plot: Plot, label: str, bands: Sequence[Envelope], edges: Sequence[tuple[Real, ...]]) -> None:
    """The lower panel: both edges of 9 builds in 10 in the curve's own line, the worst found thin and dotted."""
    far = max((float(np.nanmax(np.abs(edge))) for each in edges for edge in each if np.isfinite(edge).any()), default=0)
    step = next((step for step in STEPS if far <= 4 * step), 10.0 ** ceil(log10(max(far, 1))))
    end = step * max(1, ceil(far / step))
    panel = plot.panel(1, label, (-1.05 * end, 1.05 * end), np.arange(-end, end + step / 2, step))
    for rank in range(4):
        curves = _curves(bands, [each[rank] for each in edges])
        if rank > 1:
            curves = [replace(c, style=replace(c.style, dashes=(1, 1.6), width=0.9)) for c in curves]
        panel.curves(curves, named=False)


def _curves(bands: Sequence[Envelope], values: Sequence[Real]) -> list[Curve]:
    rows = enumerate(zip(bands, values, strict=True))
    return [Curve(band.owner, row, line_style(place)) for place, (band, row) in rows]


def _said(what: str, names: Sequence[str], spread: Spread) -> str:
    return (
        f"{what} of {', '.join(names)} over frequency with the band of 5 to 95 per cent of {spread.builds} builds, "
        "and below its distance from the stated values."
    )
