"""Which files a design may reach: those of its own folder and below, or those of the workshop that it lies in.

In: the real path of a design, and the paths that it and its includes name. Out: real paths, or refusals with their
remedy. It looks at what folders and marks are, reads no file, and refuses to know what one means. Names in its messages
are raw, so the caller makes them safe to show.

Designs come from strangers, and so do marks. A mark gives the designs below its folder what a design in that folder has
anyway, so whoever can place the one gains nothing by the other. All else here keeps a mark from being one that
somebody else placed.
"""

from __future__ import annotations

import os
import re
import stat
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

MARK = "shuntwise.workshop"
"""The file that makes its folder a workshop."""

MOST_FOLDERS = 16
"""A mark is looked for in so many folders, that of the design included; workshops are a few deep."""


@dataclass(frozen=True)
class IncludeRefusal:
    """An include path that is not followed, and why. `leaves`: it names a file outside of what may be reached."""

    path: str
    reason: str
    help: str = ""
    leaves: bool = False


@dataclass(frozen=True)
class Idle:
    """A mark that does not count: the file or folder that is the reason, and what is wrong with it."""

    mark: Path
    where: Path
    reason: str


@dataclass(frozen=True)
class IncludeRoot:
    """The folder tree that a design may include files from.

    `folder` is the whole of it and `own` the design's folder, both real paths. They are the same but where `mark`, the
    file that marks `folder`, makes it a workshop. `idle` is a mark that was found and does not count.
    """

    folder: Path
    own: Path
    mark: Path | None = None
    idle: Idle | None = None

    def resolve(self, including: Path, target: str, shown: Callable[[Path], str] = str) -> Path | IncludeRefusal:
        """The real path of the file that `target` means in the file `including`, itself under the folder.

        Two includes of one file give the same path, so loops can be found by comparing. Whether the file
        exists is not looked at, and the path is still to be read with `read_source`. `shown` gives a path as
        the user knows it, for the remedy.
        """
        inside = "name a file in the folder of the design, below it, or in its workshop, with `/` between folders"
        if not target.strip():
            return IncludeRefusal(target, "is empty", inside)
        if not target.isprintable():
            return IncludeRefusal(target, "holds a character that cannot be seen", inside)
        if "\\" in target:
            return IncludeRefusal(target, "holds a backslash", inside)
        if target.startswith("/") or re.match(r"[A-Za-z]:", target):
            return IncludeRefusal(target, "is an absolute path", inside)
        start = os.path.realpath(including.parent)
        if not Path(start).is_relative_to(self.folder):
            return IncludeRefusal(target, f"is asked for by a file outside {self._called}", inside)
        # By its words alone the path may not step out, not even to come back: where it comes back to
        # would depend on what the folders outside are called. Nothing outside is looked at on the disk.
        named = os.path.join(start, target)  # noqa: PTH118 - Path would drop a `.` step
        depth = len(Path(start).relative_to(self.folder).parts)
        for step in target.split("/"):
            depth += {"..": -1, ".": 0, "": 0}.get(step, 1)
            if depth < 0:
                reason, wanted = f"leads out of {self._called}", Path(os.path.normpath(named))
                if wanted.is_relative_to(self.folder):
                    inner = Path(os.path.relpath(wanted, start)).as_posix()
                    return IncludeRefusal(target, reason, f"write `{inner}`, which stays inside")
                return IncludeRefusal(target, reason, self._remedy(wanted, shown), leaves=True)
        real = Path(os.path.realpath(named))
        if not real.is_relative_to(self.folder):
            reason = f"leads out of {self._called} by a symbolic link"
            return IncludeRefusal(target, reason, self._remedy(real, shown), leaves=True)
        if not real.is_relative_to(self.own) and _is_hidden(os.path.relpath(real, self.own)):
            return IncludeRefusal(
                target,
                "leads to a hidden file or folder outside the folder of the design",
                "copy the file into the folder of the design, or give it a name without a dot in front",
            )
        return real

    @property
    def _called(self) -> str:
        return "the workshop" if self.mark else "the folder of the design"

    def _remedy(self, wanted: Path, shown: Callable[[Path], str]) -> str:
        """How the file `wanted`, which lies outside, can be had."""
        copy = f"copy the file into {self._called}"
        if self.idle:
            where = "it" if self.idle.where == self.idle.mark else f"`{shown(self.idle.where)}`"
            return f"{copy}; the mark `{shown(self.idle.mark)}` does not count, because {where} {self.idle.reason}"
        both = next((folder for folder in self.folder.parents if wanted.is_relative_to(folder)), None)
        if both is None:
            return copy
        if hindrance := _hindrance(self.own, both):
            where, reason = shown(hindrance[0]), hindrance[1]
            return f"{copy}; no folder that holds both can be a workshop, because `{where}` {reason}"
        fresh = shown(both / MARK)
        own = "if all in the folder that holds both is your own"
        if self.mark:
            return f"{copy}; or, {own}, move the mark from `{shown(self.mark)}` to `{fresh}`"
        return f"{copy}; or, {own}, make that a workshop with an empty file `{fresh}`"


