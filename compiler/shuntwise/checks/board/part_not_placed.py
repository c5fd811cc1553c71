"""A part of the circuit that lies on no board.

What it finds: a part that the circuit needs and no layout of the design places; a part off the board is placed, too:
`place B1 off board { ... }`.

Why it matters: it will lie on the bench when the box is closed.

Bad:
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
              ^^^^
      place L1 at 48:70 mm { leads into upper 1 and upper 3 }
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

When to ignore it: while the layout is being written; a part that is soldered to the driver itself is placed `off
board`.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.board.compare import NotPlaced
from shuntwise.board.judging import Judgement
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.mending import spots_for
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    judgement = evidence.boards
    if judgement is None:
        return
    for finding in judgement.comparison.absent:
        if isinstance(finding, NotPlaced):
            yield _told(evidence, judgement, finding.label)


def _told(evidence: Evidence, judgement: Judgement, label: str) -> Diagnostic:
    spots = spots_for(judgement, label)
    return RULE.finding(
        judgement.layouts[0].name_span,
        f"`{label}` is placed on no board",
        label=f"no `place {label}`",
        why="what no layout places will be missing in the box",
        help=f"place it{spots}",
        places=(Label(evidence.declared(label), "declared here"),),
        subjects=(label,),
    )


RULE = Rule("part-not-placed", Severity.ERROR, "layout", check)
