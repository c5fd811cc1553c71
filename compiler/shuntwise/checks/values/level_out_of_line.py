"""A driver that is far quieter or louder than its neighbours.

What it finds: by solving, two drivers of one amplifier of which the levels at their pads, each in its own band, lie
apart by more than the bound (in dB). Where both state their sensitivity it is counted in, and half the bound holds.
If most of the gap comes from the legs it is told of the quieter driver, else of the louder one, which nothing brings
down. A driver behind a lamp that is shown hot is left alone.

Why it matters: no usual pad takes away that much. Mostly a resistor is ten times too large or too small, or a part
shorts the driver. And no crossover makes a driver louder: the more sensitive one is brought down by a pad.

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
from dataclasses import dataclass
from itertools import permutations

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Label, Rule, Severity
from shuntwise.figures.figure import sensitivity_difference
from shuntwise.model.kinds import ROLES
from shuntwise.structure.attenuators import glows
from shuntwise.structure.ladders import Ladder


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    if evidence.slips:
        return
    ladders = [ladder for ladder in evidence.structure.of_role(*ROLES) if not glows(evidence.design, ladder)]
    worst: dict[str, _Gap] = {}
    for quiet, loud in permutations(ladders, 2):
        if quiet.role == loud.role or quiet.feed != loud.feed:
            continue  # what two amplifiers give is set on them
        gap = _gap(evidence, quiet, loud)
        blamed = gap.blamed.driver.name
        if gap.over_db > 0 and (blamed not in worst or gap.over_db > worst[blamed].over_db):
            worst[blamed] = gap
    for gap in worst.values():
        yield _finding(evidence, gap)


@dataclass(frozen=True)
class _Gap:
    """By how much one driver is quieter than another (dB), how much of it is the legs', and how far over the bound."""

    quiet: Ladder
    loud: Ladder
    db: float
    legs_db: float
    over_db: float

    @property
    def by_legs(self) -> bool:
        return self.legs_db >= self.db / 2

    @property
    def blamed(self) -> Ladder:
        return self.quiet if self.by_legs else self.loud


def _gap(evidence: Evidence, quiet: Ladder, loud: Ladder) -> _Gap:
    figures, bound = evidence.figures, RULE.limit(evidence)
    legs_db = figures.band(loud.driver.name).reference_db - figures.band(quiet.driver.name).reference_db
    louder_db = sensitivity_difference(loud.driver, quiet.driver)
    if louder_db is None:
        return _Gap(quiet, loud, legs_db, legs_db, legs_db - bound)
    return _Gap(quiet, loud, legs_db + louder_db, legs_db, legs_db + louder_db - bound / 2)


def _finding(evidence: Evidence, gap: _Gap) -> Diagnostic:
    blamed, other = (gap.quiet, gap.loud) if gap.by_legs else (gap.loud, gap.quiet)
    name, beside = blamed.driver.name, other.driver.name
    if gap.by_legs:
        how, why = "quieter", "no usual pad takes away that much"
        help = "look at the resistors of its leg, and at what lies across it"
    else:
        how, why = "louder", f"it is so much more sensitive, and nothing in its leg brings it down to `{beside}`"
        help = "a pad in its leg brings it down; or look whether both sensitivities are right"
    return RULE.finding(
        evidence.place(blamed.hot_pad),
        f"`{name}` is {gap.db:.2g} dB {how} than `{beside}`",
        label=f"gets {evidence.figures.band(name).reference_db:.2g} dB in its own band",
        why=why,
        help=help,
        places=(Label(evidence.place(other.hot_pad), "the other one"),),
        subjects=(name, beside),
    )


RULE = Rule("level-out-of-line", Severity.WARNING, "settled", check, Bound(14.0, units.DECIBEL))
