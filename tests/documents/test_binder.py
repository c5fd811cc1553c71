"""The binder in the folder that `build` writes: named after the design, with the options, and open to more chapters."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

import pytest

from documents.binders import page, side_fill
from documents.designs import TWO_WAY
from shuntwise.cli.main import main
from shuntwise.documents import binder
from shuntwise.documents.binder import CHAPTERS, ROWS_OF_BANDS, Row, chapters
from shuntwise.documents.catalogue import render
from shuntwise.documents.material import Material
from shuntwise.documents.page import Behind, Group, Printing, Table, blocks
from shuntwise.documents.sheet import Drawn, Sheet, Stroke, Text
from shuntwise.documents.tolerance_text import spread_report
from shuntwise.files import safe_stem
from shuntwise.workspace import Workspace


def test_build_names_it_after_the_design_and_takes_the_options(tmp_path: Path) -> None:
    design, out = tmp_path / "my box (2).shunt", tmp_path / "out"
    design.write_text(TWO_WAY.replace("C1 5 uF", "C1 5 uF { 250 V }"), encoding="utf-8")
    command = ["build", str(design), "-o", str(out), "--boards", "5", "--paper", "letter", "--date", "2026-11-30"]
    command.append("--ratings")
    assert main(command) == 0
    before = {file.name: file.read_bytes() for file in out.iterdir()}
    assert {"my-box--2.pdf", "my-box--2.html", "parts.csv"} <= before.keys()
    assert b"Date: 2026-11-30" in before["my-box--2.html"] and b"5 boards" in before["my-box--2.html"]
    assert all(b">250 V</text>" in before[name] for name in ("schematic.svg", "my-box--2.html"))
    assert b"612 792" in before["my-box--2.pdf"] and b"C1,1,5,5," in before["parts.csv"]
    assert main(command) == 0
    assert {file.name: file.read_bytes() for file in out.iterdir()} == before


@pytest.mark.parametrize("ratings", [False, True])
def test_ratings_stand_on_the_schematic_if_they_are_asked_for(ratings: bool) -> None:
    """On the sheet that PDF and page have, and on the file by itself."""
    text = TWO_WAY.replace("C1 5 uF", "C1 5 uF { 250 V }")
    material = Workspace.of_text(text, "box.shunt").material(printing=Printing(ratings=ratings))
    (row,) = [row for row in CHAPTERS if row.key == "schematic"]
    (sheet,) = row.make(material)
    assert isinstance(sheet, Sheet)
    assert ("250 V" in [mark.text for mark in sheet.marks if isinstance(mark, Text)]) == ratings
    assert (">250 V</text>" in render("schematic.svg", material)) == ratings


@pytest.mark.parametrize("options", [["--boards", "0"], ["--date", "30.11.2026"], ["--date", "2026-02-30"]])
def test_what_is_no_count_or_date_is_refused(
    options: list[str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "box.shunt").write_text(TWO_WAY, encoding="utf-8")
    assert main(["build", str(tmp_path / "box.shunt"), "-o", str(tmp_path / "out"), *options]) == 2
    assert not (tmp_path / "out").exists() and "such as" in capsys.readouterr().err.replace("for example", "such as")


@pytest.mark.parametrize(
    ("name", "safe"),
    [
        ("13-harbour-stage", "13-harbour-stage"),
        ("a b/../c\\d:e", "a-b-..-c-d-e"),
        ("..", "design"),
        ("-rf", "rf"),
        ("\u202egnp", "gnp"),
        ("nul", "design-nul"),
        ("COM1.x", "design-COM1.x"),
        ("é" * 100, "é" * 60),
        ("<script>", "script"),
    ],
)
def test_the_name_of_a_design_is_made_safe(name: str, safe: str) -> None:
    assert safe_stem(name) == safe and len(f"{safe}.html".encode()) < 255


def test_a_chapter_is_a_row(monkeypatch: pytest.MonkeyPatch) -> None:
    """By the recipe alone: whole sheets and blocks; what is empty is left out."""

    def drawing(material: Material) -> Iterable[Group | Sheet]:
        yield Sheet(210.0, 297.0, "Drawing", (Drawn((Stroke(((30.0, 30.0), (60.0, 30.0))),), material.title),))

    rows = (CHAPTERS[0], Row("drawing", "Drawing", drawing), Row("none", "Nothing", lambda _: ()))
    monkeypatch.setattr(binder, "CHAPTERS", rows)
    assert [chapter.key for chapter in chapters(Workspace.of_text(TWO_WAY).material())] == ["cover", "drawing"]


def test_keys_and_titles_are_unique_and_safe_in_links() -> None:
    assert len({row.key for row in CHAPTERS}) == len({row.title for row in CHAPTERS}) == len(CHAPTERS)
    assert all(row.key.replace("-", "").isalpha() and row.key.isascii() for row in CHAPTERS)


def test_cautions_of_the_box_stand_before_those_of_every_box() -> None:
    text = page(side_fill())
    assert text.index("With woofer unplugged the load falls") < text.index("First power-up")


def test_tolerances_are_told_as_by_the_command_that_tells_only_them() -> None:
    material = side_fill()
    assert material.spread is not None
    report = {" ".join(line.split()) for line in spread_report(material.spread, material.design).splitlines()}
    (chapter,) = [chapter for chapter in chapters(material) if chapter.key == "tolerances"]
    tables = [block for block in blocks(chapter.content) if isinstance(block, Table)]
    rows = [" ".join(filter(None, row)) for table in tables for row in table.rows]
    assert len(rows) > 25 and {*rows} <= report
    (bands,) = [block for block in blocks(chapter.content) if isinstance(block, Behind)]
    assert len(bands.blocks) == 4 and all(ROWS_OF_BANDS <= len(table.rows) < 40 for table in bands.blocks)


def test_where_nothing_varies_no_tolerances_are_told() -> None:
    exact = Workspace.of_text(
        "driver woofer 8 ohm\ncoil L1 1 mH\nleg woofer { input+ -- L1 -- woofer+\nwoofer- -- return }\n", "box.shunt"
    ).material()
    assert exact.spread is None and "tolerances" not in [chapter.key for chapter in chapters(exact)]


def test_without_an_amplifier_the_binder_says_what_is_lacking() -> None:
    said = page(Workspace.of_text(TWO_WAY).material())
    assert "an `amplifier` with its power and load" in said and "Do not run with" not in said
