"""Evidence -> findings: every rule whose value exists is run, and waivers are obeyed.

Out: findings in the order of the text, waived ones apart, and the checks that could not run with what
they lack. A waiver that waives nothing is itself a finding.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from shuntwise.checks.rule import Evidence, Rule
from shuntwise.diagnostics.diagnostic import Diagnostic, NotChecked
from shuntwise.model.design import Waiver
from shuntwise.network.lower import Unlowered


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
    for rule in rules:
        if rule.check is None:
            continue
        if rule.needs == "network" and isinstance(evidence.lowered, Unlowered):
            not_checked.append(NotChecked(rule.name, evidence.lowered.lacks, evidence.lowered.subjects))
            continue
        for result in rule.check(evidence):
            if isinstance(result, Diagnostic):
                found.append(result)
            else:
                not_checked.append(result)
    return _obey(found, not_checked, evidence.design.waivers)


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


def covers(waiver: Waiver, finding: Diagnostic) -> bool:
    """Is this finding accepted by this waiver?"""
    return waiver.finding == finding.name and (waiver.subject is None or waiver.subject in finding.subjects)
