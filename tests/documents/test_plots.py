"""Plots as files: repeatable, well-formed, safe against names, and drawn so that labels do not collide."""

from __future__ import annotations

import hashlib
import io
import os
import subprocess
import sys
import xml.etree.ElementTree as ET
from collections.abc import Sequence
from dataclasses import replace
from itertools import combinations

import matplotlib
import numpy as np
import pytest

from documents.designs import ROOT, TWO_WAY, Compiled, example, one
from shuntwise.documents.plot_labels import Box, Placer, spaced
from shuntwise.documents.plot_page import Drawing
from shuntwise.documents.plots import Below, impedance_plot, impedance_range, level_range, response_plot
from shuntwise.figures.nominal import Nominal
from shuntwise.figures.usual import usual
from shuntwise.response.solve import Solver

FREQ = np.geomspace(20, 20000, 301)
SVG = "{http://www.w3.org/2000/svg}"


def drawings(compilation: Compiled, below: Sequence[Below] = ()) -> tuple[Drawing, Drawing]:
    solver = Solver(compilation.lowered)
    design = compilation.design
    response, figures = solver.solve(FREQ), usual(Nominal(solver), design.drivers)
    return (
        response_plot(response, design, figures, mark="0badcafe", below=below),
        impedance_plot(response, design, figures, mark="0badcafe"),
    )


@pytest.fixture(scope="module")
def wedge() -> tuple[Drawing, Drawing]:
    return drawings(example("02"))


def test_png_decodes_to_the_page_s_size(wedge) -> None:
    from matplotlib.image import imread

    for drawing in wedge:
        picture = imread(io.BytesIO(drawing.png))
        assert picture.shape[:2] == (960, 1500)
        assert (picture[0, 0, :3] == 1).all() and picture[..., :3].min() < 0.2
        assert b"tEXt" not in drawing.png and b"matplotlib" not in drawing.png.lower()


def test_svg_is_plain(wedge) -> None:
    """Well-formed, no document type, script, style import or reference out of the file, no date or version."""
    for drawing in wedge:
        root = ET.fromstring(drawing.svg)
        assert root.tag == f"{SVG}svg" and root.get("role") == "img"
        assert b"<!DOCTYPE" not in drawing.svg and b"<!ENTITY" not in drawing.svg
        for element in root.iter():
            assert element.tag.rpartition("}")[2] not in ("script", "image", "foreignObject", "a", "metadata")
            for name, value in element.attrib.items():
                if name.endswith("href"):
                    assert value.startswith("#")
                assert not name.startswith("on") and "url(http" not in value
        assert matplotlib.__version__.encode() not in drawing.svg


def test_svg_says_what_it_shows(wedge) -> None:
    """Text is drawn as outlines, so title and description carry the words."""
    root = ET.fromstring(wedge[0].svg)
    assert root.findtext(f"{SVG}title") == "Rehearsal-room wedge"
    said = root.findtext(f"{SVG}desc")
    assert said.startswith("Levels of woofer, tweeter over frequency. woofer and tweeter cross at 3.8 kHz")
    assert "least 5.44 ohm at 9.18 kHz" in ET.fromstring(wedge[1].svg).findtext(f"{SVG}desc")


def test_same_bytes_in_another_process_whatever_the_user_s_settings(wedge, tmp_path) -> None:
    program = (
        "import hashlib; from documents.designs import example; from documents.test_plots import drawings\n"
        "print([hashlib.sha256(d.svg + d.png).hexdigest() for d in drawings(example('02'))])"
    )
    (tmp_path / "matplotlibrc").write_text("font.size: 20\nlines.linewidth: 9\nsvg.hashsalt: other\n", encoding="utf-8")
    environment = {
        **os.environ,
        "PYTHONPATH": os.pathsep.join(map(str, (ROOT / "compiler", ROOT / "tests"))),
        "PYTHONHASHSEED": "77",
        "MATPLOTLIBRC": str(tmp_path),
    }
    done = subprocess.run([sys.executable, "-c", program], env=environment, capture_output=True, text=True, check=True)
    assert done.stdout.strip() == str([hashlib.sha256(d.svg + d.png).hexdigest() for d in wedge])


def test_hostile_title_is_drawn_as_written() -> None:
    """Mathematics, markup, what the font lacks, and escapes: no error, no warning, nothing gets through."""
    base = one(TWO_WAY)
    title = "$\\alpha$ \\frac{1}{2} $ --> <script>alert(1)</script> ]]> &amp; _x_ \u6df1 \U0001f600 \x1b[2J" * 3
    hostile = replace(base, design=replace(base.design, title=title))
    for drawing in drawings(hostile):
        root = ET.fromstring(drawing.svg)
        assert "<script>alert(1)</script>" in root.findtext(f"{SVG}title")
        assert not [element for element in root.iter() if element.tag.endswith("script")]
        assert b"\x1b" not in drawing.svg


def test_nothing_is_imported_until_something_is_drawn() -> None:
    program = "import sys; import shuntwise.documents.plots; sys.exit('matplotlib' in sys.modules)"
    environment = {**os.environ, "PYTHONPATH": str(ROOT / "compiler")}
    assert subprocess.run([sys.executable, "-c", program], env=environment, check=False).returncode == 0


