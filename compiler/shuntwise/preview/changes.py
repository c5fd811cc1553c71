"""When files have changed, by looking at them again and again: a design has a few, and every editor writes its own way.

In: paths. Out: stamps that differ once a file has changed, was replaced, has gone or come. Refuses to know what is in
them.
"""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

Stamp = tuple[int, int, int]
"""Time of the last change (ns), size, number of the file on its disk."""

EVERY_S = 0.05
"""How often is looked: some 64 files cost less than a millisecond."""

AGAIN_S = 0.5
"""How often a text is read again of which something could not be read: a file that it names may have come."""


def stamps(files: Iterable[str]) -> dict[str, Stamp | None]:
    """What the files are like now; None for one that is not there."""
    return {path: _stamp(path) for path in sorted(set(files))}


def _stamp(path: str) -> Stamp | None:
    try:
        status = Path(path).stat()
    except (OSError, ValueError):
        return None
    return status.st_mtime_ns, status.st_size, status.st_ino
