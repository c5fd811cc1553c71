"""A part that is higher than the room above the board.

What it finds: a part on the parts side that rises higher over the board than the `depth` of its layout, as its size,
the direction of its axis and `raised` say. A size that is not stated is assumed where value and kind decide it; this is
a warning then.

Why it matters: the lid does not close, or the board does not go into the box.

Bad:
    board slat {
      outline 80:40 mm
      thickness 2 mm
      corner 80:40 mm cut 5 mm
      area north from 4:25 mm to 76:35 mm
      area south from 4:5 mm to 76:15 mm
      holes north 4 of 1.3 mm from 10:30 mm to 70:30 mm
      holes south 4 of 1.3 mm from 10:10 mm to 70:10 mm
    }
    driver woofer 8 ohm
    coil L1 1 mH { diameter 34 mm, length 14 mm }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    layout on slat {
      place L1 at 40:20 mm { axis 0 deg, leads into north 2 and north 3 }
            ^^
      lead out north 1 to input+
      lead out south 1 to input-
      lead out north 4 to woofer+
      lead out south 4 to woofer-
      cut from 40:24 mm to 40:36 mm { width 2 mm }
      depth 30 mm
    }

Good:
    board slat {
      outline 80:40 mm
      thickness 2 mm
      corner 80:40 mm cut 5 mm
      area north from 4:25 mm to 76:35 mm
      area south from 4:5 mm to 76:15 mm
      holes north 4 of 1.3 mm from 10:30 mm to 70:30 mm
      holes south 4 of 1.3 mm from 10:10 mm to 70:10 mm
    }
    driver woofer 8 ohm
    coil L1 1 mH { diameter 34 mm, length 14 mm }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    layout on slat {
      place L1 at 40:20 mm { axis upright, leads into north 2 and north 3 }
      lead out north 1 to input+
      lead out south 1 to input-
      lead out north 4 to woofer+
      lead out south 4 to woofer-
      cut from 40:24 mm to 40:36 mm { width 2 mm }
      depth 30 mm
    }

When to ignore it: where the lid has room for it at this place.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.units import METRE

if TYPE_CHECKING:
    from shuntwise.board.bodies import Body


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    from shuntwise.checks.room import advice, placed, severity

    play = 1e3 * RULE.limit(evidence)
    for layout, bodies in placed(evidence):
        for body in bodies:
            if layout.depth is not None and body.side == "parts" and body.high > layout.depth + play:
                yield RULE.finding(
                    body.place.label_span,
                    f"`{body.place.label}` is {body.high:.3g} mm high on `{layout.name}`",
                    severity=severity(body),
                    label=f"{body.high - layout.depth:.2g} mm higher than the room of {layout.depth:g} mm",
                    why="the lid does not close over it",
                    help=advice(_way(body, layout.depth), body),
                    subjects=(body.place.label,),
                )


def _way(body: Body, depth: float) -> str:
    if body.high - body.low <= depth:
        return "let it lie lower"
    return "lay it the other way, or take a flatter one"


RULE = Rule("part-too-high", Severity.ERROR, "layout", check, Bound(5e-4, METRE))
