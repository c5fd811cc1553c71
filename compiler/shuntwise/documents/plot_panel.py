"""Curves, shades and notes -> a drawn page: what a plot has in each of its panels, and where its names go.

In: curves over frequency, points worth a note, what is expected. Out: a `Page`, ready to be saved. What cannot be told
apart on the page is drawn once and bears all its names. A curve that leaves the frame has an arrowhead there and its
name. Lines that lead to a point or a name are thin and grey, and end in a dot. It refuses to know what a curve means.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import hypot
from typing import Any

import numpy as np
import numpy.typing as npt

from shuntwise import units as u
from shuntwise.documents.plot_labels import Box, Placer, coincide, spaced
from shuntwise.documents.plot_page import (
    GREY,
    INK,
    SHADE,
    ZERO,
    Heading,
    LineStyle,
    Page,
    drawable,
    line_style,
    value_axis,
)

Real = npt.NDArray[np.float64]

SEEN = 1.0
"""Pixels: curves that are nowhere further apart are one to the eye. The thinnest is 2.5 wide."""

LEADER, KEY, GAP = 28.0, 42.0, 8.0
"""Pixels right of the panel: a grey line from the curve's end, a piece of the curve as in a legend, and what is left
free before its name and behind it."""

NAME_ROOM = 230.0

HATCHED = 0.018
"""Share of a panel's height that is hatched below a limit."""

NARROW = 70.0
"""Pixels: a curve that is out of the frame for no more than this has one arrowhead there, not two."""

NAME_SIZE, NOTE_SIZE, LESSER_SIZE = 10.5, 9.0, 8.5

LEADING = {"color": GREY, "linewidth": 0.8}


@dataclass(frozen=True)
class Note:
    """A point worth a note: at a frequency and a value (dB or ohm). The note may have several lines."""

    freq_hz: float
    value: float
    text: str


@dataclass(frozen=True)
class Curve:
    """What a driver or an input has in one panel: `lines` (K, F), NaN where there is none, infinite where it lies
    beyond every page. `outer` (2, F) are drawn thin and dotted, between the rows of `band` (2, F) is shade.
    """

    name: str
    lines: Real
    outer: Real | None = None
    band: Real | None = None

    @property
    def rows(self) -> Real:
        """All that is drawn of it."""
        return np.vstack([rows for rows in (self.lines, self.outer, self.band) if rows is not None])


@dataclass(frozen=True)
class Bundle:
    """Curves that are one to the eye: the first of them, and the names of all."""

    curve: Curve
    names: tuple[str, ...]


@dataclass(frozen=True)
class Absence:
    """A curve out of the frame, above it or below: from one frequency to another, None where the page ends first."""

    above: bool
    from_hz: float | None
    to_hz: float | None


@dataclass(frozen=True)
class _Zone:
    """Shade or hatching between two frequencies and two values, bounded by lines at the `edges`."""

    freq_hz: tuple[float, float]
    values: tuple[float, float]
    upright: bool
    edges: tuple[float, ...]
    text: str
    limit: bool = False


class Plot:
    """A page with its panels: they are filled, then all is drawn by `finish`."""

    def __init__(self, freq_hz: Real, heading: Heading, heights: Sequence[float]) -> None:
        self.freq_hz = freq_hz
        self.page = Page(heading, heights, (float(freq_hz.min()), float(freq_hz.max())))
        self.panels: list[Panel] = []

    def panel(
        self, label: str, unit: str, limits: tuple[float, float], ticks: Iterable[float], *, logarithmic: bool = False
    ) -> Panel:
        """The next panel from above."""
        axes = self.page.panels[len(self.panels)]
        if logarithmic:
            axes.set_yscale("log", base=2)
        axes.set_ylim(*limits)
        value_axis(axes, f"{label} / {unit}", {tick: _tick(tick, signed=limits[0] < 0) for tick in ticks})
        if limits[0] < 0 < limits[1]:
            axes.axhline(0, color=ZERO, linewidth=1.0, zorder=1)
        self.panels.append(Panel(self, axes, limits, label, unit))
        return self.panels[-1]

    def finish(self, said: str) -> Page:
        """Draw everything; what is said of the page comes first in its description."""
        bundles = [panel.bundles() for panel in self.panels]
        styles = self._styles()
        named = [place == 0 or _names(found) != _names(bundles[0]) for place, found in enumerate(bundles)]
        labels = {
            bundle.names: self.page.listed(bundle.names, NAME_ROOM, NAME_SIZE, "bold")
            for found, wanted in zip(bundles, named, strict=True)
            if wanted
            for bundle in found
        }
        widest = max((self.page.text_size(f"↓ {text}", NAME_SIZE, "bold")[0] for text in labels.values()), default=0)
        self.page.keep_free(LEADER + KEY + 2 * GAP + widest + GAP)
        told = [said]
        for panel, found, wanted in zip(self.panels, bundles, named, strict=True):
            told += panel.draw(found, styles, labels if wanted else {})
        self.page.description = " ".join(told)
        return self.page

    def _styles(self) -> Mapping[str, LineStyle]:
        """One style for all that is the same to the eye in every panel."""
        firsts: list[str] = []
        styles: dict[str, LineStyle] = {}
        for name in dict.fromkeys(curve.name for panel in self.panels for curve in panel.curves):
            alike = (one for one in firsts if all(panel.alike(one, name) for panel in self.panels))
            first = next(alike, name)
            if first == name:
                firsts.append(name)
            styles[name] = line_style(firsts.index(first))
        return styles


