"""A part whose two leads have to be told apart, and are not.

What it finds: a part placed with `leads into`, of which it matters which lead is which: a coil that is coupled with
another.

Why it matters: turned round, its field works against the other coil's, and what the coupling does changes its sign.

Bad:
    include "lath" from library
    driver woofer 8 ohm
    coil L1 1 mH
    coil L2 0.1 mH
    capacitor C1 10 uF
    coupling L1 and L2 2 %
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- L2 -- C1 -- return
      woofer- -- return
    }
    layout on lath {
      place L1 at 48:70 mm { leads into upper 1 and upper 3 }
            ^^
      place L2 at 90:70 mm { start into upper 3, end into upper 5 }
      place C1 at 100:60 mm { leads into upper 5 and lower 3 }
      lead out upper 1 to input+
      lead out lower 3 to input-
      lead out upper 3 to woofer+
      lead out lower 3 to woofer-
    }

Good:
    include "lath" from library
    driver woofer 8 ohm
    coil L1 1 mH
    coil L2 0.1 mH
    capacitor C1 10 uF
    coupling L1 and L2 2 %
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- L2 -- C1 -- return
      woofer- -- return
    }
    layout on lath {
      place L1 at 48:70 mm { start into upper 1, end into upper 3 }
      place L2 at 90:70 mm { start into upper 3, end into upper 5 }
      place C1 at 100:60 mm { leads into upper 5 and lower 3 }
      lead out upper 1 to input+
      lead out lower 3 to input-
      lead out upper 3 to woofer+
      lead out lower 3 to woofer-
    }

When to ignore it: never.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    from shuntwise.board.compare import Untold

    judgement = evidence.boards
    if judgement is None:
        return
    places = judgement.comparison.settled.case.place_of
    for finding in judgement.comparison.absent:
        if isinstance(finding, Untold):
            yield RULE.finding(
                places[finding.label].label_span,
                f"which lead of `{finding.label}` goes where is not told",
                label="its field is coupled with another coil's",
                why="turned round, it would feel the other coil with the opposite sign",
                help="write `start into ...` and `end into ...`; the start is the end that the circuit walks into",
                subjects=(finding.label,),
            )


RULE = Rule("leads-untold", Severity.ERROR, "layout", check)