def include_root(design: Path) -> IncludeRoot:
    """What a design may reach, by its real path whatever links lead to it.

    The nearest mark decides, also where it does not count: a folder that has one is bounded, whatever stands above it.
    """
    own = Path(os.path.realpath(design)).parent
    for folder in (own, *own.parents)[:MOST_FOLDERS]:
        mark = folder / MARK
        unsound = _unsound(mark)
        if unsound is None:
            continue
        if hindrance := _hindrance(own, folder):
            return IncludeRoot(own, own, idle=Idle(mark, *hindrance))
        if unsound:
            return IncludeRoot(own, own, idle=Idle(mark, mark, unsound))
        return IncludeRoot(folder, own, mark)
    return IncludeRoot(own, own)


def _unsound(mark: Path) -> str | None:
    """Why this file does not count as a mark, an empty string if it does, None if there is none."""
    try:
        status = mark.lstat()
    except OSError:
        return None
    if stat.S_ISLNK(status.st_mode):
        return "is a symbolic link"
    if not stat.S_ISREG(status.st_mode):
        return "is no ordinary file"
    if hasattr(os, "geteuid") and status.st_uid != os.geteuid():
        return "belongs to another user"
    return ""


def _hindrance(own: Path, top: Path) -> tuple[Path, str] | None:
    """Why no mark in the folder `top` counts for a design in `own`: the folder that is the reason, and the reason."""
    if not hasattr(os, "geteuid"):
        return own, "is on a system that does not say whose it is"
    homes = _homes()
    for count, folder in enumerate((own, *own.parents), 1):
        if count > MOST_FOLDERS:
            return top, f"lies too far up: a mark is looked for in {MOST_FOLDERS} folders"
        if unfit := _unfit(folder, homes):
            return folder, unfit
        if folder == top:
            break
    return None


def _unfit(folder: Path, homes: list[Path]) -> str:
    """Why neither this folder nor one above it can be a workshop, or an empty string."""
    if folder == folder.parent or any(home.is_relative_to(folder) for home in homes):
        return "is a home folder, or holds one"
    try:
        status = folder.stat()
    except OSError:
        return "cannot be looked at"
    if status.st_uid != os.geteuid():
        return "belongs to another user"
    if status.st_mode & stat.S_IWOTH:
        return "may be written to by everybody"
    return ""


def _homes() -> list[Path]:
    """The user's home folder, by the environment and by the list of users, as far as either knows it."""
    named = [os.environ.get("HOME", "")]
    try:
        import pwd  # not on every system

        named.append(pwd.getpwuid(os.geteuid()).pw_dir)
    except (ImportError, KeyError):
        pass
    return [Path(os.path.realpath(home)) for home in named if Path(home).is_absolute()]


def _is_hidden(path: str) -> bool:
    return any(step.startswith(".") and step != ".." for step in Path(path).parts)
