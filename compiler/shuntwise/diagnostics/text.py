"""Findings as text for a person at a terminal.

In: diagnostics and the checks that could not run. Out: one string, safe to print whatever the design file
holds. It refuses to know whether there is a terminal: the caller says how wide and whether in colour.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence

from shuntwise.diagnostics.diagnostic import Diagnostic, Fix, NotChecked, Severity
from shuntwise.diagnostics.excerpt import Frame, draw_change, draw_span, last_line
from shuntwise.diagnostics.terminal import Paint, cell_width, painter, visible, wrap
from shuntwise.source import Span


def render_text(
    diagnostics: Sequence[Diagnostic],
    not_checked: Sequence[NotChecked] = (),
    *,
    width: int = 100,
    colour: bool = False,
    unrun: bool = True,
) -> str:
    """All findings in the order given, then the checks that could not run, then a summary line.

    Lines are at most `width` cells (below 40 counts as 40); only the `file:line:column` lines are never
    broken, so that an editor can follow them. What is not stated is one list where it is much. The names of checks that
    could not run, and what they are about, are given only if `unrun` is set. The text ends with a line end.
    """
    width = max(width, 40)
    paint = painter(colour)
    under = _under_causes(diagnostics)
    folded = {id(follows) for those in under.values() for follows in those}
    lists = _lists(diagnostic for diagnostic in diagnostics if id(diagnostic) not in folded)
    folded |= {id(diagnostic) for listed in lists for diagnostic in listed}
    blocks = [
        _diagnostic(diagnostic, under.get(id(diagnostic), ()), width, paint)
        for diagnostic in diagnostics
        if id(diagnostic) not in folded
    ]
    blocks += [_missing(listed, width, paint) for listed in lists]
    lacking = _by_lack(not_checked)
    if unrun or len(lacking) < 2:
        blocks += [_not_checked(lacks, entries, unrun, width, paint) for lacks, entries in lacking.items()]
    else:
        blocks.append(_not_checked_in_short(lacking, width, paint))
    blocks.append([paint("strong", line) for line in wrap(summary(diagnostics, not_checked), width)])
    return "\n\n".join("\n".join(block) for block in blocks) + "\n"


def summary(diagnostics: Iterable[Diagnostic], not_checked: Sequence[NotChecked] = ()) -> str:
    """One line that counts, such as `2 errors, 1 warning; 1 check could not run`."""
    count = Counter(diagnostic.severity for diagnostic in diagnostics)
    nouns = {
        Severity.ERROR: ("error", "errors"),
        Severity.WARNING: ("warning", "warnings"),
        Severity.ADVICE: ("piece of advice", "pieces of advice"),
    }
    counted = [f"{count[s]} {nouns[s][count[s] != 1]}" for s in nouns if count[s]]
    text = ", ".join(counted) or "no findings"
    if not_checked:
        text += f"; {len(not_checked)} check{'s' * (len(not_checked) != 1)} could not run"
    return text


def _under_causes(diagnostics: Sequence[Diagnostic]) -> dict[int, list[Diagnostic]]:
    """By cause, what follows from it: the cause of the same variant, else that of the design itself."""
    causes = {(cause.name, cause.variant): cause for cause in diagnostics if cause.cause is None}
    under: dict[int, list[Diagnostic]] = {}
    for finding in diagnostics:
        if finding.cause is not None:
            cause = causes.get((finding.cause, finding.variant)) or causes.get((finding.cause, None))
            if cause is not None:
                under.setdefault(id(cause), []).append(finding)
    return under


MOST_MISSING = 2
"""So many findings on what is not stated in one file are told one by one; more are told in a list."""


def _lists(diagnostics: Iterable[Diagnostic]) -> list[list[Diagnostic]]:
    """The findings on what is not stated, by file and variant, where they are many."""
    by_file: dict[tuple[str, str | None], list[Diagnostic]] = {}
    for diagnostic in diagnostics:
        if diagnostic.missing:
            by_file.setdefault((diagnostic.span.source.name, diagnostic.variant), []).append(diagnostic)
    return [listed for listed in by_file.values() if len(listed) > MOST_MISSING]


def _missing(listed: Sequence[Diagnostic], width: int, paint: Paint) -> list[str]:
    """What is not stated, each with all that do not state it."""
    frame = Frame(1, width, paint)
    first = listed[0]
    severity = next(s for s in Severity if any(diagnostic.severity is s for diagnostic in listed)).value
    names = ", ".join(dict.fromkeys(diagnostic.name for diagnostic in listed))
    lines = _headed(severity, "what is not stated is not judged", names, width, paint)
    lines.append(_place(first.span, paint))
    owners: dict[str, list[str]] = {}
    for diagnostic in listed:
        for what in diagnostic.missing:
            owners.setdefault(what, []).append(f"`{diagnostic.subjects[0]}`")
    for what, those in owners.items():
        lines += _note(frame, what, ", ".join(dict.fromkeys(those)))
    lines += _note(
        frame, "help", "state it behind the name, in braces; `shuntwise explain NAME` shows how for each of these"
    )
    if first.variant is not None:
        lines += _note(frame, "in variant", f"`{first.variant}`")
    return lines


def _diagnostic(diagnostic: Diagnostic, follows: Iterable[Diagnostic], width: int, paint: Paint) -> list[str]:
    spans = [diagnostic.span, *(place.span for place in diagnostic.places)]
    spans += [edit.span for fix in diagnostic.fixes for edit in fix.edits]
    frame = Frame(len(str(max(last_line(span) for span in spans))), width, paint)
    severity = diagnostic.severity.value
    lines = _headed(severity, diagnostic.headline, diagnostic.name, width, paint)
    lines.append(_place(diagnostic.span, paint))
    lines += draw_span(frame, diagnostic.span, diagnostic.label, style=severity)
    for place in diagnostic.places:
        lines.append(_place(place.span, paint))
        lines += draw_span(frame, place.span, place.text, mark="-", style="second")
    for key, text in (("why", diagnostic.why), ("help", diagnostic.help)):
        if text:
            lines += _note(frame, key, text)
    also = "; ".join(dict.fromkeys(f"{one.headline} [{one.name}]" for one in follows))
    if also:
        lines += _note(frame, "also", also)
    if diagnostic.variant is not None:
        lines += _note(frame, "in variant", f"`{diagnostic.variant}`")
    for fix in diagnostic.fixes:
        lines += _fix(frame, fix)
    return lines


def _by_lack(not_checked: Sequence[NotChecked]) -> dict[str, list[NotChecked]]:
    """What is lacking, once, with all the checks that lack it."""
    lacking: dict[str, list[NotChecked]] = {}
    for entry in not_checked:
        lacking.setdefault(entry.lacks, []).append(entry)
    return lacking


def _not_checked(lacks: str, entries: Sequence[NotChecked], unrun: bool, width: int, paint: Paint) -> list[str]:
    frame = Frame(1, width, paint)
    names = list(dict.fromkeys(entry.name for entry in entries))
    if len(names) == 1:
        lines = _headed("not checked", lacks, names[0], width, paint)
    else:
        lines = _headed("not checked", lacks, f"{len(names)} checks", width, paint)
        if not unrun:
            return lines
        lines += _note(frame, "checks", ", ".join(names))
    subjects = dict.fromkeys(subject for entry in entries for subject in entry.subjects)
    if subjects:
        lines += _note(frame, "about", ", ".join(f"`{subject}`" for subject in subjects))
    return lines


def _not_checked_in_short(lacking: Mapping[str, Sequence[NotChecked]], width: int, paint: Paint) -> list[str]:
    """All that is lacking in one sentence, with the numbers of checks that lack it."""
    counted = [f"{lacks} ({len({entry.name for entry in entries})})" for lacks, entries in lacking.items()]
    checks = len({entry.name for entries in lacking.values() for entry in entries})
    return _headed("not checked", "for want of " + "; ".join(counted), f"{checks} checks", width, paint)


def _headed(style: str, headline: str, name: str, width: int, paint: Paint) -> list[str]:
    """`style: headline  [name]`, continued under the headline when it is long."""
    lead = f"{style}: "
    texts = wrap(headline, width - len(lead))
    lines = [paint(style, lead[:-1]) + " " + paint("strong", texts[0])]
    lines += [" " * len(lead) + paint("strong", text) for text in texts[1:]]
    tag = f"[{visible(name)}]"
    if len(lead) + cell_width(texts[-1]) + 2 + cell_width(tag) <= width:
        lines[-1] += "  " + paint("name", tag)
    else:
        lines.append(" " * len(lead) + paint("name", tag))
    return lines


def _place(span: Span, paint: Paint) -> str:
    return "  " + paint("place", f"{visible(span.source.name)}:{span.line}:{span.column}")


def _note(frame: Frame, key: str, text: str) -> list[str]:
    """`= key: text` under the excerpt's bar, with a hanging indent."""
    lead = f"{' ' * frame.gutter} = {key}: "
    texts = wrap(text, frame.width - len(lead))
    lines = [frame.paint("gutter", lead[:-1]) + " " + texts[0]]
    return lines + [" " * len(lead) + line for line in texts[1:]]


def _fix(frame: Frame, fix: Fix) -> list[str]:
    lines = _note(frame, "fix", f"{fix.title} ({fix.confidence.value.replace('-', ' ')})")
    return lines + draw_change(frame, fix.edits)
