"""Evidence -> findings: every rule whose value exists is run, and waivers are obeyed.

Out: findings in the order of the text, waived ones apart, and the checks that could not run with what
they lack. A waiver that waives nothing is itself a finding.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass

from shuntwise.checks.concern import NOTHING, Concern, concern
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


@dataclass(frozen=True)
class _Mistakes:
    """What earlier stages found in the circuit: the legs with errors, and those with errors or warnings.

    `free` is true while there are no errors at all.
    """

    errors: Concern
    weighty: Concern
    free: bool

    def of(self, rule: Rule) -> Concern:
        """What a rule says nothing of."""
        if rule.needs == "settled":
            return self.weighty
        return self.errors if rule.needs in ("structure", "sound", "stress") else NOTHING


def run(rules: Iterable[Rule], evidence: Evidence) -> Checked:
    """Run all rules on one design, stage by stage; in which order they are given is of no account."""
    found: list[Diagnostic] = []
    not_checked: list[NotChecked] = []
    weighty: list[Diagnostic] = []
    mistakes = _Mistakes(NOTHING, NOTHING, free=True)
    stages: dict[int, list[Rule]] = defaultdict(list)
    for rule in rules:
        if rule.check is not None:
            stages[_stage(rule)].append(rule)
    for _, together in sorted(stages.items()):
        said = [result for rule in together for result in _run(rule, evidence, mistakes)]
        found += [result for result in said if isinstance(result, Diagnostic)]
        not_checked += [result for result in said if isinstance(result, NotChecked)]
        of_circuit = {rule.name for rule in together if rule.of_circuit}
        told = [f for f in said if isinstance(f, Diagnostic) and f.name in of_circuit]
        fresh = [f for f in told if f.severity is not Severity.ADVICE and not accepted(f, evidence)]
        if fresh:
            weighty += fresh
            errors = [finding for finding in weighty if finding.severity is Severity.ERROR]
            mistakes = _Mistakes(concern(evidence, errors), concern(evidence, weighty), free=not errors)
    return _obey(found, sorted(not_checked, key=lambda entry: (entry.name, entry.subjects)), evidence.design.waivers)


def _stage(rule: Rule) -> int:
    """When a rule runs: what it may take for sound has then been looked at.

    First the wiring, then whether every driver is fed. Of the rules on structure those that find errors come first, as
    what an error explains is not told as well. Mistakes that only solving shows come before the numbers that follow
    from them.
    """
    if rule.needs == "faultless":
        return 1
    if rule.needs == "layout":
        return 6
    if rule.needs == "structure":
        return 2 if rule.severity is Severity.ERROR else 3
    if rule.needs in NUMBERS:
        return 4 if rule.is_cause else 5
    return 0


NUMBERS = ("network", "sound", "settled", "stress")
"""What a rule needs that looks at what solving gives."""


def _run(rule: Rule, evidence: Evidence, mistakes: _Mistakes) -> Iterable[Diagnostic | NotChecked]:
    if rule.needs == "layout" and evidence.boards is None:
        return ()  # nor is anything loaded that knows boards
    obstacle = _obstacle(rule, evidence, mistakes)
    if obstacle is not None:
        return (obstacle,)
    assert rule.check is not None
    results = _results(rule, rule.check, evidence)
    silent = mistakes.of(rule)
    if not silent:
        return results
    kept = [result for result in results if isinstance(result, NotChecked) or not silent.covers(result)]
    return (
        *kept,
        rule.not_checked(f"sound legs of {' and '.join(f'`{name}`' for name in silent.drivers)}", *silent.drivers),
    )


def _results(rule: Rule, check: Check, evidence: Evidence) -> Iterable[Diagnostic | NotChecked]:
    """What one rule says. Where a network turns out to have no single solution, that is what it lacks."""
    if rule.needs not in NUMBERS:
        return check(evidence)
    from shuntwise.response.pivoted import SingularNetwork

    try:
        if rule.needs == "stress" and isinstance(evidence.at_amplifier, Lacking):
            return (rule.not_checked(evidence.at_amplifier.lacks, *evidence.at_amplifier.subjects),)
        return tuple(check(evidence))
    except SingularNetwork as singular:
        return (rule.not_checked(f"a single solution at {write(singular.freq_hz, HERTZ)}", *singular.nodes),)


def _obstacle(rule: Rule, evidence: Evidence, mistakes: _Mistakes) -> NotChecked | None:
    """What a rule lacks, if it cannot run."""
    if rule.needs in ("faultless", "structure", "settled", "layout"):
        if not evidence.wiring_read:
            return rule.not_checked("wiring that could be read whole")
        if rule.needs in ("faultless", "layout") and not mistakes.free:
            return rule.not_checked("a circuit without errors")
    if rule.needs == "layout" and evidence.boards is not None:
        for layout in evidence.boards.layouts:
            if layout.refused:
                return rule.not_checked(f"a layout `{layout.name}` that could be read whole")
            if layout.name in evidence.boards.copper.too_fine:
                return rule.not_checked(f"copper of `{layout.name}` in fewer pieces than its cuts leave")
    if rule.needs in ("structure", "settled"):
        if not evidence.traceable:
            return rule.not_checked("a circuit of fewer parts")
        if not evidence.structure.whole and mistakes.free:
            unfed = evidence.structure.unfed
            return rule.not_checked(f"a way in which an input feeds {' and '.join(f'`{n}`' for n in unfed)}", *unfed)
    if rule.needs in NUMBERS and isinstance(evidence.lowered, Unlowered):
        return rule.not_checked(evidence.lowered.lacks, *evidence.lowered.subjects)
    unsolved = rule.needs in ("sound", "settled", "stress") and not mistakes.free and not evidence.structure.whole
    if mistakes.of(rule).everything or unsolved:
        return rule.not_checked("a circuit without errors" + " and warnings" * (rule.needs == "settled"))
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
