"""A capacitor that stands less voltage than it gets.

What it finds: a capacitor whose own greatest peak voltage, with the amplifier's rated sine at the worst frequency
and all drivers on, is above its rating; or whose `ac` rating is below the r.m.s. value of that (errors). Advice, if
the rating is within but under the usual multiple of the amplifier's peak: 1.5 for film, 2 for electrolytics (common
practice, no source); `limit cap-volts-low 2` sets the first, the second is a third more.

Why it matters: the voltage on a capacitor is not that of the amplifier. Beside a coil it can be twice as high, and
a punctured film capacitor is a short that fails again and again.

Bad:
    amplifier 400 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 400 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 100 W }
    coil L1 0.47 mH { dcr 0.22 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 63 V, film }
                               ^^^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

Good:
    amplifier 400 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 400 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 100 W }
    coil L1 0.47 mH { dcr 0.22 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: the advice, where the maker's data give a higher surge rating.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import ELECTROLYTIC, hertz, named, next_volts, rated_at, volts
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.model.design import Part
from shuntwise.units import PLAIN

ELECTROLYTIC_NEEDS_MORE = 2.0 / 1.5


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    stress = evidence.stress
    for part in stress.parts("capacitor"):
        bears, rating, ac_rating = stress.bears(part.label), part.get("voltage"), part.get("ac")
        sine_v = bears.peak_v / 2**0.5
        where = f"with the amplifier's sine of {volts(stress.signal.sine_v)} r.m.s. at {hertz(bears.worst_hz)}"
        if rating and rating < bears.peak_v:
            least = max(bears.peak_v, _usual(evidence, part, bears.peak_v))
            yield _finding(evidence, part, "voltage", f"{volts(bears.peak_v)} at the peak", least, where)
        elif ac_rating and ac_rating < sine_v:
            yield _finding(evidence, part, "ac", f"{volts(sine_v)} r.m.s.", sine_v, where)
        elif rating and rating < _usual(evidence, part, bears.peak_v):
            least = _usual(evidence, part, bears.peak_v)
            yield RULE.finding(
                rated_at(evidence, part, "voltage"),
                f"`{part.label}` is rated for {volts(rating)}, with {volts(bears.peak_v)} at its peak {where}",
                severity=Severity.ADVICE,
                label="little to spare",
                why=f"practice is {least / min(bears.peak_v, stress.signal.peak_v):.3g} times the amplifier's peak",
                help=f"fit {volts(next_volts(least))} or more",
                subjects=named(evidence, part.label),
            )


def _usual(evidence: Evidence, part: Part, peak_v: float) -> float:
    """The usual rating, as a multiple of the amplifier's peak; a part that never sees that needs less."""
    more = ELECTROLYTIC_NEEDS_MORE if part.construction in ELECTROLYTIC else 1.0
    return RULE.limit(evidence) * more * min(peak_v, evidence.stress.signal.peak_v)


def _finding(evidence: Evidence, part: Part, rating: str, bears: str, least: float, where: str) -> Diagnostic:
    return RULE.finding(
        rated_at(evidence, part, rating),
        f"`{part.label}` sees {bears} and is rated for {volts(part.get(rating))}",
        label="too little",
        why=f"{where}, all drivers on",
        help=f"fit {volts(next_volts(least))} or more",
        subjects=named(evidence, part.label),
    )


RULE = Rule("cap-volts-low", Severity.ERROR, "stress", check, Bound(1.5, PLAIN))
