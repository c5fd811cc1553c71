"""A resistor straight across the amplifier.

What it finds: a resistor of less than a bound from the input's plus to its minus with nothing before it.

Why it matters: it changes nothing at any driver, takes full power, and lowers the load. Mostly it is the shunt
resistor of a pad with one lead in the wrong place.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    resistor R1 15 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      input+ -- R1 -- return
                ^^
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: for a resistor that must load an amplifier with an output transformer.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.structure.attenuators import value_of


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    if evidence.structure.dc_paths:
        return
    for block in evidence.structure.across_input:
        if block.letter == "R" and (value_of(evidence.design, block) or 0.0) < RULE.limit(evidence):
            yield RULE.finding(
                evidence.place(block.label),
                f"`{block.label}` lies across the amplifier",
                label="from the input's plus to its minus",
                why="it takes full power there and changes nothing at any driver",
                help="move it into the leg that it belongs to, or leave it out",
                subjects=block.labels,
            )


RULE = Rule("resistor-across-amp", Severity.WARNING, "structure", check, Bound(1000.0, units.OHM))
