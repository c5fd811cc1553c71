"""A part beyond the edge of the board, or on a fixing.

What it finds: a part whose body goes beyond the outline of its board, a clipped corner's too, or into what a fixing
keeps free. A size that is not stated is assumed where value and kind decide it; this is a warning then.

Why it matters: the board does not go where it was meant to, and a screw does not go in.

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
      place L1 at 40:16 mm { axis upright, leads into north 2 and north 3 }
            ^^
      lead out north 1 to input+
      lead out south 1 to input-
      lead out north 4 to woofer+
      lead out south 4 to woofer-
      cut from 40:24 mm to 40:36 mm { width 2 mm }
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
    }

When to ignore it: where there is room beside the board.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Label, Rule, Severity
from shuntwise.units import METRE


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    from shuntwise.board.bodies import on_fixings, over_edge
    from shuntwise.board.writing import point_text
    from shuntwise.checks.room import advice, placed, severity

    play = 1e3 * RULE.limit(evidence)
    for layout, bodies in placed(evidence):
        for body in bodies:
            over = over_edge(body, layout)
            if over > play:
                yield RULE.finding(
                    body.place.label_span,
                    f"`{body.place.label}` goes beyond the edge of `{layout.board.name}`",
                    severity=severity(body),
                    label=f"by {over:.2g} mm",
                    why="the board does not go where it was meant to",
                    help=advice("move it, or turn it", body),
                    subjects=(body.place.label,),
                )
        for body, fixing, deep in on_fixings(bodies, layout, play):
            yield RULE.finding(
                body.place.label_span,
                f"`{body.place.label}` lies on the fixing at {point_text(fixing.at)}",
                severity=severity(body),
                label=f"{deep:.2g} mm within what it keeps free",
                why="the screw and its washer do not go in",
                help=advice("move it, or turn it", body),
                places=(Label(fixing.span, "the fixing"),),
                subjects=(body.place.label,),
            )


RULE = Rule("body-over-edge", Severity.ERROR, "layout", check, Bound(5e-4, METRE))
