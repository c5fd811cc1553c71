"""The line that tells what takes long: on a terminal only, only after a while, and gone at the end."""

from __future__ import annotations

import io
import sys
import time

import pytest

from shuntwise.cli import progress as progress_module
from shuntwise.cli.progress import progress


class Terminal(io.StringIO):
    def isatty(self) -> bool:
        return True


@pytest.mark.parametrize(
    ("stream", "seconds", "said"),
    [(Terminal(), 0.2, "solving ...\r\x1b[K"), (Terminal(), 0.0, ""), (io.StringIO(), 0.2, "")],
)
def test_a_line_for_what_takes_long(
    stream: io.StringIO, seconds: float, said: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(progress_module, "PATIENCE_S", 0.05)
    monkeypatch.setattr(sys, "stderr", stream)
    with progress("solving"):
        time.sleep(seconds)
    assert stream.getvalue() == said


def test_it_is_gone_when_something_fails(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(progress_module, "PATIENCE_S", 0.01)
    monkeypatch.setattr(sys, "stderr", stream := Terminal())
    with pytest.raises(ZeroDivisionError), progress("solving"):
        time.sleep(0.1)
        raise ZeroDivisionError
    assert stream.getvalue().endswith("\r\x1b[K")
