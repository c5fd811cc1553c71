"""Two nodes whose names are taken for one another.

What it finds: nodes that differ only by capitals, by O and 0, or by l, I and 1; and nodes that one slip of the
finger tells apart, if one of them is named only once. Names that differ by a number, or by their first or
last letter, are left alone, and so are short ones such as `hp` and `lp`. A misspelt node at which a single
end arrives is found by `loose-node`.

Why it matters: what was meant as one node is two, and what should meet there does not.

Bad:
    driver tweeter 8 ohm
    capacitor C1 6.8 uF
    coil L1 0.56 mH
    resistor R1 3.3 ohm
    resistor R2 8.2 ohm
    leg tweeter {
      input+ -- C1 -- middle -- R1 -- tweeter+
                      ^^^^^^
      midlle -- R2 -- tweeter+
      midlle -- L1 -- return
      tweeter- -- return
    }

Good:
    driver tweeter 8 ohm
    capacitor C1 6.8 uF
    coil L1 0.56 mH
    resistor R1 3.3 ohm
    resistor R2 8.2 ohm
    leg tweeter {
      input+ -- C1 -- middle -- R1 -- tweeter+
      tweeter+ -- R2 -- tweeter-
      middle -- L1 -- return
      tweeter- -- return
    }

When to ignore it: if both nodes are meant, better give one of them a name that nobody can take for the other.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Confidence, Diagnostic, Label, Rule, Severity
from shuntwise.model.findings import replace


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    spans_of, seen = evidence.design.node_spans, set()
    for pair in evidence.faults.look_alikes:
        doubtful, alike = (name.rpartition(".")[2] for name in pair.names)
        span = spans_of[pair.names[0]][0]
        if span in seen:
            continue
        seen.add(span)
        known = spans_of.get(pair.names[1], ())
        yield RULE.finding(
            span,
            f"the nodes `{doubtful}` and `{alike}` are easily taken for one another",
            label=f"named {_times(len(spans_of[pair.names[0]]))}",
            why="if one node is meant, what should meet there does not",
            help=f"write `{alike}` if one node is meant; else rename one of them",
            places=[Label(known[0], f"named {_times(len(known))}")] if known else [],
            fixes=(replace(span, alike, Confidence.NEEDS_REVIEW),),
            subjects=pair.names,
        )


def _times(number: int) -> str:
    return {1: "once", 2: "twice"}.get(number, f"{number} times")


RULE = Rule("look-alike-names", Severity.WARNING, "circuit", check)
