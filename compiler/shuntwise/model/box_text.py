"""The text of a box -> `Box`: its readings typed, its points and parts looked up in the design that it was built from.

In: a `BoxTree`, what the design has, the tables of sweeps. Out: a `Box` and the findings; a line that cannot be
understood is left out. Refuses to know files, and whether a reading is as it should be.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TypeVar

from shuntwise import units as u
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model import box_findings as told
from shuntwise.model import findings
from shuntwise.model.box import (
    DRIVERS_OFF,
    DRIVERS_ON,
    DUMMIES_ON,
    OPEN,
    Box,
    Reading,
    ReadQuantity,
    Taken,
)
from shuntwise.model.changes import Changes
from shuntwise.model.components import read_instruments
from shuntwise.model.design import ImpedanceTable, Part, Quantity
from shuntwise.model.evaluate import Scope
from shuntwise.model.instruments import USUAL, Instruments
from shuntwise.model.items import read_items
from shuntwise.model.kinds import KINDS, Attribute, Kind
from shuntwise.model.wiring import RETURN_WORDS
from shuntwise.source import Span
from shuntwise.syntax import box_tree as b
from shuntwise.syntax import tree as t
from shuntwise.syntax.words import nearest

MEASURED_SHARE = 0.01
"""By which a measured value may be off where nothing is stated: plain meters claim it (common practice, no source)."""

FAR_OFF = 3.0
"""A measured value so many times the stated one, or so small a part of it, is told: a prefix may have slipped."""

APART = 0.1
"""Two values of one reading that differ by more than this share of the larger are told."""

AT_INPUT, ANYWHERE = 1.2, 10.0
"""Times the generator's voltage: more is impossible at the input that it feeds, and anywhere else.

