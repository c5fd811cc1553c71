"""Laid out otherwise than written, and electrically the same.

What it finds: like parts that lie in each other's place, or parts of an unbranched row in another order than in the
circuit.

Why it matters: nothing is wrong with it; who looks for a part with a meter should know where it is.

Bad:
    include "lath" from library
    driver woofer 8 ohm
    coil L1 1 mH
    resistor R1 2 ohm
    capacitor C1 10 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- return
      woofer- -- return
    }
    layout on lath {
      place L1 at 48:70 mm { leads into upper 1 and upper 3 }
      place C1 at 74:90 mm { leads into upper 3 and upper 5 }
            ^^
      place R1 at 90:60 mm { leads into upper 5 and lower 3 }
      lead out upper 1 to input+
      lead out lower 3 to input-
      lead out upper 3 to woofer+
      lead out lower 3 to woofer-
    }

Good:
    include "lath" from library
    driver woofer 8 ohm
    coil L1 1 mH
    resistor R1 2 ohm
    capacitor C1 10 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- return
      woofer- -- return
    }
    layout on lath {
      place L1 at 48:70 mm { leads into upper 1 and upper 3 }
      place R1 at 74:90 mm { leads into upper 3 and upper 5 }
      place C1 at 90:60 mm { leads into upper 5 and lower 3 }
      lead out upper 1 to input+
      lead out lower 3 to input-
      lead out upper 3 to woofer+
      lead out lower 3 to woofer-
    }

When to ignore it: always, once you know: turn the row round in the text.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.diagnostics.wording import quoted


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    from shuntwise.board.compare import Alike, Reordered

    judgement = evidence.boards
    if judgement is None:
        return
    places = judgement.comparison.settled.case.place_of
    for equal in judgement.comparison.equal:
        match equal:
            case Alike(labels):
                headline = f"{quoted(labels)}, which are alike, lie in each other's place"
            case Reordered(labels):
                headline = f"{quoted(labels)} lie in another order than in the circuit"
            case _:
                continue
        placed = [label for label in labels if label in places]
        yield RULE.finding(
            min((places[label].label_span for label in placed), key=lambda span: span.start),
            headline,
            label="electrically the same",
            why="whoever measures at a part should find it where the text says",
            help="exchange them in the layout, or in the walk",
            subjects=labels,
        )


RULE = Rule("laid-out-otherwise", Severity.ADVICE, "layout", check)
