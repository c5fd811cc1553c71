"""What the model has to say, in one place: each function words one kind of mistake.

In: the place and what was found there. Out: a `Diagnostic`. Knows the words; decides nothing.
"""

from __future__ import annotations

import dataclasses
import re
from collections.abc import Collection, Iterable, Sequence

from shuntwise import units
from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic, Edit, Fix, Label, Severity
from shuntwise.model.kinds import Attribute
from shuntwise.source import Span
from shuntwise.syntax.tree import Ident
from shuntwise.syntax.words import ATTRIBUTES_SAID_FOR, LIBRARY, LIBRARY_BOARDS, RENAMED, nearest


def error(name: str, span: Span, headline: str, **rest: object) -> Diagnostic:
    return Diagnostic(name, Severity.ERROR, headline, span, **rest)  # type: ignore[arg-type]


def replace(span: Span, text: str, confidence: Confidence = Confidence.NEEDS_REVIEW) -> Fix:
    return Fix(f"write `{text}`", (Edit(span, text),), confidence)


# --- names


def same_label_twice(word: str, again: Span, first: Span, what: str) -> Diagnostic:
    return error(
        "same-label-twice",
        again,
        f"`{word}` is declared twice",
        label=f"this {what} has a name that is taken",
        places=(Label(first, "declared here first"),),
        why="on sheets and on the board a label must mean one thing",
        help="give the newer one another name; do not renumber what is already printed",
        subjects=(word,),
    )


def unknown_name(word: str, span: Span, candidates: Iterable[str], what: str, **rest: object) -> Diagnostic:
    close = nearest(word, candidates)
    return error(
        "unknown-name",
        span,
        f"nothing is called `{word}`",
        label=what,
        help=f"a similar name exists: `{close}`" if close else "declare it, or mend the name",
        fixes=(replace(span, close),) if close else (),
        subjects=(word,),
        **rest,
    )


def lone_position(choice: Ident, count: int) -> Diagnostic:
    return error(
        "lone-position",
        choice.span,
        f"the choice `{choice.text}` has {'one position only' if count else 'no position'}",
        label="nothing to choose from",
        help="write its positions: `position flat { fit K1 }`, `position soft { omit K1 }`",
    )


def unknown_network(name: Ident, declared: Collection[str]) -> Diagnostic:
    """Perhaps one of the library that is not included."""
    said = unknown_name(name.text, name.span, declared, "no network of this name")
    close = name.text if name.text in LIBRARY else nearest(name.text, LIBRARY)
    if said.fixes or close is None or close in declared:
        return said
    return dataclasses.replace(
        said, help=f'the library has one: `include "{close}" from library`, then `use {close} as ...`'
    )


def unknown_word(word: str, span: Span, candidates: Iterable[str], where: str, *, guess: bool = True) -> Diagnostic:
    known = tuple(candidates)
    if RENAMED.get(word) in known:
        return error(
            "unknown-word",
            span,
            f"`{word}` is called `{RENAMED[word]}` now",
            label="a word of an earlier version",
            help=f"write `{RENAMED[word]}`",
            fixes=(replace(span, RENAMED[word], Confidence.SAFE),),
        )
    said = ATTRIBUTES_SAID_FOR.get(word.casefold())
    close = (said if said in known else nearest(word, known)) if guess else None
    return error(
        "unknown-word",
        span,
        f"`{word}` means nothing {where}",
        label="not a known word here",
        help=f"the nearest word is `{close}`" if close else "known words here: " + ", ".join(known),
        fixes=(replace(span, close),) if close else (),
    )


# --- values


def unit_missing(span: Span, attribute: str, dimension: units.Dimension) -> Diagnostic:
    symbol = units.SYMBOLS.get(dimension, "")
    example = {units.OHM: "ohm", units.HENRY: "mH", units.FARAD: "uF", units.PLAIN: "%", units.METRE: "mm"}.get(
        dimension, symbol
    )
    return error(
        "unit-missing",
        span,
        f"the unit is missing behind `{span.text}`",
        label=f"{units.describe(dimension)} has a unit" if dimension != units.PLAIN else "a tolerance has a unit",
        why="a number alone can be a thousand times off, and the board would not show it",
        help=f"write the unit, such as `{span.text.replace(',', '.')} {example}`",
        fixes=(Fix("write the unit", (), Confidence.SHOW_ONLY),),
        subjects=(attribute,),
    )


def prefix_alone(
    number: str, span: Span, prefix: Span, wholes: Sequence[str], wanted: units.Dimension | None
) -> Diagnostic:
    """`1.25 k`: what it is a thousand of is not said; `wholes` are the units that may be meant."""
    sure = wanted is not None and len(wholes) == 1
    whole = " or ".join(f"`{number} {unit}`" for unit in wholes)
    return error(
        "unit-missing",
        span,
        f"the unit is missing behind `{span.text}`",
        label=f"{units.describe(wanted)} has a unit" if wanted is not None else f"`{prefix.text}` is but a prefix",
        why="a number alone can be a thousand times off, and the board would not show it",
        help=f"write {whole}",
        fixes=(replace(prefix, wholes[0], Confidence.SAFE),)
        if sure
        else (Fix("write the unit", (), Confidence.SHOW_ONLY),),
    )


