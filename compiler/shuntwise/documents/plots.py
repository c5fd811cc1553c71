"""Response -> drawings: the level of every driver, and the impedance at every input, over frequency.

In: a solved response, the design that it belongs to, and what was measured on it. Out: SVG and PNG bytes. What the
design expects is shaded, and the least load that the amplifier allows is marked. It refuses to work out anything: it
draws what it is given, as `plot_panel.py` draws.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import ceil, floor, isfinite, log2
from typing import TYPE_CHECKING, Literal

import numpy as np
import numpy.typing as npt

from shuntwise import units as u
from shuntwise.documents.plot_page import Drawing, Heading, Page, drawable, drawing_settings
from shuntwise.documents.plot_panel import Curve, Note, Panel, Plot
from shuntwise.documents.reference import is_ideal, of_impedance, of_levels
from shuntwise.documents.table import decibels, degrees, delay_ms, input_impedance
from shuntwise.figures.usual import CrossingFigures, LeastFigures, Usual, group_name

if TYPE_CHECKING:
    from shuntwise.model.design import Amplifier, Design, Expectation
    from shuntwise.response.solve import Response

Real = npt.NDArray[np.float64]

Below = Literal["phase", "group delay"]
"""What a plot of levels may have below them."""

WINDOW_DB = 54.0
"""How far down a level plot looks: from +6 to -48 dB. What lies lower is not heard beside its neighbour."""

HIGHEST_DB = 48.0

HEARD_DB = 20.0
"""What lies further below a driver's greatest level than this sets no range of group delay, and a spread of it is not
drawn."""

MOST_NOTES = 8
"""More crossings than this are a curiosity, and no room is left to write on."""


def response_plot(
    response: Response, design: Design, figures: Usual, *, mark: str = "", below: Sequence[Below] = ()
) -> Drawing:
    """The level across every driver in dB over the input's 1 V, and below it its phase or group delay if wanted.

    Crossings are marked; `mark` tells from which text the plot was made (see `mark.design_mark`).
    """
    with drawing_settings():
        return Drawing(response_page(response, design, figures, mark=mark, below=below))


def impedance_plot(response: Response, design: Design, figures: Usual, *, mark: str = "") -> Drawing:
    """Modulus and phase of the impedance at every input, the least modulus marked."""
    with drawing_settings():
        return Drawing(impedance_page(response, design, figures, mark=mark))


def response_page(
    response: Response, design: Design, figures: Usual, *, mark: str = "", below: Sequence[Below] = ()
) -> Page:
    """What `response_plot` saves; within `drawing_settings`."""
    names = [driver.name for driver in response.network.drivers]
    voltages = [response.driver_voltage(name) for name in names]
    levels = [decibels(voltage) for voltage in voltages]
    notes = [crossing_note(crossing) for crossing in figures.crossings[:MOST_NOTES]]
    heading = plot_heading(design, f"Level across each driver, for 1 V {of_levels(design.amplifier)}", mark)
    plot = Plot(response.freq_hz, heading, (2.3, *(1 for _ in below)))
    low, high, step = level_range(levels)
    panel = plot.panel("level", "dB", (low, high), np.arange(low, high + step / 2, step))
    for expectation in design.expectations:
        expected_frequency(panel, expectation)
    panel.curves += _curves(names, (np.nan_to_num(level, nan=-np.inf) for level in levels))
    panel.notes += notes
    for quantity in below:
        if quantity == "phase":
            panel = plot.panel("phase", "degrees", (-190, 190), range(-180, 181, 90))
            panel.curves += _curves(names, (_unwound(degrees(voltage)) for voltage in voltages))
        else:
            delays = [delay_ms(response, name) for name in names]
            least, greatest, step = delay_range(delays, levels)
            panel = plot.panel("group delay", "ms", (least, greatest), np.arange(least, greatest + step / 2, step))
            panel.curves += _curves(names, delays)
    return plot.finish(f"{', '.join(['Levels', *below])} of {', '.join(names)} over frequency. {_said(notes)}".rstrip())


def impedance_page(response: Response, design: Design, figures: Usual, *, mark: str = "") -> Page:
    """What `impedance_plot` saves; within `drawing_settings`."""
    names = [feed.name for feed in response.network.feeds]
    impedances = [input_impedance(response, name) for name in names]
    sizes = [np.abs(impedance) for impedance in impedances]
    notes = [least_note(least, named=len(names) > 1) for least in figures.least if isfinite(least.impedance.value)]
    allowed = least_allowed(design.amplifier)
    where = of_impedance(design.amplifier)
    each = "at each input" if is_ideal(design.amplifier) else f"of each input {where}"
    what = f"Impedance {each}, the other amplifiers at rest" if len(names) > 1 else f"Impedance {where}"
    plot = Plot(response.freq_hz, plot_heading(design, what, mark), (2.3, 1))
    shown = [*(least.impedance.value for least in figures.least), *(ohm for ohm, _ in allowed)]
    low, high, ticks = impedance_range(sizes, shown)
    panel = plot.panel("impedance", "ohm", (low, high), ticks, logarithmic=True)
    mark_bounds(panel, design)
    panel.curves += _curves(names, (np.nan_to_num(size, nan=np.inf) for size in sizes))
    panel.notes += notes
    panel = plot.panel("phase", "degrees", (-96, 96), range(-90, 91, 45))
    panel.curves += _curves(names, (_unwound(degrees(impedance)) for impedance in impedances))
    return plot.finish(f"Impedance at {', '.join(names)} over frequency. {_said(notes)}".rstrip())


def crossing_note(crossing: CrossingFigures) -> Note:
    """Where curves cross; with sensitivities counted in, on the first driver's curve where both are as loud."""
    names = f"{group_name(crossing.first)} and {group_name(crossing.second)}"
    levels = " and ".join(dict.fromkeys(f"{level.value:z.1f} dB" for level in crossing.levels))
    how = "as loud" if crossing.by_sensitivity else "cross"
    apart = ",\n" if " and " in levels else ", "
    where = f"{how} at {u.write(crossing.freq_hz, u.HERTZ, 3)}{apart}{levels}"
    return Note(crossing.freq_hz, crossing.levels[0].value, f"{names}\n{where}")


