"""What stands on a drawn page, read back from it: nothing collides, no curve is told by its colour alone, what is drawn
once bears all its names, tops and bottoms are the true ones, and the words of the file say what is to be seen.

Pages are not turned into pictures here: what is drawn on them is all there before.
"""

from __future__ import annotations

import xml.etree.ElementTree as ET
from collections.abc import Iterator
from contextlib import contextmanager
from itertools import combinations, product
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from matplotlib.colors import to_hex
from matplotlib.lines import Line2D
from scipy.optimize import minimize_scalar

from documents.designs import EXAMPLES, ROOT, TWO_WAY, Compiled, lowered, one
from shuntwise.documents.plot_labels import Box, coincide
from shuntwise.documents.plot_page import GREY, INK, LINES, SHADE, Page, drawing_settings, line_style
from shuntwise.documents.plot_panel import Absence, absences
from shuntwise.documents.plots import Below, delay_range, impedance_page, response_page
from shuntwise.documents.tolerance_plot import deviation_page, impedance_spread_page, level_spread_page
from shuntwise.figures.nominal import Nominal
from shuntwise.figures.usual import usual
from shuntwise.network.network import Network
from shuntwise.response.measures import grid
from shuntwise.response.peaks import sweep_to_draw
from shuntwise.response.solve import Response, Solver
from shuntwise.tolerance.spread import spread

DESIGNS = [
    *EXAMPLES,
    *sorted((ROOT / "examples").glob("*/*.shunt")),
    *sorted((ROOT / "tests/strangers").glob("*.shunt")),
]
BOTH: tuple[Below, ...] = ("phase", "group delay")


def solved(compilation: Compiled) -> Response:
    assert isinstance(compilation.lowered, Network)
    solver = Solver(compilation.lowered)
    return solver.solve(sweep_to_draw(solver, grid(20, 20e3)))


def pages(compilation: Compiled, below: tuple[Below, ...] = ()) -> tuple[Page, Page]:
    """Within `drawing_settings`."""
    response, design = solved(compilation), compilation.design
    figures = usual(Nominal(Solver(response.network)), design.drivers)
    return response_page(response, design, figures, below=below), impedance_page(response, design, figures)


@contextmanager
def drawn(text: str, below: tuple[Below, ...] = ()) -> Iterator[tuple[Page, Page]]:
    with drawing_settings():
        yield pages(one(text), below)


# --- what collides


def box_of(artist: Any, page: Page) -> Box:
    extent = artist.get_window_extent(page.renderer)
    return Box(extent.x0, extent.y0, extent.x1, extent.y1)


def texts_of(page: Page) -> list[tuple[str, Box]]:
    """Everything written: notes, names, headings, axis texts."""
    found = [*page.figure.texts, *(text for panel in page.panels for text in panel.texts)]
    return [(text.get_text(), box_of(text, page)) for text in found if text.get_text()]


