"""A cored coil that is driven into saturation.

What it finds: a coil with an iron or ferrite core whose peak current, with the amplifier's rated sine at the worst
frequency, is above its stated current. A cored coil that states no current is found by `rating-missing`.

Why it matters: beyond that current the core is full, the inductance collapses, and the peaks of the music are
distorted. Peak current counts, not its average.

Bad:
    amplifier 200 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 250 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 80 W }
    coil L1 0.47 mH { dcr 0.1 ohm, 5 %, ferrite core, 6 A, wire 1.2 mm }
                                                      ^^^
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
    amplifier 200 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 250 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 80 W }
    coil L1 0.47 mH { dcr 0.1 ohm, 5 %, ferrite core, 15 A, wire 1.2 mm }
    capacitor C1 6.8 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: where a limiter ahead of the amplifier keeps it from its rated power.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import CORED, amperes, named, next_rating, rated_at, volts
from shuntwise.checks.rule import Diagnostic, NotChecked, Rule, Severity
from shuntwise.model.kinds import INDUCTIVE


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    stress = evidence.stress
    unknown = [part.label for part in stress.parts(*INDUCTIVE) if part.construction is None]
    if unknown:
        yield RULE.not_checked("the core: `air core`, `iron core` or `ferrite core`", *unknown)
    for part in stress.parts(*INDUCTIVE):
        rating, peak_a = part.get("current"), stress.bears(part.label).peak_a
        if part.construction not in CORED or not rating or peak_a <= rating:
            continue
        yield RULE.finding(
            rated_at(evidence, part, "current"),
            f"`{part.label}` carries {amperes(peak_a)} at the peak, and its core is full at {amperes(rating)}",
            label="too little",
            why=f"with the amplifier's sine of {volts(stress.signal.sine_v)} r.m.s. at the worst frequency",
            help=f"fit a coil for {amperes(next_rating(peak_a))}, or an air coil",
            subjects=named(evidence, part.label),
        )


RULE = Rule("coil-saturates", Severity.ERROR, "stress", check)
