"""Designs from files: the design's own folder tree and the shipped library, and nothing else.

In: a path. Out: the parsed design with all that it includes. The one place between the passes, which know
no files, and the disk.
"""

from __future__ import annotations

import os
from collections.abc import Mapping
from pathlib import Path
from types import MappingProxyType

from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.files import IncludeRefusal, IncludeRoot, ReadFailure, read_source
from shuntwise.model.include import Collected, Loaded, Loader, NotLoaded
from shuntwise.pipeline import read
from shuntwise.source import Source
from shuntwise.syntax.words import nearest

LIBRARY = Path(__file__).parent / "library"


class Unreadable(Exception):
    """A file that is no design text: what is wrong, and what to do."""

    def __init__(self, message: str, help: str = "") -> None:
        super().__init__(message)
        self.help = help


Texts = Mapping[str, str]
"""By the real path of a file the text to take instead of what it holds, such as that of an editor, not yet saved."""


def read_design(path: str, texts: Texts = MappingProxyType({})) -> tuple[Collected, tuple[Diagnostic, ...]]:
    """Read and parse a design with its includes. Raises Unreadable if the file itself gives no text."""
    real = Path(os.path.realpath(path))
    found = _source(Path(path), path, texts)
    if isinstance(found, ReadFailure):
        raise Unreadable(f"`{found.name}`: {found.reason}", found.help)
    return read(found, loader(real, path, texts), str(real))


def _source(path: Path, shown: str, texts: Texts) -> Source | ReadFailure:
    real = os.path.realpath(path)
    return Source(shown, texts[real], real) if real in texts else read_source(path, shown)


def is_shipped(source: Source) -> bool:
    """Was it read from the library that comes with the program? Its place tells, not its name."""
    return Path(source.file).is_relative_to(os.path.realpath(LIBRARY)) if source.file else False


def loader(design: Path, shown: str, texts: Texts = MappingProxyType({})) -> Loader:
    """Reads what the design at `design` (its real path) may include; `shown` is how the user named it."""
    root = IncludeRoot(design.parent)
    real_of: dict[Source, Path] = {}
    shown_folder = Path(shown).parent

    def load(path: str, source: Source, library: bool) -> Loaded | NotLoaded:
        if library:
            return _from_library(path)
        real = root.resolve(real_of.get(source, design), path)
        if isinstance(real, IncludeRefusal):
            return NotLoaded(f"the path {real.reason}", real.help)
        found = _source(real, str(shown_folder / os.path.relpath(real, design.parent)), texts)
        if isinstance(found, ReadFailure):
            return NotLoaded(found.reason, found.help or "check the name and the file")
        real_of[found] = real
        return Loaded(found, str(real))

    return load


def _from_library(name: str) -> Loaded | NotLoaded:
    names = sorted(path.stem for path in LIBRARY.glob("*.shunt"))
    if name not in names:
        close = nearest(name, names)
        known = "the library holds " + ", ".join(names)
        return NotLoaded("the library has no such network", f"a similar one exists: `{close}`" if close else known)
    found = read_source(LIBRARY / f"{name}.shunt", f"library/{name}.shunt")
    if isinstance(found, ReadFailure):
        return NotLoaded(found.reason, found.help)
    return Loaded(found, f"library:{name}")
