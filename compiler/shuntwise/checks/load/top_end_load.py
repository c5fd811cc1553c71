"""A load that falls away above the audible band.

What it finds: an input whose impedance is high enough for the amplifier up to 20 kHz, and between there and 100 kHz
lies below its least load while more capacitive than resistive (a phase beyond -45 degrees). `limit top-end-load 60 kHz`
sets another end.

Why it matters: a capacitor with nothing in series upsets some amplifiers, switching ones above all: they oscillate
where nobody can hear it, and get hot. A resistor that bounds the load does them no harm: no programme plays up there.

Bad:
    amplifier 60 W into 8 ohm { least 4 ohm }
                                      ^^^^^
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 80 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 700 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.47 mH { dcr 0.22 ohm, 5 %, air core }
    capacitor C1 5.6 uF { 5 %, 250 V, film }
    resistor R1 1 ohm { 5 %, 10 W, wirewound }
    capacitor C2 1 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter+ -- R1 -- C2 -- return
      tweeter- -- return
    }

Good:
    amplifier 60 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 80 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 700 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.47 mH { dcr 0.22 ohm, 5 %, air core }
    capacitor C1 5.6 uF { 5 %, 250 V, film }
    resistor R1 5.1 ohm { 5 %, 10 W, wirewound }
    capacitor C2 1 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter+ -- R1 -- C2 -- return
      tweeter- -- return
    }

When to ignore it: where the amplifier is known to bear it, or has a coil at its output.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import hertz, ohms
from shuntwise.checks.rule import Bound, Diagnostic, NotChecked, Rule, Severity
from shuntwise.units import HERTZ

CAPACITIVE_DEG = 45.0
"""From this phase on the capacitor is more of the load than what bounds it: common practice, no source."""


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    amplifier = evidence.amplifier
    assert amplifier is not None
    allowed = amplifier.quantities.get("least")
    if allowed is None:
        yield RULE.not_checked("the `least` load that the amplifier may drive")
        return
    for feed in evidence.design.feeds:
        least, angle_deg = evidence.stress.least_capacitive_load_above(feed.name, RULE.limit(evidence), CAPACITIVE_DEG)
        if least.ohm < allowed.value <= evidence.stress.least_load(feed.name).ohm:
            yield RULE.finding(
                allowed.span,
                f"above 20 kHz the load at `{feed.name}` falls, to {ohms(least.ohm)} at {hertz(least.freq_hz)}, "
                f"at an angle of {angle_deg:.0f} degrees",
                label="the amplifier may drive no less than this",
                why="a capacitive load can make an amplifier oscillate where nobody hears it",
                help="a resistor in series with the capacitor that takes the current there",
                subjects=(feed.name,),
            )


RULE = Rule("top-end-load", Severity.WARNING, "stress", check, Bound(100e3, HERTZ))
