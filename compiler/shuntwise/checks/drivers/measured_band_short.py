"""A measured table that leaves a part of the audio band open.

What it finds: a table that begins above 200 Hz or ends below 10 kHz. Both are common practice, no source.

Why it matters: outside the table the elements that stand for the driver simply go on, and a resonance or an
inductance that was never measured is missing. What is solved there can be wrong by tens of per cent.

Bad:
    driver woofer 8 ohm {
      measured "woofer.txt"
               ^^^^^^^^^^^^
    }
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }
    === woofer.txt
    20      10.70   48.3
    30      20.61   55.2
    42      59.10   0.6
    55      23.72   -51.8
    80      11.13   -45.0
    150     7.26    -18.2
    300     7.21    5.5
    600     8.54    21.5
    1200    11.04   33.2
    2500    15.61   42.5
    5000    22.86   49.0

Good:
    driver woofer 8 ohm {
      measured "woofer.txt"
    }
    leg woofer {
      input+ -- woofer+
      woofer- -- return
    }
    === woofer.txt
    20      10.70   48.3
    30      20.61   55.2
    42      59.10   0.6
    55      23.72   -51.8
    80      11.13   -45.0
    150     7.26    -18.2
    300     7.21    5.5
    600     8.54    21.5
    1200    11.04   33.2
    2500    15.61   42.5
    5000    22.86   49.0
    10000   34.75   53.6
    20000   54.08   56.6

When to ignore it: where the driver gets next to nothing in the band that is missing.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units as u
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity

LATEST_START_HZ = 200.0
EARLIEST_END_HZ = 10_000.0


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for driver in evidence.drivers():
        if driver.measured is None or driver.measured_span is None:
            continue
        low, high = driver.measured.freq_hz[0], driver.measured.freq_hz[-1]
        if low <= LATEST_START_HZ and high >= EARLIEST_END_HZ:
            continue
        band = f"{u.write(low, u.HERTZ, 3)} to {u.write(high, u.HERTZ, 3)}"
        yield RULE.finding(
            driver.measured_span,
            f"the table of `{driver.name}` reaches from {band} only",
            label="a part of the audio band is missing",
            why="outside the table the driver's elements go on by themselves, and can be wrong by tens of per cent",
            help="measure from 20 Hz to 20 kHz",
            subjects=(driver.name,),
        )


RULE = Rule("measured-band-short", Severity.ADVICE, "design", check)
