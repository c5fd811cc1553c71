"""Complaints about the word that a line begins with: misspelt, another word for it, left out, or none at all.

In: a `Situation`. Out: a `Complaint`, or None where the trouble lies further on. A statement whose first
word is plain enough is read on as if it had been written right.
"""

from __future__ import annotations

import re

from shuntwise.source import Span
from shuntwise.syntax.automaton import Token
from shuntwise.syntax.situation import (
    ENDS,
    VALUE_LIKE,
    Case,
    Complaint,
    Mend,
    Situation,
    finding,
    shown,
    token,
    write,
)
from shuntwise.syntax.tables import PART_KINDS
from shuntwise.syntax.words import EXPLAINED, KIND_OF_LETTER, SAID_FOR, STATEMENTS, nearest


def _statement_word(s: Situation) -> Complaint | None:
    """A line that begins with no word of the language: a slip of spelling, or another word for it."""
    if s.in_block or len(s.entry) != 1 or s.entry[0].type != "NAME" or s.kind in ("", "ARROW", "COMMA", *ENDS):
        return None
    if s.inside == "leg" or (s.inside == "network" and "--" in s.rest):
        return None  # a walk
    word, at = s.head, s.span_of(s.entry[0])
    explained: str | None = None
    said: str | None = f"{word} {s.word}".casefold()
    if said in STATEMENTS:
        at = at.to(s.span)
    else:
        explained = EXPLAINED.get(word.casefold())
        said = None if explained else SAID_FOR.get(word.casefold()) or nearest(word, STATEMENTS)
        if said is None and explained is None:
            return _lacking_word(s, word, at)
    if said is not None and not _may_follow(s, said):
        said = None
    complaint = finding(
        at,
        f"no statement begins with `{at.text}`",
        name="unknown-statement",
        label="not a word that a line can begin with",
        help="" if said else explained or _BEGINNINGS,
        fix=write(at, said, safe=said == at.text.casefold()) if said else None,
    )
    return Complaint(complaint, Mend(_statement_tokens(said, at), at.end, anew=True, guess=True) if said else None)


_BEGINNINGS = (
    "a line begins with a word such as driver, coil, capacitor, resistor, leg or expect, or is a walk in which "
    "things are joined by `--`"
)


_FIRST_WORD = "the first word is missing"


def _statement_tokens(said: str, at: Span) -> tuple[Token, ...]:
    """`driver woofer` is two words, `tapped coil` is one."""
    if said in PART_KINDS:
        return (token("KIND", said, at),)
    first, *name = said.split()
    return (token(first.upper(), first, at), *(token("NAME", word, at) for word in name))


def _may_follow(s: Situation, said: str) -> bool:
    """Could what stands behind the slip stand behind the right word? Only the kind of token is known."""
    if said in ("design", "include"):
        return s.kind in VALUE_LIKE or s.word in "“”„«»'‘’"
    if " " in said or said == "amplifier":
        return s.kind in (*VALUE_LIKE, "LBRACE") or not s.kind
    return s.kind == "NAME" or s.word == "-" or (s.kind.isalpha() and s.word.isalpha())


def _lacking_word(s: Situation, word: str, at: Span) -> Complaint | None:
    """`L1 0.82 mH` and `f = 2 kHz`: the word that says what this is, is missing."""
    first = s.at(at.start, at.start)
    if s.word == "=":
        right = "set" if s.inside in ("variant", "position") else "let"
        said = finding(at, f"`{word} = ...` says not what it does", name="unknown-statement", label=_FIRST_WORD,
                       help="`let` names a value, `set` changes one in a variant, and a part is declared without `=`",
                       fix=write(first, f"{right} ", title=f"write `{right} {word} = ...`"))  # fmt: skip
        tokens = (token(right.upper(), right, first), token("NAME", word, at))
        return Complaint(said, Mend(tokens, s.span.start, anew=True, guess=True))
    kind = KIND_OF_LETTER.get(word[0].upper()) if re.fullmatch(r"[LCRlcr]\d+\w?", word) else None
    if kind is not None and s.kind in (*VALUE_LIKE, "LBRACE"):
        said = finding(at, f"the line does not say what `{word}` is", name="unknown-statement", label=_FIRST_WORD,
                       fix=write(first, f"{kind} ", title=f"write `{kind} {word}`"))  # fmt: skip
        tokens = (token("KIND", kind, first), token("NAME", word, at))
        return Complaint(said, Mend(tokens, s.span.start, anew=True, guess=True))
    said = finding(at, f"no statement begins with `{word}`", name="unknown-statement",
                   label="not a word that a line can begin with", help=_BEGINNINGS)  # fmt: skip
    return Complaint(said)


def _bad_beginning(s: Situation) -> Complaint | None:
    if s.entry or s.in_block or s.kind in ("", "RBRACE", "COMMA"):
        return None
    if s.kind == "LBRACE":
        said = finding(s.span, "this `{` belongs to no statement", label="nothing stands before it",
                       help="braces stand behind the statement that they belong to")  # fmt: skip
        return Complaint(said)
    return Complaint(finding(s.span, f"no statement begins with `{shown(s.word)}`", name="unknown-statement",
                             label="not a word that a line can begin with", help=_BEGINNINGS))  # fmt: skip


def bench_without_braces(s: Situation) -> Complaint | None:
    """`bench source 2 V`: the word reads as a name, since no list follows it."""
    first = s.entry[0] if s.entry else None
    word, start = (str(first), first.start_pos) if first is not None else (s.word, s.span.start)
    if word != "bench" or s.inside or len(s.entry) > 1 or s.kind not in ("NAME", "NUMBER", "LBRACE", *ENDS):
        return None
    begin = start + len(word)
    written = s.text[begin : s.line_end].split("#")[0].rstrip()
    inner, at = written.strip(",()[]{}: \t"), s.at(begin, begin + len(written))
    said = finding(s.at(start, begin), "what stands on the bench is said in braces", label="no `{` follows it",
                   help="write `bench { source 2 V, series 10 ohm }`",
                   fix=write(at, f" {{ {inner} }}", title="put it in braces") if inner else None)  # fmt: skip
    return Complaint(said)


CASES: tuple[Case, ...] = (bench_without_braces, _statement_word, _bad_beginning)
