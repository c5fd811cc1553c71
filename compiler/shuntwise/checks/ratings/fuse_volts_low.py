"""A fuse or protector that cannot break the amplifier's voltage.

What it finds: one of which the rated voltage is less than the r.m.s. voltage of the amplifier's rated sine. Once it has
opened, nearly all of that lies across it.

Why it matters: above its rated voltage the arc in a fuse may go on burning, and a protector that has tripped breaks
down and burns.

Bad:
    amplifier 800 W into 8 ohm { least 4 ohm }
    driver tweeter 8 ohm { re 6.1 ohm, le 0.05 mH, fs 780 Hz, qms 2.3, qes 1.3, 400 W }
    protector F2 4 A { trip 8 A, cold 0.03 ohm, tripped 90 ohm, 30 V }
                                                                ^^^^
    capacitor C2 4.7 uF { 5 %, 250 V, film }
    leg tweeter {
      input+ -- F2 -- C2 -- tweeter+
      tweeter- -- return
    }

Good:
    amplifier 800 W into 8 ohm { least 4 ohm }
    driver tweeter 8 ohm { re 6.1 ohm, le 0.05 mH, fs 780 Hz, qms 2.3, qes 1.3, 400 W }
    protector F2 4 A { trip 8 A, cold 0.03 ohm, tripped 90 ohm, 90 V }
    capacitor C2 4.7 uF { 5 %, 250 V, film }
    leg tweeter {
      input+ -- F2 -- C2 -- tweeter+
      tweeter- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.protection import KINDS
from shuntwise.checks.rated import named, rated_at, volts
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    sine_v = evidence.stress.signal.sine_v
    for part in evidence.stress.parts(*KINDS):
        rating = part.get("voltage")
        if rating and rating < sine_v:
            yield RULE.finding(
                rated_at(evidence, part, "voltage"),
                f"`{part.label}` may have to break {volts(sine_v)}, and is made for {volts(rating)}",
                label="too little",
                why="once it has opened nearly all of the amplifier's voltage lies across it",
                help="choose one for more volts",
                subjects=named(evidence, part.label),
            )


RULE = Rule("fuse-volts-low", Severity.WARNING, "stress", check)
