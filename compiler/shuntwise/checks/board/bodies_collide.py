"""Two parts in one place.

What it finds: two parts on one side of a board whose bodies overlap seen from above, at one height. A part that is
`raised` may be over a flat one. Sizes that are not stated are assumed where value and kind decide them; this is a
warning then.

Why it matters: the second one does not go in when the first is soldered.

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
    coil L1 1 mH { diameter 30 mm, length 14 mm }
    capacitor C1 10 uF { diameter 20 mm, length 34 mm }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    layout on slat {
      place L1 at 40:20 mm { axis upright, leads into north 2 and north 3 }
      place C1 at 58:20 mm { axis 90 deg, leads into north 4 and south 4 }
            ^^
      lead out north 1 to input+
      lead out south 1 to input-
      lead out north 3 to woofer+
      lead out south 3 to woofer-
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
    coil L1 1 mH { diameter 30 mm, length 14 mm }
    capacitor C1 10 uF { diameter 20 mm, length 34 mm }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    layout on slat {
      place L1 at 40:20 mm { axis upright, leads into north 2 and north 3 }
      place C1 at 67:20 mm { axis 90 deg, leads into north 4 and south 4 }
      lead out north 1 to input+
      lead out south 1 to input-
      lead out north 3 to woofer+
      lead out south 3 to woofer-
      cut from 40:24 mm to 40:36 mm { width 2 mm }
    }

When to ignore it: where one of the two is bent aside, or hollow where the other is.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Label, Rule, Severity
from shuntwise.units import METRE


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    from shuntwise.board.bodies import overlaps
    from shuntwise.checks.room import advice, placed, severity

    play = 1e3 * RULE.limit(evidence)
    for _, bodies in placed(evidence):
        for one, other, deep in overlaps(bodies, play):
            yield RULE.finding(
                other.place.label_span,
                f"`{one.place.label}` and `{other.place.label}` are in one place",
                severity=severity(one, other),
                label=f"{deep:.2g} mm within `{one.place.label}`",
                why="the second does not go in when the first is soldered",
                help=advice("move one of them, or raise it over the other", one, other),
                places=(Label(one.place.label_span, f"`{one.place.label}`"),),
                subjects=(other.place.label, one.place.label),
            )


RULE = Rule("bodies-collide", Severity.ERROR, "layout", check, Bound(5e-4, METRE))
