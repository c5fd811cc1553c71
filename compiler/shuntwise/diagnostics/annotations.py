"""Findings as workflow commands: lines of a build log that a code host shows beside the changed lines.

In: diagnostics and the checks that could not run. Out: one line each, `::error file=...,line=...::message`.
It refuses to know which host reads them.
"""

from __future__ import annotations

from collections.abc import Sequence

from shuntwise.diagnostics.diagnostic import Diagnostic, NotChecked, Severity, Unread
from shuntwise.diagnostics.terminal import visible

_COMMAND = {Severity.ERROR: "error", Severity.WARNING: "warning", Severity.ADVICE: "notice"}


def to_annotations(
    diagnostics: Sequence[Diagnostic], not_checked: Sequence[NotChecked] = (), unread: Sequence[Unread] = ()
) -> str:
    """One line a finding, in the order given, then one for each check that could not run and each unread file.

    Columns are given only for a place within one line, as hosts refuse them otherwise; `endColumn` is
    exclusive. Nothing in a name or message can end the line or begin another command.
    """
    lines = [_finding(diagnostic) for diagnostic in diagnostics]
    for entry in not_checked:
        lines.append(_command("notice", {"title": entry.name}, [f"not checked: {entry.lacks}"]))
    for file in unread:
        message = [file.reason, *([f"help: {file.help}"] if file.help else [])]
        lines.append(_command("error", {"file": file.file, "title": "not read"}, message))
    return "".join(f"{line}\n" for line in lines)


def _finding(diagnostic: Diagnostic) -> str:
    span = diagnostic.span
    line, column = span.source.position(span.start)
    end_line, end_column = span.source.position(span.end)
    properties = {"file": span.source.name, "line": str(line), "endLine": str(end_line)}
    if line == end_line:
        properties |= {"col": str(column), "endColumn": str(end_column)}
    message = [diagnostic.headline]
    if diagnostic.variant is not None:
        message.append(f"in variant: {diagnostic.variant}")
    notes = (("why", diagnostic.why), ("help", diagnostic.help))
    message += [f"{key}: {text}" for key, text in notes if text]
    return _command(_COMMAND[diagnostic.severity], properties | {"title": diagnostic.name}, message)


def _command(command: str, properties: dict[str, str], message: list[str]) -> str:
    listed = ",".join(f"{key}={_property(visible(value))}" for key, value in properties.items())
    text = "\n".join(visible(line) for line in message)
    return f"::{command} {listed}::{_escaped(text)}"


def _escaped(text: str) -> str:
    return text.replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A")


def _property(text: str) -> str:
    return _escaped(text).replace(":", "%3A").replace(",", "%2C")
