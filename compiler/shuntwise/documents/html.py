"""Chapters -> one page for the screen, whole in one file: no script, nothing fetched, readable without seeing it.

In: chapters. Out: HTML. Its policy forbids whatever is not in it, its own style told by digest, so that no text of a
design could act even if it came to stand unescaped. Light or dark as the reader has it; ink, grey and paper of drawings
follow, pictures made for white ground keep it. It refuses to know what a chapter says.
"""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Iterable, Iterator, Sequence
from math import inf

from shuntwise.documents.lettering import extent
from shuntwise.documents.page import Behind, Block, Chapter, Front, Group, Heading, Listing, Paragraph, Picture, Table
from shuntwise.documents.sheet import Drawn, Sheet, flat
from shuntwise.documents.svg import PAINTS, drawing, safe

READABLE, AROUND = 170.0, 12.0
"""A drawing at least so wide (mm) keeps this width (40 rem) on any screen; so much is left beside a whole sheet."""

LONG = 16
"""A cell of more characters than this may be broken anywhere; shorter ones are a value with its unit, or a word."""

_STYLE = (
    """
:root { color-scheme: light dark; --ink: #1a1a1a; --grey: #5a5a5a; --paper: #fff; --rule: #c4c4c4; --link: #0a4f8f }
@media (prefers-color-scheme: dark) {
  :root { --ink: #ececec; --grey: #b4b4b4; --paper: #161616; --rule: #4a4a4a; --link: #8ec5ff }
}
.white { --ink: #1a1a1a; --grey: #5a5a5a; --paper: #fff }
html { background: var(--paper); color: var(--ink); font: 1rem/1.5 system-ui, sans-serif }
body { margin: 0 auto; max-width: 66rem; padding: 1rem clamp(1rem, 4vw, 3rem) 3rem }
h1, h2, h3, p, li, th, td, summary { unicode-bidi: plaintext }
h1, h2, h3, p, li, summary, .long { overflow-wrap: anywhere }
h1 { font-size: 2rem; line-height: 1.2; margin: 0.5rem 0 }
h2 { border-top: 1px solid var(--rule); font-size: 1.5rem; margin: 2.5rem 0 1rem; padding-top: 1.5rem }
h3 { font-size: 1.1rem; margin: 1.5rem 0 0.5rem }
p { margin: 0.25rem 0; max-width: 44rem }
li { max-width: 44rem }
.group { margin: 1rem 0 }
ul.plain { list-style: none; padding-left: 1rem }
a { color: var(--link) }
:focus-visible { outline: 3px solid var(--link); outline-offset: 2px }
.skip { left: -99rem; position: absolute }
.skip:focus { background: var(--paper); left: 1rem; padding: 0.5rem; top: 0.5rem }
.grey { color: var(--grey) }
.wide { overflow-x: auto }
.wide > svg { min-width: 40rem }
table { border-collapse: collapse; font-size: 0.9rem; margin: 0.5rem 0 }
th, td { border-bottom: 1px solid var(--rule); padding: 0.2rem 1rem 0.2rem 0; text-align: right; vertical-align: top }
thead th { border-bottom-width: 2px; vertical-align: bottom }
tbody th { font-weight: normal }
.long { min-width: 6rem }
td { white-space: nowrap }
.left { text-align: left }
.written { border: 1px solid var(--grey); min-width: 6rem }
.written + td { padding-left: 1rem }
summary { cursor: pointer; padding: 0.3rem 0 }
svg { display: block; height: auto; max-width: 100% }
svg.white { background: var(--paper) }
svg text { font-family: "DejaVu Sans", Verdana, sans-serif; white-space: pre }
@page { margin: 14mm }
@media print {
  :root { --ink: #000; --grey: #5a5a5a; --paper: #fff; --rule: #999; --link: #000 }
  body { font-size: 10pt; max-width: none; padding: 0 }
  table { font-size: 9pt }
  th, td { padding-right: 0.7rem }
  td.long { white-space: normal }
  .wide { overflow: visible }
  .wide > svg { min-width: 0 }
  nav, .skip, details:not([open]) { display: none }
  h2, h3, .group > p:first-child:not(:only-child) { break-after: avoid }
  svg, tr { break-inside: avoid }
}
"""
    + PAINTS
)


