"""Output is there whole or not at all, and nothing of the user's is lost."""

from __future__ import annotations

import errno
import hashlib
import os
import stat
from pathlib import Path

import pytest

from shuntwise.files import _MARKER_HEAD, _OLD_HEAD, MARKER, OutputRefused, write_file, write_folder


def contents(folder: Path) -> dict[str, bytes]:
    return {p.relative_to(folder).as_posix(): p.read_bytes() for p in folder.rglob("*") if p.is_file()}


def names(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())


def fail_at(monkeypatch: pytest.MonkeyPatch, name: str, call: int, error: BaseException) -> None:
    """Make the given call (from 1) of a function of `os` fail; the other calls do their work."""
    real = getattr(os, name)
    calls = [0]

    def failing(*args: object, **options: object) -> object:
        calls[0] += 1
        if calls[0] == call:
            raise error
        return real(*args, **options)

    monkeypatch.setattr(os, name, failing)


FULL = OSError(errno.ENOSPC, "No space left on device")


def test_file_is_written_and_replaced(tmp_path: Path) -> None:
    path = tmp_path / "out.cir"
    write_file(path, b"one")
    path.chmod(0o640)
    write_file(path, b"two")
    assert path.read_bytes() == b"two"
    assert stat.S_IMODE(path.stat().st_mode) == 0o640
    assert names(tmp_path) == ["out.cir"]


def test_new_file_obeys_the_umask(tmp_path: Path) -> None:
    before = os.umask(0o027)
    try:
        write_file(tmp_path / "a", b"")
    finally:
        os.umask(before)
    assert stat.S_IMODE((tmp_path / "a").stat().st_mode) == 0o640


@pytest.mark.parametrize("function", ["fsync", "replace"])
@pytest.mark.parametrize("error", [FULL, KeyboardInterrupt()], ids=["disk full", "interrupted"])
def test_file_that_fails_midway_leaves_the_old_one(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, function: str, error: BaseException
) -> None:
    path = tmp_path / "out.cir"
    write_file(path, b"old")
    fail_at(monkeypatch, function, 1, error)
    with pytest.raises(OutputRefused if error is FULL else KeyboardInterrupt):
        write_file(path, b"new")
    assert contents(tmp_path) == {"out.cir": b"old"}


