"""A part on the board that the circuit leaves out.

What it finds: a part that a layout places and that is left out of the circuit everywhere: in the design itself, in
all variants and in all positions of choices.

Why it matters: it costs a part and a place, and whoever builds the box will wonder where it belongs.

Bad:
    include "lath" from library
    driver woofer 8 ohm
    coil L1 1 mH
    capacitor C1 10 uF
    capacitor C2 1 uF
    omit C2
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- return
      woofer- -- return
    }
    layout on lath {
      place L1 at 48:70 mm { leads into upper 1 and upper 3 }
      place C1 at 74:60 mm { leads into upper 3 and lower 3 }
      place C2 at 101:60 mm { leads into upper 4 and lower 4 }
            ^^
      lead out upper 1 to input+
      lead out lower 3 to input-
      lead out upper 3 to woofer+
      lead out lower 3 to woofer-
    }

Good:
    include "lath" from library
    driver woofer 8 ohm
    coil L1 1 mH
    capacitor C1 10 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- return
      woofer- -- return
    }
    layout on lath {
      place L1 at 48:70 mm { leads into upper 1 and upper 3 }
      place C1 at 74:60 mm { leads into upper 3 and lower 3 }
      lead out upper 1 to input+
      lead out lower 3 to input-
      lead out upper 3 to woofer+
      lead out lower 3 to woofer-
    }

When to ignore it: where its place shall stay free for it: leave it out of the layout all the same.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    from shuntwise.board.compare import Unused

    judgement = evidence.boards
    if judgement is None or evidence.design.variants or evidence.design.choices:
        return  # it may be fitted there
    places = judgement.comparison.settled.case.place_of
    for finding in judgement.comparison.absent:
        if isinstance(finding, Unused):
            yield RULE.finding(
                places[finding.label].label_span,
                f"`{finding.label}` is placed, and left out of the circuit",
                label="not in the circuit",
                why="whoever builds the box will look for what it is joined to",
                help="take its `place` out, or fit it in the circuit",
                subjects=(finding.label,),
            )


RULE = Rule("placed-not-used", Severity.WARNING, "layout", check)
