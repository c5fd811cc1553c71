"""Complaints about the lines of boards and layouts: points, sides, words that join, and which line stands where.

In: the `Situation` in which the parser stopped. Out: a `Complaint`, or None where it is something else.
"""

from __future__ import annotations

import re

from shuntwise import units
from shuntwise.syntax.situation import ENDS, Case, Complaint, Mend, Situation, finding, shown, token, write
from shuntwise.syntax.tables import DESIGN, PART_KINDS
from shuntwise.syntax.words import BOARD_LINES, LAYOUT_LINES, PLACING_LINES, nearest

FORMS = {
    "outline": "outline 220:120 mm",
    "thickness": "thickness 1.6 mm",
    "copper": "copper 0.07 mm on solder side",
    "seen": "seen from solder side",
    "corner": "corner 220:120 mm cut 8 mm",
    "area": "area north from 76:84 mm to 150:114 mm",
    "track": "track 4 mm from 10:55 mm to 10:90 mm",
    "holes": "holes north 5 of 1.3 mm from 82:94 mm to 144:94 mm",
    "hole": "hole lug of 2.2 mm at 10:51 mm",
    "tags": "tags upper 12 from 20:108 mm to 317:108 mm",
    "tag": "tag earth at 20:108 mm",
    "fixing": "fixing 4.3 mm at 8:39 mm",
    "cut": "cut from 185:82 mm to 185:116 mm",
    "drill": "drill h1 1.3 mm at 158:110 mm in north",
    "jumper": "jumper north 1 -- south 2",
    "bus": "bus upper 1 to upper 4",
    "place": "place L1 at 78:57 mm { axis upright, start into north 1, end into north 4 }",
    "lead": "lead out north 3 to input+",
    "depth": "depth 60 mm",
    "layout": "layout on gusset { ... }",
    "axis": "axis 90 deg",
    "leads": "leads into north 1 and south 2",
    "tie": "tie 4.8 mm from 67:57 mm to 39:57 mm",
    "raised": "raised 8 mm",
}
"""How each line is written, by its first word."""

_LINES = {"board": BOARD_LINES, "layout": LAYOUT_LINES, "place": PLACING_LINES}
_ELSEWHERE = {
    **dict.fromkeys(BOARD_LINES, "in a `board`, which tells what is bought"),
    **dict.fromkeys((*LAYOUT_LINES, "lead"), "in a `layout`, which tells what is done to a board"),
    **dict.fromkeys(PLACING_LINES, "in the braces of a `place`"),
    **dict.fromkeys((word.split()[-1] for word in PART_KINDS), "outside: declare it there, and put it here by `place`"),
}
_SAID_FOR = {
    "size": "outline", "strip": "track", "trace": "track", "screw": "fixing", "mounting": "fixing", "lug": "tag",
    "lugs": "tags", "pin": "tag", "zone": "area", "foil": "copper", "wire": "jumper", "link": "jumper",
    "bridge": "jumper", "height": "depth", "room": "depth", "part": "place", "put": "place", "angle": "axis",
    "rotate": "axis",
}  # fmt: skip
_SIDES = {
    "bottom": "solder", "back": "solder", "copper": "solder", "foil": "solder", "wiring": "solder", "track": "solder",
    "top": "parts", "front": "parts", "component": "parts", "components": "parts", "part": "parts",
}  # fmt: skip

_NUMBER = r"[+-]?(?:\d+(?:\.\d+)?|\.\d+)"
_PAIR = re.compile(
    rf"\(?(?P<across>{_NUMBER})[ \t]*(?:[^\W\d]{{1,2}}\b)??[ \t]*(?:[:,;x×*/]|by|[ \t])[ \t]*(?P<up>{_NUMBER})\)?"
    r"[ \t]*(?P<unit>[^\W\d]+)?"
)
_JOINS = ("to", "at", "on", "in", "from", "and")


def _here(s: Situation) -> bool:
    """In a line of a board or a layout?"""
    return s.inside in _LINES or s.head == "layout"


