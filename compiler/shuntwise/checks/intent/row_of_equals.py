"""Two coils, or two capacitors, in a row with nothing between them.

What it finds: a node that the author named, at which two coils in the path to a driver (or two capacitors) meet,
and nothing else.

Why it matters: two coils in a row are one coil. Where a node between them has a name, a part across the path was to
go there, and is missing or has gone elsewhere.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.2 mH }
    coil L1 0.56 mH
    coil L2 0.27 mH
    leg woofer {
      input+ -- L1 -- middle -- L2 -- woofer+
                      ^^^^^^
      woofer- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.2 mH }
    coil L1 0.75 mH
    capacitor C1 10 uF
    coil L2 0.27 mH
    leg woofer {
      input+ -- L1 -- middle -- L2 -- woofer+
      middle -- C1 -- return
      woofer- -- return
    }

When to ignore it: where two parts make up one value; leave the node between them without a name.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    circuit, design = evidence.circuit, evidence.design
    seen: set[str] = set()
    rows = [step.block for ladder in evidence.structure.ladders.values() for step in ladder.series("LC")]
    for row in rows:
        for first, second in pairwise(row.flat("chain")):
            net = circuit.nets[first.b]
            if net.name in seen:
                continue
            if not net.nodes or len(net.attachments) != 2 or any(node in design.testpoints for node in net.nodes):
                continue
            seen.add(net.name)
            kind = {"L": "coils", "C": "capacitors"}[row.letter]
            a, b = first.label, second.label
            yield RULE.finding(
                evidence.place(net.nodes[0]),
                f"nothing goes off between the {kind} `{a}` and `{b}`",
                label="only the two meet here",
                why="two of a kind in a row act as one; a part across the path is missing here",
                help="wire the missing part to this node; if the two make up one value, leave the node unnamed",
                subjects=(net.nodes[0], a, b),
            )


RULE = Rule("row-of-equals", Severity.WARNING, "structure", check)
