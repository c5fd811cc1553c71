"""The page that every plot is drawn on: size, type, palette, frequency axis, heading, and how it is saved.

In: text and axes limits. Out: a `Page` to draw on, and the same drawing as SVG and PNG bytes, the same bytes for
the same input, and as a picture for sheets. The only module that saves a figure. It refuses to know what a curve means.

matplotlib is imported inside the functions: it takes half a second, and most commands draw nothing. pyplot
is not used at all, since it keeps figures alive and picks a window system.
"""

from __future__ import annotations

import io
import logging
import os
import re
import sys
import tempfile
import warnings
from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import chdir, contextmanager
from dataclasses import dataclass, replace
from functools import cache, cached_property
from html import escape
from pathlib import Path
from types import ModuleType
from typing import Any

import numpy as np

from shuntwise.diagnostics.terminal import visible
from shuntwise.documents import sheet
from shuntwise.documents.page import Picture

WIDTH_INCH, HEIGHT_INCH, DOTS_PER_INCH = 10.0, 6.4, 150

MORE_INCH = 1.5
"""By so much a page is higher for each panel after the second."""

LEFT, HEAD, FOOT = 117.0, 127.0, 96.0
"""Pixels left of the panels, above and below them."""

BESIDE, BELOW = 84.0, 48.0
"""Pixels from a panel to what its axes show: to the baseline of the upright text, and to the top of the level one."""

LINE_SPACING = 1.15

LISTED_LINES = 3

INK, GREY, ZERO, SHADE, PALE, PALER = "#1a1a1a", "#5a5a5a", "#b4b4b4", "#d8d8d8", "#dcdcdc", "#efefef"
"""Of text; of lines that are no curves, and of lesser text; of shades under curves; of the grid, which only helps."""


@dataclass(frozen=True)
class LineStyle:
    """How one curve looks: told apart by colour, and without colour by dashes and width."""

    colour: str
    dashes: tuple[float, ...]
    width: float


LINES = (
    LineStyle("#0072B2", (), 2.4),
    LineStyle("#B54F00", (6, 2), 2.0),
    LineStyle("#007A59", (1.4, 1.4), 2.2),
    LineStyle("#000000", (7, 2, 1.4, 2), 1.5),
    LineStyle("#A6507F", (), 1.2),
    LineStyle("#8F5C00", (3, 1.2, 3, 3), 1.8),
)
"""Blue, vermilion, bluish green, black, reddish purple, orange of the palette by M. Okabe and K. Ito, Color
Universal Design, 2008 (also in B. Wong, Nature Methods 8, 441, 2011; both from memory). All but blue and black are
darkened, so that names in them can be read on white and lines be seen on a shade; sky blue and yellow are too pale."""


def line_style(index: int) -> LineStyle:
    """The look of the curve of this number: after LINES come the same colours with the dashes of others."""
    turn, place = divmod(index, len(LINES))
    return replace(LINES[(place + turn) % len(LINES)], colour=LINES[place].colour)


class Drawing:
    """One plot, in every form that is asked for: as files, and as a picture for sheets."""

    def __init__(self, page: Page) -> None:
        self._page = page

    @cached_property
    def svg(self) -> bytes:
        with drawing_settings():
            return self._page.svg()

    @cached_property
    def png(self) -> bytes:
        with drawing_settings():
            return self._page.png()

    @cached_property
    def picture(self) -> Picture:
        with drawing_settings():
            return self._page.picture()


def load_matplotlib() -> None:
    """Import matplotlib without any settings but those that it ships.

    At its import it reads a `matplotlibrc` of the current folder, which may be a stranger's, before it looks at
    anything that it can be told. So it is imported in an empty folder, with an empty file of settings.
    """
    if "matplotlib" in sys.modules:
        return
    logging.getLogger("matplotlib").setLevel(logging.CRITICAL)  # it tells where it keeps its list of fonts
    named = os.environ.get("MATPLOTLIBRC")
    with tempfile.TemporaryDirectory(prefix="shuntwise-") as folder, chdir(folder), warnings.catch_warnings():
        warnings.simplefilter("ignore")
        settings = Path(folder, "settings")
        settings.touch()
        os.environ["MATPLOTLIBRC"] = str(settings)
        try:
            _import_figures()
        finally:
            del os.environ["MATPLOTLIBRC"]
            if named is not None:
                os.environ["MATPLOTLIBRC"] = named