A passive load behind a resistor takes no more than all of the voltage (a divider whose lower part has no negative
resistance), so the first leaves room for a generator set too high; the second leaves room for a resonance.
"""

_OHM = Attribute("value", u.OHM, 0, 1e9, "a resistance", signed=True, owner="board", example="2.8 ohm")
_IMPEDANCE = Attribute("value", u.OHM, 0, 1e6, "an impedance", signed=True, owner="board")
_VOLTS = Attribute("value", u.VOLT, 0, 1000, "a voltage", signed=True, owner="board on the bench", example="270 mV")
_FREQUENCY = Attribute("frequency", u.HERTZ, 1, 1e6, "a frequency", owner="reading")
_MEASURED = Kind(
    "measured part",
    None,
    bare=(Attribute("share", u.PLAIN, 1e-4, 0.5, "a share by which it may be off", owner="measurement"),),
)
_QUANTITIES: Mapping[str, ReadQuantity] = {"resistance": "resistance", "volts": "volts", "impedance": "impedance"}
_SAID_FOR = {
    "ohm": "resistance", "ohms": "resistance", "dc": "resistance", "voltage": "volts", "volt": "volts", "ac": "volts",
}  # fmt: skip
_ENDS = ("+", "-", *dict.fromkeys(f".{terminal}" for kind in KINDS.values() for terminal in kind.terminals))
_LOADS = (DRIVERS_OFF, DRIVERS_ON, DUMMIES_ON)
_OFF_SAID = frozenset(("out", "away", "open", "unplugged", "disconnected", "removed", "lifted"))
"""What people say for `off`, which is not to be taken for `on` because it has as many letters."""

_OPEN_SAID = frozenset(("ol", "infinite", "infinity", "beyond"))
"""What ohmmeters show, and people say, beyond the range (common practice, no source)."""

_LOADS_SAID_FOR = {
    "loads off": DRIVERS_OFF, "loads on": DRIVERS_ON, "dummies off": DRIVERS_OFF, "driver off": DRIVERS_OFF,
    "driver on": DRIVERS_ON, "no drivers": DRIVERS_OFF, "no driver": DRIVERS_OFF, "nothing on": DRIVERS_OFF,
    "no loads": DRIVERS_OFF, "no load": DRIVERS_OFF, "dummy on": DUMMIES_ON,
    "all off": DRIVERS_OFF, "all on": DRIVERS_ON,
}  # fmt: skip


@dataclass(frozen=True)
class Built:
    """What a box's text may name of its design, in its variant.

    `points` are all that can be touched, `pairs` what has two pads, `drivers` those that can be taken off one by one,
    `inputs` what a generator can feed. `doubtful` are names of which nothing is said, since text was lost.
    """

    points: frozenset[str]
    pairs: tuple[str, ...]
    drivers: tuple[str, ...]
    inputs: tuple[str, ...]
    parts: Mapping[str, Part]
    instruments: Instruments = USUAL
    doubtful: Collection[str] = ()


@dataclass(frozen=True)
class Heads:
    """The lines that say what a box is, each once, and the findings on those that do not."""

    box: b.BoxHead | None
    variant: b.InVariant | None
    beside: b.Beside | None
    bench: t.BenchDecl | None
    findings: tuple[Diagnostic, ...]


def read_heads(tree: b.BoxTree) -> Heads:
    """What must be known before anything can be looked up in a design."""
    said: list[Diagnostic] = []
    box = _once([line for line in tree.lines if isinstance(line, b.BoxHead)], "box", said)
    variant = _once([line for line in tree.lines if isinstance(line, b.InVariant)], "variant", said)
    beside = _once([line for line in tree.lines if isinstance(line, b.Beside)], "beside", said)
    bench = _once([line for line in tree.lines if isinstance(line, t.BenchDecl)], "bench", said)
    lost = any(one.whole_file or one.span.text.lstrip().startswith("box") for one in tree.lost)
    if box is None and not lost:
        said.append(told.unnamed(Span(tree.source, 0, len(tree.source.line(1)))))
    return Heads(box, variant, beside, bench, tuple(said))


_Line = TypeVar("_Line", b.BoxHead, b.InVariant, b.Beside, t.BenchDecl)


def _once(lines: list[_Line], word: str, said: list[Diagnostic]) -> _Line | None:
    said += [told.line_twice(word, again.span, lines[0].span) for again in lines[1:]]
    return lines[0] if lines else None


def read_box_text(
    tree: b.BoxTree,
    heads: Heads,
    built: Built,
    tables: Mapping[Span, ImpedanceTable],
    yardstick: Box | None = None,
) -> tuple[Box | None, tuple[Diagnostic, ...]]:
    """The box, None without the line that names it, and what is wrong with the rest of its text.

    `tables` are those that sweeps name, by the place where they are named.
    """
    if heads.box is None:
        return None, ()
    reading = _Reading(tree, heads, built, tables)
    reading.read()
    box = Box(
        source=tree.source,
        name=heads.box.name.text,
        design_path=heads.box.design.value,
        design_span=heads.box.design.span,
        variant=heads.variant.name.text if heads.variant else None,
        instruments=reading.instruments,
        measured=reading.measured,
        taken=tuple(reading.taken.values()),
        before=tuple(reading.before),
        reworks=tuple(reading.reworks),
        notes=tuple(reading.notes),
        yardstick=yardstick,
    )
    return box, tuple(reading.said)


class _Reading:
    def __init__(self, tree: b.BoxTree, heads: Heads, built: Built, tables: Mapping[Span, ImpedanceTable]) -> None:
        self.tree, self.built, self.tables = tree, built, tables
        self.said: list[Diagnostic] = []
        self.scope = Scope({}, self.said, parts=tuple(built.parts), doubtful=built.doubtful)
        self.instruments = read_instruments(heads.bench, self.scope, Changes({}, {}), built.instruments)
        self.told: set[str] = set()
        self.measured: dict[str, tuple[Quantity, float]] = {}
        self.taken: dict[Reading, Taken] = {}
        self.before: list[Taken] = []
        self.reworks: list[str] = []
        self.notes: list[str] = []

    def read(self) -> None:
        for line in self.tree.lines:
            match line:
                case b.Measured():
                    self.take_measured(line)
                case b.ReadingDecl():
                    self.take_reading(line)
                case b.SweepDecl():
                    self.take_sweep(line)
                case b.Rework():
                    self.before += self.taken.values()
                    self.taken.clear()
                    self.reworks.append(line.what.value)
                case b.Remark():
                    self.notes.append(line.text.value)

    def say(self, finding: Diagnostic) -> None:
        self.said.append(finding)

    # --- measured parts

    def take_measured(self, line: b.Measured) -> None:
        label = line.label.text
        part = self.built.parts.get(label)
        if part is None or not _measurable(part):
            if label not in self.built.doubtful:
                what = "no part of this name" if part is None else f"a {part.kind} has no value that a meter shows"
                known = [name for name, one in self.built.parts.items() if _measurable(one)]
                self.say(findings.unknown_name(label, line.label.span, known, what))
            return
        attribute = KINDS[part.kind].value
        assert attribute is not None
        quantity = self.scope.typed(line.value, attribute, label)
        share = read_items(line.items, _MEASURED, self.scope, label).quantities.get("share")
        if quantity is None:
            return
        if label in self.measured:
            first = self.measured[label][0].span
            self.say(findings.told_twice("the measured value", label, quantity.span, first))
            return
        if part.value is not None and not 1 / FAR_OFF <= quantity.value / part.value.value <= FAR_OFF:
            self.say(told.far_off(label, quantity, part.value))
        self.measured[label] = (quantity, share.value if share is not None else MEASURED_SHARE)

    # --- readings

    def take_reading(self, line: b.ReadingDecl) -> None:
        """Each slip of a line is told; only a line without any counts."""
        before = len(self.said)
        quantity = self.quantity(line.quantity)
        points = self.points(line)
        loads = self.loads(line.loads)
        freq_hz = self.frequency(line, quantity)
        fed = self.fed(line, quantity, points) if quantity else ""
        value = self.value(line, quantity) if quantity else None
        if None in (quantity, points, loads, freq_hz, fed, value) or len(self.said) > before:
            return
        assert quantity and points and loads and freq_hz is not None and fed is not None and value is not None
        reading = Reading(quantity, *points, loads, freq_hz, fed)
        most = AT_INPUT if {*points} == {f"{fed}+", f"{fed}-"} else ANYWHERE
        if quantity == "volts" and value > most * self.instruments.source_v:
            where = "at the input that it feeds" if most == AT_INPUT else "anywhere in the box"
            self.say(told.above_source(line.value.span, self.instruments.source_v, where))
            return
        self.take(Taken(reading, value, line.span))

    def take(self, taken: Taken) -> None:
        old = self.taken.pop(taken.reading, None)
        self.taken[taken.reading] = taken
        if old is not None and old.span is not None and _apart(old.value, taken.value):
            assert taken.span is not None
            self.say(told.taken_again(taken.span, old.span))

    def quantity(self, word: t.Ident) -> ReadQuantity | None:
        found = _QUANTITIES.get(word.text)
        if found is None:
            said = findings.unknown_word(word.text, word.span, _QUANTITIES, "behind `reading`")
            right = _SAID_FOR.get(word.text.casefold())
            if right is not None:
                said = replace(said, help=f"write `{right}`", fixes=(findings.replace(word.span, right),))
            self.say(said)
        return found

    def points(self, line: b.ReadingDecl) -> tuple[str, str] | None:
        if line.minus is None:
            name = line.plus.text
            if {f"{name}+", f"{name}-"} <= self.built.points:
                return f"{name}+", f"{name}-"
            if name not in self.built.doubtful:
                self.unknown_point(name, line.plus.span, pairs=True)
            return None
        plus, minus = self.point(line.plus), self.point(line.minus)
        if plus is None or minus is None:
            return None
        if plus == minus:
            self.say(told.impossible(line.place, "both ends of this reading are at one point", "name the other point"))
            return None
        return plus, minus

    def point(self, written: t.Pad | t.Path) -> str | None:
        name = written.text
        if name in RETURN_WORDS and name not in self.built.points and len(self.built.inputs) == 1:
            name = f"{self.built.inputs[0]}-"
        if name in self.built.points:
            return name
        owner = written.owner.text if isinstance(written, t.Pad) else written.words[0].text
        if name not in self.built.doubtful and owner not in self.built.doubtful:
            self.unknown_point(name, written.span, pairs=False)
        return None

    def unknown_point(self, name: str, span: Span, *, pairs: bool) -> None:
        """Tell it once for each name; perhaps a part or a driver is meant of which one end must be said."""
        if name in self.told:
            return
        self.told.add(name)
        ends = [point for end in _ENDS if (point := name + end) in self.built.points]
        self.say(told.unknown_point(name, span, ends, self.built.pairs if pairs else self.all_points, pairs=pairs))

    @cached_property
    def all_points(self) -> tuple[str, ...]:
        return tuple(sorted(self.built.points))

    def loads(self, loads: b.Loads) -> str | None:
        words, of = f"{loads.of.text} {loads.word.text}", loads.of.text
        if words in _LOADS or (loads.word.text == "off" and of in self.built.drivers):
            return words
        if of in self.built.doubtful:
            return None
        known = [*_LOADS, *(f"{name} off" for name in self.built.drivers)]
        said = f"{of} off" if loads.word.text.casefold() in _OFF_SAID else words
        meant = _LOADS_SAID_FOR.get(said.casefold()) or (said if said in known else nearest(said, known))
        self.say(told.loads_unclear(loads.span, words, meant, known))
        return None

    def frequency(self, line: b.ReadingDecl, quantity: ReadQuantity | None) -> float | None:
        """In hertz; 0 where none belongs, None where it is wrong."""
        if quantity == "resistance":
            if line.frequency is None:
                return 0.0
            behind = line.into.span.end if line.into is not None else line.loads.span.end
            self.say(told.needless_frequency(line.frequency.span, behind))
            return None
        if line.frequency is not None:
            read = self.scope.typed(line.frequency, _FREQUENCY, "the reading")
            return read.value if read is not None else None
        if quantity is not None:
            behind = line.into.span.end if line.into is not None else line.loads.span.end
            self.say(told.frequency_missing(Span(self.tree.source, behind, behind), quantity))
        return None

    def fed(self, line: b.ReadingDecl, quantity: ReadQuantity, points: tuple[str, str] | None) -> str | None:
        """The input that the generator is on; empty for a resistance, None where it is wrong."""
        inputs = self.built.inputs
        own = (
            points[0][:-1] if points is not None and points[0][-1:] == "+" and points[1] == f"{points[0][:-1]}-" else ""
        )
        if quantity == "impedance" and points is not None and own not in inputs:
            self.say(told.impossible(line.place, "an impedance is read at an input",
                                     f"write `at {inputs[0]}`, or read a resistance or volts here"))  # fmt: skip
            return None
        if line.into is not None and quantity == "resistance":
            self.say(told.input_unclear(line.into.span, "a resistance is read without a generator", "leave `into` out"))
            return None
        if line.into is not None and line.into.text not in inputs:
            self.say(findings.unknown_name(line.into.text, line.into.span, inputs, "no input of this name"))
            return None
        if line.into is not None:
            if quantity == "impedance" and own and line.into.text != own:
                self.say(told.input_unclear(line.into.span, f"an impedance at `{own}` is read with the generator there",
                                        f"write `into {own}`, or leave it out"))  # fmt: skip
                return None
            return line.into.text
        if quantity == "resistance":
            return ""
        if quantity == "impedance" and own:
            return own
        if len(inputs) > 1:
            self.say(
                told.input_unclear(line.loads.span, "which input the generator is on is not said",
                               f"write it behind the loads: `{line.loads.span.text}, into {inputs[0]}`")
            )  # fmt: skip
            return None
        return inputs[0]

    def value(self, line: b.ReadingDecl, quantity: ReadQuantity) -> float | None:
        value = line.value
        word = value.ident.text if isinstance(value, t.Name) else ""
        if quantity == "resistance" and word == "open":
            return OPEN
        if word == "open" or word.casefold() in _OPEN_SAID:
            said = told.beyond_range(value.span) if quantity == "resistance" else told.no_level(value.span, quantity)
            self.say(said)
            return None
        attribute = {"resistance": _OHM, "volts": _VOLTS, "impedance": _IMPEDANCE}[quantity]
        read = self.scope.typed(value, attribute, "the reading")
        return read.value if read is not None else None

    # --- sweeps

    def take_sweep(self, line: b.SweepDecl) -> None:
        loads, inputs = self.loads(line.loads), self.built.inputs
        fed: str | None = inputs[0]
        if line.into is not None:
            fed = line.into.text if line.into.text in inputs else None
            if fed is None:
                self.say(findings.unknown_name(line.into.text, line.into.span, inputs, "no input of this name"))
        elif len(inputs) > 1:
            fed = None
            right = f"{line.loads.span.text}, into {inputs[0]}"
            self.say(told.input_unclear(line.loads.span, "which input was swept is not said", f"write `{right}`"))
        table = self.tables.get(line.path.span)
        if table is None or loads is None or fed is None:
            return
        for freq_hz, ohm in zip(table.freq_hz, table.ohm, strict=True):
            reading = Reading("impedance", f"{fed}+", f"{fed}-", loads, freq_hz, fed)
            self.taken.pop(reading, None)
            self.taken[reading] = Taken(reading, abs(ohm), line.span)


def _measurable(part: Part) -> bool:
    """Is its value what a meter shows, and what its tolerance is of?"""
    kind = KINDS[part.kind]
    return kind.value is not None and not kind.toleranced


def _apart(first: float, second: float) -> bool:
    if OPEN in (first, second):
        return first != second
    return abs(first - second) > APART * max(first, second)


def sweeps_of(tree: b.BoxTree) -> Iterator[b.SweepDecl]:
    """The lines that name a table."""
    return (line for line in tree.lines if isinstance(line, b.SweepDecl))
