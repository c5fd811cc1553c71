"""A coil straight across the amplifier.

What it finds: a coil from the input's plus to its minus with nothing before it, alone or with a resistor in a
row. Nothing is said where a tweeter has lost its capacitor: that is the mistake then.

Why it matters: at low frequencies a coil is its few tenths of an ohm of wire, which is a short for the
amplifier. Mostly it is the tweeter's coil, wired to the wrong end of the capacitor.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    coil L2 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      input+ -- L2 -- return
                ^^
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    coil L2 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter+ -- L2 -- return
      tweeter- -- return
    }

When to ignore it: never on a direct-coupled amplifier.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    structure = evidence.structure
    if structure.dc_paths:
        return
    for block in structure.across_input:
        if block.passes_dc and ("L" in block.letters or "T" in block.letters):
            coil = block.one("L" if "L" in block.letters else "T")
            yield RULE.finding(
                evidence.place(coil),
                f"`{coil}` lies across the amplifier",
                label="from the input's plus to its minus",
                why="at low frequencies only the resistance of its wire is left, and the amplifier is shorted",
                help="move it behind the capacitor of its leg",
                subjects=block.labels,
            )


RULE = Rule("coil-across-amp", Severity.ERROR, "structure", check)
