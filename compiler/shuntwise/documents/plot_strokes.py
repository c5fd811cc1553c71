"""A figure of the plotting library -> strokes and texts in millimetres, which sheets are made of.

In: a figure. Out: marks. It stands in for the library's own renderers, so that a plot in the binder is the same drawing
as the files beside it, with texts that are texts. It refuses to know what is drawn.

What is see-through becomes as pale on white; a hatched area becomes slanting lines. A text that is turned is drawn by
its outlines, since texts on sheets lie level.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from math import ceil, floor
from typing import Any

import numpy as np
from matplotlib.backend_bases import RendererBase
from matplotlib.colors import to_hex
from matplotlib.path import Path
from matplotlib.textpath import TextPath
from matplotlib.transforms import Affine2D, Bbox

from shuntwise.documents.sheet import Mark, Point, Stroke, Text

POINT_MM = 25.4 / 72

FINER = 2
"""Lines keep to curves as they do on a page with so many times the pixels: to a hundredth of a millimetre."""

HATCH_MM = 25.4 / 15
"""How far apart, along the axis, the slanting lines are that the library draws for five strokes."""


class Strokes(RendererBase):
    """A renderer that keeps what it is told to draw, in `marks`. Texts are measured by `measure`, another renderer."""

    def __init__(
        self, measure: Any, width: float, height: float, dots_per_inch: float, tones: Mapping[str, str]
    ) -> None:
        """The page's width and height in pixels; `tones` are colours that have a name on sheets."""
        super().__init__()
        self.measure, self.width, self.height, self.dpi = measure, width, height, dots_per_inch
        self.tones = tones
        self.mm = 25.4 / dots_per_inch
        self.marks: list[Mark] = []

    def get_canvas_width_height(self) -> tuple[float, float]:
        return self.width, self.height

    def get_text_width_height_descent(self, s: Any, prop: Any, ismath: Any) -> Any:
        return self.measure.get_text_width_height_descent(s, prop, ismath)

    def flipy(self) -> bool:
        return False

    def points_to_pixels(self, points: Any) -> Any:
        return points * self.dpi / 72

    def draw_path(self, gc: Any, path: Any, transform: Any, rgbFace: Any = None) -> None:
        clip = gc.get_clip_rectangle()
        line_mm = gc.get_linewidth() * POINT_MM if gc.get_rgb()[3] else 0.0
        dashes = tuple(length * POINT_MM for length in gc.get_dashes()[1] or ())
        tone = self.tone(gc.get_rgb())
        if gc.get_hatch():
            self.hatch(
                path.get_extents(transform), self.tone(gc.get_hatch_color()), gc.get_hatch_linewidth() * POINT_MM
            )
        if rgbFace is not None and (len(rgbFace) < 4 or rgbFace[3] > 0):
            whole = path if clip is None else transform.transform_path(path).clip_to_bbox(clip, inside=True)
            rings = self.rings(whole, transform if clip is None else Affine2D(), None)
            if rings:
                alpha = gc.get_alpha() if gc.get_forced_alpha() else 1.0
                fill = self.tone((*rgbFace[:3], rgbFace[3] * alpha if len(rgbFace) == 4 else alpha))
                self.marks.append(
                    Stroke(rings[0], line_mm, tone, dashes, closed=True, fill=fill, rest=tuple(rings[1:]))
                )
        elif line_mm:
            rings = self.rings(path, transform, clip, simplify=path.should_simplify)
            if rings:
                self.marks.append(Stroke(rings[0], line_mm, tone, dashes, rest=tuple(rings[1:])))

    def draw_text(self, gc: Any, x: float, y: float, s: str, prop: Any, angle: float, *_: Any, **__: Any) -> None:
        tone, size = self.tone(gc.get_rgb()), prop.get_size_in_points()
        if angle:
            turned = Affine2D().scale(self.dpi / 72).rotate_deg(angle).translate(x, y)
            rings = self.rings(TextPath((0, 0), s, size=size, prop=prop, usetex=False), turned, None)
            if rings:
                self.marks.append(Stroke(rings[0], 0.0, tone, closed=True, fill=tone, rest=tuple(rings[1:])))
        elif s.strip():
            at = self.point(x, y)
            self.marks.append(Text(*at, s, size * POINT_MM, bold=prop.get_weight() == "bold", tone=tone))

    def hatch(self, box: Bbox, tone: str, line_mm: float) -> None:
        """Lines that rise to the right, where x - y is a multiple of the step, within a box of pixels."""
        step = HATCH_MM / self.mm
        for count in range(ceil((box.x0 - box.y1) / step), floor((box.x1 - box.y0) / step) + 1):
            begin, end = max(box.x0, box.y0 + count * step), min(box.x1, box.y1 + count * step)
            if end > begin:
                ends = (self.point(begin, begin - count * step), self.point(end, end - count * step))
                self.marks.append(Stroke(ends, line_mm, tone))

    def rings(
        self, path: Path, transform: Any, clip: Bbox | None, *, simplify: bool = False
    ) -> list[tuple[Point, ...]]:
        """The path as lines; where a rectangle (pixels) clips it, what lies within."""
        # The library lets a clipped line run on for a pixel.
        room = None if clip is None else tuple(np.array([clip.x0, clip.y0, clip.x1, clip.y1]) * FINER + [1, 1, -1, -1])
        cleaned = path.cleaned(
            transform + Affine2D().scale(FINER), remove_nans=True, clip=room, simplify=simplify, curves=False
        )
        return [tuple(ring) for ring in self.lines(cleaned) if len(ring) > 1]

    def lines(self, path: Path) -> Iterator[list[Point]]:
        finer = self.mm / FINER
        places = np.round(np.asarray(path.vertices) * (finer, -finer) + (0, self.height * self.mm), 3)
        ring: list[Point] = []
        for point, code in zip(map(tuple, places.tolist()), np.asarray(path.codes).tolist(), strict=True):
            if code == Path.MOVETO:
                yield ring
                ring = []
            if code == Path.STOP:
                break
            ring += ring[:1] if code == Path.CLOSEPOLY else [point]
        yield ring

    def point(self, x: float, y: float) -> Point:
        """Millimetres from the top left corner."""
        return round(x * self.mm, 3), round((self.height - y) * self.mm, 3)

    def tone(self, colour: Any) -> str:
        """A colour, as pale as it is on white where it is see-through."""
        red, green, blue, alpha = (*colour, 1.0)[:4]
        mixed = to_hex(tuple(alpha * part + 1 - alpha for part in (red, green, blue)))
        return self.tones.get(mixed, mixed)
