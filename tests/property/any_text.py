"""Texts of every kind, and what must hold for each of them.

Strategies that draw texts, and the judges of a text, for the tests beside this file.
"""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from pathlib import Path

from hypothesis import strategies as st

from grammar.outline import outline
from shuntwise.diagnostics.annotations import to_annotations
from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic, NotChecked
from shuntwise.diagnostics.fixes import apply_fixes
from shuntwise.diagnostics.json_form import to_json
from shuntwise.diagnostics.sarif import to_sarif
from shuntwise.diagnostics.text import render_text
from shuntwise.model.include import nothing_to_include
from shuntwise.pipeline import compile_all, read
from shuntwise.source import Source, Span
from shuntwise.syntax.parser import parse

ROOT = Path(__file__).parents[2]
EXAMPLES = tuple(path.read_text(encoding="utf-8") for path in sorted((ROOT / "examples").glob("*.shunt")))
EXAMPLES += tuple(
    block
    for block in re.findall(
        r"```shunt fragment\n(.*?)```", (ROOT / "grammar" / "LANGUAGE.md").read_text(encoding="utf-8"), re.DOTALL
    )
    if re.search(r"^(board|layout)\b", block, re.MULTILINE)
)

WORDS = (
    "design", "amplifier", "input", "posts", "driver", "coil", "tapped coil", "capacitor", "resistor", "lamp", "link",
    "coupling", "testpoint", "let", "network", "use", "leg", "include", "variant", "set", "omit", "fit", "expect",
    "allow", "limit", "and", "as", "at", "above", "because", "below", "from", "given", "into", "library", "of", "on",
    "to", "within", "woofer", "woofer+", "tweeter-", "return", "input+", "L1", "C1", "R1", "Z1.load", "dcr", "air core",
    "crossing", "impedance", "loose-node", "0.82", "mH", "0,5", "8 ohm", "4R7", "6u8", "5 %", "12 dB", "2.4 kHz",
    "1e999",
    "board b {", "layout on b {", "outline 9:9 mm", "thickness 1 mm", "area n from", "holes n 3 of 1 mm from", "hole",
    "tags", "track", "cut", "drill h1", "jumper", "bus", "place L1 at", "off board", "lead out", "axis", "leads into",
    "tie", "1:2 mm", "3:4", "6,5:2 mm", "1 mm", "90 deg", "solder side", "upright",
    '"text"', '"', "--", "->", "-", "+", "{", "}", "(", ")", "|", ",", "=", ";", ":", "*", "/", "^", ".", "%", "#",
    "\n",
    "\r\n", "\r", "\t", " ", "\u00a0", "\ufeff", "\u2028", "\u200b", "\x00", "\x1b[31m", "µ", "Ω", "é", "e\u0301", "“",
    "→",
    "–", "±", "×", "｛", "５", "\U0001f50a",
)  # fmt: skip
"""What texts are pieced together from: words, signs and values of the language, and what people type instead."""

pieces = st.sampled_from(WORDS)
characters = st.text(max_size=80)
sentences = st.lists(pieces | st.text(max_size=3), max_size=60).map(" ".join)
glued = st.lists(pieces, max_size=60).map("".join)


@st.composite
def mutated_examples(draw: st.DrawFn) -> str:
    """An example in which some chunks were deleted, doubled, exchanged, or had something put between."""
    text = draw(st.sampled_from(EXAMPLES))
    for _ in range(draw(st.integers(1, 4))):
        at = draw(st.integers(0, len(text)))
        size = draw(st.sampled_from((0, 1, 1, 2, 5, 20, 100)))
        chunk = text[at : at + size]
        match draw(st.sampled_from(("delete", "double", "move", "insert", "replace"))):
            case "delete":
                text = text[:at] + text[at + size :]
            case "double":
                text = text[:at] + chunk + chunk + text[at + size :]
            case "move":
                rest = text[:at] + text[at + size :]
                to = draw(st.integers(0, len(rest)))
                text = rest[:to] + chunk + rest[to:]
            case "insert":
                text = text[:at] + draw(pieces) + text[at:]
            case _:
                text = text[:at] + draw(pieces) + text[at + size :]
    return text


def judge_form(text: str) -> None:
    """A tree and findings: nothing is left out without a word, and every place is within the text."""
    source = Source("any.shunt", text)
    tree, findings = parse(source)
    outline(tree.entries)
    for entry in tree.entries:
        check_span(entry.span, (source,))
    assert not tree.lost or findings
    check_findings(findings, (), (source,))


def judge_all(text: str) -> None:
    """The same through all passes and checks."""
    collected, said = read(Source("any.shunt", text), nothing_to_include)
    for result in compile_all(collected, said):
        check_findings(result.findings, result.not_checked, collected.sources)


def check_span(span: Span, sources: Sequence[Source]) -> None:
    assert any(span.source is source for source in sources)
    assert 0 <= span.start <= span.end <= len(span.source.text)


def check_findings(
    findings: Sequence[Diagnostic], not_checked: Sequence[NotChecked], sources: Sequence[Source]
) -> None:
    """Every place lies in a text, and every form of the findings can be written."""
    for finding in findings:
        edits = [edit for fix in finding.fixes for edit in fix.edits]
        for span in (finding.span, *(place.span for place in finding.places), *(edit.span for edit in edits)):
            check_span(span, sources)
        assert finding.headline and "\n" not in finding.headline
    shown = render_text(findings, not_checked, width=60)
    assert all(char.isprintable() or char == "\n" for char in shown)
    json.dumps(to_json(findings, not_checked))
    json.dumps(to_sarif(findings, not_checked))
    assert to_annotations(findings, not_checked).count("\n") == len(findings) + len(not_checked)
    apply_fixes({source: source.text for source in sources}, findings, Confidence.NEEDS_REVIEW)
