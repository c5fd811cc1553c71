"""Sheets -> a PDF file: the same bytes for the same sheets, with its fonts inside, and tagged for who listens to it.

In: sheets, and where chapters begin. Out: bytes. Texts stand in the order of the sheets' content, each with what it is
(heading, cell, paragraph); pictures have their words as alternative text; heads and feet of pages are artifacts.
reportlab keeps the file and its fonts; it writes no structure, so the tree of ISO 32000-1, 14.7, is made here. It
refuses to lay anything out.
"""

from __future__ import annotations

import io
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cache
from typing import Any

from shuntwise.documents.flow import Place
from shuntwise.documents.fonts import NAMES, font, load_reportlab
from shuntwise.documents.lettering import visual, width
from shuntwise.documents.sheet import GREY, INK, PAPER, Drawn, Mark, Sheet, Stroke, Text

POINTS = 72 / 25.4
"""A millimetre in points."""

COLOURS = {INK: "#000000", GREY: "#5a5a5a", PAPER: "#ffffff"}


def as_pdf(sheets: Sequence[Sheet], title: str, places: Iterable[Place] = (), date: str = "") -> bytes:
    """The whole file. `date` (ISO 8601) is the only one that it bears; without it there is none in it."""
    return _Writer(title, date).write(sheets, places)


@dataclass
class _Element:
    """An element of the structure: its type, its alternative text, what it holds (elements, or pieces of a page).

    `read` is what is read where letters stand in another order than they are read in.
    """

    kind: str
    said: str = ""
    read: str = ""
    holds: list[_Element | int] = field(default_factory=list)
    scope: str = ""


_KINDS = {"TR": "TH", "L": "LBody", "LI": "LBody", "": "P"}
"""Structure types of texts whose role is called otherwise. The mark before an entry is an artifact, no label."""


class _Page:
    """The structure of one page, as its pieces come: each text by its role, cells in their rows, entries in their list.

    What goes on from the page before begins anew: a list, a table, a paragraph.
    """

    def __init__(self) -> None:
        self.elements: list[_Element] = []
        self.owners: list[_Element] = []
        self.last: _Element | None = None

    def put(self, role: str, said: str = "", read: str = "") -> tuple[str, int]:
        """The type and the number (MCID) of the next piece."""
        number = len(self.owners)
        element = self.last
        if role or element is None:
            element = _Element(_KINDS.get(role, role), said)
            self._hang(element, role)
            self.last = element
        if read:
            line = _Element("Span", read=read)
            element.holds.append(line)
            element = line
        element.holds.append(number)
        self.owners.append(element)
        return element.kind, number

    def _hang(self, element: _Element, role: str) -> None:
        if role in ("L", "LI"):
            if role == "L" or not self.elements or self.elements[-1].kind != "L":
                self.elements.append(_Element("L"))
            self.elements[-1].holds.append(_Element("LI", holds=[element]))
            return
        if role not in ("TR", "TH", "TD"):
            self.elements.append(element)
            return
        element.scope = {"TR": "Row", "TH": "Column"}.get(role, "")
        before = self.last.scope if self.last is not None else ""
        begins = role == "TH" and before != "Column"
        if begins or not self.elements or self.elements[-1].kind != "Table":
            self.elements.append(_Element("Table"))
        table = self.elements[-1]
        if begins or role == "TR" or not table.holds:
            table.holds.append(_Element("TR"))
        row = table.holds[-1]
        assert isinstance(row, _Element)
        row.holds.append(element)


