"""A pad of which one resistor is missing.

What it finds: a tweeter or mid with a resistor across it but none in its path, or one in its path but none across
it, where the load of its filter is then off the driver's nominal impedance by more than the bound.

Why it matters: a filter is worked out for a load. With half a pad the corner moves and the slope bends.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    resistor R1 3.9 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- R1 -- tweeter+
                      ^^
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    resistor R1 3.9 ohm
    resistor R2 8.2 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- R1 -- tweeter+
      tweeter+ -- R2 -- tweeter-
      tweeter- -- return
    }

When to ignore it: where the filter was worked out for the load that it sees.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.structure.attenuators import drivers_ohm, load_ohm, series_resistors


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    design, structure = evidence.design, evidence.structure
    for ladder in structure.of_role("mid", "full_range", "tweeter"):
        name = ladder.driver.name
        in_path, across = tuple(series_resistors(ladder)), ladder.across("R")
        damped = any("R" in step.block.letters for step in ladder.steps)
        if damped == bool(across) or not (in_path or across):
            continue
        if name in structure.dc_paths or any(place.later_shunts for place in in_path):
            continue
        load, nominal = load_ohm(design, ladder), drivers_ohm(design, ladder)
        if load is None or nominal is None or abs(load / nominal - 1) <= RULE.limit(evidence):
            continue
        label = in_path[0].label if in_path else across[0].block.label
        where, lacking = ("in the path to", "across it") if in_path else ("across", "in its path")
        shown, marked = units.write(load, units.OHM, 3), units.write(nominal, units.OHM, 3)
        yield RULE.finding(
            evidence.place(label),
            f"`{label}` lies {where} `{name}`, and no resistor {lacking}",
            label="half a pad",
            why=f"the filter sees {shown} where the driver is {marked}, so its corner moves",
            help=f"add the resistor {lacking}, or work the filter out for {shown} and waive this finding",
            subjects=(label, name),
        )


RULE = Rule("pad-half-missing", Severity.ADVICE, "settled", check, Bound(0.4, units.PLAIN))
