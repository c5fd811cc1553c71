"""Response -> drawings: the level of every driver, and the impedance at every input, over frequency.

In: a solved response, the design that it belongs to, and what was measured on it. Out: SVG and PNG bytes. Each
curve bears its name at its end; what the design expects is shaded. It refuses to work out anything: it draws what it
is given.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import ceil, floor, hypot, isfinite, log2
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from shuntwise import units as u
from shuntwise.documents.plot_labels import Box, Placer, spaced
from shuntwise.documents.plot_page import (
    GREY,
    INK,
    Drawing,
    Heading,
    LineStyle,
    Page,
    drawable,
    drawing_settings,
    line_style,
)
from shuntwise.documents.reference import is_ideal, of_impedance, of_levels
from shuntwise.documents.table import decibels, degrees, input_impedance
from shuntwise.figures.usual import CrossingFigures, LeastFigures, Usual, group_name

if TYPE_CHECKING:
    from shuntwise.model.design import Design, Expectation
    from shuntwise.response.solve import Response

Real = npt.NDArray[np.float64]

WINDOW_DB = 54.0
"""How far down a level plot looks: from +6 to -48 dB. What lies lower is not heard beside its neighbour."""

HIGHEST_DB = 48.0

MOST_NOTES = 8
"""More crossings than this are a curiosity, and no room is left to write on."""

MARGIN_GAP = 46.0
"""Pixels between the panel and the names at its right, bridged by a piece of each line."""


@dataclass(frozen=True)
class Note:
    """A point worth a note: at a frequency and a value (dB or ohm). The note may have several lines."""

    freq_hz: float
    value: float
    text: str


@dataclass(frozen=True)
class Curve:
    """One line: `values` (F,), NaN where there is none."""

    name: str
    values: Real
    style: LineStyle


def response_plot(
    response: Response, design: Design, figures: Usual, *, mark: str = "", phase: bool = False
) -> Drawing:
    """The level across every driver in dB over the input's 1 V, and its phase below if wanted.

    Crossings are marked; `mark` tells from which text the plot was made (see `mark.design_mark`).
    """
    names = [driver.name for driver in response.network.drivers]
    voltages = [response.driver_voltage(name) for name in names]
    levels = _curves(names, map(decibels, voltages))
    notes = [crossing_note(crossing) for crossing in figures.crossings[:MOST_NOTES]]
    with drawing_settings():
        heading = plot_heading(design, f"Level across each driver, for 1 V {of_levels(design.amplifier)}", mark)
        plot = Plot(response.freq_hz, heading, (2.3, 1) if phase else (1,), names)
        low, high, step = level_range(levels)
        panel = plot.panel(0, "level / dB", (low, high), np.arange(low, high + step / 2, step))
        for expectation in design.expectations:
            panel.expected_frequency(expectation)
        panel.curves(levels)
        panel.notes(notes)
        if phase:
            angles = _curves(names, (_unwound(degrees(voltage)) for voltage in voltages))
            plot.panel(1, "phase / degrees", (-190, 190), range(-180, 181, 90)).curves(angles, named=False)
        return plot.page.save(f"Levels of {', '.join(names)} over frequency. {_said(notes)}")


def impedance_plot(response: Response, design: Design, figures: Usual, *, mark: str = "") -> Drawing:
    """Modulus and phase of the impedance at every input, the least modulus marked."""
    names = [feed.name for feed in response.network.feeds]
    impedances = [input_impedance(response, name) for name in names]
    sizes = _curves(names, map(np.abs, impedances))
    notes = [least_note(least, named=len(names) > 1) for least in figures.least if isfinite(least.impedance.value)]
    with drawing_settings():
        where = of_impedance(design.amplifier)
        each = "at each input" if is_ideal(design.amplifier) else f"of each input {where}"
        what = f"Impedance {each}, the other amplifiers at rest" if len(names) > 1 else f"Impedance {where}"
        plot = Plot(response.freq_hz, plot_heading(design, what, mark), (2.3, 1), names)
        low, high, ticks = impedance_range(sizes, [least.impedance.value for least in figures.least])
        panel = plot.panel(0, "impedance / ohm", (low, high), ticks, logarithmic=True)
        for expectation in design.expectations:
            panel.expected_impedance(expectation)
        panel.curves(sizes)
        panel.notes(notes)
        angles = _curves(names, (_unwound(degrees(impedance)) for impedance in impedances))
        plot.panel(1, "phase / degrees", (-96, 96), range(-90, 91, 45)).curves(angles, named=False)
        return plot.page.save(f"Impedance at {', '.join(names)} over frequency. {_said(notes)}")


def crossing_note(crossing: CrossingFigures) -> Note:
    """Where curves cross; with sensitivities counted in, on the first driver's curve where both are as loud."""
    names = f"{group_name(crossing.first)} and {group_name(crossing.second)}"
    levels = " and ".join(dict.fromkeys(f"{level.value:z.1f} dB" for level in crossing.levels))
    how = "as loud" if crossing.by_sensitivity else "cross"
    where = f"{how} at {u.write(crossing.freq_hz, u.HERTZ, 3)}, {levels}"
    return Note(crossing.freq_hz, crossing.levels[0].value, f"{names}\n{where}")


