"""A figure of a driver that hardly any driver of its kind has.

What it finds: a DC resistance above the nominal impedance or below 0.4 of it (the least modulus of a driver is not
below 0.8 of the rated impedance in its rated frequency range, IEC 60268-5, second-hand, and lies a little above its DC
resistance); a resonance or a
voice coil inductance outside what drivers of the role have: woofer 15 to 200 Hz and 0.05 to 5 mH, mid 60 to 1500 Hz and
0.02 to 2 mH, tweeter 250 Hz to 5 kHz and 3 uH to 0.3 mH (common practice, no source). Drivers with a measured table are
not looked at.

Why it matters: every figure of the circuit is worked out with it, and a dot lost in a data sheet shows in all of them.

Bad:
    driver woofer 8 ohm { re 58 ohm, le 0.4 mH }
                             ^^^^^^
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }

Good:
    driver woofer 8 ohm { re 5.8 ohm, le 0.4 mH }
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }

When to ignore it: for a driver that is measured to have it.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.model.design import Driver
from shuntwise.structure.slips import driver_windows


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for driver in evidence.drivers():
        for name, (low, high) in driver_windows(driver).items() if driver.measured is None else ():
            quantity = driver.quantities.get(name)
            if quantity is None or low <= quantity.value <= high:
                continue
            usual = f"{units.write(low, quantity.dimension, 2)} to {units.write(high, quantity.dimension, 2)}"
            kind = f"a {driver.spoken_role}" if name != "re" else f"a driver of {_nominal(driver)}"
            own = quantity.span.source is evidence.design.source
            yield RULE.finding(
                quantity.span if own else evidence.declared(driver.name),
                f"`{name}` of `{driver.name}` is hardly that of {kind}: {quantity.text}",
                label=f"usual are {usual}",
                why="every figure of the circuit is worked out with it",
                help="look it up again: a dot, a prefix or the line of another driver",
                subjects=(driver.name,),
            )


def _nominal(driver: Driver) -> str:
    assert driver.nominal is not None
    return driver.nominal.text


RULE = Rule("driver-figure-odd", Severity.WARNING, "design", check)
