"""A row that evens out a driver, and is not at it.

What it finds: a resistor and capacitor in a row across the input while a driver sits behind a coil, such a row that
has a coil of its leg between itself and the driver, one that bridges a coil in the path to a woofer, and one across a
driver whose voice coil it does not fit while it fits another's that has no fitting row of its own. Also a row of coil,
capacitor and resistor that fits its driver's resonance and has a coil or capacitor of the leg between the two.

Why it matters: the row evens out the voice coil, or the resonance, for the filter. On the wrong side of the filter's
part the filter does not see it, and it only takes power.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.6 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    resistor R1 6.8 ohm
    capacitor C1 15 uF
    capacitor C2 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      input+ -- R1 -- C1 -- return
                ^^
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.6 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    resistor R1 6.8 ohm
    capacitor C1 15 uF
    capacitor C2 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- return
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

When to ignore it: for a row across the input that is meant to load the amplifier at the top.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity
from shuntwise.diagnostics.wording import quoted
from shuntwise.model.kinds import ROLES
from shuntwise.structure.blocks import Block
from shuntwise.structure.ladders import Ladder
from shuntwise.structure.traps import like_exact_row
from shuntwise.structure.zobels import is_row, rows


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    structure = evidence.structure
    if structure.dc_paths:
        return
    seen: set[str] = set()
    for ladder in structure.of_role(*ROLES):
        for shunt in ladder.shunts:
            behind = [step.block for step in shunt.behind if step.block.letter]
            between = [block.label for block in behind if block.letter == "L"] if is_row(shunt.block) else []
            if like_exact_row(evidence.design, shunt.block, ladder.driver) == "LCR":
                between = [block.label for block in behind if block.letter in ("L", "C")]
            if between and shunt.block.label not in seen:
                seen.add(shunt.block.label)
                yield _finding(evidence, ladder, shunt.block, between[0], "are on the amplifier's side of")
        for shunt in rows(ladder):
            other = evidence.strayed_zobel(ladder, shunt)
            if other is not None and shunt.block.label not in seen:
                seen.add(shunt.block.label)
                yield _strayed(evidence, ladder, shunt.block, other)
        for step in ladder.steps if ladder.role == "woofer" else ():
            bridging = [row for row in step.block.flat("group") if is_row(row)]
            if bridging and "L" in step.block.letters and bridging[0].label not in seen:
                seen.add(bridging[0].label)
                yield _finding(evidence, ladder, bridging[0], step.block.one("L"), "bridge")


def _finding(evidence: Evidence, ladder: Ladder, row: Block, part: str, how: str) -> Diagnostic:
    shown = quoted(row.labels)
    return RULE.finding(
        evidence.place(row.label),
        f"{shown} {how} `{part}`",
        label="not across the driver",
        why="the filter does not see them there as a part of its load",
        help=f"put them straight across `{ladder.driver.name}`",
        places=(Label(evidence.place(part), "this part"),),
        subjects=(*row.labels, ladder.driver.name),
    )


def _strayed(evidence: Evidence, ladder: Ladder, row: Block, other: Ladder) -> Diagnostic:
    shown = quoted(row.labels)
    here, there = ladder.driver.name, other.driver.name
    return RULE.finding(
        evidence.place(row.label),
        f"{shown} lie across `{here}`, and their values fit `{there}`",
        label="across the wrong driver",
        why=f"the row evens out the voice coil of `{there}` only across `{there}` itself",
        help=f"put them across `{there}`, or fit values for the voice coil of `{here}`",
        places=(Label(evidence.place(other.hot_pad), "the driver that they fit"),),
        subjects=(*row.labels, here, there),
    )


RULE = Rule("zobel-misplaced", Severity.WARNING, "structure", check)
