"""A row across a driver that misses the resonance which it is made for.

What it finds: coil, capacitor and resistor in a row across a driver of known fs, re, qms and qes, two of which are
those that even out the driver's resonance (L = Qes Re / 2 pi fs, C = 1 / (2 pi fs Qes Re), R = Re (1 + Qes / Qms), the
dual of the lumped model), while the third takes the row's own resonance off fs by more than the bound (a factor).

Why it matters: off its tune the row leaves the resonance as it was, and draws current where nothing is to be evened
out.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 850 Hz, qms 2.3, qes 1.5 }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    coil L2 1.8 mH { dcr 0.8 ohm }
    capacitor C2 2.2 uF
                 ^^^^^^
    resistor R1 9.1 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter+ -- R1 -- L2 -- C2 -- tweeter-
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 850 Hz, qms 2.3, qes 1.5 }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    coil L2 1.8 mH { dcr 0.8 ohm }
    capacitor C2 22 uF
    resistor R1 9.1 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter+ -- R1 -- L2 -- C2 -- tweeter-
      tweeter- -- return
    }

When to ignore it: where the row takes out a peak elsewhere, and its values are alike by chance.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Label, Rule, Severity
from shuntwise.structure.traps import OFF_TUNE, traps


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for block, name in traps(evidence.structure):
        off = evidence.off_tune(block, name)
        if off is None or evidence.slips.keys() & {*block.labels}:
            continue
        part, driver = evidence.design.parts[off.label], evidence.design.drivers[name]
        assert part.value is not None
        here = part.value.span.source is evidence.design.source
        fs, tune = (units.write(freq_hz, units.HERTZ, 2) for freq_hz in (driver.quantities["fs"].value, off.tune_hz))
        wanted = units.write(off.wanted, units.HENRY if part.kind == "coil" else units.FARAD, 2)
        yield RULE.finding(
            part.value.span if here else evidence.place(off.label),
            f"`{off.label}` of {part.value.text} tunes its row to {tune}, and `{name}` resonates at {fs}",
            label=f"the rest of the row asks for about {wanted}",
            why="off its tune the row leaves the resonance as it was",
            help=f"look at the part; {wanted} would fit",
            places=[Label(evidence.place(label), "in a row with it") for label in block.labels if label != off.label],
            subjects=(off.label, name),
        )


RULE = Rule("trap-off-tune", Severity.WARNING, "structure", check, Bound(OFF_TUNE, units.PLAIN))