def _names(bundles: Sequence[Bundle]) -> list[tuple[str, ...]]:
    return [bundle.names for bundle in bundles]


class Panel:
    """One panel. What is drawn in it is handed to it first."""

    def __init__(self, plot: Plot, axes: Any, limits: tuple[float, float], label: str, unit: str) -> None:
        self.plot, self.page, self.axes, self.limits = plot, plot.page, axes, limits
        self.label, self.unit = label, unit
        self.curves: list[Curve] = []
        self.notes: list[Note] = []
        self.zones: list[_Zone] = []

    @property
    def ends(self) -> tuple[float, float]:
        """The lowest and the highest frequency."""
        return float(self.plot.freq_hz.min()), float(self.plot.freq_hz.max())

    # --- what is handed to it

    def expected_band(self, from_hz: float, to_hz: float, text: str) -> None:
        """A band of frequency in which something is expected."""
        self.zones.append(_Zone((from_hz, to_hz), self.limits, True, (from_hz, to_hz), text))

    def expected_side(self, from_hz: float, to_hz: float, edge: float, word: str, text: str) -> None:
        """Values above or below (as `word` says) an edge are expected between two frequencies; shade on the others."""
        low, high = self.limits
        values = (low, edge) if word == "above" else (edge, high)
        self.zones.append(_Zone((from_hz, to_hz), values, False, (edge,), text))

    def least_allowed(self, value: float, text: str) -> None:
        """A line that no curve should go below, whatever the design expects."""
        low, high = self.limits
        below = value * (low / high) ** HATCHED if low > 0 else value - HATCHED * (high - low)
        self.zones.append(_Zone(self.ends, (below, value), False, (value,), text, limit=True))

    # --- which curves are one

    def bundles(self) -> list[Bundle]:
        """The curves, those that cannot be told apart joined with the first of them."""
        found: list[Bundle] = []
        for curve in self.curves:
            for place, bundle in enumerate(found):
                if self.alike(bundle.curve.name, curve.name):
                    found[place] = Bundle(bundle.curve, (*bundle.names, curve.name))
                    break
            else:
                found.append(Bundle(curve, (curve.name,)))
        return found

    def alike(self, first: str, second: str) -> bool:
        """Are two curves one to the eye, here? They are where one of them has none here."""
        curves = {curve.name: curve.rows for curve in self.curves if curve.name in (first, second)}
        if len(curves) < 2:
            return True
        x, heights = self._seen(np.vstack([curves[first], curves[second]]))
        rows = len(curves[first])
        return coincide(x, heights[:rows], heights[rows:], SEEN)

    def _seen(self, rows: Real) -> tuple[Real, Real]:
        """Where the points of curves (K, F) lie in pixels: (F,) and (K, F), NaN where they are out of the frame."""
        low, high = self.limits
        inside = np.where((rows >= low) & (rows <= high), rows, np.nan)
        x, y = self.pixels(np.broadcast_to(self.plot.freq_hz, rows.shape).ravel(), inside.ravel())
        return x[: rows.shape[1]], y.reshape(rows.shape)

    def pixels(self, x: npt.ArrayLike, y: npt.ArrayLike) -> tuple[Real, Real]:
        points = self.axes.transData.transform(np.column_stack((np.atleast_1d(x), np.atleast_1d(y))))
        return points[:, 0], points[:, 1]

    def spot(self, freq_hz: float, value: float) -> tuple[float, float]:
        """Where a point is, in pixels."""
        (x,), (y,) = self.pixels(freq_hz, value)
        return float(x), float(y)

    def _box(self, freq_hz: tuple[float, float], values: tuple[float, float]) -> Box:
        (left, right), (bottom, top) = self.pixels(freq_hz, values)
        return Box(float(left), float(bottom), float(right), float(top))

    # --- drawing

    def draw(
        self, bundles: Sequence[Bundle], styles: Mapping[str, LineStyle], labels: Mapping[tuple[str, ...], str]
    ) -> list[str]:
        """Everything; `labels` are the names at the right, none where those of a panel above serve. Returns what its
        curves do that the eye might miss, in words.
        """
        frame = self.axes.get_window_extent(self.page.renderer)
        self.frame = Box(frame.x0, frame.y0, frame.x1, frame.y1)
        self.placer = Placer(self.frame.grown(-6))
        for zone in self.zones:
            self._zone(zone)
        for order, bundle in enumerate(bundles):
            self._curve(bundle.curve, styles[bundle.curve.name], 3 + order / 100)
        rings = [(note, *self.spot(note.freq_hz, note.value)) for note in self.notes if self._inside(note.value)]
        for note, x, y in rings:
            self.axes.plot([note.freq_hz], [note.value], marker="o", markersize=7, markerfacecolor="white",
                           markeredgecolor=INK, markeredgewidth=1.3, zorder=6, clip_on=False)  # fmt: skip
            self.placer.add_box(Box(x, y, x, y).grown(9))
        told = [f"{' and '.join(bundle.names)} coincide." for bundle in bundles if labels and len(bundle.names) > 1]
        if labels:
            self._names(bundles, styles, labels)
        told += self._exits(bundles, styles)
        for note, x, y in rings:
            self._ringed(note, x, y)
        for zone in sorted(self.zones, key=lambda zone: not zone.limit):
            told.append(zone.text.replace("\n", " ") + ".")
            self._zone_text(zone)
        return told

    def _zone_text(self, zone: _Zone) -> None:
        """At the foot of an upright one, else on its edge; beside it where there is no room."""
        values = zone.values if zone.upright else (zone.edges[0], zone.edges[0])
        if self._inside(values[0]):
            text, whole = self._note_text(zone.text, LESSER_SIZE), self._box(zone.freq_hz, values)
            first = self._box(zone.freq_hz, (values[0], values[0]))
            for at, on in ((first, not zone.upright), (whole, False)):
                if self._text(at, text, GREY, LESSER_SIZE, near=9, on=on) is not None:
                    break

    def _inside(self, value: float) -> bool:
        return self.limits[0] <= value <= self.limits[1]

    def _zone(self, zone: _Zone) -> None:
        """Shade with dotted edges; a limit is a whole line with hatching below."""
        low, high = zone.values
        fill: dict[str, Any] = {"color": "#000000", "alpha": 0.07, "linewidth": 0, "zorder": 0.5}
        if zone.limit:
            fill = {"facecolor": "none", "edgecolor": GREY, "hatch": "/////", "linewidth": 0, "zorder": 0.6}
        self.axes.fill_between(zone.freq_hz, [low] * 2, [high] * 2, **fill)
        look = {"linewidth": 1.2 if zone.limit else 0.8, "linestyle": "-" if zone.limit else (0, (2, 2))}
        for edge in zone.edges:
            ends = ((edge, edge), zone.values) if zone.upright else (zone.freq_hz, (edge, edge))
            self.axes.plot(*ends, color=GREY, zorder=2, **look)
            self.placer.add_curve(*self.pixels(*ends), weight=0.1 if zone.upright else 0.5)

    def _curve(self, curve: Curve, style: LineStyle, order: float) -> None:
        """The shade with thin edges, the lines in their style, the outermost dotted."""
        freq_hz, (low, high) = self.plot.freq_hz, self.limits
        far = high - low
        if curve.band is not None:
            least, most = np.clip(curve.band, low, high)
            self.axes.fill_between(freq_hz, least, most, facecolor=SHADE, edgecolor=GREY, linewidth=0.5, zorder=1.5)
        lines = np.nan_to_num(curve.lines, nan=np.nan, posinf=high + far, neginf=low / 2 if low > 0 else low - far)
        for line in lines:
            self.axes.plot(freq_hz, line, zorder=order, **_look(style))
        for line in () if curve.outer is None else curve.outer:
            self.axes.plot(freq_hz, line, zorder=order, color=style.colour, linewidth=0.9, linestyle=(0, (1, 1.6)))
        x, heights = self._seen(curve.rows)
        for row in heights:
            self.placer.add_curve(x, row)

    # --- names

    def _names(
        self, bundles: Sequence[Bundle], styles: Mapping[str, LineStyle], labels: Mapping[tuple[str, ...], str]
    ) -> None:
        """At the right, behind a piece of the line: joined to the curve's end, or with an arrow where that is out of
        the frame."""
        x, ends = self.frame.right, [self._end(bundle.curve) for bundle in bundles]
        arrows = {"above": "↑ ", "below": "↓ "}
        texts = [arrows.get(where, "") + labels[bundle.names] for bundle, (where, _) in zip(bundles, ends, strict=True)]
        size = NAME_SIZE
        sizes = self._heights(texts, size)
        if sum(sizes) > self.frame.top - self.frame.bottom:
            size *= (self.frame.top - self.frame.bottom) / sum(sizes)
            sizes = self._heights(texts, size)
        places = spaced([y for _, y in ends], sizes, self.frame.bottom, self.frame.top)
        for bundle, text, (where, y), at in zip(bundles, texts, ends, places, strict=True):
            style = styles[bundle.curve.name]
            if where == "inside":
                self.page.line((x, y), (x + LEADER - 4, at), **LEADING)
                self.page.line((x, y), (x, y), marker="o", markersize=3.5, color=GREY)
            self.page.line((x + LEADER, at), (x + LEADER + KEY, at), **_look(style))
            self.page.write(x + LEADER + KEY + GAP, at, text, style.colour, size=size, weight="bold", ground=1)

    def _heights(self, texts: Sequence[str], size: float) -> list[float]:
        least = self.page.text_size("Ag", size, "bold")[1]
        return [1.3 * max(least, self.page.text_size(text, size, "bold")[1]) for text in texts]

    def _end(self, curve: Curve) -> tuple[str, float]:
        """Where a curve is at the right: inside, above or below the frame, or nowhere, and at which height (pixels)."""
        low, high = self.limits
        last = float(curve.lines[0, -1])
        if last > high:
            return "above", self.frame.top
        if last < low:
            return "below", self.frame.bottom
        if not np.isfinite(last):
            return "nowhere", (self.frame.bottom + self.frame.top) / 2
        return "inside", self.spot(float(self.plot.freq_hz[-1]), last)[1]

    # --- curves that leave the frame

    def _exits(self, bundles: Sequence[Bundle], styles: Mapping[str, LineStyle]) -> list[str]:
        """An arrowhead wherever a curve leaves the frame, and its name; what is out of the frame, in words."""
        told: list[str] = []
        arrows: list[tuple[float, bool, Bundle]] = []
        for bundle in bundles:
            for row in bundle.curve.lines:
                for absence in absences(self.plot.freq_hz, row, self.limits, logarithmic=self.limits[0] > 0):
                    told.append(f"{self.label} of {' and '.join(bundle.names)} {self._absent(absence)}.")
                    arrows += [(freq, absence.above, bundle) for freq in self._heads(absence)]
        for freq, above, bundle in arrows:
            x, y = self.spot(freq, self.limits[above])
            # The numbers are matplotlib's markers whose tip is at the point.
            look = {"color": styles[bundle.curve.name].colour, "markersize": 9, "markeredgewidth": 0}
            self.axes.plot([freq], [self.limits[above]], marker=6 if above else 7, zorder=5, clip_on=False, **look)
            self.placer.add_box(Box(x - 9, y - 12, x + 9, y + 12))
        for freq, above, bundle in arrows:
            text = self.page.listed(bundle.names, NAME_ROOM, LESSER_SIZE, "bold")
            x, y = self.spot(freq, self.limits[above])
            self._text(Box(x, y, x, y), text, styles[bundle.curve.name].colour, LESSER_SIZE, 14, weight="bold")
        return told

    def _heads(self, absence: Absence) -> list[float]:
        """Where arrowheads stand: at both ends of an absence, in its middle if it is narrow."""
        ends = [freq for freq in (absence.from_hz, absence.to_hz) if freq is not None]
        if len(ends) == 2:
            (first, second), _ = self.pixels(ends, [self.limits[0]] * 2)
            if second - first < NARROW:
                return [float(np.sqrt(ends[0] * ends[1]))]
        return ends

    def _absent(self, absence: Absence) -> str:
        edge = f"{'above' if absence.above else 'below'} {self.limits[absence.above]:g} {self.unit}"
        words = (("from", absence.from_hz), ("to", absence.to_hz))
        where = [f"{word} {u.write(freq, u.HERTZ, 3)}" for word, freq in words if freq is not None]
        return " ".join([f"is {edge}", *where])

    # --- notes

    def _ringed(self, note: Note, x: float, y: float) -> None:
        """A note beside its ring, joined to the nearest of its lines if it is further away."""
        at, text = Box(x, y, x, y), self._note_text(note.text, NOTE_SIZE)
        box = self._text(at, text, INK, NOTE_SIZE, near=16, led=True)
        if box is None:
            return
        lines = text.split("\n")
        widths, tall = [self.page.text_size(line, NOTE_SIZE)[0] for line in lines], (box.top - box.bottom) / len(lines)
        rows = [
            Box(box.left, box.top - (place + 1) * tall, box.left + width, box.top - place * tall)
            for place, width in enumerate(widths)
        ]
        reach, touch = min((hypot(end[0] - x, end[1] - y), end) for end in (at.towards(row)[1] for row in rows))
        if reach > 28:
            rim = (x + 9 * (touch[0] - x) / reach, y + 9 * (touch[1] - y) / reach)
            self.page.line(rim, touch, **LEADING)
            self.placer.add_line(rim, touch)

    def _note_text(self, text: str, size: float) -> str:
        """The lines of a note, each no longer than a third of the page."""
        room = self.page.width / 3
        return "\n".join(self.page.fitted(drawable(_minus(line)), room, size) for line in text.split("\n"))

    def _text(
        self, at: Box, text: str, colour: str, size: float, near: float, *, weight: str = "normal", **where: bool
    ) -> Box | None:
        """A text beside a point or a line, `where` as for `Placer.place`. Where there is no room for it, it is left to
        the page's description.
        """
        width, height = self.page.text_size(text, size, weight)
        box = self.placer.place(at, width, height, near=near, **where)
        if box is not None:
            ground = 1 if where.get("on") else 0.8
            self.page.write(box.left, (box.bottom + box.top) / 2, text, colour, size=size, weight=weight, ground=ground)
        return box