def least_note(least: LeastFigures, *, named: bool) -> Note:
    whose, ohm = f" of {least.input}" if named else "", least.impedance.value
    text = f"least{whose} {u.write(ohm, u.OHM, 3)}\nat {u.write(least.freq_hz, u.HERTZ, 3)}"
    return Note(least.freq_hz, ohm, text)


# --- what the design expects, and what the amplifier allows


def expected_frequency(panel: Panel, expectation: Expectation) -> None:
    """A band of frequency in which a crossing or a corner is expected."""
    if expectation.quantity not in ("crossing", "corner"):
        return
    at, within = expectation.clauses["at"].value, expectation.clauses["within"].value
    subjects = " and ".join(expectation.subjects)
    text = f"{expectation.quantity} of {subjects}\nexpected at {u.write(at, u.HERTZ, 3)} ± {within * 100:.3g} %"
    panel.expected_band(at * (1 - within), at * (1 + within), text)


def mark_bounds(panel: Panel, design: Design) -> None:
    """What lies below the least impedance expected, or above the greatest; and the amplifier's least load."""
    for expectation in design.expectations:
        clauses = expectation.clauses
        for word in ("above", "below"):
            if expectation.quantity == "impedance" and word in clauses:
                ends = [clauses[end].value for end in ("from", "to") if end in clauses] or panel.ends
                edge = clauses[word].value
                panel.expected_side(ends[0], ends[-1], edge, word, f"expected {word} {u.write(edge, u.OHM, 3)}")
    for ohm, text in least_allowed(design.amplifier):
        panel.least_allowed(ohm, text)


