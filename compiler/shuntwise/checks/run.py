"""Evidence -> findings: every rule whose value exists is run, and waivers are obeyed.

Out: findings in the order of the text, waived ones apart, and the checks that could not run with what
they lack. A waiver that waives nothing is itself a finding.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Check, Rule
from shuntwise.diagnostics.diagnostic import Diagnostic, NotChecked, Severity
from shuntwise.model.design import Waiver
from shuntwise.network.lower import Unlowered
from shuntwise.stress.stress import Lacking
from shuntwise.units import HERTZ, write


@dataclass(frozen=True)
class Checked:
    """What the rules found. `waived` pairs each accepted finding with the waiver that covers it."""

    findings: tuple[Diagnostic, ...]
    waived: tuple[tuple[Diagnostic, Waiver], ...]
    not_checked: tuple[NotChecked, ...]


def run(rules: Iterable[Rule], evidence: Evidence) -> Checked:
    """Run all rules on one design."""
    found: list[Diagnostic] = []
    not_checked: list[NotChecked] = []
    sound = settled = True
    for rule in rules:
        if rule.check is None:
            continue
        obstacle = _obstacle(rule, evidence, sound, settled)
        if obstacle is not None:
            not_checked.append(obstacle)
            continue
        for result in _results(rule, rule.check, evidence):
            if isinstance(result, Diagnostic):
                found.append(result)
                of_circuit = rule.needs in ("circuit", "faultless", "structure") or rule.is_cause
                if of_circuit and result.severity is not Severity.ADVICE and not accepted(result, evidence):
                    settled = False
                    sound &= result.severity is not Severity.ERROR
            else:
                not_checked.append(result)
    return _obey(found, not_checked, evidence.design.waivers)


def _results(rule: Rule, check: Check, evidence: Evidence) -> Iterable[Diagnostic | NotChecked]:
    """What one rule says. Where a network turns out to have no single solution, that is what it lacks."""
    if rule.needs not in ("network", "sound", "settled", "stress"):
        return check(evidence)
    from shuntwise.response.pivoted import SingularNetwork

    try:
        if rule.needs == "stress" and isinstance(evidence.at_amplifier, Lacking):
            return (rule.not_checked(evidence.at_amplifier.lacks, *evidence.at_amplifier.subjects),)
        return tuple(check(evidence))
    except SingularNetwork as singular:
        return (rule.not_checked(f"a single solution at {write(singular.freq_hz, HERTZ)}", *singular.nodes),)


def _obstacle(rule: Rule, evidence: Evidence, sound: bool, settled: bool) -> NotChecked | None:
    """What a rule lacks, if it cannot run."""
    if rule.needs in ("faultless", "structure", "settled"):
        if not evidence.wiring_read:
            return rule.not_checked("wiring that could be read whole")
        if not sound:
            return rule.not_checked("a circuit without errors")
    if rule.needs in ("structure", "settled"):
        if not evidence.traceable:
            return rule.not_checked("a circuit of fewer parts")
        if not evidence.structure.whole:
            unfed = evidence.structure.unfed
            return rule.not_checked(f"a way in which an input feeds {' and '.join(f'`{n}`' for n in unfed)}", *unfed)
    if rule.needs in ("network", "sound", "settled", "stress") and isinstance(evidence.lowered, Unlowered):
        return rule.not_checked(evidence.lowered.lacks, *evidence.lowered.subjects)
    if rule.needs in ("sound", "stress") and not sound:
        return rule.not_checked("a circuit without errors")
    if rule.needs == "settled" and not settled:
        return rule.not_checked("a circuit without errors and warnings")
    return None


def _obey(found: list[Diagnostic], not_checked: list[NotChecked], waivers: tuple[Waiver, ...]) -> Checked:
    findings: list[Diagnostic] = []
    waived: list[tuple[Diagnostic, Waiver]] = []
    for finding in found:
        waiver = next((waiver for waiver in waivers if covers(waiver, finding)), None)
        if waiver is None:
            findings.append(finding)
        else:
            waived.append((finding, waiver))
    return Checked(tuple(findings), tuple(waived), tuple(not_checked))


def accepted(finding: Diagnostic, evidence: Evidence) -> bool:
    return any(covers(waiver, finding) for waiver in evidence.design.waivers)


def covers(waiver: Waiver, finding: Diagnostic) -> bool:
    """Is this finding accepted by this waiver?"""
    return waiver.finding == finding.name and (waiver.subject is None or waiver.subject in finding.subjects)
