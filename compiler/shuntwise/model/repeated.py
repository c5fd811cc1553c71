"""One mistake told once: a name that stands for nothing is one finding, however often it is written.

In: what the resolver said. Out: the same with the findings on one unknown name drawn together, and told under the
declaration of which the name was taken, where that would declare it. Refuses to know what else is wrong.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic, Label
from shuntwise.model import findings
from shuntwise.model.wiring import might_be

MOST_SHOWN = 3
"""So many further places of one name are pointed at."""


def together(said: Iterable[Diagnostic]) -> tuple[Diagnostic, ...]:
    """The findings, those on one unknown name as one at its first place; where they stood otherwise as before."""
    by_name: dict[tuple[str, ...], list[Diagnostic]] = {}
    for finding in said:
        key = ("unknown-name", *finding.subjects) if _is_unknown(finding) else (str(len(by_name)),)
        by_name.setdefault(key, []).append(finding)
    drawn = [_as_one(alike) for alike in by_name.values()]
    unknown = [finding for finding in drawn if _is_unknown(finding)]
    doubled = [finding for finding in drawn if finding.name == "same-label-twice"]
    for twice in doubled:
        taken = [finding for finding in unknown if any(might_be(finding.subjects[0], twice.subjects))]
        if len(taken) == 1 and len(doubled) == 1:
            word = taken[0].subjects[0]
            drawn[drawn.index(twice)] = replace(
                twice,
                help=f"`{word}` is used and nowhere declared: if this is it, write `{word}`; {twice.help}",
                fixes=(findings.replace(twice.span, word, Confidence.NEEDS_REVIEW),),
            )
            drawn[drawn.index(taken[0])] = replace(taken[0], cause=twice.name)
    return tuple(drawn)


def _is_unknown(finding: Diagnostic) -> bool:
    return finding.name == "unknown-name" and len(finding.subjects) == 1


def _as_one(said: list[Diagnostic]) -> Diagnostic:
    first, *others = sorted(said, key=lambda finding: (finding.span.source.name, finding.span.start))
    if not others:
        return first
    more = len(others) - MOST_SHOWN
    rest = f", and {more} more place{'s' * (more > 1)}" if more > 0 else ""
    labels = [Label(other.span, "here as well") for other in others[:MOST_SHOWN]]
    labels[-1] = replace(labels[-1], text=labels[-1].text + rest)
    edits = [edit for finding in (first, *others) for fix in finding.fixes[:1] for edit in fix.edits]
    titles = {fix.title for finding in said for fix in finding.fixes[:1]}
    alike = len(titles) == 1 and all(finding.fixes for finding in said)
    fixes = (replace(first.fixes[0], edits=tuple(edits)),) if alike else first.fixes
    return replace(first, places=(*first.places, *labels), fixes=fixes)