def least_allowed(amplifier: Amplifier | None) -> list[tuple[float, str]]:
    """The least load (ohm) that the amplifier may drive, if it says so, and what that is of each of several boxes."""
    least = amplifier.quantities.get("least") if amplifier is not None else None
    if amplifier is None or least is None:
        return []
    said = [(least.value, f"amplifier's least load {u.write(least.value, u.OHM, 3)}")]
    boxes = amplifier.quantities.get("boxes")
    if boxes is not None and boxes.value > 1:
        each = least.value * boxes.value
        said.append((each, f"least load for each of {boxes.value:g} boxes {u.write(each, u.OHM, 3)}"))
    return said


# --- ranges


def level_range(levels: Iterable[Real]) -> tuple[float, float, float]:
    """Bottom, top and step in dB: from +6 down to -48, higher if a level is, lower only if all are far down."""
    values = [value for level in levels for value in level if np.isfinite(value)]
    peak = max(values, default=0.0)
    top = min(max(6.0, 6.0 * ceil((peak + 1) / 6)), HIGHEST_DB)
    if peak < -30:
        top = 6.0 * ceil(peak / 6) + 6
        return top - WINDOW_DB, top, 6.0
    low = 6.0 - WINDOW_DB
    return low, top, 6.0 if top - low <= 66 else 12.0


def impedance_range(sizes: Iterable[Real], least: Iterable[float] = ()) -> tuple[float, float, list[float]]:
    """Bottom, top and ticks in ohm: at least three octaves, at most ten, the low end kept.

    Ticks stand at 2, 4, 8, 16 ohm and so on, which are the nominal impedances; above 1000 ohm at 1, 2 and 5.
    """
    values = [v for size in sizes for v in size if np.isfinite(v) and v > 0]
    values += [v for v in least if np.isfinite(v) and v > 0]
    low = floor(log2(max(min(values, default=4.0), 1e-4)) - 0.4)
    high = max(low + 3, min(ceil(log2(max(values, default=16.0)) + 0.15), low + 10))
    ticks = [2.0**power for power in range(low, high + 1)]
    if high > 10:
        ticks = [digit * 10.0**power for power in range(-4, 8) for digit in (1, 2, 5)]
    return 2.0**low, 2.0**high, [tick for tick in ticks if 2.0**low <= tick <= 2.0**high]


def delay_range(delays: Sequence[Real], levels: Sequence[Real]) -> tuple[float, float, float]:
    """Least, greatest and step in ms that hold each driver's group delay where it is heard, and 0."""
    heard = [0.0]
    for delay, level in zip(delays, levels, strict=True):
        known = np.isfinite(delay) & np.isfinite(level)
        if known.any():
            heard += delay[known & (level > level[known].max() - HEARD_DB)].tolist()
    least, greatest = min(heard), max(heard)
    span = max(greatest - least, 1e-3)
    steps = (digit * 10.0**power for power in range(-4, 9) for digit in (1, 2, 5))
    step = next((step for step in steps if span <= 4 * step), 1e9)
    return step * floor(least / step), step * max(ceil(greatest / step), 1), step


def plot_heading(design: Design, what: str, mark: str) -> Heading:
    variant = ""
    if design.variant is not None:
        title = design.variant_title
        variant = f"   variant {design.variant}" + (f": {title}" if title else "")
    foot = f"design mark {mark}" if mark else ""
    return Heading(drawable(design.title or "Design without a title"), drawable(what + variant), drawable(foot))


def _curves(names: Sequence[str], values: Iterable[Real]) -> list[Curve]:
    return [Curve(name, row[None]) for name, row in zip(names, values, strict=True)]


def _said(notes: Sequence[Note]) -> str:
    return " ".join(note.text.replace("\n", " ") + "." for note in notes)


def _unwound(phase: Real) -> Real:
    """The phase with a gap where it jumps from one end of its range to the other."""
    jumps = np.abs(np.diff(phase, prepend=phase[:1])) > 180
    return np.where(jumps, np.nan, phase)