def least_note(least: LeastFigures, *, named: bool) -> Note:
    whose, ohm = f" of {least.input}" if named else "", least.impedance.value
    text = f"least{whose} {u.write(ohm, u.OHM, 3)}\nat {u.write(least.freq_hz, u.HERTZ, 3)}"
    return Note(least.freq_hz, ohm, text)


def _curves(names: Sequence[str], values: Iterable[Real]) -> list[Curve]:
    return [Curve(name, row, line_style(place)) for place, (name, row) in enumerate(zip(names, values, strict=True))]


def level_range(levels: Sequence[Curve]) -> tuple[float, float, float]:
    """Bottom, top and step in dB: from +6 down to -48, higher if a level is, lower only if all are far down."""
    values = [value for curve in levels for value in curve.values if np.isfinite(value)]
    peak = max(values, default=0.0)
    top = min(max(6.0, 6.0 * ceil((peak + 1) / 6)), HIGHEST_DB)
    if peak < -30:
        top = 6.0 * ceil(peak / 6) + 6
        return top - WINDOW_DB, top, 6.0
    low = 6.0 - WINDOW_DB
    return low, top, 6.0 if top - low <= 66 else 12.0


def impedance_range(sizes: Sequence[Curve], least: Iterable[float] = ()) -> tuple[float, float, list[float]]:
    """Bottom, top and ticks in ohm: at least three octaves, at most ten, the low end kept.

    Ticks stand at 2, 4, 8, 16 ohm and so on, which are the nominal impedances; above 1000 ohm at 1, 2 and 5.
    """
    values = [v for curve in sizes for v in curve.values if np.isfinite(v) and v > 0]
    values += [v for v in least if np.isfinite(v) and v > 0]
    low = floor(log2(max(min(values, default=4.0), 1e-4)) - 0.4)
    high = max(low + 3, min(ceil(log2(max(values, default=16.0)) + 0.15), low + 10))
    ticks = [2.0**power for power in range(low, high + 1)]
    if high > 10:
        ticks = [digit * 10.0**power for power in range(-4, 8) for digit in (1, 2, 5)]
    return 2.0**low, 2.0**high, [tick for tick in ticks if 2.0**low <= tick <= 2.0**high]


def plot_heading(design: Design, what: str, mark: str) -> Heading:
    variant = ""
    if design.variant is not None:
        title = next((v.title for v in design.variants if v.name == design.variant), None)
        variant = f"   variant {design.variant}" + (f": {title}" if title else "")
    foot = f"design mark {mark}" if mark else ""
    return Heading(drawable(design.title or "Design without a title"), drawable(what + variant), drawable(foot))


def _tick(value: float, *, signed: bool) -> str:
    if signed and value:
        return f"{value:+g}".replace("-", "−")
    return f"{value / 1000:g}k" if value >= 1000 and value % 100 == 0 else f"{value:g}"


def _said(notes: Sequence[Note]) -> str:
    return " ".join(note.text.replace("\n", " ") + "." for note in notes)


def _minus(text: str) -> str:
    """A minus sign as long as a plus, before digits."""
    return re.sub(r"(?<![\w)])-(?=\d)", "−", text)


def _unwound(phase: Real) -> Real:
    """The phase with a gap where it jumps from one end of its range to the other."""
    jumps = np.abs(np.diff(phase, prepend=phase[:1])) > 180
    return np.where(jumps, np.nan, phase)


def _line(style: LineStyle) -> dict[str, Any]:
    dashes = (0, style.dashes) if style.dashes else "-"
    return {"color": style.colour, "linewidth": style.width, "linestyle": dashes, "solid_capstyle": "butt"}


