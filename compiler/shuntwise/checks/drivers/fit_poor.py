"""A driver whose elements do not come near its table or formula.

What it finds: a measured table, a semi-inductance or the power laws of a coil that is solved as ordinary coils,
capacitors and resistors, where these miss the magnitude by more than the bound (2.5 %) or the phase by more
than as many degrees at some frequency. Clean tables are met within 1 % and 1 degree.

Why it matters: every answer about this driver is wrong by as much. For a table the cause is mostly noise or a
disturbed measurement; the passive elements smooth it, but they cannot tell which points are right. Wright's
two powers are chosen freely, and for many choices no passive part behaves like that.

Bad:
    driver woofer 8 ohm {
           ^^^^^^
      re 5.8 ohm
      r_factor 0.0005
      r_exponent 0.95
      x_factor 0.06
      x_exponent 0.5
    }
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }

Good:
    driver woofer 8 ohm {
      re 5.8 ohm
      r_factor 0.0055
      r_exponent 0.7
      x_factor 0.012
      x_exponent 0.69
    }
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }

When to ignore it: where the error lies far from any crossover point and from the least impedance.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units as u
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, NotChecked, Rule, Severity
from shuntwise.network.driver_model import needs_fit
from shuntwise.network.lower import Unlowered
from shuntwise.network.network import FitReport


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    bound = RULE.limit(evidence)
    if isinstance(evidence.lowered, Unlowered):
        fitted = [driver.name for driver in evidence.drivers() if needs_fit(driver)]
        if fitted:
            yield RULE.not_checked(evidence.lowered.lacks, *fitted)
        return
    for fit in evidence.network.fits:
        magnitude, magnitude_freq = fit.worst_magnitude
        phase_deg, phase_freq = fit.worst_phase
        if magnitude <= bound and phase_deg <= 100 * bound:
            continue
        driver = evidence.design.drivers[fit.driver]
        percent, degrees = f"{100 * magnitude:.2g} %", f"{phase_deg:.2g} degrees"
        what = (
            f"{fit.sections} sections and {fit.resonances} resonances" if fit.resonances else f"{fit.sections} sections"
        )
        yield RULE.finding(
            driver.measured_span or driver.name_span,
            fit.words,
            label=f"{percent} at {_hertz(magnitude_freq)}, {degrees} at {_hertz(phase_freq)}",
            why=f"this is the nearest passive network found ({what}); every answer about the driver is off by as much",
            help=_remedy(fit, magnitude, driver.measured is not None),
            subjects=(fit.driver,),
        )


def _remedy(fit: FitReport, magnitude: float, measured: bool) -> str:
    if not measured:
        return "fit the formula to the measurement anew, use `semi_k` and `semi_n`, or give the measured table"
    if magnitude < 6 * fit.scatter:
        return (
            f"the points scatter by about {100 * fit.scatter:.2g} %: measure again with more level, "
            "more averaging or a smaller series resistor"
        )
    return "look at the table around these frequencies: a rattle, a wrong point, or a delay that was not taken out"


def _hertz(freq_hz: float) -> str:
    return u.write(freq_hz, u.HERTZ, 3)


RULE = Rule("fit-poor", Severity.WARNING, "design", check, Bound(0.025, u.PLAIN))
