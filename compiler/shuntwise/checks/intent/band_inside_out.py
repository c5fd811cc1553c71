"""A band-pass of which the corners are the wrong way round.

What it finds: a driver with a high-pass and a low-pass in its leg, where the high-pass begins above the end of the
low-pass, as worked out from coils, capacitors and the nominal impedance.

Why it matters: nothing passes both filters, so the driver is silent. Mostly two values have changed places.

Bad:
    driver mid 8 ohm { re 6 ohm, le 0.2 mH }
    capacitor C1 4.7 uF
    coil L1 2.7 mH
    leg mid {
      input+ -- C1 -- L1 -- mid+
                ^^
      mid- -- return
    }

Good:
    driver mid 8 ohm { re 6 ohm, le 0.2 mH }
    capacitor C1 33 uF
    coil L1 0.39 mH
    leg mid {
      input+ -- C1 -- L1 -- mid+
      mid- -- return
    }

When to ignore it: for a narrow band that is meant.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for ladder in evidence.structure.ladders.values():
        corners = evidence.inside_out(ladder)
        if corners is not None:
            cap, coil = ladder.series("C")[0].block.label, ladder.series("L")[0].block.label
            begin, end = (units.write(corner, units.HERTZ, 2) for corner in corners)
            yield RULE.finding(
                evidence.place(cap),
                f"the band of `{ladder.driver.name}` is inside out: it begins at {begin} and ends at {end}",
                label="the high-pass begins with this part",
                why="nothing passes both filters",
                help="exchange the values of the two filters, or mend the one that is wrong",
                places=(Label(evidence.place(coil), "the low-pass begins with this part"),),
                subjects=(ladder.driver.name, cap, coil),
            )


RULE = Rule("band-inside-out", Severity.WARNING, "structure", check)
