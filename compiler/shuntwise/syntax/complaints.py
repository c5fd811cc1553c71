"""What to say when a text cannot be parsed.

In: the `Situation` in which the parser stopped. Out: one `Complaint`. The cases are tried in order, the
most telling first; grammar/malformed.md holds a sample of each with its message. No name of a grammar
terminal ever reaches the user. The cases themselves stand in modules by what they are about: `signs.py` (single
characters), `beginnings.py` (a line's first word), `braces.py`, `walks.py`, `board_slips.py` (boards and layouts),
`joints.py`, `namings.py`, `quotes.py`, `values.py`, and `box_slips.py` for a box's own file.

Wherever it is plain what was meant, the complaint carries a mend, so that one slip costs one message and
nothing else: the parser goes on as if it had been written right.
"""

from __future__ import annotations

from shuntwise.syntax import beginnings, board_slips, box_slips, braces, joints, namings, quotes, signs, values, walks
from shuntwise.syntax.situation import (
    ENDS,
    Case,
    Complaint,
    Mend,
    Situation,
    code_point,
    finding,
    shown,
)


def _breaks_off(s: Situation) -> Complaint | None:
    if s.kind not in ENDS or s.last is None:
        return None
    at = s.span_of(s.last)
    word = at.text or s.last.strip() or s.head  # a token that a mend put in has no text of its own
    said = finding(
        at, f"the line breaks off behind `{word}`", label="something must follow", help=_expected_in_words(s)
    )
    return Complaint(said)


def _anything_else(s: Situation) -> Complaint:
    word = shown(s.word)
    said = finding(s.span, f"`{word}` cannot stand here",
                   label="not expected" if s.word.isprintable() else code_point(s.word[0]),
                   help=_expected_in_words(s))  # fmt: skip
    whole = s.fits("_NL") and s.entry and s.entry[0].type not in ("NAME", "PAD", "LPAR", "EXPECT")
    if whole and not s.in_block and not set(s.rest) & set("{}"):
        return Complaint(said, Mend((), s.line_end, dropped=True))
    return Complaint(said)


_WORDS_FOR = (
    ("ARROW", "`--`"),
    ("NAME", "a name"),
    ("PAD", "a pad such as `woofer+`"),
    ("NUMBER", "a value such as `8 ohm`"),
    ("STRING", "a text in quotes"),
    ("LBRACE", "`{`"),
    ("RBRACE", "`}`"),
    ("COMMA", "a comma"),
    ("COLON", "`:` and what was read"),
    ("EQUAL", "`=`"),
    ("INTO", "`into`"),
    ("AND", "`and`"),
    ("AS", "`as`"),
    ("TO", "`to`"),
    ("OF", "`of`"),
    ("BECAUSE", '`because "..."`'),
    ("FINDING", "the name of a finding"),
    ("LPAR", "`(`"),
    ("RPAR", "`)`"),
    ("VBAR", "`|`"),
    ("_NL", "the end of the line"),
)


def _expected_in_words(s: Situation) -> str:
    *most, last = [words for terminal, words in _WORDS_FOR if terminal in s.expected] or [""]
    return f"what can stand here: {', '.join(most)}{' or ' if most else ''}{last}" if last else ""


CASES: tuple[Case, ...] = (
    board_slips.in_board,
    walks.word_begins_walk,
    walks.sign_apart,
    walks.single_dash,
    walks.unclosed_bracket,
    walks.unopened_bracket,
    values.in_walk,
    values.unit_first,
    values.unit_behind_code,
    namings.dash_in_name,
    *signs.CASES,
    *beginnings.CASES,
    walks.walks_on_one_line,
    namings.misspelt_word,
    namings.cut_in_two,
    quotes.unquoted_text,
    quotes.expectation,
    quotes.inner_quote,
    quotes.quoted_value,
    namings.two_word_name,
    walks.ports_without_brackets,
    joints.comma_before_key,
    joints.missing_joint,
    braces.missing_brace,
    namings.missing_name,
    joints.next_statement,
    braces.attributes_without_braces,
    braces.stray_brace,
    joints.extra_comma,
    braces.inner_brace,
    walks.square_bracket,
    board_slips.otherwise,
    _breaks_off,
)


BOX_CASES: tuple[Case, ...] = (
    values.unit_behind_code,
    *box_slips.CASES,
    *signs.CASES,
    namings.misspelt_word,
    namings.cut_in_two,
    quotes.unquoted_text,
    quotes.inner_quote,
    quotes.quoted_value,
    joints.comma_before_key,
    joints.missing_joint,
    box_slips.missing_joint,
    joints.next_statement,
    braces.attributes_without_braces,
    braces.stray_brace,
    joints.extra_comma,
    braces.inner_brace,
    _breaks_off,
)
"""Those of a box's own file."""


def complain(situation: Situation, cases: tuple[Case, ...] = CASES) -> Complaint:
    """The most telling complaint about the place where the parser stopped."""
    for case in cases:
        complaint = case(situation)
        if complaint is not None:
            return complaint
    return _anything_else(situation)


def complain_of_box(situation: Situation) -> Complaint:
    """The same in a box's own file."""
    return complain(situation, BOX_CASES)
