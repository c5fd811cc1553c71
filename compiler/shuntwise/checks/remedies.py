"""What the rules on shorts have in common: the chain's other joints, and the part that the wire replaced.

In: the evidence and a `Short`. Out: labels and words for a finding. Decides nothing.
"""

from __future__ import annotations

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.faults.shorts import Short
from shuntwise.checks.rule import Label


def chain_places(short: Short) -> list[Label]:
    """The joints of the chain beside the one that is blamed."""
    return [
        Label(wire.span, "also in the chain")
        for wire in short.chain
        if short.blamed is not None and wire.span != short.blamed.span
    ]


def replaced_parts(evidence: Evidence, short: Short) -> list[str]:
    """What stands in no walk, and may have stood where this wire is."""
    if short is not evidence.faults.left_bare:
        return []
    return [label for label in evidence.faults.ends.unwired if label not in evidence.design.drivers]


def replaced_places(evidence: Evidence, labels: list[str]) -> list[Label]:
    return [Label(evidence.declared(label), "stands in no walk") for label in labels]


def remedy(labels: list[str], usual: str) -> str:
    """The help: the usual one, unless a part that stands in no walk may belong here."""
    if not labels:
        return usual
    listed = " or ".join(f"`{label}`" for label in labels)
    return f"take out the joint that does not belong; if {listed} was meant here, walk through it"
