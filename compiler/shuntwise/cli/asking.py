"""`shuntwise bench DESIGN BOX --ask`: reading after reading asked for at a terminal, each kept in the file at once.

First the sheet in its order; as soon as the board is surely not sound, whatever tells most. Nothing is kept but what
stands in the file, so that the dialogue goes on where it was left, whoever has written there meanwhile.
"""

from __future__ import annotations

import argparse
import os
import re
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import TYPE_CHECKING

from shuntwise.cli.main import CLEAN, FINDINGS, Refused
from shuntwise.cli.on_bench import SOUND, Subject, box_of, of, read, should_be
from shuntwise.cli.output import put_line, put_new_box
from shuntwise.cli.progress import progress
from shuntwise.cli.reading import BOX_ENDING, refusing, show
from shuntwise.diagnostics.diagnostic import Severity
from shuntwise.diagnostics.terminal import visible
from shuntwise.documents.aligned import lines
from shuntwise.documents.page import Block, Listing, Paragraph
from shuntwise.files import read_source
from shuntwise.loading import read_box
from shuntwise.model.box import DUMMIES_ON, Box, Reading, ReadQuantity, Taken
from shuntwise.model.box_writing import addition, is_unbegun
from shuntwise.source import Source
from shuntwise.units import HERTZ, OHM, UNITS, VOLT, meant_unit, write

if TYPE_CHECKING:
    from shuntwise.bench.verdict import SheetLine, Verdict
    from shuntwise.documents.bench_words import SetUp

CHECKED = "meter check"
"""With this a note begins that says what the voltmeter showed at the divider."""

SURE = 0.9
"""At such a share of the likeliest fault the verdict is due."""

HELP = (
    "Type what the meter shows, with its unit: 2.8 ohm, 270 mV, 0.27 V. Where an ohmmeter is beyond its range (OL, or "
    "a 1 at the left) type open.",
    "skip leaves this reading out, back takes the one before again, end stops here; what was read is kept.",
)


NAMING = "A number, or a name such as stage left. Empty takes what stands in brackets, end stops here."

MENDING = "What you did, in some words, such as: C1's end soldered anew. Empty or end: not mended yet."

CALLS_FOR_HELP = ("?", "help")

BEYOND = "ol"
"""What many ohmmeters show beyond their range, in small letters (common practice, no source)."""


ANSWERS = ("open", BEYOND, "skip", "back")
"""Words that answer a reading."""

_VALUE = re.compile(r"[-+]?\d*[.,]?\d+\s*([^\W\d]*)\d*")
"""A number, perhaps with its unit, or as a code: `3`, `270 mV`, `4R7`."""


class Ended(Exception):
    """Nobody answers any more."""


class EndOfInput(Ended):
    """There is nobody left to answer."""


def ask(options: argparse.Namespace) -> int:
    if options.readings is None:
        raise Refused("--ask needs the file of a box", "for example: shuntwise bench wedge.shunt wedge-7.box --ask")
    if options.json or options.output:
        raise Refused("--ask prints no JSON and no sheet", "ask first, then run the command again without --ask")
    if options.next:
        raise Refused("--ask and --next do not go together",
                      "--ask itself asks for what tells most; to see what each answer would mean, run --next "
                      "without --ask")  # fmt: skip
    try:
        subject = _subject(options)
        if subject is None:
            return FINDINGS
        with progress("working out what every fault does to every reading"):
            dialogue = Dialogue(options, subject, subject.bench.sheet.lines)
        return dialogue.run()
    except Ended:
        return CLEAN
    except KeyboardInterrupt:
        print()
        if options.readings is not None:
            print(visible(f"Every answer is kept in {options.readings}."))
        raise


