"""A voltage that rises above the input's.

What it finds: by solving, a driver that gets more than the bound (in dB) above the input somewhere from 20 Hz to
20 kHz.

Why it matters: a filter that was drawn for a plain resistor rings into a real voice coil: the level peaks near the
crossover, and the impedance dips.

Bad:
    driver woofer 8 ohm { re 5.6 ohm, le 0.8 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    capacitor C2 6.8 uF
    coil L2 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
                      ^^^^^^^
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter-
      tweeter- -- L2 -- tweeter+
      tweeter+ -- return
    }

Good:
    driver woofer 8 ohm { re 5.6 ohm, le 0.8 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.56 mH
    capacitor C1 10 uF
    resistor R1 5.6 ohm
    capacitor C3 24 uF
    capacitor C2 6.8 uF
    coil L2 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer+ -- R1 -- C3 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter-
      tweeter- -- L2 -- tweeter+
      tweeter+ -- return
    }

When to ignore it: where the peak is meant to lift a falling driver.
"""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.structure.ladders import Ladder
from shuntwise.structure.traps import traps


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    if evidence.slips:
        return
    told: set[str] = set()
    for name, ladder in evidence.structure.ladders.items():
        if _explained(evidence, ladder):
            continue
        level = evidence.figures.levels_db(name)
        at = int(np.argmax(level))
        if level[at] <= RULE.limit(evidence) or name in told:
            continue
        told |= {name, *ladder.twins}
        where = units.write(float(evidence.sweep.freq_hz[at]), units.HERTZ, 2)
        yield RULE.finding(
            evidence.place(ladder.hot_pad),
            f"`{name}` gets {level[at]:.2g} dB more than the input at {where}",
            label="the filter rings here",
            why="the level peaks there, the impedance dips, and parts get more voltage than the amplifier gives",
            help="even out the voice coil with a Zobel, or fit the values to the real load",
            subjects=(name, *ladder.twins),
        )


def _explained(evidence: Evidence, ladder: Ladder) -> bool:
    """Does another finding tell why this filter rings?"""
    undamped = any(name == ladder.driver.name and "R" not in block.letters for block, name in traps(evidence.structure))
    zobel = any(evidence.makes_zobel(ladder, shunt) for shunt in ladder.across("C"))
    return undamped or zobel or any(evidence.reversed_tapers(ladder))


RULE = Rule("loaded-peak", Severity.WARNING, "settled", check, Bound(3.0, units.DECIBEL))
