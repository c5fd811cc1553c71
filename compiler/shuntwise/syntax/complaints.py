"""What to say when a text cannot be parsed.

In: the `Situation` in which the parser stopped. Out: one `Complaint`. The cases are tried in order, the
most telling first; grammar/malformed.md holds a sample of each with its message. No name of a grammar
terminal ever reaches the user. Slips of single characters are in `signs.py`, those of a line's first word in
`beginnings.py`.

Wherever it is plain what was meant, the complaint carries a mend, so that one slip costs one message and
nothing else: the parser goes on as if it had been written right.
"""

from __future__ import annotations

import re

from shuntwise import units
from shuntwise.source import Span
from shuntwise.syntax import beginnings, signs
from shuntwise.syntax.automaton import Token
from shuntwise.syntax.situation import (
    BLOCK_HEADS,
    ENDS,
    VALUE_LIKE,
    Case,
    Complaint,
    Mend,
    Situation,
    code_point,
    finding,
    shown,
    token,
    write,
)
from shuntwise.syntax.tables import PART_KINDS
from shuntwise.syntax.words import STATEMENTS, nearest

_STATEMENT = re.compile(rf"(?:{'|'.join(STATEMENTS)})[ \t]+[\w\"]")
_BODY_HEADS = ("leg", "network", "variant")
_STATION_LIKE = ("NAME", "PAD", "LPAR")


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


# --- pads and walks


def _word_begins_walk(s: Situation) -> Complaint | None:
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


def _sign_apart(s: Situation) -> Complaint | None:
    """`woofer + -- return`: a blank before the sign of a pad."""
    last = s.last
    if last is None or s.word not in ("+", "-") or s.in_block or not (last.type == "NAME" or s.head == "input"):
        return None
    if last.end_pos == s.span.start or not re.match(r"[ \t]*(?:--|[},|)#]|$)", s.rest[1:]):
        return None
    at, blank = s.span_of(last).to(s.span), s.at(last.end_pos, s.span.start)
    pad = str(last) + s.word
    said = finding(at, f"the pad `{pad}` is written in one word", label="no blank before the sign",
                   fix=write(blank, "", safe=True, title=f"write `{pad}`"))  # fmt: skip
    return Complaint(said, Mend((*s.entry[:-1], token("PAD", pad, at)), s.span.end, anew=True))


def _single_dash(s: Situation) -> Complaint | None:
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


def _walks_on_one_line(s: Situation) -> Complaint | None:
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


def _unclosed_bracket(s: Situation) -> Complaint | None:
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


def _unopened_bracket(s: Situation) -> Complaint | None:
    """`L1 | C1) -- woofer+`: a `|` or `)` of a group that was never opened."""
    if not s.entry or s.word not in ("|", ")") or _open_brackets(s):
        return None
    return Complaint(
        finding(s.span, f"no `(` is open for this `{s.word}`", label="not in a group", help="write `(` where it begins")
    )


# --- a word or sign inside a statement


def _misspelt_word(s: Situation) -> Complaint | None:
    """`Into` or `beacuse` where only one word of the language could stand."""
    words = [terminal.lower() for terminal in sorted(s.expected) if terminal in _INNER]
    right = nearest(s.word, words) if s.kind == "NAME" and words else None
    if right is None:
        return None
    said = finding(s.span, f"`{s.word}` is written `{right}` here", label="not a word of the language",
                   fix=write(s.span, right, safe=s.word.casefold() == right))  # fmt: skip
    return Complaint(said, Mend((token(right.upper(), right, s.span),), s.span.end))


_INNER = frozenset(
    ("INTO", "AND", "AS", "TO", "OF", "ON", "AT", "BECAUSE", "WITHIN", "ABOVE", "BELOW", "FROM", "GIVEN", "LIBRARY")
)
"""The small words inside statements."""


def _cut_in_two(s: Situation) -> Complaint | None:
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


