"""Files of strangers read, and files of the user written, safely.

In: paths, and bytes to be written. Out: a `Source` or the reason why there is none; files that are there whole or
not at all. It refuses to know what the files mean, and which of them a design may reach (`workshop.py`), and it prints
nothing: names in its messages are raw, so the caller makes them safe to show.
"""

from __future__ import annotations

import errno
import os
import re
import stat
import time
import unicodedata
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from shuntwise.source import Source

LARGEST_SOURCE_BYTES = 1 << 20
"""A design of this size would hold some ten thousand parts; what is larger is a mistake or an attack."""

MARKER = ".shuntwise-output"
"""The file that marks an output folder as ours: a line for each file that we put there, its digest and its name."""

_MARKER_HEAD = "Written by shuntwise, which replaces this folder as a whole while its files are as it wrote them:\n"
_OLD_HEAD = "Written by shuntwise, which replaces this folder as a whole. Files written:\n"
_DEVICE = re.compile(r"(?i)(con|prn|aux|nul|com[0-9]|lpt[0-9])(\.|$)")
_DIGEST = re.compile(r"([0-9a-f]{64}) (.+)")


@dataclass(frozen=True)
class ReadFailure:
    """A file that gave no text: `name` as the user knows it, what is wrong, and the remedy if one is known.

    `byte_offset` counts from the start of the file and is set when one byte is to blame.
    """

    name: str
    reason: str
    help: str = ""
    byte_offset: int | None = None


class OutputRefused(Exception):
    """Nothing was written. The message says what is in the way, `help` what to do about it."""

    def __init__(self, message: str, help: str = "") -> None:
        super().__init__(message)
        self.help = help


def safe_stem(name: str) -> str:
    """The name of a design file as that of other files: letters, digits, `-`, `_` and `.`, at most 60 of them.

    What systems keep for devices is never the whole name, nor does it begin with a dot or a hyphen.
    """
    kept = "".join(c if c.isalnum() or c in "-_." else "-" for c in unicodedata.normalize("NFC", name))[:60]
    kept = kept.strip("-.") or "design"
    return f"design-{kept}" if _DEVICE.match(kept) else kept


def read_source(path: Path, shown_name: str) -> Source | ReadFailure:
    """The text of an ordinary file of UTF-8, at most `LARGEST_SOURCE_BYTES` long. Never waits, never raises.

    A byte order mark is dropped, so offsets count from after it. Line ends are kept as they are.
    """
    try:
        real = os.path.realpath(path)
        content = _bytes_of_ordinary_file(path)
    except OSError as error:
        help = _READ_HELP.get(error.errno or 0, "")
        return ReadFailure(shown_name, f"cannot be read: {_plain(error)}", help)
    except ValueError:  # NUL, or characters that the system's file names cannot hold
        return ReadFailure(shown_name, "cannot be read: this is not a possible file name")
    if isinstance(content, str):
        return ReadFailure(shown_name, content)
    return _decoded(content, shown_name, real)


def _bytes_of_ordinary_file(path: Path) -> bytes | str:
    """The content, or what is there instead of an ordinary file of bearable size."""
    # Looked at before it is opened, because opening a device can do something; looked at again
    # afterwards, because the name may have come to mean something else. O_NONBLOCK: a pipe must not wait.
    if odd := _oddity(path.stat()):
        return odd
    flags = os.O_RDONLY | _flags("O_NONBLOCK", "O_NOCTTY", "O_BINARY")
    with os.fdopen(os.open(path, flags), "rb") as stream:
        status = os.fstat(stream.fileno())
        if odd := _oddity(status):
            return odd
        content = stream.read(LARGEST_SOURCE_BYTES + 1)
    if len(content) > LARGEST_SOURCE_BYTES:
        size = max(status.st_size, len(content))
        return f"is too large: {size} bytes, where a design may have {LARGEST_SOURCE_BYTES}"
    return content


