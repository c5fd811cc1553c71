"""A driver that is far quieter than its neighbours.

What it finds: by solving, a driver whose level at its pads, in its own band, lies under that of the loudest driver by
more than the bound (in dB). Where both state their sensitivity it is counted in, and half the bound holds. A
driver behind a lamp that is shown hot is left alone.

Why it matters: no usual pad takes away that much. Mostly a resistor is ten times too large or too small, or a part
shorts the driver.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    resistor R1 6.8 ohm
    resistor R2 1.2 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- R1 -- tweeter+
                            ^^^^^^^^
      tweeter+ -- R2 -- tweeter-
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    resistor R1 5.1 ohm
    resistor R2 4.7 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- R1 -- tweeter+
      tweeter+ -- R2 -- tweeter-
      tweeter- -- return
    }

When to ignore it: for a horn driver that is that much louder than the woofer; better still, state both sensitivities.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.figures.figure import sensitivity_difference
from shuntwise.structure.attenuators import glows


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    if evidence.slips:
        return
    ladders = [
        ladder
        for ladder in evidence.structure.of_role("woofer", "mid", "tweeter")
        if not glows(evidence.design, ladder)
    ]
    levels = {ladder.driver.name: evidence.figures.band(ladder.driver.name).reference_db for ladder in ladders}
    for ladder in ladders:
        name = ladder.driver.name
        gaps = []
        for other in ladders:
            louder = sensitivity_difference(other.driver, ladder.driver)
            bound = RULE.limit(evidence) if louder is None else RULE.limit(evidence) / 2
            if other.role != ladder.role:
                gaps.append((levels[other.driver.name] + (louder or 0.0) - levels[name] - bound, other, bound))
        over, other, bound = max(gaps, key=lambda gap: gap[0], default=(0.0, ladder, 0.0))
        if over > 0:
            yield RULE.finding(
                evidence.place(ladder.hot_pad),
                f"`{name}` is {over + bound:.2g} dB quieter than `{other.driver.name}`",
                label=f"gets {levels[name]:.2g} dB in its own band",
                why="no usual pad takes away that much",
                help="look at the resistors of its leg, and at what lies across it",
                subjects=(name,),
            )


RULE = Rule("level-out-of-line", Severity.WARNING, "settled", check, Bound(14.0, units.DECIBEL))