def _subject(options: argparse.Namespace) -> Subject | None:
    """The box, whose file is begun where there is none, or one that says nothing yet; None for a design with errors,
    which have been shown.
    """
    path = options.readings
    there = read_source(Path(path), path) if os.path.lexists(path) else None
    if there is not None and not (isinstance(there, Source) and is_unbegun(there.text)):
        return of(options)
    if not path.endswith(BOX_ENDING):
        lack = "not there" if there is None else "empty"
        raise Refused(f"`{path}` is {lack}, and is no name for a box's file", f"its name ends in {BOX_ENDING}")
    options.readings = None  # until there is one
    subject = of(options)
    if subject is None:
        return None
    name = Path(path).stem
    state = "new" if there is None else "empty"
    answer = _name(f"{path} is {state}. Which box is it, by its number or name? [{name}] ", path)
    put_new_box(answer or name, options.file, path, options.variant)
    options.readings = path
    return replace(subject, box=box_of(options))


def _name(question: str, path: str) -> str:
    """What the box is called, perhaps nothing. Raises Ended; Refused where nothing but readings came."""
    refused = ""
    while True:
        try:
            answer = _hear(question, NAMING)
        except EndOfInput:
            if not refused:
                raise
            help_text = "answer with its name first, or with an empty line; readings come after that"
            raise Refused(f"{path} is not begun: `{refused}` names no box", help_text) from None
        if not _is_reading(answer):
            return answer
        refused = refused or answer
        _say(f"`{answer}` is an answer to a reading, and none was asked for yet.", NAMING)


def _is_reading(answer: str) -> bool:
    """Does this answer a reading: is it a word for that, or ohm or volts with their unit? `7R` may be a name."""
    value = _VALUE.fullmatch(answer)
    unit = value[1].casefold() if value else ""
    of_meters = {one.casefold() for one, (_, dimension) in UNITS.items() if dimension in (OHM, VOLT)}
    return answer.casefold() in ANSWERS or unit in of_meters


def _tells_of_work(answer: str) -> bool:
    """Are there words in it: more than a value, a yes, or an answer to a reading?"""
    value = _VALUE.fullmatch(answer)
    bare = value is not None and (not value[1] or meant_unit(value[1]) is not None)
    return not bare and answer.casefold() not in (*ANSWERS, "yes")


def _hear(question: str, *help_text: str) -> str:
    """An answer, perhaps an empty one, that is no call for help. Raises Ended."""
    while True:
        answer = _answer(question)
        word = answer.casefold()
        if word == "end":
            raise Ended
        if word not in CALLS_FOR_HELP:
            return answer
        _say(*help_text)


def _answer(question: str) -> str:
    """What somebody types. Raises EndOfInput."""
    try:
        return input(visible(question)).strip()
    except UnicodeDecodeError:
        return "\ufffd"  # which nothing can be made of
    except (EOFError, ValueError, RuntimeError, OSError):
        print()
        raise EndOfInput from None


def _say(*blocks: Block | str) -> None:
    """Print blocks, and texts as paragraphs."""
    for line in lines(Paragraph(block) if isinstance(block, str) else block for block in blocks):
        print(line)


def _checked(freq_hz: float) -> str:
    return f"{CHECKED} at {write(freq_hz, HERTZ)}"


def _value(box: Box, reading: Reading) -> float:
    """Of a reading that the box has."""
    return next(one.value for one in box.taken if one.reading == reading)


