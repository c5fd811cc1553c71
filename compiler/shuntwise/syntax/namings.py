"""Complaints about names and words: misspelt, cut in two, missing.

In: the `Situation` in which the parser stopped. Out: a `Complaint`, or None where it is something else.
"""

from __future__ import annotations

import re

from shuntwise import units
from shuntwise.syntax.situation import (
    BLOCK_HEADS,
    Complaint,
    Mend,
    Situation,
    finding,
    token,
    write,
)
from shuntwise.syntax.tables import PART_KINDS
from shuntwise.syntax.words import nearest

INNER = frozenset(
    (
        "INTO",
        "AND",
        "AS",
        "THROUGH",
        "UNUSED",
        "TO",
        "OF",
        "ON",
        "AT",
        "BECAUSE",
        "WITHIN",
        "ABOVE",
        "BELOW",
        "FROM",
        "GIVEN",
        "IN",
        "LIBRARY",
    )
)

_NAME_HELP = {
    **{word: f"say which {word}: `{word} {example}`" for word, example in PART_KINDS.items()},
    "driver": "say which driver: `driver woofer 8 ohm`",
    "input": "say which input: `input low`; a single input needs no declaration",
    "posts": "say which posts: `posts high`",
    "connector": "say which name: `connector rear { 1+ input+, 1- input- }`",
    "testpoint": "say which node: `testpoint middle`",
    "let": "say which name: `let crossover = 2.4 kHz`",
    "set": "say what is set: `set L1 = 0.75 mH`",
    "omit": "say which part: `omit K1 and K2`",
    "fit": "say which part: `fit K1`",
    "leg": "say which driver the leg feeds: `leg woofer { ... }`",
    "network": "say which name: `network pad (source, load, back) { ... }`",
    "use": "say which network: `use pad as P1`",
    "variant": "say which name: `variant hot { ... }`",
    "choice": "say which name: `choice level { position flat { ... } position soft { ... } }`",
    "position": "say which name: `position soft { fit K2 }`",
    "board": 'say which name: `board gusset "Gusset plate" { ... }`',
    "drill": "say which name: `drill h1 1.3 mm at 158:110 mm`",
    "expect": "say what is expected: `expect impedance above 4 ohm from 20 Hz to 20 kHz`",
}


def misspelt_word(s: Situation) -> Complaint | None:
    """`Into` or `beacuse` where only one word of the language could stand."""
    words = [terminal.lower() for terminal in sorted(s.expected) if terminal in INNER]
    right = nearest(s.word, words) if s.kind == "NAME" and words else None
    if right is None:
        return None
    said = finding(s.span, f"`{s.word}` is written `{right}` here", label="not a word of the language",
                   fix=write(s.span, right, safe=s.word.casefold() == right))  # fmt: skip
    return Complaint(said, Mend((token(right.upper(), right, s.span),), s.span.end))


def cut_in_two(s: Situation) -> Complaint | None:
    """`10 000 Hz` and `0.82 m H`: a number or a unit with a blank in it."""
    last = s.last
    if last is None or "\n" in s.text[last.end_pos : s.span.start]:
        return None
    if last.type == s.kind == "NUMBER":
        sure = last.isdecimal() and len(s.word.split(".")[0]) == 3
    elif last.type == s.kind == "NAME":
        sure = last + s.word in units.UNITS and len(s.entry) > 1 and s.entry[-2].type == "NUMBER"
    else:
        sure = False
    if not sure:
        return None
    whole, at = last + s.word, s.span_of(last).to(s.span)
    said = finding(at, f"`{whole}` is written in one word", label="cut in two by a blank",
                   fix=write(at, whole, safe=True))  # fmt: skip
    return Complaint(said, Mend((*s.entry[:-1], token(last.type, whole, at)), s.span.end, anew=True))


def missing_name(s: Situation) -> Complaint | None:
    if len(s.entry) != 1 or s.kind == "NAME" or "NAME" not in s.expected or s.head not in _NAME_HELP:
        return None
    digits = re.compile(r"\d+([^\W\d]\w*)").match(s.text, s.span.start)
    if digits is not None and s.kind == "NUMBER" and digits[1] not in units.UNITS:
        at = s.at(*digits.span())
        said = finding(at, f"a name begins with a letter, and `{at.text}` with a digit", label="no name",
                       help="put the digit behind: `woofer2`")  # fmt: skip
        return Complaint(said, Mend((token("NAME", at.text, at),), at.end))
    return Complaint(finding(s.span, f"a name is missing behind `{s.head}`", label="the name belongs here",
                             help=_NAME_HELP[s.head]))  # fmt: skip


def two_word_name(s: Situation) -> Complaint | None:
    """`driver mid bass 8 ohm`: the second word reads as a value until the value comes."""
    kinds = [piece.type for piece in s.entry[1:]]
    if s.head not in BLOCK_HEADS or kinds != ["NAME", "NAME"] or s.kind not in ("NUMBER", "CODE"):
        return None
    at = s.span_of(s.entry[1]).to(s.span_of(s.entry[2]))
    whole = "_".join(at.text.split())
    said = finding(at, "a name is one word", label="two words", help=f"write `{whole}`, here and in the wiring",
                   fix=write(at, whole))  # fmt: skip
    return Complaint(said, Mend((s.entry[0], token("NAME", whole, at)), s.span.start, anew=True))


def dash_in_name(s: Situation) -> Complaint | None:
    """`driver woofer-1 8 ohm`: the name ends at the dash, and the rest reads as a value."""
    if s.head not in BLOCK_HEADS or len(s.entry) < 2 or s.entry[1].type != "NAME":
        return None
    match = re.compile(r"\w+(?:[-./]\w+)+").match(s.text, s.entry[1].start_pos)
    if match is None or match.end() > s.span.end:
        return None
    at = s.at(*match.span())
    whole = re.sub(r"\W", "_", at.text)
    said = finding(at, "a name is made of letters, digits and `_`", label="no name",
                   help=f"write `{whole}`, here and in the wiring", fix=write(at, whole))  # fmt: skip
    return Complaint(said, Mend((s.entry[0], token("NAME", whole, at)), at.end, anew=True))
