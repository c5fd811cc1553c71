"""A driver that gets more power than it is rated for.

What it finds: a driver whose share of the programme, at the stated amplifier's limit, is more than its power rating.
As in IEC 60268-5 (second-hand) power is the square of the r.m.s. voltage at the driver over its nominal impedance.
`limit driver-overdriven 0.8` asks for a margin.

Why it matters: voice coils burn slowly, at a party, hours after the check with one's favourite song.

Bad:
    amplifier 300 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 60 W }
                                                                               ^^^^
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 100 W }
    coil L1 0.47 mH { dcr 0.15 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

Good:
    amplifier 300 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 200 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 100 W }
    coil L1 0.47 mH { dcr 0.15 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: where a limiter is set for this driver.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import driven_by, rated_at, volts, watts
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.units import PLAIN


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    stress = evidence.stress
    for driver in evidence.drivers():
        rated_w = driver.noise_w
        if rated_w is None or driver.nominal is None or driver.name not in stress.branches:
            continue
        programme_v = stress.bears(driver.name).programme_v
        power_w = stress.nominal_w(driver)
        if power_w <= RULE.limit(evidence) * rated_w:
            continue
        yield RULE.finding(
            rated_at(evidence, driver, "power"),
            f"`{driver.name}` gets {watts(power_w)} and is rated for {watts(rated_w)}",
            label="too little",
            why=f"{volts(programme_v)} r.m.s. in its band, at {driven_by(evidence)}",
            help="a limiter, a lamp, a lower amplifier power, a steeper slope, or a stronger driver",
            subjects=(driver.name,),
        )


RULE = Rule("driver-overdriven", Severity.WARNING, "stress", check, Bound(1.0, PLAIN))
