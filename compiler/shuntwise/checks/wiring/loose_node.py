"""A node that only one thing is wired to.

What it finds: a node that the author named, at which a single end of a part or driver arrives. A node
declared as a `testpoint` is left alone.

Why it matters: no current flows through a single end, so whatever hangs there is not in the circuit. On
the board it is a lead soldered to an empty pad.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
      woofer+ -- C1 -- rail
                       ^^^^
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
      woofer+ -- C1 -- return
    }

When to ignore it: never on a finished board; declare a point that is only for a meter as `testpoint`.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.rule import Confidence, Diagnostic, Evidence, Rule, Severity
from shuntwise.model.findings import replace
from shuntwise.syntax.words import nearest


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    circuit, design = evidence.circuit, evidence.design
    for net in circuit.nets.values():
        if len(net.attachments) != 1 or not net.nodes or net.name in circuit.doubtful:
            continue
        if any(node in design.testpoints for node in net.nodes):
            continue
        node, only = net.nodes[0], net.attachments[0]
        close = nearest(node, [*(name for name in design.node_spans if name != node), "return"])
        span = design.node_spans[node][0]
        yield RULE.finding(
            span,
            f"only `{only.point}` is wired to the node `{node}`",
            label="nothing else arrives here",
            why="no current flows where a single end arrives, so this part does nothing",
            help=f"a similar node exists: `{close}`" if close else "wire it on, or declare it as a `testpoint`",
            fixes=(replace(span, close, Confidence.NEEDS_REVIEW),) if close else (),
            subjects=(node, only.owner),
        )


RULE = Rule("loose-node", Severity.ERROR, "circuit", check)
