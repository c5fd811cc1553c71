"""Complaints about a box's own file: its lines' first words, points, paths and what joins them.

In: the `Situation` in which the parser stopped. Out: a `Complaint`, or None where it is something else.
"""

from __future__ import annotations

import re

from shuntwise.syntax.beginnings import bench_without_braces
from shuntwise.syntax.joints import missing_one_of
from shuntwise.syntax.situation import ENDS, Case, Complaint, Mend, Situation, finding, shown, token, write
from shuntwise.syntax.words import BOX_STATEMENTS, STATEMENTS, nearest

_SAID_FOR = {
    "measure": "reading",
    "measurement": "reading",
    "read": "reading",
    "value": "measured",
    "part": "measured",
    "serial": "box",
    "sister": "beside",
    "repair": "rework",
    "reworked": "rework",
    "comment": "note",
    "remark": "note",
    "curve": "sweep",
    "instruments": "bench",
}
"""Words that people say, with the word of the language for the same thing."""

_BEGINNINGS = f"a line of a box begins with {', '.join(BOX_STATEMENTS[:-1])} or {BOX_STATEMENTS[-1]}"
_OF_DESIGNS = frozenset(word for word in STATEMENTS if word not in BOX_STATEMENTS)


def _beginning(s: Situation) -> Complaint | None:
    """A line that begins with no word of a box's file: a slip of spelling, or a statement of a design."""
    if s.entry or s.inside or s.kind in ("", "RBRACE", "COMMA", "LBRACE"):
        return None
    word = s.word
    said = _SAID_FOR.get(word.casefold()) or nearest(word, BOX_STATEMENTS) if s.kind == "NAME" else None
    help_text = (
        "" if said else "this stands in the design, not in the file of a box" if word in _OF_DESIGNS else _BEGINNINGS
    )
    complaint = finding(s.span, f"no line of a box begins with `{shown(word)}`", name="unknown-statement",
                        label="not a word that a line can begin with", help=help_text,
                        fix=write(s.span, said, safe=said == word.casefold()) if said else None)  # fmt: skip
    mend = Mend((token(said.upper(), said, s.span),), s.span.end, guess=True) if said and said != "bench" else None
    return Complaint(complaint, mend)


_NAME_OF_BOX = re.compile(r"(?:\"[^\"#]*\"|[^\"#])*(?:\"[^\"#]*\"|[^\s\"#])(?=[ \t]+of[ \t])")
"""All up to the last `of` before a text in quotes."""


def _name_of_box(s: Situation) -> Complaint | None:
    """`box HS-0007 of ...`, `box "stage" left of ...`: a name of more than a word or a number is one text in quotes."""
    if s.head != "box" or any(piece.type == "OF" for piece in s.entry):
        return None
    start = s.entry[1].start_pos if len(s.entry) > 1 else s.span.start
    match = _NAME_OF_BOX.match(s.text, start, s.line_end)
    if match is None or match.end() < s.span.start or re.fullmatch(r"\w+", match[0]):
        return None
    at = s.at(*match.span())
    name = at.text.replace('"', "")
    right = f'"{name}"'
    said = finding(at, "the name of a box is a number, a word, or a text in quotes", label="more than one word",
                   fix=write(at, right, safe=True))  # fmt: skip
    return Complaint(said, Mend((s.entry[0], token("STRING", right, at)), at.end, anew=True))


def _head_of_box(s: Situation) -> Complaint | None:
    """`box of "a.shunt"`, `box "a.shunt"`, `box "7" "a.shunt"`: the name or the `of` is not there."""
    if s.head != "box" or len(s.entry) != 2 or not s.fits("OF", "STRING"):
        return None
    named = s.entry[1].type == "STRING" and s.kind in ENDS
    if not named and (s.kind != "STRING" or str(s.last) != "of"):
        return missing_one_of(s, (("of", "OF"),)) if s.kind == "STRING" else None
    last, gap = s.span_of(s.entry[1]), s.span_of(s.entry[0]).end
    said = finding(last, "the name of the box is missing", label="a number, a word, or a text in quotes stands before",
                   help=f"for example `box 7 of {last.text if named else shown(s.word)}`",
                   fix=write(s.at(gap, gap), " 7 of" if named else " 7"))  # fmt: skip
    return Complaint(said)