def _oddity(status: os.stat_result) -> str:
    """What is there if not an ordinary file, or an empty string."""
    if stat.S_ISREG(status.st_mode):
        return ""
    kinds = {
        stat.S_IFDIR: "is a folder, not a file",
        stat.S_IFIFO: "is a pipe, not an ordinary file",
        stat.S_IFSOCK: "is a socket, not an ordinary file",
    }
    return kinds.get(stat.S_IFMT(status.st_mode), "is a device, not an ordinary file")


def _decoded(content: bytes, name: str, file: str = "") -> Source | ReadFailure:
    """Bytes as text, or a failure with a guess at what the bytes are."""
    # The UTF-32 mark begins with the UTF-16 one, so it is tried first.
    for mark, encoding in (
        (b"\xff\xfe\x00\x00", "UTF-32"),
        (b"\x00\x00\xfe\xff", "UTF-32"),
        (b"\xff\xfe", "UTF-16"),
        (b"\xfe\xff", "UTF-16"),
    ):
        if content.startswith(mark):
            return ReadFailure(name, f"is written in {encoding}", "save it as UTF-8 in the editor", 0)
    zero = content.find(b"\0")
    if zero >= 0:
        sample = content[:1000]
        if max(sample[::2].count(0), sample[1::2].count(0)) > len(sample) // 4:
            return ReadFailure(name, "looks like UTF-16", "save it as UTF-8 in the editor", zero)
        return ReadFailure(name, f"is not a text file: byte {zero} is zero", "", zero)
    try:
        return Source(name, content.decode("utf-8").removeprefix("\ufeff"), file)
    except UnicodeDecodeError as error:
        at = error.start
        line = content.count(b"\n", 0, at) + 1
        reason = f"is not UTF-8: byte {at} (line {line}) is 0x{content[at]:02X}"
        guess = content[at : at + 1].decode("cp1252", "replace")
        help = "save it as UTF-8 in the editor"
        if guess.isprintable() and guess != "\ufffd":
            help += f"; in Windows-1252 this byte would be `{guess}`"
        return ReadFailure(name, reason, help, at)


def write_file(path: Path, content: bytes) -> None:
    """Put a file in place whole: readers see the old content or the new, whatever happens in between.

    The permissions of an existing file are kept. A symbolic link is refused: in a folder that came from a
    stranger it may lead to any file of the user's. Raises `OutputRefused`.
    """
    with _refusing(path):
        target = Path(os.path.abspath(path))  # noqa: PTH100 - Path.absolute keeps `..`
        mode = None
        if target.is_symlink():
            raise OutputRefused(f"`{path}` is a symbolic link", "name the file itself, or choose another")
        if target.exists():
            status = target.stat()
            if odd := _oddity(status):
                raise OutputRefused(f"`{path}` {odd}", "choose another name")
            if not os.access(target, os.W_OK):
                raise OutputRefused(f"`{path}` is read-only", "allow writing to it, or choose another name")
            mode = stat.S_IMODE(status.st_mode)
        fresh = _sibling(target)
        try:
            _write_through(fresh, content)
            if mode is not None:
                fresh.chmod(mode)
            fresh.replace(target)
        except BaseException:
            fresh.unlink(missing_ok=True)
            raise
        _sync_folder(target.parent)


def create_file(path: Path, content: bytes) -> None:
    """Put a new file in place whole, and never over one that is there. Raises `OutputRefused`."""
    with _refusing(path):
        target = Path(os.path.abspath(path))  # noqa: PTH100 - Path.absolute keeps `..`
        fresh = _sibling(target)
        try:
            _write_through(fresh, content)
            try:
                target.hardlink_to(fresh)  # the one way to give a whole file a name that must not be taken yet
            except FileExistsError:
                raise OutputRefused(f"`{path}` is there already", "choose another name") from None
        finally:
            fresh.unlink(missing_ok=True)
        _sync_folder(target.parent)


