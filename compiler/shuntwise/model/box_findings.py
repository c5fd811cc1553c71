"""What is said of a box's own file, in one place, as `findings.py` has it for designs.

In: the place and what was found there. Out: a `Diagnostic`. Knows the words; decides nothing.
"""

from __future__ import annotations

from collections.abc import Sequence

from shuntwise import units
from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic, Edit, Fix, Label, Severity
from shuntwise.model.design import Quantity
from shuntwise.model.findings import error, replace
from shuntwise.source import Span
from shuntwise.syntax.words import nearest

_MOST_SHOWN = 12


def unnamed(span: Span) -> Diagnostic:
    return error(
        "box-unnamed",
        span,
        "no line says which box this is, and of which design",
        label="such a line stands first",
        why="without its design no point, part or variant can be looked up",
        help='write `box 7 of "wedge.shunt"`, with the path of the design from here',
    )


def line_twice(word: str, again: Span, first: Span) -> Diagnostic:
    """`box`, `bench` and their like: of what stands once in a file."""
    return error(
        "same-label-twice",
        again,
        f"`{word}` stands twice in this file",
        label="again",
        places=(Label(first, "first here"),),
        why="what a box is, and what stands on its bench, is said once",
        help="keep one of them" + (", with all that is said in its braces" if word == "bench" else ""),
        subjects=(word,),
    )


# --- the design, the sister, the tables


def design_missing(span: Span, path: str, reason: str, help_text: str) -> Diagnostic:
    return error(
        "box-design-missing",
        span,
        f"the design `{path}` is not read: {reason}",
        label="named here",
        why="without its design no point, part or variant can be looked up",
        help=help_text or "check the name and the file",
    )


def design_other(span: Span, path: str) -> Diagnostic:
    return error(
        "box-design-other",
        span,
        f"this box was built from `{path}`, which is another design",
        label="another file than the one that is asked for",
        help="name the file of the right box, or its own design",
    )


def design_unsound(span: Span, path: str, count: int) -> Diagnostic:
    return error(
        "box-design-unsound",
        span,
        f"the design `{path}` has {count} error{'s' * (count != 1)}",
        label="named here",
        why="what its boxes should read cannot be relied on",
        help=f"run `shuntwise check {path}`",
    )


def variant_unknown(span: Span, name: str, known: Sequence[str]) -> Diagnostic:
    close = nearest(name, known)
    return error(
        "box-variant-unknown",
        span,
        f"the design has no variant called `{name}`",
        label="no variant, position or end of an attenuator",
        help=f"a similar one exists: `{close}`"
        if close
        else "it has " + ", ".join(known[:_MOST_SHOWN])
        if known
        else "it has none: take this line out",
        fixes=(replace(span, close),) if close else (),
    )


def sister_unfit(span: Span, headline: str, help_text: str) -> Diagnostic:
    return error(
        "sister-box-unfit",
        span,
        headline,
        label="named here",
        why="its readings are to stand for what is right",
        help=help_text,
    )


def sweep_not_read(span: Span, path: str, reason: str, help_text: str) -> Diagnostic:
    return error(
        "sweep-not-read",
        span,
        f"the sweep `{path}` is not read: {reason}",
        label="named here",
        help=help_text or "check the name and the file",
    )


# --- parts and readings


def far_off(label: str, measured: Quantity, stated: Quantity) -> Diagnostic:
    values = (units.write(one.value, one.dimension) for one in (measured, stated))
    return Diagnostic(
        "measured-far-off",
        Severity.WARNING,
        "`{}` was measured as {}, and is stated as {}".format(label, *values),
        measured.span,
        label="measured",
        places=(Label(stated.span, "stated"),),
        why="no tolerance explains it, and what is expected of this box follows the measured value",
        help="look at the unit again; if it is right, a wrong part is fitted",
        subjects=(label,),
    )


