"""What the checks make of slips in designs that no rule was tuned to.

    python tests/strangers/run.py [--json] [--all] [--write]

`--write` writes figures.json anew, of every fifth slip, than which the checks may not become worse: a test compares.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections import defaultdict
from collections.abc import Sequence
from pathlib import Path

sys.path[:0] = [str(Path(__file__).parents[2] / folder) for folder in ("compiler", "tests")]

from strangers.slips import read_slips
from strangers.verdicts import PINNED, PINNED_SLIPS, Verdict, counts, judge, mean_share


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--json", action="store_true", help="print JSON")
    parser.add_argument("--all", action="store_true", help="print every slip, not only those that fall short")
    parser.add_argument("--write", action="store_true", help="write figures.json")
    options = parser.parse_args()
    verdicts = [judge(slip) for slip in read_slips()]
    by_kind: dict[str, list[Verdict]] = defaultdict(list)
    by_design: dict[str, list[Verdict]] = defaultdict(list)
    for verdict in verdicts:
        by_kind[verdict.slip.kind].append(verdict)
        by_design[verdict.slip.design].append(verdict)
    figures = _figures(verdicts, list(by_kind.values()))
    if options.write:
        pinned = {
            design: counts(verdict for verdict in some if verdict.slip in PINNED_SLIPS)
            for design, some in sorted(by_design.items())
        }
        PINNED.write_text(json.dumps(pinned, indent=1) + "\n", encoding="utf-8")
    if options.json:
        print(json.dumps({"figures": figures, "kinds": {k: counts(v) for k, v in sorted(by_kind.items())}}, indent=2))
        return
    for verdict in verdicts:
        if options.all or not verdict.says_it:
            print(_line(verdict))
    for name, figure in figures.items():
        print(f"{name:50} {figure}")
    print(f"{'kind of slip':14} {'error or warning':>16} {'advice only':>12} {'nothing':>8} {'named':>6}")
    for kind, some in sorted(by_kind.items()):
        told, advised, silent = (sum(bool(v.told) for v in some), *_others(some))
        print(f"{kind:14} {told:16} {advised:12} {silent:8} {sum(v.names_it for v in some):6}")


def _figures(verdicts: Sequence[Verdict], kinds: Sequence[Sequence[Verdict]]) -> dict[str, float]:
    count = counts(verdicts)
    advised, silent = _others(verdicts)
    return {
        "slips": count["slips"],
        "error or warning": count["told"],
        "advice only": advised,
        "nothing": silent,
        "error or warning, mean of the kinds of slip, %": round(100 * mean_share(kinds), 1),
        "first message names the part": count["named"],
        "first message names the part, on its line": count["named on its line"],
        "messages a slip, each counted that is folded": round(count["messages"] / count["slips"], 2),
        "messages a slip, all that is folded as one line": round(count["lines"] / count["slips"], 2),
        "most on one slip": max(verdict.messages for verdict in verdicts),
    }


def _others(verdicts: Sequence[Verdict]) -> tuple[int, int]:
    """How many drew advice only, and how many nothing."""
    return sum(v.advised for v in verdicts), sum(v.silent for v in verdicts)


def _line(verdict: Verdict) -> str:
    slip, first = verdict.slip, verdict.first if verdict.told else None
    said = f"{first.severity.name.lower()} {first.name}, line {first.span.line}" if first else "nothing"
    said = "advice only" if verdict.advised else said
    return f"{slip.design} {slip.part}, line {slip.line_number} ({slip.why}): {said}"


if __name__ == "__main__":
    main()
