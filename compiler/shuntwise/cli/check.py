"""`shuntwise check`: look for mistakes in designs and all their variants, and in boxes' own files."""

from __future__ import annotations

import argparse
import os
import sys
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from shuntwise import __version__
from shuntwise.checks.registry import FAMILY_OF
from shuntwise.cli.main import CLEAN, FAULT, FINDINGS, USAGE, Refused, complain, told_fault
from shuntwise.cli.reading import BOX_ENDING, design_files, put_box, refusing, require_variant, show
from shuntwise.diagnostics.diagnostic import Diagnostic, NotChecked, Unread
from shuntwise.loading import is_shipped, read_box
from shuntwise.pipeline import Compilation
from shuntwise.settings import read_settings
from shuntwise.source import Source
from shuntwise.workspace import Workspace

if TYPE_CHECKING:
    from shuntwise.boxes import BoxRead


@dataclass(frozen=True)
class Report:
    """What was found in one file."""

    file: str
    sources: tuple[Source, ...]
    compilations: tuple[Compilation, ...]
    box: BoxRead | None = None

    @property
    def findings(self) -> tuple[Diagnostic, ...]:
        own = self.box.findings if self.box is not None else ()
        return (*own, *(finding for compilation in self.compilations for finding in compilation.findings))

    @property
    def failed(self) -> bool:
        own = self.box is not None and self.box.failed
        return own or any(compilation.failed for compilation in self.compilations)

    @property
    def not_checked(self) -> tuple[NotChecked, ...]:
        return tuple(entry for compilation in self.compilations for entry in compilation.not_checked)


def run(options: argparse.Namespace) -> int:
    """One file that cannot be read, and even a fault of ours in one, hides nothing of what is found in the others."""
    reports: list[Report] = []
    unread: list[Unread] = []
    status = CLEAN
    for path in options.paths:
        for file in _files(path, unread):
            try:
                report = _report(file, options)
                changing = options.fix or options.repair
                reports.append(_fix(file, options, report, unread) if changing else report)
            except Refused as refusal:
                unread.append(Unread(file, str(refusal), refusal.help))
            except Exception as fault:
                if isinstance(fault, BrokenPipeError) or os.environ.get("SHUNTWISE_TRACEBACK"):
                    raise
                unread.append(Unread(file, *told_fault(fault)))
                status = FAULT
    for entry in unread:
        complain(entry.reason, entry.help)
    if options.json or options.sarif or options.annotations:
        print(_for_machines(reports, unread, options))
    else:
        _for_people(reports, unread, options)
    failed = any(report.failed for report in reports)
    return max(status, USAGE if unread else CLEAN, FINDINGS if failed else CLEAN)


def _files(path: str, unread: list[Unread]) -> list[str]:
    try:
        return list(design_files([path]))
    except Refused as refusal:
        unread.append(Unread(path, str(refusal), refusal.help))
        return []


def _report(file: str, options: argparse.Namespace) -> Report:
    if file.endswith(BOX_ENDING):
        return _report_on_box(file, options)
    with refusing():
        work = Workspace(file)
        read_settings(options.settings)
    require_variant(work, options.variant)
    if options.as_include:
        return Report(file, work.collected.sources, (work.as_include,))
    taken = argparse.Namespace(**vars(options))
    box = None
    if options.box is not None:
        with refusing():
            box = read_box(options.box, of=file)
        if box.failed or box.box is None:
            return Report(file, (box.source,), (), box)
        put_box(taken, box.box)
    whole = taken.variant is None and not taken.settings
    compilations = work.compilations if whole else (work.compilation(taken.variant, taken.settings),)
    return Report(file, work.collected.sources, compilations, box)


def _report_on_box(file: str, options: argparse.Namespace) -> Report:
    if options.variant or options.settings or options.as_include or options.box:
        raise Refused(f"`{file}` is the file of a box", "check it by itself, or check its design with `--box FILE`")
    with refusing():
        found = read_box(file)
    return Report(file, (found.source,), (), found)


def _fix(file: str, options: argparse.Namespace, report: Report, unread: list[Unread]) -> Report:
    """Apply safe fixes, and repairs of layouts if they are asked for, to the very files that were read, until there is
    none left, a few times at the most.
    """
    from shuntwise.diagnostics.diagnostic import Confidence
    from shuntwise.diagnostics.fixes import apply_fixes
    from shuntwise.diagnostics.terminal import visible
    from shuntwise.files import OutputRefused, still_as_read, write_file

    for _ in range(5):
        own = {source: source.text for source in report.sources if not is_shipped(source)}
        safe = report.findings if options.fix else ()
        texts, applied, _ = apply_fixes(own, safe)
        if options.repair and not applied:
            on_boards = [finding for finding in report.findings if FAMILY_OF[finding.name] == "board"]
            texts, applied, _ = apply_fixes(own, on_boards, Confidence.NEEDS_REVIEW)
        changed = {source: text for source, text in texts.items() if text != source.text}
        if not changed:
            break
        try:  # all are looked at before the first is written
            marks = {source: still_as_read(source) for source in changed}
            for source, text in changed.items():
                write_file(Path(source.file), marks[source] + text.encode("utf-8"))
        except OutputRefused as refusal:
            unread.append(Unread(file, str(refusal), refusal.help))
            return report
        for fixed in (entry.diagnostic for entry in applied):
            print(visible(f"fixed: {fixed.span.source.name}:{fixed.span.line}: {fixed.headline}"), file=sys.stderr)
        report = _report(file, options)
    return report


def _for_people(reports: list[Report], unread: list[Unread], options: argparse.Namespace) -> None:
    for report in reports:
        show(report.findings, report.not_checked, to_stderr=False, unrun=options.unrun)
    clean = [report for report in reports if not report.findings]
    waived = sum(len(compilation.waived) for report in reports for compilation in report.compilations)
    also = f"; {waived} finding{'s' * (waived != 1)} waived" if waived else ""
    if not reports:
        return
    boxes = sum(1 for report in reports if report.file.endswith(BOX_ENDING))
    counts = (
        (len(reports) - boxes, "include" if options.as_include else "design"),
        (boxes, "boxe" if boxes > 1 else "box"),
    )
    what = " and ".join(f"{count} {noun}{'s' * (count != 1)}" for count, noun in counts if count)
    if unread:
        also = f"; {len(unread)} not checked{also}"
    if len(clean) == len(reports):
        print(f"{what} checked, nothing found{also}")
    elif len(reports) > 1:
        print(f"{what} checked, {len(reports) - len(clean)} with findings{also}")


def _for_machines(reports: list[Report], unread: list[Unread], options: argparse.Namespace) -> str:
    import json

    findings = [finding for report in reports for finding in report.findings]
    not_checked = [entry for report in reports for entry in report.not_checked]
    if options.annotations:
        from shuntwise.diagnostics.annotations import to_annotations

        return to_annotations(findings, not_checked, unread).rstrip("\n")
    if options.sarif:
        from shuntwise.checks.page import rule_texts
        from shuntwise.diagnostics.sarif import to_sarif

        return json.dumps(to_sarif(findings, not_checked, rule_texts(), unread=unread, version=__version__), indent=1)
    from shuntwise.diagnostics.json_form import to_json

    return json.dumps(to_json(findings, not_checked, unread), indent=1)