def _point_without_unit(s: Situation) -> Complaint | None:
    """`from 6:84 to 70:114 mm`: what follows reads as the unit; or nothing follows."""
    kinds = [piece.type for piece in s.entry]
    if kinds[-1:] == ["POINT"] and s.kind in (*ENDS, "COMMA", "LBRACE"):
        point, tokens = s.entry[-1], s.entry
    elif kinds[-2:] == ["POINT", "NAME"] and s.entry[-1] in _JOINS:
        point, tokens = s.entry[-2], s.entry[:-1]
    else:
        return None
    at = s.span_of(point)
    gap = s.at(at.end, at.end)
    said = finding(at, f"the unit is missing behind `{at.text}`", name="unit-missing", label="a point has a unit",
                   fix=write(gap, " mm", title=f"write `{at.text} mm`"))  # fmt: skip
    tokens = (*tokens, token("NAME", "mm", gap))
    if len(tokens) <= len(s.entry):  # the word that was taken for the unit
        tokens = (*tokens, token(s.entry[-1].upper(), str(s.entry[-1]), s.span_of(s.entry[-1])))
    return Complaint(said, Mend(tokens, s.span.start, anew=True, guess=True))


def _pair(s: Situation) -> Complaint | None:
    """`6,84 mm`, `6 84 mm`, `6 mm:84 mm`, `(6, 84) mm`: a point without its `:`."""
    if "POINT" not in s.expected or s.kind == "POINT":
        return None
    match = _PAIR.match(s.text, s.span.start, s.line_end)
    if match is None:
        number = re.compile(rf"{_NUMBER}[ \t]*(?:[^\W\d]+)?").match(s.text, s.span.start, s.line_end)
        if number is None:
            return None
        at = s.at(*number.span())
        return Complaint(finding(at, f"`{at.text}` is no point", label="a single number", help=_POINT_HELP))
    at = s.at(*match.span())
    unit = match["unit"] if match["unit"] in units.UNITS else None
    at = at if unit or not match["unit"] else s.at(at.start, match.start("unit"))
    right = f"{match['across']}:{match['up']} {unit or 'mm'}"
    said = finding(at, f"a point is written with `:`, as in `{right}`", label="across and up", help=_POINT_HELP,
                   fix=write(at, right))  # fmt: skip
    point, _, name = right.partition(" ")
    return Complaint(said, Mend((token("POINT", point, at), token("NAME", name, at)), at.end, guess=True))


_POINT_HELP = "`12:30 mm` is 12 mm across and 30 mm up from the lower left corner"


def _before_a_point(s: Situation) -> Complaint | None:
    """`fixing 4 mm 8:39 mm`: the word before a point; or `fixing at 8:39 mm`: what belongs before that word."""
    match = DESIGN.pattern("POINT").match(s.text, s.span.start)
    last = s.last
    if match is None or last is None or s.head not in FORMS:
        return None
    if last.type == "NAME" and last in ("at", "from"):
        named = len(s.entry) == 2 and s.head not in ("track", "fixing", "tie")
        at = s.span_of(last)
        return Complaint(finding(at, f"{'a name' if named else 'a size'} is missing before `{last}`",
                                 label="it belongs here", help=f"write it so: `{FORMS[s.head]}`"))  # fmt: skip
    gap, at = s.behind_last(), s.at(*match.span())
    for word in ("from", "at", "to"):
        if s.fits(word.upper(), "POINT"):
            said = finding(at, f"`{word}` is missing before `{at.text}`", fix=write(gap, f" {word}", safe=True))
            return Complaint(said, Mend((token(word.upper(), word, gap),), s.span.start))
    return None


