"""A trap the wrong way round.

What it finds: a group of coil and capacitor side by side across a woofer, or across any driver in a row with a
resistor; and coil, capacitor and resistor in a row in the path to a woofer, with nothing between them, or in that to a
tweeter beside the capacitor of its filter.

Why it matters: coil and capacitor side by side belong in the path, where they block one frequency; in a row they
belong across the driver, where they short it out. Exchanged, they let through nothing but that frequency.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    coil L2 0.33 mH
    capacitor C2 2.2 uF
    resistor R1 15 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- (L2 | C2 | R1) -- woofer-
                  ^^
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    coil L2 0.33 mH
    capacitor C2 2.2 uF
    resistor R1 15 ohm
    leg woofer {
      input+ -- L1 -- (L2 | C2 | R1) -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.model.kinds import ROLES
from shuntwise.structure.ladders import Ladder
from shuntwise.structure.traps import traps_across, traps_in_path


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen: set[str] = set()
    for ladder in evidence.structure.of_role(*ROLES):
        for labels in traps_across(evidence.circuit, ladder):
            if labels[0] not in seen:
                seen.add(labels[0])
                yield _finding(evidence, ladder, labels, "side by side across", "put them in its path")
        for labels in traps_in_path(ladder):
            if labels[0] not in seen:
                seen.add(labels[0])
                yield _finding(evidence, ladder, labels, "in a row in the path to", "put them across it")


def _finding(evidence: Evidence, ladder: Ladder, labels: tuple[str, ...], where: str, remedy: str) -> Diagnostic:
    shown = ", ".join(f"`{label}`" for label in labels)
    return RULE.finding(
        evidence.place(labels[0]),
        f"{shown} lie {where} `{ladder.driver.name}`",
        label="the trap is the wrong way round",
        why="so wired it lets nothing through but the frequency that it should take out",
        help=remedy,
        subjects=(*labels, ladder.driver.name),
    )


RULE = Rule("trap-wrong-way", Severity.WARNING, "structure", check)