class _Writer:
    def __init__(self, title: str, date: str) -> None:
        self.title, self.date = title, date
        self.out = io.BytesIO()
        load_reportlab()
        from reportlab.pdfbase import pdfmetrics
        from reportlab.pdfgen.canvas import Canvas

        self.fonts = {bold: font(bold=bold) for bold in NAMES}
        for one in self.fonts.values():
            pdfmetrics.registerFont(one)
        self.canvas = Canvas(
            self.out, invariant=1, pageCompression=1, lang="en", initialFontName=NAMES[False], pdfVersion=(1, 7)
        )
        self.height = 0.0
        self.pages: list[_Page] = []

    def write(self, sheets: Sequence[Sheet], places: Iterable[Place]) -> bytes:
        canvas = self.canvas
        begins: dict[int, list[Place]] = {}
        for place in places:
            begins.setdefault(place.sheet, []).append(place)
        canvas.setViewerPreference("DisplayDocTitle", "true")
        for number, sheet in enumerate(sheets):
            self.height = sheet.height * POINTS
            canvas.setPageSize((sheet.width * POINTS, self.height))
            canvas.setLineJoin(1)
            for place in begins.get(number, ()):
                key = f"{number}-{place.title}"
                canvas.bookmarkHorizontalAbsolute(key, self.height - place.y * POINTS)
                canvas.addOutlineEntry(place.title, key)
            self.page(sheet)
            canvas.showPage()
        self.structure()
        canvas._doc.info = _info(self.title, self.date)
        canvas.save()
        return self.out.getvalue()

    # --- marks

    def page(self, sheet: Sheet) -> None:
        page = _Page()
        self.pages.append(page)
        for entry in sheet.content:
            if isinstance(entry, Drawn):
                self.piece(*page.put("Figure", entry.said), entry.marks)
            elif isinstance(entry, Stroke) or entry.role == "Artifact":
                self.code("/Artifact BMC")
                self.mark(entry)
                self.code("EMC")
            else:
                turned = visual(entry.text) != entry.text
                self.piece(*page.put(entry.role, read=entry.text if turned else ""), (entry,))

    def piece(self, kind: str, number: int, marks: Iterable[Mark]) -> None:
        self.code(f"/{kind} <</MCID {number}>> BDC")
        for mark in marks:
            self.mark(mark)
        self.code("EMC")

    def code(self, operators: str) -> None:
        self.canvas._code.append(operators)

    def mark(self, mark: Mark) -> None:
        if isinstance(mark, Text):
            self.text(mark)
        else:
            self.stroke(mark)

    def text(self, mark: Text) -> None:
        shown, one, canvas = visual(mark.text), self.fonts[mark.bold], self.canvas
        span = {"start": 0.0, "middle": 0.5, "end": 1.0}[mark.anchor] * width(shown, mark.size, bold=mark.bold)
        code = [f"{_colour(mark.tone)} rg BT 1 0 0 1 {self.point(mark.x - span, mark.y)} Tm"]
        for part, letters in one.splitString(shown, canvas._doc):
            name = one.getSubsetInternalName(part, canvas._doc)
            code.append(f"{name} {mark.size * POINTS:.3f} Tf ({canvas._escape(letters)}) Tj")
        self.code(" ".join([*code, "ET"]))

    def stroke(self, mark: Stroke) -> None:
        """The library would write each number by itself, which takes a third of the time of a whole file."""
        code, close = [], " h" if mark.closed else ""
        if mark.fill is not None:
            code.append(f"{_colour(mark.fill)} rg")
        if mark.width:
            dashes = " ".join(f"{length * POINTS:.3f}" for length in mark.dashes)
            cap = 0 if mark.dashes else 1
            code.append(f"{_colour(mark.tone)} RG {mark.width * POINTS:.3f} w {cap} J [{dashes}] 0 d")
        for ring in (mark.points, *mark.rest):
            lines = " l ".join([self.point(x, y) for x, y in ring])
            code.append(f"{lines} l".replace(" l", " m", 1) + close)
        code.append({(0, 0): "n", (1, 0): "S", (0, 1): "f*", (1, 1): "B*"}[mark.width > 0, mark.fill is not None])
        self.code(" ".join(code))

    def point(self, x: float, y: float) -> str:
        return f"{x * POINTS:.3f} {self.height - y * POINTS:.3f}"

    # --- the structure

    def structure(self) -> None:
        """The tree of what the pages hold, and the way back from each page's pieces to it.

        Elements are hundreds, so each is written whole: the library's dictionaries would format every name anew.
        """
        from reportlab.pdfbase.pdfdoc import PDFDictionary, PDFName, PDFObject, PDFString

        document = self.canvas._doc

        class Code(PDFObject):  # type: ignore[misc]
            code = b""

            def format(self, _: object) -> bytes:
                return b"<< " + self.code + b" >>"

        def at(thing: object) -> bytes:
            reference: bytes = document.Reference(thing).format(document)
            return reference

        def element(one: _Element, parent: bytes, page: bytes, seen: dict[int, bytes]) -> bytes:
            made = Code()
            here = seen[id(one)] = at(made)
            held = (element(it, here, page, seen) if isinstance(it, _Element) else b"%d" % it for it in one.holds)
            facts = [b"/A << /O /Table /Scope /%b >>" % one.scope.encode()] if one.scope else []
            for key, text in ((b"/ActualText ", one.read), (b"/Alt ", one.said)):
                facts += [key + PDFString(text).format(document)] if text else []
            facts.append(b"/K [ %b ] /P %b /Pg %b" % (b" ".join(held), parent, page))
            facts.append(b"/S /%b /Type /StructElem" % one.kind.encode())
            made.code = b" ".join(facts)
            return here

        root, whole = Code(), Code()
        root_at, whole_at = at(root), at(whole)
        children: list[bytes] = []
        parents: list[bytes] = []
        for number, (content, page) in enumerate(zip(self.pages, document.Pages.pages, strict=True)):
            page.__NoDefault__ = [*page.__NoDefault__, "StructParents", "Tabs"]
            page.StructParents, page.Tabs = number, PDFName("S")
            seen: dict[int, bytes] = {}
            page_at = at(page)
            children += [element(one, whole_at, page_at, seen) for one in content.elements]
            parents.append(b"%d [%b]" % (number, b" ".join(seen[id(owner)] for owner in content.owners)))
        whole.code = b"/K [ %b ] /P %b /S /Document /Type /StructElem" % (b" ".join(children), root_at)
        tree = b"/ParentTree << /Nums [ %b ] >> /ParentTreeNextKey %d" % (b" ".join(parents), len(self.pages))
        root.code = b"/K %b %b /Type /StructTreeRoot" % (whole_at, tree)
        document.Catalog.StructTreeRoot = document.Reference(root)
        document.Catalog.MarkInfo = PDFDictionary({"Marked": "true"})


def _info(title: str, date: str) -> Any:
    """The document's facts: its title, and a day if one was given. Neither program, person nor time of making."""
    from reportlab.pdfbase.pdfdoc import PDFDictionary, PDFInfo, PDFString

    class Info(PDFInfo):  # type: ignore[misc]
        def format(self, document: Any) -> Any:
            facts: Mapping[str, Any] = {"Title": PDFString(title)}
            if date:
                facts = {**facts, "CreationDate": PDFString(f"D:{date.replace('-', '')}")}
            return PDFDictionary(facts).format(document)

    return Info()


@cache
def _colour(tone: str) -> str:
    """Shares of red, green and blue."""
    digits = COLOURS.get(tone, tone)[1:]
    return " ".join(f"{int(digits[place : place + 2], 16) / 255:.4g}" for place in (0, 2, 4))
