"""The low-pass capacitor on the amplifier's side of its coil.

What it finds: a capacitor straight across the input, while a leg with a coil in it has fewer capacitors
across it than coils.

Why it matters: the leg filters as if the capacitor were missing, and the amplifier has to drive the bare
capacitor. Voltages at the drivers do not show which of the two it is; only the input current does.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    capacitor C2 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      input+ -- C1 -- return
                ^^
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    capacitor C2 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- return
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

When to ignore it: never; a capacitor that is meant to lie across the input is `cap-across-amp`.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity
from shuntwise.structure.filters import lacks_shunt


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    structure = evidence.structure
    lacking = [ladder for ladder in structure.ladders.values() if lacks_shunt(evidence.design, ladder)]
    if structure.dc_paths or not lacking:
        return
    for block in structure.across_input:
        if block.letter == "C":
            coil = lacking[0].series("L")[-1].block.label
            yield RULE.finding(
                evidence.place(block.label),
                f"`{block.label}` is on the amplifier's side of `{coil}`",
                label="across the input, where it filters nothing",
                why=f"`{lacking[0].driver.name}` falls off too slowly, and the amplifier drives the bare capacitor",
                help="move its lead to the driver's side of the coil",
                places=(Label(evidence.place(coil), "the coil that it belongs behind"),),
                subjects=(*block.labels, coil),
            )


RULE = Rule("shunt-before-coil", Severity.ERROR, "structure", check)