_UNUSED = "mpl_toolkits.mplot3d"


def _import_figures() -> None:
    """What draws flat figures. The library would load solid ones too, and write the manual of its classes (`kwdoc`) at
    each start: together a third of the time that its import takes.
    """
    from matplotlib import artist as artists

    manual = artists.kwdoc
    artists.kwdoc = lambda artist: ""
    sys.modules[_UNUSED] = ModuleType(_UNUSED)
    try:
        import matplotlib.backends.backend_agg
        import matplotlib.backends.backend_svg
        import matplotlib.figure  # noqa: F401
    finally:
        artists.kwdoc = manual
        del sys.modules[_UNUSED]


@contextmanager
def drawing_settings() -> Iterator[None]:
    """matplotlib as it comes, whatever the user's own settings are, with what makes files repeatable.

    Text is drawn as outlines: labels are placed by the measure of the font that matplotlib ships, so another
    machine's font would let them collide. What the outlines say stands in the file's title and description.
    An author's text is never read as mathematics.
    """
    load_matplotlib()
    import matplotlib

    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        settings: dict[Any, Any] = {
            **matplotlib.rcParamsDefault,
            "svg.hashsalt": "shuntwise",
            "svg.fonttype": "path",
            "text.parse_math": False,
            "text.hinting": "none",
            "font.family": ["DejaVu Sans"],
            "font.size": 10,
            "axes.edgecolor": GREY,
            "axes.linewidth": 0.8,
            "text.color": INK,
        }  # fmt: skip
        del settings["backend"]  # alone it would not be put back
        with matplotlib.rc_context(settings):
            yield


@cache
def _known_characters() -> frozenset[int]:
    load_matplotlib()
    from matplotlib.font_manager import FontProperties, findfont, get_font

    return frozenset(get_font(findfont(FontProperties(family=["DejaVu Sans"]))).get_charmap())


def drawable(text: str) -> str:
    """An author's text in one line, with `?` for what the shipped font cannot draw."""
    return "".join(c if ord(c) in _known_characters() else "?" for c in visible(text))


@dataclass(frozen=True)
class Heading:
    """What stands around a plot: the design's title, what is shown, and which text it was made from."""

    title: str
    subtitle: str
    foot: str


