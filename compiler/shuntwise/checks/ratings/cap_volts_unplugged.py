"""A capacitor that stands its voltage only while every driver is connected.

What it finds: a capacitor whose rating is above the peaks of the programme with all drivers on, and below them with
one driver unplugged or burnt out. Each driver is taken off in turn. The peaks are those of the programme, its crest
factor times the r.m.s. value. `programme sine` at the amplifier asks for the worst steady tone instead, which no
rating survives: 10 uF behind 1.0 mH of 0.25 ohm, without a woofer, ring up to 40 times the input. `limit
cap-volts-unplugged 1.5` asks for a margin on the peaks. Where the coils that ring state no resistance there are no
peaks to compare with, and the check says that it lacks it.

Why it matters: the driver damped the filter. Without it coil and capacitor ring at their resonance, and a burnt-out
driver then takes the capacitor with it.

Bad:
    amplifier 60 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 5.9 ohm, le 0.4 mH, fs 61 Hz, qms 4.5, qes 0.48, 100 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.82 mH { dcr 0.28 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 63 V, film }
                               ^^^^
    capacitor C2 6.8 uF { 5 %, 250 V, film }
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
    driver woofer 8 ohm { re 5.9 ohm, le 0.4 mH, fs 61 Hz, qms 4.5, qes 0.48, 100 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.82 mH { dcr 0.28 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 160 V, film }
    capacitor C2 6.8 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

When to ignore it: where the box cannot be run with a driver off; say so on its label too.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import driven_by, named, next_volts, rated_at, volts
from shuntwise.checks.rule import Bound, Diagnostic, NotChecked, Rule, Severity
from shuntwise.units import PLAIN


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    stress, margin = evidence.stress, RULE.limit(evidence)
    rated = any(part.get("voltage") for part in stress.parts("capacitor"))
    for off, bare in stress.bare.items() if rated else ():
        yield RULE.not_checked(f"the `dcr` of {' and '.join(f'`{coil}`' for coil in bare.coils)}", off, *bare.coils)
    for part in stress.parts("capacitor"):
        rating, working = part.get("voltage"), stress.bears(part.label)
        if not rating or rating < max(working.peak_v, margin * working.programme_peak_v):
            continue  # not rated, or too low in any case: then another finding says so
        peaks = {
            driver: bearing.programme_peak_v
            for driver, bearing in stress.bears_unplugged(part.label).items()
            if driver not in stress.bare
        }
        driver = max(peaks, key=lambda name: peaks[name], default=None)
        if driver is None or margin * peaks[driver] <= rating:
            continue
        yield RULE.finding(
            rated_at(evidence, part, "voltage"),
            f"with `{driver}` unplugged `{part.label}` sees {volts(peaks[driver])} and is rated for {volts(rating)}",
            label=f"enough with all drivers on: {volts(working.programme_peak_v)}",
            why=f"nothing damps the filter then; peaks at {driven_by(evidence)}",
            help=f"fit {volts(next_volts(margin * peaks[driver]))} or more, or damp the filter with a Zobel",
            subjects=(*named(evidence, part.label), driver),
        )


RULE = Rule("cap-volts-unplugged", Severity.WARNING, "stress", check, Bound(1.0, PLAIN))
