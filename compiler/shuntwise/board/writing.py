"""Layouts before and after a repair -> edits of the text that they were read from.

In: layouts, and the same with something otherwise. Out: edits, or None where the change cannot be written. Statements
keep their words; only what has changed is written anew, and what is new comes before the layout's closing brace.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from shuntwise.board.wires import key_of
from shuntwise.diagnostics.diagnostic import Edit
from shuntwise.model.boards import Cut, Hole, Layout, Lead, Place, Point, Spot, Wire
from shuntwise.source import Span


def edits(before: Sequence[Layout], after: Sequence[Layout]) -> tuple[Edit, ...] | None:
    """What is to be written otherwise so that the layouts read as those `after`, which are in the same order."""
    found: list[Edit] = []
    for was, now in zip(before, after, strict=True):
        changed = [_place(one, other, was.name) for one, other in zip(was.places, now.places, strict=False)]
        for change in changed:
            if change is None:
                return None
            found += change
        found += _wires(was, now)
        found += [Edit(_line(cut.span), "") for cut in was.cuts if cut not in now.cuts]
        new = [
            *(_drill(hole) for hole in now.drilled[len(was.drilled) :]),
            *(_cut(cut) for cut in now.cuts if cut not in was.cuts),
            *(_wire(wire, was.name) for wire in _added(was, now)),
            *(_placed(place, was.name) for place in now.places[len(was.places) :]),
        ]
        if new:
            found.append(_before_brace(was.span, new))
    return tuple(found)


def spot_text(spot: Spot, home: str) -> str:
    """A spot as it is written in the layout called `home`."""
    return spot.hole if spot.layout in (None, home) else f"{spot.layout}.{spot.hole}"


def point_text(at: Point) -> str:
    """A point as it is written, to a hundredth of a millimetre."""
    return f"{at[0]:.2f}".rstrip("0").rstrip(".") + ":" + f"{at[1]:.2f}".rstrip("0").rstrip(".") + " mm"


def _place(was: Place, now: Place, home: str) -> list[Edit] | None:
    found = [Edit(was.label_span, now.label)] if was.label != now.label else []
    if was.label == now.label and len(now.leads) != len(was.leads):
        return _more_leads(was, now, home)
    # A part in another's place takes its leads as they are written there, whichever it calls them.
    left = {key_of(lead.spot) for lead in now.leads} - {key_of(lead.spot) for lead in was.leads}
    if was.label != now.label:
        return found if not left and len(was.leads) == len(now.leads) else None
    for old, new in zip(was.leads, now.leads, strict=True):
        if key_of(old.spot) != key_of(new.spot):
            found.append(Edit(old.spot.span, spot_text(new.spot, home)))
    return found


def _more_leads(was: Place, now: Place, home: str) -> list[Edit] | None:
    """Leads that the text lacks, behind those that it has."""
    if len(now.leads) < len(was.leads) or not was.span.text.endswith("}"):
        return None
    text = ", ".join(_lead(lead, home) for lead in now.leads[len(was.leads) :])
    at = was.span.end - 1
    inside = was.span.source.text[was.span.start : at].rstrip()
    end = was.span.start + len(inside)
    joint = " " if inside.endswith(("{", ",")) else ", "
    return [Edit(Span(was.span.source, end, end), joint + text)]


def _wires(was: Layout, now: Layout) -> Iterator[Edit]:
    """Ends of wires elsewhere, and wires that are taken away."""
    kept = {wire.span.start: wire for wire in now.wires if wire.span != was.name_span}
    for wire in was.wires:
        other = kept.get(wire.span.start)
        if other is None:
            yield Edit(_line(wire.span), "")
            continue
        for old, new in ((wire.first, other.first), (wire.second, other.second)):
            if key_of(old) != key_of(new):
                yield Edit(old.span, spot_text(new, was.name))


def _added(was: Layout, now: Layout) -> Iterable[Wire]:
    known = {wire.span.start for wire in was.wires}
    return (wire for wire in now.wires if wire.span.start not in known)


def _drill(hole: Hole) -> str:
    return f"drill {hole.name} {hole.diameter:g} mm at {point_text(hole.at)}"


def _cut(cut: Cut) -> str:
    return f"cut from {point_text(cut.start)} to {point_text(cut.end)} {{ width {cut.width:g} mm }}"


def _wire(wire: Wire, home: str) -> str:
    first, second = spot_text(wire.first, home), spot_text(wire.second, home)
    return f"jumper {first} -- {second}" if wire.kind == "jumper" else f"{wire.kind} {first} to {second}"


def _placed(place: Place, home: str) -> str:
    """A part that was not placed; where its body lies is the builder's to say."""
    where = "off board" if place.at is None else f"at {point_text(place.at)}"
    return f"place {place.label} {where} {{ {', '.join(_lead(lead, home) for lead in place.leads)} }}"


def _lead(lead: Lead, home: str) -> str:
    return f"{lead.terminal or 'leads'} into {spot_text(lead.spot, home)}"


def _before_brace(span: Span, statements: Sequence[str]) -> Edit:
    """Statements on lines of their own before the brace that a layout ends with."""
    text, brace = span.source.text, span.end - 1
    begin = text.rfind("\n", 0, brace) + 1
    if not text[begin:brace].strip():
        return Edit(Span(span.source, begin, begin), "".join(f"  {one}\n" for one in statements))
    return Edit(Span(span.source, brace, brace), "".join(f"\n  {one}" for one in statements) + "\n")


def _line(span: Span) -> Span:
    """A statement with the line that is its own, else with the blank or comma that parts it from its neighbours."""
    text = span.source.text
    begin = text.rfind("\n", 0, span.start) + 1
    end = text.find("\n", span.end)
    end = len(text) if end < 0 else end
    behind = text[span.end : end].strip()
    if not text[begin : span.start].strip() and (not behind or behind.startswith("#")):
        return Span(span.source, begin, min(end + 1, len(text)))
    after = span.end
    while after < end and text[after] in " ,\t":
        after += 1
    return Span(span.source, span.start, after)