def test_full_disk_is_told_in_plain_words(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    fail_at(monkeypatch, "fsync", 1, FULL)
    with pytest.raises(OutputRefused, match="cannot be written: no space left on device") as caught:
        write_file(tmp_path / "a", b"x")
    assert caught.value.help.startswith("make room on the disk")


def test_impossible_place_is_refused(tmp_path: Path) -> None:
    """A name too long for the file system, a folder that is missing, a file where a folder should be."""
    (tmp_path / "file").write_bytes(b"")
    for path in (tmp_path / ("n" * 300), tmp_path / "none" / "a", tmp_path / "file" / "a", Path("a\0b")):
        with pytest.raises(OutputRefused):
            write_file(path, b"x")
        with pytest.raises(OutputRefused):
            write_folder(path, {"a": b"x"})
    assert names(tmp_path) == ["file"]


def test_file_that_is_no_ordinary_file_is_refused(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe")
    (tmp_path / "target").write_bytes(b"mine")
    (tmp_path / "link").symlink_to("target")
    (tmp_path / "dangling").symlink_to("none")
    for path in (tmp_path / "pipe", tmp_path, tmp_path / "link", tmp_path / "dangling", Path("/dev/null")):
        with pytest.raises(OutputRefused):
            write_file(path, b"x")
    assert (tmp_path / "target").read_bytes() == b"mine"
    assert not (tmp_path / "none").exists()


def test_read_only_file_is_refused(tmp_path: Path) -> None:
    """Written by a child process without rights, since the tests may run as the superuser."""
    tmp_path.chmod(0o777)
    path = tmp_path / "a"
    path.write_bytes(b"old")
    path.chmod(0o444)
    child = os.fork()
    if child == 0:
        try:
            os.chdir(tmp_path)  # the folders above may be closed to the child
            if os.geteuid() == 0:
                os.setuid(65534)
            write_file(Path("a"), b"new")
        except OutputRefused:
            os._exit(0)
        finally:
            os._exit(1)
    assert os.waitpid(child, 0)[1] == 0
    assert contents(tmp_path) == {"a": b"old"}


FILES = {"a.cir": b"* a", "plots/a.svg": b"<svg/>"}


def test_folder_is_written_with_its_subfolders_and_marker(tmp_path: Path) -> None:
    write_folder(tmp_path / "out", FILES)
    found = contents(tmp_path / "out")
    marker = found.pop(MARKER).decode()
    assert found == FILES
    digests = {name: hashlib.sha256(content).hexdigest() for name, content in FILES.items()}
    assert marker.splitlines()[1:] == [f"{digests[name]} {name}" for name in ("a.cir", "plots/a.svg")]
    assert names(tmp_path) == ["out"]


def test_folder_is_replaced_as_a_whole(tmp_path: Path) -> None:
    out = tmp_path / "out"
    write_folder(out, FILES)
    write_folder(out, {"b.cir": b"* b"})
    assert set(contents(out)) == {"b.cir", MARKER}
    write_folder(out, FILES)
    assert set(contents(out)) == {*FILES, MARKER}
    assert names(tmp_path) == ["out"]


def test_empty_folder_is_used(tmp_path: Path) -> None:
    (tmp_path / "out").mkdir()
    write_folder(tmp_path / "out", FILES)
    assert set(contents(tmp_path / "out")) == {*FILES, MARKER}


def test_folder_of_someone_else_is_refused(tmp_path: Path) -> None:
    out = tmp_path / "out"
    out.mkdir()
    (out / "letter.txt").write_text("dear")
    with pytest.raises(OutputRefused, match="was not written by shuntwise") as caught:
        write_folder(out, FILES)
    assert "choose another output folder" in caught.value.help
    (out / MARKER).write_text("letter.txt\n")
    with pytest.raises(OutputRefused, match="was not written by shuntwise"):
        write_folder(out, FILES)
    assert (out / "letter.txt").read_text() == "dear"


@pytest.mark.parametrize("added", ["notes.txt", "plots/notes.txt", "new/notes.txt"])
def test_folder_with_a_file_of_the_user_is_refused(tmp_path: Path, added: str) -> None:
    out = tmp_path / "out"
    write_folder(out, FILES)
    (out / added).parent.mkdir(exist_ok=True)
    (out / added).write_text("mine")
    with pytest.raises(OutputRefused, match=f"`{added}`"):
        write_folder(out, {"b.cir": b""})
    assert (out / added).read_text() == "mine"
    assert (out / "a.cir").exists()


def marked(out: Path, listing: str, head: str = _MARKER_HEAD) -> None:
    """A folder of the user's with a letter in it, and a marker planted there."""
    out.mkdir()
    (out / "letter.txt").write_text("dear")
    (out / MARKER).write_text(head + listing)


LETTER = hashlib.sha256(b"dear").hexdigest()


@pytest.mark.parametrize(
    ("listing", "words"),
    [
        ("letter.txt\n", "list of files"),
        (f"{'0' * 64} letter.txt\n", "changed since"),
        (f"{LETTER.upper()} letter.txt\n", "list of files"),
        (f"{LETTER} letter.txt\n{LETTER} ../other.txt\n", "list of files"),
        (f"{LETTER} letter.txt\n{LETTER} /etc/hosts\n", "list of files"),
        (f"{LETTER} letter.txt\n{LETTER} letter.txt\n", "list of files"),
        (f"{LETTER} other.txt\n", "not written by shuntwise"),
        ("", "not written by shuntwise"),
        ("\0", "was not written by shuntwise"),
        ("x" * (1 << 20), "was not written by shuntwise"),
    ],
)
def test_planted_marker_deletes_nothing(tmp_path: Path, listing: str, words: str) -> None:
    """Anybody can write a marker into a folder that he gives away; what it lists must be what it says."""
    (tmp_path / "other.txt").write_text("dear")
    marked(tmp_path / "out", listing)
    with pytest.raises(OutputRefused, match=words) as caught:
        write_folder(tmp_path / "out", FILES)
    assert "output folder" in caught.value.help
    assert (tmp_path / "out" / "letter.txt").read_text() == (tmp_path / "other.txt").read_text() == "dear"
    assert names(tmp_path) == ["other.txt", "out"]


def test_marker_of_an_older_version_is_told_apart(tmp_path: Path) -> None:
    marked(tmp_path / "out", "letter.txt\n", head=_OLD_HEAD)
    with pytest.raises(OutputRefused, match="older shuntwise wrote it, without digests"):
        write_folder(tmp_path / "out", FILES)
    assert (tmp_path / "out" / "letter.txt").exists()


@pytest.mark.parametrize("kind", ["pipe", "link", "folder"])
def test_marker_that_is_no_file_is_refused_at_once(tmp_path: Path, kind: str) -> None:
    out = tmp_path / "out"
    write_folder(out, FILES)
    (out / MARKER).rename(tmp_path / "kept")
    if kind == "pipe":
        os.mkfifo(out / MARKER)
    elif kind == "link":
        (out / MARKER).symlink_to(tmp_path / "kept")
    else:
        (out / MARKER).mkdir()
    with pytest.raises(OutputRefused):
        write_folder(out, FILES)
    assert (out / "a.cir").read_bytes() == FILES["a.cir"]


@pytest.mark.parametrize("kind", ["changed", "pipe", "link"])
def test_folder_with_a_file_that_is_no_longer_ours_is_refused(tmp_path: Path, kind: str) -> None:
    out = tmp_path / "out"
    write_folder(out, FILES)
    file = out / "plots" / "a.svg"
    if kind == "changed":
        file.write_text("<svg>my labels</svg>")
    else:
        file.rename(tmp_path / "kept")
        os.mkfifo(file) if kind == "pipe" else file.symlink_to(tmp_path / "kept")
    with pytest.raises(OutputRefused, match=r"changed since \(`plots/a.svg`\)"):
        write_folder(out, {"b.cir": b""})
    assert file.is_symlink() or file.exists()


def test_folder_with_a_link_of_the_user_is_refused(tmp_path: Path) -> None:
    out = tmp_path / "out"
    write_folder(out, FILES)
    (out / "elsewhere").symlink_to(tmp_path)
    with pytest.raises(OutputRefused, match="`elsewhere`"):
        write_folder(out, FILES)


def test_link_or_file_in_place_of_the_folder_is_refused(tmp_path: Path) -> None:
    (tmp_path / "real").mkdir()
    (tmp_path / "link").symlink_to("real")
    (tmp_path / "file").write_text("x")
    for name in ("link", "file"):
        with pytest.raises(OutputRefused):
            write_folder(tmp_path / name, FILES)
    assert names(tmp_path) == ["file", "link", "real"]


@pytest.mark.parametrize(
    "name", ["../a", "/a", "a/../../b", "", "a//b", "./a", "a\\b", "c:a", "a\0b", "a\nb", "a\x1bb", MARKER]
)
def test_file_name_that_could_leave_the_folder_is_refused(tmp_path: Path, name: str) -> None:
    with pytest.raises(OutputRefused):
        write_folder(tmp_path / "out", {name: b""})
    assert names(tmp_path) == []


@pytest.mark.parametrize("error", [FULL, KeyboardInterrupt()], ids=["disk full", "interrupted"])
@pytest.mark.parametrize(("function", "call"), [("fsync", 1), ("fsync", 2), ("fsync", 3), ("rename", 1), ("rename", 2)])
def test_folder_that_fails_midway_leaves_the_old_one(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, function: str, call: int, error: BaseException
) -> None:
    """At each write and at each rename; afterwards nothing half-made lies about."""
    out = tmp_path / "out"
    write_folder(out, FILES)
    before = contents(tmp_path)
    fail_at(monkeypatch, function, call, error)
    with pytest.raises(OutputRefused if error is FULL else KeyboardInterrupt):
        write_folder(out, {"b.cir": b"* b", "c.cir": b"* c"})
    monkeypatch.undo()
    assert contents(tmp_path) == before
    assert names(tmp_path) == ["out"]


def test_first_folder_that_fails_midway_leaves_nothing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    fail_at(monkeypatch, "fsync", 2, FULL)
    with pytest.raises(OutputRefused):
        write_folder(tmp_path / "out", FILES)
    assert names(tmp_path) == []
