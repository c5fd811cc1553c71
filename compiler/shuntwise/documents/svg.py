"""A sheet as SVG 1.1: real text, tones that follow the reader's setting, and words for who does not see it.

In: a `Sheet`. Out: text. Refuses to know what is drawn.
"""

from __future__ import annotations

from collections.abc import Iterable
from xml.sax.saxutils import escape, quoteattr

from shuntwise.documents.sheet import GREY, INK, PAPER, Drawn, Mark, Point, Sheet, Text

STYLE = """\
svg{--ink:#111;--grey:#666;--paper:#fff;font-family:"DejaVu Sans",Verdana,sans-serif}
@media (prefers-color-scheme:dark){svg{--ink:#eee;--grey:#aaa;--paper:#16181b}}
@media print{svg{--ink:#000;--grey:#555;--paper:#fff}}
path{fill:none;stroke-linecap:round;stroke-linejoin:round}.ink{stroke:var(--ink)}.grey{stroke:var(--grey)}
.paper{stroke:var(--paper)}.f-ink{fill:var(--ink)}.f-grey{fill:var(--grey)}.f-paper{fill:var(--paper)}
text{stroke:none;white-space:pre}
"""

TONES = (INK, GREY, PAPER)


def as_svg(sheet: Sheet) -> str:
    """One picture, in mm. Lengths are rounded to a thousandth of them."""
    said = " ".join(entry.said for entry in sheet.content if isinstance(entry, Drawn))
    wide, high = _number(sheet.width), _number(sheet.height)
    lines = [
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{wide}mm" height="{high}mm" viewBox="0 0 {wide} {high}"'
        ' role="img" aria-labelledby="title desc">',
        f'<title id="title">{_safe(sheet.title)}</title>',
        f'<desc id="desc">{_safe(said)}</desc>',
        f"<style>{STYLE}</style>",
        f'<rect width="{wide}" height="{high}" class="f-paper"/>',
        *(_mark(mark) for mark in sheet.marks),
        "</svg>",
    ]
    return "\n".join(lines) + "\n"


def _mark(mark: Mark) -> str:
    if isinstance(mark, Text):
        anchor = "" if mark.anchor == "start" else f' text-anchor="{mark.anchor}"'
        bold = ' font-weight="bold"' if mark.bold else ""
        where = f'x="{_number(mark.x)}" y="{_number(mark.y)}" font-size="{_number(mark.size)}"'
        return f"<text {where}{anchor}{bold} {_filled(mark.tone)}>{_safe(mark.text)}</text>"
    path = "".join(_ring(ring, mark.closed) for ring in (mark.points, *mark.rest))
    attributes = [f'd="{path}"']
    classes = []
    if mark.width:
        attributes.append(f'stroke-width="{_number(mark.width)}"')
        if mark.tone in TONES:
            classes.append(mark.tone)
        else:
            attributes.append(f"stroke={quoteattr(mark.tone)}")
    if mark.fill in TONES:
        classes.append(f"f-{mark.fill}")
    elif mark.fill is not None:
        attributes.append(f"style={quoteattr('fill:' + mark.fill)}")
    if mark.rest and mark.fill is not None:
        attributes.append('fill-rule="evenodd"')
    if mark.dashes:
        attributes.append(f'stroke-dasharray="{" ".join(map(_number, mark.dashes))}"')
    if classes:
        attributes.append(f'class="{" ".join(classes)}"')
    return f"<path {' '.join(attributes)}/>"


def _filled(tone: str) -> str:
    return f'class="f-{tone}"' if tone in TONES else f"fill={quoteattr(tone)}"


def _ring(points: Iterable[Point], closed: bool) -> str:
    return "M" + "L".join(f"{_number(x)} {_number(y)}" for x, y in points) + ("Z" if closed else "")


def _safe(text: str) -> str:
    """Escaped, without the characters that XML 1.0 forbids."""
    return escape(
        "".join(
            c for c in text if c in "\t\n\r" or (c >= " " and c not in "\ufffe\uffff" and not "\ud800" <= c <= "\udfff")
        )
    )


def _number(value: float) -> str:
    return f"{value:.3f}".rstrip("0").rstrip(".") or "0"
