"""Drivers in a row whose filter was made for them side by side, or the reverse.

What it finds: equal drivers of one leg, joined in a row or side by side, where the coil and the capacitor of the filter
speak of corners far apart at this load, and of one corner, near the neighbour's, if the drivers were joined the other
way.

Why it matters: two drivers in a row are four times the ohms of the same two side by side. The filter ends the band
somewhere else and rings, and the level is another: 6 dB less from each driver in a row.

Bad:
    driver woofer1 8 ohm { re 5.9 ohm, le 0.45 mH }
    driver woofer2 8 ohm { re 5.9 ohm, le 0.45 mH }
    driver tweeter 8 ohm { re 6.1 ohm, le 0.05 mH, fs 870 Hz, qms 2.4, qes 1.4 }
    coil L1 0.56 mH { dcr 0.15 ohm }
    capacitor C1 15 uF
    capacitor C2 5.6 uF
    coil L2 0.56 mH { dcr 0.35 ohm }
    leg woofer1 and woofer2 {
      input+ -- L1 -- woofer1+
      woofer1- -- woofer2+
                  ^^^^^^^^
      woofer2- -- return
      woofer1+ -- C1 -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter-
      tweeter- -- L2 -- tweeter+
      tweeter+ -- return
    }

Good:
    driver woofer1 8 ohm { re 5.9 ohm, le 0.45 mH }
    driver woofer2 8 ohm { re 5.9 ohm, le 0.45 mH }
    driver tweeter 8 ohm { re 6.1 ohm, le 0.05 mH, fs 870 Hz, qms 2.4, qes 1.4 }
    coil L1 0.56 mH { dcr 0.15 ohm }
    capacitor C1 15 uF
    capacitor C2 5.6 uF
    coil L2 0.56 mH { dcr 0.35 ohm }
    leg woofer1 and woofer2 {
      input+ -- L1 -- pair
      pair -- woofer1+
      pair -- woofer2+
      woofer1- -- return
      woofer2- -- return
      pair -- C1 -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter-
      tweeter- -- L2 -- tweeter+
      tweeter+ -- return
    }

When to ignore it: where the filter was trimmed on a sweep of these drivers, joined as they are.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.diagnostics.wording import quoted


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for found in evidence.misgrouped:
        drivers = found.ladder.together.labels
        shown = quoted(drivers)
        ohm, fitting = (units.write(load, units.OHM, 2) for load in (found.ohm, found.fitting_ohm))
        present = "side by side" if found.ladder.together.form == "group" else "in a row"
        wanted = "side by side" if found.side_by_side else "in a row"
        yield RULE.finding(
            evidence.place(f"{drivers[1]}+"),
            f"{shown} are {ohm} as they are joined, and their filter fits the {fitting} that they are {wanted}",
            label=f"joined {present}" if len(drivers) == 2 else "joined here",
            why="at this load the filter rings, and ends the band somewhere else",
            help=f"join them {wanted}, or work the filter out for {ohm}",
            subjects=drivers,
        )


RULE = Rule("drivers-misgrouped", Severity.WARNING, "structure", check)
