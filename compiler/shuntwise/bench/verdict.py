"""What the bench answers: a sheet of readings with their windows, a verdict, and what to read next.

In: nothing but values. Out: the values that documents and the command line show. Refuses to know how they were
worked out.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from shuntwise.bench.faults import Fault
from shuntwise.model.box import Reading, Taken

Outcome = Literal["passed", "good so far", "fault", "no single fault", "set-up"]


@dataclass(frozen=True)
class SheetLine:
    """One reading of the sheet, what it should be and its window: ohm or volts, infinite for an open circuit."""

    reading: Reading
    expected: float
    low: float
    high: float

    def allows(self, value: float) -> bool:
        return self.low <= value <= self.high


@dataclass(frozen=True)
class BenchSheet:
    """The readings in the order in which they are taken; the first `dangers` are those that find what is dangerous.

    `together` is how often a sound board passes all windows (a share). `most_v` is the highest voltage that any driver
    or dummy sees, `series_w` and `dummy_w` the most heat in the series resistor and in a dummy while the board is
    right, `fault_a` and `fault_w` the current that a short at the input draws, and its heat in the series resistor.
    """

    lines: tuple[SheetLine, ...]
    dangers: int
    together: float
    most_v: float
    series_w: float
    dummy_w: float
    fault_a: float
    fault_w: float


@dataclass(frozen=True)
class Suspected:
    """A fault that explains the readings. `title` says it in words, `share` how likely it is among all that may be.

    `same` are other faults that no reading tells from it, `where` says where to look on the board, `proof` how to be
    sure, `effects` what it does to the sound and to the amplifier. `size` is what it most likely measures, if anything.
    """

    fault: Fault
    title: str
    share: float
    same: tuple[str, ...] = ()
    where: tuple[str, ...] = ()
    proof: str = ""
    effects: tuple[str, ...] = ()
    size: str = ""


@dataclass(frozen=True)
class Verdict:
    """What the readings say. `suspects` are the likeliest first, three at most; `pair` two faults that explain together
    what no single one does. `outside` are the readings outside their windows, `missing` the lines that were not read.

    `sound` is the share of "nothing is wrong".
    """

    outcome: Outcome
    sound: float
    suspects: tuple[Suspected, ...] = ()
    pair: tuple[Suspected, Suspected] | None = None
    outside: tuple[tuple[Taken, SheetLine], ...] = ()
    missing: tuple[SheetLine, ...] = ()


@dataclass(frozen=True)
class Answer:
    """If a reading lies from `low` to `high` (ohm, V), then this is likeliest, with its share."""

    low: float
    high: float
    title: str
    share: float


@dataclass(frozen=True)
class Proposal:
    """The reading that tells most, what it is on a sound board, and what each answer would mean."""

    line: SheetLine
    answers: tuple[Answer, ...]
