"""Safe fixes do no harm: no more errors than before, nothing left for a second run, sound statements untouched."""

from __future__ import annotations

import os
import re

from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from grammar.outline import outline
from property.any_text import EXAMPLES, glued, sentences
from shuntwise.diagnostics.diagnostic import Diagnostic, Severity
from shuntwise.diagnostics.fixes import apply_fixes
from shuntwise.model.include import nothing_to_include
from shuntwise.pipeline import compile_all, read
from shuntwise.source import Source
from shuntwise.syntax import tree as t
from shuntwise.syntax.parser import parse

TIMES = 100 if os.environ.get("SHUNTWISE_LONG") else 1

SLIPS = (
    "−", "–", "—", "->", "-->", "→", "==", ":", ";", "=", "±", "<", "≥", ",", "&", "//", "/*", "“", "”", "'", "´", "×",
    "\u2028", "\u2029", "\u00a0", "\u200b", "\u00ad", "\ufeff", "\r", "\t", "５", "．", "µ", "Ω", "e\u0301", "gnd", "k",
    "uf", "mh", "ohms", "Ohm", "volts", "0,5", "electrolytic", "film", "polar", "(", ")", "{", "}", "|", ".", "+", "-",
    "%", "\n", " ", "tolerance", "voltage", "power", "plus", "minus", "10uF", "0.82 mH", "5R6", "4u7 uF", "uF6.8",
    "in+", "input", "mF", "MFD", "1.25 k", "70 %",
)  # fmt: skip
"""What hands and clipboards put into a sound text."""


@st.composite
def slipped_examples(draw: st.DrawFn) -> str:
    """An example with a few slips, at places where a word or sign begins or ends, or in the place of one."""
    text = draw(st.sampled_from(EXAMPLES))
    for _ in range(draw(st.integers(1, 3))):
        words = [match.span() for match in re.finditer(r"\w+|[^\w\s]+|\n", text)]
        start, end = draw(st.sampled_from(words))
        slip = draw(st.sampled_from(SLIPS))
        at, upto = draw(st.sampled_from(((start, start), (end, end), (start, end))))
        text = text[:at] + slip + text[upto:]
    return text


def examples(count: int) -> settings:
    return settings(
        max_examples=count * TIMES, deadline=None, suppress_health_check=[HealthCheck.too_slow], derandomize=TIMES == 1
    )


def errors(text: str) -> list[Diagnostic]:
    collected, said = read(Source("box.shunt", text), nothing_to_include)
    found = [finding for compilation in compile_all(collected, said, causes=False) for finding in compilation.findings]
    return [finding for finding in found if finding.severity is Severity.ERROR]


def mended(text: str) -> str:
    """The text with safe fixes, over and over, as `check --fix` does it."""
    for _ in range(50):
        source = Source("box.shunt", text)
        collected, said = read(source, nothing_to_include)
        findings = [
            finding for compilation in compile_all(collected, said, causes=False) for finding in compilation.findings
        ]
        texts, applied, _ = apply_fixes({source: text}, findings)
        if not applied:
            return text
        assert texts[source] != text, applied
        text = texts[source]
    raise AssertionError("fixes without an end")


def sound(text: str) -> list[str]:
    """The statements of a text in which no fix stands, as they were understood."""
    source = Source("box.shunt", text)
    tree, _ = parse(source)
    collected, said = read(source, nothing_to_include)
    findings = [
        finding for compilation in compile_all(collected, said, causes=False) for finding in compilation.findings
    ]
    touched = [(e.span.start, e.span.end) for f in findings for fix in f.fixes for e in fix.edits]

    def whole(entry: t.Entry) -> bool:
        """No fix in it, nor right behind it, where a list in braces that it lost may begin."""
        upto = entry.span.end + len(text[entry.span.end :]) - len(text[entry.span.end :].lstrip())
        return all(end < entry.span.start or start > upto for start, end in touched)

    return outline(tuple(entry for entry in tree.entries if whole(entry)))


def judge(text: str) -> None:
    fixed = mended(text)
    before, after = errors(text), errors(fixed)
    assert len(after) <= len(before), [f"{f.name}: {f.headline}" for f in after]
    kept = outline(parse(Source("box.shunt", fixed))[0].entries)
    for statement in sound(text):
        assert statement in kept
        kept.remove(statement)


@examples(20)
@given(slipped_examples())
@example(EXAMPLES[0].replace("woofer-", "woofer−", 1))
@example(EXAMPLES[0].replace("coil L1", "coil\u2028L1", 1))
@example(EXAMPLES[0].replace("C1 -- tweeter+", "C1 . tweeter+", 1))
@example(EXAMPLES[0].replace("driver woofer", "//driver woofer", 1))
@example(EXAMPLES[0].replace("0.47 mH {", "0.47 mH \u2028", 1))
@example(EXAMPLES[0].replace("expect crossing", "expect– crossing", 1))
@example(EXAMPLES[9].replace("low-\n", "low//-\n", 1))
@example(EXAMPLES[9].replace("link K1", "link –", 1))
@example(EXAMPLES[0].replace("driver tweeter 8 ohm {", "driver tweeter 8 ohm }", 1))
@example(EXAMPLES[1].replace("le 0.4 mH", "le 0\u200b4 mH", 1))
def test_fixes_of_a_slipped_example_do_no_harm(text: str) -> None:
    judge(text)


@examples(80)
@given(sentences | glued)
def test_fixes_of_any_text_do_no_harm(text: str) -> None:
    judge(text)