def _unquoted_text(s: Situation) -> Complaint | None:
    """A title, a reason or a path without its quotes."""
    note = s.in_block and s.head == "note" and len(s.entry) == 2
    if not note and not ("STRING" in s.expected and not s.in_block and s.kind in (*VALUE_LIKE, *_INNER, "KIND")):
        return None
    start = s.span_of(s.entry[1]).start if note else s.span.start
    text = s.text[start : s.line_end].split("#")[0]
    if note:
        text = re.split(r"[,}]", text)[0]
    elif s.head == "include":
        text = text.split(maxsplit=1)[0]
    else:
        text = text.removesuffix("{") if s.fits("STRING", "LBRACE") and text.rstrip().endswith("{") else text
    text = text.rstrip(' {"' if s.head == "variant" else ' "\t\r').rstrip()
    if '"' in text:
        return None
    end = start + len(text) + (s.text[start + len(text)] == '"')
    at, right = s.at(start, end), f'"{text}"'
    said = finding(at, "this text stands in quotes", label='quotes `"` belong around it',
                   fix=write(at, right, safe=True))  # fmt: skip
    tokens = (*s.entry[:-1], token("STRING", right, at)) if note else (token("STRING", right, at),)
    return Complaint(said, Mend(tokens, end, anew=note))


def _expectation(s: Situation) -> Complaint | None:
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


def _inner_quote(s: Situation) -> Complaint | None:
    """`"The "Big" box"`: the text ends at the second quote."""
    last = s.last
    if last is None or last.type != "STRING" or '"' not in s.rest:
        return None
    start = last.start_pos
    at = s.at(start, s.span.start + s.rest.rindex('"') + 1)
    right = '"' + at.text[1:-1].replace('"', "'") + '"'
    said = finding(at, "a text ends at its second quote", label="more than two quotes", fix=write(at, right))
    return Complaint(said, Mend((*s.entry[:-1], token("STRING", right, at)), at.end, anew=True))


def _quoted_value(s: Situation) -> Complaint | None:
    if s.kind != "STRING" or not s.fits("NUMBER"):
        return None
    said = finding(s.span, "a value stands without quotes", label="a text",
                   help="titles, notes, paths and reasons are quoted", fix=write(s.span, s.word[1:-1]))  # fmt: skip
    return Complaint(said)


def _comma_before_key(s: Situation) -> Complaint | None:
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


_JOINTS = (
    (",", "COMMA"), ("--", "ARROW"), ("into", "INTO"), ("as", "AS"), ("and", "AND"), ("to", "TO"), ("=", "EQUAL"),
    ("of", "OF"), ("on", "ON"), ("because", "BECAUSE"), (")", "RPAR"), ("(", "LPAR"),
)  # fmt: skip
"""What may be missing between two things, the likeliest first."""


def _missing_joint(s: Situation) -> Complaint | None:
    """Something small is missing, and with it the rest would fit."""
    if s.kind in ("", "ARROW", "COMMA", "EQUAL", "RPAR", *ENDS) or not s.entry:
        return None
    if s.fits("_NL") and (s.in_block is False) and _STATEMENT.match(s.text, s.span.start):
        return None
    for text, terminal in _JOINTS:
        if (terminal == "COMMA" and not s.in_block) or not s.fits(terminal, s.kind):
            continue
        gap = s.behind_last()
        right = text if text in (",", ")") else f" {text}"
        said = finding(s.span, f"`{text}` is missing before `{shown(s.word)}`", help=_JOINT_HELP.get(text, ""),
                       fix=write(gap, right, safe=text not in ("--", "(", ")")))  # fmt: skip
        return Complaint(said, Mend((token(terminal, text, gap),), s.span.start, guess=True))
    return None


_JOINT_HELP = {
    ",": "attributes on one line have commas between them",
    "--": "things along a walk are joined by `--`",
    "(": "a network names its ports: `network pad (source, load, back) { ... }`",
}


def _ports_without_brackets(s: Situation) -> Complaint | None:
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


def _missing_brace(s: Situation) -> Complaint | None:
    """`leg woofer` and then walks: the `{` is missing."""
    if s.head not in _BODY_HEADS or "LBRACE" not in s.expected or not s.fits("LBRACE", s.kind):
        return None
    gap = s.behind_last()
    said = finding(gap, f"`{{` is missing behind this `{s.head}`", label="what belongs to it begins here",
                   help=f"what a {s.head} holds stands in `{{ }}`",
                   fix=write(gap, " {", safe=True) if s.surplus < 0 else None)  # fmt: skip
    return Complaint(said, Mend((token("LBRACE", "{", gap),), s.span.start))


def _missing_name(s: Situation) -> Complaint | None:
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


