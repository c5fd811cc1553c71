"""Text put on the screen or into a file, whole or not at all."""

from __future__ import annotations

import json
import math
import sys
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from shuntwise.cli.main import Refused, drop_output
from shuntwise.files import OutputRefused, write_file, write_folder


def put(text: str, path: str | None) -> None:
    """Write `text` to `path`, or to the screen if there is none."""
    if path is None:
        sys.stdout.write(text)
        return
    put_file(text.encode("utf-8"), path)


def put_file(content: bytes, path: str) -> None:
    """Write one file, whole or not at all."""
    try:
        write_file(Path(path), content)
    except OutputRefused as refusal:
        raise Refused(str(refusal), refusal.help) from None


def put_folder(files: Mapping[str, bytes], folder: Path) -> None:
    """Write all files into a folder of their own, or none of them."""
    try:
        write_folder(folder, files)
    except OutputRefused as refusal:
        raise Refused(str(refusal), refusal.help) from None


@contextmanager
def screen(written: str) -> Iterator[None]:
    """What is printed in here comes after files: if the screen takes nothing, `written` says where they are."""
    try:
        yield
        sys.stdout.flush()
    except OSError as error:
        if isinstance(error, BrokenPipeError) or error.filename is not None:
            raise
        drop_output()
        raise Refused(f"the output cannot be written: {(error.strerror or str(error)).lower()}", written) from None


def as_json(value: Any) -> str:
    """Plain values as JSON by the letter of RFC 8259: numbers that are none (an infinite level) become null."""
    return json.dumps(_finite(value), indent=1, allow_nan=False)


def _finite(value: Any) -> Any:
    if isinstance(value, dict):
        return {key: _finite(inner) for key, inner in value.items()}
    if isinstance(value, list | tuple):
        return [_finite(inner) for inner in value]
    if isinstance(value, bool | int | str) or value is None:
        return value
    number = float(value)
    return number if math.isfinite(number) else None
