"""`shuntwise check`: look for mistakes in designs and all their variants."""

from __future__ import annotations

import argparse
import sys
from dataclasses import dataclass
from pathlib import Path

from shuntwise import __version__
from shuntwise.cli.main import CLEAN, FINDINGS, Refused
from shuntwise.cli.reading import design_files, refusing, require_variant, show
from shuntwise.diagnostics.diagnostic import Diagnostic, NotChecked
from shuntwise.loading import read_design
from shuntwise.pipeline import Compilation, compile_all, compile_variant
from shuntwise.settings import read_settings
from shuntwise.source import Source


@dataclass(frozen=True)
class Report:
    """What was found in one file."""

    file: str
    sources: tuple[Source, ...]
    compilations: tuple[Compilation, ...]

    @property
    def findings(self) -> tuple[Diagnostic, ...]:
        return tuple(finding for compilation in self.compilations for finding in compilation.findings)

    @property
    def not_checked(self) -> tuple[NotChecked, ...]:
        return tuple(entry for compilation in self.compilations for entry in compilation.not_checked)


def run(options: argparse.Namespace) -> int:
    reports = []
    for file in design_files(options.paths):
        report = _report(file, options)
        if options.fix:
            report = _fix(file, options, report)
        reports.append(report)
    if options.json or options.sarif or options.annotations:
        print(_for_machines(reports, options))
    else:
        _for_people(reports)
    failed = any(compilation.failed for report in reports for compilation in report.compilations)
    return FINDINGS if failed else CLEAN


def _report(file: str, options: argparse.Namespace) -> Report:
    with refusing():
        collected, said = read_design(file)
        settings = read_settings(options.settings)
    require_variant(collected, options.variant)
    if options.variant is None and not settings:
        compilations = compile_all(collected, said)
    else:
        compilations = (compile_variant(collected, said, variant=options.variant, settings=settings),)
    return Report(file, collected.sources, compilations)


def _fix(file: str, options: argparse.Namespace, report: Report) -> Report:
    """Apply safe fixes to the design's own files until there is none left, a few times at the most."""
    from shuntwise.diagnostics.fixes import apply_fixes
    from shuntwise.diagnostics.terminal import visible
    from shuntwise.files import OutputRefused, write_file

    for _ in range(5):
        own = {source: source.text for source in report.sources if not source.name.startswith("library/")}
        texts, applied, _ = apply_fixes(own, report.findings)
        if not applied:
            break
        for source, text in texts.items():
            if text == source.text:
                continue
            try:
                write_file(Path(source.name), _with_mark(source, text))
            except OutputRefused as refusal:
                raise Refused(str(refusal), refusal.help) from None
        for fixed in (entry.diagnostic for entry in applied):
            print(visible(f"fixed: {fixed.span.source.name}:{fixed.span.line}: {fixed.headline}"), file=sys.stderr)
        report = _report(file, options)
    return report


def _with_mark(source: Source, text: str) -> bytes:
    """The text as bytes, with the byte order mark that the file had."""
    mark = b"\xef\xbb\xbf"
    try:
        with Path(source.name).open("rb") as file:
            head = file.read(3)
    except OSError:
        head = b""
    return (mark if head == mark else b"") + text.encode("utf-8")


def _for_people(reports: list[Report]) -> None:
    for report in reports:
        show(report.findings, report.not_checked, to_stderr=False)
    clean = [report for report in reports if not report.findings]
    waived = sum(len(compilation.waived) for report in reports for compilation in report.compilations)
    also = f"; {waived} finding{'s' * (waived != 1)} waived" if waived else ""
    if len(clean) == len(reports):
        print(f"{len(reports)} design{'s' * (len(reports) != 1)} checked, nothing found{also}")
    elif len(reports) > 1:
        print(f"{len(reports)} designs checked, {len(reports) - len(clean)} with findings{also}")


def _for_machines(reports: list[Report], options: argparse.Namespace) -> str:
    import json

    findings = [finding for report in reports for finding in report.findings]
    not_checked = [entry for report in reports for entry in report.not_checked]
    if options.annotations:
        from shuntwise.diagnostics.annotations import to_annotations

        return to_annotations(findings, not_checked).rstrip("\n")
    if options.sarif:
        from shuntwise.checks.page import rule_texts
        from shuntwise.diagnostics.sarif import to_sarif

        return json.dumps(to_sarif(findings, not_checked, rule_texts(), version=__version__), indent=1)
    from shuntwise.diagnostics.json_form import to_json

    return json.dumps(to_json(findings, not_checked), indent=1)
