"""The PDF: read by the program of another project (poppler's tools), and by its own objects where those say less."""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import zlib
from itertools import takewhile
from pathlib import Path
from unicodedata import combining, name

import pytest

from documents.binders import PICTURES, count_of, hostile, sheets, side_fill
from shuntwise.documents.binder import chapters
from shuntwise.documents.box_label import BAR
from shuntwise.documents.lettering import settable, visual
from shuntwise.documents.material import Material
from shuntwise.documents.page import Block, Listing, blocks
from shuntwise.documents.pdf import as_pdf
from shuntwise.documents.read_aloud import paragraphs
from shuntwise.documents.sheet import Sheet, Text

POINTS = 72 / 25.4

needs_poppler = pytest.mark.skipif(
    shutil.which("pdftotext") is None and not os.environ.get("CI"),
    reason="pdftotext is not installed (apt install poppler-utils)",
)


def made(material: Material, paper: str = "a4") -> bytes:
    return as_pdf(*_arguments(material, paper))


def _arguments(material: Material, paper: str) -> tuple:
    pages, places = sheets(material, paper)
    return pages, material.title, places, material.printing.date


def streams(pdf: bytes) -> list[bytes]:
    found = re.findall(rb"/FlateDecode \][^>]*>>\s*stream\r?\n(.*?)endstream", pdf, re.DOTALL)
    return [zlib.decompress(stream) for stream in found]


def pages_of(pdf: bytes) -> list[bytes]:
    return [stream for stream in streams(pdf) if b"/Artifact BMC" in stream]


def test_the_same_sheets_give_the_same_bytes_without_date_or_person() -> None:
    pdf = made(side_fill())
    assert made(side_fill()) == pdf
    for word in (b"CreationDate", b"ModDate", b"Author", b"Producer", b"Creator", b"/JavaScript", b"/URI", b"/Launch"):
        assert word not in pdf
    assert re.search(rb"/Title \(Harbour stage side fill\)", pdf) and b"/Lang (en)" in pdf
    assert b"(D:20261130)" in made(hostile(12, "2026-11-30"))


@pytest.mark.parametrize(("paper", "width", "height"), [("a4", 210 * POINTS, 297 * POINTS), ("letter", 612, 792)])
def test_pages_have_the_size_of_the_paper_and_their_fonts_inside(paper: str, width: float, height: float) -> None:
    pdf, (pages, places) = made(side_fill(), paper), sheets(side_fill(), paper)
    boxes = re.findall(rb"/MediaBox \[ ([\d. ]+) \]", pdf)
    assert len(boxes) == len(pages) == len(pages_of(pdf)) >= 5
    turned = [page.width > page.height for page in pages]  # a schematic lies across
    across = [sheet for sheet in all_blocks(side_fill()) if isinstance(sheet, Sheet) and sheet.width > sheet.height]
    assert turned.count(True) == len(across) >= 1
    for one, across in zip(boxes, turned, strict=True):
        size = [height, width] if across else [width, height]
        assert list(map(float, one.split())) == pytest.approx([0, 0, *size], abs=0.01)
    fonts, inside = re.findall(rb"/Type /FontDescriptor", pdf), re.findall(rb"/FontFile2", pdf)
    assert len(fonts) == len(inside) >= 2
    assert b"/Subtype /Type1" not in pdf
    assert len(re.findall(rb"/Title \(", pdf)) == 1 + len(places)


def test_the_bar_beside_the_label_is_50_mm() -> None:
    """50 mm are 141.732 points (1 inch = 72 points = 25.4 mm)."""
    (page,) = [page for page in pages_of(made(side_fill())) if b"Label of the box" in page]
    lines = re.findall(rb"([\d.]+) ([\d.]+) m ([\d.]+) ([\d.]+) l\sS", page)
    level = [abs(float(x2) - float(x1)) for x1, y1, x2, y2 in lines if y1 == y2]
    assert BAR == 50 and any(length == pytest.approx(141.732, abs=0.01) for length in level)
    assert not re.search(rb" cm\s", page.partition(b"Label of the box")[2])  # nothing scales what is drawn


def test_every_piece_of_a_page_is_in_the_structure_and_pictures_have_words() -> None:
    pdf = made(side_fill())
    pieces = sum(page.count(b"/MCID ") for page in pages_of(pdf))
    numbers = re.findall(rb"/K \[ ([\d ]+) \][^>]*/Pg", pdf)
    assert pieces == sum(len(held.split()) for held in numbers) > 200
    for page in pages_of(pdf):
        assert page.count(b"BDC") + page.count(b"BMC") == page.count(b"EMC")
    words = re.findall(rb"/Alt \((.*?)\)[ \n]", pdf, re.DOTALL)
    assert len(words) == count_of(side_fill(), *PICTURES) and any(
        b"woofer and mid as loud at 457 Hz" in one for one in words
    )


