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

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity
from shuntwise.diagnostics.wording import quoted

if TYPE_CHECKING:
    from shuntwise.board.judging import Judgement


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    from shuntwise.board.compare import NotPlaced

    judgement = evidence.boards
    if judgement is None:
        return
    labels = [finding.label for finding in judgement.comparison.absent if isinstance(finding, NotPlaced)]
    allowed = {waiver.subject for waiver in evidence.design.waivers if waiver.finding == RULE.name}
    for label in labels:
        if label in allowed:
            yield _told(evidence, judgement, [label])
    others = [label for label in labels if label not in allowed]
    if others:
        yield _told(evidence, judgement, others)


def _told(evidence: Evidence, judgement: Judgement, labels: Sequence[str]) -> Diagnostic:
    """One finding for all: while a layout is being written much is missing."""
    from shuntwise.checks.mending import spots_for

    alone = len(labels) == 1
    spots = spots_for(judgement, labels[0]) if alone else ""
    return RULE.finding(
        judgement.layouts[0].name_span,
        f"{quoted(labels)} {'is' if alone else 'are'} placed on no board",
        label=f"no `place {labels[0]}`" + ("" if alone else f", and {len(labels) - 1} more"),
        why="what no layout places will be missing in the box",
        help=f"place it{spots}" if alone else "place them, each with the holes that its leads go into",
        places=[Label(evidence.declared(label), "declared here") for label in labels[:3]],
        subjects=labels,
    )


RULE = Rule("part-not-placed", Severity.ERROR, "layout", check)