def _path(s: Situation) -> Complaint | None:
    """The name of a file without its quotes, up to the comma or the blank behind it."""
    if (
        "STRING" not in s.expected
        or s.head not in ("box", "sweep", "beside")
        or s.kind not in ("NAME", "NUMBER", "CODE")
    ):
        return None
    if s.head == "box" and len(s.entry) < 3:
        return None
    match = re.compile(r"[^\s,\"#]+").match(s.text, s.span.start)
    assert match is not None
    at, right = s.at(*match.span()), f'"{match[0]}"'
    said = finding(at, "this text stands in quotes", label='quotes `"` belong around it',
                   fix=write(at, right, safe=True))  # fmt: skip
    return Complaint(said, Mend((token("STRING", right, at),), at.end))


def _at_pad(s: Situation) -> Complaint | None:
    """`at woofer+`: `at` means both pads of what it names."""
    kinds = [piece.type for piece in s.entry]
    if s.kind not in ("PLUS", "MINUS") or kinds[2:3] != ["AT"] or not {*kinds[3:]} <= {"NAME", "DOT"} or len(kinds) < 4:
        return None
    at = s.span_of(s.entry[3]).to(s.span)
    name = at.text[:-1].rstrip()
    said = finding(at, f"`at` names a thing with two pads, not the pad `{at.text}`", label="one pad of the two",
                   help=f"`at {name}` is `{name}+ to {name}-`", fix=write(at, name))  # fmt: skip
    return Complaint(said, Mend((), s.span.end))


def _frequency_at(s: Situation) -> Complaint | None:
    """`dummies on at 3 kHz`: a comma parts the set-up from the frequency."""
    if s.head != "reading" or s.kind != "AT" or not s.fits("COMMA", "NUMBER"):
        return None
    gap = s.at(s.behind_last().end, s.span.end)
    said = finding(s.span, "`,` stands before the frequency", label="not this word", fix=write(gap, ",", safe=True))
    return Complaint(said, Mend((token("COMMA", ",", s.span),), s.span.end))


def _colon(s: Situation) -> Complaint | None:
    """`3 kHz = 223 mV`."""
    if s.head != "reading" or s.word not in "=;" or not s.fits("COLON"):
        return None
    said = finding(s.span, f"`{s.word}` is written `:` here", label="what was read stands behind `:`",
                   fix=write(s.span, ":", safe=True))  # fmt: skip
    return Complaint(said, Mend((token("COLON", ":", s.span),), s.span.end))


def _no_colon(s: Situation) -> Complaint | None:
    """`drivers off 2 ohm`: a value behind the loads, and no colon in the line, so that it is no frequency."""
    if s.head != "reading" or s.kind not in ("NUMBER", "CODE") or not s.fits("COLON", s.kind):
        return None
    line_end = s.text.find("\n", s.span.start)
    if ":" in s.text[s.span.start : line_end if line_end >= 0 else len(s.text)]:
        return None
    gap = s.behind_last()
    said = finding(s.span, f"`:` is missing before `{shown(s.word)}`", label="what was read stands behind `:`",
                   fix=write(gap, ":", safe=True))  # fmt: skip
    return Complaint(said, Mend((token("COLON", ":", gap),), s.span.start))


def _of_driver(s: Situation) -> Complaint | None:
    """`resistance of tweeter`."""
    if s.head != "reading" or s.kind != "NAME" or len(s.entry) != 3 or s.last is None or str(s.last) != "of":
        return None
    at = s.span_of(s.last)
    said = finding(at, "`of` is written `at` here", label="not this word", fix=write(at, "at", safe=True))
    return Complaint(said, Mend((*s.entry[:-1], token("AT", "at", at)), s.span.start, anew=True))


_LOADS_LAST = re.compile(r"([^,:#\"]*[^\s,:#\"])[ \t]*,[ \t]*(\w+[ \t]+(?:on|off))(?=[ \t]*[:,])")


