"""What a mistake in the circuit concerns: the legs that it stands in, and nothing beside them.

In: findings on the circuit, and evidence. Out: the drivers, parts and inputs of which numbers are not judged while the
mistake stands. Refuses to say what is wrong.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from shuntwise.checks.evidence import Evidence
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.structure.ladders import Ladder


@dataclass(frozen=True)
class Concern:
    """`owners` are the drivers, parts and inputs in question; `drivers` those of them that are drivers."""

    owners: frozenset[str] = frozenset()
    drivers: tuple[str, ...] = ()
    everything: bool = False

    def covers(self, finding: Diagnostic) -> bool:
        """Does a finding speak of something in question? One without subjects speaks of the whole."""
        return self.everything or (
            bool(self.owners) and not (finding.subjects and self.owners.isdisjoint(finding.subjects))
        )

    def __bool__(self) -> bool:
        return self.everything or bool(self.owners)


NOTHING = Concern()


def concern(evidence: Evidence, findings: Iterable[Diagnostic]) -> Concern:
    """The legs that the subjects of some findings stand in, each with its parts, its driver and its input.

    A subject that stands in no leg may change everything, unless it belongs to a driver that is not fed and is a
    subject itself: what leads to that one stands in no leg.
    """
    findings = tuple(findings)
    if not findings:
        return NOTHING
    subjects = frozenset(subject for finding in findings for subject in finding.subjects)
    if not (evidence.wiring_read and evidence.traceable and subjects.issuperset(evidence.structure.unfed)):
        return Concern(everything=True)
    structure = evidence.structure
    owners: set[str] = set(structure.unfed)
    drivers = dict.fromkeys(structure.unfed)
    if structure.unfed:
        at_input = {label for block in structure.across_input for label in block.labels}
        placed = _of_legs(evidence, structure.ladders.values()) | at_input
        owners |= {*evidence.design.parts, *evidence.design.instances} - placed
    for finding in findings:
        met = [
            ladder
            for name, ladder in structure.ladders.items()
            if not {name, *ladder.labels}.isdisjoint(finding.subjects)
        ]
        if not met and owners.isdisjoint(finding.subjects):
            return Concern(everything=True)
        owners |= _of_legs(evidence, met)
        drivers |= dict.fromkeys(name for ladder in met for name in (ladder.driver.name, *ladder.twins))
    return Concern(frozenset(owners), tuple(drivers))


def _of_legs(evidence: Evidence, ladders: Iterable[Ladder]) -> set[str]:
    """What stands in some legs, used networks among it."""
    owners = {owner for ladder in ladders for owner in (ladder.driver.name, ladder.feed, *ladder.labels, *ladder.twins)}
    return owners | ({owner.partition(".")[0] for owner in owners} & evidence.design.instances.keys())
