"""A protection lamp, fuse or protector where it protects nothing.

What it finds: a lamp in the path to a woofer; a lamp, fuse or protector in a row across a driver or the input.

Why it matters: a lamp protects by glowing in the path to the driver that cannot take the power, which is the
tweeter. Across a driver it takes power at low level and lets go at high level: the wrong way round. So does a fuse,
and what it carried then goes into the driver.

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
from shuntwise.checks.protection import GUARDS
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.structure.blocks import Block

DOES = {"lamp": "glowing", "fuse": "opening", "protector": "heating up"}


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    structure = evidence.structure
    parts, seen = evidence.design.parts, set[str]()
    wrong: list[tuple[Block, str, str, tuple[str, ...]]] = [
        (block, "across the input", "", GUARDS) for block in structure.across_input
    ]
    for name, ladder in structure.ladders.items():
        if ladder.role == "woofer":
            wrong += [(step.block, f"in the path to `{name}`", name, ("lamp",)) for step in ladder.steps]
        wrong += [(s.block, f"across `{name}`", name, GUARDS) for s in ladder.shunts if not s.at_input]
    for block, where, name, kinds in wrong:
        for _, label in block.ones:
            if label in seen or label not in parts or parts[label].kind not in kinds:
                continue
            seen.add(label)
            kind = parts[label].kind
            does, path = DOES[kind], "the tweeter" if kind == "lamp" else "the driver that it guards"
            yield RULE.finding(
                evidence.place(label),
                f"the {kind} `{label}` lies {where}",
                label="protects nothing here",
                why=f"a {kind} protects by {does} in the path to the driver that cannot take the power",
                help=f"put it into the path to {path}, ahead of the filter",
                subjects=(label, name) if name else (label,),
            )


RULE = Rule("lamp-or-fuse-wrong", Severity.WARNING, "structure", check)
