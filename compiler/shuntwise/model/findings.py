"""What the model has to say, in one place: each function words one kind of mistake.

In: the place and what was found there. Out: a `Diagnostic`. Knows the words; decides nothing.
"""

from __future__ import annotations

from collections.abc import Iterable

from shuntwise import units
from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic, Edit, Fix, Label, Severity
from shuntwise.model.kinds import Attribute
from shuntwise.source import Span
from shuntwise.syntax.words import ATTRIBUTES_SAID_FOR, nearest


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


def unknown_word(word: str, span: Span, candidates: Iterable[str], where: str, *, guess: bool = True) -> Diagnostic:
    known = tuple(candidates)
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


def unit_missing(span: Span, attribute: str, dimension: units.Dimension, fix: Fix | None) -> Diagnostic:
    symbol = units.SYMBOLS.get(dimension, "")
    example = {units.OHM: "ohm", units.HENRY: "mH", units.FARAD: "uF", units.PLAIN: "%"}.get(dimension, symbol)
    return error(
        "unit-missing",
        span,
        f"the unit is missing behind `{span.text}`",
        label=f"{units.describe(dimension)} has a unit" if dimension != units.PLAIN else "a tolerance has a unit",
        why="a number alone can be a thousand times off, and the board would not show it",
        help=f"write the unit, such as `{span.text} {example}`",
        fixes=(fix,) if fix else (Fix("write the unit", (), Confidence.SHOW_ONLY),),
        subjects=(attribute,),
    )


def percent_missing(span: Span) -> Diagnostic:
    """A plain number where a share is meant: 10 would be 1,000 %."""
    return error(
        "unit-missing",
        span,
        f"the `%` is missing behind `{span.text}`",
        label="a share of the frequency stands here",
        why="a plain number is the share itself: 10 would be a thousand percent, and the line could not fail",
        help=f"write `{span.text} %`",
        fixes=(replace(span, f"{span.text} %"),),
    )


def unit_wrong_kind(span: Span, got: units.Dimension, wanted: units.Dimension, what: str) -> Diagnostic:
    # `20k` is how a resistance is printed on parts; behind `at` kilohertz are surely meant.
    kilo = wanted == units.HERTZ and got == units.OHM and span.text.endswith("k")
    return error(
        "unit-wrong-kind",
        span,
        f"`{span.text}` is {units.describe(got)}, not {units.describe(wanted)}",
        label=f"{what} stands here",
        help=f"write {units.describe(wanted)}" + _example(wanted),
        why="one of the two was meant for another place",
        fixes=(replace(span, f"{span.text[:-1].rstrip()} kHz"),) if kilo else (),
    )


def _example(dimension: units.Dimension) -> str:
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
    return f", such as `{examples[dimension]}`" if dimension in examples else ""


def unknown_unit(span: Span, unit: Span, wanted: units.Dimension | None, sure: str | None) -> Diagnostic:
    fixes = (replace(unit, sure, Confidence.SAFE),) if sure else ()
    help_text = f"write `{sure}`" if sure else "known units: ohm, mH, uF, V, W, A, Hz, kHz, %, dB, mm, g and their like"
    if wanted is not None and not sure:
        help_text = f"write {units.describe(wanted)}" + _example(wanted)
    return error(
        "unknown-unit",
        unit,
        f"`{unit.text}` is not a unit",
        label="small and capital letters count: m is milli, M is mega",
        help=help_text,
        fixes=fixes,
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
        help="write the value on the part; to leave a part out use `omit`, to bridge it declare a `link`",
    )


def value_absurd(span: Span, attribute: Attribute, value: float) -> Diagnostic:
    low, high = (units.write(bound, attribute.dimension) for bound in (attribute.low, attribute.high))
    return error(
        "value-absurd",
        span,
        f"no crossover has {attribute.meaning} of {units.write(value, attribute.dimension)}",
        label=f"credible: {low} to {high}",
        why="such a value comes from a slip of the unit or the prefix",
        help="look at the unit again",
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
