"""The one slip that explains most, and what follows from it told under it.

In: what the rules found. Out: the same findings, and that of the slip, if solving shows one with which all comes out:
those that vanish with it bear its name. Refuses to drop a finding: severities count as before.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Rule
from shuntwise.checks.run import Checked, run
from shuntwise.checks.values.slip_explains import RULE as CAUSE
from shuntwise.diagnostics.diagnostic import Severity
from shuntwise.network.lower import lower
from shuntwise.suspects.search import Suspect

MOST_TRIED = 6
"""So many suspects are gone through with all rules, the likeliest by their figures."""


def with_cause(rules: Iterable[Rule], evidence: Evidence, checked: Checked) -> Checked:
    """Of the suspects that one is taken that leaves fewest findings. Where its finding is waived nothing is folded."""
    rules = tuple(rules)
    if CAUSE not in rules or any(entry.name == CAUSE.name for entry in checked.not_checked):
        return checked
    tried = [(suspect, _with(rules, evidence, suspect)) for suspect in evidence.suspects[:MOST_TRIED]]
    if not tried:
        return checked
    best, after = min(tried, key=lambda one: _left(one[1]) + one[0].score)
    still = {(finding.name, finding.subjects) for finding in (*after.findings, *(f for f, _ in after.waived))}
    gone = [finding for finding in checked.findings if (finding.name, finding.subjects) not in still]
    if all(finding.severity is Severity.ADVICE for finding in gone):
        return checked
    others = tuple(suspect for suspect, _ in tried if suspect is not best)
    told = run([CAUSE], replace(evidence, explained=(best, *others)))
    if told.findings:
        gone_now = {id(finding) for finding in gone}
        findings = [replace(f, cause=CAUSE.name) if id(f) in gone_now else f for f in checked.findings]
        return replace(checked, findings=(*told.findings, *findings))
    return replace(checked, waived=(*checked.waived, *told.waived))


def _with(rules: Iterable[Rule], evidence: Evidence, suspect: Suspect) -> Checked:
    """What the rules say once the suspect's change is made."""
    circuit = suspect.change.circuit
    return run(rules, Evidence(circuit.design, circuit, lower(circuit)))


def _left(checked: Checked) -> float:
    """How much is still wrong: a warning counts as much as half the window of a figure, an error twice that."""
    severities = [finding.severity for finding in checked.findings]
    return severities.count(Severity.ERROR) + 0.5 * severities.count(Severity.WARNING)
