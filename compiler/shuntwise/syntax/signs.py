"""Complaints about characters: signs of other notations, odd quotes, comment marks, what cannot be seen.

In: a `Situation`. Out: a `Complaint`, or None where the trouble is not the character. Nearly all of these
slips leave no doubt about what was meant, so their fixes are safe and reading goes on.
"""

from __future__ import annotations

import re
import unicodedata

from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic, Edit, Fix
from shuntwise.source import Source, Span
from shuntwise.syntax.situation import Case, Complaint, Mend, Situation, code_point, finding, token, write

TERMINALS = {
    "--": "ARROW", "{": "LBRACE", "}": "RBRACE", "(": "LPAR", ")": "RPAR", "|": "VBAR", ",": "COMMA", "=": "EQUAL",
    "+": "PLUS", "-": "MINUS", "*": "STAR", "/": "SLASH", "^": "CIRCUMFLEX", "%": "PERCENT", ".": "DOT",
    "and": "AND", "above": "ABOVE", "below": "BELOW", "within": "WITHIN",
}  # fmt: skip
"""The signs of the language (and words that take the place of a sign), with the grammar's names for them."""

_SIGNS: tuple[tuple[re.Pattern[str], str], ...] = tuple(
    (re.compile(pattern, re.MULTILINE), right)
    for pattern, right in (
        (r"[>=]=|=?>|≥", "above"),
        (r"[<=]=|<|≤", "below"),
        (r"±|\+/?-", "within"),
        (r"<?[-–—―−‒‐‑─=~]*[>→⟶➔⇒]+|<?[-–—―−‒‐‑─~]+|={2,}", "--"),
        (r"[–—―−‒‐‑─]", "-"),
        (r"[×·⋅∙•]", "*"),
        (r"[÷∕⁄]", "/"),
        (r"[:=]=|:", "="),
        (r"[&+,](?=[ \t]*[^\W\d])", "and"),
        (r"[;、]", ","),
        (r"[:(\[](?=[ \t]*$)", "{"),
        (r"[)\]](?=[ \t]*$)", "}"),
    )
)
"""Signs of other notations, with what is written in their place wherever that could stand."""

_HELP = {
    "--": "things along a walk are joined by `--`",
    "and": "names are joined by `and`",
    ",": "attributes and walks on one line have commas between them",
}

_QUOTED = re.compile(r"[“”„‟«»‹›‘’‚‛″＂'`´]([^\"\n“”„‟«»‹›″＂]*?)[“”„‟«»‹›‘’‛″＂'`´\"]")
_MARKED = re.compile(r"\w+")
_PAD_SIGN = re.compile(r"[–—―−‒‐‑](?=[ \t]*(?:--|[–—―−→|),}#\n]|$))", re.MULTILINE)
_BEGINS = tuple(
    (re.compile(pattern), terminal)
    for pattern, terminal in (
        (r"\w+[+-](?!-)", "PAD"), (r"[\d.]", "NUMBER"), (r'"', "STRING"), (r"--", "ARROW"), (r"\{", "LBRACE"),
        (r"\}", "RBRACE"), (r"\(", "LPAR"), (r"\)", "RPAR"), (r"\|", "VBAR"), (r",", "COMMA"), (r"=", "EQUAL"),
    )
)  # fmt: skip
"""How what follows on a line begins, and the grammar's name for it."""


def lone_returns(source: Source) -> tuple[str, tuple[Diagnostic, ...]]:
    """The text with every CR that stands alone read as a line end, and one finding on all of them.

    Left in a comment, one would hide all that follows it up to the next LF.
    """
    places = [match.start() for match in re.finditer(r"\r(?!\n)", source.text)]
    if not places:
        return source.text, ()
    fix = Fix("write line ends", tuple(Edit(Span(source, at, at + 1), "\n") for at in places), Confidence.SAFE)
    many = f"{len(places)} carriage returns stand alone" if len(places) > 1 else "a carriage return stands alone"
    said = finding(Span(source, places[0], places[0] + 1), many, label="read as a line end",
                   help="save the file with LF or CR LF line ends", fix=fix)  # fmt: skip
    return re.sub(r"\r(?!\n)", "\n", source.text), (said,)


