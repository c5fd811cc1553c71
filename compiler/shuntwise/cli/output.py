"""Text put on the screen or into a file, whole or not at all."""

from __future__ import annotations

import json
import math
import os
import sys
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from shuntwise.cli.main import Refused, drop_output
from shuntwise.files import OutputRefused, append_to, create_file, write_file, write_folder
from shuntwise.model.box import Taken
from shuntwise.model.box_writing import addition, is_unbegun, new_box, reading_line
from shuntwise.model.instruments import USUAL, Instruments
from shuntwise.workshop import IncludeRefusal, include_root


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


def put_reading(taken: Taken, inputs: int, path: str) -> None:
    """Put one more reading at the end of a box's own file; two who do so at once lose none."""
    put_line(reading_line(taken, inputs), path)


def put_line(line: str, path: str) -> None:
    """Put any line of the language of boxes there; whoever calls this has read it."""
    try:
        append_to(Path(path), lambda text: addition(text, line))
    except OutputRefused as refusal:
        raise Refused(str(refusal), refusal.help) from None


def put_new_box(
    name: str, design: str, path: str, variant: str | None = None, instruments: Instruments = USUAL
) -> None:
    """Begin the file of a box for the design of this path, which it must be able to name.

    It is a new file, or one in which nothing is said yet: what stands there stays.
    """
    beside, real = os.path.realpath(path), Path(os.path.realpath(design))
    named = Path(os.path.relpath(real, Path(beside).parent)).as_posix()
    there = include_root(Path(beside)).resolve(Path(beside), named)
    if isinstance(there, IncludeRefusal):
        raise Refused(f"a box in `{path}` cannot name its design: the path {there.reason}",
                      "put the file into the folder of the design or below it")  # fmt: skip
    try:
        head = new_box(name, named, variant, instruments)
        if os.path.lexists(path):
            append_to(Path(path), lambda text: _begun(text, head, path))
        else:
            create_file(Path(path), head.encode("utf-8"))
    except ValueError as error:
        raise Refused(f"`{name}` cannot name a box", str(error)) from None
    except OutputRefused as refusal:
        raise Refused(str(refusal), refusal.help) from None


def _begun(text: str, head: str, path: str) -> str:
    if not is_unbegun(text):
        raise OutputRefused(f"`{path}` is there already", "choose another name")
    return addition(text, head.removesuffix("\n"))


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
