"""A sheet as SVG: all its marks as real text and paths, safe whatever an author writes, and in words."""

from __future__ import annotations

import re
from xml.etree import ElementTree

from documents.designs import TWO_WAY
from shuntwise.documents.catalogue import render
from shuntwise.documents.sheet import GREY, INK, PAPER, Drawn, Sheet, Stroke, Text
from shuntwise.documents.svg import as_svg
from shuntwise.workspace import Workspace

SVG = "{http://www.w3.org/2000/svg}"
HOSTILE = '</title><script>alert(1)</script> & "x" \x1b[31m \u202e \ufffe'


def test_every_mark_is_in_it() -> None:
    ring = ((0.0, 0.0), (4.0, 0.0), (4.0, 4.0))
    marks = (
        Text(1, 2, "a < b & c", 3, "middle", bold=True, tone=GREY),
        Stroke(((0, 0), (10.12345, 5)), 0.25, INK, (1.5, 1.0)),
        Stroke(ring, 0, closed=True, fill=PAPER, rest=(ring,)),
        Stroke(ring, 0.3, "#0072B2", closed=True, fill="#56B4E9"),
    )
    root = ElementTree.fromstring(as_svg(Sheet(210, 297, "Title", (*marks[:2], Drawn(marks[2:], "two triangles")))))
    (text,) = root.findall(f"{SVG}text")
    assert (text.text, text.get("text-anchor"), text.get("font-weight"), text.get("class")) == (
        "a < b & c",
        "middle",
        "bold",
        "f-grey",
    )
    ground, line, holed, blue = root.findall(f"{SVG}path")
    assert (ground.get("class"), ground.get("d")) == ("f-paper", "M0 0L210 0L210 297L0 297Z")
    assert (line.get("d"), line.get("stroke-dasharray"), line.get("class")) == ("M0 0L10.123 5", "1.5 1", "s-ink")
    assert (holed.get("class"), holed.get("fill-rule"), holed.get("stroke-width")) == ("f-paper", "evenodd", None)
    assert (holed.get("d") or "").count("Z") == 2
    assert (blue.get("stroke"), blue.get("fill")) == ("#0072B2", "#56B4E9")
    assert (root.get("width"), root.get("role")) == ("210mm", "img")
    named = {root.find(f"{SVG}title").get("id"), root.find(f"{SVG}desc").get("id")}  # type: ignore[union-attr]
    assert set((root.get("aria-labelledby") or "").split()) == named
    assert root.find(f"{SVG}desc").text == "two triangles"  # type: ignore[union-attr]


def test_tones_follow_the_reader_and_the_printer() -> None:
    style = ElementTree.fromstring(as_svg(Sheet(10, 10, "", ()))).find(f"{SVG}style").text or ""  # type: ignore[union-attr]
    tones = [dict(re.findall(r"--(\w+): (#\w+)", line)) for line in style.splitlines() if "--ink:" in line]
    assert "prefers-color-scheme: dark" in style and "@media print" in style
    for tone in tones:
        assert _contrast(tone["ink"], tone["paper"]) >= 7
        assert _contrast(tone["grey"], tone["paper"]) >= 4.5
    assert len(tones) == 3


def _contrast(first: str, second: str) -> float:
    """Contrast ratio (WCAG 2.1, 1.4.3, from memory)."""

    def luminance(colour: str) -> float:
        digits = colour[1:] if len(colour) == 7 else "".join(2 * digit for digit in colour[1:])
        shares = [int(digits[n : n + 2], 16) / 255 for n in (0, 2, 4)]
        linear = [share / 12.92 if share <= 0.03928 else ((share + 0.055) / 1.055) ** 2.4 for share in shares]
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]

    light, dark = sorted((luminance(first), luminance(second)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def test_nothing_that_an_author_writes_gets_out_of_its_text() -> None:
    sheet = Sheet(
        100, 100, HOSTILE, (Text(1, 1, HOSTILE), Drawn((Stroke(((0, 0), (1, 1)), tone='"/><script/>'),), HOSTILE))
    )
    root = ElementTree.fromstring(as_svg(sheet))
    assert {element.tag.removeprefix(SVG) for element in root.iter()} == {
        "svg",
        "title",
        "desc",
        "style",
        "text",
        "path",
    }


def test_the_schematic_of_a_hostile_title_is_built() -> None:
    title = HOSTILE.replace('"', "'")
    material = Workspace.of_text(f'design "{title}"\n' + TWO_WAY).material()
    drawn = render("schematic.svg", material)
    root = ElementTree.fromstring(drawn)
    assert root.find(f"{SVG}script") is None
    assert not set("\x1b\u202e") & set(drawn)
    shown = [text.text for text in root.findall(f"{SVG}text")]
    assert {"woofer", "tweeter", "L1", "C1", "0.5 mH", "5 uF"} <= set(shown)