class Page:
    """A figure with panels above one another that share the frequency axis. Boxes are in pixels from below left.

    `description` says in words what is drawn.
    """

    def __init__(self, heading: Heading, heights: Sequence[float], freq_hz: tuple[float, float]) -> None:
        """`heights` are the panels' shares, from above."""
        from matplotlib.backends.backend_agg import FigureCanvasAgg
        from matplotlib.figure import Figure

        inches = HEIGHT_INCH + MORE_INCH * max(0, len(heights) - 2)
        self.figure = Figure(figsize=(WIDTH_INCH, inches), dpi=DOTS_PER_INCH, facecolor="white")
        canvas: Any = FigureCanvasAgg(self.figure)
        self.renderer = canvas.get_renderer()
        self.width, self.height = WIDTH_INCH * DOTS_PER_INCH, inches * DOTS_PER_INCH
        self.heading, self.description = heading, ""
        panels = self.figure.subplots(len(heights), 1, squeeze=False, gridspec_kw={"height_ratios": heights})
        self.panels: list[Any] = list(panels[:, 0])
        top, bottom = 1 - HEAD / self.height, FOOT / self.height
        self.figure.subplots_adjust(left=LEFT / self.width, right=0.9, top=top, bottom=bottom, hspace=0.08)
        for panel in self.panels:
            _frequency_axis(panel, freq_hz, labelled=panel is self.panels[-1])
        self._write_heading()

    def text_size(self, text: str, size: float, weight: str = "normal") -> tuple[float, float]:
        """Width and height of a text, in pixels."""
        artist = self.figure.text(0, 0, text, size=size, weight=weight, linespacing=LINE_SPACING)
        box = artist.get_window_extent(self.renderer)
        artist.remove()
        return box.width, box.height

    def fitted(self, text: str, room: float, size: float, weight: str = "normal") -> str:
        """The text, cut with an ellipsis to `room` pixels."""
        if self.text_size(text, size, weight)[0] <= room:
            return text
        keep = len(text)
        while keep > 1 and self.text_size(text[:keep] + "…", size, weight)[0] > room:
            keep -= 1 + keep // 20
        return text[:keep].rstrip() + "…"

    def listed(self, names: Sequence[str], room: float, size: float, weight: str = "normal") -> str:
        """Names with commas, in LISTED_LINES lines of `room` pixels at the most, and one more that counts the rest."""
        lines = [""]
        for place, name in enumerate(names):
            last, left = place == len(names) - 1, len(names) - place
            word = self.fitted(drawable(name), room, size, weight) + ("" if last else ",")
            joined = f"{lines[-1]} {word}".lstrip()
            if self.text_size(joined, size, weight)[0] <= room:
                lines[-1] = joined
            elif len(lines) < LISTED_LINES:
                lines.append(word)
            else:
                lines.append(f"and {left} more")
                break
        return "\n".join(lines)

    def fraction(self, x: float, y: float) -> tuple[float, float]:
        """Pixels as a fraction of the figure: what is stored must not depend on the resolution."""
        return x / self.width, y / self.height

    def keep_free(self, right: float) -> None:
        """Keep so many pixels free at the right."""
        self.figure.subplots_adjust(right=1 - right / self.width)

    def write(self, x: float, y: float, text: str, colour: str, *, size: float, weight: str, ground: float) -> None:
        """Text whose left end stands at (x, y) in pixels, on a white ground so dense that keeps lines off it."""
        box = {"facecolor": "white", "edgecolor": "none", "alpha": ground, "pad": 1}
        self.figure.text(*self.fraction(x, y), text, size=size, weight=weight, color=colour, va="center",
                         linespacing=LINE_SPACING, bbox=box)  # fmt: skip

    def line(self, start: tuple[float, float], end: tuple[float, float], **look: Any) -> None:
        """A straight line between two points in pixels, in front of everything."""
        from matplotlib.lines import Line2D

        (x1, y1), (x2, y2) = self.fraction(*start), self.fraction(*end)
        self.figure.add_artist(Line2D((x1, x2), (y1, y2), transform=self.figure.transFigure, **look))

    def _write_heading(self) -> None:
        heading, room = self.heading, self.width - LEFT - 30
        size = next((s for s in (15, 13, 11) if self.text_size(heading.title, s, "bold")[0] <= room), 11)
        title, subtitle = self.fitted(heading.title, room, size, "bold"), self.fitted(heading.subtitle, room, 10)
        left, right, top = LEFT / self.width, 0.985, self.height
        self.figure.text(left, 1 - 51 / top, title, size=size, weight="bold", va="baseline")
        self.figure.text(left, 1 - 96 / top, subtitle, size=10, color=GREY, va="baseline")
        foot = self.fitted(heading.foot, room, 8)
        self.figure.text(right, 19 / top, foot, size=8, color=GREY, ha="right", va="baseline")

    def svg(self) -> bytes:
        """Date, program version and document type are left out: they would change, or be fetched."""
        written = io.BytesIO()
        nothing = dict.fromkeys(("Date", "Creator", "Format", "Type"))
        self.figure.savefig(written, format="svg", metadata=nothing)
        text = re.sub(r"<!DOCTYPE[^>]*>\n?", "", written.getvalue().decode("utf-8"), count=1)
        title, words = (escape(text, quote=False) for text in (self.heading.title, self.description))
        said = f"<title>{title}</title>\n <desc>{words}</desc>"
        return re.sub(r"(<svg [^>]*)>", lambda tag: f'{tag[1]} role="img">\n {said}', text, count=1).encode("utf-8")

    def png(self) -> bytes:
        """Without transparency, which nothing has, and packed less than it could be: as small in half the time."""
        from PIL import Image

        canvas: Any = self.figure.canvas
        canvas.draw()
        image = Image.fromarray(np.asarray(canvas.buffer_rgba())).convert("RGB")
        written = io.BytesIO()
        image.save(written, format="png", dpi=(DOTS_PER_INCH, DOTS_PER_INCH), compress_level=3)
        return written.getvalue()

    def picture(self) -> Picture:
        """The same in millimetres."""
        from shuntwise.documents.plot_strokes import Strokes

        tones = {INK: sheet.INK, GREY: sheet.GREY, "#ffffff": sheet.PAPER}
        strokes = Strokes(self.renderer, self.width, self.height, DOTS_PER_INCH, tones)
        self.figure.draw(strokes)
        drawn = sheet.Drawn(tuple(strokes.marks), f"{self.heading.subtitle}. {self.description}")
        return Picture(drawn, self.width * strokes.mm, self.height * strokes.mm, self.heading.subtitle, on_white=True)


