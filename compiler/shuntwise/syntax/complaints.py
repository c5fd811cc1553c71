"""What to say when a text cannot be parsed.

In: the `Situation` in which the parser stopped. Out: one `Complaint`. The cases are tried in order, the
most telling first; grammar/malformed.md holds a sample of each with its message. No name of a grammar
terminal ever reaches the user.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from lark import Token

from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic, Edit, Fix, Severity
from shuntwise.source import Source, Span
from shuntwise.syntax.words import SAID_FOR, STATEMENTS, nearest


@dataclass(frozen=True)
class Situation:
    """Where the parser stopped: the tokens of the entry so far, the offending one, what could follow."""

    source: Source
    entry: tuple[Token, ...]
    span: Span
    kind: str
    text: str
    expected: frozenset[str]
    inside: str
    in_braces: bool

    @property
    def head(self) -> str:
        return str(self.entry[0]) if self.entry else ""

    def head_span(self) -> Span:
        token = self.entry[0]
        return Span(self.source, token.start_pos or 0, token.end_pos or 0)

    @property
    def after(self) -> str:
        """The rest of the line from the offending place."""
        end = self.source.text.find("\n", self.span.start)
        return self.source.text[self.span.start : end if end >= 0 else None]


@dataclass(frozen=True)
class Complaint:
    """A finding, and what the slip may be read as: a text to read in its place, or None if nothing is sure."""

    finding: Diagnostic
    read_as: str | None = None


def _finding(
    at: Span,
    headline: str,
    *,
    name: str = "syntax-error",
    label: str = "",
    help: str = "",
    why: str = "",
    fixes: Sequence[Fix] = (),
) -> Diagnostic:
    return Diagnostic(name, Severity.ERROR, headline, at, label, why, help, fixes=tuple(fixes))


def _replace(span: Span, text: str, title: str, confidence: Confidence = Confidence.NEEDS_REVIEW) -> Fix:
    return Fix(title, (Edit(span, text),), confidence)


def unclosed_brace(brace: Span) -> Diagnostic:
    return _finding(
        brace,
        "this `{` is never closed",
        name="unclosed-brace",
        label="opened here",
        help="write `}` where the list ends",
        why="everything up to the next statement would count as part of it",
    )


# --- the cases


def _lone_return(s: Situation) -> Diagnostic | None:
    if s.text != "\r":
        return None
    return _finding(
        s.span,
        "a carriage return stands alone here",
        help="save the file with LF or CR LF line ends",
        label="not a line end",
    )


def _unclosed_text(s: Situation) -> Diagnostic | None:
    if s.text != '"':
        return None
    rest = s.after.rstrip()
    at = Span(s.source, s.span.start, s.span.start + len(rest))
    if rest.count('"') > 1:
        return _finding(at, "no quoted text can stand here", help="only titles, notes, paths and reasons are quoted")
    return _finding(at, "this text has no closing quote", help='end it with `"` on the same line')


def _unknown_statement(s: Situation) -> Diagnostic | None:
    """A line that begins with a word that is no statement, and is not a walk either."""
    if s.entry and s.entry[0].type == "NAME" and len(s.entry) == 1 and s.inside not in _ITEM_BLOCKS:
        word, at = s.head, s.head_span()
    elif not s.entry and s.kind == "NAME":
        word, at = s.text, s.span
    else:
        return None
    if s.text in _ARROW_SLIPS or s.text == "-":
        return None
    said = SAID_FOR.get(word.casefold()) or nearest(word, STATEMENTS)
    if said is None and s.text in ("+", "="):
        return None
    fixes = (_replace(at, said, f"write `{said}`"),) if said else ()
    return _finding(
        at,
        f"no statement begins with `{word}`",
        name="unknown-statement",
        label="not a word that a line can begin with",
        help=f"write `{said}`" if said else "a line begins with a word such as driver, coil, capacitor, resistor, leg or expect, "
        "or is a walk in which things are joined by `--`",
        fixes=fixes,
    )


_ITEM_BLOCKS = ("amplifier", "driver", "coil", "capacitor", "resistor", "lamp", "link", "use")
_ARROW_SLIPS = ("→", "—", "–", "⟶", ">", "-", "->", "=>", "~", "―", "−")


def _wrong_arrow(s: Situation) -> Diagnostic | None:
    if s.entry and "ARROW" in s.expected and s.text[:1] in "→—–⟶>-=~―−":
        text = s.after
        width = 2 if text[:2] in ("->", "=>") else 1
        at = Span(s.source, s.span.start, s.span.start + width)
        return _finding(
            at,
            f"`{at.text}` does not join two things",
            label="`--` belongs here",
            help="things along a walk are joined by `--`",
            fixes=(_replace(at, "--", "write `--`", Confidence.SAFE),),
        )
    return None


def _needless_equals(s: Situation) -> Diagnostic | None:
    if s.text not in ("=", ":") or not s.entry:
        return None
    return _finding(
        s.span,
        f"no `{s.text}` is needed here",
        label="leave it out",
        help="a value follows its name directly: `coil L1 0.82 mH`, `dcr 0.28 ohm`; only `let` and `set` take `=`",
        fixes=(_replace(s.span, "", f"remove the `{s.text}`", Confidence.SAFE),),
    )


def _needless_mark(s: Situation) -> Diagnostic | None:
    if s.text != ";":
        return None
    return _finding(
        s.span,
        "no `;` is needed",
        label="a statement ends with its line",
        help="put the next statement on a line of its own",
        fixes=(_replace(s.span, "", "remove the `;`", Confidence.SAFE),) if not s.after[1:].strip() else (),
    )


def _comment_marks(s: Situation) -> Diagnostic | None:
    if s.text in ("*", "/") and s.after[:2] in ("//", "/*"):
        return _finding(s.span, "a comment begins with `#`", help="write `#` in front of the comment")
    return None


def _missing_name(s: Situation) -> Diagnostic | None:
    if s.expected - {"FROM"} == {"NAME"} and s.kind != "NAME" and len(s.entry) == 1:
        what = s.head
        return _finding(
            s.span,
            f"`{what}` needs a name before anything else",
            label="the name belongs here",
            help=_NAME_HELP.get(what, f"write a name behind `{what}`"),
        )
    return None


_NAME_HELP = {
    "coil": "say which coil: `coil L1 0.82 mH`",
    "capacitor": "say which capacitor: `capacitor C1 6.8 uF`",
    "resistor": "say which resistor: `resistor R1 3.3 ohm`",
    "driver": "say which driver: `driver woofer 8 ohm`",
    "leg": "say which driver the leg feeds: `leg woofer { ... }`",
    "expect": "say what is expected: `expect impedance above 4 ohm from 20 Hz to 20 kHz`",
}


def _missing_comma(s: Situation) -> Diagnostic | None:
    """Two attributes on one line without a comma, or two values in a row."""
    if not s.in_braces or not s.entry or s.inside not in _ITEM_BLOCKS:
        return None
    if s.kind in ("NAME", "NUMBER", "CODE", "STRING", "COMMA_NUMBER") and "COMMA" in s.expected:
        last = s.entry[-1].end_pos or 0
        at = Span(s.source, last, last)
        return _finding(
            s.span,
            f"a comma is missing before `{s.text}`",
            label="a new attribute begins here",
            help="attributes on one line have commas between them",
            fixes=(_replace(at, ",", "put a comma between them"),),
        )
    return None


def _unopened_brace(s: Situation) -> Diagnostic | None:
    if s.text != "}" or "RBRACE" in s.expected:
        return None
    if not s.in_braces:
        return _finding(s.span, "this `}` closes nothing", label="no `{` is open here", help="remove it")
    return None


def _brackets(s: Situation) -> Diagnostic | None:
    if s.text in ("[", "]"):
        return _finding(
            s.span, f"`{s.text}` has no meaning here", help="attributes stand in `{ }`, parts in parallel in `( | )`"
        )
    return None


def _breaks_off(s: Situation) -> Diagnostic | None:
    if s.kind not in ("_NL", "$END") and s.text != "}":
        return None
    last = s.entry[-1] if s.entry else None
    start = (last.start_pos or 0) if last is not None else s.span.start
    end = start + len(str(last).rstrip()) if last is not None else s.span.start
    what = f"`{str(last).split()[0]}`" if last is not None else "this"
    return _finding(
        Span(s.source, start, end),
        f"the line breaks off behind {what}",
        label="something must follow",
        help=_expected_in_words(s),
    )


_WORDS_FOR = (
    ("ARROW", "`--`"),
    ("NAME", "a name"),
    ("PAD", "a pad such as `woofer+`"),
    ("NUMBER", "a value such as `8 ohm`"),
    ("STRING", "a text in quotes"),
    ("LBRACE", "`{`"),
    ("RBRACE", "`}`"),
    ("COMMA", "a comma"),
    ("EQUAL", "`=`"),
    ("INTO", "`into`"),
    ("AND", "`and`"),
    ("AS", "`as`"),
    ("TO", "`to`"),
    ("BECAUSE", '`because "..."`'),
    ("FINDING", "the name of a finding"),
    ("RPAR", "`)`"),
    ("VBAR", "`|`"),
    ("_NL", "the end of the line"),
)


def _expected_in_words(s: Situation) -> str:
    # The lexer's tables know no difference between a list of attributes and a body of statements.
    expected = s.expected - {"PAD"} if s.inside in _ITEM_BLOCKS else s.expected
    said = [words for terminal, words in _WORDS_FOR if terminal in expected]
    if not said:
        return ""
    return "what can stand here: " + (", ".join(said[:-1]) + " or " + said[-1] if len(said) > 1 else said[0])


def _anything_else(s: Situation) -> Diagnostic:
    shown = s.text.split("\n", maxsplit=1)[0][:40]
    return _finding(
        s.span,
        f"`{shown}` cannot stand here" if shown.isprintable() and shown else "a character that cannot be read",
        label="not expected",
        help=_expected_in_words(s),
    )


_READ_AS: dict[Callable[[Situation], Diagnostic | None], str] = {
    _wrong_arrow: "--",
    _needless_equals: "",
    _needless_mark: "",
    _missing_comma: ",",
}
"""Slips after which reading goes on as if the author had written the right thing."""

_CASES: tuple[Callable[[Situation], Diagnostic | None], ...] = (
    _lone_return,
    _unclosed_text,
    _wrong_arrow,
    _unknown_statement,
    _needless_equals,
    _needless_mark,
    _comment_marks,
    _missing_name,
    _missing_comma,
    _unopened_brace,
    _brackets,
    _breaks_off,
)


def complain(situation: Situation) -> Complaint:
    """The most telling finding for the place where the parser stopped."""
    for case in _CASES:
        finding = case(situation)
        if finding is not None:
            return Complaint(finding, _READ_AS.get(case))
    return Complaint(_anything_else(situation))
