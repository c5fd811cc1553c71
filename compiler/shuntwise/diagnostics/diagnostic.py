"""What a finding is: one mistake, at one place, with its reason and remedy.

Knows no rule and no pass. Renderers beside this file turn a `Diagnostic` into text or JSON; nothing
else may print one.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from shuntwise.source import Span


class Severity(StrEnum):
    """`error`: the board would be wrong or dangerous. `warning`: it probably is. `advice`: look again."""

    ERROR = "error"
    WARNING = "warning"
    ADVICE = "advice"


class Confidence(StrEnum):
    """How far a fix may be trusted: applied by itself, shown for a yes, or only an illustration."""

    SAFE = "safe"
    NEEDS_REVIEW = "needs-review"
    SHOW_ONLY = "show-only"


@dataclass(frozen=True)
class Edit:
    """Replace the text at `span` by `text`."""

    span: Span
    text: str


@dataclass(frozen=True)
class Fix:
    """Edits that remedy a finding; `title` completes the sentence "to fix it, ..."."""

    title: str
    edits: tuple[Edit, ...]
    confidence: Confidence = Confidence.NEEDS_REVIEW


@dataclass(frozen=True)
class Label:
    """A second place that helps, with a few words on what is there."""

    span: Span
    text: str


@dataclass(frozen=True)
class Diagnostic:
    """One finding.

    `name` is its identity, kebab-case, and names the bad thing. `headline` says what, in one line.
    `label` says what is at `span`. `why` gives the reason to care, `help` the change to make.
    `subjects` are the parts, drivers and nodes that it is about: a waiver names one of them.
    `variant` is set when the finding arises only in that variant of the design. `cause` is the name of the finding
    that this one follows from, and under which it is told. `missing` is what its first subject does not state, each in
    a word or two: where much is missing it is told in one list.
    """

    name: str
    severity: Severity
    headline: str
    span: Span
    label: str = ""
    why: str = ""
    help: str = ""
    places: tuple[Label, ...] = ()
    fixes: tuple[Fix, ...] = ()
    subjects: tuple[str, ...] = ()
    variant: str | None = None
    cause: str | None = None
    missing: tuple[str, ...] = ()


@dataclass(frozen=True)
class Unread:
    """A file that could not be looked at: why not, and what to do."""

    file: str
    reason: str
    help: str = ""


@dataclass(frozen=True)
class NotChecked:
    """A check that could not run, and what it lacks. It is reported, never counted as passed."""

    name: str
    lacks: str
    subjects: tuple[str, ...] = ()