def absences(
    freq_hz: Real, values: Real, limits: tuple[float, float], *, logarithmic: bool = False
) -> Iterator[Absence]:
    """Where a curve (F,) is out of its limits, one after the other; its crossings of them are found on straight lines,
    on the axes as they are drawn. Gaps (NaN) are no absences.
    """
    with np.errstate(invalid="ignore"):
        sides = (values > limits[1]).astype(int) - (values < limits[0])

    def crossing(inner: int, outer: int, edge: float) -> float | None:
        if not 0 <= inner < len(values):
            return None
        ends = [float(values[inner]), float(values[outer])]
        if not np.isfinite(ends).all():
            return float(freq_hz[inner])
        if logarithmic:
            ends, edge = [float(np.log(max(end, 1e-300))) for end in ends], float(np.log(edge))
        share = min(max((edge - ends[0]) / (ends[1] - ends[0]), 0.0), 1.0)
        return float(freq_hz[inner] * (freq_hz[outer] / freq_hz[inner]) ** share)

    starts = [0, *(np.flatnonzero(np.diff(sides)) + 1).tolist(), len(sides)]
    for start, end in pairwise(starts):
        if sides[start]:
            edge = limits[1] if sides[start] > 0 else limits[0]
            yield Absence(bool(sides[start] > 0), crossing(start - 1, start, edge), crossing(end, end - 1, edge))


def _look(style: LineStyle) -> dict[str, Any]:
    dashes = (0, style.dashes) if style.dashes else "-"
    return {"color": style.colour, "linewidth": style.width, "linestyle": dashes, "solid_capstyle": "butt"}


def _tick(value: float, *, signed: bool) -> str:
    value = round(value, 9)  # a step that is no binary fraction leaves a zero that is none
    if signed and value:
        return f"{value:+g}".replace("-", "−")
    return f"{value / 1000:g}k" if value >= 1000 and value % 100 == 0 else f"{value:g}"


def _minus(text: str) -> str:
    """A minus sign as long as a plus, before digits."""
    return re.sub(r"(?<![\w)])-(?=\d)", "−", text)