def percent_missing(span: Span, what: str, why: str) -> Diagnostic:
    """A plain number where a share is meant: 10 would be 1,000 %."""
    return error(
        "unit-missing",
        span,
        f"the `%` is missing behind `{span.text}`",
        label=f"{what} stands here",
        why=why,
        help=f"write `{span.text} %`",
        fixes=(replace(span, f"{span.text} %"),),
    )


def unit_wrong_kind(
    span: Span, got: units.Dimension, wanted: units.Dimension, what: str, example: str = ""
) -> Diagnostic:
    """`example` is a likely value in this place, where that differs from those of parts."""
    meant = _prefix_of(span.text, got, wanted)
    return error(
        "unit-wrong-kind",
        span,
        f"`{span.text}` is {units.describe(got)}, not {units.describe(wanted)}",
        label=f"{what} stands here",
        help=f"write `{meant}`" if meant else f"write {units.describe(wanted)}" + _such_as(wanted, example),
        why="one of the two was meant for another place",
        fixes=(replace(span, meant),) if meant else (),
    )


def _prefix_of(text: str, got: units.Dimension, wanted: units.Dimension) -> str | None:
    """The value that a prefix without its unit stands for, where the prefix by itself reads as another unit.

    `20k` and `1k25` are resistances as they are printed on parts, and `0.82 m` is a length.
    """
    code = units.read_code(text) if got == units.OHM and wanted == units.HERTZ else None
    if code is not None and re.search("[kK]", text):
        return units.write(code.value, wanted)
    milli = re.fullmatch(r"([\d.]+)[ \t]*m", text) if got == units.METRE else None
    wholes = units.whole_units("m", wanted) if milli else []
    return f"{milli[1]} {wholes[0]}" if milli and wholes else None


def _such_as(dimension: units.Dimension, example: str = "") -> str:
    examples = {
        units.OHM: "8 ohm",
        units.HENRY: "0.82 mH",
        units.FARAD: "6.8 uF",
        units.WATT: "20 W",
        units.VOLT: "100 V",
        units.AMPERE: "5 A",
        units.HERTZ: "2.4 kHz",
        units.METRE: "25 mm",
        units.GRAM: "120 g",
        units.DECIBEL: "-6 dB",
        units.DECIBEL_PER_OCTAVE: "12 dB/octave",
    }
    likely = example or examples.get(dimension)
    return f", such as `{likely}`" if likely else ""


def unknown_unit(
    span: Span, unit: Span, wanted: units.Dimension | None, sure: str | None, example: str = ""
) -> Diagnostic:
    fixes = (replace(unit, sure, Confidence.SAFE),) if sure else ()
    otherwise = sure is not None and sure.casefold() != unit.text.casefold()
    help_text = f"write `{sure}`" if sure else "known units: ohm, mH, uF, V, W, A, Hz, kHz, %, dB, mm, g and their like"
    if wanted is not None and not sure:
        help_text = f"write {units.describe(wanted)}" + _such_as(wanted, example)
    return error(
        "unknown-unit",
        unit,
        f"`{unit.text}` is not a unit",
        label="no unit of the language" if otherwise else "small and capital letters count: m is milli, M is mega",
        help=help_text,
        fixes=fixes,
    )


def unit_first(span: Span, right: str) -> Diagnostic:
    """`uF68`, which reads as a name."""
    return error(
        "value-unclear",
        span,
        f"the unit stands in front of the number in `{span.text}`",
        label="the wrong way round",
        help=f"write `{right}`",
        fixes=(replace(span, right),),
    )


def decimal_comma(span: Span, number: str) -> Diagnostic:
    corrected = number.replace(",", ".")
    # 1,000 may be a thousand or one: only a person can tell.
    sure = len(number.split(",")[1].split("e", maxsplit=1)[0].split("E", maxsplit=1)[0]) != 3
    edit = Span(span.source, span.start, span.start + len(number))
    return error(
        "decimal-comma",
        edit,
        f"`{number}` has a decimal comma",
        label="a comma separates attributes",
        help=f"write `{corrected}`" + ("" if sure else f", or `{number.replace(',', '')}` if thousands were meant"),
        fixes=(replace(edit, corrected, Confidence.SAFE if sure else Confidence.NEEDS_REVIEW),),
    )


def value_not_positive(span: Span, attribute: Attribute) -> Diagnostic:
    return error(
        "value-not-positive",
        span,
        f"{attribute.meaning} must be above zero",
        label=f"`{span.text}`",
        help="write the length that it has"
        if attribute.dimension == units.METRE
        else f"write the value that the {attribute.owner} has"
        if attribute.owner != "crossover"
        else "write the value on the part; to leave a part out use `omit`, to bridge it declare a `link`",
    )


