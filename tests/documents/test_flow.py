"""Pages: nothing leaves them, no text lies on another, and what belongs together stays together."""

from __future__ import annotations

from itertools import combinations

import pytest

from documents.binders import hostile, sheets, side_fill
from shuntwise.documents.binder import chapters
from shuntwise.documents.flow import BOTTOM, LEFT, RIGHT, TOP, block, flow
from shuntwise.documents.lettering import ASCENT, DESCENT, width
from shuntwise.documents.page import Chapter, Front, Heading, Listing, Paragraph, Table
from shuntwise.documents.sheet import Drawn, Sheet, Stroke, Text, flat

FRONT = Front("A box", "", "0badcafe")


def box(text: Text) -> tuple[float, float, float, float]:
    wide = width(text.text, text.size, bold=text.bold)
    left = text.x - {"start": 0.0, "middle": 0.5, "end": 1.0}[text.anchor] * wide
    return left, text.y - ASCENT * text.size, left + wide, text.y + DESCENT * text.size


def sound(sheet: Sheet) -> None:
    """All within the page's edges, and no text outside pictures on another."""
    for mark in flat(sheet.content):
        if isinstance(mark, Text):
            left, top, right, bottom = box(mark)
        else:
            points = [point for ring in (mark.points, *mark.rest) for point in ring]
            left, top = min(x for x, _ in points), min(y for _, y in points)
            right, bottom = max(x for x, _ in points), max(y for _, y in points)
        assert left >= LEFT - 0.3 and right <= sheet.width - RIGHT + 0.3, mark
        assert top >= 5 and bottom <= sheet.height - 5, mark
    boxes = [box(entry) for entry in sheet.content if isinstance(entry, Text) and entry.text]
    for (l1, t1, r1, b1), (l2, t2, r2, b2) in combinations(boxes, 2):
        assert not (l1 < r2 - 0.05 and l2 < r1 - 0.05 and t1 < b2 - 0.05 and t2 < b1 - 0.05)


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_whatever_a_name_is_nothing_overlaps_or_leaves_the_page(paper: str) -> None:
    for material in (hostile(12, "2026-11-30"), side_fill()):
        made, places = sheets(material, paper)
        assert [place.title for place in places] == [chapter.title for chapter in chapters(material)]
        for number, sheet in enumerate(made, start=1):
            sound(sheet)
            edge = [entry.text for entry in sheet.content if isinstance(entry, Text) and entry.role == "Artifact"]
            assert f"page {number} of {len(made)}" in edge and f"design mark {material.mark}" in edge


def test_long_tables_have_their_head_on_every_page_and_no_lone_rows() -> None:
    rows = tuple((f"R{number}", "x" * (number % 90), "1 W") for number in range(200))
    made, _ = flow([Chapter("t", "Long", ((Table(("Part", "what", "rating"), rows, frozenset({0, 1})),),))], FRONT)
    told = [[e.text for e in sheet.content if isinstance(e, Text) and e.role in ("TR", "TH")] for sheet in made]
    assert len(made) > 3 and all(texts[:3] == ["Part", "what", "rating"] for texts in told)
    assert [text for texts in told for text in texts[3:]] == [row[0] for row in rows]
    assert min(len(texts) for texts in told) >= 3 + 3
    for sheet in made:
        sound(sheet)


def test_headings_stay_with_what_follows_and_a_row_longer_than_a_page_goes_on() -> None:
    groups = tuple((Heading(f"Heading {n}"), Paragraph("words " * (17 * n % 60 + 1))) for n in range(60))
    made, _ = flow([Chapter("h", "Headings", groups)], FRONT)
    for sheet in made:
        shown = [entry for entry in sheet.content if isinstance(entry, Text) and entry.role in ("H2", "P")]
        assert shown[-1].role != "H2"
        sound(sheet)
    made, _ = flow([Chapter("r", "Row", ((Table(("a", "b"), (("name", "word " * 9000),)), Listing(("end",))),))], FRONT)
    assert len(made) > 3
    for sheet in made:
        sound(sheet)


def test_a_short_chapter_shares_a_page_and_a_whole_sheet_has_its_own() -> None:
    """Across if it is wider than high; as large as it is, or smaller where the paper is."""
    room, height = block("a4", across=True)
    line = Drawn((Stroke(((0.0, 0.0), (room, height))),), "a line")
    twice = Drawn((Stroke(((0.0, 0.0), (2 * room, 2 * height))),), "a line")
    whole = (Sheet(room, height, "Drawing", (line,)), Sheet(2 * room, 2 * height, "Large", (twice,)))
    chapters = [
        Chapter("a", "One", ((Paragraph("first"),),)),
        Chapter("b", "Two", ((Paragraph("second"),),)),
        Chapter("c", "Drawing", whole),
        Chapter("d", "Three", ((Paragraph("third"),),)),
    ]
    made, places = flow(chapters, FRONT)
    across = (297.0, 210.0)
    assert [(sheet.width, sheet.height) for sheet in made] == [(210.0, 297.0), across, across, (210.0, 297.0)]
    assert [place.sheet for place in places] == [0, 0, 1, 3] and places[1].y > places[0].y == TOP
    assert "page 2 of 4" in [mark.text for mark in made[1].marks if isinstance(mark, Text)]
    for sheet, titled in zip(made[1:3], (True, False), strict=True):  # the first has the chapter's title
        (first, last) = next(mark.points for mark in sheet.marks if isinstance(mark, Stroke))
        assert first[0] == pytest.approx(LEFT) and (first[1] > TOP) == titled
        assert last[1] == pytest.approx(210 - BOTTOM) and (last[0] < 297 - RIGHT - 1) == titled
        sound(sheet)
    assert next(mark.text for mark in made[1].marks if isinstance(mark, Text)) == "Drawing"
