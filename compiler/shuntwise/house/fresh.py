"""A generated file written, or said to be fresh or stale: what every generator's command line does.

In: the file and its text as it should be. Out: the exit status.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path


def write_or_check(arguments: list[str], module: str, path: Path, make: Callable[[], str]) -> int:
    """Write `path`, or with `--check` compare it; 1 if it is stale, 2 for wrong usage."""
    if arguments == ["--check"]:
        fresh = path.is_file() and path.read_text(encoding="utf-8") == make()
        print(f"{path.name} is fresh" if fresh else f"{path.name} is stale: run this again without --check")
        return 0 if fresh else 1
    if arguments:
        print(f"usage: python -m {module} [--check]", file=sys.stderr)
        return 2
    path.write_text(make(), encoding="utf-8")
    return 0
