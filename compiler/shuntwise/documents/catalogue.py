"""Every document of a design: its name, what it needs, and how it is made.

To add one, write its module in this folder and a row here; what several documents need goes into `material.py`. `build`
lays them all into a folder, and commands that show one take it from here.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

from shuntwise.documents.material import Material
from shuntwise.files import safe_stem


@dataclass(frozen=True)
class Document:
    """`name` is that of its file, with `*` for the design's own, `render` gives the file's text or bytes.

    `needs` says what must exist: the wiring alone, or a network that can be solved.
    """

    name: str
    needs: Literal["circuit", "network"]
    render: Callable[[Material], str | bytes]

    def file_name(self, material: Material) -> str:
        return self.name.replace("*", safe_stem(material.stem))

    def content(self, material: Material) -> bytes:
        """The bytes of the file. Raises SingularNetwork."""
        made = self.render(material)
        return made.encode() if isinstance(made, str) else made


def _netlist(material: Material) -> str:
    from shuntwise.netlist.spice import emit

    notes = [*([f"box {material.printing.box}"] if material.printing.box else []), f"design mark {material.mark}"]
    return emit(material.network, material.sweep, design_title=material.title, notes=notes).text


def _table(material: Material) -> str:
    from shuntwise.documents.table import as_csv

    return as_csv(material.columns)


def _schematic(material: Material) -> str:
    from math import inf

    from shuntwise.documents.schematic.draw import A4_ACROSS, schematic_sheets
    from shuntwise.documents.svg import as_svg

    (sheet,) = schematic_sheets(
        material.circuit,
        page=(A4_ACROSS[0], inf),
        ratings=material.printing.ratings,
        title=material.title,
        differences=material.differences,
    )
    return as_svg(sheet)


def _read_back(material: Material) -> str:
    from shuntwise.documents.read_aloud import read_aloud

    return read_aloud(material.circuit, material.design.network_of, material.fits)


def _summary(material: Material) -> str:
    from shuntwise.documents import pins
    from shuntwise.documents.cautions import cautions
    from shuntwise.documents.margins import margins
    from shuntwise.documents.summary import build_summary

    return build_summary(
        material.design,
        material.figures,
        material.shares,
        findings=material.findings,
        not_checked=material.not_checked,
        waived=material.waived,
        mark=material.mark,
        fits=material.fits,
        pins=pins.table(material.circuit),
        limits=margins(material.design, material.circuit, material.stress),
        cautions=cautions(material.design, material.stress),
        differences=material.differences,
        box=material.printing.box,
    )


def _parts(material: Material) -> str:
    from shuntwise.documents.parts_list import as_csv

    return as_csv(material.design, material.printing.boards)


def _binder(material: Material) -> bytes:
    from shuntwise.documents.binder import chapters, front
    from shuntwise.documents.flow import flow
    from shuntwise.documents.pdf import as_pdf

    sheets, places = flow(chapters(material), front(material), material.printing.paper)
    return as_pdf(sheets, material.title, places, material.printing.date)


def _page(material: Material) -> str:
    from shuntwise.documents.binder import chapters, front
    from shuntwise.documents.html import as_html

    return as_html(chapters(material), front(material))


DOCUMENTS: tuple[Document, ...] = (
    Document("schematic.svg", "circuit", _schematic),
    Document("netlist.cir", "network", _netlist),
    Document("response.csv", "network", _table),
    Document("response.svg", "network", lambda material: material.level_plot.svg),
    Document("response.png", "network", lambda material: material.level_plot.png),
    Document("impedance.svg", "network", lambda material: material.impedance_plot.svg),
    Document("impedance.png", "network", lambda material: material.impedance_plot.png),
    Document("read-back.txt", "circuit", _read_back),
    Document("summary.txt", "network", _summary),
    Document("parts.csv", "circuit", _parts),
    Document("*.pdf", "network", _binder),
    Document("*.html", "network", _page),
)


def render(name: str, material: Material) -> str:
    """The text of one document by its name. Raises KeyError, and SingularNetwork."""
    return {document.name: document for document in DOCUMENTS}[name].content(material).decode()