def _open_text(s: Situation) -> Complaint | None:
    """A quote that nothing closes: the text is read up to the end of the line, or up to the brace there."""
    if s.word != '"':
        return None
    rest = s.rest.rstrip()
    if s.head == "include":
        rest = rest.split(maxsplit=1)[0]
    for brace, terminal in (("{", "LBRACE"), ("}", "RBRACE")):
        if rest.endswith(brace) and s.fits("STRING", terminal):
            rest = rest[:-1].rstrip()
    at = s.at(s.span.start, s.span.start + len(rest))
    end = s.at(at.end, at.end)
    said = finding(at, "this text has no closing quote", help='end it with `"` on the same line',
                   fix=write(end, '"'))  # fmt: skip
    return Complaint(said, Mend((token("STRING", rest + '"', at),), at.end) if s.fits("STRING") else None)


def _other_quotes(s: Situation) -> Complaint | None:
    match = _QUOTED.match(s.text, s.span.start, s.line_end)
    if match is None or not s.fits("STRING"):
        return None
    at, right = s.at(*match.span()), f'"{match[1]}"'
    said = finding(at, 'texts stand in straight quotes `"`', label="quotes of another kind",
                   fix=write(at, right, safe=True))  # fmt: skip
    return Complaint(said, Mend((token("STRING", right, at),), at.end))


def _comment(s: Situation) -> Complaint | None:
    if s.text[s.span.start : s.span.start + 2] not in ("//", "/*"):
        return None
    return comment_mark(s, s.span.start)


def comment_mark(s: Situation, start: int) -> Complaint:
    """`//` or `/*` from `start` to the end of the line; with a lone brace in it the fix is not safe."""
    at, behind = s.at(start, start + 2), s.text[start : s.line_end]
    said = finding(at, "a comment begins with `#`", label="begins no comment here",
                   fix=write(at, "#", safe=behind.count("{") == behind.count("}")))  # fmt: skip
    return Complaint(said, Mend((), s.line_end))


def _semicolon(s: Situation) -> Complaint | None:
    """A `;` outside braces: the end of a statement, a second statement behind it, or a comment."""
    if s.word != ";" or (s.fits("COMMA") and s.inside):
        return None
    behind = s.rest[1:].strip()
    if not behind:
        said = finding(s.span, "no `;` is needed", label="a statement ends with its line",
                       fix=write(s.span, "", safe=True))  # fmt: skip
        return Complaint(said, Mend((), s.span.end))
    if s.fits("_NL") and (s.begins_statement(s.line_end - len(s.rest[1:].lstrip())) or "--" in behind):
        gap = s.at(s.span.start, s.line_end - len(s.rest[1:].lstrip()))
        said = finding(s.span, "a statement ends with its line, not with `;`",
                       help="put the next one on a line of its own",
                       fix=write(gap, "\n" + s.indent, safe=True, title="begin a new line"))  # fmt: skip
        return Complaint(said, Mend((token("_NL", "\n", s.span),), s.span.end))
    said = finding(s.span, "a comment begins with `#`", label="begins no comment here",
                   fix=write(s.span, "#"))  # fmt: skip
    return Complaint(said, Mend((), s.line_end))


def _long_arrow(s: Situation) -> Complaint | None:
    """`-->` and `---`: an arrow with something on its end."""
    last = s.last
    if last is None or last.type != "ARROW" or last.end_pos != s.span.start or "\n" in last:
        return None
    match = re.compile(r"[->–—]+").match(s.text, s.span.start)
    if match is None:
        return None
    at = s.at(last.start_pos, match.end())
    said = finding(at, f"`{at.text}` is written `--` here", label="write `--`", help=_HELP["--"],
                   fix=write(at, "--", safe=True))  # fmt: skip
    return Complaint(said, Mend((), at.end))


