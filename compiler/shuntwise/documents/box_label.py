"""The label on the back of the box, at its true size, with a bar by which the print is measured.

In: a design with its figures and its stress. Out: a picture. It refuses to work anything out, and never goes over its
edge: what does not fit is cut, and told to be.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from shuntwise import units as u
from shuntwise.diagnostics.wording import listed
from shuntwise.documents.cautions import never_unplugged
from shuntwise.documents.lettering import settable, width, wrapped
from shuntwise.documents.page import Picture
from shuntwise.documents.pins import carried
from shuntwise.documents.sheet import GREY, Drawn, Mark, Stroke, Text
from shuntwise.documents.summary import least_told, variant_told
from shuntwise.figures.usual import Usual, group_name
from shuntwise.graph.circuit import Circuit
from shuntwise.stress.stress import Lacking, Stress
from shuntwise.structure.reach import turned_round

WIDTH, HEIGHT, EDGE = 100.0, 60.0, 4.0
"""Of the label, and the margin in it, in mm."""

BAR = 50.0
"""Length in mm of the bar that tells whether the print has its true size."""

SIZES = (2.9, 2.6, 2.3, 2.0, 1.8)
"""Of type, the largest at which all fits; the least is some 5 points."""

TITLE_SIZES = (6.0, 5.0, 4.2, 3.6)

WORDS = 21.0
"""Width in mm of the words before each entry."""

CAUTION = "Caution"


def box_label(circuit: Circuit, figures: Usual, stress: Stress | Lacking, *, title: str, mark: str = "") -> Picture:
    """The label, and the bar below it."""
    marks: list[Mark] = [
        Stroke(((0, 0), (WIDTH, 0), (WIDTH, HEIGHT), (0, HEIGHT)), 0.2, closed=True),
        *_title(settable(title)),
    ]
    told = list(_entries(circuit, figures, stress))
    top, end = 13.5, HEIGHT - 9.0
    for size in SIZES:
        entries = list(_set(told, size, top))
        if not entries or entries[-1].y <= end:
            break
    fits = [text for text in entries if text.y <= end]
    marks += fits
    if len(fits) < len(entries):
        marks[-1] = Text(EDGE, fits[-1].y, "… the rest stands in the binder", SIZES[-1], bold=True)
    marks += _foot(mark)
    marks += _bar(HEIGHT + 9.0)
    said = "Label of the box. " + " ".join(f"{words}: {text}." for words, text in told)
    return Picture(Drawn(tuple(marks), settable(said)), WIDTH, HEIGHT + 14.0, "Label", on_white=True)


def _title(title: str) -> Iterator[Text]:
    room = WIDTH - 2 * EDGE
    for size in TITLE_SIZES:
        if width(title, size, bold=True) <= room:
            yield Text(EDGE, EDGE + 4.6, title, size, bold=True)
            return
    size = TITLE_SIZES[-1]
    lines = wrapped(title, room, size, bold=True)
    yield Text(EDGE, EDGE + 2.6, lines[0], size, bold=True)
    if len(lines) > 1:
        last = lines[1] if len(lines) == 2 else wrapped(lines[1], room - size, size, bold=True)[0] + "…"
        yield Text(EDGE, EDGE + 7.0, last, size, bold=True)


def _entries(circuit: Circuit, figures: Usual, stress: Stress | Lacking) -> Iterator[tuple[str, str]]:
    design = circuit.design
    amplifier, never = design.amplifier, dict.fromkeys(one.driver for one in never_unplugged(design, stress))
    if never:
        yield CAUTION, f"Do not run with {listed([*never], 'or')} unplugged."
    yield from (("Variant", text) for text in variant_told(design))
    for least in figures.least:
        marked = amplifier.quantities.get("marked") if amplifier is not None else None
        nominal = f"nominal {u.write(marked.value, u.OHM, 3)}, " if marked is not None else ""
        whose = f"{least.input}: " if len(figures.least) > 1 else ""
        yield "Impedance", f"{whose}{nominal}{least_told(least, figures)}"
    if amplifier is not None and amplifier.power is not None and amplifier.load is not None:
        power = f"{u.write(amplifier.power.value, u.WATT, 3)} into {u.write(amplifier.load.value, u.OHM, 3)}"
        yield "Amplifier", power + (", bridged" if amplifier.bridged else "")
    for one in figures.crossings:
        names = f"{group_name(one.first)} and {group_name(one.second)}"
        yield "Crossing", f"{u.write(one.freq_hz, u.HERTZ, 3)}, {names}"
    turned = turned_round(circuit)
    if turned:
        names = listed([name for name in design.drivers if name in turned])
        yield "Polarity", f"{names} turned round: minus is the fed end"
    for connector in design.connectors:
        if connector.through is not None:
            yield "Pins", f"{connector.name}: linked through to {connector.through}"
            continue
        pins = [f"{one.pin.name} {one.pin.pad or 'unused'}" for one in carried(circuit) if one.connector is connector]
        yield "Pins", f"{connector.name}: {', '.join(pins)}"


def _set(told: Sequence[tuple[str, str]], size: float, top: float) -> Iterator[Text]:
    """Words at the left, their text beside them."""
    y, before = top, ""
    for words, text in told:
        y += 0.25 * size
        for number, line in enumerate(wrapped(settable(text), WIDTH - 2 * EDGE - WORDS, size, bold=words == CAUTION)):
            y += 1.3 * size
            if number == 0 and words != before:
                yield Text(EDGE, y, words, size, tone=GREY)
            yield Text(EDGE + WORDS, y, line, size, bold=words == CAUTION)
        before = words


def _foot(mark: str) -> Iterator[Mark]:
    y = HEIGHT - EDGE
    words = "Serial number"
    yield Text(EDGE, y, words, 2.6, tone=GREY)
    begin = EDGE + width(words, 2.6) + 2.0
    yield Stroke(((begin, y + 0.6), (62.0, y + 0.6)), 0.2)
    if mark:
        yield Text(WIDTH - EDGE, y, f"design mark {mark}", 2.3, "end", tone=GREY)


def _bar(y: float) -> Iterator[Mark]:
    yield Stroke(((0.0, y), (BAR, y)), 0.3)
    for x in (0.0, BAR):
        yield Stroke(((x, y - 1.5), (x, y + 1.5)), 0.3)
    yield Text(BAR + 3.0, y + 0.9, f"{BAR:g} mm if printed at true size", 2.6)