def _what_or_where(s: Situation) -> Complaint | None:
    """`reading tweeter, drivers off: 3 ohm`, `reading volts, dummies on: ...`."""
    if s.head != "reading" or s.kind not in ("COMMA", "PLUS", "MINUS", "DOT") or len(s.entry) != 2:
        return None
    said = finding(s.span_of(s.entry[1]), "it is not said what is read, or where", label="one of the two",
                   help="for example `reading resistance at tweeter, drivers off: 2.8 ohm`")  # fmt: skip
    return Complaint(said)


def _around_points(s: Situation) -> Complaint | None:
    """`resistance from input+ to woofer+`, `resistance between input+ and woofer+`."""
    if s.head != "reading" or len(s.entry) < 3 or s.kind not in ("NAME", "PAD"):
        return None
    if s.word == "and" and s.fits("TO", "NAME"):
        said = finding(s.span, "`and` is written `to` here", label="not this word", fix=write(s.span, "to", safe=True))
        return Complaint(said, Mend((token("TO", "to", s.span),), s.span.end))
    if len(s.entry) > 3 or str(s.last) not in ("from", "between"):
        return None
    at = s.span_of(s.entry[2])
    said = finding(at, f"no `{at.text}` stands before the first point", label="not this word",
                   fix=write(s.at(at.start, s.span.start), "", safe=True, title=f"remove `{at.text}`"))  # fmt: skip
    return Complaint(said, Mend(s.entry[:2], s.span.start, anew=True))


def _one_point(s: Situation) -> Complaint | None:
    """`resistance tweeter, drivers off: 3 ohm`, `resistance tweeter+, drivers off: 3 ohm`."""
    if s.head != "reading" or s.kind != "COMMA" or "TO" not in s.expected or len(s.entry) < 3:
        return None
    point, gap = s.span_of(s.entry[2]).to(s.behind_last()), s.span_of(s.entry[1]).end
    if s.entry[2].type == "PAD":
        said = finding(point, "a reading is between two points, of which one is missing", label="the one of the two",
                       help=f"write `{point.text} to` and the other one")  # fmt: skip
        return Complaint(said)
    at = s.at(gap, gap)
    said = finding(point, "`at` stands before a thing with two pads", label="both of its pads are meant",
                   help="between two points: the one, `to` and the other", fix=write(at, " at"))  # fmt: skip
    return Complaint(said, Mend((*s.entry[:2], token("AT", "at", at), *s.entry[2:]), s.span.start, anew=True))


def _no_loads(s: Situation) -> Complaint | None:
    """`resistance at tweeter: 2 ohm`, `volts at tweeter, 3 kHz: 9 mV`, `volts at tweeter, 3 kHz, dummies on: 9 mV`."""
    kinds = [piece.type for piece in s.entry]
    ended = s.kind == "COLON" and "COMMA" in s.expected and "COMMA" not in kinds
    number = s.kind in ("NUMBER", "CODE", "COMMA_NUMBER") and kinds[-1:] == ["COMMA"] and kinds.count("COMMA") == 1
    if s.head != "reading" or not (ended or number):
        return None
    turned = _LOADS_LAST.match(s.text, s.span.start, s.line_end) if number and s.kind == "NUMBER" else None
    if turned is not None:
        at = s.at(*turned.span())
        said = finding(at, "what hangs on the wires of the drivers stands before the frequency", label="turned round",
                       fix=write(at, f"{turned[2]}, {turned[1]}", safe=True))  # fmt: skip
        return Complaint(said)
    said = finding(s.span, "it is not said what hangs on the wires of the drivers", label="that stands before it",
                   help="`, drivers off`, `, drivers on` or `, dummies on`")  # fmt: skip
    return Complaint(said)


def missing_joint(s: Situation) -> Complaint | None:
    """A comma, or the colon before what was read."""
    return missing_one_of(s, ((",", "COMMA"), (":", "COLON")))


CASES: tuple[Case, ...] = (
    bench_without_braces,
    _beginning,
    _name_of_box,
    _head_of_box,
    _path,
    _at_pad,
    _frequency_at,
    _colon,
    _no_colon,
    _of_driver,
    _what_or_where,
    _around_points,
    _one_point,
    _no_loads,
)
