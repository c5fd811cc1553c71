"""The one slip that explains most, and what follows from it told under it.

In: what the rules found. Out: the same findings, and that of the slip, if solving shows one with which all comes out:
those that vanish with it bear its name. Refuses to drop a finding: severities count as before.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass, replace

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Rule
from shuntwise.checks.run import Checked, run
from shuntwise.checks.values.slip_explains import RULE as CAUSE
from shuntwise.diagnostics.diagnostic import Diagnostic, Severity
from shuntwise.network.lower import lower
from shuntwise.network.network import Network
from shuntwise.suspects.search import Suspect

MOST_LOOKED_AT, MOST_TRIED = 40, 8
"""Of suspects of a sort so many, the likeliest by their figures, are gone through with the rules that found something
in the circuit, and of these so many with all rules."""

NAMED = 0.3
"""How much likelier a slip is, as a share of a window, if it is in a part that a finding on the circuit names."""


def with_cause(rules: Iterable[Rule], causes: Collection[str], evidence: Evidence, checked: Checked) -> Checked:
    """Of the suspects that one is taken that leaves fewest findings. Where its finding is waived nothing is folded.

    `causes` are the names of the findings on the circuit and its parts that are made without solving.

    Values come first, then those that have names; only if none of them puts all right, and figures are asked for that
    tell one wiring from another, other wirings are tried. Where there is an error in the circuit, or all that is
    asked for comes out, a slip must be in a part that one of these names, and put right all of them that name it; where
    nothing is asked for, it must put right all of them and leave nothing new, not even advice. One that puts none right
    explains nothing.
    """
    rules = tuple(rules)
    weighty = _weighty(checked.findings)
    design = evidence.design
    refused = any(p.refused for p in design.parts.values()) or any(d.refused for d in design.drivers.values())
    if CAUSE not in rules or not weighty or not isinstance(evidence.lowered, Network) or not evidence.wiring_read:
        return checked
    if refused:
        return checked  # what could not be read may be what is wrong
    wrong = [finding for finding in weighty if finding.name in causes]
    sure = evidence.asked_met or any(finding.severity is Severity.ERROR for finding in wrong)
    if sure and (len(weighty) < 2 or not wrong):
        return checked
    search = _Search(rules, evidence, causes, wrong, sure)
    tells = bool(evidence.demands.figures) or not evidence.asked_met
    of_wiring = {rule.name for rule in rules if rule.needs in ("circuit", "faultless")}
    tried: list[_Tried] = []
    if of_wiring.isdisjoint(finding.name for finding in wrong):  # no value puts a wire right
        tried += search.tried(evidence.suspected_values)
        if not any(search.clears(one) for one in tried):
            tried += search.tried(evidence.suspected_names)
    if tells and not any(search.clears(one) for one in tried):
        tried += search.tried(evidence.suspected_wirings)
    if not tells:
        known = set(map(_key, checked.findings))
        tried = [one for one in tried if search.clears(one) and known.issuperset(map(_key, one.after.findings))]
    elif sure:
        tried = [one for one in tried if search.right(one)]
    if not tried:
        return checked
    best, *others = sorted(tried, key=lambda one: one.score)
    after = {_key(finding) for finding in (*best.after.findings, *(f for f, _ in best.after.waived))}
    gone = {id(finding) for finding in checked.findings if _key(finding) not in after}
    if not any(id(finding) in gone for finding in wrong or weighty):
        return checked
    told = run([CAUSE], replace(evidence, explained=tuple(one.suspect for one in (best, *others))))
    if told.findings:
        findings = [replace(f, cause=CAUSE.name) if id(f) in gone else f for f in checked.findings]
        return replace(checked, findings=(*told.findings, *findings))
    return replace(checked, waived=(*checked.waived, *told.waived))


@dataclass(frozen=True)
class _Tried:
    """A suspect, and what the rules say once its change is made. `score` is the less the better."""

    suspect: Suspect
    after: Checked
    score: float


@dataclass(frozen=True)
class _Search:
    """`wrong` is what was found without solving, by the rules `causes`; `sure` wants a part that one of these names."""

    rules: tuple[Rule, ...]
    evidence: Evidence
    causes: Collection[str]
    wrong: Sequence[Diagnostic]
    sure: bool

    def tried(self, suspects: Iterable[Suspect]) -> list[_Tried]:
        """The likeliest suspects, each gone through with all rules."""
        named = {subject for finding in self.wrong for subject in finding.subjects}
        scored = []
        for suspect in suspects:
            is_named = not named.isdisjoint(suspect.change.owners)
            if is_named or not self.sure:
                scored.append((suspect.score - NAMED * is_named, suspect))
        scored = sorted(scored, key=lambda one: one[0])[:MOST_LOOKED_AT]
        complaining = {finding.name for finding in self.wrong}
        asked = [rule for rule in self.rules if rule.name in complaining]
        looked_at = [(len(_weighty(self.run(asked, one).findings)), score, one) for score, one in scored]
        tried = []
        for _, score, suspect in sorted(looked_at, key=lambda one: one[:2])[:MOST_TRIED]:
            after = self.run(self.rules, suspect)
            if not self.breaks(after):
                tried.append(_Tried(suspect, after, score + _left(after.findings)))
        return tried

    def breaks(self, after: Checked) -> bool:
        """Is there an error in the circuit that was not there before?"""
        errors = {_key(f) for f in after.findings if f.name in self.causes and f.severity is Severity.ERROR}
        return not errors <= {_key(finding) for finding in self.wrong}

    def run(self, rules: Sequence[Rule], suspect: Suspect) -> Checked:
        circuit = suspect.change.circuit
        return run(rules, Evidence(circuit.design, circuit, lower(circuit)))

    def clears(self, one: _Tried) -> bool:
        """Is nothing left, and nothing new, of what is found without solving?"""
        return not self.left(one)

    def right(self, one: _Tried) -> bool:
        """Is nothing of that sort new, and nothing left that names what is changed?"""
        of_it = {_key(finding) for finding in self.wrong if set(one.suspect.change.owners) & {*finding.subjects}}
        return self.left(one) <= {_key(finding) for finding in self.wrong} - of_it

    def left(self, one: _Tried) -> set[_Key]:
        return {_key(finding) for finding in _weighty(one.after.findings) if finding.name in self.causes}


_Key = tuple[str, Severity, tuple[str, ...]]


def _key(finding: Diagnostic) -> _Key:
    return finding.name, finding.severity, finding.subjects


def _weighty(findings: Iterable[Diagnostic]) -> list[Diagnostic]:
    return [finding for finding in findings if finding.severity is not Severity.ADVICE]


def _left(findings: Iterable[Diagnostic]) -> float:
    """How much is still wrong: a warning counts as much as half the window of a figure, an error twice that."""
    severities = [finding.severity for finding in findings]
    return severities.count(Severity.ERROR) + 0.5 * severities.count(Severity.WARNING)