def append_to(path: Path, addition: Callable[[str], str]) -> None:
    """Put text behind that of an ordinary file of UTF-8: `addition` says what, given the text as it stands.

    Whoever else appends in this way waits, for some seconds at most, so that nothing is lost; all that was there stays
    as it is. It is written whole or not at all, and again if another program has put a new file in its place meanwhile.
    A symbolic link is refused. Raises `OutputRefused`.
    """
    with _refusing(path):
        if path.is_symlink():
            raise OutputRefused(f"`{path}` is a symbolic link", "name the file itself")
        for _ in range(_MOST_TRIES):
            handle = os.open(path, os.O_RDWR | os.O_APPEND | _flags("O_NOFOLLOW", "O_NONBLOCK", "O_BINARY"))
            try:
                if odd := _oddity(os.fstat(handle)):
                    raise OutputRefused(f"`{path}` {odd}", "choose another name")
                with _alone(handle, path):
                    if _is_at(handle, path):
                        _append(handle, path, addition)
                    if _is_at(handle, path):
                        return
            finally:
                os.close(handle)
        raise OutputRefused(f"`{path}` is not changed: another program keeps putting a new file in its place")


def _append(handle: int, path: Path, addition: Callable[[str], str]) -> None:
    os.lseek(handle, 0, os.SEEK_SET)
    with os.fdopen(os.dup(handle), "rb") as stream:
        old = stream.read(LARGEST_SOURCE_BYTES + 1)
    text = _decoded(old, str(path)) if len(old) <= LARGEST_SOURCE_BYTES else None
    if not isinstance(text, Source):
        reason = text.reason if text is not None else "is too large"
        raise OutputRefused(f"`{path}` is not changed: it {reason}", "mend the file, or begin a new one")
    more = addition(text.text).encode("utf-8")
    if len(old) + len(more) > LARGEST_SOURCE_BYTES:
        raise OutputRefused(f"`{path}` is full", "begin a new file")
    try:
        if os.write(handle, more) != len(more):
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
        os.fsync(handle)
    except OSError:
        os.ftruncate(handle, len(old))
        raise


def _is_at(handle: int, path: Path) -> bool:
    """Is the open file still the one of this name?"""
    now, there = os.fstat(handle), path.lstat()
    return (now.st_dev, now.st_ino) == (there.st_dev, there.st_ino)


@contextmanager
def _alone(handle: int, path: Path) -> Iterator[None]:
    """While no other process that asks for the same has this file."""
    try:
        import fcntl
    except ImportError:  # on a system that locks pieces of files: a byte far behind all that may be read
        import msvcrt

        def turn(lock: bool) -> None:
            os.lseek(handle, 1 << 40, os.SEEK_SET)
            msvcrt.locking(handle, msvcrt.LK_NBLCK if lock else msvcrt.LK_UNLCK, 1)  # type: ignore[attr-defined]
    else:

        def turn(lock: bool) -> None:
            fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB if lock else fcntl.LOCK_UN)

    until = time.monotonic() + _PATIENCE_S
    while True:
        try:
            turn(True)
            break
        except OSError as error:
            if error.errno not in (errno.EACCES, errno.EAGAIN, errno.EDEADLK):
                raise
            if time.monotonic() > until:
                raise OutputRefused(f"`{path}` is not changed: another program is writing to it", "try again") from None
            time.sleep(0.005)
    try:
        yield
    finally:
        turn(False)


_MOST_TRIES = 10
_PATIENCE_S = 10.0


def _flags(*names: str) -> int:
    """Flags of `os.open` that not every system has."""
    return sum(getattr(os, name, 0) for name in names)


