"""A series resistor on the amplifier's side of the filter.

What it finds: a resistor in the path to a tweeter or mid, ahead of a coil across that path; and a resistor in the
path to a woofer, also with a capacitor beside it. A resistor that has its pad's other one right behind it is left
to `pad-ahead-of-filter`, and a lamp is no resistor here.

Why it matters: ahead of the filter a resistor bends the filter's corner and slope and takes more heat; ahead of a
woofer it takes power and spoils the amplifier's grip.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    resistor R1 1.5 ohm
    capacitor C1 6.8 uF
    coil L2 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- R1 -- C1 -- tweeter+
                ^^
      tweeter+ -- L2 -- return
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    resistor R1 1.5 ohm
    capacitor C1 6.8 uF
    coil L2 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- hp -- R1 -- tweeter+
      hp -- L2 -- return
      tweeter- -- return
    }

When to ignore it: where the filter was worked out with the resistor in that place.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.model.kinds import ROLES
from shuntwise.structure.attenuators import series_resistors
from shuntwise.structure.traps import traps_in_path


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen: set[str] = set()
    structure = evidence.structure
    for ladder in structure.of_role(*ROLES):
        if ladder.driver.name in structure.dc_paths:
            continue
        if ladder.role == "woofer":
            for step in ladder.steps:
                if {*step.block.letters} == {"C", "R"} and step.block.passes_dc and step.block.one("R") not in seen:
                    seen.add(step.block.one("R"))
                    yield _finding(evidence, step.block.one("R"), ladder.driver.name, True)
        for place in series_resistors(ladder):
            trapped = any(place.label in trap for trap in traps_in_path(ladder))
            if place.label in seen or place.shunt_behind or trapped:
                continue
            if ladder.role == "woofer" or any(shunt.block.letter == "L" for shunt in place.later_shunts):
                seen.add(place.label)
                yield _finding(evidence, place.label, ladder.driver.name, ladder.role == "woofer")


def _finding(evidence: Evidence, label: str, driver: str, woofer: bool) -> Diagnostic:
    if woofer:
        return RULE.finding(
            evidence.place(label),
            f"the resistor `{label}` lies in the path to `{driver}`",
            label="all of the woofer's power passes here",
            why="it takes power, and the amplifier loses its grip on the cone",
            help="leave it out, or move it to the leg that it was meant for",
            subjects=(label, driver),
        )
    return RULE.finding(
        evidence.place(label),
        f"the resistor `{label}` is on the amplifier's side of the filter of `{driver}`",
        label="ahead of the filter",
        why="here it bends the filter's corner and slope, and takes more heat",
        help="move it to the driver's side of the filter",
        subjects=(label, driver),
    )


RULE = Rule("resistor-wrong-side", Severity.WARNING, "structure", check)
