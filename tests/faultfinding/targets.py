"""The designs that are judged: all examples, and the judge's own, on which nothing is ever tuned.

Those in `designs/` were written before there was a bench, those in `later/` after it, by who knew nothing of it.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

from faultfinding.method import bench
from faultfinding.scoring import Amount, Score, score
from faultfinding.stand_in import NearestMean
from shuntwise.graph.circuit import Circuit
from shuntwise.graph.connect import connect
from shuntwise.loading import read_design
from shuntwise.model.resolve import resolve
from shuntwise.network.lower import Unlowered, lower

HERE = Path(__file__).parent
EXAMPLES = sorted((HERE.parents[1] / "examples").glob("**/*.shunt"))
OWN, LATER = (sorted((HERE / folder).glob("*.shunt")) for folder in ("designs", "later"))
VARIANTS = (("puppet-theatre", "two_amplifiers"), ("salt-mine", "level.half"))


@dataclass(frozen=True)
class Target:
    """A design, or a variant of it."""

    path: Path
    variant: str | None = None

    @property
    def name(self) -> str:
        return self.path.stem + (f" ({self.variant})" if self.variant else "")

    def circuit(self) -> Circuit:
        """Without any checks, which take most of the time."""
        design, _ = resolve(read_design(str(self.path))[0], variant=self.variant)
        return connect(design)[0]


def targets(named: Sequence[str] = ()) -> list[Target]:
    """Those with one of these in their name, or all; of the examples what can be solved."""
    variants = [Target(path, variant) for path in OWN for stem, variant in VARIANTS if path.stem == stem]
    every = [*map(Target, EXAMPLES), *map(Target, OWN), *variants, *map(Target, LATER)]
    chosen = [one for one in every if not named or any(part in one.name for part in named)]
    return [one for one in chosen if not isinstance(lower(one.circuit()), Unlowered)]


def judged(target: Target, amount: Amount, seed: int, stand_in: bool, tell: Callable[[str], None]) -> Score:
    """All counts of one design."""
    return score(target.name, target.circuit(), NearestMean if stand_in else bench, amount, seed, tell)
