"""Where the parser stopped, and what can be said and done about it.

In: nothing (plain values). `parser.py` makes a `Situation`, the cases in `signs.py` and `complaints.py`
turn it into a `Complaint`. Refuses to know what is wrong.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic, Edit, Fix, Label, Severity
from shuntwise.source import Source, Span
from shuntwise.syntax.automaton import Token
from shuntwise.syntax.tables import PART_KINDS

_LONGEST_LINE = 1000
"""How far a message looks along a line: a file that is one endless line must not cost its square."""

BLOCK_HEADS = frozenset(
    ("amplifier", "driver", *PART_KINDS, "use", "connector", "holes", "hole", "tags", "tag", "track", "fixing", "cut",
     "drill", "jumper", "bus", "lead", "place", "bench", "measured")
)  # fmt: skip
"""Statements whose braces hold attributes, or pins, or how a part is placed; those of `BODY_HEADS` hold statements."""
BODY_HEADS = ("leg", "network", "variant", "choice", "position", "board", "layout")
"""Statements whose braces hold statements; a leg is the only one that never holds declarations."""
MOST_LINES = {"board": 2000, "layout": 2000, "place": 200}
"""More lines than this in the braces of one of these are refused unread."""

_LONGEST_TITLE = 80


@dataclass(frozen=True)
class Situation:
    """The tokens of the entry so far and the offending one.

    `text` is what is read: the source's text, but for line ends. `kind` is the offending token's terminal,
    empty if the characters form none, `word` its text. `expected` are the terminals that could stand in its
    place; `fits(A, B)` says whether A and then B could. `inside` is the statement whose braces are open, `surplus` how
    many more braces of the text are opened than closed, `statements` the words that a statement begins with.
    """

    source: Source
    text: str
    entry: tuple[Token, ...]
    span: Span
    kind: str
    word: str
    expected: frozenset[str]
    fits: Callable[..., bool]
    inside: str
    surplus: int
    statements: tuple[str, ...]

    @property
    def head(self) -> str:
        return str(self.entry[0]) if self.entry else ""

    @property
    def last(self) -> Token | None:
        return self.entry[-1] if self.entry else None

    @property
    def in_block(self) -> bool:
        """Among attributes, as opposed to statements?"""
        return self.inside in BLOCK_HEADS

    @property
    def line_end(self) -> int:
        """The end of the line of the offending place."""
        start = self.span.start
        end = self.text.find("\n", start, start + _LONGEST_LINE)
        return end if end >= 0 else min(len(self.source.text), start + _LONGEST_LINE)

    @property
    def rest(self) -> str:
        """The line from the offending place on."""
        return self.text[self.span.start : self.line_end]

    def begins_statement(self, at: int, more: str = "") -> bool:
        """Does a word stand at `at` that begins a statement, with a blank and perhaps `more` behind it?"""
        return re.compile(rf"(?:{'|'.join(self.statements)})[ \t]{more}").match(self.text, at) is not None

    @property
    def indent(self) -> str:
        """The blanks that the line begins with."""
        start = self.text.rfind("\n", max(0, self.span.start - _LONGEST_LINE), self.span.start) + 1
        line = self.text[start : start + 80]
        return line[: len(line) - len(line.lstrip(" \t"))]

    def at(self, start: int, end: int) -> Span:
        """A span of the source, which may lack the line end that `text` ends with."""
        return Span(self.source, start, min(end, len(self.source.text)))

    def span_of(self, token: Token) -> Span:
        """The place of what was written for the token, without the line ends that an arrow may have swallowed."""
        start = token.start_pos
        written = self.text[start : token.end_pos].split("\n", maxsplit=1)[0].rstrip()
        return self.at(start, start + len(written))

    def behind_last(self) -> Span:
        """The empty place right behind the last sound token, where something missing belongs."""
        end = self.span_of(self.entry[-1]).end if self.entry else self.span.start
        return self.at(end, end)


@dataclass(frozen=True)
class Mend:
    """How to read on as if it had been written right.

    Take in `tokens` (in place of the whole entry so far, if `anew`) and go on at `resume`. It is a `guess` if
    the token that failed has yet to show that it fits behind them; if it does not, the entry is lost without
    another word. `dropped` says that words with a meaning are skipped on the way.
    """

    tokens: tuple[Token, ...]
    resume: int
    anew: bool = False
    guess: bool = False
    dropped: bool = False


@dataclass(frozen=True)
class Complaint:
    """A finding, and how to read on; without a mend the entry is lost, up to `lost_until` where that is known."""

    finding: Diagnostic
    mend: Mend | None = None
    lost_until: int | None = None


VALUE_LIKE = ("NAME", "NUMBER", "CODE", "STRING", "COMMA_NUMBER")
ENDS = ("_NL", "$END", "RBRACE")
"""The grammar's names for what may begin a value, and for what ends a statement."""

Case = Callable[[Situation], Complaint | None]


def token(terminal: str, text: str, at: Span) -> Token:
    """A token that the text does not hold, as if it stood at a place."""
    return Token(terminal, text, at.start, at.end)


def finding(
    at: Span,
    headline: str,
    *,
    name: str = "syntax-error",
    label: str = "",
    help: str = "",
    why: str = "",
    places: Sequence[Label] = (),
    fix: Fix | None = None,
) -> Diagnostic:
    return Diagnostic(name, Severity.ERROR, headline, at, label, why, help, tuple(places), (fix,) if fix else ())


def write(span: Span, text: str, *, safe: bool = False, title: str = "") -> Fix:
    """The fix that replaces a span: `write ...`, or `remove ...` where nothing takes its place."""
    words = f"write `{text.strip()}`" if text.strip() else f"remove `{span.text}`"
    words = words if len(words) < _LONGEST_TITLE else "replace it"
    confidence = Confidence.SAFE if safe else Confidence.NEEDS_REVIEW
    return Fix(title or words, (Edit(span, text),), confidence)


def code_point(char: str) -> str:
    """`U+00A0, no-break space`."""
    name = unicodedata.name(char, "").lower()
    return f"U+{ord(char):04X}" + (f", {name}" if name else "")


def shown(word: str) -> str:
    """A word as a headline can show it."""
    first = word.split("\n", maxsplit=1)[0][:40]
    return first if first.isprintable() else code_point(first[0]).split(",")[0]
