"""A cone that is driven further than it can go.

What it finds: a driver whose cone, with the programme at the stated amplifier's limit, moves further to one side than
its `xmax` (a warning). It needs `fs` and Q's, `xmax`, and `bl` or `mms`. The excursion
is the voltage that the motion induces, over Bl and 2 pi f, at the peaks of the programme (its crest factor); the box
counts, the air load of a horn does not. The finding tells whether most of it lies below the driver's own corner, where
only the slope of the filter holds it back. `limit excursion-high 1.5` allows more.

Why it matters: below its corner a driver gets little power, but each octave down its cone moves four times as far for
the same voltage. A mid or a tweeter rattles and tears there long before its coil is warm.

Bad:
    amplifier 200 W into 8 ohm { least 4 ohm }
    driver mid 8 ohm { re 6 ohm, le 0.3 mH, fs 180 Hz, qms 3.1, qes 0.6, 100 W, xmax 1 mm, mms 9 g }
                                                                                     ^^^^
    capacitor C1 47 uF { 5 %, 160 V, film }
    leg mid {
      input+ -- C1 -- mid+
      mid- -- return
    }

Good:
    amplifier 200 W into 8 ohm { least 4 ohm }
    driver mid 8 ohm { re 6 ohm, le 0.3 mH, fs 180 Hz, qms 3.1, qes 0.6, 100 W, xmax 4 mm, mms 9 g }
    capacitor C1 22 uF { 5 %, 160 V, film }
    leg mid {
      input+ -- C1 -- mid+
      mid- -- return
    }

When to ignore it: where a high-pass ahead of the amplifier keeps such low notes away.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import driven_by, rated_at
from shuntwise.checks.rule import Bound, Diagnostic, NotChecked, Rule, Severity
from shuntwise.units import HERTZ, METRE, PLAIN, write

CORNER_DB = 3.0


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    for driver in evidence.drivers():
        xmax, moves = driver.quantities.get("xmax"), evidence.stress.excursion(driver)
        if xmax is not None and moves is None and driver.other is None and driver.name in evidence.stress.branches:
            yield RULE.not_checked("`fs`, two Q's, and `mms` or `bl`", driver.name)
        if xmax is None or moves is None or moves.peak_m <= RULE.limit(evidence) * xmax.value:
            continue
        corner_hz = evidence.figures.edges(driver.name, CORNER_DB)[0]
        below = corner_hz is not None and moves.middle_hz < corner_hz
        where = f"half of the travel comes from below {write(moves.middle_hz, HERTZ, 2)}"
        if below and corner_hz is not None:
            where += f", under its corner at {write(corner_hz, HERTZ, 3)}"
        name = driver.coil_of or driver.name
        yield RULE.finding(
            rated_at(evidence, driver, "xmax"),
            f"the cone of `{name}` moves {write(moves.peak_m, METRE, 2)} and can go {xmax.text}",
            label="not so far",
            why=f"{where}; at {driven_by(evidence)}",
            help="a steeper or a higher high-pass" if below else "a high-pass ahead, a smaller box, or less power",
            subjects=(driver.name,),
        )


RULE = Rule("excursion-high", Severity.WARNING, "stress", check, Bound(1.0, PLAIN))
