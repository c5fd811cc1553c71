"""The page for the screen, read by the standard library's parser: whole, closed to all that is not in it, escaped."""

from __future__ import annotations

import re
from base64 import b64encode
from hashlib import sha256
from html.parser import HTMLParser

import pytest

from documents.binders import FOLDED, PICTURES, count_of, hostile, page, side_fill
from shuntwise.documents.binder import chapters
from shuntwise.documents.catalogue import render
from shuntwise.documents.html import as_html
from shuntwise.documents.page import Chapter, Front
from shuntwise.documents.sheet import Drawn, Sheet, Stroke

EMPTY = {"meta", "path"}
KNOWN = {"class", "href", "id", "role", "aria-label", "aria-labelledby", "tabindex", "scope", "lang", "charset",
         "http-equiv", "content", "name", "width", "height", "viewbox", "d", "fill", "fill-rule", "stroke",
         "stroke-width", "stroke-linejoin", "stroke-linecap", "stroke-dasharray", "x", "y", "font-size", "font-weight",
         "text-anchor"}  # fmt: skip


class Read(HTMLParser):
    """Elements as they open and close; what each table's rows and each heading say."""

    def __init__(self, text: str) -> None:
        super().__init__(convert_charrefs=True)
        self.open: list[str] = []
        self.elements: list[tuple[str, dict[str, str]]] = []
        self.texts: list[tuple[str, str]] = []
        self.rows: list[list[str]] = []
        self.feed(text)
        self.close()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.elements.append((tag, {name: value or "" for name, value in attrs}))
        if tag not in EMPTY:
            self.open.append(tag)
        if tag == "tr":
            self.rows.append([])
        if tag in ("td", "th"):
            self.rows[-1].append("")

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.elements.append((tag, {name: value or "" for name, value in attrs}))

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        if self.open:
            self.texts.append((self.open[-1], data))
            if self.open[-1] in ("td", "th"):
                self.rows[-1][-1] += data

    def said(self, tag: str) -> list[str]:
        return [text for where, text in self.texts if where == tag]


@pytest.mark.parametrize("material", [side_fill, lambda: hostile(12, "2026-11-30")])
def test_nothing_runs_and_nothing_is_fetched(material) -> None:
    text = page(material())
    read = Read(text)
    assert read.open == []
    tags = {tag for tag, _ in read.elements}
    assert not tags & {"script", "img", "link", "iframe", "object", "embed", "form", "base", "image", "use", "a:href"}
    for tag, attributes in read.elements:
        assert attributes.keys() <= KNOWN, (tag, attributes)
        assert attributes.get("href", "#").startswith("#")
    names = [attributes["id"] for _, attributes in read.elements if "id" in attributes]
    assert len({*names}) == len(names)
    for _, attributes in read.elements:
        wanted = [*attributes.get("aria-labelledby", "").split(), attributes.get("href", "")[1:]]
        assert {*filter(None, wanted)} <= {*names}
    (policy,) = [attributes["content"] for _, attributes in read.elements if "http-equiv" in attributes]
    (style,) = read.said("style")
    digest = b64encode(sha256(style.encode()).digest()).decode()
    assert policy == f"default-src 'none'; style-src 'sha256-{digest}'; base-uri 'none'; form-action 'none'"
    assert "url(" not in style and "@import" not in style
    assert text.index("Content-Security-Policy") < text.index("<style>")


def test_what_a_stranger_writes_is_text() -> None:
    material = hostile(12, "2026-11-30")
    read = Read(page(material))
    assert read.said("h1")[0].startswith("<script>alert(1)</script></title><svg onload=x()> (Tj)")
    everything = " ".join(text for _, text in read.texts)
    for told in ("</td></table><script>z</script>", "</p><script>q</script>", "@SUM(A1)<img src=x onerror=y>"):
        assert told in everything
    assert "\u202e" not in everything


def test_every_chapter_stands_under_its_heading_and_in_the_list() -> None:
    read = Read(page(side_fill()))
    titles = [chapter.title for chapter in chapters(side_fill())]
    assert read.said("h1") == titles[:1] and read.said("h2") == ["Key figures", *titles[1:]]
    assert read.said("a")[1:] == titles[1:] and len(titles) >= 7
    tags = [tag for tag, _ in read.elements]
    assert all(tags.count(tag) == 1 for tag in ("header", "nav", "main", "footer", "h1"))
    assert tags.count("svg") == tags.count("desc") == count_of(side_fill(), *PICTURES) == 5
    assert tags.count("details") == count_of(side_fill(), *FOLDED) >= 2


def test_tables_say_what_the_summary_and_the_response_table_say() -> None:
    """Row by row, as the texts beside the binder have them."""
    rows = {" ".join(filter(None, row)) for row in Read(page(side_fill())).rows}
    lines = render("summary.txt", side_fill()).splitlines()
    begin, end = lines.index(next(line for line in lines if line.startswith("For 1 V"))), lines.index("")
    told = [" ".join(line.split()) for line in lines[begin:] if line.startswith("  ")]
    told = told[: told.index(next(line for line in told if line.startswith("P1.Rp"))) + 1]
    assert len(told) == 17 and {*told} <= rows
    begin = lines.index(next(line for line in lines if line.startswith("At the limit")))
    limits = [" ".join(line.split()) for line in lines[begin + 1 : lines.index("", begin)]]
    assert len(limits) == 17 and {*limits} <= rows and end > 0
    columns = render("response.csv", side_fill()).splitlines()
    head, *records = [record.split(",") for record in columns]
    place = head.index("woofer level (dB)")
    told = [f"{float(record[0]):.1f} {float(record[place]):.2f} " for record in records[::10]]
    assert len(told) > 30 and all(any(row.startswith(start) for row in rows) for start in told)


def test_tones_follow_the_reader_and_a_whole_sheet_is_drawn() -> None:
    line, area = Stroke(((0.0, 0.0), (9.0, 0.0))), Stroke(((0, 0), (1, 0), (1, 1)), 0.0, fill="#0072B2", closed=True)
    sheet = Sheet(297.0, 210.0, "Drawing", (Drawn((line, area), "a line & an area"),))
    read = Read(as_html([Chapter("a", "Top", ()), Chapter("b", "Drawing", (sheet,))], Front("T", "", "")))
    (svg,) = [attributes for tag, attributes in read.elements if tag == "svg"]
    assert (svg["width"], svg["height"], svg["viewbox"]) == ("21mm", "13mm", "0 0 21 13")  # without empty paper
    assert read.said("desc") == ["a line & an area"]
    first, second = [attributes for tag, attributes in read.elements if tag == "path"]
    assert first["class"] == "s-ink" and first["fill"] == "none" and second["fill"] == "#0072B2"
    style = read.said("style")[0]
    assert re.search(r"prefers-color-scheme: dark.*--ink: #ececec", style, re.DOTALL)