def _joint(s: Situation) -> Complaint | None:
    """`jumper a to b`, `bus upper 1 -- upper 4`, `area north from 1:1 mm, 9:9 mm`, `start -- north 1`."""
    written = "--" if s.kind == "ARROW" else s.word
    for right in ("--", "to", "into", "and"):
        terminal = "ARROW" if right == "--" else right.upper()
        if not s.fits(terminal) or right == written or written not in ("--", "to", "and", ",", "in"):
            continue
        if written == "," and not (right == "to" and DESIGN.pattern("POINT").match(s.text, _behind(s))):
            continue
        at = s.at(s.span.start, s.span.start + len(written))
        said = finding(at, f"`{right}` is written here, not `{written}`", help=_as_in(s.head),
                       fix=write(at, f" {right}" if written == "," else right, safe=True))  # fmt: skip
        return Complaint(said, Mend((token(terminal, right, at),), at.end))
    return None


def _as_in(head: str) -> str:
    return f"as in `{FORMS[head]}`" if head in FORMS else ""


def _behind(s: Situation) -> int:
    """Where what follows the offending sign begins."""
    match = re.compile(r"[ \t]*").match(s.text, s.span.end)
    return match.end() if match is not None else s.span.end


def _side(s: Situation) -> Complaint | None:
    """`on solder`, `on bottom side`, `copper 0.07 mm solder side`."""
    last = s.last
    if last is not None and last.type in ("PARTS", "SOLDER") and s.fits("SIDE"):
        gap = s.behind_last()
        said = finding(s.span_of(last), f"`side` is missing behind `{last}`", fix=write(gap, " side", safe=True))
        return Complaint(said, Mend((token("SIDE", "side", gap),), s.span.start))
    if s.word in ("parts", "solder"):
        for word in ("on", "from"):
            if s.fits(word.upper(), s.word.upper()):
                gap = s.behind_last()
                said = finding(s.span, f"`{word}` is missing before `{s.word}`",
                               fix=write(gap, f" {word}", safe=True))  # fmt: skip
                return Complaint(said, Mend((token(word.upper(), word, gap),), s.span.start))
    if s.fits("SOLDER") and s.kind == "NAME":
        right = _SIDES.get(s.word.casefold()) or nearest(s.word, ("parts", "solder"))
        said = finding(s.span, f"a board has a `parts side` and a `solder side`, and no `{s.word}`",
                       label="which of them?", fix=write(s.span, right) if right else None)  # fmt: skip
        mend = Mend((token(right.upper(), right, s.span),), s.span.end, guess=True) if right else None
        return Complaint(said, mend)
    return None


def _off_board(s: Situation) -> Complaint | None:
    match = re.compile(r"off(?:[-_]?board)?(?!\w)").match(s.text, s.span.start)
    if match is None or not s.fits("OFF_BOARD"):
        return None
    at = s.at(*match.span())
    said = finding(at, f"`{at.text}` is written `off board`", label="two words", fix=write(at, "off board", safe=True))
    return Complaint(said, Mend((token("OFF_BOARD", "off board", at),), at.end))


def _out(s: Situation) -> Complaint | None:
    """`lead north 3 to input+`."""
    if not s.fits("OUT") or s.kind not in ("NAME", "PAD"):
        return None
    gap = s.behind_last()
    said = finding(s.span, f"`out` is missing before `{shown(s.word)}`", help=f"as in `{FORMS['lead']}`",
                   fix=write(gap, " out", safe=True))  # fmt: skip
    return Complaint(said, Mend((token("OUT", "out", gap),), s.span.start, guess=True))


def _beginning(s: Situation) -> Complaint | None:
    """A line that begins with no word that can begin one here."""
    if s.entry or s.inside not in _LINES:
        return None
    match = re.compile(r"[^\W\d]\w*").match(s.text, s.span.start)
    if match is None:
        return None
    at, word = s.at(*match.span()), match[0]
    lines = _LINES[s.inside]
    said, elsewhere = _SAID_FOR.get(word.casefold()), _ELSEWHERE.get(word)
    said = "lead out" if said == "jumper" and re.search(r"\bto\b.*[+-]", s.rest) else said
    said = said if said in lines else None
    if said is None and elsewhere is None:
        said = nearest(word, (line.split()[0] for line in lines))
    known = "lines here begin with " + ", ".join(f"`{line}`" for line in lines)
    finding_ = finding(
        at,
        f"no line of a {s.inside} begins with `{word}`",
        name="unknown-statement",
        label="not a word that a line can begin with here",
        help=f"as in `{FORMS[said.split()[0]]}`" if said else f"`{word}` stands {elsewhere}" if elsewhere else known,
        fix=write(at, said, safe=said == word.casefold()) if said else None,
    )
    tokens = tuple(token(one.upper(), one, at) for one in (said or "").split())
    mend = Mend(tokens, at.end, guess=True) if said else None
    return Complaint(finding_, mend)


