"""Complaints about what joins two words: commas, `=`, `and`, `into`, and the end of a line.

In: the `Situation` in which the parser stopped. Out: a `Complaint`, or None where it is something else.
"""

from __future__ import annotations

from collections.abc import Iterable

from shuntwise import units
from shuntwise.syntax.situation import (
    ENDS,
    VALUE_LIKE,
    Complaint,
    Mend,
    Situation,
    finding,
    shown,
    token,
    write,
)

_OPENS = r'[ \t]*[\w"]'
"""What stands behind the word that begins a statement."""

_JOINTS = (
    (",", "COMMA"), ("--", "ARROW"), ("into", "INTO"), ("as", "AS"), ("and", "AND"), ("to", "TO"), ("=", "EQUAL"),
    ("of", "OF"), ("on", "ON"), ("because", "BECAUSE"), (")", "RPAR"), ("(", "LPAR"),
)  # fmt: skip

_JOINT_HELP = {
    ",": "attributes on one line have commas between them",
    "--": "things along a walk are joined by `--`",
    ":": "what was read stands behind `:`",
    "(": "a network names its ports: `network pad (source, load, back) { ... }`",
}


def missing_joint(s: Situation) -> Complaint | None:
    """Something small is missing, and with it the rest would fit."""
    return missing_one_of(s, _JOINTS if s.in_block else [joint for joint in _JOINTS if joint[0] != ","])


def missing_one_of(s: Situation, joints: Iterable[tuple[str, str]]) -> Complaint | None:
    """One of these is missing, and with it the rest would fit: each as it is written, and the grammar's name for it."""
    if s.kind in ("", "ARROW", "COMMA", "EQUAL", "RPAR", *ENDS) or not s.entry:
        return None
    if s.fits("_NL") and (s.in_block is False) and s.begins_statement(s.span.start, _OPENS):
        return None
    for text, terminal in joints:
        if not s.fits(terminal, s.kind):
            continue
        gap = s.behind_last()
        right = text if text in (",", ")", ":") else f" {text}"
        help_text = _JOINT_HELP.get(text, "") if s.in_block or text != "," else ""
        said = finding(s.span, f"`{text}` is missing before `{shown(s.word)}`", help=help_text,
                       fix=write(gap, right, safe=text not in ("--", "(", ")")))  # fmt: skip
        return Complaint(said, Mend((token(terminal, text, gap),), s.span.start, guess=True))
    return None


def comma_before_key(s: Situation) -> Complaint | None:
    """`qms 3.8 qes 0.62`: the second key reads as a unit until its value comes."""
    last = s.last
    if not s.in_block or last is None or last.type != "NAME" or last in units.UNITS or len(s.entry) < 2:
        return None
    if s.entry[-2].type != "NUMBER" or s.kind not in VALUE_LIKE:
        return None
    end = s.span_of(s.entry[-2]).end
    gap = s.at(end, end)
    said = finding(s.span_of(last), f"`,` is missing before `{last}`", help=_JOINT_HELP[","],
                   fix=write(gap, ",", safe=True))  # fmt: skip
    return Complaint(said, Mend((*s.entry[:-1], token("COMMA", ",", gap), last), s.span.start, anew=True))


def extra_comma(s: Situation) -> Complaint | None:
    if s.kind != "COMMA" or s.entry or not s.inside:
        return None
    said = finding(s.span, "one comma too many", label="nothing stands before it", fix=write(s.span, "", safe=True))
    return Complaint(said, Mend((), s.span.end))


def next_statement(s: Situation) -> Complaint | None:
    """Two statements on one line."""
    if not s.entry or s.in_block or not s.fits("_NL") or not s.begins_statement(s.span.start, _OPENS):
        return None
    gap = s.at(s.behind_last().end, s.span.start)
    said = finding(s.span, f"a new statement begins at `{s.word}` without a line of its own",
                   label="a second statement", help="one statement to a line",
                   fix=write(gap, "\n" + s.indent, safe=True, title="begin a new line"))  # fmt: skip
    return Complaint(said, Mend((token("_NL", "\n", gap),), s.span.start))