_NAME_HELP = {
    **{word: f"say which {word}: `{word} {example}`" for word, example in PART_KINDS.items()},
    "driver": "say which driver: `driver woofer 8 ohm`",
    "input": "say which input: `input low`; a single input needs no declaration",
    "posts": "say which posts: `posts high`",
    "testpoint": "say which node: `testpoint middle`",
    "let": "say which name: `let crossover = 2.4 kHz`",
    "set": "say what is set: `set L1 = 0.75 mH`",
    "omit": "say which part: `omit K1 and K2`",
    "fit": "say which part: `fit K1`",
    "leg": "say which driver the leg feeds: `leg woofer { ... }`",
    "network": "say which name: `network pad (source, load, back) { ... }`",
    "use": "say which network: `use pad as P1`",
    "variant": "say which name: `variant hot { ... }`",
    "expect": "say what is expected: `expect impedance above 4 ohm from 20 Hz to 20 kHz`",
}

# --- behind the end of a statement


def _next_statement(s: Situation) -> Complaint | None:
    """Two statements on one line."""
    if not s.entry or s.in_block or not s.fits("_NL") or not _STATEMENT.match(s.text, s.span.start):
        return None
    gap = s.at(s.behind_last().end, s.span.start)
    said = finding(s.span, f"a new statement begins at `{s.word}` without a line of its own",
                   label="a second statement", help="one statement to a line",
                   fix=write(gap, "\n" + s.indent, safe=True, title="begin a new line"))  # fmt: skip
    return Complaint(said, Mend((token("_NL", "\n", gap),), s.span.start))


def _attributes_without_braces(s: Situation) -> Complaint | None:
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


def _two_word_name(s: Situation) -> Complaint | None:
    """`driver mid bass 8 ohm`: the second word reads as a value until the value comes."""
    kinds = [piece.type for piece in s.entry[1:]]
    if s.head not in BLOCK_HEADS or kinds != ["NAME", "NAME"] or s.kind not in ("NUMBER", "CODE"):
        return None
    at = s.span_of(s.entry[1]).to(s.span_of(s.entry[2]))
    whole = "_".join(at.text.split())
    said = finding(at, "a name is one word", label="two words", help=f"write `{whole}`, here and in the wiring",
                   fix=write(at, whole))  # fmt: skip
    return Complaint(said, Mend((s.entry[0], token("NAME", whole, at)), s.span.start, anew=True))


def _dash_in_name(s: Situation) -> Complaint | None:
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


def _stray_brace(s: Situation) -> Complaint | None:
    if s.kind != "RBRACE" or s.inside:
        return None
    said = finding(s.span, "this `}` closes nothing", label="no `{` is open here", fix=write(s.span, ""))
    return Complaint(said, Mend((), s.span.end))


def _extra_comma(s: Situation) -> Complaint | None:
    if s.kind != "COMMA" or s.entry or not s.inside:
        return None
    said = finding(s.span, "one comma too many", label="nothing stands before it", fix=write(s.span, "", safe=True))
    return Complaint(said, Mend((), s.span.end))


def _inner_brace(s: Situation) -> Complaint | None:
    if s.kind != "LBRACE" or not s.in_block:
        return None
    return Complaint(finding(s.span, "braces do not stand in a list of attributes", label="a list inside a list",
                             help="write the attributes one after another"))  # fmt: skip


def _square_bracket(s: Situation) -> Complaint | None:
    if s.word not in ("[", "]"):
        return None
    return Complaint(finding(s.span, f"`{s.word}` has no meaning here",
                             help="attributes stand in `{ }`, parts in parallel in `( | )`"))  # fmt: skip


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
    ("EQUAL", "`=`"),
    ("INTO", "`into`"),
    ("AND", "`and`"),
    ("AS", "`as`"),
    ("TO", "`to`"),
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
    _word_begins_walk,
    _sign_apart,
    _single_dash,
    _unclosed_bracket,
    _unopened_bracket,
    _dash_in_name,
    *signs.CASES,
    *beginnings.CASES,
    _walks_on_one_line,
    _misspelt_word,
    _cut_in_two,
    _unquoted_text,
    _expectation,
    _inner_quote,
    _quoted_value,
    _two_word_name,
    _ports_without_brackets,
    _comma_before_key,
    _missing_joint,
    _missing_brace,
    _missing_name,
    _next_statement,
    _attributes_without_braces,
    _stray_brace,
    _extra_comma,
    _inner_brace,
    _square_bracket,
    _breaks_off,
)


def complain(situation: Situation) -> Complaint:
    """The most telling complaint about the place where the parser stopped."""
    for case in CASES:
        complaint = case(situation)
        if complaint is not None:
            return complaint
    return _anything_else(situation)
