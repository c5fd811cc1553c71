"""Complaints about braces: those that are missing, left over, or in the wrong place.

In: the `Situation` in which the parser stopped. Out: a `Complaint`, or None where it is something else.
"""

from __future__ import annotations

import re

from shuntwise.source import Span
from shuntwise.syntax.situation import (
    BLOCK_HEADS,
    BODY_HEADS,
    VALUE_LIKE,
    Complaint,
    Mend,
    Situation,
    finding,
    token,
    write,
)


def unclosed_brace(brace: Span) -> Complaint:
    return Complaint(
        finding(
            brace,
            "this `{` is never closed",
            name="unclosed-brace",
            label="opened here",
            help="write `}` where the list ends",
            why="everything up to the next statement would count as part of it",
        )
    )


def unopened_block(head: str, behind: Span) -> Complaint:
    """Attributes and a `}`, but no `{`. Where nothing is between, the `}` may have been meant for it."""
    empty = behind.source.text[behind.end :].lstrip().startswith("}")
    said = finding(behind, f"`{{` is missing behind this `{head}`", label="the list begins here",
                   help="attributes stand in `{ }`", fix=write(behind, " {", safe=not empty))  # fmt: skip
    return Complaint(said)


def lowered_brace(brace: Span, line_end: Span) -> Complaint:
    """A `{` on a line below its statement; `line_end` reaches from the statement to the brace."""
    fix = write(line_end, " {", safe=True, title="move it up") if not line_end.text[:-1].strip() else None
    said = finding(brace, "this `{` belongs on the line of its statement", label="one line too low",
                   why="a line end closes a statement", help="write it behind the statement", fix=fix)  # fmt: skip
    return Complaint(said)


def nested_too_deep(brace: Span, most: int) -> Complaint:
    return Complaint(
        finding(brace, f"this is nested more than {most} levels deep", name="nested-too-deep",
                why="no circuit needs it, and a file must not be able to exhaust the compiler",
                help="a design nests no deeper than a leg in a variant")
    )  # fmt: skip


def too_many_lines(brace: Span, head: str, most: int) -> Complaint:
    return Complaint(
        finding(brace, f"more than {most} lines stand in this {head}", name="too-much-on-board",
                label="behind them nothing is read", help="look for what was written many times over",
                why="no crossover needs them, and a file must not be able to exhaust the compiler")
    )  # fmt: skip


def missing_brace(s: Situation) -> Complaint | None:
    """`leg woofer` and then walks: the `{` is missing."""
    if s.head not in BODY_HEADS or "LBRACE" not in s.expected or not s.fits("LBRACE", s.kind):
        return None
    gap = s.behind_last()
    said = finding(gap, f"`{{` is missing behind this `{s.head}`", label="what belongs to it begins here",
                   help=f"what a {s.head} holds stands in `{{ }}`",
                   fix=write(gap, " {", safe=True) if s.surplus < 0 else None)  # fmt: skip
    return Complaint(said, Mend((token("LBRACE", "{", gap),), s.span.start))


def attributes_without_braces(s: Situation) -> Complaint | None:
    """`coil L1 0.82 mH, dcr 0.28 ohm`, `coil L1 0.82 mH (5 %)` or `coil L1 0.82 mH dcr 0.28 ohm }`."""
    if s.in_block or s.head not in BLOCK_HEADS or len(s.entry) < 2 or not s.fits("LBRACE"):
        return None
    if s.kind not in (*VALUE_LIKE, "LPAR", "COMMA") and s.word != "[":
        return None
    if s.kind in VALUE_LIKE and s.surplus < 0 and re.match(r"[^{}]*\}", s.rest):
        gap = s.behind_last()
        return Complaint(unopened_block(s.head, gap).finding, Mend((token("LBRACE", "{", gap),), s.span.start))
    if set(s.rest) & set("{}"):
        return None
    written = s.rest.split("#")[0].rstrip()
    inner = written.strip(",()[] \t")
    if not inner:
        return None
    gap = s.at(s.behind_last().end, s.span.start + len(written))
    right = f" {{ {inner} }}"
    sure = s.kind not in VALUE_LIKE or len(inner.split(",")) > 1
    said = finding(s.at(s.span.start, gap.end), f"attributes of this {s.head} stand in braces", label="attributes",
                   fix=write(gap, right, safe=sure, title="put them in braces"))  # fmt: skip
    return Complaint(said, Mend((), s.line_end, dropped=True))


def stray_brace(s: Situation) -> Complaint | None:
    if s.kind != "RBRACE" or s.inside:
        return None
    said = finding(s.span, "this `}` closes nothing", label="no `{` is open here", fix=write(s.span, ""))
    return Complaint(said, Mend((), s.span.end))


def inner_brace(s: Situation) -> Complaint | None:
    if s.kind != "LBRACE" or not s.in_block:
        return None
    return Complaint(finding(s.span, "braces do not stand in a list of attributes", label="a list inside a list",
                             help="write the attributes one after another"))  # fmt: skip
