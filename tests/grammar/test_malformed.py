"""Malformed samples: the page says what the compiler says, and its safe fixes mend what they say they mend."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

import pytest

from grammar.samples import PAGE, RECORD, Sample, recorded, samples
from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic
from shuntwise.diagnostics.fixes import Applied, apply_fixes


def test_page_is_what_the_compiler_says() -> None:
    """Every answer on the page is the compiler's answer of today."""
    if RECORD:
        PAGE.write_text(recorded(), encoding="utf-8")
    assert PAGE.read_text(encoding="utf-8") == recorded()


@pytest.mark.parametrize("sample", tuple(samples()), ids=lambda sample: sample.title)
def test_sample_is_found_wrong(sample: Sample) -> None:
    """No sample passes without a finding, and no finding is said twice."""
    findings = sample.read(sample.text).findings
    assert findings
    assert len({(f.span.start, f.span.end, f.headline) for f in findings}) == len(findings)


@pytest.mark.parametrize("sample", tuple(samples()), ids=lambda sample: sample.title)
def test_safe_fix_removes_its_finding(sample: Sample) -> None:
    """What a safe fix was for is gone after it, and it brings nothing new."""
    findings = sample.read(sample.text).findings
    before = Counter(finding.headline for finding in findings)
    fixed, applied = _fixed(sample.text, findings, Confidence.SAFE)
    after = Counter(finding.headline for finding in sample.read(fixed).findings)
    assert after == before - Counter(done.diagnostic.headline for done in applied)


def mendable(sample: Sample) -> bool:
    """Has every slip of form a fix, and was nothing lost?"""
    read = sample.read(sample.text)
    return not read.lost and all(finding.fixes for finding in read.form)


@pytest.mark.parametrize("sample", tuple(filter(mendable, samples())), ids=lambda sample: sample.title)
def test_reading_on_is_what_the_fixes_mean(sample: Sample) -> None:
    """The text with all fixes applied, those that need a review too, reads as the wrong one was read."""
    read = sample.read(sample.text)
    fixed, _ = _fixed(sample.text, read.form, Confidence.NEEDS_REVIEW)
    again = sample.read(fixed)
    assert not again.form
    assert again.outline == read.outline


def _fixed(text: str, findings: Sequence[Diagnostic], minimum: Confidence) -> tuple[str, tuple[Applied, ...]]:
    sources = {finding.span.source for finding in findings}
    texts, applied, _ = apply_fixes(dict.fromkeys(sources, text), findings, minimum)
    return next(iter(texts.values()), text), applied
