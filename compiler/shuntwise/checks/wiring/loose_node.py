"""A node that only one thing is wired to.

What it finds: a node that the author named, or a port of a used network, at which a single end of a part
or driver arrives. Two such nodes that one wire would join are told of once. A node declared as a
`testpoint` is left alone.

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

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.faults.open_end import OpenEnd
from shuntwise.checks.rule import Confidence, Diagnostic, Fix, Label, Rule, Severity
from shuntwise.model.findings import replace
from shuntwise.syntax.words import nearest

MOST_SUGGESTED = 20
"""Similar names are looked for at so many loose nodes only, since each is compared with all others."""


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen = set()
    loose = [end for end in evidence.faults.ends.open if end.kind == "loose-node"]
    for number, end in enumerate(loose):
        if end.name in evidence.design.node_spans:
            finding = _node(evidence, end, number < MOST_SUGGESTED)
        else:
            finding = _port(evidence, end)
        if finding.span not in seen:  # a network that is used twice has its slip once
            seen.add(finding.span)
            yield finding


def _node(evidence: Evidence, end: OpenEnd, suggest: bool) -> Diagnostic:
    design = evidence.design
    scope, _, local = end.name.rpartition(".")
    close = None
    if suggest:
        others = [node.rpartition(".")[2] for node in design.node_spans if node.rpartition(".")[0] == scope]
        partner = end.partner.name.rpartition(".")[2] if end.partner else ""
        known = [*(node for node in others if node != local), *["return"] * (not scope)]
        close = nearest(local, [partner]) or nearest(local, known)
    span = design.node_spans[end.name][0]
    fixes: tuple[Fix, ...] = (replace(span, close, Confidence.NEEDS_REVIEW),) if close else ()
    if end.omitted:
        help_text = f"`{end.omitted[0]}` is left out: leave out what hangs here as well, or wire it on"
    elif close:
        help_text = f"a similar node exists: `{close}`"
    else:
        help_text = "wire it on, or declare it as a `testpoint`"
    only = end.attachment
    return RULE.finding(
        span,
        f"only `{only.point}` is wired to the node `{local}`" if only else f"nothing is wired to the node `{local}`",
        label="nothing else arrives here",
        why="no current flows where a single end arrives, so this part does nothing",
        help=help_text,
        places=(Label(evidence.place(end.partner.point), "this end is open too"),) if end.partner else (),
        fixes=fixes,
        subjects=(end.name, *([only.owner] if only else [])),
    )


def _port(evidence: Evidence, end: OpenEnd) -> Diagnostic:
    network, _, port = end.name.rpartition(".")
    only = end.attachment
    assert only is not None
    inside = only.owner.startswith(f"{network}.")
    return RULE.finding(
        evidence.place(network),
        f"nothing outside is wired to `{end.name}`" if inside else f"nothing inside is wired to `{end.name}`",
        label=f"its port `{port}` is open",
        why="no current flows where a single end arrives, so what hangs there does nothing",
        help=f"wire it on, such as `{end.name} -- return`" if inside else "wire the port inside the network",
        subjects=(network, only.owner),
    )


RULE = Rule("loose-node", Severity.ERROR, "circuit", check)