def value_absurd(span: Span, attribute: Attribute, value: float) -> Diagnostic:
    low, high = (units.write(bound, attribute.dimension) for bound in (attribute.low, attribute.high))
    # Old lists have mF for microfarad (common practice, no source).
    milli = re.fullmatch(r"([\d.]+)[ \t]*mF", span.text)
    micro = f"{milli[1]} uF" if milli and value > attribute.high else None
    return error(
        "value-absurd",
        span,
        f"no {attribute.owner} has {attribute.meaning} of {units.write(value, attribute.dimension)}",
        label=f"credible: {low} to {high}",
        why="such a value comes from a slip of the unit or the prefix",
        help=f"write `{micro}`: `mF` is a thousand of them" if micro else "look at the unit again",
        fixes=(replace(span, micro),) if micro else (),
    )


def value_unclear(span: Span, headline: str, help_text: str) -> Diagnostic:
    return error("value-unclear", span, headline, label="cannot be worked out", help=help_text)


def dimension_clash(span: Span, operator: str, left: units.Dimension, right: units.Dimension) -> Diagnostic:
    words = {"+": "added to", "-": "subtracted from"}.get(operator, "combined with")
    first, second = (right, left) if operator == "-" else (left, right)
    return error(
        "unit-wrong-kind",
        span,
        f"{units.describe(first)} cannot be {words} {units.describe(second)}",
        label="the units do not agree",
        help="check the formula: each term of a sum must come out in the same unit",
    )


# --- boards and layouts


def board_incomplete(board: Ident, what: str, example: str) -> Diagnostic:
    return error(
        "board-incomplete",
        board.span,
        f"the board `{board.text}` has no {what}",
        label="cannot be drawn",
        help=f"write it into its braces: `{example}`",
    )


def outline_impossible(span: Span, most: float) -> Diagnostic:
    return error(
        "shape-impossible",
        span,
        f"a board is not of the size `{span.text}`",
        label=f"above 0 and up to {most:g} mm each way",
        help="write how far it goes across and up: `outline 100:80 mm`",
    )


def no_corner(span: Span, size: tuple[float, float]) -> Diagnostic:
    return error(
        "shape-impossible",
        span,
        f"`{span.text}` is no corner of the board",
        label=f"it is {size[0]:g} by {size[1]:g} mm",
        help="name one of its four corners, such as `0:0 mm`",
    )


def shape_impossible(span: Span, headline: str, help_text: str) -> Diagnostic:
    return error("shape-impossible", span, headline, label="cannot be", help=help_text)


def outside_board(span: Span, board: str, size: tuple[float, float]) -> Diagnostic:
    return error(
        "outside-board",
        span,
        f"`{span.text}` is not on the board `{board}`",
        label=f"it is {size[0]:g} by {size[1]:g} mm",
        help="points are told across and up from the lower left corner; look at the number and its unit",
    )


def hole_outside_area(hole: str, span: Span, area: str, area_span: Span) -> Diagnostic:
    return error(
        "hole-outside-area",
        span,
        f"the hole `{hole}` is not in the area `{area}`",
        label="said to be in it",
        places=(Label(area_span, "the area"),),
        help="mend the points of one of the two, or give the holes another name",
    )


def holes_collide(hole: str, span: Span, other: str, other_span: Span) -> Diagnostic:
    return error(
        "holes-collide",
        span,
        f"`{hole}` and `{other}` run into each other",
        label=f"`{hole}`",
        places=(Label(other_span, f"`{other}`"),),
        help="mend the points, or leave one of them out",
    )


def too_much_on_board(span: Span, headline: str) -> Diagnostic:
    return error(
        "too-much-on-board",
        span,
        headline,
        label="from here on nothing is read",
        why="no crossover needs them, and a file must not be able to exhaust the compiler",
        help="look at the number again",
    )


def unknown_board(name: Ident, declared: Collection[str]) -> Diagnostic:
    """Perhaps one of the library that is not included."""
    said = unknown_name(name.text, name.span, declared, "no board of this name")
    close = name.text if name.text in LIBRARY_BOARDS else nearest(name.text, LIBRARY_BOARDS)
    if said.fixes or close is None or close in declared:
        return said
    return dataclasses.replace(said, help=f'the library has one: `include "{close}" from library`')


def layout_on_two_boards(layout: str, span: Span, first: Ident) -> Diagnostic:
    return error(
        "same-label-twice",
        span,
        f"the layout `{layout}` is on the board `{first.text}` already",
        label="another board",
        places=(Label(first.span, "said here"),),
        help="give one of the two another name: `layout on BOARD as NAME { ... }`",
        subjects=(layout,),
    )


def told_twice(what: str, subject: str, again: Span, first: Span) -> Diagnostic:
    return error(
        "attribute-twice",
        again,
        f"{what} is given twice for `{subject}`",
        label="again",
        places=(Label(first, "first here"),),
        help="keep one of them",
        subjects=(subject,),
    )


def lead_unclear(span: Span, headline: str, help_text: str) -> Diagnostic:
    return error("lead-unclear", span, headline, label="not plain where it ends", help=help_text)
