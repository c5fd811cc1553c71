"""Copper that a hair's breadth joins or parts.

What it finds: pieces of copper that touch over less than 0.1 mm, or are that near without touching; a neck of copper
that a cut or a hole leaves; a hole that solder would join with a second piece. What touches at all is counted as
joined.

Why it matters: a burr, a drop of solder or the play of a saw decides whether the circuit is closed.

Bad:
    board slat {
      outline 80:40 mm
      thickness 2 mm
      corner 80:40 mm cut 5 mm
      area south from 4:5 mm to 76:15 mm
      area west from 4:25 mm to 40:35 mm
      ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
      area east from 40.05:25 mm to 76:35 mm
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
    }

Good:
    board slat {
      outline 80:40 mm
      thickness 2 mm
      corner 80:40 mm cut 5 mm
      area south from 4:5 mm to 76:15 mm
      area west from 4:25 mm to 40:35 mm
      area east from 42:25 mm to 76:35 mm
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
    }

When to ignore it: where the board has been measured, and another drawing says what is joined.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity

if TYPE_CHECKING:
    from shuntwise.board.islands import Contact


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    from shuntwise.board.writing import point_text

    judgement = evidence.boards
    if judgement is None:
        return
    for contact in judgement.copper.narrow:
        one, other = contact.items
        board = judgement.by_name[contact.layout].board
        if board.refused:
            continue
        seen = "" if board.seen_from == "parts" else ", as seen from the parts side"
        yield RULE.finding(
            contact.spans[0],
            f"{one} and {other} {_how(contact)}",
            label=f"at {point_text(contact.at)}{seen}",
            why="a burr or a drop of solder decides what is joined here",
            help=_help(contact),
            places=[Label(contact.spans[1], "the other one")] if contact.spans[1] != contact.spans[0] else (),
        )


def _how(contact: Contact) -> str:
    width = f"{contact.width:.2g} mm"
    match contact.kind:
        case "joint":
            return f"are joined by {width} of copper" if contact.width > 1e-6 else "meet at a point"
        case "gap":
            return f"are {width} apart"
    return f"are both within reach of solder, {width} from each other"


def _help(contact: Contact) -> str:
    if contact.kind == "joint":
        return "it is counted as joined: let them overlap, or cut them well apart"
    if contact.kind == "gap":
        return "it is counted as open: draw them apart, or let them overlap where they are one"
    return "move the hole, or take the copper away beside it"


RULE = Rule("copper-hardly-joined", Severity.WARNING, "layout", check)
