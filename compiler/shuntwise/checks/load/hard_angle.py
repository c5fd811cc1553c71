"""A load that is both low and reactive.

What it finds: an input whose impedance is within a quarter above the amplifier's least load at a frequency where its
phase is beyond 45 degrees. `limit hard-angle 1.5` looks up to one and a half times the least load. An input whose load
is too low anyhow is left to `load-too-low`: what mends that moves the angle as well.

Why it matters: voltage and current do not peak together then. The output transistors carry the current while much
voltage is across them, and get hotter than with a resistor of the same ohms.

Bad:
    amplifier 100 W into 8 ohm { least 4.6 ohm }
                                       ^^^^^^^
    driver woofer 8 ohm { re 5.8 ohm, le 0.72 mH, fs 58 Hz, qms 5.2, qes 0.41, 200 W }
    driver tweeter 8 ohm { re 6.1 ohm, le 0.06 mH, fs 900 Hz, qms 2.6, qes 1.4, 50 W }
    coil L1 0.56 mH { dcr 0.2 ohm, 5 %, air core }
    resistor R1 6.8 ohm { 5 %, 25 W, wirewound }
    capacitor C1 22 uF { 10 %, 160 V, film }
    capacitor C2 5.6 uF { 5 %, 250 V, film }
    coil L2 0.56 mH { dcr 0.35 ohm, 5 %, air core }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- return
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter+ -- L2 -- tweeter-
      tweeter- -- return
    }
    limit hard-angle 1.4

Good:
    amplifier 100 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 5.8 ohm, le 0.72 mH, fs 58 Hz, qms 5.2, qes 0.41, 200 W }
    driver tweeter 8 ohm { re 6.1 ohm, le 0.06 mH, fs 900 Hz, qms 2.6, qes 1.4, 50 W }
    coil L1 0.56 mH { dcr 0.2 ohm, 5 %, air core }
    resistor R1 6.8 ohm { 5 %, 25 W, wirewound }
    capacitor C1 22 uF { 10 %, 160 V, film }
    capacitor C2 5.6 uF { 5 %, 250 V, film }
    coil L2 0.56 mH { dcr 0.35 ohm, 5 %, air core }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- return
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter+ -- L2 -- tweeter-
      tweeter- -- return
    }
    limit hard-angle 1.4

When to ignore it: with an amplifier that has plenty in reserve.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import inf

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import hertz, ohms
from shuntwise.checks.rule import Bound, Diagnostic, NotChecked, Rule, Severity
from shuntwise.units import PLAIN

HARD_DEG = 45.0


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    amplifier = evidence.amplifier
    assert amplifier is not None
    allowed = amplifier.quantities.get("least")
    if allowed is None:
        yield RULE.not_checked("the `least` load that the amplifier may drive")
        return
    for feed in evidence.design.feeds:
        dips = evidence.stress.dips(feed.name, RULE.limit(evidence) * allowed.value, allowed.value)
        least, angle_deg = evidence.stress.least_load_at_angle(feed.name, HARD_DEG, dips)
        if least.ohm == inf:
            continue
        yield RULE.finding(
            allowed.span,
            f"at {hertz(least.freq_hz)} the load at `{feed.name}` is {ohms(least.ohm)} at an angle of "
            f"{angle_deg:.0f} degrees",
            label="near the least load",
            why="a low and reactive load heats the amplifier more than a resistor of the same ohms",
            help="even it out with a Zobel, or choose an amplifier with more in reserve",
            subjects=(feed.name,),
        )


RULE = Rule("hard-angle", Severity.ADVICE, "stress", check, Bound(1.25, PLAIN))
