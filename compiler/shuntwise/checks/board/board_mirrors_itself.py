"""A board of which nobody can tell which side is seen.

What it finds: a board that a layout uses, whose copper and holes are their own mirror image, and which has no clipped
corner and no row of tags that tell its sides apart.

Why it matters: a template that is laid on the wrong side fits just as well, and all holes are drilled for a mirrored
circuit.

Bad:
    board slat {
          ^^^^
      outline 80:40 mm
      thickness 2 mm
      area north from 4:25 mm to 76:35 mm
      area south from 4:5 mm to 76:15 mm
      holes north 4 of 1.3 mm from 10:30 mm to 70:30 mm
      holes south 4 of 1.3 mm from 10:10 mm to 70:10 mm
    }
    driver woofer 8 ohm
    coil L1 1 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    layout on slat {
      place L1 at 40:20 mm { leads into north 2 and north 3 }
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
    coil L1 1 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    layout on slat {
      place L1 at 40:20 mm { leads into north 2 and north 3 }
      lead out north 1 to input+
      lead out south 1 to input-
      lead out north 4 to woofer+
      lead out south 4 to woofer-
      cut from 40:24 mm to 40:36 mm { width 2 mm }
    }

When to ignore it: where something printed on the board tells its sides apart; then state a corner that it is near.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    from shuntwise.board.mirror import mirror_alike

    for board in {layout.board.name: layout.board for layout in evidence.design.layouts}.values():
        if not board.refused and mirror_alike(board):
            yield RULE.finding(
                board.name_span,
                f"`{board.name}` is its own mirror image",
                label="nothing tells its two sides apart",
                why="a template on the wrong side fits as well, and mirrors the circuit",
                help="clip a corner of the board, and state it: `corner 0:0 mm cut 5 mm`",
                subjects=(board.name,),
            )


RULE = Rule("board-mirrors-itself", Severity.WARNING, "layout", check)
