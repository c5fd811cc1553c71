"""A resistor that stands in for a driver.

What it finds: once the design says which amplifier drives it, a driver of which only the nominal impedance is known,
neither its DC resistance nor a measured impedance.

Why it matters: a driver is no resistor. Its voice coil's inductance and its resonance move the corners, the load
and the heat; what was computed with 8 ohm does not hold on the board.

Bad:
    amplifier 60 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { 80 W }
           ^^^^^^
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
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

Good:
    amplifier 60 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 80 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
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

When to ignore it: for a ribbon or a horn driver whose impedance really is flat.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, NotChecked, Rule, Severity
from shuntwise.model.design import Driver


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    assumed = [driver for driver in evidence.drivers() if _is_assumed(driver)]
    if evidence.amplifier is None:
        yield RULE.not_checked("an `amplifier` with its power and load", *(driver.name for driver in assumed))
        return
    for driver in assumed:
        assert driver.nominal is not None
        yield RULE.finding(
            driver.name_span,
            f"`{driver.name}` is taken as a resistor of {driver.nominal.text}",
            label="its impedance is not known",
            why="the voice coil's inductance and the resonance move corners, load and heat",
            help="give re, le, fs, qms and qes from its data sheet, or a measured impedance",
            subjects=(driver.name,),
            missing=("impedance",),
        )


def _is_assumed(driver: Driver) -> bool:
    known = "re" in driver.quantities or driver.measured is not None or driver.model_refused
    return driver.nominal is not None and not known


RULE = Rule("driver-assumed", Severity.WARNING, "design", check)
