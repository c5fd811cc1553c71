"""Coil and capacitor in a row across the amplifier.

What it finds: a chain of coils and capacitors, without a resistor, from the input's plus to its minus. Nothing is
said where a tweeter has lost its capacitor: that is the mistake then.

Why it matters: at the frequency where they resonate they are a short for the amplifier.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    coil L2 0.33 mH
    capacitor C2 2.2 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
      input+ -- L2 -- C2 -- return
                ^^
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    coil L2 0.33 mH
    capacitor C2 2.2 uF
    resistor R1 8.2 ohm
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
      woofer+ -- L2 -- C2 -- R1 -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.diagnostics.wording import quoted


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    structure = evidence.structure
    if structure.dc_paths:
        return
    for block in structure.across_input:
        if block.form == "chain" and not block.passes_dc and set(block.letters) == {"C", "L"}:
            shown = quoted(block.labels)
            yield RULE.finding(
                evidence.place(block.label),
                f"{shown} lie in a row across the amplifier",
                label="nothing else limits the current",
                why="where they resonate they are a short for the amplifier",
                help="move them behind the part that they belong to, or put a resistor into the row",
                subjects=block.labels,
            )


RULE = Rule("bare-trap-across-amp", Severity.ERROR, "structure", check)
