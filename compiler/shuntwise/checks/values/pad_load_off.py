"""A pad that does not keep the load.

What it finds: a tweeter or mid with a resistor in its path and another across it, of which the load that the filter
sees is off the nominal impedance of what hangs on it by more than the bound. It is a warning where the driver's level
in its own band is 1.5 dB or more away from what a pad of the same loss that keeps the load would give: that is more
than parts of 5 % do. Below that it is advice.

Why it matters: a pad of two resistors is there to keep the filter's load while it lowers the level: Rs = R (K - 1) / K,
Rp = R / (K - 1) with K = 10^(loss / 20 dB), the attenuator formulas of handbooks. Where it does not, two values
have changed places, or one is wrong.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    resistor R1 8.2 ohm
    resistor R2 3.9 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- R1 -- tweeter+
                      ^^
      tweeter+ -- R2 -- tweeter-
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    resistor R1 3.9 ohm
    resistor R2 8.2 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- R1 -- tweeter+
      tweeter+ -- R2 -- tweeter-
      tweeter- -- return
    }

When to ignore it: where the filter was worked out for the load that it sees.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Label, Rule, Severity
from shuntwise.figures.nominal import PLAIN_DB
from shuntwise.structure.attenuators import (
    SeriesResistor,
    drivers_ohm,
    load_ohm,
    pad_ohms,
    series_resistors,
    value_of,
)
from shuntwise.structure.ladders import Ladder


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    design = evidence.design
    for ladder in evidence.structure.of_role("mid", "full_range", "tweeter"):
        pads = [place for place in series_resistors(ladder) if place.shunt_behind and not place.shunt_ahead]
        load, nominal = load_ohm(design, ladder), drivers_ohm(design, ladder)
        if len(pads) != 1 or any(step.block.letter in "LC" for step in pads[0].later_steps):
            continue
        if evidence.slips.keys() & {pads[0].label, *pads[0].shunt_labels}:
            continue
        if load is None or nominal is None or abs(load / nominal - 1) <= RULE.limit(evidence):
            continue
        yield _finding(evidence, ladder, pads[0], (load, nominal))


def _finding(evidence: Evidence, ladder: Ladder, pad: SeriesResistor, ohms: tuple[float, float]) -> Diagnostic:
    name, (shunt, *_) = ladder.driver.name, pad.shunt_labels
    load, nominal = (units.write(ohm, units.OHM, 3) for ohm in ohms)
    change_db = _change_db(evidence, ladder, pad, ohms[1])
    return RULE.finding(
        evidence.place(pad.label),
        f"behind the pad of `{pad.label}` and `{shunt}` the filter sees {load}, and `{name}` is {nominal}",
        severity=Severity.WARNING if change_db >= PLAIN_DB else Severity.ADVICE,
        label="in the path",
        why=f"a pad is to keep the filter's load; this one moves the level by up to {change_db:.2g} dB",
        help="look whether the two values have changed places, or work them out again",
        places=(Label(evidence.place(shunt), "across the driver"),),
        subjects=(pad.label, shunt, name),
    )


def _change_db(evidence: Evidence, ladder: Ladder, pad: SeriesResistor, ohm: float) -> float:
    """How far the level is off that behind a pad of the same loss for this load."""
    assert pad.shunt_behind is not None
    blocks = pad.step.block, pad.shunt_behind.block
    in_path, across = (value_of(evidence.design, block) for block in blocks)
    if in_path is None or across is None:
        return 0.0
    behind = across * ohm / (across + ohm)
    ratio = (in_path + behind) / behind
    values: dict[str, float] = {}
    for block, now, wanted in zip(blocks, (in_path, across), pad_ohms(ohm, ratio), strict=True):
        values |= {label: evidence.network.element[label].value * wanted / now for label in block.labels}
    return evidence.figures.greatest_change_db(ladder.driver.name, values)


RULE = Rule("pad-load-off", Severity.ADVICE, "settled", check, Bound(0.3, units.PLAIN))
