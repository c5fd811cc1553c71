"""A Zobel that is not at its driver.

What it finds: a resistor and capacitor in a row across the input while a driver sits behind a coil, such a row that
has a coil of its leg between itself and the driver, and one that bridges a coil in the path to a woofer.

Why it matters: the row evens out the voice coil for the filter. On the wrong side of the coil the filter does not
see it, and it only takes power.

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
from shuntwise.structure.blocks import Block
from shuntwise.structure.filters import is_row
from shuntwise.structure.ladders import Ladder


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    structure = evidence.structure
    if structure.dc_paths:
        return
    seen: set[str] = set()
    for ladder in structure.of_role("woofer", "mid", "tweeter"):
        for shunt in ladder.shunts:
            coils = [step.block.label for step in shunt.behind if step.block.letter == "L"]
            if not is_row(shunt.block) or not coils:
                continue
            if shunt.block.label not in seen:
                seen.add(shunt.block.label)
                yield _finding(evidence, ladder, shunt.block, coils[0], "are on the amplifier's side of")
        for step in ladder.steps if ladder.role == "woofer" else ():
            rows = [row for row in step.block.flat("group") if is_row(row)]
            if rows and "L" in step.block.letters and rows[0].label not in seen:
                seen.add(rows[0].label)
                yield _finding(evidence, ladder, rows[0], step.block.one("L"), "bridge")


def _finding(evidence: Evidence, ladder: Ladder, row: Block, coil: str, how: str) -> Diagnostic:
    shown = " and ".join(f"`{label}`" for label in row.labels)
    return RULE.finding(
        evidence.place(row.label),
        f"{shown} {how} `{coil}`",
        label="not across the driver",
        why="the filter does not see them there as a part of its load",
        help=f"put them straight across `{ladder.driver.name}`",
        places=(Label(evidence.place(coil), "this coil"),),
        subjects=(*row.labels, ladder.driver.name),
    )


RULE = Rule("zobel-misplaced", Severity.WARNING, "structure", check)
