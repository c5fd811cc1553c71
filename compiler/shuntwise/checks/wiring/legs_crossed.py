"""The woofer on the tweeter's leg, and the tweeter on the woofer's.

What it finds: by solving at 100 Hz, a tweeter that gets more voltage than a woofer, while the woofer gets
more at 10 kHz than at 100 Hz. The drivers' roles say which is which.

Why it matters: the tweeter gets the bass and does not live through it. On the board it is two outputs
exchanged.

Bad:
    driver woofer 8 ohm
    driver tweeter 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- C1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- L1 -- tweeter+
                      ^^^^^^^^
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm
    driver tweeter 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: never; if a driver's name misleads, give its role: `{ role woofer }`.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity

CLEARLY = 2.0
"""Voltages that differ by less than 6 dB are a matter of values, not of exchanged outputs."""


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    live = evidence.faults.live
    woofers = [driver.name for driver in evidence.drivers("woofer") if driver.name in live]
    tweeters = [driver.name for driver in evidence.drivers("tweeter") if driver.name in live]
    if not woofers or not tweeters:
        return
    import numpy as np

    response = evidence.solver.solve(np.array([100.0, 10_000.0]))
    volts = {name: np.abs(response.driver_voltage(name)) for name in (*woofers, *tweeters)}
    for tweeter in tweeters:
        for woofer in woofers:
            if volts[tweeter][0] > CLEARLY * volts[woofer][0] and volts[woofer][1] > CLEARLY * volts[woofer][0]:
                yield RULE.finding(
                    evidence.place(f"{tweeter}+"),
                    f"`{tweeter}` gets the bass and `{woofer}` does not",
                    label=f"at 100 Hz {_decibel(volts[tweeter][0])} dB here",
                    why="bass at full level destroys a tweeter",
                    help="exchange the two outputs",
                    places=(Label(evidence.place(f"{woofer}+"), f"at 100 Hz {_decibel(volts[woofer][0])} dB here"),),
                    subjects=(tweeter, woofer),
                )
                break


def _decibel(volts: float) -> str:
    from math import log10

    return str(round(20 * log10(max(float(volts), 1e-9))))


RULE = Rule("legs-crossed", Severity.ERROR, "sound", check, is_cause=True)