def _row(s: Situation) -> Complaint | None:
    """`holes 5 north`, `holes north 5 1.3 mm`, `hole lug 1 of 2.2 mm`: name, number and `of` in another order."""
    single = s.head in ("hole", "tag") and s.kind == "NUMBER" and len(s.entry) == 2
    if single and re.compile(r"\d+[ \t]+(?:of|at)\b").match(s.text, s.span.start):
        headline = f"a single {s.head} has no number"
    elif s.head in ("holes", "tags") and len(s.entry) < 4 and not (s.fits("OF") and s.kind == "NUMBER"):
        headline = "a row has its name first, then how many there are"
        headline = headline if s.head == "tags" or len(s.entry) < 3 else "behind the number comes the diameter"
    else:
        return None
    if s.kind in ENDS:
        return None
    at = s.at(s.span.start, s.span.start + len(shown(s.word)))
    return Complaint(finding(at, headline, label="not in its place", help=f"write it so: `{FORMS[s.head]}`"))


def _lone_word(s: Situation) -> Complaint | None:
    """`leads into north 1, south 2`: the second begins an item of its own."""
    kinds = [piece.type for piece in s.entry]
    if s.inside != "place" or kinds != ["NAME"] or s.kind not in (*ENDS, "COMMA", "NUMBER"):
        return None
    at = s.span_of(s.entry[0])
    return Complaint(finding(at, f"`{at.text}` says nothing by itself", label="not the name of a lead",
                             help=f"two spots are joined by `and`: `{FORMS['leads']}`"))  # fmt: skip


def otherwise(s: Situation) -> Complaint | None:
    """Anything else in such a line: how it is written."""
    if not _here(s) or s.head not in FORMS:
        return None
    word, form = shown(s.word), FORMS["leads" if s.inside == "place" and s.head == "lead" else s.head]
    if s.kind in ENDS:
        at = s.span_of(s.entry[-1])
        headline = f"the line breaks off behind `{at.text or s.head}`"
    else:
        at, headline = s.span, f"`{word}` cannot stand here"
    return Complaint(finding(at, headline, label="something must follow" if s.kind in ENDS else "not expected",
                             help=f"write it so: `{form}`"))  # fmt: skip


def _layout_named_first(s: Situation) -> Complaint | None:
    """`layout upper on gusset {`: the name before the board."""
    match = re.compile(r"([^\W\d]\w*)[ \t]+on[ \t]+([^\W\d]\w*)").match(s.text, s.span.start, s.line_end)
    if len(s.entry) != 1 or s.head != "layout" or match is None:
        return None
    at = s.at(*match.span())
    name, board = (s.at(*match.span(group)) for group in (1, 2))
    right = f"on {board.text} as {name.text}"
    said = finding(at, f"the board comes first, as in `layout {right}`", label="the name before the board",
                   fix=write(at, right, safe=True))  # fmt: skip
    tokens = (token("ON", "on", at), token("NAME", board.text, board), token("AS", "as", at),
              token("NAME", name.text, name))  # fmt: skip
    return Complaint(said, Mend(tokens, at.end))


_CASES: tuple[Case, ...] = (
    _layout_named_first, _point_without_unit, _beginning, _side, _pair, _before_a_point, _joint, _off_board, _out,
    _row, _lone_word,
)  # fmt: skip


def in_board(s: Situation) -> Complaint | None:
    """The case that it is, in a board or a layout."""
    if not _here(s):
        return None
    return next((complaint for case in _CASES if (complaint := case(s)) is not None), None)
