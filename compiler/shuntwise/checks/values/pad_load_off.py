"""A pad that does not keep the load.

What it finds: a tweeter or mid with a resistor in its path and another across it, of which the load that the filter
sees is off the driver's nominal impedance by more than the bound.

Why it matters: a pad of two resistors is there to keep the filter's load while it lowers the level: Rs = R (K - 1) / K,
Rp = R / (K - 1) with K = 10^(loss / 20 dB), the attenuator formulas of handbooks. Where it does not, two values
have changed places, or one is wrong.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    resistor R1 8.2 ohm
    resistor R2 3.9 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- R1 -- tweeter+
                      ^^
      tweeter+ -- R2 -- tweeter-
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
from shuntwise.checks.rule import Bound, Diagnostic, Label, Rule, Severity
from shuntwise.structure.attenuators import drivers_ohm, load_ohm, series_resistors


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    design = evidence.design
    for ladder in evidence.structure.of_role("mid", "tweeter"):
        name = ladder.driver.name
        pads = [place for place in series_resistors(ladder) if place.shunt_behind and not place.shunt_ahead]
        load, nominal = load_ohm(design, ladder), drivers_ohm(design, ladder)
        if len(pads) != 1 or any(step.block.letter in "LC" for step in pads[0].later_steps):
            continue
        if evidence.slips.keys() & {pads[0].label, *pads[0].shunt_labels}:
            continue
        if load is None or nominal is None or abs(load / nominal - 1) <= RULE.limit(evidence):
            continue
        (pad,) = pads
        (shunt, *_) = pad.shunt_labels
        yield RULE.finding(
            evidence.place(pad.label),
            f"behind the pad of `{pad.label}` and `{shunt}` the filter sees {units.write(load, units.OHM, 3)}, "
            f"and `{name}` is {units.write(nominal, units.OHM, 3)}",
            label="in the path",
            why="a pad is to keep the filter's load; where it does not, the corner moves",
            help="look whether the two values have changed places, or work them out again",
            places=(Label(evidence.place(shunt), "across the driver"),),
            subjects=(pad.label, shunt, name),
        )


RULE = Rule("pad-load-off", Severity.ADVICE, "settled", check, Bound(0.3, units.PLAIN))
