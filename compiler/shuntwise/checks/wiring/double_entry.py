"""Two like parts side by side, not declared as a group.

What it finds: two parts of one kind between the same two nets. Parts that the author writes as a group,
`(C1 | C2)`, are parallel on purpose.

Why it matters: it is a real pair in parallel, or one part that was typed twice; only the author knows which.
Two 6.8 uF in place of one move a crossover by an octave's half.

Bad:
    driver tweeter 8 ohm
    capacitor C1 6.8 uF
    capacitor C2 6.8 uF
    leg tweeter {
      input+ -- C1 -- tweeter+
      input+ -- C2 -- tweeter+
                ^^
      tweeter- -- return
    }

Good:
    driver tweeter 8 ohm
    capacitor C1 6.8 uF
    capacitor C2 6.8 uF
    leg tweeter {
      input+ -- (C1 | C2) -- tweeter+
      tweeter- -- return
    }

When to ignore it: better declare the group, since a group says what is meant.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    circuit, shorted = evidence.circuit, evidence.faults.shorted_nets
    beside: dict[tuple[str, frozenset[str]], list[str]] = {}
    for edge in circuit.edges.values():
        # Parts on a net that is shorted are side by side for that reason.
        if edge.kind == "part" and not edge.section and not {edge.plus, edge.minus} & shorted:
            kind = evidence.design.parts[edge.owner].kind
            beside.setdefault((kind, frozenset((edge.plus, edge.minus))), []).append(edge.owner)
    group_of = {part: number for number, group in enumerate(circuit.groups) for part in sorted(group)}
    seen = set()
    for (kind, _), labels in beside.items():
        if len({group_of.get(label, label) for label in labels}) < 2:
            continue
        # Where a part is missing, only its wire may bring others side by side.
        if evidence.faults.ends.unwired and len({_beside(evidence, label) for label in labels}) == len(labels):
            continue
        placed = sorted(labels, key=lambda label: (evidence.place(label).source.name, evidence.place(label).start))
        *others, last = placed
        span = evidence.place(last)
        if span in seen:
            continue
        seen.add(span)
        names = ", ".join(f"`{label}`" for label in others[:6])
        yield RULE.finding(
            span,
            f"the {kind} `{last}` lies across the same two nets as {names}",
            label="side by side, but not declared as a group",
            why="it is a pair in parallel, or one part entered twice",
            help=f"write `({' | '.join([*others[:6], last])})` for a pair in parallel, or remove one",
            places=[Label(evidence.place(label), "the other") for label in others[:6]],
            subjects=placed,
        )


def _beside(evidence: Evidence, label: str) -> frozenset[str]:
    """The points to which the two ends of a part are wired."""
    points = {*evidence.circuit.edges[label].points}
    return frozenset(
        end
        for point in points
        for wire in evidence.circuit.joints.get(point, ())
        for end in (wire.first, wire.second)
        if end not in points
    )


RULE = Rule("double-entry", Severity.WARNING, "circuit", check)