def _double_star(s: Situation) -> Complaint | None:
    last = s.last
    if s.word != "*" or last is None or last.type != "STAR" or last.end_pos != s.span.start:
        return None
    at = s.span_of(last).to(s.span)
    said = finding(at, "`**` is written `^` here", fix=write(at, "^", safe=True))
    return Complaint(said, Mend((*s.entry[:-1], token("CIRCUMFLEX", "^", at)), at.end, anew=True))


def _pad_sign(s: Situation) -> Complaint | None:
    """`woofer−`: a dash of another kind right behind a name, where the walk goes on behind it or ends."""
    last = s.last
    match = _PAD_SIGN.match(s.text, s.span.start)
    if match is None or last is None or last.type != "NAME" or last.end_pos != s.span.start or not s.fits("ARROW"):
        return None
    said = finding(s.at(*match.span()), f"`{match[0]}` is written `-` here", label="write `-`",
                   help="a pad is named with `+` or `-`, as on the keyboard",
                   fix=write(s.at(*match.span()), "-", safe=True))  # fmt: skip
    at = s.at(last.start_pos, match.end())
    return Complaint(said, Mend((*s.entry[:-1], token("PAD", f"{last}-", at)), at.end, anew=True))


def _other_sign(s: Situation) -> Complaint | None:
    for pattern, right in _SIGNS:
        match = pattern.match(s.text, s.span.start)
        if match is not None and _could_be(s, right):
            return _written(s, match.end(), right)
    wide = s.word[:1]
    narrow = unicodedata.normalize("NFKC", wide)
    if wide != narrow and narrow in TERMINALS and s.fits(TERMINALS[narrow]):
        return _written(s, s.span.start + 1, narrow)
    return None


def _could_be(s: Situation, right: str) -> bool:
    match right:
        case "and":
            return s.fits("AND", "NAME")
        case "{":
            return s.fits("LBRACE") and not s.fits("_NL")  # the braces of a leg, which must follow
        case "}":
            return s.fits("RBRACE") and not s.entry
    return s.fits(TERMINALS[right])


def _written(s: Situation, end: int, right: str) -> Complaint:
    at = s.at(s.span.start, end)
    spaced = right
    if right.isalpha() or right == "{":
        spaced = " " * (not s.text[at.start - 1].isspace()) + right + " " * (not s.text[end].isspace())
    # At the end of a line it would go on with the next one, which may be a statement of its own.
    goes_on = right == "--" and not s.text[end : s.line_end].strip()
    said = finding(at, f"`{at.text}` is written `{right}` here", label=f"write `{right}`", help=_HELP.get(right, ""),
                   fix=write(at, spaced, safe=not goes_on))  # fmt: skip
    return Complaint(said, Mend((token(TERMINALS[right], right, at),), end))


def _needless_sign(s: Situation) -> Complaint | None:
    """`coil L1 = 0.82 mH`, `dcr: 0.3 ohm`, `±5 %`: a sign before a value that needs none."""
    match = re.compile(r":?=|:|±|\+/?-|\+").match(s.text, s.span.start)
    if match is None or not (s.entry or s.in_block) or not s.fits("NUMBER"):
        return None
    at = s.at(*match.span())
    if match[0] in (":", "=", ":="):
        help_text = "a value follows its name: `coil L1 0.82 mH`, `dcr 0.28 ohm`; only `let` and `set` take `=`"
    else:
        help_text = "a tolerance counts both ways: `5 %`"
    behind = at.end + len(s.rest[at.end - at.start :]) - len(s.rest[at.end - at.start :].lstrip())
    right = "" if s.text[at.start - 1].isspace() else " "
    said = finding(at, f"no `{at.text}` is needed here", label="leave it out", help=help_text,
                   fix=write(s.at(at.start, behind), right, safe=True, title=f"remove `{at.text}`"))  # fmt: skip
    return Complaint(said, Mend((), at.end))


