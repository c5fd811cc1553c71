"""A line that says what takes so long, for a person at a terminal: it comes after a second and goes when it is done."""

from __future__ import annotations

import sys
import threading
from collections.abc import Iterator
from contextlib import contextmanager

PATIENCE_S = 1.0


@contextmanager
def progress(doing: str) -> Iterator[None]:
    """While what is in here takes more than a second, `doing` stands on the last line of the terminal."""
    if not sys.stderr.isatty():
        yield
        return
    shown = threading.Event()

    def show() -> None:
        shown.set()
        print(f"{doing} ...", end="", file=sys.stderr, flush=True)

    timer = threading.Timer(PATIENCE_S, show)
    timer.daemon = True
    timer.start()
    try:
        yield
    finally:
        timer.cancel()
        timer.join()
        if shown.is_set():  # to the start of the line, and nothing behind it: ECMA-48, EL
            print("\r\x1b[K", end="", file=sys.stderr, flush=True)
