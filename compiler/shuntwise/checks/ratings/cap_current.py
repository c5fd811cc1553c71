"""A capacitor that carries more current than it can.

What it finds: a capacitor with a current rating that the programme exceeds, as r.m.s. value. An electrolytic without
a current rating is judged by its heat: the current through its series resistance, tan(delta) / (2 pi f C) with a
tan(delta) of 0.1 (the most that is usual for bipolar electrolytics; common practice, no source), or through its `esr`
if that is stated. More than 3 W is found, which is about 1 W with usual losses and music that is not clipped. `limit
cap-current 1 W` sets another bound.

Why it matters: a warm electrolytic dries out. It loses capacitance, the crossover drifts, and it goes on getting
warmer. The capacitors of Zobels and traps carry the most.

Bad:
    amplifier 500 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 5.8 ohm, le 0.72 mH, fs 58 Hz, qms 5.2, qes 0.41, 500 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 150 W }
    coil L1 0.56 mH { dcr 0.2 ohm, 5 %, air core }
    resistor R1 6.8 ohm { 5 %, 100 W, wirewound }
    capacitor C1 22 uF { non-polar electrolytic, 10 %, 250 V }
              ^^
    capacitor C2 5.6 uF { 5 %, 400 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- return
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

Good:
    amplifier 500 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 5.8 ohm, le 0.72 mH, fs 58 Hz, qms 5.2, qes 0.41, 500 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 150 W }
    coil L1 0.56 mH { dcr 0.2 ohm, 5 %, air core }
    resistor R1 6.8 ohm { 5 %, 100 W, wirewound }
    capacitor C1 22 uF { 10 %, 250 V, film }
    capacitor C2 5.6 uF { 5 %, 400 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- return
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

When to ignore it: where the maker states a higher ripple current; better write that on the part.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import ELECTROLYTIC, amperes, driven_by, named, rated_at, watts
from shuntwise.checks.rule import Bound, Diagnostic, NotChecked, Rule, Severity
from shuntwise.units import WATT

TAN_DELTA = 0.1


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    parts = tuple(evidence.stress.parts("capacitor"))
    unknown = [part.label for part in parts if part.construction is None and not part.get("current")]
    if unknown:
        yield RULE.not_checked("the construction, or the current that it is rated for", *unknown)
    for part in parts:
        bears, rating = evidence.stress.bears(part.label), part.get("current")
        if rating:
            if bears.programme_a <= rating:
                continue
            headline = f"`{part.label}` carries {amperes(bears.programme_a)} r.m.s. and is rated for {amperes(rating)}"
        else:
            if part.construction not in ELECTROLYTIC:
                continue
            heat = bears.heat_w if "esr" in part.quantities else evidence.stress.loss_heat(part.label, TAN_DELTA)
            if heat <= RULE.limit(evidence):
                continue
            headline = f"`{part.label}` carries {amperes(bears.programme_a)} r.m.s. and has to get rid of {watts(heat)}"
        yield RULE.finding(
            rated_at(evidence, part, "current"),
            headline,
            label="rated for less" if rating else "an electrolytic has high losses",
            why=f"at {driven_by(evidence)}",
            help="fit film, or two of half the value in parallel",
            subjects=named(evidence, part.label),
        )


RULE = Rule("cap-current", Severity.WARNING, "stress", check, Bound(3.0, WATT))
