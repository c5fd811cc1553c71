"""What the checks make of slips in designs that no rule was tuned to: `python tests/strangers/run.py [--json] [--all]`.

Of every slip of slips.toml it asks whether `check` makes any error or warning that it does not make on the sound
design, whether the first such message names the part that slipped, and whether it stands on its line.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections import defaultdict
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT / "compiler"), str(ROOT / "tests")]

from shuntwise.checks.registry import FAMILY_OF
from shuntwise.diagnostics.diagnostic import Diagnostic, Severity
from shuntwise.loading import loader
from shuntwise.pipeline import compile_all, read
from shuntwise.source import Source
from strangers.slips import MadeSlip, read_slips


@dataclass(frozen=True)
class Verdict:
    """`told` are the new errors and warnings, in the order in which `check` prints them; `advised` counts advice."""

    slip: MadeSlip
    told: tuple[Diagnostic, ...]
    advised: int

    @property
    def first(self) -> Diagnostic:
        """The first that is printed by itself: what follows from another is told under it."""
        return next((finding for finding in self.told if finding.cause is None), self.told[0])

    @property
    def messages(self) -> int:
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


def findings(path: Path, text: str) -> list[Diagnostic]:
    """Those of the design and of each variant."""
    source = Source(path.name, text)
    collected, said = read(source, loader(path.resolve(), path.name))
    return [finding for one in compile_all(collected, said) for finding in one.findings]


def judge(slip: MadeSlip, known: set[tuple[str, str]]) -> Verdict:
    new = [f for f in findings(slip.path, slip.harmed) if (f.name, f.headline) not in known]
    told = tuple(f for f in new if f.severity is not Severity.ADVICE)
    return Verdict(slip, told, len(new) - len(told))


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--json", action="store_true", help="print JSON")
    parser.add_argument("--all", action="store_true", help="print every slip, not only those that fall short")
    options = parser.parse_args()
    known: dict[str, set[tuple[str, str]]] = {}
    verdicts = []
    for slip in read_slips():
        if slip.design not in known:
            known[slip.design] = {(f.name, f.headline) for f in findings(slip.path, slip.sound)}
        verdicts.append(judge(slip, known[slip.design]))
    count = len(verdicts)
    figures = {
        "slips": count,
        "error or warning": sum(bool(v.told) for v in verdicts),
        "any finding": sum(bool(v.told) or v.advised > 0 for v in verdicts),
        "first message names the part": sum(v.names_it for v in verdicts),
        "first message names the part, on its line": sum(v.names_it and v.right_place for v in verdicts),
        "messages a slip, lines of what follows included": round(sum(v.messages for v in verdicts) / count, 2),
        "most on one slip": max(v.messages for v in verdicts),
    }
    by_kind: dict[str, list[Verdict]] = defaultdict(list)
    for verdict in verdicts:
        by_kind[verdict.slip.kind].append(verdict)
    kinds = {
        kind: {"slips": len(some), "told": sum(bool(v.told) for v in some), "named": sum(v.names_it for v in some)}
        for kind, some in sorted(by_kind.items())
    }
    if options.json:
        print(json.dumps({"figures": figures, "kinds": kinds}, indent=2))
        return 0
    for verdict in verdicts:
        if options.all or not (verdict.names_it and verdict.right_place):
            slip, first = verdict.slip, verdict.first if verdict.told else None
            said = f"{first.severity.name.lower()} {first.name}, line {first.span.line}" if first else "nothing"
            print(f"{slip.design} {slip.part}, line {slip.line_number} ({slip.why}): {said}")
    for name, figure in figures.items():
        print(f"{name:45} {figure}")
    for kind, row in kinds.items():
        print(f"  {kind:12} {row['told']} of {row['slips']} told, {row['named']} named")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
