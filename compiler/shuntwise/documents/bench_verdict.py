"""What the readings of a board say, and what to read next.

In: a verdict or a proposal of the bench, and the readings that it is about. Out: groups of blocks. Refuses to judge: no
share and no window is worked out here.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import inf

from shuntwise.bench.solving import BEYOND_OHM
from shuntwise.bench.verdict import Answer, Proposal, SheetLine, Suspected, Verdict
from shuntwise.diagnostics.wording import listed
from shuntwise.documents.bench_words import expected, shown, window
from shuntwise.documents.page import Group, Heading, Listing, Paragraph, Table
from shuntwise.model.box import Box, ReadQuantity, Taken

NOT_TESTED = (
    "joints, tracks and parts under load and heat, and after shaking: shake the box and repeat the fastest readings",
    "insulation against the box, its feet and its posts, and what voltage parts stand",
    "the drivers inside, their polarity among it: only what lies up to their tags was read",
    "small faults that look like tolerances, and two that make up for each other",
)
"""What readings at low level cannot show: common practice, no source."""

WORTH_TELLING = 0.01
"""A suspect of a smaller share is not told, unless it is the likeliest."""

LIKELY = 0.05
"""What an answer makes no likelier than this is left out."""

RATES = "How often such a verdict is right was worked out on simulated boards only, never counted on soldered ones."


def with_readings(
    verdict: Verdict, taken: Sequence[Taken], lines: Sequence[SheetLine], sister: Box | None, inputs: int
) -> list[Group]:
    """The verdict on a board of a design with so many inputs, and the readings that it is on, as for `as_read`."""
    return [group for group in (*told(verdict, inputs), as_read(taken, lines, sister, inputs)) if group]


def told(verdict: Verdict, inputs: int = 1) -> Iterator[Group]:
    """The verdict on a board of a design with so many inputs."""
    match verdict.outcome:
        case "passed":
            yield (
                Heading("Passed: nothing is wrong, as far as these readings can tell"),
                Paragraph("Not tested:"),
                Listing(NOT_TESTED),
                Paragraph(RATES),
            )
        case "good so far":
            yield (Heading("Good so far, not passed"), Paragraph(_missing(verdict.missing, inputs)))
        case "fault":
            yield (Heading("Something is wrong. The likeliest:"),)
        case "no single fault":
            yield (Heading("No single fault explains this."), Paragraph(_pair(verdict)))
        case "set-up":
            of_parts = verdict.suspects[0].fault.family == "scatter"
            asked = "Are the parts what is stated? They explain" if of_parts else "Is the set-up right? It explains"
            yield (Heading(f"{asked} the readings better than a fault of the board:"),)
    for number, one in enumerate(verdict.suspects, 1):
        if number == 1 or one.share >= WORTH_TELLING:
            yield _suspect(number, one, explains=verdict.outcome != "no single fault")
    if verdict.outcome not in ("passed", "good so far"):
        yield (Paragraph(f"{RATES} Amplifier and generator off before anything is moved or soldered."),)


def _missing(lines: Sequence[SheetLine], inputs: int) -> str:
    count = len(lines)
    return f"{count} reading{'s are' if count > 1 else ' is'} missing, first: {lines[0].reading.words(inputs)}."


def _pair(verdict: Verdict) -> str:
    if verdict.pair is None:
        return "Nor do two together. Look at the set-up, read again what is outside its window, then look at the board."
    titles = listed([_title(one) for one in verdict.pair])
    return f"These two together do best: {titles}. Taken alone, these come nearest:"


def _title(one: Suspected) -> str:
    return f"{one.title}, {one.size}" if one.size else one.title


def _suspect(number: int, one: Suspected, *, explains: bool) -> Group:
    """A share is told of what `explains` the readings: of what does not, it would read as a certainty."""
    entries = [
        *([f"To every reading the same: {'; '.join(one.same)}."] if one.same else []),
        *([f"Where to look: {'; '.join(one.where)}."] if one.where else []),
        *([f"To be sure: {_ended(one.proof)}"] if one.proof else []),
        *([f"What it does: {'; '.join(one.effects)}."] if one.effects else []),
    ]
    title = _title(one)
    heading = Heading(f"{number}. {title[:1].upper()}{title[1:]}{f' ({share(one.share)})' if explains else ''}")
    return (heading, Listing(tuple(entries), marked=False)) if entries else (heading,)


def _ended(text: str) -> str:
    return text if text.endswith(".") else f"{text}."


def share(value: float) -> str:
    """A share of likelihood, which is never certainty."""
    if value > 0.99:
        return "over 99 %"
    return "under 1 %" if value < 0.01 else f"{value:.0%}".replace("%", " %")


def as_read(taken: Sequence[Taken], lines: Sequence[SheetLine], sister: Box | None = None, inputs: int = 1) -> Group:
    """Readings beside what they should be, `lines` being theirs, in the same order; those outside are marked.

    What the same reading was of a sister box stands beside them.
    """
    beside = {one.reading: one.value for one in sister.taken} if sister is not None else {}

    def row(one: Taken, line: SheetLine) -> tuple[str, ...]:
        reading, quantity = one.reading, one.reading.quantity
        mark = "" if line.allows(one.value) else "TOO HIGH" if one.value > line.high else "TOO LOW"
        own = reading.words(inputs), shown(one.value, quantity)
        other = (shown(beside[reading], quantity) if reading in beside else "",) if sister is not None else ()
        return (*own, expected(line), *window(line), *other, mark)

    rows = tuple(row(one, line) for one, line in zip(taken, lines, strict=True))
    heads = ("reading", "read", "expected", "low", "high", *([f"box {sister.name}"] if sister else []), "outside")
    return (Table(heads, rows, frozenset({0, len(heads) - 1})),) if rows else ()


def next_reading(proposal: Proposal, inputs: int = 1) -> Group:
    """The reading that tells most, and what each answer would mean."""
    line, quantity = proposal.line, proposal.line.reading.quantity
    low, high = window(line)
    likely = [one for one in proposal.answers if one.share >= LIKELY] or proposal.answers
    rows = tuple((*_range(one, quantity), one.title, share(one.share)) for one in likely)
    rest = (Paragraph("Anywhere else nothing is likely by itself."),) if len(rows) < len(proposal.answers) else ()
    return (
        Heading(f"Read next: {line.reading.words(inputs)}"),
        Paragraph(f"On a sound board {expected(line)} ({low} to {high}). What an answer would mean:"),
        Table(("from", "to", "likeliest", "share"), rows, frozenset({0, 1, 2})),
        *rest,
    )


def _range(one: Answer, quantity: ReadQuantity) -> tuple[str, str]:
    """An ohmmeter shows nothing beyond its range, or close to that."""
    ends = (inf if quantity != "volts" and end > 0.9 * BEYOND_OHM else end for end in (one.low, one.high))
    low, high = (shown(end, quantity) for end in ends)
    return low, high


NOTHING_NEXT = "No further reading at these points tells much."
