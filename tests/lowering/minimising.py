"""A smaller text that still shows the same disagreement: statements, lines, stations, entries are dropped in turn."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import replace

from lowering.texts import Text

Spans = Iterator[tuple[int, int]]

STATION = re.compile(r" -- [^\s|()]+(?= --)")  # in the middle of a walk
BRANCH = re.compile(r"[^|()\n]+\| ?|\| ?[^|()\n]+(?=\))")
BRACES = re.compile(r" ?\{[^{}\n]*\}")
ENTRY = re.compile(r"(?<=\{ )[^{},\n]+, |, [^{},\n]+(?= \})")


def minimise(text: Text, disagrees: Callable[[Text], bool]) -> Text:
    """The smallest text that dropping alone leads to; `disagrees` says whether the disagreement is still there."""
    size = -1
    while size != (size := _size(text)):
        for less in (replace(text, settings=[]), replace(text, variant=None)):
            if less != text and disagrees(less):
                text = less
        for name in list(text.files):
            less = replace(text, files={n: c for n, c in text.files.items() if n != name})
            if name != text.main and disagrees(less):
                text = less
            elif name.endswith(".shunt"):
                text = _drop(text, name, _lines, disagrees)
                text = _drop(text, name, _pieces, disagrees)
    return text


def _size(text: Text) -> int:
    return sum(map(len, text.files.values())) + len(text.settings) + (text.variant is not None)


def _drop(text: Text, name: str, spans: Callable[[str, int], Spans], disagrees: Callable[[Text], bool]) -> Text:
    """Drop what can be dropped of one file, from its start to its end."""
    at = 0
    while True:
        content = text.files[name]
        ahead = [(start, end) for start, end in spans(content, at) if start < end]
        if not ahead:
            return text
        start, end = ahead[0]
        less = replace(text, files=text.files | {name: content[:start] + content[end:]})
        if disagrees(less):
            text = less
        else:
            later = [span for span in ahead[1:] if span[0] == start]  # the same place, but less of it
            for _, shorter in later:
                less = replace(text, files=text.files | {name: content[:start] + content[shorter:]})
                if disagrees(less):
                    text = less
                    break
            else:
                at = start + 1


def _lines(content: str, at: int) -> Spans:
    """The first line that begins at or behind `at`: all of its statement, and itself alone."""
    start = content.rfind("\n", 0, at) + 1 if at else 0
    if start < at:
        following = content.find("\n", at)
        start = following + 1 if following >= 0 else len(content)
    lines = content[start:].splitlines(keepends=True)
    for count in sorted({_statement_length(lines), min(1, len(lines))}, reverse=True):
        yield start, start + sum(map(len, lines[:count]))


def _pieces(content: str, at: int) -> Spans:
    """What lies within lines: braces, branches, stations and entries, the first ones at or behind `at`."""
    found = [match.span() for pattern in (BRACES, BRANCH, STATION, ENTRY) for match in pattern.finditer(content)]
    return iter(sorted(((start, end) for start, end in found if start >= at), key=lambda span: (span[0], -span[1])))


def _statement_length(lines: list[str]) -> int:
    """How many lines the first statement takes, with its braces and brackets closed."""
    depth = 0
    for count, line in enumerate(lines, 1):
        bare = re.sub(r'"[^"]*"|#.*', "", line)
        depth += sum(map(bare.count, "{(")) - sum(map(bare.count, "})"))
        if depth <= 0 and not bare.rstrip().endswith("--"):
            return count
    return len(lines)
