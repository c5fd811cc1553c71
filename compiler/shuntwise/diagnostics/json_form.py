"""Findings as plain values that `json.dumps` takes, for programs that read them.

In: diagnostics and the checks that could not run. Out: a dict whose shape is given by the classes below, its
keys always in the order given there. It refuses to know how the values are written out; write them with
`json.dumps`'s default of ASCII only, since a file name may hold what UTF-8 cannot.

Lines and columns count from 1, columns in code points (a tab is one); offsets count code points from 0. Ends
are exclusive. A file's offsets count from after a byte order mark, if there is one.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TypedDict

from shuntwise.diagnostics.diagnostic import Diagnostic, Edit, Fix, Label, NotChecked, Severity, Unread
from shuntwise.source import Span

FORM = "shuntwise-findings/1"
"""Name of this shape. The number grows when a key is dropped or changes meaning, not when one is added."""


class PlaceForm(TypedDict):
    """A range of one file; `file` as the user knows it."""

    file: str
    line: int
    column: int
    end_line: int
    end_column: int
    offset: int
    end_offset: int


class LabelForm(TypedDict):
    """A second place and what is there."""

    place: PlaceForm
    label: str


class EditForm(TypedDict):
    """Replace what is at `place` by `text`."""

    place: PlaceForm
    text: str


class FixForm(TypedDict):
    """`confidence` is `safe`, `needs-review` or `show-only`. All edits belong together."""

    title: str
    confidence: str
    edits: list[EditForm]


class DiagnosticForm(TypedDict):
    """One finding; a text that was not given is empty, `variant` is null unless it holds in one only.

    `cause` is the name of the finding that this one follows from, or null.
    """

    name: str
    severity: str
    headline: str
    variant: str | None
    cause: str | None
    subjects: list[str]
    place: PlaceForm
    label: str
    places: list[LabelForm]
    why: str
    help: str
    fixes: list[FixForm]


class NotCheckedForm(TypedDict):
    """A check that could not run, and what it lacks."""

    name: str
    lacks: str
    subjects: list[str]


class UnreadForm(TypedDict):
    """A file that could not be looked at."""

    file: str
    reason: str
    help: str


class SummaryForm(TypedDict):
    """How many of each there are."""

    error: int
    warning: int
    advice: int
    not_checked: int


class FindingsForm(TypedDict):
    """The whole answer."""

    form: str
    summary: SummaryForm
    diagnostics: list[DiagnosticForm]
    not_checked: list[NotCheckedForm]
    unread: list[UnreadForm]


def to_json(
    diagnostics: Sequence[Diagnostic], not_checked: Sequence[NotChecked] = (), unread: Sequence[Unread] = ()
) -> FindingsForm:
    """All findings in the order given, and the files that could not be looked at."""
    severities = [diagnostic.severity for diagnostic in diagnostics]
    return {
        "form": FORM,
        "summary": {
            "error": severities.count(Severity.ERROR),
            "warning": severities.count(Severity.WARNING),
            "advice": severities.count(Severity.ADVICE),
            "not_checked": len(not_checked),
        },
        "diagnostics": [_diagnostic(diagnostic) for diagnostic in diagnostics],
        "not_checked": [
            {"name": entry.name, "lacks": entry.lacks, "subjects": list(entry.subjects)} for entry in not_checked
        ],
        "unread": [{"file": entry.file, "reason": entry.reason, "help": entry.help} for entry in unread],
    }


def _diagnostic(diagnostic: Diagnostic) -> DiagnosticForm:
    return {
        "name": diagnostic.name,
        "severity": diagnostic.severity.value,
        "headline": diagnostic.headline,
        "variant": diagnostic.variant,
        "cause": diagnostic.cause,
        "subjects": list(diagnostic.subjects),
        "place": _place(diagnostic.span),
        "label": diagnostic.label,
        "places": [_label(label) for label in diagnostic.places],
        "why": diagnostic.why,
        "help": diagnostic.help,
        "fixes": [_fix(fix) for fix in diagnostic.fixes],
    }


def _label(label: Label) -> LabelForm:
    return {"place": _place(label.span), "label": label.text}


def _fix(fix: Fix) -> FixForm:
    return {
        "title": fix.title,
        "confidence": fix.confidence.value,
        "edits": [_edit(edit) for edit in fix.edits],
    }


def _edit(edit: Edit) -> EditForm:
    return {"place": _place(edit.span), "text": edit.text}


def _place(span: Span) -> PlaceForm:
    line, column = span.source.position(span.start)
    end_line, end_column = span.source.position(span.end)
    return {
        "file": span.source.name,
        "line": line,
        "column": column,
        "end_line": end_line,
        "end_column": end_column,
        "offset": span.start,
        "end_offset": span.end,
    }
