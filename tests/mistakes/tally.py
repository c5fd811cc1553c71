"""What became of many mistakes: counts by class, and the designs that they were made in."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass, field, fields
from pathlib import Path

from mistakes.judging import Judge, Verdict
from mistakes.slips import CLASSES

ROOT = Path(__file__).parents[2]
GROUPS = {
    "examples": sorted((ROOT / "examples").rglob("*.shunt")),
    "strangers": sorted((ROOT / "tests" / "strangers").glob("*.shunt")),
}
"""The rules were tuned on the examples, and not on the strangers' designs."""


@dataclass
class Tally:
    """`told` by an error or a warning, `advised` by advice only, `silent` by nothing; harmless ones are none of these.

    `messages` are all findings on the three.
    """

    told: int = 0
    advised: int = 0
    silent: int = 0
    harmless: int = 0
    messages: int = 0
    escapes: list[str] = field(default_factory=list)

    def take(self, verdict: Verdict) -> None:
        self.told += verdict.told
        self.advised += verdict.advised
        self.harmless += verdict.harmless
        self.messages += verdict.messages
        if not verdict.harmless and not verdict.findings:
            self.silent += 1
            self.escapes.append(f"{verdict.kind}: {verdict.design}: {verdict.sentence}")

    def add(self, other: Tally) -> None:
        for entry in fields(self):
            setattr(self, entry.name, getattr(self, entry.name) + getattr(other, entry.name))

    @property
    def counted(self) -> int:
        return self.told + self.advised + self.silent

    @property
    def counts(self) -> dict[str, int]:
        """The numbers alone."""
        return {entry.name: getattr(self, entry.name) for entry in fields(self) if entry.name != "escapes"}


Tallies = dict[str, Tally]
"""By class of mistake."""


def total(tallies: Iterable[Tally]) -> Tally:
    whole = Tally()
    for tally in tallies:
        whole.add(tally)
    return whole


def examine(path: Path, expects: bool) -> Tallies:
    """All mistakes of one design."""
    judge = Judge(path, expects)
    tallies = {kind: Tally() for kind in CLASSES}
    for kind, tally in tallies.items():
        for mistake in judge.mistakes(kind):
            tally.take(judge.judge(kind, mistake))
    return tallies


def examine_groups(groups: Mapping[str, Sequence[Path]]) -> dict[tuple[str, bool], Tallies]:
    """All mistakes of all designs, by group and by whether the `expect` lines stand; two designs at a time."""
    jobs = [(group, path, expects) for group, paths in groups.items() for expects in (True, False) for path in paths]
    found: dict[tuple[str, bool], Tallies] = {}
    for group, _, expects in jobs:
        found.setdefault((group, expects), {kind: Tally() for kind in CLASSES})
    with ProcessPoolExecutor(2) as pool:  # the longest designs first, or one of them would be waited for at the end
        begun = sorted(jobs, key=lambda job: job[1].stat().st_size, reverse=True)
        pending = {job: pool.submit(examine, *job[1:]) for job in begun}
        for group, path, expects in jobs:
            for kind, tally in pending[group, path, expects].result().items():
                found[group, expects][kind].add(tally)
    return found