class Plot:
    """A page with its panels; names at the right end need the widest name's room."""

    def __init__(self, freq_hz: Real, heading: Heading, heights: Sequence[float], names: Sequence[str]) -> None:
        self.freq_hz = freq_hz
        limits = (float(freq_hz.min()), float(freq_hz.max()))
        self.page = Page(heading, heights, limits)
        self.names = {name: self.page.fitted(drawable(name), 240, 10.5, "bold") for name in names}
        widest = max((self.page.text_size(text, 10.5, "bold")[0] for text in self.names.values()), default=0)
        self.page.keep_free(widest + MARGIN_GAP + 26)

    def panel(
        self, row: int, label: str, limits: tuple[float, float], ticks: Iterable[float], *, logarithmic: bool = False
    ) -> Panel:
        from matplotlib.ticker import FixedFormatter, FixedLocator, NullLocator

        axes = self.page.panels[row]
        if logarithmic:
            axes.set_yscale("log", base=2)
        axes.set_ylim(*limits)
        ticks = list(ticks)
        axes.yaxis.set_major_locator(FixedLocator(ticks))
        axes.yaxis.set_minor_locator(NullLocator())
        axes.yaxis.set_major_formatter(FixedFormatter([_tick(tick, signed=limits[0] < 0) for tick in ticks]))
        axes.set_ylabel(label)
        axes.yaxis.set_label_coords(-84 / axes.get_window_extent().width, 0.5)
        if limits[0] < 0 < limits[1]:
            axes.axhline(0, color="#b4b4b4", linewidth=1.0, zorder=1)
        return Panel(self, axes)