@needs_poppler
def test_another_reader_finds_the_text_in_order(tmp_path: Path) -> None:
    file = tmp_path / "box.pdf"
    for material in (side_fill(), hostile(12, "2026-11-30")):
        file.write_bytes(made(material))
        text = "".join(read("pdftotext", "-raw", str(file), "-").split())
        titles = [chapter.title for chapter in chapters(material)[1:]]
        places = [text.rindex("".join(title.split())) for title in titles]
        assert places == sorted(places)
        for lines in paragraphs(material.circuit, material.design.network_of, material.fits)[1:]:
            for line in lines:
                for word in line.split():
                    assert word in text
    assert "<script>alert(1)</script></title><svgonload=x()>(Tj)ETQ\\=HYPERLINK(1)&" in text
    assert "yes yes yes" in read("pdffonts", str(file)) and " no " not in read("pdffonts", str(file))


TURNED = "box שָׁלום (عَرب) 12 é\u0301"


def test_letters_stand_in_the_order_and_the_forms_in_which_they_are_seen() -> None:
    """Unicode Standard Annex 9: rules L2 (what runs to the left is turned round), N0 (brackets go with what is in them)
    and L4 (they are mirrored); the forms of letters by their names in the Unicode Character Database.
    """
    assert visual("box (12) é\u0301") == "box (12) é\u0301"
    for written, seen in (
        ("a אב (גד) b", "a (דג) בא b"),
        ("אב (גד) b", "(דג) בא b"),
        ("(אב) b", "(בא) b"),
        ("א <b> [ג]", "א <b> [ג]"),
        ("a אב <[גד]> ה", "a ה <[דג]> בא"),
    ):
        assert visual(written) == seen
    shown = visual(TURNED)
    assert shown.startswith("box 12 (") and shown.endswith(" é\u0301")
    assert sorted(map(combining, shown)) == sorted(map(combining, TURNED))  # no mark is lost
    forms = [name(letter) for letter in shown if name(letter).startswith("ARABIC LETTER")]
    assert forms == [f"ARABIC LETTER {form} FORM" for form in ("BEH ISOLATED", "REH FINAL", "AIN INITIAL")]
    assert settable(shown) == shown


@needs_poppler
def test_what_runs_to_the_left_is_found_and_read_as_it_was_written(tmp_path: Path) -> None:
    pdf = as_pdf([Sheet(210, 297, "", (Text(30, 30, f"{TURNED} אבג"),))], "")
    (tmp_path / "turned.pdf").write_bytes(pdf)
    assert "אבג" in read("pdftotext", "-raw", str(tmp_path / "turned.pdf"), "-")
    (told,) = re.findall(rb"/ActualText \((.*?)\)\s+/K", pdf, re.DOTALL)
    letters = re.sub(rb"\\([0-7]{3})|\\(.)", lambda m: bytes([int(m[1], 8)]) if m[1] else m[2], told, flags=re.DOTALL)
    assert letters.decode("utf-16") == f"{TURNED} אבג"
    assert "Span (inline)" in read("pdfinfo", "-struct-text", str(tmp_path / "turned.pdf"))


@needs_poppler
def test_another_reader_finds_headings_tables_and_figures(tmp_path: Path) -> None:
    (tmp_path / "box.pdf").write_bytes(made(side_fill()))
    run = subprocess.run(
        ["pdfinfo", "-struct-text", str(tmp_path / "box.pdf")], capture_output=True, text=True, check=True
    )
    assert "rror" not in run.stderr
    told = [line.strip() for line in run.stdout.splitlines()]
    assert "Tagged:          yes" in read("pdfinfo", str(tmp_path / "box.pdf"))
    heads = [told[place + 1] for place, line in enumerate(told) if line.startswith("H1")]
    assert heads == [f'"{chapter.title}"' for chapter in chapters(side_fill())]
    listed = [block.entries for block in all_blocks(side_fill()) if isinstance(block, Listing)]
    assert sum(line == "L (block)" for line in told) == len(listed) >= 2
    begins = [place for place, line in enumerate(told) if line == "LBody (block)"]
    assert all(told[place - 1] == "LI (block)" for place in begins)
    said = [list(takewhile(lambda line: line.startswith('"'), told[place + 1 :])) for place in begins]
    assert [" ".join(line.strip('"') for line in lines) for lines in said] == [e for held in listed for e in held]
    assert sum(line.startswith("Table") for line in told) >= 5
    assert sum(line.startswith("Figure") for line in told) == count_of(side_fill(), *PICTURES)


def all_blocks(material: Material) -> list[Block | Sheet]:
    return [block for chapter in chapters(material) for block in blocks(chapter.content)]


def read(*command: str) -> str:
    return subprocess.run(command, capture_output=True, text=True, check=True).stdout
