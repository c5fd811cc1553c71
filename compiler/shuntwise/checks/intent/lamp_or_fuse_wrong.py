"""A protection lamp where it protects nothing.

What it finds: a lamp in the path to a woofer, or in a row across a driver or the input.

Why it matters: a lamp protects by glowing in the path to the driver that cannot take the power, which is the
tweeter. Across a driver it takes power at low level and lets go at high level: the wrong way round.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    lamp B1 5 ohm { hot 58 ohm }
    leg woofer {
      input+ -- B1 -- L1 -- woofer+
                ^^
      woofer- -- return
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
    lamp B1 5 ohm { hot 58 ohm }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- B1 -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: for a lamp that is only a pilot light, with the resistor in its row that it needs.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    structure = evidence.structure
    seen: set[str] = set()
    wrong = [(b, "across the input", "") for b in structure.across_input]
    for name, ladder in structure.ladders.items():
        if ladder.role == "woofer":
            wrong += [(step.block, f"in the path to `{name}`", name) for step in ladder.steps]
        wrong += [(s.block, f"across `{name}`", name) for s in ladder.shunts if not s.at_input]
    for block, where, name in wrong:
        if "B" not in block.letters or block.one("B") in seen:
            continue
        lamp = block.one("B")
        seen.add(lamp)
        yield RULE.finding(
            evidence.place(lamp),
            f"the lamp `{lamp}` lies {where}",
            label="protects nothing here",
            why="a lamp protects by glowing in the path to the driver that cannot take the power",
            help="put it into the path to the tweeter, ahead of the filter",
            subjects=(lamp, name) if name else (lamp,),
        )


RULE = Rule("lamp-or-fuse-wrong", Severity.WARNING, "structure", check)
