"""A plot on a sheet is the plot of the file beside it: held against the library's own SVG."""

from __future__ import annotations

import re

import numpy as np
import pytest

from documents.binders import side_fill
from shuntwise.documents.plot_page import LINES
from shuntwise.documents.sheet import GREY, Stroke, Text


@pytest.mark.parametrize("style", LINES[:3], ids=lambda style: style.colour)
def test_curves_run_where_the_svg_has_them(style) -> None:
    """The SVG is in points, 10 inch wide; its curves are clipped by its viewer, those on sheets are cut."""
    drawing = side_fill().level_plot
    assert (drawing.picture.width, drawing.picture.height) == pytest.approx((254.0, 162.56))
    tone = style.colour.lower()
    curve = max((m for m in strokes(drawing) if m.tone == tone), key=lambda mark: len(mark.points))
    path = max(re.findall(rf'<path d="([^"]*)"[^>]*stroke: {tone}', drawing.svg.decode()), key=len)
    drawn = np.array([list(map(float, pair)) for pair in re.findall(r"[ML] ([-\d.]+) ([-\d.]+)", path)]) * 25.4 / 72
    x, y = np.array(curve.points).T
    assert len(x) > 20 and np.abs(y - np.interp(x, *drawn.T)).max() < 0.2
    frame = next(mark for mark in strokes(drawing) if mark.tone == GREY and len(mark.points) == 2)
    assert frame.width > 0 and curve.width == pytest.approx(style.width * 25.4 / 72)
    assert (
        y.min() > 20
        and y.max() < 147
        and curve.dashes == pytest.approx([d * style.width * 25.4 / 72 for d in style.dashes])
    )


def test_texts_are_texts_and_hatching_is_lines() -> None:
    drawing = side_fill().impedance_plot
    told = [mark.text for mark in drawing.picture.drawn.marks if isinstance(mark, Text)]
    for words in ("Impedance at the input", "least 3.59 ohm", "amplifier's least load 3 ohm", "frequency / Hz", "20k"):
        assert words in told
    lines = [mark.points for mark in strokes(drawing) if len(mark.points) == 2]
    slanting = [(end[0] - start[0], start[1] - end[1]) for start, end in lines if end[0] > start[0]]
    slanting = [(across, up) for across, up in slanting if across == pytest.approx(up, abs=0.01)]
    assert len(slanting) > 50
    assert "least 3.59 ohm at 248 Hz" in drawing.picture.drawn.said


def strokes(drawing) -> list[Stroke]:
    return [mark for mark in drawing.picture.drawn.marks if isinstance(mark, Stroke)]
