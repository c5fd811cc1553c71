"""Every chapter of a binder: its title, and how it is made. The one PDF and the one HTML page have the same.

In: the material of a design. Out: chapters. To add one, write its module and a row here. It refuses to know paper and
screens, and works nothing out.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from shuntwise.documents.material import Material
from shuntwise.documents.page import Behind, Chapter, Front, Group, Heading, Listing, Paragraph, Table
from shuntwise.documents.sheet import Sheet

ROWS_PER_DECADE = 10
"""Of the table that stands for a plot: enough to hear how a curve runs."""

ROWS_OF_BANDS = 30
"""The same, of bands."""


BENCH = "Bench check"


@dataclass(frozen=True)
class Row:
    """`make` gives the chapter's content; it is left out where that is empty. `key` names it in links.

    An empty `title` stands for the design's own.
    """

    key: str
    title: str
    make: Callable[[Material], Iterable[Group | Sheet]]


def _cover(material: Material) -> Iterable[Group | Sheet]:
    from shuntwise.documents import summary

    design, figures = material.design, material.figures
    yield summary.told_of(design, material.mark, material.differences, material.printing.box)[1:]
    if material.printing.date:
        yield (Paragraph(f"Date: {material.printing.date}"),)
    yield summary.drivers(design, figures)
    yield summary.fitted(material.fits)
    yield summary.crossings(figures.crossings)
    yield summary.impedance(figures, design.amplifier)
    yield summary.slopes(figures)
    yield summary.found(material.findings, material.not_checked, material.waived)


def _read_aloud(material: Material) -> Iterable[Group | Sheet]:
    from shuntwise.documents.read_aloud import paragraphs

    for lines in paragraphs(material.circuit, material.design.network_of, material.fits):
        yield tuple(map(Paragraph, lines))


def _cautions(material: Material) -> Iterable[Group | Sheet]:
    from shuntwise.documents.cautions import GENERAL, own

    entries = tuple(own(material.design, material.stress))
    if entries:
        yield (Heading("This box"), Listing(entries))
    yield (Heading("Every box"), Listing(GENERAL))


def _schematic(material: Material) -> Iterable[Group | Sheet]:
    from shuntwise.documents.flow import block
    from shuntwise.documents.schematic.draw import EDGE, ENLARGED, schematic_sheets

    width, height = block(material.printing.paper, across=True)
    page = width + EDGE, height + EDGE  # a little smaller, it has no need of edges of its own
    return schematic_sheets(
        material.circuit,
        page=page,
        most=ENLARGED,
        ratings=material.printing.ratings,
        title=material.title,
        differences=material.differences,
    )


def _parts(material: Material) -> Iterable[Group | Sheet]:
    from shuntwise.documents.parts_list import pages

    return pages(material.design, material.printing.boards)


def _plots(material: Material) -> Iterable[Group | Sheet]:
    yield (material.level_plot.picture,)
    yield (material.impedance_plot.picture, Behind("Response and impedance as a table", _response(material)))


def _ratings(material: Material) -> Iterable[Group | Sheet]:
    from shuntwise.documents.margins import margins
    from shuntwise.documents.summary import for_one_volt

    yield from margins(material.design, material.circuit, material.stress)
    yield for_one_volt(material.design, material.figures, material.shares)


def _tolerances(material: Material) -> Iterable[Group | Sheet]:
    from shuntwise.documents.table import as_tables
    from shuntwise.documents.tolerance_text import DRAWN, band_columns, told

    if material.spread is None or material.spread_plot is None:
        return
    yield from told(material.spread)
    every = len(material.spread.freq_hz) // ROWS_OF_BANDS
    yield (
        material.spread_plot.picture,
        Behind("The bands as a table", as_tables(band_columns(material.spread, DRAWN), every)),
    )


def _connectors(material: Material) -> Iterable[Group | Sheet]:
    from shuntwise.documents import pins

    yield pins.table(material.circuit)


def _bench(material: Material) -> Iterable[Group | Sheet]:
    from shuntwise.documents.bench_sheet import content

    if material.printing.bench:
        yield from content(material.circuit, material.bench.instruments, material.bench.sheet)


def _label(material: Material) -> Iterable[Group | Sheet]:
    from shuntwise.documents.box_label import box_label

    yield (
        Paragraph("Print at true size (100 %, not fitted to the page), and measure the bar below the label."),
        box_label(material.circuit, material.figures, material.stress, title=material.title, mark=material.mark),
    )


def _response(material: Material) -> tuple[Table, ...]:
    from shuntwise.documents.table import as_tables

    return as_tables(material.columns, material.sweep.points_per_decade // ROWS_PER_DECADE)


CHAPTERS: tuple[Row, ...] = (
    Row("cover", "", _cover),
    Row("cautions", "Cautions", _cautions),
    Row("schematic", "Schematic", _schematic),
    Row("parts", "Parts list", _parts),
    Row("connectors", "Connectors", _connectors),
    Row("plots", "Response and impedance", _plots),
    Row("ratings", "What each part sees", _ratings),
    Row("tolerances", "What tolerances do", _tolerances),
    Row("read-aloud", "The circuit read aloud", _read_aloud),
    Row("bench", BENCH, _bench),
    Row("label", "Label of the box", _label),
)


def chapters(material: Material) -> tuple[Chapter, ...]:
    """All that have anything to say, made once for paper and screen. Raises SingularNetwork."""
    if CHAPTERS not in material.made:
        rows = ((row, tuple(entry for entry in row.make(material) if entry)) for row in CHAPTERS)
        chapters = (Chapter(row.key, row.title or material.title, content) for row, content in rows if content)
        material.made[CHAPTERS] = tuple(chapters)
    found: tuple[Chapter, ...] = material.made[CHAPTERS]
    return found


def front(material: Material) -> Front:
    from shuntwise.documents.summary import variant_told

    box = [f"box {material.printing.box}"] if material.printing.box else []
    return Front(material.title, ", ".join((*box, *variant_told(material.design))), material.mark)
