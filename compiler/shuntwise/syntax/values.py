"""Complaints about values: inline in a walk, with their unit in front, or with one behind a code.

In: the `Situation` in which the parser stopped. Out: a `Complaint`, or None where it is something else.
"""

from __future__ import annotations

import re

from shuntwise import units
from shuntwise.source import Span
from shuntwise.syntax.situation import BLOCK_HEADS, Complaint, Mend, Situation, finding, token, write
from shuntwise.syntax.words import KIND_OF_LETTER

_NUMBER = r"(?:\d+(?:[.,]\d+)?|\.\d+)"
_VALUE = re.compile(rf"(?P<code>\d+[RKMGLkmunpµμ]\d*(?!\w))|(?P<number>{_NUMBER})(?P<unit>[ \t]*(?:[^\W\d]\w*|%))?")
_UNIT_FIRST = re.compile(rf"(?P<unit>[^\W\d]+)[ \t]*(?P<number>{_NUMBER})(?![\w.,]|[ \t]+[^\W\d])")
_LETTER_OF = {units.HENRY: "L", units.FARAD: "C", units.OHM: "R"}


def in_walk(s: Situation) -> Complaint | None:
    """`input+ -- 10uF -- woofer+`, or `-- C1 6.8 uF --`: a value where a walk names a part."""
    walk = s.inside == "leg" or any(piece.type == "ARROW" for piece in s.entry)
    if not walk:
        return None
    if s.last is not None and s.last.type == "NAME":
        return _behind_a_part(s, str(s.last)) if "ARROW" in s.expected else None
    if s.kind not in ("NUMBER", "CODE", "COMMA_NUMBER") or not {"NAME", "PAD"} <= s.expected:
        return None
    at, letter = _value(s, s.span.start)
    label = f"{letter or 'C'}1"
    declared = f"{KIND_OF_LETTER[letter]} {label} {at.text}" if letter else "capacitor C1 6.8 uF"
    said = finding(at, f"`{at.text}` is a value, and a walk goes through parts", label="name a part here",
                   why="the parts list is made of what is declared",
                   help=f"declare the part on a line of its own, as in `{declared}`, and walk through it by its label: "
                        f"`-- {label} --`")  # fmt: skip
    # Stands for the part: no name begins with a digit, so the model can tell it from one.
    return Complaint(said, Mend((token("NAME", at.text, at),), at.end))


def _behind_a_part(s: Situation, label: str) -> Complaint | None:
    match = re.compile(r"(?P<open>[(=:]?)[ \t]*(?=[.\d])").match(s.text, s.span.start)
    if match is None:
        return None
    at, _ = _value(s, match.end())
    end = at.end
    if match["open"] == "(":
        closing = re.compile(r"[ \t]*\)").match(s.text, end)
        if closing is None:
            return None
        end = closing.end()
    gap = s.at(s.behind_last().end, end)
    said = finding(at, f"a walk goes through `{label}` without its value", label="the value stands elsewhere",
                   help=f"write the value where `{label}` is declared, and the label alone in the walk: "
                        f"`-- {label} --`",
                   fix=write(gap, "", title=f"write `{label}` alone"))  # fmt: skip
    return Complaint(said, Mend((), end))


def _value(s: Situation, start: int) -> tuple[Span, str]:
    """The value that begins here, and the letter of the parts that have such a value, L, C, R or ""."""
    match = _VALUE.match(s.text, start)
    if match is None:
        return s.span, ""
    if match["code"]:
        code = units.read_code(match["code"])
        return s.at(*match.span()), _LETTER_OF.get(code.dimension or units.FARAD, "") if code else ""
    word = (match["unit"] or "").strip()
    unit = units.meant_unit(word)
    if unit is None:
        return s.at(*match.span("number")), ""
    return s.at(*match.span()), _LETTER_OF.get(units.UNITS[unit][1], "")


def unit_first(s: Situation) -> Complaint | None:
    """`capacitor C1 uF6.8`: the unit reads as a second word of the name until the number comes."""
    kinds = [piece.type for piece in s.entry[1:]]
    if s.head not in BLOCK_HEADS or kinds != ["NAME", "NAME"] or s.kind not in ("NUMBER", "CODE", "COMMA_NUMBER"):
        return None
    match = _UNIT_FIRST.match(s.text, s.entry[2].start_pos)
    unit = units.meant_unit(match["unit"]) if match else None
    if match is None or unit is None:
        return None
    at, number = s.at(*match.span()), match["number"].replace(",", ".")
    said = finding(at, f"the unit stands in front of the number in `{at.text}`", label="the wrong way round",
                   fix=write(at, f"{number} {unit}", safe=True))  # fmt: skip
    tokens = (*s.entry[:2], token("NUMBER", number, at), token("NAME", unit, at))
    return Complaint(said, Mend(tokens, at.end, anew=True))


def unit_behind_code(s: Situation) -> Complaint | None:
    """`5R6 ohm`: the letter in a code is the unit already."""
    last = s.last
    if last is None or last.type != "CODE" or s.kind != "NAME" or last.end_pos > s.span.start:
        return None
    code, unit = units.read_code(str(last)), units.meant_unit(s.word)
    if code is None or unit is None:
        return None
    factor, dimension = units.UNITS[unit]
    agrees = dimension == code.dimension or (code.dimension is None and dimension in (units.FARAD, units.HENRY))
    if not agrees or not (factor == 1 or unit[0] in last):
        said = finding(s.span, f"`{last}` is a whole value, and takes no unit", label="says otherwise",
                       help="write the number with its unit, or the code alone")  # fmt: skip
        return Complaint(said)
    gap = s.at(s.behind_last().end, s.span.end)
    value = units.write(code.value, dimension)
    said = finding(s.span, f"no unit is needed behind `{last}`", label="the letter in the code is the unit",
                   help=f"write `{last}` alone, or `{value}`",
                   fix=write(gap, "", safe=True, title=f"remove `{s.word}`"))  # fmt: skip
    return Complaint(said, Mend((), s.span.end))