def points_of(line: Any, step: float = 2.0) -> np.ndarray:
    """Points all along a drawn line, in pixels, first those that it is drawn through; gaps left out."""
    ends = line.get_transform().transform(np.column_stack(line.get_data()))
    way = np.hypot(*np.diff(ends, axis=0).T)
    counts = np.where(np.isfinite(way), np.clip(np.nan_to_num(way) // step, 1, 500), 0).astype(int)
    place = np.repeat(np.arange(len(counts)), counts)
    share = (np.arange(len(place)) - np.repeat(np.cumsum(counts) - counts, counts)) / counts[place]
    return np.concatenate(
        [ends[np.isfinite(ends).all(axis=1)], ends[place] + share[:, None] * np.diff(ends, axis=0)[place]]
    )


def within(points: np.ndarray, box: Box) -> int:
    inside = (points > (box.left, box.bottom)) & (points < (box.right, box.top))
    return int(inside.all(axis=1).sum())


def lines_of(page: Page) -> list[Any]:
    """Lines across the page, whatever panel they lead into."""
    return [artist for artist in page.figure.artists if isinstance(artist, Line2D)]


def curves_of(panel: Any) -> list[Any]:
    return [line for line in panel.lines if to_hex(line.get_color()).upper() in {look.colour.upper() for look in LINES}
            and len(line.get_xdata()) > 2]  # fmt: skip


def collisions(page: Page) -> list[str]:
    """What touches what it should not, and which texts hide how much of a curve."""
    texts, frames = texts_of(page), [box_of(panel, page) for panel in page.panels]
    found = [f"{a!r} on {b!r}" for (a, one), (b, other) in combinations(texts, 2) if one.overlaps(other)]
    paper = Box(0, 0, page.width, page.height)
    for text, box in texts:
        corners = np.array([(box.left, box.bottom), (box.right, box.top)])
        if within(corners, paper) < 2:
            found.append(f"{text!r} leaves the page")
        found += [
            f"{text!r} on a frame's edge" for frame in frames if box.overlaps(frame) and within(corners, frame) < 2
        ]
    for panel, frame in zip(page.panels, frames, strict=True):
        for mark in (points_of(line) for line in panel.lines if line.get_marker() not in ("None", "", None)):
            found += [f"{text!r} on a mark" for text, box in texts if within(mark, box.grown(5))]
        inside = [(text, box) for text, box in texts if box.overlaps(frame)]
        for points in map(points_of, curves_of(panel)):
            hidden = [(text, 2 * within(points, box)) for text, box in inside]
            found += [f"{text!r} hides {pixels} px of a curve" for text, pixels in hidden if pixels]
    for line in map(points_of, lines_of(page)):
        others = [(text, box) for text, box in texts if not within(line[:2], box.grown(1))]  # it ends at its own
        found += [f"a line through {text!r}" for text, box in others if within(line, box.grown(-2))]
    return found


@pytest.mark.parametrize("path", DESIGNS, ids=lambda path: path.stem)
def test_nothing_collides_on_any_page(path: Path) -> None:
    """The design; of a variant only if it has other drivers or inputs, which is what moves the names."""
    seen = set()
    for compilation in lowered(path):
        network = compilation.lowered
        assert isinstance(network, Network)
        ports = (*(driver.name for driver in network.drivers), *(feed.name for feed in network.feeds))
        if ports not in seen:
            seen.add(ports)
            with drawing_settings():
                for page in pages(compilation):
                    assert collisions(page) == []


@pytest.mark.parametrize("path", [DESIGNS[8], DESIGNS[12]], ids=lambda path: path.stem)
def test_nothing_collides_with_all_panels_and_in_plots_of_builds(path: Path) -> None:
    made = lowered(path)[0]
    assert isinstance(made.lowered, Network)
    builds = spread(made.design, made.lowered, builds=40)
    with drawing_settings():
        for page in (
            pages(made, BOTH)[0],
            level_spread_page(builds, made.design),
            impedance_spread_page(builds, made.design),
            deviation_page(builds, made.design),
        ):
            assert collisions(page) == []


def plant_text(page: Page, x: float, y: float) -> None:
    page.write(x, y, "planted", INK, size=9, weight="normal", ground=0.8)


def test_what_is_planted_is_found() -> None:
    """Else the tests above would prove nothing: a text on every kind of thing, and a line through one."""
    with drawn(TWO_WAY) as (clean, _):
        assert collisions(clean) == []
        boxes = {text.split("\n")[0]: box for text, box in texts_of(clean)}
        frame = box_of(clean.panels[0], clean)
        (mark,) = [points_of(line)[0] for line in clean.panels[0].lines if line.get_marker() == "o"]
        curve = points_of(curves_of(clean.panels[0])[0])
        shallow = curve[len(curve) // 4]
    for said, x, y in (
        ("'woofer and tweeter", boxes["woofer and tweeter"].left, boxes["woofer and tweeter"].top),
        ("'tweeter'", boxes["tweeter"].left + 5, boxes["tweeter"].top),
        ("'1k'", boxes["1k"].left, boxes["1k"].bottom),
        ("'frequency / Hz'", boxes["frequency / Hz"].left, boxes["frequency / Hz"].top),
        ("a frame's edge", frame.right - 20, frame.top - 100),
        ("leaves the page", clean.width - 20, 40),
        ("on a mark", mark[0] + 4, mark[1]),
        ("px of a curve", *shallow),
    ):
        with drawn(TWO_WAY) as (page, _):
            plant_text(page, x, y)
            assert [found for found in collisions(page) if "'planted'" in found and said in found], said
    with drawn(TWO_WAY) as (page, _):
        note = boxes["woofer and tweeter"]
        page.line((note.left - 9, note.bottom), (note.right + 9, note.top), color=GREY)
        assert any("a line through" in found for found in collisions(page))


# --- lines that are no curves


def test_no_line_that_leads_somewhere_looks_like_a_curve() -> None:
    """Inside a frame it is thin, grey and unbroken; a piece of a curve stands outside, with a gap before it."""
    made = lowered(EXAMPLES[3])[0]
    with drawing_settings():
        for page in pages(made):
            frames = [box_of(panel, page) for panel in page.panels]
            leading = [line for line in lines_of(page) if to_hex(line.get_color()) == GREY]
            pieces = [line for line in lines_of(page) if line not in leading]
            dots, ways = ([line for line in leading if (line.get_marker() == "o") == dot] for dot in (True, False))
            outside = [line for line in ways if points_of(line)[:, 0].min() > frames[0].right - 1]
            assert pieces and ways and len(dots) == len(outside) > 0
            assert all(line.get_linewidth() < 1 and line.get_linestyle() == "-" for line in ways)
            assert min(look.width for look in LINES) > 1
            for piece, frame in product(pieces, frames):
                assert not within(points_of(piece), frame.grown(20))


# --- curves that are one to the eye

PAIR = (
    TWO_WAY.replace("driver woofer 8 ohm\n", "driver woofer1 8 ohm\ndriver woofer2 8 ohm\n", 1)
    .replace("input+ -- L1 -- woofer+\n  woofer- -- return", "input+ -- L1 -- woofer1+\n  woofer1- -- return\n  HERE")
    .replace("leg woofer", "leg woofer1")
)


@pytest.mark.parametrize(("wired", "one_curve"), [
    ("woofer1+ -- woofer2+\n  woofer2- -- return", True),
    ("woofer1+ -- R1 -- woofer2+\n  woofer2- -- return", True),  # 0.02 ohm: 0.02 dB, a fifth of a pixel
    ("woofer1+ -- R2 -- woofer2+\n  woofer2- -- return", False),  # 0.5 dB
])  # fmt: skip
def test_curves_that_coincide_are_drawn_once_with_all_names(wired: str, one_curve: bool) -> None:
    """By what can be seen, whatever the circuit is."""
    more = "".join(line for line in ("resistor R1 0.02 ohm\n", "resistor R2 0.5 ohm\n") if line[9:11] in wired)
    with drawn(PAIR.replace("HERE", wired) + more) as (page, _):
        names = {text for text, _ in texts_of(page)}
        assert ("woofer1, woofer2" in names) == one_curve
        assert ("woofer1" in names and "woofer2" in names) != one_curve
        assert len(curves_of(page.panels[0])) == (2 if one_curve else 3)
        assert ("woofer1 and woofer2 coincide." in page.description) == one_curve
        assert len({line.get_linestyle() for line in curves_of(page.panels[0])}) > 1


def test_a_panel_in_which_they_part_names_them_itself() -> None:
    """A driver turned round has the same level and another phase."""
    with drawn(PAIR.replace("HERE", "woofer1+ -- woofer2-\n  woofer2+ -- return"), BOTH) as (page, _):
        assert [len(curves_of(panel)) for panel in page.panels] == [2, 3, 2]
        written = [text for text, _ in texts_of(page)]
        assert written.count("woofer1, woofer2") == 1 and written.count("woofer1") == written.count("woofer2") == 1
        assert collisions(page) == []


def test_coincide_is_measured_across_the_curve() -> None:
    x = np.linspace(0, 100, 101)
    flat, steep = np.zeros((1, 101)), 30 * x[None]
    assert coincide(x, flat, flat + 0.9, 1) and not coincide(x, flat, flat + 1.1, 1)
    assert coincide(x, steep, steep + 20, 1) and not coincide(x, steep, steep + 40, 1)
    gone = np.where(x < 50, np.nan, 0.0)[None]
    assert coincide(x, gone, gone, 1) and not coincide(x, gone, flat, 1)
    assert not coincide(x, flat, np.vstack((flat, flat)), 1)


def test_many_names_are_wrapped_and_counted() -> None:
    with drawn(TWO_WAY) as (page, _):
        text = page.listed([f"woofer{n}" for n in range(1, 31)], 230, 10.5, "bold")
        lines = text.split("\n")
        shown = text.count("woofer")
        assert len(lines) == 4 and lines[-1] == f"and {30 - shown} more" and text.startswith("woofer1, woofer2")
        assert all(page.text_size(line, 10.5, "bold")[0] <= 230 for line in lines)
        assert page.listed(["x" * 99], 230, 10.5).endswith("…")


# --- tops and bottoms

RESONANT = """\
driver woofer 8 ohm { re 5.9 ohm, le 0.4 mH, fs 61 Hz, qms 4.5, qes 0.48 }
driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH, fs 1.1 kHz, qms 60, qes 12 }
leg woofer {
  input+ -- L1 -- woofer+
  woofer+ -- L3 -- C3 -- woofer-
  woofer- -- return
}
leg tweeter {
  input+ -- C1 -- tweeter+
  tweeter+ -- L2 -- tweeter-
  tweeter- -- return
}
coil L1 0.3 mH { dcr 0.3 ohm }
coil L3 0.1 mH { dcr 0.004 ohm }
capacitor C3 22 uF
capacitor C1 6.8 uF
coil L2 0.6 mH { dcr 0.02 ohm }
"""


def extreme_db(solver: Solver, driver: str, from_hz: float, to_hz: float, sign: int) -> float:
    """The top (1) or bottom (-1) of a level, by another library's search on the solver."""

    def level(freq_hz: float) -> float:
        return float(20 * np.log10(abs(solver.solve([freq_hz]).driver_voltage(driver)[0])))

    found = minimize_scalar(
        lambda f: -sign * level(f), bounds=(from_hz, to_hz), method="bounded", options={"xatol": 1e-7}
    )
    return -sign * float(found.fun)


def test_the_drawn_top_and_bottom_of_a_resonance_are_the_true_ones() -> None:
    """A trap of 0.1 mH and 22 uF, 4 milliohm across a woofer, and a tweeter that rings; 100 points to a decade miss the
    bottom of the trap by decibels. The bottom is also near that of a divider of its resistance below L1's reactance.
    """
    made = one(RESONANT)
    assert isinstance(made.lowered, Network)
    solver, trap_hz = Solver(made.lowered), 1 / (2 * np.pi * (0.1e-3 * 22e-6) ** 0.5)
    with drawing_settings():
        page, _ = pages(made)
    woofer, tweeter = (np.asarray(line.get_ydata()) for line in curves_of(page.panels[0]))
    freq = np.asarray(curves_of(page.panels[0])[0].get_xdata())
    bottom = extreme_db(solver, "woofer", trap_hz * 0.99, trap_hz * 1.01, -1)
    assert woofer.min() == pytest.approx(bottom, abs=0.005)
    assert freq[woofer.argmin()] == pytest.approx(trap_hz, rel=1e-4)
    assert bottom == pytest.approx(20 * np.log10(0.004 / (2 * np.pi * trap_hz * 0.3e-3)), abs=0.1)
    near = (freq > 900) & (freq < 1400)
    assert tweeter[near].max() == pytest.approx(extreme_db(solver, "tweeter", 1000, 1250, 1), abs=0.005)
    evenly = 20 * np.log10(abs(solver.solve(grid(20, 20e3, 100)).driver_voltage("woofer")))
    assert evenly.min() > bottom + 3


def test_builds_are_solved_at_the_bottom_of_a_sharp_trap_too() -> None:
    made = one(RESONANT.replace("capacitor C3 22 uF", "capacitor C3 22 uF { 5 % }"))
    assert isinstance(made.lowered, Network)
    bottom = extreme_db(Solver(made.lowered), "woofer", 3350, 3450, -1)
    assert spread(made.design, made.lowered, builds=5).levels[0].nominal.min() == pytest.approx(bottom, abs=0.05)


# --- the amplifier's least load


def test_the_amplifier_s_least_load_is_a_named_line() -> None:
    boxes = "amplifier 100 W into 8 ohm { least 4 ohm, boxes 2 }\n"
    for head, lines in (("", []), (boxes.replace(", boxes 2", ""), [4]), (boxes, [4, 8])):
        with drawn(head + TWO_WAY) as (_, page):
            marked = [
                line
                for line in page.panels[0].lines
                if to_hex(line.get_color()) == GREY and line.get_linestyle() == "-"
            ]
            assert [line.get_ydata()[0] for line in marked] == lines
            assert all(len(set(line.get_ydata())) == 1 for line in marked)
            assert any(text == "amplifier's least load 4 ohm" for text, _ in texts_of(page)) == bool(lines)
            assert ("amplifier's least load 4 ohm." in page.description) == bool(lines)
            assert ("least load for each of 2 boxes 8 ohm." in page.description) == (len(lines) == 2)
            assert collisions(page) == []


# --- phase and group delay


def test_group_delay_is_that_of_a_first_order_low_pass() -> None:
    """tau / (1 + (omega tau)^2), tau = L/R: -d/d omega of -arctan(omega tau); textbooks, from memory."""
    with drawn(TWO_WAY, ("group delay",)) as (page, _):
        line = curves_of(page.panels[1])[0]
        omega, tau = 2 * np.pi * np.asarray(line.get_xdata()), 0.5e-3 / 8
        assert np.allclose(line.get_ydata(), 1e3 * tau / (1 + (omega * tau) ** 2), rtol=1e-9, atol=0)
        assert (
            "group delay / ms" in [text.get_text() for text in page.panels[1].texts]
            and "group delay" in page.description
        )


def test_the_range_of_group_delay_is_where_drivers_are_heard() -> None:
    levels = [np.array([0.0, -10.0, -50.0])]
    assert delay_range([np.array([0.31, 0.05, -900.0])], levels) == (0.0, pytest.approx(0.4), pytest.approx(0.1))
    assert delay_range([np.full(3, np.nan)], levels)[1] > 0


# --- curves that leave the frame


def test_absences_are_where_a_curve_crosses_the_edge() -> None:
    freq, limits = np.array([100.0, 200, 400, 800, 1600]), (-10.0, 10.0)
    inside = np.zeros(5)
    assert list(absences(freq, inside, limits)) == []
    falling = np.array([0.0, 0, -5, -15, -25])
    assert list(absences(freq, falling, limits)) == [Absence(False, pytest.approx(400 * 2**0.5), None)]
    dip = np.array([-20.0, 0, 30, 0, 0])
    assert list(absences(freq, dip, limits)) == [
        Absence(False, None, pytest.approx(100 * 2**0.5)),
        Absence(True, pytest.approx(200 * 2 ** (1 / 3)), pytest.approx(800 / 2 ** (1 / 3))),
    ]
    assert list(absences(freq, np.full(5, -np.inf), limits)) == [Absence(False, None, None)]
    assert list(absences(freq, np.array([0, np.nan, 0, -np.inf, 0]), limits)) == [Absence(False, 400, 1600)]
    ohms = np.array([1.0, 4, 4, 4, 4])
    assert list(absences(freq, ohms, (2, 8), logarithmic=True)) == [Absence(False, None, pytest.approx(100 * 2**0.5))]


def test_a_curve_that_leaves_the_frame_says_so() -> None:
    """An arrowhead at the edge and the name there; the words for it in the description."""
    text = TWO_WAY.replace("coil L1 0.5 mH", "coil L1 60 mH").replace("capacitor C1 5 uF", "capacitor C1 0.9 uF")
    with drawn(text) as (page, _):
        heads = [line for line in page.panels[0].lines if line.get_marker() in (6, 7)]
        assert {(line.get_marker(), line.get_ydata()[0]) for line in heads} == {(7, -48)}
        freq = [float(line.get_xdata()[0]) for line in heads]
        assert freq[0] == pytest.approx(8 / (2 * np.pi * 60e-3) * 10 ** (48 / 20), rel=1e-3)  # -48 dB of a first order
        assert freq[1] == pytest.approx(1 / (2 * np.pi * 8 * 0.9e-6) / 10 ** (48 / 20), rel=1e-3)
        names = [text for text, _ in texts_of(page)]
        assert names.count("woofer") == 1 and "↓ woofer" in names and names.count("tweeter") == 2
        assert "level of woofer is below -48 dB from 5.33 kHz." in page.description
        assert "level of tweeter is below -48 dB to 88" in page.description


# --- contrast


def luminance(colour: str) -> float:
    """Relative luminance (WCAG 2.1, definition; from memory, as are the ratios below)."""
    channels = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.03928 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(first: str, second: str) -> float:
    high, low = sorted((luminance(first), luminance(second)), reverse=True)
    return (high + 0.05) / (low + 0.05)


def test_contrast_is_enough_for_text_and_lines() -> None:
    """WCAG 2.1: 4.5 for text (criterion 1.4.3), 3 for what must be seen of graphics (1.4.11). Names have the colours of
    their curves; curves and edges lie on shades as well."""
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21)
    for colour in (INK, GREY, *(look.colour for look in LINES)):
        assert contrast(colour, "#FFFFFF") >= 4.5, colour
        assert contrast(colour, SHADE) >= 3, colour


def test_lines_differ_without_colour() -> None:
    """WCAG 2.1, criterion 1.4.1: by dashes, or by a width of twice as much."""
    for first, second in combinations(LINES, 2):
        wider = max(first.width, second.width) / min(first.width, second.width)
        assert first.dashes != second.dashes or wider >= 2


def test_many_curves_have_many_looks() -> None:
    looks = [line_style(index) for index in range(36)]
    assert looks[:6] == list(LINES) and len(set(looks)) == 36


# --- words


def test_every_file_has_a_title_and_says_what_it_shows() -> None:
    made = one(TWO_WAY.replace("0.5 mH", "0.5 mH { 5 % }"))
    assert isinstance(made.lowered, Network)
    builds = spread(made.design, made.lowered, builds=20)
    with drawing_settings():
        for page in (
            *pages(made, BOTH),
            level_spread_page(builds, made.design),
            impedance_spread_page(builds, made.design),
            deviation_page(builds, made.design),
        ):
            root = ET.fromstring(page.svg())
            first, second = root[:2]
            assert (first.tag, second.tag) == ("{http://www.w3.org/2000/svg}title", "{http://www.w3.org/2000/svg}desc")
            assert first.text == "Design without a title" and second.text == page.description
            assert "over frequency" in page.description
