"""Findings in SARIF 2.1.0, the OASIS interchange format for results of static analysis.

In: diagnostics, the checks that could not run, and what the rules say of themselves. Out: a plain dict for
`json.dumps`. It refuses to know any rule: the caller passes the rules' metadata.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from hashlib import sha256
from pathlib import PurePath
from typing import Any
from urllib.parse import quote

from shuntwise.diagnostics.diagnostic import Diagnostic, Fix, NotChecked, Severity, Unread
from shuntwise.diagnostics.terminal import visible
from shuntwise.source import Source, Span

SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
LONGEST_DESCRIPTION = 1024
"""Code hosts cut a rule's full description after this many characters."""

_LEVEL = {Severity.ERROR: "error", Severity.WARNING: "warning", Severity.ADVICE: "note"}

Json = dict[str, Any]


@dataclass(frozen=True)
class RuleText:
    """What a rule says of itself: `short` is a sentence, `full` a paragraph, `help` its whole page."""

    name: str
    severity: Severity
    short: str
    full: str = ""
    help: str = ""


def to_sarif(
    diagnostics: Sequence[Diagnostic],
    not_checked: Sequence[NotChecked] = (),
    rules: Sequence[RuleText] = (),
    *,
    unread: Sequence[Unread] = (),
    version: str = "",
) -> Json:
    """One SARIF log with one run: findings are results, checks that could not run and unread files notifications.

    A finding whose name is not among `rules` is reported without an index. Columns count code points from 1.
    Fingerprints depend on the finding's name, the file and the text of its line, not on its number, so
    a finding stays the same when lines above it come or go.
    """
    index = {rule.name: number for number, rule in enumerate(rules)}
    driver: Json = {"name": "shuntwise", "rules": [_rule(rule) for rule in rules]}
    if version:
        driver["version"] = version
    seen: Counter[str] = Counter()
    return {
        "$schema": SCHEMA,
        "version": "2.1.0",
        "runs": [
            {
                "tool": {"driver": driver},
                "columnKind": "unicodeCodePoints",
                "invocations": [
                    {
                        "executionSuccessful": not unread,
                        "toolExecutionNotifications": [
                            *(_unread(entry) for entry in unread),
                            *(_notification(entry, index) for entry in not_checked),
                        ],
                    }
                ],
                "results": [_result(diagnostic, index, seen) for diagnostic in diagnostics],
            }
        ],
    }


def _rule(rule: RuleText) -> Json:
    full = (rule.full or rule.short)[:LONGEST_DESCRIPTION]
    return {
        "id": rule.name,
        "shortDescription": {"text": rule.short},
        "fullDescription": {"text": full},
        "help": {"text": rule.help or full},
        "defaultConfiguration": {"level": _LEVEL[rule.severity]},
    }


def _result(diagnostic: Diagnostic, index: dict[str, int], seen: Counter[str]) -> Json:
    notes = (("why", diagnostic.why), ("help", diagnostic.help))
    sentences = [diagnostic.headline, *(f"{key}: {text}" for key, text in notes if text)]
    location = _location(diagnostic.span)
    if diagnostic.label:
        location["message"] = _message(diagnostic.label)
    result: Json = {
        "ruleId": diagnostic.name,
        "level": _LEVEL[diagnostic.severity],
        "message": _message("\n".join(sentences)),
        "locations": [location],
        "partialFingerprints": {"primaryLocationLineHash": _fingerprint(diagnostic, seen)},
    }
    if diagnostic.name in index:
        result["ruleIndex"] = index[diagnostic.name]
    if diagnostic.places:
        result["relatedLocations"] = [
            {"id": number, **_location(place.span), "message": _message(place.text)}
            for number, place in enumerate(diagnostic.places, start=1)
        ]
    fixes = [_fix(fix) for fix in diagnostic.fixes if fix.edits]
    if fixes:
        result["fixes"] = fixes
    properties: Json = {}
    if diagnostic.subjects:
        properties["subjects"] = list(diagnostic.subjects)
    if diagnostic.variant is not None:
        properties["variant"] = diagnostic.variant
    if diagnostic.cause is not None:
        properties["cause"] = diagnostic.cause
    if properties:
        result["properties"] = properties
    return result


def _notification(entry: NotChecked, index: dict[str, int]) -> Json:
    rule: Json = {"id": entry.name}
    if entry.name in index:
        rule["index"] = index[entry.name]
    return {"level": "warning", "message": _message(f"not checked: {entry.lacks}"), "associatedRule": rule}


def _unread(entry: Unread) -> Json:
    text = f"{entry.file}: {entry.reason}" + (f"; {entry.help}" if entry.help else "")
    return {"level": "error", "message": _message(text)}


def _message(text: str) -> Json:
    """A plain text message, never empty, in which `[text](target)` cannot become a link (3.11.6).

    Section 3.11.5 (from memory) wants braces doubled. They are left single: a message without arguments is
    commonly shown as it stands, and a doubled brace would misquote the author.
    """
    shown = "\n".join(visible(line) for line in text.split("\n")) or "here"
    return {"text": shown.replace("](", "] (")}


def _location(span: Span) -> Json:
    return {"physicalLocation": {"artifactLocation": {"uri": _uri(span.source)}, "region": _region(span)}}


def _uri(source: Source) -> str:
    """The file name as a relative reference, or as a `file:` address if it is absolute."""
    path = PurePath(source.name).as_posix()
    quoted = quote(path.encode("utf-8", "surrogateescape"), safe="/")
    return f"file://{quoted}" if path.startswith("/") else quoted


def _region(span: Span) -> Json:
    line, column = span.source.position(span.start)
    end_line, end_column = span.source.position(span.end)
    return {
        "startLine": line,
        "startColumn": column,
        "endLine": end_line,
        "endColumn": end_column,
        "charOffset": span.start,
        "charLength": span.end - span.start,
    }


def _fix(fix: Fix) -> Json:
    """One fix; its confidence goes into the property bag, and readers decide whether to offer it."""
    by_source: dict[Source, list[Json]] = {}
    for edit in fix.edits:
        replacement: Json = {"deletedRegion": _region(edit.span)}
        if edit.text:
            replacement["insertedContent"] = {"text": edit.text}
        by_source.setdefault(edit.span.source, []).append(replacement)
    return {
        "description": _message(fix.title),
        "artifactChanges": [
            {"artifactLocation": {"uri": _uri(source)}, "replacements": replacements}
            for source, replacements in by_source.items()
        ],
        "properties": {"confidence": fix.confidence.value},
    }


def _fingerprint(diagnostic: Diagnostic, seen: Counter[str]) -> str:
    """Hash of name, file and the beginning of the line, and a count that tells equal ones apart."""
    span = diagnostic.span
    start = span.source.line_starts[span.line - 1]
    beginning = span.source.text[start : start + 200].partition("\n")[0].strip()
    parts = (diagnostic.name, span.source.name, beginning)
    digest = sha256("\0".join(parts).encode("utf-8", "surrogatepass")).hexdigest()[:16]
    seen[digest] += 1
    return f"{digest}:{seen[digest]}"
