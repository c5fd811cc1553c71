"""Designs and boxes from files: their own folder tree or workshop, the shipped library, and nothing else.

In: a path. Out: the parsed design with all that it includes, or a box with its design. The one place between the
passes, which know no files, and the disk.
"""

from __future__ import annotations

import os
import re
from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path
from types import MappingProxyType
from typing import TYPE_CHECKING

from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.files import ReadFailure, read_source
from shuntwise.model import findings
from shuntwise.model.include import Collected, Loaded, Loader, NotLoaded
from shuntwise.pipeline import read
from shuntwise.source import Source, Span
from shuntwise.syntax.words import nearest
from shuntwise.workshop import IncludeRefusal, include_root

if TYPE_CHECKING:
    from shuntwise.boxes import BoxRead

LIBRARY = Path(__file__).parent / "library"

_STATEMENT = re.compile(r"^[^\S\n]*([^\s#].*)", re.MULTILINE)
"""The first line that is neither blank nor a comment."""


class Unreadable(Exception):
    """A file that is no design text: what is wrong, and what to do."""

    def __init__(self, message: str, help: str = "") -> None:
        super().__init__(message)
        self.help = help


Texts = Mapping[str, str]
"""By the real path of a file the text to take instead of what it holds, such as that of an editor, not yet saved."""


def read_design(
    path: str, texts: Texts = MappingProxyType({}), shown: str = ""
) -> tuple[Collected, tuple[Diagnostic, ...]]:
    """Read and parse a design with its includes; `shown` is how the user knows its path, where that is another.

    Raises Unreadable if the file itself gives no text.
    """
    real, shown = Path(os.path.realpath(path)), shown or path
    found = _source(Path(path), shown, texts)
    if isinstance(found, ReadFailure):
        raise Unreadable(f"`{found.name}`: {found.reason}", found.help)
    collected, said = read(found, loader(real, shown, texts), str(real))
    return collected, (*_in_the_mark(real, shown, texts), *said)


def _source(path: Path, shown: str, texts: Texts) -> Source | ReadFailure:
    real = os.path.realpath(path)
    return Source(shown, texts[real], real) if real in texts else read_source(path, shown)


def _in_the_mark(design: Path, path: str, texts: Texts) -> tuple[Diagnostic, ...]:
    """What stands in the mark of the design's workshop, where it would be taken for something that holds for all."""
    mark = include_root(design).mark
    if mark is None:
        return ()
    found = _source(mark, _shown(mark, design, path), texts)
    if isinstance(found, ReadFailure):
        at, holds, label = Span(Source(found.name, "", str(mark)), 0, 0), found.reason, ""
    elif said := _STATEMENT.search(found.text):
        at = Span(found, said.start(1), said.start(1) + len(said[1].rstrip()))
        holds, label = "holds more than comments", "reaches no design"
    else:
        return ()
    return (
        findings.error(
            "misplaced-statement",
            at,
            f"the mark of the workshop {holds}",
            label=label,
            why="it says where the workshop ends, and nothing else",
            help="put what designs are to share into a file that each includes; leave the mark empty",
        ),
    )


def _shown(real: Path, design: Path, path: str) -> str:
    """How the user knows the file `real`, who has named the design at the real path `design` by `path`."""
    beside = os.path.relpath(real, design.parent)
    if not beside.startswith(os.pardir):
        return str(Path(path).parent / beside)
    near = os.path.normpath(Path(path).parent / beside)
    if os.path.realpath(near) == str(real):
        return near
    with suppress(OSError, ValueError):  # no current folder any more, or another drive
        return os.path.relpath(real)  # the design was named by a link, whose `..` lead elsewhere
    return str(real)


def read_box(path: str, *, of: str | None = None, texts: Texts = MappingProxyType({})) -> BoxRead:
    """Read a box's own file, and what it names: its design, tables, another box, all bounded as includes of a design.

    `of` is the path of a design: a box of any other is a finding. Raises Unreadable if the file itself gives no text.
    """
    return _read_box(path, path, os.path.realpath(of) if of is not None else None, texts, True)


def _read_box(path: str, shown: str, of: str | None, texts: Texts, with_sister: bool) -> BoxRead:
    from shuntwise import boxes  # a design alone needs nothing of it

    real = Path(os.path.realpath(path))
    found = _source(Path(path), shown, texts)
    if isinstance(found, ReadFailure):
        raise Unreadable(f"`{found.name}`: {found.reason}", found.help)
    source, load = found, loader(real, shown, texts)

    def design(named: str) -> boxes.DesignRead | NotLoaded:
        there = load(named, source, False)
        if isinstance(there, NotLoaded):
            return there
        collected, said = read_design(
            there.key, texts, there.source.name
        )  # by its real path: what is shown may mislead
        return boxes.DesignRead(collected, said, there.key, there.source.name)

    def sister(named: str) -> BoxRead | NotLoaded:
        there = load(named, source, False)
        if isinstance(there, NotLoaded):
            return there
        if there.key == str(real):
            return NotLoaded("it is this very box", "name another box, or take this line out")
        return _read_box(there.key, there.source.name, None, texts, False)

    near = boxes.Near(design, lambda named: load(named, source, False), sister)
    return boxes.read_text(source, near, of=of, with_sister=with_sister)


def is_shipped(source: Source) -> bool:
    """Was it read from the library that comes with the program? Its place tells, not its name."""
    return Path(source.file).is_relative_to(os.path.realpath(LIBRARY)) if source.file else False


def loader(design: Path, shown: str, texts: Texts = MappingProxyType({})) -> Loader:
    """Reads what the design at `design` (its real path) may include; `shown` is how the user named it."""
    root = include_root(design)
    real_of: dict[Source, Path] = {}

    def known(real: Path) -> str:
        return _shown(real, design, shown)

    def load(path: str, source: Source, library: bool) -> Loaded | NotLoaded:
        if library:
            return _from_library(path)
        real = root.resolve(real_of.get(source, design), path, known)
        if isinstance(real, IncludeRefusal):
            return NotLoaded(f"the path {real.reason}", real.help, one_for_all=real.leaves)
        found = _source(real, known(real), texts)
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
        return NotLoaded("the library has nothing of this name", f"a similar one exists: `{close}`" if close else known)
    found = read_source(LIBRARY / f"{name}.shunt", f"library/{name}.shunt")
    if isinstance(found, ReadFailure):
        return NotLoaded(found.reason, found.help)
    return Loaded(found, f"library:{name}")
