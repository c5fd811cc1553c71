"""Fixes are carried out whole, in order, and never over one another."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic, Edit, Fix, Severity
from shuntwise.diagnostics.fixes import apply_fixes
from shuntwise.source import Source, Span

SOURCE = Source("a.shunt", "0123456789")


def edit(start: int, end: int, text: str, source: Source = SOURCE) -> Edit:
    return Edit(Span(source, start, end), text)


def finding(*edits: Edit, confidence: Confidence = Confidence.SAFE) -> Diagnostic:
    fix = Fix("mend it", edits, confidence)
    return Diagnostic("x", Severity.ERROR, "h", Span(SOURCE, 0, 1), fixes=(fix,))


def outcome(*findings: Diagnostic, minimum: Confidence = Confidence.SAFE) -> tuple[str, list[str]]:
    """The new text, and the reasons why fixes were skipped."""
    texts, applied, skipped = apply_fixes({SOURCE: SOURCE.text}, findings, minimum)
    assert len(applied) + len(skipped) == sum(len(f.fixes) for f in findings)
    return texts[SOURCE], [entry.reason for entry in skipped]


def test_fixes_are_applied_whatever_their_order() -> None:
    assert outcome(finding(edit(8, 9, "H")), finding(edit(1, 3, "")), finding(edit(0, 0, ">"))) == (
        ">034567H9",
        [],
    )


def test_first_of_two_overlapping_fixes_wins() -> None:
    clash = ["an earlier fix changes the same text"]
    assert outcome(finding(edit(2, 5, "A")), finding(edit(4, 6, "B"))) == ("01A56789", clash)
    assert outcome(finding(edit(4, 6, "B")), finding(edit(2, 5, "A"))) == ("0123B6789", clash)


def test_touching_edits_do_not_clash() -> None:
    assert outcome(finding(edit(2, 4, "A")), finding(edit(4, 6, "B"))) == ("01AB6789", [])
    assert outcome(finding(edit(2, 4, "A")), finding(edit(4, 4, "B"))) == ("01AB456789", [])


def test_two_insertions_at_one_place_clash() -> None:
    """Which should come first is not known, so only the first finding's is made."""
    text, reasons = outcome(finding(edit(3, 3, "A")), finding(edit(3, 3, "B")))
    assert (text, len(reasons)) == ("012A3456789", 1)


def test_insertion_inside_a_replaced_range_clashes() -> None:
    text, reasons = outcome(finding(edit(2, 6, "A")), finding(edit(3, 3, "B")))
    assert (text, len(reasons)) == ("01A6789", 1)


def test_fix_is_applied_whole_or_not_at_all() -> None:
    text, reasons = outcome(finding(edit(5, 6, "F")), finding(edit(0, 1, "X"), edit(5, 6, "Y")))
    assert (text, len(reasons)) == ("01234F6789", 1)


def test_skipped_fix_leaves_its_place_free() -> None:
    first = finding(edit(5, 6, "F"))
    second = finding(edit(0, 1, "X"), edit(5, 6, "Y"))
    assert outcome(first, second, finding(edit(0, 1, "Z")))[0] == "Z1234F6789"


def test_fix_whose_own_edits_clash_or_lie_outside_is_skipped() -> None:
    reasons = ["its edits do not fit together"]
    assert outcome(finding(edit(1, 4, "A"), edit(3, 5, "B"))) == (SOURCE.text, reasons)
    assert outcome(finding(edit(8, 20, "A"))) == (SOURCE.text, reasons)
    assert outcome(finding()) == (SOURCE.text, reasons)


def test_confidence_decides_and_show_only_is_never_applied() -> None:
    review = finding(edit(0, 1, "R"), confidence=Confidence.NEEDS_REVIEW)
    show = finding(edit(1, 2, "S"), confidence=Confidence.SHOW_ONLY)
    assert outcome(review, show) == (
        SOURCE.text,
        ["it needs a review first", "it only illustrates the remedy"],
    )
    assert outcome(review, show, minimum=Confidence.NEEDS_REVIEW)[0] == "R123456789"
    assert outcome(review, show, minimum=Confidence.SHOW_ONLY)[0] == "R123456789"


def test_alternatives_of_one_finding_are_not_both_applied() -> None:
    fixes = (Fix("a", (edit(0, 1, "A"),), Confidence.SAFE), Fix("b", (edit(5, 6, "B"),), Confidence.SAFE))
    both = Diagnostic("x", Severity.ERROR, "h", Span(SOURCE, 0, 1), fixes=fixes)
    assert outcome(both) == ("A123456789", ["another fix of this finding was applied"])
    assert outcome(finding(edit(0, 2, "")), both)[0] == "234" + "B" + "6789"


def test_source_that_may_not_change_keeps_the_whole_fix_back() -> None:
    library = Source("pad.shunt", "pad")
    text, reasons = outcome(finding(edit(0, 1, "X"), edit(0, 3, "PAD", library)))
    assert (text, reasons) == (SOURCE.text, ["`pad.shunt` may not be changed"])


def test_text_that_has_changed_since_is_left_alone() -> None:
    texts, applied, skipped = apply_fixes({SOURCE: "other"}, [finding(edit(0, 1, "X"))])
    assert (texts, applied) == ({SOURCE: "other"}, ())
    assert skipped[0].reason == "`a.shunt` has changed since it was checked"


ranges = st.tuples(st.integers(0, 10), st.integers(0, 10)).map(sorted)


@given(st.lists(st.lists(ranges, min_size=1, max_size=3), max_size=6))
def test_result_is_what_the_applied_edits_give_one_by_one(fixes: list[list[list[int]]]) -> None:
    """Applying the accepted edits from the last to the first gives the same text."""
    findings = [finding(*(edit(a, b, f"<{n}>") for a, b in fix)) for n, fix in enumerate(fixes)]
    texts, applied, skipped = apply_fixes({SOURCE: SOURCE.text}, findings)
    assert len(applied) + len(skipped) == len(findings)
    expected = SOURCE.text
    edits = [change for entry in applied for change in entry.fix.edits]
    for change in sorted(edits, key=lambda change: (change.span.start, change.span.end), reverse=True):
        expected = expected[: change.span.start] + change.text + expected[change.span.end :]
    assert texts[SOURCE] == expected
