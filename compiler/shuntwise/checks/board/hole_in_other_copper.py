"""A hole that is in other copper than the text says.

What it finds: a lead or a wire in a hole that is called as an area, or drilled `in` one, where a cut has taken the
copper of that area away, and other copper comes near enough to take the solder.

Why it matters: The text says one thing and the board does another. What is told of the nets goes by the board.

Bad:
    board slat {
      outline 80:40 mm
      thickness 2 mm
      corner 80:40 mm cut 5 mm
      area north from 4:25 mm to 76:35 mm
      area middle from 4:18 mm to 76:24.6 mm
      area south from 4:5 mm to 76:15 mm
      holes north 4 of 1.3 mm from 10:30 mm to 70:30 mm
      holes middle 4 of 1.3 mm from 10:21 mm to 70:21 mm
      holes south 4 of 1.3 mm from 10:10 mm to 70:10 mm
    }
    driver woofer 8 ohm
    coil L1 1 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    layout on slat {
      place L1 at 40:20 mm { leads into north 3 and h1 }
                                                    ^^
      lead out north 1 to input+
      lead out south 1 to input-
      lead out middle 4 to woofer+
      lead out south 4 to woofer-
      cut from 20:26 mm to 40:26 mm { width 2 mm }
      drill h1 1.3 mm at 30:25.2 mm in north
    }

Good:
    board slat {
      outline 80:40 mm
      thickness 2 mm
      corner 80:40 mm cut 5 mm
      area north from 4:25 mm to 76:35 mm
      area middle from 4:18 mm to 76:24.6 mm
      area south from 4:5 mm to 76:15 mm
      holes north 4 of 1.3 mm from 10:30 mm to 70:30 mm
      holes middle 4 of 1.3 mm from 10:21 mm to 70:21 mm
      holes south 4 of 1.3 mm from 10:10 mm to 70:10 mm
    }
    driver woofer 8 ohm
    coil L1 1 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    layout on slat {
      place L1 at 40:20 mm { leads into north 3 and middle 2 }
      lead out north 1 to input+
      lead out south 1 to input-
      lead out middle 4 to woofer+
      lead out south 4 to woofer-
      cut from 20:26 mm to 40:26 mm { width 2 mm }
    }

When to ignore it: where the cut is meant to do so.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity
from shuntwise.model.boards import Layout, Spot


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    from shuntwise.board.wires import key_of

    judgement = evidence.boards
    if judgement is None:
        return
    astray = judgement.copper.astray - judgement.copper.bare  # without any copper a lead is off it: another rule
    used = {key_of(spot): spot for layout in reversed(judgement.layouts) for spot in _spots(layout)}
    for layout in judgement.layouts:
        for hole in layout.holes:
            spot = used.get((layout.name, hole.name))
            if spot is not None and (layout.name, hole.name) in astray:
                yield RULE.finding(
                    spot.span,
                    f"`{hole.name}` is said to be in the area `{hole.area}`, and is in other copper",
                    label=f"no copper of `{hole.area}` is left here",
                    why="what is told of the nets goes by the copper, not by the name",
                    help="look at the cuts; or use a hole that is in the area",
                    places=(Label(hole.span, "the hole"),),
                    subjects=(hole.name,),
                )


def _spots(layout: Layout) -> Iterator[Spot]:
    for place in layout.places:
        yield from (lead.spot for lead in place.leads)
    for wire in layout.wires:
        yield from (wire.first, wire.second)


RULE = Rule("hole-in-other-copper", Severity.WARNING, "layout", check)
