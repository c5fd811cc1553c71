"""The judge of the bench: boards with a fault in them are made by ngspice, and what the bench says of them is counted.

    python tests/faultfinding/run.py [--designs NAME ...] [--boards N] [--most K] [--seed S] [--assume broken]
                                     [--jobs J] [--stand-in] [--twins FILE] [--json FILE] [--write]

All examples and the judge's own designs. Every fault that the bench knows is made with N boards, of each family K at
the most. `--assume broken` also has errors other than the bench assumes. `--write` writes TABLE.md and counts.json.
"""

from __future__ import annotations

import argparse
import json
import sys
import time
from concurrent.futures import ProcessPoolExecutor, as_completed
from functools import partial
from pathlib import Path
from typing import Any

sys.path[:0] = [str(Path(__file__).parents[2] / folder) for folder in ("compiler", "tests")]

from faultfinding.boards import Plan
from faultfinding.sample import sample
from faultfinding.scoring import Amount
from faultfinding.table import COUNTS, TABLE, markdown, sections
from faultfinding.targets import Target, judged, targets


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--designs", nargs="*", default=[], help="only those with one of these in their name")
    parser.add_argument("--boards", type=int, default=50, help="of each fault")
    parser.add_argument("--most", type=int, help="so many faults of a family at the most")
    parser.add_argument("--seed", type=int, default=2026)
    parser.add_argument("--assume", choices=["broken"], help="also with other errors than assumed")
    parser.add_argument("--jobs", type=int, default=1)
    parser.add_argument(
        "--stand-in", action="store_true", help="judge the plain fault finder of the harness's own tests"
    )
    parser.add_argument("--twins", type=Path, help="a file for the list of what is one on a bench")
    parser.add_argument("--json", type=Path, help="a file for the counts")
    parser.add_argument("--write", action="store_true", help="write TABLE.md and counts.json")
    options = parser.parse_args()
    if options.write and (options.designs or options.stand_in):
        parser.error("the table is of all designs and the bench: --write takes no --designs and no --stand-in")
    amount = Amount(options.boards, options.most, options.assume == "broken")
    found: list[dict[str, Any]] = []
    work = partial(_timed, amount=amount, seed=options.seed, stand_in=options.stand_in)
    every = targets(options.designs)
    order = [target.name for target in every]
    with ProcessPoolExecutor(options.jobs) as pool:
        for done in as_completed([pool.submit(work, target) for target in sorted(every, key=_effort, reverse=True)]):
            counts, twins, seconds = done.result()
            found = sorted([*found, counts], key=lambda one: order.index(one["name"]))
            print(f"{counts['name']}: {seconds:.0f} s", file=sys.stderr, flush=True)
            if options.twins:
                with options.twins.open("a", encoding="utf-8") as file:
                    file.writelines(f"{line}\n" for line in twins)
            if options.json:
                options.json.write_text(json.dumps(found, indent=1) + "\n", encoding="utf-8")
    for title, text in sections(found):
        print(f"\n{title}\n\n{text}")
    if options.write:
        told = {"amount": vars(amount), "counts": found, "sample": sample()}
        COUNTS.write_text(json.dumps(told, indent=1) + "\n", encoding="utf-8")
        TABLE.write_text(markdown(found, vars(amount)), encoding="utf-8")


def _effort(target: Target) -> int:
    """About how long a design takes beside others: what takes longest begins first."""
    plan = Plan(target.circuit())
    return len(plan.nets) ** 2 * (3 if plan.lamps else 1)


def _timed(target: Target, amount: Amount, seed: int, stand_in: bool) -> tuple[dict[str, Any], list[str], float]:
    start, twins = time.monotonic(), []
    score = judged(target, amount, seed, stand_in, twins.append)
    return score.plain(), twins, time.monotonic() - start


if __name__ == "__main__":
    main()
