"""The mistake harness: in every design make every single mistake, check each, and say what share is caught.

    python tests/mistakes/run.py [--json] [--designs NAME ...] [--escapes N] [--write]

The examples and the strangers' designs, each with their `expect` lines and without any. `--write` writes TABLE.md and
counts.json anew, which the tests hold the checks against; it takes 16 minutes of one core.
"""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path

sys.path[:0] = [str(Path(__file__).parents[2] / folder) for folder in ("compiler", "tests")]

from mistakes.sample import sample
from mistakes.table import COUNTS, TABLE, markdown, section
from mistakes.tally import GROUPS, examine_groups


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--json", action="store_true")
    parser.add_argument("--designs", nargs="*", default=[], help="only those with one of these in their name")
    parser.add_argument("--escapes", type=int, default=200, help="how many escapes to list")
    parser.add_argument("--write", action="store_true", help="write TABLE.md and counts.json")
    options = parser.parse_args()
    if options.write and options.designs:
        parser.error("the table is of all designs: --write takes no --designs")
    chosen = {
        group: [path for path in paths if not options.designs or any(name in path.stem for name in options.designs)]
        for group, paths in GROUPS.items()
    }
    counts: dict[str, dict[str, dict[str, int]]] = {}
    for (group, expects), tallies in examine_groups(chosen).items():
        title = f"{len(chosen[group])} {group}, {'with their' if expects else 'without any'} expect lines"
        counts[title] = {kind: tally.counts for kind, tally in tallies.items()}
        if not options.json:
            escapes = [escape for tally in tallies.values() for escape in tally.escapes]
            print(f"\n{title}\n\n{section(tallies)}\n\n{len(escapes)} of which nothing is said")
            print("".join(f"  {escape}\n" for escape in escapes[: options.escapes]), end="")
    if options.json:
        print(json.dumps(counts, indent=1))
    if options.write:
        COUNTS.write_text(json.dumps({"counts": counts, "sample": sample()}, indent=1) + "\n", encoding="utf-8")
        TABLE.write_text(markdown(counts), encoding="utf-8")


if __name__ == "__main__":
    main()
