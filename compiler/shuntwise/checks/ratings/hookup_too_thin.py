"""A link with too thin a wire for its current.

What it finds: a link that states its `wire` and carries more than 6 A/mm2 with the programme at the stated amplifier
(common practice, no source). `limit hookup-too-thin 4 A / (1 mm)^2` sets another bound. A link that does not state
its wire is left alone.

Why it matters: a thin wire gets warm, and its insulation softens where it touches something hotter.

Bad:
    amplifier 300 W into 8 ohm { least 4 ohm }
    input low
    posts high
    link K1 { wire 0.3 mm }
                   ^^^^^^
    link K2 { wire 1.4 mm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 400 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 100 W }
    coil L1 0.47 mH { dcr 0.15 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 250 V, film }
    leg woofer {
      low+ -- L1 -- woofer+
      woofer- -- low-
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      tweeter- -- high-
    }
    leg woofer and tweeter {
      low+ -- K1 -- high+
      low- -- K2 -- high-
    }

Good:
    amplifier 300 W into 8 ohm { least 4 ohm }
    input low
    posts high
    link K1 { wire 1.4 mm }
    link K2 { wire 1.4 mm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 400 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 100 W }
    coil L1 0.47 mH { dcr 0.15 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 250 V, film }
    leg woofer {
      low+ -- L1 -- woofer+
      woofer- -- low-
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      tweeter- -- high-
    }
    leg woofer and tweeter {
      low+ -- K1 -- high+
      low- -- K2 -- high-
    }

When to ignore it: for a few centimetres of bare wire in free air.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import pi

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import amperes, driven_by, named, rated_at
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.graph.links import beyond
from shuntwise.units import AMPERE, METRE, quotient, raised


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for part in evidence.circuit.fitted_parts:
        wire = part.get("wire")
        if part.kind != "link" or not wire:
            continue
        current_a = evidence.stress.programme_current(beyond(evidence.circuit, part))
        density = current_a / (pi / 4 * wire**2)
        if density <= RULE.limit(evidence):
            continue
        least_mm = 1e3 * (current_a / RULE.limit(evidence) * 4 / pi) ** 0.5
        yield RULE.finding(
            rated_at(evidence, part, "wire"),
            f"`{part.label}` carries {amperes(current_a)} r.m.s., {density / 1e6:.1f} A/mm2 in this wire",
            label="too thin",
            why=f"at {driven_by(evidence)}",
            help=f"use wire of {least_mm:.2g} mm diameter or more",
            subjects=named(evidence, part.label),
        )


RULE = Rule("hookup-too-thin", Severity.WARNING, "stress", check, Bound(6e6, quotient(AMPERE, raised(METRE, 2))))