def unknown_point(name: str, span: Span, ends: Sequence[str], known: Sequence[str], *, pairs: bool) -> Diagnostic:
    """`ends` are points of a thing of this name; `pairs`: something with two pads was to be named."""
    close = None if ends else nearest(name, known)
    if ends and pairs:
        help_text = f"write from where to where: `{' to '.join(ends[:2])}`"
    elif ends:
        help_text = "name one end: " + " or ".join(f"`{end}`" for end in ends)
    elif close is not None:
        help_text = f"a similar one exists: `{close}`"
    elif pairs:
        help_text = "what has two pads: " + ", ".join(known[:_MOST_SHOWN])
    else:
        help_text = "points are called as in the design: `woofer+`, `L1.start`, the name of a node"
    sure = close is not None and close.casefold() == name.casefold()
    return error(
        "reading-point-unknown",
        span,
        f"nothing in the design has pads called `{name}`" if pairs else f"the design has no point `{name}`",
        label="no two pads of this name" if pairs else "no point of this name",
        help=help_text,
        fixes=(replace(span, close, Confidence.SAFE if sure else Confidence.NEEDS_REVIEW),) if close else (),
        subjects=(name,),
    )


def loads_unclear(span: Span, words: str, meant: str | None, known: Sequence[str]) -> Diagnostic:
    return error(
        "reading-loads-unclear",
        span,
        f"`{words}` does not say what hangs on the box",
        label="no such loads",
        help=f"write `{meant}`" if meant else "write one of: " + ", ".join(known[:_MOST_SHOWN]),
        fixes=(replace(span, meant),) if meant else (),
    )


def needless_frequency(span: Span, behind: int) -> Diagnostic:
    """`behind` is where the loads end: what stands from there on is to go."""
    return error(
        "reading-frequency-wrong",
        span,
        "a resistance is read without a generator, and has no frequency",
        label="a frequency",
        help="leave it out, or write `volts` or `impedance`",
        fixes=(
            Fix("leave the frequency out", (Edit(Span(span.source, behind, span.end), ""),), Confidence.NEEDS_REVIEW),
        ),
    )


def frequency_missing(span: Span, quantity: str) -> Diagnostic:
    return error(
        "reading-frequency-wrong",
        span,
        f"{'an impedance' if quantity == 'impedance' else 'a voltage'} is read at a frequency",
        label="none is said",
        help="write it before the colon: `, 1 kHz:`",
    )


def beyond_range(span: Span) -> Diagnostic:
    return error(
        "unknown-name",
        span,
        f"`{span.text}` is no value",
        label="beyond what the meter shows",
        help="write `open`",
        fixes=(replace(span, "open", Confidence.SAFE),),
        subjects=(span.text,),
    )


def no_level(span: Span, quantity: str) -> Diagnostic:
    """`open`, or what meters show beyond their range, where the generator is on."""
    volts = quantity == "volts"
    if span.text == "open":
        return impossible(span, "`open` is what an ohmmeter shows, with no generator on",
                          f"write the value that was read, such as `{'0 V' if volts else '8 ohm'}`")  # fmt: skip
    what = "voltage" if volts else "impedance"
    again = "set the meter to AC volts, in a larger range" if volts else "read again in a larger range"
    return impossible(span, f"`{span.text}` is beyond the meter's range, and no {what}",
                      f"{again}, and write what it shows, such as `{'270 mV' if volts else '8 ohm'}`")  # fmt: skip


def input_unclear(span: Span, headline: str, help_text: str) -> Diagnostic:
    return error("reading-input-unclear", span, headline, label="not plain", help=help_text)


def impossible(span: Span, headline: str, help_text: str) -> Diagnostic:
    return error("reading-impossible", span, headline, label="cannot be", help=help_text)


def above_source(span: Span, source_v: float, where: str) -> Diagnostic:
    return error(
        "reading-impossible",
        span,
        f"the generator's {units.write(source_v, units.VOLT)} make no `{span.text}` {where}",
        label="too high",
        help="look at the unit again (mV or V), and at `source` in `bench { ... }`",
    )


def taken_again(again: Span, first: Span) -> Diagnostic:
    return Diagnostic(
        "reading-taken-again",
        Severity.ADVICE,
        "the same was read before, and was otherwise",
        again,
        label="this one counts",
        places=(Label(first, "read here before"),),
        why="the later reading takes the place of the earlier one",
        help='if the board was changed in between, write `rework "..."` between the two; else take out the wrong one',
    )