def still_as_read(source: Source) -> bytes:
    """The byte order mark of the file that a source was read from, or b"", if the file may be written anew.

    Raises `OutputRefused` if it is not the text that was read any more, or has a second name: an exchange would part
    the two.
    """
    shown = source.name
    try:
        content = _bytes_of_ordinary_file(Path(source.file))
        names = os.stat(source.file).st_nlink  # noqa: PTH116 - beside the read above
    except (OSError, ValueError) as error:
        reason = _plain(error) if isinstance(error, OSError) else "it has no possible name"
        raise OutputRefused(f"`{shown}` is not changed: {reason}", "run the command again") from None
    mark = b"\xef\xbb\xbf"
    now = _decoded(content, shown) if isinstance(content, bytes) else None
    if not isinstance(now, Source) or now.text != source.text:
        raise OutputRefused(f"`{shown}` is not changed: it is no longer as it was read", "run the command again")
    if names > 1:
        raise OutputRefused(
            f"`{shown}` is not changed: the file has a second name (a hard link)", "make a copy, and fix that"
        )
    assert isinstance(content, bytes)
    return mark if content.startswith(mark) else b""


def write_folder(path: Path, files: Mapping[str, bytes]) -> None:
    """Put an output folder in place whole: all `files` (names with `/` for subfolders) and nothing else.

    A folder that is there is replaced only if it is empty, or if it was written here and holds each file as we wrote
    it, and no other: a marker may be anybody's, but what it lists must be there by content. The new folder is complete
    beside the old one before either is renamed; between the two renames there is a moment without a folder of that
    name. Raises `OutputRefused`.
    """
    for name in files:
        if _is_unsound(name):
            raise OutputRefused(f"`{name}` cannot be the name of a file in an output folder")
    with _refusing(path):
        target = Path(os.path.abspath(path))  # noqa: PTH100 - Path.absolute keeps `..`, which has no name
        _refuse_strangers(path, target)
        fresh = _sibling(target)
        try:
            fresh.mkdir()
            for name in sorted(files):
                (fresh / name).parent.mkdir(parents=True, exist_ok=True)
                _write_through(fresh / name, files[name])
            listing = "".join(f"{_digest(files[name])} {name}\n" for name in sorted(files))
            _write_through(fresh / MARKER, (_MARKER_HEAD + listing).encode("utf-8"))
            for folder, _, _ in os.walk(fresh):
                _sync_folder(Path(folder))
            _swap(fresh, target)
        except BaseException:
            _remove(fresh)
            raise


def _swap(fresh: Path, target: Path) -> None:
    """Rename `fresh` to `target`; what was there is put back if that fails, and removed if it does not."""
    if not target.exists():
        fresh.rename(target)
        _sync_folder(target.parent)
        return
    old = _sibling(target)
    try:
        target.rename(old)
        fresh.rename(target)
    except BaseException:
        if old.exists() and not target.exists():
            old.rename(target)
        raise
    _sync_folder(target.parent)
    _remove(old)


def _refuse_strangers(shown: Path, target: Path) -> None:
    """Raise `OutputRefused` if replacing the folder would lose anything that we did not write."""
    elsewhere = "choose another output folder, or move this one away"
    if target.is_symlink():
        raise OutputRefused(f"`{shown}` is a symbolic link", "name the folder itself, or choose another")
    if not target.exists():
        if not target.parent.is_dir():
            help = f"make the folder `{shown.parent}` first"
            raise OutputRefused(f"`{shown}` has no folder to stand in", help)
        return
    if not target.is_dir():
        raise OutputRefused(f"`{shown}` is there already and is not a folder", elsewhere)
    found = {
        (Path(folder) / name).relative_to(target).as_posix()
        for folder, folders, names in os.walk(target, onerror=_give_up)
        for name in [*names, *(f for f in folders if (Path(folder) / f).is_symlink())]
    }
    if not found and not any(target.iterdir()):
        return
    marker = target / MARKER
    text = None if marker.is_symlink() else read_source(marker, MARKER)
    if isinstance(text, Source) and text.text.startswith(_OLD_HEAD) and not text.text.startswith(_MARKER_HEAD):
        raise OutputRefused(f"`{shown}` is not replaced: an older shuntwise wrote it, without digests", elsewhere)
    if not isinstance(text, Source) or not text.text.startswith(_MARKER_HEAD):
        raise OutputRefused(f"`{shown}` was not written by shuntwise, so it is not replaced", elsewhere)
    listed = [_DIGEST.fullmatch(line) for line in text.text.removeprefix(_MARKER_HEAD).splitlines()]
    ours = {match[2]: match[1] for match in listed if match and not _is_unsound(match[2])}
    if len(ours) != len(listed):
        raise OutputRefused(f"`{shown}` is not replaced: its list of files ({MARKER}) is broken", elsewhere)
    for what, names in (
        ("holds a file not written by shuntwise", sorted(found - {MARKER, *ours})),
        ("holds a file that was changed since", sorted(n for n in found & ours.keys() if not _is(target / n, ours[n]))),
    ):
        if names:
            more = f" and {len(names) - 1} more" * (len(names) > 1)
            raise OutputRefused(
                f"`{shown}` is not replaced: it {what} (`{names[0]}`{more})",
                "move that file elsewhere, or choose another output folder",
            )


