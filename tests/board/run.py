"""Make mistakes on layouts, and say what share is caught, put right, and what is called a mistake that is none.

    PYTHONPATH=compiler:tests python tests/board/run.py [--most N] [--doubles N] [--rerouted N] [--designs NAME ...]

What does harm is judged from outside (`outside.py`), by what the circuit so built does. `--most`: of each family of
mistakes of each design so many by chance (all, without). The exit status is 1 if a harmful one escaped, or one that
does no harm was called one.
"""

from __future__ import annotations

import argparse
import random
import sys
import time
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path

sys.path[:0] = [str(Path(__file__).parents[2] / folder) for folder in ("compiler", "tests")]

from board.comparing import Said, compared
from board.designs import GROUPS, LaidOut, wirings
from board.mutations import Change, Gone, doubles, mistakes, rerouted
from board.outside import Doubtful, Judge
from shuntwise.model.boards import Layout

COLUMNS = ("made", "doubtful", "harmless", "harmful", "caught", "false alarms", "short", "cured")
"""Doubtful: copper joined by a hair. Short: a repair of no more steps than the mistake. Cured: when it is applied."""


@dataclass
class Tally:
    counts: dict[str, Counter[str]] = field(default_factory=dict)
    slips: list[str] = field(default_factory=list)
    longest_s: float = 0.0

    def add(self, change: Change, column: str) -> None:
        self.counts.setdefault(change.family, Counter())[column] += 1

    def total(self, column: str) -> int:
        return sum(counts[column] for counts in self.counts.values())


class Case:
    """A design with layouts, in all its wirings: what does harm in one of them does harm."""

    def __init__(self, wirings: Sequence[LaidOut]) -> None:
        self.name = wirings[0].name
        self.circuits = [laid.circuit for laid in wirings]
        self.layouts = wirings[0].layouts
        if any(laid.layouts != self.layouts for laid in wirings):
            raise ValueError(f"{self.name} has a layout of its own in some variant")
        self.judges = [Judge(circuit) for circuit in self.circuits]

    def harmless(self, layouts: tuple[Layout, ...]) -> bool:
        return all(judge.harmless(layouts) for judge in self.judges)

    def compared(self, layouts: tuple[Layout, ...]) -> Said:
        """What is said of the first wiring in which anything is called a mistake."""
        said = Said(wrong=False)
        for circuit in self.circuits:
            said = compared(circuit, layouts)
            if said.wrong:
                break
        return said


def examine(case: Case, changes: Iterable[Change], tally: Tally) -> None:
    """Make each change, have it judged, and hold what the project says of it against that."""
    for change in changes:
        try:
            layouts = change.make(case.layouts)
        except Gone:
            continue
        tally.add(change, "made")
        try:
            harmless = case.harmless(layouts)
        except Doubtful:
            tally.add(change, "doubtful")
            continue
        begun = time.perf_counter()
        said = case.compared(layouts)
        tally.longest_s = max(tally.longest_s, time.perf_counter() - begun)
        if harmless:
            tally.add(change, "harmless")
            if said.wrong:
                tally.add(change, "false alarms")
                tally.slips.append(f"{case.name}: false alarm, {change.family}: {change.words}")
            continue
        tally.add(change, "harmful")
        if not said.wrong:
            tally.slips.append(f"{case.name}: escaped, {change.family}: {change.words}")
            continue
        tally.add(change, "caught")
        _judge_repair(case, change, said, tally)


def _judge_repair(case: Case, change: Change, said: Said, tally: Tally) -> None:
    if said.steps <= change.steps:
        tally.add(change, "short")
    else:
        tally.slips.append(f"{case.name}: {said.steps} steps for {change.steps}, {change.family}: {change.words}")
    try:
        cured = said.repaired is not None and case.harmless(said.repaired)
    except Doubtful:
        cured = False
    if cured:
        tally.add(change, "cured")
    else:
        tally.slips.append(f"{case.name}: not cured, {change.family}: {change.words}")


def some(endless: Iterator[Change], count: int) -> Iterator[Change]:
    for _, change in zip(range(count), endless, strict=False):
        yield change


def table(title: str, tally: Tally) -> str:
    rows = [[title, *COLUMNS]]
    rows += [[family, *(str(counts[column]) for column in COLUMNS)] for family, counts in tally.counts.items()]
    rows.append(["in all", *(str(tally.total(column)) for column in COLUMNS)])
    widths = [max(len(row[at]) for row in rows) for at in range(len(rows[0]))]
    return "\n".join(
        "  ".join(
            cell.ljust(w) if not at else cell.rjust(w) for at, (cell, w) in enumerate(zip(row, widths, strict=True))
        )
        for row in rows
    )


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--most", type=int, default=10_000, help="of each family and design")
    parser.add_argument("--doubles", type=int, default=100, help="of each design")
    parser.add_argument("--rerouted", type=int, default=70, help="of each design")
    parser.add_argument("--seed", type=int, default=0)
    parser.add_argument("--slips", type=int, default=30, help="how many of those that went wrong to list")
    parser.add_argument("--designs", nargs="*", default=[], help="only those with one of these in their name")
    options = parser.parse_args()
    failed = 0
    for group, paths in GROUPS.items():
        tally = Tally()
        for path in paths:
            if options.designs and not any(name in path.stem for name in options.designs):
                continue
            case, rng = Case(wirings(path)), random.Random(options.seed)
            singles = list(mistakes(case.circuits[0], case.layouts, options.seed, options.most))
            examine(case, singles, tally)
            examine(case, some(doubles(singles, rng), options.doubles), tally)
            examine(case, some(rerouted(case.circuits[0], case.layouts, rng), options.rerouted), tally)
        print(table(group, tally))
        print(f"longest: {1000 * tally.longest_s:.0f} ms for comparison and repair\n")
        for slip in tally.slips[: options.slips]:
            print("  " + slip)
        if len(tally.slips) > options.slips:
            print(f"  ... and {len(tally.slips) - options.slips} more")
        failed += tally.total("harmful") - tally.total("caught") + tally.total("false alarms")
    sys.exit(1 if failed else 0)


if __name__ == "__main__":
    main()
