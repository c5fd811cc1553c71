"""A part, driver or network that stands in no walk.

What it finds: what is declared and fitted but never wired. Several parts are told of together, since one
missing walk may lead through them all; and if a bare wire shorts something, they are told of there, since the
wire may stand where a part was meant. In a design without any wiring it speaks once.

Why it matters: the parts list and the box would have it, the circuit would not.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
              ^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    omit C1
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never; a part that is only foreseen is left out with `omit`.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    design, unwired = evidence.design, evidence.faults.ends.unwired
    if unwired and all(walk.leg is None for walk in design.walks):
        yield RULE.finding(
            evidence.declared(unwired[0]),
            "nothing is wired yet",
            label="this and all else stands in no walk",
            why="what is not wired is not in the circuit",
            help="wire each driver's leg: `leg woofer { input+ -- L1 -- woofer+ ... }`",
            subjects=unwired,
        )
        return
    drivers = [label for label in unwired if label in design.drivers]
    # Parts that one missing walk leads through are one fault; a part that is waived by name stands alone.
    waived = [waiver.subject for waiver in design.waivers if waiver.finding == RULE.name]
    parts = [label for label in unwired if label not in drivers]
    alone = [label for label in parts if label in waived]
    together = [label for label in parts if label not in waived]
    if evidence.faults.left_bare is not None:
        together = []  # told of at the wire that took its place
    for labels in (*([label] for label in (*drivers, *alone)), together):
        if labels:
            yield _finding(evidence, labels)


def _finding(evidence: Evidence, labels: list[str]) -> Diagnostic:
    places = {evidence.declared(label): label for label in reversed(labels)}  # each place in a network once
    names = list(reversed(places.values()))
    first, *others = sorted(
        names, key=lambda label: (evidence.declared(label).source.name, evidence.declared(label).start)
    )
    listed = ", ".join(f"`{label}`" for label in (first, *others))
    pronoun = "them" if others else "it"
    left_out = "" if first in evidence.design.drivers else f", or write `omit {' and '.join((first, *others))}`"
    return RULE.finding(
        evidence.declared(first),
        f"{listed} {'stand' if others else 'stands'} in no walk",
        label="wired to nothing",
        why=f"the parts list would have {pronoun}, the circuit has not",
        help=f"wire {pronoun} in a leg{left_out}",
        places=[Label(evidence.declared(label), "this as well") for label in others],
        subjects=labels,
    )


RULE = Rule("part-not-wired", Severity.ERROR, "circuit", check)
