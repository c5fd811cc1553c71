"""A part that changes nothing.

What it finds: by solving, a part without which, open or bridged, no driver's level and no input's impedance changes by
more than the bound (in dB) from 20 Hz to 20 kHz. Resistors of a kilohm and more that lie side by side with a
capacitor are left alone: they discharge it.

Why it matters: it costs money and weight, and mostly it is in the wrong place or has the wrong value.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    capacitor C2 10 uF
    capacitor C3 0.1 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- (C2 | C3) -- tweeter+
                      ^^
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    capacitor C2 10 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

When to ignore it: for a part that is there for the amplifier or for what happens above 20 kHz.
"""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.figures.band import Real
from shuntwise.response.measures import FLOOR_DB
from shuntwise.response.solve import Response
from shuntwise.structure.slips import bleeds

OPEN = {"R": 1e9, "L": 1e6, "C": 1e-18}
BRIDGED = {"R": 1e-6, "L": 1e-12, "C": 10.0}
"""Element values (ohm, H, F) that stand for a part left out or bridged, between 20 Hz and 20 kHz."""

AUDIBLE_DB = -60.0
"""What a driver gets less than this of the input does not count."""


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    if evidence.slips:
        return
    candidates = [part.label for part in evidence.design.parts.values() if _counts(evidence, part.label)]
    if not candidates:
        return
    base = _curves(evidence, evidence.sweep)[:, None, ::4]
    freq = evidence.sweep.freq_hz[::4]
    changes = {}
    for values in (OPEN, BRIDGED):
        settings: dict[str, object] = {}
        for number, label in enumerate(candidates):
            element = evidence.network.element[label]
            column = np.full(len(candidates), element.value)
            column[number] = values[element.kind]
            settings[label] = column
        response = evidence.solver.solve(freq, values=settings)
        changes[values["C"]] = np.abs(_curves(evidence, response) - base).max(axis=(0, 2))
    told: set[str] = set()
    for number, label in enumerate(candidates):
        change = min(float(change[number]) for change in changes.values())
        row = _row(evidence, label)
        if change < RULE.limit(evidence) and not told & row:
            told |= row
            yield RULE.finding(
                evidence.place(label),
                f"`{label}` changes nothing",
                label=f"with or without it, all levels stay within {RULE.limit(evidence):.2g} dB",
                why="mostly such a part is in the wrong place or has the wrong value",
                help="look at its value and its leads, or save it",
                subjects=(label, *sorted(row - {label})),
            )


def _counts(evidence: Evidence, label: str) -> bool:
    part = evidence.design.parts[label]
    element = evidence.network.element.get(label)
    live = any(edge.key in evidence.faults.live for edge in evidence.circuit.edges_of(label))  # no link bridges it
    return live and element is not None and not bleeds(evidence.circuit, part)


def _row(evidence: Evidence, label: str) -> set[str]:
    """The parts in one row with this one: what is said of one is true of all."""
    for ladder in evidence.structure.ladders.values():
        for shunt in ladder.shunts:
            if label in shunt.block.labels:
                return {*shunt.block.labels}
    return {label}


def _curves(evidence: Evidence, response: Response) -> Real:
    """Levels at the drivers and of the inputs' admittances (dB), stacked: (curves, ...)."""
    volts = [response.driver_voltage(driver.name) for driver in evidence.network.drivers]
    flows = [response.admittance(feed.name) for feed in evidence.network.feeds]
    floors = [AUDIBLE_DB] * len(volts) + [FLOOR_DB] * len(flows)
    return np.stack(
        [
            np.asarray(20 * np.log10(np.maximum(np.abs(curve), 10 ** (floor / 20))), np.float64)
            for curve, floor in zip((*volts, *flows), floors, strict=True)
        ]
    )


RULE = Rule("no-effect-part", Severity.ADVICE, "settled", check, Bound(0.1, units.DECIBEL))
