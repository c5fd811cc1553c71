"""A load that collapses when a driver is off.

What it finds: a design that, with one driver unplugged or burnt out, makes the amplifier give more than twice the
current that it is rated for (its rated voltage into its least load), both as r.m.s. values, with the programme. Each
driver is taken off in turn. `limit unplugged-collapse 1` allows no more than the rated current; `programme sine` at
the amplifier asks for the worst steady tone instead of a programme. Where the coils of such a resonance state no
resistance its frequency alone is told: current and voltages then have no bound.

Why it matters: without its driver the coil and capacitor of a leg are a bare series resonance across the amplifier:
1.0 mH of 0.25 ohm and 10 uF, without their woofer, are 0.25 ohm at 1.6 kHz. Nearly every filter of second order has
this, but only in a narrow band; so it is judged by the current that music really drives through it, which depends on
the losses of the coil and on what the amplifier can do. The label of the box should in any case forbid it.

Bad:
    amplifier 60 W into 8 ohm { least 6 ohm }
    driver woofer 8 ohm { re 6.4 ohm, le 0.2 mH, fs 61 Hz, qms 4.5, qes 0.48, 100 W }
           ^^^^^^
    driver tweeter 8 ohm { re 6.9 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.68 mH { dcr 0.06 ohm, 5 %, ferrite core, 12 A, wire 1 mm }
    capacitor C1 6.8 uF { 5 %, 400 V, film }
    capacitor C2 4.7 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

Good:
    amplifier 60 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.4 ohm, le 0.2 mH, fs 61 Hz, qms 4.5, qes 0.48, 100 W }
    driver tweeter 8 ohm { re 6.9 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.68 mH { dcr 0.25 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 400 V, film }
    capacitor C2 4.7 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

When to ignore it: where the drivers are soldered to the board, and the amplifier is known to protect itself.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import amperes, driven_by, hertz, ohms
from shuntwise.checks.rule import Bound, Diagnostic, NotChecked, Rule, Severity
from shuntwise.diagnostics.wording import quoted
from shuntwise.stress.stress import Bare
from shuntwise.units import HERTZ, PLAIN, write


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    amplifier, stress = evidence.amplifier, evidence.stress
    assert amplifier is not None
    for driver, bare in stress.bare.items():
        yield _bare(evidence, driver, bare)
    allowed = amplifier.quantities.get("least")
    if allowed is None:
        yield RULE.not_checked("the `least` load that the amplifier may drive")
        return
    rated_a = stress.signal.sine_v / allowed.value
    for feed in evidence.design.feeds:
        for driver, (least, current_a) in stress.unplugged_loads(feed.name).items():
            if driver in stress.bare or current_a <= RULE.limit(evidence) * rated_a:
                continue
            yield RULE.finding(
                evidence.declared(driver),
                f"with `{driver}` unplugged the load falls to {ohms(least.ohm)} at {hertz(least.freq_hz)}",
                label="damps its filter while it is connected",
                why=f"the amplifier has to give {amperes(current_a)} r.m.s., {current_a / rated_a:.2g} times its rated "
                f"current, at {driven_by(evidence)}",
                help="a Zobel helps, and so does a coil with more resistance; forbid it on the label",
                subjects=(driver, feed.name),
            )


def _bare(evidence: Evidence, driver: str, bare: Bare) -> Diagnostic:
    coils = quoted(bare.coils)
    return RULE.finding(
        evidence.declared(driver),
        f"with `{driver}` unplugged nothing damps a series resonance at {write(bare.freq_hz, HERTZ, 3)}",
        label="damps its filter while it is connected",
        why=f"no resistance of {coils} is stated, so neither the current nor the voltages there have a bound",
        help=f"state the `dcr` of {coils}, so that they can be worked out; forbid it on the label",
        subjects=(driver, bare.feed, *bare.coils),
        missing=("what damps its filter while it is unplugged",),
    )


RULE = Rule("unplugged-collapse", Severity.WARNING, "stress", check, Bound(2.0, PLAIN))
