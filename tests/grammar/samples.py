"""The samples in grammar/malformed.md: read from the page, and the page written anew.

A sample is a block marked `shunt wrong` and what follows it up to the next heading or sample. In a sample,
`<U+00A0>` stands for that character, and `<end>` at the end says that the last line has no line end.
"""

from __future__ import annotations

import os
import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from grammar.outline import outline
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.diagnostics.text import render_text
from shuntwise.model.include import include, nothing_to_include
from shuntwise.model.resolve import Catalogue, resolve
from shuntwise.source import Source
from shuntwise.syntax.parser import parse
from shuntwise.syntax.tree import SyntaxTree

PAGE = Path(__file__).parents[2] / "grammar" / "malformed.md"
RECORD = os.environ.get("SHUNTWISE_RECORD") == "1"

_SAMPLE = re.compile(
    r"```shunt wrong\n(?P<text>.*?)```\n(?P<said>.*?)(?=^#|^```shunt wrong|\Z)", re.DOTALL | re.MULTILINE
)

_CATALOGUE = Catalogue(waivable=("loose-node",))


@dataclass(frozen=True)
class Sample:
    title: str
    written: str
    said: str

    @property
    def text(self) -> str:
        """The text that the sample stands for."""
        whole = self.written.removesuffix("<end>\n")
        return re.sub(r"<U\+([0-9A-F]{4,6})>", lambda match: chr(int(match[1], 16)), whole)

    @property
    def answer(self) -> str:
        """What the compiler says and what it reads all the same, as it stands on the page."""
        tree, findings = judge(self.text)
        said = "\n```text\n" + render_text(findings, width=100) + "```\n"
        kept = outline(tree.entries)
        if kept:
            said += "\nRead all the same:\n\n```text\n" + "\n".join(kept) + "\n```\n"
        return said + "\n"


def judge(text: str) -> tuple[SyntaxTree, tuple[Diagnostic, ...]]:
    """The findings on form and values. The samples are fragments, so nothing is said of names that they lack."""
    tree, form = parse(Source("sample.shunt", text))
    collected, found = include(tree, nothing_to_include)
    _, resolved = resolve(collected, catalogue=_CATALOGUE)
    said = (f for f in (*form, *found, *resolved) if f.name != "unknown-name")
    findings = sorted(said, key=lambda f: (f.span.start, f.span.end))
    return tree, tuple(findings)


def samples() -> Iterator[Sample]:
    page = PAGE.read_text(encoding="utf-8")
    for match in _SAMPLE.finditer(page):
        title = re.findall(r"^#+ (.*)$", page[: match.start()], re.MULTILINE)[-1]
        yield Sample(title, match["text"], match["said"])


def recorded() -> str:
    """The page with every answer as it is today."""

    def anew(match: re.Match[str]) -> str:
        sample = Sample("", match["text"], match["said"])
        return f"```shunt wrong\n{match['text']}```\n{sample.answer}"

    return _SAMPLE.sub(anew, PAGE.read_text(encoding="utf-8")).rstrip("\n") + "\n"
