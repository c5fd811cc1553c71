"""A protection lamp whose data do not fit each other, or the amplifier.

What it finds: a lamp whose `hot` resistance is more than a quarter away from what its volts and watts say (V^2/W),
or that gets more than its volts with the programme at the stated amplifier, its filament hot; or one that stays so dark
with it that it takes less than 1 dB from each driver behind it. The resistance of a filament goes with the 0.45th
power of its volts (a rule of lamp makers, from memory).

Why it matters: cold, a lamp costs level; hot, it must protect. If it burns out the driver is silent, and if it stays
cold it protects nothing. A lamp is chosen by its hot volts and watts.

Bad:
    amplifier 100 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 150 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 600 Hz, qms 2.4, qes 1.5, 60 W }
    coil L1 0.47 mH { dcr 0.15 ohm, 5 %, air core }
    lamp B1 0.6 ohm { hot 58 ohm, 24 V, 21 W }
                          ^^^^^^
    capacitor C1 4.7 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- B1 -- C1 -- tweeter+
      tweeter- -- return
    }

Good:
    amplifier 100 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 150 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 600 Hz, qms 2.4, qes 1.5, 60 W }
    coil L1 0.47 mH { dcr 0.15 ohm, 5 %, air core }
    lamp B1 2.7 ohm { hot 27 ohm, 24 V, 21 W }
    capacitor C1 4.7 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- B1 -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: where the resistance was measured at the power that the lamp really gets.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import log10

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.protection import guards
from shuntwise.checks.rated import driven_by, named, ohms, rated_at, volts
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.diagnostics.wording import listed
from shuntwise.model.design import Part
from shuntwise.network.filament import Filament, filament_of, rated_ohm

STEPS = 8
"""Volts and resistance of a filament settle within these: each halves what is left at the least."""

HOT_MAY_DIFFER = 0.25
LEAST_DB = 1.0


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for part in evidence.stress.parts("lamp"):
        rating, hot, glows = part.get("voltage"), part.get("hot"), rated_ohm(part)
        if hot and glows and not 1 - HOT_MAY_DIFFER <= hot / glows <= 1 + HOT_MAY_DIFFER:
            yield RULE.finding(
                rated_at(evidence, part, "hot"),
                f"`{part.label}` has {ohms(glows)} when it glows, going by its volts and watts",
                label="does not fit",
                why="at its rated volts a lamp takes its rated watts: R = V^2 / W",
                help="measure it again, or read volts and watts off the lamp",
                subjects=named(evidence, part.label),
            )
            continue
        if rating:
            filament = filament_of(part)
            bright = list(_too_bright(evidence, part, filament))
            yield from bright or _too_dark(evidence, part, filament)


def _too_bright(evidence: Evidence, part: Part, filament: Filament) -> Iterator[Diagnostic]:
    (bears,) = evidence.stress.bear_with(part.label, filament.hot, part.label)
    programme_v, rating = bears.programme_v, filament.rated_v
    if programme_v > rating:
        yield RULE.finding(
            rated_at(evidence, part, "voltage"),
            f"`{part.label}` gets {volts(programme_v)} r.m.s. when it glows, and is made for {volts(rating)}",
            label="too little",
            why=f"at {driven_by(evidence)}",
            help="a lamp for more volts, or two in series",
            subjects=named(evidence, part.label),
        )


def _too_dark(evidence: Evidence, part: Part, filament: Filament) -> Iterator[Diagnostic]:
    stress, cold, hot = evidence.stress, filament.cold, filament.hot
    guarded = [
        name
        for guard, ladder in guards(evidence)
        if guard.label == part.label
        for name in ladder.together.labels
        if name in stress.branches
    ]
    if not guarded or cold > hot / 2:  # shown as it glows
        return
    ohm = hot
    for _ in range(STEPS):
        lamp, *drivers = stress.bear_with(part.label, ohm, part.label, *guarded)
        ohm = max(cold, filament.glowing(lamp.programme_v))
    before = stress.bear_with(part.label, cold, *guarded)
    taken_db = 20 * log10(max(b.programme_v / after.programme_v for b, after in zip(before, drivers, strict=True)))
    if taken_db < LEAST_DB:
        yield RULE.finding(
            rated_at(evidence, part, "voltage"),
            f"`{part.label}` stays dark, and takes {taken_db:.1f} dB from {listed([f'`{name}`' for name in guarded])}",
            label="protects nothing",
            why=f"it gets {volts(lamp.programme_v)} of its {volts(filament.rated_v)}, at {driven_by(evidence)}",
            help="a lamp for fewer volts, or for less power",
            subjects=named(evidence, part.label),
        )


RULE = Rule("lamp-rating", Severity.WARNING, "stress", check)