def _apart(s: Situation) -> Complaint | None:
    """A letter and its accent stored as two characters, as some systems do in file names and copied text."""
    if s.kind or unicodedata.category(s.word) not in ("Mn", "Mc", "Me"):
        return None
    start = end = s.span.start
    last = s.last
    if last is not None and last.type == "NAME" and last.end_pos == start:
        start = last.start_pos
    while end < len(s.source.text) and (s.text[end].isalnum() or unicodedata.category(s.text[end])[0] == "M"):
        end += 1
    at = s.at(start, end)
    whole = unicodedata.normalize("NFC", at.text)
    if start < s.span.start and _MARKED.fullmatch(whole):
        said = finding(at, f"`{whole}` is stored with its accents apart", label="letter and accent are two characters",
                       help="type it again", why="two names that look the same would not be the same",
                       fix=write(at, whole, safe=True))  # fmt: skip
        return Complaint(said, Mend((*s.entry[:-1], token("NAME", whole, at)), end, anew=True))
    return Complaint(finding(s.span, "an accent stands alone here", label=code_point(s.word),
                             help="names are made of letters, digits and `_`"))  # fmt: skip


def _other_digits(s: Situation) -> Complaint | None:
    """Digits of full width, or of another script."""
    match = re.compile(r"[\d.]+").match(s.text, s.span.start)
    if s.kind or match is None or not s.fits("NUMBER"):
        return None
    at = s.at(*match.span())
    plain = "".join(str(unicodedata.decimal(char, char)) for char in at.text)
    said = finding(at, f"`{at.text}` is written `{plain}` here", label="digits of another kind",
                   fix=write(at, plain, safe=True))  # fmt: skip
    return Complaint(said, Mend((token("NUMBER", plain, at),), at.end) if plain.count(".") < 2 else None)


def _unseen(s: Situation) -> Complaint | None:
    """Blanks of other kinds, and characters that nobody can see."""
    if s.kind:
        return None
    char, category = s.word, unicodedata.category(s.word)
    if category[0] not in "ZC":
        return None
    what = {"Zs": "a blank of another kind", "Zl": "a line end of another kind", "Zp": "a line end of another kind"}
    right, safe = {"Zs": (" ", True), "Zl": _line_end(s), "Zp": _line_end(s)}.get(category, ("", True))
    around = s.text[max(0, s.span.start - 1) : s.span.start] + s.text[s.span.end : s.span.end + 1]
    cuts = not right and len(around) == 2 and all(c.isalnum() or c == "_" for c in around)
    safe = safe and not (cuts and around.isdigit())  # in the place of a point it would make another number
    said = finding(s.span, f"{what.get(category, 'an invisible character')} stands here", label=code_point(char),
                   help="write an ordinary one" if right else "remove it",
                   fix=write(s.span, right, safe=safe, title="replace it" if right else "remove it"))  # fmt: skip
    if cuts:
        return Complaint(said)
    tokens = (token("_NL", "\n", s.span),) if right == "\n" and s.fits("_NL") else ()
    return Complaint(said, Mend(tokens, s.span.end))


def _line_end(s: Situation) -> tuple[str, bool]:
    """What a line end of another kind should be, a line end or a blank, and whether that is certain.

    It parts two statements if one may end here, and what follows can begin one and does not fit behind it.
    """
    if not s.fits("_NL"):
        return " ", True
    behind = s.rest[1:].lstrip()
    if not behind or s.begins_statement(s.line_end - len(behind)):
        return "\n", True
    following = next((terminal for pattern, terminal in _BEGINS if pattern.match(behind)), "NAME")
    if following not in ("NAME", "PAD", "LPAR", "RBRACE") and not (following == "NUMBER" and s.in_block):
        return " ", True
    return "\n", not s.fits(following)


CASES: tuple[Case, ...] = (
    _open_text,
    _other_quotes,
    _comment,
    _semicolon,
    _long_arrow,
    _double_star,
    _pad_sign,
    _other_sign,
    _needless_sign,
    _apart,
    _other_digits,
    _unseen,
)