@dataclass
class Dialogue:
    """The state of the screen only: what was skipped, what was asked last, what is connected."""

    options: argparse.Namespace
    subject: Subject
    lines: Sequence[SheetLine]
    skipped: set[Reading] = field(default_factory=set)
    asked: list[SheetLine] = field(default_factory=list)
    set_up: SetUp | None = None
    known: Box | None = None
    told: bool = False
    meter_asked: bool = False

    def run(self) -> int:
        self.greet()
        while True:
            try:
                line = self.next_line()
                while line is not None:
                    self.ask(line)
                    line = self.next_line()
                verdict = self.conclude()
                if verdict is None or not self.mended(verdict):
                    return self.status(verdict)
            except Ended:
                return self.status(self.conclude())

    @staticmethod
    def status(verdict: Verdict | None) -> int:
        return CLEAN if verdict is None or verdict.outcome in SOUND else FINDINGS

    def greet(self) -> None:
        from shuntwise.documents.bench_sheet import cautions
        from shuntwise.documents.bench_words import ohmmeter
        from shuntwise.documents.pins import ways_in

        subject = self.subject
        _say(subject.title)
        _say(Listing(cautions(subject.compilation.design, subject.bench.sheet, subject.instruments)))
        print()
        _say(*ways_in(subject.compilation.circuit))
        _say(ohmmeter(subject.instruments), *HELP)

    # --- which reading

    def box(self) -> Box:
        """The box as its file has it now. Raises Faulty where it has got errors."""
        now = read_source(Path(self.options.readings), self.options.readings)
        if self.known is None or not isinstance(now, Source) or now.text != self.known.source.text:
            self.known = box_of(self.options)
        assert self.known is not None
        return self.known

    def taken(self) -> tuple[Taken, ...]:
        return read(self.box())

    def next_line(self) -> SheetLine | None:
        """The reading to ask for, None where the verdict is due."""
        taken, bench = self.taken(), self.subject.bench
        read = {one.reading for one in taken}
        missing = [one for one in self.lines if one.reading not in read | self.skipped]
        verdict = bench.judge(taken, in_full=False)
        if verdict.outcome in SOUND:
            self.told = False
            return missing[0] if missing else None
        if not self.told:
            self.told = True
            print()
            _say("This board is not as it should be. From now on I ask for what tells most about the fault.")
        dangers = [one for one in missing if one in self.lines[: bench.sheet.dangers]]
        if dangers:
            return dangers[0]
        if verdict.outcome != "no single fault" and verdict.suspects and verdict.suspects[0].share >= SURE:
            return None
        proposal = bench.propose(taken)
        if proposal is None:
            return None
        if proposal.line.reading not in self.skipped:
            return proposal.line
        return missing[0] if missing else None

    # --- one question

    def ask(self, line: SheetLine) -> None:
        """Ask until it is answered, skipped, or another one is to be asked."""
        from shuntwise.documents.bench_words import expected, window

        reading = line.reading
        self.connect(reading)
        low, high = window(line)
        print()
        _say(reading.words(self.subject.inputs))
        _say(f"  should be {expected(line)} ({low} to {high})")
        while True:
            answer = self.hear(reading.quantity)
            if answer == "skip":
                self.skipped.add(reading)
                return
            if answer == "back":
                if self.asked:
                    self.ask(self.asked.pop())
                    return  # what is to be read now may be another
                _say("There is none before.")
                continue
            text = f"reading {reading.words(self.subject.inputs)}: {answer}"
            box = self.with_line(text)
            if box is None:
                continue
            self.keep(text, box)
            self.asked.append(line)
            value = _value(box, reading)
            if not line.allows(value):
                where = "HIGH" if value > line.high else "LOW"
                _say(f"  TOO {where}. If a lead slipped: back, and read it again.")
            return

    @staticmethod
    def hear(quantity: ReadQuantity) -> str:
        """What the meter shows, `skip` or `back`. Raises Ended."""
        while True:
            answer = _hear("> ", *HELP)
            word = answer.casefold()
            if word == BEYOND and quantity == "resistance":
                return "open"
            if word:
                return word if word in ("skip", "back", "open") else answer
            _say(*HELP)

    def with_line(self, line: str) -> Box | None:
        """The box as it would be with one more line, None where something is wrong with that, which is shown."""
        path, text = self.options.readings, self.box().source.text
        with refusing():
            found = read_box(
                path, of=self.options.file, texts={os.path.realpath(path): f"{text}{addition(text, line)}"}
            )
        # The line is typed anew and not mended in the file, so that nothing is told of fixes.
        wrong = [replace(one, fixes=()) for one in found.findings if one.severity is Severity.ERROR]
        show(wrong, to_stderr=False)
        return None if wrong else found.box

    def keep(self, line: str, box: Box) -> None:
        """Put a line into the file, which makes it `box` unless somebody else has written there."""
        put_line(line, self.options.readings)
        self.known = box

    # --- the set-up

    def connect(self, reading: Reading) -> None:
        """What to move before a reading, and the check of the meter before the first that needs the generator."""
        from shuntwise.documents.bench_words import SetUp, connect, heading

        set_up = SetUp.of(reading)
        if reading.freq_hz:
            self.check_meter()
        if set_up == self.set_up:
            return
        self.set_up = set_up
        print()
        _say(f"== {heading(set_up, self.subject.compilation.circuit)}")
        _say("Generator and amplifier off while you move leads.")
        _say(connect(set_up, self.subject.compilation.circuit, self.subject.instruments))

    def check_meter(self) -> None:
        from shuntwise.documents.bench_sheet import check_frequencies, check_window, meter_check
        from shuntwise.documents.bench_words import shown

        bench = self.subject.instruments
        freqs = [freq for freq in check_frequencies(self.subject.bench.sheet) if not self.meter_is_right(freq)]
        if self.meter_asked or not freqs:
            return
        self.meter_asked = True
        print()
        _say("== The meter first")
        _say(meter_check(bench))
        low, high = check_window(bench)
        feed = self.subject.compilation.design.feeds[0].name
        for freq_hz in freqs:
            print()
            _say(f"volts across one of the two, {write(freq_hz, HERTZ)}")
            _say(f"  should be {low} to {high}")
            beside = Reading("volts", f"{feed}+", f"{feed}-", DUMMIES_ON, freq_hz, feed)
            while True:
                answer = self.hear(beside.quantity)
                if answer == "skip":
                    return
                if answer == "back":
                    _say("There is none before.")
                    continue
                found = self.with_line(f"reading {beside.words(self.subject.inputs)}: {answer}")
                if found is None:
                    continue
                value = _value(found, beside)
                if abs(value - bench.source_v / 2) <= bench.source_v / 2 * bench.meter_share:
                    break
                _say(
                    "  The meter is further off than stated. Read it again, take another meter, or end here, state in "
                    "the box's file what it does (bench { meter 5 %, meter_top 1 kHz }), and begin again."
                )
            put_line(f'note "{_checked(freq_hz)}: {shown(value, "volts")}"', self.options.readings)

    def meter_is_right(self, freq_hz: float) -> bool:
        """Was the voltmeter right at this frequency, by a note in the file?"""
        return any(note.startswith(f"{_checked(freq_hz)}:") for note in self.box().notes)

    # --- the end

    def conclude(self) -> Verdict | None:
        """Show the verdict; None where nothing was read."""
        from shuntwise.documents.aligned import as_text
        from shuntwise.documents.bench_verdict import with_readings

        taken, bench = self.taken(), self.subject.bench
        print()
        if not taken:
            _say("Nothing was read yet.")
            return None
        verdict = bench.judge(taken)
        beside, sister = should_be(bench, taken), self.box().yardstick
        print(as_text(with_readings(verdict, taken, beside, sister, self.subject.inputs)), end="")
        return verdict

    def mended(self, verdict: Verdict) -> bool:
        """Is the board mended, so that all is read anew? What was done goes into the file."""
        if verdict.outcome in SOUND:
            return False
        print()
        _say("When you have mended it, say in some words what you did: all is then read anew. Empty: not yet.")
        while True:
            try:
                answer = _hear("mended: ", MENDING)
            except Ended:
                return False
            if answer.casefold() in ("", "no"):
                return False  # not mended yet
            if not _tells_of_work(answer):
                _say(MENDING)
                continue
            found = self.with_line(f'rework "{answer}"')
            if found is not None:
                break
        self.keep(f'rework "{answer}"', found)
        self.skipped.clear()
        self.asked.clear()
        self.set_up, self.told = None, False
        return True