def _frequency_axis(panel: Any, freq_hz: tuple[float, float], *, labelled: bool) -> None:
    """A logarithmic axis with numbers at 1, 2, 5 and lines at every digit."""
    low, high = freq_hz
    panel.set_xscale("log")
    panel.set_xlim(low, high if high > low else low * 1.01)
    panel.xaxis.set_visible(False)
    digits = [(digit, digit * 10.0**power) for power in range(-3, 8) for digit in range(1, 10)]
    major = [f for digit, f in digits if digit in (1, 2, 5) and low * 0.999 <= f <= high * 1.001]
    minor = [f for digit, f in digits if digit not in (1, 2, 5) and low <= f <= high]
    _rule(panel, [[(f, 0), (f, 1)] for f in minor], panel.get_xaxis_transform(), PALER, 0.6)
    _rule(panel, [[(f, 0), (f, 1)] for f in major], panel.get_xaxis_transform(), PALE, 0.8)
    if labelled:
        names = [f"{f / 1e6:g}M" if f >= 1e6 else f"{f / 1e3:g}k" if f >= 1e3 else f"{f:g}" for f in major]
        _number(panel, [(f, 0) for f in major], names, *panel.get_xaxis_text1_transform(9))
        _name_axis(panel, "frequency / Hz", (0.5, 0), (0, -BELOW), va="top")


def value_axis(panel: Any, label: str, ticks: Mapping[float, str]) -> None:
    """What an upright axis shows; its numbers by their values, with lines across the panel."""
    panel.yaxis.set_visible(False)
    _rule(panel, [[(0, tick), (1, tick)] for tick in ticks], panel.get_yaxis_transform(), PALE, 0.8)
    _number(panel, [(0, tick) for tick in ticks], ticks.values(), *panel.get_yaxis_text1_transform(6))
    _name_axis(panel, label, (0, 0.5), (-BESIDE, 0), va="bottom", rotation=90, rotation_mode="anchor")


# The library's own ticks are five objects each, all measured again at each drawing: half of the time of a plot.


def _rule(panel: Any, lines: Sequence[Sequence[tuple[float, float]]], where: Any, colour: str, width: float) -> None:
    from matplotlib.collections import LineCollection

    ruled = LineCollection(lines, colors=colour, linewidths=width, zorder=0.4, transform=where)
    panel.add_collection(ruled, autolim=False)


def _number(
    panel: Any, places: Iterable[tuple[float, float]], names: Iterable[str], where: Any, va: str, ha: str
) -> None:
    for place, name in zip(places, names, strict=True):
        panel.text(*place, name, transform=where, va=va, ha=ha)


def _name_axis(panel: Any, text: str, place: tuple[float, float], pixels: tuple[float, float], **look: Any) -> None:
    """What an axis shows, so many pixels from a place of the panel."""
    from matplotlib.transforms import ScaledTranslation

    across, up = (length / DOTS_PER_INCH for length in pixels)
    away = ScaledTranslation(across, up, panel.figure.dpi_scale_trans)
    panel.text(*place, text, transform=panel.transAxes + away, ha="center", **look)
