"""Fixes carried out: diagnostics and texts in, changed texts out.

In: the texts that may be changed and the findings about them. Out: new texts, and which fixes were
applied and which were not, with the reason. It refuses to know where texts are kept.
"""

from __future__ import annotations

from bisect import bisect_left, insort
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic, Edit, Fix
from shuntwise.source import Source

_TRUST = {Confidence.SHOW_ONLY: 0, Confidence.NEEDS_REVIEW: 1, Confidence.SAFE: 2}


@dataclass(frozen=True)
class Applied:
    """A fix that was carried out."""

    diagnostic: Diagnostic
    fix: Fix


@dataclass(frozen=True)
class Skipped:
    """A fix that was not carried out; `reason` completes the sentence "not applied: ..."."""

    diagnostic: Diagnostic
    fix: Fix
    reason: str


def apply_fixes(
    text_by_source: Mapping[Source, str],
    diagnostics: Iterable[Diagnostic],
    minimum: Confidence = Confidence.SAFE,
) -> tuple[dict[Source, str], tuple[Applied, ...], tuple[Skipped, ...]]:
    """The texts after every fix of at least the confidence `minimum` that does not clash with an earlier one.

    Only sources in `text_by_source` are changed, so leave out what is read-only; a source whose text there is
    no longer the text that the findings are about is left alone. A fix is applied with all its edits or not
    at all. The first finding given wins. Several fixes of one finding are alternatives: the first that can be
    applied is. A show-only fix is never applied, whatever the minimum.
    """
    taken: dict[Source, list[Edit]] = {source: [] for source in text_by_source}  # each sorted by place
    applied: list[Applied] = []
    skipped: list[Skipped] = []
    for diagnostic in diagnostics:
        done = False
        for fix in diagnostic.fixes:
            reason = (
                "another fix of this finding was applied" if done else _obstacle(fix, minimum, text_by_source, taken)
            )
            if reason:
                skipped.append(Skipped(diagnostic, fix, reason))
                continue
            for edit in fix.edits:
                insort(taken[edit.span.source], edit, key=_start)
            applied.append(Applied(diagnostic, fix))
            done = True
    texts = {
        source: replaced(text, [(e.span.start, e.span.end, e.text) for e in taken[source]])
        for source, text in text_by_source.items()
    }
    return texts, tuple(applied), tuple(skipped)


def in_order(edits: Sequence[Edit]) -> tuple[Edit, ...] | None:
    """Edits sorted by place, sources in order of first mention; None if two clash or one is out of bounds.

    Two edits clash if their ranges overlap or if they start at one place: then their order would matter.
    """
    rank: dict[Source, int] = {}
    for edit in edits:
        rank.setdefault(edit.span.source, len(rank))
    ordered = sorted(edits, key=lambda edit: (rank[edit.span.source], edit.span.start, edit.span.end))
    for edit in ordered:
        if not 0 <= edit.span.start <= edit.span.end <= len(edit.span.source.text):
            return None
    for first, second in pairwise(ordered):
        if first.span.source is second.span.source and _clash(first, second):
            return None
    return tuple(ordered)


def replaced(text: str, changes: Sequence[tuple[int, int, str]]) -> str:
    """The text with each range (start, end, new text) replaced; ranges are sorted and do not overlap."""
    pieces: list[str] = []
    at = 0
    for start, end, new in changes:
        pieces += (text[at:start], new)
        at = end
    return "".join([*pieces, text[at:]])


def _start(edit: Edit) -> int:
    return edit.span.start


def _clash(first: Edit, second: Edit) -> bool:
    """True if two edits of one source, the first not after the second, cannot both be made."""
    return second.span.start < first.span.end or second.span.start == first.span.start


def _clash_with_neighbours(edit: Edit, others: Sequence[Edit]) -> bool:
    """True if the edit clashes with any of `others`, which are sorted and do not clash among themselves."""
    at = bisect_left(others, edit.span.start, key=_start)
    before, after = others[max(0, at - 1) : at], others[at : at + 1]
    return any(_clash(other, edit) for other in before) or any(_clash(edit, other) for other in after)


def _obstacle(
    fix: Fix, minimum: Confidence, text_by_source: Mapping[Source, str], taken: Mapping[Source, list[Edit]]
) -> str:
    """Why a fix cannot be applied, or an empty string."""
    if fix.confidence is Confidence.SHOW_ONLY:
        return "it only illustrates the remedy"
    if _TRUST[fix.confidence] < _TRUST[minimum]:
        return "it needs a review first"
    if not fix.edits or in_order(fix.edits) is None:
        return "its edits do not fit together"
    for source in dict.fromkeys(edit.span.source for edit in fix.edits):
        if source not in text_by_source:
            return f"`{source.name}` may not be changed"
        if text_by_source[source] != source.text:
            return f"`{source.name}` has changed since it was checked"
    if any(_clash_with_neighbours(edit, taken[edit.span.source]) for edit in fix.edits):
        return "an earlier fix changes the same text"
    return ""
