"""Every chapter of a binder: its title, and how it is made. The one PDF and the one HTML page have the same.

In: the material of a design. Out: chapters. To add one, write its module and a row here. It refuses to know paper and
screens, and works nothing out.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from shuntwise.documents.material import Material
from shuntwise.documents.page import Chapter, Front, Group, Paragraph
from shuntwise.documents.sheet import Sheet


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
    yield summary.told_of(design, material.mark)[1:]
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


CHAPTERS: tuple[Row, ...] = (
    Row("cover", "", _cover),
    Row("read-aloud", "The circuit read aloud", _read_aloud),
)


def chapters(material: Material) -> tuple[Chapter, ...]:
    """All that have anything to say. Raises SingularNetwork."""
    made = (Chapter(row.key, row.title or material.title, tuple(filter(None, row.make(material)))) for row in CHAPTERS)
    return tuple(chapter for chapter in made if chapter.content)


def front(material: Material) -> Front:
    from shuntwise.documents.summary import variant_told

    return Front(material.title, "".join(variant_told(material.design)), material.mark)
