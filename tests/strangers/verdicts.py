"""What the checks make of the slips of slips.toml.

Of every slip it is asked whether `check` makes any error or warning that it does not make on the sound design, whether
the first such message names the part that slipped, and whether it stands on its line.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from shuntwise.checks.registry import FAMILY_OF
from shuntwise.diagnostics.diagnostic import Diagnostic, Severity
from shuntwise.loading import loader
from shuntwise.pipeline import compile_all, read
from shuntwise.source import Source
from strangers.slips import MadeSlip, read_slips

PINNED = Path(__file__).parent / "figures.json"
COMMAND = "python tests/strangers/run.py --write"


@dataclass(frozen=True)
class Verdict:
    """`told` are the new errors and warnings, in the order in which `check` prints them; `advice` counts the rest."""

    slip: MadeSlip
    told: tuple[Diagnostic, ...]
    advice: int

    @property
    def advised(self) -> bool:
        """By advice and nothing more."""
        return self.advice > 0 and not self.told

    @property
    def silent(self) -> bool:
        return not self.told and not self.advice

    @property
    def first(self) -> Diagnostic:
        """The first that is printed by itself: what follows from another is told under it."""
        return next((finding for finding in self.told if finding.cause is None), self.told[0])

    @property
    def messages(self) -> int:
        """Errors and warnings; each counts that is folded under a cause."""
        return len(self.told)

    @property
    def lines(self) -> int:
        """Those that are printed by themselves, and one line for all that is told under a cause."""
        return sum(f.cause is None for f in self.told) + any(f.cause is not None for f in self.told)

    @property
    def names_it(self) -> bool:
        """A finding on the form of the text names what it points at."""
        if not self.told:
            return False
        first, part = self.first, self.slip.part
        of_form = FAMILY_OF[first.name] == "language" and self.right_place
        return part in first.subjects or f"`{part}" in first.headline or of_form

    @property
    def right_place(self) -> bool:
        return bool(self.told) and self.first.span.line == self.slip.line_number

    @property
    def says_it(self) -> bool:
        """The part is named, on its line."""
        return self.names_it and self.right_place


def findings(path: Path, text: str) -> list[Diagnostic]:
    """Those of the design and of each variant."""
    source = Source(path.name, text)
    collected, said = read(source, loader(path.resolve(), path.name))
    return [finding for one in compile_all(collected, said) for finding in one.findings]


@cache
def _known(path: Path, text: str) -> frozenset[tuple[str, str]]:
    return frozenset((finding.name, finding.headline) for finding in findings(path, text))


def judge(slip: MadeSlip) -> Verdict:
    known = _known(slip.path, slip.sound)
    new = [f for f in findings(slip.path, slip.harmed) if (f.name, f.headline) not in known]
    told = tuple(f for f in new if f.severity is not Severity.ADVICE)
    return Verdict(slip, told, len(new) - len(told))


Counts = dict[str, int]
GOOD, BAD = ("told", "any finding", "named", "named on its line"), ("lines",)
PINNED_SLIPS = read_slips()[::5]
"""Every fifth: a test makes them again, which takes its time."""


def counts(verdicts: Iterable[Verdict]) -> Counts:
    """Of the good ones more is better, of the bad ones less."""
    made = list(verdicts)
    return {
        "slips": len(made),
        "told": sum(bool(v.told) for v in made),
        "any finding": sum(not v.silent for v in made),
        "named": sum(v.names_it for v in made),
        "named on its line": sum(v.says_it for v in made),
        "messages": sum(v.messages for v in made),
        "lines": sum(v.lines for v in made),
    }


def worse(now: Counts, pinned: Counts) -> list[str]:
    """In what the checks have become worse: `told 12, was 13`."""
    fallen = [name for name in GOOD if now[name] < pinned[name]]
    risen = [name for name in BAD if now[name] > pinned[name]]
    return [f"{name} {now[name]}, was {pinned[name]}" for name in (*fallen, *risen)]


def mean_share(groups: Iterable[Sequence[Verdict]]) -> float:
    """The share that is told, the mean over the kinds of slip, each weighing the same."""
    shares = [sum(bool(v.told) for v in group) / len(group) for group in groups]
    return sum(shares) / len(shares)
