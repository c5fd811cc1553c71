"""Reading files of strangers: any file gives a text or one failure, and nothing makes the reader wait."""

from __future__ import annotations

import os
import signal
import socket
from pathlib import Path

import pytest

from shuntwise.files import LARGEST_SOURCE_BYTES, ReadFailure, read_source
from shuntwise.source import Source


def read(path: Path) -> Source | ReadFailure:
    """Read with an alarm: a reader that waits fails the test instead of stopping the run."""
    signal.alarm(5)
    try:
        return read_source(path, path.name)
    finally:
        signal.alarm(0)


def failure(path: Path) -> ReadFailure:
    outcome = read(path)
    assert isinstance(outcome, ReadFailure)
    assert outcome.name == path.name
    return outcome


def written(tmp_path: Path, content: bytes) -> Path:
    path = tmp_path / "a.shunt"
    path.write_bytes(content)
    return path


def test_ordinary_file_keeps_its_line_ends(tmp_path: Path) -> None:
    source = read(written(tmp_path, "coil L1 µ\r\n\n\r".encode()))
    assert isinstance(source, Source)
    assert (source.name, source.text) == ("a.shunt", "coil L1 µ\r\n\n\r")


def test_byte_order_mark_is_dropped_and_positions_count_after_it(tmp_path: Path) -> None:
    source = read(written(tmp_path, b"\xef\xbb\xbfcoil"))
    assert isinstance(source, Source)
    assert source.text == "coil"
    assert source.position(source.text.index("coil")) == (1, 1)


def test_only_one_byte_order_mark_is_dropped(tmp_path: Path) -> None:
    source = read(written(tmp_path, b"\xef\xbb\xbf" * 2))
    assert isinstance(source, Source) and source.text == "\ufeff"


def test_empty_file_is_an_empty_text(tmp_path: Path) -> None:
    source = read(written(tmp_path, b""))
    assert isinstance(source, Source) and source.text == ""


@pytest.mark.parametrize(("encoding", "named"), [("utf-16", "UTF-16"), ("utf-32", "UTF-32"), ("utf-16-le", "UTF-16")])
def test_other_unicode_encoding_is_named(tmp_path: Path, encoding: str, named: str) -> None:
    outcome = failure(written(tmp_path, "coil L1\n".encode(encoding)))
    assert named in outcome.reason
    assert outcome.help == "save it as UTF-8 in the editor"


def test_first_bad_byte_is_named_with_its_place_in_the_file(tmp_path: Path) -> None:
    """The offset counts bytes from the start of the file, its byte order mark included."""
    outcome = failure(written(tmp_path, b"\xef\xbb\xbfcoil\nC1 \xb5F"))
    assert outcome.byte_offset == 11
    assert outcome.reason == "is not UTF-8: byte 11 (line 2) is 0xB5"
    assert "`µ`" in outcome.help


@pytest.mark.parametrize("content", [b"\xc0\xaf", b"\xed\xa0\x80", b"\xf4\x90\x80\x80", b"ok \xe2\x82"], ids=repr)
def test_ill_formed_sequences_are_refused(tmp_path: Path, content: bytes) -> None:
    """Overlong form, surrogate, beyond U+10FFFF, cut short: ill-formed by the Unicode Standard, table 3-7."""
    assert "is not UTF-8" in failure(written(tmp_path, content)).reason


def test_zero_byte_means_not_a_text_file(tmp_path: Path) -> None:
    outcome = failure(written(tmp_path, b"coil L1 \0 and then much more text"))
    assert (outcome.reason, outcome.byte_offset) == ("is not a text file: byte 8 is zero", 8)


def test_size_limit_is_inclusive(tmp_path: Path) -> None:
    assert isinstance(read(written(tmp_path, b" " * LARGEST_SOURCE_BYTES)), Source)
    outcome = failure(written(tmp_path, b" " * (LARGEST_SOURCE_BYTES + 1)))
    assert outcome.reason.startswith("is too large: 1048577 bytes")


def test_folder_missing_and_impossible_names(tmp_path: Path) -> None:
    assert failure(tmp_path).reason == "is a folder, not a file"
    missing = failure(tmp_path / "none.shunt")
    assert (missing.reason, bool(missing.help)) == ("cannot be read: no such file or directory", True)
    assert "cannot be read" in failure(tmp_path / ("n" * 5000)).reason
    assert "not a possible file name" in failure(Path("a\0b")).reason
    assert "not a possible file name" in failure(Path("a\ud800b")).reason


def test_file_without_permission_is_a_failure(tmp_path: Path) -> None:
    """Read by a child process without rights, since the tests may run as the superuser."""
    tmp_path.chmod(0o777)
    written(tmp_path, b"x").chmod(0)
    (tmp_path / "open.shunt").write_text("y")
    child = os.fork()
    if child == 0:
        try:
            os.chdir(tmp_path)  # the folders above may be closed to the child
            if os.geteuid() == 0:
                os.setuid(65534)
            closed, readable = read_source(Path("a.shunt"), "a"), read_source(Path("open.shunt"), "b")
            right = closed == ReadFailure("a", "cannot be read: permission denied", "allow reading it")
            os._exit(0 if right and isinstance(readable, Source) else 1)
        finally:
            os._exit(1)
    assert os.waitpid(child, 0)[1] == 0


def test_pipe_socket_and_device_are_refused_at_once(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    os.mkfifo(tmp_path / "pipe")
    assert failure(tmp_path / "pipe").reason == "is a pipe, not an ordinary file"
    assert failure(Path("/dev/zero")).reason == "is a device, not an ordinary file"
    monkeypatch.chdir(tmp_path)
    with socket.socket(socket.AF_UNIX) as listening:
        listening.bind("s")
        assert failure(tmp_path / "s").reason == "is a socket, not an ordinary file"


def test_link_that_leads_to_itself_is_a_failure(tmp_path: Path) -> None:
    (tmp_path / "a").symlink_to("b")
    (tmp_path / "b").symlink_to("a")
    assert failure(tmp_path / "a").help == "a symbolic link leads back to itself"