def test_variants_two_inputs_and_expectations_are_drawn() -> None:
    text = TWO_WAY.replace("leg woofer", "input low\ninput high\nleg woofer", 1).replace("input+ -- C1", "high+ -- C1")
    text = text.replace("input+", "low+").replace("woofer- -- return", "woofer- -- low-").replace("return", "high-")
    text += "expect crossing of woofer and tweeter at 3 kHz within 10 %\nexpect impedance of low above 4 ohm\n"
    text += "expect corner of tweeter at 4 kHz within 10 %\n"
    text += "expect impedance of high below 900 ohm from 100 Hz to 9 kHz\n"
    compilation = one(text)
    assert len(compilation.design.expectations) == 4
    plain = drawings(one(text.split("expect")[0]), ("phase", "group delay"))
    for with_windows, without in zip(drawings(compilation, ("phase", "group delay")), plain, strict=True):
        assert with_windows.svg != without.svg
    assert "least of high" in ET.fromstring(plain[1].svg).findtext(f"{SVG}desc")


# --- ranges


@pytest.mark.parametrize(("values", "expected"), [
    ((0.0, -20.0), (-48, 6, 6)),
    ((5.5,), (-48, 12, 6)),
    ((17.0,), (-48, 18, 6)),
    ((22.0,), (-48, 24, 12)),
    ((200.0,), (-48, 48, 12)),
    ((-90.0, -101.0), (-138, -84, 6)),
    ((float("nan"),), (-48, 6, 6)),
])  # fmt: skip
def test_level_range(values, expected) -> None:
    assert level_range([np.array(values)]) == expected


def test_impedance_range_keeps_the_low_end() -> None:
    assert impedance_range([np.array([8, 8])]) == (4, 32, [4, 8, 16, 32])
    low, high, ticks = impedance_range([np.array([6, 1e6])], [0.3])
    assert (low, high) == (0.125, 128) and ticks[0] == 0.125
    assert impedance_range([np.array([150, 60e3])])[2] == [100, 200, 500, 1000, 2000, 5000, 10000, 20000, 50000]
    assert impedance_range([np.array([np.nan])])[:2] == (2, 32)


# --- places of labels


def test_names_at_the_right_are_spread_and_kept_in_order() -> None:
    assert spaced([10, 100], [20, 20], 0, 200) == [10, 100]
    assert spaced([50, 50, 50], [20, 20, 20], 0, 200) == [30, 50, 70]
    assert spaced([50, 50], [20, 60], 0, 200) == [30, 70]  # one of three lines
    assert spaced([0, 0, 200, 199], [20] * 4, 0, 200) == [10, 30, 190, 170]
    heights = spaced([5, 3, 90, 4, 88], [10] * 5, 0, 100)
    assert all(abs(a - b) >= 10 - 1e-9 for a, b in combinations(heights, 2)) and heights[1] < heights[3] < heights[0]


def test_notes_keep_off_curves_each_other_and_the_edge() -> None:
    placer = Placer(Box(0, 0, 1000, 600))
    x = np.linspace(0, 1000, 101)
    placer.add_curve(x, np.full(101, 300.0))
    placer.add_curve(x, np.where(x < 400, np.nan, 0.6 * x))
    points = [Box(500, 300, 500, 300)] * 6 + [Box(999, 599, 999, 599)]
    boxes = [placer.place(point, 200, 30, led=True) for point in points]
    for box in boxes:
        assert box is not None
        assert box.left >= 0 and box.right <= 1000 and box.bottom >= 0 and box.top <= 600
        assert not box.bottom < 300 < box.top
    assert not any(a.overlaps(b) for a, b in combinations(boxes, 2))


def test_a_note_without_room_is_left_out() -> None:
    placer = Placer(Box(0, 0, 300, 100))
    point = Box(150, 50, 150, 50)
    places = [placer.place(point, 120, 40) for _ in range(6)]
    assert None not in places[:2] and places[-1] is None
    assert placer.place(point, 400, 10) is None


def test_a_note_that_would_hide_much_is_left_out_and_one_without_a_leader_stands_near() -> None:
    placer, x = Placer(Box(0, 0, 1000, 600)), np.linspace(0, 1000, 101)
    for y in range(0, 600, 10):
        placer.add_curve(x, np.full(101, float(y)), weight=0.2 if y > 400 else 1.0)
    point = Box(500, 100, 500, 100)
    far = placer.place(point, 100, 20, led=True)
    assert far is None or far.bottom > 400
    assert placer.place(point, 100, 20) is None


def test_a_label_on_a_line_stands_on_it() -> None:
    placer = Placer(Box(0, 0, 1000, 600))
    placer.add_curve(np.linspace(0, 500, 50), np.linspace(195, 205, 50))
    box = placer.place(Box(0, 200, 1000, 200), 200, 20, on=True)
    assert box is not None and box.bottom < 200 < box.top and box.left > 490