class Panel:
    def __init__(self, plot: Plot, axes: Any) -> None:
        self.plot, self.page, self.axes = plot, plot.page, axes
        frame = axes.get_window_extent(self.page.renderer)
        self.frame = Box(frame.x0, frame.y0, frame.x1, frame.y1)
        self.placer = Placer(self.frame.grown(-8))
        self.expectations: list[Note] = []

    def pixels(self, x: npt.ArrayLike, y: npt.ArrayLike) -> tuple[Real, Real]:
        points = self.axes.transData.transform(np.column_stack((np.atleast_1d(x), np.atleast_1d(y))))
        return points[:, 0], points[:, 1]

    # --- curves and their names

    def curves(self, curves: Sequence[Curve], *, named: bool = True) -> None:
        low, high = self.axes.get_ylim()
        freq_hz = self.plot.freq_hz
        for order, curve in enumerate(curves):
            self.axes.plot(freq_hz, curve.values, zorder=3 + order / 100, **_line(curve.style))
            seen = (curve.values >= low) & (curve.values <= high)
            self.placer.add_curve(*self.pixels(freq_hz, np.where(seen, curve.values, np.nan)))
        if named:
            self._names([(curve, *self._end(curve, low, high)) for curve in curves])

    def shade(self, low: Real, high: Real) -> None:
        """What lies between two curves, in a grey that shows on paper."""
        self.axes.fill_between(self.plot.freq_hz, low, high, color="#000000", alpha=0.22, linewidth=0, zorder=1.5)

    def _end(self, curve: Curve, low: float, high: float) -> tuple[str, float, float]:
        """Where the curve is last seen: at the `right`, at the `bottom` or `top` of the panel, or `nowhere`."""
        seen = np.nonzero((curve.values >= low) & (curve.values <= high))[0]
        if not len(seen):
            return "nowhere", self.frame.right, self.frame.bottom
        last = int(seen[-1])
        x, y = self.pixels(self.plot.freq_hz[last], curve.values[last])
        if last == len(curve.values) - 1:
            return "right", float(x[0]), float(y[0])
        following = curve.values[last + 1]
        return "top" if following > high else "bottom", float(x[0]), float(y[0])

    def _names(self, ends: Sequence[tuple[Curve, str, float, float]]) -> None:
        """At the right where the curve ends there, joined to it by a piece of the line; else where it leaves."""
        right = [entry for entry in ends if entry[1] in ("right", "nowhere")]
        height = self.page.text_size("Ag", 10.5, "bold")[1]
        lowest, highest = self.frame.bottom + height / 2, self.frame.top - height / 2
        places = spaced([y for *_, y in right], height * 1.25, lowest, highest)
        for (curve, kind, _, y), at in zip(right, places, strict=True):
            text = self.plot.names[curve.name]
            if kind == "right":
                self._piece(curve.style, (self.frame.right, y), (self.frame.right + MARGIN_GAP - 6, at))
            else:
                text = f"↓ {text}"
            self._text(self.frame.right + MARGIN_GAP, at, text, curve.style.colour)
        for curve, kind, x, y in ends:
            if kind in ("top", "bottom"):
                width, height = self.page.text_size(self.plot.names[curve.name], 10.5, "bold")
                box = self.placer.place(x, y, width, height)
                self._text(box.left, (box.bottom + box.top) / 2, self.plot.names[curve.name], curve.style.colour)

    def _piece(self, style: LineStyle, start: tuple[float, float], end: tuple[float, float]) -> None:
        from matplotlib.lines import Line2D

        (x1, y1), (x2, y2) = self.page.fraction(*start), self.page.fraction(*end)
        figure = self.page.figure
        figure.add_artist(Line2D((x1, x2), (y1, y2), transform=figure.transFigure, **_line(style)))

    def _text(self, x: float, y: float, text: str, colour: str, *, size: float = 10.5, weight: str = "bold") -> None:
        """Text whose left end stands at (x, y) in pixels, on a white ground that keeps lines off it."""
        ground = {"facecolor": "white", "edgecolor": "none", "alpha": 0.8, "pad": 1}
        self.page.figure.text(*self.page.fraction(x, y), text, size=size, weight=weight, color=colour, va="center",
                              linespacing=1.15, bbox=ground)  # fmt: skip

    def _note(self, x: float, y: float, text: str, colour: str, size: float, near: float) -> Box:
        """A note of some lines, each no longer than a third of the page, beside the point (x, y)."""
        lines = [self.page.fitted(drawable(_minus(line)), self.page.width / 3, size) for line in text.split("\n")]
        width, height = self.page.text_size("\n".join(lines), size)
        box = self.placer.place(x, y, width, height, near=near)
        self._text(box.left, (box.bottom + box.top) / 2, "\n".join(lines), colour, size=size, weight="normal")
        return box

    # --- notes

    def notes(self, notes: Sequence[Note]) -> None:
        """Rings on the curves first, then their notes in what room is left, then what the shades mean."""
        from matplotlib.lines import Line2D

        low, high = self.axes.get_ylim()
        notes = [note for note in notes if low <= note.value <= high]
        spots = [self.spot(note) for note in notes]
        for (x, y), note in zip(spots, notes, strict=True):
            self.axes.plot([note.freq_hz], [note.value], marker="o", markersize=7, markerfacecolor="white",
                           markeredgecolor=INK, markeredgewidth=1.3, zorder=6, clip_on=False)  # fmt: skip
            self.placer.add_box(Box(x, y, x, y).grown(9))
        for (x, y), note in zip(spots, notes, strict=True):
            touch_x, touch_y = self._note(x, y, note.text, INK, 9, near=16).nearest(x, y)
            reach = hypot(touch_x - x, touch_y - y)
            if reach > 28:
                rim = (x + 9 * (touch_x - x) / reach, y + 9 * (touch_y - y) / reach)
                ends = [self.page.fraction(*point) for point in (rim, (touch_x, touch_y))]
                self.page.figure.add_artist(Line2D(*zip(*ends, strict=True), transform=self.page.figure.transFigure,
                                                   color=GREY, linewidth=0.8))  # fmt: skip
        for note in self.expectations:
            self._note(*self.spot(note), note.text, GREY, 8.5, near=9)

    def spot(self, note: Note) -> tuple[float, float]:
        """Where the note's point is, in pixels."""
        (x,), (y,) = self.pixels(note.freq_hz, note.value)
        return float(x), float(y)

    # --- what the design expects

    def expected_frequency(self, expectation: Expectation) -> None:
        """A band of frequency in which a crossing or a corner is expected."""
        if expectation.quantity not in ("crossing", "corner"):
            return
        at, within = expectation.clauses["at"].value, expectation.clauses["within"].value
        self._band(at * (1 - within), at * (1 + within), *self.axes.get_ylim())
        subjects = " and ".join(expectation.subjects)
        text = f"{expectation.quantity} of {subjects}\nexpected at {u.write(at, u.HERTZ, 3)} ± {within * 100:.3g} %"
        self.expectations.append(Note(at, self.axes.get_ylim()[0], text))

    def expected_impedance(self, expectation: Expectation) -> None:
        """What lies below the least impedance expected, or above the greatest."""
        if expectation.quantity != "impedance":
            return
        start, end = (float(self.plot.freq_hz.min()), float(self.plot.freq_hz.max()))
        clauses = expectation.clauses
        start, end = (clauses["from"].value, clauses["to"].value) if "from" in clauses else (start, end)
        low, high = self.axes.get_ylim()
        for word, bottom, top in (("above", low, None), ("below", None, high)):
            if word in clauses:
                edge = clauses[word].value
                self._band(start, end, edge if bottom is None else bottom, edge if top is None else top)
                self.axes.plot([start, end], [edge, edge], color=GREY, linewidth=0.8, linestyle=(0, (2, 2)), zorder=2)
                self.placer.add_curve(*self.pixels([start, end], [edge, edge]))
                self.expectations.append(Note(start, edge, f"expected {word} {u.write(edge, u.OHM, 3)}"))

    def _band(self, start: float, end: float, bottom: float, top: float) -> None:
        shade = {"color": "#000000", "alpha": 0.07, "linewidth": 0, "zorder": 0.5}
        self.axes.fill_between([start, end], [bottom] * 2, [top] * 2, **shade)
