"""The samples in grammar/malformed.md: read from the page, and the page written anew.

A sample is a block marked `shunt wrong`, or `box wrong` for a box's own file, and what follows it up to the next
heading or sample. Boxes are of the design `WEDGE`. In a sample,
`<U+00A0>` stands for that character, and `<end>` at the end says that the last line has no line end.
"""

from __future__ import annotations

import os
import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from grammar.outline import box_outline, outline
from rules.compiling import findings_of_box
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.diagnostics.text import render_text
from shuntwise.model.include import include, nothing_to_include
from shuntwise.model.resolve import Catalogue, resolve
from shuntwise.source import Source
from shuntwise.syntax.box_parser import parse_box
from shuntwise.syntax.parser import parse
from shuntwise.syntax.tree import SyntaxTree

PAGE = Path(__file__).parents[2] / "grammar" / "malformed.md"
RECORD = os.environ.get("SHUNTWISE_RECORD") == "1"

_SAMPLE = re.compile(
    r"```(?P<kind>shunt|box) wrong\n(?P<text>.*?)```\n(?P<said>.*?)(?=^#|^```(?:shunt|box) wrong|\Z)",
    re.DOTALL | re.MULTILINE,
)

WEDGE = """driver woofer 8 ohm
driver tweeter 8 ohm
coil L1 0.82 mH
capacitor C1 6.8 uF
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
leg tweeter {
  input+ -- C1 -- tweeter+
  tweeter- -- return
}
variant soft {
  set L1 = 1 mH
}
"""

_CATALOGUE = Catalogue(waivable=("loose-node",))


@dataclass(frozen=True)
class Read:
    """A text as it was understood: its statements spelled anew, whether any was lost, what is said of its form, and of
    all.
    """

    outline: list[str]
    lost: bool
    form: tuple[Diagnostic, ...]
    findings: tuple[Diagnostic, ...]


@dataclass(frozen=True)
class Sample:
    title: str
    kind: str
    written: str
    said: str

    @property
    def text(self) -> str:
        """The text that the sample stands for."""
        whole = self.written.removesuffix("<end>\n")
        return re.sub(r"<U\+([0-9A-F]{4,6})>", lambda match: chr(int(match[1], 16)), whole)

    def read(self, text: str) -> Read:
        """A text of the kind of this one."""
        if self.kind == "box":
            source = Source("sample.box", text)
            tree, form = parse_box(source)
            return Read(box_outline(tree.lines), bool(tree.lost), form, findings_of_box(source, (_WEDGE,)))
        tree, found = judge(text)
        return Read(outline(tree.entries), bool(tree.lost), parse(Source("sample.shunt", text))[1], found)

    @property
    def answer(self) -> str:
        """What the compiler says and what it reads all the same, as it stands on the page."""
        read = self.read(self.text)
        said = "\n```text\n" + render_text(read.findings, width=100) + "```\n"
        if read.outline:
            said += "\nRead all the same:\n\n```text\n" + "\n".join(read.outline) + "\n```\n"
        return said + "\n"


_WEDGE = Source("wedge.shunt", WEDGE)


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
        yield Sample(title, match["kind"], match["text"], match["said"])


def recorded() -> str:
    """The page with every answer as it is today."""

    def anew(match: re.Match[str]) -> str:
        sample = Sample("", match["kind"], match["text"], match["said"])
        return f"```{sample.kind} wrong\n{sample.written}```\n{sample.answer}"

    return _SAMPLE.sub(anew, PAGE.read_text(encoding="utf-8")).rstrip("\n") + "\n"
