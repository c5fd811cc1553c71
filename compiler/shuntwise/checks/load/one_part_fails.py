"""A part whose failure endangers the amplifier or a tweeter.

What it finds: every part is taken as open, and every capacitor as shorted, in turn. Told is only what is out of the
ordinary: a failure that leaves the amplifier with less than 0.1 ohm between 20 Hz and 20 kHz, and an open part that
gives a tweeter more power than it is rated for. `limit one-part-fails 1 ohm` lists all that leave less than 1 ohm;
that is much of any crossover, since the coil's resistance is all that is left when a shunt capacitor is shorted.

Why it matters: parts fail in use. Where the failure of one part takes the amplifier with it, a part that fails safe,
or a resistor beside it, is cheap.

Bad:
    amplifier 300 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 250 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 10 W }
    coil L1 0.47 mH { dcr 0.15 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 250 V, film }
    resistor R1 3.9 ohm { 5 %, 25 W, wirewound }
    resistor R2 8.2 ohm { 5 %, 15 W, wirewound }
             ^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- hp -- R1 -- tweeter+
      tweeter+ -- R2 -- tweeter-
      tweeter- -- return
    }

Good:
    amplifier 300 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 250 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 60 W }
    coil L1 0.47 mH { dcr 0.15 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 250 V, film }
    resistor R1 3.9 ohm { 5 %, 25 W, wirewound }
    resistor R2 8.2 ohm { 5 %, 15 W, wirewound }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- hp -- R1 -- tweeter+
      tweeter+ -- R2 -- tweeter-
      tweeter- -- return
    }

When to ignore it: where the part is far inside its ratings, and the amplifier protects itself.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import driven_by, named, ohms, rated_at, watts
from shuntwise.checks.rule import Bound, Diagnostic, NotChecked, Rule, Severity
from shuntwise.diagnostics.wording import quoted
from shuntwise.units import OHM

if TYPE_CHECKING:
    from shuntwise.stress.stress import Failure


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    told: set[str] = set()
    for failure in evidence.stress.failures:
        part = evidence.design.parts[failure.label]
        if failure.label in told:
            continue
        if failure.bare:
            coils = quoted(failure.bare)
            yield RULE.not_checked(f"the `dcr` of {coils}", failure.label, *failure.bare)
            continue
        harm = _harm(evidence, failure)
        if harm is None:
            continue
        told.add(failure.label)
        headline, why = harm
        yield RULE.finding(
            rated_at(evidence, part),
            headline,
            label=f"what if this {'shorts' if failure.shorted else 'opens'}",
            why=why,
            help="fit a part that fails safe here, or a resistor that limits the harm",
            subjects=named(evidence, failure.label),
        )


def _harm(evidence: Evidence, failure: Failure) -> tuple[str, str] | None:
    """What the failure does, and how much, if that is worth telling."""
    state = "shorted" if failure.shorted else "open"
    if failure.least_ohm < RULE.limit(evidence):
        return (
            f"with `{failure.label}` {state} the load at `{failure.feed}` falls to {ohms(failure.least_ohm)}",
            "the amplifier is as good as shorted then",
        )
    if failure.shorted:
        return None  # any tweeter gets the bass when its capacitor is shorted: nothing to choose between
    for driver in evidence.drivers("tweeter"):
        rated_w = driver.noise_w
        if rated_w is None or driver.nominal is None or driver.name not in failure.driver_v:
            continue
        power_w = failure.driver_v[driver.name] ** 2 / driver.nominal.value
        usual_w = evidence.stress.bears(driver.name).programme_v ** 2 / driver.nominal.value
        if usual_w <= rated_w < power_w:
            return (
                f"with `{failure.label}` {state} `{driver.name}` gets {watts(power_w)} and is rated for "
                f"{watts(rated_w)}",
                f"at {driven_by(evidence)}",
            )
    return None


RULE = Rule("one-part-fails", Severity.ADVICE, "stress", check, Bound(0.1, OHM))