def as_html(chapters: Sequence[Chapter], front: Front) -> str:
    """The whole file. The first chapter stands on top, the others have a list of links before them."""
    from hashlib import sha256

    digest = b64encode(sha256(_STYLE.encode()).digest()).decode()
    policy = f"default-src 'none'; style-src 'sha256-{digest}'; base-uri 'none'; form-action 'none'"
    first, *others = chapters
    title = "Key figures" if first.title == front.title else first.title
    told = " · ".join(filter(None, [front.variant, front.mark and f"design mark {front.mark}"]))
    lines = [
        "<!doctype html>",
        '<html lang="en">',
        "<head>",
        '<meta charset="utf-8">',
        f'<meta http-equiv="Content-Security-Policy" content="{policy}">',
        '<meta name="viewport" content="width=device-width, initial-scale=1">',
        '<meta name="referrer" content="no-referrer">',
        f"<title>{safe(front.title)}</title>",
        f"<style>{_STYLE}</style>",
        "</head>",
        "<body>",
        '<a class="skip" href="#content">Skip to the content</a>',
        f"<header><h1>{safe(front.title)}</h1></header>",
        *_contents(others),
        '<main id="content" tabindex="-1">',
        f'<section id="{first.key}" aria-labelledby="{first.key}-title">',
        f'<h2 id="{first.key}-title">{safe(title)}</h2>',
        *_content(first),
        "</section>",
    ]
    for chapter in others:
        lines.append(f'<section id="{chapter.key}" aria-labelledby="{chapter.key}-title">')
        lines.append(f'<h2 id="{chapter.key}-title">{safe(chapter.title)}</h2>')
        lines += _content(chapter)
        lines.append("</section>")
    lines += ["</main>", f'<footer class="grey"><p>{safe(told)}</p></footer>', "</body>", "</html>", ""]
    return "\n".join(lines)


def _contents(chapters: Sequence[Chapter]) -> Iterator[str]:
    if chapters:
        yield '<nav aria-label="Contents"><ol>'
        yield from (f'<li><a href="#{one.key}">{safe(one.title)}</a></li>' for one in chapters)
        yield "</ol></nav>"


def _content(chapter: Chapter) -> Iterator[str]:
    for number, entry in enumerate(chapter.content, start=1):
        if isinstance(entry, Sheet):
            said = " ".join(part.said for part in entry.content if isinstance(part, Drawn))
            width, height = _used(entry)
            name = f"{chapter.key}-{number}"
            yield from _shown(width, entry.title, drawing(width, height, flat(entry.content), entry.title, said, name))
        else:
            yield from _group(entry, chapter, f"{chapter.key}-{number}")


def _group(group: Group, chapter: Chapter, name: str) -> Iterator[str]:
    heading = next((block.text for block in group if isinstance(block, Heading)), chapter.title)
    yield '<div class="group">'
    for number, block in enumerate(group, start=1):
        yield from _block(block, heading, f"{name}-{number}")
    yield "</div>"


def _block(block: Block, heading: str, name: str) -> Iterator[str]:
    match block:
        case Heading(text):
            yield f"<h3>{safe(text)}</h3>"
        case Paragraph(text):
            yield f"<p>{safe(text)}</p>"
        case Listing(entries, marked):
            yield "<ul>" if marked else '<ul class="plain">'
            yield from (f"<li>{safe(entry)}</li>" for entry in entries)
            yield "</ul>"
        case Table():
            yield from _table(block, heading)
        case Picture():
            where = (block.width, block.height, block.drawn.marks)
            drawn = drawing(*where, block.title, block.drawn.said, name, white=block.on_white)
            yield from _shown(block.width, block.title, drawn)
        case Behind(title, tables):
            yield f"<details><summary>{safe(title)}</summary>"
            for table in tables:
                yield from _table(table, title)
            yield "</details>"


def _shown(width: float, title: str, drawn: Iterable[str]) -> Iterator[str]:
    """A drawing that would be too small to read on a narrow screen keeps a size, and scrolls as tables do."""
    if width < READABLE:
        yield from drawn
        return
    yield _wide(title)
    yield from drawn
    yield "</div>"


def _used(sheet: Sheet) -> tuple[float, float]:
    """Width and height in mm of what is drawn on a sheet, with a margin: a screen has no use for empty paper."""
    ends = [extent(mark)[2:] for mark in sheet.marks]
    right, low = map(max, zip(*ends, strict=True)) if ends else (inf, inf)
    return min(right + AROUND, sheet.width), min(low + AROUND, sheet.height)


def _wide(title: str) -> str:
    """What is wider than the screen scrolls in here, by the keyboard too."""
    return f'<div class="wide" role="group" tabindex="0" aria-label="{safe(title)}">'


def _table(table: Table, heading: str) -> Iterator[str]:
    yield f"{_wide(heading)}<table>"
    if table.heads:
        yield f"<thead><tr>{''.join(_cells(table.heads, table.left, 'col'))}</tr></thead>"
    yield "<tbody>"
    for row in table.rows:
        yield f"<tr>{''.join(_cells(row, table.left, written=table.written))}</tr>"
    yield "</tbody></table></div>"


def _cells(
    cells: Iterable[str], left: frozenset[int], scope: str = "", written: frozenset[int] = frozenset()
) -> Iterator[str]:
    for place, cell in enumerate(cells):
        kinds = ("left" * (place in left), "long" * (len(cell) > LONG), "written" * (place in written))
        looks = " ".join(filter(None, kinds))
        looks = looks and f' class="{looks}"'
        tag, of = ("th", f' scope="{scope or "row"}"') if (scope and cell) or place == 0 else ("td", "")
        yield f"<{tag}{of}{looks}>{safe(cell)}</{tag}>"
