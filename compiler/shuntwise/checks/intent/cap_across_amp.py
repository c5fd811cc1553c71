"""A capacitor straight across the amplifier.

What it finds: a capacitor from the input's plus to its minus with nothing before it.

Why it matters: it filters nothing, since the amplifier holds its voltage, and it loads the amplifier at the top.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    capacitor C2 6.8 uF
    capacitor C3 2.2 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      input+ -- C3 -- return
                ^^
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
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

When to ignore it: for a capacitor of a few nanofarad against radio interference.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.structure.filters import lacks_shunt


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    structure = evidence.structure
    if structure.dc_paths or any(lacks_shunt(evidence.design, ladder) for ladder in structure.ladders.values()):
        return
    for block in structure.across_input:
        if block.letter == "C":
            yield RULE.finding(
                evidence.place(block.label),
                f"`{block.label}` lies across the amplifier",
                label="from the input's plus to its minus",
                why="it filters nothing there, and loads the amplifier at the top of the band",
                help="move it behind the coil that it belongs to, or leave it out",
                subjects=block.labels,
            )


RULE = Rule("cap-across-amp", Severity.WARNING, "structure", check)