def _digest(content: bytes) -> str:
    import hashlib  # loads a crypto library, which reading can do without

    return hashlib.sha256(content).hexdigest()


def _is(path: Path, digest: str) -> bool:
    """Is this an ordinary file of this content?"""
    if path.is_symlink() or _oddity(path.stat()):
        return False
    import hashlib

    with path.open("rb") as stream:
        return hashlib.file_digest(stream, "sha256").hexdigest() == digest


def _give_up(error: OSError) -> None:
    raise error


def _is_unsound(name: str) -> bool:
    """True of names that could leave the folder, that are no names, or that the marker could not list."""
    if name == MARKER or "\\" in name or ":" in name or not name.isprintable():
        return True
    return any(step in ("", ".", "..") for step in name.split("/"))


def _remove(folder: Path) -> None:
    """Take away a folder of ours, as far as that goes."""
    import shutil

    shutil.rmtree(folder, ignore_errors=True)


def _sibling(target: Path) -> Path:
    """A new name beside `target`: on the same disk, so that a rename cannot fail halfway."""
    import secrets  # loads a crypto library, which reading can do without

    return target.parent / f".shuntwise-{secrets.token_hex(8)}"


def _write_through(path: Path, content: bytes) -> None:
    """Write a new file and wait until it is on the disk."""
    with path.open("xb") as stream:
        stream.write(content)
        stream.flush()
        os.fsync(stream.fileno())


def _sync_folder(folder: Path) -> None:
    """Make renames last through a power cut, where the system has a way to do so."""
    if not hasattr(os, "O_DIRECTORY"):
        return
    try:
        handle = os.open(folder, os.O_RDONLY | os.O_DIRECTORY)
    except OSError:
        return  # a folder that may be written but not read; the files themselves are on the disk
    try:
        os.fsync(handle)
    except OSError:
        pass  # some network disks cannot; the same holds
    finally:
        os.close(handle)


@contextmanager
def _refusing(path: Path) -> Iterator[None]:
    """Turn what the system objects to into `OutputRefused`."""
    try:
        yield
    except OSError as error:
        help = _WRITE_HELP.get(error.errno or 0, "")
        raise OutputRefused(f"`{path}` cannot be written: {_plain(error)}", help) from error
    except ValueError as error:
        raise OutputRefused("the output has no possible file name") from error


def _plain(error: OSError) -> str:
    """The system's own words for what is wrong, beginning in lower case."""
    words = error.strerror or "the system gives no reason"
    return words[:1].lower() + words[1:]


_READ_HELP = {
    errno.ENOENT: "check the name and the folder you stand in",
    errno.EACCES: "allow reading it",
    errno.ELOOP: "a symbolic link leads back to itself",
    errno.ENAMETOOLONG: "no file has such a long name: check it",
}

_WRITE_HELP = {
    errno.ENOSPC: "make room on the disk, or choose a folder on another one",
    errno.EDQUOT: "make room on the disk, or choose a folder on another one",
    errno.EACCES: "choose a folder that you may write to",
    errno.EPERM: "choose a folder that you may write to",
    errno.EROFS: "choose a folder that you may write to",
    errno.ENOENT: "make the folder first",
    errno.ENAMETOOLONG: "choose a shorter name",
}
