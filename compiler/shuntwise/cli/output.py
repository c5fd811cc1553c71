"""Text put on the screen or into a file, whole or not at all."""

from __future__ import annotations

import sys
from pathlib import Path

from shuntwise.cli.main import Refused
from shuntwise.files import OutputRefused, write_file


def put(text: str, path: str | None) -> None:
    """Write `text` to `path`, or to the screen if there is none."""
    if path is None:
        sys.stdout.write(text)
        return
    try:
        write_file(Path(path), text.encode("utf-8"))
    except OutputRefused as refusal:
        raise Refused(str(refusal), refusal.help) from None
