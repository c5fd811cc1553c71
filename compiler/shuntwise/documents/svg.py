"""Drawings as SVG 1.1: real text, tones that follow the reader's setting, and words for who does not see it.

In: marks of a sheet. Out: elements for a page, or a whole file. Refuses to know what is drawn.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from html import escape

from shuntwise.diagnostics.terminal import visible
from shuntwise.documents.sheet import GREY, INK, PAPER, Drawn, Mark, Sheet, Stroke, Text

_TONES = (INK, GREY, PAPER)

PAINTS = """
svg text { font-family: "DejaVu Sans", Verdana, sans-serif; white-space: pre }
.s-ink { stroke: var(--ink) } .s-grey { stroke: var(--grey) } .s-paper { stroke: var(--paper) }
.f-ink { fill: var(--ink) } .f-grey { fill: var(--grey) } .f-paper { fill: var(--paper) }
"""
"""The style that drawings need; a page says what its three tones are."""

_ALONE = (
    """
svg { --ink: #111; --grey: #5a5a5a; --paper: #fff }
@media (prefers-color-scheme: dark) { svg { --ink: #eee; --grey: #b4b4b4; --paper: #161616 } }
@media print { svg { --ink: #000; --grey: #5a5a5a; --paper: #fff } }
"""
    + PAINTS
)


def as_svg(sheet: Sheet) -> str:
    """One sheet as a file, in mm. Lengths are rounded to a thousandth of them."""
    said = " ".join(entry.said for entry in sheet.content if isinstance(entry, Drawn))
    ground = Stroke(
        ((0, 0), (sheet.width, 0), (sheet.width, sheet.height), (0, sheet.height)), width=0, closed=True, fill=PAPER
    )
    marks = (ground, *sheet.marks)
    first, *rest = drawing(sheet.width, sheet.height, marks, sheet.title, said, "sheet")
    first = first.replace("<svg", '<svg xmlns="http://www.w3.org/2000/svg"', 1)
    title, words, *drawn = rest
    return "\n".join([first, title, words, f"<style>{_ALONE}</style>", *drawn, ""])


def safe(text: str) -> str:
    """What an author wrote, as text and nothing else."""
    return escape(visible(text))


def drawing(
    width: float, height: float, marks: Iterable[Mark], title: str, said: str, name: str, *, white: bool = False
) -> Iterator[str]:
    """The lines of one element: its tag, its title, its words, its marks, its end. `name` is its own on the page;
    `white` leaves it on white ground, whatever the reader's setting.
    """
    ground = ' class="white"' if white else ""
    yield (
        f'<svg{ground} role="img" aria-labelledby="{name}-t {name}-d" width="{width:.6g}mm" height="{height:.6g}mm" '
        f'viewBox="0 0 {width:.6g} {height:.6g}">'
    )
    yield f'<title id="{name}-t">{safe(title)}</title>'
    yield f'<desc id="{name}-d">{safe(said)}</desc>'
    for mark in marks:
        yield _written(mark) if isinstance(mark, Text) else _drawn(mark)
    yield "</svg>"


def _written(mark: Text) -> str:
    looks = _attributes([_paint("f", "fill", mark.tone)])
    looks += "" if mark.anchor == "start" else f' text-anchor="{mark.anchor}"'
    looks += ' font-weight="bold"' if mark.bold else ""
    return f'<text x="{_mm(mark.x)}" y="{_mm(mark.y)}" font-size="{_mm(mark.size)}"{looks}>{safe(mark.text)}</text>'


def _drawn(mark: Stroke) -> str:
    path = "".join(
        "M" + "L".join(f"{_mm(x)} {_mm(y)}" for x, y in ring) + "Z" * mark.closed for ring in (mark.points, *mark.rest)
    )
    paints = [_paint("f", "fill", mark.fill or "none")]
    looks = ""
    if mark.width:
        paints.append(_paint("s", "stroke", mark.tone))
        looks = f' stroke-width="{_mm(mark.width)}" stroke-linejoin="round"'
        looks += f' stroke-dasharray="{" ".join(map(_mm, mark.dashes))}"' if mark.dashes else ' stroke-linecap="round"'
    rule = ' fill-rule="evenodd"' if mark.fill is not None and mark.rest else ""
    return f'<path d="{path}"{_attributes(paints)}{looks}{rule}/>'


def _paint(letter: str, attribute: str, tone: str) -> tuple[str, str]:
    """Attribute and value: a tone is a class, which follows the reader's setting, a colour stands as it is."""
    return ("class", f"{letter}-{tone}") if tone in _TONES else (attribute, tone)


def _attributes(paints: Iterable[tuple[str, str]]) -> str:
    """Written out, with one `class` at the most."""
    told: dict[str, list[str]] = {}
    for attribute, value in paints:
        told.setdefault(attribute, []).append(value)
    return "".join(f' {attribute}="{escape(" ".join(values))}"' for attribute, values in told.items())


def _mm(length: float) -> str:
    return f"{length:.3f}".rstrip("0").rstrip(".")
