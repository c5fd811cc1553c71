"""A measured table that is hardly that of this driver.

What it finds: a table whose least magnitude is far from the nominal impedance (below 0.6 or above 1.45 times: by IEC
60268-5, second-hand, it is not below 0.8 in the rated frequency range, but a table may go further), whose resistance
lies below `re`, or which has its peaks far from `fs`.

Why it matters: tables are files, and the wrong one is quickly named: that of the tweeter for the woofer, or of
the four ohm version.

Bad:
    driver woofer 16 ohm {
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
    10000   34.75   53.6
    20000   54.08   56.6

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

When to ignore it: for a driver that is marked with a nominal impedance far from what it has.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.model.design import Driver, ImpedanceTable


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for driver in evidence.drivers():
        if driver.measured is None or driver.measured_span is None:
            continue
        for headline, label in _differences(driver, driver.measured):
            yield RULE.finding(
                driver.measured_span,
                headline,
                label=label,
                why="a table of another driver gives right answers about the wrong thing",
                help="name the table of this driver, or correct what is said of it",
                subjects=(driver.name,),
            )
            break


def _differences(driver: Driver, table: ImpedanceTable) -> Iterator[tuple[str, str]]:
    least = min(abs(ohm) for ohm in table.ohm)
    if driver.nominal is not None and not 0.6 <= least / driver.nominal.value <= 1.45:
        label = f"least magnitude {least:.3g} ohm"
        yield f"the table of `{driver.name}` is not that of a driver of {driver.nominal.text}", label
    re, resistance = driver.quantities.get("re"), min(ohm.real for ohm in table.ohm)
    if re is not None and not 0.93 <= resistance / re.value <= 1.6:
        label = f"least resistance {resistance:.3g} ohm"
        yield f"the table of `{driver.name}` does not go with its DC resistance of {re.text}", label
    fs, peaks = driver.quantities.get("fs"), _peaks_hz(table)
    # A box moves the resonance up, and a vented one makes two of it, about as far below as above.
    if fs is not None and peaks and not any(0.4 < peak / fs.value < 3.5 for peak in peaks):
        label = f"peaks at {', '.join(f'{peak:.3g}' for peak in peaks[:3])} Hz"
        yield f"the table of `{driver.name}` has no peak near its resonance of {fs.text}", label


def _peaks_hz(table: ImpedanceTable) -> list[float]:
    """Where the magnitude rises to at least 1.3 times what lies around it and falls again."""
    peaks: list[float] = []
    low = math.inf
    top: tuple[float, float] | None = None
    for freq_hz, size in zip(table.freq_hz, map(abs, table.ohm), strict=True):
        if top is None:
            low = min(low, size)
            top = (size, freq_hz) if size > 1.3 * low else None
        elif size > top[0]:
            top = size, freq_hz
        elif size < top[0] / 1.3:
            peaks.append(top[1])
            low, top = size, None
    return peaks


RULE = Rule("measured-unlike-driver", Severity.WARNING, "design", check)
