"""Complaints about walks: dashes, round brackets, pads, and what stands on one line.

In: the `Situation` in which the parser stopped. Out: a `Complaint`, or None where it is something else.
"""

from __future__ import annotations

import re

from shuntwise.syntax.automaton import Token
from shuntwise.syntax.situation import (
    ENDS,
    Complaint,
    Mend,
    Situation,
    finding,
    token,
    write,
)

_STATION_LIKE = ("NAME", "PAD", "LPAR")


def word_begins_walk(s: Situation) -> Complaint | None:
    """`input -- L1`, or a walk that begins at a node with the name of a statement."""
    if len(s.entry) != 1 or s.entry[0].type in (*_STATION_LIKE, *ENDS) or not re.match(r"--|[-=]?>|[–—→]", s.rest):
        return None
    word, at = s.head, s.span_of(s.entry[0])
    if word == "input":
        said = finding(at, "`input` has two pads", name="pad-sign-missing", label="which one",
                       why="polarity is wired on purpose, so each pad is named", help="its minus is called `return`",
                       fix=write(at, "input+", safe=True))  # fmt: skip
        return Complaint(said, Mend((token("PAD", "input+", at),), s.span.start, anew=True))
    said = finding(at, f"a walk cannot begin at a node called `{word}`", label=f"`{word}` begins a statement",
                   help="turn the walk round, or give the node another name")  # fmt: skip
    return Complaint(said, Mend((token("NAME", word, at),), s.span.start, anew=True))


def sign_apart(s: Situation) -> Complaint | None:
    """`woofer + -- return`: a blank before the sign of a pad."""
    last = s.last
    if last is None or s.word not in ("+", "-") or s.in_block or not (last.type == "NAME" or s.head == "input"):
        return None
    if last.end_pos == s.span.start or not re.match(r"[ \t]*(?:--|[},|)#]|$)", s.rest[1:]):
        return None
    at, blank = s.span_of(last).to(s.span), s.at(last.end_pos, s.span.start)
    if blank.text.strip():
        return None
    pad = str(last) + s.word
    said = finding(at, f"the pad `{pad}` is written in one word", label="no blank before the sign",
                   fix=write(blank, "", safe=True, title=f"write `{pad}`"))  # fmt: skip
    return Complaint(said, Mend((*s.entry[:-1], token("PAD", pad, at)), s.span.end, anew=True))


def single_dash(s: Situation) -> Complaint | None:
    """`L1-C1`, which reads as a pad of `L1` with another name stuck to it."""
    last = s.last
    if last is None or last.type != "PAD" or last[-1] != "-":
        return None
    if last.end_pos != s.span.start or s.kind not in _STATION_LIKE:
        return None
    at = s.at(s.span.start - 1, s.span.start)
    said = finding(at, "`-` is written `--` here", label="write `--`", help="things along a walk are joined by `--`",
                   fix=write(at, " -- ", safe=True))  # fmt: skip
    name = token("NAME", str(last)[:-1], s.at(last.start_pos, at.start))
    return Complaint(said, Mend((*s.entry[:-1], name, token("ARROW", "--", at)), s.span.start, anew=True))


def walks_on_one_line(s: Situation) -> Complaint | None:
    """`input+ -- L1 -- woofer+ woofer- -- return`: the second walk begins with a pad."""
    last = s.last
    if last is None or last.type != "PAD" or s.kind != "PAD" or len(s.entry) == 1 or not s.fits("_NL", "PAD"):
        return None
    gap = s.at(last.end_pos, s.span.start)
    said = finding(s.span, f"a new walk begins at `{s.word}` without a line of its own", label="a second walk",
                   help="put it on a line of its own, or a comma between the two",
                   fix=write(gap, "\n" + s.indent, title="begin a new line"))  # fmt: skip
    return Complaint(said, Mend((token("_NL", "\n", gap),), s.span.start))


def _open_brackets(s: Situation) -> list[Token]:
    """The `(` of the entry that no `)` has closed."""
    opened: list[Token] = []
    for piece in s.entry:
        if piece.type == "LPAR":
            opened.append(piece)
        elif piece.type == "RPAR":
            opened.pop()
    return opened


def unclosed_bracket(s: Situation) -> Complaint | None:
    """A `(` with no `)`, noticed at the end of its line or on a later one."""
    opened = _open_brackets(s)
    if not opened or "RPAR" not in s.expected:
        return None
    at = s.span_of(opened[-1])
    begins = s.text.rfind("\n", 0, s.span.start) + 1
    below = begins > at.end and not s.text[begins : s.span.start].strip()
    if s.kind not in (*ENDS, "LBRACE") and not (below and s.kind):
        return None
    said = finding(at, "this `(` is never closed", label="opened here", help="write `)` where it ends")
    if not below or s.kind in ("RBRACE", "$END"):
        return Complaint(said)
    return Complaint(said, lost_until=begins)


def unopened_bracket(s: Situation) -> Complaint | None:
    """`L1 | C1) -- woofer+`: a `|` or `)` of a group that was never opened."""
    if not s.entry or s.word not in ("|", ")") or _open_brackets(s):
        return None
    return Complaint(
        finding(s.span, f"no `(` is open for this `{s.word}`", label="not in a group", help="write `(` where it begins")
    )


def ports_without_brackets(s: Situation) -> Complaint | None:
    """`network pad source, load {`"""
    match = re.compile(r"[^\W\d]\w*(?:[ \t]*,[ \t]*[^\W\d]\w*)*").match(s.text, s.span.start)
    if s.head != "network" or len(s.entry) != 2 or match is None or ")" in s.rest:
        return None
    at = s.at(*match.span())
    said = finding(at, "the ports of a network stand in `( )`", label="ports", fix=write(at, f"({at.text})", safe=True))
    tokens = [token("LPAR", "(", s.at(at.start, at.start))]
    for piece in re.finditer(r"\w+|,", at.text):
        place = s.at(at.start + piece.start(), at.start + piece.end())
        tokens.append(token("COMMA" if piece[0] == "," else "NAME", piece[0], place))
    return Complaint(said, Mend((*tokens, token("RPAR", ")", s.at(at.end, at.end))), at.end))


def square_bracket(s: Situation) -> Complaint | None:
    if s.word not in ("[", "]"):
        return None
    return Complaint(finding(s.span, f"`{s.word}` has no meaning here",
                             help="attributes stand in `{ }`, parts in parallel in `( | )`"))  # fmt: skip
