"""Complaints about texts in quotes, and about `expect` lines.

In: the `Situation` in which the parser stopped. Out: a `Complaint`, or None where it is something else.
"""

from __future__ import annotations

import re

from shuntwise.syntax.automaton import Token
from shuntwise.syntax.namings import INNER
from shuntwise.syntax.situation import (
    VALUE_LIKE,
    Complaint,
    Mend,
    Situation,
    finding,
    token,
    write,
)
from shuntwise.syntax.words import nearest


def unquoted_text(s: Situation) -> Complaint | None:
    """A title, a reason or a path without its quotes."""
    note = s.in_block and s.head == "note" and len(s.entry) == 2
    if not note and not ("STRING" in s.expected and not s.in_block and s.kind in (*VALUE_LIKE, *INNER, "KIND")):
        return None
    start = s.span_of(s.entry[1]).start if note else s.span.start
    text = s.text[start : s.line_end].split("#")[0]
    if note:
        text = re.split(r"[,}]", text)[0]
    elif s.head == "include":
        text = text.split(maxsplit=1)[0]
    else:
        text = text.removesuffix("{") if s.fits("STRING", "LBRACE") and text.rstrip().endswith("{") else text
    text = text.rstrip(' {"' if s.head in ("variant", "choice", "position") else ' "\t\r').rstrip()
    if '"' in text:
        return None
    end = start + len(text) + (s.text[start + len(text)] == '"')
    at, right = s.at(start, end), f'"{text}"'
    said = finding(at, "this text stands in quotes", label='quotes `"` belong around it',
                   fix=write(at, right, safe=True))  # fmt: skip
    tokens = (*s.entry[:-1], token("STRING", right, at)) if note else (token("STRING", right, at),)
    return Complaint(said, Mend(tokens, end, anew=note))


def expectation(s: Situation) -> Complaint | None:
    """A small word left out or misspelt in an expectation, which reads on well as a value for a while."""
    if not s.entry or s.entry[0].type != "EXPECT":
        return None
    meant: tuple[Token, ...]
    for index, piece in enumerate(s.entry[2:], 2):
        if piece.type != "NAME":
            continue
        at = s.span_of(piece)
        right = nearest(str(piece), ("of", "at", "within", "above", "below", "from"))
        if right is not None:
            said = finding(at, f"`{piece}` is written `{right}` here", label="not a word of the language",
                           fix=write(at, right))  # fmt: skip
            meant = (token(right.upper(), right, at),)
        elif s.word == "and" and index == 2:
            gap = s.at(at.start, at.start)
            said = finding(at, f"`of` is missing before `{piece}`", fix=write(gap, "of ", safe=True))
            meant = (token("OF", "of", gap), piece)
        else:
            continue
        tokens = (*s.entry[:index], *meant, *s.entry[index + 1 :])
        return Complaint(said, Mend(tokens, s.span.start, anew=True, guess=True))
    return None


def inner_quote(s: Situation) -> Complaint | None:
    """`"The "Big" box"`: the text ends at the second quote."""
    last = s.last
    if last is None or last.type != "STRING" or '"' not in s.rest:
        return None
    start = last.start_pos
    at = s.at(start, s.span.start + s.rest.rindex('"') + 1)
    right = '"' + at.text[1:-1].replace('"', "'") + '"'
    said = finding(at, "a text ends at its second quote", label="more than two quotes", fix=write(at, right))
    return Complaint(said, Mend((*s.entry[:-1], token("STRING", right, at)), at.end, anew=True))


def quoted_value(s: Situation) -> Complaint | None:
    if s.kind != "STRING" or not s.fits("NUMBER"):
        return None
    said = finding(s.span, "a value stands without quotes", label="a text",
                   help="titles, notes, paths and reasons are quoted", fix=write(s.span, s.word[1:-1]))  # fmt: skip
    return Complaint(said)
